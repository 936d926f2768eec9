//! The edge in a real browser: `wasm-bindgen-test` in headless Chromium.
#![cfg(target_arch = "wasm32")]
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, clippy::indexing_slicing)]

mod faults;
mod files;
mod journal;
mod marks;
mod page;
mod storage;
mod store;
mod tabs;

wasm_bindgen_test::wasm_bindgen_test_configure!(run_in_browser);

/// A name that no other test uses.
fn fresh(what: &str) -> String {
    format!("{what}-{}", bedwright_edge::random::id().unwrap())
}
