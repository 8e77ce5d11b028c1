//! Makes the sheet of figures out of what the benches of one run wrote: `coldchassis-figures FILE SHEET`.

use std::fs;
use std::path::PathBuf;
use std::process::ExitCode;

use coldchassis_figures::{machine, read, sheet};

fn main() -> ExitCode {
    let given: Vec<PathBuf> = std::env::args_os().skip(1).map(PathBuf::from).collect();
    let [file, to] = given.as_slice() else {
        eprintln!("coldchassis-figures FILE SHEET");
        return ExitCode::from(2);
    };
    let rows = fs::read_to_string(file).map_err(|error| error.to_string());
    let rows = rows.and_then(|text| read(&text));
    let written = rows.and_then(|rows| {
        let text = sheet::sheet(&machine::described(), &rows);
        fs::write(to, text).map_err(|error| error.to_string())
    });
    match written {
        Ok(()) => {
            println!("{}", to.display());
            ExitCode::SUCCESS
        }
        Err(trouble) => {
            eprintln!("{}: {trouble}", file.display());
            ExitCode::FAILURE
        }
    }
}
