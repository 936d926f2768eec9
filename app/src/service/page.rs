//! The card as a whole, and what is worked out for it.

use std::sync::Arc;

use bedwright_calc::quantity::Pressure;
use bedwright_job::Job;
use bedwright_job::answers::VesselAnswers;
use bedwright_job::answers::water::{bed_expected, clean_loss};
use bedwright_job::care::bed_life::Lives;
use bedwright_job::care::card::{Card, card};
use bedwright_job::care::due::purpose_of;
use bedwright_job::care::happened::{Place, follows};
use bedwright_job::day::Day;
use bedwright_job::id::Id;
use bedwright_job::papers::{Paper, service_card};
use bedwright_job::words::{CareLabel, Label};
use leptos::prelude::*;

use super::actions::actions;
use super::expected::expected;
use super::front::{bed, front, questions};
use super::over_time::over_time;
use super::readings::visits;
use super::spent::{spent, surface};
use super::visit::visit;
use crate::desk::{Desk, today};
use crate::parts::live::{El, el};
use crate::parts::sheet::printing;
use crate::parts::signal::{Kept, Worked};
use crate::route::Route;

/// What the parts of the card share. A handle.
#[derive(Clone, Copy)]
pub(super) struct Look {
    pub(super) desk: Desk,
    pub(super) place: Kept<Place>,
    pub(super) card: Worked<Option<Arc<Card>>>,
    /// The pressure the clean bed loses, where that is known.
    pub(super) clean: Worked<Option<Pressure>>,
}

/// Today, as a day; the first of all days where the clock says none.
pub(super) fn today_day() -> Day {
    Day::of(&today()).unwrap_or(Day::FIRST)
}

impl Look {
    /// Reads the card; one compiled copy of the reading for all who ask.
    pub(super) fn with<T: Default>(self, read: impl FnOnce(&Card) -> T) -> T {
        #[inline(never)]
        fn now(card: Worked<Option<Arc<Card>>>) -> Option<Arc<Card>> {
            card.get()
        }
        now(self.card).map(|card| read(&card)).unwrap_or_default()
    }

    /// A fixed text.
    pub(super) fn say(self, label: CareLabel) -> &'static str {
        self.desk.label(label)
    }

    /// The card as it would be with another job, for looking before something is added.
    pub(super) fn of(self, job: &Job) -> Card {
        let place = self.place.get();
        let answers = self.desk.answers(&place.vessel);
        let answers = untrack(|| answers.get());
        worked_out(job, &place, answers.as_deref())
    }
}

fn worked_out(job: &Job, place: &Place, answers: Option<&VesselAnswers>) -> Card {
    let today = today_day();
    let worked = answers.and_then(|answers| bed_expected(job, answers));
    card(job, &Lives::of(job, today), place, today, answers, worked.as_ref(), purpose_of(job, &place.vessel))
}

/// The service card of a tag.
pub fn card_page(desk: Desk, vessel: &Id, tag: &str) -> El {
    let known = desk.open_now().and_then(|job| {
        let there = job.vessel(vessel)?;
        (tag.is_empty() || there.tags.iter().any(|known| known.trim() == tag)).then_some(())
    });
    if known.is_none() {
        return el("main", "page").kid(el("p", "").text(desk.label(Label::JobNotFound)));
    }
    let place = Place { vessel: vessel.clone(), tag: tag.to_owned() };
    let kept = Kept::new(place.clone());
    let answers = desk.answers(vessel);
    let card = Worked::new(move || {
        let job = desk.open()?;
        answers.with(|answers| Some(Arc::new(worked_out(&job, &place, answers.as_deref()))))
    });
    let clean = Worked::new(move || {
        let job = desk.open()?;
        answers.with(|answers| clean_loss(&job, answers.as_deref()?).map(|loss| loss.value))
    });
    let look = Look { desk, place: kept, card, clean };
    let name = if tag.is_empty() { look.say(CareLabel::Untagged) } else { tag };
    let (job, id) = (desk.open_now().map(|job| job.id.clone()), vessel.clone());
    let to_vessel = job.map(|job| Route::Vessel(job, id).address()).unwrap_or_default();
    let other = desk.of_job(follows).map(|(job, place)| Route::Card(job, place.vessel, place.tag).address());
    let named = vessel.clone();
    let title = el("h1", "page-title").text(name).text(" · ").text(look.say(CareLabel::ServiceCard));
    let sample = move || desk.of_job(|job| job.head.body.sample);
    el("main", "page card")
        .kid(title)
        .when(sample, move || vec![el("p", "sample-mark").text(desk.label(Label::SampleMark))])
        .kid(
            el("p", "card-vessel")
                .kid(el("a", "").set("href", &to_vessel).says(move || crate::vessel::name_of(desk, &named))),
        )
        .kids(
            other
                .map(|address| el("p", "").kid(el("a", "").set("href", &address).text(look.say(CareLabel::OldRecord))))
                .into_iter()
                .collect(),
        )
        .kid(front(look))
        .kid(visit(look))
        .kid(questions(look))
        .kid(bed(look))
        .kid(over_time(look))
        .kid(spent(look))
        .kid(surface(look))
        .kid(visits(look))
        .kid(expected(look))
        .kid(actions(look))
        .kid(printing(desk, move || paper(look)))
}

/// The card on paper, as it stands.
fn paper(look: Look) -> Vec<Paper> {
    let desk = look.desk;
    let Some(job) = desk.open() else { return Vec::new() };
    let clean = look.clean.get();
    look.with(|card| vec![service_card(&job, card, clean, desk.paper_manner(), &today())])
}
