//! Physical units that answer the inspection's questions out of their own parts.
//!
//! A [`PhysicalUnit`] is blades, wires, joints, contacts, capacitors and bare metal. From those it
//! can say two things: the arrangement it truly is ([`PhysicalUnit::arrangement`]) and what an
//! honest inspector would answer ([`PhysicalUnit::answers`]). Feeding any part of the answers to
//! the inspection must never give a better class than the true arrangement has.
//!
//! Nothing here uses any other module of the core, least of all its evidence table: a mistake there
//! would be copied here and the check could not fail (`tests/checks/module_order.rs` holds this). The
//! only thing shared is the form of the files.
//!
//! Their meter readings come from resistors of their own, solved another way than the core solves them.
//! What this does not do: alternating current, inspectors who make mistakes.

mod answers;
mod chance;
mod conductor;
mod factors;
mod facts;
mod generate;
mod metalwork;
mod meter;
mod parts;
mod printing;
mod tubes;
mod unusual;

#[cfg(test)]
mod tests;

pub use answers::random_subset;
pub use conductor::{Conductor, Pair};
pub use factors::{CapacitorClass, Cord, Factors, Isolation, LineCapacitor, Pin, Reach, SwitchLeg};
pub use meter::{Condition, Meter, Motor, OwnSwitch, random_readings};
pub use parts::{
    AerialPost, BareMetal, Bond, Capacitor, CordState, EarthContact, EarthWire, Feed, HeaterSource,
    LegCapacitor, MetalNode, Place, PlateSource, Plug, Rated, Terminals,
};
pub use tubes::{LineUp, Tube};

/// One old electric unit, as its parts really are.
///
/// The two supply conductors have no names of their own: they are counted, like the blade of
/// [`PhysicalUnit::plug`] that each is wired to. Letters and "near" and "far" are derived.
#[derive(Clone, Debug, PartialEq)]
pub struct PhysicalUnit {
    /// Supply where it stands, V rms, nominal.
    pub supply_volts: f64,
    /// Supply frequency, Hz.
    pub supply_hertz: f64,
    /// The supply has two hot conductors of half the volts each, and no neutral.
    pub supply_both_hot: bool,
    /// Where its power comes from.
    pub feed: Feed,
    /// The plug on the cord; `None` only where no cord was ever fitted.
    pub plug: Option<Plug>,
    /// The plug is off the cord and lies beside it, to be put back the way it was.
    pub plug_lost: bool,
    /// The blade on which the inspector puts the tape where the plug does not tell.
    pub taped_pin: Conductor,
    /// Where the earth wire of the cord ends inside.
    pub earth_wire: EarthWire,
    /// What feeds the plates.
    pub plates_from: PlateSource,
    /// What feeds the heaters.
    pub heaters_from: HeaterSource,
    /// There is a motor (whether or not it feeds the heaters).
    pub motor: bool,
    /// There is an output transformer.
    pub output_transformer: bool,
    /// The conductor to which the circuit common is wired; `None` where it is on neither.
    pub common_conductor: Option<Conductor>,
    /// Where the common is on neither conductor of a line set: the one the description calls near.
    /// It has no physical meaning.
    pub called_near: Conductor,
    /// The joint between circuit common and chassis.
    pub bond: Bond,
    /// Which of the two conductors the power switch opens.
    pub switch_opens: Pair<bool>,
    /// The capacitor or pair of capacitors from the supply to the chassis.
    pub leg_capacitor: Option<LegCapacitor>,
    /// There is a panel switch for ground or hum polarity (its capacitor may be gone).
    pub polarity_switch: bool,
    /// The conductor with the fuse in it.
    pub fuse_in: Option<Conductor>,
    /// Capacitance from each end of the primary to the chassis, F (separate windings only).
    pub winding_farad: f64,
    /// Metal that can be touched with knobs and covers as they are; an instrument or microphone
    /// jack is here even with a plastic bush, because its sleeve reaches a hand through the cable.
    pub bare_metal: Vec<BareMetal>,
    /// Pickup or speaker terminals.
    pub terminals: Option<Terminals>,
    /// Aerial or earth post.
    pub aerial_post: Option<AerialPost>,
    /// The back is on. Without it the chassis can be touched.
    pub back_fitted: bool,
    /// The tubes, and what is in series with their heaters.
    pub line_up: LineUp,
    /// What it was sold as (an id of the question `kind`).
    pub kind: &'static str,
    /// What the rating plate says (an id of the question `rating_plate`).
    pub rating_plate: &'static str,
    /// The figures on the plate, where it can be read.
    pub rated: Option<Rated>,
    /// Somebody has felt it tingle.
    pub tingled: bool,
    /// Somebody has worked on it.
    pub reworked: bool,
    /// State of the cord.
    pub cord_state: CordState,
    /// One wire of a three-wire cord is the heater dropper.
    pub resistance_cord: bool,
    /// It has an outlet for another unit.
    pub accessory_outlet: bool,
    /// A filter capacitor is swollen or leaking.
    pub filters_leaking: bool,
    /// Ids of the question `materials`; empty where there are none.
    pub materials: Vec<&'static str>,
}
