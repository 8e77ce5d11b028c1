//! The commands for the record as a whole: the queue, bundles, copies and the way back to them.

use std::path::PathBuf;

use coldchassis_core::workbench::{
    BundleView, DocumentView, ImportView, PresetView, QueueAsk, QueueCounts, QueueLine, QueueView,
    RecoveredView, RegionView, ReportAsk, SnapshotView, TagPaper, UnitView, look_at_bundle,
    presets, regions,
};
use tauri::{State, command};
use uuid::Uuid;

use super::desk::Desk;
use super::device;
use super::trouble::Trouble;

type Desked<'a> = State<'a, Desk>;
type Answer<T> = Result<T, Trouble>;

#[command(async)]
pub fn show_queue(desk: Desked<'_>, ask: QueueAsk) -> Answer<QueueView> {
    desk.with(|bench| bench.queue(&ask))
}

#[command(async)]
pub fn count_queue(desk: Desked<'_>) -> Answer<QueueCounts> {
    desk.with(|bench| bench.queue_counts())
}

#[command(async)]
pub fn list_regions(desk: Desked<'_>) -> Answer<Vec<RegionView>> {
    desk.with(|bench| Ok(regions(bench.words())))
}

#[command(async)]
pub fn list_places(desk: Desked<'_>, text: String) -> Answer<Vec<String>> {
    desk.with(|bench| bench.queue_places(&text))
}

#[command(async)]
pub fn count_pending(desk: Desked<'_>) -> Answer<u32> {
    desk.with(|bench| bench.pending())
}

#[command(async)]
pub fn list_presets(desk: Desked<'_>) -> Answer<Vec<PresetView>> {
    desk.with(|bench| Ok(presets(bench.words())))
}

#[command(async)]
pub fn delete_unit(desk: Desked<'_>, unit: Uuid) -> Answer<()> {
    desk.with(|bench| bench.delete_unit(unit))
}

#[command(async)]
pub fn set_unit_state(desk: Desked<'_>, unit: Uuid, state: String) -> Answer<QueueLine> {
    desk.with(|bench| bench.set_unit_state(unit, &state))
}

#[command(async)]
pub fn export_bundle(
    desk: Desked<'_>,
    units: Option<Vec<Uuid>>,
    path: PathBuf,
) -> Answer<BundleView> {
    // The long work beside the desk: other commands need not wait for it.
    let work = desk.with(|bench| bench.export_work(units))?;
    desk.beside(|| work.run(&path))
}

#[command(async)]
pub fn import_bundle(desk: Desked<'_>, path: PathBuf) -> Answer<ImportView> {
    let files = desk.with(|bench| bench.photo_files())?;
    let work = desk.beside(|| look_at_bundle(&path, &files))?;
    let taken = desk.with(|bench| bench.keep_bundle(work))?;
    desk.wake();
    Ok(taken)
}

#[command(async)]
pub fn list_snapshots(desk: Desked<'_>) -> Answer<Vec<SnapshotView>> {
    desk.recovery(|recovery| recovery.snapshots())
}

#[command(async)]
pub fn copy_trouble(desk: Desked<'_>) -> Answer<Option<Trouble>> {
    Ok(desk.copy_trouble())
}

#[command(async)]
pub fn restore_snapshot(
    desk: Desked<'_>,
    number: Option<u32>,
    readable: bool,
) -> Answer<RecoveredView> {
    desk.closed(|recovery| recovery.restore(number, readable))
}

#[command(async)]
pub fn export_readable(desk: Desked<'_>, path: PathBuf) -> Answer<BundleView> {
    desk.closed(|recovery| recovery.export_readable(device::now(), &path))
}

#[command(async)]
pub fn make_report(desk: Desked<'_>, inspection: Uuid, ask: ReportAsk) -> Answer<DocumentView> {
    desk.with(|bench| bench.report(inspection, &ask))
}

#[command(async)]
pub fn report_text(desk: Desked<'_>, inspection: Uuid) -> Answer<String> {
    desk.with(|bench| bench.report_text(inspection))
}

#[command(async)]
pub fn make_tags(desk: Desked<'_>, units: Vec<Uuid>, paper: TagPaper) -> Answer<DocumentView> {
    desk.with(|bench| bench.tags(&units, paper))
}

#[command(async)]
pub fn list_csv(desk: Desked<'_>) -> Answer<DocumentView> {
    desk.with(|bench| bench.list_csv())
}

#[command(async)]
pub fn load_demo(desk: Desked<'_>) -> Answer<Vec<UnitView>> {
    desk.with(|bench| bench.load_demo())
}

#[command(async)]
pub fn remove_demo(desk: Desked<'_>) -> Answer<Vec<UnitView>> {
    desk.with(|bench| bench.remove_demo())
}
