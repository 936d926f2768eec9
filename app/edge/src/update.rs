//! A newer page that waits, and whether this one works without a connection: told by the boot script, which looks after
//! the service worker. It sets marks on the root element (for whoever asks late) and sends events (for whoever waits).

use wasm_bindgen::JsCast;
use web_sys::{CustomEvent, HtmlElement};

use crate::listen::Listener;

/// Whether the page works without a connection.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Offline {
    /// Every file of it is kept.
    Ready,
    /// There is one file, and it is open.
    Inside,
    /// Some are missing: stay connected.
    NotReady,
    /// Not told yet, or no service worker here.
    Unknown,
}

/// Whether a newer page is ready to take over.
#[must_use]
pub fn waiting() -> bool {
    mark("update").as_deref() == Some("waiting")
}

/// Whether this page works without a connection.
#[must_use]
pub fn offline() -> Offline {
    match mark("offline").as_deref() {
        Some("ready") => Offline::Ready,
        Some("inside") => Offline::Inside,
        Some("not-ready") => Offline::NotReady,
        _ => Offline::Unknown,
    }
}

/// Calls back when a newer page is ready to take over.
pub fn on_waiting(call: impl Fn() + 'static) -> Option<Listener> {
    Listener::on_window("bedwright-update-waiting", move |_| call())
}

/// Calls back when every file of the page is kept.
pub fn on_offline_ready(call: impl Fn() + 'static) -> Option<Listener> {
    Listener::on_window("bedwright-offline-ready", move |_| call())
}

/// Lets the newer page take over: the page is loaded anew. Flush the keeper first.
pub fn accept() {
    send("bedwright-update-accept");
}

/// Fetches the page's files again for use without a connection.
pub fn repair() {
    send("bedwright-offline-repair");
}

pub(crate) fn mark(name: &str) -> Option<String> {
    let root = web_sys::window()?.document()?.document_element()?;
    root.dyn_into::<HtmlElement>().ok()?.dataset().get(name)
}

pub(crate) fn send(event: &str) {
    if let (Some(window), Ok(event)) = (web_sys::window(), CustomEvent::new(event)) {
        let _ = window.dispatch_event(&event);
    }
}
