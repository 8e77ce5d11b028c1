//! Reads figures as people type them: `47n`, `0.047u`, `220k`, `2M2`.

/// The number that a person typed, in the base unit; nothing where it is not a positive figure.
///
/// A prefix may stand at the end or, as on old parts, in the place of the point. Point and comma are both
/// decimal marks, but where the other one than the language's own has three figures behind it, as in 1,000,
/// it is not taken: to one reader that is one thousand, to another it is one.
pub fn parse(text: &str, decimal_mark: &str) -> Option<f64> {
    let text: String = text.split_whitespace().collect();
    let text = if may_be_thousands(&text, decimal_mark) { None } else { Some(text) };
    let text = text?.replace(',', ".");
    let digits = text.trim_end_matches(['F', 'Ω']);
    let place = digits.find(|c: char| prefix(c).is_some());
    let number = match place.and_then(|place| digits.split_at_checked(place)) {
        None => digits.parse::<f64>().ok()?,
        Some((before, rest)) => {
            let mut after = rest.chars();
            let factor = prefix(after.next()?)?;
            let after = after.as_str();
            let joined =
                if after.is_empty() { before.to_owned() } else { format!("{before}.{after}") };
            joined.parse::<f64>().ok()? * factor
        }
    };
    (number.is_finite() && number > 0.0).then_some(number)
}

/// Whether the mark that is not the language's own may part thousands: up to three figures before it, the
/// first no zero, and three behind it.
fn may_be_thousands(text: &str, decimal_mark: &str) -> bool {
    let other = if decimal_mark == "," { '.' } else { ',' };
    let Some((before, behind)) = text.split_once(other) else { return false };
    let figures = behind.chars().take_while(char::is_ascii_digit).count();
    let is_whole = !before.is_empty() && before.chars().all(|c| c.is_ascii_digit());
    is_whole && before.len() <= 3 && !before.starts_with('0') && figures == 3
}

const fn prefix(letter: char) -> Option<f64> {
    match letter {
        'p' => Some(1e-12),
        'n' => Some(1e-9),
        'u' | 'µ' | 'μ' => Some(1e-6),
        'k' | 'K' => Some(1e3),
        'M' => Some(1e6),
        _ => None,
    }
}

#[cfg(test)]
mod tests {
    use super::parse;

    #[test]
    fn figures_are_read_as_people_type_them() {
        for (text, number) in [
            ("47n", 47e-9),
            ("0.047u", 0.047e-6),
            ("0,047 µF", 0.047e-6),
            ("220k", 220e3),
            ("2M2", 2.2e6),
            ("4n7", 4.7e-9),
            ("819", 819.0),
        ] {
            for mark in [".", ","] {
                let read = parse(text, mark).unwrap_or_default();
                assert!((read - number).abs() < 1e-9 * number, "{text}: {read}");
            }
        }
        for text in ["", "-1", "0", "n", "4n7n", "one", "NaN", "inf", "1e400"] {
            assert_eq!(parse(text, "."), None, "{text}");
        }
    }

    #[test]
    fn what_may_be_thousands_to_somebody_is_not_taken() {
        for (english, german) in
            [("1,000", "1.000"), ("220,000", "220.000"), ("12,345k", "12.345k")]
        {
            assert_eq!(parse(english, "."), None, "{english}");
            assert_eq!(parse(german, ","), None, "{german}");
        }
        assert_eq!(parse("1.234", "."), Some(1.234));
        assert_eq!(parse("1,234", ","), Some(1.234));
        for (mark, text) in [(".", "0,047"), (",", "0.047")] {
            assert_eq!(parse(text, mark), Some(0.047), "{text}");
        }
        assert_eq!(parse("1,5", "."), Some(1.5));
        assert_eq!(parse("1.5", ","), Some(1.5));
        assert_eq!(parse("1,0000", "."), Some(1.0));
    }
}
