//! Which licence is chosen of those that a package offers, and the text that has to be passed on with it.

use std::path::Path;

use coldchassis_tests::licences::Package;
use coldchassis_tests::licences::lines::unwrapped;
use spdx::{Expression, Licensee, ParseMode};

use crate::Found;

/// A licence that we accept.
struct Accepted {
    id: &'static str,
    /// Phrases that stand together in its text and in no other's here.
    phrases: &'static [&'static str],
    /// The same for everybody: it names nobody, so that one text does for all.
    same: bool,
}

/// Those that we accept, the one that is chosen first where a package offers several. Apache 2.0 comes first because
/// its text is the same for everybody.
const ACCEPTED: [Accepted; 9] = [
    Accepted { id: "Apache-2.0", phrases: &["Apache License", "Version 2.0"], same: true },
    Accepted {
        id: "MIT",
        phrases: &["Permission is hereby granted, free of charge, to any person obtaining a copy"],
        same: false,
    },
    Accepted {
        id: "BSD-3-Clause",
        phrases: &["Redistribution and use in source and binary forms", "endorse or promote"],
        same: false,
    },
    Accepted {
        id: "BSD-2-Clause",
        phrases: &["Redistribution and use in source and binary forms"],
        same: false,
    },
    Accepted {
        id: "Zlib",
        phrases: &["Altered source versions must be plainly marked"],
        same: false,
    },
    Accepted { id: "Unicode-3.0", phrases: &["UNICODE LICENSE V3"], same: false },
    Accepted { id: "IJG", phrases: &["Independent JPEG Group"], same: false },
    Accepted { id: "MPL-2.0", phrases: &["Mozilla Public License", "2.0"], same: true },
    Accepted { id: "OFL-1.1", phrases: &["SIL OPEN FONT LICENSE"], same: false },
];

/// What SQLite has in place of a licence: no package may choose it.
const BLESSING: &str = "blessing";

/// The ids of the licences that a package is used under.
///
/// # Panics
/// When it offers none that we accept.
pub fn chosen(package: &Package, expression: &str) -> Vec<&'static str> {
    if expression == BLESSING {
        return vec![BLESSING];
    }
    let of = package.line();
    let expression = Expression::parse_mode(expression, ParseMode::LAX)
        .unwrap_or_else(|error| panic!("{of}: {expression}: {error}"));
    let known =
        |accepted: &Accepted| Licensee::parse(accepted.id).expect("a licence that there is");
    let accepted: Vec<Licensee> = ACCEPTED.iter().map(known).collect();
    let needed = expression.minimized_requirements(&accepted);
    let needed = needed.unwrap_or_else(|error| panic!("{of}: {expression}: {error}"));
    let needed: Vec<String> = needed.iter().map(ToString::to_string).collect();
    let ids = ACCEPTED.iter().map(|accepted| accepted.id);
    ids.filter(|id| needed.iter().any(|one| one == id)).collect()
}

/// The texts that go with a package for one of its licences: the licence, and what is to be passed on beside it.
///
/// # Panics
/// When it came without one and there is no text that does for everybody.
pub fn of(found: &Found, id: &str) -> Vec<String> {
    let mut texts = Vec::new();
    match ACCEPTED.iter().find(|accepted| accepted.id == id) {
        Some(accepted) if accepted.same => texts.push(standard(id)),
        Some(accepted) => {
            let own = found.files.iter().filter(|text| is_of(text, accepted));
            texts.extend(own.cloned());
            if texts.is_empty() {
                texts.push(filled_in(id, found));
            }
        }
        None => texts.extend(found.files.iter().cloned()),
    }
    texts.extend(found.notices.iter().cloned());
    texts.iter().map(|text| unwrapped(text)).collect()
}

fn is_of(text: &str, accepted: &Accepted) -> bool {
    // Broken into lines anywhere.
    let text = text.split_whitespace().collect::<Vec<_>>().join(" ");
    accepted.phrases.iter().all(|phrase| text.contains(phrase))
}

fn standard(id: &str) -> String {
    spdx::license_id(id).expect("a licence that there is").text().to_owned()
}

/// The standard text with those who made the package in the place that is left for them: for a package that says
/// which licence it is under and came without its text.
fn filled_in(id: &str, found: &Found) -> String {
    let nameless: Vec<&str> = found.authors.iter().map(|one| without_address(one)).collect();
    let makers = match nameless.as_slice() {
        [] => format!("the authors of {}", found.package.name),
        named => named.join(", "),
    };
    let text = standard(id);
    let line = text.lines().find(|line| line.starts_with("Copyright (c) <year>"));
    let line = line.unwrap_or_else(|| panic!("{}: no text of {id}", found.package.line()));
    text.replacen(line, &format!("Copyright (c) {makers}"), 1)
}

fn without_address(author: &str) -> &str {
    author.split('<').next().unwrap_or_default().trim()
}

/// The licence files and the notices at the top of a package's folder, by name.
pub fn in_folder(folder: &Path) -> (Vec<String>, Vec<String>) {
    let (mut licences, mut notices) = (Vec::new(), Vec::new());
    let entries = std::fs::read_dir(folder).expect("the package is there");
    let mut paths: Vec<_> =
        entries.filter_map(|entry| entry.ok().map(|entry| entry.path())).collect();
    paths.sort();
    for path in paths.iter().filter(|path| path.is_file()) {
        let name = path.file_name().unwrap_or_default().to_string_lossy().to_lowercase();
        let is_licence = ["license", "licence", "copying", "copyright", "unlicense"];
        let list = if name.starts_with("notice") {
            &mut notices
        } else if is_licence.iter().any(|begins| name.starts_with(begins)) {
            &mut licences
        } else {
            continue;
        };
        let bytes = std::fs::read(path).expect("the file can be read");
        list.push(String::from_utf8_lossy(&bytes).into_owned());
    }
    (licences, notices)
}

#[cfg(test)]
mod tests {
    use super::*;
    use coldchassis_tests::licences::Kind;

    fn chosen_of(expression: &str) -> Vec<&'static str> {
        chosen(&Package::new(Kind::Crate, "a", "1"), expression)
    }

    #[test]
    fn the_licence_that_is_the_same_for_all_is_chosen_and_all_that_are_needed() {
        assert_eq!(chosen_of("MIT OR Apache-2.0"), ["Apache-2.0"]);
        assert_eq!(chosen_of("Unlicense/MIT"), ["MIT"]);
        assert_eq!(chosen_of("(MIT OR Apache-2.0) AND Unicode-3.0"), ["Apache-2.0", "Unicode-3.0"]);
        assert_eq!(chosen_of("BSD-3-Clause AND MIT"), ["MIT", "BSD-3-Clause"]);
    }

    #[test]
    #[should_panic(expected = "crate a 1")]
    fn a_licence_that_nobody_accepted_stops_it() {
        chosen_of("GPL-3.0-only");
    }
}
