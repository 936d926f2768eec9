//! Inches shown as a tape shows them.

use crate::decimal::to_places;

/// Inches to the nearest part of an inch, reduced: 47.6 to eighths is "47 5/8".
///
/// Half a part goes away from zero; a denominator of 0 counts as 1. A length that isn't finite is
/// shown as "–", like every answer that isn't there.
#[must_use]
pub fn fraction_text(inches: f64, denominator: u32) -> String {
    // From here on every f64 is whole, so there are no parts to show (2 to the power of 53).
    const WHOLE_FROM: f64 = 9_007_199_254_740_992.0;
    if !inches.is_finite() {
        return "–".to_owned();
    }
    let denominator = denominator.max(1);
    let magnitude = inches.abs();
    let mut whole = magnitude.trunc();
    let mut parts = 0;
    if magnitude < WHOLE_FROM {
        let nearest = ((magnitude - whole) * f64::from(denominator)).round();
        // Between 0 and the denominator, so the conversion loses nothing.
        parts = nearest as u32;
        if parts >= denominator {
            whole += 1.0;
            parts = 0;
        }
    }
    let sign = if inches < 0.0 && (whole > 0.0 || parts > 0) { "-" } else { "" };
    if parts == 0 {
        return sign.to_owned() + &to_places(whole, 0);
    }
    let divisor = greatest_common_divisor(parts, denominator);
    let fraction = format!("{}/{}", parts / divisor, denominator / divisor);
    if whole == 0.0 { format!("{sign}{fraction}") } else { format!("{sign}{} {fraction}", to_places(whole, 0)) }
}

/// What stands in a field of inches after a part of an inch is tapped: put behind the whole inches, in place of the part that
/// stood there. Nothing where a part can't follow: behind a decimal mark, a unit, words.
///
/// ```
/// use bedwright_job::entry::with_part;
/// assert_eq!(with_part("47", "3/8").as_deref(), Some("47 3/8"));
/// assert_eq!(with_part("47 3/8", "1/2").as_deref(), Some("47 1/2"));
/// assert_eq!(with_part("47.5", "1/2"), None);
/// ```
#[must_use]
pub fn with_part(text: &str, part: &str) -> Option<String> {
    let (before, last) = match text.trim().rsplit_once(' ') {
        Some((before, last)) => (before.trim_end(), last),
        None => ("", text.trim()),
    };
    let is_part = last.split_once('/').is_some_and(|(over, under)| is_digits(over) && is_digits(under));
    let kept = if is_part { before } else { text.trim() };
    let tail = kept.rsplit([' ', '\'', '′']).next().unwrap_or_default();
    if !tail.is_empty() && !is_digits(tail) {
        return None;
    }
    Some(if kept.is_empty() { part.to_owned() } else { [kept, " ", part].concat() })
}

fn is_digits(text: &str) -> bool {
    !text.is_empty() && text.bytes().all(|letter| letter.is_ascii_digit())
}

/// Of two numbers that aren't both zero; never zero.
fn greatest_common_divisor(a: u32, b: u32) -> u32 {
    let (mut a, mut b) = (a, b);
    while b != 0 {
        (a, b) = (b, a % b);
    }
    a.max(1)
}
