//! The live touch test of an inspection: what stands before it, its steps, and what is kept of it.

use serde_json::{Value, json};
use uuid::Uuid;

use super::bench_test_views::TouchTestView;
use super::commands::found;
use super::error::Problem;
use super::session::Workbench;
use super::touch_words::TouchWords;
use super::views::InspectionView;
use crate::body::TOUCH_LIMIT_VOLTS;
use crate::hazard::STOP_VOLTS;
use crate::inspection::{TouchPart, read_live_test};
use crate::store::{Change, Finding};

impl Workbench {
    /// The live touch test of an inspection.
    ///
    /// # Errors
    /// There is no such inspection, or the record cannot be read.
    pub fn touch_test(&mut self, inspection: Uuid) -> Result<TouchTestView, Problem> {
        let (inspection, unit) = self.find(inspection)?;
        let findings = self.read(&inspection, &unit)?;
        let verdict = self.verdict_on(&findings);
        Ok(TouchWords::new(&findings, &verdict, &self.words).page())
    }

    /// Keeps one thing of the live touch test, by its key: `qualified`, `protection`, `earth_volts`, a position's
    /// volts across the network, with `check_` or `low_` before it those of the meter alone, with `tripped_` a trip.
    ///
    /// A position takes every piece of bare metal in turn, so the highest is kept: to lower it, it is withdrawn.
    /// A new check that shows too much asks for low impedance anew. Another protection takes back what was read
    /// behind the one before, but for what was too much.
    ///
    /// # Errors
    /// It does not fit, by its field; what was kept before stays.
    pub fn set_live_test(
        &mut self,
        inspection: Uuid,
        part: &str,
        value: Value,
    ) -> Result<InspectionView, Problem> {
        read_live_test(json!({ part: value.clone() }))?;
        let kept = self.store.findings(inspection)?;
        // What is no part was refused just now.
        let Some(known) = TouchPart::of(part) else { return self.inspection(inspection) };
        let key = known.finding();
        let before = kept.iter().find(|finding| finding.key == key).map(|finding| &finding.value);
        let mut changes = match known {
            TouchPart::Protection if before != Some(&value) => taken_back(&kept),
            TouchPart::Check(position) if is_above(&value, STOP_VOLTS.value) => {
                let low = TouchPart::LowCheck(position).finding();
                kept.iter().filter(|finding| finding.key == low).map(withdrawn).collect()
            }
            _ => Vec::new(),
        };
        let is_highest = matches!(known, TouchPart::Check(_) | TouchPart::Network(_));
        let is_lower = before.is_some_and(|before| value.as_f64() < before.as_f64());
        if !(is_highest && is_lower) {
            changes.push(found(&key, value));
        }
        if changes.is_empty() {
            self.inspection(inspection)
        } else {
            self.set_all(inspection, changes)
        }
    }

    /// What a change of the supply takes back of a live test: what was read on the one before and within limits
    /// says nothing on another.
    pub(super) fn stale_live_test(&self, inspection: Uuid) -> Result<Vec<Change>, Problem> {
        Ok(taken_back(&self.store.findings(inspection)?))
    }
}

fn withdrawn(finding: &Finding) -> Change {
    Change::Withdrawn { subject: format!("finding.{}", finding.key) }
}

fn is_above(value: &Value, limit: f64) -> bool {
    value.as_f64().is_some_and(|volts| volts > limit)
}

/// What says nothing behind another protection or on another supply: all but what was too much. Low impedance
/// that cleared a check goes, so that the check counts again.
fn taken_back(kept: &[Finding]) -> Vec<Change> {
    let goes = |finding: &&Finding| match TouchPart::of_finding(&finding.key) {
        Some(TouchPart::EarthVolts) => true,
        Some(TouchPart::Check(_) | TouchPart::LowCheck(_)) => {
            !is_above(&finding.value, STOP_VOLTS.value)
        }
        Some(TouchPart::Network(_)) => !is_above(&finding.value, TOUCH_LIMIT_VOLTS.value),
        _ => false,
    };
    kept.iter().filter(goes).map(withdrawn).collect()
}
