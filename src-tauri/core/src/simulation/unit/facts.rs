//! What the parts of a unit amount to: its true factors and its true arrangement.

use serde_json::{Map, Value, json};

use super::PhysicalUnit;
use super::conductor::Conductor;
use super::factors::{CapacitorClass, Factors, Isolation, LineCapacitor, Pin, Reach, SwitchLeg};
use super::parts::{
    AerialPost, BareMetal, Bond, EarthWire, Feed, HeaterSource, MetalNode, PlateSource,
};

impl PhysicalUnit {
    /// How the line side is built, from what feeds plates and heaters and how the common is joined.
    pub fn isolation(&self) -> Isolation {
        match (self.feed, self.plates_from, self.heaters_from) {
            (Feed::Batteries | Feed::OutsideSupply, _, _) | (_, PlateSource::LowVoltage, _) => {
                Isolation::NoLine
            }
            (_, PlateSource::SeparateWinding, _) => Isolation::Isolating,
            (_, PlateSource::TappedWinding, _) => Isolation::Autotransformer,
            (_, _, HeaterSource::Transformer | HeaterSource::MotorWinding) => {
                Isolation::HeaterTransformer
            }
            (_, PlateSource::LineBridgeOrDoubler, _) => Isolation::LineRectified,
            (_, PlateSource::LineHalfWave, _) => match self.bond {
                Bond::Direct => Isolation::LineTied,
                Bond::Network { .. } => Isolation::LineFloated,
                Bond::Insulated => Isolation::LineInsulated,
            },
        }
    }

    /// The blade that is pin B.
    pub fn pin_b(&self) -> Conductor {
        self.plug.as_ref().and_then(|plug| plug.told_neutral()).unwrap_or(self.taped_pin)
    }

    /// The conductor that is the near leg.
    pub fn near_conductor(&self) -> Conductor {
        match self.isolation() {
            Isolation::Isolating | Isolation::NoLine => self.pin_b(),
            _ => self.common_conductor.unwrap_or(self.called_near),
        }
    }

    /// The chassis is joined to the earth contact in the worst position of an earth lift switch:
    /// earthed where the chassis is on the line (that puts the line on earth), lifted elsewhere.
    pub fn chassis_bonded(&self) -> bool {
        match self.earth_wire {
            EarthWire::OnChassis => true,
            EarthWire::LiftSwitch => self.isolation().chassis_on_line(),
            EarthWire::Absent | EarthWire::Loose => false,
        }
    }

    /// What the metal is joined to for a person's hand: common and chassis are one node except
    /// where the circuit common is on the line and the chassis is not. (With separate windings the
    /// common may hang free of the chassis; both are then equally far from the line.)
    pub fn hand_node(&self, node: MetalNode) -> MetalNode {
        match node {
            MetalNode::Common if !self.isolation().common_is_apart() => MetalNode::Chassis,
            other => other,
        }
    }

    /// Node of everything a hand meets by a wire: bare metal, terminals, posts without a capacitor.
    pub fn wired_nodes(&self) -> Vec<MetalNode> {
        let metal = self.bare_metal.iter().map(|metal| metal.node);
        let terminals = self.terminals.iter().map(|terminals| terminals.node);
        let post = self.aerial_post.iter().filter_map(|post| match post {
            AerialPost::Straight(node) => Some(*node),
            AerialPost::ThroughCapacitor(_) | AerialPost::CoilOnly => None,
        });
        metal.chain(terminals).chain(post).collect()
    }

    /// The same, as [`PhysicalUnit::hand_node`] has them.
    pub fn touched_nodes(&self) -> Vec<MetalNode> {
        self.wired_nodes().into_iter().map(|node| self.hand_node(node)).collect()
    }

    /// Which joined metal can be touched, the worst where there are several.
    pub fn reach(&self) -> Reach {
        let touched = self.touched_nodes();
        if touched.contains(&MetalNode::Common) {
            return Reach::CommonExposed;
        }
        if self.bare_metal.iter().any(|metal| self.is_held(metal)) {
            return Reach::Handheld;
        }
        if touched.contains(&MetalNode::Chassis) || !self.back_fitted {
            return Reach::Exposed;
        }
        match self.aerial_post {
            Some(AerialPost::ThroughCapacitor(_)) => Reach::AerialTerminal,
            _ => Reach::Closed,
        }
    }

    fn is_held(&self, metal: &BareMetal) -> bool {
        metal.node != MetalNode::Nothing && (metal.held || metal.place.is_jack())
    }

    /// The true arrangement, as factors.
    pub fn factors(&self) -> Factors {
        let isolation = self.isolation();
        let Some(plug) = self.plug.as_ref().filter(|_| isolation != Isolation::NoLine) else {
            return Factors::NO_LINE;
        };
        let near = self.near_conductor();
        let (line_capacitor, line_capacitor_class) = self.line_capacitor_factor(near);
        Factors {
            isolation,
            cord: plug.cord(self.chassis_bonded()),
            near_pin: if near == self.pin_b() { Pin::B } else { Pin::A },
            line_capacitor,
            line_capacitor_class,
            switch_leg: match (self.switch_opens[near], self.switch_opens[near.other()]) {
                (true, true) => SwitchLeg::Both,
                (true, false) => SwitchLeg::Near,
                (false, true) => SwitchLeg::Far,
                (false, false) => SwitchLeg::None,
            },
            reach: self.reach(),
        }
    }

    /// Where the chassis is on the line itself such a capacitor lies across the line and is no
    /// line capacitor in the sense of the arrangement.
    fn line_capacitor_factor(&self, near: Conductor) -> (LineCapacitor, CapacitorClass) {
        let Some(capacitor) = self.leg_capacitor.filter(|_| self.isolation().has_line_capacitor())
        else {
            return (LineCapacitor::None, CapacitorClass::Ordinary);
        };
        let place = match (capacitor.from[near], capacitor.from[near.other()]) {
            (true, true) => LineCapacitor::BothLegs,
            (true, false) => LineCapacitor::NearLeg,
            (false, true) => LineCapacitor::FarLeg,
            (false, false) => LineCapacitor::Selector,
        };
        let class =
            if capacitor.class_y { CapacitorClass::ClassY } else { CapacitorClass::Ordinary };
        (place, class)
    }

    /// The supply where the unit stands, as files write it.
    pub fn supply(&self) -> Value {
        let feed = if self.supply_both_hot { "both_hot" } else { "direct" };
        json!({"volts": self.supply_volts, "hertz": self.supply_hertz, "feed": feed})
    }

    /// The exposure file of this unit as it truly is.
    pub fn arrangement(&self) -> Value {
        self.arrangement_with(self.factors(), self.true_values())
    }

    /// The exposure file with the default heater string where the chosen findings hold no tubes.
    ///
    /// The heater string has no range in the design: unless tubes are entered it stays at its
    /// default, so only with this form can a verdict be held against the truth to the last mA.
    pub fn arrangement_as_told(&self, chosen: &[(String, Value)]) -> Value {
        let mut values = self.true_values();
        if !chosen.iter().any(|(id, _)| id == "tubes") {
            values.remove("heater_ohm");
        }
        self.arrangement_with(self.factors(), values)
    }

    /// Everything that a hand may meet, each as an arrangement of its own, with the default heater string where the
    /// chosen findings hold no tubes. A reach names one: beside bare metal of a chassis that is further from the
    /// line, the post behind a capacitor from a common on the line is the second.
    pub fn touch_paths_as_told(&self, chosen: &[(String, Value)]) -> Vec<Value> {
        let mut paths = vec![self.arrangement_as_told(chosen)];
        let factors = self.factors();
        let beside = matches!(factors.reach, Reach::Exposed | Reach::Handheld);
        if let Some(AerialPost::ThroughCapacitor(capacitor)) = self.aerial_post
            && beside
            && factors.isolation.common_is_apart()
        {
            let mut path = self.arrangement_as_told(chosen);
            if let Some(path) = path.as_object_mut() {
                path.insert("reach".to_owned(), json!(Reach::AerialTerminal.id()));
            }
            if let Some(values) = path.get_mut("values").and_then(Value::as_object_mut) {
                values.insert("aerial_farad".to_owned(), json!(capacitor.farad));
            }
            paths.push(path);
        }
        paths
    }

    fn arrangement_with(&self, factors: Factors, values: Map<String, Value>) -> Value {
        if factors.isolation == Isolation::NoLine {
            return json!({"supply": self.supply(), "isolation": factors.isolation.id()});
        }
        json!({
            "supply": self.supply(),
            "isolation": factors.isolation.id(),
            "cord": factors.cord.id(),
            "near_pin": factors.near_pin.id(),
            "line_capacitor": factors.line_capacitor.id(),
            "line_capacitor_class": factors.line_capacitor_class.id(),
            "switch_leg": factors.switch_leg.id(),
            "reach": factors.reach.id(),
            "values": values,
        })
    }

    /// The values of the parts that this arrangement has, Ω and F.
    fn true_values(&self) -> Map<String, Value> {
        let factors = self.factors();
        let mut values = Map::new();
        let mut put = |name: &str, value: f64| values.insert(name.to_owned(), json!(value));
        if factors.isolation.has_heater_string() {
            put("heater_ohm", self.line_up.string_ohm());
        }
        if factors.isolation == Isolation::Isolating {
            put("winding_farad", self.winding_farad);
        }
        if let (Isolation::LineFloated, Bond::Network { ohm, capacitor, .. }) =
            (factors.isolation, self.bond)
        {
            put("network_ohm", ohm);
            put("network_farad", capacitor.farad);
        }
        if let (true, Some(capacitor)) =
            (factors.line_capacitor != LineCapacitor::None, self.leg_capacitor)
        {
            put("line_capacitor_farad", capacitor.part.farad);
        }
        if let (Reach::AerialTerminal, Some(AerialPost::ThroughCapacitor(capacitor))) =
            (factors.reach, self.aerial_post)
        {
            put("aerial_farad", capacitor.farad);
        }
        values
    }
}
