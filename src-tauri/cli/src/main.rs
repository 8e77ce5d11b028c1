//! `coldchassis`: the core without a window, for scripts, tests and people at a terminal.

mod demo;
mod figures;
mod file;
mod guide;
mod heaters;
mod help;
mod print;
mod remedies;
mod surroundings;

use std::io::Write;
use std::path::PathBuf;
use std::process::ExitCode;

use clap::{CommandFactory, FromArgMatches, Parser, Subcommand};
use coldchassis_core::words::Words;
use coldchassis_core::workbench::{self, AssessView, Problem, Workbench};

// What the commands and options do is said by `help`, in the language of whoever asks.
#[derive(Parser)]
#[command(name = "coldchassis", version)]
struct Arguments {
    #[arg(long, global = true)]
    lang: Option<String>,
    #[command(subcommand)]
    command: Command,
}

#[derive(Subcommand)]
enum Command {
    Assess {
        file: PathBuf,
        #[arg(long)]
        json: bool,
    },
    Exposure {
        file: PathBuf,
        #[arg(long)]
        json: bool,
        #[arg(long, default_value = "dry")]
        skin: String,
        #[arg(long, default_value = "5")]
        percentile: String,
        #[arg(long)]
        path: Option<String>,
    },
    Readings {
        file: PathBuf,
        #[arg(long)]
        json: bool,
    },
    Remedies {
        file: PathBuf,
        #[arg(long)]
        json: bool,
    },
    Heaters {
        #[arg(required = true, value_name = "TYPE")]
        types: Vec<String>,
        #[arg(long, default_value_t = 120.0)]
        volts: f64,
        #[arg(long, default_value_t = 60.0)]
        hertz: f64,
        #[arg(long)]
        json: bool,
    },
    Simulate {
        #[arg(long, default_value_t = 100)]
        units: u64,
        #[arg(long, default_value_t = 1)]
        seed: u64,
        #[arg(long)]
        json: bool,
    },
    Demo,
    Inspect {
        #[arg(long)]
        record: Option<PathBuf>,
        #[arg(long, default_value = "120v_60hz")]
        supply: String,
        #[arg(long, value_delimiter = ',')]
        access: Vec<String>,
        #[arg(long, default_value = "")]
        name: String,
    },
    List {
        record: PathBuf,
    },
}

/// Bad input, and anything else that keeps a command from its work.
const FAILED: u8 = 2;

fn main() -> ExitCode {
    // The help that is asked for is in the language that is asked for.
    let locale = asked_locale().unwrap_or_else(system_locale);
    let words = Words::of(&locale);
    let matches = help::spoken(Arguments::command(), &words).get_matches();
    let Arguments { command, .. } = match Arguments::from_arg_matches(&matches) {
        Ok(arguments) => arguments,
        Err(error) => error.exit(),
    };
    match run(command, &locale, &words) {
        Ok(()) => ExitCode::SUCCESS,
        Err(problem) => {
            // Where nobody reads the reason, the exit code still says it.
            let _ = writeln!(std::io::stderr(), "{}", problem.sentence(&words));
            ExitCode::from(FAILED)
        }
    }
}

/// The language of the option, read before anything else is.
fn asked_locale() -> Option<String> {
    let mut arguments = std::env::args_os().skip(1).map(|one| one.to_string_lossy().into_owned());
    while let Some(argument) = arguments.next() {
        match argument.strip_prefix("--lang") {
            Some("") => return arguments.next(),
            Some(rest) if rest.starts_with('=') => return Some(rest.replacen('=', "", 1)),
            _ => {}
        }
    }
    None
}

/// What the system says of the language of messages: the first of these that says anything.
fn system_locale() -> String {
    let of = |name: &&str| std::env::var(name).ok().filter(|locale| !locale.is_empty());
    ["LC_ALL", "LC_MESSAGES", "LANG"].iter().find_map(of).unwrap_or_default()
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
