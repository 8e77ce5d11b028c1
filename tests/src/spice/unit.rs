//! Reads the line side of one unit, in one state with its faults, part by part.

use super::Case;
use super::exposure::{Exposure, Isolation, LineCapacitor, Pin, Reach, SwitchLeg};

/// Conductor from an outlet contact to the unit, Ω (design, assumption).
const CONDUCTOR_OHM: f64 = 0.05;
/// A closed switch contact, Ω (design, assumption).
const SWITCH_CLOSED_OHM: f64 = 0.05;
/// An open switch contact, Ω (design, assumption).
const SWITCH_OPEN_OHM: f64 = 1e9;
/// Hot over cold resistance of a heater string (design, from its cold and hot table).
const HEATER_HOT_OVER_COLD: f64 = 6.8;
/// Direct joint of the circuit common to the chassis, Ω (design, assumption).
const COMMON_OHM: f64 = 0.01;
/// Rectifier path from the hot rail to the chassis, Ω (design, assumption).
const RECTIFIER_OHM: f64 = 10.0;
/// Insulation of a winding or of an insulated common, Ω (design, assumption).
const INSULATION_OHM: f64 = 100e6;
/// Stray capacitance of an insulated common to the chassis, F (design, assumption).
const INSULATION_FARAD: f64 = 0.2e-9;
/// A transformer primary with the power off, Ω (design, common practice).
const PRIMARY_OFF_OHM: f64 = 10.0;
/// A part failed short or a stray conductor on the chassis, Ω (design, assumption).
const SHORT_OHM: f64 = 0.1;
/// Other loads that pull a cut neutral towards hot, Ω (design).
const OTHER_LOADS_OHM: f64 = 100.0;

/// One two-terminal part. Its name begins with R or C, which is how ngspice tells its kind.
pub(super) struct Part {
    pub(super) name: &'static str,
    pub(super) ends: [&'static str; 2],
    pub(super) value: f64,
}

/// A unit in one state, read part by part.
pub(super) struct Unit<'a> {
    exposure: &'a Exposure,
    case: &'a Case,
}

impl<'a> Unit<'a> {
    pub(super) fn new(exposure: &'a Exposure, case: &'a Case) -> Self {
        Self { exposure, case }
    }

    fn has(&self, fault: &str) -> bool {
        self.case.faults.iter().any(|present| present == fault)
    }

    /// Switched on, or no switch at all.
    fn running(&self) -> bool {
        self.case.switch == "on" || self.exposure.switch_leg == SwitchLeg::None
    }

    /// The near leg's pin is in the contact that is hot: pin A is, plugged the first way round
    /// into an outlet that is wired right.
    fn near_is_hot(&self) -> bool {
        let pin_a_hot = (self.case.plug == "first") != self.has("outlet_reversed");
        pin_a_hot == (self.exposure.near_pin == Pin::A)
    }

    /// Every part of the unit and its cord.
    pub(super) fn parts(&self) -> Vec<Part> {
        let mut parts = self.cord_and_switch();
        parts.extend(self.loads());
        parts.extend(self.isolation());
        parts.extend(self.line_capacitors());
        parts.extend(self.terminal_and_earth());
        parts.extend(self.faults());
        // A capacitor failed short is a short and no capacitor any more.
        parts.retain(|part| !self.failed_capacitors().contains(&part.name));
        parts
    }

    fn failed_capacitors(&self) -> Vec<&'static str> {
        [
            ("near_capacitor_shorted", "Cline_near"),
            ("far_capacitor_shorted", "Cline_far"),
            ("selector_capacitor_shorted", "Cline_selector"),
            ("network_capacitor_shorted", "Cnetwork"),
            ("aerial_capacitor_shorted", "Caerial"),
        ]
        .into_iter()
        .filter(|(fault, _)| self.has(fault))
        .map(|(_, capacitor)| capacitor)
        .collect()
    }

    /// What the pins of the far and near legs are plugged into. With the supply's neutral cut,
    /// the pin on it is left on what other loads pull up.
    fn contacts(&self) -> [&'static str; 2] {
        let neutral = if self.has("neutral_open") { "cut" } else { "neutral" };
        if self.near_is_hot() { [neutral, "hot"] } else { ["hot", neutral] }
    }

    fn cord_and_switch(&self) -> Vec<Part> {
        let [far, near] = self.contacts();
        let mut parts = vec![
            part("Rconductor_far", far, "feed_far", CONDUCTOR_OHM),
            part("Rconductor_near", near, "feed_near", CONDUCTOR_OHM),
        ];
        if self.has("neutral_open") {
            parts.push(part("Rother_loads", "hot", "cut", OTHER_LOADS_OHM));
        }
        let contact_ohm =
            if self.case.switch == "on" { SWITCH_CLOSED_OHM } else { SWITCH_OPEN_OHM };
        let leg = self.exposure.switch_leg;
        if matches!(leg, SwitchLeg::Far | SwitchLeg::Both) {
            parts.push(part("Rswitch_far", "feed_far", "far", contact_ohm));
        }
        if matches!(leg, SwitchLeg::Near | SwitchLeg::Both) {
            parts.push(part("Rswitch_near", "feed_near", "near", contact_ohm));
        }
        parts
    }

    fn loads(&self) -> Vec<Part> {
        let values = &self.exposure.values;
        let running = self.running();
        match self.exposure.isolation {
            Isolation::LineTied
            | Isolation::LineRectified
            | Isolation::LineFloated
            | Isolation::LineInsulated => {
                let hot = values.heater_ohm;
                let heater = if running { hot } else { hot / HEATER_HOT_OVER_COLD };
                let mut parts = vec![part("Rheater", "far", "near", heater)];
                if running {
                    parts.push(part("Rload", "far", "near", values.load_ohm));
                }
                parts
            }
            Isolation::HeaterTransformer | Isolation::Autotransformer | Isolation::Isolating => {
                let primary = if running { values.primary_ohm } else { PRIMARY_OFF_OHM };
                vec![part("Rprimary", "far", "near", primary)]
            }
        }
    }

    fn isolation(&self) -> Vec<Part> {
        let values = &self.exposure.values;
        match self.exposure.isolation {
            Isolation::LineTied | Isolation::HeaterTransformer | Isolation::Autotransformer => {
                vec![part("Rcommon", "near", "c", COMMON_OHM)]
            }
            Isolation::LineRectified => {
                let hot_rail = if self.near_is_hot() { "near" } else { "far" };
                vec![part("Rrectifier", hot_rail, "c", RECTIFIER_OHM)]
            }
            Isolation::LineFloated => vec![
                part("Rnetwork", "near", "c", values.network_ohm),
                part("Cnetwork", "near", "c", values.network_farad),
            ],
            Isolation::LineInsulated => vec![
                part("Rinsulation", "near", "c", INSULATION_OHM),
                part("Cinsulation", "near", "c", INSULATION_FARAD),
            ],
            Isolation::Isolating => vec![
                part("Cwinding_far", "far", "c", values.winding_farad),
                part("Cwinding_near", "near", "c", values.winding_farad),
                part("Rinsulation", "far", "c", INSULATION_OHM),
            ],
        }
    }

    /// The leg that the panel switch chooses.
    fn selected_leg(&self) -> &'static str {
        match self.case.selector.as_deref() {
            Some("near") => "near",
            _ => "far",
        }
    }

    fn line_capacitors(&self) -> Vec<Part> {
        let farad = self.exposure.values.line_capacitor_farad;
        let near = || part("Cline_near", "near", "c", farad);
        let far = || part("Cline_far", "far", "c", farad);
        match self.exposure.line_capacitor {
            LineCapacitor::None => vec![],
            LineCapacitor::NearLeg => vec![near()],
            LineCapacitor::FarLeg => vec![far()],
            LineCapacitor::BothLegs => vec![near(), far()],
            LineCapacitor::Selector => {
                vec![part("Cline_selector", self.selected_leg(), "c", farad)]
            }
        }
    }

    /// The circuit common: the chassis, but for the sets whose chassis is held off it.
    fn common(&self) -> &'static str {
        match self.exposure.isolation {
            Isolation::LineFloated | Isolation::LineInsulated => "near",
            _ => "c",
        }
    }

    fn terminal_and_earth(&self) -> Vec<Part> {
        let values = &self.exposure.values;
        let mut parts = Vec::new();
        if self.exposure.reach == Reach::AerialTerminal {
            parts.push(part("Caerial", self.common(), "t", values.aerial_farad));
        }
        if self.exposure.cord.earthed() && !self.has("earth_open") {
            parts.push(part("Rearth", "c", "0", values.earth_ohm));
        }
        parts
    }

    /// Parts failed short and stray conductors: each is one more short.
    fn faults(&self) -> Vec<Part> {
        let broken_winding = match self.exposure.isolation {
            Isolation::Isolating => "far",
            _ => "near",
        };
        // Ahead of the switch and of the conductor: on the contact itself.
        let [far_contact, near_contact] = self.contacts();
        let shorts = [
            ("stray_far", part("Rstray_far", "c", far_contact, SHORT_OHM)),
            ("stray_near", part("Rstray_near", "c", near_contact, SHORT_OHM)),
            ("near_capacitor_shorted", part("Rline_near_short", "near", "c", SHORT_OHM)),
            ("far_capacitor_shorted", part("Rline_far_short", "far", "c", SHORT_OHM)),
            (
                "selector_capacitor_shorted",
                part("Rline_selector_short", self.selected_leg(), "c", SHORT_OHM),
            ),
            ("network_capacitor_shorted", part("Rnetwork_short", "near", "c", SHORT_OHM)),
            ("aerial_capacitor_shorted", part("Raerial_short", self.common(), "t", SHORT_OHM)),
            ("insulation_breakdown", part("Rbreakdown", broken_winding, "c", SHORT_OHM)),
            ("feed_earthed", part("Rfeed", "neutral", "0", SHORT_OHM)),
        ];
        shorts.into_iter().filter(|(fault, _)| self.has(fault)).map(|(_, short)| short).collect()
    }
}

fn part(name: &'static str, from: &'static str, to: &'static str, value: f64) -> Part {
    Part { name, ends: [from, to], value }
}
