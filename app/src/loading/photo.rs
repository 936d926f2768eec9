//! A photo: taken beside the text, never in its way.

use bedwright_edge::photo;
use bedwright_job::sections::loading::{Photo, TagChange};
use bedwright_job::words::LoadingLabel;
use leptos::prelude::*;

use super::tag::TagSheet;
use crate::desk::new_id;
use crate::parts::live::{El, button, el};
use crate::parts::photo::not_kept;
use crate::parts::signal::Held;

/// The photo, or the way to take one.
pub fn photo(of: TagSheet) -> El {
    let failed = Held::new(None::<&'static str>);
    let there = move || of.read(|load, _| load.done.photo.clone());
    let take = move || {
        failed.set(None);
        let id = new_id();
        wasm_bindgen_futures::spawn_local(async move {
            match photo::take(id.as_str()).await {
                Ok(Some(bytes)) => of.change(TagChange::Photo(Some(Photo { id, bytes }))),
                Ok(None) => {}
                // The sheet may have been left while the picture was chosen.
                Err(_) if failed.is_gone() => {}
                Err(why) => failed.set(Some(not_kept(of.desk, &why))),
            }
        });
    };
    // Undo may bring it back, so what is kept of it stays until the job is erased.
    let remove = move || of.change(TagChange::Photo(None));
    el("section", "loading-photo")
        .kid(el("h2", "rule").text(of.say(LoadingLabel::Photo)))
        .kid(el("p", "quietly").text(of.say(LoadingLabel::PhotoHint)))
        .live(move || there().map(|photo| picture(of, &photo)).into_iter().collect())
        .kid(el("p", "entry-message").set("role", "alert").says(move || failed.get().unwrap_or_default().to_owned()))
        .when(move || there().is_none(), move || vec![button("", of.say(LoadingLabel::TakePhoto), take)])
        .when(move || there().is_some(), move || vec![button("quiet", of.say(LoadingLabel::RemovePhoto), remove)])
}

/// The picture where it lies on this device; else where it does.
pub fn picture(of: TagSheet, photo: &Photo) -> El {
    let address = Held::new(None::<String>);
    let looked = Held::new(false);
    let id = photo.id.to_string();
    wasm_bindgen_futures::spawn_local(async move {
        let found = photo::address(&id).await.ok().flatten();
        // The screen may have been left meanwhile.
        if !address.is_gone() {
            address.set(found);
            looked.set(true);
        }
    });
    let shown = move || address.get();
    el("div", "")
        .when(
            move || shown().is_some(),
            move || {
                let source = untrack(shown).unwrap_or_default();
                vec![el("img", "loading-picture").set("alt", of.say(LoadingLabel::Photo)).set("src", &source)]
            },
        )
        .when(
            move || looked.get() && shown().is_none(),
            move || vec![el("p", "").text(of.say(LoadingLabel::PhotoElsewhere))],
        )
}
