//! The focus: what is typed into, and what a screen reader is at.

use wasm_bindgen::JsCast;
use web_sys::HtmlElement;

/// Puts it on the element of this id, in sight; whether there is one that takes it.
pub fn focus(id: &str) -> bool {
    let document = web_sys::window().and_then(|window| window.document());
    let found = document.and_then(|document| document.get_element_by_id(id));
    let Some(element) = found.and_then(|element| element.dyn_into::<HtmlElement>().ok()) else { return false };
    // The browser scrolls it into sight.
    element.focus().is_ok()
}
