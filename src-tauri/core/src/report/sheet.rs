//! What a report says, in reading order, before it has pages.

use serde::Deserialize;

/// Paper that a report is printed on.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Deserialize, ts_rs::TS)]
#[serde(rename_all = "snake_case")]
pub enum Paper {
    /// ISO 216 A4, 210 × 297 mm.
    #[default]
    A4,
    /// US Letter, 8.5 × 11 in.
    Letter,
}

impl Paper {
    /// Width and height, mm (ISO 216 and ANSI/ASME Y14.1, from memory).
    pub(super) const fn millimetres(self) -> (f32, f32) {
        match self {
            Self::A4 => (210.0, 297.0),
            Self::Letter => (215.9, 279.4),
        }
    }
}

/// What a document says of itself.
#[derive(Clone, Debug, Default)]
pub struct Origin {
    /// The title of the document, as a reader's window shows it.
    pub title: String,
    /// Language of the text, an RFC 3066 tag.
    pub language: String,
    /// What made it, with its version.
    pub creator: String,
    /// When it was made: year, month, day, hour, minute and second, UTC.
    pub made: [u16; 6],
    /// An id that is new for each document.
    pub id: String,
}

/// A report: a first page read in ten seconds, then everything else.
#[derive(Clone, Debug, Default)]
pub struct Sheet {
    /// What it says of itself.
    pub origin: Origin,
    /// Stands at the head of each page but the first.
    pub running: String,
    /// Stands at the foot of each page, beside its number.
    pub foot: String,
    /// How a page is numbered: what stands before, between and after the two numbers.
    pub numbering: [String; 3],
    /// What it says.
    pub blocks: Vec<Block>,
}

/// A part of a report.
#[derive(Clone, Debug)]
pub enum Block {
    /// The verdict on a tag, at the head of the first page.
    Verdict(Box<Verdict>),
    /// A heading over what follows.
    Heading(String),
    /// A sentence or several.
    Paragraph(String),
    /// In smaller letters: where a figure is from.
    Note(String),
    /// One line each, with a mark before it.
    List(Vec<String>),
    /// Boxes to look at: a caution each.
    Cautions(Vec<String>),
    /// Names over columns, then rows.
    Table(Table),
    /// Pictures beside each other, as many as fit.
    Photos(Vec<Photo>),
    /// A drawing over the whole width.
    Drawing(Drawing),
    /// What follows starts a page.
    Page,
}

/// The verdict as it is read first.
#[derive(Clone, Debug, Default)]
pub struct Verdict {
    /// The unit's number for people.
    pub label: String,
    /// The unit's name.
    pub name: String,
    /// The signal word, with the alert triangle unless it is only a notice.
    pub signal_word: String,
    /// Without the triangle.
    pub is_notice: bool,
    /// The class with its basis.
    pub title: String,
    /// The touch current with what it is of; nothing where none is quoted.
    pub current: Option<[String; 2]>,
    /// Why.
    pub reason: Vec<String>,
    /// Over what may be done.
    pub now: String,
    /// What may be done now.
    pub permission: Vec<String>,
    /// A photo beside it.
    pub photo: Option<Photo>,
}

/// Rows of text under named columns.
#[derive(Clone, Debug, Default)]
pub struct Table {
    /// What each column is called.
    pub head: Vec<String>,
    /// The rows, each with a text for every column.
    pub rows: Vec<Row>,
    /// How wide the columns are beside each other.
    pub widths: Vec<f32>,
}

/// A row of a table.
#[derive(Clone, Debug, Default)]
pub struct Row {
    /// A text for every column.
    pub cells: Vec<String>,
    /// In heavy letters.
    pub heavy: bool,
}

/// A photo as it is stored, with what was drawn on it.
#[derive(Clone, Debug, Default)]
pub struct Photo {
    /// The stored JPEG: it is passed through as it is.
    pub jpeg: Vec<u8>,
    /// Width and height, pixels.
    pub size: (u32, u32),
    /// What it shows, for somebody who does not see it and under it.
    pub caption: String,
    /// What was drawn on it, over the whole picture: from 0 to 1 along width and height.
    pub marks: Vec<Stroke>,
}

/// A mark on a photo.
#[derive(Clone, Debug)]
pub enum Stroke {
    /// Points joined by straight lines.
    Line(Vec<[f32; 2]>),
    /// A disc with a number in it.
    Pin([f32; 2], String),
}

/// A drawing as SVG.
#[derive(Clone, Debug, Default)]
pub struct Drawing {
    /// The SVG.
    pub svg: String,
    /// The same in words.
    pub says: String,
    /// The share of the width that it takes at most, from 0 to 1.
    pub share: f32,
}
