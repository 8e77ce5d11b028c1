//! The question bank: ids, answers, who may ask, what an answer can do.
//!
//! The ids are a contract with stored findings and scripts; the sentences are in the Fluent files.

use std::sync::LazyLock;

use serde::Deserialize;

use crate::fields::id_enum;

id_enum! {
    /// How far the inspector may go, beyond looking from outside.
    pub enum Access {
        /// Looking and touching from outside, the unit unplugged: always given.
        Outside = "outside",
        /// The cover may come off.
        CoverOff = "cover_off",
        /// There is a meter, and somebody who can use it.
        Meter = "meter",
    }
}

id_enum! {
    /// The questions, in the order of the bank.
    pub enum Question {
        /// What the plug looks like.
        Plug = "plug",
        /// Where bare metal can be touched.
        BareMetal = "bare_metal",
        /// Whether the back is on.
        Back = "back",
        /// Terminals for aerial, earth, pickup, loudspeaker.
        Terminals = "terminals",
        /// A switch for ground or hum polarity.
        Selector = "selector",
        /// A switch that lifts the earth.
        EarthLift = "earth_lift",
        /// What kind of unit it is.
        Kind = "kind",
        /// What supplies the rating plate names.
        RatingPlate = "rating_plate",
        /// What iron can be seen.
        IronSeen = "iron_seen",
        /// The tubes by their types.
        TubeList = "tube_list",
        /// How many tubes.
        TubeCount = "tube_count",
        /// Whether somebody reports a tingle.
        Tingle = "tingle",
        /// Whether it has been rewired.
        Rewired = "rewired",
        /// The state of the cord.
        Cord = "cord",
        /// How many wires the cord has.
        CordWires = "cord_wires",
        /// An outlet on the unit.
        AccessoryOutlet = "accessory_outlet",
        /// What the bare metal found is joined to.
        MetalJoined = "metal_joined",
        /// The iron and its leads.
        Transformer = "transformer",
        /// How the common goes to the chassis.
        CommonToChassis = "common_to_chassis",
        /// Which pin the common is wired to.
        CommonLeg = "common_leg",
        /// Which leg the switch opens.
        SwitchLeg = "switch_leg",
        /// Where a line capacitor goes.
        LineCapacitor = "line_capacitor",
        /// Its class.
        LineCapacitorClass = "line_capacitor_class",
        /// Where the earth wire goes.
        EarthWire = "earth_wire",
        /// Which leg is fused.
        Fuse = "fuse",
        /// The state of the filter capacitors.
        FilterCapacitors = "filter_capacitors",
        /// Materials that need care.
        Materials = "materials",
    }
}

id_enum! {
    /// Values that can be read off a part or measured.
    pub enum ValueId {
        /// Line capacitor, F.
        LineCapacitor = "line_capacitor",
        /// Capacitor between common and chassis, F.
        NetworkCapacitor = "network_capacitor",
        /// Capacitor to the aerial terminal, F.
        AerialCapacitor = "aerial_capacitor",
        /// Resistor between common and chassis, Ω.
        NetworkResistor = "network_resistor",
    }
}

/// What answers to a question can do.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Role {
    /// They remove arrangements.
    Conclusive,
    /// They move what is likely.
    Soft,
    /// They add a caution of their own.
    Overlay,
}

/// What the answers to a question look like.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Shape {
    /// One of the ids.
    One,
    /// One or more of the ids; the first stands alone.
    Several,
    /// A whole number.
    Number,
    /// Given elsewhere in the file: the list of tubes.
    Tubes,
}

/// A question's properties.
#[derive(Clone, Copy, Debug)]
pub struct Entry {
    /// What its answers can do.
    pub role: Role,
    /// Any one of these lets it be asked.
    pub access: &'static [Access],
    /// What its answers look like.
    pub shape: Shape,
    /// The ids of its answers.
    pub answers: &'static [&'static str],
}

/// All questions, in the order of the bank.
pub fn bank() -> &'static [Question] {
    Question::ALL
}

const OUTSIDE: &[Access] = &[Access::Outside];
const COVER_OFF: &[Access] = &[Access::CoverOff];

const fn ask(
    role: Role,
    access: &'static [Access],
    shape: Shape,
    answers: &'static [&'static str],
) -> Entry {
    Entry { role, access, shape, answers }
}

impl Question {
    /// The question's properties.
    #[rustfmt::skip]
    pub const fn entry(self) -> Entry {
        use Role::{Conclusive, Overlay, Soft};
        use Shape::{Number, One, Several, Tubes};
        match self {
            Self::Plug => ask(Conclusive, OUTSIDE, One, &["two_equal_blades", "two_polarised_blades", "three_pins", "earth_pin_missing", "three_pins_reversible", "battery_only", "outside_supply", "no_plug"]),
            Self::BareMetal => ask(Conclusive, OUTSIDE, Several, &["none_anywhere", "screws_or_shafts", "panel_or_cabinet", "instrument_jack", "socket_or_pickup"]),
            Self::Back => ask(Conclusive, OUTSIDE, One, &["fitted", "missing"]),
            Self::Terminals => ask(Conclusive, OUTSIDE, Several, &["none", "aerial_or_earth", "pickup_or_speaker"]),
            Self::Selector | Self::EarthLift => ask(Conclusive, OUTSIDE, One, &["absent", "present"]),
            Self::Kind => ask(Soft, OUTSIDE, One, &["table_radio", "console_radio", "portable_radio", "record_player", "instrument_amplifier", "other"]),
            Self::RatingPlate => ask(Soft, OUTSIDE, One, &["ac_dc", "ac_only", "ac_dc_battery", "battery", "none"]),
            Self::IronSeen => ask(Soft, OUTSIDE, One, &["none_visible", "small", "large"]),
            Self::TubeList => ask(Soft, OUTSIDE, Tubes, &[]),
            Self::TubeCount => ask(Soft, OUTSIDE, Number, &[]),
            Self::Tingle => ask(Soft, OUTSIDE, One, &["reported", "not_reported"]),
            Self::Rewired => ask(Soft, OUTSIDE, One, &["looks_original", "reworked"]),
            Self::Cord => ask(Overlay, OUTSIDE, One, &["sound", "cracked", "spliced", "cloth_or_rubber"]),
            Self::CordWires => ask(Overlay, OUTSIDE, One, &["ordinary", "three_wires_two_pins"]),
            Self::AccessoryOutlet => ask(Overlay, OUTSIDE, One, &["present", "absent"]),
            Self::MetalJoined => ask(Conclusive, &[Access::CoverOff, Access::Meter], One, &["chassis", "common", "no"]),
            Self::Transformer => ask(Conclusive, COVER_OFF, One, &["none", "heaters_only_traced", "separate_traced", "shared_lead", "motor_winding", "not_traced"]),
            Self::CommonToChassis => ask(Conclusive, COVER_OFF, One, &["direct", "through_network", "not_joined"]),
            Self::CommonLeg => ask(Conclusive, COVER_OFF, One, &["pin_a", "pin_b", "neither"]),
            Self::SwitchLeg => ask(Conclusive, COVER_OFF, One, &["pin_a", "pin_b", "both", "none"]),
            Self::LineCapacitor => ask(Conclusive, COVER_OFF, One, &["none", "pin_a_leg", "pin_b_leg", "both_legs", "on_selector"]),
            Self::LineCapacitorClass => ask(Conclusive, COVER_OFF, One, &["ordinary", "class_y"]),
            Self::EarthWire => ask(Conclusive, COVER_OFF, One, &["on_chassis", "not_on_chassis"]),
            Self::Fuse => ask(Overlay, COVER_OFF, One, &["pin_a_leg", "pin_b_leg", "none"]),
            Self::FilterCapacitors => ask(Overlay, COVER_OFF, One, &["sound", "swollen_or_leaking"]),
            Self::Materials => ask(Overlay, COVER_OFF, Several, &["none", "asbestos", "selenium", "pcb", "radium"]),
        }
    }

    /// Whether it may be asked with this access.
    pub fn may_be_asked(self, access: &[Access]) -> bool {
        self.entry().access.iter().any(|needed| access.contains(needed))
    }
}

/// What asking a question takes, and how often it fails (common practice, estimates).
#[derive(Clone, Debug, PartialEq, Deserialize)]
pub struct Cost {
    /// The question, or `value` and the value's id.
    pub question: String,
    /// The inspector's time, s.
    pub seconds: f64,
    /// Share of inspectors who cannot tell.
    pub cant_tell_rate: f64,
    /// Share of answers that are wrong.
    pub wrong_rate: f64,
}

static COSTS: LazyLock<Vec<Cost>> = LazyLock::new(|| {
    let text = include_str!("../../data/questions.csv");
    csv::Reader::from_reader(text.as_bytes()).deserialize().filter_map(Result::ok).collect()
});

/// What asking a question takes.
pub fn cost_of(question: Question) -> &'static Cost {
    find_cost(question.id())
}

/// What reading or measuring a value takes.
pub fn value_cost(value: ValueId) -> &'static Cost {
    find_cost(match value {
        ValueId::LineCapacitor => "value line_capacitor",
        ValueId::NetworkCapacitor => "value network_capacitor",
        ValueId::AerialCapacitor => "value aerial_capacitor",
        ValueId::NetworkResistor => "value network_resistor",
    })
}

/// What one meter reading takes.
pub fn reading_cost() -> &'static Cost {
    // The one row that is of no question and no value.
    COSTS.iter().find(|cost| cost.question.ends_with("reading")).unwrap_or(&UNKNOWN_COST)
}

static UNKNOWN_COST: Cost =
    Cost { question: String::new(), seconds: 60.0, cant_tell_rate: 0.5, wrong_rate: 0.5 };

fn find_cost(id: &str) -> &'static Cost {
    COSTS.iter().find(|cost| cost.question == id).unwrap_or(&UNKNOWN_COST)
}

#[cfg(test)]
mod tests {
    use super::{Access, COSTS, Question, ValueId, bank, value_cost};

    #[test]
    fn every_question_and_value_has_its_cost() {
        for question in bank() {
            let row = COSTS.iter().find(|cost| cost.question == question.id());
            assert!(row.is_some_and(|cost| cost.seconds > 0.0), "{}", question.id());
        }
        for &value in ValueId::ALL {
            assert!(!value_cost(value).question.is_empty());
        }
    }

    #[test]
    fn access_of_the_table_and_of_the_costs_agree() {
        let text = include_str!("../../data/questions.csv");
        for question in bank() {
            let row = text.lines().find(|line| line.starts_with(&format!("{},", question.id())));
            let access = row.unwrap().split(',').nth(1).unwrap();
            assert_eq!(access.contains("outside"), question.may_be_asked(&[Access::Outside]));
            assert_eq!(access.contains("cover_off"), question.may_be_asked(&[Access::CoverOff]));
            assert_eq!(access.contains("meter"), question.may_be_asked(&[Access::Meter]));
        }
        assert_eq!(Question::ALL.len(), 27);
    }
}
