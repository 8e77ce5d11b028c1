//! Reads one arrangement from an input file, exactly as given.

use serde_json::Value;

use super::factors::{
    Arrangement, Cord, Isolation, LineCapacitor, LineCapacitorClass, LineSide, NearPin, Reach,
    SwitchLeg,
};
use super::values::Values;
use crate::fields::{FieldError, Fields};
use crate::supply::Supply;
use crate::words::Message;

const KEYS: &[&str] = &[
    "supply",
    "isolation",
    "cord",
    "near_pin",
    "line_capacitor",
    "line_capacitor_class",
    "switch_leg",
    "reach",
    "values",
];

const VALUE_KEYS: &[&str] = &[
    "line_capacitor_farad",
    "network_ohm",
    "network_farad",
    "aerial_farad",
    "heater_ohm",
    "load_ohm",
    "winding_farad",
    "primary_ohm",
    "earth_ohm",
];

/// One arrangement on one supply, with the values of its parts.
#[derive(Clone, Copy, Debug)]
pub struct ExposureFile {
    /// What it is plugged into.
    pub supply: Supply,
    /// The arrangement.
    pub arrangement: Arrangement,
    /// Its parts.
    pub values: Values,
}

/// Reads an arrangement and refuses one that cannot exist.
///
/// # Errors
/// Names the field and what it takes.
pub fn read_exposure(value: Value) -> Result<ExposureFile, FieldError> {
    let mut fields = Fields::of(value, "")?;
    let given = fields.take("supply");
    let supply = Supply::read(fields.required("supply", given)?, "supply")?;
    let isolation = fields.id("isolation", Isolation::IDS, Isolation::of)?;
    let isolation = fields.required("isolation", isolation)?;
    let line = if isolation.has_line() {
        Some(read_line(&mut fields)?)
    } else {
        ignore_line(&mut fields);
        None
    };
    let arrangement = Arrangement { isolation, line };
    let values = read_values(&mut fields)?;
    fields.finish(KEYS)?;
    match arrangement.contradiction() {
        Some(field) => Err(impossible(field)),
        None => Ok(ExposureFile { supply, arrangement, values }),
    }
}

fn impossible(field: &'static str) -> FieldError {
    FieldError::new(field, Message::new(format!("takes-possible-{field}")))
}

fn read_line(fields: &mut Fields) -> Result<LineSide, FieldError> {
    let cord = fields.id("cord", Cord::IDS, Cord::of)?;
    let near_pin = fields.id("near_pin", NearPin::IDS, NearPin::of)?;
    let capacitor = fields.id("line_capacitor", LineCapacitor::IDS, LineCapacitor::of)?;
    let class =
        fields.id("line_capacitor_class", LineCapacitorClass::IDS, LineCapacitorClass::of)?;
    let switch_leg = fields.id("switch_leg", SwitchLeg::IDS, SwitchLeg::of)?;
    let reach = fields.id("reach", Reach::IDS, Reach::of)?;
    Ok(LineSide {
        cord: fields.required("cord", cord)?,
        near_pin: fields.required("near_pin", near_pin)?,
        line_capacitor: fields.required("line_capacitor", capacitor)?,
        line_capacitor_class: fields.required("line_capacitor_class", class)?,
        switch_leg: fields.required("switch_leg", switch_leg)?,
        reach: fields.required("reach", reach)?,
    })
}

/// A unit without a line side has none of the other factors; whatever is said of them is ignored.
fn ignore_line(fields: &mut Fields) {
    for key in KEYS.iter().filter(|key| !matches!(**key, "supply" | "isolation" | "values")) {
        fields.take(key);
    }
}

fn read_values(fields: &mut Fields) -> Result<Values, FieldError> {
    let mut values = Values::default();
    let Some(mut given) = fields.object("values")? else {
        return Ok(values);
    };
    let farads = given.positive_below("line_capacitor_farad", FARADS)?;
    values.line_capacitor_farad = farads.map(|farads| farads.max(LEAST));
    for (key, place, bound) in [
        ("network_ohm", &mut values.network_ohm, OHMS),
        ("network_farad", &mut values.network_farad, FARADS),
        ("aerial_farad", &mut values.aerial_farad, FARADS),
        ("heater_ohm", &mut values.heater_ohm, OHMS),
        ("load_ohm", &mut values.load_ohm, OHMS),
        ("winding_farad", &mut values.winding_farad, FARADS),
        ("primary_ohm", &mut values.primary_ohm, OHMS),
        ("earth_ohm", &mut values.earth_ohm, OHMS),
    ] {
        if let Some(number) = given.positive_below(key, bound)? {
            *place = number.max(LEAST);
        }
    }
    given.finish(VALUE_KEYS)?;
    Ok(values)
}

/// What is smaller, Ω or F, is a wire or no capacitor, as this is: of its reciprocal no sum could be made.
const LEAST: f64 = 1e-18;

/// No capacitor of such a unit reaches 1 F, no resistance 1 TΩ.
pub const FARADS: f64 = 1.0;
/// See [`FARADS`].
pub const OHMS: f64 = 1e12;
