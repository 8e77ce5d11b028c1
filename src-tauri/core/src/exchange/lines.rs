//! Reads events line by line, measuring what passes, so that a line of any length takes no more memory
//! than a line may have.

use std::io::{self, BufRead, BufReader, Read, Write};

use sha2::{Digest as _, Sha256};

use super::error::BundleError;
use super::{MOST_EVENTS, MOST_LINE_BYTES};
use crate::photo::Digest;
use crate::store::Event;

/// Hashes and counts what is written through it.
pub(super) struct Measured<W> {
    inner: W,
    hash: Sha256,
    bytes: u64,
}

impl<W> Measured<W> {
    pub fn new(inner: W) -> Self {
        Self { inner, hash: Sha256::new(), bytes: 0 }
    }

    /// How many bytes passed, and their SHA-256.
    pub fn finish(self) -> (u64, String) {
        let hash = self.hash.finalize();
        (self.bytes, hash.iter().map(|byte| format!("{byte:02x}")).collect())
    }

    fn pass(&mut self, bytes: &[u8]) {
        self.hash.update(bytes);
        self.bytes = self.bytes.saturating_add(bytes.len() as u64);
    }
}

impl<W: Write> Write for Measured<W> {
    fn write(&mut self, bytes: &[u8]) -> io::Result<usize> {
        let written = self.inner.write(bytes)?;
        self.pass(bytes.get(..written).unwrap_or_default());
        Ok(written)
    }

    fn flush(&mut self) -> io::Result<()> {
        self.inner.flush()
    }
}

impl<R: Read> Read for Measured<R> {
    fn read(&mut self, bytes: &mut [u8]) -> io::Result<usize> {
        let read = self.inner.read(bytes)?;
        self.pass(bytes.get(..read).unwrap_or_default());
        Ok(read)
    }
}

/// The events of a bundle, one after the other.
pub(super) struct Lines<R> {
    reader: BufReader<Measured<R>>,
    line: u64,
}

impl<R: Read> Lines<R> {
    pub fn new(reader: R) -> Self {
        Self { reader: BufReader::with_capacity(1 << 16, Measured::new(reader)), line: 0 }
    }

    /// The number of the line that was read last, from 1.
    pub const fn line(&self) -> u64 {
        self.line
    }

    /// How many bytes were read, and their SHA-256.
    pub fn finish(self) -> (u64, String) {
        self.reader.into_inner().finish()
    }

    /// The next event, or nothing at the end.
    pub fn next(&mut self) -> Result<Option<Event>, BundleError> {
        let mut text = Vec::new();
        let mut limited = (&mut self.reader).take(MOST_LINE_BYTES + 1);
        limited.read_until(b'\n', &mut text).map_err(unpacking)?;
        if text.is_empty() {
            return Ok(None);
        }
        self.line += 1;
        let line = self.line;
        if line > MOST_EVENTS {
            return Err(BundleError::TooMany);
        }
        let whole = text.pop_if(|last| *last == b'\n').is_some();
        if !whole {
            // Every line has its end: one that lacks it is cut short, or too long.
            return Err(BundleError::BadLine { line, detail: String::new() });
        }
        let bad =
            |error: serde_json::Error| BundleError::BadLine { line, detail: error.to_string() };
        serde_json::from_slice(&text).map(Some).map_err(bad)
    }
}

/// A part that cannot be unpacked: the bundle is damaged, not this device.
pub(super) fn unpacking(error: io::Error) -> BundleError {
    match error.kind() {
        io::ErrorKind::InvalidData | io::ErrorKind::InvalidInput | io::ErrorKind::UnexpectedEof => {
            BundleError::NotABundle(error.to_string())
        }
        _ => BundleError::Io(error),
    }
}

/// Whether bytes are those that a SHA-256 is of.
pub(super) fn is_of(bytes: &[u8], sha256: &str) -> bool {
    Digest::of(bytes).as_str() == sha256
}
