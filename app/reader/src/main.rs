//! Reads QR codes off a picture. A program of its own, which a worker starts when a camera opens: it is as large as a third
//! of the page, and most people never need it.

use wasm_bindgen::prelude::wasm_bindgen;

/// The texts of all codes in a picture of red, green, blue and opacity, a byte each, row by row. A code that can't be read
/// whole is left out: the next picture may be better.
#[wasm_bindgen]
#[must_use]
pub fn codes_in(pixels: &[u8], wide: usize, high: usize) -> Vec<String> {
    if wide == 0 || high == 0 || pixels.len() != wide.saturating_mul(high).saturating_mul(4) {
        return Vec::new();
    }
    // How bright a pixel is: ITU-R BT.601 in whole numbers.
    let grey = |x: usize, y: usize| match pixels.get((y * wide + x) * 4..) {
        Some([red, green, blue, ..]) => {
            ((u32::from(*red) * 77 + u32::from(*green) * 150 + u32::from(*blue) * 29) >> 8) as u8
        }
        _ => u8::MAX,
    };
    let mut picture = rqrr::PreparedImage::prepare_from_greyscale(wide, high, grey);
    let read = |grid: &rqrr::Grid<_>| {
        let mut bytes = Vec::new();
        grid.decode_to(&mut bytes).ok()?;
        String::from_utf8(bytes).ok()
    };
    picture.detect_grids().iter().filter_map(read).collect()
}

fn main() {}
