//! Resistors between nodes, and what is between two of the nodes.

/// How many nodes a network has.
pub(super) const NODES: usize = 10;
/// The least a joint is taken for, Ω: keeps a conductance finite (no figure of a part is below it).
const LEAST_OHM: f64 = 1e-4;

/// A network of resistors.
#[derive(Clone, Debug)]
pub(super) struct Circuit {
    /// Conductance between each pair of nodes, S.
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
            self.siemens[first][second] += siemens;
            self.siemens[second][first] += siemens;
        }
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
        if !reached[to] {
            return f64::INFINITY;
        }
        let unknown = (0..NODES).filter(|node| reached[*node] && *node != to && *node != from);
        let order: Vec<usize> = unknown.chain([from]).collect();
        let mut rows = [[0.0; NODES]; NODES];
        for (row, node) in order.iter().enumerate() {
            for (column, other) in order.iter().enumerate() {
                rows[row][column] = -self.siemens[*node][*other];
            }
            rows[row][row] = self.siemens[*node].iter().sum();
        }
        last_pivot(&mut rows, order.len()).recip()
    }

    fn reached(&self, from: usize) -> [bool; NODES] {
        let mut reached = [false; NODES];
        let mut left = vec![from];
        while let Some(node) = left.pop() {
            if !std::mem::replace(&mut reached[node], true) {
                left.extend((0..NODES).filter(|other| self.siemens[node][*other] > 0.0));
            }
        }
        reached
    }
}

/// Gaussian elimination. The diagonal dominates in node equations, so the order of the rows may stay.
fn last_pivot(rows: &mut [[f64; NODES]; NODES], size: usize) -> f64 {
    for column in 0..size {
        let pivot = rows[column];
        for row in rows.iter_mut().take(size).skip(column + 1) {
            let factor = row[column] / pivot[column];
            if factor != 0.0 {
                for (value, above) in row.iter_mut().zip(pivot).take(size).skip(column) {
                    *value -= factor * above;
                }
            }
        }
    }
    rows[size - 1][size - 1]
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
