//! Whether heaters can share one current or one voltage, each in one of the ways it can be connected.

use crate::heaters::catalogue::{Doubt, Rating, Rectifier, Use};
use crate::heaters::tube::Tube;

/// Figures of lists that differ by less are the same, as a share.
const SAME: f64 = 0.03;

/// The highest voltage of a winding for heaters of many kinds, V.
const WINDING_VOLTS: f64 = 12.6;

pub(super) fn alike(a: f64, b: f64) -> bool {
    (a - b).abs() <= SAME * a.max(b)
}

/// The connection of a heater that draws this current, with lists that disagree taken at their best.
pub(super) fn drawing(tube: &Tube, amperes: f64) -> Option<Rating> {
    let fits = |rating: &Rating| rating.amperes.is_none_or(|own| alike(own, amperes));
    let between = || match tube.doubt {
        Some(Doubt::AmperesBetween(low, high)) => {
            let inside = low * (1.0 - SAME) <= amperes && amperes <= high * (1.0 + SAME);
            inside.then_some(Rating { volts: tube.rating.volts, amperes: Some(amperes) })
        }
        _ => None,
    };
    tube.ratings().find(fits).or_else(between)
}

/// One current for all.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Common {
    /// The current, A; nothing where none of them is known.
    pub(super) amperes: Option<f64>,
}

/// The current that all can draw.
pub(super) fn one_current(tubes: &[&Tube]) -> Option<Common> {
    let known = |tube: &&&Tube| tube.rating.amperes.is_some();
    let Some(first) = tubes.iter().find(known) else {
        return (!tubes.is_empty()).then_some(Common { amperes: None });
    };
    let currents = first.ratings().filter_map(|rating| rating.amperes);
    let mut doubted = Vec::new();
    if let Some(Doubt::AmperesBetween(low, high)) = first.doubt {
        doubted = vec![low, high];
    }
    currents
        .chain(doubted)
        .find(|&amperes| tubes.iter().all(|tube| drawing(tube, amperes).is_some()))
        .map(|amperes| Common { amperes: Some(amperes) })
}

/// The connection of a heater for this voltage.
pub(super) fn standing(tube: &Tube, volts: f64) -> Option<Rating> {
    tube.ratings().find(|rating| rating.volts.is_some_and(|own| alike(own, volts)))
}

/// The voltage of the winding that most sets have, V; rectifiers for it need none of their own.
const USUAL_VOLTS: f64 = 6.3;

/// Whether a rectifier is of the kind that has a winding of its own: 2.5, 4, 5 or 7.5 V.
pub(super) fn has_own_winding(tube: &Tube) -> bool {
    let shared = standing(tube, USUAL_VOLTS).is_some() || standing(tube, WINDING_VOLTS).is_some();
    tube.rectifier == Rectifier::Full && tube.usual == Use::Parallel && !shared
}

/// Whether a tube rectifies a line without a transformer.
pub(super) fn is_line_rectifier(tube: &Tube) -> bool {
    matches!(tube.rectifier, Rectifier::Half | Rectifier::Doubler) && tube.usual != Use::Parallel
}

/// The voltage that all can stand but rectifiers with a winding of their own.
pub(super) fn one_voltage(tubes: &[&Tube]) -> Option<f64> {
    let (own, shared): (Vec<&Tube>, Vec<&Tube>) =
        tubes.iter().copied().partition(|tube| has_own_winding(tube));
    let Some(first) = shared.first() else {
        return own.first().and_then(|tube| tube.rating.volts);
    };
    let is_low = |tube: &Tube, volts: f64| {
        let low = volts <= WINDING_VOLTS * (1.0 + SAME) || tube.usual == Use::Parallel;
        low && !matches!(tube.usual, Use::Series | Use::Line)
    };
    let fits = |volts: f64| {
        shared.iter().all(|tube| is_low(tube, volts) && standing(tube, volts).is_some())
    };
    // Halves in parallel on the usual winding, before halves in series on twice as much.
    let volts = first.ratings().filter_map(|rating| rating.volts);
    std::iter::once(USUAL_VOLTS).chain(volts).find(|volts| fits(*volts))
}

/// Whether each stands on a low voltage of one winding or another, as early sets have them.
pub(super) fn several_windings(tubes: &[&Tube]) -> bool {
    let is_low = |tube: &&Tube| {
        let usual = matches!(tube.usual, Use::Parallel | Use::Either | Use::Battery);
        let low = tube.rating.volts.is_some_and(|volts| volts <= WINDING_VOLTS * (1.0 + SAME));
        usual && (low || tube.usual == Use::Parallel)
    };
    tubes.iter().all(is_low) && tubes.iter().any(|tube| tube.usual == Use::Parallel)
}
