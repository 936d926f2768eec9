//! Whether patterns of two languages have the same places, decided while the page is built.

/// Whether two patterns have the same places, in whatever order, and neither is of several lines.
pub(super) const fn same(one: &str, other: &str) -> bool {
    let (one, other) = (one.as_bytes(), other.as_bytes());
    within(one, other) && within(other, one)
}

/// Whether every place of a pattern is also one of another.
const fn within(of: &[u8], other: &[u8]) -> bool {
    let mut rest = of;
    while let [first, after @ ..] = rest {
        match *first {
            b'\n' | b'}' => return false,
            b'{' if !is_place(after) || !holds(other, rest) => return false,
            _ => rest = after,
        }
        if *first == b'{' {
            while let [b'a'..=b'z' | b'_' | b'}', after @ ..] = rest {
                let [first, ..] = rest else { return false };
                rest = after;
                if *first == b'}' {
                    break;
                }
            }
        }
    }
    true
}

/// Whether what follows a brace names a place and closes it.
const fn is_place(text: &[u8]) -> bool {
    let mut rest = text;
    while let [b'a'..=b'z' | b'_', after @ ..] = rest {
        rest = after;
    }
    matches!(rest, [b'}', ..])
}

/// Whether a text holds the place that another begins with.
const fn holds(text: &[u8], place: &[u8]) -> bool {
    let mut rest = text;
    while let [_, after @ ..] = rest {
        if begins_alike(rest, place) {
            return true;
        }
        rest = after;
    }
    false
}

/// Whether two texts are the same up to the end of the place they begin with.
const fn begins_alike(text: &[u8], place: &[u8]) -> bool {
    let (mut text, mut place) = (text, place);
    while let ([one, after @ ..], [other, wanted @ ..]) = (text, place) {
        if *one != *other {
            return false;
        }
        if *one == b'}' {
            return true;
        }
        (text, place) = (after, wanted);
    }
    false
}

#[cfg(test)]
mod tests {
    use super::same;

    #[test]
    fn places_agree_in_whatever_order_and_a_missing_one_is_seen() {
        for (one, other, agree) in [
            ("plain", "llano", true),
            ("{a} of {b}", "de {b}, {a}", true),
            ("{a} of {b}", "{a}", false),
            ("{a}", "{a} y {b}", false),
            ("{limit}", "{limits}", false),
            ("open {a", "open {a", false),
            ("closed a}", "closed a}", false),
            ("two\nlines", "two\nlines", false),
            ("ends {a}", "{a}", true),
        ] {
            assert_eq!(same(one, other), agree, "{one} / {other}");
        }
    }
}
