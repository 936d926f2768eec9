//! A tape reading: what to expect, what was read, and what that says; quiet inside the spread.

use std::rc::Rc;

use bedwright_calc::fill::SurfaceState;
use bedwright_job::entry::{Dimension, Unit};
use bedwright_job::sections::loading::{ReadingPlace, TagChange, TapeReading};
use bedwright_job::words::LoadingLabel;
use leptos::prelude::*;

use super::tag::TagSheet;
use crate::parts::live::{El, button, el};
use crate::parts::signal::{Held, Kept};
use crate::vessel::number_line::NumberLine;

/// The field of a reading; one that is needed can be said to be out of reach.
pub fn reading(of: TagSheet, place: &ReadingPlace, needed: bool) -> El {
    let desk = of.desk;
    let manner = desk.manner();
    let place = Kept::new(place.clone());
    let typing = Held::new(false);
    let there = move || of.read(|load, _| load.done.reading(&place.get()).cloned());
    let state = move || match place.get() {
        ReadingPlace::Found | ReadingPlace::Left => SurfaceState::SettledAtOpening,
        ReadingPlace::Pack(..) | ReadingPlace::End(_) => SurfaceState::AsPoured,
    };
    let put = move |reading: Option<TapeReading>| of.change(TagChange::Reading(place.get(), reading));
    let expect = move || {
        of.read(|load, _| {
            let rung = load.rung(&place.get())?;
            let tape = rung.expected.as_ref().ok()?;
            Some(manner.tape_and_spread(tape))
        })
    };
    let said = move || -> Vec<String> {
        if typing.get() {
            return Vec::new();
        }
        of.read(|load, answers| {
            let Some(rung) = load.rung(&place.get()) else { return Vec::new() };
            let pack = answers.planned.get(rung.layer).map(|layer| &layer.pack);
            match (&rung.outcome, pack) {
                (Some(Ok(found)), Some(pack)) => manner.deviation(rung, found, pack),
                (Some(Err(problem)), _) => vec![manner.problem(problem)],
                _ => Vec::new(),
            }
        })
    };
    let quiet = move || {
        let within = of.read(|load, _| {
            let rung = load.rung(&place.get())?;
            Some(matches!(&rung.outcome, Some(Ok(found)) if found.within))
        });
        !typing.get() && within == Some(true)
    };
    let usual = if manner.metric { Unit::Millimetre } else { Unit::Inch };
    let field = NumberLine {
        id: ["tape-", &place.get().name().replace('/', "-")].concat(),
        label: of.say(LoadingLabel::Tape),
        hint: "",
        units: Unit::of(Dimension::Length),
        usual,
        entry: Rc::new(move || there().and_then(|reading| reading.entry)),
        misread: Rc::new(move || of.read(|load, _| load.misread_at(&place.get()).cloned())),
        problem: Rc::new(|| None),
        put: Rc::new(move |entry| {
            typing.set(true);
            let stamp = of.stamp();
            put(entry.map(|entry| TapeReading { entry: Some(entry), state: state(), stamp }));
        }),
        assumed: Rc::new(|| None),
        standing: None,
    }
    .show(desk)
    .on("focusout", move |_| {
        if !typing.is_gone() {
            typing.set(false);
        }
    });
    // Every field is called tape; which one, a screen reader is told.
    let name = untrack(|| of.read(|load, answers| manner.place(&place.get(), load, answers)));
    if let Ok(Some(input)) = field.node().query_selector("input") {
        // Fails only for a name that is none.
        let _ = input.set_attribute("aria-label", &[of.say(LoadingLabel::Tape), ": ", &name].concat());
    }
    let untaken = move || there().is_some_and(|reading| reading.entry.is_none());
    let empty = move || needed && there().is_none();
    let give_up = move || {
        let stamp = of.stamp();
        put(Some(TapeReading { entry: None, state: state(), stamp }));
    };
    el("div", "load-reading")
        .when(
            move || expect().is_some(),
            move || {
                vec![
                    el("p", "load-reading-expect")
                        .kid(el("span", "quietly").text(of.say(LoadingLabel::Expect)).text(" "))
                        .kid(el("span", "load-reading-figure").says(move || expect().unwrap_or_default())),
                ]
            },
        )
        .when(move || !untaken(), move || vec![field.clone()])
        .when(quiet, move || vec![el("p", "load-reading-quiet").text("● ").text(of.say(LoadingLabel::WithinSpread))])
        .kid(
            el("div", "load-reading-said")
                .set("role", "status")
                .live(move || said().iter().map(|text| el("p", "").text(text)).collect()),
        )
        .when(empty, move || vec![button("quiet", of.say(LoadingLabel::CantBeTaken), give_up)])
        .when(untaken, move || {
            vec![
                el("p", "").text(of.say(LoadingLabel::NotTaken)),
                button("", of.say(LoadingLabel::TypeItAfterAll), move || put(None)),
            ]
        })
}
