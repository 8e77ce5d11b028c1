//! Reads an exposure file and says which states and faults exist for it.

use super::{Case, SpiceError, or_fail};
use serde::Deserialize;
use serde_json::Value;

#[derive(Clone, Copy, Debug, Deserialize, PartialEq, Eq)]
#[serde(rename_all = "snake_case")]
pub(super) enum Isolation {
    LineTied,
    LineRectified,
    LineFloated,
    LineInsulated,
    HeaterTransformer,
    Autotransformer,
    Isolating,
}

#[derive(Clone, Copy, Debug, Deserialize, PartialEq, Eq)]
#[serde(rename_all = "snake_case")]
pub(super) enum Cord {
    TwoPinReversible,
    TwoPinPolarised,
    ThreePinEarthed,
    ThreePinUnearthed,
    ThreePinCut,
    ThreePinReversibleEarthed,
    ThreePinReversibleUnearthed,
}

impl Cord {
    /// The earth wire is on the chassis.
    pub(super) fn earthed(self) -> bool {
        matches!(self, Self::ThreePinEarthed | Self::ThreePinReversibleEarthed)
    }

    /// The plug goes in both ways round.
    pub(super) fn reversible(self) -> bool {
        matches!(
            self,
            Self::TwoPinReversible
                | Self::ThreePinCut
                | Self::ThreePinReversibleEarthed
                | Self::ThreePinReversibleUnearthed
        )
    }
}

#[derive(Clone, Copy, Debug, Deserialize, PartialEq, Eq)]
#[serde(rename_all = "snake_case")]
pub(super) enum Pin {
    A,
    B,
}

#[derive(Clone, Copy, Debug, Deserialize, PartialEq, Eq)]
#[serde(rename_all = "snake_case")]
pub(super) enum LineCapacitor {
    None,
    NearLeg,
    FarLeg,
    BothLegs,
    Selector,
}

#[derive(Clone, Copy, Debug, Deserialize, PartialEq, Eq)]
#[serde(rename_all = "snake_case")]
pub(super) enum CapacitorClass {
    Ordinary,
    ClassY,
}

#[derive(Clone, Copy, Debug, Deserialize, PartialEq, Eq)]
#[serde(rename_all = "snake_case")]
pub(super) enum SwitchLeg {
    Near,
    Far,
    Both,
    None,
}

#[derive(Clone, Copy, Debug, Deserialize, PartialEq, Eq)]
#[serde(rename_all = "snake_case")]
pub(super) enum Reach {
    Closed,
    AerialTerminal,
    Exposed,
    Handheld,
    CommonExposed,
}

#[derive(Clone, Copy, Debug, Default, Deserialize, PartialEq, Eq)]
#[serde(rename_all = "snake_case")]
pub(super) enum Feed {
    #[default]
    Direct,
    BothHot,
    Isolated,
    StepDownAuto,
}

impl Feed {
    /// The outlet has a neutral, so that a plug that goes in one way only keeps a pin on it.
    pub(super) fn has_neutral(self) -> bool {
        matches!(self, Feed::Direct | Feed::BothHot)
    }
}

#[derive(Clone, Debug, Deserialize)]
pub(super) struct Supply {
    pub(super) volts: f64,
    pub(super) hertz: f64,
    #[serde(default)]
    pub(super) feed: Feed,
    #[serde(default)]
    pub(super) input_volts: Option<f64>,
}

/// Every part value, in Ω and F as its name says. None may be left out: a default taken from
/// here would hide a wrong default in the core.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Values {
    pub(super) line_capacitor_farad: f64,
    pub(super) network_ohm: f64,
    pub(super) network_farad: f64,
    pub(super) aerial_farad: f64,
    pub(super) heater_ohm: f64,
    pub(super) load_ohm: f64,
    pub(super) winding_farad: f64,
    pub(super) primary_ohm: f64,
    pub(super) earth_ohm: f64,
}

#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Exposure {
    pub(super) supply: Supply,
    pub(super) isolation: Isolation,
    pub(super) cord: Cord,
    pub(super) near_pin: Pin,
    pub(super) line_capacitor: LineCapacitor,
    pub(super) line_capacitor_class: CapacitorClass,
    pub(super) switch_leg: SwitchLeg,
    pub(super) reach: Reach,
    pub(super) values: Values,
}

impl Exposure {
    /// Reads the file of a case.
    pub(super) fn read(file: &Value) -> Result<Self, SpiceError> {
        Exposure::deserialize(file)
            .map_err(|error| SpiceError::Case { reason: format!("exposure file: {error}") })
    }

    /// Reads the file of a case and refuses a state or fault that the arrangement cannot have.
    pub(super) fn of_case(case: &Case) -> Result<Self, SpiceError> {
        let exposure = Self::read(&case.exposure)?;
        exposure.check_state(case)?;
        let existing = exposure.faults();
        match case.faults.iter().find(|fault| !existing.contains(&fault.as_str())) {
            Some(fault) => Err(refused("fault", fault)),
            None => Ok(exposure),
        }
    }

    fn check_state(&self, case: &Case) -> Result<(), SpiceError> {
        let turns = self.cord.reversible() || !self.supply.feed.has_neutral();
        let plug_exists = case.plug == "first" || (case.plug == "second" && turns);
        let selector_exists = match &case.selector {
            Some(side) => self.has_selector() && (side == "near" || side == "far"),
            None => !self.has_selector(),
        };
        if !plug_exists {
            Err(refused("plug", &case.plug))
        } else if case.switch != "on" && case.switch != "off" {
            Err(refused("switch", &case.switch))
        } else if !selector_exists {
            Err(refused("selector", &format!("{:?}", case.selector)))
        } else {
            Ok(())
        }
    }

    /// A panel switch chooses the leg of the line capacitor.
    pub(super) fn has_selector(&self) -> bool {
        self.line_capacitor == LineCapacitor::Selector
    }

    /// The faults that exist, in the order of the design's table.
    pub(super) fn faults(&self) -> Vec<&'static str> {
        FAULTS.into_iter().filter(|fault| self.fault_exists(fault)).collect()
    }

    fn fault_exists(&self, fault: &str) -> bool {
        use LineCapacitor as At;
        // A class Y capacitor does not short as a single fault.
        let capacitor_shorts = |places: &[LineCapacitor]| {
            self.line_capacitor_class == CapacitorClass::Ordinary
                && places.contains(&self.line_capacitor)
        };
        match fault {
            "lost_barrier" => matches!(self.reach, Reach::Closed | Reach::AerialTerminal),
            "stray_far" | "stray_near" => true,
            "near_capacitor_shorted" => capacitor_shorts(&[At::NearLeg, At::BothLegs]),
            "far_capacitor_shorted" => capacitor_shorts(&[At::FarLeg, At::BothLegs]),
            "selector_capacitor_shorted" => capacitor_shorts(&[At::Selector]),
            "network_capacitor_shorted" => self.isolation == Isolation::LineFloated,
            "aerial_capacitor_shorted" => self.reach == Reach::AerialTerminal,
            "insulation_breakdown" => {
                matches!(self.isolation, Isolation::Isolating | Isolation::LineInsulated)
            }
            "earth_open" => self.cord.earthed(),
            "outlet_reversed" => !self.cord.reversible() && self.supply.feed.has_neutral(),
            "neutral_open" => self.supply.feed == Feed::Direct,
            "feed_earthed" => self.supply.feed == Feed::Isolated,
            _ => false,
        }
    }
}

const FAULTS: [&str; 13] = [
    "lost_barrier",
    "stray_far",
    "stray_near",
    "near_capacitor_shorted",
    "far_capacitor_shorted",
    "selector_capacitor_shorted",
    "network_capacitor_shorted",
    "aerial_capacitor_shorted",
    "insulation_breakdown",
    "earth_open",
    "outlet_reversed",
    "neutral_open",
    "feed_earthed",
];

/// The faults that exist for an exposure file, in the order of the design's table.
///
/// # Panics
///
/// If the file is incomplete or has a value that the design does not list.
pub fn existing_faults(exposure: &Value) -> Vec<&'static str> {
    or_fail(Exposure::read(exposure)).faults()
}

fn refused(what: &str, value: &str) -> SpiceError {
    SpiceError::Case { reason: format!("{what} {value} does not exist in this arrangement") }
}
