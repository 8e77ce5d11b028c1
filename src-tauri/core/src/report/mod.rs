//! Reports, hang tags and lists on paper: typesetting of what the views say.
//!
//! A report is PDF/A-2a and holds to PDF/UA-1: tagged, with its letters in it; photos are passed through as they are
//! stored. Nothing here decides what is said.

mod code;
mod csv;
mod drawing;
mod error;
mod flow;
mod letters;
mod marks;
mod page;
mod parts;
mod pen;
mod sheet;
mod tag;
mod text;
mod verdict;
mod write;

use krilla::image::Image;

pub use self::csv::table;
pub use error::ReportError;
pub use sheet::{Block, Drawing, Origin, Paper, Photo, Row, Sheet, Stroke, Table, Verdict};
pub use tag::{HangTag, TagPaper, TagSheet, tags};
pub use text::text;

/// A report as PDF.
///
/// # Errors
/// A photo or a drawing cannot be read.
pub fn report(sheet: &Sheet, paper: Paper) -> Result<Vec<u8>, ReportError> {
    let letters = letters::Letters::new()?;
    let mut flow = flow::Flow::new(&letters, sheet, paper);
    flow.set();
    let flow::Flow { pen, photos, drawings, .. } = flow;
    let photo = |(place, photo): (usize, &&Photo)| {
        Image::from_jpeg(photo.jpeg.clone().into(), false)
            .map_err(|why| ReportError::Photo { place, why })
    };
    let (width, height) = paper.millimetres();
    let about = write::About {
        size: (width * page::MM, height * page::MM),
        origin: &sheet.origin,
        photos: photos.iter().enumerate().map(photo).collect::<Result<_, _>>()?,
        drawings,
    };
    write::write(&pen.out, &about, &letters)
}

#[cfg(test)]
mod tests;
