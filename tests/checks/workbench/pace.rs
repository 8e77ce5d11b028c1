//! How long an answer takes as a record grows. Printed only: the machine decides, and may be busy.

use std::time::{Duration, Instant};

use serde_json::json;

use super::bench::{Record, begin};

/// Answers in a row, more than an inspector gives to one unit.
const ANSWERS: usize = 500;
/// Answers timed together.
const BATCH: usize = 100;

#[test]
fn five_hundred_answers_in_a_row() {
    let record = Record::stepping(1000);
    let mut door = record.open();
    let inspection = begin(&mut door, &["outside"]);
    let answers = [
        ("plug", ["two_equal_blades", "two_polarised_blades"]),
        ("back", ["fitted", "missing"]),
        ("cord", ["cracked", "sound"]),
        ("selector", ["absent", "present"]),
    ];
    let mut times = Vec::new();
    for count in 0..ANSWERS {
        let (question, choices) = answers[count % answers.len()];
        let answer = choices[count / answers.len() % choices.len()];
        let start = Instant::now();
        let view = door.answer(inspection, question, json!(answer)).unwrap();
        times.push(start.elapsed());
        assert_eq!(view.findings.len(), answers.len().min(count + 1));
    }
    for (at, batch) in times.chunks(BATCH).enumerate() {
        let mean = batch.iter().sum::<Duration>() / u32::try_from(batch.len()).unwrap();
        let most = batch.iter().max().unwrap();
        println!("answers {:>3} on: {mean:.2?} each, at most {most:.2?}", at * BATCH + 1);
    }
    let (events, verdicts) = record.rows();
    println!("{events} events, {verdicts} verdicts");
    assert_eq!(verdicts, i64::try_from(ANSWERS + 1).unwrap());
}
