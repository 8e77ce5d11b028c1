//! Resistors between nodes, and what is between two of the nodes.

use std::collections::BTreeSet;

/// How many nodes a network has.
pub(super) const NODES: usize = 10;
/// The least a joint is taken for, Ω: keeps a conductance finite (no figure of a part is below it).
const LEAST_OHM: f64 = 1e-4;

/// A network of resistors.
#[derive(Clone, Debug)]
pub(super) struct Circuit {
    /// Conductance between each pair of nodes, S. No node has a number from [`NODES`] up.
    siemens: [[f64; NODES]; NODES],
}

impl Circuit {
    pub(super) fn new() -> Self {
        Self { siemens: [[0.0; NODES]; NODES] }
    }

    /// Puts a resistor between two nodes, Ω; infinite is none.
    pub(super) fn join(&mut self, first: usize, second: usize, ohm: f64) {
        if ohm.is_finite() && first != second {
            let siemens = 1.0 / ohm.max(LEAST_OHM);
            self.add(first, second, siemens);
            self.add(second, first, siemens);
        }
    }

    fn add(&mut self, from: usize, to: usize, siemens: f64) {
        if let Some(between) = self.siemens.get_mut(from).and_then(|row| row.get_mut(to)) {
            *between += siemens;
        }
    }

    /// Conductance between two nodes, S.
    fn between(&self, from: usize, to: usize) -> f64 {
        self.siemens.get(from).and_then(|row| row.get(to)).copied().unwrap_or(0.0)
    }

    /// Conductance of all that is joined to a node, S.
    fn around(&self, node: usize) -> f64 {
        self.siemens.get(node).map_or(0.0, |row| row.iter().sum())
    }

    /// Resistance between two nodes, Ω; infinite where nothing joins them.
    ///
    /// One ampere goes in at `from`; `to` is at 0 V. The node equations are eliminated in such an order
    /// that `from` comes last, so that its last pivot is the conductance looked for.
    pub(super) fn ohms(&self, from: usize, to: usize) -> f64 {
        if from == to {
            return 0.0;
        }
        let reached = self.reached(from);
        if !reached.contains(&to) {
            return f64::INFINITY;
        }
        let unknown = reached.into_iter().filter(|node| *node != to && *node != from);
        let order: Vec<usize> = unknown.chain([from]).collect();
        let mut rows: Vec<_> = order.iter().map(|node| self.equation(*node, &order)).collect();
        last_pivot(&mut rows).recip()
    }

    /// What flows out of a node for one volt at each of the unknown nodes, A.
    fn equation(&self, node: usize, order: &[usize]) -> [f64; NODES] {
        let mut row = [0.0; NODES];
        for (value, &other) in row.iter_mut().zip(order) {
            *value = if other == node { self.around(node) } else { -self.between(node, other) };
        }
        row
    }

    /// The nodes that are joined to this one by whatever way, and itself, in the order of their numbers.
    fn reached(&self, from: usize) -> BTreeSet<usize> {
        let mut reached = BTreeSet::new();
        let mut left = vec![from];
        while let Some(node) = left.pop() {
            if reached.insert(node) {
                left.extend((0..NODES).filter(|other| self.between(node, *other) > 0.0));
            }
        }
        reached
    }
}

/// Gaussian elimination. The diagonal dominates in node equations, so the order of the rows may stay.
fn last_pivot(rows: &mut [[f64; NODES]]) -> f64 {
    let mut left = rows;
    let mut last = 0.0;
    for column in 0..NODES {
        let [above, below @ ..] = left else { break };
        // What is left of the row that is eliminated now: its pivot and what stands right of it.
        let Some([pivot, right @ ..]) = above.get(column..) else { break };
        for row in below.iter_mut() {
            let Some([first, rest @ ..]) = row.get_mut(column..) else { break };
            let factor = *first / pivot;
            if factor != 0.0 {
                rest.iter_mut().zip(right).for_each(|(value, above)| *value -= factor * above);
            }
        }
        last = *pivot;
        left = below;
    }
    last
}

#[cfg(test)]
mod tests {
    use super::Circuit;

    #[track_caller]
    fn near(found: f64, expected: f64) {
        assert!((found - expected).abs() <= 1e-9 * expected, "{found} Ω, on paper {expected} Ω");
    }

    #[test]
    fn networks_are_those_of_paper() {
        let mut cube = Circuit::new();
        for corner in 0..8_usize {
            for bit in [1, 2, 4] {
                if corner & bit == 0 {
                    cube.join(corner, corner | bit, 6.0);
                }
            }
        }
        // A cube of equal resistors: edge 7/12, face diagonal 3/4, body diagonal 5/6.
        near(cube.ohms(0, 1), 3.5);
        near(cube.ohms(0, 3), 4.5);
        near(cube.ohms(0, 7), 5.0);
        assert!(cube.ohms(0, 9).is_infinite() && cube.ohms(8, 9).is_infinite());
        near(cube.ohms(4, 4), 0.0);

        // An unbalanced bridge: node 1 at 8/15 V and node 2 at 7/15 V of 1 V gives 7/5 Ω.
        let mut bridge = Circuit::new();
        for (first, second, ohm) in
            [(0, 1, 1.0), (0, 2, 2.0), (1, 3, 2.0), (2, 3, 1.0), (1, 2, 1.0)]
        {
            bridge.join(first, second, ohm);
        }
        near(bridge.ohms(0, 3), 1.4);
        near(bridge.ohms(3, 0), 1.4);

        // Twelve decades in one network.
        let mut stiff = Circuit::new();
        stiff.join(0, 1, 0.01);
        stiff.join(1, 2, 0.02);
        stiff.join(0, 2, 0.03);
        stiff.join(2, 3, 1e10);
        assert!((stiff.ohms(0, 3) / 1e10 - 1.0).abs() < 1e-3);
        near(stiff.ohms(0, 2), 0.015);
        stiff.join(0, 3, f64::INFINITY);
        near(stiff.ohms(0, 1), 0.01 * 0.05 / 0.06);
    }
}
