//! Printing the page, and noticing where the browser does nothing.

use std::{cell::Cell, rc::Rc};

use crate::{listen::Listener, timer::Timer};

const PATIENCE_MS: i32 = 1_000;

/// Opens the browser's print dialog.
///
/// `begun` is called once: with `true` when the browser began to print, with `false` when it had not a second later.
/// Some do nothing at all, inside other apps above all: then say where the browser's own menu has it.
pub fn print(begun: impl FnOnce(bool) + 'static) {
    let heard = Rc::new(Cell::new(false));
    let hears = Rc::clone(&heard);
    let listener = Listener::on_window("beforeprint", move |_| hears.set(true));
    let called = web_sys::window().is_some_and(|window| window.print().is_ok());
    // Where the call waits for the dialog, the event has come before it returns.
    if heard.get() || !called {
        begun(heard.get());
        return;
    }
    Timer::after(PATIENCE_MS, move || {
        drop(listener);
        begun(heard.get());
    })
    .forget();
}
