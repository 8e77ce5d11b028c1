//! An invented unit and what an inspector finds of it, for the guided demonstration.

/// An answer of the demonstration: a question and what is said to it, as JSON.
#[derive(Clone, Copy, Debug)]
pub struct DemoAnswer {
    /// The question's id.
    pub question: &'static str,
    /// The answer, as JSON.
    pub answer: &'static str,
}

/// The invented unit.
#[derive(Clone, Copy, Debug)]
pub struct DemoUnit {
    /// The message that names it.
    pub name: &'static str,
    /// The message that says where it stands.
    pub place: &'static str,
    /// Its kind.
    pub kind: &'static str,
    /// What an inspector would answer, whatever is asked.
    pub answers: &'static [DemoAnswer],
}

const fn says(question: &'static str, answer: &'static str) -> DemoAnswer {
    DemoAnswer { question, answer }
}

/// A shelf radio with the common on the chassis and its switch in the near leg: live when it is off.
pub const DEMO_UNIT: DemoUnit = DemoUnit {
    name: "demo-radio-name",
    place: "demo-radio-place",
    kind: "table_radio",
    answers: &[
        says("plug", r#""two_polarised_blades""#),
        says("bare_metal", r#"["screws_or_shafts"]"#),
        says("back", r#""fitted""#),
        says("terminals", r#"["none"]"#),
        says("selector", r#""absent""#),
        says("earth_lift", r#""absent""#),
        says("metal_joined", r#""chassis""#),
        says("transformer", r#""none""#),
        says("common_to_chassis", r#""direct""#),
        says("common_leg", r#""pin_b""#),
        says("switch_leg", r#""pin_b""#),
        says("line_capacitor", r#""none""#),
        says("line_capacitor_class", r#""cant_tell""#),
        says("earth_wire", r#""not_on_chassis""#),
        says("values.rated", r#"{"volts": 117, "hertz": 60, "watts": 35}"#),
        says("cord", r#""cloth_or_rubber""#),
        says("cord_wires", r#""ordinary""#),
        says("accessory_outlet", r#""absent""#),
        says("fuse", r#""none""#),
        says("filter_capacitors", r#""sound""#),
        says("materials", r#"["none"]"#),
    ],
};
