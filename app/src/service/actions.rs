//! What happens to a bed besides visits: a new one, a rotation, another meter, the job that replaces it.

use std::rc::Rc;

use bedwright_calc::hydraulics::Arrangement;
use bedwright_job::Edit;
use bedwright_job::care::happened::{Happened, Place, What};
use bedwright_job::care::replacement::replacement_job;
use bedwright_job::entry::{Dimension, Entry, Unit};
use bedwright_job::words::CareLabel;
use leptos::prelude::*;

use super::page::{Look, today_day};
use crate::desk::{new_id, today};
use crate::parts::live::{El, button, el};
use crate::parts::signal::Held;
use crate::route::Route;
use crate::vessel::number_line::NumberLine;

fn add(look: Look, what: What) {
    let at = bedwright_edge::clock::now_iso();
    let happened = Happened { id: new_id(), day: today(), at, by: String::new(), what };
    look.desk.edit(Edit::AddRecord(happened.record()));
    look.desk.turned.update(|n| *n = n.wrapping_add(1));
}

/// The places of a lead and lag train that this one belongs to, the lead first; fewer than two where it is none.
fn train(look: Look) -> Vec<Place> {
    let vessel = look.place.get().vessel;
    look.desk.of_job(|job| {
        if job.site.body.duty_of(&vessel).arrangement != Arrangement::LeadLag {
            return Vec::new();
        }
        let tags = job.vessel(&vessel).map(|vessel| vessel.tags.clone()).unwrap_or_default();
        tags.iter().map(|tag| Place { vessel: vessel.clone(), tag: tag.trim().to_owned() }).collect()
    })
}

/// The buttons.
pub(super) fn actions(look: Look) -> El {
    let sure = Held::new(false);
    let changeout = move || {
        if !sure.get() {
            return vec![button("", look.say(CareLabel::Changeout), move || sure.set(true))];
        }
        let yes = move || {
            sure.set(false);
            add(look, What::Changeout { place: look.place.get() });
        };
        vec![
            el("p", "").set("role", "alert").text(look.say(CareLabel::ChangeoutSure)),
            button("primary", look.say(CareLabel::Changeout), yes),
            button("quiet", look.say(CareLabel::GoBack), move || sure.set(false)),
        ]
    };
    let rotate = move || {
        vec![
            button("", look.say(CareLabel::Rotate), move || {
                add(look, What::Rotation { places: untrack(|| train(look)) })
            }),
            el("p", "quietly").text(look.say(CareLabel::RotateHint)),
        ]
    };
    el("section", "card-part card-happens")
        .set("aria-labelledby", "actions")
        .kid(el("h2", "rule").set("id", "actions").text(look.say(CareLabel::WhatHappens)))
        .kid(el("p", "actions").kid(button("", look.say(CareLabel::Replacement), move || replace(look))))
        .kid(el("div", "actions").live(changeout))
        .kid(el("div", "").when(move || train(look).len() > 1, rotate))
        .kid(meter(look))
}

/// The replacement's job, in one tap.
fn replace(look: Look) {
    let desk = look.desk;
    let Some(job) = desk.open_now() else { return };
    if let Some(new) = replacement_job(&job, &look.place.get(), new_id(), new_id(), today_day()) {
        let id = desk.shelve(new);
        desk.go(&Route::Job(id));
    }
}

/// A meter that was replaced.
fn meter(look: Look) -> El {
    let desk = look.desk;
    let entry = |name: &str| look.desk.draft(name, None::<Entry>, Option::is_none);
    let (end, start) = (entry("meter-end"), entry("meter-start"));
    let told = Held::new(false);
    let line = move |id: &str, label: CareLabel, place: Held<Option<Entry>>| {
        NumberLine {
            id: id.to_owned(),
            label: look.say(label),
            hint: "",
            units: Unit::of(Dimension::Volume),
            usual: if desk.manner().metric { Unit::CubicMetre } else { Unit::UsGallon },
            entry: Rc::new(move || place.get()),
            misread: Rc::new(move || place.get().and_then(|entry| entry.understood().err())),
            problem: Rc::new(|| None),
            put: Rc::new(move |entry| place.set(entry)),
            assumed: Rc::new(|| None),
            standing: None,
        }
        .show(desk)
    };
    let volume = |entry: &Entry| entry.understood().is_ok_and(|read| read.dimension == Dimension::Volume);
    let keep = move || {
        let (old, new) = (end.get_untracked(), start.get_untracked());
        let sound = old.as_ref().is_none_or(volume);
        let Some(new) = new.filter(|entry| sound && volume(entry)) else { return told.set(true) };
        told.set(false);
        end.set(None);
        start.set(None);
        add(look, What::MeterReplaced { place: look.place.get(), end: old, start: new });
    };
    el("details", "how")
        .kid(el("summary", "").kid(el("span", "how-name").text(look.say(CareLabel::MeterReplaced))))
        .kid(el("div", "entries").kid(line("meter-end", CareLabel::OldMeterEnd, end)).kid(line(
            "meter-start",
            CareLabel::NewMeterStart,
            start,
        )))
        .kid(
            el("p", "entry-message")
                .set("role", "alert")
                .says(move || if told.get() { look.say(CareLabel::NotKept).to_owned() } else { String::new() }),
        )
        .kid(button("", look.say(CareLabel::Keep), keep))
}
