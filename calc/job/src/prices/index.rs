//! Finds rows by a text of theirs without looking at every one.

/// Places by the hash of a text. Which of the places hold the very text is for the caller to see.
pub(super) struct Index(Vec<Vec<usize>>);

const BUCKETS: usize = 8192;

impl Index {
    pub(super) fn new() -> Index {
        Index(vec![Vec::new(); BUCKETS])
    }

    /// Puts a place under a text; capitals and spaces around it don't count.
    pub(super) fn put(&mut self, text: &str, place: usize) {
        if let Some(bucket) = self.0.get_mut(bucket(text)) {
            bucket.push(place);
        }
    }

    /// The places that may hold a text.
    pub(super) fn of(&self, text: &str) -> &[usize] {
        self.0.get(bucket(text)).map_or(&[], Vec::as_slice)
    }
}

fn bucket(text: &str) -> usize {
    let letters = text.trim().bytes().map(|byte| byte.to_ascii_lowercase());
    let hash = letters.fold(0x811c_9dc5_u32, |hash, byte| (hash ^ u32::from(byte)).wrapping_mul(0x0100_0193));
    usize::try_from(hash).unwrap_or(0) % BUCKETS
}
