//! What the rules alone say of every type of the list: a type is left out by giving it a serial number
//! that no type has, which changes nothing that a rule goes by.
//!
//! Figures of the list carry their own marks; most are from memory, so that agreement is plausible and no
//! proof.

use std::collections::BTreeMap;

use coldchassis_core::heaters::{Known, Tube, TubeRole, TubeType, catalogue};

/// The same number with a nine for a digit of its serial number, or before it; nothing where the number
/// has no serial number behind letters, or every such number is a type too.
fn left_out(name: &str) -> Option<Tube> {
    let end = name.rfind(|c: char| c.is_ascii_digit())? + 1;
    let digits = name[..end].chars().rev().take_while(char::is_ascii_digit).count();
    let (before, digits, after) = (&name[..end - digits], &name[end - digits..end], &name[end..]);
    let in_its_place = || format!("{before}{}9{after}", &digits[..digits.len() - 1]);
    let hidden = match digits.len() {
        1 => [format!("{before}9{digits}{after}"), in_its_place()],
        _ => [in_its_place(), format!("{before}9{}{after}", &digits[1..])],
    };
    let serial = before.ends_with(char::is_alphabetic) && !name.contains(['/', '(']);
    hidden.iter().filter(|_| serial).map(|name| Tube::of(name)).find(|t| t.known != Known::Listed)
}

/// What a rule says against the list's figures.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
enum Verdict {
    Agrees,
    Differs,
    SaysNothing,
}

/// Figures of a number's rule are rounded to the number: so far may they be from the list's.
const ROUNDED: f64 = 0.065;

fn verdict(tube: &TubeType, by_rule: &Tube) -> Verdict {
    let rule = by_rule.rating;
    let near = |own: Option<f64>, rule: Option<f64>| {
        own.zip(rule).is_none_or(|(own, rule)| (own / rule - 1.0).abs() < ROUNDED)
    };
    let mut ways = std::iter::once(tube.rating).chain(tube.other);
    match by_rule.known {
        Known::ByRule
            if ways.any(|own| near(own.volts, rule.volts) && near(own.amperes, rule.amperes)) =>
        {
            Verdict::Agrees
        }
        Known::ByRule => Verdict::Differs,
        _ => Verdict::SaysNothing,
    }
}

/// Types that break their rule: the 2 V battery types that begin with 1, as the reference lists them; and
/// by other names of theirs types of 14 V and 100 mA that look like lock-in ones (14K7, 14L7, 14G6), a
/// 1.2 V one, and those that the number rounds by more (3AB4, 4CF8, 7ES8, 7HG8).
const BREAK_THEIR_RULE: [&str; 27] = [
    "1A4", "1A6", "1B4", "1B5/25S", "1C6", "1C7G", "1D5G", "1D7G", "1E5G", "1E7G", "1F4", "1F5G",
    "1F6", "1F7G", "1G5G", "1H4G", "1H6G", "1J5G", "1J6G", "DCH11", "PC92", "PCC189", "PCF86",
    "PF86", "UBC41", "UBC81", "UCH42",
];

/// A five is a rectifier or not by its last digit, which is what is changed here: checked by itself.
fn goes_by_its_serial_number(name: &str) -> bool {
    name.starts_with('5') && name.chars().nth(1).is_some_and(char::is_alphabetic)
}

#[test]
fn a_rule_says_what_the_list_says_but_for_types_that_break_it() {
    let mut counted: BTreeMap<Verdict, usize> = BTreeMap::new();
    let mut differ: BTreeMap<&str, String> = BTreeMap::new();
    for tube in catalogue().iter().filter(|tube| tube.role != TubeRole::Ballast) {
        for name in tube.names().filter(|name| !goes_by_its_serial_number(name)) {
            let Some(by_rule) = left_out(name) else { continue };
            let verdict = verdict(tube, &by_rule);
            *counted.entry(verdict).or_default() += 1;
            if verdict == Verdict::Differs {
                let figures = (by_rule.rating, tube.rating);
                differ.insert(&tube.name, format!("{name} as {}: {figures:?}", by_rule.entered));
            }
        }
    }
    println!("{counted:?}");
    let names: Vec<&str> = differ.keys().copied().collect();
    let mut expected = BREAK_THEIR_RULE.to_vec();
    expected.sort_unstable();
    let lines: Vec<&String> = differ.values().collect();
    assert_eq!(names, expected, "{counted:?}\n{lines:#?}");
    assert!(counted[&Verdict::Agrees] > 1100, "{counted:?}");
    assert!(counted[&Verdict::SaysNothing] < 110, "{counted:?}");
}

// A number of which the rules make more volts than any line has is no type number.
#[test]
fn no_rule_makes_a_heater_of_more_than_a_line() {
    for name in ["84/6Z94", "330R10", "250A9", "999A9", "150Q5", "846Z4A", "220-A9"] {
        let volts = Tube::of(name).rating.volts.unwrap_or_default();
        assert!(volts <= 130.0, "{name}: {volts} V");
    }
}
