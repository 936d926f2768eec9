//! Other tabs of the same browser: what they change, and who has a thing open.

use std::{cell::RefCell, rc::Rc};

use js_sys::{Function, Object, Promise, Reflect};
use wasm_bindgen::{JsCast, JsValue, closure::Closure};
use wasm_bindgen_futures::{JsFuture, spawn_local};
use web_sys::StorageEvent;

use crate::{
    Work,
    fault::{method, property},
    listen::Listener,
};

/// What another tab did to local storage.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Change {
    /// The key; none when everything was cleared.
    pub key: Option<String>,
    /// The text there now; none when it was taken away.
    pub text: Option<String>,
}

/// Calls back when another tab changes, adds or takes away a key that starts with `prefix`, or clears everything.
pub fn on_change(prefix: &str, changed: impl Fn(Change) + 'static) -> Option<Listener> {
    let prefix = prefix.to_owned();
    Listener::on_window("storage", move |event| {
        let Ok(event) = event.dyn_into::<StorageEvent>() else {
            return;
        };
        let key = event.key();
        if key.as_ref().is_none_or(|key| key.starts_with(&prefix)) {
            changed(Change { key, text: event.new_value() });
        }
    })
}

/// Whether this page got a name for itself.
#[derive(Debug)]
pub enum Held {
    /// It has it, until the [`Hold`] is dropped or the page goes.
    Yes(Hold),
    /// Another page of this browser has it.
    No,
    /// This browser has no such locks, or not on this page (plain http): another page may have it or not.
    Unsupported,
}

/// A name that no other page gets meanwhile.
#[derive(Debug)]
#[must_use = "dropping this gives the name back"]
pub struct Hold {
    give_back: Option<Function>,
}

impl Hold {
    /// Holds it for the life of the page.
    pub fn forget(mut self) {
        self.give_back = None;
    }
}

impl Drop for Hold {
    fn drop(&mut self) {
        if let Some(give_back) = self.give_back.take() {
            let _ = give_back.call0(&JsValue::UNDEFINED);
        }
    }
}

/// Asks for a name without waiting for it (Web Locks API, W3C, option `ifAvailable`).
pub async fn hold(name: &str) -> Held {
    ask(name, "ifAvailable", Box::new(|| {})).await
}

/// The same; `lost` is called should another page take the name away later.
pub async fn hold_until(name: &str, lost: impl FnOnce() + 'static) -> Held {
    ask(name, "ifAvailable", Box::new(lost)).await
}

/// Takes a name away from whoever has it, who is told (option `steal`); `lost` is called should another page do the same.
pub async fn take(name: &str, lost: impl FnOnce() + 'static) -> Held {
    ask(name, "steal", Box::new(lost)).await
}

fn ask<'a>(name: &'a str, option: &'static str, lost: Box<dyn FnOnce()>) -> Work<'a, Held> {
    Box::pin(ask_now(name, option, lost))
}

async fn ask_now(name: &str, option: &'static str, lost: Box<dyn FnOnce()>) -> Held {
    let Some((locks, request)) = web_sys::window()
        .and_then(|window| property(&window.navigator(), "locks"))
        .and_then(|locks| method(&locks, "request").map(|request| (locks, request)))
    else {
        return Held::Unsupported;
    };
    let options = Object::new();
    if Reflect::set(&options, &JsValue::from_str(option), &JsValue::TRUE).is_err() {
        return Held::Unsupported;
    }
    // The lock is held until the promise that the callback returns is resolved; this keeps its resolver.
    let mut give_back = None;
    let until = Promise::new(&mut |resolve, _| give_back = Some(resolve));
    let answer = Rc::new(RefCell::new(None));
    let told = Rc::clone(&answer);
    let mut tell = None;
    let told_promise = Promise::new(&mut |resolve, _| tell = Some(resolve));
    let granted = Closure::once_into_js(move |lock: JsValue| -> JsValue {
        let got = !lock.is_null() && !lock.is_undefined();
        told.replace(Some(got));
        if let Some(tell) = tell {
            let _ = tell.call0(&JsValue::UNDEFINED);
        }
        if got { until.into() } else { JsValue::UNDEFINED }
    });
    let asked = request.call3(&locks, &JsValue::from_str(name), &options, &granted).map(Promise::from);
    let Ok(asked) = asked else {
        return Held::Unsupported;
    };
    // Refused altogether (a sandboxed frame): the promise is rejected before the callback is ever called. Once the
    // lock is granted this race is already decided.
    let either = Promise::race(&js_sys::Array::of2(&asked, &told_promise));
    let decided = JsFuture::from(either).await;
    let got = *answer.borrow();
    let held = decided.is_ok() && got == Some(true);
    spawn_local(async move {
        // It ends well when the name is given back, and with an `AbortError` when it is taken away.
        if JsFuture::from(asked).await.is_err() && held {
            lost();
        }
    });
    match (decided, got) {
        (Ok(_), Some(true)) => Held::Yes(Hold { give_back }),
        (Ok(_), Some(false)) => Held::No,
        _ => Held::Unsupported,
    }
}
