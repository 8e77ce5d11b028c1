//! Ten invented units to look around in: every class and both bases, at a flea market, backstage and
//! in a shop. They are flagged in the record, stay on this device, and go in one step.

use serde_json::{Value, json};

use super::commands::found;
use super::error::Problem;
use super::session::Workbench;
use super::views::UnitView;
use crate::store::{Action, Change, UnitFilter};
use crate::supply::PRESETS;

/// An invented unit and what was found of it.
struct Scene {
    /// The message that names it.
    name: &'static str,
    /// The message that says where it stands and whose it is.
    place: &'static str,
    kind: &'static str,
    /// The id of a supply to choose.
    supply: &'static str,
    access: &'static [&'static str],
    /// Findings: a path and a value, as JSON.
    findings: &'static [(&'static str, &'static str)],
}

const OUTSIDE: &[&str] = &["outside"];
const WITH_METER: &[&str] = &["outside", "meter"];
const ON_BENCH: &[&str] = &["outside", "cover_off", "meter"];

const SCENES: [Scene; 10] = [
    // Live, not ruled out: nobody may open it and there is bare metal.
    Scene {
        name: "demo-stall-radio-name",
        place: "demo-stall-radio-place",
        kind: "table_radio",
        supply: "120v_60hz",
        access: OUTSIDE,
        findings: &[
            ("answers.plug", r#""two_equal_blades""#),
            ("answers.bare_metal", r#"["screws_or_shafts"]"#),
            ("answers.back", r#""fitted""#),
            ("answers.cord", r#""cloth_or_rubber""#),
            ("answers.rating_plate", r#""ac_dc""#),
        ],
    },
    // No line, shown.
    Scene {
        name: "demo-picnic-radio-name",
        place: "demo-picnic-radio-place",
        kind: "portable_radio",
        supply: "120v_60hz",
        access: OUTSIDE,
        findings: &[
            ("answers.plug", r#""battery_only""#),
            ("answers.rating_plate", r#""battery""#),
        ],
    },
    // Live, not ruled out: an aerial terminal with an unknown capacitor behind it, at 230 V.
    Scene {
        name: "demo-aerial-radio-name",
        place: "demo-aerial-radio-place",
        kind: "table_radio",
        supply: "230v_50hz",
        access: OUTSIDE,
        findings: &[
            ("answers.plug", r#""two_equal_blades""#),
            ("answers.bare_metal", r#"["none_anywhere"]"#),
            ("answers.back", r#""fitted""#),
            ("answers.terminals", r#"["aerial_or_earth"]"#),
            ("answers.cord", r#""sound""#),
        ],
    },
    // Live, not ruled out: the third pin is gone and somebody felt it.
    Scene {
        name: "demo-borrowed-amplifier-name",
        place: "demo-borrowed-amplifier-place",
        kind: "instrument_amplifier",
        supply: "120v_60hz",
        access: WITH_METER,
        findings: &[
            ("answers.plug", r#""earth_pin_missing""#),
            ("answers.bare_metal", r#"["instrument_jack", "panel_or_cabinet"]"#),
            ("answers.back", r#""fitted""#),
            ("answers.terminals", r#"["none"]"#),
            ("answers.selector", r#""present""#),
            ("answers.tingle", r#""reported""#),
            ("readings.ohms_a_b_on", "12"),
            ("readings.ohms_a_b_off", r#""OL""#),
            ("readings.ohms_a_part_on", r#""OL""#),
            ("readings.ohms_b_part_on", r#""OL""#),
        ],
    },
    // Two faults, shown: windings traced, earth wire on the chassis.
    Scene {
        name: "demo-house-amplifier-name",
        place: "demo-house-amplifier-place",
        kind: "instrument_amplifier",
        supply: "230v_50hz",
        access: ON_BENCH,
        findings: &[
            ("answers.plug", r#""three_pins""#),
            ("answers.bare_metal", r#"["instrument_jack"]"#),
            ("answers.back", r#""fitted""#),
            ("answers.terminals", r#"["none"]"#),
            ("answers.selector", r#""absent""#),
            ("answers.earth_lift", r#""absent""#),
            ("answers.transformer", r#""separate_traced""#),
            ("answers.line_capacitor", r#""none""#),
            ("answers.earth_wire", r#""on_chassis""#),
        ],
    },
    // Leaky, shown: a measured capacitor on the ground switch.
    Scene {
        name: "demo-ground-switch-amplifier-name",
        place: "demo-ground-switch-amplifier-place",
        kind: "instrument_amplifier",
        supply: "120v_60hz",
        access: ON_BENCH,
        findings: &[
            ("answers.plug", r#""two_equal_blades""#),
            ("answers.bare_metal", r#"["instrument_jack"]"#),
            ("answers.back", r#""fitted""#),
            ("answers.terminals", r#"["none"]"#),
            ("answers.selector", r#""present""#),
            ("answers.earth_lift", r#""absent""#),
            ("answers.transformer", r#""separate_traced""#),
            ("answers.line_capacitor", r#""on_selector""#),
            ("answers.line_capacitor_class", r#""ordinary""#),
            ("values.line_capacitor", r#"{"farads": 4.7e-8, "measured": true}"#),
            ("answers.cord", r#""sound""#),
            ("values.rated", r#"{"volts": 117, "hertz": 60, "watts": 60}"#),
            // The capacitor holds a meter of high impedance near the line: the touch test ends there.
            ("live_test.qualified", "true"),
            ("live_test.protection", r#""gfci""#),
            ("live_test.check_first_on", "117"),
        ],
    },
    // Live, shown: the switch is in the common leg, so it is live when it is off.
    Scene {
        name: "demo-kitchen-radio-name",
        place: "demo-kitchen-radio-place",
        kind: "table_radio",
        supply: "120v_60hz",
        access: ON_BENCH,
        findings: &[
            ("answers.plug", r#""two_polarised_blades""#),
            ("answers.bare_metal", r#"["screws_or_shafts"]"#),
            ("answers.back", r#""fitted""#),
            ("answers.terminals", r#"["none"]"#),
            ("answers.transformer", r#""none""#),
            ("answers.common_to_chassis", r#""direct""#),
            ("answers.common_leg", r#""pin_b""#),
            ("answers.switch_leg", r#""pin_b""#),
            ("answers.cord", r#""cracked""#),
            ("readings.ohms_b_chassis_on", "0.4"),
            ("readings.ohms_a_chassis_on", "124"),
            ("readings.ohms_b_chassis_off", r#""OL""#),
            ("tubes", r#"["12SA7", "12SK7", "12SQ7", "50L6GT", "35Z5GT"]"#),
        ],
    },
    // Leaky, not ruled out: a class Y capacitor whose value nobody has read yet.
    Scene {
        name: "demo-record-player-name",
        place: "demo-record-player-place",
        kind: "record_player",
        supply: "120v_60hz",
        access: ON_BENCH,
        findings: &[
            ("answers.plug", r#""two_equal_blades""#),
            ("answers.bare_metal", r#"["panel_or_cabinet"]"#),
            ("answers.back", r#""fitted""#),
            ("answers.terminals", r#"["none"]"#),
            ("answers.transformer", r#""separate_traced""#),
            ("answers.line_capacitor", r#""pin_b_leg""#),
            ("answers.line_capacitor_class", r#""class_y""#),
        ],
    },
    // One fault, not ruled out: nobody has looked where the earth wire goes.
    Scene {
        name: "demo-console-name",
        place: "demo-console-place",
        kind: "console_radio",
        supply: "120v_60hz",
        access: ON_BENCH,
        findings: &[
            ("answers.plug", r#""three_pins""#),
            ("answers.bare_metal", r#"["panel_or_cabinet"]"#),
            ("answers.back", r#""fitted""#),
            ("answers.terminals", r#"["none"]"#),
            ("answers.selector", r#""absent""#),
            ("answers.earth_lift", r#""absent""#),
            ("answers.transformer", r#""separate_traced""#),
            ("answers.line_capacitor", r#""none""#),
        ],
    },
    // One fault, shown: wired right, an outlet wired backwards makes it live.
    Scene {
        name: "demo-repaired-radio-name",
        place: "demo-repaired-radio-place",
        kind: "table_radio",
        supply: "120v_60hz",
        access: ON_BENCH,
        findings: &[
            ("answers.plug", r#""two_polarised_blades""#),
            ("answers.bare_metal", r#"["screws_or_shafts"]"#),
            ("answers.back", r#""fitted""#),
            ("answers.terminals", r#"["none"]"#),
            ("answers.transformer", r#""none""#),
            ("answers.common_to_chassis", r#""direct""#),
            ("answers.common_leg", r#""pin_b""#),
            ("answers.switch_leg", r#""pin_a""#),
            ("answers.fuse", r#""pin_a_leg""#),
        ],
    },
];

impl Workbench {
    /// Loads the demonstration, unless some of it is there. Returns all units.
    ///
    /// # Errors
    /// The record cannot be written; what had been loaded is removed again.
    pub fn load_demo(&mut self) -> Result<Vec<UnitView>, Problem> {
        if !self.has_demo()? {
            // The first of the list is to stand first: the last changed does.
            let loaded = SCENES.iter().rev().try_for_each(|scene| self.load(scene));
            if loaded.is_err() {
                self.remove_demo()?;
            }
            loaded?;
        }
        self.units(None)
    }

    /// Removes all of the demonstration, with what was added to it. Returns the units that are left.
    ///
    /// # Errors
    /// The record cannot be written; the demonstration is whole then.
    pub fn remove_demo(&mut self) -> Result<Vec<UnitView>, Problem> {
        let photos = self.store.photo_digests()?;
        self.store.remove_demo()?;
        self.free_files(&photos);
        self.units(None)
    }

    fn has_demo(&self) -> Result<bool, Problem> {
        let units = self.store.units(&UnitFilter::default())?;
        Ok(units.iter().any(|unit| unit.demo))
    }

    fn load(&mut self, scene: &Scene) -> Result<(), Problem> {
        let (unit, inspection) = ((self.around.ids)(), (self.around.ids)());
        let changes = self.changes(scene)?;
        let action = Action { unit, inspection: Some(inspection), changes, demo: true };
        let stamp = self.stamp();
        self.store.append(&stamp, &action, &mut self.around.ids)?;
        self.settled(inspection)?;
        Ok(())
    }

    fn changes(&self, scene: &Scene) -> Result<Vec<Change>, Problem> {
        let number = self.store.next_number()?;
        let access = scene.access.iter().map(|access| (*access).to_owned()).collect();
        let supply = PRESETS.iter().find(|preset| preset.id == scene.supply);
        let supply = supply.map(|preset| json!(preset.supply));
        let mut changes = vec![
            Change::UnitCreated { number },
            Change::UnitName(self.words.say_id(scene.name)),
            Change::UnitPlace(self.words.say_id(scene.place)),
            Change::UnitKind(scene.kind.to_owned()),
            Change::InspectionStarted,
            Change::InspectionAccess(access),
            found("answers.kind", json!(scene.kind)),
        ];
        changes.extend(supply.map(Change::UnitSupply));
        let findings = scene.findings.iter();
        changes.extend(findings.filter_map(|(path, value)| Some(found(path, read(value)?))));
        Ok(changes)
    }
}

/// A value of a scene; a test reads them all.
fn read(json: &str) -> Option<Value> {
    serde_json::from_str(json).ok()
}
