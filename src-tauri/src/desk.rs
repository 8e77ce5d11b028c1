//! The one workbench of the app, opened when it is first needed and used by one command at a time.

use std::any::Any;
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::path::PathBuf;
use std::sync::{Mutex, PoisonError};

use coldchassis_core::words::Words;
use coldchassis_core::workbench::{Problem, Workbench};
use tauri::{AppHandle, Manager};

use super::device;
use super::trouble::Trouble;

/// The workbench, or what keeps it shut: every command is answered, with its view or with a sentence.
pub struct Desk {
    folder: Result<PathBuf, Problem>,
    bench: Mutex<Option<Result<Workbench, Problem>>>,
    words: Words,
}

impl Desk {
    /// A desk for the record in a folder; nothing is opened yet.
    pub fn at(folder: Result<PathBuf, Problem>) -> Self {
        Self { folder, bench: Mutex::new(None), words: Words::of(device::LOCALE) }
    }

    /// Runs one command on the workbench.
    ///
    /// # Errors
    /// What the workbench says, or why there is none: the record could not be opened when it was first
    /// needed, or the command failed from inside.
    pub fn with<T>(
        &self,
        command: impl FnOnce(&mut Workbench) -> Result<T, Problem>,
    ) -> Result<T, Trouble> {
        // What a failed command left behind is thrown away below: the lock tells nothing more.
        let mut kept = self.bench.lock().unwrap_or_else(PoisonError::into_inner);
        let result = match kept.get_or_insert_with(|| self.open()) {
            Ok(bench) => catch_unwind(AssertUnwindSafe(|| command(bench))),
            Err(problem) => Ok(Err(problem.clone())),
        };
        let answer = result.unwrap_or_else(|failure| {
            // The record is the only truth: the next command opens it anew.
            *kept = None;
            Err(device::storage(told(failure.as_ref())))
        });
        answer.map_err(|problem| self.trouble(&problem))
    }

    /// Runs the part of a command that needs no workbench, beside the commands that do.
    ///
    /// # Errors
    /// What the part says, or that it failed from inside.
    pub fn beside<T>(&self, part: impl FnOnce() -> Result<T, Problem>) -> Result<T, Trouble> {
        let answer = catch_unwind(AssertUnwindSafe(part));
        let answer = answer.unwrap_or_else(|failure| Err(device::storage(told(failure.as_ref()))));
        answer.map_err(|problem| self.trouble(&problem))
    }

    fn trouble(&self, problem: &Problem) -> Trouble {
        Trouble::of(problem, &self.words)
    }

    fn open(&self) -> Result<Workbench, Problem> {
        let folder = self.folder.clone()?;
        Workbench::open(&device::record(&folder), device::surroundings(&folder)?)
    }
}

/// Opens the record while the web view starts, and clears away what a killed process left behind.
pub fn open_early(app: AppHandle) {
    std::thread::spawn(move || {
        // Whatever the trouble is, the first command of the screens meets it too, and shows it.
        drop(app.state::<Desk>().with(|bench| bench.sweep_photos()));
    });
}

/// What a failure from inside said.
fn told(failure: &(dyn Any + Send)) -> String {
    let text = failure.downcast_ref::<&str>().map(|text| (*text).to_owned());
    text.or_else(|| failure.downcast_ref::<String>().cloned()).unwrap_or_default()
}

#[cfg(test)]
mod tests {
    use coldchassis_core::workbench::{Code, NewUnit};
    use serde_json::json;

    use super::*;

    fn unit() -> NewUnit {
        NewUnit { supply: json!({"volts": 120, "hertz": 60}), ..NewUnit::default() }
    }

    #[test]
    fn a_record_of_another_program_is_answered_every_time_and_left_alone() {
        let folder = tempfile::tempdir().unwrap();
        let record = folder.path().join("record.coldchassis");
        std::fs::write(&record, "a letter to a friend").unwrap();
        let desk = Desk::at(Ok(folder.path().to_owned()));
        for _ in 0..2 {
            let trouble = desk.with(|bench| bench.units(None)).unwrap_err();
            assert_eq!(trouble.code, Code::NotOurFile);
            assert!(trouble.sentence.contains("not a record"), "{}", trouble.sentence);
        }
        assert_eq!(std::fs::read_to_string(&record).unwrap(), "a letter to a friend");
    }

    #[test]
    fn a_missing_folder_is_answered() {
        let desk = Desk::at(Err(device::storage("no home".to_owned())));
        let trouble = desk.with(|bench| bench.units(None)).unwrap_err();
        assert_eq!(trouble.code, Code::Storage);
        assert!(trouble.sentence.contains("no home"), "{}", trouble.sentence);
    }

    #[test]
    fn a_command_that_fails_from_inside_is_answered_and_the_next_one_works() {
        let folder = tempfile::tempdir().unwrap();
        let desk = Desk::at(Ok(folder.path().to_owned()));
        let made = desk.with(|bench| bench.create_unit(&unit())).unwrap();
        let trouble = desk.with::<()>(|_| panic!("broken inside")).unwrap_err();
        assert_eq!(trouble.code, Code::Storage);
        assert!(trouble.sentence.contains("broken inside"), "{}", trouble.sentence);
        assert_eq!(desk.with(|bench| bench.inspection(made.id)).unwrap().id, made.id);
    }

    #[test]
    fn trouble_has_the_shape_that_the_screens_read() {
        let folder = tempfile::tempdir().unwrap();
        let desk = Desk::at(Ok(folder.path().to_owned()));
        let bad = NewUnit { supply: json!({"volts": 0, "hertz": 60}), ..NewUnit::default() };
        let trouble = json!(desk.with(|bench| bench.create_unit(&bad)).unwrap_err());
        assert_eq!(trouble["code"], "bad_input");
        assert_eq!(trouble["field"], "supply.volts");
        assert!(trouble["sentence"].as_str().unwrap().starts_with("supply.volts"));
        assert_eq!(trouble.as_object().unwrap().len(), 3);
    }
}
