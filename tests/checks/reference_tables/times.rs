//! How long a current may last: time/current zones, fibrillation limits, protective devices.

use coldchassis_core::body::{
    Curve, GFCI_MUST_TRIP_MA, GFCI_NEVER_TRIPS_MA, RcdType, Weight, Zone, curve_ma, gfci_trip_s,
    rcd_trip_s, tolerable_ma, zone,
};

use crate::rows::{Row, rows};

fn curve(row: &Row) -> Curve {
    match row.text("curve") {
        "a" => Curve::A,
        "b" => Curve::B,
        "c1" => Curve::C1,
        "c2" => Curve::C2,
        "c3" => Curve::C3,
        other => panic!("{}: curve {other}", row.cite()),
    }
}

fn time_and_current(row: &Row) -> (f64, f64) {
    (row.number("time_s"), row.number("current_mA_rms_or_dc"))
}

/// The zones just below and just above a line.
fn beside(curve: Curve) -> [Zone; 2] {
    match curve {
        Curve::A => [Zone::Ac1, Zone::Ac2],
        Curve::B => [Zone::Ac2, Zone::Ac3],
        Curve::C1 => [Zone::Ac3, Zone::Ac41],
        Curve::C2 => [Zone::Ac41, Zone::Ac42],
        Curve::C3 => [Zone::Ac42, Zone::Ac43],
    }
}

fn alternating() -> Vec<Row> {
    let mut all = rows("time_current_curves.csv", 72);
    all.retain(|row| row.text("current_kind") == "AC");
    assert_eq!(all.len(), 47);
    all
}

#[test]
fn lines_pass_through_every_row_and_part_the_zones_there() {
    for row in alternating() {
        let (time, current) = time_and_current(&row);
        let line = curve(&row);
        row.within("current of the line", curve_ma(line, time), current, 1e-9);
        let [below, above] = beside(line);
        assert_eq!(zone(current * (1.0 - 1e-9), time), below, "just below: {}", row.cite());
        assert_eq!(zone(current * (1.0 + 1e-9), time), above, "just above: {}", row.cite());
    }
}

#[test]
fn lines_are_straight_in_logarithms_between_rows_and_held_beyond() {
    let rows = alternating();
    let (mut between, mut ends) = (0, 0);
    for line in rows.chunk_by(|a, b| a.text("curve") == b.text("curve")) {
        for pair in line.windows(2) {
            let [(t0, i0), (t1, i1)] = [time_and_current(&pair[0]), time_and_current(&pair[1])];
            let middle = curve_ma(curve(&pair[0]), (t0 * t1).sqrt());
            pair[0].within("geometric mean up to the next", middle, (i0 * i1).sqrt(), 1e-9);
            between += 1;
        }
        for (row, factor) in [(&line[0], 0.1), (&line[line.len() - 1], 10.0)] {
            let (time, current) = time_and_current(row);
            row.within("held beyond", curve_ma(curve(row), factor * time), current, 0.0);
            ends += 1;
        }
    }
    assert_eq!((between, ends), (42, 10));
}

#[test]
fn tolerable_current_of_both_weights_where_the_law_holds() {
    let (mut inside, mut outside) = (0, 0);
    for row in rows("dalziel_fibrillation.csv", 12) {
        let time = row.number("t_s");
        for (column, weight) in [("I_50kg_116_mA", Weight::Kg50), ("I_70kg_157_mA", Weight::Kg70)] {
            if (0.03..=3.0).contains(&time) {
                let current = tolerable_ma(weight, time);
                row.agrees(column, current.unwrap_or_else(|| panic!("{}", row.cite())), 1);
                inside += 1;
            } else {
                assert_eq!(tolerable_ma(weight, time), None, "{}", row.cite());
                outside += 1;
            }
        }
    }
    assert_eq!((inside, outside), (18, 6));
}

fn of_device(start: &str, expected: usize) -> Vec<Row> {
    let mut all = rows("gfci_rcd.csv", 22);
    all.retain(|row| row.text("device").starts_with(start));
    assert_eq!(all.len(), expected, "rows of {start}");
    all
}

#[test]
fn gfci_trip_times_of_every_row() {
    for row in of_device("GFCI class A (UL 943)", 16) {
        let current = row.number("residual_mA");
        let trip = gfci_trip_s(current);
        match row.text("condition") {
            "must NOT trip" => {
                row.within("never trips below", GFCI_NEVER_TRIPS_MA.value, current, 0.0);
            }
            "may trip" => assert!(
                GFCI_NEVER_TRIPS_MA.value < current && current < GFCI_MUST_TRIP_MA.value,
                "{}",
                row.cite()
            ),
            "must trip" => {
                let seconds = trip.unwrap_or_else(|| panic!("no trip: {}", row.cite()));
                row.agrees("max_trip_s", seconds, 3);
                continue;
            }
            other => panic!("{}: {other}", row.cite()),
        }
        assert_eq!(trip, None, "it need not trip: {}", row.cite());
    }
}

#[test]
fn rcd_trip_times_of_every_row() {
    let general =
        of_device("RCD 30 mA general type", 4).into_iter().map(|row| (row, RcdType::General));
    let selective = of_device("RCD type S", 2).into_iter().map(|row| (row, RcdType::Selective));
    let mut checked = 0;
    for (row, kind) in general.chain(selective) {
        let trip = rcd_trip_s(row.number("residual_mA"), 30.0, kind);
        let printed = row.text("max_trip_s");
        if printed.starts_with("must not trip") {
            assert_eq!(trip, None, "{}", row.cite());
        } else {
            // The selective type is printed as a band; its end is the longest time.
            let longest = printed.rsplit('-').next().and_then(|text| text.parse::<f64>().ok());
            let longest = longest.unwrap_or_else(|| panic!("{}: {printed}", row.cite()));
            assert_eq!(trip, Some(longest), "{}", row.cite());
        }
        checked += 1;
    }
    assert_eq!(checked, 6);
}
