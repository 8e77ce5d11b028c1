//! The list of tube types: what each heater needs, what the tube does, and how far that was checked.

use std::sync::LazyLock;

use rustc_hash::FxHashMap;
use serde::{Deserialize, Deserializer};

use super::spelling::{Key, key};
use crate::fields::id_enum;
use crate::figure::Mark;

/// Volts and amperes of one way of connecting a heater; nothing where a figure is not known.
#[derive(Clone, Copy, Debug, PartialEq, Default)]
pub struct Rating {
    /// Heater voltage, V.
    pub volts: Option<f64>,
    /// Heater current, A.
    pub amperes: Option<f64>,
}

impl Rating {
    /// A heater of which both figures are known.
    pub const fn of(volts: f64, amperes: f64) -> Self {
        Self { volts: Some(volts), amperes: Some(amperes) }
    }

    /// Whether neither figure is known.
    pub const fn is_unknown(self) -> bool {
        self.volts.is_none() && self.amperes.is_none()
    }
}

id_enum! {
    /// What is heated.
    pub enum HeaterKind {
        /// A heater inside a cathode.
        Heater = "heater",
        /// A filament that is itself the cathode.
        Filament = "filament",
        /// A resistor: a ballast or a line cord.
        Resistor = "resistor",
        /// An iron wire in hydrogen that holds the current and takes up what voltage is left.
        Barretter = "barretter",
        /// A dial lamp.
        Lamp = "lamp",
        /// Nothing: a cold cathode.
        ColdCathode = "cold_cathode",
    }
}

id_enum! {
    /// How a type is usually fed.
    pub enum Use {
        /// In a series string.
        Series = "series",
        /// In parallel, on a winding.
        Parallel = "parallel",
        /// In either.
        Either = "either",
        /// From a battery.
        Battery = "battery",
        /// Straight on the line by itself.
        Line = "line",
        /// It has no heater.
        None = "none",
    }
}

id_enum! {
    /// What a tube does.
    pub enum TubeRole {
        /// Frequency converter.
        Converter = "converter",
        /// Radio-frequency amplifier.
        Rf = "rf",
        /// Detector, with or without an amplifier.
        Detector = "detector",
        /// Triode or several.
        Triode = "triode",
        /// Pentode for sound or picture.
        Pentode = "pentode",
        /// Triode and pentode.
        TriodePentode = "triode_pentode",
        /// Output tube.
        Output = "output",
        /// Rectifier.
        Rectifier = "rectifier",
        /// Rectifier and output tube in one.
        RectifierOutput = "rectifier_output",
        /// Tuning eye.
        Eye = "eye",
        /// Diode.
        Diode = "diode",
        /// Damper diode.
        Damper = "damper",
        /// Voltage regulator or relay tube.
        Regulator = "regulator",
        /// Ballast resistor or line cord.
        Ballast = "ballast",
        /// Barretter.
        Barretter = "barretter",
        /// Dial lamp.
        Lamp = "lamp",
        /// Not known.
        Unknown = "unknown",
    }
}

id_enum! {
    /// How a tube rectifies.
    pub enum Rectifier {
        /// It does not.
        None = "none",
        /// One plate: usual on a line without a transformer.
        Half = "half",
        /// Two plates with cathodes of their own.
        Doubler = "doubler",
        /// Two plates on one cathode: usual behind a transformer.
        Full = "full",
    }
}

/// What is doubtful about the figures of a type.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Doubt {
    /// They were remembered with little certainty.
    LowCertainty,
    /// The volts are those of the type number.
    FromNumber,
    /// Lists disagree about the volts: from, to, V.
    VoltsBetween(f64, f64),
    /// Lists disagree about the current: from, to, A.
    AmperesBetween(f64, f64),
    /// Its current differs from that of the types it is often taken for.
    OddCurrent,
    /// It was sold under two numbers.
    TwoNames,
    /// The tap for the lamp is doubtful.
    Tap,
    /// It takes up any voltage within a span: from, to, V.
    Span(f64, f64),
    /// The list has the type without this last letter; a few improved versions draw another current.
    Suffix,
    /// Read by the rule of type numbers, not from a list.
    ByRule,
}

impl Doubt {
    /// Its id, for words.
    pub const fn id(self) -> &'static str {
        match self {
            Self::LowCertainty => "low_certainty",
            Self::FromNumber => "from_number",
            Self::VoltsBetween(..) => "volts_between",
            Self::AmperesBetween(..) => "amperes_between",
            Self::OddCurrent => "odd_current",
            Self::TwoNames => "two_names",
            Self::Tap => "tap",
            Self::Span(..) => "span",
            Self::Suffix => "suffix",
            Self::ByRule => "by_rule",
        }
    }
}

/// One type of the list.
#[derive(Clone, Debug, PartialEq)]
pub struct TubeType {
    /// The type.
    pub name: String,
    /// Other names of the same tube.
    pub aliases: Vec<String>,
    /// Its heater as it is usually connected.
    pub rating: Rating,
    /// The other way in which its heater can be connected: its halves in parallel, or in series.
    pub other: Option<Rating>,
    /// Its heater has a tap for a dial lamp.
    pub tapped: bool,
    /// What is heated.
    pub kind: HeaterKind,
    /// How it is usually fed.
    pub usual: Use,
    /// What it does.
    pub role: TubeRole,
    /// How it rectifies.
    pub rectifier: Rectifier,
    /// Where the figures come from: ids of `data/tube_sources.csv`.
    pub sources: Vec<String>,
    /// How far they were checked.
    pub mark: Mark,
    /// What is doubtful about them.
    pub doubt: Option<Doubt>,
    /// In how many of the reference's line-ups it stands: the more, the sooner it is offered.
    pub line_ups: u32,
}

impl TubeType {
    /// The type and its other names.
    pub fn names(&self) -> impl Iterator<Item = &str> {
        std::iter::once(self.name.as_str()).chain(self.aliases.iter().map(String::as_str))
    }
}

/// A source of the list.
#[derive(Clone, Debug, PartialEq, Eq, Deserialize)]
pub struct TubeSource {
    /// Its id.
    pub id: String,
    /// What it is.
    pub title: String,
    /// Whether it was seen.
    pub seen: String,
}

#[derive(Deserialize)]
struct Row {
    #[serde(rename = "type")]
    name: String,
    aliases: String,
    volts: Option<f64>,
    amperes: Option<f64>,
    other_volts: Option<f64>,
    other_amperes: Option<f64>,
    tapped: String,
    #[serde(deserialize_with = "by_id")]
    kind: HeaterKind,
    #[serde(rename = "use", deserialize_with = "by_id")]
    usual: Use,
    #[serde(deserialize_with = "by_id")]
    role: TubeRole,
    #[serde(deserialize_with = "by_id")]
    rectifier: Rectifier,
    source: String,
    mark: Mark,
    doubt: String,
    low: Option<f64>,
    high: Option<f64>,
    line_ups: u32,
}

/// Reads an enum by its id.
trait ById: Sized {
    fn by_id(id: &str) -> Option<Self>;
}

macro_rules! by_id {
    ($($name:ty),+) => { $(impl ById for $name {
        fn by_id(id: &str) -> Option<Self> { Self::of(id) }
    })+ };
}
by_id!(HeaterKind, Use, TubeRole, Rectifier);

fn by_id<'de, D: Deserializer<'de>, T: ById>(from: D) -> Result<T, D::Error> {
    let id = String::deserialize(from)?;
    T::by_id(&id).ok_or_else(|| serde::de::Error::custom(id))
}

fn split(list: &str) -> Vec<String> {
    list.split(';').filter(|item| !item.is_empty()).map(str::to_owned).collect()
}

impl From<Row> for TubeType {
    fn from(row: Row) -> Self {
        let (low, high) = (row.low.unwrap_or_default(), row.high.unwrap_or_default());
        let doubt = match row.doubt.as_str() {
            "low_certainty" => Some(Doubt::LowCertainty),
            "from_number" => Some(Doubt::FromNumber),
            "volts_between" => Some(Doubt::VoltsBetween(low, high)),
            "amperes_between" => Some(Doubt::AmperesBetween(low, high)),
            "odd_current" => Some(Doubt::OddCurrent),
            "two_names" => Some(Doubt::TwoNames),
            "tap" => Some(Doubt::Tap),
            _ if row.low.is_some() => Some(Doubt::Span(low, high)),
            _ => None,
        };
        let other = Rating { volts: row.other_volts, amperes: row.other_amperes };
        Self {
            aliases: split(&row.aliases),
            rating: Rating { volts: row.volts, amperes: row.amperes },
            other: (!other.is_unknown()).then_some(other),
            tapped: !row.tapped.is_empty(),
            kind: row.kind,
            usual: row.usual,
            role: row.role,
            rectifier: row.rectifier,
            sources: split(&row.source),
            mark: row.mark,
            doubt,
            line_ups: row.line_ups,
            name: row.name,
        }
    }
}

fn rows<T: for<'de> Deserialize<'de>>(text: &str) -> impl Iterator<Item = T> {
    csv::Reader::from_reader(text.as_bytes()).into_deserialize().filter_map(Result::ok)
}

static TYPES: LazyLock<Vec<TubeType>> = LazyLock::new(|| {
    rows::<Row>(include_str!("../../data/tubes.csv")).map(TubeType::from).collect()
});

static SOURCES: LazyLock<Vec<TubeSource>> =
    LazyLock::new(|| rows(include_str!("../../data/tube_sources.csv")).collect());

/// Every spelling of every name, with its type and the name itself.
pub(super) static BY_KEY: LazyLock<FxHashMap<Key, Named>> = LazyLock::new(|| {
    let mut by_key = FxHashMap::default();
    for (place, tube) in TYPES.iter().enumerate() {
        for (nth, name) in tube.names().enumerate() {
            by_key.entry(key(name)).or_insert(Named { place, nth });
        }
    }
    // Tubes with two numbers on them are looked up by either, unless that is another type.
    for (place, tube) in TYPES.iter().enumerate() {
        for (nth, name) in tube.names().enumerate() {
            for half in name.split('/').filter(|half| is_half(half, name)) {
                by_key.entry(key(half)).or_insert(Named { place, nth });
            }
        }
    }
    by_key
});

/// Whether one side of a slash is a type number of its own: two digits, or digits and letters.
fn is_half(half: &str, name: &str) -> bool {
    let starts = half.starts_with(|first: char| first.is_ascii_digit());
    half.len() < name.len()
        && starts
        && (half.len() == 2 || !half.bytes().all(|b| b.is_ascii_digit()))
}

/// A name of a type: which type, and which of its names.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Named {
    pub(super) place: usize,
    pub(super) nth: usize,
}

impl Named {
    pub(super) fn tube(self) -> Option<&'static TubeType> {
        TYPES.get(self.place)
    }

    pub(super) fn name(self) -> Option<&'static str> {
        self.tube()?.names().nth(self.nth)
    }
}

/// Every type, in the order of the list.
pub fn catalogue() -> &'static [TubeType] {
    &TYPES
}

/// Every source of the list.
pub fn sources() -> &'static [TubeSource] {
    &SOURCES
}

/// The type of this name, however it is spaced and whichever letters are capitals.
pub fn find(name: &str) -> Option<&'static TubeType> {
    BY_KEY.get(&key(name)).and_then(|named| named.tube())
}
