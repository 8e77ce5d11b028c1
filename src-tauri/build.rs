//! Names the commands of the app, so that each needs a permission of its own.

/// Every command of `src/commands.rs`; what is not named here cannot be allowed.
const COMMANDS: &[&str] = &[
    "list_units",
    "list_presets",
    "show_question",
    "undo",
    "create_unit",
    "start_inspection",
    "show_inspection",
    "answer",
    "set_value",
    "leave_open",
    "set_rated",
    "set_tubes",
    "set_reading",
    "meter_readings",
    "set_meter",
    "stored_charge",
    "insulation_test",
    "touch_test",
    "grid",
    "chart",
    "circuit",
    "set_live_test",
    "withdraw",
    "set_access",
    "set_supply",
    "rename",
    "set_place",
    "set_inspector",
    "add_photo",
    "show_photo",
    "caption_photo",
    "remove_photo",
    "mark_photo",
    "measure_photo",
    "pair_photo",
    "order_photos",
    "export_photo",
    "find_tubes",
    "read_tubes",
    "study_heaters",
    "load_demo",
    "remove_demo",
    "show_queue",
    "count_queue",
    "list_places",
    "set_unit_state",
    "export_bundle",
    "import_bundle",
    "list_snapshots",
    "restore_snapshot",
    "export_readable",
];

fn main() {
    let manifest = tauri_build::AppManifest::new().commands(COMMANDS);
    let attributes = tauri_build::Attributes::new().app_manifest(manifest);
    if let Err(error) = tauri_build::try_build(attributes) {
        println!("cargo::error={error:#}");
    }
}
