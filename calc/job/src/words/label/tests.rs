//! What holds of every text in every language.

use super::TABLES;
use crate::words::Language;
use crate::words::language::{TextsFault, packed, take};

/// Texts that are the same in two languages because the word is the same, or there is none.
const SAME: &[&str] = &[
    "{number} min",
    "Code",
    "Verdicts",
    "Site",
    "Notes",
    "Material",
    "Volume",
    "volume",
    "source",
    "lot · date",
    "total",
    "US Letter",
    "document",
    "date",
    "abc",
    "Menu",
    "note",
    "Grains",
    "Service",
    "verdict",
    "Expansion",
    "Sources",
    "fraction",
    "Photo",
    "Corrections",
    "Version",
    "Point",
    "Note",
    "Total",
    "Lot",
    "expansion",
    "sodium",
    "aluminium",
    "Calcite 16×40",
    "Magnesia 6×16",
    "stop",
    "catalogue",
    "Sodium",
    "Aluminium",
];

fn rows() -> impl Iterator<Item = [&'static str; 3]> {
    TABLES.iter().flat_map(|table| table.iter().copied())
}

/// What is wrong with texts, all at once.
fn none(wrong: Vec<String>) {
    assert!(wrong.is_empty(), "{} texts:\n{}", wrong.len(), wrong.join("\n"));
}

#[test]
fn no_text_is_empty_in_one_language_alone() {
    none(rows().filter(|row| row.iter().any(|text| text.is_empty())).map(|row| format!("{row:?}")).collect());
}

#[test]
fn no_english_is_left_over() {
    let mut wrong = Vec::new();
    for [english, spanish, french] in rows() {
        let letters = without_places(english).chars().filter(|letter| letter.is_alphabetic()).count();
        for other in [spanish, french] {
            if other == english && letters > 2 && !SAME.contains(&english) {
                wrong.push(format!("{english:?},"));
            }
        }
        for text in [spanish, french] {
            let words = without_places(text);
            // A symbol of a formula is no word.
            let mut words = words.split(|letter: char| !letter.is_alphabetic() && letter != '_');
            if let Some(word) = words.find(|word| ENGLISH.contains(&word.to_lowercase().as_str())) {
                wrong.push(format!("“{word}” in {text:?}"));
            }
        }
    }
    none(wrong);
}

/// Words that only English has.
const ENGLISH: &[&str] = &[
    "the", "of", "and", "is", "are", "with", "which", "from", "that", "this", "what", "bag", "bags", "flow", "water",
    "vessel", "it", "its", "by", "to", "not", "was", "were", "be", "for", "one", "sheet", "bed",
];

fn without_places(text: &str) -> String {
    let mut out = String::new();
    let mut inside = false;
    for letter in text.chars() {
        match letter {
            '{' => inside = true,
            '}' => inside = false,
            letter if !inside => out.push(letter),
            _ => {}
        }
    }
    out
}

#[test]
fn french_puts_narrow_spaces_before_its_marks_and_curls_its_apostrophes() {
    let mut wrong = Vec::new();
    for [_, _, french] in rows() {
        let letters: Vec<char> = french.chars().collect();
        for pair in letters.windows(2) {
            let [before, mark] = pair else { continue };
            let narrow = *before == '\u{202f}';
            match mark {
                ';' | '?' | '!' | '»' if !narrow => wrong.push(format!("{french:?}")),
                ':' if !narrow && !before.is_ascii_digit() => wrong.push(format!("{french:?}")),
                '\'' | '“' | '”' | '"' => wrong.push(format!("{french:?}")),
                _ => {}
            }
            if *before == '«' && *mark != '\u{202f}' {
                wrong.push(format!("{french:?}"));
            }
        }
    }
    none(wrong);
}

#[test]
fn spanish_opens_its_questions_and_quotes_with_angles() {
    let wrong = rows().filter(|[_, spanish, _]| {
        spanish.contains(['“', '”', '"', '\'', '’']) || spanish.matches('?').count() != spanish.matches('¿').count()
    });
    none(wrong.map(|row| format!("{:?}", row[1])).collect());
}

#[test]
fn a_text_begins_and_ends_alike_in_every_language() {
    let ends = |text: &str| text.chars().next_back().filter(|last| ".:;?…".contains(*last));
    let spaced = |text: &str| (text.starts_with(' '), text.ends_with(' '));
    let mut wrong = Vec::new();
    for row in rows() {
        let [english, others @ ..] = row;
        for other in others {
            if ends(other) != ends(english) && !english.ends_with('.') && !other.ends_with('.')
                || other.ends_with('.') != english.ends_with('.')
                    && other.chars().count() > 6
                    && english.chars().count() > 6
                || spaced(other) != spaced(english)
            {
                wrong.push(format!("{english:?} / {other:?}"));
            }
        }
    }
    none(wrong);
}

#[test]
fn a_file_of_texts_is_taken_by_the_page_it_came_with_and_by_no_other() {
    for language in Language::ALL {
        let text = packed(language);
        assert_eq!(text.lines().count(), rows().count() + 1);
        assert_eq!(take(language, text.clone()), Ok(()));
        let cut = text.rsplit_once('\n').map(|(whole, _)| whole.to_owned()).unwrap_or_default();
        assert_eq!(take(language, cut), Err(TextsFault::Another));
        assert_eq!(take(language, String::new()), Err(TextsFault::Another));
        assert_eq!(take(language, text.replacen("texts 1", "texts 2", 1)), Err(TextsFault::Another));
    }
    assert_eq!(take(Language::French, packed(Language::Spanish)), Err(TextsFault::Another));
}
