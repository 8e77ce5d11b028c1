//! Physical units are measured, and the readings held against the arrangements: the one that the unit
//! truly is must never go. 2,000 units by default; `COLDCHASSIS_METERED` sets another number.

use std::collections::BTreeMap;

use coldchassis_core::arrangement::{ArrangementId, Isolation, find, read_exposure};
use coldchassis_core::hazard::Class;
use coldchassis_core::inspection::{Findings, Judge, Possible, assess, possible, read_findings};
use coldchassis_core::simulation::unit::{
    Condition, Meter, PhysicalUnit, random_readings, random_subset,
};
use coldchassis_tests::seeds::{asked, on_all_threads};
use rand::SeedableRng;
use rand_chacha::ChaCha8Rng;
use serde_json::{Map, Value, json};

pub fn units() -> u64 {
    asked("COLDCHASSIS_METERED", 2_000)
}

/// The answers that bear on what readings prove; nobody measures without having looked at these.
const LOOKED_AT: [&str; 6] = ["plug", "kind", "earth_lift", "bare_metal", "back", "terminals"];

pub fn findings(
    unit: &PhysicalUnit,
    told: &[(String, Value)],
    readings: &[(String, Value)],
    meter: &Meter,
    access: &[&str],
) -> Findings {
    let mut file = unit.findings(told, &unit.supply(), access);
    file["readings"] = Value::Object(readings.iter().cloned().collect::<Map<_, _>>());
    file["meter"] = meter.json();
    read_findings(file).expect("truthful findings are a valid file")
}

fn true_id(unit: &PhysicalUnit) -> ArrangementId {
    let file = read_exposure(unit.arrangement()).expect("a unit is a valid arrangement");
    find(&file.arrangement).expect("it exists")
}

/// What was found over all units.
#[derive(Default)]
struct Counts {
    removed: Vec<String>,
    in_set: u64,
    removing: u64,
    by_isolation: BTreeMap<Isolation, Left>,
}

/// How many arrangements are left after each reading in its turn, summed over units.
#[derive(Default, Clone)]
struct Left {
    units: u64,
    after: Vec<u64>,
}

impl Counts {
    fn measure(&mut self, seed: u64) {
        let mut rng = ChaCha8Rng::seed_from_u64(seed);
        let unit = PhysicalUnit::random(&mut rng);
        let condition = Condition::random(&unit, &mut rng);
        let meter = Meter::random(&mut rng);
        let answers = unit.answers(&mut rng);
        let told = random_subset(&answers, &mut rng);
        let all = unit.readings(&condition, &meter, &mut rng);
        let taken = random_readings(&all, &mut rng);
        let id = true_id(&unit);
        let with = |readings: &[(String, Value)]| {
            findings(&unit, &told, readings, &meter, &["outside", "cover_off", "meter"])
        };
        let before = possible(&with(&[]));
        if before.contains(id) {
            self.in_set += 1;
            for readings in [&taken, &all] {
                let after = possible(&with(readings));
                self.removing += u64::from(after.len() < before.len());
                if !after.contains(id) {
                    let readings = json!(readings.iter().cloned().collect::<Map<_, _>>());
                    let (what, true_ohms) = (unit.arrangement(), unit.true_ohms(&condition));
                    self.removed.push(format!(
                        "seed {seed}: {what}\n{told:?}\n{readings}\n{true_ohms:?}\n{condition:?}"
                    ));
                }
            }
        }
        self.count_left(&unit, &answers, &meter, &all);
    }

    /// After the looks that bear on readings, one reading after the other, from the chassis.
    fn count_left(
        &mut self,
        unit: &PhysicalUnit,
        answers: &[(String, Value)],
        meter: &Meter,
        all: &[(String, Value)],
    ) {
        const ORDER: [&str; 7] = [
            "ohms_a_b_on",
            "ohms_a_b_off",
            "ohms_earth_chassis",
            "ohms_a_chassis_on",
            "ohms_b_chassis_on",
            "ohms_a_chassis_off",
            "ohms_b_chassis_off",
        ];
        let file = read_exposure(unit.arrangement()).expect("a valid arrangement");
        let left = self.by_isolation.entry(file.arrangement.isolation).or_default();
        let looked: Vec<_> = answers
            .iter()
            .filter(|(id, _)| LOOKED_AT[..3].contains(&id.as_str()))
            .cloned()
            .collect();
        left.units += 1;
        left.after.resize(ORDER.len() + 1, 0);
        let mut taken = Vec::new();
        for step in 0..=ORDER.len() {
            if let Some(id) = step.checked_sub(1).and_then(|place| ORDER.get(place)) {
                taken.extend(all.iter().filter(|(reading, _)| reading == id).cloned());
            }
            let found = findings(unit, &looked, &taken, meter, &["outside", "cover_off", "meter"]);
            left.after[step] += possible(&found).len() as u64;
        }
    }

    fn add(&mut self, other: Self) {
        self.removed.extend(other.removed);
        self.in_set += other.in_set;
        self.removing += other.removing;
        for (isolation, more) in other.by_isolation {
            let left = self.by_isolation.entry(isolation).or_default();
            left.units += more.units;
            left.after.resize(more.after.len(), 0);
            left.after.iter_mut().zip(more.after).for_each(|(sum, count)| *sum += count);
        }
    }
}

#[test]
fn readings_never_remove_what_the_unit_truly_is() {
    let counts: Counts = on_all_threads(units(), Counts::measure, Counts::add);
    println!(
        "{} units, {} with the truth still possible, readings removed something {} times",
        units(),
        counts.in_set,
        counts.removing
    );
    println!(
        "left on average: plug, kind and lift | pins on, off | earth | A on, B on, A off, B off"
    );
    for (isolation, left) in &counts.by_isolation {
        let averages: Vec<String> =
            left.after.iter().map(|sum| (sum / left.units).to_string()).collect();
        println!("{:18} {:6} units: {}", isolation.id(), left.units, averages.join(" "));
    }
    assert!(counts.removed.is_empty(), "{} removed, {}", counts.removed.len(), counts.removed[0]);
    assert!(counts.removing > counts.in_set / 2, "readings that remove nothing test nothing");
}

/// What readings alone do for amplifiers with their cover on.
#[derive(Default)]
struct Amplifiers {
    earthed: BTreeMap<Class, u64>,
    two_wire: BTreeMap<Class, u64>,
    earthed_before: BTreeMap<Class, u64>,
}

impl Amplifiers {
    fn measure(&mut self, seed: u64) {
        use coldchassis_core::simulation::unit::{Cord, Factors, Reach, SwitchLeg};
        let mut rng = ChaCha8Rng::seed_from_u64(seed);
        for cord in [Cord::ThreePinEarthed, Cord::TwoPinReversible] {
            let wanted = Factors {
                isolation: coldchassis_core::simulation::unit::Isolation::Isolating,
                cord,
                switch_leg: SwitchLeg::ALL[seed as usize % 3],
                reach: Reach::Handheld,
                ..Factors::NO_LINE
            };
            let mut unit = PhysicalUnit::of(wanted, &mut rng);
            unit.kind = "instrument_amplifier";
            unit.motor = false;
            let condition = Condition::random(&unit, &mut rng);
            let readings = unit.readings(&condition, &Meter::default(), &mut rng);
            let outside: Vec<_> = readings
                .into_iter()
                .filter(|(id, _)| !id.ends_with("chassis") && !id.contains("_chassis_"))
                .collect();
            let answers = unit.answers(&mut rng);
            let wanted = |id: &str| LOOKED_AT.contains(&id) || id == "selector";
            let looked: Vec<_> = answers.into_iter().filter(|(id, _)| wanted(id)).collect();
            let class = |readings: &[(String, Value)]| {
                let found =
                    findings(&unit, &looked, readings, &Meter::default(), &["outside", "meter"]);
                assess(&found, &mut Judge::of(&found)).treat_as
            };
            if cord == Cord::ThreePinEarthed {
                *self.earthed_before.entry(class(&[])).or_default() += 1;
                *self.earthed.entry(class(&outside)).or_default() += 1;
            } else {
                *self.two_wire.entry(class(&outside)).or_default() += 1;
            }
        }
    }

    fn add(&mut self, other: Self) {
        let sum = |own: &mut BTreeMap<Class, u64>, more: BTreeMap<Class, u64>| {
            more.into_iter().for_each(|(class, count)| *own.entry(class).or_default() += count);
        };
        sum(&mut self.earthed, other.earthed);
        sum(&mut self.two_wire, other.two_wire);
        sum(&mut self.earthed_before, other.earthed_before);
    }
}

/// Without opening it, readings get an isolating amplifier out of the worst class: those that do not
/// have a broken path, a large primary, or insulation within the meter's range.
#[test]
fn readings_from_outside_get_isolating_amplifiers_out_of_the_worst_class() {
    let amplifiers: Amplifiers = on_all_threads(units() / 4, Amplifiers::measure, Amplifiers::add);
    println!("handheld isolating amplifiers, cover on, treat as:");
    println!("  earthed, before any reading {:?}", amplifiers.earthed_before);
    println!("  earthed, all readings from outside {:?}", amplifiers.earthed);
    println!("  two wires, all readings from outside {:?}", amplifiers.two_wire);
    let not_live = |classes: &BTreeMap<Class, u64>| -> u64 {
        classes.iter().filter(|(class, _)| **class != Class::Live).map(|(_, count)| count).sum()
    };
    assert_eq!(not_live(&amplifiers.earthed_before), 0);
    assert!(not_live(&amplifiers.earthed) > 0);
}

/// A contradiction names readings like any other finding.
#[test]
fn readings_that_contradict_answers_are_named() {
    let file = json!({
        "supply": {"volts": 120, "hertz": 60},
        "answers": {"transformer": "separate_traced"},
        "readings": {"ohms_b_chassis_on": 0.3},
    });
    let found = Possible::after(&read_findings(file).expect("a valid file"));
    let names: Vec<Vec<String>> = found
        .conflicts
        .iter()
        .map(|conflict| conflict.iter().map(|finding| finding.name()).collect())
        .collect();
    assert_eq!(names, [["readings.ohms_b_chassis_on", "transformer"]]);
    assert_eq!(found.consistent(), 0);
}
