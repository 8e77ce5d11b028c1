//! A report as plain text, short enough to paste into a message.

use super::sheet::{Block, Sheet};
use crate::words::isolated;

/// The text of a report: the verdict, cautions, lists and paragraphs. Tables, photos and drawings stay out.
pub fn text(sheet: &Sheet) -> String {
    let mut lines: Vec<String> = Vec::new();
    for block in &sheet.blocks {
        match block {
            Block::Verdict(verdict) => {
                let name = in_a_line(&verdict.name);
                lines.push(format!("{} {}", verdict.label, isolated(&name)).trim().to_owned());
                lines.push(format!("{}. {}", verdict.signal_word, verdict.title));
                lines.extend(verdict.current.iter().map(|current| current.join(" ")));
                lines.extend(verdict.reason.iter().cloned());
                lines.push(String::new());
                lines.push(verdict.now.clone());
                lines.extend(verdict.permission.iter().map(|line| item(line)));
            }
            Block::Heading(text) => lines.extend([String::new(), text.clone()]),
            Block::Paragraph(text) | Block::Note(text) => lines.push(text.clone()),
            Block::List(items) | Block::Cautions(items) => {
                lines.extend(items.iter().map(|line| item(line)));
            }
            Block::Table(_) | Block::Photos(_) | Block::Drawing(_) | Block::Page => {}
        }
    }
    lines.join("\n")
}

/// A name may have come from elsewhere with lines in it, which would pass for lines of the report.
fn in_a_line(name: &str) -> String {
    let is_break = |c: char| c.is_control() || matches!(c, '\u{2028}' | '\u{2029}');
    name.chars().map(|c| if is_break(c) { ' ' } else { c }).collect()
}

fn item(line: &str) -> String {
    format!("- {line}")
}
