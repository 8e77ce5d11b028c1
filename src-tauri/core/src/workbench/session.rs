//! A workbench: a store with everything a command needs around it.

use std::path::{Path, PathBuf};

use uuid::Uuid;

use super::commands::text;
use super::error::Problem;
use super::kept;
use super::queue::unit_of;
use super::recovery::damaged_beginning;
use super::search_words::Vocabulary;
use super::views::{InspectionView, OtherView, UnitView, inspection_view, unit_view};
use crate::arrangement::Arrangement;
use crate::hazard::Grid;
use crate::inspection::{Findings, Foreseen, Judge, Verdict, assess_next, brief};
use crate::remedy::Bench;
use crate::store::{Action, Change, Inspection, Stamp, Store, StoreError, Unit, UnitFilter};
use crate::words::Words;

/// What a run depends on besides its input; passed in, so that any run can be repeated.
pub struct Surroundings {
    /// The time, UTC milliseconds.
    pub clock: Box<dyn Fn() -> i64 + Send>,
    /// New ids: UUID v7, each call another one.
    pub ids: Box<dyn FnMut() -> Uuid + Send>,
    /// This device; undo takes back only what was done on it.
    pub device: String,
    /// The folder that photos are kept in; without one, photos are refused.
    pub photos: Option<PathBuf>,
    /// The inspector's name; may be empty.
    pub author: String,
    /// The language, such as `en`.
    pub locale: String,
}

/// The group of findings that say a value was looked for in vain.
pub(super) const LEFT_OPEN: &str = "left_open";

/// Takes commands, keeps the record, gives views.
pub struct Workbench {
    pub(super) store: Store,
    pub(super) around: Surroundings,
    pub(super) words: Words,
    /// What findings are called in the language of the words.
    pub(super) vocabulary: Vocabulary,
    pub(super) judge: Option<Judge>,
    foreseen: Foreseen,
    said: Option<Said>,
    /// What is known of repairs of the unit that was asked about last.
    pub(super) repairs: Bench,
    /// Where the record is; nowhere when it is only in memory.
    pub(super) record: Option<PathBuf>,
}

/// The verdict that was said last, with the grid of what it is of once that was asked for.
struct Said {
    findings: Findings,
    verdict: Verdict,
    grid: Option<(Arrangement, Grid)>,
}

impl Workbench {
    /// Opens the record at `path`, making it where there is none.
    ///
    /// # Errors
    /// The file is of a newer version, not one of ours, or cannot be read; it is left as it was.
    pub fn open(path: &Path, around: Surroundings) -> Result<Self, Problem> {
        let store = match Store::open(path) {
            Err(StoreError::NotOurFile) => {
                Err(damaged_beginning(path).unwrap_or_else(|| StoreError::NotOurFile.into()))
            }
            opened => opened.map_err(Problem::from),
        };
        Ok(Self { record: Some(path.to_owned()), ..Self::over(store?, around) })
    }

    /// A record that is gone when it is dropped.
    ///
    /// # Errors
    /// The database refuses.
    pub fn in_memory(around: Surroundings) -> Result<Self, Problem> {
        Ok(Self::over(Store::open_in_memory()?, around))
    }

    fn over(store: Store, around: Surroundings) -> Self {
        let words = Words::of(&around.locale);
        Self {
            store,
            around,
            vocabulary: Vocabulary::of(&words),
            words,
            judge: None,
            foreseen: Foreseen::default(),
            said: None,
            repairs: Bench::default(),
            record: None,
        }
    }

    /// The units, last changed first; `text` filters by name, place, kind or number.
    ///
    /// # Errors
    /// The record cannot be read.
    pub fn units(&self, text: Option<&str>) -> Result<Vec<UnitView>, Problem> {
        let filter = UnitFilter { text: text.map(str::to_owned), ..UnitFilter::default() };
        Ok(self.store.rows(&filter)?.into_iter().map(unit_of).collect())
    }

    /// The other inspections of a unit that anything was found in, newest first.
    fn others(&mut self, inspection: &Inspection, unit: &Unit) -> Result<Vec<OtherView>, Problem> {
        let mut others = Vec::new();
        for other in self.store.inspections(unit.id)? {
            if other.id != inspection.id && kept::has_something(&self.store, other.id)? {
                others.push(OtherView { at: other.started_at, unit: self.other(&other, unit)? });
            }
        }
        Ok(others)
    }

    /// Another inspection of a unit, with its class: worked out where none was kept, or of something else.
    fn other(&mut self, other: &Inspection, unit: &Unit) -> Result<UnitView, Problem> {
        let kept = self.store.latest_verdict(other.id)?;
        let place = self.store.place_in(other)?;
        let line = unit_view(unit, Some(other), kept.as_ref(), place);
        // What cannot be read has no class.
        let (None, Ok(findings)) = (&line.treat_as, self.read(other, unit)) else {
            return Ok(line);
        };
        let found = brief(&findings, self.judge.get_or_insert_with(|| Judge::of(&findings)));
        Ok(UnitView {
            signal: Some(found.treat_as.signal()),
            treat_as: Some(found.treat_as.id().to_owned()),
            basis: Some(found.basis.id().to_owned()),
            ..line
        })
    }

    /// An inspection as it stands: what was found, the verdict, what to ask next.
    ///
    /// # Errors
    /// There is no such inspection, or the record cannot be read.
    pub fn inspection(&mut self, inspection: Uuid) -> Result<InspectionView, Problem> {
        let (inspection, unit) = self.find(inspection)?;
        self.view(&inspection, &unit)
    }

    pub(super) fn find(&self, inspection: Uuid) -> Result<(Inspection, Unit), Problem> {
        kept::find(&self.store, inspection)
    }

    pub(super) fn view(
        &mut self,
        inspection: &Inspection,
        unit: &Unit,
    ) -> Result<InspectionView, Problem> {
        let findings = self.read(inspection, unit)?;
        let verdict = self.verdict_on(&findings);
        let kept = self.store.findings(inspection.id)?;
        let last = self.store.latest_verdict(inspection.id)?;
        let place = self.store.place_in(inspection)?;
        let line = unit_view(unit, Some(inspection), last.as_ref(), place);
        let photos = self.photo_views(inspection.id)?;
        let mut view = inspection_view(line, &findings, &verdict, &kept, &self.words);
        // What was kept may be of another version, or not be there yet of what came in a bundle.
        view.unit.treat_as = Some(view.verdict.treat_as.to_owned());
        view.unit.signal = Some(view.tag.signal);
        view.unit.basis = Some(view.tag.basis.to_owned());
        let can_undo = self.undoable(inspection)?.is_some();
        let others = self.others(inspection, unit)?;
        Ok(InspectionView { photos, can_undo, others, ..view })
    }

    /// The verdict on findings, by the judge that remembers what it worked out for the ones before.
    pub(super) fn verdict_on(&mut self, findings: &Findings) -> Verdict {
        let judge = self.judge.get_or_insert_with(|| Judge::of(findings));
        // Several screens are about one inspection, one after the other: what was said last is said again.
        if let Some(said) = self.said.as_ref().filter(|said| said.findings == *findings) {
            judge.turn_to(findings);
            return said.verdict.clone();
        }
        let verdict = assess_next(findings, judge, &mut self.foreseen);
        let said = Said { findings: findings.clone(), verdict: verdict.clone(), grid: None };
        self.said = Some(said);
        verdict
    }

    /// The grid of an arrangement that the verdict last said is of.
    pub(super) fn grid_of_last(
        &mut self,
        findings: &Findings,
        arrangement: &'static Arrangement,
    ) -> Grid {
        let judge = self.judge.get_or_insert_with(|| Judge::of(findings));
        let kept = self.said.as_mut().filter(|said| said.findings == *findings);
        let Some(said) = kept else { return judge.grid(arrangement) };
        match &said.grid {
            Some((of, grid)) if *of == *arrangement => grid.clone(),
            _ => {
                let grid = judge.grid(arrangement);
                said.grid = Some((*arrangement, grid.clone()));
                grid
            }
        }
    }

    /// The findings of an inspection, put together from the record.
    pub(super) fn read(&self, inspection: &Inspection, unit: &Unit) -> Result<Findings, Problem> {
        kept::read(&self.store, inspection, unit)
    }

    /// Stores one human action; it is on the disk when this returns.
    pub(super) fn act(
        &mut self,
        unit: Uuid,
        inspection: Option<Uuid>,
        changes: Vec<Change>,
    ) -> Result<(), Problem> {
        self.act_after(unit, inspection, changes, 0)
    }

    /// As [`Workbench::act`], at a time that is no earlier than another, whatever the clock says.
    pub(super) fn act_after(
        &mut self,
        unit: Uuid,
        inspection: Option<Uuid>,
        changes: Vec<Change>,
        earliest: i64,
    ) -> Result<(), Problem> {
        let now = self.stamp();
        let stamp = Stamp { at: now.at.max(earliest), ..now };
        let action = Action { unit, inspection, changes, demo: false };
        self.store.append(&stamp, &action, &mut self.around.ids)?;
        Ok(())
    }

    pub(super) fn stamp(&mut self) -> Stamp {
        Stamp {
            at: (self.around.clock)(),
            device: self.around.device.clone(),
            author: self.around.author.clone(),
            intent: (self.around.ids)(),
        }
    }

    /// Says who inspects, and in which language; what was found before keeps the name it has.
    ///
    /// # Errors
    /// The name is too long.
    pub fn set_inspector(&mut self, author: &str, locale: &str) -> Result<(), Problem> {
        self.around.author = text("author", author)?;
        locale.clone_into(&mut self.around.locale);
        self.words = Words::of(locale);
        self.vocabulary = Vocabulary::of(&self.words);
        Ok(())
    }

    /// The words of the inspector's language.
    pub const fn words(&self) -> &Words {
        &self.words
    }
}
