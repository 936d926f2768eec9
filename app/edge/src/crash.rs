//! A bug in the page: the crash screen, plain JavaScript, takes over.

use wasm_bindgen::JsValue;

use crate::fault::method;

/// From now on a panic calls `window.bedwrightCrash(message)`, where the page has it, and is written to the console.
pub fn install() {
    std::panic::set_hook(Box::new(|panic| {
        let message = JsValue::from_str(&panic.to_string());
        web_sys::console::error_1(&message);
        if let Some(window) = web_sys::window()
            && let Some(crash) = method(&window, "bedwrightCrash")
        {
            let _ = crash.call1(&window, &message);
        }
    }));
}
