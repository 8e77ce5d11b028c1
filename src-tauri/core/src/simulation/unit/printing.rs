//! What plates, tubes, hearsay and the printing on parts tell about a physical unit.

use rand::Rng;
use serde_json::{Map, Value, json};

use super::PhysicalUnit;
use super::answers::{Answers, RARER, TUBES, tell};
use super::parts::{AerialPost, Bond, Capacitor};

impl PhysicalUnit {
    pub(super) fn tell_soft(&self, rng: &mut impl Rng, answers: &mut Answers) {
        tell(answers, "kind", self.kind);
        tell(answers, "rating_plate", self.rating_plate);
        let tubes: Vec<&str> = self.line_up.tubes.iter().map(|tube| tube.designation).collect();
        tell(answers, "tube_count", tubes.len());
        tell(answers, TUBES, tubes);
        let tingle = self.tingled && !rng.random_bool(RARER);
        tell(answers, "tingle", if tingle { "reported" } else { "not_reported" });
        tell(answers, "rewired", if self.reworked { "reworked" } else { "looks_original" });
    }

    pub(super) fn tell_condition(&self, answers: &mut Answers) {
        let filters = if self.filters_leaking { "swollen_or_leaking" } else { "sound" };
        tell(answers, "filter_capacitors", filters);
        let none = self.materials.is_empty();
        tell(answers, "materials", if none { vec!["none"] } else { self.materials.clone() });
        if let Some(rated) = self.rated {
            let printed =
                [("volts", Some(rated.volts)), ("hertz", rated.hertz), ("watts", rated.watts)];
            let figures = printed
                .into_iter()
                .filter_map(|(name, figure)| Some((name.to_owned(), json!(figure?))));
            tell(answers, "values.rated", figures.collect::<Map<_, _>>());
        }
    }

    pub(super) fn tell_values(&self, rng: &mut impl Rng, answers: &mut Answers) {
        let mut farads = |id: &str, part: Capacitor, rng: &mut _| {
            let value = read_part(rng, "farads", part.farad, part.marked_farad);
            tell(answers, id, value);
        };
        if let Some(capacitor) = self.leg_capacitor {
            farads("values.line_capacitor", capacitor.part, rng);
        }
        if let Some(AerialPost::ThroughCapacitor(part)) = self.aerial_post {
            farads("values.aerial_capacitor", part, rng);
        }
        if let Bond::Network { ohm, marked_ohm, capacitor } = self.bond {
            farads("values.network_capacitor", capacitor, rng);
            let value = read_part(rng, "ohms", ohm, marked_ohm);
            tell(answers, "values.network_resistor", value);
        }
    }
}

/// A part measured, marked, or marked without saying so (which means marked).
fn read_part(rng: &mut impl Rng, unit: &str, real: f64, marked: f64) -> Value {
    match rng.random_range(0..3) {
        0 => json!({unit: real, "measured": true}),
        1 => json!({unit: marked, "measured": false}),
        _ => json!({unit: marked}),
    }
}
