//! A field of plain text. What stands in it is never changed while somebody types.

use std::rc::Rc;

use leptos::prelude::*;
use wasm_bindgen::JsCast;
use web_sys::HtmlInputElement;

use super::live::{El, Shared, el, follow, value_of};
use super::signal::Held;

/// A field: its text set only when `turned` counts up; told at every change, and when it is left.
pub fn typing(
    turned: Held<u32>,
    text: impl Fn() -> String + 'static,
    write: impl Fn(String) + 'static,
    leave: impl Fn() + 'static,
) -> El {
    let field = el("input", "").set("type", "text").set("autocomplete", "off");
    boxed(field, turned, Box::new(text), Box::new(write), Box::new(leave))
}

/// The same for a text of several lines.
pub fn paragraph(
    turned: Held<u32>,
    text: impl Fn() -> String + 'static,
    write: impl Fn(String) + 'static,
    leave: impl Fn() + 'static,
) -> El {
    let field = el("textarea", "").set("rows", "4");
    boxed(field, turned, Box::new(text), Box::new(write), Box::new(leave))
}

fn boxed(
    field: El,
    turned: Held<u32>,
    text: Box<dyn Fn() -> String>,
    write: Box<dyn Fn(String)>,
    leave: Box<dyn Fn()>,
) -> El {
    // A field of several lines has the same value; nothing else of it is asked.
    let input = field.node().clone().unchecked_into::<HtmlInputElement>();
    follow(move || {
        turned.track();
        let text = untrack(&text);
        if input.value() != text {
            input.set_value(&text);
        }
    });
    field.on("input", move |event| write(value_of(&event))).on("blur", move |_| leave())
}

/// A field, and below it what is wrong with what it holds; nothing while it reads.
pub fn judged(field: El, wrong: impl Fn() -> String + 'static) -> [El; 2] {
    let wrong: Shared<String> = Rc::new(wrong);
    let marked = wrong.clone();
    let field = field.tells("aria-invalid", move || (!marked().is_empty()).then(|| "true".to_owned()));
    [field, el("p", "entry-message").set("role", "alert").says(move || wrong())]
}

/// A field of text with its name beside it.
pub fn text_line(label: &str, field: El) -> El {
    el("label", "text-line").kid(el("span", "text-label").text(label)).kid(field)
}
