//! What somebody saw of the bed: added here, withdrawn here, never changed.

mod form;

use std::sync::Arc;

use bedwright_job::Edit;
use bedwright_job::answers::water::WaterAnswers;
use bedwright_job::entry::Entry;
use bedwright_job::evidence::{Evidence, EvidenceKind, withdrawal};
use bedwright_job::id::Id;
use bedwright_job::words::{Label, choices};
use leptos::prelude::*;

use crate::desk::{Answers, Desk, Water, new_id, today, with_answers, with_water};
use crate::parts::live::{El, button, el};
use crate::parts::signal::Kept;
use form::form;

/// What was seen, and a form to add to it.
pub fn evidence(desk: Desk, vessel: Kept<Id>, water: Water, answers: Answers) -> El {
    let say = move |label: Label| desk.label(label);
    let seen = move || {
        with_water(water, |water| water.map(|water| water.evidence.clone())).unwrap_or_else(|| Arc::new(Vec::new()))
    };
    let ids = move || seen().iter().map(|piece| piece.id.to_string()).collect::<Vec<_>>();
    let standing = move || with_water(water, |water| water.map(|water| of_lines(desk, water))).unwrap_or_default();
    let lies =
        move || with_water(water, |water| water.map(|water| of_packing(desk, water, answers))).unwrap_or_default();
    let list = el("ul", "evidence-list").each(ids, move |id| {
        let id = Id::new(id);
        let piece = untrack(seen).iter().find(|piece| piece.id == id).cloned();
        // What a visit says of the drain goes with the visit.
        let of_visit = piece.as_ref().is_some_and(|piece| piece.of_visit);
        let text = piece.map(|piece| sentence(desk, &piece, answers)).unwrap_or_default();
        let why = {
            let id = id.clone();
            move || {
                with_water(water, |water| {
                    let packing = water?.packing.as_ref()?;
                    let (_, problem) = packing.refused.iter().find(|(refused, _)| *refused == id)?;
                    Some(desk.manner().problem(problem))
                })
                .unwrap_or_default()
            }
        };
        let withdraw = move || {
            desk.edit(Edit::AddRecord(withdrawal(new_id(), &id, &today())));
        };
        let end = if of_visit {
            el("span", "").text(say(Label::EvidenceOfVisit))
        } else {
            button("quiet", say(Label::EvidenceWithdraw), withdraw)
        };
        el("li", "").kid(el("span", "").text(&text)).kid(end).kid(el("p", "layer-trouble evidence-why").says(why))
    });
    el("details", "how")
        .kid(el("summary", "").kid(el("span", "how-name").text(say(Label::EvidenceTitle))))
        .kid(el("p", "survey-missing").text(say(Label::EvidenceHint)))
        .kid(el("p", "").set("role", "status").says(standing))
        .kid(el("p", "evidence-why").set("role", "status").says(lies))
        .kid(list)
        .kid(form(desk, vessel, answers))
}

/// The days on which evidence of some kinds was seen.
fn days(water: &WaterAnswers, of: impl Fn(&Evidence) -> bool) -> String {
    let mut days: Vec<&str> = Vec::new();
    for piece in water.evidence.iter().filter(|piece| of(piece)) {
        if !days.contains(&piece.day.as_str()) {
            days.push(&piece.day);
        }
    }
    days.join(", ")
}

/// Where the lines stand, by what and since when.
fn of_lines(desk: Desk, water: &WaterAnswers) -> String {
    let aside = match water.lines.set_aside {
        0 => String::new(),
        count => [" ", &count.to_string(), " ", desk.label(Label::EvidenceSetAside), "."].concat(),
    };
    if water.lines.used == 0 {
        return [desk.label(Label::LinesUnknown), &aside].concat();
    }
    let days = days(water, |piece| piece.kind != EvidenceKind::CleanDrop);
    [desk.label(Label::LinesKnown), " ", &water.lines.used.to_string(), " · ", &days, &aside].concat()
}

/// How closely the bed lies, by what and since when.
fn of_packing(desk: Desk, water: &WaterAnswers, answers: Answers) -> String {
    let Some(packing) = &water.packing else { return String::new() };
    if packing.used == 0 {
        return desk.label(Label::EvidenceDropUnknown).to_owned();
    }
    let manner = desk.manner();
    let each: Vec<String> = packing
        .voidages
        .iter()
        .map(|(layer, voidage)| [&layer_name(desk, answers, *layer), " ", &manner.decimal(voidage.value, 3)].concat())
        .collect();
    let mut read = water.evidence.iter().filter(|piece| {
        piece.kind == EvidenceKind::CleanDrop && !packing.refused.iter().any(|(refused, _)| *refused == piece.id)
    });
    let since = read.next().map_or("", |piece| piece.day.as_str());
    let say = |label: Label| desk.label(label);
    [
        say(Label::EvidenceDropKnown),
        " ",
        &each.join(", "),
        ". ",
        say(Label::EvidenceReadings),
        " ",
        &packing.used.to_string(),
        ", ",
        say(Label::EvidenceSince),
        " ",
        since,
    ]
    .concat()
}

/// What a layer is called: its material.
fn layer_name(desk: Desk, answers: Answers, layer: usize) -> String {
    with_answers(answers, |answers| Some(desk.manner().material(&answers?.planned.get(layer)?.material.id)))
        .unwrap_or_default()
}

/// One piece of evidence in a line.
fn sentence(desk: Desk, piece: &Evidence, answers: Answers) -> String {
    let manner = desk.manner();
    let value =
        |entry: &Entry| entry.understood().map(|read| manner.echo(&read)).unwrap_or_else(|_| entry.text.clone());
    let mut parts = vec![
        piece.day.clone(),
        desk.label(choices::evidence(piece.kind)).to_owned(),
        value(&piece.flow),
        value(&piece.temperature),
    ];
    parts.extend(piece.minutes.as_ref().map(value));
    parts.extend(piece.expansion.as_ref().map(value));
    parts.extend(piece.drop.as_ref().map(value));
    let place = untrack(|| {
        with_answers(answers, |answers| {
            answers?.layers.iter().position(|layer| Some(&layer.id) == piece.layer.as_ref())
        })
    });
    parts.extend(place.map(|place| untrack(|| layer_name(desk, answers, place))));
    if piece.kind == EvidenceKind::DrainCheck {
        let seen = if piece.grains { Label::EvidenceGrains } else { Label::EvidenceNoGrains };
        parts.push(desk.label(seen).to_owned());
    }
    parts.join(" · ")
}
