//! A mark that outlives local storage and the journal: an empty cache of a certain name (Service Workers, W3C, `CacheStorage`).
//!
//! It tells a page that starts empty whether there was something once. A browser that erases everything erases it as well.

use js_sys::Promise;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;

use crate::fault::{method, property};

/// Not like the caches of builds, which a new build drops.
const NAME: &str = "kept-by-bedwright";

/// Leaves the mark. Nothing where there are no caches: on plain http, and where they are blocked.
pub async fn leave() {
    asked("open").await;
}

/// Takes the mark away.
pub async fn forget() {
    asked("delete").await;
}

/// Whether there is one.
pub async fn there() -> bool {
    asked("has").await.is_some_and(|answer| answer.is_truthy())
}

async fn asked(question: &str) -> Option<JsValue> {
    let caches = property(&web_sys::window()?.into(), "caches")?;
    let answer = method(&caches, question)?.call1(&caches, &JsValue::from_str(NAME)).ok()?;
    JsFuture::from(answer.dyn_into::<Promise>().ok()?).await.ok()
}
