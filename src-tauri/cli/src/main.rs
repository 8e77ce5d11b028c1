//! `coldchassis`: the core without a window, for scripts, tests and people at a terminal.

mod file;
mod print;

use std::path::PathBuf;
use std::process::ExitCode;

use clap::{Parser, Subcommand};
use coldchassis_core::words::Words;
use coldchassis_core::workbench::{self, AssessView, Problem};

/// Judge old line-powered electronics before they are plugged in.
#[derive(Parser)]
#[command(version, about)]
struct Arguments {
    #[command(subcommand)]
    command: Command,
}

#[derive(Subcommand)]
enum Command {
    /// Judge a findings file: what to treat the unit as, and why.
    Assess {
        /// The findings, JSON; may be a pipe.
        file: PathBuf,
        /// Print JSON for a script.
        #[arg(long)]
        json: bool,
    },
    /// Compute what a person would receive from one arrangement.
    Exposure {
        /// The arrangement, JSON; may be a pipe.
        file: PathBuf,
        /// Print JSON for a script.
        #[arg(long)]
        json: bool,
    },
}

/// Bad input, and anything else that keeps a command from its work.
const FAILED: u8 = 2;

fn main() -> ExitCode {
    let words = Words::of(&std::env::var("LANG").unwrap_or_default());
    match run(&Arguments::parse().command, &words) {
        Ok(()) => ExitCode::SUCCESS,
        Err(problem) => {
            eprintln!("{}", problem.sentence(&words));
            ExitCode::from(FAILED)
        }
    }
}

fn run(command: &Command, words: &Words) -> Result<(), Problem> {
    match command {
        Command::Assess { file, json } => {
            let (findings, verdict) = workbench::assess_file(&file::read(file)?)?;
            if *json {
                print::json(&AssessView::from(&verdict))
            } else {
                print::text(&print::tag(&workbench::tag(&findings, &verdict, words), words))
            }
        }
        Command::Exposure { file, json } => {
            let exposure = workbench::exposure_file(&file::read(file)?)?;
            if *json {
                print::json(&exposure)
            } else {
                print::text(&print::exposure(&exposure, words))
            }
        }
    }
}
