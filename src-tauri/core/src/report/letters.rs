//! The letters of reports and tags: Latin, Greek and Cyrillic, embedded.

use krilla::text::Font;
use ttf_parser::Face;

use super::error::ReportError;

/// Noto Sans, subset; licence beside it.
const REGULAR: &[u8] = include_bytes!("../../data/letters/NotoSans-Regular.ttf");
const BOLD: &[u8] = include_bytes!("../../data/letters/NotoSans-Bold.ttf");

/// Stands for what the letters do not have.
const MISSING: char = '\u{fffd}';

/// Signs that the letters do not have, as they are written without them.
const WRITTEN: [(char, &str); 8] = [
    ('\u{2212}', "-"),
    ('\u{2225}', "||"),
    ('\u{2264}', "<="),
    ('\u{2265}', ">="),
    ('\u{2248}', "~"),
    ('\u{2192}', ">"),
    ('\u{202f}', "\u{a0}"),
    ('\u{2126}', "\u{3a9}"),
];

/// How heavy letters are.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Weight {
    Regular,
    Bold,
}

/// One weight: for the document, and to know how wide text is.
struct Cut {
    font: Font,
    face: Face<'static>,
}

/// The two weights.
pub(super) struct Letters {
    regular: Cut,
    bold: Cut,
}

impl Cut {
    fn of(data: &'static [u8]) -> Result<Self, ReportError> {
        let face = Face::parse(data, 0).map_err(|_| ReportError::Letters)?;
        let font = Font::new(data.into(), 0).ok_or(ReportError::Letters)?;
        Ok(Self { font, face })
    }

    fn advance(&self, letter: char) -> f32 {
        let glyph = self.face.glyph_index(letter);
        let units = glyph.and_then(|glyph| self.face.glyph_hor_advance(glyph)).unwrap_or_default();
        f32::from(units) / f32::from(self.face.units_per_em())
    }
}

impl Letters {
    pub(super) fn new() -> Result<Self, ReportError> {
        Ok(Self { regular: Cut::of(REGULAR)?, bold: Cut::of(BOLD)? })
    }

    /// The files, for drawings with letters in them.
    pub(super) const fn files() -> [&'static [u8]; 2] {
        [REGULAR, BOLD]
    }

    fn cut(&self, weight: Weight) -> &Cut {
        match weight {
            Weight::Regular => &self.regular,
            Weight::Bold => &self.bold,
        }
    }

    pub(super) fn font(&self, weight: Weight) -> Font {
        self.cut(weight).font.clone()
    }

    /// How wide a text is, in the unit of its size.
    pub(super) fn width(&self, text: &str, weight: Weight, size: f32) -> f32 {
        text.chars().map(|letter| self.cut(weight).advance(letter)).sum::<f32>() * size
    }

    /// Text in letters that there are, without what only steers a screen.
    pub(super) fn written(&self, text: &str) -> String {
        let mut written = String::with_capacity(text.len());
        for letter in text.chars() {
            if let Some((_, instead)) = WRITTEN.iter().find(|(sign, _)| *sign == letter) {
                written.push_str(instead);
            } else if matches!(letter, '\n' | '\t' | '\u{2028}' | '\u{2029}') {
                written.push(' ');
            } else if letter.is_control() || is_steering(letter) {
            } else if self.regular.face.glyph_index(letter).is_some() {
                written.push(letter);
            } else {
                written.push(MISSING);
            }
        }
        written
    }

    /// Lines that are no wider than some width; a word that is wider by itself is parted.
    pub(super) fn lines(&self, text: &str, weight: Weight, size: f32, width: f32) -> Vec<String> {
        let text = self.written(text);
        let mut lines = Vec::new();
        let mut line = String::new();
        for word in text.split(' ').filter(|word| !word.is_empty()) {
            let longer = if line.is_empty() { word.to_owned() } else { format!("{line} {word}") };
            if self.width(&longer, weight, size) <= width {
                line = longer;
                continue;
            }
            if !line.is_empty() {
                lines.push(std::mem::take(&mut line));
            }
            line = self.parted(word, weight, size, width, &mut lines);
        }
        if !line.is_empty() {
            lines.push(line);
        }
        lines
    }

    /// The rest of a word after what fills whole lines.
    fn parted(
        &self,
        word: &str,
        weight: Weight,
        size: f32,
        width: f32,
        lines: &mut Vec<String>,
    ) -> String {
        let mut rest = String::new();
        let mut taken = 0.0;
        for letter in word.chars() {
            let next = self.cut(weight).advance(letter) * size;
            if taken + next > width && !rest.is_empty() {
                lines.push(std::mem::take(&mut rest));
                taken = 0.0;
            }
            rest.push(letter);
            taken += next;
        }
        rest
    }
}

/// A title as XML takes it: without signs that only steer, and without what is no letter at all.
pub(super) fn plain(text: &str) -> String {
    let is_none = |c: char| u32::from(c) & 0xFFFE == 0xFFFE;
    text.chars().filter(|c| !c.is_control() && !is_steering(*c) && !is_none(*c)).collect()
}

/// Marks that turn the direction of text or join letters: they say nothing on paper.
fn is_steering(letter: char) -> bool {
    matches!(letter, '\u{61c}' | '\u{200b}'..='\u{200f}' | '\u{202a}'..='\u{202e}' | '\u{2060}'..='\u{2069}' | '\u{feff}' | '\u{fe0f}')
}
