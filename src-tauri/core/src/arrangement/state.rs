//! The states a unit can be in: plug way round, switch, selector.

use serde::Serialize;

use super::factors::{Arrangement, LineCapacitor, NearPin};
use crate::fields::id_enum;
use crate::supply::Feed;

id_enum! {
    /// Which way round the plug is in.
    pub enum PlugWay {
        /// Pin A on the hot contact.
        First = "first",
        /// Pin A on the neutral contact.
        Second = "second",
    }
}

id_enum! {
    /// The power switch.
    pub enum Switch {
        /// Closed.
        On = "on",
        /// Open.
        Off = "off",
    }
}

id_enum! {
    /// The panel switch that chooses the leg of the line capacitor.
    pub enum Selector {
        /// On the near leg.
        Near = "near",
        /// On the far leg.
        Far = "far",
    }
}

/// One state of a unit.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, ts_rs::TS)]
pub struct State {
    /// Which way round the plug is in.
    pub plug: PlugWay,
    /// The power switch.
    pub switch: Switch,
    /// The selector, where there is one.
    pub selector: Option<Selector>,
}

impl State {
    /// The pin on the hot contact, before any fault of the outlet.
    pub const fn hot_pin(self) -> NearPin {
        match self.plug {
            PlugWay::First => NearPin::A,
            PlugWay::Second => NearPin::B,
        }
    }
}

/// The states of an arrangement on a feed, in the order of the design; none for a unit without a line side.
///
/// Where the outlet has no neutral of its own, a plug that goes in one way only can still be either way round.
pub fn states(arrangement: &Arrangement, feed: Feed) -> impl Iterator<Item = State> + use<> {
    const BOTH: &[Option<Selector>] = &[Some(Selector::Near), Some(Selector::Far)];
    const NO_SELECTOR: &[Option<Selector>] = &[None];
    let plugs = match arrangement.line {
        None => &[][..],
        Some(line) if line.cord.goes_in_both_ways(feed) => PlugWay::ALL,
        Some(_) => &[PlugWay::First],
    };
    let has_selector =
        arrangement.line.is_some_and(|line| line.line_capacitor == LineCapacitor::Selector);
    let selectors = if has_selector { BOTH } else { NO_SELECTOR };
    plugs.iter().flat_map(move |&plug| {
        Switch::ALL.iter().flat_map(move |&switch| {
            selectors.iter().map(move |&selector| State { plug, switch, selector })
        })
    })
}
