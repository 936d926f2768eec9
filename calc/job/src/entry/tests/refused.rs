//! Texts that are no numbers, each with the reason.

use crate::entry::Misread::{self, *};
use crate::entry::Unit::{self, *};
use crate::entry::{Dimension, LONGEST, understand};

fn refusal(text: &str, unit: Unit) -> Misread {
    match understand(text, unit, None) {
        Err(misread) => misread,
        Ok(understood) => panic!("{text:?} was taken for {understood:?}"),
    }
}

#[test]
fn what_is_no_number_says_where() {
    let rows: &[(&str, usize, &str)] = &[
        ("abc", 0, "abc"),
        ("in", 0, "in"),
        ("x52", 0, "x52"),
        ("-", 1, ""),
        (".", 0, "."),
        (",", 0, ","),
        ("+-5", 1, "-5"),
        ("--5", 1, "-5"),
        ("—5", 0, "—5"),
        ("5-", 1, "-"),
        ("52 4", 3, "4"),
        ("52 48 in", 3, "48"),
        ("  52 4", 5, "4"),
        ("1 30", 2, "30"),
        ("1 3000", 2, "3000"),
        ("1  300", 3, "300"),
        ("0 300", 2, "300"),
        ("1234 567", 5, "567"),
        ("1 300'000", 6, "000"),
        ("1,234 567", 6, "567"),
        ("1.2.3", 0, "1.2.3"),
        ("1,2,3", 0, "1,2,3"),
        ("1,23.4", 0, "1,23.4"),
        ("12,34,567", 0, "12,34,567"),
        ("1,234.567,8", 0, "1,234.567,8"),
        ("0,123,456", 0, "0,123,456"),
        ("1 234,567.8", 0, "1"),
        ("1..5", 2, ".5"),
        ("1,,5", 2, ",5"),
        ("1/2/3", 3, "/3"),
        ("1/6/2026", 3, "/2026"),
        ("1/", 1, "/"),
        ("/2", 0, "/2"),
        ("1.5/2", 3, "/2"),
        ("1.5 1/2", 4, "1/2"),
        ("1.5½", 3, "½"),
        ("½½", 1, "½"),
        ("1 3/2", 2, "3/2"),
        ("1 2/2", 2, "2/2"),
        ("1 000/2", 2, "000/2"),
        ("1−1/2", 1, "−1/2"),
        ("1 - 1/2", 2, "-"),
        ("1-2", 1, "-2"),
        ("2*3", 1, "*3"),
        ("$5", 0, "$5"),
        ("5²", 1, "²"),
        ("=5", 0, "=5"),
        ("٥", 0, "٥"),
        ("4.5' 3\"", 5, "3\""),
        ("4ft.5in", 3, ".5in"),
        ("4' 1.2.3\"", 3, "1.2.3\""),
        ("∞", 0, "∞"),
        ("NaN", 0, "NaN"),
        ("1½ ½ X", 3, "½"),
        ("inf", 0, "inf"),
    ];
    for &(text, at, found) in rows {
        let expected = NotANumber { at, found: found.to_owned() };
        assert_eq!(refusal(text, Inch), expected, "{text:?}");
    }
}

#[test]
fn a_unit_nobody_knows_is_named() {
    for (text, name) in [
        ("5 Furlongs", "Furlongs"),
        ("5 yd", "yd"),
        ("5 mmm", "mmm"),
        ("5 in in", "in in"),
        ("5e", "e"),
        ("5 ft 3 mm", "ft 3 mm"),
        ("5 ft x", "ft x"),
        ("4'4'", "'4'"),
        ("5 # ", ""),
    ] {
        if name.is_empty() {
            assert!(matches!(refusal(text, Inch), NotANumber { at: 2, .. }));
        } else {
            assert_eq!(refusal(text, Inch), UnknownUnit(name.to_owned()), "{text:?}");
        }
    }
    // Which ton, which ounce, which gallon: not guessed.
    for (text, unit) in [("1 ton", Pound), ("1 fl oz", Litre), ("1 imp gal", Litre), ("5 gr", Gram), ("5 lb 3", Pound)]
    {
        assert!(matches!(refusal(text, unit), UnknownUnit(_)), "{text:?}");
    }
}

#[test]
fn a_unit_of_another_kind_is_refused() {
    for (text, unit, found) in [
        ("5 lb", Inch, Pound),
        ("5 in", CubicFoot, Inch),
        ("4 ft³", Inch, CubicFoot),
        ("4 ft^3", Inch, CubicFoot),
        ("4 ft^2", Inch, SquareFoot),
        ("4 ft 3", CubicFoot, Inch),
        ("4' 4\"", Kilogram, Inch),
        ("50%", Inch, Percent),
        ("5 m", CubicMetre, Metre),
        ("5 m3", Metre, CubicMetre),
        ("5 °C", Bar, Celsius),
        ("5 gpm", MetrePerHour, UsGallonPerMinute),
        ("5 lb", PoundPerCubicFoot, Pound),
        ("3 bags", Litre, Each),
    ] {
        let wanted = unit.dimension();
        assert_eq!(refusal(text, unit), WrongDimension { found, wanted }, "{text:?}");
    }
    assert_eq!(Inch.dimension(), Dimension::Length);
}

#[test]
fn nothing_and_too_much_are_refused() {
    for text in ["", " ", "\t\n", "\u{a0}\u{202f}", "\u{200b}"] {
        assert_eq!(refusal(text, Inch), Empty, "{text:?}");
    }
    for text in ["1/0", "1 1/0", "0/0", "4' 1/0\"", "1⁄0", "¹⁄₀"] {
        assert_eq!(refusal(text, Inch), DivideByZero, "{text:?}");
    }
    for text in ["1e308", "1e999", "1e13 m", "-1e13 m", "1000000000000000 in"] {
        assert_eq!(refusal(text, Inch), TooLarge, "{text:?}");
    }
    for text in ["1e-400", "1e-20", "0.00000000000000001"] {
        assert_eq!(refusal(text, Inch), TooSmall, "{text:?}");
    }
    assert_eq!(refusal(&"1".repeat(LONGEST + 1), Inch), TooLong);
    assert_eq!(refusal(&"½".repeat(LONGEST + 1), Inch), TooLong);
}

#[test]
fn a_foot_of_inches_is_another_foot() {
    for (text, value) in [("4' 12\"", 12.0), ("4 ft 14 in", 14.0), ("4' 60", 60.0)] {
        let expected = PartTooLarge { value, unit: Inch, below: 12.0 };
        assert_eq!(refusal(text, Inch), expected, "{text:?}");
    }
}
