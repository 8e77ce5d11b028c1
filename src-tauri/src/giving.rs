//! The system's own windows that ask where a file goes and which one is meant, and the file itself.
//!
//! On a phone no such window gives a path that can be written to, so a file goes into the app's folder of
//! documents there. No build for a phone has been tried yet.

use std::path::PathBuf;

use coldchassis_core::workbench::save_text;
use tauri::{AppHandle, State, command};

use super::desk::Desk;
use super::trouble::Trouble;

type Desked<'a> = State<'a, Desk>;
type Answer<T> = Result<T, Trouble>;

/// The end of a bundle's name.
const BUNDLE: &str = "coldbundle";

/// Asks where a file of this name shall go; nothing where the person thinks better of it.
#[command(async)]
pub fn ask_save_path(app: AppHandle, name: String) -> Option<PathBuf> {
    system::where_to(&app, &name)
}

/// Asks which bundle is meant; nothing where the person thinks better of it.
#[command(async)]
pub fn ask_open_path(app: AppHandle) -> Option<PathBuf> {
    system::which(&app)
}

/// Asks where a file shall go and writes it there; says whether it did.
#[command(async)]
pub fn save_file(app: AppHandle, desk: Desked<'_>, name: String, content: String) -> Answer<bool> {
    let Some(to) = system::where_to(&app, &name) else { return Ok(false) };
    desk.beside(|| save_text(&to, &content))?;
    Ok(true)
}

#[cfg(desktop)]
mod system {
    use std::path::PathBuf;

    use tauri::AppHandle;
    use tauri_plugin_dialog::DialogExt;

    pub fn where_to(app: &AppHandle, name: &str) -> Option<PathBuf> {
        let asked = app.dialog().file().set_file_name(name).blocking_save_file();
        asked.and_then(|path| path.into_path().ok())
    }

    pub fn which(app: &AppHandle) -> Option<PathBuf> {
        let asked = app
            .dialog()
            .file()
            .add_filter(super::BUNDLE, &[super::BUNDLE])
            .add_filter("*", &["*"])
            .blocking_pick_file();
        asked.and_then(|path| path.into_path().ok())
    }
}

#[cfg(mobile)]
mod system {
    use std::path::PathBuf;

    use tauri::{AppHandle, Manager};

    pub fn where_to(app: &AppHandle, name: &str) -> Option<PathBuf> {
        let folder = app.path().document_dir().ok()?;
        std::fs::create_dir_all(&folder).ok()?;
        // A name only: whatever leads elsewhere is left off.
        Some(folder.join(PathBuf::from(name).file_name()?))
    }

    pub fn which(app: &AppHandle) -> Option<PathBuf> {
        let folder = std::fs::read_dir(app.path().document_dir().ok()?).ok()?;
        let bundles = folder.filter_map(Result::ok).map(|entry| entry.path());
        let bundles =
            bundles.filter(|path| path.extension().is_some_and(|end| end == super::BUNDLE));
        bundles.max_by_key(|path| path.metadata().and_then(|file| file.modified()).ok())
    }
}
