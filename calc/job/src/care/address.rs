//! A tag as a part of an address: any letters, safely.

/// The tag as it stands in an address: letters, digits, `-` and `_` as they are, every other octet of UTF-8 as `%` and two
/// hexadecimal digits (RFC 3986, 2.1).
///
/// ```
/// use bedwright_job::care::address::{tag_address, tag_of};
/// assert_eq!(tag_address("CF 1/ä"), "CF%201%2F%C3%A4");
/// assert_eq!(tag_of("CF%201%2F%C3%A4").as_deref(), Some("CF 1/ä"));
/// ```
#[must_use]
pub fn tag_address(tag: &str) -> String {
    let mut address = String::with_capacity(tag.len());
    for octet in tag.bytes() {
        if octet.is_ascii_alphanumeric() || matches!(octet, b'-' | b'_') {
            address.push(char::from(octet));
        } else {
            address.push('%');
            address.push(digit(octet >> 4));
            address.push(digit(octet & 15));
        }
    }
    address
}

fn digit(value: u8) -> char {
    char::from(if value < 10 { b'0' + value } else { b'A' + value - 10 })
}

/// The tag of an address; nothing where it isn't one. Letters that a browser left as they are, are taken so.
#[must_use]
pub fn tag_of(address: &str) -> Option<String> {
    let mut octets = Vec::with_capacity(address.len());
    let mut there = address.bytes();
    while let Some(octet) = there.next() {
        if octet != b'%' {
            octets.push(octet);
            continue;
        }
        let (high, low) = (value(there.next()?)?, value(there.next()?)?);
        octets.push(high * 16 + low);
    }
    String::from_utf8(octets).ok()
}

fn value(digit: u8) -> Option<u8> {
    char::from(digit).to_digit(16).and_then(|value| u8::try_from(value).ok())
}

#[cfg(test)]
mod tests {
    use super::{tag_address, tag_of};

    #[test]
    fn any_tag_comes_back() {
        for tag in ["", "CF-1", "a/b#c?d%e f", "..", "Häs_2", "№ 7", "%41"] {
            let address = tag_address(tag);
            assert!(address.bytes().all(|octet| octet.is_ascii_alphanumeric() || b"-_%".contains(&octet)), "{address}");
            assert_eq!(tag_of(&address).as_deref(), Some(tag));
        }
        assert_eq!(tag_of("%4"), None);
        assert_eq!(tag_of("%zz"), None);
        assert_eq!(tag_of("%FF"), None);
    }
}
