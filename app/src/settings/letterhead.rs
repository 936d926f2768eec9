//! The letterhead, set once.

use bedwright_edge::photo;
use bedwright_job::words::Label;

use crate::desk::Desk;
use crate::parts::letterhead::{PICTURE, is_long, look_for};
use crate::parts::live::{El, button, el};
use crate::parts::photo::not_kept;
use crate::parts::signal::Held;
use crate::parts::typing::{paragraph, text_line, typing};

/// Company, address and picture.
pub fn letterhead(desk: Desk) -> El {
    let say = move |label: Label| desk.label(label);
    let company = typing(
        desk.turned,
        move || desk.person.with(|person| person.company.clone()),
        move |text| desk.prefer(|person| person.company = text),
        || {},
    );
    let address = paragraph(
        desk.turned,
        move || desk.person.with(|person| person.address.clone()),
        move |text| desk.prefer(|person| person.address = text),
        || {},
    );
    let long = move || {
        let long = desk.person.with(|person| is_long(&person.address));
        if long { say(Label::AddressLong).to_owned() } else { String::new() }
    };
    el("section", "settings-letterhead")
        .set("aria-labelledby", "letterhead")
        .kid(el("h2", "rule").set("id", "letterhead").text(say(Label::Letterhead)))
        .kid(el("p", "quietly").text(say(Label::LetterheadHint)))
        .kid(text_line(say(Label::Owner), company))
        .kid(text_line(say(Label::CompanyAddress), address))
        .kid(el("p", "entry-message").set("role", "status").says(long))
        .kid(company_picture(desk))
}

/// The picture, and the ways to have another or none.
fn company_picture(desk: Desk) -> El {
    let there = Held::new(None);
    look_for(there);
    let failed = Held::new(None::<&'static str>);
    let take = move || {
        failed.set(None);
        wasm_bindgen_futures::spawn_local(async move {
            let taken = photo::take(PICTURE).await;
            // The screen may have been left while it was chosen.
            if failed.is_gone() {
                return;
            }
            match taken {
                Ok(Some(_)) => look_for(there),
                Ok(None) => {}
                Err(why) => failed.set(Some(not_kept(desk, &why))),
            }
        });
    };
    let remove = move || {
        failed.set(None);
        wasm_bindgen_futures::spawn_local(async move {
            let gone = photo::remove(PICTURE).await;
            if gone.is_ok() && !there.is_gone() {
                there.set(None);
            }
        });
    };
    let shown = move |picture: String| {
        el("img", "letterhead-picture").set("alt", desk.label(Label::CompanyPicture)).set("src", &picture)
    };
    el("div", "letterhead-choice")
        .live(move || there.get().map(shown).into_iter().collect())
        .kid(el("p", "entry-message").set("role", "alert").says(move || failed.get().unwrap_or_default().to_owned()))
        .kid(el("div", "actions").kid(button("", desk.label(Label::ChoosePicture), take)).when(
            move || there.get().is_some(),
            move || vec![button("quiet", desk.label(Label::RemovePicture), remove)],
        ))
}
