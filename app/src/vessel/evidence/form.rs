//! The form that writes down what was seen.

use std::rc::Rc;

use bedwright_calc::fill::Role;
use bedwright_job::Edit;
use bedwright_job::entry::{Dimension, Entry, Unit};
use bedwright_job::evidence::{Evidence, EvidenceKind};
use bedwright_job::id::Id;
use bedwright_job::words::{Label, choices};
use leptos::prelude::*;

use super::layer_name;
use crate::desk::{Answers, Desk, new_id, today, with_answers};
use crate::parts::choice::choice;
use crate::parts::live::{El, button, el};
use crate::parts::signal::{Held, Kept};
use crate::vessel::number_line::NumberLine;

/// What is being written down, until it is added.
#[derive(Clone, Copy)]
struct Draft {
    desk: Desk,
    answers: Answers,
    kind: Held<usize>,
    /// Which of the media layers, counted from the top.
    layer: Held<usize>,
    grains: Held<bool>,
    flow: Held<Option<Entry>>,
    temperature: Held<Option<Entry>>,
    minutes: Held<Option<Entry>>,
    expansion: Held<Option<Entry>>,
    drop: Held<Option<Entry>>,
    told: Held<bool>,
}

impl Draft {
    fn kind(self) -> EvidenceKind {
        EvidenceKind::ALL.get(self.kind.get()).copied().unwrap_or(EvidenceKind::DrainCheck)
    }

    fn is(self, kind: EvidenceKind) -> bool {
        self.kind() == kind
    }

    /// The media layers, the top one first: place in the plan and id.
    fn media(self) -> Vec<(usize, Id)> {
        with_answers(self.answers, |answers| {
            let Some(answers) = answers else { return Vec::new() };
            let layers = answers.planned.iter().zip(&answers.layers).enumerate().rev();
            let media = layers.filter(|(_, (planned, _))| planned.role == Role::Media);
            media.map(|(place, (_, layer))| (place, layer.id.clone())).collect()
        })
    }

    /// An entry that makes sense.
    fn read(place: Held<Option<Entry>>, wanted: Dimension) -> Option<Entry> {
        place.get_untracked().filter(|entry| entry.understood().is_ok_and(|read| read.dimension == wanted))
    }

    /// What was written down; none where something is missing.
    fn piece(self, vessel: Id) -> Option<Evidence> {
        let kind = untrack(|| self.kind());
        let of_layer = kind.is_of_layer();
        let dimension = if of_layer { Dimension::FlowPerArea } else { Dimension::VolumeFlow };
        let asked = |so: bool, place: Held<Option<Entry>>, wanted: Dimension| {
            if so { Draft::read(place, wanted).map(Some) } else { Some(None) }
        };
        let drain = kind == EvidenceKind::DrainCheck;
        let layer = if of_layer {
            let (_, layer) = untrack(|| self.media()).into_iter().nth(self.layer.get_untracked())?;
            Some(layer)
        } else {
            None
        };
        Some(Evidence {
            id: new_id(),
            kind,
            day: today(),
            vessel,
            layer,
            flow: Draft::read(self.flow, dimension)?,
            temperature: Draft::read(self.temperature, Dimension::Temperature)?,
            minutes: asked(drain, self.minutes, Dimension::Time)?,
            grains: drain && self.grains.get_untracked(),
            expansion: asked(of_layer, self.expansion, Dimension::Ratio)?,
            drop: asked(kind == EvidenceKind::CleanDrop, self.drop, Dimension::Pressure)?,
            of_visit: false,
        })
    }

    /// An entry of the form.
    fn line(self, id: &str, label: Label, dimension: Dimension, usual: Unit, place: Held<Option<Entry>>) -> El {
        NumberLine {
            id: id.to_owned(),
            label: self.desk.label(label),
            hint: "",
            units: Unit::of(dimension),
            usual,
            entry: Rc::new(move || place.get()),
            misread: Rc::new(move || place.get().and_then(|entry| entry.understood().err())),
            problem: Rc::new(|| None),
            put: Rc::new(move |entry| place.set(entry)),
            assumed: Rc::new(|| None),
            standing: None,
        }
        .show(self.desk)
    }
}

/// The form.
pub(super) fn form(desk: Desk, vessel: Kept<Id>, answers: Answers) -> El {
    let say = move |label: Label| desk.label(label);
    let draft = Draft {
        desk,
        answers,
        kind: Held::new(0),
        layer: Held::new(0),
        grains: Held::new(false),
        flow: desk.draft("flow", None, Option::is_none),
        temperature: desk.draft("temperature", None, Option::is_none),
        minutes: desk.draft("minutes", None, Option::is_none),
        expansion: desk.draft("expansion", None, Option::is_none),
        drop: desk.draft("drop", None, Option::is_none),
        told: Held::new(false),
    };
    let (degree, flow, rate, pressure) = if desk.manner().metric {
        (Unit::Celsius, Unit::LitrePerMinute, Unit::MetrePerHour, Unit::Bar)
    } else {
        (Unit::Fahrenheit, Unit::UsGallonPerMinute, Unit::UsGallonPerMinuteSquareFoot, Unit::Psi)
    };
    let add = move || {
        let Some(piece) = draft.piece(vessel.get()) else { return draft.told.set(true) };
        desk.edit(Edit::AddRecord(piece.record()));
        for place in [draft.flow, draft.temperature, draft.minutes, draft.expansion, draft.drop] {
            place.set(None);
        }
        draft.told.set(false);
        desk.turned.update(|n| *n = n.wrapping_add(1));
    };
    let of_drain = move || {
        let names = [Label::EvidenceNoGrains, Label::EvidenceGrains];
        vec![
            draft.line("seen-flow", Label::FlowWord, Dimension::VolumeFlow, flow, draft.flow),
            draft.line("seen-minutes", Label::MinutesWord, Dimension::Time, Unit::Minute, draft.minutes),
            choice(
                say(Label::Drain),
                move || names.iter().map(|label| say(*label).to_owned()).collect(),
                move || Some(usize::from(draft.grains.get())),
                move |at| draft.grains.set(at == 1),
            ),
        ]
    };
    let of_point = move || {
        vec![
            draft.line("seen-rate", Label::FlowPerAreaWord, Dimension::FlowPerArea, rate, draft.flow),
            draft.line("seen-expansion", Label::ExpansionWord, Dimension::Ratio, Unit::Percent, draft.expansion),
        ]
    };
    // One layer needs no choice.
    let of_layer = move || {
        vec![choice(
            say(Label::LayerWord),
            move || draft.media().iter().map(|(place, _)| layer_name(desk, answers, *place)).collect(),
            move || Some(draft.layer.get()),
            move |at| draft.layer.set(at),
        )]
    };
    let of_drop = move || {
        vec![
            draft.line("seen-service-flow", Label::FlowWord, Dimension::VolumeFlow, flow, draft.flow),
            draft.line("seen-drop", Label::DropWord, Dimension::Pressure, pressure, draft.drop),
        ]
    };
    let kind = choice(
        say(Label::EvidenceKindTitle),
        move || EvidenceKind::ALL.iter().map(|kind| say(choices::evidence(*kind)).to_owned()).collect(),
        move || Some(draft.kind.get()),
        move |at| {
            draft.kind.set(at);
            draft.flow.set(None);
        },
    );
    let temperature =
        draft.line("seen-temperature", Label::TemperatureWord, Dimension::Temperature, degree, draft.temperature);
    let hint =
        move || if draft.is(EvidenceKind::CleanDrop) { say(Label::EvidenceDropHint).to_owned() } else { String::new() };
    let told = move || if draft.told.get() { say(Label::EvidenceIncomplete).to_owned() } else { String::new() };
    el("div", "evidence-form")
        .kid(
            el("div", "entries")
                .kid(kind)
                .when(move || draft.kind().is_of_layer() && draft.media().len() > 1, of_layer)
                .kid(temperature)
                .when(move || draft.is(EvidenceKind::DrainCheck), of_drain)
                .when(move || draft.kind().is_of_layer(), of_point)
                .when(move || draft.is(EvidenceKind::CleanDrop), of_drop),
        )
        .kid(el("p", "evidence-why survey-missing").says(hint))
        .kid(el("p", "entry-message").set("role", "alert").says(told))
        .kid(button("", say(Label::EvidenceAdd), add))
}
