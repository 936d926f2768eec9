//! Equations as text: what follows a low line in a symbol is its index, and stands low.

use super::live::{El, el};

/// Whether a letter belongs to an index.
fn of_index(letter: char) -> bool {
    letter.is_alphabetic() || letter.is_ascii_digit() || letter == ','
}

/// Puts an equation into an element.
pub fn equation(into: El, text: &str) -> El {
    let mut parts = text.split('_');
    let into = into.text(parts.next().unwrap_or_default());
    parts.fold(into, |into, part| {
        let end = part.find(|letter| !of_index(letter)).unwrap_or(part.len());
        let (index, rest) = part.split_at(end);
        into.kid(el("sub", "").text(index)).text(rest)
    })
}
