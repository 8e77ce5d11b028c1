//! Puts marks and text on pages.

use super::letters::{Letters, Weight};
use super::page::{Area, BLACK, GREY, Ink, Mark, Pages, Placed, Role};

/// How far lines are apart, beside the size of the letters.
const LEADING: f32 = 1.32;

const DOTS: &str = "\u{2026}";

/// Letters of a size, weight and lightness.
#[derive(Clone, Copy)]
pub(super) struct Style {
    pub(super) size: f32,
    pub(super) weight: Weight,
    pub(super) ink: Ink,
}

impl Style {
    pub(super) const BODY: Self = Self { size: 10.0, weight: Weight::Regular, ink: BLACK };
    pub(super) const STRONG: Self = Self { weight: Weight::Bold, ..Self::BODY };
    pub(super) const NOTE: Self = Self { size: 8.5, weight: Weight::Regular, ink: GREY };
    pub(super) const HEADING: Self = Self { size: 13.0, weight: Weight::Bold, ink: BLACK };

    pub(super) fn leading(self) -> f32 {
        self.size * LEADING
    }

    /// The same letters, larger or smaller.
    pub(super) fn scaled(self, scale: f32) -> Self {
        Self { size: self.size * scale, ..self }
    }
}

/// What is on the pages so far.
pub(super) struct Pen<'a> {
    pub(super) letters: &'a Letters,
    pub(super) out: Pages,
}

impl<'a> Pen<'a> {
    /// One page with nothing on it.
    pub(super) fn new(letters: &'a Letters) -> Self {
        Self { letters, out: Pages { pages: vec![Vec::new()], parts: Vec::new() } }
    }

    pub(super) fn part(&mut self, role: Role) -> usize {
        self.out.parts.push(role);
        self.out.parts.len() - 1
    }

    pub(super) fn put(&mut self, part: Option<usize>, mark: Mark) {
        if let Some(page) = self.out.pages.last_mut() {
            page.push(Placed { part, mark });
        }
    }

    /// Lines of text from a height on, whatever is left of the page; says where they end.
    pub(super) fn lines(
        &mut self,
        part: Option<usize>,
        lines: &[String],
        (x, mut y): (f32, f32),
        style: Style,
    ) -> f32 {
        for line in lines {
            let baseline = y + style.size;
            let (size, weight, ink) = (style.size, style.weight, style.ink);
            self.put(part, Mark::Text { x, baseline, size, weight, ink, text: line.clone() });
            y += style.leading();
        }
        y
    }

    pub(super) fn broken(&self, text: &str, style: Style, width: f32) -> Vec<String> {
        self.letters.lines(text, style.weight, style.size, width)
    }

    /// A frame of four lines, or a filled area where there is no line width.
    pub(super) fn frame(&mut self, area: Area, line: f32, ink: Ink) {
        let (right, bottom) = (area.x + area.width, area.y + area.height);
        let points = vec![[area.x, area.y], [right, area.y], [right, bottom], [area.x, bottom]];
        self.put(None, Mark::Shape { points, closed: true, line, ink });
    }

    /// Text from a height on, in lines of a width; says where it ends.
    pub(super) fn say(
        &mut self,
        role: Role,
        text: &str,
        place: (f32, f32, f32),
        style: Style,
    ) -> f32 {
        self.say_at_most(usize::MAX, role, text, place, style)
    }

    /// The same in no more than some lines; what is left out is told by three dots.
    pub(super) fn say_at_most(
        &mut self,
        most: usize,
        role: Role,
        text: &str,
        (x, y, width): (f32, f32, f32),
        style: Style,
    ) -> f32 {
        let mut lines = self.broken(text, style, width);
        if lines.len() > most {
            lines.truncate(most);
            if let Some(last) = lines.last_mut() {
                let wide = |text: &str| self.letters.width(text, style.weight, style.size);
                while !last.is_empty() && wide(last) + wide(DOTS) > width {
                    last.pop();
                }
                last.push_str(DOTS);
            }
        }
        if lines.is_empty() {
            return y;
        }
        let part = self.part(role);
        self.lines(Some(part), &lines, (x, y), style)
    }

    /// The alert triangle with its mark.
    pub(super) fn triangle(&mut self, [x, y]: [f32; 2], half: f32) {
        let line = half * 0.2;
        let top = y - half * 0.95;
        let points = vec![[x, top], [x + half, y + half * 0.8], [x - half, y + half * 0.8]];
        self.put(None, Mark::Shape { points, closed: true, line, ink: BLACK });
        let points = vec![[x, y - half * 0.3], [x, y + half * 0.3]];
        self.put(None, Mark::Shape { points, closed: false, line, ink: BLACK });
        let middle = [x, y + half * 0.56];
        self.put(None, Mark::Disc { middle, radius: line * 0.6, line: 0.0, ink: BLACK });
    }
}
