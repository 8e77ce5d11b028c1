//! The part that says what a bundle is and names the others.

use std::collections::{BTreeMap, BTreeSet};

use serde::{Deserialize, Serialize};
use serde_json::Value;
use uuid::Uuid;

use super::error::BundleError;
use super::parts::{EVENTS, PartName};
use crate::photo::Digest;

/// The version of bundles that is written here, and the newest that is read.
pub const BUNDLE_VERSION: u64 = 1;

/// What a bundle calls itself.
const FORMAT: &str = "coldchassis_bundle";

/// A manifest as it is written.
#[derive(Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Manifest {
    /// What the file is.
    pub format: String,
    /// The version of its form.
    pub version: u64,
    /// The version of the program that wrote it.
    pub program: String,
    /// When it was written, UTC milliseconds.
    pub at: i64,
    /// Units that are in it.
    pub units: u64,
    /// Events that are in it.
    pub events: u64,
    /// Every other part, in the order in which it stands.
    pub parts: Vec<Part>,
    /// The SHA-256 of photos that events name but that stay behind: removed ones, and ones whose file
    /// is gone.
    pub left_out: Vec<String>,
    /// Events that others name but that a damaged file cost the sender.
    pub lost: BTreeSet<Uuid>,
}

/// A part as the manifest names it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct Part {
    pub name: String,
    /// Its length when it is unpacked.
    pub bytes: u64,
    /// Of what it unpacks to, 64 hexadecimal digits.
    pub sha256: String,
}

impl Manifest {
    pub fn new(at: i64) -> Self {
        Self {
            format: FORMAT.to_owned(),
            version: BUNDLE_VERSION,
            program: env!("CARGO_PKG_VERSION").to_owned(),
            at,
            units: 0,
            events: 0,
            parts: Vec::new(),
            left_out: Vec::new(),
            lost: BTreeSet::new(),
        }
    }

    /// Reads a manifest. The version is looked at first: a newer one may have any other form.
    pub fn read(bytes: &[u8]) -> Result<Self, BundleError> {
        let bad = |error: serde_json::Error| BundleError::BadManifest(error.to_string());
        let value: Value = serde_json::from_slice(bytes).map_err(bad)?;
        let field = |name: &str| value.get(name);
        if field("format").and_then(Value::as_str) != Some(FORMAT) {
            return Err(BundleError::BadManifest("format".to_owned()));
        }
        let found = field("version").and_then(Value::as_u64);
        match found {
            Some(found) if found > BUNDLE_VERSION => {
                return Err(BundleError::Newer { found, known: BUNDLE_VERSION });
            }
            Some(1..) => {}
            _ => return Err(BundleError::BadManifest("version".to_owned())),
        }
        let manifest: Self = serde_json::from_value(value).map_err(bad)?;
        manifest.check()?;
        Ok(manifest)
    }

    fn check(&self) -> Result<(), BundleError> {
        for part in &self.parts {
            let is_part =
                PartName::parse(&part.name).is_some_and(|name| name != PartName::Manifest);
            if !is_part {
                return Err(BundleError::BadName(part.name.clone()));
            }
            if Digest::parse(&part.sha256).is_none() {
                return Err(BundleError::BadManifest(part.name.clone()));
            }
        }
        if self.by_name().len() != self.parts.len() {
            return Err(BundleError::Twice);
        }
        match self.left_out.iter().find(|text| Digest::parse(text).is_none()) {
            Some(bad) => Err(BundleError::BadManifest(bad.clone())),
            None => Ok(()),
        }
    }

    /// The parts by their names.
    pub fn by_name(&self) -> BTreeMap<&str, &Part> {
        self.parts.iter().map(|part| (part.name.as_str(), part)).collect()
    }

    /// The part with the events.
    pub fn events_part(&self) -> Result<&Part, BundleError> {
        let events = self.parts.iter().find(|part| part.name == EVENTS);
        events.ok_or_else(|| BundleError::Missing(EVENTS.to_owned()))
    }
}
