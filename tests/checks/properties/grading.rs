//! Margin, class and worst case of an arrangement, worked out again by brute force.

use std::cell::Cell;

use coldchassis_core::arrangement::{
    Arrangement, ArrangementId, COUNT, Fault, FaultSet, LineCapacitorClass, LineSide, Reach,
    Spread, State, Values, Wiring, all, defaults, states, touched, twin,
};
use coldchassis_core::body::LET_GO_MA;
use coldchassis_core::hazard::{
    Class, Exposures, Level, Outcome, Parts, Person, Screen, Table, outcome, table,
};
use coldchassis_core::supply::Supply;
use proptest::prelude::{prop_assert, prop_assert_eq, prop_oneof};
use proptest::test_runner::TestRunner;

use crate::arrangements::{arrangement, arrangement_where, parts, sets_of_faults, supply, values};
use crate::cases;

fn milliamperes(
    a: &Arrangement,
    state: State,
    faults: FaultSet,
    values: &Values,
    supply: &Supply,
) -> f64 {
    let (Some(line), Some(wiring)) = (a.line, Wiring::of(a, state, faults)) else {
        return 0.0;
    };
    let contacts = supply.contacts(supply.volts);
    outcome(wiring, touched(&line, faults), values, supply.hertz, contacts, &Person::default())
        .milliamperes()
}

/// The size of the smallest of all sets of at most three faults that reaches 5 mA.
fn smallest_set(a: &Arrangement, values: &Values, supply: &Supply) -> Option<usize> {
    let reaches = |faults: &FaultSet| {
        states(a, supply.feed)
            .any(|state| milliamperes(a, state, *faults, values, supply) >= LET_GO_MA.value)
    };
    sets_of_faults(a, supply.feed, 3).into_iter().filter(reaches).map(FaultSet::len).min()
}

/// One table for each corner of the parts.
fn tables(a: &Arrangement, supply: &Supply, volts: f64, parts: &Parts) -> Vec<Table> {
    let Some(line) = a.line else {
        return vec![table(a, supply, volts, &Values::default())];
    };
    parts
        .corners(a)
        .map(|corner| table(a, supply, volts, &parts.values_at(corner, line.line_capacitor_class)))
        .collect()
}

/// The largest current in the rows that the verdict quotes for a table: no fault at margin 0, else
/// the fewest faults that reach 5 mA, else two.
fn quoted_ma(table: &Table) -> f64 {
    let size = usize::from(table.margin.min(2));
    let rows = table.rows.iter().filter(|row| row.faults.len() == size);
    rows.map(|row| row.outcome.milliamperes()).fold(0.0, f64::max)
}

#[test]
fn the_margin_is_the_size_of_the_smallest_set_that_reaches_5_ma() {
    let seen = [const { Cell::new(0u32) }; 4];
    let law = |(a, supply, values): (Arrangement, Supply, Values)| {
        let margin = table(&a, &supply, supply.volts, &values).margin;
        let smallest = smallest_set(&a, &values, &supply);
        match smallest {
            _ if a.is_line_on_earth() => prop_assert_eq!(margin, 0),
            Some(size @ 0..=2) => prop_assert_eq!(usize::from(margin), size),
            Some(_) | None => prop_assert_eq!(margin, 3),
        }
        seen[usize::from(margin)].update(|count| count + 1);
        Ok(())
    };
    // Elsewhere a margin above 1 is rare.
    let closed = arrangement_where(|a| a.line.is_some_and(|line| line.reach == Reach::Closed));
    let earthed = arrangement_where(|a| {
        a.line.is_some_and(|line| line.cord.is_earthed()) && !a.is_line_on_earth()
    });
    let kinds = prop_oneof![arrangement(), closed, earthed];
    TestRunner::new(cases(256)).run(&(kinds, supply(), values()), law).unwrap();
    let seen = seen.map(|count| count.get());
    println!("margins seen: {seen:?}");
    assert!(seen.iter().all(|count| *count >= 8), "{seen:?}");
}

/// One memory for several arrangements, so that a key that two networks share is found out.
#[test]
fn remembered_outcomes_are_those_of_the_table() {
    let compared = Cell::new(0usize);
    let several = proptest::collection::vec(arrangement(), 1..6);
    let law = |(arrangements, supply, parts): (Vec<Arrangement>, Supply, Parts)| {
        let mut memory = Exposures::new(&supply, supply.volts_max, parts);
        // Twice round: the second time everything comes from memory.
        for a in arrangements.iter().chain(&arrangements) {
            for (corner, table) in
                parts.corners(a).zip(tables(a, &supply, supply.volts_max, &parts))
            {
                for row in &table.rows {
                    let remembered = memory.outcome(a, row.state, row.faults, corner);
                    prop_assert_eq!(remembered, row.outcome, "{:?} {:?}", a, row);
                    compared.update(|count| count + 1);
                }
            }
        }
        Ok(())
    };
    TestRunner::new(cases(128)).run(&(several, supply(), parts()), law).unwrap();
    println!("outcomes compared: {}", compared.get());
    assert!(compared.get() > 10_000, "{}", compared.get());
}

/// Every combination of ends of all five parts, whether or not they matter to the arrangement.
fn all_ends(line: &LineSide, parts: &Parts) -> Vec<Values> {
    let (range, usual) = match line.line_capacitor_class {
        LineCapacitorClass::Ordinary => (Spread::LINE_CAPACITOR, defaults::LINE_CAPACITOR),
        LineCapacitorClass::ClassY => (Spread::CLASS_Y, defaults::CLASS_Y),
    };
    let unread = if parts.line_capacitor_usual { Spread::exactly(usual.value) } else { range };
    let spreads = [
        parts.line_capacitor.unwrap_or(unread),
        parts.network_ohm,
        parts.network_farad,
        parts.aerial,
        parts.winding,
    ];
    (0u32..1 << spreads.len())
        .map(|bits| {
            let end = |place: usize| {
                if bits >> place & 1 == 1 { spreads[place].high } else { spreads[place].low }
            };
            Values {
                line_capacitor_farad: Some(end(0)),
                network_ohm: end(1),
                network_farad: end(2),
                aerial_farad: end(3),
                winding_farad: end(4),
                heater_ohm: parts.heater_ohm,
                ..Values::default()
            }
        })
        .collect()
}

/// The classes of an arrangement at a voltage, over all ends.
fn classes(a: &Arrangement, supply: &Supply, volts: f64, parts: &Parts) -> Vec<Class> {
    let ends = a.line.map_or(vec![Values::default()], |line| all_ends(&line, parts));
    ends.iter().map(|values| table(a, supply, volts, values).class).collect()
}

#[test]
fn worst_and_best_class_are_those_over_all_ends() {
    let differ = Cell::new(0u32);
    let law = |(ids, supply, parts): (Vec<usize>, Supply, Parts)| {
        // One screen for several arrangements, so that places that two networks share are found out.
        let mut screen = Screen::new(&supply, parts);
        for id in ids {
            let (a, id) = (&all()[id], ArrangementId(id as u16));
            let highest = classes(a, &supply, supply.volts_max, &parts);
            let nominal = classes(a, &supply, supply.volts, &parts);
            let is_earthed = a.line.is_some_and(|line| line.cord.is_earthed());
            // A breaker that trips at the highest voltage may hold at the nominal one.
            let judged = || highest.iter().chain(nominal.iter().filter(|_| is_earthed)).copied();
            // Classes are declared worst first.
            prop_assert_eq!(Some(screen.worst_class(id)), judged().min(), "{:?}", a);
            let best = |level| Some(screen.best_class(id, level));
            let bests = [Level::Highest, Level::Nominal].map(best);
            let expected = [highest.iter().max().copied(), nominal.iter().max().copied()];
            prop_assert_eq!(bests, expected, "{:?}", a);
            differ.update(|count| count + u32::from(judged().min() != judged().max()));
        }
        Ok(())
    };
    let several = proptest::collection::vec(0..COUNT, 1..6);
    TestRunner::new(cases(128)).run(&(several, supply(), parts()), law).unwrap();
    println!("arrangements whose ends differ in class: {}", differ.get());
    assert!(differ.get() >= 16, "{}", differ.get());
}

#[test]
fn twins_give_the_same_currents() {
    let others = Cell::new(0u32);
    let law = |(id, supply, values): (usize, Supply, Values)| {
        let first = usize::from(twin(ArrangementId(id as u16)).0);
        let [own, other] = [id, first].map(|id| table(&all()[id], &supply, supply.volts, &values));
        prop_assert_eq!(twin(ArrangementId(first as u16)), ArrangementId(first as u16));
        prop_assert_eq!((own.class, own.margin), (other.class, other.margin));
        // The plug turned round counts as the same, so the rows are compared without their states.
        let currents = |table: &Table| {
            let mut all: Vec<(Vec<Fault>, f64)> = table
                .rows
                .iter()
                .map(|row| (row.faults.faults().collect(), row.outcome.milliamperes()))
                .collect();
            all.sort_by(|a, b| a.0.cmp(&b.0).then(a.1.total_cmp(&b.1)));
            all
        };
        prop_assert_eq!(currents(&own), currents(&other), "{:?}", all()[id]);
        others.update(|count| count + u32::from(first != id));
        Ok(())
    };
    TestRunner::new(cases(256)).run(&(0..COUNT, supply(), values()), law).unwrap();
    assert!(others.get() >= 64, "{}", others.get());
}

/// Not a law of passive networks (two capacitors and two resistors can lift a node by an eighth, see
/// the networks), but true of parts of the usual sizes: no touched metal stands above the highest
/// contact by more than a millionth, and no touch carries more than that contact itself would give.
#[test]
fn no_touch_exceeds_that_of_the_highest_contact() {
    let law = |(a, supply, parts): (Arrangement, Supply, Parts)| {
        let Some(line) = a.line else { return Ok(()) };
        let exposures = Exposures::new(&supply, supply.volts_max, parts);
        let ceiling = exposures.ceiling_ma(line.reach);
        let contacts = supply.contacts(supply.volts_max);
        let highest = contacts.highest();
        for table in tables(&a, &supply, supply.volts_max, &parts) {
            for row in &table.rows {
                if let Outcome::Touch { milliamperes, open_circuit_volts } = row.outcome {
                    prop_assert!(open_circuit_volts <= highest * (1.0 + 1e-6), "{row:?}");
                    prop_assert!(milliamperes <= ceiling * (1.0 + 1e-9), "{row:?} {ceiling}");
                }
            }
        }
        Ok(())
    };
    TestRunner::new(cases(256)).run(&(arrangement(), supply(), parts()), law).unwrap();
}

#[test]
fn the_worst_case_is_the_worst_row_of_the_worst_corner() {
    let law = |(a, supply, parts): (Arrangement, Supply, Parts)| {
        let worst = Exposures::new(&supply, supply.volts, parts).worst(&a);
        let tables = tables(&a, &supply, supply.volts, &parts);
        let class = tables.iter().map(|table| table.class).min();
        let of_class = || tables.iter().filter(|table| Some(table.class) == class);
        let margin = of_class().map(|table| table.margin).min();
        prop_assert_eq!((Some(worst.class), Some(worst.margin)), (class, margin));
        let current = of_class()
            .filter(|table| Some(table.margin) == margin)
            .map(quoted_ma)
            .fold(0.0, f64::max);
        prop_assert_eq!(worst.milliamperes, current);
        let is_worst_row = |table: &Table| {
            table.rows.iter().any(|row| {
                Some(row.state) == worst.state
                    && row.faults == worst.faults
                    && row.outcome.milliamperes() == worst.milliamperes
            })
        };
        prop_assert!(a.line.is_none() || tables.iter().any(is_worst_row), "{:?}", worst);
        Ok(())
    };
    TestRunner::new(cases(256)).run(&(arrangement(), supply(), parts()), law).unwrap();
}
