//! Putting the page on the device as an app, where the browser offers it: told by the boot script, which hears of it first.

use crate::listen::Listener;
use crate::update::{mark, send};

/// Whether the browser offers it now.
#[must_use]
pub fn offered() -> bool {
    mark("install").as_deref() == Some("offered")
}

/// Calls back when it is offered, and when it no longer is.
pub fn on_change(call: impl Fn() + 'static) -> Option<Listener> {
    Listener::on_window("bedwright-install-changed", move |_| call())
}

/// Lets the browser ask the person. To be called from a tap.
pub fn ask() {
    send("bedwright-install");
}
