//! The one workbench of the app, opened when it is first needed and used by one command at a time.

use std::any::Any;
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::path::PathBuf;
use std::sync::{Mutex, PoisonError};
use std::time::Duration;

use coldchassis_core::words::Words;
use coldchassis_core::workbench::{Code, Problem, Recovery, Workbench};
use tauri::{AppHandle, Manager};

use super::device;
use super::trouble::Trouble;

/// How long to wait before looking again for what is due beside the window: soon enough for a class that
/// came in a bundle, seldom enough to cost a phone nothing.
const ROUND: Duration = Duration::from_secs(20);

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

    /// Asks for the way back from a damaged record, whether the record can be opened or not.
    ///
    /// # Errors
    /// There is no folder, or what the question says.
    pub fn recovery<T>(
        &self,
        ask: impl FnOnce(&Recovery) -> Result<T, Problem>,
    ) -> Result<T, Trouble> {
        self.beside(|| {
            let folder = self.folder.clone()?;
            let photos = Some(device::photos(&folder));
            ask(&Recovery::of(&device::record(&folder), photos, device::LOCALE))
        })
    }

    /// As [`Desk::recovery`], with the record closed; the next command opens what stands there then.
    ///
    /// # Errors
    /// As [`Desk::recovery`].
    pub fn closed<T>(
        &self,
        ask: impl FnOnce(&Recovery) -> Result<T, Problem>,
    ) -> Result<T, Trouble> {
        let mut kept = self.bench.lock().unwrap_or_else(PoisonError::into_inner);
        *kept = None;
        self.recovery(ask)
    }

    /// Takes the record off the desk, because it was found damaged: every command says so from now on.
    fn shut(&self, problem: Problem) {
        let mut kept = self.bench.lock().unwrap_or_else(PoisonError::into_inner);
        *kept = Some(Err(problem));
    }

    /// Does what is due beside the window: a look at a file that was not closed, classes, a copy.
    fn keep_up(&self, first: bool) -> Result<(), Trouble> {
        if first && let Some(look) = self.with(|bench| bench.look_work())? {
            self.long(|| look.run())?;
        }
        loop {
            let work = self.with(|bench| bench.stale_units())?;
            if work.is_empty() {
                break;
            }
            let judged = self.beside(|| Ok(work.judge()))?;
            self.with(|bench| bench.keep_judged(&judged))?;
        }
        match self.with(|bench| bench.snapshot_work())? {
            Some(copy) => self.long(|| copy.run()),
            None => Ok(()),
        }
    }

    /// Runs long work that reads the whole file.
    fn long(&self, work: impl FnOnce() -> Result<(), Problem>) -> Result<(), Trouble> {
        let mut damage = None;
        let done = self.beside(|| {
            work().inspect_err(|problem| {
                damage = (problem.code == Code::Damaged).then(|| problem.clone());
            })
        });
        if let Some(problem) = damage {
            self.shut(problem);
        }
        done
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
        let desk = app.state::<Desk>();
        drop(desk.with(|bench| bench.sweep_photos()));
        let mut first = true;
        loop {
            // What fails now is tried again; what is damaged, the next command says.
            drop(desk.keep_up(first));
            first = false;
            std::thread::sleep(ROUND);
        }
    });
}

/// What a failure from inside said.
fn told(failure: &(dyn Any + Send)) -> String {
    let text = failure.downcast_ref::<&str>().map(|text| (*text).to_owned());
    text.or_else(|| failure.downcast_ref::<String>().cloned()).unwrap_or_default()
}

#[cfg(test)]
mod tests {
    use coldchassis_core::words::Message;
    use coldchassis_core::workbench::NewUnit;
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

    /// Twenty inspections, so that a copy of the record is made beside them.
    fn shop(desk: &Desk) {
        for _ in 0..20 {
            desk.with(|bench| bench.create_unit(&unit())).unwrap();
        }
        desk.keep_up(true).unwrap();
        assert_eq!(desk.recovery(|recovery| recovery.snapshots()).unwrap().len(), 1);
    }

    #[test]
    fn a_damaged_record_is_answered_and_a_copy_of_it_put_back() {
        let folder = tempfile::tempdir().unwrap();
        let desk = Desk::at(Ok(folder.path().to_owned()));
        shop(&desk);
        let record = folder.path().join("record.coldchassis");
        desk.closed(|_| {
            let mut bytes = std::fs::read(&record).unwrap();
            bytes[..100].fill(0);
            std::fs::write(&record, bytes).unwrap();
            Ok(())
        })
        .unwrap();
        let trouble = desk.with(|bench| bench.units(None)).unwrap_err();
        assert_eq!(trouble.code, Code::Damaged, "{trouble:?}");
        desk.closed(|recovery| recovery.restore(Some(1), true)).unwrap();
        assert_eq!(desk.with(|bench| bench.units(None)).unwrap().len(), 20);
    }

    #[test]
    fn damage_that_is_found_beside_the_window_shuts_the_record() {
        let folder = tempfile::tempdir().unwrap();
        let desk = Desk::at(Ok(folder.path().to_owned()));
        shop(&desk);
        let found = Problem::new(Code::Damaged, Message::new("error-damaged"));
        desk.long(|| Err(found)).unwrap_err();
        let trouble = desk.with(|bench| bench.units(None)).unwrap_err();
        assert_eq!(trouble.code, Code::Damaged);
        desk.closed(|recovery| recovery.restore(Some(1), true)).unwrap();
        desk.with(|bench| bench.units(None)).unwrap();
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
