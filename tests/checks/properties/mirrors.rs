//! Swapping hot and neutral mirrors what a person receives.

use coldchassis_core::arrangement::{
    Arrangement, Fault, FaultSet, Isolation, LineSide, NearPin, PlugWay, State, Values, Wiring,
    states, touched,
};
use coldchassis_core::hazard::{Outcome, Person, outcome, table};
use coldchassis_core::supply::{Contacts, Feed, Supply};
use proptest::prelude::{TestCaseError, prop_assert, prop_assert_eq, proptest};

use crate::arrangements::{arrangement_where, sets_of_faults, supply, values};
use crate::cases;

fn is_reversible(arrangement: &Arrangement) -> bool {
    arrangement.line.is_some_and(|line| line.cord.is_reversible())
}

/// Whether the near pin says anything: separate windings have no near leg of their own.
fn has_a_near_pin(arrangement: &Arrangement) -> bool {
    is_reversible(arrangement) && arrangement.isolation != Isolation::Isolating
}

/// A rectified chassis goes to whichever rail is on the hot contact, so that turning the plug
/// moves the joint as well and is no mirror.
fn is_joined_the_same_both_ways(arrangement: &Arrangement) -> bool {
    arrangement.line.is_some() && arrangement.isolation != Isolation::LineRectified
}

fn with_the_other_near_pin(arrangement: &Arrangement) -> Arrangement {
    let other = |line: LineSide| LineSide {
        near_pin: if line.near_pin == NearPin::A { NearPin::B } else { NearPin::A },
        ..line
    };
    Arrangement { line: arrangement.line.map(other), ..*arrangement }
}

fn turned(state: State) -> State {
    let plug = if state.plug == PlugWay::First { PlugWay::Second } else { PlugWay::First };
    State { plug, ..state }
}

/// Whether both are the same kind of outcome, with the same volts and current but for rounding.
fn alike(one: Outcome, other: Outcome) -> bool {
    let near = |a: f64, b: f64| (a - b).abs() <= 1e-9 * a.abs().max(b.abs());
    match (one, other) {
        (
            Outcome::Touch { milliamperes: i, open_circuit_volts: u },
            Outcome::Touch { milliamperes: j, open_circuit_volts: v },
        ) => near(i, j) && near(u, v),
        _ => one == other,
    }
}

/// Hot and neutral the other way round.
fn swapped(contacts: Contacts) -> Contacts {
    let [hot, neutral] = contacts.volts;
    Contacts { volts: [neutral, hot], ..contacts }
}

struct Bench {
    arrangement: Arrangement,
    supply: Supply,
    values: Values,
}

impl Bench {
    fn outcome(&self, state: State, faults: FaultSet, contacts: Contacts) -> Option<Outcome> {
        let wiring = Wiring::of(&self.arrangement, state, faults)?;
        let touched = touched(&self.arrangement.line?, faults);
        Some(outcome(
            wiring,
            touched,
            &self.values,
            self.supply.hertz,
            contacts,
            &Person::default(),
        ))
    }

    fn same(&self, one: Case, other: Case) -> Result<(), TestCaseError> {
        let [first, second] =
            [one, other].map(|case| self.outcome(case.state, case.faults, case.contacts));
        let (Some(first), Some(second)) = (first, second) else {
            return Err(TestCaseError::fail("no wiring"));
        };
        prop_assert!(alike(first, second), "{one:?} {first:?}, {other:?} {second:?}");
        Ok(())
    }
}

#[derive(Clone, Copy, Debug)]
struct Case {
    state: State,
    faults: FaultSet,
    contacts: Contacts,
}

proptest! {
    #![proptest_config(cases(96))]

    #[test]
    fn the_other_near_pin_is_the_plug_turned_round(
        arrangement in arrangement_where(has_a_near_pin), supply in supply(), values in values(),
    ) {
        let twin = with_the_other_near_pin(&arrangement);
        let [own, other] = [arrangement, twin].map(|a| table(&a, &supply, supply.volts, &values));
        prop_assert_eq!(own.rows.len(), other.rows.len());
        prop_assert_eq!((own.class, own.margin), (other.class, other.margin));
        for row in &own.rows {
            let mirror = other.rows.iter().find(|mirror| {
                mirror.state == turned(row.state) && mirror.faults == row.faults
            });
            prop_assert!(mirror.is_some_and(|mirror| mirror.outcome == row.outcome), "{row:?}");
        }
    }

    #[test]
    fn with_both_contacts_hot_swapping_them_changes_no_magnitude(
        arrangement in arrangement_where(|a| a.line.is_some()), supply in supply(), values in values(),
    ) {
        let contacts = supply.fed_by(Feed::BothHot).contacts(supply.volts);
        let swapped = swapped(contacts);
        let bench = Bench { arrangement, supply, values };
        for faults in sets_of_faults(&arrangement, Feed::BothHot, 2) {
            for state in states(&arrangement, Feed::BothHot) {
                let case = Case { state, faults, contacts };
                bench.same(case, Case { contacts: swapped, ..case })?;
            }
        }
    }

    #[test]
    fn turning_the_plug_is_swapping_the_contacts(
        arrangement in arrangement_where(|a| is_reversible(a) && is_joined_the_same_both_ways(a)),
        supply in supply(), values in values(),
    ) {
        let contacts = supply.contacts(supply.volts);
        let swapped = swapped(contacts);
        let bench = Bench { arrangement, supply, values };
        let sets = sets_of_faults(&arrangement, supply.feed, 2);
        // A cut neutral is a fault of the supply's conductor and does not turn with the plug.
        for faults in sets.into_iter().filter(|faults| !faults.has(Fault::NeutralOpen)) {
            for state in states(&arrangement, Feed::BothHot) {
                let case = Case { state, faults, contacts };
                bench.same(case, Case { state: turned(state), contacts: swapped, ..case })?;
            }
        }
    }

    #[test]
    fn with_both_contacts_hot_a_reversed_outlet_changes_no_magnitude(
        arrangement in arrangement_where(|a| !is_reversible(a) && is_joined_the_same_both_ways(a)),
        supply in supply(), values in values(),
    ) {
        let contacts = supply.fed_by(Feed::BothHot).contacts(supply.volts);
        let bench = Bench { arrangement, supply, values };
        for faults in sets_of_faults(&arrangement, Feed::BothHot, 2) {
            for state in states(&arrangement, Feed::BothHot) {
                let case = Case { state, faults, contacts };
                let reversed = faults.with(Fault::OutletReversed);
                bench.same(case, Case { faults: reversed, ..case })?;
            }
        }
    }
}
