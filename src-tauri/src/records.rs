//! The commands for the record as a whole: the queue, bundles, copies and the way back to them.

use std::path::PathBuf;

use coldchassis_core::workbench::{
    BundleView, ImportView, QueueAsk, QueueCounts, QueueLine, QueueView, RecoveredView,
    SnapshotView, look_at_bundle,
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
pub fn list_places(desk: Desked<'_>) -> Answer<Vec<String>> {
    desk.with(|bench| bench.queue_places())
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
    desk.with(|bench| bench.keep_bundle(work))
}

#[command(async)]
pub fn list_snapshots(desk: Desked<'_>) -> Answer<Vec<SnapshotView>> {
    desk.recovery(|recovery| recovery.snapshots())
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
