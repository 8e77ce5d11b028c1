//! The ids that code and user interface build by filling in a pattern, from the lists of the core.

use coldchassis_core::arrangement::{
    Cord, Fault, Isolation, LineCapacitor, LineCapacitorClass, NearPin, Part, Probe, Reach,
    Selector, Switch, SwitchLeg,
};
use coldchassis_core::body::{ChargeLimit, Curve, Zone};
use coldchassis_core::figure::Source;
use coldchassis_core::hazard::{Class, Severity, Signal};
use coldchassis_core::heaters::{Reading, TubeRole, sources};
use coldchassis_core::inspection::{
    Access, Basis, InsulationMeaning, OverlayId, Protection, Question, ReadingId, TouchPart,
    TouchPosition, Trap, ValueId,
};
use coldchassis_core::photo::Hint;
use coldchassis_core::remedy::{
    Blind, Device, Modification, PartKind, ProofLine, ProofMark, Refusal, Who,
};
use coldchassis_core::store::WorkState;
use coldchassis_core::supply::{Feed, PRESETS, Region, WireCode};
use coldchassis_core::workbench::CellLevel;

/// A pattern, the ids it becomes, and the variables that whoever says such a message provides.
pub struct Expansion {
    /// The pattern, a `{}` for each part that is filled in.
    pub pattern: &'static str,
    /// The ids.
    pub ids: Vec<String>,
    /// The variables.
    pub variables: &'static [&'static str],
}

fn of(pattern: &'static str, parts: &[&str]) -> Expansion {
    let ids = parts.iter().map(|part| pattern.replace("{}", part)).collect();
    Expansion { pattern, ids, variables: &[] }
}

/// Fills the two placeholders of a pattern with every pair.
fn pairs(pattern: &'static str, firsts: &[&str], seconds: &[&str]) -> Expansion {
    let fill =
        |first: &&str, second: &&str| pattern.replacen("{}", first, 1).replacen("{}", second, 1);
    let ids = firsts.iter().flat_map(|first| seconds.iter().map(move |second| fill(first, second)));
    Expansion { pattern, ids: ids.collect(), variables: &[] }
}

/// Every pattern that code or user interface may fill in.
pub fn expansions() -> Vec<Expansion> {
    [
        questions(),
        values_and_readings(),
        classes(),
        reasons(),
        cautions(),
        factors(),
        lists(),
        help(),
        heaters(),
        readings(),
        bench_tests(),
        chart(),
        photos(),
        repairs(),
        queue(),
    ]
    .into_iter()
    .flatten()
    .collect()
}

/// What repairs change.
fn repairs() -> Vec<Expansion> {
    vec![
        of("remedy-{}", Modification::IDS),
        of("remedy-{}-does", Modification::IDS),
        of("remedy-{}-not", Modification::IDS),
        of("refusal-{}", Refusal::IDS),
        of("device-{}", Device::IDS),
        of("blind-{}", Blind::IDS),
        of("feed-{}", Feed::IDS),
        of("feed-{}-tell", Feed::IDS),
        of("part-need-{}", PartKind::IDS),
        of("proof-{}", ProofLine::IDS),
        of("proof-{}-how", ProofLine::IDS),
        of("proof-{}-caution", ProofLine::IDS),
        of("proof-who-{}", Who::IDS),
        of("proof-mark-{}", ProofMark::IDS),
        of("report-basis-{}", Basis::IDS),
        of("source-{}", &["appliance_testing", "ul_101", "typical_values", "class_y_limit"]),
        of("figure-source-{}", &Source::ALL.map(Source::id)),
        of("source-mark-{}", &["verified", "memory", "common", "computed", "assumption"]),
    ]
}

/// What speaks for taking a photo again.
fn photos() -> Vec<Expansion> {
    let hints: Vec<&str> = Hint::ALL.iter().map(|hint| hint.id()).collect();
    vec![of("photo-hint-{}", &hints)]
}

/// How far the work on a unit has come.
fn queue() -> Vec<Expansion> {
    vec![of("work-{}", WorkState::IDS)]
}

/// The orders of asking that are simulated.
const ORDERS: [&str; 6] =
    ["engine", "edges_only", "bank", "information", "information_per_second", "random"];

fn questions() -> Vec<Expansion> {
    let ids = Question::IDS;
    let answers = Question::ALL.iter().flat_map(|question| {
        let of = move |answer: &&str| format!("answer-{}-{answer}", question.id());
        question.entry().answers.iter().map(of)
    });
    vec![
        of("question-{}", ids),
        of("question-{}-why", ids),
        of("question-{}-how", ids),
        of("finding-{}", ids),
        Expansion { pattern: "answer-{}-{}", ids: answers.collect(), variables: &[] },
        of("answer-{}", &["cant_tell"]),
        of("answer-kind-{}", Question::Kind.entry().answers),
        of("reach-by-{}", Access::IDS),
        of("order-{}", &ORDERS),
        of("place-{}", &["shafts", "screws", "trim", "sockets", "tonearm", "cabinet"]),
    ]
}

/// The commands and options of the command line.
fn help() -> Vec<Expansion> {
    let own = [
        "assess-file",
        "remedies-file",
        "exposure-file",
        "readings-file",
        "exposure-skin",
        "exposure-percentile",
        "exposure-path",
        "heaters-types",
        "heaters-volts",
        "heaters-hertz",
        "simulate-units",
        "simulate-seed",
        "inspect-record",
        "inspect-supply",
        "inspect-access",
        "inspect-name",
        "list-record",
    ];
    let own = own.map(|one| format!("help-{one}")).to_vec();
    vec![
        of(
            "help-{}",
            &[
                "coldchassis",
                "assess",
                "exposure",
                "readings",
                "remedies",
                "heaters",
                "simulate",
                "demo",
                "inspect",
                "list",
                "help",
            ],
        ),
        of("help-any-{}", &["lang", "json", "help", "version"]),
        Expansion { pattern: "help-{}-{}", ids: own, variables: &[] },
    ]
}

/// What the terminal and the lists fill in.
fn lists() -> Vec<Expansion> {
    let presets: Vec<&str> = PRESETS.iter().map(|preset| preset.id).collect();
    vec![
        of("preset-{}", &presets),
        pairs("region-{}-{}", &["name", "plugs", "protection"], Region::IDS),
        pairs("wire-{}-{}", &["line", "neutral", "earth"], WireCode::IDS),
        of("wire-line-{}", WireCode::IDS),
        of("wire-neutral-{}", WireCode::IDS),
        of("wire-earth-{}", WireCode::IDS),
        of("exposure-{}", &["first", "second"]),
        of("exposure-selector-{}", &["near", "far"]),
        of("state-switch-{}", &["on", "off"]),
    ]
}

fn heaters() -> Vec<Expansion> {
    let readings: Vec<&str> =
        Reading::IDS.iter().copied().chain(["nothing", "string_tubes"]).collect();
    let sums = [
        "nothing",
        "over",
        "under",
        "even",
        "dropper",
        "barretter",
        "branches",
        "rectified",
        "parallel",
        "battery",
        "undecided",
    ];
    let sources: Vec<&str> = sources().iter().map(|source| source.id.as_str()).collect();
    let doubts = [
        "low_certainty",
        "from_number",
        "volts_between",
        "amperes_between",
        "odd_current",
        "two_names",
        "tap",
        "span",
        "suffix",
        "by_rule",
    ];
    let with = |expansion: Expansion, variables| Expansion { variables, ..expansion };
    vec![
        of("heaters-{}", &readings),
        of("heaters-suggests-{}", &readings),
        with(of("heaters-sum-{}", &sums), &["sum", "path", "line", "left", "share"]),
        of("heaters-unproved-{}", &["metal", "isolated", "plate", "both", "label"]),
        of("tube-role-{}", TubeRole::IDS),
        of("tube-mark-{}", &["verified", "memory_high", "memory_medium", "memory_low"]),
        of("tube-source-{}", &sources),
        with(of("doubt-{}", &doubts), &["low", "high"]),
    ]
}

fn values_and_readings() -> Vec<Expansion> {
    let values: Vec<&str> = ValueId::IDS.iter().copied().chain(["rated"]).collect();
    vec![
        of("value-{}", &values),
        of("value-{}-why", &values),
        of("value-{}-how", &values),
        of("finding-value-{}", &values),
        of("reading-{}", ReadingId::IDS),
        of("finding-{}", ReadingId::IDS),
    ]
}

fn readings() -> Vec<Expansion> {
    let ohmmeter: Vec<&str> = ReadingId::ohmmeter().map(ReadingId::id).collect();
    let places: Vec<&str> =
        Probe::IDS.iter().copied().filter(|id| !matches!(*id, "pin_a" | "pin_b")).collect();
    let on_pin = of("way-on-pin-{}", NearPin::IDS);
    vec![
        of("reading-title-{}", &ohmmeter),
        of("reading-how-switch-{}", Switch::IDS),
        of("readings-first-{}", &["plug", "kind", "earth_lift"]),
        of("probe-{}", &places),
        pairs("pin-{}-{}", NearPin::IDS, &["wide", "neutral", "taped", "ends"]),
        of("way-{}", Isolation::IDS),
        Expansion { variables: &["way"], ..on_pin },
        of("trap-{}", Trap::IDS),
    ]
}

fn bench_tests() -> Vec<Expansion> {
    let positions: Vec<&str> =
        TouchPosition::IDS.iter().copied().chain(["only_on", "only_off"]).collect();
    let parts: Vec<String> = TouchPart::all().map(TouchPart::key).collect();
    let parts: Vec<&str> = parts.iter().map(String::as_str).collect();
    let levels = of("charge-level-{}", &["low", "plug", "empty"]);
    vec![
        Expansion { variables: &["volts"], ..levels },
        of("charge-limit-{}", ChargeLimit::IDS),
        of("insulation-means-{}", InsulationMeaning::IDS),
        of("touch-protection-{}", Protection::IDS),
        of("touch-protection-{}-says", Protection::IDS),
        of("touch-position-{}", &positions),
        of("finding-live_test-{}", &parts),
    ]
}

fn chart() -> Vec<Expansion> {
    let lines = of("chart-line-{}", Curve::IDS);
    let marks = ["verified", "memory_high", "memory_medium", "memory_low"];
    vec![
        Expansion { variables: &["mark"], ..lines },
        of("chart-mark-{}", &marks),
        of("chart-zone-{}", Zone::IDS),
        of("chart-zone-{}-brief", Zone::IDS),
        of("chart-zone-{}-what", Zone::IDS),
    ]
}

fn classes() -> Vec<Expansion> {
    let other_than_live: Vec<&str> =
        Class::IDS.iter().copied().filter(|id| *id != Class::Live.id()).collect();
    vec![
        of("class-{}", Class::IDS),
        of("class-{}-short", Class::IDS),
        of("class-{}-inline", Class::IDS),
        pairs("tag-{}-{}", Class::IDS, Basis::IDS),
        of("permission-{}", &other_than_live),
        pairs("permission-{}-{}", &[Class::Live.id()], Basis::IDS),
        of("signal-{}", Signal::IDS),
        of("severity-{}", Severity::IDS),
        of("outcome-{}", &["breaker_trips", "behind_barrier"]),
    ]
}

fn reasons() -> Vec<Expansion> {
    // A live verdict with a current has two messages of its own; no line has one for both bases.
    let stems = ["line_on_earth", "leaky", "one_fault", "two_faults", "three_faults"];
    let mut reasons = pairs("reason-{}{}", &stems, &["", "-not_ruled_out"]);
    reasons.variables = &["current", "leak", "fault"];
    vec![reasons]
}

const FORBIDDING: &[&str] = &["line_on_earth", "damaged_cord", "filter_capacitors", "wrong_supply"];

fn cautions() -> Vec<Expansion> {
    let mut overlays = of("overlay-{}", OverlayId::IDS);
    // Only the leak through the earth wire says a figure; saying random verdicts finds any other.
    overlays.variables = &["current"];
    vec![
        overlays,
        of("overlay-{}-why", OverlayId::IDS),
        // Those that forbid power, whatever the class.
        of("overlay-{}-name", FORBIDDING),
        of("fault-{}", Fault::IDS),
        of("fault-{}-what", Fault::IDS),
        of("part-{}", Part::IDS),
    ]
}

fn factors() -> Vec<Expansion> {
    vec![
        of("isolation-{}", Isolation::IDS),
        of("cord-{}", Cord::IDS),
        of("near_pin-{}", NearPin::IDS),
        of("line_capacitor-{}", LineCapacitor::IDS),
        of("line_capacitor_class-{}", LineCapacitorClass::IDS),
        of("switch_leg-{}", SwitchLeg::IDS),
        of("reach-{}", Reach::IDS),
        of("state-selector-{}", Selector::IDS),
        of("cell-{}", CellLevel::IDS),
        // The factors that `Arrangement::contradiction` can name.
        of("takes-possible-{}", &["near_pin", "line_capacitor", "line_capacitor_class", "reach"]),
    ]
}
