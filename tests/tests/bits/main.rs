//! What ships is what is proved: the reference tables and whole fills on the page's own profile, equal to the bit
//! with the native build.
#![cfg(target_arch = "wasm32")]
#![allow(clippy::panic)] // A test says what is wrong by panicking.

use bedwright_tests::{digest, heads, sieves, vessels};
use wasm_bindgen_test::wasm_bindgen_test;

/// What the native build computed; `tests/run` hands it in.
const NATIVE: Option<&str> = option_env!("BEDWRIGHT_DIGESTS");

#[wasm_bindgen_test]
fn wasm_and_native_agree_to_the_bit() {
    let Some(native) = NATIVE else { panic!("BEDWRIGHT_DIGESTS was not set at build time: run `tests/run bits`") };
    let native: Vec<&str> = native.split(',').collect();
    let here = digest::all();
    let here: Vec<&str> = here.split(',').collect();
    assert_eq!(native, here, "name:count=digest, native on the left");
}

#[wasm_bindgen_test]
fn volumes_below_heights_match_the_reference() {
    vessels::volumes().settle("vessel_volume.csv", 1257);
}

#[wasm_bindgen_test]
fn heights_holding_volumes_match_the_reference() {
    vessels::heights().settle("vessel_height.csv", 262);
}

#[wasm_bindgen_test]
fn a_volume_turned_into_its_height_comes_back() {
    vessels::inverses().settle("vessel_volume.csv, there and back", 1257);
}

#[wasm_bindgen_test]
fn heads_match_fifty_digits() {
    heads::shapes().settle("head_shape.csv", 18);
}

#[wasm_bindgen_test]
fn sieves_match_the_standard() {
    sieves::openings().settle("sieve.csv", 27);
}
