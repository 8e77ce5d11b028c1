//! What an app does beside its window: classes worked out anew, copies of the record, a look at its file, and
//! what an ended process left cleared away.
//!
//! Each is a piece of work that a shell takes from the workbench, does elsewhere, and hands back, so that
//! no command waits for it.

use std::time::{Duration, SystemTime};

use uuid::Uuid;

use super::error::Problem;
use super::kept;
use super::queue::rank_of;
use super::ready::{Proving, proving};
use super::session::Workbench;
use crate::inspection::{Findings, Judge, brief};
use crate::remedy::Bench;
use crate::store::{Inspection, Snapshots, Stale, Standing, Store, Unit, sweep};

/// Units whose class is worked out at once: few, for a command that comes meanwhile waits until what came
/// of them is written.
const BATCH: u32 = 8;
/// So many units later what was written is moved into the record's file, which a command would have to do
/// otherwise: SQLite makes whoever writes its thousandth page do it.
const TIDY: usize = 80;

/// How old a file has to be before it may be swept: longer than any write of another process.
const SWEPT_AFTER: Duration = Duration::from_secs(3600);

/// The version of the engine that is built in.
pub(super) const ENGINE: &str = env!("CARGO_PKG_VERSION");

/// Works classes out beside the workbench, reading by a connection of its own: only what comes of it has
/// to be kept by the workbench.
pub struct Keeper {
    store: Store,
    judge: Option<Judge>,
    bench: Bench,
    since_tidied: usize,
}

/// What was worked out.
pub struct Judged {
    standings: Vec<Standing>,
}

/// A unit's standing with no class yet, and what that is worked out from.
struct Facts {
    blank: Standing,
    /// Nothing where what was found cannot be read.
    findings: Option<Findings>,
    /// Nothing where no repair was chosen, or what was cannot be read.
    proving: Option<Proving>,
}

impl Judged {
    /// How many units.
    pub const fn len(&self) -> usize {
        self.standings.len()
    }

    /// Whether nothing was to be done.
    pub const fn is_empty(&self) -> bool {
        self.standings.is_empty()
    }
}

impl Keeper {
    /// Works some of the classes out that are not known or are by another version of the engine; none where
    /// there are no such.
    ///
    /// # Errors
    /// The record cannot be read.
    pub fn judge(&mut self) -> Result<Judged, Problem> {
        if self.since_tidied >= TIDY {
            self.store.tidy()?;
            self.since_tidied = 0;
        }
        // In one transaction, so that each place in the log is that of the findings beside it.
        let due = self.store.reading(due)?;
        self.since_tidied += due.len();
        Ok(judged(due, &mut self.judge, &mut self.bench))
    }
}

/// What is known of some units whose class is due.
fn due(store: &Store) -> Result<Vec<Facts>, Problem> {
    let stale = store.stale(ENGINE, BATCH)?;
    stale.into_iter().map(|Stale { inspection, .. }| facts(store, inspection)).collect()
}

/// What the class is worked out from of a unit that is shown by an inspection.
fn facts(store: &Store, inspection: Uuid) -> Result<Facts, Problem> {
    let (inspection, unit) = kept::find(store, inspection)?;
    Ok(Facts {
        blank: blank(&unit, &inspection, store.place_of(unit.id)?),
        // What cannot be read has no class; it is not asked for again.
        findings: kept::read(store, &inspection, &unit).ok(),
        proving: proving(store, unit.id).ok().flatten(),
    })
}

fn judged(facts: Vec<Facts>, judge: &mut Option<Judge>, bench: &mut Bench) -> Judged {
    Judged { standings: facts.into_iter().map(|facts| facts.judged(judge, bench)).collect() }
}

impl Facts {
    fn judged(self, judge: &mut Option<Judge>, bench: &mut Bench) -> Standing {
        let proven = self.proving.is_some_and(|proving| proving.prove(bench, judge).is_ok());
        let blank = Standing { proven, ..self.blank };
        let Some(findings) = self.findings else { return blank };
        let brief = brief(&findings, judge.get_or_insert_with(|| Judge::of(&findings)));
        Standing {
            class: Some(brief.treat_as.id().to_owned()),
            rank: rank_of(brief.treat_as),
            basis: Some(brief.basis.id().to_owned()),
            overlays: brief.overlays.iter().map(|overlay| overlay.id().to_owned()).collect(),
            ..blank
        }
    }
}

/// A class that nothing is known of yet, of a unit whose last event is at a place in the log.
fn blank(unit: &Unit, inspection: &Inspection, place: i64) -> Standing {
    Standing {
        unit: unit.id,
        inspection: inspection.id,
        engine_version: ENGINE.to_owned(),
        place,
        supply: unit.supply.clone(),
        class: None,
        rank: 0,
        basis: None,
        overlays: Vec::new(),
        proven: false,
    }
}

/// A copy of the record to be made.
pub struct SnapshotWork {
    reader: Store,
    into: Snapshots,
}

impl SnapshotWork {
    /// Makes the copy and checks it in full.
    ///
    /// # Errors
    /// The record is damaged, or there is no room; the copies that are there stay.
    pub fn run(self) -> Result<(), Problem> {
        self.reader.take_snapshot(&self.into)?;
        Ok(())
    }
}

/// A look at the whole file to be taken, and the end of a deletion that was cut off.
pub struct LookWork {
    reader: Store,
    of: Snapshots,
}

impl LookWork {
    /// Looks at every page. What was deleted may still stand in SQLite's log and in older copies, where the
    /// process was ended right after: it goes.
    ///
    /// # Errors
    /// The record is damaged, or the copies cannot be made anew.
    pub fn run(self) -> Result<(), Problem> {
        self.reader.check_in_full()?;
        self.reader.checkpoint()?;
        if self.reader.has_outdated(&self.of)? {
            self.reader.renew_snapshots(&self.of)?;
        }
        Ok(())
    }
}

impl Workbench {
    /// Who works classes out beside this workbench; nobody where the record is only in memory.
    ///
    /// # Errors
    /// The file cannot be opened.
    pub fn keeper(&self) -> Result<Option<Keeper>, Problem> {
        let keeper =
            |store| Keeper { store, judge: None, bench: Bench::default(), since_tidied: 0 };
        Ok(self.store.reader()?.map(keeper))
    }

    /// Works some of the classes out that are due, for a shell that does one thing at a time; tells of how
    /// many units.
    ///
    /// # Errors
    /// The record cannot be read or written.
    pub fn keep_up(&mut self) -> Result<usize, Problem> {
        let judged = judged(due(&self.store)?, &mut self.judge, &mut self.repairs);
        self.keep_judged(&judged)?;
        Ok(judged.len())
    }

    /// Keeps classes that were worked out. What was changed meanwhile is asked for again.
    ///
    /// # Errors
    /// The record cannot be written.
    pub fn keep_judged(&mut self, judged: &Judged) -> Result<(), Problem> {
        Ok(self.store.keep_standings(&judged.standings)?)
    }

    /// Keeps the class of a unit that was just worked on.
    pub(super) fn keep_standing(&mut self, unit: Uuid) -> Result<(), Problem> {
        let Some(shown) = self.store.queue_of(unit)?.and_then(|row| row.inspection) else {
            return Ok(());
        };
        let facts = facts(&self.store, shown)?;
        let standing = facts.judged(&mut self.judge, &mut self.repairs);
        Ok(self.store.keep_standings(&[standing])?)
    }

    /// The copy of the record that is due; nothing where none is, or the record is only in memory.
    ///
    /// # Errors
    /// The record or the folder of copies cannot be read.
    pub fn snapshot_work(&self) -> Result<Option<SnapshotWork>, Problem> {
        let Some(into) = self.record.as_deref().map(Snapshots::of) else {
            return Ok(None);
        };
        if !self.store.is_snapshot_due(&into)? {
            return Ok(None);
        }
        Ok(self.store.reader()?.map(|reader| SnapshotWork { reader, into }))
    }

    /// The look at the file that is due because it was not closed last time, or because a copy holds what was
    /// deleted since; nothing where neither is so.
    ///
    /// # Errors
    /// The file or the folder of copies cannot be read.
    pub fn look_work(&self) -> Result<Option<LookWork>, Problem> {
        let Some(of) = self.record.as_deref().map(Snapshots::of) else {
            return Ok(None);
        };
        // A deletion empties the log, so that a file may look closed that was not.
        if !self.store.was_cut_off() && !self.store.has_outdated(&of)? {
            return Ok(None);
        }
        Ok(self.store.reader()?.map(|reader| LookWork { reader, of }))
    }

    /// Removes files that a process which was ended left behind: never finished, or photos that no row
    /// names. For a shell to call when it has started. Tells how many went.
    ///
    /// # Errors
    /// The record or a folder cannot be read, or a file not be removed.
    pub fn sweep(&self) -> Result<usize, Problem> {
        let now = u64::try_from((self.around.clock)()).unwrap_or_default();
        let now = SystemTime::UNIX_EPOCH.checked_add(Duration::from_millis(now));
        let before = now.and_then(|now| now.checked_sub(SWEPT_AFTER));
        let before = before.unwrap_or(SystemTime::UNIX_EPOCH);
        let record = self.record.as_deref();
        let unfinished = record.map_or(Ok(0), |record| sweep(record, before))?;
        Ok(unfinished + self.sweep_photos(before)?)
    }
}
