//! The class of every arrangement for one supply and one knowledge of the parts, and nothing more.
//!
//! A class needs to know only whether a current reaches 0.5 or 5 mA. For a given current the touch
//! voltage does not depend on the source, so that is one comparison instead of an iteration: the
//! current reaches I where |V_th| ≥ I·|Z_th + r|, r being the body's impedance at the voltage that I
//! itself makes across it. Sources scale with the supply, so one solved network serves the highest
//! and the nominal voltage.

use std::f64::consts::TAU;
use std::sync::LazyLock;

use num_complex::Complex64;

use crate::arrangement::{ArrangementId, Touched, Wiring, all, defaults};
use crate::body::{Body, Impedance, LET_GO_MA, Posture, STARTLE_MA};
use crate::circuit::Thevenin;
use crate::supply::Supply;

use super::class::Class;
use super::exposure::{Corner, Parts};
use super::outcome::BREAKER_TRIPS_A;
use super::plan::{Plan, Probe};

/// At which voltage of the supply.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Level {
    /// The highest to be expected.
    Highest,
    /// The nominal.
    Nominal,
}

/// How far a current goes, in two bits.
const BELOW: u32 = 0;
const STARTLES: u32 = 1;
const HOLDS: u32 = 2;

/// What may be touched of a network: four bits each, the highest voltage in the lower two.
const CHASSIS_TOUCHED: u32 = 0;
const CHASSIS_HELD: u32 = 4;
const COMMON_HELD: u32 = 8;
const AERIAL_LOW: u32 = 12;
const AERIAL_HIGH: u32 = 16;
const AERIAL_SHORTED: u32 = 20;

/// Set in a place of the memory once it is worked out.
const KNOWN: u32 = 1 << 31;

/// Classes arrangements, each network solved once.
#[derive(Clone, Debug)]
pub struct Screen {
    parts: Parts,
    supply: Supply,
    startle: Threshold,
    let_go: Threshold,
    memory: Vec<u32>,
    /// Impedance to the aerial terminal, Ω: capacitor at its low and high end, and shorted.
    aerial_ohms: [Complex64; 3],
}

/// A current, and the body's impedance where it flows.
#[derive(Clone, Copy, Debug)]
struct Threshold {
    amperes: f64,
    touching_ohms: f64,
    holding_ohms: f64,
}

/// To startle and to hold on, for the body that verdicts are for.
static THRESHOLDS: LazyLock<[Threshold; 2]> = LazyLock::new(|| {
    let body = Impedance::of(Body::default());
    [STARTLE_MA, LET_GO_MA].map(|current| Threshold::of(&body, current.value))
});

impl Threshold {
    fn of(body: &Impedance, milliamperes: f64) -> Self {
        let amperes = milliamperes / 1e3;
        let ohms = |posture: Posture| {
            let factor = posture.worst_path().impedance_factor().value;
            // The touch voltage of a fixed current; its fixed point is stable because the voltage
            // rises with the current while the impedance falls more slowly.
            let mut volts = 0.0;
            for _ in 0..200 {
                volts = f64::midpoint(volts, amperes * factor * body.ohms(volts));
            }
            factor * body.ohms(volts)
        };
        Self {
            amperes,
            touching_ohms: ohms(Posture::Touching),
            holding_ohms: ohms(Posture::Holding),
        }
    }

    fn is_reached(&self, posture: Posture, node: &Thevenin, volts: f64) -> bool {
        let body = match posture {
            Posture::Touching => self.touching_ohms,
            Posture::Holding => self.holding_ohms,
        };
        let through = (node.ohms + body).norm_sqr() * self.amperes * self.amperes;
        node.volts.norm_sqr() * volts * volts >= through
    }
}

impl Screen {
    /// Nothing solved yet.
    pub fn new(supply: &Supply, parts: Parts) -> Self {
        let [startle, let_go] = *THRESHOLDS;
        Self {
            parts,
            supply: *supply,
            startle,
            let_go,
            memory: vec![0; Plan::of(supply.feed).places()],
            aerial_ohms: [
                reactance(supply.hertz, parts.aerial.low),
                reactance(supply.hertz, parts.aerial.high),
                Complex64::new(defaults::SHORT.value, 0.0),
            ],
        }
    }

    /// The worst class an arrangement can have at the highest voltage, over the ends of its parts.
    ///
    /// On an earthed chassis a fault that trips the breaker at the highest voltage may not trip it at
    /// the nominal one, and then touch is worse, so there the nominal voltage is judged as well.
    pub fn worst_class(&mut self, id: ArrangementId) -> Class {
        let Some(arrangement) = all().get(usize::from(id.0)) else { return Class::Live };
        let is_earthed = arrangement.line.is_some_and(|line| line.cord.is_earthed());
        let mut worst = Class::NoLine;
        for corner in self.parts.corners_from_high(arrangement) {
            worst = worst.worse(self.class_at(id, corner, Level::Highest));
            if is_earthed && worst != Class::Live {
                worst = worst.worse(self.class_at(id, corner, Level::Nominal));
            }
            if worst == Class::Live {
                break;
            }
        }
        worst
    }

    /// The best class an arrangement can have, over the ends of its parts.
    pub fn best_class(&mut self, id: ArrangementId, level: Level) -> Class {
        let Some(arrangement) = all().get(usize::from(id.0)) else { return Class::Live };
        let mut best = Class::Live;
        for corner in self.parts.corners(arrangement) {
            let class = self.class_at(id, corner, level);
            if best.is_worse_than(class) {
                best = class;
            }
        }
        best
    }

    fn class_at(&mut self, id: ArrangementId, corner: Corner, level: Level) -> Class {
        let Some(arrangement) = all().get(usize::from(id.0)) else { return Class::Live };
        if arrangement.line.is_none() {
            return Class::NoLine;
        }
        if arrangement.is_line_on_earth() {
            return Class::Live;
        }
        let plan = Plan::of(self.supply.feed);
        let lists = plan.lists(id);
        let mut found = BELOW;
        for probe in plan.probes(&lists.found) {
            found = found.max(self.reach_of(probe, corner, level));
            if found == HOLDS {
                return Class::Live;
            }
        }
        // Class Y is not counted to short by itself.
        let class_y = self.parts.network_class_y;
        let counts = |probe: &&Probe| !(class_y && probe.wiring.is_network_shorted());
        let mut single = plan.probes(&lists.single).filter(counts);
        let one_holds = single.any(|probe| self.reach_of(probe, corner, level) == HOLDS);
        Class::by_margin(if one_holds { 1 } else { 2 }, found == STARTLES)
    }

    /// How far the current of a probe goes.
    fn reach_of(&mut self, probe: &Probe, corner: Corner, level: Level) -> u32 {
        let place = probe.place_at(corner);
        let known = self.memory.get(place).copied().unwrap_or_default();
        let bits = if known == 0 {
            let bits = self.solve(probe.wiring, corner) | KNOWN;
            if let Some(memory) = self.memory.get_mut(place) {
                *memory = bits;
            }
            bits
        } else {
            known
        };
        let at = |what: u32| match level {
            Level::Highest => bits >> what & 3,
            Level::Nominal => bits >> (what + 2) & 3,
        };
        let aerial = match (probe.aerial_shorted, corner.is_aerial_high()) {
            (true, _) => AERIAL_SHORTED,
            (false, true) => AERIAL_HIGH,
            (false, false) => AERIAL_LOW,
        };
        match probe.touched {
            Touched::Nothing => BELOW,
            Touched::Chassis(Posture::Touching) => at(CHASSIS_TOUCHED),
            Touched::Chassis(Posture::Holding) => at(CHASSIS_HELD),
            Touched::Aerial => at(aerial),
            Touched::ChassisAndAerial => at(CHASSIS_TOUCHED).max(at(aerial)),
            Touched::ChassisAndCommon => at(CHASSIS_HELD).max(at(COMMON_HELD)),
        }
    }

    /// How far the current goes for everything that may be touched of a network.
    fn solve(&self, wiring: Wiring, corner: Corner) -> u32 {
        let values = self.parts.values_at(corner, wiring.capacitor_class());
        let contacts = self.supply.contacts(1.0);
        let [chassis, common] = wiring.chassis_and_common_at(&values, self.supply.hertz, contacts);
        let earth_amperes =
            if wiring.is_earthed() { chassis.volts.norm() / values.earth_ohm } else { 0.0 };
        let [low, high, shorted] = self.aerial_ohms.map(|ohms| common.through(ohms));
        let (touching, holding) = (Posture::Touching, Posture::Holding);
        let touches = [
            (CHASSIS_TOUCHED, touching, chassis),
            (CHASSIS_HELD, holding, chassis),
            (COMMON_HELD, holding, common),
            (AERIAL_LOW, touching, low),
            (AERIAL_HIGH, touching, high),
            (AERIAL_SHORTED, touching, shorted),
        ];
        let mut bits = 0;
        for (volts, shift) in [(self.supply.volts_max, 0), (self.supply.volts, 2)] {
            // A tripped breaker leaves every touch below.
            if earth_amperes * volts < BREAKER_TRIPS_A.value {
                for (what, posture, node) in &touches {
                    bits |= self.goes(*posture, node, volts) << (what + shift);
                }
            }
        }
        bits
    }

    fn goes(&self, posture: Posture, node: &Thevenin, volts: f64) -> u32 {
        if self.let_go.is_reached(posture, node, volts) {
            HOLDS
        } else if self.startle.is_reached(posture, node, volts) {
            STARTLES
        } else {
            BELOW
        }
    }
}

fn reactance(hertz: f64, farads: f64) -> Complex64 {
    Complex64::new(0.0, -1.0 / (TAU * hertz * farads))
}
