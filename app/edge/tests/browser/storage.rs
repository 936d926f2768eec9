//! Local storage. What is expected: HTML Living Standard, "Web storage" (`setItem` throws `QuotaExceededError` and
//! changes nothing when the value cannot be set); the limit of 5 MiB in UTF-16 is Chromium's, as MDN gives it in
//! "Storage quotas and eviction criteria".

use bedwright_edge::{
    Fault,
    storage::{self, Available},
};
use wasm_bindgen_test::wasm_bindgen_test;

use crate::fresh;

/// What the browser itself holds, asked without the crate.
fn straight(key: &str) -> Option<String> {
    web_sys::window().unwrap().local_storage().unwrap().unwrap().get_item(key).unwrap()
}

#[wasm_bindgen_test]
fn a_text_written_is_what_the_browser_holds() {
    assert_eq!(storage::probe(), Available::Yes);
    let key = fresh("t/storage");
    assert_eq!(storage::read(&key), Ok(None));
    // Beyond the basic plane, a quotation mark, a NUL: raw strings, nothing escaped.
    let text = "{\"a\":\"½ in · 𝛆\0\"}";
    storage::write(&key, text).unwrap();
    assert_eq!(straight(&key).as_deref(), Some(text));
    assert_eq!(storage::read(&key), Ok(Some(text.to_owned())));
    storage::remove(&key).unwrap();
    assert_eq!(straight(&key), None);
}

#[wasm_bindgen_test]
fn keys_are_those_with_the_prefix_in_order() {
    let prefix = fresh("t/keys");
    for name in ["b", "a", "c"] {
        storage::write(&format!("{prefix}/{name}"), "").unwrap();
    }
    storage::write(&format!("other/{prefix}"), "").unwrap();
    let expected: Vec<_> = ["a", "b", "c"].map(|name| format!("{prefix}/{name}")).into();
    assert_eq!(storage::keys(&prefix), Ok(expected.clone()));
    for key in expected {
        storage::remove(&key).unwrap();
    }
    storage::remove(&format!("other/{prefix}")).unwrap();
    assert_eq!(storage::keys(&prefix), Ok(Vec::new()));
}

#[wasm_bindgen_test]
fn bytes_are_two_for_each_utf16_unit() {
    // Unicode 15, chapter 3.9: U+1D6C6 takes two UTF-16 units, U+00BD one.
    assert_eq!(storage::entry_bytes("k", "½𝛆"), 2 * (1 + 1 + 2));
    let before = storage::used_bytes().unwrap();
    let key = fresh("t/bytes");
    storage::write(&key, "½𝛆").unwrap();
    assert_eq!(storage::used_bytes().unwrap() - before, 2 * (key.len() + 3));
    storage::remove(&key).unwrap();
    assert_eq!(storage::used_bytes().unwrap(), before);
}

#[wasm_bindgen_test]
fn a_full_storage_says_so_and_keeps_the_old_text() {
    let (filler, key) = (fresh("t/filler"), fresh("t/full"));
    storage::write(&key, "the old text").unwrap();
    // 5 MiB in all, counted in the browser's own units: fill to within 64 KiB of what it takes.
    let mut units = 0_usize;
    let mut step = 1 << 20;
    while step >= 1 << 15 {
        match storage::write(&filler, &"x".repeat(units + step)) {
            Ok(()) => units += step,
            Err(Fault::Full { .. }) => step /= 2,
            Err(other) => panic!("{other:?}"),
        }
    }
    assert!(units >= 2 << 20, "filled only {units}");
    assert_eq!(straight(&filler).unwrap().len(), units, "a refused write kept the filler as it was");
    let long = "y".repeat(1 << 20);
    assert_eq!(storage::write(&key, &long), Err(Fault::Full { needed_bytes: 2 * (key.len() + long.len()) }));
    assert_eq!(straight(&key).as_deref(), Some("the old text"));
    let new = fresh("t/full-new");
    assert!(matches!(storage::write(&new, &long), Err(Fault::Full { .. })));
    assert_eq!(straight(&new), None);
    storage::remove(&filler).unwrap();
    assert_eq!(storage::write(&key, &long), Ok(()), "there is room again");
    storage::remove(&key).unwrap();
}
