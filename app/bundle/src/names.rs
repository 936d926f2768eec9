//! Content hashes: file names and the build's id.
use sha2::{Digest, Sha256};

/// SHA-256 (FIPS 180-4).
pub fn digest(bytes: &[u8]) -> [u8; 32] {
    Sha256::digest(bytes).into()
}

/// The same in lower-case hexadecimal.
pub fn sha256(bytes: &[u8]) -> String {
    digest(bytes).iter().map(|byte| format!("{byte:02x}")).collect()
}

/// How many hexadecimal digits of a hash go into a name: 64 bits, enough that two builds of one page never meet.
const DIGITS: usize = 16;

/// A name that changes whenever a byte does: `stem-<hash>.ending`.
pub fn hashed(stem: &str, ending: &str, bytes: &[u8]) -> String {
    let hash = sha256(bytes);
    let short = hash.get(..DIGITS).unwrap_or(&hash);
    format!("{stem}-{short}.{ending}")
}

/// Whether a name was made by [`hashed`], and may be kept for ever by whoever has it.
pub fn is_hashed(name: &str) -> bool {
    name.rsplit('/')
        .next()
        .and_then(|file| file.split_once('.'))
        .and_then(|(stem, _)| stem.rsplit_once('-'))
        .is_some_and(|(_, hash)| hash.len() == DIGITS && hash.bytes().all(|b| matches!(b, b'0'..=b'9' | b'a'..=b'f')))
}

/// The build's id: every name and every byte goes in, so two builds share an id only if they are the same build.
pub fn build_id<'a>(label: Option<&str>, files: impl IntoIterator<Item = (&'a str, &'a [u8])>) -> String {
    let mut all = String::new();
    for (name, bytes) in files {
        all.push_str(name);
        all.push('\0');
        all.push_str(&sha256(bytes));
        all.push('\n');
    }
    let hash = sha256(all.as_bytes());
    let short = hash.get(..DIGITS).unwrap_or(&hash);
    match label {
        Some(label) => format!("{label}-{short}"),
        None => short.to_owned(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    // FIPS 180-4; the digests are NIST's published examples ("SHA256" example values, one-block message "abc"),
    // and the well-known digest of the empty message.
    #[test]
    fn sha256_is_the_one_of_the_standard() {
        assert_eq!(sha256(b"abc"), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
        assert_eq!(sha256(b""), "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
    }

    #[test]
    fn a_name_carries_the_hash_of_its_own_bytes() {
        assert_eq!(hashed("app", "wasm", b"abc"), "app-ba7816bf8f01cfea.wasm");
        assert_ne!(hashed("app", "wasm", b"abd"), hashed("app", "wasm", b"abc"));
    }

    #[test]
    fn a_hashed_name_is_told_from_a_fixed_one() {
        assert!(is_hashed("app-ba7816bf8f01cfea.wasm"));
        assert!(is_hashed("sub/app-ba7816bf8f01cfea.wasm"));
        for fixed in ["sw.js", "index.html", "icons/icon-192.png", "app-BA7816BF8F01CFEA.js", ""] {
            assert!(!is_hashed(fixed), "{fixed}");
        }
    }

    #[test]
    fn the_build_id_moves_with_label_name_and_byte() {
        let id = |label, name, bytes: &'static [u8]| build_id(label, [(name, bytes)]);
        let first = id(Some("A"), "a", b"1");
        assert!(first.starts_with("A-"));
        assert_eq!(first, id(Some("A"), "a", b"1"));
        assert_ne!(first, id(Some("B"), "a", b"1"));
        assert_ne!(first, id(Some("A"), "b", b"1"));
        assert_ne!(first, id(Some("A"), "a", b"2"));
        assert_ne!(id(None, "a", b"1"), id(None, "a", b"2"));
    }
}
