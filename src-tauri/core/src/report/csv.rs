//! Lists as CSV (RFC 4180) that a spreadsheet opens as text.

/// A list as CSV, with the names of its columns first. What a spreadsheet would take for a formula is kept text.
pub fn table(head: &[String], rows: impl IntoIterator<Item = Vec<String>>) -> Vec<u8> {
    let mut writer = csv::WriterBuilder::new()
        .terminator(csv::Terminator::CRLF)
        .flexible(true)
        .from_writer(BOM.to_vec());
    // Writing into memory cannot fail.
    let mut write = |cells: Vec<String>| writer.write_record(cells).unwrap_or_default();
    write(head.iter().map(|cell| as_text(cell)).collect());
    for row in rows {
        write(row.iter().map(|cell| as_text(cell)).collect());
    }
    writer.into_inner().unwrap_or_default()
}

/// Tells a spreadsheet that it is UTF-8.
const BOM: &[u8] = b"\xef\xbb\xbf";

/// What a formula begins with, also in the wide signs that East Asian spreadsheets take for the same.
const FORMULA: [char; 8] = ['=', '+', '-', '@', '＝', '＋', '－', '＠'];

/// A cell that starts as a formula does gets an apostrophe before it, and control signs are spaces.
fn as_text(cell: &str) -> String {
    let cell: String =
        cell.chars().map(|letter| if letter.is_control() { ' ' } else { letter }).collect();
    if cell.trim_start().starts_with(FORMULA) { format!("'{cell}") } else { cell }
}
