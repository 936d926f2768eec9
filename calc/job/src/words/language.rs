//! The languages the page speaks, and where their texts are.
//!
//! A text stands once per language, side by side, in the tables of [`super::label`]. A native program holds all of them.
//! The page's wasm holds English; the texts of another language are a file that comes with the page ([`packed`] writes it,
//! [`take`] reads it), fetched by those who read that language only.

use super::label::{COUNT, Row, TABLES};

/// The languages the page speaks.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Language {
    /// English.
    #[default]
    English,
    /// Spanish.
    Spanish,
    /// French.
    French,
}

impl Language {
    /// All of them.
    pub const ALL: [Language; 3] = [Language::English, Language::Spanish, Language::French];

    /// Its tag after BCP 47, as a page's `lang` has it.
    #[must_use]
    pub const fn tag(self) -> &'static str {
        match self {
            Language::English => "en",
            Language::Spanish => "es",
            Language::French => "fr",
        }
    }

    /// Its name in itself, as somebody looks for it.
    #[must_use]
    pub const fn own_name(self) -> &'static str {
        match self {
            Language::English => "English",
            Language::Spanish => "Español",
            Language::French => "Français",
        }
    }

    /// The language of a tag, whatever region follows: `es-MX`, `fr_CA`.
    #[must_use]
    pub fn of_tag(tag: &str) -> Option<Language> {
        let first = tag.split(['-', '_']).next().unwrap_or_default();
        Language::ALL.into_iter().find(|language| language.tag().eq_ignore_ascii_case(first))
    }

    /// The first of somebody's languages that is spoken here, best first; English where none is.
    #[must_use]
    pub fn best_of<'a>(tags: impl IntoIterator<Item = &'a str>) -> Language {
        tags.into_iter().find_map(Language::of_tag).unwrap_or_default()
    }

    /// Whether a number of things is spoken of as one: nothing and a part are one in French.
    #[must_use]
    pub fn is_one(self, count: f64) -> bool {
        match self {
            Language::English | Language::Spanish => count == 1.0,
            Language::French => (0.0..2.0).contains(&count),
        }
    }
}

/// Why a file of texts isn't taken.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum TextsFault {
    /// It is of another version of the page, of another language, or cut.
    Another,
}

/// What the first line of a file of texts says.
fn first_line(language: Language) -> String {
    // FNV-1a over the English texts: two versions of the page that differ in a text have another one.
    let mut hash = 0xcbf2_9ce4_8422_2325_u64;
    for row in TABLES.iter().flat_map(|table| table.iter()) {
        for byte in row.first().copied().unwrap_or_default().bytes().chain([b'\n']) {
            hash = (hash ^ u64::from(byte)).wrapping_mul(0x0100_0000_01b3);
        }
    }
    ["bedwright-texts 1 ", language.tag(), " ", &COUNT.to_string(), " ", &hash.to_string()].concat()
}

/// The texts of a language as a file: a first line that says what it is, then a line each.
#[cfg(not(target_family = "wasm"))]
#[must_use]
pub fn packed(language: Language) -> String {
    let mut text = first_line(language);
    for row in TABLES.iter().flat_map(|table| table.iter()) {
        text.push('\n');
        text.push_str(row.get(language as usize).copied().unwrap_or_default());
    }
    text
}

/// Takes the texts of a language from their file, for as long as the page is open.
///
/// # Errors
///
/// Where the file isn't of this version and language; nothing is taken then, and the language is shown in English.
pub fn take(language: Language, text: String) -> Result<(), TextsFault> {
    let (first, rest) = text.split_once('\n').ok_or(TextsFault::Another)?;
    if first != first_line(language) || rest.split('\n').count() != COUNT {
        return Err(TextsFault::Another);
    }
    hold(language, text);
    Ok(())
}

#[cfg(not(target_family = "wasm"))]
fn hold(_: Language, _: String) {}

/// Whether the texts of a language are here.
#[cfg(not(target_family = "wasm"))]
#[must_use]
pub const fn is_here(_: Language) -> bool {
    true
}

/// The text of a row of a table. `place` is where it stands among all texts.
#[cfg(not(target_family = "wasm"))]
pub(super) fn text(row: &Row, _place: usize, language: Language) -> &'static str {
    row.get(language as usize).copied().unwrap_or_default()
}

#[cfg(target_family = "wasm")]
pub use shipped::is_here;
#[cfg(target_family = "wasm")]
pub(super) use shipped::{hold, text};

/// What came with the page.
#[cfg(target_family = "wasm")]
mod shipped {
    use std::sync::OnceLock;

    use super::{Language, Row};

    static SPANISH: OnceLock<Vec<&'static str>> = OnceLock::new();
    static FRENCH: OnceLock<Vec<&'static str>> = OnceLock::new();

    const fn of(language: Language) -> Option<&'static OnceLock<Vec<&'static str>>> {
        match language {
            Language::English => None,
            Language::Spanish => Some(&SPANISH),
            Language::French => Some(&FRENCH),
        }
    }

    /// Whether the texts of a language are here.
    #[must_use]
    pub fn is_here(language: Language) -> bool {
        of(language).is_none_or(|texts| texts.get().is_some())
    }

    pub(in crate::words) fn hold(language: Language, text: String) {
        // Once a language and page: what shows a text may keep it.
        let text: &'static str = Box::leak(text.into_boxed_str());
        if let Some(texts) = of(language) {
            let _ = texts.set(text.split('\n').skip(1).collect());
        }
    }

    pub(in crate::words) fn text(row: &Row, place: usize, language: Language) -> &'static str {
        let [english] = *row;
        of(language).and_then(OnceLock::get).and_then(|texts| texts.get(place)).copied().unwrap_or(english)
    }
}

/// A pattern with its places filled: `{what}` becomes what `what` stands for.
pub(super) fn filled(pattern: &str, places: &[(&str, &str)]) -> String {
    let mut text = String::with_capacity(pattern.len() + 16 * places.len());
    let mut rest = pattern;
    while let Some((before, after)) = rest.split_once('{') {
        text.push_str(before);
        let (name, after) = after.split_once('}').unwrap_or((after, ""));
        let value = places.iter().find(|(place, _)| *place == name);
        debug_assert!(value.is_some(), "nothing fills {{{name}}} of “{pattern}”");
        text.push_str(value.map_or(name, |(_, value)| value));
        rest = after;
    }
    text.push_str(rest);
    text
}

#[cfg(test)]
mod tests {
    use super::{Language, filled};

    #[test]
    fn a_language_is_known_by_its_tag_whatever_the_region() {
        for (tags, best) in [
            (&["es-MX", "en"][..], Language::Spanish),
            (&["de-DE", "fr_CA"], Language::French),
            (&["FR"], Language::French),
            (&["pt-BR", "de"], Language::English),
            (&[], Language::English),
            (&["estonian"], Language::English),
        ] {
            assert_eq!(Language::best_of(tags.iter().copied()), best, "{tags:?}");
        }
    }

    #[test]
    fn places_are_filled_by_name_in_whatever_order() {
        assert_eq!(filled("{a} of {b}", &[("b", "2"), ("a", "1")]), "1 of 2");
        assert_eq!(filled("nothing", &[("a", "1")]), "nothing");
        assert_eq!(filled("{a}{a}", &[("a", "x{a}")]), "x{a}x{a}");
    }

    #[test]
    fn one_is_one_and_in_french_nothing_and_a_part_as_well() {
        for (count, one) in
            [(0.0, [false, false, true]), (1.0, [true; 3]), (1.5, [false, false, true]), (2.0, [false; 3])]
        {
            assert_eq!(Language::ALL.map(|language| language.is_one(count)), one, "{count}");
        }
    }
}
