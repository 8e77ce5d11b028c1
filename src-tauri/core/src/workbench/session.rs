//! A workbench: a store with everything a command needs around it.

use std::path::{Path, PathBuf};

use serde_json::{Map, Value, json};
use uuid::Uuid;

use super::commands::text;
use super::error::Problem;
use super::recovery::damaged_beginning;
use super::views::{InspectionView, OtherView, UnitView, inspection_view, unit_view};
use crate::inspection::{Findings, Judge, ReadingId, ValueId, Verdict, assess, read_findings};
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
    pub(super) judge: Option<Judge>,
    /// Where the record is; nowhere when it is only in memory.
    pub(super) record: Option<PathBuf>,
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
        Self { store, around, words, judge: None, record: None }
    }

    /// The units, last changed first; `text` filters by name, place, kind or number.
    ///
    /// # Errors
    /// The record cannot be read.
    pub fn units(&self, text: Option<&str>) -> Result<Vec<UnitView>, Problem> {
        let filter = UnitFilter { text: text.map(str::to_owned), ..UnitFilter::default() };
        self.store.units(&filter)?.iter().map(|unit| self.unit_line(unit)).collect()
    }

    fn unit_line(&self, unit: &Unit) -> Result<UnitView, Problem> {
        let inspection = self.last_with_something(unit.id)?;
        let kept = inspection.as_ref().map(|last| self.store.latest_verdict(last.id));
        Ok(unit_view(unit, inspection.as_ref(), kept.transpose()?.flatten().as_ref()))
    }

    /// The last inspection that anything was found in: one that was only begun, as by a slip of the
    /// finger, must not hide what is known of the unit.
    fn last_with_something(&self, unit: Uuid) -> Result<Option<Inspection>, Problem> {
        let all = self.store.inspections(unit)?;
        if let [newest, _, ..] = all.as_slice() {
            for inspection in &all {
                if self.has_something(inspection.id)? {
                    return Ok(Some(inspection.clone()));
                }
            }
            return Ok(Some(newest.clone()));
        }
        Ok(all.into_iter().next())
    }

    fn has_something(&self, inspection: Uuid) -> Result<bool, Problem> {
        let found = !self.store.findings(inspection)?.is_empty();
        Ok(found || !self.store.photos(inspection)?.is_empty())
    }

    /// The other inspections of a unit that anything was found in, newest first.
    fn others(&self, inspection: &Inspection, unit: &Unit) -> Result<Vec<OtherView>, Problem> {
        let mut others = Vec::new();
        for other in self.store.inspections(unit.id)? {
            if other.id != inspection.id && self.has_something(other.id)? {
                let kept = self.store.latest_verdict(other.id)?;
                others.push(OtherView {
                    at: other.started_at,
                    unit: unit_view(unit, Some(&other), kept.as_ref()),
                });
            }
        }
        Ok(others)
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
        let found = self.store.inspection(inspection)?;
        let found = found.ok_or_else(Problem::no_inspection)?;
        let unit = self.store.unit(found.unit)?.ok_or_else(Problem::no_unit)?;
        Ok((found, unit))
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
        let line = unit_view(unit, Some(inspection), last.as_ref());
        let photos = self.photo_views(inspection.id)?;
        let view = inspection_view(line, &findings, &verdict, &kept, &self.words);
        let can_undo = self.undoable(inspection)?.is_some();
        let others = self.others(inspection, unit)?;
        Ok(InspectionView { photos, can_undo, others, ..view })
    }

    /// The verdict on findings, by the judge that remembers what it worked out for the ones before.
    pub(super) fn verdict_on(&mut self, findings: &Findings) -> Verdict {
        let judge = self.judge.get_or_insert_with(|| Judge::of(findings));
        assess(findings, judge)
    }

    /// The findings of an inspection, put together from the record.
    pub(super) fn read(&self, inspection: &Inspection, unit: &Unit) -> Result<Findings, Problem> {
        let mut file = Map::new();
        if let Some(supply) = &unit.supply {
            file.insert("supply".to_owned(), supply.clone());
        }
        if let Some(access) = &inspection.access {
            file.insert("access".to_owned(), access.clone());
        }
        for finding in self.store.findings(inspection.id)? {
            match finding.key.split_once('.') {
                None => {
                    file.insert(finding.key, finding.value);
                }
                Some((group, key)) => {
                    let group = file.entry(group).or_insert_with(|| json!({}));
                    if let Value::Object(group) = group {
                        group.insert(key.to_owned(), finding.value);
                    }
                }
            }
        }
        // Values that were looked for in vain are the record's own; a findings file has no word for them.
        let left_open = file.remove(LEFT_OPEN);
        let mut findings = read_findings(Value::Object(file))?;
        if let Some(Value::Object(values)) = left_open {
            findings.plate_left_open = values.contains_key("rated");
            findings.left_open = values.keys().filter_map(|value| ValueId::of(value)).collect();
            let readings = values.keys().filter_map(|reading| ReadingId::of(reading));
            findings.readings_left_open = readings.collect();
        }
        Ok(findings)
    }

    /// Stores one human action; it is on the disk when this returns.
    pub(super) fn act(
        &mut self,
        unit: Uuid,
        inspection: Option<Uuid>,
        changes: Vec<Change>,
    ) -> Result<(), Problem> {
        let stamp = self.stamp();
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
        Ok(())
    }

    /// The words of the inspector's language.
    pub const fn words(&self) -> &Words {
        &self.words
    }
}
