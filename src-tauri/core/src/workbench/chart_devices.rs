//! What protective devices make of the chart: how soon each cuts a touch off, and what it does not see.

use super::chart_views::{ChartDevice, Guard};
use crate::arrangement::{FaultSet, Isolation};
use crate::body::{
    GFCI_MUST_TRIP_MA, GFCI_NEVER_TRIPS_MA, RCD_USUAL_MA, RcdType, gfci_curve, rcd_curve,
    rcd_trip_s,
};
use crate::inspection::LONG_TOUCH_S;
use crate::remedy::Device;
use crate::supply::Feed;
use crate::words::{Message, Words, milliamperes, seconds};

/// The longest that a touch current in mA rms lasts behind a device with these faults, s; nothing where
/// the device need not trip.
///
/// All of it goes to earth past the device. What an earth wire carries away besides only makes it trip
/// sooner. What a rectifier on the line passes is no alternating current: neither device is counted on then.
pub(super) fn cut_s(
    guard: Guard,
    isolation: Isolation,
    feed: Feed,
    current_ma: f64,
    faults: FaultSet,
) -> Option<f64> {
    let device = match guard {
        Guard::Gfci => Device::Gfci,
        Guard::Rcd30 => Device::RcdA,
    };
    device.cut(isolation, feed, current_ma, faults).seconds
}

/// A device with its curve, for currents up to `most_ma`.
pub(super) fn device(
    guard: Guard,
    isolation: Isolation,
    feed: Feed,
    most_ma: f64,
    words: &Words,
) -> ChartDevice {
    let longest = LONG_TOUCH_S.value;
    let rated = RCD_USUAL_MA.value;
    let (name, curve, own) = match guard {
        Guard::Gfci => ("chart-gfci", gfci_curve(most_ma, longest), gfci_notes()),
        Guard::Rcd30 => {
            ("chart-rcd", rcd_curve(rated, RcdType::General, most_ma, longest), rcd_notes(rated))
        }
    };
    let direct = match isolation {
        Isolation::LineRectified => Some("chart-device-rectified"),
        // A plate supply behind a separate transformer draws nothing one-sided from the line.
        Isolation::Isolating => None,
        _ => Some("chart-device-direct"),
    };
    let isolated = (feed == Feed::Isolated).then_some("chart-device-isolated");
    let always = ["chart-device-blind", "chart-device-whole"];
    let any = isolated.into_iter().chain(always).chain(direct);
    ChartDevice {
        id: guard,
        name: words.say_id(name),
        curve: curve.into_iter().map(|(current_ma, time_s)| [current_ma, time_s]).collect(),
        notes: own
            .iter()
            .map(|note| words.say(note))
            .chain(any.map(|id| words.say_id(id)))
            .collect(),
    }
}

fn gfci_notes() -> Vec<Message> {
    let trips = Message::new("chart-gfci-trips")
        .text("must", milliamperes(GFCI_MUST_TRIP_MA.value))
        .text("never", milliamperes(GFCI_NEVER_TRIPS_MA.value));
    vec![trips, Message::new("chart-gfci-neutral"), Message::new("chart-gfci-source")]
}

fn rcd_notes(rated_ma: f64) -> Vec<Message> {
    let longest = |times: f64| {
        let trip_s = rcd_trip_s(times * rated_ma, rated_ma, RcdType::General);
        seconds(trip_s.unwrap_or(LONG_TOUCH_S.value))
    };
    let trips = Message::new("chart-rcd-trips")
        .text("rated", milliamperes(rated_ma))
        .text("once", longest(1.0))
        .text("twice", longest(2.0))
        .text("five", longest(5.0));
    vec![trips, Message::new("chart-rcd-source")]
}

#[cfg(test)]
mod tests {
    use super::{Guard, cut_s};
    use crate::arrangement::{Fault, FaultSet, Isolation};
    use crate::supply::Feed;

    const TIED: Isolation = Isolation::LineTied;

    #[test]
    fn a_gfci_is_not_counted_on_where_the_fault_takes_its_own_supply() {
        let neutral_open = FaultSet::of(&[Fault::NeutralOpen]);
        assert!(
            cut_s(Guard::Gfci, TIED, Feed::Direct, 174.0, FaultSet::NONE)
                .is_some_and(|seconds| seconds < 0.05)
        );
        assert_eq!(cut_s(Guard::Gfci, TIED, Feed::Direct, 174.0, neutral_open), None);
        assert_eq!(cut_s(Guard::Rcd30, TIED, Feed::Direct, 174.0, neutral_open), Some(0.04));
    }

    #[test]
    fn neither_is_counted_on_behind_a_rectifier_that_stands_on_the_line() {
        for guard in Guard::ALL {
            assert_eq!(
                cut_s(*guard, Isolation::LineRectified, Feed::Direct, 174.0, FaultSet::NONE),
                None
            );
        }
    }
}
