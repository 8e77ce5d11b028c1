//! What an app does beside its window: classes worked out anew, copies of the record, a look at its file.
//!
//! Each is a piece of work that a shell takes from the workbench, does elsewhere, and hands back, so that
//! no command waits for it.

use super::error::Problem;
use super::queue::rank_of;
use super::session::Workbench;
use crate::inspection::{Findings, Judge, brief};
use crate::store::{Inspection, Snapshots, Stale, Standing, Store, Unit};

/// Units whose class is worked out at once: some 50 ms of work, and as much waiting at most.
const BATCH: u32 = 50;

/// The version of the engine that is built in.
pub(super) const ENGINE: &str = env!("CARGO_PKG_VERSION");

/// Units whose class is to be worked out, with what was found of each.
pub struct Unjudged {
    units: Vec<(Standing, Option<Findings>)>,
}

/// What was worked out.
pub struct Judged {
    standings: Vec<Standing>,
}

impl Unjudged {
    /// How many units.
    pub const fn len(&self) -> usize {
        self.units.len()
    }

    /// Whether nothing is to be done.
    pub const fn is_empty(&self) -> bool {
        self.units.is_empty()
    }

    /// Works the classes out; needs no record.
    pub fn judge(self) -> Judged {
        let mut judge = None;
        let standings = self.units.into_iter().map(|(standing, findings)| match findings {
            Some(findings) => judged(standing, &findings, &mut judge),
            None => standing,
        });
        Judged { standings: standings.collect() }
    }
}

/// A class that nothing is known of yet.
fn blank(unit: &Unit, inspection: &Inspection) -> Standing {
    Standing {
        unit: unit.id,
        inspection: inspection.id,
        engine_version: ENGINE.to_owned(),
        changed_at: inspection.changed_at,
        supply: unit.supply.clone(),
        class: None,
        rank: 0,
        basis: None,
        overlays: Vec::new(),
    }
}

fn judged(blank: Standing, findings: &Findings, judge: &mut Option<Judge>) -> Standing {
    let brief = brief(findings, judge.get_or_insert_with(|| Judge::of(findings)));
    Standing {
        class: Some(brief.treat_as.id().to_owned()),
        rank: rank_of(brief.treat_as),
        basis: Some(brief.basis.id().to_owned()),
        overlays: brief.overlays.iter().map(|overlay| overlay.id().to_owned()).collect(),
        ..blank
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

/// A look at the whole file to be taken.
pub struct LookWork {
    reader: Store,
}

impl LookWork {
    /// Looks at every page.
    ///
    /// # Errors
    /// The record is damaged.
    pub fn run(self) -> Result<(), Problem> {
        Ok(self.reader.check_in_full()?)
    }
}

impl Workbench {
    /// Some of the units whose class is not known or is by another version of the engine.
    ///
    /// # Errors
    /// The record cannot be read.
    pub fn stale_units(&self) -> Result<Unjudged, Problem> {
        let stale = self.store.stale(ENGINE, BATCH)?;
        let units = stale.into_iter().map(|Stale { inspection, .. }| -> Result<_, Problem> {
            let (inspection, unit) = self.find(inspection)?;
            // What cannot be read has no class; it is not asked for again.
            let findings = self.read(&inspection, &unit).ok();
            Ok((blank(&unit, &inspection), findings))
        });
        Ok(Unjudged { units: units.collect::<Result<_, Problem>>()? })
    }

    /// Keeps classes that were worked out. What was changed meanwhile is asked for again.
    ///
    /// # Errors
    /// The record cannot be written.
    pub fn keep_judged(&mut self, judged: &Judged) -> Result<(), Problem> {
        Ok(self.store.keep_standings(&judged.standings)?)
    }

    /// Keeps the class of an inspection that was just worked on.
    pub(super) fn keep_standing(
        &mut self,
        inspection: &Inspection,
        unit: &Unit,
    ) -> Result<(), Problem> {
        // Another inspection may be the one that the class is of.
        let shown = self.store.queue_of(unit.id)?.and_then(|row| row.inspection);
        if shown != Some(inspection.id) {
            return Ok(());
        }
        let findings = self.read(inspection, unit)?;
        let standing = judged(blank(unit, inspection), &findings, &mut self.judge);
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

    /// The look at the file that is due because it was not closed last time; nothing where it was.
    ///
    /// # Errors
    /// The file cannot be opened.
    pub fn look_work(&self) -> Result<Option<LookWork>, Problem> {
        if !self.store.was_cut_off() {
            return Ok(None);
        }
        Ok(self.store.reader()?.map(|reader| LookWork { reader }))
    }
}
