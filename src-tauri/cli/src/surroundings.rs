//! What the terminal gives a workbench: the time, new ids, this machine's name for itself.

use coldchassis_core::workbench::Surroundings;
use uuid::Uuid;

/// The name of this device in the record. The terminal is one device; undo goes by it.
const DEVICE: &str = "terminal";

/// Surroundings in a language.
pub fn of(locale: &str) -> Surroundings {
    Surroundings {
        clock: Box::new(|| chrono::Utc::now().timestamp_millis()),
        ids: Box::new(Uuid::now_v7),
        device: DEVICE.to_owned(),
        // The terminal takes no photos.
        photos: None,
        author: std::env::var("COLDCHASSIS_INSPECTOR").unwrap_or_default(),
        locale: locale.to_owned(),
    }
}
