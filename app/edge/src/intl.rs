//! How this browser's person writes numbers, and the languages they read (ECMA-402).

use js_sys::{Array, Intl::NumberFormat, Object, Reflect};
use wasm_bindgen::JsValue;

use crate::fault::property;

/// The marks of a number. Digits are always 0 to 9.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct NumberMarks {
    /// Between ones and tenths.
    pub decimal: String,
    /// Between groups of digits; empty where digits are not grouped.
    pub group: String,
    /// Digits in the group next to the decimal mark; 0 where digits are not grouped.
    pub first_group: usize,
    /// Digits in each further group (2 in India, where the first has 3).
    pub next_group: usize,
    /// Digits from which on they are grouped: 4, or 5 where 1234 stays whole (Spanish, Polish).
    pub grouped_from: usize,
}

/// The marks of the browser's own language; none where it does not tell.
#[must_use]
pub fn number_marks() -> Option<NumberMarks> {
    marks(&Array::new())
}

/// The marks of a language, by its tag (`es`, `de-CH`); none where the browser does not tell.
#[must_use]
pub fn number_marks_of(language: &str) -> Option<NumberMarks> {
    // A tag that is no tag makes the constructor throw, and the binding does not catch that.
    let canonical = property(&js_sys::global(), "Intl")
        .and_then(|intl| crate::fault::method(&intl, "getCanonicalLocales").map(|check| (intl, check)))?;
    canonical.1.call1(&canonical.0, &JsValue::from_str(language)).ok()?;
    marks(&Array::of1(&JsValue::from_str(language)))
}

/// The languages the person reads, best first, as tags (`es-MX`).
#[must_use]
pub fn languages() -> Vec<String> {
    let Some(navigator) = web_sys::window().map(|window| window.navigator()) else {
        return Vec::new();
    };
    let languages: Vec<String> = navigator.languages().iter().filter_map(|tag| tag.as_string()).collect();
    if languages.is_empty() { navigator.language().into_iter().collect() } else { languages }
}

fn marks(languages: &Array) -> Option<NumberMarks> {
    let options = Object::new();
    Reflect::set(&options, &JsValue::from_str("numberingSystem"), &JsValue::from_str("latn")).ok()?;
    let format = NumberFormat::new(languages, &options);
    let long = parts(&format, 12_345_678.5);
    let of = |kind: &str| long.iter().find(|(found, _)| found == kind).map(|(_, value)| value.clone());
    let digits: Vec<usize> =
        long.iter().filter(|(kind, _)| kind == "integer").map(|(_, value)| value.chars().count()).collect();
    let group = of("group").unwrap_or_default();
    let mut from_the_mark = digits.iter().rev().copied();
    let (first_group, next_group) = if group.is_empty() {
        (0, 0)
    } else {
        let first = from_the_mark.next().unwrap_or_default();
        (first, from_the_mark.next().unwrap_or(first))
    };
    let small_is_grouped = parts(&format, 1_234.0).iter().any(|(kind, _)| kind == "group");
    Some(NumberMarks {
        decimal: of("decimal")?,
        group,
        first_group,
        next_group,
        grouped_from: if small_is_grouped { 4 } else { 5 },
    })
}

fn parts(format: &NumberFormat, number: f64) -> Vec<(String, String)> {
    format
        .format_to_parts(number)
        .iter()
        .filter_map(|part| Some((property(&part, "type")?.as_string()?, property(&part, "value")?.as_string()?)))
        .collect()
}
