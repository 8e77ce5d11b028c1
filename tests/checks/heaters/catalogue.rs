//! The list of types: found however it is written, with a source and its doubts, and plausible in itself.
//!
//! The list is read here once more, by other code than the core's.

use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;

use coldchassis_core::heaters::{Doubt, HeaterKind, Known, Tube, Use, catalogue, find, sources};
use serde::Deserialize;

/// The types of the reference, each with a row of its own.
const TYPES: usize = 867;

#[derive(Deserialize)]
struct Row {
    #[serde(rename = "type")]
    name: String,
    aliases: String,
    volts: Option<f64>,
    amperes: Option<f64>,
    other_volts: Option<f64>,
    other_amperes: Option<f64>,
    kind: String,
    #[serde(rename = "use")]
    usual: String,
    role: String,
    rectifier: String,
    source: String,
    mark: String,
    doubt: String,
    low: Option<f64>,
    high: Option<f64>,
}

impl Row {
    fn names(&self) -> Vec<&str> {
        std::iter::once(self.name.as_str())
            .chain(self.aliases.split(';').filter(|alias| !alias.is_empty()))
            .collect()
    }
}

fn rows() -> Vec<Row> {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("../src-tauri/core/data/tubes.csv");
    let mut reader = csv::Reader::from_path(path).expect("the list of types");
    let rows: Vec<Row> = reader.deserialize().map(|row| row.expect("a row")).collect();
    assert_eq!(rows.len(), TYPES);
    rows
}

/// Ways in which a person may write the same number.
fn spellings(name: &str) -> Vec<String> {
    let between = |mark: &str| {
        let mut spaced = String::new();
        let mut before: Option<char> = None;
        for c in name.chars() {
            let changes = before.is_some_and(|b| b.is_alphabetic() != c.is_alphabetic());
            if changes && c.is_alphanumeric() {
                spaced.push_str(mark);
            }
            spaced.push(c);
            before = Some(c);
        }
        spaced
    };
    let mut all = vec![name.to_owned(), name.to_lowercase(), name.to_uppercase()];
    all.extend([format!("  {name}\t"), between(" "), between("."), between(" ").to_lowercase()]);
    // A hyphen is a part of Japanese numbers, and of no other's meaning.
    all.extend([between("-"), name.replace('-', ""), name.replace('-', " ")]);
    all
}

#[test]
fn every_type_is_found_by_each_name_however_it_is_spelt() {
    let mut looked_up = 0;
    let mut wrong = BTreeSet::new();
    for row in rows() {
        for name in row.names() {
            for spelling in spellings(name) {
                looked_up += 1;
                let tube = Tube::of(&spelling);
                let same = tube.listed.is_some_and(|listed| listed.name == row.name);
                if !same
                    || tube.known != Known::Listed
                    || tube.corrected
                    || plain(&tube.name) != plain(name)
                {
                    wrong.insert(format!(
                        "{spelling:?} of {}: {} {:?}",
                        row.name, tube.name, tube.known
                    ));
                }
            }
            let found = find(name).map(|found| found.name.as_str());
            assert_eq!(found, Some(row.name.as_str()), "{name}");
        }
    }
    assert!(looked_up > 15_000, "{looked_up} spellings");
    let lines: Vec<String> = wrong.into_iter().collect();
    assert!(lines.is_empty(), "{} of {looked_up} wrong\n{}", lines.len(), lines.join("\n"));
}

/// Letters and digits alone.
fn plain(name: &str) -> String {
    name.to_uppercase().chars().filter(|c| c.is_alphanumeric()).collect()
}

#[test]
fn a_type_is_called_as_the_list_writes_it() {
    let called = rows().into_iter().map(|row| (Tube::of(&row.name).name, row.name));
    let differ: Vec<(String, String)> = called.filter(|(called, name)| called != name).collect();
    assert!(differ.is_empty(), "called, written: {differ:?}");
}

#[test]
fn every_row_is_in_the_core_as_it_stands_in_the_file() {
    for (row, tube) in rows().iter().zip(catalogue()) {
        assert_eq!(row.names(), tube.names().collect::<Vec<_>>());
        let name = &row.name;
        assert_eq!((row.volts, row.amperes), (tube.rating.volts, tube.rating.amperes), "{name}");
        let other = tube.other.map_or((None, None), |other| (other.volts, other.amperes));
        assert_eq!((row.other_volts, row.other_amperes), other, "{name}");
        let ids = (tube.kind.id(), tube.usual.id(), tube.role.id(), tube.rectifier.id());
        let written =
            (row.kind.as_str(), row.usual.as_str(), row.role.as_str(), row.rectifier.as_str());
        assert_eq!(ids, written, "{name}");
        assert_eq!(tube.sources.join(";"), row.source, "{name}");
        let mark = serde_json::to_value(tube.mark).expect("a mark");
        assert_eq!(mark, row.mark.as_str(), "{name}");
    }
    assert_eq!(catalogue().len(), TYPES);
}

#[test]
fn no_two_types_share_a_name() {
    let mut owners: BTreeMap<String, &str> = BTreeMap::new();
    for tube in catalogue() {
        for name in tube.names() {
            let before = owners.insert(plain(name), &tube.name);
            assert!(before.is_none_or(|before| before == tube.name), "{name}: {before:?}");
        }
    }
    // The reference has 1579 names; old short forms came on top.
    let names = rows().iter().map(|row| row.names().len()).sum::<usize>();
    assert!(names >= 1579, "{names} names");
}

#[test]
fn every_type_has_a_source_that_is_described() {
    let described: BTreeSet<&str> = sources().iter().map(|source| source.id.as_str()).collect();
    for source in sources() {
        assert!(!source.title.is_empty() && !source.seen.is_empty(), "{source:?}");
    }
    for tube in catalogue() {
        assert!(!tube.sources.is_empty(), "{}", tube.name);
        for source in &tube.sources {
            assert!(described.contains(source.as_str()), "{}: {source}", tube.name);
        }
    }
    // Of the reference's rows 186 were seen in print, the others are from memory.
    let verified = rows().iter().filter(|row| row.mark == "verified").count();
    assert_eq!((verified, rows().len() - verified), (186, 681));
}

#[test]
fn what_the_reference_doubts_stays_doubtful() {
    // Rows of the reference that say so: 63. Three barretters more have a span instead of a voltage.
    let doubted: Vec<Row> = rows().into_iter().filter(|row| !row.doubt.is_empty()).collect();
    assert_eq!(doubted.len(), 63);
    for row in &doubted {
        let doubt = find(&row.name).and_then(|tube| tube.doubt);
        assert_eq!(doubt.map(Doubt::id), Some(row.doubt.as_str()), "{}", row.name);
    }
    let in_code = catalogue().iter().filter(|tube| tube.doubt.is_some()).count();
    let spans =
        catalogue().iter().filter(|tube| matches!(tube.doubt, Some(Doubt::Span(..)))).count();
    assert_eq!((in_code, spans), (66, 4));
}

#[test]
fn lists_that_disagree_do_so_around_the_figure() {
    for row in rows().iter().filter(|row| row.low.is_some()) {
        let (low, high) = (row.low.unwrap_or_default(), row.high.unwrap_or_default());
        assert!(low < high && low > 0.0, "{}: {low} to {high}", row.name);
        let figure = match row.doubt.as_str() {
            "volts_between" => row.volts,
            "amperes_between" => row.amperes,
            _ => None,
        };
        assert!(figure.is_none_or(|own| low <= own && own <= high), "{}: {figure:?}", row.name);
    }
}

#[test]
fn every_heater_has_volts_and_amperes_that_a_heater_can_have() {
    for tube in catalogue() {
        let name = &tube.name;
        let cold = tube.kind == HeaterKind::ColdCathode;
        assert_eq!(cold, tube.rating.is_unknown(), "{name}");
        assert_eq!(cold, tube.usual == Use::None, "{name}");
        if cold {
            continue;
        }
        let amperes = tube.rating.amperes.unwrap_or_default();
        // The least is a subminiature's 25 mA, the most a regulator's halves in series.
        assert!((0.025..=5.0).contains(&amperes), "{name}: {amperes} A");
        let Some(volts) = tube.rating.volts else {
            assert_eq!(tube.kind, HeaterKind::Barretter, "{name} has no volts");
            continue;
        };
        assert!((1.0..=117.0).contains(&volts), "{name}: {volts} V");
        let watts = volts * amperes;
        assert!((0.03..=42.0).contains(&watts), "{name}: {watts} W");
    }
}

// Two halves of a heater take the same power in series and in parallel.
#[test]
fn a_heater_of_two_halves_takes_the_same_power_either_way() {
    let both = catalogue().iter().filter_map(|tube| Some((tube, tube.other?)));
    let both: Vec<_> = both.collect();
    assert_eq!(both.len(), 33, "types with two connections");
    for (tube, other) in both {
        let watts =
            |volts: Option<f64>, amperes: Option<f64>| volts.zip(amperes).map(|(v, a)| v * a);
        let usual = watts(tube.rating.volts, tube.rating.amperes).unwrap_or_default();
        let other = watts(other.volts, other.amperes).unwrap_or_default();
        assert!((usual / other - 1.0).abs() < 0.01, "{}: {usual} W and {other} W", tube.name);
    }
}

/// Number, letters and elements of an American number: the letters name the family.
fn family(name: &str) -> Option<String> {
    let letters: String = name.trim_start_matches(|c: char| c.is_ascii_digit()).to_owned();
    let number = name.len() - letters.len();
    let count = letters.chars().take_while(char::is_ascii_uppercase).count();
    let elements: String = letters.chars().skip(count).take_while(char::is_ascii_digit).collect();
    let fits = (1..=2).contains(&number) && count >= 2 && !elements.is_empty();
    fits.then(|| format!("{}{elements}", letters.chars().take(count).collect::<String>()))
}

/// Families whose letters stand for different tubes, or of which one draws another power on purpose.
const OTHER_POWER: [&str; 7] = ["AC5", "AD7", "AF6", "AG7", "AH7", "BY7", "EH5"];

// The reference's self-check: 6AV6 and 12AV6 take the same power; letters were reused for unlike tubes
// in the families named above.
#[test]
fn types_of_one_family_take_about_the_same_power() {
    let mut families: BTreeMap<String, Vec<(&str, f64)>> = BTreeMap::new();
    for tube in catalogue().iter().filter(|tube| tube.kind == HeaterKind::Heater) {
        if let (Some(family), Some(volts), Some(amperes)) =
            (family(&tube.name), tube.rating.volts, tube.rating.amperes)
        {
            families.entry(family).or_default().push((&tube.name, volts * amperes));
        }
    }
    families.retain(|_, types| types.len() > 1);
    assert!(families.len() >= 38, "{} families", families.len());
    let differ: Vec<&str> = families
        .iter()
        .filter(|(_, types)| {
            let watts = types.iter().map(|(_, watts)| *watts);
            watts.clone().fold(0.0, f64::max) > 1.12 * watts.fold(f64::INFINITY, f64::min)
        })
        .map(|(family, _)| family.as_str())
        .collect();
    assert_eq!(differ, OTHER_POWER, "{families:?}");
}

// The exceptions that the reference names, W.
#[test]
fn the_beam_tubes_of_one_name_take_the_powers_of_the_reference() {
    for (name, watts) in [("6L6", 5.7), ("25L6", 7.5), ("35L6GT", 5.25), ("50L6GT", 7.5)] {
        let rating = Tube::of(name).rating;
        let ours = rating.volts.unwrap_or_default() * rating.amperes.unwrap_or_default();
        assert!((ours - watts).abs() < 0.05, "{name}: {ours} W, not {watts} W");
    }
}
