//! Which vessels would do for a flow: what is asked, what suits, what doesn't and why.

use std::rc::Rc;
use std::sync::Arc;

use bedwright_calc::hydraulics::{Arrangement, Purpose};
use bedwright_calc::material::{Kind, Material};
use bedwright_job::Edit;
use bedwright_job::answers::search::{SearchAnswers, SearchAsked, search_answers};
use bedwright_job::edit::{SearchChoice, WaterOf};
use bedwright_job::entry::Unit;
use bedwright_job::field::WaterField;
use bedwright_job::sections::search::VesselSearch;
use bedwright_job::sections::site::{ARRANGEMENTS, WaterSource};
use bedwright_job::sections::survey::{Standing, SurveyEntry};
use bedwright_job::words::label::SearchLabel;
use bedwright_job::words::{Label, choices};
use leptos::prelude::*;

use super::found::found;
use crate::desk::Desk;
use crate::parts::choice::{choice, pick};
use crate::parts::live::{El, el};
use crate::parts::signal::Worked;
use crate::vessel::number_line::{NumberLine, StandingMark};

/// What was found, kept up to date while it is looked at.
pub(super) type Answers = Worked<Option<Arc<SearchAnswers>>>;

/// The search of the open job.
#[derive(Clone, Copy)]
struct There {
    desk: Desk,
    answers: Answers,
}

impl There {
    fn search<T: Default>(self, read: impl FnOnce(&VesselSearch) -> T) -> T {
        self.desk.of_job(|job| read(&job.search.body))
    }

    fn choose(self, choice: SearchChoice) {
        self.desk.edit(Edit::Search(choice));
    }

    fn typed(self, of: &WaterOf, field: WaterField) -> Option<SurveyEntry> {
        self.desk.of_job(|job| {
            let entries = if *of == WaterOf::Site { &job.site.body.entries } else { &job.search.body.entries };
            entries.get(field).cloned()
        })
    }

    fn read<T>(self, read: impl FnOnce(&SearchAnswers) -> Option<T>) -> Option<T> {
        self.answers.get().and_then(|answers| read(&answers))
    }
}

/// The search.
pub fn search_page(desk: Desk) -> El {
    let asked = Worked::new(move || desk.open().map(|job| SearchAsked::of(&job)));
    let answers = Worked::new(move || asked.with(|asked| asked.as_ref().map(|asked| Arc::new(search_answers(asked)))));
    let there = There { desk, answers };
    el("main", "page finder")
        .kid(el("h1", "page-title").text(desk.label(SearchLabel::Title)))
        .kid(el("p", "survey-missing").text(desk.label(SearchLabel::Hint)))
        .kid(asks(there))
        .kid(water(there))
        .kid(found(desk, answers))
}

/// Materials of a kind, by id.
fn materials(kind: Kind) -> Vec<Material> {
    Material::all().filter(|material| material.kind == kind).collect()
}

fn asks(there: There) -> El {
    let desk = there.desk;
    let manner = desk.manner();
    let purposes = move || Purpose::ALL.iter().map(|one| desk.label(choices::purpose(*one)).to_owned()).collect();
    let arrangements =
        move || ARRANGEMENTS.iter().map(|one| desk.label(choices::arrangement(*one)).to_owned()).collect();
    let media: Rc<Vec<String>> = Rc::new(materials(Kind::Media).into_iter().map(|one| one.id.to_string()).collect());
    let gravels: Rc<Vec<String>> = Rc::new(
        std::iter::once(String::new())
            .chain(materials(Kind::Gravel).into_iter().map(|one| one.id.to_string()))
            .collect(),
    );
    let purpose = choice(
        desk.label(Label::PurposeTitle),
        purposes,
        move || {
            let now = desk.of_job(|job| Some(job.search.body.purpose))?;
            Purpose::ALL.iter().position(|one| *one == now)
        },
        move |at| {
            if let Some(purpose) = Purpose::ALL.get(at) {
                there.choose(SearchChoice::Purpose(*purpose));
            }
        },
    );
    let (names, ids, chosen) = (media.clone(), media.clone(), media);
    let media = choice(
        desk.label(SearchLabel::Media),
        move || names.iter().map(|id| manner.material(id)).collect(),
        move || there.search(|search| ids.iter().position(|id| id == search.media_id())),
        move |at| {
            if let Some(id) = chosen.get(at) {
                there.choose(SearchChoice::Media(id.clone()));
            }
        },
    );
    let (names, ids, chosen) = (gravels.clone(), gravels.clone(), gravels);
    let none = desk.label(SearchLabel::NoUnderbed);
    let underbed = choice(
        desk.label(SearchLabel::Underbed),
        move || names.iter().map(|id| if id.is_empty() { none.to_owned() } else { manner.material(id) }).collect(),
        move || there.search(|search| ids.iter().position(|id| *id == search.underbed)),
        move |at| {
            if let Some(id) = chosen.get(at) {
                there.choose(SearchChoice::Underbed(id.clone()));
            }
        },
    );
    let arrangement = choice(
        desk.label(Label::ArrangementTitle),
        arrangements,
        move || {
            let now = desk.of_job(|job| Some(job.search.body.arrangement)).unwrap_or(Arrangement::Parallel);
            ARRANGEMENTS.iter().position(|one| *one == now)
        },
        move |at| {
            if let Some(arrangement) = ARRANGEMENTS.get(at) {
                there.choose(SearchChoice::Arrangement(*arrangement));
            }
        },
    );
    let riser = choice(
        desk.label(SearchLabel::Riser),
        move || [SearchLabel::RiserStraight, SearchLabel::RiserInParts].map(|one| desk.label(one).to_owned()).into(),
        move || Some(usize::from(there.search(|search| search.riser_in_parts))),
        move |at| there.choose(SearchChoice::RiserInParts(at == 1)),
    );
    let lines = VesselSearch::ASKED.iter().map(|field| line(there, WaterOf::Search, *field)).collect();
    el("section", "")
        .set("aria-labelledby", "search-asked")
        .kid(el("h2", "rule").set("id", "search-asked").text(desk.label(SearchLabel::Asked)))
        .kid(el("div", "choices").kids(vec![purpose, media, underbed, arrangement, riser]))
        .kid(el("div", "entries").kids(lines))
}

fn water(there: There) -> El {
    let desk = there.desk;
    let names: Vec<&str> = WaterSource::ALL.iter().map(|source| desk.label(choices::source(*source))).collect();
    let now = move || {
        let source = desk.of_job(|job| Some(job.site.body.source))?;
        WaterSource::ALL.iter().position(|one| *one == source)
    };
    let take = move |at: usize| {
        if let Some(source) = WaterSource::ALL.get(at) {
            desk.edit(Edit::Source(*source));
        }
    };
    let of_site = [WaterField::TemperatureLow, WaterField::TemperatureHigh, WaterField::BackwashAvailable];
    let lines = of_site.iter().map(|field| line(there, WaterOf::Site, *field)).collect();
    el("section", "")
        .set("aria-labelledby", "site-water")
        .kid(el("h2", "rule").set("id", "site-water").text(desk.label(Label::SiteWater)))
        .kid(el("p", "survey-missing").text(desk.label(Label::SiteWaterHint)))
        .kid(pick(desk.label(Label::WaterFrom), "water-source", &names, now, take))
        .kid(el("div", "entries").kids(lines))
}

fn line(there: There, of: WaterOf, field: WaterField) -> El {
    let desk = there.desk;
    let manner = desk.manner();
    let of = Rc::new(of);
    let id = [if *of == WaterOf::Site { "site-" } else { "search-" }, field.id()].concat();
    let hint = match field {
        WaterField::FlowControl => desk.label(SearchLabel::FlowControlHint),
        WaterField::CeilingClearance => desk.label(SearchLabel::ClearanceHint),
        other => manner.water_hint(other),
    };
    let put = {
        let of = of.clone();
        Rc::new(move |entry: Option<SurveyEntry>| desk.edit(Edit::Water { of: (*of).clone(), field, entry }))
    };
    let standing = {
        let of = of.clone();
        move || there.typed(&of, field).map_or(Standing::Measured, |typed| typed.standing)
    };
    let turn = {
        let (of, put) = (of.clone(), put.clone());
        move || {
            let Some(typed) = untrack(|| there.typed(&of, field)) else { return };
            let standing = if typed.standing == Standing::Measured { Standing::Assumed } else { Standing::Measured };
            put(Some(SurveyEntry { standing, ..typed }));
        }
    };
    let (kept, entry_of, misread_of, problem_of, assumed_of) =
        (standing.clone(), of.clone(), of.clone(), of.clone(), of.clone());
    // What the site gives is measured or assumed; what is wished for is neither.
    let mark = (*of == WaterOf::Site)
        .then(|| StandingMark { measured: Rc::new(move || standing() == Standing::Measured), turn: Rc::new(turn) });
    NumberLine {
        id,
        label: if field == WaterField::FlowControl {
            desk.label(SearchLabel::OtherFlowControl)
        } else {
            manner.water_field(field)
        },
        hint,
        units: Unit::of(field.dimension()),
        usual: field.usual_unit(manner.metric),
        entry: Rc::new(move || there.typed(&entry_of, field).map(|typed| typed.entry)),
        misread: Rc::new(move || {
            there.read(|answers| {
                let misread = &answers.reading.misread;
                misread.iter().find(|(at, known, _)| *known == field && *at == *misread_of).map(|(.., why)| why.clone())
            })
        }),
        problem: Rc::new(move || {
            there.read(|answers| answers.problem_of(&problem_of, field).map(|problem| manner.problem(problem)))
        }),
        put: Rc::new(move |entry| put(entry.map(|entry| SurveyEntry { entry, standing: untrack(&kept) }))),
        assumed: Rc::new(move || {
            there.read(|answers| {
                let assumed = &answers.reading.assumed;
                assumed.iter().find(|(at, known, _)| *known == field && *at == *assumed_of).map(|(.., si)| *si)
            })
        }),
        standing: mark,
    }
    .show(desk)
}
