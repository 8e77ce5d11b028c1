//! The optimum by dynamic programming on trees worked by hand.

use coldchassis_core::hazard::Class;
use coldchassis_core::inspection::{HandStep, Order, Trial};

/// A step by the outcomes true of each group, one bit each.
fn step(seconds: f64, cant_tell: f64, outcomes: &[u16]) -> HandStep {
    HandStep { seconds, cant_tell, outcomes: outcomes.to_vec() }
}

#[track_caller]
fn least(trial: &Trial, expected: f64) {
    let found = trial.optimum(10_000).expect("a small problem");
    assert!((found - expected).abs() < 1e-9, "{found} s, by hand {expected} s");
    // An order can do as well as the least, and none better.
    for order in
        [Order::Engine, Order::EdgesOnly, Order::Bank, Order::Information, Order::Random(1)]
    {
        let seconds = trial.seconds(order);
        assert!(seconds >= expected - 1e-9, "{order:?} takes {seconds} s");
    }
    assert!((trial.seconds(Order::Engine) - expected).abs() < 1e-9);
}

#[test]
fn one_question_that_settles_it_is_asked_once() {
    // Live 0.7, two faults 0.3; either step tells them apart, in 10 s or 4 s.
    let trial = Trial::by_hand(
        &[(0.7, Class::Live), (0.3, Class::TwoFaults)],
        &[step(10.0, 0.0, &[1, 2]), step(4.0, 0.0, &[1, 2])],
    );
    least(&trial, 4.0);
}

#[test]
fn whoever_cannot_tell_is_asked_the_other_one() {
    // By hand: the 4 s step fails half of the time, then the 10 s step is needed: 4 + 0.5 × 10 = 9.
    // The other way round: 10 s and never again: 10.
    let trial = Trial::by_hand(
        &[(0.7, Class::Live), (0.3, Class::TwoFaults)],
        &[step(10.0, 0.0, &[1, 2]), step(4.0, 0.5, &[1, 2])],
    );
    least(&trial, 9.0);
}

#[test]
fn nothing_is_asked_where_nothing_can_better_the_verdict() {
    let steps = [step(5.0, 0.0, &[1, 2]), step(5.0, 0.0, &[2, 1])];
    // Both live.
    least(&Trial::by_hand(&[(0.5, Class::Live), (0.5, Class::Live)], &steps), 0.0);
    // A better one that no answer parts from a live one.
    let alike = [step(5.0, 0.0, &[1, 1])];
    least(&Trial::by_hand(&[(0.5, Class::Live), (0.5, Class::TwoFaults)], &alike), 0.0);
}

#[test]
fn what_is_likely_is_told_apart_first() {
    // Three groups; the first step finds A, the second finds B, both 10 s. C is the only better one, and both
    // are needed to show it. By hand, A first: 10 + (1 - 0.8) × 10 = 12; B first: 10 + (1 - 0.1) × 10 = 19.
    let trial = Trial::by_hand(
        &[(0.8, Class::Live), (0.1, Class::Live), (0.1, Class::TwoFaults)],
        &[step(10.0, 0.0, &[1, 2, 1]), step(10.0, 0.0, &[2, 1, 1])],
    );
    // A answers the first step with its first bit like C, so only B is found by it; and the other way round.
    // First step: B leaves at once (0.1), A and C go on: 10 + 0.9 × 10 = 19. Second: A leaves at once: 12.
    least(&trial, 12.0);
}

#[test]
fn two_true_answers_are_each_as_likely() {
    // A is live and gives either answer; B gives the second. By hand: the first answer (0.5 × 0.6) leaves A
    // alone and ends it; the second leaves both, and the 20 s step is needed: 5 + 0.7 × 20 = 19.
    // The 20 s step at once: 20.
    let trial = Trial::by_hand(
        &[(0.6, Class::Live), (0.4, Class::TwoFaults)],
        &[step(5.0, 0.0, &[0b11, 0b10]), step(20.0, 0.0, &[1, 2])],
    );
    least(&trial, 19.0);
}

#[test]
fn a_dear_step_that_settles_all_beats_two_cheap_ones() {
    // Two cheap steps of 6 s each part one live group from the better one; one of 10 s parts both.
    // Cheap ones: 6 + 0.75 × 6 = 10.5 with equal shares of 0.25, 0.25 and 0.5; the dear one: 10.
    let groups = [(0.25, Class::Live), (0.25, Class::Live), (0.5, Class::TwoFaults)];
    let steps =
        [step(6.0, 0.0, &[1, 2, 2]), step(6.0, 0.0, &[2, 1, 2]), step(10.0, 0.0, &[1, 1, 2])];
    least(&Trial::by_hand(&groups, &steps), 10.0);
    // At 11 s it no longer does.
    let [first, second, mut dear] = steps;
    dear.seconds = 11.0;
    least(&Trial::by_hand(&groups, &[first, second, dear]), 10.5);
}
