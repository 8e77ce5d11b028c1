//! The live touch test of an inspection: what stands before it, its steps, and what is kept of it.

use serde_json::{Value, json};
use uuid::Uuid;

use super::bench_test_views::TouchTestView;
use super::commands::found;
use super::error::Problem;
use super::session::Workbench;
use super::touch_words::TouchWords;
use super::views::InspectionView;
use crate::inspection::{Judge, LIVE_TEST, LiveTest, assess};

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

    /// Keeps one thing of the live touch test: `qualified`, `protection`, a position's volts across the
    /// network, or, with `check_` before it, those of the meter alone.
    ///
    /// # Errors
    /// It does not fit, by its field; what was kept before stays.
    pub fn set_live_test(
        &mut self,
        inspection: Uuid,
        part: &str,
        value: Value,
    ) -> Result<InspectionView, Problem> {
        LiveTest::read(json!({ part: value.clone() }))?;
        self.set(inspection, found(&format!("{LIVE_TEST}.{part}"), value))
    }
}
