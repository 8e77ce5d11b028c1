//! The QR code on a tag (ISO/IEC 18004), read without a network.

use qrcode::{Color, EcLevel, QrCode};

use super::error::ReportError;

/// Light modules around the code (ISO/IEC 18004: 4, from memory).
const QUIET: usize = 4;

/// The dark modules of a code, row by row.
#[derive(Debug)]
pub(super) struct Code {
    dark: Vec<bool>,
    across: usize,
}

impl Code {
    /// The code of a text; a quarter of it may be soiled or torn (level Q) unless the text is long, then less.
    pub(super) fn of(text: &str) -> Result<Self, ReportError> {
        let levels = [EcLevel::Q, EcLevel::M, EcLevel::L];
        let code = levels.iter().find_map(|level| {
            QrCode::with_error_correction_level(text, *level)
                .ok()
                .filter(|code| code.width() <= WIDEST || *level == EcLevel::L)
        });
        let code = code.ok_or(ReportError::CodeTooLong(text.len()))?;
        let across = code.width();
        let dark = code.into_colors().into_iter().map(|color| color == Color::Dark).collect();
        Ok(Self { dark, across })
    }

    /// How many modules it is wide with the light ones around it.
    pub(super) const fn modules(&self) -> usize {
        self.across + 2 * QUIET
    }

    /// Where the dark modules are, with the light ones around: column, row and how many side by side.
    pub(super) fn runs(&self) -> Vec<(usize, usize, usize)> {
        let mut runs = Vec::new();
        for (row, modules) in self.dark.chunks(self.across.max(1)).enumerate() {
            let mut from = None;
            for (column, dark) in modules.iter().copied().chain([false]).enumerate() {
                match (dark, from) {
                    (true, None) => from = Some(column),
                    (false, Some(start)) => {
                        runs.push((start + QUIET, row + QUIET, column - start));
                        from = None;
                    }
                    _ => {}
                }
            }
        }
        runs
    }
}

/// More modules than this are too small on the smallest tag for an old camera (assumption).
const WIDEST: usize = 57;
