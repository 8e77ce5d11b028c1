//! What a person does with the page, and reads on it.

use std::path::{Path, PathBuf};
use std::time::{Duration, Instant};

use fantoccini::Locator;
use fantoccini::actions::{InputSource, MOUSE_BUTTON_LEFT, MouseActions, PointerAction};
use fantoccini::elements::Element;
use serde_json::{Value, json};

use super::app::{AGAIN, App};
use super::selectors::{HEADING, STILL_POSSIBLE, TAG, TAPPED};

/// How long a screen may take to show what it should.
const PATIENCE: Duration = Duration::from_secs(15);

/// The key that an element has in what a script returns. Source: W3C WebDriver, section 12, "web element
/// identifier"; from memory, and every tap depends on it.
const ELEMENT: &str = "element-6066-11e4-a52e-4f735466cecf";

/// Finds what can be tapped under a name: its label, else its words, else its marker for checks. Nothing as
/// long as it was not seen for a while. It is brought to the middle of the screen, as a person would: at the
/// edge the bar at the bottom lies over it.
const FIND: &str = "const [tapped, name, reading] = arguments;
    const plain = (text) => (text ?? '').replace(/\\s+/g, ' ').trim();
    const named = (element) => [
        element.dataset.test,
        plain(element.getAttribute('aria-label')) || plain(element.innerText),
    ].includes(name);
    const now = performance.now();
    const seen = (window.seen ??= new WeakMap());
    const all = [...document.querySelectorAll(tapped)];
    for (const element of all) if (!seen.has(element)) seen.set(element, now);
    const found = all
        .find((element) => named(element) && !element.disabled && element.getClientRects().length > 0);
    if (!found || now - seen.get(found) < reading) return null;
    found.scrollIntoView({ block: 'center' });
    return found;";

/// A person looks at a button for that long before a tap, ms. A tap sooner after it appeared was begun on the
/// screen before, and an answer takes none of those: 400 ms in the screens.
const READING: u64 = 450;

/// What the screen says: nothing until it has what it is about. Beside a list it is the second one.
const SHOWN: &str = "([...document.querySelectorAll('main')].at(-1)?.innerText.trim() ?? '')";

impl App {
    /// Taps what has this name (what a screen reader says) or this `data-test`.
    ///
    /// # Panics
    /// When there is no such thing to tap.
    pub async fn tap(&self, name: &str) {
        let start = Instant::now();
        // A screen that is just changing takes the element away under the finger.
        while self.find(name).await.click().await.is_err() {
            if start.elapsed() > PATIENCE {
                self.fail(&format!("{name:?} cannot be tapped")).await;
            }
            tokio::time::sleep(AGAIN).await;
        }
    }

    /// What has this name, once it is there and nothing moves any more.
    async fn find(&self, name: &str) -> Element {
        let arguments = || vec![json!(TAPPED), json!(name), json!(READING)];
        let what = format!("nothing to tap is named {name:?}");
        self.until(&what, FIND, arguments()).await;
        // Whoever taps beside what still moves has tapped something else.
        self.settle().await;
        let found = self.until(&what, FIND, arguments()).await;
        let id = found[ELEMENT].as_str().expect("an element").to_owned();
        Element::from_element_id(self.client.clone(), id.into())
    }

    /// Taps the first thing with this in its name, such as a row that says more than a name.
    ///
    /// # Panics
    /// When there is no such thing to tap.
    pub async fn tap_part(&self, part: &str) {
        let script = "const [tapped, part] = arguments;
            return [...document.querySelectorAll(tapped)]
                .map((element) => element.getAttribute('aria-label') ?? element.innerText)
                .map((name) => name.replace(/\\s+/g, ' ').trim())
                .find((name) => name.includes(part)) ?? null;";
        let what = format!("nothing to tap has {part:?} in its name");
        let name = self.until(&what, script, vec![json!(TAPPED), json!(part)]).await;
        self.tap(name.as_str().expect("a name")).await;
    }

    /// Taps twice at one place, as a hurried thumb does: where the first tap changes the screen, the second
    /// meets whatever lies there then.
    ///
    /// # Panics
    /// When there is no such thing to tap.
    pub async fn tap_twice(&self, name: &str, apart: Duration) {
        let script = "const box = arguments[0].getBoundingClientRect();
            return [box.x + box.width / 2, box.y + box.height / 2];";
        let element = json!({ELEMENT: self.find(name).await.element_id().to_string()});
        let place = self.script(script, vec![element]).await;
        let [x, y] = [0, 1].map(|at| place[at].as_f64().expect("a place"));
        let tap = |finger: MouseActions| {
            finger
                .then(PointerAction::Down { button: MOUSE_BUTTON_LEFT })
                .then(PointerAction::Up { button: MOUSE_BUTTON_LEFT })
        };
        let there = PointerAction::MoveTo { duration: None, x, y };
        let finger = tap(MouseActions::new("finger".to_owned()).then(there));
        let finger = tap(finger.then(PointerAction::Pause { duration: apart }));
        self.client.perform_actions(finger).await.expect("the finger taps");
    }

    /// Types into the field with this label.
    ///
    /// # Panics
    /// When there is no such field.
    pub async fn write(&self, label: &str, text: &str) {
        let path = format!("//label[normalize-space(.)={label:?}]/following-sibling::input");
        let locator = Locator::XPath(&path);
        match self.client.wait().at_most(PATIENCE).for_element(locator).await {
            Ok(field) => field.send_keys(text).await.expect("the field takes text"),
            Err(_) => self.fail(&format!("no field is named {label:?}")).await,
        }
    }

    /// Chooses from the list with this label.
    ///
    /// # Panics
    /// When there is no such list, or it does not have that.
    pub async fn choose(&self, label: &str, value: &str) {
        let path = format!(
            "//label[normalize-space(.)={label:?}]/following-sibling::select[option/@value={value:?}]"
        );
        let locator = Locator::XPath(&path);
        match self.client.wait().at_most(PATIENCE).for_element(locator).await {
            Ok(list) => list.select_by_value(value).await.expect("the list takes it"),
            Err(_) => self.fail(&format!("no list named {label:?} has {value:?}")).await,
        }
    }

    /// Waits until something holds on the page.
    ///
    /// # Panics
    /// When it does not come to hold; what is on the page is told and pictured then.
    pub async fn until(&self, what: &str, script: &str, arguments: Vec<Value>) -> Value {
        let start = Instant::now();
        loop {
            let found = self.script(script, arguments.clone()).await;
            let holds = !matches!(found, Value::Null | Value::Bool(false)) && found != json!("");
            if holds {
                return found;
            }
            if start.elapsed() > PATIENCE {
                self.fail(what).await;
            }
            tokio::time::sleep(AGAIN).await;
        }
    }

    /// Waits until these words are on the page.
    ///
    /// # Panics
    /// When they do not appear.
    pub async fn see(&self, text: &str) {
        let what = format!("{text:?} is not on the screen");
        let script = "return document.body.innerText.includes(arguments[0])";
        self.until(&what, script, vec![json!(text)]).await;
    }

    /// All that can be read on the page.
    pub async fn read(&self) -> String {
        text(self.script("return document.body.innerText", vec![]).await)
    }

    /// The heading of the screen.
    pub async fn heading(&self) -> String {
        self.text_of(HEADING).await
    }

    /// All that the tag says.
    pub async fn tag(&self) -> String {
        self.text_of(TAG).await
    }

    /// What is still possible, as it is read out.
    pub async fn still_possible(&self) -> String {
        self.text_of(STILL_POSSIBLE).await
    }

    async fn text_of(&self, selector: &str) -> String {
        let script = "return document.querySelector(arguments[0])?.textContent.trim() ?? ''";
        text(self.until(&format!("no {selector}"), script, vec![json!(selector)]).await)
    }

    /// The address of the screen, without what is the same for all.
    pub async fn address(&self) -> String {
        text(self.script("return location.hash", vec![]).await)
    }

    /// Waits until the screen has another address; gives it.
    ///
    /// # Panics
    /// When the screen stays.
    pub async fn leaves(&self, address: &str) -> String {
        let script = "return location.hash !== arguments[0] ? location.hash : null";
        text(
            self.until(&format!("the screen stays at {address}"), script, vec![json!(address)])
                .await,
        )
    }

    /// Goes to an address as a link would, and waits until its screen is there.
    ///
    /// # Panics
    /// When the screen does not come.
    pub async fn go(&self, address: &str) {
        if self.address().await == address {
            return;
        }
        // The app itself may just have gone there, as it does at its start; then there is no way to go.
        let script = "window.hasGone = location.hash === arguments[0];
            addEventListener('popstate', () => { window.hasGone = true; }, { once: true });
            location.hash = arguments[0];";
        self.script(script, vec![json!(address)]).await;
        let script = format!("return window.hasGone && {SHOWN}");
        self.until(&format!("no screen at {address}"), &script, vec![]).await;
    }

    /// Goes one screen back as the system does; gives the address there.
    ///
    /// # Panics
    /// When the screen stays.
    pub async fn system_back(&self) -> String {
        let address = self.address().await;
        self.script("history.back()", vec![]).await;
        self.leaves(&address).await
    }

    /// Loads the page anew: what the record knows and the screen does not yet is shown then.
    ///
    /// # Panics
    /// When the page does not come back.
    pub async fn reload(&self) {
        self.script("window.isOld = true", vec![]).await;
        self.client.refresh().await.expect("the page can be loaded anew");
        let script = format!("return !window.isOld && {SHOWN}");
        self.until("the page does not come back", &script, vec![]).await;
    }

    /// All that can be read on the screen, without the list beside it.
    pub async fn main(&self) -> String {
        text(self.script(&format!("return {SHOWN}"), vec![]).await)
    }

    /// Waits until nothing moves any more and what is new is painted.
    ///
    /// # Panics
    /// When the page does not answer.
    pub async fn settle(&self) {
        // What ends may set something else moving, and what is new moves only from the next frame on.
        let script = "const done = arguments[0];
            const frame = () => new Promise((painted) => requestAnimationFrame(painted));
            const moves = (one) =>
                one.playState === 'running' && one.effect?.getComputedTiming().endTime !== Infinity;
            const rest = async () => {
                await frame();
                await frame();
                const moving = document.getAnimations().filter(moves);
                if (moving.length === 0) return done(true);
                await Promise.allSettled(moving.map((one) => one.finished));
                return rest();
            };
            rest();";
        self.client.execute_async(script, vec![]).await.expect("the page answers");
    }

    /// Keeps a picture of the screen, once it is at rest.
    ///
    /// # Panics
    /// When it cannot be written.
    pub async fn picture(&self, folder: &Path, name: &str) -> PathBuf {
        std::fs::create_dir_all(folder).expect("a folder for pictures");
        self.settle().await;
        let file = folder.join(format!("{name}.png"));
        let bytes = self.client.screenshot().await.expect("the screen can be pictured");
        std::fs::write(&file, bytes).expect("the picture can be written");
        file
    }

    /// Fails the check, saying what is on the screen instead.
    async fn fail(&self, what: &str) -> ! {
        let file = self.picture(&pictures(), "failed").await;
        let (address, read) = (self.address().await, self.read().await);
        panic!("{what}\nat {address}, pictured in {}:\n{read}", file.display());
    }
}

/// The folder for pictures: `COLDCHASSIS_PICTURES`, else beside what is built.
pub fn pictures() -> PathBuf {
    let named = std::env::var_os("COLDCHASSIS_PICTURES").map(PathBuf::from);
    named.unwrap_or_else(|| super::selectors::root().join("target/pictures"))
}

fn text(value: Value) -> String {
    value.as_str().unwrap_or_default().to_owned()
}
