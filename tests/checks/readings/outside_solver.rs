//! The resistance between two probes against ngspice: the operating point with one ampere between them.
//!
//! The circuits are written again from the words of the design, not taken from the core.

use std::fmt::Write as _;
use std::process::Command;

use coldchassis_core::arrangement::{
    Arrangement, DirectParts, Probe, Reach, ReadingId, Spread, all, reading_range,
};
use rand::{Rng, SeedableRng};
use rand_chacha::ChaCha8Rng;
use serde_json::Value;

/// Networks compared; each with one reading.
const NETWORKS: usize = 200;
/// Agreement asked for, as a share.
const WITHIN: f64 = 1e-6;

/// Parts of exactly one random value each, over decades.
fn random_parts(rng: &mut ChaCha8Rng) -> DirectParts {
    let mut of =
        |low: f64, high: f64| Spread::exactly(low * (high / low).powf(rng.random::<f64>()));
    DirectParts {
        conductor: of(0.05, 1.0),
        contact: of(0.02, 100.0),
        open_switch: Spread::exactly(1e9),
        string: of(10.0, 3000.0),
        rectified_string: of(10.0, 3000.0),
        primary: of(0.5, 250.0),
        heater_primary: of(5.0, 600.0),
        ahead: of(100.0, 1e6),
        behind: of(100.0, 1e6),
        joint: of(0.01, 1.0),
        rectifier: of(300.0, 1e6),
        network: of(0.1, 500e3),
        insulation: of(0.5e6, 1e8),
        capacitor: of(1e5, 1e8),
        class_y: of(1e6, 1e8),
        bond: of(0.05, 2.0),
        no_bond: of(1e3, 1e8),
        loose: Spread::exactly(f64::INFINITY),
    }
}

/// The resistors of a case by the words of the design: two nodes and Ω.
fn resistors(
    arrangement: &Arrangement,
    reading: ReadingId,
    parts: &DirectParts,
) -> Vec<(&'static str, &'static str, f64)> {
    let line = serde_json::to_value(arrangement).expect("an arrangement is plain data");
    let id = |factor: &str| line[factor].as_str().expect("a factor").to_owned();
    let (isolation, near) = (id("isolation"), id("near_pin"));
    let (far_pin, near_pin) = if near == "a" { ("b", "a") } else { ("a", "b") };
    let on = reading.switch().is_none_or(|switch| switch.id() == "on");
    let leg = |switched: bool| {
        let contact = if on { parts.contact.low } else { parts.open_switch.low };
        parts.conductor.low + if switched { contact } else { 0.0 }
    };
    let switch = id("switch_leg");
    let mut joints = vec![
        ("a", "b", parts.ahead.low),
        (far_pin, "far", leg(switch == "far" || switch == "both")),
        (near_pin, "near", leg(switch == "near" || switch == "both")),
        ("far", "near", parts.behind.low),
    ];
    let pins_only = reading.id().starts_with("ohms_a_b");
    let load = match isolation.as_str() {
        "line_tied" | "line_floated" | "line_insulated" => parts.string,
        "line_rectified" => parts.rectified_string,
        "heater_transformer" => parts.heater_primary,
        _ => parts.primary,
    };
    joints.push(("far", "near", load.low));
    match isolation.as_str() {
        "line_tied" | "heater_transformer" | "autotransformer" => {
            joints.push(("near", "c", parts.joint.low));
        }
        "line_rectified" if pins_only => {}
        "line_rectified" => {
            joints.push(("near", "c", parts.rectifier.low));
            joints.push(("far", "c", parts.rectifier.low));
        }
        "line_floated" => joints.push(("near", "c", parts.network.low)),
        "line_insulated" => joints.push(("near", "c", parts.insulation.low)),
        _ => {
            joints.push(("near", "c", parts.insulation.low));
            joints.push(("far", "c", parts.insulation.low));
        }
    }
    let capacitor =
        if id("line_capacitor_class") == "class_y" { parts.class_y } else { parts.capacitor };
    let from = id("line_capacitor");
    for (leg, there) in [
        ("near", ["near_leg", "both_legs", "selector"].contains(&from.as_str())),
        ("far", ["far_leg", "both_legs", "selector"].contains(&from.as_str())),
    ] {
        if there {
            joints.push((leg, "c", capacitor.low));
        }
    }
    let cord = id("cord");
    if !cord.starts_with("two_pin") {
        let bonded = ["three_pin_earthed", "three_pin_reversible_earthed"].contains(&cord.as_str());
        joints.push(("e", "c", if bonded { parts.bond.low } else { parts.no_bond.low }));
    }
    joints
}

/// Ω with parts of exactly one value each: both ends of the range are the same.
fn exact(arrangement: &Arrangement, reading: ReadingId, parts: &DirectParts) -> Option<f64> {
    reading_range(arrangement, reading, parts).map(|range| range.low)
}

const fn node(probe: Probe) -> &'static str {
    match probe {
        Probe::PinA => "a",
        Probe::PinB => "b",
        Probe::EarthPin => "e",
        Probe::Chassis | Probe::Part => "c",
    }
}

/// Ω of every case, from one run: one ampere into the first probe, out at the second, which is ground.
fn by_ngspice(cases: &[(Arrangement, ReadingId, DirectParts)]) -> Vec<f64> {
    let mut deck =
        String::from("resistance between two probes\n.options reltol=1e-9 gmin=1e-21 numdgt=15\n");
    let mut prints = String::new();
    for (number, (arrangement, reading, parts)) in cases.iter().enumerate() {
        let (from, to) = reading.probes().expect("an ohmmeter reading");
        let name = |place: &str| {
            if place == node(to) { "0".to_owned() } else { format!("{place}{number}") }
        };
        for (place, (a, b, ohms)) in resistors(arrangement, *reading, parts).iter().enumerate() {
            writeln!(deck, "R{number}_{place} {} {} {ohms:e}", name(a), name(b)).expect("a string");
        }
        writeln!(deck, "I{number} 0 {} DC 1", name(node(from))).expect("a string");
        writeln!(prints, "print v({})", name(node(from))).expect("a string");
    }
    let file = tempfile::NamedTempFile::new().expect("a temporary file");
    let deck = format!("{deck}.control\nset numdgt=15\nop\n{prints}quit\n.endc\n.end\n");
    std::fs::write(file.path(), deck).expect("the deck is written");
    let run = Command::new("ngspice").arg("-b").arg(file.path()).output();
    let out = run.expect("ngspice is needed (Debian: apt-get install ngspice)").stdout;
    let text = String::from_utf8_lossy(&out);
    let figure = |line: &str| line.strip_prefix("v(")?.split(" = ").nth(1)?.trim().parse().ok();
    text.lines().filter_map(figure).collect()
}

#[test]
fn a_resistance_is_that_of_ngspice() {
    let mut rng = ChaCha8Rng::seed_from_u64(5);
    let readings: Vec<ReadingId> = ReadingId::ohmmeter()
        .filter(|id| id.probes().is_some_and(|(_, place)| place != Probe::Part))
        .collect();
    let mut cases = Vec::new();
    while cases.len() < NETWORKS {
        let arrangement = all()[rng.random_range(0..all().len())];
        let reading = readings[rng.random_range(0..readings.len())];
        let cord = serde_json::to_value(arrangement).expect("plain data")["cord"].clone();
        let no_pin = cord.as_str().is_none_or(|cord| cord.starts_with("two_pin"));
        let earth = reading.probes().is_some_and(|(pin, _)| pin == Probe::EarthPin);
        if cord != Value::Null && !(earth && no_pin) {
            cases.push((arrangement, reading, random_parts(&mut rng)));
        }
    }
    let outside = by_ngspice(&cases);
    assert_eq!(outside.len(), NETWORKS, "every case is solved");
    let mut worst: f64 = 0.0;
    for ((arrangement, reading, parts), outside) in cases.iter().zip(outside) {
        let own = exact(arrangement, *reading, parts).expect("it has a line side");
        let off = (own - outside).abs() / outside;
        worst = worst.max(off);
        assert!(off < WITHIN, "{} of {arrangement:?}: {own} here, {outside} there", reading.id());
    }
    println!("{NETWORKS} resistances, at most {worst:.1e} from ngspice");
}

/// Rayleigh: a range holds whatever its parts do inside theirs.
#[test]
fn a_range_holds_all_values_of_its_parts() {
    let mut rng = ChaCha8Rng::seed_from_u64(6);
    for _ in 0..2000 {
        let arrangement = all()[rng.random_range(0..all().len())];
        let (one, other) = (random_parts(&mut rng), random_parts(&mut rng));
        let ends =
            |a: Spread, b: Spread| Spread { low: a.low.min(b.low), high: a.high.max(b.high) };
        let range = combined(&one, &other, ends);
        let mut between = |a: Spread, b: Spread| {
            Spread::exactly(if rng.random_bool(0.5) { a.low } else { b.low })
        };
        let inside = combined(&one, &other, &mut between);
        for reading in ReadingId::ohmmeter() {
            let wide = reading_range(&arrangement, reading, &range);
            let exact = exact(&arrangement, reading, &inside);
            if let (Some(wide), Some(exact)) = (wide, exact)
                && arrangement.line.is_some_and(|line| line.reach != Reach::Closed)
            {
                let (low, high) = (wide.low * (1.0 - 1e-9), wide.high * (1.0 + 1e-9));
                let both_open = exact.is_infinite() && wide.high.is_infinite();
                assert!(
                    (exact >= low && exact <= high) || both_open,
                    "{arrangement:?} {reading:?}"
                );
            }
        }
    }
}

fn combined(
    one: &DirectParts,
    other: &DirectParts,
    mut join: impl FnMut(Spread, Spread) -> Spread,
) -> DirectParts {
    DirectParts {
        conductor: join(one.conductor, other.conductor),
        contact: join(one.contact, other.contact),
        open_switch: join(one.open_switch, other.open_switch),
        string: join(one.string, other.string),
        rectified_string: join(one.rectified_string, other.rectified_string),
        primary: join(one.primary, other.primary),
        heater_primary: join(one.heater_primary, other.heater_primary),
        ahead: join(one.ahead, other.ahead),
        behind: join(one.behind, other.behind),
        joint: join(one.joint, other.joint),
        rectifier: join(one.rectifier, other.rectifier),
        network: join(one.network, other.network),
        insulation: join(one.insulation, other.insulation),
        capacitor: join(one.capacitor, other.capacitor),
        class_y: join(one.class_y, other.class_y),
        bond: join(one.bond, other.bond),
        no_bond: join(one.no_bond, other.no_bond),
        loose: join(one.loose, other.loose),
    }
}
