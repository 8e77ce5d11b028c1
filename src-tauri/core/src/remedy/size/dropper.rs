//! What takes up the volts that a heater string leaves, in the place of a line cord or a ballast.

use std::f64::consts::SQRT_2;

use super::series::{Series, above, nearest};
use super::tables::figure;
use crate::heaters::{Dropper, series_capacitor};

/// A resistor.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ResistorDropper {
    /// What is needed, Ω.
    pub ohms: f64,
    /// What it dissipates, W.
    pub watts: f64,
    /// The nearest of the E12 series, Ω.
    pub stock_ohms: Option<f64>,
    /// The next size up of twice the dissipation, W.
    pub stock_watts: Option<f64>,
}

/// A capacitor, on alternating current only.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CapacitorDropper {
    /// What is needed, F.
    pub farads: f64,
    /// The volts across it, V rms.
    pub volts: f64,
    /// What the cold string can draw at the moment of switching on, A peak.
    pub inrush_amperes: f64,
    /// The largest resistor across it that bleeds it within a second, Ω; nothing where none is asked for.
    pub bleeder_ohms: Option<f64>,
}

/// A diode: half of the waves.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DiodeDropper {
    /// What the string gets without anything else, V rms: the line over √2.
    pub volts: f64,
    /// What is left for a resistor in series, Ω; 0 where the string takes all of it.
    pub ohms: f64,
    /// The direct current that it puts on the line, A: the mean of half waves.
    pub direct_amperes: f64,
}

/// The resistor that leaves `sum` volts of `line` to heaters of this current in A; nothing where none is needed.
pub fn resistor_dropper(line: f64, sum: f64, amperes: f64) -> Option<ResistorDropper> {
    let dropper = Dropper::of(line, sum, amperes)?;
    Some(ResistorDropper {
        ohms: dropper.ohms,
        watts: dropper.watts,
        stock_ohms: nearest(Series::E12, dropper.ohms),
        stock_watts: above(Series::Dropper, dropper.watts_to_choose()),
    })
}

/// The capacitor that does the same, on `hertz`.
pub fn capacitor_dropper(
    line: f64,
    sum: f64,
    amperes: f64,
    hertz: f64,
) -> Option<CapacitorDropper> {
    let (farads, volts) = series_capacitor(line, sum, amperes, hertz)?;
    let cold = sum / amperes / figure("inrush_ratio");
    let bled = farads > figure("bleed_farad");
    Some(CapacitorDropper {
        farads,
        volts,
        inrush_amperes: line * SQRT_2 / cold,
        bleeder_ohms: bled.then(|| figure("bleed_s") / farads),
    })
}

/// The diode that does the same; nothing where half of the waves are too little for the string.
pub fn diode_dropper(line: f64, sum: f64, amperes: f64) -> Option<DiodeDropper> {
    let volts = line / SQRT_2;
    let fits = volts >= sum && amperes > 0.0 && sum > 0.0;
    // The rms current of half waves is the heaters' own; their mean is 2/π of it.
    fits.then(|| DiodeDropper {
        volts,
        ohms: (volts - sum) / amperes,
        direct_amperes: amperes * 2.0 / std::f64::consts::PI,
    })
}

/// What a cold string of this hot resistance draws through a dropper at the moment of switching on, A rms.
pub fn inrush_amperes(line: f64, hot_ohms: f64, dropper_ohms: f64) -> f64 {
    line / (hot_ohms / figure("inrush_ratio") + dropper_ohms)
}
