//! A field a number is typed into: text as typed, unit beside it, what was understood, what is wrong.

use std::cell::Cell;
use std::rc::Rc;

use leptos::prelude::*;
use wasm_bindgen::JsCast;
use web_sys::{HtmlElement, HtmlInputElement};

use bedwright_job::entry::with_part;

use super::choice::select;
use super::live::{El, Shared, button, el};
use super::signal::Held;
use super::typing::typing;

/// What stands in a field: the text and its unit's place in the list.
#[derive(Clone, PartialEq, Eq, Default)]
pub struct Written {
    /// As typed.
    pub text: String,
    /// Which of the units.
    pub unit: usize,
}

thread_local! {
    /// The field that had the focus last: its parts of an inch stay until another has it.
    static LAST_AT: Cell<Option<Held<bool>>> = const { Cell::new(None) };
}

/// Two ways a text can be meant, offered as buttons.
#[derive(Clone, PartialEq, Eq)]
pub struct Doubt {
    /// The first way.
    pub first: String,
    /// The second way.
    pub second: String,
}

/// A field. The text is never changed while somebody types; it is set only when `turned` counts up.
pub struct EntryField {
    /// What is asked for.
    pub label: String,
    /// How to take it, in a few words.
    pub hint: String,
    /// An id no other field on the screen has.
    pub id: String,
    /// The units it may be typed in, by symbol; one of none for a bare number.
    pub units: Vec<&'static str>,
    /// What stands in it.
    pub written: Shared<Written>,
    /// Told at every change of text or unit.
    pub on_write: Rc<dyn Fn(Written)>,
    /// Told when the field is left.
    pub on_leave: Box<dyn Fn()>,
    /// What was understood, beside the field.
    pub echo: Shared<Option<String>>,
    /// What is wrong, under the field, once it was left.
    pub wrong: Shared<Option<String>>,
    /// Two ways the text can be meant.
    pub doubt: Shared<Option<Doubt>>,
    /// Told which of the two: `false` the first, `true` the second.
    pub on_settle: Rc<dyn Fn(bool)>,
    /// What stands in the empty field: what is assumed.
    pub assumed: Shared<Option<String>>,
    /// Counted up when the text was changed by something else than typing.
    pub turned: Held<u32>,
    /// Whether parts of an inch may be tapped behind the whole ones.
    pub in_parts: Shared<bool>,
    /// Names of the two keypads, digits and letters.
    pub keypads: (&'static str, &'static str),
}

impl EntryField {
    /// The field on the page; `standing` adds what stands before what was understood.
    pub fn show(self, standing: impl FnOnce(El) -> El) -> El {
        let after = standing(el("div", "entry-after"));
        self.around(after)
    }

    fn around(self, after: El) -> El {
        let EntryField { label, hint, id, units, written, on_write, on_leave, echo, wrong, doubt, on_settle, .. } =
            self;
        let (assumed, turned, (digits, abc), in_parts) = (self.assumed, self.turned, self.keypads, self.in_parts);
        let left = Held::new(!untrack(|| written().text.is_empty()));
        let by_letters = Held::new(false);
        let at = Held::new(false);
        let shows: Shared<Option<String>> = Rc::new(move || if left.get() { wrong() } else { None });
        let (now, write) = (written.clone(), on_write.clone());
        let input = typing(
            turned,
            move || now().text,
            {
                let written = written.clone();
                move |text| write(Written { text, unit: untrack(|| written().unit) })
            },
            move || {
                // A field taken away while it has the focus is left after its signals are gone.
                if left.is_gone() {
                    return;
                }
                left.set(true);
                on_leave();
            },
        );
        let field = input.node().clone().unchecked_into::<HtmlElement>();
        let (wrong_id, hint_id) = (format!("{id}-wrong"), format!("{id}-hint"));
        let described = {
            let (wrong_id, hint_id, shows) = (wrong_id.clone(), hint_id.clone(), shows.clone());
            move || Some(if shows().is_some() { format!("{wrong_id} {hint_id}") } else { hint_id.clone() })
        };
        let (is_wrong, invalid, message) = (shows.clone(), shows.clone(), shows);
        let input = input
            .set("id", &id)
            .on("focus", move |_| {
                let before = LAST_AT.replace(Some(at));
                if let Some(before) = before.filter(|before| !before.is_gone()) {
                    before.set(false);
                }
                at.set(true);
            })
            .set("autocapitalize", "off")
            .set("spellcheck", "false")
            .set("enterkeyhint", "next")
            .tells("inputmode", move || Some(if by_letters.get() { "text" } else { "decimal" }.to_owned()))
            .tells("placeholder", move || Some(assumed().unwrap_or_default()))
            .tells("aria-invalid", move || invalid().map(|_| "true".to_owned()))
            .tells("aria-describedby", described);
        let parts = parts_of_an_inch(&field, &written, &on_write);
        let keys = el("button", "entry-keys")
            .set("type", "button")
            .set("tabindex", "-1")
            .set("aria-hidden", "true")
            .says(move || if by_letters.get() { digits } else { abc }.to_owned())
            .on("click", move |_| {
                by_letters.update(|letters| *letters = !*letters);
                // A field that can't be focused can still be tapped.
                let _ = field.focus();
            });
        let unit = if units.len() < 2 {
            el("span", "entry-unit").text(units.first().copied().unwrap_or_default())
        } else {
            let names: Vec<String> = units.iter().map(|&unit| unit.to_owned()).collect();
            let now = written.clone();
            select(
                "entry-unit",
                Box::new(move || names.clone()),
                Box::new(move || Some(now().unit)),
                Box::new(move |unit| on_write(Written { text: untrack(|| written().text), unit })),
            )
            .set("aria-label", &label)
        };
        el("div", "entry")
            .marks("entry-wrong", move || is_wrong().is_some())
            .marks("entry-at", move || at.get())
            .kid(el("label", "entry-label").set("for", &id).text(&label))
            .kid(el("div", "entry-frame").kid(input).kid(keys).kid(unit))
            .when(move || in_parts(), parts)
            .kid(after.kid(el("span", "entry-echo").says(move || echo().unwrap_or_default())))
            .kid(el("p", "entry-hint").set("id", &hint_id).text(&hint))
            .kid(el("p", "entry-message").set("id", &wrong_id).says(move || message().unwrap_or_default()))
            .live(move || {
                let Some(two) = doubt() else { return Vec::new() };
                let (first, second) = (on_settle.clone(), on_settle.clone());
                vec![el("p", "entry-doubt").kid(button("", &two.first, move || first(false))).kid(button(
                    "",
                    &two.second,
                    move || second(true),
                ))]
            })
    }
}

/// Eighths of an inch to tap, for a keypad that has no slash. They come with the focus and stay until another field has it:
/// would they go when something else is tapped, it would move away under the finger. A screen reader and a keyboard type them.
fn parts_of_an_inch(
    field: &HtmlElement,
    written: &Shared<Written>,
    on_write: &Rc<dyn Fn(Written)>,
) -> impl Fn() -> Vec<El> + 'static {
    let (field, written, on_write) = (field.clone(), written.clone(), on_write.clone());
    move || {
        let row = ["1/8", "1/4", "3/8", "1/2", "5/8", "3/4", "7/8"].into_iter().fold(
            el("div", "entry-parts").set("aria-hidden", "true"),
            |row, part| {
                let (field, written, on_write) = (field.clone(), written.clone(), on_write.clone());
                let tapped = move || {
                    let now = untrack(|| written());
                    if let Some(text) = with_part(&now.text, part) {
                        field.unchecked_ref::<HtmlInputElement>().set_value(&text);
                        on_write(Written { text, unit: now.unit });
                    }
                };
                // The field keeps the focus, and with it these stay.
                row.kid(
                    button("", part, tapped)
                        .set("tabindex", "-1")
                        .on("pointerdown", |event| event.prevent_default())
                        .on("mousedown", |event| event.prevent_default()),
                )
            },
        );
        vec![row]
    }
}
