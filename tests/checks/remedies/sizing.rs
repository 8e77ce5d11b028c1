//! Sizes of parts against examples of handbooks and standards; each row names where its figure is from.

use coldchassis_core::remedy::{
    FuseStandard, Measure, Rectifier, Series, below, bond_limit_portable, bond_limit_vde,
    capacitor_dropper, class_y, cord_for, diode_dropper, from_nameplate, from_parts, fuse_for,
    inrush_amperes, most_farads, resistor_dropper,
};
use coldchassis_core::supply::Supply;
use serde::Deserialize;

#[derive(Debug, Deserialize)]
struct Example {
    name: String,
    kind: String,
    a: f64,
    b: Option<f64>,
    c: Option<f64>,
    d: Option<f64>,
    expected: f64,
    within: f64,
    mark: String,
    source: String,
}

fn ours(example: &Example) -> Option<f64> {
    let Example { a, b, c, d, .. } = example;
    let (a, b, c, d) = (*a, b.unwrap_or(0.0), c.unwrap_or(0.0), d.unwrap_or(0.0));
    let fuse = |standard| fuse_for(standard, a, a);
    Some(match example.kind.as_str() {
        "resistor_ohm" => resistor_dropper(a, b, c)?.ohms,
        "resistor_watt" => resistor_dropper(a, b, c)?.watts,
        "resistor_stock" => resistor_dropper(a, b, c)?.stock_ohms?,
        "capacitor_farad" => capacitor_dropper(a, b, c, d)?.farads,
        "capacitor_volt" => capacitor_dropper(a, b, c, d)?.volts,
        "diode_volt" => diode_dropper(a, b, c)?.volts,
        "inrush" => inrush_amperes(a, b, c),
        "most_nf" => most_farads(a, b, c) * 1e9,
        "below_e6" => below(Series::E6, a)?,
        "fuse_ul" => fuse(FuseStandard::Ul).amperes?,
        "fuse_ul_opens" => fuse(FuseStandard::Ul).opens_amperes,
        "fuse_iec" => fuse(FuseStandard::Iec).amperes?,
        "fuse_iec_holds" => fuse(FuseStandard::Iec).holds_amperes,
        "fuse_iec_opens" => fuse(FuseStandard::Iec).opens_amperes,
        "cord_awg" => cord_for(Measure::Awg, a, b as u8)?.mm2,
        "cord_mm2" => cord_for(Measure::Mm2, a, b as u8)?.mm2,
        "bond_vde" => bond_limit_vde(a, 0.75).most_ohms,
        "bond_portable" => bond_limit_portable(a, b).most_ohms,
        "half_wave" => Rectifier::HalfWave.winding_amperes(a),
        "bridge" => Rectifier::Bridge.winding_amperes(a),
        "nameplate_stock" => from_nameplate(a).stock_va?,
        "parts_stock" => from_parts(a, b, c, Rectifier::HalfWave).stock_va?,
        _ => return None,
    })
}

#[test]
fn sizes_are_those_of_handbooks_and_standards() {
    let mut rows =
        csv::Reader::from_reader(include_str!("../../reference/sizing_examples.csv").as_bytes());
    let examples: Vec<Example> = rows.deserialize().map(|row| row.expect("a row")).collect();
    assert!(examples.len() >= 20, "{}", examples.len());
    for example in &examples {
        let found = ours(example);
        let Some(found) = found else { panic!("{example:?}: no such size") };
        let off = (found - example.expected).abs();
        let (name, mark, source) = (&example.name, &example.mark, &example.source);
        assert!(
            off <= example.within,
            "{name}: {found} here, {} ({mark}: {source})",
            example.expected
        );
    }
    println!("{} sizes compared", examples.len());
}

/// Every row of the table of the largest line capacitance, and the value chosen below each.
#[test]
fn class_y_keeps_to_every_limit_of_the_table() {
    let table = include_str!("../../reference/max_line_capacitance.csv");
    let mut rows = csv::Reader::from_reader(table.as_bytes());
    let (mut compared, mut chosen) = (0, 0);
    for row in rows.deserialize::<(f64, f64, f64, f64, String)>() {
        let (volts, hertz, limit_ma, most_nf, mark) = row.expect("a row");
        let ours = most_farads(limit_ma, volts, hertz) * 1e9;
        assert!((ours - most_nf).abs() < 0.006, "{volts} V: {ours} here, {most_nf} ({mark})");
        let supply = Supply { volts_max: volts, ..Supply::new(volts, hertz) };
        let size = class_y(limit_ma, &supply, 1);
        if let Some(farad) = size.farad {
            assert!(farad * 1.2 <= size.most_farad * (1.0 + 1e-9), "{size:?}");
            assert!(size.leaks_ma <= limit_ma * (1.0 + 1e-9), "{size:?}");
            // The next value of the series would not keep to it.
            assert!(farad * 1.55 * 1.2 > size.most_farad, "{size:?}");
            chosen += 1;
        }
        compared += 1;
    }
    assert!(compared >= 45 && chosen == compared, "{compared} {chosen}");
}

/// Two capacitors that leak together get half of the limit each.
#[test]
fn capacitors_on_both_legs_share_the_limit() {
    let supply = Supply::new(120.0, 60.0);
    let (one, both) = (class_y(0.5, &supply, 1), class_y(0.5, &supply, 2));
    assert!((both.most_farad * 2.0 - one.most_farad).abs() < 1e-15);
    assert!(both.leaks_ma <= 0.5);
}

#[test]
fn what_is_too_large_for_every_size_is_said_to_be() {
    assert_eq!(from_nameplate(5000.0).stock_va, None);
    assert_eq!(fuse_for(FuseStandard::Ul, 20.0, 20.0).amperes, None);
    assert_eq!(cord_for(Measure::Awg, 40.0, 2), None);
    assert_eq!(resistor_dropper(117.0, 117.0, 0.15), None);
    assert_eq!(diode_dropper(117.0, 122.8, 0.15), None);
}
