//! Deflate (RFC 1951) with a window that is full before the first letter: of what stands in every job, so that it needn't be
//! sent. It makes a small job half as long, which decides whether one code holds it.

use miniz_oxide::deflate::core::{
    CompressorOxide, TDEFLFlush, TDEFLStatus, compress, create_comp_flags_from_zip_params,
};
use miniz_oxide::inflate::TINFLStatus;
use miniz_oxide::inflate::core::inflate_flags::TINFL_FLAG_USING_NON_WRAPPING_OUTPUT_BUF;
use miniz_oxide::inflate::core::{DecompressorOxide, decompress};

use super::Damage;

/// What stands in every job. Frozen: every envelope of version 1 was made with it.
const KNOWN: &[u8] = include_bytes!("known_1.txt");
/// How hard it is packed: the hardest, jobs are small.
const EFFORT: i32 = 10;

/// A text, packed.
pub(super) fn packed(text: &[u8]) -> Vec<u8> {
    let mut compressor = CompressorOxide::new(create_comp_flags_from_zip_params(EFFORT, 0, 0));
    // What comes of the known text ends at a whole byte, and is left out.
    drop(written(&mut compressor, KNOWN, TDEFLFlush::Sync));
    written(&mut compressor, text, TDEFLFlush::Finish)
}

fn written(compressor: &mut CompressorOxide, mut text: &[u8], flush: TDEFLFlush) -> Vec<u8> {
    let mut all = Vec::new();
    let mut room = vec![0; 4096];
    loop {
        let (status, taken, made) = compress(compressor, text, &mut room, flush);
        text = text.get(taken..).unwrap_or_default();
        all.extend_from_slice(room.get(..made).unwrap_or_default());
        let full = made == room.len();
        if status != TDEFLStatus::Okay || (flush != TDEFLFlush::Finish && text.is_empty() && !full) {
            return all;
        }
    }
}

/// A text that was packed; never longer than `long`, whatever is in it.
pub(super) fn unpacked(packed: &[u8], long: usize) -> Result<Vec<u8>, Damage> {
    let mut all = KNOWN.to_vec();
    all.resize(KNOWN.len().saturating_add(long), 0);
    let mut state = DecompressorOxide::new();
    let flags = TINFL_FLAG_USING_NON_WRAPPING_OUTPUT_BUF;
    let (status, taken, made) = decompress(&mut state, packed, &mut all, KNOWN.len(), flags);
    match status {
        TINFLStatus::Done if made == long && taken == packed.len() => Ok(all.split_off(KNOWN.len())),
        TINFLStatus::HasMoreOutput => Err(Damage::TooLong { bytes: long }),
        _ => Err(Damage::Changed),
    }
}

#[cfg(test)]
mod tests {
    use super::{Damage, KNOWN, packed, unpacked};

    #[test]
    fn a_text_comes_back_and_what_is_known_costs_next_to_nothing() {
        let letters: Vec<u8> = (0..70_000_u32).map(|at| (at.wrapping_mul(2_654_435_761) >> 24) as u8).collect();
        for text in [&b""[..], b"a", KNOWN, &letters] {
            let small = packed(text);
            assert_eq!(unpacked(&small, text.len()), Ok(text.to_vec()));
            if !text.is_empty() {
                assert_eq!(unpacked(&small, text.len() - 1), Err(Damage::TooLong { bytes: text.len() - 1 }));
            }
        }
        assert!(packed(KNOWN).len() < 80, "{}", packed(KNOWN).len());
    }
}
