//! The classes, their signal words, and how severe a current is.

use crate::body::{Curve, LET_GO_MA, Path, STARTLE_MA, curve_ma};
use crate::fields::id_enum;

id_enum! {
    /// The verdict for one arrangement, worst first.
    pub enum Class {
        /// Live as found.
        Live = "live",
        /// Leaks as found, one fault from live.
        Leaky = "leaky",
        /// One fault from live.
        OneFault = "one_fault",
        /// Two faults from live.
        TwoFaults = "two_faults",
        /// No line voltage inside.
        NoLine = "no_line",
    }
}

id_enum! {
    /// The signal word of ANSI Z535.4 and ISO 3864.
    pub enum Signal {
        /// Will kill or injure if not avoided.
        Danger = "danger",
        /// Could kill or injure.
        Warning = "warning",
        /// Not about injury.
        Notice = "notice",
    }
}

id_enum! {
    /// What a current does to a person.
    pub enum Severity {
        /// Below 0.5 mA.
        Below = "below",
        /// 0.5 to 5 mA: startles.
        Startle = "startle",
        /// 5 mA and more: hands may not let go.
        LetGo = "let_go",
        /// At or above line c1: the heart may fibrillate.
        Fibrillation = "fibrillation",
    }
}

impl Class {
    /// The class of a line side from its fault margin and its current with no fault, mA.
    pub fn from_margin(margin: u8, as_found_ma: f64) -> Self {
        Self::by_margin(margin, as_found_ma >= STARTLE_MA.value)
    }

    /// The class of a line side from its fault margin and from whether its current with no fault startles.
    pub const fn by_margin(margin: u8, startles: bool) -> Self {
        match margin {
            0 => Self::Live,
            1 if startles => Self::Leaky,
            1 => Self::OneFault,
            _ => Self::TwoFaults,
        }
    }

    /// Whether this class is worse than another.
    pub fn is_worse_than(self, other: Self) -> bool {
        // Declared worst first.
        self < other
    }

    /// The worse of two.
    #[must_use]
    pub fn worse(self, other: Self) -> Self {
        self.min(other)
    }

    /// The signal word that goes with it.
    pub const fn signal(self) -> Signal {
        match self {
            Self::Live => Signal::Danger,
            Self::Leaky | Self::OneFault => Signal::Warning,
            Self::TwoFaults | Self::NoLine => Signal::Notice,
        }
    }
}

/// How severe a current in mA on a path is when it lasts `time_s` seconds.
pub fn severity(current_ma: f64, path: Path, time_s: f64) -> Severity {
    if current_ma * path.heart_factor().value >= curve_ma(Curve::C1, time_s) {
        Severity::Fibrillation
    } else if current_ma >= LET_GO_MA.value {
        Severity::LetGo
    } else if current_ma >= STARTLE_MA.value {
        Severity::Startle
    } else {
        Severity::Below
    }
}

#[cfg(test)]
mod tests {
    use super::{Class, Severity, severity};
    use crate::body::Path;

    #[test]
    fn classes_are_ordered_from_the_worst() {
        assert!(Class::Live.is_worse_than(Class::Leaky));
        assert!(Class::TwoFaults.is_worse_than(Class::NoLine));
        assert_eq!(Class::OneFault.worse(Class::Leaky), Class::Leaky);
    }

    #[test]
    fn the_heart_factor_counts_for_fibrillation_only() {
        // 100 mA hand to hand is 40 mA on the reference path; c1 at 1 s is 50 mA.
        assert_eq!(severity(100.0, Path::HandToHand, 1.0), Severity::LetGo);
        assert_eq!(severity(100.0, Path::LeftHandToBothFeet, 1.0), Severity::Fibrillation);
        assert_eq!(severity(0.5, Path::HandToHand, 10.0), Severity::Startle);
        assert_eq!(severity(0.49, Path::HandToHand, 10.0), Severity::Below);
    }
}
