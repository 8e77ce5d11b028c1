//! Text on paper: nothing is lost and nothing stands outside.

use proptest::prelude::*;

use super::letters::{Letters, Weight};
use super::{Block, Paper, Row, Sheet, Table, report};

fn letters() -> Letters {
    Letters::new().expect("the letters")
}

proptest! {
    #[test]
    fn lines_hold_every_letter_and_are_no_wider_than_asked(text in "\\PC{0,200}", width in 20.0f32..400.0) {
        let letters = letters();
        let lines = letters.lines(&text, Weight::Regular, 10.0, width);
        let whole: String = letters.written(&text).split(' ').collect();
        let kept: String = lines.join("").split(' ').collect();
        prop_assert_eq!(kept, whole);
        for line in &lines {
            let one = line.chars().count() == 1;
            prop_assert!(one || letters.width(line, Weight::Regular, 10.0) <= width + 0.01, "{}", line);
        }
    }

    #[test]
    fn whatever_a_unit_is_called_makes_a_document_that_holds(text in any::<String>()) {
        let table = Table {
            head: vec![text.clone()],
            rows: vec![Row { cells: vec![text.clone()], heavy: true }],
            widths: vec![1.0],
        };
        let blocks = vec![
            Block::Heading(text.clone()),
            Block::Paragraph(text.clone()),
            Block::List(vec![text.clone()]),
            Block::Cautions(vec![text.clone()]),
            Block::Table(table),
        ];
        let mut sheet = Sheet { blocks, ..Sheet::default() };
        sheet.origin.title = "title".to_owned();
        sheet.origin.language = "en".to_owned();
        sheet.origin.made = [2026, 1, 2, 3, 4, 5];
        report(&sheet, Paper::Letter).expect("a document");
    }
}

#[test]
fn signs_that_the_letters_lack_are_written_otherwise() {
    assert_eq!(
        letters().written("220 k\u{2126} \u{2225} \u{2265} 5\u{202f}mA\u{200f}"),
        "220 k\u{3a9} || >= 5\u{a0}mA"
    );
}
