//! What is drawn on each page, before it is written: marks in points from the upper left corner.

use super::letters::Weight;

/// Points of 1/72 in for one millimetre.
pub(super) const MM: f32 = 72.0 / 25.4;

/// How light it is: 0 is black, 1 white.
pub(super) type Ink = f32;

/// Black.
pub(super) const BLACK: Ink = 0.0;
/// What is read after everything else.
pub(super) const GREY: Ink = 0.35;
/// Lines between things.
pub(super) const PALE: Ink = 0.75;

/// A place and size, points.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Area {
    pub(super) x: f32,
    pub(super) y: f32,
    pub(super) width: f32,
    pub(super) height: f32,
}

/// Something drawn.
#[derive(Clone, Debug)]
pub(super) enum Mark {
    Text {
        x: f32,
        baseline: f32,
        size: f32,
        weight: Weight,
        ink: Ink,
        text: String,
    },
    /// Points joined by lines; closed and filled where there is no line width.
    Shape {
        points: Vec<[f32; 2]>,
        closed: bool,
        line: f32,
        ink: Ink,
    },
    /// A disc.
    Disc {
        middle: [f32; 2],
        radius: f32,
        line: f32,
        ink: Ink,
    },
    /// A photo by its place among those of the report.
    Photo {
        place: usize,
        area: Area,
    },
    /// A drawing by its place.
    Drawing {
        place: usize,
        area: Area,
    },
}

/// A mark with the part of the text that it belongs to; nothing where it only decorates.
#[derive(Clone, Debug)]
pub(super) struct Placed {
    pub(super) part: Option<usize>,
    pub(super) mark: Mark,
}

/// What a part is, for somebody who has it read out.
#[derive(Clone, Debug, PartialEq)]
pub(super) enum Role {
    /// The signal word.
    Title(String),
    Heading(String),
    Paragraph,
    Item,
    /// With the same in words.
    Figure(String),
    /// A cell of a row of a table: which table and row, and whether it names its column.
    Cell {
        table: usize,
        row: usize,
        names: bool,
    },
}

/// Pages with their marks, and the parts in reading order.
#[derive(Debug, Default)]
pub(super) struct Pages {
    pub(super) pages: Vec<Vec<Placed>>,
    pub(super) parts: Vec<Role>,
}
