//! The first bytes choose how the rest is taken.

/// The first byte and the rest; nought where there is none.
pub fn first(bytes: &[u8]) -> (u8, &[u8]) {
    bytes.split_first().map_or((0, bytes), |(first, rest)| (*first, rest))
}

/// The first two bytes as a number, and the rest.
pub fn first_two(bytes: &[u8]) -> (usize, &[u8]) {
    let (high, rest) = first(bytes);
    let (low, rest) = first(rest);
    (usize::from(high) << 8 | usize::from(low), rest)
}
