//! How fast a repair is shown before and after, and how long the search for the shortest stack takes.
//!
//! For units of the golden inspections, each the best of five runs so that other work on the machine does not
//! count; ends with an error where showing one modification before and after takes longer than its bound. One core,
//! release build: `cargo bench -p coldchassis-tests --bench remedies`.

use std::hint::black_box;
use std::process::ExitCode;
use std::time::Duration;

use coldchassis_core::inspection::{Findings, Possible, read_findings};
use coldchassis_core::remedy::{Bench, Modification, Setup, Within, shortest, study};
use coldchassis_figures::{At, Row, Unit};
use coldchassis_tests::pace::best_of_five;
use serde_json::Value;

const BENCH: &str = "Repairs";
/// The longest that one modification before and after may take.
const BEFORE_AFTER: Duration = Duration::from_millis(20);

fn main() -> ExitCode {
    let (mut times, mut slowest) = (Vec::new(), (Duration::ZERO, String::new()));
    let (mut searches, mut studies) = (Vec::new(), Vec::new());
    for (name, findings) in golden() {
        let setup = Setup::of(&findings, &Possible::after(&findings));
        for &one in Modification::ALL {
            let Ok(after) = setup.after(one) else { continue };
            let took = best_of_five(|| {
                let mut bench = Bench::default();
                for setup in [&setup, &after] {
                    let standing = bench.stand(setup);
                    black_box(bench.grid(setup, &standing));
                }
            });
            times.push(took);
            if took > slowest.0 {
                slowest = (took, format!("{} of {name}", one.id()));
            }
        }
        let everything = Within::Everything;
        searches.push(best_of_five(|| {
            black_box(shortest(&setup, everything, &mut Bench::default()));
        }));
        studies.push(best_of_five(|| {
            black_box(study(&setup, &mut Bench::default()));
        }));
    }
    let row = Row::times(BENCH, "one before and after", Unit::Millis, &times);
    let row = row.note(format!("each the best of five; most: {}", slowest.1));
    let is_within = row.at_most(At::Most, Unit::Millis.of(BEFORE_AFTER), 8).tell();
    for (name, took) in [("shortest stack", searches), ("all of them studied", studies)] {
        let row = Row::times(BENCH, name, Unit::Millis, &took);
        row.note("each the best of five").tell();
    }
    if is_within { ExitCode::SUCCESS } else { ExitCode::FAILURE }
}

/// The golden inspections, by name.
fn golden() -> Vec<(String, Findings)> {
    let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/golden");
    let files = std::fs::read_dir(folder).expect("the golden inspections");
    let mut found = Vec::new();
    for file in files.flatten() {
        let path = file.path();
        if path.extension().is_none_or(|kind| kind != "toml") {
            continue;
        }
        let text = std::fs::read_to_string(&path).expect("a golden inspection");
        let table: toml::Table = text.parse().expect("it is TOML");
        let findings: Value = serde_json::to_value(&table["findings"]).expect("findings");
        let name = file.file_name().to_string_lossy().into_owned();
        found.push((name, read_findings(findings).expect("good findings")));
    }
    found
}
