//! Sets the blocks of a report on pages, one under the other.

use super::letters::{Letters, Weight};
use super::page::{Area, BLACK, GREY, MM, Mark, PALE, Placed, Role};
use super::pen::{Pen, Style};
use super::sheet::{Block, Drawing, Paper, Photo, Sheet, Table};
use super::verdict;

const MARGIN: f32 = 16.0 * MM;
const FOOT: f32 = 12.0 * MM;
const HEAD: f32 = 9.0 * MM;
/// Between blocks.
const GAP: f32 = 6.0;
/// Between pictures, and around what is in a box.
pub(super) const PAD: f32 = 8.0;
/// Photos stand three in a row.
const IN_A_ROW: usize = 3;
/// How high a photo may be beside its width.
const TALLEST: f32 = 1.1;

/// Where the next block goes.
pub(super) struct Flow<'a> {
    pub(super) pen: Pen<'a>,
    sheet: &'a Sheet,
    pub(super) width: f32,
    height: f32,
    pub(super) y: f32,
    /// Photos and drawings, in the order in which they are placed.
    pub(super) photos: Vec<&'a Photo>,
    pub(super) drawings: Vec<usvg::Tree>,
    tables: usize,
}

impl<'a> Flow<'a> {
    pub(super) fn new(letters: &'a Letters, sheet: &'a Sheet, paper: Paper) -> Self {
        let (width, height) = paper.millimetres();
        let (width, height) = (width * MM, height * MM);
        let (photos, drawings) = (Vec::new(), Vec::new());
        let pen = Pen::new(letters);
        Self { pen, sheet, width, height, y: MARGIN, photos, drawings, tables: 0 }
    }

    /// Sets every block, then what stands at the head and foot of each page.
    pub(super) fn set(&mut self) {
        let sheet = self.sheet;
        let mut blocks = sheet.blocks.iter().peekable();
        while let Some(block) = blocks.next() {
            if let Block::Heading(text) = block {
                self.heading(text, blocks.peek().map_or(0.0, |next| self.least(next)));
            } else {
                self.block(block);
            }
        }
        self.heads_and_feet();
    }

    fn block(&mut self, block: &'a Block) {
        match block {
            Block::Verdict(verdict) => verdict::set(self, verdict),
            Block::Heading(text) => self.heading(text, 0.0),
            Block::Paragraph(text) => self.paragraph(text, Style::BODY),
            Block::Note(text) => self.paragraph(text, Style::NOTE),
            Block::List(items) => items.iter().for_each(|item| self.item(item)),
            Block::Cautions(cautions) => cautions.iter().for_each(|caution| self.caution(caution)),
            Block::Table(table) => self.table(table),
            Block::Photos(photos) => photos.chunks(IN_A_ROW).for_each(|row| self.photos(row)),
            Block::Drawing(drawing) => self.drawing(drawing),
            Block::Page => self.new_page(),
        }
    }

    /// The inner left edge and the inner width.
    pub(super) fn inner(&self) -> (f32, f32) {
        (MARGIN, self.width - 2.0 * MARGIN)
    }

    fn bottom(&self) -> f32 {
        self.height - MARGIN - FOOT
    }

    fn new_page(&mut self) {
        if self.pen.out.pages.last().is_some_and(Vec::is_empty) {
            return;
        }
        self.pen.out.pages.push(Vec::new());
        self.y = MARGIN + HEAD;
    }

    /// Starts a page where less than this height is left; what is higher than a page stays where it is.
    pub(super) fn make_room(&mut self, height: f32) {
        let whole = self.bottom() - MARGIN - HEAD;
        if self.y + height.min(whole) > self.bottom() {
            self.new_page();
        }
    }

    fn heading(&mut self, text: &str, next: f32) {
        let (x, width) = self.inner();
        let lines = self.pen.broken(text, Style::HEADING, width);
        // A heading of nothing heads nothing.
        if lines.is_empty() {
            return;
        }
        let height = lines.len() as f32 * Style::HEADING.leading();
        self.y += GAP;
        self.make_room(height + next);
        let part = self.pen.part(Role::Heading(lines.join(" ")));
        let end = self.pen.lines(Some(part), &lines, (x, self.y), Style::HEADING);
        self.y = end + GAP / 2.0;
    }

    /// How much of a block has to stand under its heading.
    fn least(&self, block: &Block) -> f32 {
        match block {
            Block::Photos(_) => self.inner().1 / 2.4,
            Block::Drawing(_) => self.inner().1 * 0.8,
            _ => 4.0 * Style::BODY.leading(),
        }
    }

    fn paragraph(&mut self, text: &str, style: Style) {
        let (x, width) = self.inner();
        let part = self.pen.part(Role::Paragraph);
        self.text(part, text, (x, width), style);
        self.y += GAP / 2.0;
    }

    fn item(&mut self, text: &str) {
        let (x, width) = self.inner();
        self.make_room(Style::BODY.leading());
        let middle = [x + 3.0, self.y + Style::BODY.size * 0.65];
        self.pen.put(None, Mark::Disc { middle, radius: 1.6, line: 0.0, ink: BLACK });
        let part = self.pen.part(Role::Item);
        self.text(part, text, (x + 11.0, width - 11.0), Style::BODY);
        self.y += 1.5;
    }

    /// Text that may go on over pages.
    fn text(&mut self, part: usize, text: &str, (x, width): (f32, f32), style: Style) {
        for line in self.pen.broken(text, style, width) {
            self.make_room(style.leading());
            self.y = self.pen.lines(Some(part), &[line], (x, self.y), style);
        }
    }

    fn caution(&mut self, text: &str) {
        let (x, width) = self.inner();
        let lines = self.pen.broken(text, Style::BODY, width - 34.0);
        let height = (lines.len() as f32 * Style::BODY.leading() + PAD).max(24.0);
        self.make_room(height);
        let area = Area { x, y: self.y, width, height };
        self.pen.frame(area, 1.0, BLACK);
        self.pen.triangle([x + 14.0, self.y + 12.0], 8.0);
        let part = self.pen.part(Role::Paragraph);
        let top = self.y + (height - lines.len() as f32 * Style::BODY.leading()) / 2.0;
        self.pen.lines(Some(part), &lines, (x + 28.0, top), Style::BODY);
        self.y += height + 4.0;
    }

    fn table(&mut self, table: &'a Table) {
        let number = self.tables;
        self.tables += 1;
        let (x, width) = self.inner();
        let whole: f32 = table.widths.iter().sum::<f32>().max(f32::EPSILON);
        let mut columns = Vec::new();
        let mut left = x;
        for share in &table.widths {
            let wide = width * share / whole;
            columns.push((left, wide));
            left += wide;
        }
        self.make_room(4.0 * Style::NOTE.leading());
        let head = Style { weight: Weight::Bold, ..Style::NOTE };
        let part = |row, names| Some(Role::Cell { table: number, row, names });
        self.row(&columns, &table.head, head, part(0, true));
        for (place, row) in table.rows.iter().enumerate() {
            let weight = if row.heavy { Weight::Bold } else { Weight::Regular };
            let style = Style { ink: BLACK, weight, ..Style::NOTE };
            let page = self.pen.out.pages.len();
            self.make_room(self.row_height(&columns, &row.cells, style));
            if self.pen.out.pages.len() != page {
                // Which column is which, on each page; it is read out once.
                self.row(&columns, &table.head, head, None);
            }
            self.row(&columns, &row.cells, style, part(place + 1, false));
        }
        self.y += GAP;
    }

    fn row_height(&self, columns: &[(f32, f32)], cells: &[String], style: Style) -> f32 {
        let lines = columns.iter().zip(cells);
        let lines = lines.map(|((_, width), cell)| self.pen.broken(cell, style, width - 6.0).len());
        lines.max().unwrap_or_default() as f32 * style.leading() + 4.0
    }

    fn row(&mut self, columns: &[(f32, f32)], cells: &[String], style: Style, role: Option<Role>) {
        let height = self.row_height(columns, cells, style);
        let (x, width) = self.inner();
        for ((left, wide), cell) in columns.iter().zip(cells) {
            let lines = self.pen.broken(cell, style, wide - 6.0);
            let part = role.clone().map(|role| self.pen.part(role));
            self.pen.lines(part, &lines, (*left, self.y + 2.0), style);
        }
        self.y += height;
        let points = vec![[x, self.y], [x + width, self.y]];
        let (line, ink) = if style.ink == BLACK { (0.5, PALE) } else { (1.0, BLACK) };
        self.pen.put(None, Mark::Shape { points, closed: false, line, ink });
    }

    fn photos(&mut self, row: &'a [Photo]) {
        let (x, width) = self.inner();
        let wide = (width - PAD * (IN_A_ROW as f32 - 1.0)) / IN_A_ROW as f32;
        let captions: Vec<Vec<String>> =
            row.iter().map(|photo| self.pen.broken(&photo.caption, Style::NOTE, wide)).collect();
        let sizes: Vec<(f32, f32)> =
            row.iter().map(|photo| fit(photo, wide, wide * TALLEST)).collect();
        let tall = sizes.iter().map(|(_, height)| *height).fold(0.0, f32::max);
        let said = captions.iter().map(Vec::len).max().unwrap_or_default() as f32;
        self.make_room(tall + said * Style::NOTE.leading() + GAP);
        for (turn, ((photo, size), lines)) in row.iter().zip(sizes).zip(captions).enumerate() {
            let left = x + turn as f32 * (wide + PAD);
            let area = Area { x: left, y: self.y, width: size.0, height: size.1 };
            self.photo(photo, area);
            let part = self.pen.part(Role::Paragraph);
            self.pen.lines(Some(part), &lines, (left, self.y + tall + 2.0), Style::NOTE);
        }
        self.y += tall + said * Style::NOTE.leading() + GAP;
    }

    /// A photo in its place, with the marks on it.
    pub(super) fn photo(&mut self, photo: &'a Photo, area: Area) {
        let part = self.pen.part(Role::Figure(photo.caption.clone()));
        let place = self.photos.len();
        self.photos.push(photo);
        self.pen.put(Some(part), Mark::Photo { place, area });
        super::marks::draw(&mut self.pen, part, photo, area);
    }

    fn drawing(&mut self, drawing: &'a Drawing) {
        let Some(tree) = super::drawing::tree(&drawing.svg) else { return };
        let (wide, high) = (tree.size().width(), tree.size().height());
        let (x, width) = self.inner();
        let most = (self.bottom() - MARGIN - HEAD) * 0.92;
        let scale = (width * drawing.share / wide).min(most / high);
        let (wide, high) = (wide * scale, high * scale);
        self.make_room(high);
        let part = self.pen.part(Role::Figure(drawing.says.clone()));
        let place = self.drawings.len();
        self.drawings.push(tree);
        let area = Area { x: x + (width - wide) / 2.0, y: self.y, width: wide, height: high };
        self.pen.put(Some(part), Mark::Drawing { place, area });
        self.y += high + GAP;
    }

    fn heads_and_feet(&mut self) {
        let count = self.pen.out.pages.len();
        let (x, width) = self.inner();
        let foot = self.height - MARGIN;
        let [before, between, after] = &self.sheet.numbering;
        let running = self.pen.letters.written(&self.sheet.running);
        let room = width * 0.8;
        let said = self.pen.broken(&self.sheet.foot, Style::NOTE, room);
        for (place, page) in self.pen.out.pages.iter_mut().enumerate() {
            let mut put = |x: f32, baseline: f32, text: String| {
                let (size, ink) = (Style::NOTE.size, GREY);
                let mark = Mark::Text { x, baseline, size, weight: Weight::Regular, ink, text };
                page.push(Placed { part: None, mark });
            };
            let number = format!("{before}{}{between}{count}{after}", place + 1);
            let wide = self.pen.letters.width(&number, Weight::Regular, Style::NOTE.size);
            put(x + width - wide, foot, number);
            let lines = said.len() as f32 - 1.0;
            for (turn, line) in said.iter().enumerate() {
                put(x, foot - (lines - turn as f32) * Style::NOTE.leading(), line.clone());
            }
            if place > 0 {
                put(x, MARGIN, running.clone());
            }
        }
    }
}

/// The largest size of a photo within a width and a height.
pub(super) fn fit(photo: &Photo, width: f32, height: f32) -> (f32, f32) {
    let (wide, high) = (photo.size.0.max(1) as f32, photo.size.1.max(1) as f32);
    let scale = (width / wide).min(height / high);
    (wide * scale, high * scale)
}
