//! Marks, order and pairs of photos; what is given away with the marks drawn in; measuring beside a card.

use coldchassis_tests::pictures::{file, scene};
use image::{ImageFormat, Rgb, RgbImage};
use serde_json::{Value, json};
use uuid::Uuid;

use super::table::Table;

struct Kept {
    table: Table,
    inspection: Uuid,
    photos: Vec<Uuid>,
}

fn with_photos(count: u32) -> Kept {
    let mut table = Table::new();
    let inspection = table.unit().id;
    for seed in 1..=count {
        let jpeg = file(&scene(400, 300, seed), ImageFormat::Jpeg);
        table.bench.add_photo(inspection, Some("answers.plug"), &jpeg).expect("added");
    }
    let view = table.bench.inspection(inspection).expect("an inspection");
    Kept { table, inspection, photos: view.photos.iter().map(|photo| photo.id).collect() }
}

fn pin(x: f64, y: f64) -> Value {
    json!({"shape": "pin", "x": x, "y": y, "caption": "bare screw"})
}

#[test]
fn marks_stay_beside_the_photo_and_are_taken_back() {
    let Kept { mut table, inspection, photos } = with_photos(1);
    let marks =
        json!([pin(0.5, 0.5), {"shape": "box", "x1": 0.1, "y1": 0.1, "x2": 0.4, "y2": 0.3}]);
    let view = table.bench.mark_photo(inspection, photos[0], marks).expect("marked");
    assert_eq!(view.photos[0].marks.len(), 2);
    let sha256 = view.photos[0].sha256.clone();
    let untouched = table.bench.photo_bytes(&sha256, false).expect("the photo");
    let given = table.bench.export_photo(inspection, photos[0]).expect("a JPEG");
    assert_eq!(table.bench.photo_bytes(&sha256, false).expect("the photo"), untouched);
    let [before, after] = [&untouched, &given]
        .map(|bytes| image::load_from_memory(bytes).expect("a picture").into_rgb8());
    assert_eq!(after.dimensions(), before.dimensions());
    // Beside the number in the middle of the disc there is ink.
    let dark = after.get_pixel(200, 144).0.iter().all(|level| *level < 60);
    assert!(dark, "{:?}", after.get_pixel(200, 144));

    let view = table.bench.undo(inspection).expect("taken back");
    let photos = &view.expect("something was").photos;
    assert!(photos[0].marks.is_empty());
}

#[test]
fn marks_that_are_none_change_nothing() {
    let Kept { mut table, inspection, photos } = with_photos(1);
    let rows = table.rows();
    for (marks, field) in [
        (json!([pin(1.5, 0.5)]), "marks.0.x"),
        (json!("pin"), "marks"),
        (json!([{"shape": "pin"}]), "marks.0.x"),
    ] {
        let refused = table.bench.mark_photo(inspection, photos[0], marks).expect_err("refused");
        assert_eq!(refused.field.as_deref(), Some(field));
    }
    assert!(table.bench.mark_photo(inspection, inspection, json!([])).is_err(), "no such photo");
    assert_eq!(table.rows(), rows);
}

#[test]
fn photos_stand_as_they_are_ordered() {
    let Kept { mut table, inspection, photos } = with_photos(3);
    let order = vec![photos[2], photos[0], photos[1]];
    let view = table.bench.order_photos(inspection, order.clone()).expect("ordered");
    assert_eq!(view.photos.iter().map(|photo| photo.id).collect::<Vec<_>>(), order);
    let rows = table.rows();
    table.bench.order_photos(inspection, order.clone()).expect("the same again");
    assert_eq!(table.rows(), rows, "nothing new is written");
    for wrong in
        [vec![], order[..2].to_vec(), vec![photos[0]; 3], [order, vec![inspection]].concat()]
    {
        let refused = table.bench.order_photos(inspection, wrong).expect_err("refused");
        assert_eq!(refused.field.as_deref(), Some("order"));
    }
    assert_eq!(table.rows(), rows);
}

#[test]
fn a_photo_of_after_knows_the_one_of_before_as_long_as_it_is_there() {
    let Kept { mut table, inspection, photos } = with_photos(2);
    let [before, after] = [photos[0], photos[1]];
    let view = table.bench.pair_photo(inspection, after, Some(before)).expect("paired");
    assert_eq!(view.photos[1].before, Some(before));
    for wrong in [after, inspection] {
        let refused = table.bench.pair_photo(inspection, after, Some(wrong)).expect_err("refused");
        assert_eq!(refused.field.as_deref(), Some("before"));
    }
    let view = table.bench.remove_photo(inspection, before).expect("removed");
    assert_eq!(view.photos[0].before, None);
    let view = table.bench.undo(inspection).expect("taken back").expect("something was");
    assert_eq!(view.photos[1].before, Some(before));
    let view = table.bench.pair_photo(inspection, after, None).expect("by itself again");
    assert_eq!(view.photos[1].before, None);
}

/// A card seen straight on, 12 px to the mm, and two blades beside it: 6.35 and 7.92 mm wide, 12.7 mm apart.
fn beside_a_card() -> Vec<u8> {
    let picture = RgbImage::from_fn(2048, 1536, |x, y| {
        let (x, y) = (f64::from(x) + 0.5, f64::from(y) + 0.5);
        let within = |left: f64, top: f64, wide: f64, high: f64| {
            (left..left + wide).contains(&x) && (top..top + high).contains(&y)
        };
        let card = within(100.0, 100.0, 85.60 * 12.0, 53.98 * 12.0);
        let blade = within(300.0, 1100.0, 6.35 * 12.0, 18.0)
            || within(300.0 - 0.785 * 12.0, 1100.0 + 12.7 * 12.0, 7.92 * 12.0, 18.0);
        Rgb(if card {
            [235; 3]
        } else if blade {
            [225, 215, 190]
        } else {
            [60; 3]
        })
    });
    file(&picture, ImageFormat::Jpeg)
}

/// By hand: with the camera straight above, the ratio is 7.92 / 6.35 = 1.247, whatever the height.
#[test]
fn what_is_measured_beside_a_card_is_offered_and_stores_nothing() {
    let mut table = Table::new();
    let inspection = table.unit().id;
    let view = table.bench.add_photo(inspection, Some("answers.plug"), &beside_a_card());
    let photo = view.expect("added").photos[0].id;
    let rows = table.rows();
    let at = |x: f64, y: f64| json!([x / 2048.0, y / 1536.0]);
    let (right, low) = (100.0 + 85.60 * 12.0, 100.0 + 53.98 * 12.0);
    let ask = json!({
        "card": [at(100.0, 100.0), at(right, 100.0), at(right, low), at(100.0, low)],
        "length": [at(300.0, 1109.0), at(376.2, 1109.0)],
        "blades": [
            [at(301.0, 1109.0), at(375.0, 1109.0)],
            [at(292.0, 1261.4), at(384.0, 1261.4)],
        ],
    });
    let measured = table.bench.measure_photo(inspection, photo, ask).expect("measured");
    println!("{measured:?}");
    assert_eq!(measured.card_trouble, None);
    // It may stand anywhere up to 15 mm above the card: what it is on the card's own plane is within the bound.
    let length = measured.length.expect("a length").replace('\u{a0}', " ");
    let figures: Vec<f64> = length.split(' ').filter_map(|part| part.parse().ok()).collect();
    let [middle, bound] = figures[..] else { panic!("{length}") };
    assert!((middle - 6.35).abs() <= bound && bound < 1.0, "{length}");
    let blades = measured.blades.expect("blades");
    assert!(blades.ratio.starts_with("1.2"), "{}", blades.ratio);
    let answer = blades.answer.expect("an offer");
    assert_eq!((answer.question, answer.answer), ("plug", "two_polarised_blades"));
    assert_eq!(table.rows(), rows);

    let crossed =
        json!({"card": [at(100.0, 100.0), at(right, low), at(right, 100.0), at(100.0, low)]});
    let measured = table.bench.measure_photo(inspection, photo, crossed).expect("an answer");
    assert!(measured.card_trouble.is_some() && measured.blades.is_none());
    for (ask, field) in [
        (json!({}), "measure.card"),
        (json!({"card": [[0, 0], [1, 0], [1, 1]]}), "measure.card"),
        (json!({"card": [[0, 0], [1, 0], [1, 1], [0, 1.5]]}), "measure.card"),
        (json!({"card": [[0, 0], [1, 0], [1, 1], [0, 1]], "blades": [1]}), "measure.blades"),
        (json!({"card": [[0, 0], [1, 0], [1, 1], [0, 1]], "pins": null}), "measure.pins"),
    ] {
        let refused = table.bench.measure_photo(inspection, photo, ask).expect_err("refused");
        assert_eq!(refused.field.as_deref(), Some(field));
    }
}
