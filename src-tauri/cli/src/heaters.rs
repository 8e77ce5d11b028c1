//! Lays the heaters of a list of tubes out for a terminal.

use coldchassis_core::words::Words;
use coldchassis_core::workbench::{HeaterView, TubeRow};

use crate::print::{paragraph, wrapped};

/// Columns of the bar that stands for the whole line voltage.
const LINE_COLUMNS: f64 = 30.0;

/// The whole study as text.
pub fn page(view: &HeaterView, words: &Words) -> String {
    let mut lines = vec![view.heading.clone()];
    lines.extend(wrapped(&view.sum, "  "));
    lines.push(String::new());
    lines.extend(view.tubes.iter().map(|tube| row(tube, view.line_volts)));
    lines.push(format!("{:<12} {:<18} |{}|", "", "", "-".repeat(LINE_COLUMNS as usize)));
    let doubts = view.tubes.iter().filter_map(|tube| Some((&tube.name, tube.doubt.as_ref()?)));
    lines.extend(doubts.flat_map(|(name, doubt)| wrapped(&format!("{name}: {doubt}"), "  ? ")));
    lines.extend(view.clashes.iter().flat_map(|clash| wrapped(clash, "  ! ")));
    lines.push(paragraph(&view.suggests));
    if let Some(caution) = &view.caution {
        lines.push(String::new());
        lines.extend(wrapped(caution, "! "));
    }
    for figure in &view.figures {
        lines.push(format!("\n{}: {}", figure.name, figure.figure));
        lines
            .extend(wrapped(&figure.note, "  ").into_iter().filter(|line| !line.trim().is_empty()));
    }
    lines.push(paragraph(&words.say_id("heaters-unproved")));
    lines.extend(view.cannot_prove.iter().flat_map(|text| wrapped(text, "  - ")));
    lines.join("\n")
}

fn row(tube: &TubeRow, line_volts: f64) -> String {
    let columns = tube.volts.unwrap_or_default() / line_volts * LINE_COLUMNS;
    let bar = "#".repeat((columns.round() as usize).min(LINE_COLUMNS as usize * 2));
    format!("{:<12} {:<18} |{bar}", tube.name, tube.heater)
}
