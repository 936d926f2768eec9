//! Marks that could be taken two ways.

use crate::entry::Unit::{Inch, Millimetre};
use crate::entry::{Marks, Meaning, Misread, Unit, answered, typed, understand};

const POINT: Marks = Marks { decimal: '.' };
const COMMA: Marks = Marks { decimal: ',' };

/// Text, the number if decimal, the number if thousands.
const IN_DOUBT: &[(&str, f64, f64)] = &[
    ("1,234", 1.234, 1234.0),
    ("1.234", 1.234, 1234.0),
    ("2.375", 2.375, 2375.0),
    ("12,500", 12.5, 12500.0),
    ("999.999", 999.999, 999_999.0),
    ("-1.234", -1.234, -1234.0),
    ("１．２３４", 1.234, 1234.0),
    ("1,000", 1.0, 1000.0),
    ("1,234 mm", 1.234, 1234.0),
    ("1.234mm", 1.234, 1234.0),
];

#[test]
fn without_a_meaning_both_readings_are_offered() {
    for &(text, as_decimal, as_thousands) in IN_DOUBT {
        let expected = Misread::Ambiguous { as_decimal, as_thousands, written: Millimetre };
        assert_eq!(understand(text, Millimetre, None), Err(expected), "{text:?}");
    }
}

#[test]
fn the_stored_meaning_decides_for_ever() {
    for &(text, as_decimal, as_thousands) in IN_DOUBT {
        for (meaning, value) in [(Meaning::DecimalPoint, as_decimal), (Meaning::Thousands, as_thousands)] {
            let understood = understand(text, Millimetre, Some(meaning)).unwrap();
            assert_eq!(understood.value, value, "{text:?}");
            let (entry, _) = answered(text, Millimetre, meaning).unwrap();
            assert_eq!(entry.meaning, Some(meaning));
            assert_eq!(entry.understood().unwrap().value, value, "{text:?}");
        }
    }
}

#[test]
fn ones_own_decimal_mark_is_decimal_and_the_other_is_asked() {
    for (text, own, other) in [("2.375", POINT, COMMA), ("2,375", COMMA, POINT), ("12.500 in", POINT, COMMA)] {
        let (entry, understood) = typed(text, Inch, own).unwrap();
        assert_eq!(entry.meaning, Some(Meaning::DecimalPoint), "{text:?}");
        assert!(understood.value < 13.0, "{text:?}");
        assert_eq!(entry.understood(), Ok(understood));
        assert!(matches!(typed(text, Inch, other), Err(Misread::Ambiguous { .. })), "{text:?}");
    }
    // Somebody used to a third mark is asked about both.
    let third = Marks { decimal: '٫' };
    for text in ["1,234", "1.234"] {
        assert!(matches!(typed(text, Inch, third), Err(Misread::Ambiguous { .. })));
    }
}

#[test]
fn one_possible_reading_is_no_question_but_is_kept() {
    let rows: &[(&str, Marks, Meaning, f64, Unit)] = &[
        // 4 ft 4125 in is nothing.
        ("4' 4,125\"", POINT, Meaning::DecimalPoint, 52.125, Inch),
        ("4' 4.125\"", POINT, Meaning::DecimalPoint, 52.125, Inch),
        // 1.3 followed by a half is nothing.
        ("1,300 1/2", POINT, Meaning::Thousands, 1300.5, Inch),
        ("1,234' 5\"", POINT, Meaning::Thousands, 14813.0, Inch),
    ];
    for &(text, marks, meaning, value, unit) in rows {
        let (entry, understood) = typed(text, unit, marks).unwrap();
        assert_eq!(entry.meaning, Some(meaning), "{text:?}");
        assert_eq!(understood.value, value, "{text:?}");
        assert_eq!(understand(text, unit, None).unwrap().value, value, "{text:?}");
    }
    // The own mark stays decimal even where only thousands would make a number.
    assert!(matches!(typed("1,300 1/2", Inch, COMMA), Err(Misread::NotANumber { .. })));
}

#[test]
fn nobody_is_asked_about_a_certain_number() {
    for marks in [POINT, COMMA] {
        for (text, value) in [
            ("1,5", 1.5),
            ("1.5", 1.5),
            ("0,125", 0.125),
            ("0.125", 0.125),
            ("1,234.5", 1234.5),
            ("1.234,5", 1234.5),
            ("1,234,567", 1_234_567.0),
            ("1.234.567", 1_234_567.0),
            ("1 234", 1234.0),
            ("52", 52.0),
        ] {
            let (entry, understood) = typed(text, Millimetre, marks).unwrap();
            assert_eq!(entry.meaning, None, "{text:?}");
            assert_eq!(understood.value, value, "{text:?}");
        }
    }
}

#[test]
fn text_and_unit_of_the_field_are_kept_as_they_were() {
    let (entry, understood) = typed("  12 in ", Millimetre, POINT).unwrap();
    assert_eq!(entry.text, "  12 in ");
    assert_eq!(entry.unit, Millimetre);
    assert!(understood.names_unit);
    assert!(!typed("12", Millimetre, POINT).unwrap().1.names_unit);
}
