//! What this device gives the workbench: a folder, a name for itself, the time, new ids.

use std::io;
use std::path::{Path, PathBuf};

use coldchassis_core::words::Message;
use coldchassis_core::workbench::{Code, Problem, Surroundings};
use tauri::{AppHandle, Manager};
use uuid::Uuid;

/// Another folder than the system's own for this app, such as one on a stick, or a new one for a check.
const FOLDER_VARIABLE: &str = "COLDCHASSIS_DATA";
/// The record, in the folder.
const RECORD: &str = "record.coldchassis";
/// The folder of the photos, in the folder.
const PHOTOS: &str = "photos";
/// The file with this device's name in the record.
const DEVICE: &str = "device";
/// The language until the screens have said theirs.
pub const LOCALE: &str = "en";

/// The folder that everything is kept in.
///
/// # Errors
/// The system has no such folder, as without a home.
pub fn folder(app: &AppHandle) -> Result<PathBuf, Problem> {
    match std::env::var_os(FOLDER_VARIABLE) {
        Some(folder) if !folder.is_empty() => Ok(folder.into()),
        _ => app.path().app_data_dir().map_err(|error| storage(error.to_string())),
    }
}

/// The file of the record.
pub fn record(folder: &Path) -> PathBuf {
    folder.join(RECORD)
}

/// The folder of the photos.
pub fn photos(folder: &Path) -> PathBuf {
    folder.join(PHOTOS)
}

/// The time, UTC milliseconds.
pub fn now() -> i64 {
    chrono::Utc::now().timestamp_millis()
}

/// The surroundings of a workbench whose record is in `folder`; the folder is made if there is none.
///
/// # Errors
/// The folder cannot be written.
pub fn surroundings(folder: &Path) -> Result<Surroundings, Problem> {
    let device = named(folder).map_err(|error| storage(error.to_string()))?;
    Ok(Surroundings {
        clock: Box::new(now),
        ids: Box::new(Uuid::now_v7),
        device: device.to_string(),
        photos: Some(photos(folder)),
        // The record keeps who found what; nobody is named until the settings can say who.
        author: String::new(),
        locale: LOCALE.to_owned(),
    })
}

/// This device's name, made up at the first start. Undo takes back only what was done under it.
fn named(folder: &Path) -> io::Result<Uuid> {
    std::fs::create_dir_all(folder)?;
    let file = folder.join(DEVICE);
    let kept = std::fs::read_to_string(&file).ok();
    if let Some(device) = kept.and_then(|text| Uuid::try_parse(text.trim()).ok()) {
        return Ok(device);
    }
    // A file cut short by a loss of power is replaced: a new name costs an undo, no finding.
    let device = Uuid::now_v7();
    let unfinished = folder.join(format!("{DEVICE}.new"));
    std::fs::write(&unfinished, device.to_string())?;
    std::fs::rename(&unfinished, &file)?;
    Ok(device)
}

/// Trouble with the folder or the record.
pub fn storage(detail: String) -> Problem {
    Problem::new(Code::Storage, Message::new("error-storage").text("detail", detail))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_device_keeps_its_name() {
        let home = tempfile::tempdir().unwrap();
        let folder = home.path().join("not").join("there yet");
        let first = named(&folder).unwrap();
        assert_eq!(first.get_version_num(), 7);
        assert_eq!(named(&folder).unwrap(), first);
        assert_eq!(surroundings(&folder).unwrap().device, first.to_string());
    }

    #[test]
    fn a_name_cut_short_is_replaced_once() {
        let folder = tempfile::tempdir().unwrap();
        std::fs::write(folder.path().join(DEVICE), "0199").unwrap();
        let made = named(folder.path()).unwrap();
        assert_eq!(named(folder.path()).unwrap(), made);
    }

    #[test]
    fn a_folder_that_cannot_be_made_is_a_problem() {
        let home = tempfile::tempdir().unwrap();
        let file = home.path().join("file");
        std::fs::write(&file, "").unwrap();
        let problem = surroundings(&file.join("data")).err().expect("a file is no folder");
        assert_eq!(problem.code, Code::Storage);
    }
}
