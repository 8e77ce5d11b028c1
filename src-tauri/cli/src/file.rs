//! Reads an input file or pipe to its end, with a cap.

use std::fs::File;
use std::io::Read;
use std::path::Path;

use coldchassis_core::words::Message;
use coldchassis_core::workbench::{Code, Problem};

/// No findings file comes near this; a larger one is a mistake or an attack.
const MOST_BYTES: u64 = 4 * 1024 * 1024;

/// The bytes of a file or pipe; its size is never asked, since a pipe has none.
pub fn read(path: &Path) -> Result<Vec<u8>, Problem> {
    let unreadable = |_| problem(Message::new("takes-readable-file"));
    if path.is_dir() {
        return Err(problem(Message::new("takes-regular-file")));
    }
    let file = File::open(path).map_err(unreadable)?;
    let mut bytes = Vec::new();
    file.take(MOST_BYTES + 1).read_to_end(&mut bytes).map_err(unreadable)?;
    if bytes.len() as u64 > MOST_BYTES {
        let high = MOST_BYTES.to_string();
        return Err(problem(Message::new("takes-at-most-bytes").text("high", high)));
    }
    Ok(bytes)
}

/// Refuses a record that is not there, so that listing never makes one.
pub fn must_exist(path: &Path) -> Result<(), Problem> {
    if path.is_file() { Ok(()) } else { Err(problem(Message::new("takes-readable-file"))) }
}

fn problem(message: Message) -> Problem {
    Problem { code: Code::BadInput, message, field: Some("file".to_owned()) }
}
