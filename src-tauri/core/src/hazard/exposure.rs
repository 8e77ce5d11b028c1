//! Outcomes at one voltage for all arrangements, each distinct network solved once.
//!
//! Values that nobody has read lie somewhere in a range; the ends of the ranges are the corners at
//! which an arrangement is judged. The memory is for one supply, one voltage and one knowledge of
//! the parts: when any of these changes, a new [`Exposures`] is made.

use num_complex::Complex64;
use rustc_hash::FxHashMap;

use crate::arrangement::{
    Arrangement, Fault, FaultSet, Isolation, LineCapacitor, LineCapacitorClass, Reach, Spread,
    State, Touched, Values, Wiring, defaults, fault_sets, touched,
};
use crate::body::Posture;
use crate::circuit::Thevenin;
use crate::figure::Figure;
use crate::supply::{Contacts, Feed, Supply};

use super::outcome::{Outcome, Person, outcome};

/// What is known of the parts' values.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Parts {
    /// Line capacitor, F; nothing takes the range of its class.
    pub line_capacitor: Option<Spread>,
    /// Resistor between common and chassis, Ω.
    pub network_ohm: Spread,
    /// Capacitor between common and chassis, F.
    pub network_farad: Spread,
    /// Capacitor to the aerial terminal, F.
    pub aerial: Spread,
    /// Each winding end to the chassis, F.
    pub winding: Spread,
    /// Heater string, hot, Ω.
    pub heater_ohm: f64,
    /// Whether a line capacitor that is not known is taken as usual for its class, not as a range.
    pub line_capacitor_usual: bool,
    /// Whether the capacitor between common and chassis is class Y, which does not short as a single fault.
    pub network_class_y: bool,
}

impl Default for Parts {
    fn default() -> Self {
        Self {
            line_capacitor: None,
            network_ohm: Spread::NETWORK_OHM,
            network_farad: Spread::NETWORK_FARAD,
            aerial: Spread::AERIAL,
            winding: Spread::WINDING,
            heater_ohm: defaults::HEATERS.value,
            line_capacitor_usual: false,
            network_class_y: false,
        }
    }
}

impl Parts {
    /// The same knowledge with the usual value wherever a range is left, for what is likely.
    #[must_use]
    pub fn as_usual(&self) -> Self {
        let ranges = Self::default();
        let usual = |known: Spread, range: Spread, figure: Figure| {
            Spread::exactly(if known == range { figure.value } else { known.middle() })
        };
        Self {
            line_capacitor: self.line_capacitor.map(|known| Spread::exactly(known.middle())),
            network_ohm: usual(self.network_ohm, ranges.network_ohm, defaults::NETWORK_OHM),
            network_farad: usual(self.network_farad, ranges.network_farad, defaults::NETWORK_FARAD),
            aerial: usual(self.aerial, ranges.aerial, defaults::AERIAL),
            winding: usual(self.winding, ranges.winding, defaults::WINDING),
            heater_ohm: self.heater_ohm,
            line_capacitor_usual: true,
            network_class_y: self.network_class_y,
        }
    }
}

/// One choice of ends: a bit for each part, set for the high end.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub struct Corner(u8);

const NETWORK_OHM: u8 = 1;
const NETWORK_FARAD: u8 = 1 << 1;
const LINE_CAPACITOR: u8 = 1 << 2;
const AERIAL: u8 = 1 << 3;
const WINDING: u8 = 1 << 4;

impl Corner {
    /// How many there are at most.
    pub(super) const MOST: usize = 1 << 5;

    /// Its place among them.
    pub(super) const fn place(self) -> usize {
        self.0 as usize
    }

    /// Whether the capacitor to the aerial terminal is at its high end.
    pub(super) const fn is_aerial_high(self) -> bool {
        self.0 & AERIAL != 0
    }

    /// The ends of the relevant parts alone, packed into the low bits.
    pub(super) fn packed(self, relevant: u8) -> usize {
        let (mut packed, mut next, mut left) = (0, 0, relevant);
        while left != 0 {
            packed |= usize::from(self.0 >> left.trailing_zeros() & 1) << next;
            next += 1;
            left &= left - 1;
        }
        packed
    }
}

/// The parts of a network whose values make a difference to chassis and common, one bit each.
pub(super) fn relevant_to(wiring: Wiring) -> u8 {
    let part = |flag: u8, relevant: bool| if relevant { flag } else { 0 };
    part(NETWORK_OHM | NETWORK_FARAD, wiring.isolation() == Isolation::LineFloated)
        | part(LINE_CAPACITOR, wiring.has_sound_line_capacitor())
        | part(WINDING, wiring.isolation() == Isolation::Isolating)
}

/// The parts of an arrangement whose values make a difference, one bit each.
fn relevant_parts(arrangement: &Arrangement) -> u8 {
    let Some(line) = arrangement.line else { return 0 };
    let part = |flag: u8, relevant: bool| if relevant { flag } else { 0 };
    let floated = arrangement.isolation == Isolation::LineFloated;
    part(NETWORK_OHM | NETWORK_FARAD, floated)
        | part(LINE_CAPACITOR, line.line_capacitor != LineCapacitor::None)
        | part(AERIAL, line.reach == Reach::AerialTerminal)
        | part(WINDING, arrangement.isolation == Isolation::Isolating)
}

impl Parts {
    /// The corners that make a difference to an arrangement.
    pub fn corners(&self, arrangement: &Arrangement) -> impl Iterator<Item = Corner> + use<> {
        let open = self.open_parts(arrangement);
        // The subsets of the open bits, counted up with the carry kept inside the mask.
        let mut next = Some(0u8);
        std::iter::from_fn(move || {
            let corner = next?;
            let following = corner.wrapping_sub(open) & open;
            next = (following != 0).then_some(following);
            Some(Corner(corner))
        })
    }

    /// The same corners, the one with all high ends first: the likeliest to be live.
    pub fn corners_from_high(
        &self,
        arrangement: &Arrangement,
    ) -> impl Iterator<Item = Corner> + use<> {
        let open = self.open_parts(arrangement);
        self.corners(arrangement).map(move |corner| Corner(open & !corner.0))
    }

    fn open_parts(&self, arrangement: &Arrangement) -> u8 {
        let Some(line) = arrangement.line else { return 0 };
        let open = |flag: u8, spread: Spread| if spread.low == spread.high { 0 } else { flag };
        let open = open(NETWORK_OHM, self.network_ohm)
            | open(NETWORK_FARAD, self.network_farad)
            | open(LINE_CAPACITOR, self.line_capacitor_spread(line.line_capacitor_class))
            | open(AERIAL, self.aerial)
            | open(WINDING, self.winding);
        open & relevant_parts(arrangement)
    }

    /// Whether these parts and others judge an arrangement alike: whatever differs is no part of it.
    pub fn agree_on(&self, other: &Self, arrangement: &Arrangement) -> bool {
        let Some(line) = arrangement.line else { return true };
        let line_capacitor = |parts: &Self| parts.line_capacitor_spread(line.line_capacitor_class);
        let differ = |flag: u8, differ: bool| if differ { flag } else { 0 };
        let differing = differ(NETWORK_OHM, self.network_ohm != other.network_ohm)
            | differ(NETWORK_FARAD, self.network_farad != other.network_farad)
            | differ(NETWORK_FARAD, self.network_class_y != other.network_class_y)
            | differ(LINE_CAPACITOR, line_capacitor(self) != line_capacitor(other))
            | differ(AERIAL, self.aerial != other.aerial)
            | differ(WINDING, self.winding != other.winding);
        self.heater_ohm == other.heater_ohm && differing & relevant_parts(arrangement) == 0
    }

    fn line_capacitor_spread(&self, class: LineCapacitorClass) -> Spread {
        self.line_capacitor.unwrap_or(match (class, self.line_capacitor_usual) {
            (LineCapacitorClass::Ordinary, false) => Spread::LINE_CAPACITOR,
            (LineCapacitorClass::ClassY, false) => Spread::CLASS_Y,
            (LineCapacitorClass::Ordinary, true) => Spread::exactly(defaults::LINE_CAPACITOR.value),
            (LineCapacitorClass::ClassY, true) => Spread::exactly(defaults::CLASS_Y.value),
        })
    }

    /// The values at a corner, for a line capacitor of this class.
    pub fn values_at(&self, corner: Corner, class: LineCapacitorClass) -> Values {
        let end = |flag: u8, spread: Spread| {
            if corner.0 & flag != 0 { spread.high } else { spread.low }
        };
        Values {
            line_capacitor_farad: Some(end(LINE_CAPACITOR, self.line_capacitor_spread(class))),
            network_ohm: end(NETWORK_OHM, self.network_ohm),
            network_farad: end(NETWORK_FARAD, self.network_farad),
            aerial_farad: end(AERIAL, self.aerial),
            winding_farad: end(WINDING, self.winding),
            heater_ohm: self.heater_ohm,
            ..Values::default()
        }
    }
}

/// Outcomes at one voltage, remembered.
#[derive(Clone, Debug)]
pub struct Exposures {
    contacts: Contacts,
    highest_contact: f64,
    hertz: f64,
    feed: Feed,
    parts: Parts,
    person: Person,
    solved: FxHashMap<u32, Outcome>,
}

impl Exposures {
    /// Nothing solved yet, for a supply at `volts` V rms and what is known of the parts.
    pub fn new(supply: &Supply, volts: f64, parts: Parts) -> Self {
        Self {
            contacts: supply.contacts(volts),
            highest_contact: supply.highest_contact(volts),
            hertz: supply.hertz,
            feed: supply.feed,
            parts,
            person: Person::default(),
            solved: FxHashMap::default(),
        }
    }

    /// What is known of the parts.
    pub const fn parts(&self) -> &Parts {
        &self.parts
    }

    /// The hot and the neutral contact.
    pub(super) const fn contacts(&self) -> Contacts {
        self.contacts
    }

    /// The supply's frequency, Hz.
    pub(super) const fn hertz(&self) -> f64 {
        self.hertz
    }

    /// Who touches.
    pub(super) const fn person(&self) -> &Person {
        &self.person
    }

    /// Which contacts are hot.
    pub const fn feed(&self) -> Feed {
        self.feed
    }

    /// The sets of none, one and two faults that an arrangement can have with these parts on this feed.
    pub(super) fn fault_sets(&self, arrangement: &Arrangement) -> Vec<FaultSet> {
        let mut sets = fault_sets(arrangement, self.feed);
        if self.parts.network_class_y {
            sets.retain(|set| !set.has(Fault::NetworkCapacitorShorted));
        }
        sets
    }

    /// More than any touch of this reach can carry, mA rms: the highest contact with nothing before
    /// it. A mixed network could raise a node a little above its contacts; with parts of the sizes found
    /// in such units it does so by less than a ten-millionth, and a property check holds that.
    pub fn ceiling_ma(&self, reach: Reach) -> f64 {
        let posture = match reach {
            Reach::Handheld | Reach::CommonExposed => Posture::Holding,
            Reach::Closed | Reach::AerialTerminal | Reach::Exposed => Posture::Touching,
        };
        let nothing = Complex64::new(0.0, 0.0);
        let contact = Thevenin { volts: Complex64::new(self.highest_contact, 0.0), ohms: nothing };
        self.person.milliamperes(posture, &contact)
    }

    /// What a person receives from an arrangement in a state with faults, at a corner.
    pub fn outcome(
        &mut self,
        arrangement: &Arrangement,
        state: State,
        faults: FaultSet,
        corner: Corner,
    ) -> Outcome {
        let touch = Touch::of(arrangement, state, faults);
        touch.map_or(Outcome::BehindBarrier, |touch| self.outcome_of(&touch, corner))
    }

    /// The same of what is in a circuit, at a corner.
    pub(super) fn outcome_of(&mut self, touch: &Touch, corner: Corner) -> Outcome {
        let corner = touch.relevant(corner);
        let key = key(touch.wiring, touch.touched, corner);
        if let Some(known) = self.solved.get(&key) {
            return *known;
        }
        let values = self.parts.values_at(corner, touch.class);
        let found =
            outcome(touch.wiring, touch.touched, &values, self.hertz, self.contacts, &self.person);
        self.solved.insert(key, found);
        found
    }
}

/// What is touched of a network, whatever its parts' values.
pub(super) struct Touch {
    wiring: Wiring,
    touched: Touched,
    class: LineCapacitorClass,
    /// The parts whose ends make a difference, one bit each: many corners come to one.
    parts: u8,
}

impl Touch {
    /// In a state with faults; nothing where nobody is in a circuit.
    pub fn of(arrangement: &Arrangement, state: State, faults: FaultSet) -> Option<Self> {
        let (line, wiring) = (arrangement.line?, Wiring::of(arrangement, state, faults)?);
        let touched = touched(&line, faults);
        if touched == Touched::Nothing && !wiring.is_earthed() {
            return None;
        }
        // What makes no difference is left out: many faults come to one network.
        let on_aerial = matches!(touched, Touched::Aerial | Touched::ChassisAndAerial);
        let wiring = if on_aerial { wiring } else { wiring.with_sound_aerial() };
        let aerial = if on_aerial && !wiring.is_aerial_shorted() { AERIAL } else { 0 };
        let parts = relevant_to(wiring) | aerial;
        Some(Self { wiring, touched, class: line.line_capacitor_class, parts })
    }

    /// A corner without the ends that make no difference.
    pub const fn relevant(&self, corner: Corner) -> Corner {
        Corner(corner.0 & self.parts)
    }
}

/// Wiring, what is touched and the corner in one number: 20 + 3 + 5 bits.
fn key(wiring: Wiring, touched: Touched, corner: Corner) -> u32 {
    let touched = match touched {
        Touched::Nothing => 0,
        Touched::Chassis(Posture::Touching) => 1,
        Touched::Chassis(Posture::Holding) => 2,
        Touched::Aerial => 3,
        Touched::ChassisAndAerial => 4,
        Touched::ChassisAndCommon => 5,
    };
    wiring.bits() | touched << 20 | u32::from(corner.0) << 23
}

#[cfg(test)]
mod tests {
    use super::Parts;
    use crate::arrangement::{Isolation, LineCapacitor, Reach, all};

    #[test]
    fn an_arrangement_has_two_ends_for_each_of_its_open_parts() {
        let parts = Parts::default();
        for arrangement in all().iter().step_by(13) {
            let line = arrangement.line;
            let parts_open = [
                arrangement.isolation == Isolation::LineFloated,
                arrangement.isolation == Isolation::LineFloated,
                line.is_some_and(|line| line.line_capacitor != LineCapacitor::None),
                line.is_some_and(|line| line.reach == Reach::AerialTerminal),
                arrangement.isolation == Isolation::Isolating,
            ];
            let expected = 1 << parts_open.iter().filter(|open| **open).count();
            let corners: Vec<_> = parts.corners(arrangement).collect();
            assert_eq!(corners.len(), expected, "{arrangement:?}");
            let distinct: std::collections::HashSet<_> = corners.iter().collect();
            assert_eq!(distinct.len(), expected);
        }
    }
}
