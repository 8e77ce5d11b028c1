//! Builds physical units: one for any wanted arrangement, or a random one.

use std::sync::LazyLock;

use rand::Rng;

use super::PhysicalUnit;
use super::chance::{any, one_of, over_decades, pick};
use super::conductor::{Conductor, Pair};
use super::factors::{
    CapacitorClass, Cord, Factors, Isolation, LineCapacitor, Pin, Reach, SwitchLeg, capacitors,
    near_pins, reaches,
};
use super::metalwork::Metalwork;
use super::parts::{
    Bond, Capacitor, CordState, EarthContact, EarthWire, Feed, HeaterSource, LegCapacitor,
    PlateSource, Plug, Rated,
};
use super::tubes::{
    BATTERY_LINE_UPS, HIGH_LINE_STRINGS, LOW_LINE_STRINGS, LineUp, WINDING_LINE_UPS,
};
use super::unusual::{CLASS_Y_FARAD, LINE_FARAD, NETWORK_FARAD, NETWORK_OHM, WINDING_FARAD};

/// Part of its marking by which a real part may be off, as the design counts a marked value.
const MARK_TOLERANCE: f64 = 0.2;
/// How often a part's marking lies in the usual range and its real value may lie beyond it.
const BEYOND_RANGE: f64 = 0.05;
/// A supply, V and Hz: a nominal voltage of the project's table of supplies.
const SUPPLY: (f64, f64) = (120.0, 60.0);
/// The others of that table.
const OTHER_SUPPLIES: &[(f64, f64)] =
    &[(117.0, 60.0), (100.0, 50.0), (110.0, 50.0), (230.0, 50.0), (240.0, 50.0)];
const NARROW_MM: f64 = 6.35;
const WIDE_MM: f64 = 7.92;
/// Maker's tolerance on a blade, mm (NEMA WD 6, from memory).
const BLADE_TOLERANCE_MM: f64 = 0.25;

/// A real value and its marking: mostly the real value is in the range, now and then the marking.
fn real_and_marked(range: (f64, f64), rng: &mut impl Rng) -> (f64, f64) {
    let first = over_decades(range, rng);
    let error = 1.0 + MARK_TOLERANCE * rng.random_range(-1.0..=1.0);
    if rng.random_bool(BEYOND_RANGE) { (first * error, first) } else { (first, first / error) }
}

pub(super) fn capacitor(range: (f64, f64), rng: &mut impl Rng) -> Capacitor {
    let (farad, marked_farad) = real_and_marked(range, rng);
    Capacitor { farad, marked_farad }
}

fn network(rng: &mut impl Rng) -> Bond {
    let (ohm, marked_ohm) = real_and_marked(NETWORK_OHM, rng);
    Bond::Network { ohm, marked_ohm, capacitor: capacitor(NETWORK_FARAD, rng) }
}

impl PhysicalUnit {
    /// A unit built to be this arrangement; whatever the arrangement leaves open is random.
    pub fn of(wanted: Factors, rng: &mut impl Rng) -> PhysicalUnit {
        let mut unit = PhysicalUnit::bare_bench(wanted, rng);
        if wanted.isolation == Isolation::NoLine {
            unit.take_line_away(rng);
            unit.fit_kind_to_motor(rng);
            return unit;
        }
        unit.fit_cord(wanted.cord, rng);
        unit.wire_power(wanted.isolation, rng);
        unit.wire_legs(wanted, rng);
        unit.fit_kind_to_motor(rng);
        unit
    }

    /// What has a motor is a kind of unit that can have one; only a clock is in a table radio.
    fn fit_kind_to_motor(&mut self, rng: &mut impl Rng) {
        const WITH_MOTOR: &[&str] = &["record_player", "console_radio", "other"];
        let feeds_heaters = self.heaters_from == HeaterSource::MotorWinding;
        let clock = self.kind == "table_radio" && !feeds_heaters;
        if self.motor && !clock && !WITH_MOTOR.contains(&self.kind) {
            self.kind = one_of(WITH_MOTOR, rng).unwrap_or("other");
        }
    }

    /// A random unit. Every arrangement comes up: half of the units are drawn evenly over all of
    /// them, half factor by factor, so that no isolation is rare. Then some are spoilt.
    pub fn random(rng: &mut impl Rng) -> PhysicalUnit {
        let wanted = if rng.random_bool(0.5) { one_of(&EVERY, rng) } else { factor_by_factor(rng) };
        let mut unit = PhysicalUnit::of(wanted.unwrap_or(Factors::NO_LINE), rng);
        unit.spoil(rng);
        unit
    }

    /// Everything but cord and line side.
    fn bare_bench(wanted: Factors, rng: &mut impl Rng) -> PhysicalUnit {
        let (supply_volts, supply_hertz) = any(SUPPLY, OTHER_SUPPLIES, rng);
        let work = Metalwork::with_reach(wanted.reach, wanted.isolation, rng);
        PhysicalUnit {
            supply_volts,
            supply_hertz,
            supply_both_hot: rng.random_bool(0.1),
            feed: Feed::Line,
            plug: None,
            plug_lost: false,
            taped_pin: Conductor::random(rng),
            earth_wire: EarthWire::Absent,
            plates_from: PlateSource::LineHalfWave,
            heaters_from: HeaterSource::LineString,
            motor: rng.random_bool(0.15),
            output_transformer: rng.random_bool(0.8),
            common_conductor: None,
            called_near: Conductor::First,
            bond: Bond::Direct,
            switch_opens: Pair::alike(false),
            leg_capacitor: None,
            polarity_switch: rng.random_bool(0.1),
            fuse_in: any(None, &[None, Some(Conductor::First), Some(Conductor::Second)], rng),
            winding_farad: over_decades(WINDING_FARAD, rng),
            bare_metal: work.bare,
            terminals: work.terminals,
            aerial_post: work.post,
            back_fitted: work.back_fitted,
            line_up: one_of(WINDING_LINE_UPS, rng).unwrap_or_default(),
            kind: any(KIND, &OTHER_KINDS, rng),
            rating_plate: plate(wanted.isolation, rng),
            rated: rng.random_bool(0.6).then(|| rated(supply_volts, rng)),
            tingled: rng.random_bool(0.15),
            reworked: rng.random_bool(0.3),
            cord_state: any(CordState::Sound, &WORN_CORDS, rng),
            resistance_cord: false,
            accessory_outlet: rng.random_bool(0.05),
            filters_leaking: rng.random_bool(0.1),
            materials: MATERIALS.iter().copied().filter(|_| rng.random_bool(0.08)).collect(),
        }
    }

    fn take_line_away(&mut self, rng: &mut impl Rng) {
        self.feed = any(Feed::Batteries, &[Feed::Batteries, Feed::OutsideSupply], rng);
        self.plates_from = PlateSource::LowVoltage;
        self.heaters_from = HeaterSource::LowVoltage;
        self.line_up = one_of(BATTERY_LINE_UPS, rng).unwrap_or_default();
        self.fuse_in = None;
        self.bond = any(Bond::Direct, &[Bond::Direct, Bond::Insulated, network(rng)], rng);
        let reach = one_of(reaches(Isolation::NoLine), rng).unwrap_or(Reach::Closed);
        let work = Metalwork::with_reach(reach, Isolation::NoLine, rng);
        self.bare_metal = work.bare;
        self.terminals = work.terminals;
        self.aerial_post = work.post;
        self.back_fitted = work.back_fitted;
    }

    fn fit_cord(&mut self, cord: Cord, rng: &mut impl Rng) {
        let (earth, earth_wire) = match cord {
            Cord::TwoPinReversible | Cord::TwoPinPolarised => {
                (EarthContact::None, EarthWire::Absent)
            }
            Cord::ThreePinEarthed => (EarthContact::Pin, EarthWire::OnChassis),
            Cord::ThreePinUnearthed => (EarthContact::Pin, EarthWire::Loose),
            // Whoever cut the pin off mostly left the wire where it was.
            Cord::ThreePinCut => {
                (EarthContact::Stump, any(EarthWire::OnChassis, &[EarthWire::Loose], rng))
            }
            Cord::ThreePinReversibleEarthed => (EarthContact::SideClips, EarthWire::OnChassis),
            Cord::ThreePinReversibleUnearthed => (EarthContact::SideClips, EarthWire::Loose),
        };
        let neutral_place = Conductor::random(rng);
        self.plug = Some(Plug { blade_mm: blades(cord, neutral_place, rng), earth, neutral_place });
        self.earth_wire = earth_wire;
    }

    fn wire_power(&mut self, isolation: Isolation, rng: &mut impl Rng) {
        let (plates, heaters) = match isolation {
            Isolation::LineRectified => {
                (PlateSource::LineBridgeOrDoubler, HeaterSource::LineString)
            }
            Isolation::HeaterTransformer => {
                let heaters = any(HeaterSource::Transformer, &[HeaterSource::MotorWinding], rng);
                (PlateSource::LineHalfWave, heaters)
            }
            Isolation::Autotransformer => (PlateSource::TappedWinding, HeaterSource::Transformer),
            Isolation::Isolating => (PlateSource::SeparateWinding, HeaterSource::Transformer),
            _ => (PlateSource::LineHalfWave, HeaterSource::LineString),
        };
        self.plates_from = plates;
        self.heaters_from = heaters;
        self.motor |= heaters == HeaterSource::MotorWinding;
        self.bond = match isolation {
            Isolation::LineFloated => network(rng),
            Isolation::LineInsulated => Bond::Insulated,
            Isolation::Isolating => {
                let bonds = [(Bond::Direct, 8), (network(rng), 1), (Bond::Insulated, 1)];
                pick(&bonds, rng).unwrap_or(Bond::Direct)
            }
            _ => Bond::Direct,
        };
        if isolation.has_heater_string() {
            self.line_up = string_for(self.supply_volts, rng);
            self.resistance_cord = self.line_up.dropper_ohm > 0.0 && rng.random_bool(0.5);
        }
    }

    /// The wires from the pins to the legs, and what sits on them.
    fn wire_legs(&mut self, wanted: Factors, rng: &mut impl Rng) {
        let pin_b = self.pin_b();
        let near = if wanted.near_pin == Pin::B { pin_b } else { pin_b.other() };
        self.called_near = near;
        self.common_conductor = match wanted.isolation {
            Isolation::Isolating | Isolation::LineRectified | Isolation::NoLine => None,
            _ => Some(near),
        };
        let (opens_near, opens_far) = match wanted.switch_leg {
            SwitchLeg::Near => (true, false),
            SwitchLeg::Far => (false, true),
            SwitchLeg::Both => (true, true),
            SwitchLeg::None => (false, false),
        };
        self.switch_opens[near] = opens_near;
        self.switch_opens[near.other()] = opens_far;
        self.fit_line_capacitor(wanted, near, rng);
    }

    fn fit_line_capacitor(&mut self, wanted: Factors, near: Conductor, rng: &mut impl Rng) {
        let mut from = Pair::alike(false);
        match wanted.line_capacitor {
            LineCapacitor::NearLeg => from[near] = true,
            LineCapacitor::FarLeg => from[near.other()] = true,
            LineCapacitor::BothLegs => from = Pair::alike(true),
            LineCapacitor::Selector => self.polarity_switch = true,
            LineCapacitor::None => {
                // Across the line of a set whose chassis is a supply conductor: from the far leg.
                if wanted.isolation.chassis_on_line() && rng.random_bool(0.3) {
                    from[near.other()] = true;
                } else {
                    return;
                }
            }
        }
        let class_y = wanted.line_capacitor_class == CapacitorClass::ClassY;
        let part = capacitor(if class_y { CLASS_Y_FARAD } else { LINE_FARAD }, rng);
        self.leg_capacitor = Some(LegCapacitor { from, part, class_y });
    }

    /// Rare damage and rework. The arrangement is derived from the parts, so it may change.
    fn spoil(&mut self, rng: &mut impl Rng) {
        let Some(plug) = self.plug.as_ref() else {
            return;
        };
        let earth = plug.earth;
        if rng.random_bool(0.03) {
            self.plug_lost = true;
        }
        let odds = match (earth, self.earth_wire) {
            (EarthContact::None, EarthWire::Absent) => 0.04,
            (EarthContact::Pin | EarthContact::SideClips, EarthWire::Loose) => 0.2,
            (EarthContact::Pin | EarthContact::SideClips, EarthWire::OnChassis) => 0.1,
            _ => 0.0,
        };
        if rng.random_bool(odds) {
            // A three-core cord on a two-pin plug, or a lift switch in the earth wire.
            let two_pins = earth == EarthContact::None;
            self.earth_wire = if two_pins { EarthWire::OnChassis } else { EarthWire::LiftSwitch };
        }
    }
}

static EVERY: LazyLock<Vec<Factors>> = LazyLock::new(Factors::all);

/// `None` where it comes to no line inside.
fn factor_by_factor(rng: &mut impl Rng) -> Option<Factors> {
    let isolation =
        one_of(Isolation::ALL, rng).filter(|isolation| *isolation != Isolation::NoLine)?;
    let (line_capacitor, line_capacitor_class) = one_of(&capacitors(isolation), rng)?;
    Some(Factors {
        isolation,
        cord: one_of(Cord::ALL, rng)?,
        near_pin: one_of(near_pins(isolation), rng)?,
        line_capacitor,
        line_capacitor_class,
        switch_leg: one_of(SwitchLeg::ALL, rng)?,
        reach: one_of(reaches(isolation), rng)?,
    })
}

/// Blade widths, mm. An earth pin leaves the neutral blade narrow or wide; a reversible plug may
/// be round pins, or a polarised one whose wide blade was filed down.
fn blades(cord: Cord, neutral_place: Conductor, rng: &mut impl Rng) -> Pair<f64> {
    let wide = match cord {
        Cord::TwoPinPolarised => true,
        Cord::ThreePinEarthed | Cord::ThreePinUnearthed => rng.random_bool(0.5),
        _ => false,
    };
    let mut blade = |nominal: f64| nominal + BLADE_TOLERANCE_MM * rng.random_range(-1.0..=1.0);
    let mut widths = Pair::each(|_| blade(NARROW_MM));
    if wide {
        widths[neutral_place] = blade(WIDE_MM);
    }
    widths
}

fn string_for(supply_volts: f64, rng: &mut impl Rng) -> LineUp {
    let strings = if supply_volts < 150.0 { LOW_LINE_STRINGS } else { HIGH_LINE_STRINGS };
    one_of(strings, rng).unwrap_or_default()
}

fn plate(isolation: Isolation, rng: &mut impl Rng) -> &'static str {
    let truthful: &[&'static str] = match isolation {
        Isolation::NoLine => &["battery", "none"],
        // Iron takes no direct current.
        Isolation::Isolating | Isolation::Autotransformer | Isolation::HeaterTransformer => {
            &["ac_only", "none"]
        }
        Isolation::LineRectified => &["ac_only", "none"],
        _ => &["ac_dc", "ac_only", "ac_dc_battery", "none"],
    };
    one_of(truthful, rng).unwrap_or("none")
}

fn rated(supply_volts: f64, rng: &mut impl Rng) -> Rated {
    Rated {
        volts: any(supply_volts, &[supply_volts, 110.0, 220.0], rng),
        hertz: any(None, &[Some(50.0), Some(60.0)], rng),
        watts: any(None, &[Some(30.0), Some(60.0)], rng),
    }
}

const KIND: &str = "table_radio";
const OTHER_KINDS: [&str; 5] =
    ["console_radio", "portable_radio", "record_player", "instrument_amplifier", "other"];
const MATERIALS: [&str; 4] = ["asbestos", "selenium", "pcb", "radium"];
const WORN_CORDS: [CordState; 3] =
    [CordState::Cracked, CordState::Spliced, CordState::ClothOrRubber];
