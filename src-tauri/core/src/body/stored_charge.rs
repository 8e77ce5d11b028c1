//! What a charged capacitor can do to a person, and how long a bleed resistor takes to make it harmless.
//!
//! A time worked out is a time for the value on the can: a tired or swollen capacitor, an open bleed
//! resistor or a charge that comes back make it longer. It never replaces measuring across it.

use crate::fields::id_enum;
use crate::figure::{Figure, Mark, Source};

/// Initial resistance of a body, hand to hand, large contact, 5 % of people, Ω.
pub const BODY_OHM: Figure = Figure::new(500.0, "Ω", Source::Iec60479_1, Mark::MemoryMedium);

/// From here on a capacitor of such a unit is taken as an electrolytic one, F.
const ELECTROLYTIC_FROM: Figure =
    Figure::new(1e-6, "F", Source::TypicalValues, Mark::CommonPractice);

/// How much more than its marking an electrolytic capacitor may hold, as a share.
const ELECTROLYTIC_MORE: Figure =
    Figure::new(0.5, "1", Source::TypicalValues, Mark::CommonPractice);

/// How much more than its marking any other old part may be, as a share.
const MARKED_MORE: Figure = Figure::new(0.2, "1", Source::TypicalValues, Mark::CommonPractice);

/// Direct voltage that is no shock hazard in use, V.
pub const LOW_VOLTS: Figure = Figure::new(60.0, "V", Source::Iec62368_1, Mark::MemoryHigh);

/// Voltage at the pins of a plug that is allowed one second after it is pulled, V.
pub const PLUG_VOLTS: Figure = Figure::new(34.0, "V", Source::StoredEnergy, Mark::Verified);

/// The share of its voltage at which a capacitor counts as empty here.
pub const EMPTY: Figure = Figure::new(0.05, "1", Source::Model, Mark::Assumption);

/// A capacitor that holds a charge.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct StoredCharge {
    /// Capacitance, F.
    pub farads: f64,
    /// Voltage across it, V.
    pub volts: f64,
    /// What bleeds it, Ω; nothing where nothing does.
    pub bleed_ohms: Option<f64>,
}

impl StoredCharge {
    /// Energy, J: C·U²/2.
    pub fn joules(&self) -> f64 {
        self.farads * self.volts * self.volts / 2.0
    }

    /// Charge, C: C·U.
    pub fn coulombs(&self) -> f64 {
        self.farads * self.volts
    }

    /// The most that flows through a person at the first touch, A: U over the initial resistance of a body.
    pub fn first_amperes(&self) -> f64 {
        self.volts / BODY_OHM.value
    }

    /// The time until no more than `volts` are left, s: R·C·ln(U/U₁). None is needed where there is no more
    /// now; nothing ends it where nothing bleeds it.
    pub fn seconds_to(&self, volts: f64) -> Option<f64> {
        if self.volts <= volts {
            return Some(0.0);
        }
        self.bleed_ohms.map(|ohms| ohms * self.farads * (self.volts / volts).ln())
    }

    /// What is left after a time, V: U·exp(−t/RC); all of it where nothing bleeds it.
    pub fn volts_after(&self, seconds: f64) -> f64 {
        let left = self.bleed_ohms.map_or(1.0, |ohms| (-seconds / (ohms * self.farads)).exp());
        self.volts * left
    }

    /// The time until a twentieth of its voltage is left, s.
    pub fn seconds_to_empty(&self) -> Option<f64> {
        self.seconds_to(self.volts * EMPTY.value)
    }

    /// The same with the most that capacitor and resistor may be, as old parts are marked.
    #[must_use]
    pub fn at_most(&self) -> Self {
        let more = if self.is_electrolytic() { ELECTROLYTIC_MORE } else { MARKED_MORE };
        Self {
            farads: self.farads * (1.0 + more.value),
            bleed_ohms: self.bleed_ohms.map(|ohms| ohms * (1.0 + MARKED_MORE.value)),
            ..*self
        }
    }

    /// Whether it is large enough to be taken as an electrolytic one.
    pub const fn is_electrolytic(&self) -> bool {
        self.farads >= ELECTROLYTIC_FROM.value
    }
}

id_enum! {
    /// A limit of stored energy or charge, the gravest last.
    pub enum ChargeLimit {
        /// More than 45 µC from 60 V up: too much for a part that may be touched.
        Touchable = "touchable",
        /// More than 400 V and 0.25 J: a jerk that throws a person.
        Reflex = "reflex",
        /// At least 100 V and more than 1 J: work on it only as on live parts.
        Act = "act",
        /// At least 100 V and 10 J: a shock hazard.
        Shock = "shock",
        /// Below 100 V and more than 100 J: a short through metal burns.
        Burn = "burn",
        /// From 100 mC and 60 V in one pulse of 10 ms to 5 s the heart may stop; less may stop it as well.
        Fibrillation = "fibrillation",
    }
}

/// What a limit of this kind is made of: volts, and joules or coulombs.
struct Row {
    limit: ChargeLimit,
    volts: Figure,
    energy: Option<Figure>,
    charge: Option<Figure>,
}

const fn of(value: f64, unit: &'static str, mark: Mark) -> Figure {
    Figure::new(value, unit, Source::StoredEnergy, mark)
}

const ROWS: [Row; 6] = [
    Row {
        limit: ChargeLimit::Touchable,
        volts: of(60.0, "V", Mark::Verified),
        energy: None,
        charge: Some(of(45e-6, "C", Mark::Verified)),
    },
    Row {
        limit: ChargeLimit::Reflex,
        volts: of(400.0, "V", Mark::MemoryHigh),
        energy: Some(of(0.25, "J", Mark::MemoryHigh)),
        charge: None,
    },
    Row {
        limit: ChargeLimit::Act,
        volts: of(100.0, "V", Mark::MemoryMedium),
        energy: Some(of(1.0, "J", Mark::MemoryMedium)),
        charge: None,
    },
    Row {
        limit: ChargeLimit::Shock,
        volts: of(100.0, "V", Mark::Verified),
        energy: Some(of(10.0, "J", Mark::Verified)),
        charge: None,
    },
    Row {
        limit: ChargeLimit::Burn,
        volts: of(0.0, "V", Mark::Verified),
        energy: Some(of(100.0, "J", Mark::Verified)),
        charge: None,
    },
    Row {
        limit: ChargeLimit::Fibrillation,
        // The charge is of the chest; below this the skin lets little of it through.
        volts: LOW_VOLTS,
        energy: None,
        charge: Some(super::FIBRILLATION_CHARGE),
    },
];

impl StoredCharge {
    /// The limits that it reaches, the gravest last.
    pub fn reaches(&self) -> impl Iterator<Item = ChargeLimit> + '_ {
        let reaches = |row: &&Row| {
            self.volts >= row.volts.value
                && row.energy.is_none_or(|energy| self.joules() >= energy.value)
                && row.charge.is_none_or(|charge| self.coulombs() >= charge.value)
        };
        ROWS.iter().filter(reaches).map(|row| row.limit)
    }
}

#[cfg(test)]
mod tests {
    use super::{ChargeLimit, LOW_VOLTS, StoredCharge};

    /// Worked examples of the project's table of stored energy: µF, V, J, µC, s to 60 V through 220 kΩ,
    /// ms to 10 V through 1 kΩ (computed there).
    const EXAMPLES: [[f64; 6]; 4] = [
        [20.0, 160.0, 0.256, 3200.0, 4.3, 55.5],
        [40.0, 350.0, 2.45, 14_000.0, 15.5, 142.2],
        [50.0, 450.0, 5.062, 22_500.0, 22.2, 190.3],
        [220.0, 500.0, 27.5, 110_000.0, 102.6, 860.6],
    ];

    fn close(found: f64, written: f64, digit: f64) {
        assert!((found - written).abs() <= 0.51 * digit, "{found} is not {written}");
    }

    #[test]
    fn the_examples_of_the_table_come_out() {
        for [microfarads, volts, joules, microcoulombs, to_60, to_10] in EXAMPLES {
            let bled =
                |ohms| StoredCharge { farads: microfarads * 1e-6, volts, bleed_ohms: Some(ohms) };
            let charge = bled(220e3);
            close(charge.joules(), joules, 1e-3);
            close(charge.coulombs() * 1e6, microcoulombs, 1.0);
            close(charge.seconds_to(LOW_VOLTS.value).unwrap(), to_60, 0.1);
            close(bled(1e3).seconds_to(10.0).unwrap() * 1e3, to_10, 0.1);
        }
    }

    #[test]
    fn without_a_bleed_it_stays_and_below_the_limit_no_time_is_needed() {
        let kept = StoredCharge { farads: 40e-6, volts: 350.0, bleed_ohms: None };
        assert_eq!(kept.seconds_to(60.0), None);
        assert_eq!(StoredCharge { volts: 50.0, ..kept }.seconds_to(60.0), Some(0.0));
        // Three time constants to a twentieth, within a thousandth: ln 20 = 2.9957.
        let bled = StoredCharge { bleed_ohms: Some(1e3), ..kept };
        assert!((bled.seconds_to_empty().unwrap() / 0.04 - 2.9957).abs() < 1e-4);
        // One time constant leaves 1/e: 0.3679 of 350 V.
        assert!((bled.volts_after(0.04) - 128.76).abs() < 0.01);
        assert_eq!(kept.volts_after(1e9), 350.0);
    }

    #[test]
    fn limits_are_reached_from_their_figures_on() {
        let of = |farads: f64, volts: f64| -> Vec<ChargeLimit> {
            StoredCharge { farads, volts, bleed_ohms: None }.reaches().collect()
        };
        use ChargeLimit::{Act, Burn, Fibrillation, Reflex, Shock, Touchable};
        assert_eq!(of(0.05e-6, 170.0), [], "a line capacitor");
        assert_eq!(of(20e-6, 160.0), [Touchable]);
        assert_eq!(of(10e-3, 12.0), [], "a large one at a low voltage");
        assert_eq!(of(0.1, 50.0), [Burn]);
        assert_eq!(of(50e-6, 450.0), [Touchable, Reflex, Act]);
        assert_eq!(of(220e-6, 500.0), [Touchable, Reflex, Act, Shock, Fibrillation]);
    }
}
