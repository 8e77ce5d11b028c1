//! Says of every figure where it comes from and how far it was checked.
//!
//! A number that decides whether somebody is hurt must not float free: each constant of the physics
//! is a [`Figure`] with its unit, its [`Source`] and its [`Mark`]. Tables carry the same in their rows.

/// How far a figure was checked against its source.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, serde::Serialize, serde::Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Mark {
    /// Seen in print, in the standard or in a secondary source that quotes it.
    Verified,
    /// From memory, with confidence.
    MemoryHigh,
    /// From memory, with some doubt.
    MemoryMedium,
    /// From memory, with much doubt.
    MemoryLow,
    /// Computed from other figures.
    Computed,
    /// Usual in the trade, without a source.
    CommonPractice,
    /// Chosen for the model, because something has to stand there.
    Assumption,
}

/// Where a figure comes from; what each stands for is in `data/sources.csv`.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Source {
    /// Body impedance, contact paths, zones, heart-current factor.
    Iec60479_1,
    /// Measuring networks for touch current.
    Iec60990,
    /// Tolerable body current for 50 kg and 70 kg.
    Ieee80,
    /// Trip time of ground-fault circuit interrupters.
    Ul943,
    /// Trip times of residual-current devices.
    Iec61008,
    /// Limits of leakage current of appliances.
    Ul101,
    /// Energy-source limits of equipment.
    Iec62368_1,
    /// Survey of let-go and startle currents.
    ShockSurveys,
    /// Tolerance of 120 V systems.
    AnsiC84_1,
    /// Standard voltages.
    Iec60038,
    /// Limits of stored energy and charge.
    StoredEnergy,
    /// In-service testing of appliances.
    ApplianceTesting,
    /// Measured cold and hot heater resistances.
    HeaterMeasurements,
    /// What fuses carry and when they open.
    FuseStandards,
    /// Guides of transformer makers to rectifiers.
    TransformerGuides,
    /// Values usual in old sets.
    TypicalValues,
    /// Choices of this model.
    Model,
}

impl Source {
    /// Every source, in the order of `data/sources.csv`.
    pub const ALL: [Self; 17] = [
        Self::Iec60479_1,
        Self::Iec60990,
        Self::Ieee80,
        Self::Ul943,
        Self::Iec61008,
        Self::Ul101,
        Self::Iec62368_1,
        Self::ShockSurveys,
        Self::AnsiC84_1,
        Self::Iec60038,
        Self::StoredEnergy,
        Self::ApplianceTesting,
        Self::HeaterMeasurements,
        Self::FuseStandards,
        Self::TransformerGuides,
        Self::TypicalValues,
        Self::Model,
    ];

    /// The id under which `data/sources.csv` describes the source.
    pub fn id(self) -> &'static str {
        match self {
            Self::Iec60479_1 => "iec_60479_1",
            Self::Iec60990 => "iec_60990",
            Self::Ieee80 => "ieee_80",
            Self::Ul943 => "ul_943",
            Self::Iec61008 => "iec_61008",
            Self::Ul101 => "ul_101",
            Self::Iec62368_1 => "iec_62368_1",
            Self::ShockSurveys => "shock_surveys",
            Self::AnsiC84_1 => "ansi_c84_1",
            Self::Iec60038 => "iec_60038",
            Self::StoredEnergy => "stored_energy",
            Self::ApplianceTesting => "appliance_testing",
            Self::HeaterMeasurements => "heater_measurements",
            Self::FuseStandards => "fuse_standards",
            Self::TransformerGuides => "transformer_guides",
            Self::TypicalValues => "typical_values",
            Self::Model => "model",
        }
    }
}

/// A number with its unit, where it comes from and how far it was checked.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Figure {
    /// The number, in [`Figure::unit`].
    pub value: f64,
    /// The unit, as SI writes it; `1` for a ratio.
    pub unit: &'static str,
    /// Where it comes from.
    pub source: Source,
    /// How far it was checked.
    pub mark: Mark,
}

impl Figure {
    /// Writes a figure down with all that belongs to it.
    pub const fn new(value: f64, unit: &'static str, source: Source, mark: Mark) -> Self {
        Self { value, unit, source, mark }
    }
}

#[cfg(test)]
mod tests {
    use super::Source;

    #[test]
    fn every_source_is_described() {
        let rows = include_str!("../data/sources.csv");
        let described: Vec<&str> =
            rows.lines().skip(1).filter_map(|row| row.split(',').next()).collect();
        let named: Vec<&str> = Source::ALL.iter().map(|source| source.id()).collect();
        assert_eq!(described, named, "data/sources.csv describes the sources, in their order");
    }
}
