//! `coldchassis`: the core without a window, for scripts, tests and people at a terminal.

mod demo;
mod figures;
mod file;
mod guide;
mod heaters;
mod print;
mod remedies;
mod surroundings;

use std::io::Write;
use std::path::PathBuf;
use std::process::ExitCode;

use clap::{Parser, Subcommand};
use coldchassis_core::words::Words;
use coldchassis_core::workbench::{self, AssessView, Problem, Workbench};

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
        /// The skin of another person: dry, wet or saltwater.
        #[arg(long, default_value = "dry")]
        skin: String,
        /// The share of people with less impedance, in percent: 5, 50 or 95.
        #[arg(long, default_value = "5")]
        percentile: String,
        /// Another path than the worst to be expected, such as hand_to_hand.
        #[arg(long)]
        path: Option<String>,
    },
    /// Predict what an ohmmeter reads of one arrangement, unplugged and cold.
    Readings {
        /// The arrangement, JSON; may be a pipe.
        file: PathBuf,
        /// Print JSON for a script.
        #[arg(long)]
        json: bool,
    },
    /// Show what each repair of a unit would change before it is done, and the shortest way to two faults.
    Remedies {
        /// The findings, JSON; may be a pipe.
        file: PathBuf,
        /// Print JSON for a script.
        #[arg(long)]
        json: bool,
    },
    /// Add up the heaters of a list of tubes: what it reads as, which is a hint and never proof.
    Heaters {
        /// The types, each as often as it is there.
        #[arg(required = true, value_name = "TYPE")]
        types: Vec<String>,
        /// The line voltage, V.
        #[arg(long, default_value_t = 120.0)]
        volts: f64,
        /// Its frequency, Hz; for a capacitor in series.
        #[arg(long, default_value_t = 60.0)]
        hertz: f64,
        /// Print JSON for a script.
        #[arg(long)]
        json: bool,
    },
    /// Inspect synthetic units in several orders of asking: seconds and steps to the final verdict.
    Simulate {
        /// Units for each access, kind and order.
        #[arg(long, default_value_t = 100)]
        units: u64,
        /// The seed: the same seed draws the same units.
        #[arg(long, default_value_t = 1)]
        seed: u64,
        /// Print JSON for a script.
        #[arg(long)]
        json: bool,
    },
    /// Show a guided inspection of an invented radio; nothing is kept.
    Demo,
    /// Inspect a unit: answer question by question at the terminal.
    Inspect {
        /// Where to keep the record; without it nothing is kept.
        #[arg(long)]
        record: Option<PathBuf>,
        /// What the unit is to be plugged into, by preset.
        #[arg(long, default_value = "120v_60hz")]
        supply: String,
        /// How far you may go, besides looking from outside: cover_off, meter.
        #[arg(long, value_delimiter = ',')]
        access: Vec<String>,
        /// What people call the unit.
        #[arg(long, default_value = "")]
        name: String,
    },
    /// List the units of a record.
    List {
        /// The record.
        record: PathBuf,
    },
}

/// Bad input, and anything else that keeps a command from its work.
const FAILED: u8 = 2;

fn main() -> ExitCode {
    let locale = std::env::var("LANG").unwrap_or_default();
    let words = Words::of(&locale);
    match run(Arguments::parse().command, &locale, &words) {
        Ok(()) => ExitCode::SUCCESS,
        Err(problem) => {
            // Where nobody reads the reason, the exit code still says it.
            let _ = writeln!(std::io::stderr(), "{}", problem.sentence(&words));
            ExitCode::from(FAILED)
        }
    }
}

fn run(command: Command, locale: &str, words: &Words) -> Result<(), Problem> {
    match command {
        Command::Assess { file, json } => {
            let (findings, verdict) = workbench::assess_file(&file::read(&file)?)?;
            if json {
                print::json(&AssessView::from(&verdict))
            } else {
                print::text(&print::tag(&workbench::tag(&findings, &verdict, words), words))
            }
        }
        Command::Exposure { file, json, skin, percentile, path } => {
            let person = workbench::person(&skin, &percentile, path.as_deref())?;
            let exposure = workbench::exposure_file(&file::read(&file)?, &person)?;
            if json {
                print::json(&exposure)
            } else {
                print::text(&print::exposure(&exposure, words))
            }
        }
        Command::Readings { file, json } => {
            let readings = workbench::readings_file(&file::read(&file)?)?;
            if json {
                print::json(&readings)
            } else {
                print::text(&print::readings(&readings, words))
            }
        }
        Command::Remedies { file, json } => {
            let (setup, study, figures) = workbench::remedies_file(&file::read(&file)?)?;
            if json {
                print::json(&figures)
            } else {
                print::text(&remedies::page(&setup, &study, words))
            }
        }
        Command::Heaters { types, volts, hertz, json } => {
            let (figures, view) = workbench::heater_figures(types, volts, hertz, words)?;
            if json { print::json(&figures) } else { print::text(&heaters::page(&view, words)) }
        }
        Command::Simulate { units, seed, json } => {
            let figures = workbench::simulated(units, seed)?;
            if json {
                print::json(&figures)
            } else {
                print::text(&print::simulated(&figures, words))
            }
        }
        Command::Demo => demo::play(&mut Workbench::in_memory(surroundings::of(locale))?),
        Command::Inspect { record, supply, access, name } => {
            // A refused start must not leave a record behind.
            let new = guide::new_unit(&supply, access, name, words)?;
            let around = surroundings::of(locale);
            let mut bench = match record {
                Some(path) => Workbench::open(&path, around)?,
                None => Workbench::in_memory(around)?,
            };
            guide::inspect(&mut bench, &new)
        }
        Command::List { record } => {
            file::must_exist(&record)?;
            let bench = Workbench::open(&record, surroundings::of(locale))?;
            print::text(&print::units(&bench.units(None)?, words))
        }
    }
}
