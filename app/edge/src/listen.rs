//! Listening to an event for as long as a guard lives.

use js_sys::Function;
use wasm_bindgen::{JsCast, closure::Closure};
use web_sys::{Event, EventTarget};

/// A listener that is removed when this is dropped.
#[must_use = "dropping this stops the listening at once"]
pub struct Listener {
    target: EventTarget,
    event: &'static str,
    call: Option<Closure<dyn FnMut(Event)>>,
}

impl Listener {
    /// Calls `heard` at each `event` on `target`.
    pub fn on(target: &EventTarget, event: &'static str, heard: impl FnMut(Event) + 'static) -> Self {
        let call = Closure::<dyn FnMut(Event)>::new(heard);
        // Throws only for a callback that is no function.
        let _ = target.add_event_listener_with_callback(event, call.as_ref().unchecked_ref::<Function>());
        Self { target: target.clone(), event, call: Some(call) }
    }

    /// The same on the window; listens to nothing where there is no window.
    pub fn on_window(event: &'static str, heard: impl FnMut(Event) + 'static) -> Option<Self> {
        web_sys::window().map(|window| Self::on(&window, event, heard))
    }

    /// Listens for the life of the page.
    pub fn forget(mut self) {
        if let Some(call) = self.call.take() {
            call.forget();
        }
    }
}

impl Drop for Listener {
    fn drop(&mut self) {
        if let Some(call) = &self.call {
            let _ =
                self.target.remove_event_listener_with_callback(self.event, call.as_ref().unchecked_ref::<Function>());
        }
    }
}
