//! A GFCI or RCD ahead of the unit: how soon it ends a touch, and what it does not see.

use crate::arrangement::{Fault, FaultSet, Isolation};
use crate::body::{RCD_USUAL_MA, RcdType, gfci_trip_s, rcd_trip_s};
use crate::fields::id_enum;
use crate::supply::Feed;

id_enum! {
    /// A protective device in the outlet.
    pub enum Device {
        /// Class A of UL 943.
        Gfci = "gfci",
        /// 30 mA, general, type A of IEC 61008-1.
        RcdA = "rcd_a",
        /// The same of type AC.
        RcdAc = "rcd_ac",
    }
}

id_enum! {
    /// Why a device is not counted on.
    pub enum Blind {
        /// Behind an isolating transformer nothing comes back past it.
        Isolated = "isolated",
        /// A rectifier on the line passes no plain alternating current.
        Rectified = "rectified",
        /// The direct current of a half-wave plate supply can blind type AC.
        HalfWave = "half_wave",
        /// Its electronics are fed from the neutral that is cut.
        NeutralOpen = "neutral_open",
        /// The current is less than it has to trip at.
        TooLittle = "too_little",
    }
}

/// What a device makes of a touch.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Cut {
    /// The device.
    pub device: Device,
    /// The longest the touch lasts, s; nothing where the device need not trip.
    pub seconds: Option<f64>,
    /// Why it need not.
    pub blind: Option<Blind>,
}

impl Device {
    /// What it makes of a touch current in mA rms with these faults.
    ///
    /// Trip times of UL 943 and IEC 61008-1. All of the current goes to earth past the device; it does not make it
    /// smaller.
    pub fn cut(self, isolation: Isolation, feed: Feed, current_ma: f64, faults: FaultSet) -> Cut {
        let blind = self.blind(isolation, feed, faults);
        let seconds = match (blind, self) {
            (Some(_), _) => None,
            (None, Self::Gfci) => gfci_trip_s(current_ma),
            (None, _) => rcd_trip_s(current_ma, RCD_USUAL_MA.value, RcdType::General),
        };
        let too_little = seconds.is_none().then_some(Blind::TooLittle);
        Cut { device: self, seconds, blind: blind.or(too_little) }
    }

    fn blind(self, isolation: Isolation, feed: Feed, faults: FaultSet) -> Option<Blind> {
        match self {
            _ if feed == Feed::Isolated => Some(Blind::Isolated),
            _ if isolation == Isolation::LineRectified => Some(Blind::Rectified),
            Self::RcdAc if isolation.draws_half_waves() => Some(Blind::HalfWave),
            Self::Gfci if faults.has(Fault::NeutralOpen) => Some(Blind::NeutralOpen),
            _ => None,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::{Blind, Device};
    use crate::arrangement::{Fault, FaultSet, Isolation};
    use crate::supply::Feed;

    const TIED: Isolation = Isolation::LineTied;
    const NONE: FaultSet = FaultSet::NONE;

    #[test]
    fn a_device_says_nothing_behind_an_isolating_transformer() {
        for device in Device::ALL {
            let cut = device.cut(TIED, Feed::Isolated, 174.0, NONE);
            assert_eq!((cut.seconds, cut.blind), (None, Some(Blind::Isolated)));
        }
    }

    #[test]
    fn trip_times_are_those_of_the_standards() {
        // UL 943 (20/I)^1.43, computed from the formula as quoted; IEC 61008-1 at five times 30 mA, verified.
        let gfci = Device::Gfci.cut(TIED, Feed::Direct, 100.0, NONE);
        assert!((gfci.seconds.unwrap() - 0.1).abs() < 1e-3);
        assert_eq!(Device::RcdA.cut(TIED, Feed::Direct, 150.0, NONE).seconds, Some(0.04));
        assert_eq!(Device::RcdA.cut(TIED, Feed::Direct, 29.0, NONE).blind, Some(Blind::TooLittle));
    }

    #[test]
    fn direct_current_and_a_cut_neutral_blind_what_they_blind() {
        let cut = FaultSet::of(&[Fault::NeutralOpen]);
        let blind = |device: Device, isolation, faults| {
            device.cut(isolation, Feed::Direct, 174.0, faults).blind
        };
        assert_eq!(blind(Device::RcdAc, TIED, NONE), Some(Blind::HalfWave));
        assert_eq!(blind(Device::RcdA, TIED, NONE), None);
        assert_eq!(blind(Device::RcdAc, Isolation::Isolating, NONE), None);
        assert_eq!(blind(Device::RcdA, Isolation::LineRectified, NONE), Some(Blind::Rectified));
        assert_eq!(blind(Device::Gfci, TIED, cut), Some(Blind::NeutralOpen));
        assert_eq!(blind(Device::RcdA, TIED, cut), None);
    }
}
