//! Writes figures with their units so that a person can read them and no line break parts them.
//!
//! A figure has its decimal mark only once a language says it: 0.5 mA in English, 0,5 mA in German.

use serde::Serialize;

/// No-break space: keeps the unit with its number.
const JOIN: char = '\u{a0}';

/// A figure with its unit, before a language has given it its decimal mark.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize)]
pub struct Quantity(String);

impl Quantity {
    /// The figure as text, with a decimal mark in the place of the point. Groups of thousands have no mark
    /// in any language: 1,000 is one thousand to one reader and one to another.
    pub(super) fn marked(&self, decimal_mark: &str) -> String {
        self.0.replace('.', decimal_mark)
    }
}

/// A current given in mA, to three figures.
///
/// What is too little for that is not called nothing.
pub fn milliamperes(milliamperes: f64) -> Quantity {
    if milliamperes > 0.0 && milliamperes < TRACE_MA {
        Quantity(format!("<{JOIN}0.001{JOIN}mA"))
    } else {
        with_unit(milliamperes, "mA")
    }
}

/// Less than this rounds to 0 in the third place, mA.
pub const TRACE_MA: f64 = 5e-4;

/// A voltage in V, to three figures.
pub fn volts(volts: f64) -> Quantity {
    with_unit(volts, "V")
}

/// What metal is at against earth, in V. What is too little to matter is not called nothing: neutral is only near earth.
pub fn potential(volts: f64) -> Quantity {
    if volts < NEAR_EARTH_V {
        Quantity(format!("<{JOIN}{NEAR_EARTH_V}{JOIN}V"))
    } else {
        with_unit(volts, "V")
    }
}

/// Below this metal counts as near earth, V.
const NEAR_EARTH_V: f64 = 0.1;

/// A heater voltage in V, to a hundredth at most: that is how it is printed and added up.
pub fn heater_volts(volts: f64) -> Quantity {
    let text = format!("{volts:.2}");
    Quantity(format!("{}{JOIN}V", text.trim_end_matches('0').trim_end_matches('.')))
}

/// A heater current in A.
pub fn amperes(amperes: f64) -> Quantity {
    with_unit(amperes, "A")
}

/// A length in mm with its bound, to a tenth; the bound is never made smaller by that.
pub fn millimetres(millimetres: f64, bound: f64) -> Quantity {
    let up = (bound * 10.0).ceil() / 10.0;
    Quantity(format!("{millimetres:.1}{JOIN}±{JOIN}{up:.1}{JOIN}mm"))
}

/// A ratio with its bound, to a hundredth; the bound is never made smaller by that.
pub fn ratio(ratio: f64, bound: f64) -> Quantity {
    let up = (bound * 100.0).ceil() / 100.0;
    Quantity(format!("{ratio:.2}{JOIN}±{JOIN}{up:.2}"))
}

/// A frequency in Hz.
pub fn hertz(hertz: f64) -> Quantity {
    with_unit(hertz, "Hz")
}

/// A power in W.
pub fn watts(watts: f64) -> Quantity {
    with_unit(watts, "W")
}

/// A small power given in W, in mW.
pub fn milliwatts(watts: f64) -> Quantity {
    with_unit(watts * 1e3, "mW")
}

/// A capacitance given in F, in the unit printed on such parts.
pub fn farads(farads: f64) -> Quantity {
    if farads < 1e-8 { with_unit(farads * 1e9, "nF") } else { with_unit(farads * 1e6, "µF") }
}

/// A resistance given in Ω.
pub fn ohms(ohms: f64) -> Quantity {
    if ohms >= 1e6 {
        with_unit(ohms / 1e6, "MΩ")
    } else if ohms >= 1e3 {
        with_unit(ohms / 1e3, "kΩ")
    } else {
        with_unit(ohms, "Ω")
    }
}

/// A section given in mm².
pub fn square_millimetres(square_millimetres: f64) -> Quantity {
    with_unit(square_millimetres, "mm²")
}

/// An apparent power in VA, to a whole one.
pub fn volt_amperes(volt_amperes: f64) -> Quantity {
    Quantity(format!("{volt_amperes:.0}{JOIN}VA"))
}

/// A share in percent, above 100 too, to a whole one.
pub fn whole_percent(percent: f64) -> Quantity {
    Quantity(format!("{percent:.0}{JOIN}%"))
}

/// A number without a unit, in full; with an exponent where it is very large or small.
pub fn number(number: f64) -> Quantity {
    if (1e-3..1e7).contains(&number.abs()) || number == 0.0 {
        Quantity(number.to_string())
    } else {
        Quantity(format!("{number:e}"))
    }
}

/// A number without a unit, to a tenth.
pub fn tenths(number: f64) -> Quantity {
    Quantity(format!("{number:.1}"))
}

/// A time given in s, in minutes or hours where it is long.
pub fn seconds(seconds: f64) -> Quantity {
    if seconds >= 5400.0 {
        with_unit(seconds / 3600.0, "h")
    } else if seconds >= 120.0 {
        with_unit(seconds / 60.0, "min")
    } else if seconds < 0.1 {
        with_unit(seconds * 1e3, "ms")
    } else {
        with_unit(seconds, "s")
    }
}

/// An energy given in J.
pub fn joules(joules: f64) -> Quantity {
    if joules < 0.1 { with_unit(joules * 1e3, "mJ") } else { with_unit(joules, "J") }
}

/// A charge given in C.
pub fn coulombs(coulombs: f64) -> Quantity {
    if coulombs < 1e-3 { with_unit(coulombs * 1e6, "µC") } else { with_unit(coulombs * 1e3, "mC") }
}

/// A share between 0 and 1 as a whole percentage; an estimate is never certain, so at most 99 %.
pub fn percent(share: f64) -> Quantity {
    Quantity(format!("{:.0}{JOIN}%", (share * 100.0).clamp(1.0, 99.0)))
}

fn with_unit(value: f64, unit: &str) -> Quantity {
    Quantity(format!("{}{JOIN}{unit}", three_figures(value)))
}

/// Three figures without an exponent, no zeros at the end after the point.
fn three_figures(value: f64) -> String {
    if value.abs() < 5e-4 {
        return "0".to_owned();
    }
    let decimals = (2 - value.abs().log10().floor() as i32).clamp(0, 3) as usize;
    let text = format!("{value:.decimals$}");
    if text.contains('.') {
        text.trim_end_matches('0').trim_end_matches('.').to_owned()
    } else {
        text
    }
}

#[cfg(test)]
mod tests {
    use super::{
        Quantity, coulombs, farads, heater_volts, joules, milliamperes, millimetres, number, ohms,
        potential, ratio, seconds, volts,
    };

    fn english(figure: Quantity) -> String {
        figure.marked(".")
    }

    #[test]
    fn figures_keep_three_places_and_their_unit() {
        assert_eq!(english(milliamperes(174.25)), "174\u{a0}mA");
        assert_eq!(english(milliamperes(2.1714)), "2.17\u{a0}mA");
        assert_eq!(english(milliamperes(0.009)), "0.009\u{a0}mA");
        assert_eq!(english(heater_volts(122.8)), "122.8\u{a0}V");
        assert_eq!(english(heater_volts(35.0)), "35\u{a0}V");
        assert_eq!(english(heater_volts(3.15)), "3.15\u{a0}V");
        assert_eq!(english(milliamperes(0.0)), "0\u{a0}mA");
        assert_eq!(english(milliamperes(1e-5)), "<\u{a0}0.001\u{a0}mA");
        assert_eq!(english(milliamperes(5e-4)), "0.001\u{a0}mA");
        assert_eq!(english(farads(4.7e-8)), "0.047\u{a0}µF");
        assert_eq!(english(farads(2.2e-9)), "2.2\u{a0}nF");
        assert_eq!(english(ohms(220_000.0)), "220\u{a0}kΩ");
        assert_eq!(english(seconds(22.17)), "22.2\u{a0}s");
        assert_eq!(english(seconds(0.056)), "56\u{a0}ms");
        assert_eq!(english(seconds(600.0)), "10\u{a0}min");
        assert_eq!(english(seconds(7200.0)), "2\u{a0}h");
        assert_eq!(english(joules(0.000_72)), "0.72\u{a0}mJ");
        assert_eq!(english(joules(5.0625)), "5.06\u{a0}J");
        assert_eq!(english(coulombs(8.5e-6)), "8.5\u{a0}µC");
        assert_eq!(english(coulombs(0.0225)), "22.5\u{a0}mC");
    }

    #[test]
    fn a_decimal_comma_stands_where_the_point_stood_and_nowhere_else() {
        let german = |figure: Quantity| figure.marked(",");
        assert_eq!(german(milliamperes(2.1714)), "2,17\u{a0}mA");
        assert_eq!(german(milliamperes(1e-5)), "<\u{a0}0,001\u{a0}mA");
        assert_eq!(german(potential(0.01)), "<\u{a0}0,1\u{a0}V");
        assert_eq!(german(millimetres(6.34, 0.21)), "6,3\u{a0}±\u{a0}0,3\u{a0}mm");
        assert_eq!(german(ratio(1.25, 0.031)), "1,25\u{a0}±\u{a0}0,04");
        assert_eq!(german(heater_volts(12.6)), "12,6\u{a0}V");
        // Four figures and more: no mark that could be taken for a decimal one.
        assert_eq!(german(volts(1250.0)), "1250\u{a0}V");
        assert_eq!(english(volts(1250.0)), "1250\u{a0}V");
        assert_eq!(german(number(1000.0)), "1000");
        assert_eq!(german(number(0.25)), "0,25");
        assert_eq!(german(number(2.5e-12)), "2,5e-12");
    }
}
