//! Asking the browser not to erase this page's data by itself, and how much room there is (Storage Standard, WHATWG).
//!
//! It is no backup: the person can still erase it, and a phone can be lost.

use js_sys::Promise;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::StorageEstimate;

use crate::fault::{method, property};

/// Whether the browser may erase this page's data by itself.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Protection {
    /// It will not without asking.
    Protected,
    /// It may, when room is short or after a while.
    NotProtected,
    /// It does not say.
    Unsupported,
}

/// Room for all of this origin's data, roughly, as the browser estimates it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Estimate {
    /// Bytes in use.
    pub used_bytes: u64,
    /// Bytes allowed, those in use included. Local storage has a much lower limit of its own.
    pub quota_bytes: u64,
}

/// Asks for protection. Some browsers ask the person; most decide by themselves, by how much the page is used.
pub async fn persist() -> Protection {
    protection("persist").await
}

/// Whether this page's data is protected already.
pub async fn persisted() -> Protection {
    protection("persisted").await
}

/// How much room there is; none where the browser does not say.
pub async fn estimate() -> Option<Estimate> {
    let estimate = asked("estimate").await?.unchecked_into::<StorageEstimate>();
    let bytes =
        |figure: Option<f64>| figure.filter(|bytes| bytes.is_finite() && *bytes >= 0.0).map(|bytes| bytes as u64);
    Some(Estimate { used_bytes: bytes(estimate.get_usage())?, quota_bytes: bytes(estimate.get_quota())? })
}

async fn protection(question: &str) -> Protection {
    match asked(question).await.and_then(|answer| answer.as_bool()) {
        Some(true) => Protection::Protected,
        Some(false) => Protection::NotProtected,
        None => Protection::Unsupported,
    }
}

/// `navigator.storage` is missing on plain http and in older browsers, and each of its methods in some.
async fn asked(question: &str) -> Option<JsValue> {
    let storage = property(&web_sys::window()?.navigator(), "storage")?;
    let answer = method(&storage, question)?.call0(&storage).ok()?;
    JsFuture::from(answer.dyn_into::<Promise>().ok()?).await.ok()
}
