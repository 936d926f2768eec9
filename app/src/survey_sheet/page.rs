//! The survey sheet's screen: which vessel, blank or filled, and the sheets.

use bedwright_job::id::Id;
use bedwright_job::papers::{survey_sheet, vessel_name};
use bedwright_job::words::Label;
use leptos::prelude::*;

use crate::desk::{Desk, today};
use crate::parts::choice::{choice, pick};
use crate::parts::live::{El, el};
use crate::parts::sheet::printing;
use crate::parts::signal::Held;

/// Whom a sheet is for.
#[derive(Clone, PartialEq, Eq)]
enum Whose {
    /// One sheet after the other for every vessel of the job.
    All,
    /// One vessel.
    One(Id),
    /// A vessel nobody has entered.
    Unknown,
}

/// The survey sheet.
pub fn survey_sheet_page(desk: Desk) -> El {
    let say = move |label: Label| desk.label(label);
    let manner = desk.manner();
    let vessels = move || -> Vec<Id> {
        desk.of_job(|job| job.survey.body.vessels.iter().map(|vessel| vessel.id.clone()).collect())
    };
    let all = move || -> Vec<Whose> {
        let vessels = vessels();
        let together = if vessels.is_empty() { None } else { Some(Whose::All) };
        together.into_iter().chain(vessels.into_iter().map(Whose::One)).chain([Whose::Unknown]).collect()
    };
    let none = untrack(vessels).is_empty();
    let whose = Held::new(if none { Whose::Unknown } else { Whose::All });
    let filled = Held::new(!none);
    let name = move |whose: &Whose| match whose {
        Whose::All => say(Label::AllVessels).to_owned(),
        Whose::One(id) => desk.of_job(|job| vessel_name(job, id, manner)),
        Whose::Unknown => say(Label::AnyVessel).to_owned(),
    };
    let papers = move || {
        let (filled, today, manner) = (filled.get(), today(), desk.paper_manner());
        let (wanted, filled) = match whose.get() {
            Whose::All => (vessels().into_iter().map(Some).collect(), filled),
            Whose::One(id) => (vec![Some(id)], filled),
            Whose::Unknown => (vec![None], false),
        };
        desk.of_job(|job| {
            wanted.iter().map(|id: &Option<Id>| survey_sheet(job, id.as_ref(), manner, &today, filled)).collect()
        })
    };
    let choices = el("div", "survey-sheet-choices")
        .kid(choice(
            say(Label::Vessel),
            move || all().iter().map(name).collect(),
            move || whose.with(|whose| all().iter().position(|there| there == whose)),
            move |at| {
                if let Some(chosen) = untrack(all).into_iter().nth(at) {
                    whose.set(chosen);
                }
            },
        ))
        .when(
            move || whose.with(|whose| *whose != Whose::Unknown),
            move || {
                let kinds = [say(Label::Blank), say(Label::Filled)];
                let now = move || Some(usize::from(filled.get()));
                vec![pick(say(Label::SurveySheet), "survey-form", &kinds, now, move |at| filled.set(at == 1))]
            },
        );
    el("main", "page survey-sheet")
        .kid(el("h1", "page-title").text(say(Label::SurveySheet)))
        .kid(choices)
        .kid(printing(desk, papers))
}
