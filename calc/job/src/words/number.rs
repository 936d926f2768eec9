//! Numbers as they are shown; rounding happens here and nowhere before.

use crate::decimal::to_places;

/// To exactly so many decimals; a number that isn't finite is shown as “–”.
pub(super) fn fixed(value: f64, places: usize, mark: char) -> String {
    if !value.is_finite() {
        return "–".to_owned();
    }
    // Half a unit goes away from zero even where binary holds it a hair below: 3.175 is shown as 3.18.
    let text = to_places(value * (1.0 + 1e-12), places);
    let text = match text.strip_prefix('-') {
        // Nothing rounds to minus nought.
        Some(rest) if rest.chars().all(|c| c == '0' || c == '.') => rest.to_owned(),
        Some(rest) => format!("−{rest}"),
        None => text,
    };
    if mark == '.' { text } else { text.replace('.', &mark.to_string()) }
}

/// To at most so many decimals.
pub(super) fn trimmed(value: f64, places: usize, mark: char) -> String {
    let text = fixed(value, places, mark);
    if text.contains(mark) { text.trim_end_matches('0').trim_end_matches(mark).to_owned() } else { text }
}

#[cfg(test)]
mod tests {
    use super::{fixed, trimmed};

    #[test]
    fn numbers_are_shown_as_people_write_them() {
        for (value, places, mark, expected) in [
            (2.0, 2, '.', "2"),
            (2.5, 2, ',', "2,5"),
            (-0.001, 2, '.', "0"),
            (-1.25, 1, '.', "−1.3"),
            (3.175, 2, '.', "3.18"),
            (100.0, 0, '.', "100"),
            (f64::NAN, 2, '.', "–"),
        ] {
            assert_eq!(trimmed(value, places, mark), expected, "{value}");
        }
        assert_eq!(fixed(2.0, 2, '.'), "2.00");
    }
}
