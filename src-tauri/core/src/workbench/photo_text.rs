//! Photos as text, in base64: the one form that every shell's way to its screens carries. On some phones
//! plain bytes do not arrive.

use base64::Engine;
use base64::engine::general_purpose::STANDARD;

use uuid::Uuid;

use super::error::Problem;
use super::session::Workbench;
use crate::photo::{Ingested, PhotoError, ingest};

/// Takes a photo in from the text of its file. Long work that needs no workbench.
///
/// # Errors
/// The text is no base64, or it is no picture that is taken in (field `photo`).
pub fn take_in(picture: &str) -> Result<Ingested, Problem> {
    let bytes = STANDARD.decode(picture).map_err(|_| PhotoError::NotAPicture)?;
    Ok(ingest(&bytes)?)
}

impl Workbench {
    /// The JPEG of a photo, or its thumbnail, as text.
    ///
    /// # Errors
    /// There is no such photo, or it cannot be read.
    pub fn photo_text(&self, sha256: &str, thumbnail: bool) -> Result<String, Problem> {
        Ok(STANDARD.encode(self.photo_bytes(sha256, thumbnail)?))
    }

    /// A photo as a JPEG with its marks drawn in, as text.
    ///
    /// # Errors
    /// There is no such photo, or it cannot be read.
    pub fn export_text(&self, inspection: Uuid, photo: Uuid) -> Result<String, Problem> {
        Ok(STANDARD.encode(self.export_photo(inspection, photo)?))
    }
}
