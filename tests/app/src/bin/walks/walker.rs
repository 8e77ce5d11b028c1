//! A person with one finger in the real app: counts taps and letters, keeps a picture of every screen.

use std::path::{Path, PathBuf};
use std::time::{Duration, Instant};

use coldchassis_app_tests::photo::choose;
use coldchassis_app_tests::selectors::{answer, question, words};
use coldchassis_app_tests::{App, Stage};
use serde_json::json;

/// What a tap and a letter cost a hand: to look and decide 1.35 s, to point 1.1 s, a key 0.28 s (the keystroke-level
/// model, Card, Moran and Newell 1980; from memory). A phone's keys are slower, so this is the least.
const TAP_SECONDS: f64 = 1.35 + 1.1;
const LETTER_SECONDS: f64 = 0.28;

/// More questions than the bank has.
const MOST: usize = 40;

/// What a person knows of a unit: a question, and what is ticked or typed for it.
pub type Known<'a> = &'a [(&'a str, &'a [&'a str])];

/// One walk from the first screen on.
pub struct Walker<'a> {
    /// The app that is walked through.
    pub app: &'a App,
    stage: &'a Stage,
    folder: PathBuf,
    start: Instant,
    pictures: usize,
    taps: usize,
    letters: usize,
    looked: f64,
    asked: Vec<String>,
}

impl<'a> Walker<'a> {
    /// Begins a walk, with the folder for its pictures.
    pub fn new(app: &'a App, stage: &'a Stage, folder: &Path) -> Self {
        let (taps, letters, pictures) = (0, 0, 0);
        let (folder, start) = (folder.to_owned(), Instant::now());
        Self { app, stage, folder, start, pictures, taps, letters, looked: 0.0, asked: Vec::new() }
    }

    /// Taps what has this name.
    pub async fn tap(&mut self, name: &str) {
        self.app.tap(name).await;
        self.taps += 1;
    }

    /// Taps the first thing with this in its name.
    pub async fn tap_part(&mut self, part: &str) {
        self.app.tap_part(part).await;
        self.taps += 1;
    }

    /// Taps what leads to another screen, and waits for it.
    pub async fn go(&mut self, name: &str) {
        let address = self.app.address().await;
        self.tap(name).await;
        self.app.leaves(&address).await;
    }

    /// Taps the first thing with this in its name, which leads to another screen.
    pub async fn go_part(&mut self, part: &str) {
        let address = self.app.address().await;
        self.tap_part(part).await;
        self.app.leaves(&address).await;
    }

    /// Goes one screen back.
    pub async fn back(&mut self) {
        self.go(&words("back")).await;
    }

    /// Types into the field whose label begins so.
    pub async fn write(&mut self, label: &str, text: &str) {
        let script = "const [label] = arguments;
            const fields = [...document.querySelectorAll('input:not([type=file]), textarea')];
            const named = (field) => field.getAttribute('aria-label') ?? field.labels?.[0]?.innerText ?? '';
            const field = fields.find((field) => named(field).trim().startsWith(label));
            field?.scrollIntoView({ block: 'center' });
            field?.focus();
            return field !== undefined;";
        self.app.until(&format!("no field {label:?}"), script, vec![json!(label)]).await;
        let field = self.app.client.active_element().await.expect("a field");
        field.send_keys(text).await.expect("the field takes text");
        self.taps += 1;
        self.letters += text.chars().count();
    }

    /// Chooses from a list: it is opened, and one line of it tapped.
    pub async fn choose(&mut self, label: &str, value: &str) {
        self.app.choose(label, value).await;
        self.taps += 2;
    }

    /// Gives a photo: the camera's or the folder's own screen takes two taps more.
    pub async fn photograph(&mut self, input: &str, file: &Path) {
        choose(self.app, input, file).await;
        self.taps += 3;
    }

    /// Saves what the system's own window asks about, under the name that it offers, in a folder.
    pub async fn save(&mut self, file: &Path) {
        let window = ["search", "--onlyvisible", "--name", "Save", "windowfocus"];
        for _ in 0..200 {
            if self.stage.press(&window).await {
                break;
            }
            tokio::time::sleep(Duration::from_millis(100)).await;
        }
        self.stage.press(&["type", &file.with_extension("").display().to_string()]).await;
        self.stage.press(&["key", "Return"]).await;
        for _ in 0..200 {
            if std::fs::read(file).is_ok_and(|bytes| !bytes.is_empty()) {
                self.taps += 1;
                return;
            }
            tokio::time::sleep(Duration::from_millis(100)).await;
        }
        panic!("{} was not saved", file.display());
    }

    /// Answers until the verdict is on the screen.
    pub async fn inspect(&mut self, known: Known<'_>) {
        let mut address = self.app.address().await;
        for _ in 0..MOST {
            if address.ends_with("/verdict") {
                return;
            }
            address = self.answer(known, &address).await;
        }
        panic!("the questions go in circles: {:?}", self.asked);
    }

    async fn answer(&mut self, known: Known<'_>, address: &str) -> String {
        let Some(asked) = question(address).map(str::to_owned) else {
            panic!("no question at {address}");
        };
        self.asked.push(asked.clone());
        self.looked += seconds(&asked);
        self.picture(&format!("asked-{asked}")).await;
        let known = known.iter().find(|(question, _)| *question == asked).map(|(_, all)| *all);
        if asked.starts_with("values.") {
            self.value(known).await;
        } else if asked.starts_with("readings.") {
            self.reading(known).await;
        } else {
            for one in known.unwrap_or(&["cant_tell"]) {
                self.tap(&answer(&asked, one)).await;
            }
            self.places().await;
            if self.app.address().await == address && self.has(&words("next")).await {
                self.tap(&words("next")).await;
            }
        }
        self.app.leaves(address).await
    }

    /// A value, as a person reads it off the part; or cannot.
    async fn value(&mut self, known: Option<&[&str]>) {
        match known {
            Some([text, ..]) => {
                self.write(&words("question-figure"), text).await;
                self.tap(&words("question-read-marked")).await;
                let onward = if self.has(&words("next")).await { "next" } else { "question-keep" };
                self.tap(&words(onward)).await;
            }
            _ => self.tap(&answer("", "cant_tell")).await,
        }
    }

    async fn reading(&mut self, known: Option<&[&str]>) {
        let bench = |id: &str| coldchassis_app_tests::selectors::screen_words("bench", id);
        let Some([text, ..]) = known else {
            return self.tap(&bench("readings-cannot-take")).await;
        };
        if self.has(&bench("readings-is-unplugged")).await {
            self.tap(&bench("readings-is-unplugged")).await;
        }
        self.write(&bench("readings-value"), text).await;
        self.tap(&words("question-keep")).await;
        self.picture("kept").await;
        let ways = ["readings-next", "readings-to-question", "readings-done", "readings-all"];
        for way in ways {
            if self.has(&bench(way)).await {
                return self.tap(&bench(way)).await;
            }
        }
        self.tap_part(&words("verdict")).await;
    }

    /// That there is nothing anywhere is an answer once every place is ticked.
    async fn places(&mut self) {
        let script = "return [...document.querySelectorAll('fieldset input[type=checkbox]:not(:checked), [role=group] input[type=checkbox]:not(:checked)')].length";
        while self.app.script(script, vec![]).await.as_u64().unwrap_or(0) > 0 {
            let tick = "document.querySelector('fieldset input[type=checkbox]:not(:checked), [role=group] input[type=checkbox]:not(:checked)').click()";
            self.app.script(tick, vec![]).await;
            self.taps += 1;
        }
    }

    /// Whether something with this name can be tapped now.
    pub async fn has(&self, name: &str) -> bool {
        self.app.settle().await;
        let script = "const plain = (text) => (text ?? '').replace(/\\s+/g, ' ').trim();
            return [...document.querySelectorAll('button, label, summary')]
                .some((one) => (plain(one.getAttribute('aria-label')) || plain(one.innerText)) === arguments[0]
                    && one.getClientRects().length > 0)";
        self.app.script(script, vec![json!(name)]).await == true
    }

    /// Keeps a picture of the screen, and of what lies below its edge.
    pub async fn picture(&mut self, name: &str) {
        self.pictures += 1;
        let name = name.replace('.', "-");
        self.app.picture(&self.folder, &format!("{:02}-{name}", self.pictures)).await;
    }

    /// What the walk took so far.
    pub fn tell(&self, what: &str) {
        let hand = self.taps as f64 * TAP_SECONDS + self.letters as f64 * LETTER_SECONDS;
        println!(
            "{what}: {} taps, {} letters, {} questions; {:.0} s by hand (keystroke-level), {:.0} s to look (estimates of the bank), {:.0} s of this run",
            self.taps,
            self.letters,
            self.asked.len(),
            hand,
            self.looked,
            self.start.elapsed().as_secs_f64(),
        );
    }

    /// The questions asked since the last time this was called.
    pub fn take_asked(&mut self) -> Vec<String> {
        std::mem::take(&mut self.asked)
    }
}

/// How long the bank takes it that one looks for an answer, s; 0 where the bank does not say.
fn seconds(question: &str) -> f64 {
    let bank = include_str!("../../../../../src-tauri/core/data/questions.csv");
    let line = bank.lines().find(|line| line.split(',').next() == Some(question));
    line.and_then(|line| line.split(',').nth(2)?.parse().ok()).unwrap_or(0.0)
}
