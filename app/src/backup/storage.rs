//! How much is kept, how much more goes in, and how safe it is.

use bedwright_edge::persist::{self, Estimate, Protection};
use bedwright_edge::{address, display};
use bedwright_job::words::{DeviceLabel, KeepingLabel};

use super::page::part;
use crate::desk::{Desk, Room};
use crate::parts::live::{El, button, el};
use crate::parts::signal::Held;

/// About how many letters a browser lets an origin keep in local storage: 5 Mi, common practice, no source.
const LETTERS: u64 = 5 * 1024 * 1024;

/// The part of the screen about storage.
pub fn storage_part(desk: Desk) -> El {
    let protection: Held<Option<Protection>> = Held::new(None);
    let estimate: Held<Option<Option<Estimate>>> = Held::new(None);
    wasm_bindgen_futures::spawn_local(async move {
        protection.set(Some(persist::persisted().await));
        estimate.set(Some(persist::estimate().await));
    });
    let mut part = part(desk, KeepingLabel::Storage, KeepingLabel::StorageAbout)
        .live(move || {
            // What is kept changes with what is on the shelf; it is on its way for a moment.
            desk.shelf.track();
            desk.status.track();
            match Room::now() {
                Some(room) => vec![meter(desk, &room)],
                None => vec![el("p", "").text(desk.label(KeepingLabel::LocalBlocked))],
            }
        })
        .live(move || {
            let manner = desk.manner();
            let text = match estimate.get() {
                None => return Vec::new(),
                Some(None) => desk.label(KeepingLabel::EverythingUnknown).to_owned(),
                Some(Some(found)) => {
                    let [used, all] = [found.used_bytes, found.quota_bytes].map(|bytes| manner.bytes(bytes));
                    manner.sentence(KeepingLabel::Everything, &[("used", &used), ("all", &all)])
                }
            };
            vec![el("p", "quietly").text(&text)]
        })
        .live(move || match protection.get() {
            None => Vec::new(),
            Some(answer) => promise(desk, answer, protection),
        });
    if address::from_disk() {
        part = part.kid(
            el("div", "backup-place")
                .kid(el("h3", "").text(desk.label(DeviceLabel::FromDisk)))
                .kid(el("p", "").text(desk.label(DeviceLabel::FromDiskPlace)))
                .kid(el("p", "").text(desk.label(DeviceLabel::FromDiskAlone))),
        );
    }
    if display::in_a_tab_on_ios() {
        part = part.kid(
            el("div", "backup-place")
                .kid(el("h3", "").text(desk.label(KeepingLabel::OnIos)))
                .kid(el("p", "").text(desk.label(KeepingLabel::IosErases)))
                .kid(el("p", "").text(desk.label(KeepingLabel::IosInstall)))
                .kid(el("p", "").text(desk.label(KeepingLabel::IosApart))),
        );
    }
    part
}

fn promise(desk: Desk, answer: Protection, told: Held<Option<Protection>>) -> Vec<El> {
    let (label, asks) = match answer {
        Protection::Protected => (KeepingLabel::Promised, false),
        Protection::NotProtected => (KeepingLabel::NotPromised, true),
        Protection::Unsupported => (KeepingLabel::PromiseUnknown, false),
    };
    let mut said = vec![el("p", "backup-stand").set("role", "status").text(desk.label(label))];
    if asks {
        said.push(el("div", "actions").kid(button("", desk.label(KeepingLabel::AskPromise), move || {
            wasm_bindgen_futures::spawn_local(async move { told.set(Some(persist::persist().await)) });
        })));
    }
    said
}

fn meter(desk: Desk, room: &Room) -> El {
    let manner = desk.manner();
    let kinds = [
        (KeepingLabel::OfJobs, room.jobs),
        (KeepingLabel::OfPrices, room.prices),
        (KeepingLabel::OfAside, room.aside),
        (KeepingLabel::OfRest, room.rest),
        (KeepingLabel::OfOthers, room.others),
    ];
    let used = room.used();
    let [all, left] = [LETTERS, LETTERS.saturating_sub(used)].map(|letters| manner.letters(letters));
    let said =
        manner.sentence(KeepingLabel::UsedOf, &[("used", &manner.letters(used)), ("all", &all), ("left", &left)]);
    let bar = el("meter", "backup-meter")
        .set("min", "0")
        .set("max", &LETTERS.to_string())
        .set("value", &used.to_string())
        .set("aria-label", desk.label(KeepingLabel::Storage))
        .text(&said);
    let line = |(label, letters): (KeepingLabel, u64)| {
        el("li", "")
            .kid(el("span", "").text(desk.label(label)))
            .kid(el("span", "figure").text(&manner.letters(letters)))
    };
    let lines = kinds.into_iter().filter(|(_, letters)| *letters > 0).map(line).collect();
    el("div", "backup-room")
        .kid(el("p", "").text(&said))
        .kid(bar)
        .kid(el("ul", "backup-kinds").kids(lines))
        .kid(el("p", "quietly").text(desk.label(KeepingLabel::RoomSource)))
}
