//! What the page is shown on: width, light or dark, in a tab or as an installed app.

use wasm_bindgen::JsCast;
use web_sys::MediaQueryList;

use crate::{fault::property, listen::Listener};

/// Whether a media query holds now: `(min-width: 40rem)`.
#[must_use]
pub fn matches(query: &str) -> bool {
    list(query).is_some_and(|list| list.matches())
}

/// Calls back whenever a media query begins or ceases to hold; not at once.
pub fn on_match(query: &str, call: impl Fn(bool) + 'static) -> Option<Listener> {
    let list = list(query)?;
    let now = list.clone();
    Some(Listener::on(&list, "change", move |_| call(now.matches())))
}

/// Whether the person prefers a dark page.
#[must_use]
pub fn dark() -> bool {
    matches(DARK)
}

/// Calls back whenever that preference changes.
pub fn on_dark(call: impl Fn(bool) + 'static) -> Option<Listener> {
    on_match(DARK, call)
}

/// Whether the page runs as an installed app, without the browser's own bars.
#[must_use]
pub fn installed() -> bool {
    matches("(display-mode: standalone)") || installed_on_ios()
}

/// Whether it does so on an iPhone or iPad: only there has the navigator this property.
#[must_use]
pub fn installed_on_ios() -> bool {
    web_sys::window()
        .and_then(|window| property(&window.navigator(), "standalone"))
        .is_some_and(|standalone| standalone.is_truthy())
}

/// Whether it runs in a tab of an iPhone's or iPad's browser, which could be put on the Home Screen.
#[must_use]
pub fn in_a_tab_on_ios() -> bool {
    let navigator = web_sys::window().map(|window| window.navigator());
    navigator.and_then(|navigator| property(&navigator, "standalone")).is_some_and(|standalone| standalone.is_falsy())
}

const DARK: &str = "(prefers-color-scheme: dark)";

fn list(query: &str) -> Option<MediaQueryList> {
    web_sys::window()?.match_media(query).ok().flatten().map(|list| list.unchecked_into())
}

/// Scrolls until an element stands in the middle of the screen.
pub fn bring_to_middle(element: &web_sys::Element) {
    let options = web_sys::ScrollIntoViewOptions::new();
    options.set_block(web_sys::ScrollLogicalPosition::Center);
    element.scroll_into_view_with_scroll_into_view_options(&options);
}
