//! Lists that are made to fool a sum: one tube of another current among the rest of a plain string.
//!
//! Ratings from the reference list; that such tubes were never wired as one plain string is trade
//! knowledge.

use coldchassis_core::heaters::{Clash, study};

/// The list, its line, and the one tube that cannot stand where the others do.
const TRAPS: [(&[&str], f64, &str); 14] = [
    (&["12SA7", "12SK7", "12SQ7", "25L6GT", "35Z5GT"], 117.0, "25L6GT"),
    (&["12SN7GT", "50C5", "35W4"], 117.0, "12SN7GT"),
    (&["12BH7A", "50C5", "35W4"], 117.0, "12BH7A"),
    (&["5751", "50C5", "35W4"], 117.0, "5751"),
    (&["12AV7", "35C5", "35W4"], 117.0, "12AV7"),
    (&["12SK7", "12SQ7", "12V6GT", "35Z5GT"], 117.0, "12V6GT"),
    (&["18FX6", "18FW6", "18FY6", "50C5", "36AM3"], 117.0, "50C5"),
    (&["6A7", "6D6", "75", "41", "25Z5"], 117.0, "41"),
    (&["6A7", "6D6", "75", "48", "25Z5"], 117.0, "48"),
    (&["6A8", "6K7", "6Q7", "25B8GT", "25Z6"], 117.0, "25B8GT"),
    (&["12AU6", "12AV6", "50C5", "35W4", "6E5"], 117.0, "6E5"),
    (&["12AX7", "60FX5", "60FX5"], 117.0, "12AX7"),
    (&["UCH81", "UF89", "UABC80", "PL84", "UY85"], 220.0, "PL84"),
    (&["12SL7GT", "25L6GT", "25L6GT", "25Z6GT"], 117.0, "12SL7GT"),
];

/// The same with a rectifier of another current, which has no dropper of its own on such a line.
const RECTIFIER_TRAPS: [(&[&str], f64, &str); 6] = [
    (&["12SA7", "12SK7", "12SQ7", "50L6GT", "25Z6GT"], 117.0, "25Z6GT"),
    (&["12BE6", "12BA6", "12AV6", "50C5", "36AM3"], 117.0, "36AM3"),
    (&["18FX6", "18FW6", "18FY6", "34GD5", "35W4"], 117.0, "35W4"),
    (&["6A8", "6K7", "6Q7", "25L6", "35Z5GT"], 117.0, "35Z5GT"),
    (&["12J7", "12SK7", "32L7GT"], 117.0, "32L7GT"),
    (&["UCH42", "UF41", "UBC41", "UL41", "PY82"], 220.0, "PY82"),
];

#[track_caller]
fn named(traps: &[(&[&str], f64, &str)]) {
    let missed: Vec<String> = traps
        .iter()
        .filter_map(|(types, line, odd)| {
            let study = study(types, *line);
            let named = study
                .clashes
                .iter()
                .any(|clash| matches!(clash, Clash::Current { tube, .. } if tube == odd));
            let missed = !named || study.fits_series;
            missed.then(|| {
                format!("{types:?} on {line} V: {} {:?}", study.reading.id(), study.clashes)
            })
        })
        .collect();
    assert!(missed.is_empty(), "{} of {} missed\n{}", missed.len(), traps.len(), missed.join("\n"));
}

#[test]
fn a_tube_of_another_current_is_named() {
    named(&TRAPS);
}

#[test]
fn a_rectifier_of_another_current_is_named() {
    named(&RECTIFIER_TRAPS);
}

#[test]
fn a_sum_far_over_the_line_is_named() {
    for (types, line) in [
        (&["12SK7", "12SA7", "12SK7", "12SQ7", "50L6GT", "35Z5GT"][..], 117.0),
        (&["18FX6", "18FW6", "18FY6", "50FK5", "36AM3"][..], 117.0),
        (&["UCH11", "UBF11", "UCL11", "UY11"][..], 110.0),
    ] {
        let study = study(types, line);
        let over = study.clashes.iter().any(|clash| matches!(clash, Clash::Over { .. }));
        assert!(over && study.reading.id() == "undecided", "{types:?}: {study:?}");
    }
}

// A 6.3 V rectifier stands on the winding of the others: no winding of its own, unlike one of 5 V.
#[test]
fn a_double_triode_beside_a_rectifier_of_6_3_volts_is_connected_for_6_3_volts() {
    for (types, sum, amperes) in [
        (&["12AX7", "12AX7", "6X4"][..], 18.9, 1.2),
        (&["12AU7", "12AX7", "6CA4"][..], 18.9, 1.6),
        (&["ECC83", "EZ80"][..], 12.6, 0.9),
    ] {
        let study = study(types, 117.0);
        assert_eq!(study.reading.id(), "parallel_transformer", "{types:?}");
        let total = study.amperes.unwrap_or_default();
        let off = (study.sum_volts - sum).abs() > 0.05 || (total - amperes).abs() > 5e-4;
        assert!(!off, "{types:?}: {} V {total} A, not {sum} V {amperes} A", study.sum_volts);
    }
}
