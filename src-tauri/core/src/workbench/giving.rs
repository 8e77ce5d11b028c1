//! Files that leave the record for a place that a person chose: a report, tags, a photo, the list.

use std::io::{self, ErrorKind, Write};
use std::path::Path;

use base64::Engine;
use base64::engine::general_purpose::STANDARD;

use super::error::{Code, Problem};
use crate::exchange::beside;
use crate::words::Message;

/// Writes a file from its base64 text, whole or not at all: what stood under that name is left until then.
///
/// # Errors
/// The text is no base64 (field `content`), or the file cannot be written.
pub fn save_text(to: &Path, content: &str) -> Result<(), Problem> {
    let bytes = STANDARD.decode(content).map_err(|_| Problem {
        field: Some("content".to_owned()),
        ..Problem::new(Code::BadInput, Message::new("takes-base64"))
    })?;
    write_whole(to, &bytes).map_err(|error| refused(&error))
}

fn write_whole(to: &Path, bytes: &[u8]) -> io::Result<()> {
    let mut beside = beside(to)?;
    beside.write_all(bytes)?;
    beside.as_file().sync_all()?;
    beside.persist(to).map_err(|error| error.error)?;
    Ok(())
}

fn refused(error: &io::Error) -> Problem {
    let message = barred(error.kind())
        .unwrap_or_else(|| Message::new("file-failed").text("detail", error.to_string()));
    Problem::new(Code::Storage, message)
}

/// What keeps a file from its place, where that can be told.
pub(super) fn barred(kind: ErrorKind) -> Option<Message> {
    Some(match kind {
        ErrorKind::StorageFull | ErrorKind::QuotaExceeded => Message::new("file-no-room"),
        ErrorKind::PermissionDenied | ErrorKind::ReadOnlyFilesystem => Message::new("file-barred"),
        ErrorKind::NotFound | ErrorKind::NotADirectory => Message::new("file-no-folder"),
        _ => return None,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_file_is_written_whole_over_what_stood_there() {
        let folder = tempfile::tempdir().unwrap();
        let to = folder.path().join("report.pdf");
        std::fs::write(&to, "what stood there before, which was longer").unwrap();
        save_text(&to, &STANDARD.encode("%PDF")).unwrap();
        assert_eq!(std::fs::read(&to).unwrap(), b"%PDF");
        assert_eq!(std::fs::read_dir(folder.path()).unwrap().count(), 1);
    }

    #[test]
    fn what_is_no_base64_leaves_what_stood_there() {
        let folder = tempfile::tempdir().unwrap();
        let to = folder.path().join("report.pdf");
        std::fs::write(&to, "before").unwrap();
        let problem = save_text(&to, "no base64!").unwrap_err();
        assert_eq!((problem.code, problem.field.as_deref()), (Code::BadInput, Some("content")));
        assert_eq!(std::fs::read(&to).unwrap(), b"before");
    }

    #[test]
    fn a_folder_that_is_gone_and_a_full_disk_are_told_apart() {
        let folder = tempfile::tempdir().unwrap();
        let problem = save_text(&folder.path().join("gone").join("a.pdf"), "").unwrap_err();
        assert_eq!(problem.message, Message::new("file-no-folder"));
        let full = refused(&io::Error::from(ErrorKind::StorageFull));
        assert_eq!(full.message, Message::new("file-no-room"));
        let barred = refused(&io::Error::from(ErrorKind::ReadOnlyFilesystem));
        assert_eq!(barred.message, Message::new("file-barred"));
    }
}
