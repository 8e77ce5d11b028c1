// A window needs no console beside it.
#![cfg_attr(not(debug_assertions), windows_subsystem = "windows")]
//! Starts the app on a desktop.

use std::process::ExitCode;

fn main() -> ExitCode {
    match coldchassis_app_lib::start() {
        Ok(()) => ExitCode::SUCCESS,
        Err(error) => {
            eprintln!("{error}");
            ExitCode::FAILURE
        }
    }
}
