//! What an inspector can do: each command is one human action, stored before it is answered.

use serde::Deserialize;
use serde_json::{Value, json};
use uuid::Uuid;

use super::error::Problem;
use super::question_views::RATED;
use super::session::{LEFT_OPEN, Workbench};
use super::views::{InspectionView, made_of};
use crate::fields::FieldError;
use crate::inspection::{
    CANT_TELL, Question, ReadingId, ValueId, read_answer, read_findings, read_reading, read_value,
};
use crate::store::{Change, Verdict};
use crate::words::Message;

/// The longest name or place.
const LONGEST_TEXT: usize = 200;

/// A unit to be inspected; only the supply has to be given.
#[derive(Clone, Debug, Default, Deserialize, ts_rs::TS)]
#[serde(deny_unknown_fields)]
pub struct NewUnit {
    /// What people call it.
    #[serde(default)]
    pub name: String,
    /// Where it stands.
    #[serde(default)]
    pub place: String,
    /// What kind it is: an answer to the question `kind`.
    #[serde(default)]
    pub kind: Option<String>,
    /// What it is to be plugged into.
    pub supply: Value,
    /// How far the inspector may go.
    #[serde(default)]
    pub access: Vec<String>,
}

impl NewUnit {
    /// Refuses what does not fit, before anything is stored.
    ///
    /// # Errors
    /// Bad input, by its field.
    pub fn check(&self) -> Result<(), Problem> {
        check(json!({"supply": self.supply, "access": self.access}))?;
        text("name", &self.name)?;
        text("place", &self.place)?;
        if let Some(kind) = &self.kind {
            read_answer(Question::Kind, json!(kind))?;
        }
        Ok(())
    }
}

impl Workbench {
    /// Makes a unit and starts its first inspection.
    ///
    /// # Errors
    /// Bad input, by its field; nothing is stored then.
    pub fn create_unit(&mut self, new: &NewUnit) -> Result<InspectionView, Problem> {
        new.check()?;
        let (unit, inspection) = ((self.around.ids)(), (self.around.ids)());
        let number = self.store.next_number()?;
        let mut changes = vec![
            Change::UnitCreated { number },
            Change::UnitName(text("name", &new.name)?),
            Change::UnitPlace(text("place", &new.place)?),
            Change::UnitSupply(new.supply.clone()),
            Change::InspectionStarted,
            Change::InspectionAccess(new.access.clone()),
        ];
        if let Some(kind) = &new.kind {
            read_answer(Question::Kind, json!(kind))?;
            if named_kind(&json!(kind)).is_some() {
                changes.push(Change::UnitKind(kind.clone()));
            }
            changes.push(found("answers.kind", json!(kind)));
        }
        self.act(unit, Some(inspection), changes)?;
        self.settled(inspection)
    }

    /// Starts another inspection of a unit, such as the one after a repair.
    ///
    /// # Errors
    /// There is no such unit, or the access is bad.
    pub fn start_inspection(
        &mut self,
        unit: Uuid,
        access: &[String],
    ) -> Result<InspectionView, Problem> {
        let supply = self.store.unit(unit)?.ok_or_else(Problem::no_unit)?.supply;
        check(json!({"supply": supply, "access": access}))?;
        let inspection = (self.around.ids)();
        let changes = vec![Change::InspectionStarted, Change::InspectionAccess(access.to_vec())];
        // The last one is the one that counts: a clock that is behind, or was ahead on another device, must not
        // make it an earlier one.
        let all = self.store.inspections(unit)?;
        let newest = all.iter().map(|one| one.started_at).max();
        let earliest = newest.map_or(0, |newest| newest.saturating_add(1));
        self.act_after(unit, Some(inspection), changes, earliest)?;
        self.settled(inspection)
    }

    /// Answers a question, or changes the answer.
    ///
    /// # Errors
    /// The answer does not fit the question; what was answered before stays.
    pub fn answer(
        &mut self,
        inspection: Uuid,
        question: &str,
        answer: Value,
    ) -> Result<InspectionView, Problem> {
        let path = format!("answers.{question}");
        let known = Question::of(question).ok_or_else(|| unknown(&path, Question::IDS))?;
        read_answer(known, answer.clone())?;
        let mut changes = vec![found(&path, answer.clone())];
        if let (Question::Kind, Some(kind)) = (known, named_kind(&answer)) {
            changes.push(Change::UnitKind(kind.to_owned()));
        }
        self.set_all(inspection, changes)
    }

    /// Says that a value was looked for in vain, or a reading could not be taken, so that it is not asked
    /// again.
    ///
    /// # Errors
    /// There is no such value, reading or inspection.
    pub fn leave_open(&mut self, inspection: Uuid, value: &str) -> Result<InspectionView, Problem> {
        let reading = ReadingId::of(value).filter(|reading| reading.probes().is_some());
        if reading.is_some() {
            let path = format!("readings.{value}");
            return self.replace(inspection, &path, &format!("{LEFT_OPEN}.{value}"), json!(true));
        }
        let path = format!("values.{value}");
        let known = path == RATED || ValueId::of(value).is_some();
        if !known {
            return Err(unknown(&path, ValueId::IDS));
        }
        self.replace(inspection, &path, &format!("{LEFT_OPEN}.{value}"), json!(true))
    }

    /// Keeps a value read off a part or measured.
    ///
    /// # Errors
    /// The value does not fit; what was kept before stays.
    pub fn set_value(
        &mut self,
        inspection: Uuid,
        value: &str,
        reading: Value,
    ) -> Result<InspectionView, Problem> {
        let path = format!("values.{value}");
        let known = ValueId::of(value).ok_or_else(|| unknown(&path, ValueId::IDS))?;
        read_value(known, reading.clone())?;
        self.replace(inspection, &format!("{LEFT_OPEN}.{value}"), &path, reading)
    }

    /// Keeps a finding in the place of another that it contradicts, such as a value once left open.
    fn replace(
        &mut self,
        inspection: Uuid,
        other: &str,
        path: &str,
        value: Value,
    ) -> Result<InspectionView, Problem> {
        self.find(inspection)?;
        let kept = self.store.findings(inspection)?;
        let other = kept.into_iter().find(|kept| kept.key == other);
        let gone =
            other.map(|other| Change::Withdrawn { subject: format!("finding.{}", other.key) });
        self.set_all(inspection, gone.into_iter().chain([found(path, value)]).collect())
    }

    /// Keeps what the rating plate says.
    ///
    /// # Errors
    /// A figure does not fit.
    pub fn set_rated(&mut self, inspection: Uuid, rated: Value) -> Result<InspectionView, Problem> {
        let left_open = format!("{LEFT_OPEN}.rated");
        self.set_whole(inspection, json!({"values": {"rated": rated}}), &left_open, RATED, rated)
    }

    /// Keeps the tubes as written.
    ///
    /// # Errors
    /// The list is too long, or a type is not a short text.
    pub fn set_tubes(&mut self, inspection: Uuid, tubes: Value) -> Result<InspectionView, Problem> {
        let cannot_tell = format!("answers.{}", Question::TubeList.id());
        self.set_whole(inspection, json!({"tubes": tubes}), &cannot_tell, "tubes", tubes)
    }

    /// Keeps a meter reading: a number, or `OL`.
    ///
    /// # Errors
    /// The reading does not fit.
    pub fn set_reading(
        &mut self,
        inspection: Uuid,
        reading: &str,
        value: Value,
    ) -> Result<InspectionView, Problem> {
        let path = format!("readings.{reading}");
        let known = ReadingId::of(reading).ok_or_else(|| unknown(&path, ReadingId::IDS))?;
        read_reading(known, &value, &path)?;
        self.replace(inspection, &format!("{LEFT_OPEN}.{reading}"), &path, value)
    }

    /// Keeps a part of the findings file that is read as a whole.
    fn set_whole(
        &mut self,
        inspection: Uuid,
        mut part: Value,
        other: &str,
        key: &str,
        value: Value,
    ) -> Result<InspectionView, Problem> {
        let (_, unit) = self.find(inspection)?;
        if let Value::Object(part) = &mut part {
            part.insert("supply".to_owned(), json!(unit.supply));
        }
        check(part)?;
        self.replace(inspection, other, key, value)
    }

    /// Withdraws a finding by its path, such as `answers.plug`.
    ///
    /// # Errors
    /// Nothing is kept under that path.
    pub fn withdraw(&mut self, inspection: Uuid, finding: &str) -> Result<InspectionView, Problem> {
        self.find(inspection)?;
        let kept = self.store.findings(inspection)?;
        if !kept.iter().any(|kept| kept.key == finding) {
            return Err(FieldError::new(finding, Message::new("takes-kept-finding")).into());
        }
        self.set(inspection, Change::Withdrawn { subject: format!("finding.{finding}") })
    }

    /// Says how far the inspector may go now.
    ///
    /// # Errors
    /// The access is bad.
    pub fn set_access(
        &mut self,
        inspection: Uuid,
        access: &[String],
    ) -> Result<InspectionView, Problem> {
        let (_, unit) = self.find(inspection)?;
        check(json!({"supply": unit.supply, "access": access}))?;
        self.set(inspection, Change::InspectionAccess(access.to_vec()))
    }

    /// Says what the unit is to be plugged into.
    ///
    /// # Errors
    /// The supply is bad or not covered.
    pub fn set_supply(
        &mut self,
        inspection: Uuid,
        supply: Value,
    ) -> Result<InspectionView, Problem> {
        check(json!({"supply": supply}))?;
        let (_, unit) = self.find(inspection)?;
        let is_same = unit.supply.as_ref() == Some(&supply);
        let mut changes = if is_same { Vec::new() } else { self.stale_live_test(inspection)? };
        changes.push(Change::UnitSupply(supply));
        self.set_all(inspection, changes)
    }

    /// Names the unit.
    ///
    /// # Errors
    /// The name is too long.
    pub fn rename(&mut self, inspection: Uuid, name: &str) -> Result<InspectionView, Problem> {
        let name = text("name", name)?;
        self.set(inspection, Change::UnitName(name))
    }

    /// Says where the unit stands.
    ///
    /// # Errors
    /// The place is too long.
    pub fn set_place(&mut self, inspection: Uuid, place: &str) -> Result<InspectionView, Problem> {
        let place = text("place", place)?;
        self.set(inspection, Change::UnitPlace(place))
    }

    pub(super) fn set(
        &mut self,
        inspection: Uuid,
        change: Change,
    ) -> Result<InspectionView, Problem> {
        self.set_all(inspection, vec![change])
    }

    /// As [`Workbench::set`], at a time that is no earlier than another.
    pub(super) fn set_after(
        &mut self,
        inspection: Uuid,
        change: Change,
        earliest: i64,
    ) -> Result<InspectionView, Problem> {
        let (found, _) = self.find(inspection)?;
        self.act_after(found.unit, Some(inspection), vec![change], earliest)?;
        self.settled(inspection)
    }

    pub(super) fn set_all(
        &mut self,
        inspection: Uuid,
        changes: Vec<Change>,
    ) -> Result<InspectionView, Problem> {
        let (found, _) = self.find(inspection)?;
        self.act(found.unit, Some(inspection), changes)?;
        self.settled(inspection)
    }

    /// The inspection after a change, its verdict kept beside it.
    pub(super) fn settled(&mut self, inspection: Uuid) -> Result<InspectionView, Problem> {
        let (found, unit) = self.find(inspection)?;
        let view = self.view(&found, &unit)?;
        let mut verdict = json!(view.verdict);
        if let Value::Object(verdict) = &mut verdict {
            verdict.insert("made_of".to_owned(), made_of(&unit, self.store.place_in(&found)?));
            verdict.insert("basis".to_owned(), json!(view.tag.basis));
        }
        self.store.save_verdict(&Verdict {
            inspection,
            engine_version: env!("CARGO_PKG_VERSION").to_owned(),
            at: (self.around.clock)(),
            verdict,
        })?;
        self.keep_standing(unit.id)?;
        Ok(view)
    }
}

/// The kind that an answer names; nothing where nobody can tell.
fn named_kind(answer: &Value) -> Option<&str> {
    answer.as_str().filter(|kind| *kind != CANT_TELL)
}

pub(super) fn found(key: &str, value: Value) -> Change {
    Change::Finding { key: key.to_owned(), value }
}

fn check(part: Value) -> Result<(), Problem> {
    read_findings(part)?;
    Ok(())
}

fn unknown(path: &str, known: &[&str]) -> Problem {
    let keys = known.join(", ");
    FieldError::new(path, Message::new("takes-known-keys").text("keys", keys)).into()
}

pub(super) fn text(field: &str, text: &str) -> Result<String, Problem> {
    let trimmed = text.trim();
    if trimmed.chars().count() <= LONGEST_TEXT {
        return Ok(trimmed.to_owned());
    }
    let message = Message::new("takes-short-text").text("high", LONGEST_TEXT.to_string());
    Err(FieldError::new(field, message).into())
}
