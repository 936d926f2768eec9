//! Whatever is typed: no panic, and the same meaning the second time.

use proptest::prelude::*;

use crate::entry::{Entry, Marks, Meaning, Misread, Unit, fraction_text, nominal_size, typed, understand};

fn unit() -> impl Strategy<Value = Unit> {
    proptest::sample::select(Unit::ALL)
}

fn marks() -> impl Strategy<Value = Marks> {
    proptest::sample::select(vec!['.', ',', '\'', 'x', '\0']).prop_map(|decimal| Marks { decimal })
}

/// Texts made of what numbers are made of, which get further than arbitrary ones.
fn nearly() -> impl Strategy<Value = String> {
    let parts = vec![
        "0", "1", "2", "12", "300", "000", "52", "4", ".", ",", " ", "\u{a0}", "\u{202f}", "'", "’", "\"", "″", "/",
        "⁄", "-", "−", "+", "½", "⅛", "↉", "⅟", "¹", "²", "³", "₂", "e", "E", "in", "ft", "ft3", "mm", "m", "lb", "oz",
        "h", "min", "%", "°F", "gpm", "x", "×", "by", "５", "．", "ß", "İ", "\u{200b}", "\u{301}", "🙂",
    ];
    proptest::collection::vec(proptest::sample::select(parts), 0..12).prop_map(|parts| parts.concat())
}

fn never_panics(text: &str, unit: Unit, marks: Marks) -> Result<(), TestCaseError> {
    let _ = nominal_size(text);
    for meaning in [None, Some(Meaning::DecimalPoint), Some(Meaning::Thousands)] {
        if let Ok(understood) = understand(text, unit, meaning) {
            prop_assert!(understood.si.is_finite());
            prop_assert_eq!(understood.dimension, unit.dimension());
        }
    }
    same_the_second_time(text, unit, marks)
}

fn same_the_second_time(text: &str, unit: Unit, marks: Marks) -> Result<(), TestCaseError> {
    match typed(text, unit, marks) {
        Ok((entry, understood)) => {
            let json = serde_json::to_string(&entry).unwrap();
            let read: Entry = serde_json::from_str(&json).unwrap();
            let again = read.understood();
            prop_assert_eq!(again.map(|u| u.si.to_bits()), Ok(understood.si.to_bits()));
            // No meaning is stored only where none is needed.
            if entry.meaning.is_none() {
                prop_assert_eq!(understand(text, unit, None), Ok(understood));
            }
        }
        Err(Misread::Ambiguous { .. }) => {
            let refused = matches!(understand(text, unit, None), Err(Misread::Ambiguous { .. }));
            prop_assert!(refused);
        }
        Err(_) => {}
    }
    Ok(())
}

/// Digits in groups of three from the right.
fn grouped(digits: &str, separator: &str) -> String {
    let mut out = String::new();
    for (index, digit) in digits.chars().enumerate() {
        if index > 0 && (digits.len() - index).is_multiple_of(3) {
            out.push_str(separator);
        }
        out.push(digit);
    }
    out
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 2000, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn any_string_is_read_without_a_panic(text in ".*", unit in unit(), marks in marks()) {
        never_panics(&text, unit, marks)?;
    }

    #[test]
    fn any_near_number_is_read_without_a_panic(text in nearly(), unit in unit(), marks in marks()) {
        never_panics(&text, unit, marks)?;
    }

    #[test]
    fn any_number_can_be_shown_as_a_fraction(bits in any::<u64>(), denominator in any::<u32>()) {
        prop_assert!(!fraction_text(f64::from_bits(bits), denominator).is_empty());
    }

    #[test]
    fn a_number_written_with_ones_own_mark_reads_back_to_the_bit(
        thousandths in -999_999_999_i64..999_999_999,
        decimals in 0_usize..6,
        comma in any::<bool>(),
        minus in any::<bool>(),
    ) {
        // std's formatting and parsing of f64 are the outside reference.
        let mut text = format!("{:.decimals$}", thousandths as f64 / 1000.0);
        let expected: f64 = text.parse().unwrap();
        let decimal = if comma { ',' } else { '.' };
        if comma {
            text = text.replace('.', ",");
        }
        if minus {
            text = text.replace('-', "\u{2212}");
        }
        let (_, understood) = typed(&text, Unit::Metre, Marks { decimal }).unwrap();
        prop_assert_eq!(understood.si, expected);
    }

    #[test]
    fn a_grouped_number_reads_back_or_is_asked(
        whole in 1_u32..999_999_999,
        tenths in proptest::option::of(0_u32..10),
        style in 0_usize..5,
        own_comma in any::<bool>(),
    ) {
        let (separator, decimal) =
            [(" ", ","), ("\u{202f}", "."), ("’", "."), (",", "."), (".", ",")][style];
        let mut text = grouped(&whole.to_string(), separator);
        let mut expected = f64::from(whole);
        if let Some(tenths) = tenths {
            text = format!("{text}{decimal}{tenths}");
            expected = format!("{whole}.{tenths}").parse().unwrap();
        }
        let marks = Marks { decimal: if own_comma { ',' } else { '.' } };
        let one_mark = style > 2 && tenths.is_none() && (1000..1_000_000).contains(&whole);
        match typed(&text, Unit::Metre, marks) {
            Ok((_, understood)) if one_mark => {
                // Only the own mark is taken without asking, and as decimal.
                prop_assert_eq!(separator == ",", own_comma);
                prop_assert!((understood.si * 1000.0 - expected).abs() < 1e-6);
            }
            Ok((_, understood)) => prop_assert_eq!(understood.si, expected),
            Err(Misread::Ambiguous { as_thousands, .. }) => {
                prop_assert!(one_mark);
                prop_assert_eq!(as_thousands, expected);
            }
            Err(misread) => prop_assert!(false, "{:?}: {:?}", text, misread),
        }
    }

    #[test]
    fn a_mixed_number_never_joins_its_wholes_to_its_numerator(
        whole in 1_u32..10_000,
        (numerator, denominator) in (2_u32..65).prop_flat_map(|d| (1..d, Just(d))),
        style in 0_usize..4,
    ) {
        let separator = [" ", "-", "\u{a0}", "  "][style];
        let text = format!("{whole}{separator}{numerator}/{denominator}");
        let value = understand(&text, Unit::Inch, None).unwrap().value;
        prop_assert_eq!(
            value,
            f64::from(whole * denominator + numerator) / f64::from(denominator)
        );
        let feet = format!("{whole} ft {}/{}", numerator, denominator);
        prop_assert_eq!(
            understand(&feet, Unit::Inch, None).unwrap().value,
            f64::from(whole * 12 * denominator + numerator) / f64::from(denominator)
        );
    }

    #[test]
    fn there_and_back_again(value in -1e6_f64..1e6, unit in unit()) {
        let back = unit.from_si(unit.to_si(value));
        prop_assert!((back - value).abs() <= 1e-12 * value.abs().max(500.0));
    }
}
