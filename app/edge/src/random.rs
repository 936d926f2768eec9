//! Ids that nobody else has: 128 bits from the browser's own source of random bytes.

use crate::fault::Fault;

/// Crockford's Base32 (public description, 2019): no I, L, O or U, so that it can be read out and typed.
const DIGITS: [char; 32] = [
    '0', '1', '2', '3', '4', '5', '6', '7', '8', '9', 'A', 'B', 'C', 'D', 'E', 'F', 'G', 'H', 'J', 'K', 'M', 'N', 'P',
    'Q', 'R', 'S', 'T', 'V', 'W', 'X', 'Y', 'Z',
];

/// Sixteen random bytes (Web Cryptography API, W3C, `getRandomValues`).
///
/// # Errors
/// [`Fault::Blocked`] where the browser has no such source.
pub fn bytes() -> Result<[u8; 16], Fault> {
    let crypto = web_sys::window().and_then(|window| window.crypto().ok()).ok_or(Fault::Blocked)?;
    let mut bytes = [0; 16];
    crypto.get_random_values_with_u8_array(&mut bytes).map_err(|thrown| Fault::other(&thrown))?;
    Ok(bytes)
}

/// A new id: 26 characters of Crockford's Base32.
///
/// # Errors
/// As [`bytes`].
pub fn id() -> Result<String, Fault> {
    bytes().map(base32)
}

/// Sixteen bytes, first byte first, as 26 digits; the first digit holds the three highest bits.
#[must_use]
pub fn base32(bytes: [u8; 16]) -> String {
    let number = u128::from_be_bytes(bytes);
    (0..26_u32).rev().filter_map(|place| DIGITS.get(((number >> (5 * place)) & 31) as usize)).collect()
}
