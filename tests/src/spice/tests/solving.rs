//! Many cases at once, the written form, and a simulator that is not there.

use super::*;
use rand::SeedableRng;
use rand_chacha::ChaCha8Rng;

#[test]
fn a_thevenin_equivalent_gives_what_a_body_draws() {
    let mut rng = ChaCha8Rng::seed_from_u64(7);
    let cases = random_cases(&mut rng, 120);
    let seen = thevenin_batch(&cases, "c");
    let jobs: Vec<_> = cases.iter().map(|case| (case.clone(), Some(body("c")))).collect();
    for ((case, seen), voltages) in cases.iter().zip(seen).zip(run_batch(&jobs)) {
        let drawn = seen.open_circuit_v * BODY_OHM / (seen.impedance_ohm + BODY_OHM);
        assert!(
            (drawn - voltages["c"]).norm() <= 1e-7 * drawn.norm() + ROUNDING_V,
            "{drawn} and {} for {case:?}",
            voltages["c"]
        );
    }
}

#[test]
fn cases_of_one_deck_do_not_disturb_each_other() {
    let mut rng = ChaCha8Rng::seed_from_u64(11);
    let jobs: Vec<_> =
        random_cases(&mut rng, 20).into_iter().map(|case| (case, Some(body("c")))).collect();
    for (job, together) in jobs.iter().zip(run_batch(&jobs)) {
        let alone = &run_batch(std::slice::from_ref(job))[0];
        // A feed that floats hangs on its stray capacitances alone: rounding of the solver comes through.
        assert_near(together["c"], alone["c"], 1e-8);
    }
}

#[test]
fn the_netlist_names_every_part_by_its_place() {
    let mut case = case("isolating", "b")
        .with("line_capacitor", "near_leg")
        .with("switch_leg", "far")
        .with("cord", "three_pin_cut")
        .fault("near_capacitor_shorted")
        .fault("neutral_open");
    case.exposure["supply"]["volts"] = json!(230);
    let expected = "\
* Cold Chassis: the line side of one unit
Vhot hot 0 dc 0 ac 2.3e2
Vneutral neutral 0 dc 0 ac 0e0
Vconductor_far hot in_conductor_far 0
Hconductor_far in_conductor_far feed_far Vconductor_far 5e-2
Vconductor_near cut in_conductor_near 0
Hconductor_near in_conductor_near feed_near Vconductor_near 5e-2
Rother_loads hot cut 1e2
Vswitch_far feed_far in_switch_far 0
Hswitch_far in_switch_far far Vswitch_far 5e-2
Rprimary far feed_near 2.4e2
Cwinding_far far c 5e-10
Cwinding_near feed_near c 5e-10
Rinsulation far c 1e8
Vline_near_short feed_near in_line_near_short 0
Hline_near_short in_line_near_short c Vline_near_short 1e-1
Rbody c 0 1e3
.options noopac pivrel=0.9
.ac lin 1 6e1 6e1
.end
";
    assert_eq!(netlist(&case, Some(&body("c"))), expected);
}

#[test]
fn a_missing_simulator_fails_the_check_and_says_what_to_install() {
    let jobs = [(case("line_tied", "b"), None)];
    let error = crate::spice::run::run_batch_with("ngspice-that-is-not-there", &jobs)
        .expect_err("nothing by that name can run");
    assert!(matches!(error, SpiceError::Missing { .. }));
    assert!(error.to_string().contains("apt-get install ngspice"), "{error}");
}
