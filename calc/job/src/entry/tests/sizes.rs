//! Nominal vessel sizes.

use crate::entry::{Misread, nominal_size};

#[test]
fn a_size_is_two_numbers_or_four_digits() {
    for (text, size) in [
        ("12x52", (12.0, 52.0)),
        ("12X52", (12.0, 52.0)),
        ("12×52", (12.0, 52.0)),
        ("12 × 52", (12.0, 52.0)),
        ("12*52", (12.0, 52.0)),
        ("12 by 52", (12.0, 52.0)),
        ("12by52", (12.0, 52.0)),
        ("12 in x 52 in", (12.0, 52.0)),
        ("12\" x 52\"", (12.0, 52.0)),
        ("１２ｘ５２", (12.0, 52.0)),
        (" 1252 ", (12.0, 52.0)),
        ("0835", (8.0, 35.0)),
        ("8x35", (8.0, 35.0)),
        ("1054", (10.0, 54.0)),
        ("1665", (16.0, 65.0)),
        ("2162", (21.0, 62.0)),
        ("2472", (24.0, 72.0)),
        ("3672", (36.0, 72.0)),
        ("4272", (42.0, 72.0)),
        ("4872", (48.0, 72.0)),
        ("6367", (63.0, 67.0)),
        ("63x67", (63.0, 67.0)),
        ("63 x 110", (63.0, 110.0)),
        ("144 x 60", (144.0, 60.0)),
        ("4x60", (4.0, 60.0)),
    ] {
        assert_eq!(nominal_size(text), Ok(size), "{text:?}");
    }
}

#[test]
fn nonsense_is_no_size() {
    assert_eq!(nominal_size(""), Err(Misread::Empty));
    assert_eq!(nominal_size(&"1".repeat(65)), Err(Misread::TooLong));
    for text in [
        "12", "835", "12520", "12x", "x52", "12x52x3", "12 52", "12-52", "12//52", "abc", "12x52kg", "12 b 52",
        "1.252", "-12x52", "12x-52", "½", "12 in", "1 252",
    ] {
        assert!(matches!(nominal_size(text), Err(Misread::NotANumber { .. })), "{text:?}: {:?}", nominal_size(text));
    }
    for text in ["0000", "0x0", "1200", "0052", "5212", "9910", "52x12", "12x5200", "999x999", "0499"] {
        assert!(matches!(nominal_size(text), Err(Misread::NoSuchSize { .. })), "{text:?}: {:?}", nominal_size(text));
    }
    assert_eq!(nominal_size("5212"), Err(Misread::NoSuchSize { diameter_in: 52.0, height_in: 12.0 }));
    assert_eq!(nominal_size("12/0x5"), Err(Misread::DivideByZero));
}
