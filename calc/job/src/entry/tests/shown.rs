//! Inches as a tape shows them.

use crate::entry::{Unit, fraction_text, understand};

#[test]
fn inches_are_shown_in_reduced_parts() {
    // Worked by hand: 47.6 × 8 = 380.8, nearest 381 = 47 × 8 + 5.
    for (inches, denominator, text) in [
        (47.6, 8, "47 5/8"),
        (47.5, 8, "47 1/2"),
        (47.5, 16, "47 1/2"),
        (47.0, 8, "47"),
        (47.96, 8, "48"),
        (0.0, 8, "0"),
        (0.625, 8, "5/8"),
        (0.3, 8, "1/4"),
        (0.01, 8, "0"),
        (0.0625, 8, "1/8"),
        (-1.5, 8, "-1 1/2"),
        (-0.5, 8, "-1/2"),
        (-0.01, 8, "0"),
        (-0.99, 8, "-1"),
        (52.47, 16, "52 1/2"),
        (52.4, 10, "52 2/5"),
        (52.4, 1, "52"),
        (52.6, 0, "53"),
        (999.999, 64, "1000"),
    ] {
        assert_eq!(fraction_text(inches, denominator), text, "{inches}");
    }
}

#[test]
fn what_is_not_finite_or_huge_is_shown_without_a_panic() {
    assert_eq!(fraction_text(f64::NAN, 8), "–");
    assert_eq!(fraction_text(f64::INFINITY, 8), "–");
    assert_eq!(fraction_text(f64::NEG_INFINITY, 8), "–");
    assert_eq!(fraction_text(1e16, 8), "10000000000000000");
    assert_eq!(fraction_text(f64::MAX, u32::MAX).len(), 309);
    assert_eq!(fraction_text(f64::MIN_POSITIVE, u32::MAX), "0");
}

#[test]
fn what_is_shown_can_be_typed() {
    for eighths in 0..2000_i32 {
        let inches = f64::from(eighths) / 8.0;
        let text = fraction_text(inches, 8);
        assert_eq!(understand(&text, Unit::Inch, None).unwrap().value, inches);
    }
}
