//! JSON in which every number is the nearest to what stands there.
//!
//! `serde_json` reads numbers of more than fifteen digits to within the last bit only, so that a number of a later version,
//! or one that somebody signed, became another with every opening and saving. Its own remedy takes 9 kB of the page in brotli;
//! what is typed is read exactly already.

use serde_json::{Number, Value};

use crate::decimal::nearest;

/// The most letters of a number that is read exactly: none that was written from a double has more.
const LONGEST: usize = 40;

/// Reads a text.
pub(crate) fn value(text: &str) -> serde_json::Result<Value> {
    let mut value = serde_json::from_str(text)?;
    let written = broken_numbers(text);
    // A key that stands twice in one object hides a number: then none is known to be which.
    if !written.is_empty() && count(&value) == written.len() {
        put(&mut value, &mut written.into_iter());
    }
    Ok(value)
}

/// Every number that isn't whole, or is larger than whole numbers are kept, in the order of the text.
fn broken_numbers(text: &str) -> Vec<&str> {
    let (mut found, mut in_text, mut escaped, mut from) = (Vec::new(), false, false, None);
    for (at, letter) in text.bytes().chain([b' ']).enumerate() {
        let of_number = !in_text && matches!(letter, b'0'..=b'9' | b'-' | b'+' | b'.' | b'e' | b'E');
        match from {
            // Also the letters of `true`, which begin no number.
            None if of_number && !matches!(letter, b'e' | b'E') => from = Some(at),
            Some(start) if !of_number => {
                found.extend(text.get(start..at).filter(|number| is_broken(number)));
                from = None;
            }
            _ => {}
        }
        match letter {
            _ if escaped => escaped = false,
            b'\\' if in_text => escaped = true,
            b'"' => in_text = !in_text,
            _ => {}
        }
    }
    found
}

fn is_broken(number: &str) -> bool {
    number.contains(['.', 'e', 'E'])
        || number == "-0"
        || (number.parse::<u64>().is_err() && number.parse::<i64>().is_err())
}

fn count(value: &Value) -> usize {
    match value {
        Value::Number(number) => usize::from(number.is_f64()),
        Value::Array(all) => all.iter().map(count).sum(),
        Value::Object(all) => all.values().map(count).sum(),
        _ => 0,
    }
}

fn put<'a>(value: &mut Value, written: &mut impl Iterator<Item = &'a str>) {
    match value {
        Value::Number(number) if number.is_f64() => {
            let Some(text) = written.next().filter(|text| text.len() <= LONGEST) else { return };
            let size = nearest(&text.trim_start_matches('-').replace('E', "e"));
            // What is too large was refused before.
            if let Some(exact) = Number::from_f64(if text.starts_with('-') { -size } else { size }) {
                *number = exact;
            }
        }
        Value::Array(all) => all.iter_mut().for_each(|one| put(one, written)),
        Value::Object(all) => all.values_mut().for_each(|one| put(one, written)),
        _ => {}
    }
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used, clippy::indexing_slicing)] // Tests say so by panicking.

    use super::{broken_numbers, value};

    /// Std's own reading of numbers is the outside reference.
    #[test]
    fn every_number_is_the_nearest() {
        for text in [
            "0.30000000000000004",
            "2.2222222222222222e46",
            "22222222222222222222222222222222222222222222222",
            "-1.7976931348623157E+308",
            "5e-324",
            "9007199254740993.0",
            "-0",
            "1e22",
            "123456789012345678",
            "0.1",
        ] {
            let read =
                value(&format!("{{\"a\": [true, {text}], \"e\": \"1.5e3\\\\\\\" 2.5\", \"b\": {text}}}")).unwrap();
            let wanted: f64 = text.parse().unwrap();
            for number in [&read["a"][1], &read["b"]] {
                assert_eq!(number.as_f64().map(f64::to_bits), Some(wanted.to_bits()), "{text}");
            }
        }
    }

    #[test]
    fn numbers_in_texts_and_names_are_none() {
        assert_eq!(broken_numbers(r#"{"1.5": "2.5", "a\"3.5": [true, false, 4.5, 7, -8], "e": 1e3}"#), ["4.5", "1e3"]);
        // The first is hidden by the second: both stay as they were read.
        assert_eq!(value(r#"{"a": 1.5, "a": 2.5}"#).unwrap()["a"], 2.5);
    }
}
