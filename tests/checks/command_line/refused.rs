//! Runs tables of bad input and lists every case that is not refused as promised.

use super::program::{fault_of_refusal, run};

/// A bad file and the field that is to blame.
pub struct Bad {
    /// The whole file.
    pub file: Vec<u8>,
    /// The dotted path, or `file`.
    pub field: String,
}

/// A bad file of text.
pub fn bad(file: impl Into<Vec<u8>>, field: impl Into<String>) -> Bad {
    Bad { file: file.into(), field: field.into() }
}

/// Gives each file to a command through a pipe, with and without `--json`.
pub fn all_refused(command: &str, table: &[Bad]) {
    let mut wrong = Vec::new();
    for case in table {
        for arguments in [&[command, "/dev/stdin", "--json"][..], &[command, "/dev/stdin"]] {
            let found = fault_of_refusal(&run(arguments, &case.file), &case.field);
            wrong.extend(found.map(|found| {
                let start = String::from_utf8_lossy(&case.file);
                let start: String = start.chars().take(160).collect();
                format!("{arguments:?} {start}\n    wants {}, got {found}", case.field)
            }));
        }
    }
    assert!(wrong.is_empty(), "{} of {}:\n{}", wrong.len(), 2 * table.len(), wrong.join("\n"));
}

/// Keys of one JSON object in their order, each with its value as it is written in the file.
#[derive(Clone)]
pub struct Written(Vec<(String, String)>);

impl Written {
    /// An object of these keys.
    pub fn of(keys: &[(&str, &str)]) -> Self {
        Self(keys.iter().map(|&(key, value)| (key.to_owned(), value.to_owned())).collect())
    }

    /// The same with one value changed or added.
    pub fn with(&self, key: &str, value: &str) -> Self {
        let mut keys = self.0.clone();
        match keys.iter_mut().find(|(known, _)| known == key) {
            Some((_, old)) => value.clone_into(old),
            None => return self.and(key, value),
        }
        Self(keys)
    }

    /// The same with one more pair at the end, even where the key is there.
    pub fn and(&self, key: &str, value: &str) -> Self {
        let more = (key.to_owned(), value.to_owned());
        Self(self.0.iter().cloned().chain([more]).collect())
    }

    /// The same without a key.
    pub fn without(&self, key: &str) -> Self {
        Self(self.0.iter().filter(|(known, _)| known != key).cloned().collect())
    }

    /// The object as text; keys are written as they are, so that they may hold escapes.
    pub fn text(&self) -> String {
        let pairs: Vec<String> =
            self.0.iter().map(|(key, value)| format!("\"{key}\": {value}")).collect();
        format!("{{{}}}", pairs.join(", "))
    }
}

/// Bad supplies, the same for every file.
pub fn supplies(base: &Written) -> Vec<Bad> {
    let fields: [(&str, &str); 41] = [
        (r#"{"hertz": 60}"#, "supply.volts"),
        (r#"{"volts": 120}"#, "supply.hertz"),
        ("{}", "supply.volts"),
        ("null", "supply"),
        ("120", "supply"),
        ("[]", "supply"),
        (r#""120v_60hz""#, "supply"),
        (r#"{"volts": 0, "hertz": 60}"#, "supply.volts"),
        (r#"{"volts": -120, "hertz": 60}"#, "supply.volts"),
        (r#"{"volts": 0.999, "hertz": 60}"#, "supply.volts"),
        (r#"{"volts": 1000.001, "hertz": 60}"#, "supply.volts"),
        (r#"{"volts": 1e308, "hertz": 60}"#, "supply.volts"),
        (r#"{"volts": 1e-400, "hertz": 60}"#, "supply.volts"),
        (r#"{"volts": 123456789012345678901234567890, "hertz": 60}"#, "supply.volts"),
        (r#"{"volts": "120", "hertz": 60}"#, "supply.volts"),
        (r#"{"volts": true, "hertz": 60}"#, "supply.volts"),
        (r#"{"volts": null, "hertz": 60}"#, "supply.volts"),
        (r#"{"volts": [120], "hertz": 60}"#, "supply.volts"),
        (r#"{"volts": {"nominal": 120}, "hertz": 60}"#, "supply.volts"),
        (r#"{"volts": 120, "hertz": 0}"#, "supply.hertz"),
        (r#"{"volts": 120, "hertz": -0.0}"#, "supply.hertz"),
        (r#"{"volts": 120, "hertz": -60}"#, "supply.hertz"),
        (r#"{"volts": 120, "hertz": 14.99}"#, "supply.hertz"),
        (r#"{"volts": 120, "hertz": 400.01}"#, "supply.hertz"),
        (r#"{"volts": 120, "hertz": "60"}"#, "supply.hertz"),
        (r#"{"volts": 120, "hertz": false}"#, "supply.hertz"),
        (r#"{"volts": 120, "hertz": 60, "feed": "dc"}"#, "supply.feed"),
        (r#"{"volts": 120, "hertz": 60, "input_volts": 240}"#, "supply.input_volts"),
        (
            r#"{"volts": 120, "hertz": 60, "feed": "step_down_auto", "input_volts": 119}"#,
            "supply.input_volts",
        ),
        (r#"{"volts": 120, "hertz": 60, "feed": "Direct"}"#, "supply.feed"),
        (r#"{"volts": 120, "hertz": 60, "feed": ""}"#, "supply.feed"),
        (r#"{"volts": 120, "hertz": 60, "feed": null}"#, "supply.feed"),
        (r#"{"volts": 120, "hertz": 60, "feed": ["direct"]}"#, "supply.feed"),
        (r#"{"volts": 120, "hertz": 60, "volts_max": 119.99}"#, "supply.volts_max"),
        (r#"{"volts": 120, "hertz": 60, "volts_max": 150.01}"#, "supply.volts_max"),
        (r#"{"volts": 120, "hertz": 60, "volts_max": -127}"#, "supply.volts_max"),
        (r#"{"volts": 120, "hertz": 60, "volts_max": "127"}"#, "supply.volts_max"),
        (r#"{"volts": 120, "hertz": 60, "volts_max": null}"#, "supply.volts_max"),
        (r#"{"volts": 120, "hertz": 60, "phase": 1}"#, "supply.phase"),
        (r#"{"volts": 120, "hertz": 60, "Volts": 120}"#, "supply.Volts"),
        (r#"{"volts": 120, "hertz": 60, "a.b": 1}"#, "supply.a.b"),
    ];
    let case = |&(supply, field): &(&str, &str)| bad(base.with("supply", supply).text(), field);
    let mut table: Vec<Bad> = fields.iter().map(case).collect();
    table.push(bad(base.without("supply").text(), "supply"));
    // These are no JSON at all, so the whole file is refused.
    for literal in
        ["NaN", "Infinity", "-Infinity", "nan", "1e999", "+120", "0x78", ".5", "01", "1."]
    {
        let supply = format!(r#"{{"volts": {literal}, "hertz": 60}}"#);
        table.push(bad(base.with("supply", &supply).text(), "file"));
    }
    table
}

/// Keys that are not in the contract, given beside good ones: what is in them must stay harmless.
pub fn strange_keys(base: &Written) -> Vec<Bad> {
    let long = "k".repeat(10_000);
    let cut = format!("{}…", "k".repeat(80));
    [
        ("photos", "photos"),
        ("SUPPLY", "SUPPLY"),
        ("supply.volts", "supply.volts"),
        ("a.b.c", "a.b.c"),
        (" supply", " supply"),
        ("a: takes 1", "a: takes 1"),
        ("{ $field }", "{ $field }"),
        ("größe", "größe"),
        // A line end, a carriage return, a tab, a colour, a title, a C1 escape, NUL, DEL.
        (r"a\nb", "a\u{fffd}b"),
        (r"a\r\nb", "a\u{fffd}\u{fffd}b"),
        (r"a\tb", "a\u{fffd}b"),
        (r"\u001b[31mred", "\u{fffd}[31mred"),
        (r"\u001b]0;title\u0007", "\u{fffd}]0;title\u{fffd}"),
        (r"\u009b2Jx", "\u{fffd}2Jx"),
        (r"a\u0000b", "a\u{fffd}b"),
        (r"a\u007fb", "a\u{fffd}b"),
        (r"a\u0085b", "a\u{fffd}b"),
        (long.as_str(), cut.as_str()),
    ]
    .map(|(key, field)| bad(base.with(key, "1").text(), field))
    .into()
}

/// Two values for one field; a key written with an escape is the same key.
pub fn twice(base: &Written) -> Vec<Bad> {
    let supply = |more: &str| {
        base.with("supply", &format!(r#"{{"volts": 120, "hertz": 60, {more}}}"#)).text()
    };
    let good = r#"{"volts": 120, "hertz": 60}"#;
    vec![
        bad(base.and("supply", good).text(), "supply"),
        bad(base.and(r"suppl\u0079", good).text(), "supply"),
        bad(base.and("supply", "null").text(), "supply"),
        bad(supply(r#""volts": 120"#), "supply.volts"),
        bad(supply(r#""hert\u007a": 50"#), "supply.hertz"),
        bad(supply(r#""x\u001b[1m\n": 1, "x\u001b[1m\n": 1"#), "supply.x\u{fffd}[1m\u{fffd}"),
    ]
}
