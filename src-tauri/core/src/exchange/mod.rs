//! Carries units between devices in one file, a bundle, and makes the union of what both know.
//!
//! A bundle is a zip: `events.jsonl`, one event of the log to a line; `photos/<sha256>.jpg` and
//! `photos/<sha256>.thumb.jpg`, stored as they are; `manifest.json`, which names every part with its
//! length and SHA-256. The events of a unit are all there or none.
//!
//! Invariants: a bundle is taken in whole or not at all, and where it is refused the record and the
//! photos are as they were; nothing of a bundle names a file here but a photo's SHA-256; no demonstration
//! leaves; one event and one photo are in memory at a time.
//!
//! What this does not do: it settles nothing between two answers. That is the record's rule of who wins,
//! the same on every device.

mod archive;
mod beside;
mod error;
mod export;
mod import;
mod lines;
mod manifest;
mod meaning;
mod parts;

#[cfg(test)]
mod tests;

pub use beside::beside;
pub use error::BundleError;
pub use export::{Exported, export, write_bundle};
pub use import::{Arrived, Imported, arrive, import};
pub use manifest::BUNDLE_VERSION;

/// The most photos in a bundle: at 300 kB each some 30 GB, more than a phone can be asked to take in.
const MOST_PHOTOS: u64 = 100_000;

/// The most events in a bundle: ten times those of the largest shop that this is checked with.
const MOST_EVENTS: u64 = 10_000_000;

/// The most bytes of a line: an event is the marks of one photo at most, some 20 kB.
const MOST_LINE_BYTES: u64 = 1 << 20;

/// The most bytes of all events together, unpacked: 4 GiB, some 400 bytes for each of the most events.
const MOST_EVENT_BYTES: u64 = 4 << 30;

/// The most bytes of a manifest: some 160 for each of the most parts.
const MOST_MANIFEST_BYTES: u64 = 64 << 20;

/// How many times longer than packed a part may be. Events of one unit after the other pack to a tenth;
/// what packs to less than a hundredth is not written by people.
const MOST_PACKED: u64 = 100;

/// How far ahead of this device's clock an event may be: a day covers a clock set to local time.
const AHEAD_MS: i64 = 86_400_000;
