//! The screen: what came, if anything, and the ways in.

use bedwright_edge::drop::on_drop;
use bedwright_edge::{clipboard, display};
use bedwright_job::saved;
use bedwright_job::words::TravelLabel;

use super::came::came;
use super::codes::codes_part;
use crate::desk::{Desk, Tray};
use crate::parts::live::{El, button, el, value_of};
use crate::parts::signal::Held;

/// Receiving; `code` is that of a link which was followed.
pub fn receive_page(desk: Desk, code: &str) -> El {
    let say = move |label: TravelLabel| desk.label(label);
    // What another program shared is a whole text, a link only its code.
    if code.starts_with('{') || code.contains("#/open/") || code.contains(' ') {
        desk.look_at_text(code);
    } else if !code.is_empty() {
        desk.look_at_text(&["#/open/", code].concat());
    }
    let page = el("main", "page receive")
        .kid(el("h1", "page-title").text(say(TravelLabel::Receive)))
        .kid(el("p", "").text(say(TravelLabel::ReceiveHint)))
        .live(move || desk.tray.with(|tray| tray.as_ref().map(|tray| on_tray(desk, tray)).into_iter().collect()))
        .kids(if code.is_empty() { Vec::new() } else { vec![by_link(desk, code)] })
        .kid(ways_in(desk));
    on_drop(page.node(), saved::LONGEST as u64, move |dropped| desk.look_at_dropped(dropped));
    page
}

fn on_tray(desk: Desk, tray: &Tray) -> El {
    match tray {
        Tray::Came(received) => came(desk, received),
        Tray::Refused(why) => el("section", "came refused")
            .set("role", "alert")
            .kid(el("h2", "came-title").text("▲ ").text(desk.label(TravelLabel::NotTaken)))
            .kid(el("p", "").text(why))
            .kid(button("", desk.label(TravelLabel::PutAway), move || desk.tray.set(None))),
    }
}

/// What a link that opened a browser's page can't do: reach the app that is installed beside it.
fn by_link(desk: Desk, code: &str) -> El {
    let say = move |label: TravelLabel| desk.label(label);
    if display::installed() {
        return el("div", "");
    }
    let copied: Held<Option<bool>> = Held::new(None);
    let whole = code.to_owned();
    let copy = move || {
        let whole = whole.clone();
        wasm_bindgen_futures::spawn_local(async move { copied.set(Some(clipboard::copy_text(&whole).await)) });
    };
    let kept = code.to_owned();
    el("section", "receive-part")
        .set("aria-labelledby", "by-link")
        .kid(el("h2", "rule").set("id", "by-link").text(say(TravelLabel::LinkPage)))
        .kid(el("p", "").text(say(TravelLabel::InBrowser)))
        .kid(button("", say(TravelLabel::CopyCode), copy))
        .kid(el("p", "travel-said").set("role", "status").says(move || match copied.get() {
            None => String::new(),
            Some(true) => say(TravelLabel::Copied).to_owned(),
            Some(false) => say(TravelLabel::NotCopied).to_owned(),
        }))
        .when(
            move || copied.get() == Some(false),
            move || {
                let field = el("textarea", "travel-text").set("rows", "4").set("readonly", "");
                vec![field.set("aria-label", say(TravelLabel::CopyCode)).text(&kept)]
            },
        )
}

fn ways_in(desk: Desk) -> El {
    let say = move |label: TravelLabel| desk.label(label);
    let pasted = desk.draft_text("pasted");
    let field = el("textarea", "travel-text")
        .set("rows", "4")
        .set("id", "pasted")
        .set("autocomplete", "off")
        .set("spellcheck", "false")
        .text(&pasted.get_untracked())
        .on("input", move |event| pasted.set(value_of(&event)));
    el("section", "receive-part")
        .kid(
            el("div", "receive-way")
                .kid(button("primary", say(TravelLabel::ChooseFile), move || desk.choose_file()))
                .kid(el("p", "quietly").text(say(TravelLabel::DropHint))),
        )
        .kid(codes_part(desk))
        .kid(
            el("div", "receive-way")
                .kid(el("label", "travel-label").set("for", "pasted").text(say(TravelLabel::PasteTitle)))
                .kid(el("p", "quietly").text(say(TravelLabel::PasteHint)))
                .kid(field)
                .kid(
                    button("", say(TravelLabel::LookAtIt), move || {
                        pasted.with_untracked(|text| desk.look_at_text(text))
                    })
                    .holds("disabled", move || pasted.with(|text| text.trim().is_empty())),
                ),
        )
}
