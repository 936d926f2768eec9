//! What somebody saw of the bed: added here, withdrawn here, never changed.

use std::rc::Rc;
use std::sync::Arc;

use bedwright_calc::fill::Role;
use bedwright_job::Edit;
use bedwright_job::entry::{Dimension, Entry, Unit};
use bedwright_job::evidence::{Evidence, EvidenceKind, withdrawal};
use bedwright_job::id::Id;
use bedwright_job::words::{Label, choices};
use leptos::prelude::*;

use super::number_line::NumberLine;
use crate::desk::{Answers, Desk, Water, new_id, today, with_answers, with_water};
use crate::parts::choice::choice;
use crate::parts::live::{El, button, el};
use crate::parts::signal::{Held, Kept};

/// What is being written down, until it is added.
#[derive(Clone, Copy)]
struct Draft {
    kind: Held<usize>,
    grains: Held<bool>,
    flow: Held<Option<Entry>>,
    temperature: Held<Option<Entry>>,
    minutes: Held<Option<Entry>>,
    expansion: Held<Option<Entry>>,
    told: Held<bool>,
}

impl Draft {
    fn kind(self) -> EvidenceKind {
        EvidenceKind::ALL.get(self.kind.get()).copied().unwrap_or(EvidenceKind::DrainCheck)
    }

    fn is_drain(self) -> bool {
        self.kind() == EvidenceKind::DrainCheck
    }
}

/// What was seen, and a form to add to it.
pub fn evidence(desk: Desk, vessel: Kept<Id>, water: Water, answers: Answers) -> El {
    let say = move |label: Label| desk.label(label);
    let seen = move || {
        with_water(water, |water| water.map(|water| water.evidence.clone())).unwrap_or_else(|| Arc::new(Vec::new()))
    };
    let ids = move || seen().iter().map(|piece| piece.id.to_string()).collect::<Vec<_>>();
    let standing = move || {
        with_water(water, |water| {
            let Some(water) = water else { return String::new() };
            let aside = match water.lines.set_aside {
                0 => String::new(),
                count => [" ", &count.to_string(), " ", say(Label::EvidenceSetAside), "."].concat(),
            };
            if water.lines.used == 0 {
                return [say(Label::LinesUnknown), &aside].concat();
            }
            let days: Vec<&str> = water.evidence.iter().map(|piece| piece.day.as_str()).collect();
            let mut text = say(Label::LinesKnown).to_owned();
            text.push(' ');
            text.push_str(&water.lines.used.to_string());
            text.push_str(" · ");
            text.push_str(&days.join(", "));
            text.push_str(&aside);
            text
        })
    };
    let list = el("ul", "evidence-list").each(ids, move |id| {
        let id = Id::new(id);
        let piece = untrack(seen).iter().find(|piece| piece.id == id).cloned();
        // What a visit says of the drain goes with the visit.
        let of_visit = piece.as_ref().is_some_and(|piece| piece.of_visit);
        let text = piece.map(|piece| sentence(desk, &piece)).unwrap_or_default();
        let withdraw = move || {
            desk.edit(Edit::AddRecord(withdrawal(new_id(), &id, &today())));
        };
        let line = el("li", "").kid(el("span", "").text(&text));
        if of_visit {
            return line.kid(el("span", "").text(say(Label::EvidenceOfVisit)));
        }
        line.kid(button("quiet", say(Label::EvidenceWithdraw), withdraw))
    });
    el("details", "how")
        .kid(el("summary", "").kid(el("span", "how-name").text(say(Label::EvidenceTitle))))
        .kid(el("p", "survey-missing").text(say(Label::EvidenceHint)))
        .kid(el("p", "").set("role", "status").says(standing))
        .kid(list)
        .kid(form(desk, vessel, answers))
}

/// One piece of evidence in a line.
fn sentence(desk: Desk, piece: &Evidence) -> String {
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
    if piece.kind == EvidenceKind::DrainCheck {
        let seen = if piece.grains { Label::EvidenceGrains } else { Label::EvidenceNoGrains };
        parts.push(desk.label(seen).to_owned());
    }
    parts.join(" · ")
}

fn form(desk: Desk, vessel: Kept<Id>, answers: Answers) -> El {
    let manner = desk.manner();
    let say = move |label: Label| desk.label(label);
    let draft = Draft {
        kind: Held::new(0),
        grains: Held::new(false),
        flow: Held::new(None),
        temperature: Held::new(None),
        minutes: Held::new(None),
        expansion: Held::new(None),
        told: Held::new(false),
    };
    let line = move |id: &str, label: Label, units: &'static [Unit], usual: Unit, place: Held<Option<Entry>>| {
        NumberLine {
            id: id.to_owned(),
            label: say(label),
            hint: "",
            units,
            usual,
            entry: Rc::new(move || place.get()),
            misread: Rc::new(move || place.get().and_then(|entry| entry.understood().err())),
            problem: Rc::new(|| None),
            put: Rc::new(move |entry| place.set(entry)),
            assumed: Rc::new(|| None),
            standing: None,
        }
        .show(desk)
    };
    let (degree, flow, rate) = if manner.metric {
        (Unit::Celsius, Unit::LitrePerMinute, Unit::MetrePerHour)
    } else {
        (Unit::Fahrenheit, Unit::UsGallonPerMinute, Unit::UsGallonPerMinuteSquareFoot)
    };
    let kinds = move || EvidenceKind::ALL.iter().map(|kind| say(choices::evidence(*kind)).to_owned()).collect();
    let add = move || {
        let drain = untrack(|| draft.is_drain());
        let dimension = if drain { Dimension::VolumeFlow } else { Dimension::FlowPerArea };
        let of = |place: Held<Option<Entry>>, wanted: Dimension| {
            place.get_untracked().filter(|entry| entry.understood().is_ok_and(|read| read.dimension == wanted))
        };
        let (minutes, expansion) = (of(draft.minutes, Dimension::Time), of(draft.expansion, Dimension::Ratio));
        let layer = with_answers(answers, |answers| {
            let answers = answers?;
            let top = answers.planned.iter().rposition(|layer| layer.role == Role::Media)?;
            answers.layers.get(top).map(|layer| layer.id.clone())
        });
        let (Some(flow), Some(temperature)) =
            (of(draft.flow, dimension), of(draft.temperature, Dimension::Temperature))
        else {
            return draft.told.set(true);
        };
        if drain && minutes.is_none() || !drain && (expansion.is_none() || layer.is_none()) {
            return draft.told.set(true);
        }
        let piece = Evidence {
            id: new_id(),
            kind: untrack(|| draft.kind()),
            day: today(),
            vessel: vessel.get(),
            layer: layer.filter(|_| !drain),
            flow,
            temperature,
            minutes: minutes.filter(|_| drain),
            grains: drain && draft.grains.get_untracked(),
            expansion: expansion.filter(|_| !drain),
            of_visit: false,
        };
        desk.edit(Edit::AddRecord(piece.record()));
        for place in [draft.flow, draft.temperature, draft.minutes, draft.expansion] {
            place.set(None);
        }
        draft.told.set(false);
        desk.turned.update(|n| *n = n.wrapping_add(1));
    };
    let grains = move || {
        let names = [Label::EvidenceNoGrains, Label::EvidenceGrains];
        choice(
            say(Label::Drain),
            move || names.iter().map(|label| say(*label).to_owned()).collect(),
            move || Some(usize::from(draft.grains.get())),
            move |at| draft.grains.set(at == 1),
        )
    };
    let of_drain = move || {
        vec![
            line("seen-flow", Label::FlowWord, Unit::of(Dimension::VolumeFlow), flow, draft.flow),
            line("seen-minutes", Label::MinutesWord, Unit::of(Dimension::Time), Unit::Minute, draft.minutes),
            grains(),
        ]
    };
    let of_point = move || {
        vec![
            line("seen-rate", Label::FlowPerAreaWord, Unit::of(Dimension::FlowPerArea), rate, draft.flow),
            line("seen-expansion", Label::ExpansionWord, Unit::of(Dimension::Ratio), Unit::Percent, draft.expansion),
        ]
    };
    let kind = choice(
        say(Label::EvidenceKindTitle),
        kinds,
        move || Some(draft.kind.get()),
        move |at| {
            draft.kind.set(at);
            draft.flow.set(None);
        },
    );
    let temperature =
        line("seen-temperature", Label::TemperatureWord, Unit::of(Dimension::Temperature), degree, draft.temperature);
    el("div", "evidence-form")
        .kid(
            el("div", "entries")
                .kid(kind)
                .kid(temperature)
                .when(move || draft.is_drain(), of_drain)
                .when(move || !draft.is_drain(), of_point),
        )
        .kid(
            el("p", "entry-message")
                .set("role", "alert")
                .says(move || if draft.told.get() { say(Label::EvidenceIncomplete).to_owned() } else { String::new() }),
        )
        .kid(button("", say(Label::EvidenceAdd), add))
}
