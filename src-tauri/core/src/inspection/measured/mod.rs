//! What ohmmeter readings rule out.
//!
//! An arrangement goes when some readings cannot all be true of it, even with leaky capacitors, tired
//! insulation, dirty contacts and broken wires. Each such group of findings is a clash; nothing but
//! whole clashes removes anything, so withdrawing one of their findings brings the arrangement back.

mod least;
mod outcomes;
mod path;

use std::collections::HashMap;

use super::bank::Question;
use super::findings::{Finding, Findings, Reading};
use super::set::ArrangementSet;
use crate::arrangement::{
    Arrangement, ArrangementId, BOND_MOST, BOND_SOUND, Cord, DirectParts, Isolation, Leg,
    LineCapacitor, LineCapacitorClass, LineSide, MOTOR_LEAST, NearPin, Probe, Reach, ReadingId,
    Spread, Switch, SwitchLeg, all, reading_range,
};
use crate::figure::{Figure, Mark, Source};

pub(super) use outcomes::{Given, OUTCOMES, expected, has_path, stays as stays_read};
pub use path::{Unproven, proven_path};

/// Above this a joint that reads as a wire in the other position of the switch is parted by it, Ω.
const PARTED: Figure = Figure::new(10e3, "Ω", Source::Model, Mark::Assumption);

/// The readings of the bare metal that must all be open before it counts as joined to nothing.
const PART: [ReadingId; 4] = [
    ReadingId::OhmsAPartOn,
    ReadingId::OhmsAPartOff,
    ReadingId::OhmsBPartOn,
    ReadingId::OhmsBPartOff,
];

/// Findings that cannot all be true of an arrangement.
pub type Clash = Vec<Finding>;

/// The readings of an inspection, ready to be held against arrangements.
///
/// The pins are named by the plug. Where nobody has said which plug it has, or it has none, the names are
/// only those of a piece of tape, and an arrangement stays if the readings fit either way round.
pub struct Measured {
    straight: Readings,
    mirrored: Readings,
    pins_named: bool,
    grounds: Grounds,
}

/// The resistances read, by one naming of the pins.
type Readings = Vec<(ReadingId, Spread)>;

/// What the clashes rest on besides the readings themselves; the same by either naming of the pins.
struct Grounds {
    no_motor: Vec<Question>,
    /// The most of each way onto a tied chassis; empty where the path is not proven.
    most: HashMap<Way, f64>,
    path_proven: bool,
    metal_open: bool,
    lift_absent: bool,
    /// Whether the terminals were looked at and none is for an aerial or earth.
    no_aerial: bool,
}

/// The way from a pin onto a tied chassis: from the pin of the near leg or of the far one.
type Way = (Isolation, SwitchLeg, Leg, Switch);

/// The readings by one naming, held against arrangements.
#[derive(Clone, Copy)]
struct Sheet<'a> {
    readings: &'a Readings,
    grounds: &'a Grounds,
}

/// Whether an answer rules out that a motor lies across the line.
pub(super) fn has_no_motor(findings: &Findings) -> bool {
    !path::no_motor(findings).is_empty()
}

/// What the readings on the bare metal say of what it is joined to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum MetalReads {
    /// Nothing.
    Nothing,
    /// Open from both pins in both positions of the switch, the path proven.
    Open,
    /// Something comes through from a pin.
    Joined,
}

impl MetalReads {
    /// What they say after these findings.
    pub fn of(findings: &Findings) -> Self {
        let through = |id| matches!(findings.readings.get(id), Some(Reading::Value(_)));
        if PART.iter().any(through) {
            Self::Joined
        } else if all_metal_reads_open(findings) && proven_path(findings).is_ok() {
            Self::Open
        } else {
            Self::Nothing
        }
    }
}

fn all_metal_reads_open(findings: &Findings) -> bool {
    PART.iter().all(|id| findings.readings.get(id) == Some(&Reading::OverRange))
}

/// The plugs whose pins can be told apart, by shape or by tape on a plug that stays on the cord.
pub(super) const PLUGS: [&str; 5] = [
    "two_equal_blades",
    "two_polarised_blades",
    "three_pins",
    "earth_pin_missing",
    "three_pins_reversible",
];

impl Measured {
    /// The ohmmeter readings among the findings.
    pub fn of(findings: &Findings) -> Self {
        let ohms = findings.readings.iter().filter(|(id, _)| id.probes().is_some());
        let straight: Readings =
            ohms.map(|(&id, &reading)| (id, findings.meter.interval(reading))).collect();
        Self {
            mirrored: straight.iter().map(|&(id, read)| (id.mirrored(), read)).collect(),
            straight,
            pins_named: PLUGS.iter().any(|plug| findings.says(Question::Plug, plug)),
            grounds: Grounds::of(findings),
        }
    }

    const fn straight(&self) -> Sheet<'_> {
        Sheet { readings: &self.straight, grounds: &self.grounds }
    }

    const fn mirrored(&self) -> Sheet<'_> {
        Sheet { readings: &self.mirrored, grounds: &self.grounds }
    }

    /// Whether there is nothing to hold against anything.
    pub fn is_empty(&self) -> bool {
        self.straight.is_empty()
    }

    /// The arrangements that no clash rules out.
    pub fn left(&self) -> ArrangementSet {
        let mut left = ArrangementSet::EMPTY;
        for (id, arrangement) in (0u16..).map(ArrangementId).zip(all()) {
            let out = self.straight().rules_out(id, arrangement)
                && (self.pins_named || self.mirrored().rules_out(id, arrangement));
            if !out {
                left.insert(id);
            }
        }
        left
    }

    /// Everything that clashes with an arrangement: what does either way round, and what does by the
    /// names that the plug gives the pins.
    pub fn clashes(&self, id: ArrangementId, arrangement: &Arrangement) -> Vec<Clash> {
        let straight = self.straight().clashes(id, arrangement);
        let mirrored = self.mirrored().clashes(id, arrangement);
        let either_way = straight.iter().flat_map(|one| {
            mirrored.iter().map(|other| {
                let swapped = other.iter().copied().map(mirrored_finding);
                one.iter().copied().chain(swapped).collect()
            })
        });
        let named = straight
            .iter()
            .filter(|_| self.pins_named)
            .map(|one| one.iter().copied().chain([Finding::Answer(Question::Plug)]).collect());
        either_way.chain(named).collect()
    }
}

const fn mirrored_finding(finding: Finding) -> Finding {
    match finding {
        Finding::Reading(id) => Finding::Reading(id.mirrored()),
        other => other,
    }
}

impl Grounds {
    fn of(findings: &Findings) -> Self {
        let path = proven_path(findings).ok();
        Self {
            no_motor: path::no_motor(findings),
            most: path.map(most_when_tied).unwrap_or_default(),
            path_proven: path.is_some(),
            metal_open: path.is_some() && all_metal_reads_open(findings),
            lift_absent: findings.says(Question::EarthLift, "absent"),
            no_aerial: findings.known(Question::Terminals).is_some()
                && !findings.says(Question::Terminals, "aerial_or_earth"),
        }
    }
}

impl<'a> Sheet<'a> {
    fn rules_out(&self, id: ArrangementId, arrangement: &Arrangement) -> bool {
        let below = |&(reading, read): &(ReadingId, Spread)| {
            self.is_below(id, reading, read, self.grounds.no_motor.is_empty())
        };
        self.readings.iter().any(below)
            || arrangement.line.is_some_and(|line| {
                !self.joined_clashes(arrangement.isolation, &line).is_empty()
                    || !self.bond_clashes(arrangement, &line).is_empty()
            })
    }

    /// Everything that clashes with an arrangement.
    fn clashes(&self, id: ArrangementId, arrangement: &Arrangement) -> Vec<Clash> {
        let mut clashes = Vec::new();
        for &(reading, read) in self.readings {
            if self.is_below(id, reading, read, true) {
                clashes.push(vec![Finding::Reading(reading)]);
            } else if !self.grounds.no_motor.is_empty() && self.is_below(id, reading, read, false) {
                clashes.extend(self.without_motor(vec![Finding::Reading(reading)]));
            }
        }
        if let Some(line) = arrangement.line {
            clashes.extend(self.joined_clashes(arrangement.isolation, &line));
            clashes.extend(self.bond_clashes(arrangement, &line));
        }
        clashes
    }

    /// Whether a reading is less than this arrangement can give.
    fn is_below(&self, id: ArrangementId, reading: ReadingId, read: Spread, motor: bool) -> bool {
        let least = least::least(reading, motor).get(usize::from(id.0));
        least.is_some_and(|least| read.high < *least)
    }

    /// A clash that only holds where no motor lies across the line, once for each answer that says so.
    fn without_motor(self, clash: Clash) -> impl Iterator<Item = Clash> + use<'a> {
        self.grounds.no_motor.iter().map(move |question| {
            clash.iter().copied().chain([Finding::Answer(*question)]).collect()
        })
    }

    /// The same for one that rests on the proven path.
    fn with_path(&self, readings: &[ReadingId]) -> Vec<Clash> {
        let pins = [ReadingId::OhmsABOn, ReadingId::OhmsABOff];
        let clash = readings.iter().chain(&pins).map(|id| Finding::Reading(*id)).collect();
        self.without_motor(clash).collect()
    }

    /// What clashes with a chassis or a common that is joined to a leg.
    fn joined_clashes(&self, isolation: Isolation, line: &LineSide) -> Vec<Clash> {
        let mut clashes = Vec::new();
        if !line.switch_leg.opens(Leg::Near) {
            clashes.extend(self.parted_by_the_switch(isolation, line));
        }
        if !self.grounds.path_proven {
            return clashes;
        }
        if line.switch_leg == SwitchLeg::None {
            clashes.extend(self.with_path(&[]));
        }
        for &(reading, read) in self.readings {
            let most = way_of(reading, isolation, line).and_then(|way| self.grounds.most.get(&way));
            if most.is_some_and(|most| read.low > *most) {
                clashes.extend(self.with_path(&[reading]));
            }
        }
        if self.grounds.metal_open && reaches_a_leg(isolation, line.reach) {
            let open = self.with_path(&PART).into_iter();
            clashes.extend(open.filter_map(|clash| self.of_metal(line.reach, clash)));
        }
        clashes
    }

    /// A clash of bare metal. Metal on a common of its own stands for an aerial terminal as well, which goes
    /// to that common through a capacitor and reads open: only where there is none does it go.
    fn of_metal(&self, reach: Reach, mut clash: Clash) -> Option<Clash> {
        if reach == Reach::CommonExposed {
            if !self.grounds.no_aerial {
                return None;
            }
            clash.push(Finding::Answer(Question::Terminals));
        }
        Some(clash)
    }

    /// A joint to a leg that is not switched cannot come and go with the switch.
    fn parted_by_the_switch(
        self,
        isolation: Isolation,
        line: &LineSide,
    ) -> impl Iterator<Item = Clash> + use<> {
        use ReadingId::{
            OhmsAChassisOff, OhmsAChassisOn, OhmsAPartOff, OhmsAPartOn, OhmsBChassisOff,
            OhmsBChassisOn, OhmsBPartOff, OhmsBPartOn,
        };
        let (chassis, part) = match line.near_pin {
            NearPin::A => ([OhmsAChassisOn, OhmsAChassisOff], [OhmsAPartOn, OhmsAPartOff]),
            NearPin::B => ([OhmsBChassisOn, OhmsBChassisOff], [OhmsBPartOn, OhmsBPartOff]),
        };
        let chassis = Some(chassis).filter(|_| isolation.is_tied());
        let part = Some(part).filter(|_| reaches_a_leg(isolation, line.reach));
        let differ = |[on, off]: &[ReadingId; 2]| match (self.read(*on), self.read(*off)) {
            (Some(on), Some(off)) => is_parted(on, off) || is_parted(off, on),
            _ => false,
        };
        let clash = |pair: [ReadingId; 2]| pair.map(Finding::Reading).to_vec();
        let chassis = chassis.filter(differ).map(clash);
        let part = part.filter(differ).and_then(|pair| self.of_metal(line.reach, clash(pair)));
        chassis.into_iter().chain(part)
    }

    fn read(&self, id: ReadingId) -> Option<Spread> {
        self.readings.iter().find(|(reading, _)| *reading == id).map(|(_, read)| *read)
    }

    /// What clashes with the bond to the earth pin. A lift switch could stand either way, so only where
    /// there is none does a reading settle it; but no bond is there to count on by either: a cord that is lifted
    /// counts as not earthed. What a closed lift puts on the earth conductor stays for as long as there may be one.
    fn bond_clashes(&self, arrangement: &Arrangement, line: &LineSide) -> Vec<Clash> {
        let unbonded =
            matches!(line.cord, Cord::ThreePinUnearthed | Cord::ThreePinReversibleUnearthed);
        let by_lift =
            |id: ReadingId| vec![Finding::Reading(id), Finding::Answer(Question::EarthLift)];
        let kind = line.cord.is_earthed() && !arrangement.is_line_on_earth();
        let clashes = |(id, read): &(ReadingId, Spread)| {
            let (pin, place) = id.probes()?;
            let reads_bond = pin == Probe::EarthPin && read.high <= BOND_SOUND.value;
            let reads_none =
                pin == Probe::EarthPin && place == Probe::Chassis && read.low > BOND_MOST.value;
            let is_so = (unbonded && reads_bond) || (line.cord.is_earthed() && reads_none);
            if kind && reads_none {
                return Some(vec![Finding::Reading(*id)]);
            }
            (is_so && self.grounds.lift_absent).then(|| by_lift(*id))
        };
        self.readings.iter().filter_map(clashes).collect()
    }
}

/// Less than any motor is the wire itself, and no detour through a motor and the other pin.
fn is_parted(joined: Spread, parted: Spread) -> bool {
    joined.high <= MOTOR_LEAST.value && parted.low >= PARTED.value
}

/// Whether the metal in reach is joined to the near leg by a wire.
fn reaches_a_leg(isolation: Isolation, reach: Reach) -> bool {
    match reach {
        Reach::Exposed | Reach::Handheld => isolation.is_tied(),
        Reach::CommonExposed => isolation.has_own_common(),
        Reach::Closed | Reach::AerialTerminal => false,
    }
}

/// The way that a reading goes onto the chassis itself; nothing for any other reading.
fn way_of(reading: ReadingId, isolation: Isolation, line: &LineSide) -> Option<Way> {
    let near = match reading.probes()? {
        (Probe::PinA, Probe::Chassis) => NearPin::A,
        (Probe::PinB, Probe::Chassis) => NearPin::B,
        _ => return None,
    };
    let leg = if line.near_pin == near { Leg::Near } else { Leg::Far };
    Some((isolation, line.switch_leg, leg, reading.switch()?))
}

/// The most that each way onto a tied chassis can be where the path is proven, Ω. Above it, or above
/// range, the chassis is not tied so.
fn most_when_tied(path: f64) -> HashMap<Way, f64> {
    use ReadingId::{OhmsAChassisOff, OhmsAChassisOn, OhmsBChassisOff, OhmsBChassisOn};
    let parts = DirectParts::as_found(false, Some(path));
    let mut most = HashMap::new();
    for &isolation in Isolation::ALL.iter().filter(|isolation| isolation.is_tied()) {
        for &switch_leg in SwitchLeg::ALL {
            let arrangement = plain(isolation, switch_leg);
            for id in [OhmsAChassisOn, OhmsAChassisOff, OhmsBChassisOn, OhmsBChassisOff] {
                let way = arrangement.line.and_then(|line| way_of(id, isolation, &line));
                if let (Some(way), Some(range)) = (way, reading_range(&arrangement, id, &parts)) {
                    most.insert(way, range.high);
                }
            }
        }
    }
    most
}

/// The arrangement with nothing but these; no other factor bears on the way from a pin to a tied chassis.
fn plain(isolation: Isolation, switch_leg: SwitchLeg) -> Arrangement {
    let line = LineSide {
        cord: Cord::TwoPinReversible,
        near_pin: NearPin::B,
        line_capacitor: LineCapacitor::None,
        line_capacitor_class: LineCapacitorClass::Ordinary,
        switch_leg,
        reach: Reach::Closed,
    };
    Arrangement { isolation, line: Some(line) }
}
