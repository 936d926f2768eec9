//! The characters of a text with their many shapes folded into one each.

/// One visible character.
#[derive(Clone, Copy, Debug)]
pub(super) struct Glyph {
    /// Which character of the typed text it was, from zero.
    pub at: usize,
    /// The character as typed.
    pub typed: char,
    /// The one shape that stands for all its kin.
    pub shape: char,
}

/// Glyphs as they were typed.
pub(super) fn as_typed<'a>(glyphs: impl IntoIterator<Item = &'a Glyph>) -> String {
    glyphs.into_iter().map(|glyph| glyph.typed).collect()
}

/// The visible characters of a text, without the spaces around it.
///
/// Wide digits and letters become narrow, capitals small, every space a space, curly quotes
/// straight, every slash a slash and every hyphen a hyphen. A true minus and a prime stay what
/// they are: "1−1/2" is not a mixed number, and a prime never groups digits.
pub(super) fn glyphs(text: &str) -> Vec<Glyph> {
    let mut all: Vec<Glyph> = text
        .chars()
        .enumerate()
        .filter(|&(_, c)| !is_invisible(c))
        .map(|(at, c)| Glyph { at, typed: c, shape: shape(c) })
        .collect();
    while all.last().is_some_and(|g| g.shape == ' ') {
        all.pop();
    }
    let leading = all.iter().take_while(|g| g.shape == ' ').count();
    all.drain(..leading);
    all
}

/// Marks that pasted text carries and nobody sees: zero width, direction, variation.
fn is_invisible(c: char) -> bool {
    matches!(
        c,
        '\u{AD}' | '\u{200B}'..='\u{200F}' | '\u{202A}'..='\u{202E}' | '\u{2060}'..='\u{206F}'
            | '\u{FE00}'..='\u{FE0F}' | '\u{FEFF}'
    )
}

fn shape(c: char) -> char {
    match c {
        // Full-width forms stand in the order of ASCII, 0xFEE0 further on.
        '\u{FF01}'..='\u{FF5E}' => u32::from(c).checked_sub(0xFEE0).and_then(char::from_u32).map_or(c, shape),
        'A'..='Z' => c.to_ascii_lowercase(),
        c if c.is_whitespace() => ' ',
        '‘' | '’' | '‛' | 'ʼ' | '`' | '´' => '\'',
        '“' | '”' | '„' | '″' => '"',
        '\u{2044}' | '\u{2215}' => '/',
        '\u{2010}' | '\u{2011}' | '\u{2013}' | '\u{FE63}' => '-',
        'º' | '˚' => '°',
        'ℓ' => 'l',
        other => other,
    }
}

/// Numerator and denominator of a character that is a whole fraction.
///
/// The characters are those of the Unicode blocks Latin-1 Supplement and Number Forms with the
/// compatibility type `fraction` (The Unicode Standard, UnicodeData.txt).
pub(super) fn vulgar_fraction(c: char) -> Option<(f64, f64)> {
    Some(match c {
        '¼' => (1.0, 4.0),
        '½' => (1.0, 2.0),
        '¾' => (3.0, 4.0),
        '⅐' => (1.0, 7.0),
        '⅑' => (1.0, 9.0),
        '⅒' => (1.0, 10.0),
        '⅓' => (1.0, 3.0),
        '⅔' => (2.0, 3.0),
        '⅕' => (1.0, 5.0),
        '⅖' => (2.0, 5.0),
        '⅗' => (3.0, 5.0),
        '⅘' => (4.0, 5.0),
        '⅙' => (1.0, 6.0),
        '⅚' => (5.0, 6.0),
        '⅛' => (1.0, 8.0),
        '⅜' => (3.0, 8.0),
        '⅝' => (5.0, 8.0),
        '⅞' => (7.0, 8.0),
        '↉' => (0.0, 3.0),
        _ => return None,
    })
}

/// The digit that a raised digit stands for.
pub(super) fn raised_digit(c: char) -> Option<char> {
    Some(match c {
        '⁰' => '0',
        '¹' => '1',
        '²' => '2',
        '³' => '3',
        '⁴' => '4',
        '⁵' => '5',
        '⁶' => '6',
        '⁷' => '7',
        '⁸' => '8',
        '⁹' => '9',
        _ => return None,
    })
}

/// The digit that a lowered digit stands for.
pub(super) fn lowered_digit(c: char) -> Option<char> {
    let digit = u32::from(c).checked_sub(0x2080).filter(|d| *d <= 9)?;
    char::from_digit(digit, 10)
}
