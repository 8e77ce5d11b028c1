//! Verdicts on physical units that were measured: readings may never make one look kinder than it is.

use std::cell::Cell;

use coldchassis_core::arrangement::{FaultSet, find, read_exposure};
use coldchassis_core::body::LET_GO_MA;
use coldchassis_core::hazard::{Class, table};
use coldchassis_core::inspection::{Judge, assess, permission};
use coldchassis_core::simulation::unit::{
    Condition, Meter, PhysicalUnit, random_readings, random_subset,
};
use rand::SeedableRng;
use rand_chacha::ChaCha8Rng;
use serde_json::Value;

use crate::truth::{findings, units};

const ACCESS: &[&str] = &["outside", "cover_off", "meter"];

/// What to treat the unit as, and whether a reading forbids power whatever that is.
fn judged(
    unit: &PhysicalUnit,
    told: &[(String, Value)],
    readings: &[(String, Value)],
    meter: &Meter,
) -> (Class, bool) {
    let found = findings(unit, told, readings, meter, ACCESS);
    let verdict = assess(&found, &mut Judge::of(&found));
    let held = permission(&found, &verdict)
        .iter()
        .any(|message| message.id.starts_with("permission-leak"));
    (verdict.treat_as, held)
}

/// Where the answers left the truth out and a reading then removes what stood in for it, that reading is a
/// path to the metal, and forbids power. A part out of its
/// usual range that was not read is counted apart: a true reading can only show what it hides.
#[test]
fn measuring_never_makes_a_unit_look_kinder_than_it_is() {
    let (mut better, mut known, mut forbidden, mut holes) = (0, 0, 0, 0);
    for seed in 0..units() / 2 {
        let mut rng = ChaCha8Rng::seed_from_u64(seed);
        let unit = PhysicalUnit::random(&mut rng);
        let condition = Condition::random(&unit, &mut rng);
        let meter = Meter::random(&mut rng);
        let told = random_subset(&unit.answers(&mut rng), &mut rng);
        let all = unit.readings(&condition, &meter, &mut rng);
        let taken = random_readings(&all, &mut rng);
        let file = read_exposure(unit.arrangement_as_told(&told)).expect("a valid arrangement");
        let truth = table(&file.arrangement, &file.supply, file.supply.volts, &file.values).class;
        let (unmeasured, _) = judged(&unit, &told, &[], &meter);
        // What the answers alone are too kind to is counted elsewhere.
        known += u64::from(truth.is_worse_than(unmeasured));
        for readings in [&taken, &all] {
            let (measured, held) = judged(&unit, &told, readings, &meter);
            better += u64::from(unmeasured.is_worse_than(measured));
            let kinder = truth.is_worse_than(measured) && !truth.is_worse_than(unmeasured);
            let hole = kinder && !held && unit.is_unusual_unread(&told);
            forbidden += u64::from(kinder && held);
            holes += u64::from(hole);
            assert!(
                !kinder || held || hole,
                "seed {seed}: {truth:?}, {unmeasured:?} without, {measured:?} with {readings:?}"
            );
        }
    }
    println!(
        "{} units measured: {better} verdicts bettered, {known} too kind without, {forbidden} kinder with \
         power forbidden, {holes} by a known hole",
        units() / 2
    );
    assert!(better > 0, "readings that better nothing test nothing");
}

/// A part that failed short is no longer what it was drawn as; every reading taken, its unit is live
/// where a person would receive 5 mA, or at least must not be powered until the short is found. Where the
/// inspector worked another switch than the set's, no reading sees it.
#[test]
fn a_part_that_failed_short_is_judged_as_the_wire_that_it_is() {
    let (judged, held, kinder) = (Cell::new(0), Cell::new(0), Cell::new(0));
    for seed in 0..units() {
        let mut rng = ChaCha8Rng::seed_from_u64(seed);
        let unit = PhysicalUnit::random(&mut rng);
        let Some((condition, fault)) = Condition::failed(&unit, &mut rng) else { continue };
        if condition.wrong_switch() {
            continue;
        }
        let mut told = random_subset(&unit.answers(&mut rng), &mut rng);
        // Without these the true reach may be missed, whatever is measured.
        let metal = ["bare_metal", "back", "terminals", "metal_joined", "plug"];
        told.retain(|(id, _)| !metal.contains(&id.as_str()));
        told.extend(
            unit.answers(&mut rng).into_iter().filter(|(id, _)| metal.contains(&id.as_str())),
        );
        let file = read_exposure(unit.arrangement()).expect("a valid arrangement");
        assert!(find(&file.arrangement).is_some());
        let rows = table(&file.arrangement, &file.supply, file.supply.volts, &file.values).rows;
        let is_it =
            |faults: FaultSet| faults.len() == 1 && faults.faults().all(|one| one.id() == fault);
        let live = rows
            .iter()
            .any(|row| is_it(row.faults) && row.outcome.milliamperes() >= LET_GO_MA.value);
        if !live {
            continue;
        }
        judged.set(judged.get() + 1);
        let readings = unit.readings(&condition, &Meter::default(), &mut rng);
        let found = findings(&unit, &told, &readings, &Meter::default(), ACCESS);
        let verdict = assess(&found, &mut Judge::of(&found));
        let may_be_done = permission(&found, &verdict);
        let held_back = may_be_done.iter().any(|message| message.id.starts_with("permission-leak"));
        let class = verdict.treat_as;
        held.set(held.get() + u64::from(class != Class::Live && held_back));
        if class != Class::Live && !held_back {
            kinder.set(kinder.get() + 1);
            println!(
                "seed {seed}: {fault} {class:?} {}\n{told:?}\n{readings:?}",
                unit.arrangement()
            );
        }
    }
    println!(
        "{} units with a part failed short: {} held back beside a kinder class, {} too kind",
        judged.get(),
        held.get(),
        kinder.get()
    );
    assert!(judged.get() > units() / 20);
    assert_eq!(kinder.get(), 0);
}
