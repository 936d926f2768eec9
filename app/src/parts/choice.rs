//! One of several, by a native control.

use std::rc::Rc;

use wasm_bindgen::JsCast;
use web_sys::HtmlSelectElement;

use super::live::{El, Shared, chosen, el, follow};

/// One of several, as a list that drops down: its name, what there is, which is chosen; told when another is.
pub fn choice(
    label: &str,
    options: impl Fn() -> Vec<String> + 'static,
    value: impl Fn() -> Option<usize> + 'static,
    on_choose: impl Fn(usize) + 'static,
) -> El {
    el("label", "choice").kid(el("span", "choice-label").text(label)).kid(select(
        "",
        Box::new(options),
        Box::new(value),
        Box::new(on_choose),
    ))
}

/// The list alone. The first of all where nothing is chosen.
pub fn select(
    class: &str,
    options: Box<dyn Fn() -> Vec<String>>,
    value: Box<dyn Fn() -> Option<usize>>,
    on_choose: Box<dyn Fn(usize)>,
) -> El {
    let list = el("select", class);
    let node = list.node().clone().unchecked_into::<HtmlSelectElement>();
    let mut there = Vec::new();
    follow(move || {
        let now = options();
        if now != there {
            node.set_inner_html("");
            for name in &now {
                // None of these can fail: an option inside a list.
                let _ = node.append_child(el("option", "").text(name).node());
            }
            there = now;
        }
        let at = value().and_then(|at| i32::try_from(at).ok()).unwrap_or(0);
        if node.selected_index() != at {
            node.set_selected_index(at);
        }
    });
    list.on("change", move |event| {
        if let Some(at) = chosen(&event) {
            on_choose(at);
        }
    })
}

/// One of a few, side by side. `group` is a name no other group on the screen has.
pub fn pick(
    label: &str,
    group: &str,
    options: &[&str],
    value: impl Fn() -> Option<usize> + 'static,
    on_choose: impl Fn(usize) + 'static,
) -> El {
    let value: Shared<Option<usize>> = Rc::new(value);
    let on_choose: Rc<dyn Fn(usize)> = Rc::new(on_choose);
    let option = |(at, name): (usize, &&str)| {
        let (value, on_choose) = (value.clone(), on_choose.clone());
        let radio = el("input", "")
            .set("type", "radio")
            .set("name", group)
            .holds("checked", move || value() == Some(at))
            .on("change", move |_| on_choose(at));
        el("label", "pick-option").kid(radio).kid(el("span", "").text(name))
    };
    el("fieldset", "pick")
        .kid(el("legend", "pick-legend").text(label))
        .kids(options.iter().enumerate().map(option).collect())
}
