//! The names that the parts of a bundle may have. There are four, and none of them can lead anywhere.

use crate::photo::{Digest, Size};

/// Name of the part that lists the others.
pub(super) const MANIFEST: &str = "manifest.json";
/// Name of the part with the events.
pub(super) const EVENTS: &str = "events.jsonl";
/// What the names of photos begin with.
const PHOTOS: &str = "photos/";
/// What the name of a photo ends in.
const PHOTO: &str = ".jpg";
/// What the name of a thumbnail ends in.
const THUMBNAIL: &str = ".thumb.jpg";

/// A part, by its name.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) enum PartName {
    Manifest,
    Events,
    Picture(Digest, Size),
}

impl PartName {
    /// Reads a name; any other is none.
    pub fn parse(name: &str) -> Option<Self> {
        match name {
            MANIFEST => return Some(Self::Manifest),
            EVENTS => return Some(Self::Events),
            _ => {}
        }
        let file = name.strip_prefix(PHOTOS)?;
        // The longer ending first: it ends in the shorter one.
        let small = file.strip_suffix(THUMBNAIL).map(|stem| (stem, Size::Thumbnail));
        let (stem, size) = small.or_else(|| Some((file.strip_suffix(PHOTO)?, Size::Full)))?;
        Digest::parse(stem).map(|digest| Self::Picture(digest, size))
    }

    /// The name of a picture.
    pub fn of_picture(digest: &Digest, size: Size) -> String {
        let ending = match size {
            Size::Full => PHOTO,
            Size::Thumbnail => THUMBNAIL,
        };
        format!("{PHOTOS}{digest}{ending}")
    }
}
