//! Number marks. What is expected: Unicode CLDR, `numbers/{en,de,es,fr,hi}` (from memory): English 1,234.5; German
//! 1.234,5; Spanish 1234,5 but 12.345 (`minimumGroupingDigits` 2); Hindi 1,23,45,678.

use bedwright_edge::intl::{NumberMarks, languages, number_marks, number_marks_of};
use wasm_bindgen_test::wasm_bindgen_test;

fn marks(
    decimal: &str,
    group: &str,
    first_group: usize,
    next_group: usize,
    grouped_from: usize,
) -> Option<NumberMarks> {
    Some(NumberMarks { decimal: decimal.into(), group: group.into(), first_group, next_group, grouped_from })
}

#[wasm_bindgen_test]
fn each_language_has_its_marks() {
    assert_eq!(number_marks_of("en-US"), marks(".", ",", 3, 3, 4));
    assert_eq!(number_marks_of("de-DE"), marks(",", ".", 3, 3, 4));
    assert_eq!(number_marks_of("es-ES"), marks(",", ".", 3, 3, 5));
    assert_eq!(number_marks_of("hi-IN"), marks(".", ",", 3, 2, 4));
    // French: a narrow space that does not break, U+202F.
    assert_eq!(number_marks_of("fr-FR"), marks(",", "\u{202f}", 3, 3, 4));
    assert_eq!(number_marks_of("no tag at all"), None);
}

#[wasm_bindgen_test]
fn the_browser_tells_its_own() {
    let languages = languages();
    assert!(!languages.is_empty());
    assert_eq!(number_marks(), number_marks_of(&languages[0]));
}
