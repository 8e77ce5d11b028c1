//! How fast tubes are looked up, offered while typing, read off a label and added up.
//!
//! Prints median, p99 and the slowest of all inputs, each the best of five runs so that other work on the
//! machine does not count, beside its bound; ends with an error where one is over. One
//! core, release build: `cargo bench -p coldchassis-tests --bench heaters`.

use std::collections::BTreeSet;
use std::hint::black_box;
use std::process::ExitCode;
use std::time::Duration;

use coldchassis_core::heaters::{Tube, catalogue, read_label, study, suggest};
use coldchassis_figures::{At, Row, Unit};
use coldchassis_tests::pace::best_of_five;
use rand::seq::IndexedRandom;
use rand::{Rng, SeedableRng};
use rand_chacha::ChaCha8Rng;

const BENCH: &str = "Tubes";
const SEED: u64 = 20_260_301;
/// The longest that a look-up, or the offers for what was typed so far, may take.
const LOOK_UP: Duration = Duration::from_millis(1);
/// The longest that adding up a list may take.
const ANALYSIS: Duration = Duration::from_micros(50);
/// The longest list whose analysis has that bound, tubes: a television set has fewer.
const LONG_LIST: usize = 40;
/// How many types are offered at once.
const OFFERED: usize = 8;

fn main() -> ExitCode {
    // Tables from data files are read once; that is not what is measured.
    black_box((suggest("1", OFFERED), study(&["12SA7"], 117.0), Tube::of("#47")));
    let mut rng = ChaCha8Rng::seed_from_u64(SEED);
    let typed = typed(&mut rng);
    let mut within = true;
    within &= timed("look-up", &typed, Some(LOOK_UP), |text| {
        black_box(Tube::of(black_box(text)));
    });
    within &= timed("type-ahead", &typed, Some(LOOK_UP), |text| {
        black_box(suggest(black_box(text), OFFERED));
    });
    timed("label", &labels(&mut rng), None, |text| {
        black_box(read_label(black_box(text)));
    });
    for tubes in [5, 12, LONG_LIST] {
        let name = format!("analysis of {tubes} tubes");
        let lists: Vec<Vec<&str>> = (0..1000).map(|_| list(tubes, &mut rng)).collect();
        within &= timed(&name, &lists, Some(ANALYSIS), |list| {
            black_box(study(black_box(list), 117.0));
        });
    }
    if within { ExitCode::SUCCESS } else { ExitCode::FAILURE }
}

/// Times every input, prints the figures, and says whether the slowest is within its bound.
fn timed<T: std::fmt::Debug>(
    name: &str,
    inputs: &[T],
    bound: Option<Duration>,
    run: impl Fn(&T),
) -> bool {
    let mut times: Vec<(Duration, &T)> =
        inputs.iter().map(|input| (best_of_five(|| run(input)), input)).collect();
    times.sort_by_key(|(time, _)| *time);
    let which = times.last().map(|(_, input)| format!("{input:?}")).unwrap_or_default();
    let shown: String = which.chars().take(40).collect();
    let times: Vec<Duration> = times.into_iter().map(|(time, _)| time).collect();
    let row = Row::times(BENCH, name, Unit::Micros, &times);
    let row = row.note(format!("each the best of five; most: `{shown}`"));
    let bounded = |bound| row.clone().at_most(At::Most, Unit::Micros.of(bound), 4);
    bound.map_or_else(|| row.clone(), bounded).tell()
}

/// What may stand in the field: every beginning of every name, mistakes, and what is no type at all.
fn typed(rng: &mut ChaCha8Rng) -> Vec<String> {
    let names: Vec<&str> = catalogue().iter().flat_map(|tube| tube.names()).collect();
    let mut all: BTreeSet<String> = BTreeSet::new();
    for name in &names {
        let letters: Vec<char> = name.chars().collect();
        all.extend((1..=letters.len()).map(|length| letters[..length].iter().collect::<String>()));
        all.insert(format!("{name}Q"));
        let mut mistaken = letters.clone();
        mistaken[rng.random_range(0..letters.len())] =
            *['Q', '0', 'O', 'I', '5', 'S', 'Ж'].choose(rng).expect("letters");
        all.insert(mistaken.into_iter().collect());
    }
    let nothing = ["", " ", "?", "Q", "QQQQ", "0000", "####", "180 ohm", "lamp", "#", "UX-", "Ж"];
    all.extend(nothing.map(str::to_owned));
    for piece in ["Q", "1", "12SK7", "Ж", "ß", " ", "O0", "1L", "é"] {
        all.extend([4, 24, 25, 1000, 100_000].map(|times| piece.repeat(times)));
    }
    all.into_iter().collect()
}

/// Labels of five to twelve tubes in different spellings, and a few that are as long as is read.
fn labels(rng: &mut ChaCha8Rng) -> Vec<String> {
    let marks = [" ", ", ", "\n", " / ", "; "];
    let mut all: Vec<String> = (0..500)
        .map(|_| {
            let tubes = rng.random_range(5..=12);
            list(tubes, rng).join(marks.choose(rng).expect("marks"))
        })
        .collect();
    all.extend(["Q", "12 ", "50 L6 GT ", "12SK7/", "x", "(x2) "].map(|piece| piece.repeat(4000)));
    all
}

fn list(tubes: usize, rng: &mut ChaCha8Rng) -> Vec<&'static str> {
    (0..tubes).map(|_| catalogue().choose(rng).expect("types").name.as_str()).collect()
}
