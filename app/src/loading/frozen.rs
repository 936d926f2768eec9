//! What was signed: shown as it stands, set right by corrections.

use std::rc::Rc;
use std::sync::Arc;

use bedwright_job::as_loaded::{AsLoaded, Correction};
use bedwright_job::entry::{Dimension, Entry, Unit};
use bedwright_job::id::Id;
use bedwright_job::sections::loading::ReadingPlace;
use bedwright_job::words::{CorrectionLabel, LoadingLabel};
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
                let lot = correction.lot.as_ref().map(|(_, lot)| [" · ", lot].concat()).unwrap_or_default();
                el("li", "").text(&[&correction.text, &lot, " · ", &correction.stamp.by, ", ", &at].concat())
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

/// A correction that is being written. A handle.
#[derive(Clone, Copy)]
struct Draft {
    of: TagSheet,
    loaded: Worked<Option<Arc<AsLoaded>>>,
    text: Held<String>,
    /// Which reading, counted from 1; 0 for none.
    reading: Held<usize>,
    tape: Held<Option<Entry>>,
    /// Which layer, counted from 1; 0 for none.
    layer: Held<usize>,
    lot: Held<String>,
    told: Held<&'static str>,
    writing: Held<bool>,
}

fn correct(of: TagSheet, loaded: Worked<Option<Arc<AsLoaded>>>) -> El {
    let desk = of.desk;
    let draft = Draft {
        of,
        loaded,
        text: desk.draft_text("correction"),
        reading: Held::new(0),
        tape: desk.draft("tape", None, Option::is_none),
        layer: Held::new(0),
        lot: desk.draft_text("lot"),
        told: Held::new(""),
        writing: Held::new(false),
    };
    let words = typing(desk.turned, move || draft.text.get(), move |now| draft.text.set(now), || {});
    let manner = desk.manner();
    let readings = move || {
        let mut names = vec![of.say(LoadingLabel::CorrectionNone).to_owned()];
        names.extend(draft.places().iter().map(|place| of.read(|load, answers| manner.place(place, load, answers))));
        names
    };
    let layers = move || {
        let mut names = vec![desk.label(CorrectionLabel::LotOfNone).to_owned()];
        names.extend(draft.layers().iter().map(|(_, material)| manner.material(material)));
        names
    };
    let tape = draft.tape_line();
    let lot = typing(desk.turned, move || draft.lot.get(), move |now| draft.lot.set(now), || {});
    let lot = text_line(desk.label(CorrectionLabel::Lot), lot);
    let (reading, layer) = (draft.reading, draft.layer);
    el("div", "loading-correct")
        .kid(text_line(of.say(LoadingLabel::CorrectionText), words))
        .kid(choice(
            of.say(LoadingLabel::CorrectionOf),
            readings,
            move || Some(reading.get()),
            move |at| reading.set(at),
        ))
        .when(move || reading.get() > 0, move || vec![tape.clone()])
        .kid(choice(desk.label(CorrectionLabel::LotOf), layers, move || Some(layer.get()), move |at| layer.set(at)))
        .when(move || layer.get() > 0, move || vec![lot.clone()])
        .kid(el("p", "entry-message").set("role", "alert").says(move || draft.told.get().to_owned()))
        .kid(
            button("", of.say(LoadingLabel::CorrectionAdd), move || draft.add())
                .holds("disabled", move || of.person().is_empty() || draft.writing.get()),
        )
}

impl Draft {
    fn places(self) -> Vec<ReadingPlace> {
        self.loaded.with(|loaded| {
            let readings = loaded.iter().flat_map(|loaded| &loaded.readings);
            readings.map(|read| read.place.clone()).collect()
        })
    }

    /// The layers something was poured of: id and material.
    fn layers(self) -> Vec<(Id, String)> {
        self.loaded.with(|loaded| {
            let layers = loaded.iter().flat_map(|loaded| &loaded.layers).filter(|layer| layer.packs > 0.0);
            layers.map(|layer| (layer.layer.clone(), layer.material.clone())).collect()
        })
    }

    fn tape_line(self) -> El {
        let (desk, tape) = (self.of.desk, self.tape);
        NumberLine {
            id: "correction-tape".to_owned(),
            label: self.of.say(LoadingLabel::CorrectionTape),
            hint: "",
            units: Unit::of(Dimension::Length),
            usual: if desk.manner().metric { Unit::Millimetre } else { Unit::Inch },
            entry: Rc::new(move || tape.get()),
            misread: Rc::new(move || tape.get().and_then(|entry| entry.understood().err())),
            problem: Rc::new(|| None),
            put: Rc::new(move |entry| tape.set(entry)),
            assumed: Rc::new(|| None),
            standing: None,
        }
        .show(desk)
    }

    /// Signs it: it counts once the browser reports it written through, as what it corrects.
    fn add(self) {
        let (of, desk) = (self.of, self.of.desk);
        let text = self.text.get_untracked().trim().to_owned();
        let Some(record) = untrack(|| self.loaded.get()) else { return };
        if text.is_empty() {
            return self.told.set(of.say(LoadingLabel::CorrectionNeeds));
        }
        let place =
            self.reading.get_untracked().checked_sub(1).and_then(|at| untrack(|| self.places()).get(at).cloned());
        let is_length = |entry: &Entry| entry.understood().is_ok_and(|read| read.dimension == Dimension::Length);
        let tape = self.tape.get_untracked().filter(is_length);
        if place.is_some() && tape.is_none() {
            return self.told.set(desk.label(CorrectionLabel::NeedsTape));
        }
        let layer = self.layer.get_untracked().checked_sub(1).and_then(|at| untrack(|| self.layers()).get(at).cloned());
        let lot = self.lot.get_untracked().trim().to_owned();
        if layer.is_some() && lot.is_empty() {
            return self.told.set(desk.label(CorrectionLabel::NeedsLot));
        }
        let correction = Correction {
            id: new_id(),
            of: record.id.clone(),
            day: today(),
            stamp: of.stamp(),
            text,
            reading: place.zip(tape),
            lot: layer.map(|(layer, _)| (layer, lot)),
        };
        self.writing.set(true);
        self.told.set(of.say(LoadingLabel::Signing));
        desk.sign(correction.record(), move |done| {
            // The sheet may have been left meanwhile.
            if self.told.is_gone() {
                return;
            }
            self.writing.set(false);
            if !done {
                return self.told.set(desk.label(CorrectionLabel::NotWritten));
            }
            self.told.set("");
            self.text.set(String::new());
            self.tape.set(None);
            self.reading.set(0);
            self.lot.set(String::new());
            self.layer.set(0);
            desk.turned.update(|n| *n = n.wrapping_add(1));
        });
    }
}
