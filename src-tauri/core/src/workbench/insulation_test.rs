//! The insulation test of an inspection, in words.

use uuid::Uuid;

use super::bench_test_views::InsulationView;
use super::error::Problem;
use super::session::Workbench;
use crate::inspection::{
    Findings, INSULATION_VOLTS, InsulationGate, InsulationMeaning, Reading, ReadingId,
    insulation_gate, insulation_meaning,
};
use crate::words::{Message, Words, milliamperes, ohms, volts};

impl Workbench {
    /// The insulation test of an inspection: whether it may be used, how, and what its value means.
    ///
    /// # Errors
    /// There is no such inspection, or the record cannot be read.
    pub fn insulation_test(&self, inspection: Uuid) -> Result<InsulationView, Problem> {
        let (inspection, unit) = self.find(inspection)?;
        let findings = self.read(&inspection, &unit)?;
        Ok(view(&findings, &self.words))
    }
}

fn view(findings: &Findings, words: &Words) -> InsulationView {
    let gate = insulation_gate(findings);
    let say = |id: &str| words.say_id(id);
    let steps = Message::new("insulation-step-test").text("volts", volts(INSULATION_VOLTS.value));
    InsulationView {
        cautions: ["insulation-qualified", "insulation-unplug", "readings-discharge"]
            .map(say)
            .to_vec(),
        refused: refused(&gate, words),
        first: gate.capacitor.then(|| say("insulation-lift-capacitor")),
        steps: vec![
            say("insulation-step-join"),
            words.say(&steps),
            say("insulation-step-discharge"),
        ],
        kept: kept(findings, words),
        means: means(findings, &gate, words),
    }
}

/// What cannot be put right on the bench; a capacitor can be lifted.
fn refused(gate: &InsulationGate, words: &Words) -> Vec<String> {
    let ways = gate.ways.iter().map(|way| Message::new(format!("way-{}", way.id()))).collect();
    let ways = Message::new("insulation-refused-ways").list("ways", ways);
    let alone = |holds: bool, id: &str| holds.then(|| Message::new(id));
    let reasons = [
        alone(gate.conflict, "insulation-refused-conflict"),
        alone(gate.no_line, "insulation-refused-no_line"),
        (!gate.ways.is_empty()).then_some(ways),
        alone(gate.no_metal && !gate.no_line, "insulation-refused-no_metal"),
        alone(gate.no_meter, "touch-refused-no_meter"),
    ];
    reasons.into_iter().flatten().map(|reason| words.say(&reason)).collect()
}

fn kept(findings: &Findings, words: &Words) -> Option<String> {
    let reading = findings.readings.get(&ReadingId::InsulationMegohms)?;
    Some(match reading {
        Reading::Value(megohms) => words.write(&ohms(megohms * 1e6)),
        Reading::OverRange => words.say_id("reading-over-range"),
    })
}

fn means(findings: &Findings, gate: &InsulationGate, words: &Words) -> Vec<String> {
    let Some(meaning) = insulation_meaning(findings) else { return Vec::new() };
    let reading = findings.readings.get(&ReadingId::InsulationMegohms);
    let nothing = gate.says_nothing() && meaning != InsulationMeaning::Rejected;
    let meaning = match (meaning, reading) {
        // A bad value forbids power whatever it was read of; any other says nothing here.
        (InsulationMeaning::Rejected, _) => "insulation-means-rejected".to_owned(),
        _ if nothing => "insulation-says-nothing".to_owned(),
        (_, Some(Reading::OverRange)) => "insulation-over-range".to_owned(),
        (meaning, _) => format!("insulation-means-{}", meaning.id()),
    };
    let leak = match reading {
        Some(Reading::Value(megohms)) if *megohms > LEAST_SHOWN && !nothing => {
            let highest = findings.supply.volts_max;
            let leak = Message::new("insulation-leak")
                .text("current", milliamperes(highest / (megohms * 1e6) * 1000.0))
                .text("volts", volts(highest));
            Some(words.say(&leak))
        }
        _ => None,
    };
    let apart = gate.capacitor.then(|| words.say_id("insulation-capacitor-apart"));
    let class = (!nothing).then(|| words.say_id("insulation-not-class"));
    [Some(words.say_id(&meaning)), leak, apart, class].into_iter().flatten().collect()
}

/// Below this a leak is that of a dead short and its figure says nothing, MΩ.
const LEAST_SHOWN: f64 = 1e-4;
