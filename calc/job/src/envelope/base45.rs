//! Bytes in the letters that a QR code holds most closely: base45 (RFC 9285).

const LETTERS: &[u8; 45] = b"0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:";

/// The letters of some bytes.
pub(super) fn base45(bytes: &[u8]) -> String {
    let mut text = String::with_capacity(bytes.len() / 2 * 3 + 2);
    for two in bytes.chunks(2) {
        let mut rest = two.iter().fold(0_u32, |sum, byte| sum << 8 | u32::from(*byte));
        for _ in 0..=two.len() {
            text.extend(LETTERS.get((rest % 45) as usize).map(|letter| char::from(*letter)));
            rest /= 45;
        }
    }
    text
}

/// The bytes of some letters; none where they aren't base45.
pub(super) fn from_base45(text: &str) -> Option<Vec<u8>> {
    let mut bytes = Vec::with_capacity(text.len() / 3 * 2 + 1);
    for three in text.as_bytes().chunks(3) {
        let mut sum = 0_u32;
        for letter in three.iter().rev() {
            let digit = LETTERS.iter().position(|there| there == letter)?;
            sum = sum * 45 + u32::try_from(digit).ok()?;
        }
        match three.len() {
            3 if sum <= 0xFFFF => bytes.extend([(sum >> 8) as u8, (sum & 0xFF) as u8]),
            2 if sum <= 0xFF => bytes.push(sum as u8),
            _ => return None,
        }
    }
    Some(bytes)
}

#[cfg(test)]
mod tests {
    use super::{base45, from_base45};

    /// The examples of RFC 9285, 4.3 and 4.4.
    #[test]
    fn letters_are_those_of_the_standard() {
        for (bytes, letters) in [("AB", "BB8"), ("Hello!!", "%69 VD92EX0"), ("base-45", "UJCLQE7W581"), ("", "")] {
            assert_eq!(base45(bytes.as_bytes()), letters);
            assert_eq!(from_base45(letters).as_deref(), Some(bytes.as_bytes()));
        }
        assert_eq!(from_base45("QED8WEX0").as_deref(), Some(b"ietf!".as_slice()));
    }

    /// RFC 9285, 6: `GGW` would be 65536, more than two bytes hold.
    #[test]
    fn what_is_no_base45_is_refused() {
        for letters in ["GGW", ":::", "A", "AAAA", "aBB", "::", "BB8\n"] {
            assert_eq!(from_base45(letters), None, "{letters}");
        }
    }
}
