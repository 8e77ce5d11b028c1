//! Every arrangement that exists, in one fixed order.

use std::sync::LazyLock;

use rustc_hash::FxHashMap;

use super::factors::{
    Arrangement, Cord, Isolation, LineCapacitor, LineCapacitorClass, LineSide, NearPin, Reach,
    SwitchLeg,
};

/// How many arrangements exist.
pub const COUNT: usize = 6945;

/// The place of an arrangement in [`all`].
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct ArrangementId(pub u16);

static ALL: LazyLock<Vec<Arrangement>> = LazyLock::new(|| {
    let mut found = Vec::with_capacity(COUNT);
    for &isolation in Isolation::ALL {
        if isolation.has_line() {
            push_lines(&mut found, isolation);
        } else {
            found.push(Arrangement { isolation, line: None });
        }
    }
    found
});

/// Every arrangement, by isolation first.
pub fn all() -> &'static [Arrangement] {
    &ALL
}

static PLACES: LazyLock<FxHashMap<Arrangement, u16>> =
    LazyLock::new(|| all().iter().copied().zip(0u16..).collect());

/// The place of an arrangement, if it exists.
pub fn find(arrangement: &Arrangement) -> Option<ArrangementId> {
    PLACES.get(arrangement).copied().map(ArrangementId)
}

static TWINS: LazyLock<Vec<ArrangementId>> = LazyLock::new(|| {
    let first = |arrangement: &Arrangement| PLACES.get(&electrically(arrangement)).copied();
    all().iter().zip(0u16..).map(|(a, own)| ArrangementId(first(a).unwrap_or(own))).collect()
});

/// The first arrangement that gives a person the same currents: the same one for all its twins.
///
/// Where a plug's earth pin is cut or not joined, only whether it goes in both ways round counts; and
/// where it does, the near pin only says which of the two ways is which.
pub fn twin(id: ArrangementId) -> ArrangementId {
    TWINS.get(usize::from(id.0)).copied().unwrap_or(id)
}

fn electrically(arrangement: &Arrangement) -> Arrangement {
    let Some(line) = arrangement.line else {
        return *arrangement;
    };
    let cord = match line.cord {
        Cord::ThreePinCut | Cord::ThreePinReversibleUnearthed => Cord::TwoPinReversible,
        Cord::ThreePinUnearthed => Cord::TwoPinPolarised,
        other => other,
    };
    let near_pin = if cord.is_reversible() { NearPin::B } else { line.near_pin };
    Arrangement { line: Some(LineSide { cord, near_pin, ..line }), ..*arrangement }
}

fn push_lines(found: &mut Vec<Arrangement>, isolation: Isolation) {
    for &cord in Cord::ALL {
        for &near_pin in NearPin::ALL {
            for &line_capacitor in LineCapacitor::ALL {
                for &line_capacitor_class in LineCapacitorClass::ALL {
                    for &switch_leg in SwitchLeg::ALL {
                        for &reach in Reach::ALL {
                            let line = LineSide {
                                cord,
                                near_pin,
                                line_capacitor,
                                line_capacitor_class,
                                switch_leg,
                                reach,
                            };
                            let arrangement = Arrangement { isolation, line: Some(line) };
                            if arrangement.contradiction().is_none() {
                                found.push(arrangement);
                            }
                        }
                    }
                }
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::{COUNT, all, find};

    #[test]
    fn as_many_exist_as_the_design_counts_and_each_is_found() {
        assert_eq!(all().len(), COUNT);
        for (place, arrangement) in all().iter().enumerate().step_by(97) {
            assert_eq!(find(arrangement).unwrap().0 as usize, place);
        }
    }
}
