//! The app killed at any moment while it answers and keeps photos: what its commands had returned is there.
//!
//! Three times usually, `COLDCHASSIS_APP_KILLS=50` for more (`make kills`). The core by itself is killed far
//! more often, in everything that it does: `tests/checks/killed.rs`. A kill leaves with the system what was
//! written, so a loss of power is not shown here.

use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;
use std::time::Duration;

use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use coldchassis_app_tests::photo::{held_upright, kept_files, photos};
use coldchassis_app_tests::record::{inspected, shown, units};
use coldchassis_app_tests::{App, Stage, within_reason};
use rand::{Rng, SeedableRng};
use rand_chacha::ChaCha8Rng;
use serde_json::{Value, json};
use sha2::{Digest, Sha256};

/// Kills where nothing is asked for.
const USUAL: u32 = 3;
/// What a command takes at most where it does not decode a photo: kills come up to so long after the last
/// that was seen to return.
const COMMAND: u64 = 60;

/// What is done in a round: a question with its answer, or a question that a photo is of.
enum Step {
    Answer(&'static str, Value),
    Photo(&'static str),
}

fn steps() -> Vec<Step> {
    use Step::{Answer, Photo};
    vec![
        Answer("plug", json!("two_equal_blades")),
        Photo("plug"),
        Answer("cord", json!("cloth_or_rubber")),
        Answer("plug", json!("two_polarised_blades")),
        Photo("cord"),
        Answer("back", json!("fitted")),
        Photo("back"),
        Answer("terminals", json!(["none"])),
        Answer("cord", json!("sound")),
        Photo("terminals"),
        Answer("bare_metal", json!(["screws_or_shafts"])),
        Answer("plug", json!("three_pins")),
    ]
}

/// What was found, and the questions that photos are of, in their order.
#[derive(Clone, Debug, Default, PartialEq)]
struct State {
    found: BTreeMap<String, Value>,
    photos: Vec<String>,
}

impl State {
    fn of(view: &Value) -> Self {
        let text = |value: &Value| value.as_str().expect("a text").to_owned();
        let found = view["findings"].as_array().expect("findings").iter();
        Self {
            found: found.map(|found| (text(&found["path"]), found["value"].clone())).collect(),
            photos: photos(view).iter().map(|photo| text(&photo["finding"])).collect(),
        }
    }

    /// After so many steps.
    fn after(steps: &[Step]) -> Self {
        let mut state = Self::default();
        for step in steps {
            match step {
                Step::Answer(question, answer) => {
                    _ = state.found.insert(format!("answers.{question}"), answer.clone());
                }
                Step::Photo(question) => state.photos.push(format!("answers.{question}")),
            }
        }
        state
    }
}

#[tokio::test]
async fn killed_at_any_moment_it_has_all_that_it_answered_for() {
    let asked = std::env::var("COLDCHASSIS_APP_KILLS").ok();
    let kills = asked.map_or(USUAL, |text| text.parse().expect("a number of kills"));
    let mut draw = ChaCha8Rng::seed_from_u64(u64::from(kills));
    let stage = Stage::new().await;
    let mut app = within_reason(App::start(&stage)).await;
    let (mut known, mut returned, mut whole, mut cut) = (Vec::<(String, State)>::new(), 0, 0, 0);
    for round in 0..kills {
        let (after, id, seen) = within_reason(killed(app, round, &mut draw)).await;
        app = within_reason(App::start(&stage)).await;
        let view = within_reason(shown(&app, &id)).await;
        let (state, steps) = (State::of(&view), steps());
        let done = (seen..=steps.len()).find(|done| State::after(&steps[..*done]) == state);
        let done = done.unwrap_or_else(|| {
            panic!("round {round}: {seen} steps had returned, {after} ms later: {state:?}")
        });
        returned += seen;
        whole += usize::from(done > seen);
        cut = check_files(&stage.data().join("photos"), &view);
        known.push((id, state));
    }
    within_reason(async {
        assert_eq!(units(&app).await.len(), known.len(), "a unit came or went by itself");
        for (id, state) in &known {
            let view = shown(&app, id).await;
            assert_eq!(State::of(&view), *state, "another kill changed it");
            for photo in photos(&view) {
                check_shown(&app, photo).await;
            }
        }
    })
    .await;
    println!(
        "{kills} kills of the app: {returned} commands had returned and all were there; after {whole} kills \
         more than that was there, whole; {cut} files that were not finished"
    );
    assert!(returned > 0, "every kill came before anything was done");
}

/// Makes a unit, lets the page go through the steps by itself, and kills the app in the middle. Gives how many
/// milliseconds after the last look that was, the inspection, and how many steps had returned by that look.
async fn killed(app: App, round: u32, draw: &mut ChaCha8Rng) -> (u64, String, usize) {
    let id =
        inspected(&app, &format!("Invented set {round}"), &["outside", "cover_off"], &[]).await;
    let steps = steps();
    let commands: Vec<Value> =
        (0..).zip(&steps).map(|(at, step)| command(&id, step, round, at)).collect();
    let script = "const [commands] = arguments;
        window.returned = 0;
        window.refused = null;
        (async () => {
            for (const [command, given] of commands) {
                await window.__TAURI_INTERNALS__.invoke(command, given);
                window.returned += 1;
            }
        })().catch((refused) => { window.refused = refused; });";
    app.script(script, vec![json!(commands)]).await;
    let wanted = draw.random_range(0..steps.len() as u64);
    let seen = loop {
        let look = app.script("return [window.returned, window.refused]", vec![]).await;
        assert_eq!(look[1], Value::Null, "a step is refused");
        let returned = look[0].as_u64().expect("a number");
        if returned >= wanted {
            break returned;
        }
    };
    let after = draw.random_range(0..COMMAND);
    tokio::time::sleep(Duration::from_millis(after)).await;
    app.kill().await;
    (after, id, usize::try_from(seen).expect("a few"))
}

fn command(inspection: &str, step: &Step, round: u32, at: u32) -> Value {
    match step {
        Step::Answer(question, answer) => json!([
            "answer",
            {"inspection": inspection, "question": question, "answer": answer}
        ]),
        Step::Photo(question) => json!([
            "add_photo",
            {
                "inspection": inspection,
                "finding": format!("answers.{question}"),
                "picture": STANDARD.encode(another_picture(round * 16 + at)),
            }
        ]),
    }
}

/// The picture of the checks with another step in its table of quantisation, so that other
/// pixels come out and other files are written.
fn another_picture(number: u32) -> Vec<u8> {
    let mut bytes = std::fs::read(held_upright()).expect("the picture");
    let table = bytes.windows(2).position(|marker| marker == [0xFF, 0xDB]).expect("a JPEG");
    // After the marker two bytes of length and one with the table's number: ITU-T T.81, B.2.4.1, from
    // memory, high. Its first step stays: it is that of a whole block.
    let place = table + 5 + 1 + (number % 20) as usize;
    bytes[place] =
        bytes[place].wrapping_add(3 * u8::try_from(1 + number / 20 % 60).expect("below 60"));
    bytes
}

/// Every photo that is shown has both its files, whole. Of the others none is cut short under a photo's name;
/// gives how many were not finished.
fn check_files(folder: &Path, view: &Value) -> usize {
    let files: BTreeMap<String, Vec<u8>> = kept_files(folder)
        .into_iter()
        .map(|(path, bytes)| {
            let name = path.file_name().and_then(|name| name.to_str()).expect("a plain name");
            (name.to_owned(), bytes)
        })
        .collect();
    let mut digests = BTreeSet::new();
    for (name, bytes) in &files {
        let whole = bytes.starts_with(&[0xFF, 0xD8]) && bytes.ends_with(&[0xFF, 0xD9]);
        match name.strip_suffix(".jpg").map(|stem| (stem, stem.strip_suffix(".thumb"))) {
            Some((_, Some(_))) => assert!(whole, "{name} is cut short"),
            Some((digest, None)) => {
                assert!(whole && named_by(bytes) == digest, "{name} is another picture");
                digests.insert(digest);
            }
            None => assert!(name.starts_with(".arriving-"), "{name} is no photo"),
        }
    }
    for photo in photos(view) {
        let digest = photo["sha256"].as_str().expect("a digest");
        assert!(digests.contains(digest), "the photo {digest} has no file");
        assert!(files.contains_key(&format!("{digest}.thumb.jpg")), "{digest} has no thumbnail");
    }
    files.keys().filter(|name| name.starts_with('.')).count()
}

fn named_by(bytes: &[u8]) -> String {
    Sha256::digest(bytes).iter().map(|byte| format!("{byte:02x}")).collect()
}

/// The app itself gives the photo that its name says.
async fn check_shown(app: &App, photo: &Value) {
    let given = json!({"sha256": photo["sha256"], "thumbnail": false});
    let text = app.command("show_photo", given).await.expect("the photo");
    let bytes = STANDARD.decode(text.as_str().expect("base64")).expect("base64");
    assert_eq!(json!(named_by(&bytes)), photo["sha256"]);
}
