//! What a charged capacitor can do and how long it takes to bleed, in words.

use super::bench_test_views::{ChargeLevel, ChargeLimitView, ChargeView};
use super::error::Problem;
use super::heater_views::NamedFigure;
use super::session::Workbench;
use crate::body::{BODY_OHM, ChargeLimit, EMPTY, LOW_VOLTS, PLUG_VOLTS, StoredCharge};
use crate::fields::{FieldError, Fields};
use crate::words::{Message, Quantity, Words, amperes, coulombs, joules, ohms, seconds, volts};

/// No capacitor of such a unit reaches 1 F, no voltage in it 10 kV, no bleed resistor 1 TΩ.
const FARADS: f64 = 1.0;
const VOLTS: f64 = 10_000.0;
const OHMS: f64 = 1e12;

impl Workbench {
    /// What a charged capacitor can do: `{"farads": …, "volts": …, "bleed_ohms": …}`, the bleed resistor only
    /// where there is one.
    ///
    /// # Errors
    /// A figure does not fit, by its field.
    pub fn stored_charge(&self, charge: serde_json::Value) -> Result<ChargeView, Problem> {
        Ok(view(&read(charge)?, &self.words))
    }
}

fn read(charge: serde_json::Value) -> Result<StoredCharge, FieldError> {
    let mut fields = Fields::of(charge, "")?;
    let farads = fields.positive_below("farads", FARADS)?;
    let volts = fields.positive_below("volts", VOLTS)?;
    let charge = StoredCharge {
        farads: fields.required("farads", farads)?,
        volts: fields.required("volts", volts)?,
        bleed_ohms: fields.positive_below("bleed_ohms", OHMS)?,
    };
    fields.finish(&["farads", "volts", "bleed_ohms"])?;
    Ok(charge)
}

/// A capacitor as it is marked, and as much as it may hold.
struct Ends {
    marked: StoredCharge,
    most: StoredCharge,
}

impl Ends {
    /// A figure at both ends, in words.
    fn of(&self, words: &Words, figure: impl Fn(&StoredCharge) -> Quantity) -> String {
        let (low, high) = (figure(&self.marked), figure(&self.most));
        if low == high {
            return words.write(&low);
        }
        words.say(&Message::new("reading-range").text("low", low).text("high", high))
    }
}

fn view(charge: &StoredCharge, words: &Words) -> ChargeView {
    let most = charge.at_most();
    let ends = Ends { marked: *charge, most };
    let named = |id: &str, figure: String, note: Message| NamedFigure {
        name: words.say_id(id),
        figure,
        note: words.say(&note),
    };
    let body = Message::new("charge-first-note").text("body", ohms(BODY_OHM.value));
    let energy_note =
        if charge.is_electrolytic() { "charge-electrolytic-note" } else { "charge-marked-note" };
    ChargeView {
        figures: vec![
            named(
                "charge-energy",
                ends.of(words, |one| joules(one.joules())),
                Message::new(energy_note),
            ),
            named(
                "charge-charge",
                ends.of(words, |one| coulombs(one.coulombs())),
                Message::new("charge-charge-note"),
            ),
            named("charge-first", words.write(&amperes(most.first_amperes())), body),
        ],
        levels: levels(&ends, words),
        volts: charge.volts,
        from: words.write(&volts(charge.volts)),
        until: words.write(&seconds(curve_seconds(&most))),
        curve: curve(&most),
        curve_seconds: curve_seconds(&most),
        limits: limits(&most, words),
        not_ruled_out: words.say_id("charge-not-ruled-out"),
        cautions: cautions(charge, words),
    }
}

/// The curve goes on a little beyond the time at which it counts as empty.
fn curve_seconds(most: &StoredCharge) -> f64 {
    most.seconds_to_empty().map_or(0.0, |seconds| seconds * 1.1)
}

fn curve(most: &StoredCharge) -> Vec<f64> {
    const STEPS: u32 = 48;
    if most.bleed_ohms.is_none() {
        return Vec::new();
    }
    let whole = curve_seconds(most);
    (0..=STEPS).map(|step| most.volts_after(whole * f64::from(step) / f64::from(STEPS))).collect()
}

fn levels(ends: &Ends, words: &Words) -> Vec<ChargeLevel> {
    let empty = ends.marked.volts * EMPTY.value;
    let level = |id: &str, level: f64| {
        let name = Message::new(format!("charge-level-{id}")).text("volts", volts(level));
        let time = match ends.most.seconds_to(level) {
            None => words.say_id("charge-never"),
            Some(0.0) => words.say_id("charge-below"),
            Some(_) => ends.of(words, |one| seconds(one.seconds_to(level).unwrap_or_default())),
        };
        ChargeLevel {
            volts: level,
            name: words.say(&name),
            seconds: ends.most.seconds_to(level),
            time,
        }
    };
    let mut levels =
        vec![level("low", LOW_VOLTS.value), level("plug", PLUG_VOLTS.value), level("empty", empty)];
    levels.sort_by(|a, b| b.volts.total_cmp(&a.volts));
    levels
}

fn limits(most: &StoredCharge, words: &Words) -> Vec<ChargeLimitView> {
    let reached: Vec<ChargeLimit> = most.reaches().collect();
    let gravest_first = ChargeLimit::ALL.iter().rev();
    gravest_first
        .map(|limit| ChargeLimitView {
            text: words.say_id(&format!("charge-limit-{}", limit.id())),
            reached: reached.contains(limit),
        })
        .collect()
}

fn cautions(charge: &StoredCharge, words: &Words) -> Vec<String> {
    let bleeds = if charge.bleed_ohms.is_some() { "charge-timer" } else { "charge-no-bleed" };
    let ids = ["charge-unplug", bleeds, "charge-measure", "charge-discharge"];
    ids.map(|id| words.say_id(id)).to_vec()
}
