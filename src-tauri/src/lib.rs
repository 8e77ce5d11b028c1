#![cfg_attr(
    test,
    allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, clippy::indexing_slicing)
)]
//! The window of Cold Chassis: a web view with the screens, and the commands they may run.
//!
//! It holds no rule of its own. A command hands what it was given to the workbench of the core and
//! answers with the view it gets back. Nothing here reaches a network.

mod commands;
mod desk;
mod device;
mod giving;
#[cfg(mobile)]
mod phone;
mod records;
mod trouble;
mod window;

use tauri::Manager;

use desk::Desk;

/// Starts the app and returns when its window is closed.
///
/// # Errors
/// The system gives no window or no web view.
pub fn start() -> tauri::Result<()> {
    let builder = tauri::Builder::default();
    #[cfg(desktop)]
    let builder = builder.plugin(tauri_plugin_dialog::init());
    builder
        .invoke_handler(commands::handler())
        .setup(|app| {
            // Before there is a window, so that no command finds the desk missing.
            app.manage(Desk::at(device::folder(app.handle())));
            desk::open_early(app.handle().clone());
            window::open(app)?;
            Ok(())
        })
        .run(tauri::generate_context!())
}
