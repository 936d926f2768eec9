//! Why the browser did not do what was asked: codes with figures; sentences are made elsewhere.

use wasm_bindgen::{JsCast, JsValue};

/// Why something could not be kept, read, sent or fetched.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Fault {
    /// The browser does not let this page use the thing at all: private window, site data blocked, or too old.
    Blocked,
    /// There is no room. What was there before is still there.
    Full {
        /// Bytes the refused entry takes, key and text together, as the browser counts them (two per UTF-16 unit).
        needed_bytes: usize,
    },
    /// The browser said yes, but reading back gave something else. What was there before was put back.
    NotKept,
    /// Somebody else changed this entry since it was last read here; it was not overwritten.
    Changed,
    /// A chosen file is larger than the caller takes.
    TooLarge {
        /// Size of the file.
        bytes: u64,
    },
    /// Anything else: the name and message that the browser gave, to be shown as they are.
    Other(String),
}

impl Fault {
    /// What a thrown or rejected value means; `needed_bytes` is told where room was the matter.
    pub(crate) fn of(thrown: &JsValue, needed_bytes: usize) -> Self {
        let name = name_of(thrown);
        match name.as_deref() {
            Some(name) if is_quota(name) => Self::Full { needed_bytes },
            Some("SecurityError") => Self::Blocked,
            _ => Self::Other(described(thrown)),
        }
    }

    /// The same where room cannot be the matter.
    pub(crate) fn other(thrown: &JsValue) -> Self {
        Self::of(thrown, 0)
    }
}

/// The `name` of a thrown exception: an own class in newer browsers, a `DOMException` in older ones.
pub(crate) fn name_of(thrown: &JsValue) -> Option<String> {
    property(thrown, "name").and_then(|name| name.as_string())
}

/// Whether an exception of this name says "no room"; the second is what older Firefox calls it.
pub(crate) fn is_quota(name: &str) -> bool {
    matches!(name, "QuotaExceededError" | "NS_ERROR_DOM_QUOTA_REACHED")
}

/// A property, or nothing where the value has none (reading one of `undefined` throws).
pub(crate) fn property(of: &JsValue, name: &str) -> Option<JsValue> {
    let value = js_sys::Reflect::get(of, &JsValue::from_str(name)).ok()?;
    (!value.is_undefined() && !value.is_null()).then_some(value)
}

/// A method, where there is one.
pub(crate) fn method(of: &JsValue, name: &str) -> Option<js_sys::Function> {
    property(of, name)?.dyn_into().ok()
}

fn described(thrown: &JsValue) -> String {
    let name = name_of(thrown).unwrap_or_default();
    let message = property(thrown, "message")
        .and_then(|message| message.as_string())
        .or_else(|| thrown.as_string())
        .unwrap_or_default();
    match (name.is_empty(), message.is_empty()) {
        (true, _) => message,
        (false, true) => name,
        (false, false) => format!("{name}: {message}"),
    }
}
