//! From a tap to the next question.

use std::time::Duration;

use coldchassis_app_tests::record::inspected;
use coldchassis_app_tests::selectors::question;
use coldchassis_app_tests::{App, Stage};
use serde_json::json;

const TAP: &str = include_str!("tap.js");
/// A person reads before the next tap; the app may take taps in quick succession for one.
const READING: Duration = Duration::from_millis(400);
/// Everything may be asked.
const ALL_ACCESS: &[&str] = &["outside", "cover_off", "meter"];

/// A tap that led to a question; ms after it.
pub struct Tap {
    /// The page has the core's answer.
    pub answered: f64,
    /// The next question is in the page.
    pub changed: f64,
    /// It is painted: two frames have passed.
    pub painted: f64,
}

/// The first tap in an app that has just started.
pub async fn first(app: &App) -> Tap {
    at_a_question(app).await;
    let tap = tap(app, 0).await;
    tap.expect("the first answer leaves something to ask")
}

/// So many taps that lead to a question, the first one not counted.
pub async fn many(stocked: &Stage, times: usize) -> Vec<Tap> {
    let stage = stocked.copy().await;
    let app = App::start(&stage).await;
    first(&app).await;
    let mut taps = Vec::new();
    // Steps through the answers so that each position is met at each question; 7 is prime to their counts.
    for number in (0..).step_by(7) {
        match tap(&app, number).await {
            Some(tap) => taps.push(tap),
            // A verdict: nothing is left to ask about this unit.
            None => at_a_question(&app).await,
        }
        if taps.len() == times {
            break;
        }
    }
    app.kill().await;
    taps
}

async fn at_a_question(app: &App) {
    let id = inspected(app, "Radio to be tapped through", ALL_ACCESS, &[]).await;
    app.go(&format!("#/i/{id}")).await;
    let script = "return document.querySelector('.card') !== null";
    app.until("no question comes", script, vec![]).await;
    tokio::time::sleep(READING).await;
}

/// One tap; none where it led to a verdict.
async fn tap(app: &App, number: usize) -> Option<Tap> {
    tokio::time::sleep(READING).await;
    let measured =
        app.client.execute_async(TAP, vec![json!(number)]).await.expect("it is measured");
    let figure =
        |name: &str| measured[name].as_f64().unwrap_or_else(|| panic!("no {name} in {measured}"));
    question(measured["to"].as_str().unwrap_or_default())?;
    Some(Tap {
        answered: figure("answered"),
        changed: figure("changed"),
        painted: figure("painted"),
    })
}
