//! How a phone starts the app. No build for a phone has been tried yet: `MOBILE.md` beside this crate says what has.

/// The system calls what this is turned into: there is no `main` there.
#[tauri::mobile_entry_point]
fn start() {
    if let Err(error) = super::start() {
        eprintln!("{error}");
    }
}
