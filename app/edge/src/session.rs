//! A text that waits for the page that comes next in the same tab (`sessionStorage`, HTML Living Standard, "Web storage").
//!
//! For what is only nice to have: where it can't be left, nothing is lost but that.

/// Leaves a text under a key; whether it was left.
pub fn leave(key: &str, text: &str) -> bool {
    place().is_some_and(|place| place.set_item(key, text).is_ok())
}

/// Takes the text under a key away and gives it.
pub fn take(key: &str) -> Option<String> {
    let place = place()?;
    let text = place.get_item(key).ok().flatten()?;
    place.remove_item(key).ok()?;
    Some(text)
}

fn place() -> Option<web_sys::Storage> {
    web_sys::window()?.session_storage().ok().flatten()
}
