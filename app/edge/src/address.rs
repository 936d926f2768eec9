//! The part of the address after `#`, which names the screen. All else of it is the host's.

use web_sys::{History, Location};

use crate::listen::Listener;

/// What stands after `#`, as it stands there; nothing where there is no `#`.
#[must_use]
pub fn hash() -> String {
    let hash = location().and_then(|location| location.hash().ok()).unwrap_or_default();
    hash.strip_prefix('#').map(str::to_owned).unwrap_or(hash)
}

/// Goes to another screen: Back returns from it. `hash` is without `#`: `/jobs/…`.
pub fn go(hash: &str) {
    if let Some(location) = location() {
        let _ = location.set_hash(hash);
    }
}

/// Goes to another screen in place of this one: Back does not return here, and [`on_change`] is not called.
pub fn replace(hash: &str) {
    if let Some(history) = history() {
        let _ = history.replace_state_with_url(&wasm_bindgen::JsValue::NULL, "", Some(&format!("#{hash}")));
    }
}

/// One step back.
pub fn back() {
    if let Some(history) = history() {
        let _ = history.back();
    }
}

/// Calls back with the new hash whenever another screen is named: by [`go`], Back, Forward, a link or by typing.
pub fn on_change(call: impl Fn(String) + 'static) -> Option<Listener> {
    Listener::on_window("hashchange", move |_| call(hash()))
}

/// Whether the page came from this device's own disk and not from a host: where it is then is nobody else's business.
#[must_use]
pub fn from_disk() -> bool {
    !location().and_then(|location| location.protocol().ok()).unwrap_or_default().starts_with("http")
}

/// The address up to `#`, for links that are sent to somebody; nothing where no link leads here.
#[must_use]
pub fn page() -> String {
    if from_disk() {
        return String::new();
    }
    let whole = location().and_then(|location| location.href().ok()).unwrap_or_default();
    whole.split_once('#').map(|(page, _)| page.to_owned()).unwrap_or(whole)
}

fn location() -> Option<Location> {
    web_sys::window().map(|window| window.location())
}

fn history() -> Option<History> {
    web_sys::window()?.history().ok()
}
