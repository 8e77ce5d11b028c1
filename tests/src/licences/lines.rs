//! A licence's text as a phone shows it.

/// A line that is shorter than this, and than most of the longest, ended where it was meant to.
const FULL: usize = 52;

/// The text without the line breaks that were made for a printer's width: a phone is narrower. Paragraphs, items of
/// lists and names keep lines of their own.
pub fn unwrapped(text: &str) -> String {
    let longest = text.lines().map(|line| line.trim().chars().count()).max().unwrap_or_default();
    let full = FULL.min(longest * 4 / 5);
    let mut lines: Vec<String> = Vec::new();
    let mut room = false;
    for line in text.trim_start_matches('\u{feff}').lines() {
        let line = line.split_whitespace().collect::<Vec<_>>().join(" ");
        if is_rule(&line) {
            room = false;
            continue;
        }
        match lines.last_mut() {
            Some(last) if room && !last.is_empty() && !line.is_empty() && !begins_anew(&line) => {
                last.push(' ');
                last.push_str(&line);
            }
            Some(last) if last.is_empty() && line.is_empty() => {}
            None if line.is_empty() => {}
            _ => lines.push(line.clone()),
        }
        room = line.chars().count() >= full;
    }
    lines.join("\n").trim_end().to_owned()
}

/// Whether a line only parts what is above it from what is below.
fn is_rule(line: &str) -> bool {
    line.chars().count() > 3 && line.chars().all(|c| "-=*_#~".contains(c))
}

/// Whether a line begins something that has a line of its own.
fn begins_anew(line: &str) -> bool {
    let first = line.split(' ').next().unwrap_or_default();
    let is_mark = ["*", "-", "•", "o"].contains(&first);
    let counts = first.trim_start_matches('(').trim_end_matches(['.', ')']);
    let is_number = first.ends_with(['.', ')'])
        && (counts.len() == 1
            || (!counts.is_empty() && counts.chars().all(|c| c.is_ascii_digit())));
    // A name of a file, before whose it is.
    let is_name = first.ends_with(':');
    is_mark || is_number || is_name || line.to_lowercase().starts_with("copyright")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn lines_are_joined_but_not_across_paragraphs_and_items() {
        let printed = "Copyright (c) 2020 A\n\nRedistribution and use in source and binary forms, with or\n\
                       without, are permitted provided that the following conditions hold:\n\
                       1. Source keeps the notice above and this list of the\n   conditions.\n======\nEnd\n";
        let expected = "Copyright (c) 2020 A\n\nRedistribution and use in source and binary forms, with or without, \
                        are permitted provided that the following conditions hold:\n1. Source keeps the notice \
                        above and this list of the conditions.\nEnd";
        assert_eq!(unwrapped(printed), expected);
    }
}
