//! How likely each arrangement is before and after soft evidence (common practice, estimates).
//!
//! It plans the purchase and the next step; no verdict rests on it.

use std::collections::BTreeMap;
use std::sync::LazyLock;

use serde::Deserialize;

use crate::arrangement::{Arrangement, COUNT, Isolation, LineSide, all};
use crate::heaters;

use super::bank::{Question, Role};
use super::findings::{Answer, Findings};

/// The kind that stands in while nobody has said what the unit is.
const UNKNOWN_KIND: &str = "other";

#[derive(Deserialize)]
struct IsolationRow {
    kind: String,
    isolation: String,
    share: f64,
}

#[derive(Deserialize)]
struct FactorRow {
    factor: String,
    condition: String,
    value: String,
    share: f64,
}

#[derive(Deserialize)]
struct LikelihoodRow {
    question: String,
    answer: String,
    isolation: String,
    likelihood: f64,
}

fn rows<T: for<'de> Deserialize<'de>>(text: &str) -> Vec<T> {
    csv::Reader::from_reader(text.as_bytes()).deserialize().filter_map(Result::ok).collect()
}

static ISOLATIONS: LazyLock<Vec<IsolationRow>> =
    LazyLock::new(|| rows(include_str!("../../data/priors.csv")));
static FACTORS: LazyLock<Vec<FactorRow>> =
    LazyLock::new(|| rows(include_str!("../../data/priors_factors.csv")));
static LIKELIHOODS: LazyLock<Vec<LikelihoodRow>> =
    LazyLock::new(|| rows(include_str!("../../data/likelihoods.csv")));

static BY_KIND: LazyLock<BTreeMap<&'static str, Vec<f64>>> = LazyLock::new(|| {
    let kinds = Question::Kind.entry().answers;
    kinds.iter().map(|kind| (*kind, of_kind(kind))).collect()
});

/// The weight of every arrangement after the soft evidence, in the order of the arrangements.
///
/// Before any soft evidence they sum to 1.
pub fn weights(findings: &Findings) -> Vec<f64> {
    let kind = match findings.known(Question::Kind) {
        Some(Answer::One(kind)) => kind,
        _ => UNKNOWN_KIND,
    };
    let mut weights = BY_KIND.get(kind).cloned().unwrap_or_default();
    let factors = likelihoods(findings);
    for (weight, arrangement) in weights.iter_mut().zip(all()) {
        *weight *= factors.get(arrangement.isolation as usize).copied().unwrap_or(1.0);
    }
    weights
}

/// How well each isolation explains the soft answers.
fn likelihoods(findings: &Findings) -> Vec<f64> {
    let soft: Vec<(&str, &str)> = findings
        .answers
        .iter()
        .filter(|(question, _)| question.entry().role == Role::Soft)
        .filter_map(|(question, answer)| match answer {
            Answer::One(id) => Some((question.id(), *id)),
            _ => None,
        })
        .chain(tube_list(findings))
        .collect();
    let fits = |isolation: &Isolation| {
        LIKELIHOODS
            .iter()
            .filter(|row| row.isolation == isolation.id())
            .filter(|row| soft.contains(&(row.question.as_str(), row.answer.as_str())))
            .map(|row| row.likelihood)
            .product()
    };
    Isolation::ALL.iter().map(fits).collect()
}

/// Tubes made for strings that do not add up to one: no reading, but a hint all the same.
const STRING_TUBES: &str = "string_tubes";

/// What the list of tubes reads as, as an answer to the question for it.
fn tube_list(findings: &Findings) -> Option<(&'static str, &'static str)> {
    let study = findings.heaters()?;
    let reading = study.reading;
    let answer = match reading {
        heaters::Reading::Undecided if study.has_string_tubes() => STRING_TUBES,
        // Types that nobody knows say nothing.
        heaters::Reading::Undecided if !study.is_mostly_known() => return None,
        reading => reading.id(),
    };
    Some((Question::TubeList.id(), answer))
}

/// How likely each reading of the list of tubes is for an isolation, in the order of the table; sums to 1.
pub fn tube_readings(isolation: Isolation) -> &'static [f64] {
    static READINGS: LazyLock<Vec<Vec<f64>>> = LazyLock::new(|| {
        let of = |isolation: &Isolation| {
            let rows = LIKELIHOODS.iter().filter(|row| row.question == Question::TubeList.id());
            let rows = rows.filter(|row| row.isolation == isolation.id());
            let chances: Vec<f64> = rows.map(|row| row.likelihood).collect();
            let total: f64 = chances.iter().sum();
            chances.iter().map(|chance| chance / total).collect()
        };
        Isolation::ALL.iter().map(of).collect()
    });
    READINGS.get(isolation as usize).map_or(&[], Vec::as_slice)
}

fn of_kind(kind: &str) -> Vec<f64> {
    let mut weights = Vec::with_capacity(COUNT);
    let mut sums: BTreeMap<Isolation, f64> = BTreeMap::new();
    for arrangement in all() {
        let weight = arrangement.line.map_or(1.0, |line| line_weight(kind, arrangement, &line));
        *sums.entry(arrangement.isolation).or_default() += weight;
        weights.push(weight);
    }
    // What an isolation does not allow gives its share to what it does.
    for (weight, arrangement) in weights.iter_mut().zip(all()) {
        let sum = sums.get(&arrangement.isolation).copied().unwrap_or(1.0);
        let share = isolation_share(kind, arrangement.isolation);
        *weight = if sum > 0.0 { share * *weight / sum } else { 0.0 };
    }
    weights
}

fn isolation_share(kind: &str, isolation: Isolation) -> f64 {
    let row = ISOLATIONS.iter().find(|row| row.kind == kind && row.isolation == isolation.id());
    row.map_or(0.0, |row| row.share)
}

fn line_weight(kind: &str, arrangement: &Arrangement, line: &LineSide) -> f64 {
    let isolation = arrangement.isolation;
    let amplifier = kind == "instrument_amplifier";
    let cord = if amplifier { "instrument_amplifier" } else { "any other kind" };
    let near_pin = if isolation == Isolation::Isolating {
        1.0
    } else if line.cord.is_reversible() {
        0.5
    } else {
        share("near_pin", "one-way plug", line.near_pin.id())
    };
    let capacitor = if isolation == Isolation::Isolating {
        let condition = if amplifier {
            "isolating and instrument_amplifier"
        } else {
            "isolating and other kinds"
        };
        share("line_capacitor", condition, line.line_capacitor.id())
    } else if isolation.has_own_common() {
        share("line_capacitor", "line_floated or line_insulated", line.line_capacitor.id())
    } else {
        1.0
    };
    let class = if line.line_capacitor == crate::arrangement::LineCapacitor::None {
        1.0
    } else {
        share("line_capacitor_class", "any", line.line_capacitor_class.id())
    };
    let switch =
        if isolation.has_heater_string() { "series-heater sets" } else { "transformer sets" };
    share("cord", cord, line.cord.id())
        * near_pin
        * capacitor
        * class
        * share("switch_leg", switch, line.switch_leg.id())
        * share("reach", reach_condition(kind), line.reach.id())
}

fn reach_condition(kind: &str) -> &str {
    match kind {
        "table_radio" | "instrument_amplifier" | "record_player" => kind,
        _ => "any other kind",
    }
}

fn share(factor: &str, condition: &str, value: &str) -> f64 {
    FACTORS
        .iter()
        .find(|row| row.factor == factor && row.condition == condition && row.value == value)
        .map_or(0.0, |row| row.share)
}

#[cfg(test)]
mod tests {
    use super::{BY_KIND, LIKELIHOODS, isolation_share, weights};
    use crate::arrangement::{Isolation, all};
    use crate::inspection::{Answer, Findings, Question};
    use crate::supply::Supply;

    #[test]
    fn the_weights_of_every_kind_sum_to_one_and_keep_the_shares_of_the_isolations() {
        for (kind, weights) in BY_KIND.iter() {
            assert!((weights.iter().sum::<f64>() - 1.0).abs() < 1e-9, "{kind}");
            for &isolation in Isolation::ALL {
                let sum: f64 = weights
                    .iter()
                    .zip(all())
                    .filter(|(_, a)| a.isolation == isolation)
                    .map(|(weight, _)| weight)
                    .sum();
                assert!(
                    (sum - isolation_share(kind, isolation)).abs() < 1e-9,
                    "{kind} {isolation:?}"
                );
            }
        }
    }

    #[test]
    fn nothing_said_takes_the_kind_that_could_be_anything() {
        let findings = Findings::new(Supply::new(120.0, 60.0));
        assert_eq!(&weights(&findings), BY_KIND.get("other").unwrap());
    }

    fn share(weights: &[f64], isolation: Isolation) -> f64 {
        let there = weights.iter().zip(all()).filter(|(_, a)| a.isolation == isolation);
        there.map(|(weight, _)| weight).sum::<f64>() / weights.iter().sum::<f64>()
    }

    fn with_tubes(kind: &'static str, tubes: &[&str]) -> Findings {
        let mut findings = Findings::new(Supply::new(120.0, 60.0));
        findings.answers.insert(Question::Kind, Answer::One(kind));
        findings.tubes = tubes.iter().map(|tube| (*tube).to_owned()).collect();
        findings
    }

    // One list for each reading, from the line-ups of the reference.
    const LISTS: [(&str, &[&str]); 6] = [
        ("series_on_line", &["12SA7", "12SK7", "12SQ7", "50L6GT", "35Z5GT"]),
        ("series_with_dropper", &["6SC7", "6SJ7", "25L6GT", "25Z6GT"]),
        ("parallel_transformer", &["12AX7", "6V6", "5Y3GT"]),
        ("battery", &["1R5", "1T4", "1S5", "3S4"]),
        ("undecided", &["QQ99"]),
        ("undecided", &["50L6GT", "50L6GT", "50L6GT"]),
    ];

    #[test]
    fn no_list_of_tubes_feeds_a_unit_without_a_line_side() {
        for (reading, tubes) in LISTS {
            for kind in BY_KIND.keys() {
                let findings = with_tubes(kind, tubes);
                assert_eq!(findings.heaters().unwrap().reading.id(), reading);
                let before = share(&weights(&with_tubes(kind, &[])), Isolation::NoLine);
                let after = share(&weights(&findings), Isolation::NoLine);
                // A list that leaves every isolation as likely leaves this one too.
                assert!(after <= before + 1e-9, "{kind} {reading} {before} {after}");
            }
        }
    }

    #[test]
    fn no_list_of_tubes_feeds_a_unit_without_a_line_side_whatever_is_ruled_out() {
        let rows = |isolation: Isolation| {
            let of_tubes = LIKELIHOODS.iter().filter(|row| row.question == "tube_list");
            of_tubes.filter(move |row| row.isolation == isolation.id())
        };
        assert_eq!(rows(Isolation::NoLine).count(), 6);
        for none in rows(Isolation::NoLine) {
            for other in Isolation::ALL.iter().flat_map(|isolation| rows(*isolation)) {
                let weaker = none.likelihood <= other.likelihood;
                assert!(
                    weaker || other.answer != none.answer,
                    "{} {}",
                    other.answer,
                    other.isolation
                );
            }
        }
    }

    #[test]
    fn a_string_speaks_for_the_line_and_windings_for_a_transformer() {
        let tied = |tubes: &[&str]| {
            let weights = weights(&with_tubes("table_radio", tubes));
            share(&weights, Isolation::LineTied) + share(&weights, Isolation::LineFloated)
        };
        let [string, dropper, winding, battery, nobody, too_many] =
            LISTS.map(|(_, tubes)| tied(tubes));
        let nothing = tied(&[]);
        assert!(string > nothing && dropper > nothing && winding < nothing);
        assert!(too_many > nothing, "string tubes that do not add up");
        assert!((nobody - nothing).abs() < 1e-9, "types that nobody knows");
        assert!((battery - nothing).abs() < 1e-9, "battery tubes move nothing");
    }
}
