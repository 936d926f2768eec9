//! The ways a job can go: a file, a link, codes.

use bedwright_edge::files::Shared;
use bedwright_edge::{address, clipboard, files};
use bedwright_job::envelope::link;
use bedwright_job::words::{DeviceLabel, Label, TravelLabel};

use super::codes::shown_codes;
use super::page::Packed;
use crate::desk::Desk;
use crate::parts::live::{El, button, el};
use crate::parts::signal::{Held, Worked};

/// The longest link that messengers leave whole.
const LONGEST_LINK: usize = 4000;
/// What the file is: text, so that any program hands it on and anybody can look into it.
const MIME: &str = "text/plain";

/// All that is needed to hand it over, made before a tap.
#[derive(Clone, PartialEq)]
struct Ready {
    name: String,
    text: String,
    link: String,
    title: String,
}

fn ready(desk: Desk, packed: &Packed) -> Ready {
    let title = if packed.title.trim().is_empty() { desk.label(Label::Untitled) } else { packed.title.trim() };
    let link = [&address::page(), "#/open/", &link(&packed.sealed)].concat();
    let plain: String = title.chars().map(|c| if c.is_alphanumeric() { c } else { '-' }).take(40).collect();
    Ready {
        name: [&plain, ".bedwright.txt"].concat(),
        text: [&desk.manner().covering_text(title, &packed.parts, &packed.from), "\n", &link, "\n"].concat(),
        link,
        title: title.to_owned(),
    }
}

/// The ways.
pub fn ways(desk: Desk, packed: Worked<Option<Packed>>) -> El {
    let say = move |label: TravelLabel| desk.label(label);
    // Opened from disk it has no address, and what would be a link is a text to paste.
    let from_disk = address::from_disk();
    let say_link = move |link: TravelLabel, text: DeviceLabel| if from_disk { desk.label(text) } else { say(link) };
    let made = Worked::new(move || packed.with(|packed| packed.as_ref().map(|packed| ready(desk, packed))));
    let said: Held<Option<TravelLabel>> = Held::new(None);
    // What is handed over is noted, so that what comes back can be compared with it.
    let note = move || {
        if let Some(packed) = packed.with_untracked(Clone::clone) {
            desk.note_handed_over(&packed.contents);
        }
    };
    let now = move || made.with_untracked(Clone::clone);
    let share = move || {
        let Some(ready) = now() else { return };
        wasm_bindgen_futures::spawn_local(async move {
            match files::share_file(&ready.name, MIME, ready.text.as_bytes()).await {
                Shared::Done => {
                    note();
                    said.set(Some(TravelLabel::Handed));
                }
                Shared::Cancelled => said.set(None),
                Shared::TapAgain => said.set(Some(TravelLabel::TapAgain)),
                Shared::Unsupported | Shared::Failed(_) => said.set(Some(TravelLabel::NotShared)),
            }
        });
    };
    let save = move || {
        let Some(ready) = now() else { return };
        // A browser that refuses says so itself.
        let _ = files::download(&ready.name, MIME, ready.text.as_bytes());
        note();
    };
    let copy = move || {
        let Some(ready) = now() else { return };
        wasm_bindgen_futures::spawn_local(async move {
            let copied = clipboard::copy_text(&ready.link).await;
            said.set(Some(if copied { TravelLabel::Copied } else { TravelLabel::NotCopied }));
        });
        note();
    };
    let share_link = move || {
        let Some(ready) = now() else { return };
        wasm_bindgen_futures::spawn_local(async move { clipboard::share_text(&ready.title, &ready.link).await });
        note();
    };
    let shares = files::can_share_file("job.txt", MIME);
    let save_class = if shares { "" } else { "primary" };
    let mut file = el("div", "actions");
    if shares {
        file = file.kid(button("primary", say(TravelLabel::ShareFile), share));
    }
    // There a saved file opens a view without a way back.
    if !(shares && files::should_share()) {
        file = file.kid(button(save_class, say(TravelLabel::SaveIt), save));
    }
    let mut by_link =
        el("div", "actions").kid(button("", say_link(TravelLabel::CopyLink, DeviceLabel::CopyText), copy));
    if clipboard::can_share_text() {
        by_link = by_link.kid(button("", say_link(TravelLabel::ShareLink, DeviceLabel::ShareText), share_link));
    }
    let length = move || made.with(|made| made.as_ref().map_or(0, |ready| ready.link.len()));
    let link_field = el("textarea", "travel-text")
        .set("rows", "3")
        .set("readonly", "")
        .set("aria-label", say_link(TravelLabel::LinkText, DeviceLabel::TheText))
        .says(move || made.with(|made| made.as_ref().map(|ready| ready.link.clone()).unwrap_or_default()));
    el("section", "send-part")
        .set("aria-labelledby", "ways")
        .kid(el("h2", "rule").set("id", "ways").text(say(TravelLabel::Ways)))
        .kid(
            el("p", "travel-said")
                .set("role", "status")
                .says(move || said.get().map(say).unwrap_or_default().to_owned()),
        )
        .kid(
            el("div", "send-way")
                .kid(el("h3", "travel-label").text(say(TravelLabel::AsFile)))
                .kid(el("p", "").text(say(TravelLabel::AsFileAbout)))
                .kid(file),
        )
        .kid(
            el("div", "send-way")
                .kid(el("h3", "travel-label").text(say_link(TravelLabel::AsLink, DeviceLabel::AsText)))
                .kid(el("p", "").text(say_link(TravelLabel::AsLinkAbout, DeviceLabel::AsTextAbout)))
                .kid(
                    el("p", "send-length").says(move || {
                        desk.manner().sentence(TravelLabel::LinkLong, &[("count", &length().to_string())])
                    }),
                )
                .when(
                    move || length() > LONGEST_LINK,
                    move || vec![el("p", "came-caution").text(say(TravelLabel::LinkTooLong))],
                )
                .kid(link_field)
                .kid(by_link),
        )
        .kid(shown_codes(desk, packed, note))
}
