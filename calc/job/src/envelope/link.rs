//! An envelope as the last part of a link: base64url without padding (RFC 4648, 5).

use super::Damage;

const LETTERS: &[u8; 64] = b"ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";

/// The letters of some bytes.
#[must_use]
pub fn link(sealed: &[u8]) -> String {
    let mut text = String::with_capacity(sealed.len().div_ceil(3) * 4);
    for three in sealed.chunks(3) {
        let bits = three.iter().fold(0_u32, |bits, byte| bits << 8 | u32::from(*byte)) << (8 * (3 - three.len()));
        for at in 0..=three.len() {
            let six = bits >> (18 - 6 * at) & 63;
            text.extend(LETTERS.get(six as usize).map(|letter| char::from(*letter)));
        }
    }
    text
}

/// The bytes of some letters. Spaces and line ends, which messengers put in, are passed over.
///
/// # Errors
/// [`Damage::Letter`] for one that no link has; [`Damage::Cut`] where the last byte isn't whole.
pub fn from_link(text: &str) -> Result<Vec<u8>, Damage> {
    let mut bytes = Vec::with_capacity(text.len() / 4 * 3 + 2);
    let (mut bits, mut held) = (0_u32, 0_u32);
    for (at, letter) in text.trim().chars().enumerate().filter(|(_, letter)| !letter.is_whitespace()) {
        bits = bits << 6 | value(letter).ok_or(Damage::Letter { letter, at: at + 1 })?;
        held += 6;
        if held >= 8 {
            held -= 8;
            bytes.push((bits >> held & 0xFF) as u8);
            bits &= (1 << held) - 1;
        }
    }
    // What is left over of the last letter is nought, and never a whole letter.
    if held >= 6 || bits != 0 { Err(Damage::Cut) } else { Ok(bytes) }
}

/// What a letter stands for. A search among all of them would be most of the work.
const fn value(letter: char) -> Option<u32> {
    Some(match letter {
        'A'..='Z' => letter as u32 - 'A' as u32,
        'a'..='z' => letter as u32 - 'a' as u32 + 26,
        '0'..='9' => letter as u32 - '0' as u32 + 52,
        '-' => 62,
        '_' => 63,
        _ => return None,
    })
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use super::{Damage, from_link, link};

    /// RFC 4648, 10, without the padding; the last from its alphabet: 62 is `-`, 63 is `_`.
    #[test]
    fn letters_are_those_of_the_standard() {
        for (bytes, letters) in [
            ("", ""),
            ("f", "Zg"),
            ("fo", "Zm8"),
            ("foo", "Zm9v"),
            ("foob", "Zm9vYg"),
            ("fooba", "Zm9vYmE"),
            ("foobar", "Zm9vYmFy"),
        ] {
            assert_eq!(link(bytes.as_bytes()), letters);
            assert_eq!(from_link(letters).unwrap(), bytes.as_bytes());
        }
        assert_eq!(link(&[0xFB, 0xFF]), "-_8");
    }

    #[test]
    fn what_no_link_has_is_said() {
        assert_eq!(from_link("Zm9+"), Err(Damage::Letter { letter: '+', at: 4 }));
        assert_eq!(from_link("Zm9vY"), Err(Damage::Cut));
        assert_eq!(from_link("Zh"), Err(Damage::Cut));
        assert_eq!(from_link(" Zm\n9v "), Ok(b"foo".to_vec()));
    }
}
