//! The presets of supplies against the table of supply voltages.

use coldchassis_core::supply::{Feed, PRESETS, Supply};

use crate::rows::{Row, rows};

/// Whether a row speaks of this nominal voltage and frequency; some rows name several of each.
fn speaks_of(row: &Row, supply: &Supply) -> bool {
    let names = |column: &str, number: f64| {
        row.text(column).split(|c: char| !c.is_ascii_digit()).any(|word| word.parse() == Ok(number))
    };
    names("nominal_V", supply.volts) && names("frequency_Hz", supply.hertz)
}

/// Several rows may name one nominal voltage; the highest of them is what an inspector must expect.
#[test]
fn presets_reach_as_high_as_the_highest_row_of_their_voltage() {
    let table = rows("supply_voltages.csv", 13);
    for preset in PRESETS {
        let rows: Vec<&Row> = table.iter().filter(|row| speaks_of(row, &preset.supply)).collect();
        let highest = rows.iter().max_by(|a, b| {
            let [a, b] = [a, b].map(|row| row.number("high_V"));
            a.total_cmp(&b)
        });
        let row = highest.unwrap_or_else(|| panic!("no row for {}", preset.id));
        let figure = format!("{} volts_max", preset.id);
        row.within(&figure, preset.supply.volts_max, row.number("high_V"), 0.0);
        assert_eq!(preset.supply.feed, Feed::Direct, "{}", preset.id);
        let plain = format!("{}v_{}hz", preset.supply.volts, preset.supply.hertz);
        assert_eq!(preset.id, plain, "the id says what the supply is");
    }
    assert_eq!(PRESETS.len(), 8);
}
