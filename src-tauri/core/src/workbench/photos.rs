//! Photos of an inspection: taken in, captioned, removed, shown.
//!
//! The order is fixed: picture decoded, files on the disk, row in the record. What fails on the way
//! leaves the record as it was, and no file that a row does not name.

use std::collections::BTreeSet;
use std::io::{self, ErrorKind};
use std::time::SystemTime;

use serde::Serialize;
use uuid::Uuid;

use super::commands::text;
use super::error::{Code, Problem};
use super::session::Workbench;
use super::views::InspectionView;
use crate::fields::FieldError;
use crate::inspection::{Question, ReadingId, ValueId};
use crate::photo::{Digest, Files, Hint, Ingested, Mark, PhotoError, Size, ingest, read_marks};
use crate::store::{Change, Photo, PhotoRow, StoreError, is_replaced_kept};
use crate::words::{Message, Words};

/// A photo of an inspection; its pictures are asked for by `sha256`.
#[derive(Clone, Debug, PartialEq, Serialize, ts_rs::TS)]
pub struct PhotoView {
    /// Its id.
    pub id: Uuid,
    /// The path of the finding it shows, such as `answers.plug`; none: the unit as a whole.
    pub finding: Option<String>,
    /// The name of its files.
    pub sha256: String,
    /// Pixels from left to right.
    pub width: u32,
    /// Pixels from top to bottom.
    pub height: u32,
    /// Its caption; empty where there is none.
    pub caption: String,
    /// What is drawn on it.
    pub marks: Vec<Mark>,
    /// The photo of before that it belongs to.
    pub before: Option<Uuid>,
    /// What speaks for taking it again, in sentences.
    pub hints: Vec<String>,
    /// When it was added, UTC milliseconds.
    #[ts(type = "number")]
    pub at: i64,
    /// Who added it.
    pub author: String,
}

impl PhotoView {
    fn of(photo: Photo, there: &[Uuid], words: &Words) -> Self {
        Self {
            id: photo.id,
            finding: photo.finding,
            sha256: photo.sha256,
            width: photo.width,
            height: photo.height,
            caption: photo.caption,
            // What another version drew may be unknown here.
            marks: read_marks(photo.marks).unwrap_or_default(),
            // The photo of before may have been removed since.
            before: photo.before.filter(|before| there.contains(before)),
            // What another version hints at may have no words here.
            hints: Hint::ALL
                .iter()
                .filter(|hint| photo.hints.iter().any(|kept| kept == hint.id()))
                .map(|hint| words.say_id(&format!("photo-hint-{}", hint.id())))
                .collect(),
            at: photo.at,
            author: photo.author,
        }
    }
}

impl From<PhotoError> for Problem {
    fn from(error: PhotoError) -> Self {
        FieldError::new("photo", error.message()).into()
    }
}

impl Workbench {
    /// Adds a photo from the bytes of a file, of a finding or of the unit as a whole.
    ///
    /// The same photo of the same finding again changes nothing, so a double tap is stored once.
    ///
    /// # Errors
    /// It is no picture that is taken in (field `photo`), the finding is none, there is no folder for
    /// photos or it cannot be written; nothing is stored then.
    pub fn add_photo(
        &mut self,
        inspection: Uuid,
        finding: Option<&str>,
        bytes: &[u8],
    ) -> Result<InspectionView, Problem> {
        // Before the long work, so that a mistake is answered at once.
        self.check_place(inspection, finding)?;
        self.keep_photo(inspection, finding, &ingest(bytes)?)
    }

    /// Adds a photo that was taken in already: a shell can do that without holding up other commands.
    ///
    /// # Errors
    /// As [`Workbench::add_photo`].
    pub fn keep_photo(
        &mut self,
        inspection: Uuid,
        finding: Option<&str>,
        photo: &Ingested,
    ) -> Result<InspectionView, Problem> {
        let files = self.check_place(inspection, finding)?;
        let name = BTreeSet::from([photo.digest.to_string()]);
        if let Err(error) = files.put(photo) {
            // One of its two pictures may have found room.
            self.free_files(&name);
            return Err(unkept(error));
        }
        let row = PhotoRow {
            finding: finding.map(str::to_owned),
            sha256: photo.digest.to_string(),
            width: photo.width,
            height: photo.height,
            hints: photo.hints.iter().map(|hint| hint.id().to_owned()).collect(),
        };
        if self.shows(inspection, &row)? {
            return self.inspection(inspection);
        }
        let added = Change::PhotoAdded { photo: (self.around.ids)(), row: row.value() };
        let kept = self.set(inspection, added);
        if kept.is_err() {
            self.free_files(&name);
        }
        kept
    }

    /// Captions a photo, or changes the caption.
    ///
    /// # Errors
    /// There is no such photo, or the caption is too long.
    pub fn caption_photo(
        &mut self,
        inspection: Uuid,
        photo: Uuid,
        caption: &str,
    ) -> Result<InspectionView, Problem> {
        self.photo(inspection, photo)?;
        let text = text("caption", caption)?;
        self.set(inspection, Change::PhotoCaptioned { photo, text })
    }

    /// Removes a photo. Its files stay until the unit is deleted, so that an undo can bring it back.
    ///
    /// # Errors
    /// There is no such photo.
    pub fn remove_photo(
        &mut self,
        inspection: Uuid,
        photo: Uuid,
    ) -> Result<InspectionView, Problem> {
        self.photo(inspection, photo)?;
        self.set(inspection, Change::photo_removed(photo))
    }

    /// The JPEG of a photo, or its thumbnail.
    ///
    /// # Errors
    /// There is no such photo, or it cannot be read.
    pub fn photo_bytes(&self, sha256: &str, thumbnail: bool) -> Result<Vec<u8>, Problem> {
        let digest = Digest::parse(sha256).ok_or_else(no_photo)?;
        let size = if thumbnail { Size::Thumbnail } else { Size::Full };
        let bytes = self.files()?.read(&digest, size).map_err(photo_storage)?;
        bytes.ok_or_else(no_photo)
    }

    /// Removes files that no row names, if last written before a moment. Tells how many went.
    ///
    /// While a file that was replaced is kept beside the record, what is whole stays: that file may name it,
    /// also in parts that cannot be read.
    pub(super) fn sweep_photos(&self, before: SystemTime) -> Result<usize, Problem> {
        let named = self.store.photo_digests()?;
        let named = named.iter().filter_map(|text| Digest::parse(text)).collect();
        let files = self.files()?;
        let swept = match &self.record {
            Some(record) if is_replaced_kept(record) => files.sweep_unfinished(before),
            _ => files.sweep(&named, before),
        };
        swept.map_err(photo_storage)
    }

    pub(super) fn photo_views(&self, inspection: Uuid) -> Result<Vec<PhotoView>, Problem> {
        let photos = self.store.photos(inspection)?;
        let there: Vec<Uuid> = photos.iter().map(|photo| photo.id).collect();
        Ok(photos.into_iter().map(|photo| PhotoView::of(photo, &there, self.words())).collect())
    }

    /// Removes the files of photos that the log does not name any more.
    pub(super) fn free_files(&self, were_named: &BTreeSet<String>) {
        let (Ok(files), Ok(named)) = (self.files(), self.store.photo_digests()) else {
            return;
        };
        let loose = were_named.difference(&named).filter_map(|text| Digest::parse(text));
        // What cannot be removed now, the next sweep takes.
        loose.for_each(|digest| drop(files.remove(&digest)));
    }

    pub(super) fn files(&self) -> Result<Files, Problem> {
        let folder =
            self.around.photos.clone().ok_or_else(|| {
                Problem::new(Code::Storage, Message::new("error-no-photo-folder"))
            })?;
        Ok(Files::of(folder))
    }

    /// Whether a photo could be added there.
    fn check_place(&self, inspection: Uuid, finding: Option<&str>) -> Result<Files, Problem> {
        self.find(inspection)?;
        match finding {
            Some(path) if !is_finding(path) => {
                Err(FieldError::new("finding", Message::new("takes-finding-path")).into())
            }
            _ => self.files(),
        }
    }

    fn shows(&self, inspection: Uuid, row: &PhotoRow) -> Result<bool, Problem> {
        let is_same = |photo: &Photo| photo.sha256 == row.sha256 && photo.finding == row.finding;
        Ok(self.store.photos(inspection)?.iter().any(is_same))
    }

    /// A photo of an inspection.
    pub(super) fn photo(&self, inspection: Uuid, photo: Uuid) -> Result<Photo, Problem> {
        self.find(inspection)?;
        let photos = self.store.photos(inspection)?;
        photos.into_iter().find(|there| there.id == photo).ok_or_else(no_photo)
    }
}

/// Whether a path is one that something can be found under; it need not have been found yet.
fn is_finding(path: &str) -> bool {
    match path.split_once('.') {
        None => path == "tubes",
        Some(("answers", id)) => Question::of(id).is_some(),
        Some(("values", id)) => id == "rated" || ValueId::of(id).is_some(),
        Some(("readings", id)) => ReadingId::of(id).is_some(),
        Some(_) => false,
    }
}

fn no_photo() -> Problem {
    Problem::new(Code::NotFound, Message::new("error-no-photo"))
}

/// Why a photo could not be kept.
fn unkept(error: io::Error) -> Problem {
    match error.kind() {
        ErrorKind::StorageFull
        | ErrorKind::QuotaExceeded
        | ErrorKind::ReadOnlyFilesystem
        | ErrorKind::PermissionDenied => StoreError::from(error).into(),
        _ => photo_storage(error),
    }
}

fn photo_storage(error: io::Error) -> Problem {
    let message = Message::new("error-photo-storage").text("detail", error.to_string());
    Problem::new(Code::Storage, message)
}
