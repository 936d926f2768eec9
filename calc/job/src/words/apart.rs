//! A text of somebody's own beside others: one that turns the direction of writing turns itself alone.

use std::borrow::Cow;

/// What opens and closes a stretch of its own (Unicode Standard Annex 9, 2.4: first strong isolate, pop directional isolate).
const MARKS: [&str; 2] = ["\u{2068}", "\u{2069}"];

/// Whether a letter runs from right to left or a mark turns the direction: blocks of Unicode that hold such letters (Hebrew to
/// Arabic Extended, their presentation forms, the older scripts) and the marks of Annex 9.
fn turns(letter: char) -> bool {
    matches!(letter,
        '\u{590}'..='\u{8ff}' | '\u{200f}' | '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}' | '\u{fb1d}'..='\u{fdff}'
        | '\u{fe70}'..='\u{fefe}' | '\u{10800}'..='\u{10fff}' | '\u{1e800}'..='\u{1efff}')
}

/// The text, between marks that set it apart where it needs them.
#[must_use]
pub fn apart(text: &str) -> Cow<'_, str> {
    if text.chars().any(turns) { Cow::Owned([MARKS[0], text, MARKS[1]].concat()) } else { Cow::Borrowed(text) }
}

/// Texts of somebody's own in one line, each set apart; what is empty is left out.
#[must_use]
pub fn side_by_side(texts: &[&str]) -> String {
    let texts: Vec<_> = texts.iter().copied().filter(|text| !text.is_empty()).map(apart).collect();
    texts.join(" · ")
}

#[cfg(test)]
mod tests {
    use super::apart;
    use crate::words::Manner;

    #[test]
    fn only_a_text_that_turns_the_direction_is_set_apart() {
        for plain in ["", "CF-1", "Ωμέγα é 🧯", "½ · 12×52"] {
            assert_eq!(apart(plain), plain);
        }
        for turning in ["מסנן-1", "مرشح ١٢", "\u{202e}abc"] {
            assert_eq!(apart(turning), format!("\u{2068}{turning}\u{2069}"));
        }
    }

    #[test]
    fn a_value_stays_behind_a_name_that_runs_from_right_to_left() {
        assert_eq!(Manner::default().named("مرشح", "3 bags"), "\u{2068}مرشح\u{2069}: 3 bags");
        assert_eq!(Manner::default().named("CF-1", "3 bags"), "CF-1: 3 bags");
    }
}
