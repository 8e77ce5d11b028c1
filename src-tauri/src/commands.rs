//! The commands of the screens: each is one call of the workbench.
//!
//! They run beside the thread of the window, so that it stays quick while a record is written.

use coldchassis_core::fields::FieldError;
use coldchassis_core::inspection::Question;
use coldchassis_core::words::Message;
use coldchassis_core::workbench::{
    InspectionView, NewUnit, PresetView, Problem, QuestionView, UnitView, presets, question_view,
};
use serde_json::Value;
use tauri::ipc::Invoke;
use tauri::{State, Wry, command};
use uuid::Uuid;

use super::desk::Desk;
use super::trouble::Trouble;

type Desked<'a> = State<'a, Desk>;
type Answer<T> = Result<T, Trouble>;

/// Every command; `build.rs` and the capability name the same.
pub fn handler() -> impl Fn(Invoke<Wry>) -> bool + Send + Sync + 'static {
    tauri::generate_handler![
        list_units,
        list_presets,
        show_question,
        undo,
        create_unit,
        start_inspection,
        show_inspection,
        answer,
        set_value,
        leave_open,
        set_rated,
        set_tubes,
        set_reading,
        withdraw,
        set_access,
        set_supply,
        rename,
    ]
}

#[command(async)]
fn list_units(desk: Desked<'_>, text: Option<String>) -> Answer<Vec<UnitView>> {
    desk.with(|bench| bench.units(text.as_deref()))
}

#[command(async)]
fn list_presets(desk: Desked<'_>) -> Answer<Vec<PresetView>> {
    desk.with(|bench| Ok(presets(bench.words())))
}

#[command(async)]
fn show_question(desk: Desked<'_>, question: String) -> Answer<QuestionView> {
    desk.with(|bench| Ok(question_view(known(&question)?, bench.words())))
}

#[command(async)]
fn undo(desk: Desked<'_>, inspection: Uuid) -> Answer<Option<InspectionView>> {
    desk.with(|bench| bench.undo(inspection))
}

#[command(async)]
fn create_unit(desk: Desked<'_>, unit: NewUnit) -> Answer<InspectionView> {
    desk.with(|bench| bench.create_unit(&unit))
}

#[command(async)]
fn start_inspection(desk: Desked<'_>, unit: Uuid, access: Vec<String>) -> Answer<InspectionView> {
    desk.with(|bench| bench.start_inspection(unit, &access))
}

#[command(async)]
fn show_inspection(desk: Desked<'_>, inspection: Uuid) -> Answer<InspectionView> {
    desk.with(|bench| bench.inspection(inspection))
}

#[command(async)]
fn answer(
    desk: Desked<'_>,
    inspection: Uuid,
    question: String,
    answer: Value,
) -> Answer<InspectionView> {
    desk.with(|bench| bench.answer(inspection, &question, answer))
}

#[command(async)]
fn set_value(
    desk: Desked<'_>,
    inspection: Uuid,
    value: String,
    reading: Value,
) -> Answer<InspectionView> {
    desk.with(|bench| bench.set_value(inspection, &value, reading))
}

#[command(async)]
fn leave_open(desk: Desked<'_>, inspection: Uuid, value: String) -> Answer<InspectionView> {
    desk.with(|bench| bench.leave_open(inspection, &value))
}

#[command(async)]
fn set_rated(desk: Desked<'_>, inspection: Uuid, rated: Value) -> Answer<InspectionView> {
    desk.with(|bench| bench.set_rated(inspection, rated))
}

#[command(async)]
fn set_tubes(desk: Desked<'_>, inspection: Uuid, tubes: Value) -> Answer<InspectionView> {
    desk.with(|bench| bench.set_tubes(inspection, tubes))
}

#[command(async)]
fn set_reading(
    desk: Desked<'_>,
    inspection: Uuid,
    reading: String,
    value: Value,
) -> Answer<InspectionView> {
    desk.with(|bench| bench.set_reading(inspection, &reading, value))
}

#[command(async)]
fn withdraw(desk: Desked<'_>, inspection: Uuid, finding: String) -> Answer<InspectionView> {
    desk.with(|bench| bench.withdraw(inspection, &finding))
}

#[command(async)]
fn set_access(desk: Desked<'_>, inspection: Uuid, access: Vec<String>) -> Answer<InspectionView> {
    desk.with(|bench| bench.set_access(inspection, &access))
}

#[command(async)]
fn set_supply(desk: Desked<'_>, inspection: Uuid, supply: Value) -> Answer<InspectionView> {
    desk.with(|bench| bench.set_supply(inspection, supply))
}

#[command(async)]
fn rename(desk: Desked<'_>, inspection: Uuid, name: String) -> Answer<InspectionView> {
    desk.with(|bench| bench.rename(inspection, &name))
}

fn known(question: &str) -> Result<Question, Problem> {
    Question::of(question).ok_or_else(|| {
        let takes = Message::new("takes-known-keys").text("keys", Question::IDS.join(", "));
        FieldError::new("question", takes).into()
    })
}
