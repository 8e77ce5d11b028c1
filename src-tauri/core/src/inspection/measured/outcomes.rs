//! What a reading is expected to come to, and what each outcome would rule out: for choosing what to
//! read next. What a reading does rule out is decided by its figure.

use std::collections::HashMap;
use std::sync::OnceLock;

use super::super::findings::Meter;
use super::least::{alike, least};
use super::{Way, most_when_tied, way_of};
use crate::arrangement::{
    Arrangement, BOND_MOST, Cord, DirectParts, Probe, ReadingId, Spread, SwitchLeg, Values, all,
    reading_range,
};
use crate::figure::{Figure, Mark, Source};

/// What a joint reads, Ω.
const JOINT: Figure = Figure::new(0.3, "Ω", Source::Model, Mark::Assumption);
/// What a string of heaters reads cold, Ω: 819 Ω hot, 6.8 times less cold.
const STRING: Figure = Figure::new(120.0, "Ω", Source::Model, Mark::Assumption);
/// Up to this a joint may read over a tired switch contact, Ω.
const JOINT_MOST: f64 = 250.0;
/// From here on a reading counts as open, Ω.
const OPEN_FROM: f64 = 1e5;

/// What a reading comes to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Outcome {
    /// A joint.
    Wire,
    /// A string, a winding.
    Load,
    /// Above range, or as good as.
    Open,
}

/// The outcomes, in the order of their bits.
pub const OUTCOMES: [Outcome; 3] = [Outcome::Wire, Outcome::Load, Outcome::Open];

/// What bears on what a reading says besides the reading.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Given {
    /// No motor lies across the line.
    pub no_motor: bool,
    /// There is no switch that lifts the earth.
    pub lift_absent: bool,
}

/// The outcome that a sound unit of each arrangement gives, in their order, as one bit; none where it has no
/// such reading.
pub fn expected(reading: ReadingId) -> &'static [u16] {
    static KNOWN: [OnceLock<Vec<u16>>; ReadingId::OHMS] =
        [const { OnceLock::new() }; ReadingId::OHMS];
    let slot = KNOWN.get(reading as usize);
    slot.map_or(&[], |slot| slot.get_or_init(|| all_expected(reading)))
}

fn all_expected(reading: ReadingId) -> Vec<u16> {
    let parts = DirectParts::sound(&Values::default());
    let mut known: HashMap<Arrangement, u16> = HashMap::new();
    let bit = |range: Spread| {
        let place = OUTCOMES.iter().position(|known| *known == outcome_of(range));
        place.map_or(0, |place| 1 << place)
    };
    let of = |arrangement: &Arrangement| {
        let alike = alike(arrangement, reading);
        *known.entry(alike).or_insert_with(|| reading_range(&alike, reading, &parts).map_or(0, bit))
    };
    all().iter().map(of).collect()
}

fn outcome_of(range: Spread) -> Outcome {
    if range.high <= JOINT_MOST && range.low < JOINT.value {
        Outcome::Wire
    } else if range.high >= OPEN_FROM {
        Outcome::Open
    } else {
        Outcome::Load
    }
}

/// The least and the most that a reading with this outcome may be, Ω.
fn ohms(outcome: Outcome) -> (f64, f64) {
    match outcome {
        Outcome::Wire => (JOINT.value, JOINT.value),
        Outcome::Load => (STRING.value, STRING.value),
        Outcome::Open => (Meter::default().max_ohms, f64::INFINITY),
    }
}

/// For each arrangement the outcomes of a reading under which it stays, one bit each; `proven` where pin
/// to pin shows that current comes through.
pub fn stays(reading: ReadingId, given: Given, proven: bool) -> &'static [u16] {
    static KNOWN: [[OnceLock<Vec<u16>>; 8]; ReadingId::OHMS] =
        [const { [const { OnceLock::new() }; 8] }; ReadingId::OHMS];
    let variant =
        usize::from(given.no_motor) * 4 + usize::from(given.lift_absent) * 2 + usize::from(proven);
    let slot = KNOWN.get(reading as usize).and_then(|slots| slots.get(variant));
    slot.map_or(&[], |slot| slot.get_or_init(|| all_stays(reading, given, proven)))
}

fn all_stays(reading: ReadingId, given: Given, proven: bool) -> Vec<u16> {
    let least = least(reading, !given.no_motor);
    let most = if proven { most_when_tied(STRING.value) } else { HashMap::new() };
    let of = |(arrangement, least): (&Arrangement, &f64)| {
        let fits = |outcome: Outcome| {
            // "OL" is anything from the meter's range on.
            let (low, high) = ohms(outcome);
            let above = |most: &f64| low > *most;
            *least <= high
                && !way(reading, arrangement).and_then(|way| most.get(&way)).is_some_and(above)
                && (!given.lift_absent || bond_fits(reading, arrangement, outcome))
        };
        let bits = OUTCOMES.iter().enumerate();
        bits.fold(0, |bits, (bit, outcome)| if fits(*outcome) { bits | 1 << bit } else { bits })
    };
    all().iter().zip(least).map(of).collect()
}

fn way(reading: ReadingId, arrangement: &Arrangement) -> Option<Way> {
    let line = arrangement.line?;
    way_of(reading, arrangement.isolation, &line)
}

/// Whether the earth pin can read so.
fn bond_fits(reading: ReadingId, arrangement: &Arrangement, outcome: Outcome) -> bool {
    let (Some(line), Some((Probe::EarthPin, place))) = (arrangement.line, reading.probes()) else {
        return true;
    };
    let unbonded = matches!(line.cord, Cord::ThreePinUnearthed | Cord::ThreePinReversibleUnearthed);
    let no_bond = ohms(outcome).0 > BOND_MOST.value && place == Probe::Chassis;
    !(unbonded && outcome == Outcome::Wire || line.cord.is_earthed() && no_bond)
}

/// Whether a path that comes and goes with the switch can be true of an arrangement.
pub fn has_path(arrangement: &Arrangement) -> bool {
    arrangement.line.is_none_or(|line| line.switch_leg != SwitchLeg::None)
}

#[cfg(test)]
mod tests {
    use super::{Given, OUTCOMES, expected, has_path, stays};
    use crate::arrangement::{ReadingId, all};

    #[test]
    fn what_an_arrangement_is_expected_to_read_does_not_rule_it_out() {
        let mut seen = [0; OUTCOMES.len()];
        for reading in ReadingId::ohmmeter() {
            for variant in 0..8 {
                let [no_motor, lift_absent, proven] = [1, 2, 4].map(|bit| variant & bit != 0);
                let stays = stays(reading, Given { no_motor, lift_absent }, proven);
                for ((arrangement, gives), stays) in all().iter().zip(expected(reading)).zip(stays)
                {
                    // Where no path comes and goes with the switch none is ever proven.
                    if proven && !has_path(arrangement) {
                        continue;
                    }
                    assert_eq!(gives & !stays, 0, "{reading:?} {variant} {arrangement:?}");
                    for (outcome, seen) in seen.iter_mut().enumerate() {
                        *seen += usize::from(gives >> outcome & 1 == 1);
                    }
                }
            }
        }
        assert!(seen.iter().all(|count| *count > 1000), "{seen:?}");
    }
}
