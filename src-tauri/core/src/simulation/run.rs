//! One inspection from the first question to the last.

use serde_json::Value;

use super::inspector::Inspector;
use super::unit::PhysicalUnit;
use crate::arrangement::read_exposure;
use crate::hazard::{Class, table};
use crate::inspection::{Beliefs, Findings, Judge, Order, Step, cost, next_step};

/// What an inspection came to.
#[derive(Clone, Debug)]
pub struct Run {
    /// What was found.
    pub findings: Findings,
    /// The steps taken, in their order.
    pub steps: Vec<Step>,
    /// The step that was answered wrongly.
    pub wrong: Option<Step>,
    /// What it took, s.
    pub seconds: f64,
}

/// The most steps that there are to take: every question, value and reading once.
const MOST: usize = 64;

/// Takes steps in an order until nothing left can better the verdict.
pub fn inspect(
    mut findings: Findings,
    inspector: &mut Inspector,
    judge: &mut Judge,
    order: Order,
) -> Run {
    let mut run = Run { findings: findings.clone(), steps: Vec::new(), wrong: None, seconds: 0.0 };
    for turn in 0..MOST as u64 {
        let order = match order {
            Order::Random(seed) => Order::Random(seed.wrapping_mul(31).wrapping_add(turn)),
            order => order,
        };
        let Some(step) = next_step(&findings, judge, &Beliefs::of(&findings), order) else { break };
        if inspector.take(step, &mut findings) {
            run.wrong = Some(step);
        }
        run.seconds += cost(step).seconds;
        run.steps.push(step);
    }
    run.findings = findings;
    run
}

/// The class that a unit really has, with its own values at its own supply; nothing where its file is refused.
pub fn true_class(unit: &PhysicalUnit) -> Option<Class> {
    // No tubes are told, so the heater string stands at its usual value in the verdict as well.
    true_classes(unit, &[]).map(|[class, _]| class)
}

/// The same beside some answers, and the worst class over all that a hand may meet: an arrangement has one reach, and
/// an aerial terminal beside bare metal is a second (`PhysicalUnit::touch_paths_as_told`).
pub fn true_classes(unit: &PhysicalUnit, told: &[(String, Value)]) -> Option<[Class; 2]> {
    let class = |path: Value| {
        let file = read_exposure(path).ok()?;
        Some(table(&file.arrangement, &file.supply, file.supply.volts, &file.values).class)
    };
    let paths = unit.touch_paths_as_told(told).into_iter();
    let classes: Vec<Class> = paths.map(class).collect::<Option<_>>()?;
    Some([*classes.first()?, classes.into_iter().reduce(Class::worse)?])
}
