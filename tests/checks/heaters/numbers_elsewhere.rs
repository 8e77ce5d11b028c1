//! The same for European, Russian and Japanese numbers, and for ballasts and resistance cords.

use coldchassis_core::heaters::{HeaterKind, Known, Tube, study};

/// Volts and amperes that a number fixes: one of them, or both where the list has it.
type Fixed = (Option<f64>, Option<f64>);

#[track_caller]
fn each(cases: &[(&str, Fixed)], known: impl Fn(&Tube) -> bool) {
    let differ: Vec<String> = cases
        .iter()
        .map(|(entered, fixed)| (Tube::of(entered), fixed))
        .filter(|(tube, fixed)| {
            let (volts, amperes) = **fixed;
            tube.rating.volts != volts || tube.rating.amperes != amperes || !known(tube)
        })
        .map(|(tube, fixed)| {
            format!(
                "{} as {}: {:?} {:?}, not {fixed:?}",
                tube.entered, tube.name, tube.known, tube.rating
            )
        })
        .collect();
    assert!(differ.is_empty(), "{} of {} differ\n{}", differ.len(), cases.len(), differ.join("\n"));
}

const fn volts(volts: f64) -> Fixed {
    (Some(volts), None)
}

const fn amperes(amperes: f64) -> Fixed {
    (None, Some(amperes))
}

const fn both(volts: f64, amperes: f64) -> Fixed {
    (Some(volts), Some(amperes))
}

fn is_by_rule(tube: &Tube) -> bool {
    tube.known == Known::ByRule
}

fn is_listed(tube: &Tube) -> bool {
    tube.known == Known::Listed
}

// Several tables agree on these but for X, L and Y, whose currents are from memory.
#[test]
fn the_first_letter_of_a_european_number_fixes_volts_or_current() {
    let cases = [
        ("ACH99", volts(4.0)),
        ("AZ99", volts(4.0)),
        ("BCH9", amperes(0.18)),
        ("CF99", amperes(0.2)),
        ("CBL99", amperes(0.2)),
        ("DAF99", volts(1.4)),
        ("DL99", volts(1.4)),
        ("ECC999", volts(6.3)),
        ("EF199", volts(6.3)),
        ("EABC99", volts(6.3)),
        ("FZ9", volts(12.6)),
        ("GZ99", volts(5.0)),
        ("HBC99", amperes(0.15)),
        ("HY99", amperes(0.15)),
        ("IF9", volts(20.0)),
        ("KF99", volts(2.0)),
        ("LCF299", amperes(0.45)),
        ("LY99", amperes(0.45)),
        ("PCF299", amperes(0.3)),
        ("PY399", amperes(0.3)),
        ("PCL999", amperes(0.3)),
        ("TF9", volts(7.4)),
        ("UCH99", amperes(0.1)),
        ("UABC99", amperes(0.1)),
        ("VCL99", amperes(0.05)),
        ("VY9", amperes(0.05)),
        ("XCC99", amperes(0.6)),
        ("XCF99", amperes(0.6)),
        ("YCL99", amperes(0.45)),
        ("ucl 99", amperes(0.1)),
    ];
    each(&cases, is_by_rule);
    // From memory: the two types that settle which letter is which current.
    each(&[("XCL82", both(8.2, 0.6)), ("LCL82", both(10.7, 0.45))], is_listed);
}

#[test]
fn a_professional_number_has_its_digits_inside() {
    let cases = [
        ("E80CC", volts(6.3)),
        ("E83CC", volts(6.3)),
        ("E99F", volts(6.3)),
        ("E84L", volts(6.3)),
        ("E188CC", volts(6.3)),
        ("E283CC", volts(6.3)),
        ("ECC801S", volts(6.3)),
    ];
    each(&cases, is_by_rule);
    each(&[("E88CC", both(6.3, 0.3))], is_listed);
}

#[test]
fn a_professional_number_of_three_digits_is_no_old_one() {
    each(&[("E180F", volts(6.3)), ("E186F", volts(6.3)), ("E280F", volts(6.3))], |_| true);
    each(&[("E130L", volts(6.3)), ("E235L", volts(6.3))], |_| true);
}

// Seen in print: E443H is 4 V; the first letter of an old number is a class of current, the digit the volts.
#[test]
fn the_first_digit_of_an_old_european_number_is_the_volts() {
    let cases = [
        ("A409", volts(4.0)),
        ("A442", volts(4.0)),
        ("B405", volts(4.0)),
        ("B443S", volts(4.0)),
        ("C443", volts(4.0)),
        ("C443N", volts(4.0)),
        ("D404", volts(4.0)),
        ("E438", volts(4.0)),
        ("E452T", volts(4.0)),
        ("F410", volts(4.0)),
        ("B217", volts(2.0)),
    ];
    each(&cases, is_by_rule);
    each(&[("E443H", both(4.0, 1.1))], is_listed);
}

#[test]
fn a_russian_number_begins_with_the_volts_in_either_script() {
    let cases = [
        ("1К99П", volts(1.2)),
        ("1Ж99Б", volts(1.2)),
        ("2П9П", volts(2.4)),
        ("5Ц99С", volts(5.0)),
        ("6Ж99П", volts(6.3)),
        ("6ж99п", volts(6.3)),
        ("6К99П", volts(6.3)),
        ("6Н99П", volts(6.3)),
        ("6П99С", volts(6.3)),
        ("6С99П", volts(6.3)),
        ("6С99Н", volts(6.3)),
        ("6Э99П", volts(6.3)),
        ("6Е99П", volts(6.3)),
        ("6Ц99П", volts(6.3)),
        ("6Х99С", volts(6.3)),
        ("6Г99", volts(6.3)),
        ("6Ф99П", volts(6.3)),
        ("6И99П", volts(6.3)),
        ("12Ж99", volts(12.6)),
        ("12Х9С", volts(12.6)),
        ("30П9С", volts(30.0)),
        ("30Ц9С", volts(30.0)),
        ("6Zh99P", volts(6.3)),
        ("6Ts99P", volts(6.3)),
        ("6N99P", volts(6.3)),
        ("6S99P", volts(6.3)),
        ("30P9S", volts(30.0)),
    ];
    each(&cases, is_by_rule);
}

#[test]
fn letters_that_look_alike_find_a_russian_type() {
    // Seen in print: 6H8C in Latin letters is 6N8S.
    let cases = [("6H8C", "6N8S"), ("6H9C", "6N9S"), ("6H13C", "6N13S"), ("6Н8С", "6Н8С")];
    for (entered, name) in cases {
        let tube = Tube::of(entered);
        assert_eq!((tube.name.as_str(), tube.known), (name, Known::Listed), "{entered}");
    }
}

// A note of the reference: 6C4C is 6S4S, which is no 6C4 with a C behind it.
#[test]
fn a_russian_triode_is_not_taken_for_an_american_one() {
    assert_ne!(Tube::of("6C4C").rating.amperes, Some(0.15));
}

// Another: П is printed as n, and Latin and Cyrillic letters stand side by side.
#[test]
fn a_russian_type_is_found_in_a_mixed_or_a_printed_spelling() {
    let cases = [
        ("6P3C", both(6.3, 0.9)),
        ("6n3C", both(6.3, 0.9)),
        ("6n14n", both(6.3, 0.76)),
        ("6H2П", both(6.3, 0.34)),
        ("6H2n", both(6.3, 0.34)),
    ];
    each(&cases, is_listed);
}

// Currents seen in print; the grade behind the hyphen changes neither.
#[test]
fn the_grade_of_a_russian_type_leaves_its_heater_as_it_is() {
    let cases = [
        ("6N2P-EV", both(6.3, 0.34)),
        ("6Н2П-ЕВ", both(6.3, 0.34)),
        ("6P1P-EV", both(6.3, 0.5)),
        ("6П1П-В", both(6.3, 0.5)),
        ("6P14P-V", both(6.3, 0.76)),
    ];
    each(&cases, |_| true);
}

#[test]
fn an_american_type_is_not_turned_into_another_by_russian_letters() {
    for entered in ["3B4", "6C7", "6H7", "6P7G", "6P5GT", "6H4GT"] {
        let tube = Tube::of(entered);
        assert!(!tube.corrected, "{entered} as {}: {:?}", tube.name, tube.rating);
    }
}

// The scheme as pages on it show it.
#[test]
fn a_japanese_number_begins_with_the_volts() {
    let cases = [
        ("6R-HH2", volts(6.3)),
        ("6M-E10", volts(6.3)),
        ("6R-P99", volts(6.3)),
        ("6G-B9", volts(6.3)),
        ("12G-B99", volts(12.6)),
        ("12R-K99", volts(12.6)),
        ("17R-HV9", volts(17.0)),
        ("25G-K99", volts(25.0)),
        ("30M-P99", volts(30.0)),
        ("50H-B99", volts(50.0)),
    ];
    each(&cases, is_by_rule);
    each(&[("30A5", both(30.0, 0.15)), ("25M-K15", both(25.0, 0.15))], is_listed);
}

// Seen in print: the number is the total volts, and K, L, M name the lamp. From memory: at 0.3 A.
#[test]
fn a_ballast_number_is_its_total_volts() {
    let cases = [
        ("K49C", both(49.0, 0.3)),
        ("BK42D", both(42.0, 0.3)),
        ("L42D", both(42.0, 0.3)),
        ("BL36G", both(36.0, 0.3)),
        ("M55F", both(55.0, 0.3)),
        ("BM49C", both(49.0, 0.3)),
        ("BXK49B", both(49.0, 0.3)),
        ("XL55C", both(55.0, 0.3)),
        ("K-49-C", both(49.0, 0.3)),
        ("K23B", both(23.0, 0.3)),
    ];
    each(&cases, |tube| tube.kind == HeaterKind::Resistor);
}

// Computed in the reference from the number and 0.3 A.
#[test]
fn a_ballast_has_the_resistance_that_its_number_makes_at_300_ma() {
    for (name, ohms) in
        [("K23B", 77.0), ("K36B", 120.0), ("BK42B", 140.0), ("L49B", 163.0), ("L55B", 183.0)]
    {
        let study = study(&["6K7", "25L6", "25Z6", name], 117.0);
        let part = study.parts.last().expect("four parts");
        let hot = part.hot_ohm().unwrap_or_default();
        assert!((hot - ohms).abs() < 0.5, "{name}: {hot} ohm, not {ohms}");
    }
}

#[test]
fn a_resistance_is_read_as_ohms_and_takes_up_what_the_current_makes() {
    let cases = [
        ("140R", 140.0),
        ("165R4", 165.0),
        ("185R8", 185.0),
        ("160 ohm", 160.0),
        ("290 ohms", 290.0),
        ("160 Ω", 160.0),
        ("line cord 160", 160.0),
        ("cord 290", 290.0),
    ];
    for (entered, ohms) in cases {
        let tube = Tube::of(entered);
        assert_eq!((tube.ohms, tube.kind), (Some(ohms), HeaterKind::Resistor), "{entered}");
        let study = study(&["6A7", "6D6", "75", "43", "25Z5", entered], 117.0);
        let sum = 68.9 + 0.3 * ohms;
        assert!(
            (study.sum_volts - sum).abs() < 0.05,
            "{entered}: {} V, not {sum}",
            study.sum_volts
        );
    }
    for other in ["180", "ohm", "0 ohm", "R", "39R"] {
        assert_eq!(Tube::of(other).ohms, None, "{other}");
    }
}
