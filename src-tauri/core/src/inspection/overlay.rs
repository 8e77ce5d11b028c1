//! Cautions that stand beside the class: each holds when it holds for some arrangement still possible.

use std::sync::LazyLock;

use crate::arrangement::Arrangement;
use crate::body::STARTLE_MA;
use crate::fields::id_enum;
use crate::figure::{Figure, Mark, Source};

use super::bank::{Access, Question};
use super::evidence::pin;
use super::findings::{Answer, Findings};
use super::judge::Judge;
use super::set::ArrangementSet;

id_enum! {
    /// The overlays, in the order they are shown.
    pub enum OverlayId {
        /// A lost barrier makes it live.
        LiveInside = "live_inside",
        /// Power would put the supply on the earth conductor.
        LineOnEarth = "line_on_earth",
        /// The outlet must be proven.
        ProveOutlet = "prove_outlet",
        /// The earth conductor carries a leak.
        EarthCarriesLeakage = "earth_carries_leakage",
        /// An aerial or earth terminal.
        AerialTerminal = "aerial_terminal",
        /// Plate voltage on terminals.
        BPlusOnTerminals = "b_plus_on_terminals",
        /// A resistance in the cord.
        ResistanceCord = "resistance_cord",
        /// A damaged cord.
        DamagedCord = "damaged_cord",
        /// An aged cord.
        AgedCord = "aged_cord",
        /// No fuse.
        NoFuse = "no_fuse",
        /// The fuse is in the leg of the common.
        FuseInCommonLeg = "fuse_in_common_leg",
        /// An outlet on the unit.
        AccessoryOutlet = "accessory_outlet",
        /// Filter capacitors that have failed.
        FilterCapacitors = "filter_capacitors",
        /// Charge inside.
        StoredCharge = "stored_charge",
        /// Asbestos.
        Asbestos = "asbestos",
        /// A selenium rectifier.
        Selenium = "selenium",
        /// PCB.
        Pcb = "pcb",
        /// Radium paint.
        Radium = "radium",
        /// Made for another supply.
        WrongSupply = "wrong_supply",
    }
}

static LINE_ON_EARTH: LazyLock<ArrangementSet> =
    LazyLock::new(|| ArrangementSet::of(Arrangement::is_line_on_earth));

/// An overlay that holds.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Overlay {
    /// Which.
    pub id: OverlayId,
    /// The leak in mA, where it says one.
    pub milliamperes: Option<f64>,
}

/// The overlays that hold for what is possible.
pub fn overlays(
    findings: &Findings,
    considered: &ArrangementSet,
    judge: &mut Judge,
) -> Vec<Overlay> {
    let leak = judge.earth_leakage_ma(considered).filter(|leak| *leak >= STARTLE_MA.value);
    // A supply conductor on the earth wire is a short circuit, not a leak: its figure would mislead.
    let mut leaking = considered.clone();
    leaking.remove(&LINE_ON_EARTH);
    let figure = judge.earth_leakage_ma(&leaking).filter(|leak| *leak >= STARTLE_MA.value);
    OverlayId::ALL
        .iter()
        .filter(|id| match id {
            OverlayId::EarthCarriesLeakage => leak.is_some(),
            id => holds(**id, findings, considered, judge),
        })
        .map(|&id| Overlay {
            id,
            milliamperes: figure.filter(|_| id == OverlayId::EarthCarriesLeakage),
        })
        .collect()
}

fn holds(id: OverlayId, findings: &Findings, set: &ArrangementSet, judge: &mut Judge) -> bool {
    let says = |question, answer| findings.says(question, answer);
    let some = |holds: &dyn Fn(&Arrangement) -> bool| set.iter().any(|(_, a)| holds(a));
    match id {
        OverlayId::LiveInside => judge.is_live_inside(set),
        OverlayId::LineOnEarth => {
            let lifts = findings.has_earth_lift();
            some(&|a| a.is_line_on_earth() || (lifts && a.with_lift_closed().is_some()))
        }
        OverlayId::ProveOutlet => some(&|a| a.line.is_some_and(|line| line.cord.is_earthed())),
        // Needs the current itself; worked out by the caller.
        OverlayId::EarthCarriesLeakage => false,
        OverlayId::AerialTerminal => says(Question::Terminals, "aerial_or_earth"),
        OverlayId::BPlusOnTerminals => says(Question::Terminals, "pickup_or_speaker"),
        OverlayId::ResistanceCord => says(Question::CordWires, "three_wires_two_pins"),
        OverlayId::DamagedCord => {
            says(Question::Cord, "cracked") || says(Question::Cord, "spliced")
        }
        OverlayId::AgedCord => says(Question::Cord, "cloth_or_rubber"),
        OverlayId::NoFuse => says(Question::Fuse, "none"),
        OverlayId::FuseInCommonLeg => match findings.known(Question::Fuse) {
            Some(Answer::One(answer)) => pin(answer)
                .is_some_and(|pin| some(&|a| a.line.is_some_and(|line| line.near_pin == pin))),
            _ => false,
        },
        OverlayId::AccessoryOutlet => says(Question::AccessoryOutlet, "present"),
        OverlayId::FilterCapacitors => says(Question::FilterCapacitors, "swollen_or_leaking"),
        OverlayId::StoredCharge => {
            let opened = [Access::CoverOff, Access::Meter];
            opened.iter().any(|access| findings.access.contains(access))
                && some(&|a| a.line.is_some())
        }
        OverlayId::Asbestos | OverlayId::Selenium | OverlayId::Pcb | OverlayId::Radium => {
            says(Question::Materials, id.id())
        }
        // What is rated for a battery says nothing of the wall.
        OverlayId::WrongSupply => some(&|a| a.line.is_some()) && is_wrong_supply(findings),
    }
}

/// How far rated volts may be from the supply's, as a share.
const RATED_WITHIN: Figure = Figure::new(0.1, "1", Source::Model, Mark::CommonPractice);

/// More than 10 % from the supply's volts, or another frequency.
fn is_wrong_supply(findings: &Findings) -> bool {
    let Some(rated) = findings.rated else {
        return false;
    };
    let supply = findings.supply;
    let volts_differ =
        |volts: f64| (volts - supply.volts).abs() > RATED_WITHIN.value * supply.volts;
    rated.volts.is_some_and(volts_differ) || rated.hertz.is_some_and(|hertz| hertz != supply.hertz)
}
