//! The hang tag that goes on the cord of a unit: read at arm's length, good in black only.

use serde::Deserialize;

use super::code::Code;
use super::error::ReportError;
use super::letters::{Letters, Weight};
use super::page::{Area, BLACK, MM, Mark, PALE, Role};
use super::pen::{Pen, Style};
use super::sheet::Origin;
use super::write::{About, write};

/// What a tag is printed on.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Deserialize, ts_rs::TS)]
#[serde(rename_all = "snake_case")]
pub enum TagPaper {
    /// A label of 62 × 100 mm.
    #[default]
    Label62,
    /// A label of 4 × 6 in.
    FourBySix,
    /// Eight on a sheet of A4, two beside each other.
    SheetOfEight,
}

/// What a tag says.
#[derive(Clone, Debug, Default)]
pub struct HangTag {
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
    /// Why; no more than two lines are printed.
    pub reason: String,
    /// What may be done now.
    pub permission: String,
    /// What the code says.
    pub code: String,
    /// Over the line for a signature.
    pub signature: String,
    /// When it was made and by what.
    pub made: String,
}

/// Tags as they are printed, with what the document says of itself.
#[derive(Clone, Debug, Default)]
pub struct TagSheet {
    /// The tags.
    pub tags: Vec<HangTag>,
    /// What the document says of itself.
    pub origin: Origin,
}

const SIGNAL: Style = Style { size: 20.0, weight: Weight::Bold, ink: BLACK };
const TITLE: Style = Style { size: 13.0, weight: Weight::Bold, ink: BLACK };
const LABEL: Style = Style { size: 12.0, weight: Weight::Bold, ink: BLACK };
const WORDS: Style = Style { size: 8.5, weight: Weight::Regular, ink: BLACK };
const SMALL: Style = Style { size: 6.5, weight: Weight::Regular, ink: BLACK };
const MARGIN: f32 = 3.0 * MM;
const PAD: f32 = 2.5 * MM;
const FRAME: f32 = 1.6;
/// The punched hole for the string, radius.
const HOLE: f32 = 2.5 * MM;
/// A code is so large that a square is some 0.5 mm wide: four dots of a label printer of 203 dots an inch (common practice).
const CODE: f32 = 27.0 * MM;
/// Room for a signature.
const SIGNED: f32 = 9.0 * MM;
/// The lines of a reason that are printed.
const REASON: usize = 2;
/// Letters grow to fill a tag, and shrink to fit, between these.
const SCALES: (f32, f32) = (0.6, 1.9);
const STEP: f32 = 0.05;

impl TagPaper {
    /// The page, mm.
    const fn millimetres(self) -> (f32, f32) {
        match self {
            Self::Label62 => (62.0, 100.0),
            Self::FourBySix => (101.6, 152.4),
            Self::SheetOfEight => (210.0, 297.0),
        }
    }

    /// How many stand beside each other and one under the other.
    const fn grid(self) -> (usize, usize) {
        match self {
            Self::SheetOfEight => (2, 4),
            _ => (1, 1),
        }
    }
}

/// Tags as PDF: one a page, or eight.
///
/// # Errors
/// The text of a code is too long.
pub fn tags(sheet: &TagSheet, paper: TagPaper) -> Result<Vec<u8>, ReportError> {
    let letters = Letters::new()?;
    let mut pen = Pen::new(&letters);
    let (width, height) = paper.millimetres();
    let size = (width * MM, height * MM);
    let (across, down) = paper.grid();
    let (wide, high) = (size.0 / across as f32, size.1 / down as f32);
    for (turn, tag) in sheet.tags.iter().enumerate() {
        let place = turn % (across * down);
        if place == 0 && turn > 0 {
            pen.out.pages.push(Vec::new());
        }
        let (column, row) = ((place % across) as f32, (place / across) as f32);
        let area = Area { x: column * wide, y: row * high, width: wide, height: high };
        set(&mut pen, tag, area)?;
        if across > 1 {
            // Where it is cut.
            pen.frame(area, 0.4, PALE);
        }
    }
    let about = About { size, origin: &sheet.origin, photos: Vec::new(), drawings: Vec::new() };
    write(&pen.out, &about, &letters)
}

/// Sets one tag in its area, in the largest letters that leave room for everything.
fn set(pen: &mut Pen<'_>, tag: &HangTag, area: Area) -> Result<(), ReportError> {
    let code = Code::of(&tag.code)?;
    let inner = Area {
        x: area.x + MARGIN,
        y: area.y + MARGIN,
        width: area.width - 2.0 * MARGIN,
        height: area.height - 2.0 * MARGIN,
    };
    pen.frame(inner, FRAME, BLACK);
    let middle = [inner.x + inner.width / 2.0, inner.y + HOLE + 1.0 * MM];
    pen.put(None, Mark::Disc { middle, radius: HOLE, line: 0.6, ink: BLACK });
    let words = words(inner);
    let mut scale = SCALES.1;
    while scale > SCALES.0 && says(&mut Pen::new(pen.letters), tag, words, scale) > words.height {
        scale -= STEP;
    }
    says(pen, tag, words, scale);
    foot(pen, tag, &code, inner);
    Ok(())
}

fn is_wide(inner: Area) -> bool {
    inner.width > inner.height
}

/// Where the words stand: beside the code on a tag that is wide, over it on one that is tall.
fn words(inner: Area) -> Area {
    let top = inner.y + 2.0 * HOLE + 2.0 * MM;
    let (x, width) = (inner.x + PAD, inner.width - 2.0 * PAD);
    let bottom = inner.y + inner.height - PAD;
    if is_wide(inner) {
        Area { x, y: top, width: width - CODE - PAD, height: bottom - top }
    } else {
        Area { x, y: top, width, height: bottom - CODE - top }
    }
}

/// Sets the words; says how high they are.
fn says(pen: &mut Pen<'_>, tag: &HangTag, area: Area, scale: f32) -> f32 {
    let (x, width) = (area.x, area.width);
    let [signal, title, label, words] =
        [SIGNAL, TITLE, LABEL, WORDS].map(|style| style.scaled(scale));
    let mut y = area.y;
    let indent = if tag.is_notice { 0.0 } else { signal.size * 1.25 };
    if !tag.is_notice {
        pen.triangle([x + signal.size * 0.5, y + signal.size * 0.66], signal.size * 0.5);
    }
    let role = Role::Title(tag.signal_word.clone());
    y = pen.say(role, &tag.signal_word, (x + indent, y, width - indent), signal);
    y = pen.say(Role::Paragraph, &tag.title, (x, y, width), title);
    y = pen.say(Role::Paragraph, &tag.label, (x, y + 2.0, width), label);
    y = pen.say(Role::Paragraph, &tag.name, (x, y, width), words) + 2.0;
    y = pen.say_at_most(REASON, Role::Paragraph, &tag.reason, (x, y, width), words) + 2.0;
    let strong = Style { weight: Weight::Bold, ..words };
    let left = (area.y + area.height - y) / strong.leading();
    // In the smallest letters what does not fit is cut off, and says so.
    let most = if scale > SCALES.0 { usize::MAX } else { left.max(1.0) as usize };
    y = pen.say_at_most(most, Role::Paragraph, &tag.permission, (x, y, width), strong);
    y - area.y
}

/// The code, the line for a signature, and what made the tag.
fn foot(pen: &mut Pen<'_>, tag: &HangTag, code: &Code, inner: Area) {
    let (right, bottom) = (inner.x + inner.width - PAD, inner.y + inner.height - PAD);
    let corner = [right - CODE, bottom - CODE];
    let module = CODE / code.modules() as f32;
    let part = pen.part(Role::Figure(tag.code.clone()));
    for (column, row, wide) in code.runs() {
        let (x, y) = (corner[0] + column as f32 * module, corner[1] + row as f32 * module);
        let (to_x, to_y) = (x + wide as f32 * module, y + module);
        let points = vec![[x, y], [to_x, y], [to_x, to_y], [x, to_y]];
        pen.put(Some(part), Mark::Shape { points, closed: true, line: 0.0, ink: BLACK });
    }
    let (x, y, width) = if is_wide(inner) {
        (right - CODE, inner.y + 2.0 * HOLE + 3.0 * MM, CODE)
    } else {
        (inner.x + PAD, bottom - CODE + 2.0 * MM, inner.width - 2.0 * PAD - CODE - PAD)
    };
    let y = pen.say(Role::Paragraph, &tag.signature, (x, y, width), SMALL) + SIGNED;
    let points = vec![[x, y], [x + width, y]];
    pen.put(None, Mark::Shape { points, closed: false, line: 0.6, ink: BLACK });
    pen.say(Role::Paragraph, &tag.made, (x, y + 3.0, width), SMALL);
}
