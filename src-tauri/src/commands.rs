//! The commands of the screens: each is one call of the workbench.
//!
//! They run beside the thread of the window, so that it stays quick while a record is written.

use coldchassis_core::workbench::{
    ChargeView, ChartView, CircuitView, FeedsView, GridView, HeaterView, InspectionView,
    InsulationView, MeasureView, NewUnit, ProofView, QuestionView, ReadingsView, RemediesView,
    RepairView, TouchTestView, TubeHit, TubeRead, UnitView, take_in,
};
use serde_json::Value;
use tauri::ipc::Invoke;
use tauri::{State, Wry, command};
use uuid::Uuid;

use super::desk::Desk;
use super::giving::*;
// Commands of the record as a whole, listed below with the others.
use super::records::*;
use super::trouble::Trouble;

type Desked<'a> = State<'a, Desk>;
type Answer<T> = Result<T, Trouble>;

/// Every command; `build.rs` and the capability name the same.
pub fn handler() -> impl Fn(Invoke<Wry>) -> bool + Send + Sync + 'static {
    tauri::generate_handler![
        list_units,
        list_presets,
        list_regions,
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
        meter_readings,
        set_meter,
        stored_charge,
        insulation_test,
        touch_test,
        grid,
        chart,
        circuit,
        remedies,
        remedy_stack,
        circuit_repaired,
        choose_remedies,
        proof,
        enter_proof,
        mark_ready,
        feeds,
        set_feed,
        set_live_test,
        withdraw,
        set_access,
        set_supply,
        rename,
        set_place,
        set_inspector,
        add_photo,
        show_photo,
        caption_photo,
        remove_photo,
        mark_photo,
        measure_photo,
        pair_photo,
        order_photos,
        export_photo,
        find_tubes,
        read_tubes,
        study_heaters,
        load_demo,
        remove_demo,
        show_queue,
        count_queue,
        list_places,
        copy_trouble,
        count_pending,
        set_unit_state,
        delete_unit,
        export_bundle,
        import_bundle,
        list_snapshots,
        restore_snapshot,
        export_readable,
        make_report,
        report_text,
        make_tags,
        list_csv,
        ask_save_path,
        ask_open_path,
        save_file,
    ]
}

#[command(async)]
fn list_units(desk: Desked<'_>, text: Option<String>) -> Answer<Vec<UnitView>> {
    desk.with(|bench| bench.units(text.as_deref()))
}

#[command(async)]
fn show_question(desk: Desked<'_>, question: String) -> Answer<QuestionView> {
    desk.with(|bench| bench.question(&question))
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
fn meter_readings(desk: Desked<'_>, inspection: Uuid) -> Answer<ReadingsView> {
    desk.with(|bench| bench.meter_readings(inspection))
}

#[command(async)]
fn set_meter(desk: Desked<'_>, inspection: Uuid, meter: Value) -> Answer<InspectionView> {
    desk.with(|bench| bench.set_meter(inspection, meter))
}

#[command(async)]
fn stored_charge(desk: Desked<'_>, charge: Value) -> Answer<ChargeView> {
    desk.with(|bench| bench.stored_charge(charge))
}

#[command(async)]
fn insulation_test(desk: Desked<'_>, inspection: Uuid) -> Answer<InsulationView> {
    desk.with(|bench| bench.insulation_test(inspection))
}

#[command(async)]
fn grid(desk: Desked<'_>, inspection: Uuid) -> Answer<GridView> {
    desk.with(|bench| bench.grid(inspection))
}

#[command(async)]
fn chart(desk: Desked<'_>, inspection: Uuid) -> Answer<ChartView> {
    desk.with(|bench| bench.chart(inspection))
}

#[command(async)]
fn circuit(desk: Desked<'_>, inspection: Uuid, at: Value) -> Answer<Option<CircuitView>> {
    desk.with(|bench| bench.circuit(inspection, at))
}

#[command(async)]
fn remedies(desk: Desked<'_>, inspection: Uuid) -> Answer<RemediesView> {
    desk.with(|bench| bench.remedies(inspection))
}

#[command(async)]
fn remedy_stack(desk: Desked<'_>, inspection: Uuid, stack: Value) -> Answer<RepairView> {
    desk.with(|bench| bench.remedy_stack(inspection, stack))
}

#[command(async)]
fn circuit_repaired(
    desk: Desked<'_>,
    inspection: Uuid,
    stack: Value,
    at: Value,
) -> Answer<Option<CircuitView>> {
    desk.with(|bench| bench.circuit_repaired(inspection, stack, at))
}

#[command(async)]
fn choose_remedies(desk: Desked<'_>, inspection: Uuid, stack: Value) -> Answer<InspectionView> {
    desk.with(|bench| bench.choose_remedies(inspection, stack))
}

#[command(async)]
fn proof(desk: Desked<'_>, inspection: Uuid) -> Answer<ProofView> {
    desk.with(|bench| bench.proof(inspection))
}

#[command(async)]
fn enter_proof(
    desk: Desked<'_>,
    inspection: Uuid,
    line: String,
    entry: Value,
) -> Answer<InspectionView> {
    desk.with(|bench| bench.enter_proof(inspection, &line, entry))
}

#[command(async)]
fn mark_ready(desk: Desked<'_>, inspection: Uuid, ready: bool) -> Answer<InspectionView> {
    desk.with(|bench| bench.mark_ready(inspection, ready))
}

#[command(async)]
fn feeds(desk: Desked<'_>, inspection: Uuid) -> Answer<FeedsView> {
    desk.with(|bench| bench.feeds(inspection))
}

#[command(async)]
fn set_feed(desk: Desked<'_>, inspection: Uuid, feed: Value) -> Answer<InspectionView> {
    desk.with(|bench| bench.set_feed(inspection, feed))
}

#[command(async)]
fn touch_test(desk: Desked<'_>, inspection: Uuid) -> Answer<TouchTestView> {
    desk.with(|bench| bench.touch_test(inspection))
}

#[command(async)]
fn set_live_test(
    desk: Desked<'_>,
    inspection: Uuid,
    part: String,
    value: Value,
) -> Answer<InspectionView> {
    desk.with(|bench| bench.set_live_test(inspection, &part, value))
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

#[command(async)]
fn set_place(desk: Desked<'_>, inspection: Uuid, place: String) -> Answer<InspectionView> {
    desk.with(|bench| bench.set_place(inspection, &place))
}

#[command(async)]
fn set_inspector(desk: Desked<'_>, author: String, language: String) -> Answer<()> {
    desk.set_inspector(author, language)
}

#[command(async)]
fn add_photo(
    desk: Desked<'_>,
    inspection: Uuid,
    finding: Option<String>,
    picture: String,
) -> Answer<InspectionView> {
    // The long work beside the desk: other commands need not wait for it.
    let photo = desk.beside(|| take_in(&picture))?;
    desk.with(|bench| bench.keep_photo(inspection, finding.as_deref(), &photo))
}

#[command(async)]
fn show_photo(desk: Desked<'_>, sha256: String, thumbnail: bool) -> Answer<String> {
    desk.with(|bench| bench.photo_text(&sha256, thumbnail))
}

#[command(async)]
fn caption_photo(
    desk: Desked<'_>,
    inspection: Uuid,
    photo: Uuid,
    caption: String,
) -> Answer<InspectionView> {
    desk.with(|bench| bench.caption_photo(inspection, photo, &caption))
}

#[command(async)]
fn mark_photo(
    desk: Desked<'_>,
    inspection: Uuid,
    photo: Uuid,
    marks: Value,
) -> Answer<InspectionView> {
    desk.with(|bench| bench.mark_photo(inspection, photo, marks))
}

#[command(async)]
fn measure_photo(
    desk: Desked<'_>,
    inspection: Uuid,
    photo: Uuid,
    ask: Value,
) -> Answer<MeasureView> {
    desk.with(|bench| bench.measure_photo(inspection, photo, ask))
}

#[command(async)]
fn pair_photo(
    desk: Desked<'_>,
    inspection: Uuid,
    photo: Uuid,
    before: Option<Uuid>,
) -> Answer<InspectionView> {
    desk.with(|bench| bench.pair_photo(inspection, photo, before))
}

#[command(async)]
fn order_photos(desk: Desked<'_>, inspection: Uuid, order: Vec<Uuid>) -> Answer<InspectionView> {
    desk.with(|bench| bench.order_photos(inspection, order))
}

#[command(async)]
fn export_photo(desk: Desked<'_>, inspection: Uuid, photo: Uuid) -> Answer<String> {
    desk.with(|bench| bench.export_text(inspection, photo))
}

#[command(async)]
fn remove_photo(desk: Desked<'_>, inspection: Uuid, photo: Uuid) -> Answer<InspectionView> {
    desk.with(|bench| bench.remove_photo(inspection, photo))
}

#[command(async)]
fn find_tubes(desk: Desked<'_>, text: String) -> Answer<Vec<TubeHit>> {
    desk.with(|bench| Ok(bench.find_tubes(&text)))
}

#[command(async)]
fn read_tubes(desk: Desked<'_>, text: String) -> Answer<Vec<TubeRead>> {
    desk.with(|bench| Ok(bench.read_tubes(&text)))
}

#[command(async)]
fn study_heaters(desk: Desked<'_>, tubes: Value, volts: f64, hertz: f64) -> Answer<HeaterView> {
    desk.with(|bench| bench.study_heaters(tubes, volts, hertz))
}
