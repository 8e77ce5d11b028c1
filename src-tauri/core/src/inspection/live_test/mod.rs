//! The live touch test: who takes it and behind what, what a meter alone showed first, what the network read.
//!
//! It needs the unit plugged in, so everything is said before that and each place of plug and switch has a
//! check of its own: turning the plug round can put the chassis on the line.

mod forecast;
mod gate;
mod read;

pub use forecast::{Floating, TouchForecast, floating};
pub use gate::{TouchGate, touch_gate};
pub use read::{LIVE_TEST, TouchPart, read_live_test};

use std::collections::{BTreeMap, BTreeSet};

use crate::arrangement::Switch;
use crate::body::TOUCH_LIMIT_VOLTS;
use crate::fields::id_enum;
use crate::hazard::STOP_VOLTS;

id_enum! {
    /// What protects whoever takes the test.
    pub enum Protection {
        /// A ground-fault circuit interrupter.
        Gfci = "gfci",
        /// A residual-current device of 30 mA or less.
        Rcd = "rcd",
        /// A tested isolating transformer.
        Isolating = "isolating",
    }
}

id_enum! {
    /// How plug and switch stand: the plug first with its mark at that of the outlet, then turned round; the
    /// switch first off, because nobody knows what it wakes.
    pub enum TouchPosition {
        /// Mark at mark, switch off.
        FirstOff = "first_off",
        /// Mark at mark, switch on.
        FirstOn = "first_on",
        /// Turned round, switch off.
        SecondOff = "second_off",
        /// Turned round, switch on.
        SecondOn = "second_on",
    }
}

impl TouchPosition {
    /// Where the power switch stands.
    pub const fn switch(self) -> Switch {
        match self {
            Self::FirstOn | Self::SecondOn => Switch::On,
            Self::FirstOff | Self::SecondOff => Switch::Off,
        }
    }

    /// Whether the plug is turned round for it.
    pub const fn is_turned(self) -> bool {
        matches!(self, Self::SecondOn | Self::SecondOff)
    }
}

/// What is kept of a live touch test.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct LiveTest {
    /// Whoever takes it said to be qualified for work on live equipment.
    pub qualified: bool,
    /// What protects them.
    pub protection: Option<Protection>,
    /// What the meter showed between the hot contact and the earth that it is to prove, V rms.
    pub earth_volts: Option<f64>,
    /// What a meter of high impedance showed before the network went on, V rms.
    pub checks: BTreeMap<TouchPosition, f64>,
    /// What its range of low impedance showed where that was too much, V rms.
    pub low_checks: BTreeMap<TouchPosition, f64>,
    /// What it showed across the network, V rms.
    pub volts: BTreeMap<TouchPosition, f64>,
    /// Where the protection tripped instead.
    pub tripped: BTreeSet<TouchPosition>,
}

/// Why a test ends before all positions are read.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Stop {
    /// The protection tripped.
    Tripped,
    /// More than the limit across the network.
    AboveLimit,
    /// More on the meter alone than a ghost is allowed.
    Alone,
}

impl LiveTest {
    /// The highest voltage across the network, V rms.
    pub fn most_volts(&self) -> Option<f64> {
        self.volts.values().copied().reduce(f64::max)
    }

    /// Why the test ends here; nothing where it goes on.
    pub fn stop(&self) -> Option<Stop> {
        let above = self.most_volts().is_some_and(|volts| volts > TOUCH_LIMIT_VOLTS.value);
        let alone = TouchPosition::ALL.iter().any(|position| self.is_too_much(*position));
        [(!self.tripped.is_empty(), Stop::Tripped), (above, Stop::AboveLimit), (alone, Stop::Alone)]
            .into_iter()
            .find(|(is_so, _)| *is_so)
            .map(|(_, stop)| stop)
    }

    /// Whether the meter alone shows too much in a position, and its range of low impedance does not clear it.
    pub fn is_too_much(&self, position: TouchPosition) -> bool {
        let above = |volts: &f64| *volts > STOP_VOLTS.value;
        let cleared = self.low_checks.get(&position).is_some_and(|volts| !above(volts));
        self.checks.get(&position).is_some_and(above) && !cleared
    }

    /// Whether low impedance shows it as well: then it is no ghost.
    pub fn is_confirmed(&self, position: TouchPosition) -> bool {
        self.is_too_much(position) && self.low_checks.contains_key(&position)
    }

    /// The most that the meter alone showed in a position, as the network may be held against it, V rms.
    pub fn alone(&self, position: TouchPosition) -> Option<f64> {
        let check = self.checks.get(&position)?;
        Some(*self.low_checks.get(&position).unwrap_or(check))
    }

    /// Whether a position is done: read, or ended by the protection.
    pub fn is_done(&self, position: TouchPosition) -> bool {
        self.volts.contains_key(&position) || self.tripped.contains(&position)
    }

    /// Whether anything was read in a position.
    pub fn knows(&self, position: TouchPosition) -> bool {
        self.is_done(position) || self.checks.contains_key(&position)
    }
}

#[cfg(test)]
mod tests {
    use super::{LiveTest, Stop, read_live_test};
    use serde_json::{Value, json};

    fn stop(kept: Value) -> Option<Stop> {
        read_live_test(kept).unwrap().stop()
    }

    #[test]
    fn it_ends_at_thirty_volts_alone_at_the_limit_across_the_network_and_at_a_trip() {
        assert_eq!(LiveTest::default().stop(), None);
        assert_eq!(stop(json!({"check_second_off": 30})), None);
        assert_eq!(stop(json!({"check_second_off": 30.1})), Some(Stop::Alone));
        assert_eq!(stop(json!({"check_second_off": 90, "low_second_off": 4})), None);
        assert_eq!(stop(json!({"check_first_off": 90, "low_second_off": 4})), Some(Stop::Alone));
        assert_eq!(stop(json!({"check_second_off": 90, "low_second_off": 60})), Some(Stop::Alone));
        assert_eq!(stop(json!({"first_on": 0.75})), None);
        assert_eq!(stop(json!({"first_on": 0.76})), Some(Stop::AboveLimit));
        assert_eq!(stop(json!({"tripped_first_on": true})), Some(Stop::Tripped));
        assert_eq!(stop(json!({"low_first_on": 60})), None, "low impedance alone is no check");
    }
}
