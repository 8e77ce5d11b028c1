//! Cases worked by hand: a card seen straight on at 10 px to the millimetre, and one seen from aside.

use super::*;

/// A photo with a diagonal of 2,500 px.
const SIZE: [f64; 2] = [2000.0, 1500.0];

const CORNERS: [Point; 4] = [
    Point::new(300.0, 400.0),
    Point::new(1156.0, 400.0),
    Point::new(1156.0, 939.8),
    Point::new(300.0, 939.8),
];

/// Seen straight on: 1 mm is 10 px.
fn straight() -> CardView {
    CardView::new(SIZE, CORNERS).unwrap()
}

fn spots(ends: [Point; 2], sigma_px: f64) -> [Spot; 2] {
    ends.map(|at| Spot { at, sigma_px })
}

#[track_caller]
fn assert_near(found: f64, wanted: f64, by: f64) {
    assert!((found - wanted).abs() <= by, "{found} is not {wanted}");
}

#[test]
fn ten_pixels_are_a_millimetre_wherever_the_corners_begin() {
    let ends = [Point::new(300.0, 1200.0), Point::new(360.0, 1280.0)].map(Spot::tapped);
    for first in 0..4 {
        for reversed in [false, true] {
            let mut corners = CORNERS;
            corners.rotate_left(first);
            if reversed {
                corners.reverse();
            }
            let length =
                CardView::new(SIZE, corners).unwrap().length(ends, Above::ON_CARD).unwrap();
            assert_near(length.millimetres, 10.0, 1e-9);
            // Both taps: 2 sigmas of 2 px each, 0.57 mm. Four corners add 0.5 % or so, 0.05 mm, in
            // squares; the card's own tolerance 0.015 mm.
            assert!((0.58..0.62).contains(&length.bound_mm), "{}", length.bound_mm);
        }
    }
}

#[test]
fn what_is_higher_seems_larger_by_its_part_of_the_cameras_height() {
    // 85° and 55° along 2,500 px: focal lengths of 1,364 and 2,401 px, so 136.4 or 240.1 mm at 10 px/mm.
    let [low, high] = straight().camera_height_mm();
    assert_near(low, 136.4, 0.1);
    assert_near(high, 240.1, 0.1);
    let ends = spots([Point::new(678.0, 669.9), Point::new(778.0, 669.9)], 0.001);
    let above = Above { least_mm: 10.0, most_mm: 10.0, lean_deg: 0.0 };
    let length = straight().length(ends, above).unwrap();
    // Between 10 mm less 10/136.4 and less 10/240.1 of it: 9.267 to 9.584 mm.
    assert_near(length.millimetres, 9.425, 0.002);
    // Half of that, 0.158 mm; the card's tolerance, 0.015; twice 2 px in each end of two sides of 856,
    // the mean of which counts here: 0.044.
    assert_near(length.bound_mm, 0.217, 0.01);
}

#[test]
fn a_card_seen_from_aside_shows_how_high_the_camera_was() {
    // 35° over, 200 mm away, 65° along the diagonal: 163.8 mm above the card.
    let focal = 1250.0 / 32.5_f64.to_radians().tan();
    let (sin, cos) = 35.0_f64.to_radians().sin_cos();
    let sees = |x: f64, y: f64| {
        let depth = 200.0 - x * sin;
        Point::new(1000.0 + focal * x * cos / depth, 750.0 + focal * y / depth)
    };
    let (x, y) = (CARD_LONG_MM / 2.0, CARD_SHORT_MM / 2.0);
    let corners = [sees(-x, -y), sees(x, -y), sees(x, y), sees(-x, y)];
    let card = CardView::new(SIZE, corners).unwrap();
    let [low, high] = card.camera_height_mm();
    assert!(low < 163.8 && 163.8 < high && high / low < 1.5, "{low} to {high}");

    let ends = spots([sees(-20.0, 40.0), sees(10.0, 0.0)], 0.5);
    let length = card.length(ends, Above::ON_CARD).unwrap();
    assert_near(length.millimetres, 50.0, 1e-6);
}

#[test]
fn corners_that_are_no_cards_are_refused() {
    let refused = |size: [f64; 2], corners: [(f64, f64); 4]| {
        CardView::new(size, corners.map(|(x, y)| Point::new(x, y))).unwrap_err()
    };
    let good = CORNERS.map(|at| (at.x, at.y));
    let [a, b, c, d] = good;
    assert_eq!(refused([0.0, 1500.0], good), MeasureError::Size);
    assert_eq!(refused([f64::NAN, 1500.0], good), MeasureError::Size);
    for outside in [(-1.0, 400.0), (2001.0, 400.0), (f64::NAN, 0.0), (0.0, f64::INFINITY)] {
        let error = MeasureError::CornerOutside { corner: 1 };
        assert_eq!(refused(SIZE, [a, outside, c, d]), error);
    }
    assert_eq!(refused(SIZE, [a, c, b, d]), MeasureError::CornersCrossed);
    assert_eq!(refused(SIZE, [a, b, (700.0, 500.0), d]), MeasureError::CornersCrossed);
    assert_eq!(refused(SIZE, [a, b, (728.0, 669.9), d]), MeasureError::CornersCrossed, "in line");
    assert_eq!(refused(SIZE, [a, a, c, d]), MeasureError::CardTooSmall);
    let square = [(300.0, 300.0), (900.0, 300.0), (900.0, 900.0), (300.0, 900.0)];
    assert_eq!(refused(SIZE, square), MeasureError::NotACard);
    let sheet = [(300.0, 300.0), (1149.0, 300.0), (1149.0, 900.0), (300.0, 900.0)];
    assert_eq!(refused(SIZE, sheet), MeasureError::NotACard, "1 to the root of 2");
}

#[test]
fn lengths_that_make_no_sense_are_refused() {
    let (a, b) = (Point::new(300.0, 1200.0), Point::new(400.0, 1200.0));
    let refused = |ends, above| straight().length(ends, above).unwrap_err();
    let tapped = |a, b| [Spot::tapped(a), Spot::tapped(b)];
    assert_eq!(refused(tapped(a, a), Above::ON_CARD), MeasureError::EndsTooClose);
    let nowhere = Point::new(f64::NAN, 0.0);
    assert_eq!(refused(tapped(a, nowhere), Above::ON_CARD), MeasureError::EndOutside);
    for sigma in [0.0, -1.0, f64::NAN] {
        assert_eq!(refused(spots([a, b], sigma), Above::ON_CARD), MeasureError::EndOutside);
    }
    let heights = [
        (-1.0, 5.0, 0.0),
        (9.0, 5.0, 0.0),
        (0.0, 70.0, 0.0),
        (0.0, 5.0, 50.0),
        (f64::NAN, 5.0, 0.0),
    ];
    for (least_mm, most_mm, lean_deg) in heights {
        let above = Above { least_mm, most_mm, lean_deg };
        assert_eq!(refused(tapped(a, b), above), MeasureError::Height, "{above:?}");
    }
}

#[test]
fn beyond_the_horizon_there_is_no_plane() {
    // The upper side half as long as the lower: the sides meet as far above as the card is high.
    let corners = [(700.0, 700.0), (1300.0, 700.0), (1600.0, 1300.0), (400.0, 1300.0)];
    let map = super::homography::Homography::of_rectangle(
        CARD_LONG_MM,
        CARD_SHORT_MM,
        corners.map(|(x, y)| Point::new(x, y)),
    )
    .unwrap();
    assert!(map.plane(Point::new(1000.0, 101.0)).is_some());
    assert!(map.plane(Point::new(1000.0, 99.0)).is_none());
    let middle = map.plane(Point::new(1000.0, 900.0)).unwrap();
    // Where the diagonals cross is the middle of the card.
    assert_near(middle.x, CARD_LONG_MM / 2.0, 1e-9);
    assert_near(middle.y, CARD_SHORT_MM / 2.0, 1e-9);
}

/// Two blades of these widths, mm, this far apart, the second turned by some degrees, seen straight on
/// at 10 px/mm and each end known to a sigma.
fn blades(widths: [f64; 2], apart: f64, turned: f64, sigma_px: f64) -> BladeReading {
    let (sin, cos) = turned.to_radians().sin_cos();
    // Corrected for the middle between 15 mm up at 136.4 mm and 5 mm up at 240.1: 0.9346.
    let scale = 10.0 / 0.9346;
    let ends = |y: f64, width: f64, sin: f64, cos: f64| {
        let (x, rise) = (scale * width / 2.0 * cos, scale * width / 2.0 * sin);
        spots([Point::new(1000.0 - x, y - rise), Point::new(1000.0 + x, y + rise)], sigma_px)
    };
    let first = ends(1050.0, widths[0], 0.0, 1.0);
    let second = ends(1050.0 + scale * apart, widths[1], sin, cos);
    read_blades(&straight(), [first, second], Above::BLADES).unwrap()
}

#[test]
fn blades_are_equal_or_polarised_by_their_ratio() {
    let equal = blades([6.35, 6.45], 12.7, 0.0, 0.5);
    assert_eq!(equal.says, Says::Equal);
    assert_near(equal.ratio, 6.45 / 6.35, 1e-9);
    assert_near(equal.widths[0].millimetres, 6.35, 0.01);
    assert_near(equal.apart.millimetres, 12.7, 0.02);
    for (widths, wider) in [([6.35, 7.92], 1), ([7.92, 6.35], 0)] {
        let polarised = blades(widths, 12.7, 0.0, 0.5);
        assert_eq!(polarised.says, Says::Polarised { wider });
        assert_near(polarised.ratio, 7.92 / 6.35, 1e-9);
        // Each width to 0.5 px times the root of 2 in 67 or 84 px: 1.35 % together, twice that of
        // 1.247, and a little for a plug that leans.
        assert!((0.034..0.045).contains(&polarised.ratio_bound), "{}", polarised.ratio_bound);
    }
}

#[test]
fn what_cannot_be_told_is_said_with_its_reason() {
    let why = |widths, apart, turned, sigma| match blades(widths, apart, turned, sigma).says {
        Says::CannotTell(why) => why,
        says => panic!("{says:?}"),
    };
    assert_eq!(why([6.35, 7.0], 12.7, 0.0, 2.0), Why::TooRough);
    assert_eq!(why([6.35, 7.92], 12.7, 0.0, 6.0), Why::TooRough);
    assert_eq!(why([6.35, 7.11], 12.7, 0.0, 0.1), Why::NeitherRatio, "1.12 is between the two");
    assert_eq!(why([6.35, 9.5], 12.7, 0.0, 0.5), Why::NeitherRatio, "1.5 is beyond both");
    assert_eq!(why([4.8, 4.8], 12.7, 0.0, 0.5), Why::OtherWidths, "round pins");
    assert_eq!(why([7.92, 7.92], 12.7, 0.0, 0.5), Why::OtherWidths);
    assert_eq!(why([6.35, 6.35], 22.2, 0.0, 0.5), Why::OtherPlaces, "BS 1363");
    assert_eq!(why([6.35, 6.35], 12.7, 60.0, 0.5), Why::OtherPlaces, "AS/NZS 3112");
}

/// A part of a photo, 100 by 20 px from (1000, 500) on: dark, and bright between two columns.
fn bar(from: f64, to: f64, bright: f64) -> Vec<u8> {
    let covered = |x: f64| (to.min(x + 1.0) - from.max(x)).clamp(0.0, 1.0);
    let level = |n: u32| 40.0 + (bright - 40.0) * covered(f64::from(n % 100));
    (0..2000).map(|n| level(n).round() as u8).collect()
}

#[test]
fn a_tap_is_drawn_to_the_edge_beside_it() {
    let pixels = bar(20.3, 80.6, 200.0);
    let grey = Grey::new([1000, 500], 100, &pixels).unwrap();
    let taps = [Point::new(1023.0, 510.0), Point::new(1079.0, 510.0)];
    let [left, right] = snap(&grey, taps);
    assert_near(left.at.x, 1020.3, 0.1);
    assert_near(right.at.x, 1080.6, 0.1);
    assert_near(left.at.y, 510.0, 1e-9);
    assert!(left.sigma_px < 0.8 && right.sigma_px < 0.8, "{left:?} {right:?}");
    // The other way round it is the same.
    let [right_again, left_again] = snap(&grey, [taps[1], taps[0]]);
    assert_near(left_again.at.x, left.at.x, 1e-9);
    assert_near(right_again.at.x, right.at.x, 1e-9);
}

#[test]
fn a_tap_stays_where_no_edge_is_meant() {
    let stays = |pixels: &[u8], from: f64, to: f64| {
        let grey = Grey::new([1000, 500], 100, pixels).unwrap();
        let taps = [Point::new(from, 510.0), Point::new(to, 510.0)];
        assert_eq!(snap(&grey, taps), taps.map(Spot::tapped));
    };
    stays(&bar(20.0, 80.0, 41.0), 1021.0, 1079.0);
    stays(&bar(20.0, 80.0, 200.0), 1030.0, 1070.0);
    stays(&bar(40.0, 60.0, 200.0), 1040.0, 1060.0);
    stays(&bar(20.0, 80.0, 200.0), 900.0, 1101.0);
    stays(&bar(20.0, 80.0, 200.0), 1050.0, 1050.0);
    let pixels = bar(20.0, 80.0, 200.0);
    let grey = Grey::new([1000, 500], 100, &pixels).unwrap();
    let [_, right] = snap(&grey, [Point::new(f64::NAN, 510.0), Point::new(1080.5, 510.0)]);
    assert_eq!(right, Spot::tapped(Point::new(1080.5, 510.0)));
}

#[test]
fn two_edges_in_reach_are_not_taken_for_certainty() {
    let mut pixels = bar(20.0, 80.0, 120.0);
    // A second step of the same height, 4 px further in.
    for row in pixels.chunks_mut(100) {
        row[24..76].fill(200);
    }
    let grey = Grey::new([1000, 500], 100, &pixels).unwrap();
    let [left, _] = snap(&grey, [Point::new(1022.1, 510.0), Point::new(1078.0, 510.0)]);
    assert!(left.sigma_px > 2.0, "{left:?}");
}

#[test]
fn a_grey_part_is_whole_rows() {
    assert!(Grey::new([0, 0], 100, &[0; 2000]).is_ok());
    assert_eq!(Grey::new([0, 0], 100, &[0; 1999]).unwrap_err(), MeasureError::Grey);
    assert_eq!(Grey::new([0, 0], 0, &[]).unwrap_err(), MeasureError::Grey);
}
