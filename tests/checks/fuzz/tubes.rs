//! Lists of tubes through the one door: what is offered, read and added up is put into words.
//!
//! The reading itself is tried with far more texts in `checks/heaters/odd_text.rs`.

use bolero::check;
use coldchassis_core::workbench::{Code, Workbench};
use serde_json::json;

use super::findings::check_said;
use super::ids::TUBES;
use super::json::wild;
use super::readings::bench;
use super::tally::{Reached, Tally, time};
use super::tape::{Tape, tapes};

const MARKS: [&str; 14] =
    [" ", ", ", "\n", "/", "-", "x", "2x ", "(2) ", "+", "№ ", "\u{0}", "\u{202e}", "=", "…"];

/// A list as somebody copies it off a label, with slips.
fn list(tape: &mut Tape<'_>) -> String {
    let mut text = String::new();
    for _ in 0..tape.below(30) {
        let tube = *tape.pick(&TUBES);
        let cut = tube.len() - usize::from(tape.is(40));
        text.push_str(&tube[..cut]);
        if tape.is(30) {
            text.push(char::from_u32(tape.below(0x3000) as u32).unwrap_or('?'));
        }
        text.push_str(tape.pick::<&str>(&MARKS));
    }
    if tape.is(8) { text.repeat(400) } else { text }
}

fn study(bench: &Workbench, tape: &mut Tape<'_>, text: &str) -> Reached {
    check_said(&json!(bench.find_tubes(text)).to_string());
    let read = bench.read_tubes(text);
    check_said(&json!(read).to_string());
    let names: Vec<&str> = read.iter().map(|tube| tube.name.as_str()).collect();
    let is_wild = tape.is(30);
    let tubes = if is_wild { wild(tape) } else { json!(names) };
    let volts = if tape.is(20) { -1.0 } else { tape.figure(1.0, 1000.0) };
    match bench.study_heaters(tubes, volts, tape.figure(15.0, 400.0)) {
        Ok(view) => {
            // What is said of any text names it, and it may be "NaN".
            if !is_wild {
                check_said(&json!(view).to_string());
            }
            assert!(view.sum_volts.is_finite() && view.line_volts == volts, "{view:?}");
            Reached::Taken
        }
        Err(problem) => {
            assert_eq!(problem.code, Code::BadInput);
            if read.is_empty() { Reached::Nothing } else { Reached::Further }
        }
    }
}

#[test]
fn lists_of_tubes() {
    let tally = Tally::new("tubes");
    let bench = std::sync::Mutex::new(bench());
    let target = check!().with_generator(tapes()).with_test_time(time());
    target.for_each(|bytes: &Vec<u8>| {
        let mut tape = Tape::of(bytes);
        let text = list(&mut tape);
        let bench = bench.lock().unwrap_or_else(std::sync::PoisonError::into_inner);
        tally.count(study(&bench, &mut tape, &text));
    });
    tally.end(60);
}
