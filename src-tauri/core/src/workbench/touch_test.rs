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
use crate::inspection::{Judge, LIVE_TEST, TouchPart, assess, read_live_test};
use crate::store::Change;

impl Workbench {
    /// The live touch test of an inspection.
    ///
    /// # Errors
    /// There is no such inspection, or the record cannot be read.
    pub fn touch_test(&self, inspection: Uuid) -> Result<TouchTestView, Problem> {
        let (inspection, unit) = self.find(inspection)?;
        let findings = self.read(&inspection, &unit)?;
        let verdict = assess(&findings, &mut Judge::of(&findings));
        Ok(TouchWords::new(&findings, &verdict, &self.words).page())
    }

    /// Keeps one thing of the live touch test, by its key: `qualified`, `protection`, `earth_volts`, a position's
    /// volts across the network (or `tripped`), and with `check_` or `low_` before it those of the meter alone.
    ///
    /// A position takes every piece of bare metal in turn, so a reading lower than the one kept changes nothing:
    /// to lower it, it is withdrawn. Another protection takes back what was read behind the one before, but for
    /// what was above the limit.
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
        let (found_inspection, unit) = self.find(inspection)?;
        let kept = self.read(&found_inspection, &unit)?.live_test;
        let known = TouchPart::of(part);
        if let Some(TouchPart::Network(position)) = known {
            let is_lower =
                kept.volts.get(&position).is_some_and(|volts| value.as_f64() < Some(*volts));
            let is_read = value.is_number();
            if is_read && (is_lower || kept.tripped.contains(&position)) {
                return self.inspection(inspection);
            }
        }
        let mut changes = Vec::new();
        if known == Some(TouchPart::Protection) {
            let keys = self.store.findings(inspection)?.into_iter();
            let gone = keys.filter(|finding| is_of_protection(&finding.key, &finding.value));
            changes.extend(
                gone.map(|gone| Change::Withdrawn { subject: format!("finding.{}", gone.key) }),
            );
        }
        changes.push(found(&format!("{LIVE_TEST}.{part}"), value));
        self.set_all(inspection, changes)
    }
}

/// Whether a finding was read behind a protection and says nothing behind another: all but what was above
/// the limit.
fn is_of_protection(key: &str, value: &Value) -> bool {
    let part = key.strip_prefix(LIVE_TEST).and_then(|key| key.strip_prefix('.'));
    match part.and_then(TouchPart::of) {
        Some(TouchPart::EarthVolts | TouchPart::Check(_) | TouchPart::LowCheck(_)) => true,
        Some(TouchPart::Network(_)) => {
            value.as_f64().is_some_and(|volts| volts <= TOUCH_LIMIT_VOLTS.value)
        }
        _ => false,
    }
}
