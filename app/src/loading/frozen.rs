//! What was signed: shown as it stands, set right by corrections.

use std::rc::Rc;

use bedwright_job::Edit;
use bedwright_job::as_loaded::{AsLoaded, Correction};
use bedwright_job::entry::{Dimension, Entry, Unit};
use bedwright_job::sections::loading::ReadingPlace;
use bedwright_job::words::LoadingLabel;
use leptos::prelude::*;

use super::photo::picture;
use super::tag::TagSheet;
use crate::desk::{new_id, today};
use crate::parts::choice::choice;
use crate::parts::live::{El, button, el};
use crate::parts::signal::{Held, Worked};
use crate::parts::typing::{text_line, typing};
use crate::vessel::number_line::NumberLine;

/// The as-loaded record, and the way to correct it.
pub fn frozen(of: TagSheet) -> El {
    let loaded = Worked::new(move || of.read(|load, _| load.signed.clone()));
    let signed = move || {
        loaded.with(|loaded| {
            let Some(loaded) = loaded else { return String::new() };
            let at = of.desk.manner().instant(&loaded.signed.at);
            [of.say(LoadingLabel::SignedBy), " ", &loaded.signed.by, ", ", &at].concat()
        })
    };
    let readings = move || loaded.with(|loaded| loaded.as_ref().map(|loaded| lines(of, loaded)).unwrap_or_default());
    let corrections = move || {
        loaded.with(|loaded| {
            let Some(loaded) = loaded else { return Vec::new() };
            let said = loaded.corrections.iter().map(|correction| {
                let at = of.desk.manner().instant(&correction.stamp.at);
                el("li", "").text(&[&correction.text, " · ", &correction.stamp.by, ", ", &at].concat())
            });
            said.collect()
        })
    };
    let photo = move || {
        let photo = loaded.with(|loaded| loaded.as_ref().and_then(|loaded| loaded.photo.clone()));
        photo.map(|photo| picture(of, &photo)).into_iter().collect()
    };
    el("section", "loading-signed")
        .kid(el("h2", "rule").text(of.say(LoadingLabel::AsLoaded)))
        .kid(el("p", "loading-signed-by").text("● ").kid(el("strong", "").says(signed)))
        .kid(el("p", "quietly").text(of.say(LoadingLabel::Frozen)))
        .kid(el("ul", "loading-lines").live(readings))
        .live(photo)
        .kid(el("ul", "loading-lines").live(corrections))
        .kid(
            el("details", "loading-more")
                .kid(el("summary", "").text(of.say(LoadingLabel::Correct)))
                .kid(correct(of, loaded)),
        )
}

/// Layers and readings, a line each.
fn lines(of: TagSheet, loaded: &AsLoaded) -> Vec<El> {
    let manner = of.desk.manner();
    let mut all = Vec::new();
    for layer in loaded.layers.iter().filter(|layer| layer.packs > 0.0) {
        let pack = bedwright_calc::material::Pack::of(&layer.pack);
        let amount = pack.map_or_else(|| manner.decimal(layer.packs, 2), |pack| manner.packs(layer.packs, &pack));
        let lot = if layer.lot.is_empty() { String::new() } else { [" · ", &layer.lot].concat() };
        all.push(el("li", "").text(&[&amount, " ", &manner.material(&layer.material), &lot].concat()));
    }
    for reading in &loaded.readings {
        let place = of.read(|load, answers| manner.place(&reading.place, load, answers));
        let tape = reading.tape().map_or_else(|| of.say(LoadingLabel::NotTaken).to_owned(), |tape| manner.tape(tape));
        let against = reading.higher().map(|higher| {
            let mark = if reading.within() == Some(false) { "▲ " } else { "" };
            [" · ", mark, &manner.higher(higher)].concat()
        });
        let line = el("li", "").text(&place).text(": ").kid(el("strong", "").text(&tape));
        all.push(line.text(&against.unwrap_or_default()));
    }
    all
}

fn correct(of: TagSheet, loaded: Worked<Option<std::sync::Arc<AsLoaded>>>) -> El {
    let desk = of.desk;
    let manner = desk.manner();
    let (text, which, tape, told) =
        (Held::new(String::new()), Held::new(0_usize), Held::new(None::<Entry>), Held::new(false));
    let places = move || -> Vec<ReadingPlace> {
        loaded.with(|loaded| {
            loaded
                .as_ref()
                .map(|loaded| loaded.readings.iter().map(|read| read.place.clone()).collect())
                .unwrap_or_default()
        })
    };
    let names = move || {
        let mut names = vec![of.say(LoadingLabel::CorrectionNone).to_owned()];
        names.extend(places().iter().map(|place| of.read(|load, answers| manner.place(place, load, answers))));
        names
    };
    let words = typing(desk.turned, move || text.get(), move |now| text.set(now), || {});
    let field = NumberLine {
        id: "correction-tape".to_owned(),
        label: of.say(LoadingLabel::CorrectionTape),
        hint: "",
        units: Unit::of(Dimension::Length),
        usual: if manner.metric { Unit::Millimetre } else { Unit::Inch },
        entry: Rc::new(move || tape.get()),
        misread: Rc::new(move || tape.get().and_then(|entry| entry.understood().err())),
        problem: Rc::new(|| None),
        put: Rc::new(move |entry| tape.set(entry)),
        assumed: Rc::new(|| None),
        standing: None,
    };
    let add = move || {
        let said = text.get_untracked().trim().to_owned();
        let Some(record) = untrack(|| loaded.get()) else { return };
        let place = which.get_untracked().checked_sub(1).and_then(|at| untrack(places).get(at).cloned());
        let entry = tape
            .get_untracked()
            .filter(|entry| entry.understood().is_ok_and(|read| read.dimension == Dimension::Length));
        if said.is_empty() || place.is_some() && entry.is_none() {
            return told.set(true);
        }
        let correction = Correction {
            id: new_id(),
            of: record.id.clone(),
            day: today(),
            stamp: of.stamp(),
            text: said,
            reading: place.zip(entry),
            lot: None,
        };
        desk.edit(Edit::AddRecord(correction.record()));
        text.set(String::new());
        tape.set(None);
        which.set(0);
        told.set(false);
        desk.turned.update(|n| *n = n.wrapping_add(1));
    };
    el("div", "loading-correct")
        .kid(text_line(of.say(LoadingLabel::CorrectionText), words))
        .kid(choice(of.say(LoadingLabel::CorrectionOf), names, move || Some(which.get()), move |at| which.set(at)))
        .when(move || which.get() > 0, {
            let field = field.show(desk);
            move || vec![field.clone()]
        })
        .kid(
            el("p", "entry-message").set("role", "alert").says(move || {
                if told.get() { of.say(LoadingLabel::CorrectionNeeds).to_owned() } else { String::new() }
            }),
        )
        .kid(button("", of.say(LoadingLabel::CorrectionAdd), add).holds("disabled", move || of.person().is_empty()))
}
