//! Any sequence of commands: the verdict is that of what is found in the end, and can be repeated.

use coldchassis_core::inspection::{Question, Shape, ValueId};
use coldchassis_core::workbench::{InspectionView, Workbench};
use proptest::prelude::*;
use proptest::test_runner::RngSeed;
use serde_json::{Value, json};
use uuid::Uuid;

use super::bench::{Found, Record, begin, json_of, seen, usual_supply};

/// Something that is done. Numbers choose among what is possible when it is done.
#[derive(Clone, Debug)]
enum Deed {
    Answer { question: usize, pick: u32 },
    Value { value: usize, size: f64, measured: bool },
    Withdraw { which: usize },
    Access { cover_off: bool, meter: bool },
    Supply { which: usize },
    Undo,
    Reopen,
}

fn deed() -> impl Strategy<Value = Deed> {
    prop_oneof![
        8 => (0..Question::ALL.len(), any::<u32>())
            .prop_map(|(question, pick)| Deed::Answer { question, pick }),
        2 => (0..ValueId::ALL.len(), 0.0..1.0, any::<bool>())
            .prop_map(|(value, size, measured)| Deed::Value { value, size, measured }),
        2 => any::<usize>().prop_map(|which| Deed::Withdraw { which }),
        1 => any::<(bool, bool)>()
            .prop_map(|(cover_off, meter)| Deed::Access { cover_off, meter }),
        1 => any::<usize>().prop_map(|which| Deed::Supply { which }),
        4 => Just(Deed::Undo),
        1 => Just(Deed::Reopen),
    ]
}

/// One of the answers that a question takes.
fn an_answer(question: Question, pick: u32) -> Value {
    let entry = question.entry();
    let count = u32::try_from(entry.answers.len()).expect("few answers");
    let chosen = |at: u32| entry.answers[at as usize];
    match entry.shape {
        Shape::Tubes => json!("cant_tell"),
        Shape::Number => json!(pick % 61),
        Shape::One if pick % (count + 1) == count => json!("cant_tell"),
        Shape::One => json!(chosen(pick % (count + 1))),
        Shape::Several if pick % 8 == 7 => json!("cant_tell"),
        // The first stands alone; of the others, any that their bit picks.
        Shape::Several => {
            let some: Vec<&str> =
                (1..count).filter(|at| pick >> (at + 3) & 1 == 1).map(chosen).collect();
            if some.is_empty() { json!([chosen(0)]) } else { json!(some) }
        }
    }
}

/// A value on a scale of sizes: 100 pF to 1 µF, 1 kΩ to 10 MΩ.
fn a_value(value: ValueId, size: f64, measured: bool) -> Value {
    match value {
        ValueId::NetworkResistor => {
            json!({"ohms": 10f64.powf(3.0 + 4.0 * size), "measured": measured})
        }
        _ => json!({"farads": 10f64.powf(-10.0 + 4.0 * size), "measured": measured}),
    }
}

fn a_supply(which: usize) -> Value {
    let supplies = [
        usual_supply(),
        json!({"volts": 230, "hertz": 50}),
        json!({"volts": 240, "hertz": 60, "feed": "both_hot"}),
    ];
    supplies[which % supplies.len()].clone()
}

/// A run: the record, what should be found, and what was found and shown before each command.
struct Run {
    record: Record,
    door: Workbench,
    inspection: Uuid,
    found: Found,
    before: Vec<(Found, Value)>,
    views: Vec<String>,
}

impl Run {
    fn new() -> Self {
        // The clock stands still, so that a view put back is the same to the byte.
        let record = Record::fixed();
        let mut door = record.open();
        let inspection = begin(&mut door, &["outside"]);
        let found = Found::nothing(&["outside"]);
        Self { record, door, inspection, found, before: Vec::new(), views: Vec::new() }
    }

    fn of(deeds: &[Deed]) -> Self {
        let mut run = Self::new();
        for deed in deeds {
            run.act(deed);
            let view = run.view();
            run.views.push(serde_json::to_string(&view).expect("a view is JSON"));
        }
        run
    }

    fn view(&mut self) -> InspectionView {
        self.door.inspection(self.inspection).expect("an inspection")
    }

    fn act(&mut self, deed: &Deed) {
        match *deed {
            Deed::Answer { question, pick } => {
                let question = Question::ALL[question];
                let answer = an_answer(question, pick);
                self.change(|found| {
                    found.findings.insert(format!("answers.{}", question.id()), answer.clone());
                });
                self.shows(|door, id| door.answer(id, question.id(), answer));
            }
            Deed::Value { value, size, measured } => {
                let value = ValueId::ALL[value];
                let given = a_value(value, size, measured);
                self.change(|found| {
                    found.findings.insert(format!("values.{}", value.id()), given.clone());
                });
                self.shows(|door, id| door.set_value(id, value.id(), given));
            }
            Deed::Withdraw { which } => {
                let paths: Vec<String> = self.found.findings.keys().cloned().collect();
                if let Some(path) = paths.get(which % paths.len().max(1)) {
                    self.change(|found| {
                        found.findings.remove(path);
                    });
                    self.shows(|door, id| door.withdraw(id, path));
                }
            }
            Deed::Access { cover_off, meter } => {
                let given = [(true, "outside"), (cover_off, "cover_off"), (meter, "meter")];
                let access: Vec<String> = given
                    .into_iter()
                    .filter(|(is_given, _)| *is_given)
                    .map(|(_, id)| id.to_owned())
                    .collect();
                self.change(|found| found.access.clone_from(&access));
                self.shows(|door, id| door.set_access(id, &access));
            }
            Deed::Supply { which } => {
                let supply = a_supply(which);
                self.change(|found| found.supply = supply.clone());
                self.shows(|door, id| door.set_supply(id, supply));
            }
            Deed::Undo => self.undo(),
            Deed::Reopen => self.reopen(),
        }
    }

    fn change(&mut self, change: impl FnOnce(&mut Found)) {
        let shown = seen(&mut self.door, self.inspection);
        self.before.push((self.found.clone(), shown));
        change(&mut self.found);
    }

    /// Runs a command; what it gives must be what the record then shows.
    fn shows<E: std::fmt::Debug>(
        &mut self,
        command: impl FnOnce(&mut Workbench, Uuid) -> Result<InspectionView, E>,
    ) {
        let given = command(&mut self.door, self.inspection).expect("a good command");
        assert_eq!(json_of(&given), seen(&mut self.door, self.inspection));
    }

    /// Takes back the last command, but never the creation of the unit.
    fn undo(&mut self) {
        if let Some((found, shown)) = self.before.pop() {
            let view = self.door.undo(self.inspection).expect("undo works").expect("it undoes");
            assert!(json_of(&view) == shown, "undo gives another view than the one before");
            self.found = found;
        }
    }

    fn reopen(&mut self) {
        let before = seen(&mut self.door, self.inspection);
        // One connection at a time: the old one goes before the new one looks at the file.
        let nothing = Workbench::in_memory(self.record.around("nowhere")).expect("a record");
        drop(std::mem::replace(&mut self.door, nothing));
        self.door = self.record.open();
        assert_eq!(seen(&mut self.door, self.inspection), before);
    }
}

/// Runs are repeatable unless `PROPTEST_RNG_SEED` says otherwise; `PROPTEST_CASES` makes them longer.
fn settings() -> ProptestConfig {
    let usual = ProptestConfig::default();
    let longer = std::env::var_os("PROPTEST_CASES").is_some();
    ProptestConfig {
        cases: if longer { usual.cases } else { 64 },
        failure_persistence: None,
        rng_seed: match usual.rng_seed {
            RngSeed::Random => RngSeed::Fixed(20_260_102),
            fixed => fixed,
        },
        ..usual
    }
}

proptest! {
    #![proptest_config(settings())]

    #[test]
    fn the_verdict_is_that_of_what_is_found_in_the_end(
        deeds in prop::collection::vec(deed(), 1..14),
    ) {
        let mut run = Run::of(&deeds);
        let view = run.view();
        run.found.assert_agrees(&run.door, &view);

        // The same again, with the same clock and ids, gives the same bytes.
        prop_assert_eq!(Run::of(&deeds).views, run.views);
    }
}
