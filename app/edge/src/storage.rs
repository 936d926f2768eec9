//! Local storage: texts under keys, kept by the browser without waiting.
//!
//! It holds about 5 MiB per origin, counted in UTF-16 (HTML Living Standard, "Web storage"; the limit itself is each
//! browser's). A write that reads back well is in the page's copy, not yet on the disk: a killed browser loses the last
//! seconds of it, hence the [`journal`](crate::journal).

use std::cell::OnceCell;

use gloo_storage::{LocalStorage, Storage as _};
use wasm_bindgen::JsValue;

use crate::fault::{Fault, is_quota, name_of};

/// Whether local storage can be used at all.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Available {
    /// It can be read, and written while there is room.
    Yes,
    /// Not at all: private window, site data blocked, or none in this browser.
    Blocked,
}

thread_local! {
    static FOUND: OnceCell<Option<web_sys::Storage>> = const { OnceCell::new() };
}

const PROBE: &str = "bedwright/probe";

/// Tries local storage once, the first time it is asked; the same answer ever after.
pub fn probe() -> Available {
    if found().is_some() { Available::Yes } else { Available::Blocked }
}

/// The text under a key, or that there is none.
///
/// # Errors
/// [`Fault::Blocked`] where there is no local storage; what the browser said otherwise.
pub fn read(key: &str) -> Result<Option<String>, Fault> {
    place()?.get_item(key).map_err(|thrown| Fault::other(&thrown))
}

/// Puts a text under a key and reads it back.
///
/// # Errors
/// [`Fault::Blocked`], [`Fault::Full`] or [`Fault::NotKept`]; in each case the text that was there before stays.
pub fn write(key: &str, text: &str) -> Result<(), Fault> {
    let place = place()?;
    let before = place.get_item(key).map_err(|thrown| Fault::other(&thrown))?;
    let fault = match place.set_item(key, text) {
        Err(thrown) => Fault::of(&thrown, entry_bytes(key, text)),
        Ok(()) => match place.get_item(key) {
            Ok(Some(kept)) if kept == text => return Ok(()),
            _ => Fault::NotKept,
        },
    };
    // The standard keeps the old text when it refuses a new one; make sure of it.
    if place.get_item(key).ok().flatten() != before {
        let _ = match &before {
            Some(before) => place.set_item(key, before),
            None => place.remove_item(key),
        };
    }
    Err(fault)
}

/// Takes a key and its text away; nothing happens where there is none.
///
/// # Errors
/// [`Fault::Blocked`] where there is no local storage.
pub fn remove(key: &str) -> Result<(), Fault> {
    place()?.remove_item(key).map_err(|thrown| Fault::other(&thrown))
}

/// Every key that starts with `prefix`, in order.
///
/// # Errors
/// [`Fault::Blocked`] where there is no local storage.
pub fn keys(prefix: &str) -> Result<Vec<String>, Fault> {
    let place = place()?;
    let mut keys: Vec<String> = Vec::new();
    for index in 0..place.length().map_err(|thrown| Fault::other(&thrown))? {
        if let Some(key) = place.key(index).map_err(|thrown| Fault::other(&thrown))?
            && key.starts_with(prefix)
        {
            let at = keys.partition_point(|there| *there < key);
            keys.insert(at, key);
        }
    }
    Ok(keys)
}

/// Bytes in use by the whole origin, other pages of it included: two for each UTF-16 unit of every key and text.
///
/// # Errors
/// [`Fault::Blocked`] where there is no local storage.
pub fn used_bytes() -> Result<usize, Fault> {
    let place = place()?;
    let mut bytes = 0_usize;
    for key in keys("")? {
        let text = place.get_item(&key).map_err(|thrown| Fault::other(&thrown))?.unwrap_or_default();
        bytes = bytes.saturating_add(entry_bytes(&key, &text));
    }
    Ok(bytes)
}

/// What one entry takes.
#[must_use]
pub fn entry_bytes(key: &str, text: &str) -> usize {
    key.encode_utf16().count().saturating_add(text.encode_utf16().count()).saturating_mul(2)
}

fn place() -> Result<web_sys::Storage, Fault> {
    found().ok_or(Fault::Blocked)
}

fn found() -> Option<web_sys::Storage> {
    FOUND.with(|found| found.get_or_init(|| usable().then(LocalStorage::raw)).clone())
}

/// Whether [`LocalStorage::raw`] can be called without a panic, and then whether a key can be written.
///
/// A full storage can still be read: it is told from one that never holds anything by whether it holds something.
fn usable() -> bool {
    let Some(place) = web_sys::window().and_then(|window| window.local_storage().ok().flatten()) else {
        return false;
    };
    match place.set_item(PROBE, "?") {
        Ok(()) => {
            let kept = place.get_item(PROBE).ok().flatten().as_deref() == Some("?");
            let _ = place.remove_item(PROBE);
            kept
        }
        Err(thrown) => is_full(&thrown) && place.length().is_ok_and(|length| length > 0),
    }
}

fn is_full(thrown: &JsValue) -> bool {
    name_of(thrown).is_some_and(|name| is_quota(&name))
}
