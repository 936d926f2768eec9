//! What the old bed went into: a label, what is in it, what it weighs.

use std::rc::Rc;

use bedwright_job::entry::{Dimension, Unit};
use bedwright_job::id::Id;
use bedwright_job::sections::loading::{Drum, TagChange};
use bedwright_job::words::LoadingLabel;
use leptos::prelude::*;

use super::tag::TagSheet;
use crate::desk::new_id;
use crate::parts::live::{El, button, el};
use crate::parts::signal::Kept;
use crate::vessel::number_line::NumberLine;

/// The drums, and the way to add one.
pub fn drums(of: TagSheet) -> El {
    let ids = move || of.read(|load, _| load.done.drums.iter().map(|drum| drum.id.to_string()).collect::<Vec<_>>());
    let add = move || {
        let at = untrack(|| of.read(|load, _| load.done.drums.len()));
        let mut drum = Drum::new(new_id());
        // What stands on it most likely: the tag it came from.
        drum.label = of.tag.get();
        of.change(TagChange::InsertDrum(at, drum));
    };
    el("div", "load-drums").kid(el("ul", "").each(ids, move |id| one(of, Id::new(id)))).kid(button(
        "",
        of.say(LoadingLabel::AddDrum),
        add,
    ))
}

fn one(of: TagSheet, id: Id) -> El {
    let id = Kept::new(id);
    let drum = move || of.read(|load, _| load.done.drums.iter().find(|drum| drum.id == id.get()).cloned());
    let text = move |label: LoadingLabel, read: fn(&Drum) -> &str, change: fn(Id, String) -> TagChange| {
        of.text(
            label,
            move |load| {
                load.done
                    .drums
                    .iter()
                    .find(|drum| drum.id == id.get())
                    .map(|drum| read(drum).to_owned())
                    .unwrap_or_default()
            },
            move |text| change(id.get(), text),
        )
    };
    let usual = if of.desk.manner().metric { Unit::Kilogram } else { Unit::Pound };
    let weight = NumberLine {
        id: ["drum-", id.get().as_str()].concat(),
        label: of.say(LoadingLabel::DrumWeight),
        hint: "",
        units: Unit::of(Dimension::Mass),
        usual,
        entry: Rc::new(move || drum().and_then(|drum| drum.weight)),
        misread: Rc::new(move || drum().and_then(|drum| drum.weight).and_then(|entry| entry.understood().err())),
        problem: Rc::new(|| None),
        put: Rc::new(move |entry| of.change(TagChange::DrumWeight(id.get(), entry))),
        assumed: Rc::new(|| None),
        standing: None,
    };
    el("li", "load-drum")
        .kid(text(LoadingLabel::DrumLabel, |drum| &drum.label, TagChange::DrumLabel))
        .kid(text(LoadingLabel::DrumContents, |drum| &drum.contents, TagChange::DrumContents))
        .kid(weight.show(of.desk))
        .kid(button("quiet", of.say(LoadingLabel::RemoveDrum), move || of.change(TagChange::RemoveDrum(id.get()))))
}
