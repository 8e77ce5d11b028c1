//! What has to be bought for a stack of modifications, each part with its size.

use super::modification::Modification;
use super::setup::{NewParts, Setup};
use super::size::{
    ClassY, CordSize, Fuse, FuseStandard, Measure, Rectifier, TransformerSize, class_y, cord_for,
    figure, from_nameplate, from_parts, fuse_for, inrush_amperes,
};
use crate::arrangement::{Arrangement, Isolation, LineCapacitor};
use crate::fields::id_enum;
use crate::inspection::Findings;
use crate::supply::{Supply, WireCode};

id_enum! {
    /// A part to buy.
    pub enum PartKind {
        /// A cord with a polarised plug.
        PolarisedCord = "polarised_cord",
        /// A three-wire cord.
        ThreeWireCord = "three_wire_cord",
        /// Strain relief for a cord.
        StrainRelief = "strain_relief",
        /// A lug with a lock washer for the earth wire, on a screw of its own.
        EarthLug = "earth_lug",
        /// Class Y from the line to the chassis.
        LineClassY = "line_class_y",
        /// Class Y between common and chassis.
        NetworkClassY = "network_class_y",
        /// A fuse with its holder.
        Fuse = "fuse",
        /// An isolating transformer.
        IsolatingTransformer = "isolating_transformer",
        /// Insulated screws, knobs and a back.
        Insulated = "insulated",
        /// Sleeving and wire.
        Sleeving = "sleeving",
        /// An outlet with its device.
        Outlet = "outlet",
    }
}

/// The size of a part.
#[derive(Clone, Debug, PartialEq)]
pub enum Size {
    /// It has none.
    None,
    /// An isolating transformer, and whether its size comes from the rating plate.
    Transformer(TransformerSize, bool),
    /// A fuse.
    Fuse(Fuse),
    /// A class Y capacitor under a limit in mA.
    ClassY(ClassY, f64),
    /// A cord with its conductors and their colours: line, neutral, earth.
    Cord(CordSize, u8, WireCode),
}

/// A part to buy, and what for.
#[derive(Clone, Debug, PartialEq)]
pub struct PartNeed {
    /// The part.
    pub kind: PartKind,
    /// The modification that takes it.
    pub step: Modification,
    /// Its size.
    pub size: Size,
}

/// What is known of a unit's appetite.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Appetite {
    /// The supply.
    pub supply: Supply,
    /// What its rating plate says, W.
    pub rated_watts: Option<f64>,
    /// Its heaters, W.
    pub heater_watts: Option<f64>,
    /// Its heaters hot and in series, Ω.
    pub string_ohm: Option<f64>,
}

impl Appetite {
    /// What findings say of it.
    pub fn of(findings: &Findings) -> Self {
        let volts = findings.supply.volts;
        let string_ohm = findings.heaters().and_then(|heaters| heaters.string_ohm());
        Self {
            supply: findings.supply,
            rated_watts: findings.rated.and_then(|rated| rated.watts),
            heater_watts: string_ohm.map(|ohms| volts * volts / ohms),
            string_ohm,
        }
    }

    /// The isolating transformer, and whether it is sized by the plate.
    pub fn transformer(&self) -> (TransformerSize, bool) {
        if let Some(watts) = self.rated_watts {
            return (from_nameplate(watts), true);
        }
        let heaters = self.heater_watts.unwrap_or_else(|| self.usual_heater_watts());
        let plate = figure("plate_direct");
        (from_parts(self.supply.volts, heaters, plate, Rectifier::HalfWave), false)
    }

    /// What heaters of a set on the line take at the most where nobody has listed them, W.
    fn usual_heater_watts(&self) -> f64 {
        let volts = self.supply.volts;
        figure("heater_watts").max(volts * figure("heater_amperes"))
    }

    /// The steady current, A rms: by the plate with the power factor of a rectifier, else by what a transformer for it
    /// would carry.
    pub fn steady_amperes(&self) -> f64 {
        let volts = self.supply.volts;
        match self.rated_watts {
            Some(watts) => watts / (volts * figure("power_factor")),
            None => self.transformer().0.needed_va / volts,
        }
    }

    /// The inrush when it is cold, A rms.
    fn inrush(&self, is_string: bool, has_iron: bool) -> f64 {
        let steady = self.steady_amperes();
        // Iron that is switched on at the wrong moment, and a filter capacitor behind it.
        let iron = if has_iron { steady * figure("iron_inrush") } else { steady };
        if !is_string {
            return iron;
        }
        let volts = self.supply.volts_max;
        let ohms = self.string_ohm.unwrap_or_else(|| volts * volts / self.usual_heater_watts());
        inrush_amperes(volts, ohms, 0.0).max(iron)
    }

    /// How cords and fuses are counted where such a supply is.
    pub fn measure(&self) -> (Measure, FuseStandard) {
        // 60 Hz up to 130 V is North America; 100 V has metric cords.
        if self.supply.hertz > 55.0 && (105.0..=130.0).contains(&self.supply.volts) {
            (Measure::Awg, FuseStandard::Ul)
        } else {
            (Measure::Mm2, FuseStandard::Iec)
        }
    }

    /// The colours of a new cord there.
    const fn colours(measure: Measure) -> WireCode {
        match measure {
            Measure::Awg => WireCode::NorthAmerica,
            Measure::Mm2 => WireCode::Iec,
        }
    }
}

impl Setup {
    /// The same with class Y of the largest values of a series that keep to a limit in mA together.
    #[must_use]
    pub fn sized(mut self, limit_ma: f64) -> Self {
        let smallest = NewParts::SMALLEST_FARAD;
        let farad = |sized: ClassY| sized.farad.unwrap_or(smallest);
        self.new = NewParts {
            line_farad: farad(class_y(limit_ma, &self.supply, self.together())),
            network_farad: farad(class_y(limit_ma, &self.supply, 1)),
        };
        self
    }

    /// How many line capacitors leak together at the most.
    fn together(&self) -> u8 {
        let both = |a: &Arrangement| {
            a.line.is_some_and(|line| line.line_capacitor == LineCapacitor::BothLegs)
        };
        if self.set.iter().any(|(_, a)| both(a)) { 2 } else { 1 }
    }
}

/// What a stack takes: `setup` is the unit before it.
pub fn parts_list(
    setup: &Setup,
    stack: &[Modification],
    appetite: &Appetite,
    limit_ma: f64,
) -> Vec<PartNeed> {
    let list = Buyer { setup, appetite, limit_ma };
    stack.iter().flat_map(|step| list.of(*step)).collect()
}

struct Buyer<'a> {
    setup: &'a Setup,
    appetite: &'a Appetite,
    limit_ma: f64,
}

impl Buyer<'_> {
    fn of(&self, step: Modification) -> Vec<PartNeed> {
        let part = |kind, size| PartNeed { kind, step, size };
        let plain = |kind| part(kind, Size::None);
        match step {
            Modification::PolarisedPlug => {
                vec![part(PartKind::PolarisedCord, self.cord(2)), plain(PartKind::StrainRelief)]
            }
            Modification::ThreeWireCord => vec![
                part(PartKind::ThreeWireCord, self.cord(3)),
                plain(PartKind::StrainRelief),
                plain(PartKind::EarthLug),
            ],
            Modification::LineCapacitorClassY => {
                let size = class_y(self.limit_ma, &self.setup.supply, self.setup.together());
                vec![part(PartKind::LineClassY, Size::ClassY(size, self.limit_ma))]
            }
            Modification::NetworkClassY => {
                let size = class_y(self.limit_ma, &self.setup.supply, 1);
                vec![part(PartKind::NetworkClassY, Size::ClassY(size, self.limit_ma))]
            }
            Modification::FuseInHotLeg => vec![part(PartKind::Fuse, self.fuse(step))],
            Modification::IsolatingTransformerInside => vec![
                part(PartKind::IsolatingTransformer, self.transformer()),
                part(PartKind::Fuse, self.fuse(step)),
            ],
            Modification::IsolatingTransformerInFront => {
                vec![part(PartKind::IsolatingTransformer, self.transformer())]
            }
            Modification::ReachClosed => vec![plain(PartKind::Insulated)],
            Modification::SwitchToHotLeg
            | Modification::LineCapacitorRemoved
            | Modification::SelectorDisconnected => vec![plain(PartKind::Sleeving)],
            Modification::GfciOutlet | Modification::RcdOutlet => vec![plain(PartKind::Outlet)],
            Modification::RcdAcOutlet => Vec::new(),
        }
    }

    fn transformer(&self) -> Size {
        let (size, by_plate) = self.appetite.transformer();
        Size::Transformer(size, by_plate)
    }

    fn fuse(&self, step: Modification) -> Size {
        let inside = step == Modification::IsolatingTransformerInside;
        let iron = [Isolation::HeaterTransformer, Isolation::Autotransformer, Isolation::Isolating];
        let has_iron = inside || self.setup.set.iter().any(|(_, a)| iron.contains(&a.isolation));
        let is_string = self.setup.set.iter().any(|(_, a)| a.isolation.has_heater_string());
        let standard = self.appetite.measure().1;
        let steady = self.appetite.steady_amperes();
        Size::Fuse(fuse_for(standard, steady, self.appetite.inrush(is_string, has_iron)))
    }

    fn cord(&self, conductors: u8) -> Size {
        let measure = self.appetite.measure().0;
        let fits = cord_for(measure, self.appetite.steady_amperes(), conductors);
        let colours = Appetite::colours(measure);
        fits.map_or(Size::None, |cord| Size::Cord(cord, conductors, colours))
    }
}
