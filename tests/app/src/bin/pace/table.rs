//! Prints figures as a small table.

/// A heading with the names of the columns.
pub fn head(title: &str) {
    println!("\n{title}");
    println!("  {:<44} {:>7} {:>7} {:>7}", "", "median", "p95", "most");
}

/// One line: what was measured, in ms.
pub fn row(name: &str, figures: impl Iterator<Item = f64>) {
    let mut sorted: Vec<f64> = figures.collect();
    sorted.sort_by(f64::total_cmp);
    let [median, p95, most] = [0.5, 0.95, 1.0].map(|part| rank(&sorted, part));
    println!("  {name:<44} {median:>7.0} {p95:>7.0} {most:>7.0}");
}

/// How busy the machine is, over 1, 5 and 15 minutes.
pub fn load() -> String {
    let text = std::fs::read_to_string("/proc/loadavg").unwrap_or_default();
    text.split(' ').take(3).collect::<Vec<_>>().join(" ")
}

/// The smallest figure that so large a part of all does not exceed (nearest rank).
fn rank(sorted: &[f64], part: f64) -> f64 {
    let at = (part * sorted.len() as f64).ceil() as usize;
    sorted.get(at.saturating_sub(1)).copied().unwrap_or(f64::NAN)
}
