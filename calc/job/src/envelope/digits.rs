//! An envelope in decimal digits, for a link that stands in a code: there three digits take ten bits, a letter eight.
//!
//! Seven bytes are seventeen digits; at the end fewer bytes are fewer digits. A dot before them tells them from the letters
//! of a link that somebody copies.

use super::Damage;

/// What digits begin with.
const DOT: char = '.';
/// How many digits hold so many bytes: the first whose power of ten is larger than all they can say.
const PLACES: [usize; 8] = [0, 3, 5, 8, 10, 13, 15, 17];

/// The digits of some bytes.
#[must_use]
pub fn digits(sealed: &[u8]) -> String {
    let mut text = String::with_capacity(sealed.len() / 7 * 17 + 18);
    text.push(DOT);
    for seven in sealed.chunks(7) {
        let number = seven.iter().fold(0_u64, |sum, byte| sum << 8 | u64::from(*byte));
        let places = PLACES.get(seven.len()).copied().unwrap_or(17);
        let mut divisor = (1..places).fold(1_u64, |power, _| power * 10);
        while divisor > 0 {
            text.push(char::from(b'0' + (number / divisor % 10) as u8));
            divisor /= 10;
        }
    }
    text
}

/// The bytes of some digits.
///
/// # Errors
/// [`Damage::Letter`] for what is no digit; [`Damage::Cut`] where the last byte isn't whole; [`Damage::Changed`] where
/// digits say more than their bytes hold.
pub fn from_digits(text: &str) -> Result<Vec<u8>, Damage> {
    let digits = text.trim().strip_prefix(DOT).ok_or(Damage::OtherThing)?;
    let mut values = Vec::with_capacity(digits.len());
    for (at, letter) in digits.chars().enumerate() {
        values.push(letter.to_digit(10).ok_or(Damage::Letter { letter, at: at + 2 })?);
    }
    let mut bytes = Vec::with_capacity(values.len() / 17 * 7 + 7);
    for some in values.chunks(17) {
        let whole = PLACES.iter().position(|places| *places == some.len()).ok_or(Damage::Cut)?;
        let number = some.iter().fold(0_u64, |sum, digit| sum * 10 + u64::from(*digit));
        if number >> (8 * whole) != 0 {
            return Err(Damage::Changed);
        }
        bytes.extend((0..whole).rev().map(|place| (number >> (8 * place) & 0xFF) as u8));
    }
    Ok(bytes)
}

#[cfg(test)]
mod tests {
    use super::{Damage, digits, from_digits};

    #[test]
    fn digits_and_bytes_are_the_same() {
        for long in 0..40_usize {
            for fill in [0_u8, 1, 0x7F, 0xFF] {
                let bytes = vec![fill; long];
                assert_eq!(from_digits(&digits(&bytes)), Ok(bytes));
            }
        }
        // 256 + 2 and 2^56 − 1.
        assert_eq!(digits(&[1, 2]), ".00258");
        assert_eq!(digits(&[0xFF; 7]), ".72057594037927935");
    }

    #[test]
    fn what_no_digits_say_is_refused() {
        assert_eq!(from_digits("00258"), Err(Damage::OtherThing));
        assert_eq!(from_digits(".0025"), Err(Damage::Cut));
        assert_eq!(from_digits(".65536"), Err(Damage::Changed));
        assert_eq!(from_digits(".0x258"), Err(Damage::Letter { letter: 'x', at: 3 }));
    }
}
