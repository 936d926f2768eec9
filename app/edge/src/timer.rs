//! Doing something a little later.

use js_sys::{Function, Promise};
use wasm_bindgen::{JsCast, JsValue, closure::Closure};
use wasm_bindgen_futures::JsFuture;

/// Something that will be done once, unless this is dropped first.
#[must_use = "dropping this cancels it"]
pub struct Timer {
    number: i32,
    call: Option<Closure<dyn FnMut()>>,
}

impl Timer {
    /// Calls `then` once, `milliseconds` from now. Nothing happens where there is no window.
    pub fn after(milliseconds: i32, then: impl FnOnce() + 'static) -> Self {
        let call = Closure::once(then);
        let number = web_sys::window()
            .and_then(|window| {
                window
                    .set_timeout_with_callback_and_timeout_and_arguments_0(
                        call.as_ref().unchecked_ref::<Function>(),
                        milliseconds,
                    )
                    .ok()
            })
            .unwrap_or_default();
        Self { number, call: Some(call) }
    }

    /// Lets it happen although nobody holds this.
    pub fn forget(mut self) {
        if let Some(call) = self.call.take() {
            call.forget();
        }
    }
}

impl Drop for Timer {
    fn drop(&mut self) {
        if self.call.is_some()
            && let Some(window) = web_sys::window()
        {
            window.clear_timeout_with_handle(self.number);
        }
    }
}

/// Resolves after so many milliseconds.
pub async fn pause(milliseconds: i32) {
    let promise = Promise::new(&mut |resolve, _| {
        if let Some(window) = web_sys::window() {
            let _ = window.set_timeout_with_callback_and_timeout_and_arguments_0(&resolve, milliseconds);
        } else {
            let _ = resolve.call0(&JsValue::UNDEFINED);
        }
    });
    let _ = JsFuture::from(promise).await;
}
