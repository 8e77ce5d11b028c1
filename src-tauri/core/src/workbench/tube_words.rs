//! A tube in words: its heater, what it is, where its figures come from and what is doubtful about them.

use super::heater_views::{TubeHit, TubeRow};
use crate::figure::Mark;
use crate::heaters::{Doubt, HeaterKind, Known, Part, Rating, Suggestion, Tube, TubeType};
use crate::words::{Message, Words, amperes, heater_volts, ohms};

/// At most so many other names of a tube are shown.
const NAMES_SHOWN: usize = 3;

/// A type that is offered while a person types.
pub(super) fn hit(suggestion: &Suggestion, words: &Words) -> TubeHit {
    let tube = Tube::of(suggestion.name);
    TubeHit {
        name: suggestion.name.to_owned(),
        same_as: same_as(suggestion.tube, suggestion.name, words),
        corrected: suggestion.corrected,
        ..hit_of(&tube, words)
    }
}

/// A tube that the list does not offer: as its number says by rule, or a lamp.
pub(super) fn hit_of(tube: &Tube, words: &Words) -> TubeHit {
    TubeHit {
        name: tube.name.clone(),
        same_as: String::new(),
        heater: heater(tube, tube.rating, false, words),
        role: role(tube, words),
        known: tube.known,
        doubt: doubt(tube, words),
        corrected: tube.corrected,
    }
}

/// A tube of a list with its heater as it is taken there.
pub(super) fn row(part: &Part, words: &Words) -> TubeRow {
    let tube = &part.tube;
    TubeRow {
        name: tube.name.clone(),
        same_as: tube.listed.map_or_else(String::new, |listed| same_as(listed, &tube.name, words)),
        role: role(tube, words),
        heater: heater(tube, part.rating, part.is_other_connection(), words),
        volts: part.rating.volts,
        amperes: part.rating.amperes,
        place: part.place,
        known: tube.known,
        source: source(tube, words),
        doubt: doubt(tube, words),
    }
}

fn same_as(listed: &TubeType, name: &str, words: &Words) -> String {
    let others = listed.names().filter(|other| *other != name);
    let others: Vec<&str> = others.take(NAMES_SHOWN).collect();
    if others.is_empty() {
        return String::new();
    }
    words.say(&Message::new("tube-same").text("names", others.join(", ")))
}

fn role(tube: &Tube, words: &Words) -> String {
    words.say_id(&format!("tube-role-{}", tube.role.id()))
}

/// The heater in figures, as it is connected.
fn heater(tube: &Tube, rating: Rating, is_other: bool, words: &Words) -> String {
    let volts = rating.volts.map(heater_volts).unwrap_or_default();
    let current = rating.amperes.map(amperes).unwrap_or_default();
    let resistance = tube.ohms.map(ohms).unwrap_or_default();
    let id = match (tube.kind, rating.volts.is_some(), rating.amperes.is_some()) {
        (HeaterKind::ColdCathode, ..) => "tube-heater-cold",
        (HeaterKind::Barretter, ..) => "tube-heater-barretter",
        _ if tube.ohms.is_some() && rating.volts.is_some() => "tube-heater-ohms-taken",
        _ if tube.ohms.is_some() => "tube-heater-ohms",
        (_, true, true) => "tube-heater",
        (_, true, false) => "tube-heater-volts",
        (_, false, true) => "tube-heater-amperes",
        (_, false, false) => "tube-heater-unknown",
    };
    let figures =
        Message::new(id).text("volts", volts).text("amperes", current).text("ohms", resistance);
    if is_other {
        return words.say(&Message::new("tube-heater-other").message("heater", figures));
    }
    words.say(&figures)
}

fn source(tube: &Tube, words: &Words) -> String {
    let from = match (tube.known, tube.listed) {
        (Known::Unknown, _) => return words.say_id("tube-source-none"),
        (Known::ByRule, _) => return words.say_id("tube-source-by-rule"),
        (Known::Listed, None) => vec![Message::new("tube-source-lamps")],
        (Known::Listed, Some(listed)) => {
            listed.sources.iter().map(|id| Message::new(format!("tube-source-{id}"))).collect()
        }
    };
    let mark = Message::new(format!("tube-mark-{}", mark_id(tube.mark)));
    words.say(&Message::new("tube-source").message("mark", mark).list("sources", from))
}

/// The marks that the lists of tubes and lamps have.
const fn mark_id(mark: Mark) -> &'static str {
    match mark {
        Mark::Verified => "verified",
        Mark::MemoryHigh => "memory_high",
        Mark::MemoryMedium => "memory_medium",
        _ => "memory_low",
    }
}

fn doubt(tube: &Tube, words: &Words) -> Option<String> {
    let doubt = match tube.known {
        Known::ByRule => Doubt::ByRule,
        _ => tube.doubt?,
    };
    let (low, high) = match doubt {
        Doubt::VoltsBetween(low, high) | Doubt::Span(low, high) => {
            (heater_volts(low), heater_volts(high))
        }
        Doubt::AmperesBetween(low, high) => (amperes(low), amperes(high)),
        _ => Default::default(),
    };
    let message = Message::new(format!("doubt-{}", doubt.id()));
    Some(words.say(&message.text("low", low).text("high", high)))
}
