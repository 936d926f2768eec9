//! The letterhead: the company, its address and its picture, on the first sheet of the papers that are its own.

use std::rc::Rc;

use bedwright_edge::photo;

use super::live::{El, Shared, el};
use super::signal::Held;
use crate::desk::Desk;

/// What the picture is kept under, beside the photos.
pub const PICTURE: &str = "letterhead";
/// How many lines of an address find room on a sheet, and how many letters of each.
const ROOM: (usize, usize) = (6, 60);

/// What stands in it.
#[derive(Clone, Debug, PartialEq)]
pub struct Letterhead {
    company: String,
    address: String,
    picture: Option<String>,
}

/// Whether more of an address was typed than finds room.
pub fn is_long(address: &str) -> bool {
    let (lines, letters) = ROOM;
    let address = address.trim();
    address.lines().count() > lines || address.lines().any(|line| line.trim().chars().count() > letters)
}

/// Looks for the picture that is kept.
pub fn look_for(there: Held<Option<String>>) {
    wasm_bindgen_futures::spawn_local(async move {
        let found = photo::address(PICTURE).await.ok().flatten();
        // The screen may have been left meanwhile.
        if !there.is_gone() {
            there.set(found);
        }
    });
}

/// This person's letterhead; none where no company was typed.
pub fn of(desk: Desk) -> Shared<Option<Letterhead>> {
    let picture = Held::new(None);
    // Who has none needs no photos opened for every paper.
    if desk.person.with_untracked(|person| !person.company.trim().is_empty()) {
        look_for(picture);
    }
    Rc::new(move || {
        let (company, address) = desk.person.with(|person| (person.company.trim().to_owned(), person.address.clone()));
        (!company.is_empty()).then(|| Letterhead { company, address, picture: picture.get() })
    })
}

impl Letterhead {
    /// Drawn on a paper of an owner; nothing on that of another company.
    pub fn on(&self, owner: &str) -> Option<El> {
        if owner.trim() != self.company {
            return None;
        }
        let (lines, letters) = ROOM;
        let line = |line: &str| el("p", "").text(&line.trim().chars().take(letters).collect::<String>());
        let text = el("div", "letterhead-text").kid(el("p", "letterhead-company").text(&self.company));
        let text = text.kids(self.address.trim().lines().take(lines).map(line).collect());
        // What is written beside it says whose it is.
        let picture = |picture: &String| el("img", "letterhead-picture").set("alt", "").set("src", picture);
        Some(el("div", "letterhead").kids(self.picture.iter().map(picture).collect()).kid(text))
    }
}
