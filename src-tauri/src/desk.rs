//! The one workbench of the app, opened when it is first needed and used by one command at a time.

use std::any::Any;
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::path::PathBuf;
use std::sync::{Condvar, Mutex, MutexGuard, PoisonError};
use std::time::Duration;

use coldchassis_core::words::Words;
use coldchassis_core::workbench::{
    Code, Keeper, Problem, Recovery, Surroundings, Turns, Workbench,
};
use tauri::{AppHandle, Manager};

use super::device;
use super::trouble::Trouble;

/// How long to wait before looking again for what is due beside the window, where nobody says that something
/// is: soon enough for what failed to be tried again, seldom enough to cost a phone nothing.
const ROUND: Duration = Duration::from_secs(20);

/// The workbench, or what keeps it shut: every command is answered, with its view or with a sentence.
pub struct Desk {
    folder: Result<PathBuf, Problem>,
    bench: Turns<Kept>,
    /// Who works classes out beside the commands, while there are any to work out. Whoever has this may ask
    /// for the workbench, never the other way round.
    keeper: Mutex<Option<Keeper>>,
    /// Whether something is due beside the window, and who hears of it.
    due: Mutex<bool>,
    bell: Condvar,
    /// What kept the last copy of the record from being made; nothing once one is made.
    uncopied: Mutex<Option<Trouble>>,
    /// Who inspects: whenever the record is opened anew, it is still the same person.
    inspector: Mutex<Inspector>,
}

/// The inspector's name and language, as the screens said them last.
#[derive(Clone)]
struct Inspector {
    author: String,
    language: String,
}

/// The workbench, or why there is none; nothing before it is needed.
type Kept = Option<Result<Workbench, Problem>>;

impl Desk {
    /// A desk for the record in a folder; nothing is opened yet.
    pub fn at(folder: Result<PathBuf, Problem>) -> Self {
        let inspector = Inspector { author: String::new(), language: device::LOCALE.to_owned() };
        Self {
            folder,
            bench: Turns::of(None),
            keeper: Mutex::new(None),
            due: Mutex::new(false),
            bell: Condvar::new(),
            uncopied: Mutex::new(None),
            inspector: Mutex::new(inspector),
        }
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
        self.run(&mut self.bench.now(), command)
    }

    /// As [`Desk::with`], after every command that waits: for work beside the window.
    fn with_later<T>(
        &self,
        work: impl FnOnce(&mut Workbench) -> Result<T, Problem>,
    ) -> Result<T, Trouble> {
        self.run(&mut self.bench.later(), work)
    }

    fn run<T>(
        &self,
        kept: &mut Kept,
        command: impl FnOnce(&mut Workbench) -> Result<T, Problem>,
    ) -> Result<T, Trouble> {
        // Whoever has made room, or put the folder back, is not made to start the app again.
        if matches!(&*kept, Some(Err(problem)) if problem.code == Code::Storage) {
            *kept = None;
        }
        let result = match kept.get_or_insert_with(|| self.open()) {
            Ok(bench) => catch_unwind(AssertUnwindSafe(|| command(bench))),
            Err(problem) => Ok(Err(problem.clone())),
        };
        // Nothing more is written to a damaged file, whoever came upon the damage.
        if let Ok(Err(problem)) = &result
            && problem.code == Code::Damaged
        {
            *kept = Some(Err(problem.clone()));
        }
        let answer = result.unwrap_or_else(|failure| {
            // The record is the only truth: the next command opens it anew.
            *kept = None;
            Err(device::storage(told(failure.as_ref())))
        });
        answer.map_err(|problem| self.trouble(&problem))
    }

    /// Says who inspects, and in which language, from now on: also once the record is opened anew, and where
    /// none can be opened yet.
    ///
    /// # Errors
    /// As [`Desk::with`]; a name that is refused is not taken.
    pub fn set_inspector(&self, author: String, language: String) -> Result<(), Trouble> {
        // The language first, so that this command too is answered in it.
        self.inspector().language.clone_from(&language);
        let told = self.with(|bench| bench.set_inspector(&author, &language));
        if !matches!(&told, Err(trouble) if trouble.code == Code::BadInput) {
            self.inspector().author = author;
        }
        told
    }

    fn language(&self) -> String {
        self.inspector().language.clone()
    }

    fn inspector(&self) -> MutexGuard<'_, Inspector> {
        self.inspector.lock().unwrap_or_else(PoisonError::into_inner)
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
            ask(&Recovery::of(&device::record(&folder), photos, &self.language()))
        })
    }

    /// As [`Desk::recovery`], with the record closed; the next command opens what stands there then, and what
    /// is due of that is done at once.
    ///
    /// # Errors
    /// As [`Desk::recovery`].
    pub fn closed<T>(
        &self,
        ask: impl FnOnce(&Recovery) -> Result<T, Problem>,
    ) -> Result<T, Trouble> {
        // Held until it is done, so that nobody works on what is being put away.
        let mut keeper = self.keeper.lock().unwrap_or_else(PoisonError::into_inner);
        *keeper = None;
        let mut kept = self.bench.now();
        *kept = None;
        let answer = self.recovery(ask);
        self.wake();
        answer
    }

    /// Has what is due beside the window done at once, such as classes that came in a bundle.
    pub fn wake(&self) {
        *self.due.lock().unwrap_or_else(PoisonError::into_inner) = true;
        self.bell.notify_one();
    }

    /// Waits until something is due beside the window, or a round is over.
    fn rest(&self) {
        let due = self.due.lock().unwrap_or_else(PoisonError::into_inner);
        let rested = self.bell.wait_timeout_while(due, ROUND, |due| !*due);
        let (mut due, _) = rested.unwrap_or_else(PoisonError::into_inner);
        *due = false;
    }

    /// Takes the record off the desk, because it was found damaged: every command says so from now on.
    fn shut(&self, problem: Problem) {
        *self.bench.now() = Some(Err(problem));
    }

    /// Does what is due beside the window: a look at a file that was not closed, classes, a copy.
    fn keep_up(&self, first: bool) -> Result<(), Trouble> {
        if first && let Some(look) = self.with_later(|bench| bench.look_work())? {
            self.long(|| look.run())?;
        }
        while self.judge_some()? {}
        self.copy_if_due()
    }

    /// Copies the record where that is due. Nobody waits for it, so what keeps it from being done is kept for whoever
    /// looks at the copies.
    fn copy_if_due(&self) -> Result<(), Trouble> {
        let copied = match self.with_later(|bench| bench.snapshot_work()) {
            Ok(Some(copy)) => self.long(|| copy.run()),
            Ok(None) => return Ok(()),
            Err(trouble) => Err(trouble),
        };
        *self.uncopied.lock().unwrap_or_else(PoisonError::into_inner) = copied.clone().err();
        copied
    }

    /// What kept the last copy of the record from being made; nothing once one is made.
    pub fn copy_trouble(&self) -> Option<Trouble> {
        self.uncopied.lock().unwrap_or_else(PoisonError::into_inner).clone()
    }

    /// Works some classes out; tells whether there were any. Nothing of it is held up by a command, nor a
    /// command by more than the writing of a few rows.
    fn judge_some(&self) -> Result<bool, Trouble> {
        let mut kept = self.keeper.lock().unwrap_or_else(PoisonError::into_inner);
        let keeper = match kept.take() {
            None => self.with_later(|bench| bench.keeper())?,
            there => there,
        };
        // Of a record in memory nothing comes from elsewhere.
        let Some(mut keeper) = keeper else { return Ok(false) };
        let judged = self.beside(|| keeper.judge())?;
        if judged.is_empty() {
            return Ok(false);
        }
        self.with_later(|bench| bench.keep_judged(&judged))?;
        *kept = Some(keeper);
        Ok(true)
    }

    /// Does what is due beside the window for as long as there is one.
    fn keep_on(&self) {
        let mut first = true;
        loop {
            // What fails now is tried again; what is damaged, the next command says.
            drop(self.keep_up(first));
            first = false;
            self.rest();
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
        Trouble::of(problem, &Words::of(&self.language()))
    }

    fn open(&self) -> Result<Workbench, Problem> {
        let folder = self.folder.clone()?;
        let Inspector { author, language } = self.inspector().clone();
        let around = Surroundings { locale: language.clone(), ..device::surroundings(&folder)? };
        let mut bench = Workbench::open(&device::record(&folder), around)?;
        // A name that does not fit was said while there was nobody to refuse it: nobody's, then.
        bench.set_inspector(&author, &language).ok();
        Ok(bench)
    }
}

/// Opens the record while the web view starts, and clears away what a killed process left behind.
pub fn open_early(app: AppHandle) {
    std::thread::spawn(move || {
        // Whatever the trouble is, the first command of the screens meets it too, and shows it.
        let desk = app.state::<Desk>();
        drop(desk.with(|bench| bench.sweep()));
        desk.keep_on();
    });
}

/// What a failure from inside said.
fn told(failure: &(dyn Any + Send)) -> String {
    let text = failure.downcast_ref::<&str>().map(|text| (*text).to_owned());
    text.or_else(|| failure.downcast_ref::<String>().cloned()).unwrap_or_default()
}

#[cfg(test)]
mod tests;
