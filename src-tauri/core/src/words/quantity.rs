//! Writes figures with their units so that a person can read them and no line break parts them.

/// No-break space: keeps the unit with its number.
const JOIN: char = '\u{a0}';

/// A current given in mA, to three figures.
///
/// What is too little for that is not called nothing.
pub fn milliamperes(milliamperes: f64) -> String {
    if milliamperes > 0.0 && milliamperes < TRACE_MA {
        format!("<{JOIN}0.001{JOIN}mA")
    } else {
        with_unit(milliamperes, "mA")
    }
}

/// Less than this rounds to 0 in the third place, mA.
pub const TRACE_MA: f64 = 5e-4;

/// A voltage in V, to three figures.
pub fn volts(volts: f64) -> String {
    with_unit(volts, "V")
}

/// What metal is at against earth, in V. What is too little to matter is not called nothing: neutral is only near earth.
pub fn potential(volts: f64) -> String {
    if volts < NEAR_EARTH_V {
        format!("<{JOIN}{NEAR_EARTH_V}{JOIN}V")
    } else {
        with_unit(volts, "V")
    }
}

/// Below this metal counts as near earth, V.
const NEAR_EARTH_V: f64 = 0.1;

/// A heater voltage in V, to a hundredth at most: that is how it is printed and added up.
pub fn heater_volts(volts: f64) -> String {
    let text = format!("{volts:.2}");
    format!("{}{JOIN}V", text.trim_end_matches('0').trim_end_matches('.'))
}

/// A heater current in A.
pub fn amperes(amperes: f64) -> String {
    with_unit(amperes, "A")
}

/// A length in mm with its bound, to a tenth; the bound is never made smaller by that.
pub fn millimetres(millimetres: f64, bound: f64) -> String {
    let up = (bound * 10.0).ceil() / 10.0;
    format!("{millimetres:.1}{JOIN}±{JOIN}{up:.1}{JOIN}mm")
}

/// A ratio with its bound, to a hundredth; the bound is never made smaller by that.
pub fn ratio(ratio: f64, bound: f64) -> String {
    let up = (bound * 100.0).ceil() / 100.0;
    format!("{ratio:.2}{JOIN}±{JOIN}{up:.2}")
}

/// A frequency in Hz.
pub fn hertz(hertz: f64) -> String {
    with_unit(hertz, "Hz")
}

/// A power in W.
pub fn watts(watts: f64) -> String {
    with_unit(watts, "W")
}

/// A small power given in W, in mW.
pub fn milliwatts(watts: f64) -> String {
    with_unit(watts * 1e3, "mW")
}

/// A capacitance given in F, in the unit printed on such parts.
pub fn farads(farads: f64) -> String {
    if farads < 1e-8 { with_unit(farads * 1e9, "nF") } else { with_unit(farads * 1e6, "µF") }
}

/// A resistance given in Ω.
pub fn ohms(ohms: f64) -> String {
    if ohms >= 1e6 {
        with_unit(ohms / 1e6, "MΩ")
    } else if ohms >= 1e3 {
        with_unit(ohms / 1e3, "kΩ")
    } else {
        with_unit(ohms, "Ω")
    }
}

/// A time given in s, in minutes or hours where it is long.
pub fn seconds(seconds: f64) -> String {
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
pub fn joules(joules: f64) -> String {
    if joules < 0.1 { with_unit(joules * 1e3, "mJ") } else { with_unit(joules, "J") }
}

/// A charge given in C.
pub fn coulombs(coulombs: f64) -> String {
    if coulombs < 1e-3 { with_unit(coulombs * 1e6, "µC") } else { with_unit(coulombs * 1e3, "mC") }
}

/// A share between 0 and 1 as a whole percentage; an estimate is never certain, so at most 99 %.
pub fn percent(share: f64) -> String {
    format!("{:.0}{JOIN}%", (share * 100.0).clamp(1.0, 99.0))
}

fn with_unit(value: f64, unit: &str) -> String {
    format!("{}{JOIN}{unit}", three_figures(value))
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
    use super::{coulombs, farads, heater_volts, joules, milliamperes, ohms, seconds};

    #[test]
    fn figures_keep_three_places_and_their_unit() {
        assert_eq!(milliamperes(174.25), "174\u{a0}mA");
        assert_eq!(milliamperes(2.1714), "2.17\u{a0}mA");
        assert_eq!(milliamperes(0.009), "0.009\u{a0}mA");
        assert_eq!(heater_volts(122.8), "122.8\u{a0}V");
        assert_eq!(heater_volts(35.0), "35\u{a0}V");
        assert_eq!(heater_volts(3.15), "3.15\u{a0}V");
        assert_eq!(milliamperes(0.0), "0\u{a0}mA");
        assert_eq!(milliamperes(1e-5), "<\u{a0}0.001\u{a0}mA");
        assert_eq!(milliamperes(5e-4), "0.001\u{a0}mA");
        assert_eq!(farads(4.7e-8), "0.047\u{a0}µF");
        assert_eq!(farads(2.2e-9), "2.2\u{a0}nF");
        assert_eq!(ohms(220_000.0), "220\u{a0}kΩ");
        assert_eq!(seconds(22.17), "22.2\u{a0}s");
        assert_eq!(seconds(0.056), "56\u{a0}ms");
        assert_eq!(seconds(600.0), "10\u{a0}min");
        assert_eq!(seconds(7200.0), "2\u{a0}h");
        assert_eq!(joules(0.000_72), "0.72\u{a0}mJ");
        assert_eq!(joules(5.0625), "5.06\u{a0}J");
        assert_eq!(coulombs(8.5e-6), "8.5\u{a0}µC");
        assert_eq!(coulombs(0.0225), "22.5\u{a0}mC");
    }
}
