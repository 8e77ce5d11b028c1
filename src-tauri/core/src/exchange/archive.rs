//! Opens the zip of a bundle, looking at everything it says of itself before any of it is unpacked.
//!
//! A zip says most things twice, before each part and in the list at its end, and programs differ in which
//! they believe. Here both must agree, nothing may stand twice, overlap or lie between, and only plain
//! files with the names of a bundle may be there.

use std::collections::BTreeMap;
use std::fs::File;
use std::io::{BufReader, Read, Seek, SeekFrom};

use zip::result::ZipError;
use zip::{CompressionMethod, ZipArchive};

use super::error::BundleError;
use super::manifest::{Manifest, Part};
use super::parts::{MANIFEST, PartName};
use super::{MOST_EVENT_BYTES, MOST_MANIFEST_BYTES, MOST_PACKED, MOST_PHOTOS};
use crate::photo::MOST_KEPT_BYTES;

/// Bytes of the record at the very end of a zip without a comment, and what it begins with. This and the
/// places below: PKWARE's description of the form, sections 4.3.14 to 4.3.16 (from memory, high).
const END: usize = 22;
const END_MAGIC: &[u8] = b"PK\x05\x06";
/// Before it, where a number does not fit: a pointer of this length to the longer record.
const POINTER: usize = 20;
const POINTER_MAGIC: &[u8] = b"PK\x06\x07";
const LONG_END: usize = 56;
const LONG_END_MAGIC: &[u8] = b"PK\x06\x06";
/// What stands in the place of a number that does not fit.
const ELSEWHERE: u64 = 0xFFFF;

/// An opened bundle.
pub(super) struct Archive {
    zip: ZipArchive<BufReader<File>>,
}

impl Archive {
    /// Opens a bundle and checks what its zip says of itself.
    pub fn open(mut file: File) -> Result<Self, BundleError> {
        let most = 2 * MOST_PHOTOS + 2;
        let said = entries(&mut file)?;
        if said > most {
            return Err(BundleError::TooMany);
        }
        let mut zip = ZipArchive::new(BufReader::new(file)).map_err(broken)?;
        if zip.len() as u64 > most {
            return Err(BundleError::TooMany);
        }
        if zip.has_duplicate_names() {
            return Err(BundleError::Twice);
        }
        for index in 0..zip.len() {
            check(&zip, index)?;
        }
        if zip.has_overlapping_entries().map_err(broken)? {
            return Err(BundleError::Twice);
        }
        zip.validate_header_consistency().map_err(broken)?;
        Ok(Self { zip })
    }

    /// Reads the manifest and holds it against what is there.
    pub fn manifest(&mut self) -> Result<Manifest, BundleError> {
        let bytes = match self.read(MANIFEST, MOST_MANIFEST_BYTES) {
            Err(BundleError::Missing(_)) => Err(BundleError::NotABundle(MANIFEST.to_owned())),
            read => read,
        }?;
        let manifest = Manifest::read(&bytes)?;
        self.compare(manifest.by_name())?;
        Ok(manifest)
    }

    fn compare(&self, listed: BTreeMap<&str, &Part>) -> Result<(), BundleError> {
        for index in 0..self.zip.len() {
            let entry = self.zip.by_index_data(index).map_err(broken)?;
            let name = entry.name().map_err(broken)?;
            match listed.get(name.as_ref()) {
                None if name != MANIFEST => return Err(BundleError::Unlisted(name.into_owned())),
                Some(part) if part.bytes != entry.size() => {
                    return Err(BundleError::WrongHash(name.into_owned()));
                }
                _ => {}
            }
        }
        let missing = listed.keys().find(|name| self.zip.index_for_name(name).is_none());
        missing.map_or(Ok(()), |name| Err(BundleError::Missing((*name).to_owned())))
    }

    /// The bytes of a part.
    pub fn read(&mut self, name: &str, most: u64) -> Result<Vec<u8>, BundleError> {
        let mut bytes = Vec::new();
        let part = self.part(name)?;
        part.take(most + 1).read_to_end(&mut bytes).map_err(super::lines::unpacking)?;
        if bytes.len() as u64 > most {
            return Err(BundleError::TooLong(name.to_owned()));
        }
        Ok(bytes)
    }

    /// A part to be read bit by bit.
    pub fn part(&mut self, name: &str) -> Result<impl Read + '_, BundleError> {
        match self.zip.by_name(name) {
            Err(ZipError::FileNotFound) => Err(BundleError::Missing(name.to_owned())),
            opened => opened.map_err(broken),
        }
    }
}

/// How many parts a zip says it has, by the record at its very end: one that claims millions is refused
/// before a list of them is made.
fn entries(file: &mut File) -> Result<u64, BundleError> {
    let not_one = || BundleError::NotABundle(String::new());
    let length = file.seek(SeekFrom::End(0))?;
    let end = length.checked_sub(END as u64).ok_or_else(not_one)?;
    let record = read_at(file, end, END)?;
    if !record.starts_with(END_MAGIC) {
        return Err(not_one());
    }
    let short = number(&record, 10, 2).ok_or_else(not_one)?;
    let Some(at) = end.checked_sub(POINTER as u64).filter(|_| short == ELSEWHERE) else {
        return Ok(short);
    };
    let pointer = read_at(file, at, POINTER)?;
    if !pointer.starts_with(POINTER_MAGIC) {
        return Ok(short);
    }
    let at = number(&pointer, 8, 8).filter(|at| *at < length).ok_or_else(not_one)?;
    let long = read_at(file, at, LONG_END)?;
    if !long.starts_with(LONG_END_MAGIC) {
        return Err(not_one());
    }
    number(&long, 32, 8).ok_or_else(not_one)
}

fn read_at(file: &mut File, at: u64, length: usize) -> Result<Vec<u8>, BundleError> {
    let mut bytes = vec![0; length];
    file.seek(SeekFrom::Start(at))?;
    file.read_exact(&mut bytes).map_err(super::lines::unpacking)?;
    Ok(bytes)
}

/// A number as zip writes it, the small end first.
fn number(bytes: &[u8], at: usize, length: usize) -> Option<u64> {
    let bytes = bytes.get(at..at.checked_add(length)?)?;
    Some(bytes.iter().rev().fold(0, |number, byte| number << 8 | u64::from(*byte)))
}

/// Whether a part is one that a bundle may have.
fn check(zip: &ZipArchive<BufReader<File>>, index: usize) -> Result<(), BundleError> {
    let entry = zip.by_index_data(index).map_err(broken)?;
    let given = || String::from_utf8_lossy(entry.name_raw()).into_owned();
    let name = std::str::from_utf8(entry.name_raw()).map_err(|_| BundleError::BadName(given()))?;
    if entry.is_symlink() || !entry.is_file() {
        return Err(BundleError::NotAFile(given()));
    }
    let part = PartName::parse(name).ok_or_else(|| BundleError::BadName(given()))?;
    let is_stored = entry.compression() == CompressionMethod::Stored;
    let (may_pack, most) = match part {
        PartName::Events => (true, MOST_EVENT_BYTES),
        PartName::Manifest => (true, MOST_MANIFEST_BYTES),
        PartName::Picture(..) => (false, MOST_KEPT_BYTES),
    };
    let is_packed = may_pack && entry.compression() == CompressionMethod::Deflated;
    if entry.encrypted() || !(is_stored || is_packed) {
        return Err(BundleError::OtherPacking(given()));
    }
    let same = !is_stored || entry.size() == entry.compressed_size();
    // A few bytes may pack to anything.
    let packed = entry.compressed_size().saturating_add(1024).saturating_mul(MOST_PACKED);
    if !same || entry.size() > packed {
        return Err(BundleError::Bomb(given()));
    }
    if entry.size() > most { Err(BundleError::TooLong(given())) } else { Ok(()) }
}

fn broken(error: ZipError) -> BundleError {
    match error {
        ZipError::Io(error) => super::lines::unpacking(error),
        other => BundleError::NotABundle(other.to_string()),
    }
}
