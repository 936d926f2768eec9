//! What belongs to a step besides its tick: readings between packs, lots, texts, how the old bed is taken out.

use std::rc::Rc;

use bedwright_job::entry::{Dimension, Unit};
use bedwright_job::loading::{Step, StepRow};
use bedwright_job::sections::loading::{LoadingText, ReadingPlace, RemovalMethod, TagChange};
use bedwright_job::words::LoadingLabel;
use bedwright_job::words::loading::method;

use super::drums::drums;
use super::reading::reading;
use super::tag::TagSheet;
use crate::parts::choice::choice;
use crate::parts::live::{El, el};
use crate::parts::signal::Kept;
use crate::vessel::number_line::NumberLine;

/// What comes before the tick: readings that may be taken between packs.
pub fn before(of: TagSheet, row: &StepRow) -> Vec<El> {
    let (Step::Pour, Some(layer)) = (row.step, row.layer) else { return Vec::new() };
    let places = move || -> Vec<String> {
        of.read(|load, _| {
            let Ok(rungs) = &load.rungs else { return Vec::new() };
            let between = rungs.iter().filter(|rung| rung.layer == layer && !rung.last);
            between.filter_map(|rung| load.place_of(rung)).map(|place| place.name()).collect()
        })
    };
    let one = move |name: &str| match ReadingPlace::of(name) {
        Some(place) => {
            let title = of.read(|load, answers| of.desk.manner().place(&place, load, answers));
            el("li", "")
                .kid(
                    el("p", "load-reading-title")
                        .text(&title)
                        .kid(el("span", "quietly").text(" ").text(of.say(LoadingLabel::Optional))),
                )
                .kid(reading(of, &place, false))
        }
        None => el("li", ""),
    };
    let any = places;
    vec![el("div", "").when(
        move || !any().is_empty(),
        move || {
            vec![
                el("details", "loading-more")
                    .kid(el("summary", "").text(of.say(LoadingLabel::TapeAfterPack)))
                    .kid(el("ul", "").each(places, one)),
            ]
        },
    )]
}

/// What comes after it.
pub fn after(of: TagSheet, row: &StepRow) -> Vec<El> {
    let text = move |label: LoadingLabel, which: LoadingText| {
        of.text(label, move |load| load.done.text(which).to_owned(), move |text| TagChange::Text(which, text))
    };
    match row.step {
        Step::Pour => row.layer.map(|layer| poured(of, layer)).unwrap_or_default(),
        Step::TakeOut => vec![taken_out(of)],
        Step::ThreadSeen => vec![text(LoadingLabel::FoundText, LoadingText::Found)],
        Step::Drums => vec![drums(of)],
        Step::Waste => vec![
            text(LoadingLabel::WasteBy, LoadingText::WasteBy),
            text(LoadingLabel::WasteClass, LoadingText::WasteClass),
        ],
        Step::Settings => vec![text(LoadingLabel::SettingsText, LoadingText::Settings)],
        Step::OutletTest => vec![text(LoadingLabel::OutletText, LoadingText::OutletTest)],
        _ => Vec::new(),
    }
}

/// A layer's lot, and how many packs went in where it isn't what was planned.
fn poured(of: TagSheet, layer: usize) -> Vec<El> {
    let Some(id) = of.read(|load, _| load.layers.get(layer).cloned()) else { return Vec::new() };
    let id = Kept::new(id);
    let lot = of.text(
        LoadingLabel::Lot,
        move |load| load.done.lot(&id.get()).to_owned(),
        move |text| TagChange::Lot(id.get(), text),
    );
    let packs = NumberLine {
        id: ["packs-", id.get().as_str()].concat(),
        label: of.say(LoadingLabel::PacksPoured),
        hint: "",
        units: Unit::of(Dimension::Count),
        usual: Unit::Each,
        entry: Rc::new(move || of.read(|load, _| load.done.poured(&id.get()).cloned())),
        misread: Rc::new(move || {
            of.read(|load, _| {
                load.packs_misread.iter().find(|(there, _)| *there == id.get()).map(|(_, why)| why.clone())
            })
        }),
        problem: Rc::new(|| None),
        put: Rc::new(move |entry| of.change(TagChange::Poured(id.get(), entry))),
        assumed: Rc::new(move || of.read(|load, _| Some(load.pour_of(layer)?.packs.value))),
        standing: None,
    };
    let more = el("details", "loading-more")
        .kid(el("summary", "").text(of.say(LoadingLabel::Lot)))
        .kid(lot)
        .kid(packs.show(of.desk));
    vec![more]
}

fn taken_out(of: TagSheet) -> El {
    let names = move || RemovalMethod::ALL.iter().map(|way| of.say(method(*way)).to_owned()).collect();
    let chosen = move || {
        of.read(|load, _| {
            let way = load.done.method.unwrap_or(load.usual_method);
            RemovalMethod::ALL.iter().position(|there| *there == way)
        })
    };
    choice(of.say(LoadingLabel::Method), names, chosen, move |at| {
        of.change(TagChange::Method(RemovalMethod::ALL.get(at).copied()));
    })
}
