//! How long the page's own build takes over the bench's work, in Chromium. It tells; nothing is judged by the clock.
#![cfg(target_arch = "wasm32")]
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)] // A test says what is wrong by panicking.

use bedwright_tests::{beds, carbonates, packs};
use wasm_bindgen_test::{console_log, wasm_bindgen_test};

wasm_bindgen_test::wasm_bindgen_test_configure!(run_in_browser);

/// Milliseconds since the page began.
fn now() -> f64 {
    let performance = js_sys::Reflect::get(&js_sys::global(), &"performance".into()).unwrap();
    let now = js_sys::Reflect::get(&performance, &"now".into()).unwrap();
    js_sys::Function::from(now).call0(&performance).unwrap().as_f64().unwrap()
}

/// Seconds for one of `count`.
fn seconds(count: u32, work: impl Fn() -> f64) -> f64 {
    // Once before, so that the browser has compiled it.
    let mut sum = work();
    let begun = now();
    for _ in 0..count {
        sum += work();
    }
    let took = now() - begun;
    assert!(sum.is_finite());
    took / 1000.0 / f64::from(count)
}

#[wasm_bindgen_test]
fn planned_windows_at_61_temperatures_are_timed() {
    let window = || beds::planned_window().iter().filter_map(|row| row.lifts_from[1]).map(|flow| flow.value).sum();
    console_log!("window_s {:.6}", seconds(5, window));
}

#[wasm_bindgen_test]
fn expansions_at_61_temperatures_are_timed() {
    let expansions = || beds::planned_expansions().iter().filter_map(|expansion| expansion.likely).sum();
    console_log!("expansions_s {:.6}", seconds(10, expansions));
}

#[wasm_bindgen_test]
fn packs_of_fifty_vessels_are_timed() {
    let chosen = || {
        let (cents, alone) = packs::fifty_vessels();
        (cents + alone) as f64
    };
    console_log!("packs_s {:.6}", seconds(20, chosen));
}

/// The table is read along, as it is natively.
#[wasm_bindgen_test]
fn waters_to_saturation_are_timed() {
    let solved = || carbonates::waters().values.iter().sum();
    console_log!("waters_s {:.6}", seconds(3, solved));
}
