//! The modifications, each a function from an arrangement to an arrangement.

use super::refusal::Refusal;
use crate::arrangement::{
    Arrangement, Cord, Isolation, LineCapacitor, LineCapacitorClass, LineSide, NearPin, Reach,
    SwitchLeg,
};
use crate::fields::id_enum;

id_enum! {
    /// One thing that can be done to a unit, or to what it is plugged into.
    pub enum Modification {
        /// A plug that goes in one way only, hot to the far leg.
        PolarisedPlug = "polarised_plug",
        /// The power switch moved from the near leg to the far, hot one.
        SwitchToHotLeg = "switch_to_hot_leg",
        /// The capacitor from the line to the chassis taken out.
        LineCapacitorRemoved = "line_capacitor_removed",
        /// That capacitor replaced by one of class Y.
        LineCapacitorClassY = "line_capacitor_class_y",
        /// A three-wire cord, its earth wire on the chassis.
        ThreeWireCord = "three_wire_cord",
        /// A fuse in the hot leg, ahead of the switch.
        FuseInHotLeg = "fuse_in_hot_leg",
        /// An isolating transformer built in.
        IsolatingTransformerInside = "isolating_transformer_inside",
        /// An isolating transformer in front, for this unit alone.
        IsolatingTransformerInFront = "isolating_transformer_in_front",
        /// Insulated screws and knobs, a whole back: nothing joined to the circuit can be touched.
        ReachClosed = "reach_closed",
        /// The ground switch disconnected, its capacitor with it.
        SelectorDisconnected = "selector_disconnected",
        /// The capacitor between common and chassis replaced by one of class Y.
        NetworkClassY = "network_class_y",
        /// An outlet with a GFCI.
        GfciOutlet = "gfci_outlet",
        /// An outlet behind an RCD of type A.
        RcdOutlet = "rcd_outlet",
        /// An outlet behind an RCD of type AC, as many old ones are.
        RcdAcOutlet = "rcd_ac_outlet",
    }
}

impl Modification {
    /// Whether it is done to the unit; else to what it is plugged into.
    pub const fn is_of_unit(self) -> bool {
        !matches!(
            self,
            Self::IsolatingTransformerInFront
                | Self::GfciOutlet
                | Self::RcdOutlet
                | Self::RcdAcOutlet
        )
    }

    /// Whether it can change a touch current; the others only end one, or guard against fire.
    pub const fn changes_current(self) -> bool {
        !matches!(self, Self::FuseInHotLeg | Self::GfciOutlet | Self::RcdOutlet | Self::RcdAcOutlet)
    }

    /// The arrangement after it; `network_class_y` is whether class Y stands between common and chassis.
    ///
    /// # Errors
    /// It is not offered for this arrangement, and why.
    pub fn on(
        self,
        arrangement: &Arrangement,
        network_class_y: bool,
    ) -> Result<Arrangement, Refusal> {
        let line = arrangement.line.ok_or(Refusal::NoLineSide)?;
        let isolation = arrangement.isolation;
        let with = |line: LineSide| Ok(Arrangement { isolation, line: Some(line) });
        match self {
            Self::PolarisedPlug => with(polarised(arrangement, line)?),
            Self::SwitchToHotLeg => with(switched_far(line)?),
            Self::LineCapacitorRemoved => with(without_capacitor(line)?),
            Self::LineCapacitorClassY => with(with_class_y(line)?),
            Self::ThreeWireCord => with(earthed(isolation, line, network_class_y)?),
            Self::IsolatingTransformerInside => isolated(isolation, line),
            Self::ReachClosed => with(closed(line)?),
            Self::SelectorDisconnected => match line.line_capacitor {
                LineCapacitor::Selector => with(without_capacitor(line)?),
                _ => Err(Refusal::NotThere),
            },
            Self::NetworkClassY if isolation != Isolation::LineFloated => Err(Refusal::NotThere),
            Self::NetworkClassY if network_class_y => Err(Refusal::Already),
            // What is done to the outlet, and what changes no current, leaves the arrangement as it is.
            Self::NetworkClassY
            | Self::FuseInHotLeg
            | Self::IsolatingTransformerInFront
            | Self::GfciOutlet
            | Self::RcdOutlet
            | Self::RcdAcOutlet => Ok(*arrangement),
        }
    }
}

/// Hot goes to the far leg, so that the common is on the neutral. A cord that earths a sound chassis stays.
fn polarised(arrangement: &Arrangement, line: LineSide) -> Result<LineSide, Refusal> {
    if line.cord.is_earthed() && !arrangement.is_line_on_earth() {
        return Err(Refusal::LosesEarth);
    }
    let after = LineSide { cord: Cord::TwoPinPolarised, near_pin: NearPin::B, ..line };
    if after == line { Err(Refusal::Already) } else { Ok(after) }
}

fn switched_far(line: LineSide) -> Result<LineSide, Refusal> {
    match line.switch_leg {
        SwitchLeg::Near => Ok(LineSide { switch_leg: SwitchLeg::Far, ..line }),
        SwitchLeg::Far | SwitchLeg::Both => Err(Refusal::Already),
        SwitchLeg::None => Err(Refusal::NotThere),
    }
}

fn without_capacitor(line: LineSide) -> Result<LineSide, Refusal> {
    match line.line_capacitor {
        LineCapacitor::None => Err(Refusal::NotThere),
        _ => Ok(LineSide {
            line_capacitor: LineCapacitor::None,
            line_capacitor_class: LineCapacitorClass::Ordinary,
            ..line
        }),
    }
}

fn with_class_y(line: LineSide) -> Result<LineSide, Refusal> {
    match (line.line_capacitor, line.line_capacitor_class) {
        (LineCapacitor::None, _) => Err(Refusal::NotThere),
        (_, LineCapacitorClass::ClassY) => Err(Refusal::Already),
        (_, LineCapacitorClass::Ordinary) => {
            Ok(LineSide { line_capacitor_class: LineCapacitorClass::ClassY, ..line })
        }
    }
}

/// The earth wire goes on the chassis, the hot one to the far leg. Where the plug goes in both ways round, so will
/// the new one.
fn earthed(
    isolation: Isolation,
    line: LineSide,
    network_class_y: bool,
) -> Result<LineSide, Refusal> {
    if isolation.is_line_on_chassis() {
        return Err(Refusal::LineOnEarth);
    }
    if line.cord.is_earthed() {
        return Err(Refusal::Already);
    }
    if isolation.has_own_common() && !is_held_off(isolation, &line, network_class_y) {
        return Err(Refusal::NetworkOrdinary);
    }
    Ok(match line.cord {
        Cord::ThreePinReversibleUnearthed => {
            LineSide { cord: Cord::ThreePinReversibleEarthed, ..line }
        }
        _ => LineSide { cord: Cord::ThreePinEarthed, near_pin: NearPin::B, ..line },
    })
}

/// Whether what holds a chassis off its common is rated for it: class Y in the network of a floated set; a class Y
/// line capacitor, and no other, on an insulated one, of whose insulation nothing is known otherwise.
fn is_held_off(isolation: Isolation, line: &LineSide, network_class_y: bool) -> bool {
    let class_y = line.line_capacitor_class == LineCapacitorClass::ClassY;
    let ordinary = line.line_capacitor != LineCapacitor::None && !class_y;
    match isolation {
        Isolation::LineFloated => network_class_y && !ordinary,
        Isolation::LineInsulated => class_y,
        _ => true,
    }
}

/// Separate windings: the common is the chassis, the cord and the switch stay with their pins.
fn isolated(isolation: Isolation, line: LineSide) -> Result<Arrangement, Refusal> {
    if isolation == Isolation::Isolating {
        return Err(Refusal::Already);
    }
    let switch_leg = match (line.near_pin, line.switch_leg) {
        (NearPin::A, SwitchLeg::Near) => SwitchLeg::Far,
        (NearPin::A, SwitchLeg::Far) => SwitchLeg::Near,
        (_, leg) => leg,
    };
    // Metal that was on a common of its own is now on the chassis, and held as before.
    let reach = if line.reach == Reach::CommonExposed { Reach::Handheld } else { line.reach };
    let line = LineSide {
        near_pin: NearPin::B,
        line_capacitor: LineCapacitor::None,
        line_capacitor_class: LineCapacitorClass::Ordinary,
        switch_leg,
        reach,
        ..line
    };
    Ok(Arrangement { isolation: Isolation::Isolating, line: Some(line) })
}

fn closed(line: LineSide) -> Result<LineSide, Refusal> {
    match line.reach {
        Reach::Closed => Err(Refusal::Already),
        Reach::Handheld | Reach::CommonExposed => Err(Refusal::HeldInUse),
        // The terminal goes with it.
        Reach::Exposed | Reach::AerialTerminal => Ok(LineSide { reach: Reach::Closed, ..line }),
    }
}

#[cfg(test)]
mod tests {
    use super::{Modification, Refusal};
    use crate::arrangement::{Isolation, all};

    #[test]
    fn each_gives_an_arrangement_that_exists_and_cannot_be_done_twice() {
        for arrangement in all() {
            for network in [false, true] {
                for &one in Modification::ALL {
                    let Ok(after) = one.on(arrangement, network) else { continue };
                    assert_eq!(after.contradiction(), None, "{one:?} {arrangement:?}");
                    let changed = after != *arrangement;
                    let shown = one.changes_current()
                        && !matches!(
                            one,
                            Modification::IsolatingTransformerInFront | Modification::NetworkClassY
                        );
                    assert_eq!(changed, shown, "{one:?} {arrangement:?}");
                    if changed {
                        assert!(one.on(&after, network).is_err(), "{one:?} twice {arrangement:?}");
                    }
                }
            }
        }
    }

    #[test]
    fn an_earth_never_goes_on_a_chassis_that_is_on_the_line() {
        let mut offered = 0;
        for arrangement in all() {
            for network in [false, true] {
                let after = Modification::ThreeWireCord.on(arrangement, network);
                let tied = arrangement.isolation.is_line_on_chassis();
                assert!(!tied || after == Err(Refusal::LineOnEarth), "{arrangement:?}");
                if let Ok(after) = after {
                    assert!(!after.is_line_on_earth());
                    let floated = arrangement.isolation == Isolation::LineFloated;
                    assert!(!floated || network, "{arrangement:?}");
                    offered += 1;
                }
            }
        }
        assert!(offered > 1000, "{offered}");
    }
}
