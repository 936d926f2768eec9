//! A text on the clipboard, or handed to another program.

use wasm_bindgen_futures::JsFuture;
use web_sys::ShareData;

use crate::fault::method;

/// Puts a text on the clipboard; whether the browser did. To be called from a tap.
pub async fn copy_text(text: &str) -> bool {
    let Some(window) = web_sys::window() else { return false };
    let navigator = window.navigator();
    // Not there at all on a page that came without encryption.
    let clipboard = js_sys::Reflect::get(&navigator, &"clipboard".into()).unwrap_or_default();
    if clipboard.is_undefined() {
        return false;
    }
    JsFuture::from(navigator.clipboard().write_text(text)).await.is_ok()
}

/// Whether this browser hands texts to other programs.
#[must_use]
pub fn can_share_text() -> bool {
    web_sys::window().is_some_and(|window| method(&window.navigator(), "share").is_some())
}

/// Opens the share sheet with a text. To be called from a tap; a person who closes it is not told anything.
pub async fn share_text(title: &str, text: &str) {
    let Some(window) = web_sys::window() else { return };
    let navigator = window.navigator();
    if method(&navigator, "share").is_none() {
        return;
    }
    let data = ShareData::new();
    data.set_title(title);
    data.set_text(text);
    // Closed without sharing: nothing to say.
    let _ = JsFuture::from(navigator.share_with_data(&data)).await;
}
