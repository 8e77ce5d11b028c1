//! Rows of a reference table, each able to say where its figures come from.

use std::collections::BTreeMap;
use std::path::Path;

use coldchassis_core::figure::{Figure, Mark};

/// One row, its fields by the names in the table's heading.
pub struct Row {
    table: &'static str,
    line: usize,
    fields: BTreeMap<String, String>,
}

/// All rows of a table under `tests/reference`, and how many there have to be.
pub fn rows(table: &'static str, expected: usize) -> Vec<Row> {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("reference").join(table);
    let mut reader = csv::Reader::from_path(&path).unwrap_or_else(|e| panic!("{table}: {e}"));
    let rows: Vec<Row> = reader
        .deserialize()
        .enumerate()
        .map(|(place, fields)| Row {
            table,
            line: place + 2,
            fields: fields.unwrap_or_else(|e| panic!("{table}: {e}")),
        })
        .collect();
    assert_eq!(rows.len(), expected, "rows of {table}");
    rows
}

/// Mark and source of a table whose rows do not carry their own.
fn of_the_whole_table(table: &str) -> [&'static str; 2] {
    match table {
        "measuring_network_transfer.csv" => [
            "computed; parts of figure 4 verified, of figure 5 memory-high",
            "closed form of the networks of IEC 60990 figures 4 and 5",
        ],
        "dalziel_fibrillation.csv" => ["", "closed form of IEEE Std 80"],
        "gfci_rcd.csv" => ["", "UL 943, IEC 61008-1 and 61009-1"],
        "stored_energy_examples.csv" => ["", "closed form: C·U²/2, C·U, R·C·ln(U/U₁)"],
        "leakage_examples.csv" | "max_line_capacitance.csv" => ["", "closed form, Ohm's law"],
        _ => ["", ""],
    }
}

impl Row {
    /// A field as text.
    pub fn text(&self, column: &str) -> &str {
        self.fields.get(column).unwrap_or_else(|| panic!("{}: no column {column}", self.table))
    }

    /// A field as a number; nothing where it is left empty.
    pub fn maybe(&self, column: &str) -> Option<f64> {
        let text = self.text(column);
        let number = || text.parse().unwrap_or_else(|_| panic!("{}: {column} {text}", self.cite()));
        (!text.is_empty()).then(number)
    }

    /// A field as a number.
    pub fn number(&self, column: &str) -> f64 {
        self.maybe(column).unwrap_or_else(|| panic!("{}: {column} is empty", self.cite()))
    }

    /// Where the row stands, its mark and its source.
    pub fn cite(&self) -> String {
        let own = |column: &str| self.fields.get(column).map(String::as_str);
        let [mark, source] = of_the_whole_table(self.table);
        let mark = own("confidence").unwrap_or(mark);
        let source = own("source").or_else(|| own("basis")).unwrap_or(source);
        format!("{} line {} [mark: {mark}] [source: {source}]", self.table, self.line)
    }

    /// Compares a computed value to a printed column, to half a unit of its last decimal.
    pub fn agrees(&self, column: &str, computed: f64, decimals: i32) {
        let printed = self.number(column);
        self.within(column, computed, printed, 0.5 * 10f64.powi(-decimals));
    }

    /// Compares a computed value to a printed one. The tolerance is widened by what rounding in
    /// binary can cost at an exact half.
    pub fn within(&self, what: &str, computed: f64, printed: f64, tolerance: f64) {
        let line = format!("{}: {what} computed {computed}, printed {printed}", self.cite());
        println!("{line}");
        let slack = tolerance * 1e-6 + printed.abs() * 1e-12;
        assert!((computed - printed).abs() <= tolerance + slack, "{line}");
    }

    /// Compares a figure of the core to a printed one, value and mark.
    pub fn states(&self, what: &str, figure: Figure, printed: f64) {
        self.within(what, figure.value, printed, 0.0);
        assert_eq!(figure.mark, self.mark(), "{}: mark of {what}", self.cite());
    }

    fn mark(&self) -> Mark {
        let confidence = self.text("confidence");
        let known = [
            ("verified", Mark::Verified),
            ("memory-high", Mark::MemoryHigh),
            ("memory-medium", Mark::MemoryMedium),
            ("memory-low", Mark::MemoryLow),
            ("computed", Mark::Computed),
        ];
        let found = known.into_iter().find(|(word, _)| confidence.starts_with(word));
        found.unwrap_or_else(|| panic!("{}: unknown mark", self.cite())).1
    }
}
