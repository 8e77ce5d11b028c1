//! A record with rows changed past the program, as a tool for SQLite or a fault of memory does.

use std::path::Path;

use rusqlite::Connection;
use rusqlite::types::Value;

use super::tape::Tape;

const TEXTS: [&str; 12] = [
    "",
    "x",
    "null",
    "[]",
    "{}",
    "{\"number\":4294967295}",
    "\"text\"",
    "0190a5d6-0000-7000-8000-000000000000",
    "answers.plug",
    "[1,2,",
    "1e999",
    "live",
];

fn value(tape: &mut Tape<'_>) -> Value {
    match tape.below(7) {
        0 => Value::Null,
        1 => Value::Integer(i64::MAX - i64::from(tape.byte())),
        2 => Value::Integer(i64::MIN + i64::from(tape.byte())),
        3 => Value::Integer(i64::from(tape.byte()) - 1),
        4 => Value::Real(*tape.pick(&[0.5, -1e308, 1e308, f64::INFINITY])),
        5 => Value::Blob((0..tape.below(9)).map(|_| tape.byte()).collect()),
        _ => Value::Text((*tape.pick(&TEXTS)).to_owned()),
    }
}

fn list(conn: &Connection, sql: &str) -> Vec<String> {
    let mut statement = conn.prepare(sql).expect("SQL");
    let rows = statement.query_map([], |row| row.get::<_, String>(0)).expect("rows");
    rows.filter_map(Result::ok).collect()
}

/// Changes a few cells of any tables, also of those that are worked out and of the index.
pub fn change(tape: &mut Tape<'_>, record: &Path) {
    let conn = Connection::open(record).expect("SQLite");
    // What guards the tables is not there for a fault.
    conn.execute_batch("PRAGMA ignore_check_constraints = 1; PRAGMA foreign_keys = 0")
        .expect("SQL");
    for trigger in list(&conn, "SELECT name FROM sqlite_master WHERE type = 'trigger'") {
        conn.execute_batch(&format!("DROP TRIGGER \"{trigger}\"")).expect("SQL");
    }
    let tables = list(
        &conn,
        "SELECT name FROM sqlite_master WHERE type = 'table' AND sql NOT LIKE 'CREATE VIRTUAL%'",
    );
    for _ in 0..=tape.below(4) {
        let table = tape.pick(&tables);
        if tape.is(20) {
            let _ = conn.execute_batch(&format!("DELETE FROM \"{table}\""));
            continue;
        }
        let columns = list(&conn, &format!("SELECT name FROM pragma_table_info('{table}')"));
        let column = tape.pick(&columns);
        let row = tape.below(40);
        let sql = format!(
            "UPDATE OR IGNORE \"{table}\" SET \"{column}\" = ?1 WHERE rowid = (SELECT rowid FROM \"{table}\" LIMIT 1 OFFSET {row})"
        );
        // What the form of the table itself bars is no case.
        let _ = conn.execute(&sql, [value(tape)]);
    }
    if tape.is(16) {
        let version = i64::from(tape.byte() % 6);
        let _ = conn.pragma_update(None, "user_version", version);
    }
}
