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

/// Of two numbers that aren't both zero; never zero.
fn greatest_common_divisor(a: u32, b: u32) -> u32 {
    let (mut a, mut b) = (a, b);
    while b != 0 {
        (a, b) = (b, a % b);
    }
    a.max(1)
}
