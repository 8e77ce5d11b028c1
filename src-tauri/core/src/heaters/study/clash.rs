//! What cannot be as listed: currents that cannot share a string, and more volts than the line has.

use super::fit::{alike, drawing};
use super::sort::Feed;
use super::{Part, Place, Reading, Study};
use crate::heaters::catalogue::Use;
use crate::heaters::string::OVER;
use crate::heaters::tube::Tube;

/// Something about a list that cannot be as listed.
#[derive(Clone, Debug, PartialEq)]
pub enum Clash {
    /// A tube of another current than the string's.
    Current {
        /// The tube.
        tube: String,
        /// What it draws, A.
        amperes: f64,
        /// What most of the others draw, A.
        others: f64,
    },
    /// More heater volts than the line has.
    Over {
        /// Heater volts along the string, V.
        sum: f64,
        /// The line voltage, V.
        line: f64,
    },
}

/// The clashes of a list; marks nothing, for places are settled before.
pub(super) fn clashes(study: &Study, feed: Feed) -> Vec<Clash> {
    let is_over = study.path_volts > study.line_volts * OVER.value;
    if feed == Feed::Series && is_over && study.reading == Reading::Undecided {
        return vec![Clash::Over { sum: study.path_volts, line: study.line_volts }];
    }
    if study.fits_series || study.is_rectified || matches!(feed, Feed::Parallel | Feed::Battery) {
        return Vec::new();
    }
    // A heater for the whole line stands on it by itself; any other of its own current is named.
    let fills_line = |part: &Part| part.place == Place::OwnBranch && part.tube.usual == Use::Line;
    let counted: Vec<&Part> = study
        .parts
        .iter()
        .filter(|part| matches!(part.place, Place::String | Place::Branch | Place::OwnBranch))
        .filter(|part| !fills_line(part))
        .collect();
    let Some(others) = most_common(&counted) else { return Vec::new() };
    let mut named: Vec<Clash> = Vec::new();
    for part in counted {
        let Some(amperes) = odd_current(&part.tube, others) else { continue };
        let clash = Clash::Current { tube: part.tube.name.clone(), amperes, others };
        if !named.contains(&clash) {
            named.push(clash);
        }
    }
    named
}

/// The current of a tube that cannot draw the others'.
pub(super) fn odd_current(tube: &Tube, others: f64) -> Option<f64> {
    tube.rating.amperes.filter(|_| drawing(tube, others).is_none())
}

/// The current that most draw; of two as common, the one with more volts behind it.
fn most_common(parts: &[&Part]) -> Option<f64> {
    let weight = |amperes: f64| {
        let same = || {
            parts.iter().filter(|part| part.rating.amperes.is_some_and(|own| alike(own, amperes)))
        };
        let volts: f64 = same().filter_map(|part| part.rating.volts).sum();
        (same().count(), volts)
    };
    let currents = parts.iter().filter_map(|part| part.rating.amperes);
    currents.max_by(|&a, &b| {
        let ((many, volts), (other_many, other_volts)) = (weight(a), weight(b));
        many.cmp(&other_many).then(volts.total_cmp(&other_volts))
    })
}
