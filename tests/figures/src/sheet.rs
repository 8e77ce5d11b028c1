//! The sheet of all figures of one run, in Markdown.

use super::row::{At, Row};
use super::unit::three_digits;

/// How many figures are listed by how much of their bound they take.
const NEAREST: usize = 8;

/// What stands at its head.
const HEAD: &str = "# Figures

Written by `make bench` from one run; nothing here is written by hand. Each figure stands beside the bound of the
issue that asks for it, and beside a peer that did the same in the same run, where there is one: the ratio is ours over
theirs. The load is how many processes wanted to run meanwhile; on a machine that does other work the higher
percentiles are those of that work.

From a tap on the plug of the circuit picture to the next painted frame, at most 50 ms (issue 7), is measured in the
browser and printed by `npm --prefix tests/browser test -- flip`.
";

/// The sheet.
pub fn sheet(machine: &[(&'static str, String)], rows: &[Row]) -> String {
    let mut text = HEAD.to_owned();
    text.push_str("\n| the machine | |\n|---|---|\n");
    for (name, told) in machine {
        text.push_str(&format!("| {name} | {} |\n", cell(told)));
    }
    text.push_str(&format!("| load | {} |\n", load(rows)));
    text.push_str(&nearest(rows));
    let mut benches: Vec<&str> = Vec::new();
    for row in rows {
        if !benches.contains(&row.bench.as_str()) {
            benches.push(&row.bench);
        }
    }
    for bench in benches {
        text.push_str(&section(bench, rows));
    }
    text
}

/// What takes the most of its bound, over or not.
fn nearest(rows: &[Row]) -> String {
    let mut bounded: Vec<(f64, &Row)> =
        rows.iter().filter_map(|row| Some((row.share()?, row))).collect();
    bounded.sort_by(|(one, _), (other, _)| other.total_cmp(one));
    let mut text = "\n## Nearest to their bounds\n\n".to_owned();
    let over = bounded.iter().filter(|(share, _)| *share > 1.0).count();
    text.push_str(&format!("{over} of {} bounds are broken in this run.\n\n", bounded.len()));
    text.push_str("| | measured | bound | measured/bound |\n|---|--:|---|--:|\n");
    for (share, row) in bounded.iter().take(NEAREST) {
        let measured = row.bound.and_then(|bound| Some((bound.at, row.at(bound.at)?)));
        let measured = measured.map_or_else(String::new, |(at, figure)| match at {
            At::Ratio => three_digits(figure),
            _ => row.unit.write(figure),
        });
        text.push_str(&format!(
            "| {}: {} | {measured} | {} | {share:.2} |\n",
            cell(&row.bench),
            cell(&row.name),
            row.bound_in_words()
        ));
    }
    text
}

fn section(bench: &str, rows: &[Row]) -> String {
    let mut text = format!("\n## {bench}\n\n| | times | unit |");
    for at in At::MEASURED {
        text.push_str(&format!(" {} |", at.name()));
    }
    text.push_str(" bound | peer | ratio |\n|---|--:|---|--:|--:|--:|--:|--:|---|---|--:|\n");
    for row in rows.iter().filter(|row| row.bench == bench) {
        let note = if row.note.is_empty() { String::new() } else { format!(" ({})", row.note) };
        text.push_str(&format!("| {} | {} |", cell(&(row.name.clone() + &note)), row.count));
        text.push_str(&format!(" {} |", row.unit.symbol()));
        for at in At::MEASURED {
            text.push_str(&format!(" {} |", row.at(at).map(three_digits).unwrap_or_default()));
        }
        let peer = row
            .peer
            .as_ref()
            .map(|peer| format!("{}: {}", cell(&peer.name), row.unit.write(peer.median)));
        let peer = peer.unwrap_or_default();
        text.push_str(&format!(
            " {} | {peer} | {} |\n",
            row.bound_in_words(),
            row.ratio_in_words()
        ));
    }
    text
}

/// The least and the greatest load under which a row was told.
fn load(rows: &[Row]) -> String {
    let mut loads: Vec<f64> = rows.iter().filter_map(|row| row.load).collect();
    loads.sort_by(f64::total_cmp);
    match (loads.first(), loads.last()) {
        (Some(least), Some(most)) => format!("{least:.1} to {most:.1} processes"),
        _ => "not known".to_owned(),
    }
}

/// Text that stays within its cell.
fn cell(text: &str) -> String {
    text.replace('|', "\\|").replace('\n', " ")
}

#[cfg(test)]
mod tests {
    use super::sheet;
    use crate::{At, Row, Unit};

    #[test]
    fn every_row_stands_under_its_heading_and_what_is_over_comes_first() {
        let rows = [
            Row::one("The app", "size", Unit::Megabytes, 12.0).at_most(At::Median, 15.0, 10),
            Row::new("Repairs", "before | after", Unit::Millis, [30.0, 60.0])
                .at_most(At::Most, 20.0, 8)
                .beside("another", 90.0),
            Row::one("The app", "at rest", Unit::Megabytes, 200.0),
        ];
        let text = sheet(&[("cores", "2".to_owned())], &rows);
        assert!(text.contains("| cores | 2 |"), "{text}");
        assert!(text.contains("1 of 2 bounds are broken"), "{text}");
        let places = ["before \\| after | 60.0 ms", "size | 12.0 MB", "## The app", "## Repairs"];
        let found: Vec<usize> = places.map(|part| text.find(part).expect(part)).into();
        assert!(found.is_sorted(), "{found:?} in {text}");
        assert_eq!(text.matches("| at rest | 1 | MB |").count(), 1, "{text}");
        assert!(text.contains("another: 90.0 ms | 0.333 |"), "{text}");
    }
}
