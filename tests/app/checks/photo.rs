//! Photos in the real window: added at the question, shown large from the review, still there after a
//! crash; what is no photo is refused with a sentence.

use std::path::{Path, PathBuf};

use coldchassis_app_tests::photo::{
    CAMERA_NAME, FILES, choose, decoded, held_upright, kept_files, photos,
};
use coldchassis_app_tests::record::shown;
use coldchassis_app_tests::selectors::{core_words, inspection, open_photo, question, words};
use coldchassis_app_tests::walk::{SHELF_RADIO, answer_one, new_unit, welcome};
use coldchassis_app_tests::{App, Stage, within_reason};
use serde_json::json;

const CAPTION: &str = "The end of the cord, both blades alike";

#[tokio::test]
async fn a_photo_of_a_question_is_shown_large_captioned_and_there_after_a_crash() {
    within_reason(async {
        let stage = Stage::new().await;
        let app = App::start(&stage).await;
        let (id, asked) = at_the_plug(&app).await;
        choose(&app, FILES, &held_upright()).await;
        let (width, height) = decoded(&app, "button", &open_photo("plug")).await;
        assert!(width < height, "the thumbnail lies on its side: {width} × {height}");
        assert_eq!(app.address().await, asked, "a photo moves the question along");
        answer_one(&app, SHELF_RADIO).await;

        app.tap_part(&words("found")).await;
        app.tap(&open_photo("plug")).await;
        assert_eq!(large(&app, &core_words("answers", "finding-plug")).await, (900, 1200));
        app.write(&words("photo-caption"), &format!("{CAPTION}\u{e007}")).await;
        large(&app, CAPTION).await;

        app.tap(&words("verdict")).await;
        app.tap(&words("found-go-on")).await;
        let heading = next_question(&app).await;
        let (address, before) = (app.address().await, shown(&app, &id).await);
        assert_eq!(photos(&before)[0]["caption"], CAPTION);
        app.kill().await;
        let app = App::start(&stage).await;
        app.see(&heading).await;
        assert_eq!(app.address().await, address);
        assert_eq!(shown(&app, &id).await, before);
        app.tap(&words("verdict")).await;
        let name = words("photo-open").replace("{ $of }", CAPTION);
        decoded(&app, "button", &name).await;
        app.tap(&name).await;
        assert_eq!(large(&app, CAPTION).await, (900, 1200));
    })
    .await;
}

#[tokio::test]
async fn where_and_with_what_it_was_taken_is_not_kept() {
    within_reason(async {
        let given = std::fs::read(held_upright()).expect("the picture");
        let tells = |bytes: &[u8], what: &str| {
            bytes.windows(what.len()).any(|window| window == what.as_bytes())
        };
        assert!(tells(&given, CAMERA_NAME) && tells(&given, "Exif"), "the picture tells nothing");
        let stage = Stage::new().await;
        let app = App::start(&stage).await;
        at_the_plug(&app).await;
        choose(&app, FILES, &held_upright()).await;
        decoded(&app, "button", &open_photo("plug")).await;
        let kept = kept_files(&stage.data());
        let pictures = kept.iter().filter(|(_, bytes)| bytes.starts_with(b"\xFF\xD8\xFF")).count();
        assert_eq!(pictures, 2, "a photo is kept large and small");
        for (file, bytes) in kept {
            for what in [CAMERA_NAME, "Exif"] {
                assert!(!tells(&bytes, what), "{what} in {}", file.display());
            }
        }
    })
    .await;
}

#[tokio::test]
async fn what_is_no_photo_is_refused_with_a_sentence_and_nothing_changes() {
    within_reason(async {
        let stage = Stage::new().await;
        let folder = tempfile::tempdir().expect("a folder");
        let whole = std::fs::read(held_upright()).expect("the picture");
        let letter = file(folder.path(), "letter.jpg", b"Dear friend, this is not a photo.");
        let broken = file(folder.path(), "broken.jpg", &whole[..whole.len() / 2]);
        let app = App::start(&stage).await;
        let (id, asked) = at_the_plug(&app).await;
        let heading = app.heading().await;
        let before = shown(&app, &id).await;
        let pictures = || kept_files(&stage.data().join("photos"));
        assert!(pictures().is_empty(), "there are pictures already");
        for (given, message) in [(letter, "takes-photo-picture"), (broken, "takes-photo-whole")] {
            choose(&app, FILES, &given).await;
            // Where it stands alone it begins with a capital letter.
            let sentence = core_words("photo", message).split_off(1);
            app.see(&sentence).await;
            let name = given.file_name().expect("a name").to_str().expect("a plain name");
            let alert = refused(&app).await;
            assert!(alert.contains(name) && alert.contains(&sentence), "{alert:?}");
            assert_eq!(app.address().await, asked);
            assert_eq!(app.heading().await, heading);
            assert_eq!(shown(&app, &id).await, before);
            assert!(pictures().is_empty(), "something of {name} is kept: {:?}", pictures());
        }
        // Refused or not, the question can be answered, and the sentence goes with it.
        answer_one(&app, SHELF_RADIO).await;
        next_question(&app).await;
        assert!(!app.read().await.contains(&core_words("photo", "takes-photo-whole").split_off(1)));
    })
    .await;
}

#[tokio::test]
async fn a_photo_that_was_removed_comes_back_by_undo() {
    within_reason(async {
        let stage = Stage::new().await;
        let app = App::start(&stage).await;
        let (id, _) = at_the_plug(&app).await;
        choose(&app, FILES, &held_upright()).await;
        decoded(&app, "button", &open_photo("plug")).await;
        answer_one(&app, SHELF_RADIO).await;
        app.tap_part(&words("found")).await;
        let before = shown(&app, &id).await;
        remove(&app, &id).await;
        app.tap(&words("undo")).await;
        decoded(&app, "button", &open_photo("plug")).await;
        assert_eq!(photos(&shown(&app, &id).await), photos(&before));
        // Not out of what the page remembers: out of its file.
        app.reload().await;
        decoded(&app, "button", &open_photo("plug")).await;
    })
    .await;
}

#[tokio::test]
async fn it_comes_back_before_anything_is_answered_too() {
    within_reason(async {
        let stage = Stage::new().await;
        let app = App::start(&stage).await;
        let (id, asked) = at_the_plug(&app).await;
        choose(&app, FILES, &held_upright()).await;
        decoded(&app, "button", &open_photo("plug")).await;
        remove(&app, &id).await;
        assert_eq!(app.address().await, asked);
        app.tap(&words("undo")).await;
        decoded(&app, "button", &open_photo("plug")).await;
        assert_eq!(photos(&shown(&app, &id).await).len(), 1);
    })
    .await;
}

/// A new unit at the question of its plug; gives the inspection and the address.
async fn at_the_plug(app: &App) -> (String, String) {
    welcome(app).await;
    let asked = new_unit(app, "Shelf radio").await;
    assert_eq!(question(&asked), Some("plug"), "another question comes first now");
    (inspection(&asked).expect("an inspection").to_owned(), asked)
}

/// Opens the photo of the plug, removes it, and waits until it is off the screen.
async fn remove(app: &App, id: &str) {
    app.tap(&open_photo("plug")).await;
    large(app, &core_words("answers", "finding-plug")).await;
    let photo = app.address().await;
    app.tap(&words("photo-remove")).await;
    app.leaves(&photo).await;
    assert!(photos(&shown(app, id).await).is_empty());
    let gone = "return document.querySelector('main img') === null";
    app.until("the photo stays on the screen", gone, vec![]).await;
}

/// The size of the photo on its own screen.
async fn large(app: &App, name: &str) -> (u64, u64) {
    decoded(app, "figure svg", name).await
}

/// The heading of the question that the screen changes to.
async fn next_question(app: &App) -> String {
    let script = "return location.hash.includes('/q/') && document.querySelector('.card') !== null";
    app.until("no question comes", script, vec![]).await;
    app.heading().await
}

/// What the screen says of a refused file.
async fn refused(app: &App) -> String {
    let script = "return [...document.querySelectorAll('[role=alert]')]
        .map((alert) => alert.innerText).filter((text) => text !== '').join('\\n')";
    let said = app.until("nothing is said", script, vec![]).await;
    assert_ne!(said, json!(""));
    said.as_str().expect("text").to_owned()
}

fn file(folder: &Path, name: &str, bytes: &[u8]) -> PathBuf {
    let file = folder.join(name);
    std::fs::write(&file, bytes).expect("a file");
    file
}
