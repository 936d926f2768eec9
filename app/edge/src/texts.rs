//! A text file that came with the page.

use wasm_bindgen::JsCast;
use wasm_bindgen_futures::JsFuture;
use web_sys::{Document, Response};

use crate::Fault;

/// The address that the page names in a `meta` element; none where it names none.
#[must_use]
pub fn address_of(name: &str) -> Option<String> {
    let document: Document = web_sys::window()?.document()?;
    let meta = document.query_selector(&["meta[name=", name, "]"].concat()).ok()??;
    meta.get_attribute("content")
}

/// A text file of the page's own, from the host or from what is kept for offline use.
///
/// # Errors
///
/// Where it can't be had: no connection and not kept, or the host has it no more.
pub async fn text(address: &str) -> Result<String, Fault> {
    let window = web_sys::window().ok_or(Fault::Blocked)?;
    let answer = JsFuture::from(window.fetch_with_str(address)).await.map_err(|thrown| Fault::other(&thrown))?;
    let answer: Response = answer.unchecked_into();
    if !answer.ok() {
        return Err(Fault::Other(answer.status().to_string()));
    }
    let text = answer.text().map_err(|thrown| Fault::other(&thrown))?;
    let text = JsFuture::from(text).await.map_err(|thrown| Fault::other(&thrown))?;
    text.as_string().ok_or(Fault::NotKept)
}
