//! What a type number says where the list has no such type, and where it must say nothing.
//!
//! Expected figures are those of the published tables of each system: seen in print unless a line says
//! from memory. Numbers that no maker used stand for any that the list lacks.

use coldchassis_core::heaters::{HeaterKind, Known, Tube};

/// Checks each entry; all that differ are named together.
#[track_caller]
fn each<T: Copy>(cases: &[(&str, T)], wrong: impl Fn(&Tube, T) -> bool) {
    let differ: Vec<String> = cases
        .iter()
        .map(|(entered, expected)| (Tube::of(entered), *expected))
        .filter(|(tube, expected)| wrong(tube, *expected))
        .map(|(tube, _)| {
            format!("{} as {}: {:?} {:?}", tube.entered, tube.name, tube.known, tube.rating)
        })
        .collect();
    assert!(differ.is_empty(), "{} of {} differ\n{}", differ.len(), cases.len(), differ.join("\n"));
}

/// A type that is not in the list, read by its number to volts between these.
#[track_caller]
fn by_rule(cases: &[(&str, (f64, f64))]) {
    each(cases, |tube, (low, high)| {
        let volts = tube.rating.volts.unwrap_or_default();
        tube.known != Known::ByRule || volts < low || volts > high
    });
}

/// Any type with these volts, however it is known.
#[track_caller]
fn volts(cases: &[(&str, f64)]) {
    each(cases, |tube, volts| tube.rating.volts != Some(volts));
}

/// Any type with these volts and amperes.
#[track_caller]
fn rated(cases: &[(&str, (f64, f64))]) {
    each(cases, |tube, (volts, amperes)| {
        tube.rating.volts != Some(volts) || tube.rating.amperes != Some(amperes)
    });
}

#[test]
fn american_numbers_begin_with_the_volts() {
    by_rule(&[
        ("1QQ5", (1.2, 1.4)),
        ("2QQ6", (2.5, 2.5)),
        ("6QQ6", (6.3, 6.3)),
        ("6QQ8A", (6.3, 6.3)),
        ("12QQ7", (12.6, 12.6)),
        ("25QQ6GT", (25.0, 25.0)),
        ("35QQ5", (35.0, 35.0)),
        ("40QQ6", (40.0, 40.0)),
        ("45QQ5", (45.0, 45.0)),
        ("50QQ5", (50.0, 50.0)),
        ("60QQ5", (60.0, 60.0)),
        ("70QQ7GT", (70.0, 70.0)),
        ("117QQ7GT", (117.0, 117.0)),
        // From memory: the numbers of television strings.
        ("3QQ6", (3.0, 3.2)),
        ("8QQ8", (8.0, 8.4)),
        ("9QQ8", (9.0, 9.5)),
        ("10QQ7", (10.5, 10.5)),
        ("11QQ8", (10.7, 11.0)),
        ("17QQ4", (16.8, 17.5)),
        ("18QQ6", (18.0, 18.0)),
        ("19QQ4GTA", (18.9, 18.9)),
        ("20QQ7", (20.0, 20.0)),
        ("26QQ6", (26.5, 26.5)),
        ("28QQ7", (28.0, 28.0)),
    ]);
}

// Seen in print: one letter, or A and another, behind a 7 or 14 is a lock-in type of 6.3 V or 12.6 V.
// From memory: other 7xx and 14xx are television types that mean their number.
#[test]
fn a_lock_in_seven_is_six_and_a_fourteen_is_twelve() {
    by_rule(&[
        ("7T7", (6.3, 6.3)),
        ("7P9", (6.3, 6.3)),
        ("14T9", (12.6, 12.6)),
        ("14P9", (12.6, 12.6)),
        ("7QQ6", (6.8, 7.6)),
        ("7KY6", (6.8, 7.6)),
        ("14QQ8", (13.9, 14.6)),
        ("14BR11", (13.9, 14.6)),
    ]);
    volts(&[("7A7", 6.3), ("7AF7", 6.3), ("14A7", 12.6), ("14AF7", 12.6), ("14GT8", 14.0)]);
    volts(&[("14GW8", 14.5), ("14Z3", 12.6), ("7AN7", 7.0), ("7DJ8", 7.0)]);
}

#[test]
fn a_battery_three_has_a_filament_of_two_halves() {
    for name in ["3Q9", "3LE9", "3E5GT"] {
        let tube = Tube::of(name);
        assert_eq!(tube.known, Known::ByRule, "{name}");
        let volts: Vec<f64> = tube.ratings().filter_map(|rating| rating.volts).collect();
        assert_eq!(volts, [1.4, 2.8], "{name}");
    }
}

// Seen in print: rectifiers with 5 are 5.0 V, the 5U8 is 4.7 V 0.6 A; from memory: other signal types too.
#[test]
fn a_five_is_a_rectifier_or_a_signal_type_of_a_television_string() {
    volts(&[("5Y3GT", 5.0), ("5U4GB", 5.0), ("5AX4GT", 5.0), ("5W4GT", 5.0), ("5DB4", 5.0)]);
    rated(&[
        ("5U8", (4.7, 0.6)),
        ("5AQ5", (4.7, 0.6)),
        ("5V6GT", (4.7, 0.6)),
        ("5QQ8", (4.7, 0.6)),
    ]);
}

#[test]
fn a_signal_type_with_a_late_letter_is_no_rectifier() {
    rated(&[("5T8", (4.7, 0.6)), ("5X8", (4.7, 0.6)), ("5AT8", (4.7, 0.6)), ("5AV8", (4.7, 0.6))]);
}

#[test]
fn two_and_three_digits_carry_no_volts() {
    volts(&[
        ("45", 2.5),
        ("47", 2.5),
        ("56", 2.5),
        ("57", 2.5),
        ("58", 2.5),
        ("36", 6.3),
        ("37", 6.3),
        ("38", 6.3),
        ("39", 6.3),
        ("41", 6.3),
        ("42", 6.3),
        ("75", 6.3),
        ("76", 6.3),
        ("77", 6.3),
        ("78", 6.3),
        ("84", 6.3),
        ("85", 6.3),
        ("80", 5.0),
        ("83", 5.0),
        ("30", 2.0),
        ("31", 2.0),
        ("32", 2.0),
        ("33", 2.0),
        ("34", 2.0),
        ("43", 25.0),
        ("48", 30.0),
        ("50", 7.5),
        ("50L6", 50.0),
        ("12A7", 12.6),
        ("14", 14.0),
        ("17", 14.0),
        ("18", 14.0),
        ("01A", 5.0),
        ("24A", 2.5),
        ("27", 2.5),
        ("71A", 5.0),
    ]);
}

// Seen in print: 12A is the 112A of 5 V, and the 11 and 12 with their maker's letters are of 1.1 V.
#[test]
fn an_old_number_in_its_short_form_is_the_same_tube() {
    volts(&[("12A", 5.0), ("112A", 5.0), ("WD-11", 1.1), ("WD-12", 1.1)]);
}

#[test]
fn numbers_that_no_list_has_and_no_rule_covers_say_nothing() {
    let none = ["13", "21", "28", "62", "97", "5999", "6999", "7999", "9002", "1999", "6211A"];
    let cases: Vec<(&str, ())> = none.into_iter().map(|name| (name, ())).collect();
    each(&cases, |tube, ()| !tube.rating.is_unknown() || tube.known != Known::Unknown);
}

#[test]
fn a_slash_makes_one_tube_of_two_numbers() {
    volts(&[
        ("6U5/6G5", 6.3),
        ("35/51", 2.5),
        ("39/44", 6.3),
        ("84/6Z4", 6.3),
        ("7G7/1232", 6.3),
        ("12CU5/12C5", 12.6),
        ("6CG7/6FQ7", 6.3),
        ("117L7/M7GT", 117.0),
        ("40Z5/45Z5GT", 45.0),
        ("14A7/12B7", 12.6),
        ("1V", 6.3),
        ("12SK7GT/G", 12.6),
    ]);
}

#[test]
fn a_suffix_does_not_change_the_volts() {
    volts(&[
        ("12SK7G", 12.6),
        ("12SK7-GT", 12.6),
        ("12SA7GT/G", 12.6),
        ("50L6GT", 50.0),
        ("35Z5GT/G", 35.0),
        ("12BA6A", 12.6),
        ("12AV6A", 12.6),
        ("50C5A", 50.0),
        ("35W4A", 35.0),
        ("6V6GTA", 6.3),
        ("6L6GC", 6.3),
        ("6K7MG", 6.3),
        ("6J5WGT", 6.3),
        ("12AX7WA", 12.6),
        ("12AX7A", 12.6),
        ("12K8Y", 12.6),
    ]);
    // A few improved versions draw another current: doubtful, where the list has only the first.
    assert!(Tube::of("12BA6W").doubt.is_some() && Tube::of("12BA6").doubt.is_none());
    rated(&[("5814A", (12.6, 0.175)), ("5751", (12.6, 0.175))]);
}

#[test]
fn letters_of_the_base_are_no_part_of_the_number() {
    volts(&[
        ("UX-201A", 5.0),
        ("UX-245", 2.5),
        ("UX171A", 5.0),
        ("UY-224A", 2.5),
        ("UY-227", 2.5),
        ("UY-56", 2.5),
        ("UZ-42", 6.3),
        ("UZ-57", 2.5),
        ("UT-6L7G", 6.3),
        ("KX-80", 5.0),
        ("CX-301A", 5.0),
    ]);
}

// UY is the rectifier of the 100 mA series as well; a list without that type must not make a 31 of it.
#[test]
fn a_rectifier_of_the_u_series_is_no_old_number_with_a_base() {
    let cases = [("UY31", 0.1), ("UY12", 0.1), ("UY92", 0.1), ("UY41", 0.1), ("UY82", 0.1)];
    each(&cases, |tube, amperes| tube.rating.amperes != Some(amperes));
}

#[test]
fn a_dial_lamp_is_known_by_its_number() {
    // 40, 44, 46 and 47 seen in print; the others from memory.
    let lamps = [
        ("40", (6.3, 0.15)),
        ("40A", (6.3, 0.15)),
        ("41", (2.5, 0.5)),
        ("42", (3.2, 0.35)),
        ("43", (2.5, 0.5)),
        ("44", (6.3, 0.25)),
        ("45", (3.2, 0.35)),
        ("46", (6.3, 0.25)),
        ("47", (6.3, 0.15)),
        ("48", (2.0, 0.06)),
        ("49", (2.0, 0.06)),
        ("49A", (2.1, 0.12)),
        ("50", (7.5, 0.22)),
        ("51", (7.5, 0.22)),
        ("55", (7.0, 0.41)),
        ("291", (2.9, 0.17)),
        ("292", (2.9, 0.17)),
        ("292A", (2.9, 0.17)),
        ("313", (28.0, 0.17)),
        ("755", (6.3, 0.15)),
        ("1490", (3.2, 0.16)),
        ("1847", (6.3, 0.15)),
        ("1891", (14.0, 0.24)),
        ("1892", (14.4, 0.12)),
    ];
    for (number, rating) in lamps {
        for entered in [format!("#{number}"), format!("lamp {number}"), format!("{number} LAMP")] {
            rated(&[(entered.as_str(), rating)]);
            assert_eq!(Tube::of(&entered).kind, HeaterKind::Lamp, "{entered}");
        }
        assert_ne!(Tube::of(number).kind, HeaterKind::Lamp, "{number} alone is a tube");
    }
}
