//! Writes pages of marks as PDF/A-2a that also holds to PDF/UA-1: tagged, with its letters in it.

use krilla::Document;
use krilla::SerializeSettings;
use krilla::color::luma;
use krilla::configure::{Accessibility, Archival, ConfigurationBuilder};
use krilla::destination::XyzDestination;
use krilla::geom::{Path, PathBuilder, Point, Size, Transform};
use krilla::image::Image;
use krilla::metadata::{DateTime, Metadata};
use krilla::outline::{Outline, OutlineNode};
use krilla::page::PageSettings;
use krilla::paint::{Fill, LineCap, LineJoin, Stroke};
use krilla::surface::Surface;
use krilla::tagging::{Artifact, ContentTag, Identifier, SpanTag};
use krilla::text::TextDirection;

use super::drawing;
use super::error::ReportError;
use super::letters::{Letters, plain};
use super::page::{Area, Ink, Mark, Pages, Placed, Role};
use super::parts;
use super::sheet::Origin;

/// How far above its baseline a heading is shown from, points.
const ABOVE: f32 = 20.0;

/// What the marks point to, and what the document says of itself.
pub(super) struct About<'a> {
    pub(super) size: (f32, f32),
    pub(super) origin: &'a Origin,
    pub(super) photos: Vec<Image>,
    pub(super) drawings: Vec<usvg::Tree>,
}

/// Writes the document.
pub(super) fn write(
    pages: &Pages,
    about: &About<'_>,
    letters: &Letters,
) -> Result<Vec<u8>, ReportError> {
    let mut document = Document::new_with(settings()?);
    let mut content: Vec<Vec<Identifier>> = vec![Vec::new(); pages.parts.len()];
    for page in &pages.pages {
        let size = PageSettings::from_wh(about.size.0, about.size.1).ok_or_else(out_of_range)?;
        let mut sheet = document.start_page_with(size);
        let mut surface = sheet.surface();
        for placed in page {
            place(&mut surface, placed, pages, about, letters, &mut content)?;
        }
        surface.finish();
        sheet.finish();
    }
    document.set_outline(outline(pages));
    document.set_tag_tree(parts::tree(&pages.parts, content));
    document.set_metadata(metadata(about.origin));
    document.finish().map_err(|error| ReportError::Document(format!("{error:?}")))
}

/// The headings with where they are.
fn outline(pages: &Pages) -> Outline {
    let mut outline = Outline::new();
    let mut seen = None;
    for (number, page) in pages.pages.iter().enumerate() {
        for placed in page {
            let Some(part) = placed.part.filter(|part| seen.is_none_or(|seen| *part > seen)) else {
                continue;
            };
            seen = Some(part);
            let (Some(Role::Title(text) | Role::Heading(text)), Mark::Text { x, baseline, .. }) =
                (pages.parts.get(part), &placed.mark)
            else {
                continue;
            };
            let at = XyzDestination::new(number, Point::from_xy(*x, baseline - ABOVE));
            outline.push_child(OutlineNode::new(text.clone(), at));
        }
    }
    outline
}

const fn out_of_range() -> ReportError {
    ReportError::OutOfRange
}

fn settings() -> Result<SerializeSettings, ReportError> {
    let configuration = ConfigurationBuilder::new()
        .with_archival_validator(Archival::A2_A)
        .with_accessibility_validator(Accessibility::UA1)
        .finish()
        .map_err(|error| ReportError::Document(format!("{error:?}")))?;
    Ok(SerializeSettings { configuration, enable_tagging: true, ..SerializeSettings::default() })
}

fn metadata(origin: &Origin) -> Metadata {
    let [year, month, day, hour, minute, second] = origin.made;
    let made = DateTime::new(year)
        .month(month as u8)
        .day(day as u8)
        .hour(hour as u8)
        .minute(minute as u8)
        .second(second as u8)
        .utc_offset_hour(0)
        .utc_offset_minute(0);
    Metadata::new()
        .title(plain(&origin.title))
        .language(origin.language.clone())
        .creator(origin.creator.clone())
        .creation_date(made)
        .document_id(origin.id.clone())
}

/// Draws one mark, and keeps to which part of the text it belongs.
fn place(
    surface: &mut Surface<'_>,
    placed: &Placed,
    pages: &Pages,
    about: &About<'_>,
    letters: &Letters,
    content: &mut [Vec<Identifier>],
) -> Result<(), ReportError> {
    let tag = match (placed.part.and_then(|part| pages.parts.get(part)), &placed.mark) {
        (None, _) => ContentTag::Artifact(Artifact::default()),
        (Some(Role::Figure(_)), _) => ContentTag::Other,
        (Some(_), Mark::Text { .. }) => ContentTag::Span(SpanTag::empty()),
        (Some(_), _) => ContentTag::Other,
    };
    let identifier = surface.start_tagged(tag);
    let drawn = draw(surface, &placed.mark, about, letters);
    surface.end_tagged();
    if let Some(of_part) = placed.part.and_then(|part| content.get_mut(part)) {
        of_part.push(identifier);
    }
    drawn
}

fn draw(
    surface: &mut Surface<'_>,
    mark: &Mark,
    about: &About<'_>,
    letters: &Letters,
) -> Result<(), ReportError> {
    match mark {
        Mark::Text { x, baseline, size, weight, ink, text } => {
            surface.set_stroke(None);
            surface.set_fill(Some(fill(*ink)));
            // A line that goes on ends in a space, so that words are told apart when it is read out.
            let text = format!("{text} ");
            let at = Point::from_xy(*x, *baseline);
            let font = letters.font(*weight);
            surface.draw_text(at, font, *size, &text, false, TextDirection::LeftToRight);
        }
        Mark::Shape { points, closed, line, ink } => {
            let path = path(points, *closed).ok_or_else(out_of_range)?;
            shape(surface, &path, *line, *ink);
        }
        Mark::Disc { middle, radius, line, ink } => {
            let path = disc(*middle, *radius).ok_or_else(out_of_range)?;
            shape(surface, &path, *line, *ink);
        }
        Mark::Photo { place, area } => {
            if let Some(image) = about.photos.get(*place) {
                let size = Size::from_wh(area.width, area.height).ok_or_else(out_of_range)?;
                surface.push_transform(&to(*area));
                surface.draw_image(image.clone(), size);
                surface.pop();
            }
        }
        Mark::Drawing { place, area } => {
            if let Some(tree) = about.drawings.get(*place) {
                surface.push_transform(&to(*area));
                let drawn = drawing::draw(surface, tree, (area.width, area.height));
                surface.pop();
                drawn.ok_or(ReportError::NotDrawn(*place))?;
            }
        }
    }
    Ok(())
}

fn to(area: Area) -> Transform {
    Transform::from_translate(area.x, area.y)
}

fn fill(ink: Ink) -> Fill {
    Fill { paint: luma::Color::new((255.0 * ink) as u8).into(), ..Fill::default() }
}

fn shape(surface: &mut Surface<'_>, path: &Path, line: f32, ink: Ink) {
    if line > 0.0 {
        let paint = luma::Color::new((255.0 * ink) as u8).into();
        let (line_cap, line_join) = (LineCap::Round, LineJoin::Round);
        surface.set_fill(None);
        surface.set_stroke(Some(Stroke {
            paint,
            width: line,
            line_cap,
            line_join,
            ..Stroke::default()
        }));
    } else {
        surface.set_stroke(None);
        surface.set_fill(Some(fill(ink)));
    }
    surface.draw_path(path);
}

fn path(points: &[[f32; 2]], closed: bool) -> Option<Path> {
    let mut path = PathBuilder::new();
    let mut points = points.iter();
    let [x, y] = points.next()?;
    path.move_to(*x, *y);
    for [x, y] in points {
        path.line_to(*x, *y);
    }
    if closed {
        path.close();
    }
    path.finish()
}

/// How far the handles of four arcs stand out that come within 0.03 % of a circle.
const HANDLE: f32 = 0.552_284_8;

fn disc([x, y]: [f32; 2], radius: f32) -> Option<Path> {
    let (r, h) = (radius, radius * HANDLE);
    let mut path = PathBuilder::new();
    path.move_to(x + r, y);
    path.cubic_to(x + r, y + h, x + h, y + r, x, y + r);
    path.cubic_to(x - h, y + r, x - r, y + h, x - r, y);
    path.cubic_to(x - r, y - h, x - h, y - r, x, y - r);
    path.cubic_to(x + h, y - r, x + r, y - h, x + r, y);
    path.close();
    path.finish()
}
