//! Everything a unit may be, its parts, and what it is plugged into.

use super::device::Device;
use super::modification::Modification;
use super::refusal::Refusal;
use crate::arrangement::{
    Arrangement, ArrangementId, Cord, LineCapacitorClass, LineSide, Spread, defaults, find,
};
use crate::figure::{Figure, Mark, Source};
use crate::hazard::Parts;
use crate::inspection::{ArrangementSet, Findings, Possible};
use crate::supply::{Feed, Supply};

/// The values of the parts that are to be fitted.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct NewParts {
    /// Class Y from the line to the chassis, F.
    pub line_farad: f64,
    /// Class Y between common and chassis, F.
    pub network_farad: f64,
}

impl NewParts {
    /// The smallest that is usual, F: what is taken where a limit allows none of a series.
    pub const SMALLEST_FARAD: f64 = 1e-9;
}

impl Default for NewParts {
    fn default() -> Self {
        Self { line_farad: defaults::CLASS_Y.value, network_farad: defaults::CLASS_Y.value }
    }
}

/// A unit with what is known of it, and the outlet.
#[derive(Clone, Debug, PartialEq)]
pub struct Setup {
    /// What it may be.
    pub set: ArrangementSet,
    /// What it is plugged into.
    pub supply: Supply,
    /// What is known of its parts.
    pub parts: Parts,
    /// The device in the outlet.
    pub device: Option<Device>,
    /// Whether a fuse was put into the hot leg.
    pub fused: bool,
    /// The values of what is to be fitted.
    pub new: NewParts,
    /// The cord that is on it drops volts for the heaters: a plain one puts all of the line on them.
    pub resistance_cord: bool,
}

/// Above this many volts most outlets take a plug both ways round (outlets of CEE 7, from memory); where they do not,
/// counting with it only errs on the bad side.
const BOTH_WAYS_ABOVE_V: Figure = Figure::new(130.0, "V", Source::Model, Mark::Assumption);

impl Setup {
    /// Whether it has to be counted with an outlet that takes a plug both ways round: there a polarised plug gains
    /// nothing, and an earthed one stands either way.
    pub fn is_in_reversible_outlets(&self) -> bool {
        let reversible = |a: &Arrangement| {
            a.line.is_some_and(|line| {
                let cords = [Cord::ThreePinReversibleEarthed, Cord::ThreePinReversibleUnearthed];
                cords.contains(&line.cord)
            })
        };
        self.supply.volts > BOTH_WAYS_ABOVE_V.value || self.set.iter().any(|(_, a)| reversible(a))
    }

    /// What findings leave; a switch that lifts the earth may stand either way.
    pub fn of(findings: &Findings, possible: &Possible) -> Self {
        let mut set = possible.considered.clone();
        if findings.has_earth_lift() {
            let closed =
                possible.considered.iter().filter_map(|(_, a)| find(&a.with_lift_closed()?));
            closed.for_each(|id| set.insert(id));
        }
        Self {
            set,
            supply: findings.supply,
            parts: findings.parts(),
            device: None,
            fused: false,
            new: NewParts::default(),
            resistance_cord: findings.has_resistance_cord(),
        }
    }

    /// One arrangement alone.
    pub fn one(arrangement: &Arrangement, supply: Supply, parts: Parts) -> Self {
        let mut set = ArrangementSet::EMPTY;
        find(arrangement).into_iter().for_each(|id| set.insert(id));
        Self {
            set,
            supply,
            parts,
            device: None,
            fused: false,
            new: NewParts::default(),
            resistance_cord: false,
        }
    }

    /// The same after a modification. What it may be and is not touched by it stays as it is.
    ///
    /// # Errors
    /// It is forbidden for something that the unit may be, or there is nothing to do whatever it is.
    pub fn after(&self, modification: Modification) -> Result<Self, Refusal> {
        self.outlet_refuses(modification)?;
        let mut after = Self { set: ArrangementSet::EMPTY, ..self.clone() };
        let mut idle = None;
        let mut done = false;
        for (id, arrangement) in self.set.iter() {
            match modification.on(arrangement, self.parts.network_class_y) {
                Ok(changed) => {
                    done = true;
                    let changed = self.as_plugged_in(modification, changed);
                    after.set.insert(find(&changed).unwrap_or(id));
                }
                Err(refusal) if refusal.is_forbidden() => return Err(refusal),
                Err(refusal) => {
                    idle = Some(refusal);
                    after.set.insert(id);
                }
            }
        }
        if !done {
            return Err(idle.unwrap_or(Refusal::NoLineSide));
        }
        after.fit(modification, self);
        Ok(after)
    }

    /// The same after several, one after the other.
    ///
    /// # Errors
    /// One of them is not offered there: its place among them, and why.
    pub fn after_all(&self, stack: &[Modification]) -> Result<Vec<Self>, (usize, Refusal)> {
        let mut steps: Vec<Self> = Vec::with_capacity(stack.len());
        for (place, modification) in stack.iter().enumerate() {
            let after = steps.last().unwrap_or(self).after(*modification);
            steps.push(after.map_err(|refusal| (place, refusal))?);
        }
        Ok(steps)
    }

    /// A new earthed cord where outlets take it both ways round.
    fn as_plugged_in(&self, modification: Modification, changed: Arrangement) -> Arrangement {
        let turns = modification == Modification::ThreeWireCord && self.is_in_reversible_outlets();
        let line = changed.line.map(|line| match line.cord {
            Cord::ThreePinEarthed if turns => {
                LineSide { cord: Cord::ThreePinReversibleEarthed, ..line }
            }
            _ => line,
        });
        Arrangement { line, ..changed }
    }

    fn outlet_refuses(&self, modification: Modification) -> Result<(), Refusal> {
        let isolated = self.supply.feed == Feed::Isolated;
        match modification {
            Modification::IsolatingTransformerInFront if isolated => Err(Refusal::Already),
            Modification::FuseInHotLeg if self.fused => Err(Refusal::Already),
            Modification::PolarisedPlug if self.is_in_reversible_outlets() => {
                Err(Refusal::GoesInBothWays)
            }
            _ => match device_of(modification) {
                Some(_) if isolated => Err(Refusal::SeesNothing),
                Some(device) if self.device == Some(device) => Err(Refusal::Already),
                _ => Ok(()),
            },
        }
    }

    /// What changes besides the arrangement.
    fn fit(&mut self, modification: Modification, before: &Self) {
        match modification {
            Modification::LineCapacitorClassY => {
                let fitted = Spread::marked(self.new.line_farad);
                // One that may be of class Y already is not taken out: it stays what it may be.
                let stays = |(_, a): (ArrangementId, &Arrangement)| {
                    a.line
                        .is_some_and(|line| line.line_capacitor_class == LineCapacitorClass::ClassY)
                };
                let old = before.parts.line_capacitor.unwrap_or(Spread::CLASS_Y);
                let mixed = before.set.iter().any(stays);
                self.parts.line_capacitor = Some(if mixed { fitted.and(old) } else { fitted });
            }
            Modification::NetworkClassY => {
                self.parts.network_farad = Spread::marked(self.new.network_farad);
                self.parts.network_class_y = true;
            }
            Modification::IsolatingTransformerInFront => {
                self.supply = self.supply.fed_by(Feed::Isolated);
            }
            Modification::FuseInHotLeg => self.fused = true,
            other => self.device = device_of(other).or(self.device),
        }
    }
}

/// The device that a modification puts into the outlet.
const fn device_of(modification: Modification) -> Option<Device> {
    match modification {
        Modification::GfciOutlet => Some(Device::Gfci),
        Modification::RcdOutlet => Some(Device::RcdA),
        Modification::RcdAcOutlet => Some(Device::RcdAc),
        _ => None,
    }
}
