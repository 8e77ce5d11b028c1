//! How fast the readings of an arrangement are predicted and the readings of a unit are weighed.
//!
//! The slowest of all arrangements, each the best of five runs so that other work on the machine does not
//! count, beside its bound; ends with an error where it is over. One core, release build:
//! `cargo bench -p coldchassis-tests --bench readings`.

use std::hint::black_box;
use std::process::ExitCode;
use std::time::Duration;

use coldchassis_core::arrangement::{
    Arrangement, DirectParts, ReadingId, Values, all, reading_range,
};
use coldchassis_core::inspection::{Findings, possible, read_findings};
use coldchassis_figures::{At, Row, Unit};
use coldchassis_tests::pace::best_of_five;
use serde_json::json;

const BENCH: &str = "Meter readings";
/// The longest that all readings of one arrangement may take.
const ALL_READINGS: Duration = Duration::from_micros(20);

fn main() -> ExitCode {
    let parts = DirectParts::sound(&Values::default());
    let times: Vec<Duration> =
        all().iter().map(|arrangement| best_of_five(|| predict(arrangement, &parts))).collect();
    let row = Row::times(BENCH, "all 12 of each arrangement", Unit::Micros, &times);
    let row = row.note("each the best of five");
    let is_within = row.at_most(At::Most, Unit::Micros.of(ALL_READINGS), 5).tell();
    let findings = findings();
    // What depends on no reading is worked out once; that is not what is measured.
    black_box(possible(&findings));
    let weighed = best_of_five(|| {
        black_box(possible(&findings));
    });
    let weighed = Row::times(BENCH, "12 weighed", Unit::Micros, &[weighed]);
    weighed.note("the best of five").tell();
    if is_within { ExitCode::SUCCESS } else { ExitCode::FAILURE }
}

fn predict(arrangement: &Arrangement, parts: &DirectParts) {
    for id in ReadingId::ohmmeter() {
        black_box(reading_range(black_box(arrangement), id, parts));
    }
}

fn findings() -> Findings {
    let file = json!({
        "supply": {"volts": 120, "hertz": 60},
        "access": ["outside", "cover_off", "meter"],
        "answers": {"plug": "three_pins", "kind": "instrument_amplifier", "earth_lift": "absent"},
        "readings": {
            "ohms_a_b_on": 4.2, "ohms_a_b_off": "OL",
            "ohms_a_chassis_on": "OL", "ohms_a_chassis_off": "OL",
            "ohms_b_chassis_on": "OL", "ohms_b_chassis_off": "OL", "ohms_earth_chassis": 0.3,
            "ohms_a_part_on": "OL", "ohms_a_part_off": "OL",
            "ohms_b_part_on": "OL", "ohms_b_part_off": "OL", "ohms_earth_part": 0.3,
        },
    });
    read_findings(file).expect("a valid file")
}
