//! What a live touch test was to read on this unit, and what it would read if the metal were joined to the line.

use super::super::conflict::Possible;
use super::super::findings::Findings;
use super::TouchPosition;
use crate::arrangement::{LineCapacitor, Switch};
use crate::body::TOUCH_TEST_OHM;
use crate::figure::{Figure, Mark, Source};
use crate::hazard::{TouchRange, TouchRanges, touch_ranges, volts_through};

/// What the test was to read, over every arrangement that the findings leave.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TouchForecast {
    ranges: TouchRanges,
    /// What the resistor would take if the metal were on the line at its highest voltage, W.
    pub watts_on_line: f64,
    /// Whether the plug goes in both ways, as far as is known.
    pub both_ways: bool,
    /// Whether every cord left bonds the metal to earth, which carries the leak away.
    pub is_earthed: bool,
    /// Whether some cord left does.
    pub may_be_earthed: bool,
    /// Whether a panel switch may choose the leg of the capacitor.
    pub has_selector: bool,
    /// What the hot contact stands at against earth, V rms.
    pub hot_volts: f64,
}

impl TouchForecast {
    /// The forecast for these findings.
    pub fn of(findings: &Findings) -> Self {
        let supply = &findings.supply;
        let left = Possible::after(findings).considered;
        let ranges = touch_ranges(
            left.iter().map(|(_, arrangement)| arrangement),
            supply,
            &findings.parts(),
        );
        let highest = supply.highest_contact(supply.volts_max);
        let lines = || left.iter().filter_map(|(_, arrangement)| arrangement.line);
        let cords = || lines().map(|line| line.cord);
        Self {
            ranges,
            watts_on_line: highest * highest / TOUCH_TEST_OHM.value,
            both_ways: cords().any(|cord| cord.is_reversible()),
            is_earthed: cords().all(|cord| cord.is_earthed()),
            may_be_earthed: cords().any(|cord| cord.is_earthed()),
            has_selector: lines().any(|line| line.line_capacitor == LineCapacitor::Selector),
            hot_volts: supply.highest_contact(supply.volts),
        }
    }

    /// The positions of plug and switch that there are.
    pub fn positions(&self) -> impl Iterator<Item = TouchPosition> + Clone + use<> {
        let both_ways = self.both_ways;
        let all = TouchPosition::ALL.iter().copied();
        all.filter(move |position| both_ways || !position.is_turned())
    }

    /// What a position was to read; nothing where no metal can be touched.
    pub fn range(&self, switch: Switch) -> Option<TouchRange> {
        match switch {
            Switch::On => self.ranges.on,
            Switch::Off => self.ranges.off,
        }
    }

    /// The least that the highest reading of all positions can be, V rms.
    pub const fn least_most(&self) -> f64 {
        self.ranges.least_most
    }

    /// What any position was to read.
    pub fn anywhere(&self) -> Option<TouchRange> {
        [self.ranges.on, self.ranges.off].into_iter().flatten().reduce(TouchRange::and)
    }
}

/// What couples an isolating supply to earth, F: the most between its windings.
const SUPPLY_TO_EARTH: Figure = Figure::new(2e-9, "F", Source::TypicalValues, Mark::CommonPractice);

/// Why a test behind an isolating supply proves nothing.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Floating {
    /// What couples the supply to earth, F.
    pub farads: f64,
    /// What the network then reads on metal joined to the line, V rms.
    pub volts: f64,
}

/// The reading behind an isolating supply of metal joined to one of its conductors.
pub fn floating(findings: &Findings) -> Floating {
    let farads = SUPPLY_TO_EARTH.value;
    let volts = volts_through(farads, findings.supply.volts, findings.supply.hertz);
    Floating { farads, volts }
}

#[cfg(test)]
mod tests {
    use super::floating;
    use crate::inspection::Findings;
    use crate::supply::Supply;

    /// By hand: 2 nF is 1.3263 MΩ at 60 Hz and 1.5915 MΩ at 50 Hz; the network is 1494.6 Ω at −4.8° and
    /// 1496.3 Ω at −4.0°.
    #[test]
    fn behind_an_isolating_supply_a_live_chassis_reads_below_the_limit() {
        for (volts, hertz, by_hand) in [(120.0, 60.0, 0.1352), (230.0, 50.0, 0.2162)] {
            let read = floating(&Findings::new(Supply::new(volts, hertz))).volts;
            assert!((read - by_hand).abs() < 2e-4, "{read}");
        }
    }
}
