//! The pixels of the display, read out of the file that the X server keeps them in: nothing is asked of the
//! server or of the app, so that looking takes no time of theirs.

use std::collections::BTreeMap;
use std::fs::File;
use std::os::unix::fs::FileExt;
use std::path::Path;

/// Every so many rows are read: lines of text are higher than that.
const ROWS: u64 = 4;
/// The window, as large as a phone's screen, stands at the corner where there is no window manager. Its
/// right edge is left out: the bar there that shows how far one has scrolled comes and goes for seconds.
const WIDTH: u64 = 390 - 14;
const HEIGHT: u64 = 844;
/// How far a colour has to be from the ground's, in all three parts together, to be ink on it.
const INK: u32 = 200;

/// The screen as it stands in the file.
pub struct Frame {
    file: File,
    pixels: u64,
    line: u64,
}

/// The sampled rows of the window, four bytes for each pixel.
#[derive(PartialEq, Eq)]
pub struct Look(Vec<u8>);

impl Frame {
    /// Opens the file. Its header: X11/XWDFile.h, seen there; all numbers are of 32 bits, high byte first.
    pub fn open(file: &Path) -> Self {
        let file = File::open(file).expect("the X server keeps its pixels in a file");
        let number = |at: u64| {
            let mut bytes = [0; 4];
            file.read_exact_at(&mut bytes, at).expect("a header");
            u64::from(u32::from_be_bytes(bytes))
        };
        let (header, bits, line, colours) = (number(0), number(44), number(48), number(76));
        assert_eq!(bits, 32, "pixels of another size");
        // Twelve bytes for each colour stand before the pixels.
        Self { pixels: header + 12 * colours, line, file }
    }

    /// Reads the window.
    pub fn look(&self) -> Look {
        let rows = HEIGHT / ROWS;
        let length = usize::try_from(WIDTH * 4).expect("a short line");
        let mut bytes = vec![0; length * usize::try_from(rows).expect("few rows")];
        for (row, bytes) in (0..rows).zip(bytes.chunks_exact_mut(length)) {
            let at = self.pixels + row * ROWS * self.line;
            self.file.read_exact_at(bytes, at).expect("a row of pixels");
        }
        Look(bytes)
    }
}

impl Look {
    fn colours(&self) -> impl Iterator<Item = [u8; 3]> {
        self.0.chunks_exact(4).map(|pixel| [pixel[0], pixel[1], pixel[2]])
    }

    /// How much of the window differs plainly from its commonest colour: nothing while it is blank.
    pub fn drawn(&self) -> f64 {
        let ground = self.ground();
        let far = |colour: &[u8; 3]| -> u32 {
            colour.iter().zip(ground).map(|(one, other)| u32::from(one.abs_diff(other))).sum()
        };
        let all = self.colours().count();
        self.colours().filter(|colour| far(colour) >= INK).count() as f64 / all as f64
    }

    fn ground(&self) -> [u8; 3] {
        let mut counts = BTreeMap::<_, u32>::new();
        for colour in self.colours() {
            *counts.entry(colour).or_default() += 1;
        }
        let commonest = counts.into_iter().max_by_key(|(_, count)| *count);
        commonest.map(|(colour, _)| colour).unwrap_or_default()
    }
}
