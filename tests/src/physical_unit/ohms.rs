//! Resistance between two places of a network of resistors, by Gaussian elimination.

/// A network of resistors between numbered nodes.
#[derive(Clone, Debug)]
pub(super) struct Resistors {
    nodes: usize,
    joints: Vec<(usize, usize, f64)>,
}

impl Resistors {
    pub(super) fn new(nodes: usize) -> Self {
        Self { nodes, joints: Vec::new() }
    }

    /// Joins two nodes by `ohms`; an open joint is none.
    pub(super) fn join(&mut self, a: usize, b: usize, ohms: f64) {
        if ohms.is_finite() && a != b {
            self.joints.push((a, b, ohms.max(1e-6)));
        }
    }

    /// Ω between two nodes; infinite where nothing joins them.
    pub(super) fn between(&self, from: usize, to: usize) -> f64 {
        if from == to {
            return 0.0;
        }
        let reached = self.reached_from(from);
        if !reached[to] {
            return f64::INFINITY;
        }
        self.volts_per_ampere(from, to, &reached)
    }

    fn reached_from(&self, from: usize) -> Vec<bool> {
        let mut reached = vec![false; self.nodes];
        reached[from] = true;
        loop {
            let more = self.joints.iter().find(|(a, b, _)| reached[*a] != reached[*b]);
            let Some(&(a, b, _)) = more else { return reached };
            (reached[a], reached[b]) = (true, true);
        }
    }

    /// One ampere in at `from` and out at `to`, which is held at 0 V.
    fn volts_per_ampere(&self, from: usize, to: usize, reached: &[bool]) -> f64 {
        let size = self.nodes;
        let mut rows = vec![vec![0.0; size + 1]; size];
        for &(a, b, ohms) in self.joints.iter().filter(|(a, ..)| reached[*a]) {
            for (own, other) in [(a, b), (b, a)] {
                rows[own][own] += 1.0 / ohms;
                rows[own][other] -= 1.0 / ohms;
            }
        }
        rows[from][size] = 1.0;
        for node in 0..size {
            if node == to || !reached[node] {
                rows[node] = vec![0.0; size + 1];
                rows[node][node] = 1.0;
            }
        }
        solve(&mut rows)[from]
    }
}

/// Elimination with the largest pivot of each column.
fn solve(rows: &mut [Vec<f64>]) -> Vec<f64> {
    let size = rows.len();
    for column in 0..size {
        let largest =
            (column..size).max_by(|a, b| rows[*a][column].abs().total_cmp(&rows[*b][column].abs()));
        rows.swap(column, largest.expect("a row is left"));
        let pivot = rows[column].clone();
        for row in rows.iter_mut().skip(column + 1) {
            let factor = row[column] / pivot[column];
            for (value, above) in row.iter_mut().zip(&pivot) {
                *value -= factor * above;
            }
        }
    }
    let mut solution = vec![0.0; size];
    for row in (0..size).rev() {
        let known: f64 = (row + 1..size).map(|column| rows[row][column] * solution[column]).sum();
        solution[row] = (rows[row][size] - known) / rows[row][row];
    }
    solution
}

#[cfg(test)]
mod tests {
    use super::Resistors;

    #[test]
    fn series_parallel_and_a_balanced_bridge_are_those_of_paper() {
        let mut net = Resistors::new(4);
        for (a, b, ohms) in [(0, 1, 10.0), (1, 3, 20.0), (0, 2, 30.0), (2, 3, 60.0), (1, 2, 7.0)] {
            net.join(a, b, ohms);
        }
        // The bridge is balanced, so the 7 Ω carry nothing: 30 Ω beside 90 Ω.
        assert!((net.between(0, 3) - 22.5).abs() < 1e-9);
        let mut open = Resistors::new(3);
        open.join(0, 1, 5.0);
        assert!(open.between(0, 2).is_infinite());
        assert!((open.between(0, 1) - 5.0).abs() < 1e-12);
    }
}
