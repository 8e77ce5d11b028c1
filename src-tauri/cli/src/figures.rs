//! Reads figures as people type them: `47n`, `0.047u`, `220k`, `2M2`.

/// The number that a person typed, in the base unit; nothing where it is not a positive figure.
///
/// A prefix may stand at the end or, as on old parts, in the place of the point.
pub fn parse(text: &str) -> Option<f64> {
    let text: String = text.split_whitespace().collect::<String>().replace(',', ".");
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
            let read = parse(text).unwrap_or_default();
            assert!((read - number).abs() < 1e-9 * number, "{text}: {read}");
        }
        for text in ["", "-1", "0", "n", "4n7n", "one", "NaN", "inf", "1e400"] {
            assert_eq!(parse(text), None, "{text}");
        }
    }
}
