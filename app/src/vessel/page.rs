//! The drawing beside the entries; verdicts first.

use std::rc::Rc;
use std::sync::Arc;

use bedwright_calc::quantity::{Mark, Verdict};
use bedwright_job::Edit;
use bedwright_job::drawing::{Besides, Form, section_with};
use bedwright_job::id::Id;
use bedwright_job::words::{Label, VerdictWords};

use super::backwash::backwash;
use super::layers::layers;
use super::life::life;
use super::picture::{filed, loaded_of};
use super::results::results;
use super::service::service;
use super::survey::survey;
use super::water::water;
use crate::desk::{Answers, Desk, Water, with_answers, with_water};
use crate::parts::drawing::section_drawing;
use crate::parts::drawing_file::drawing_file;
use crate::parts::live::{El, Shared, button, el};
use crate::parts::signal::{Held, Kept, Worked};
use crate::parts::verdicts::{Sign, verdicts};
use crate::route::Route;

/// From this width on the drawing is drawn in full.
const WIDE: &str = "(min-width: 60rem)";

/// The vessel of this id.
pub fn vessel_page(desk: Desk, id: &Id) -> El {
    let answers = desk.answers(id);
    let there = id.clone();
    let id = id.clone();
    let is_there = move || desk.of_job(|job| job.vessel(&there).is_some());
    let gone = is_there.clone();
    el("main", "vessel")
        .when(is_there, move || screen(desk, &id, answers))
        .when(move || !gone(), move || vec![el("p", "page").text(desk.label(Label::JobNotFound))])
}

fn screen(desk: Desk, id: &Id, answers: Answers) -> Vec<El> {
    let selected = Held::new(None::<usize>);
    let wide = Held::new(bedwright_edge::display::matches(WIDE));
    // It goes with the screen.
    Kept::new(bedwright_edge::display::on_match(WIDE, move |now| wide.set(now)));
    let manner = desk.manner();
    let flow = desk.water(id);
    let signed = {
        let id = id.clone();
        Worked::new(move || loaded_of(desk, &id, None))
    };
    let drawing = Worked::new(move || {
        let form = if wide.get() {
            Form::Full { width: 420.0, height: 640.0 }
        } else {
            Form::Strip { width: 104.0, height: 520.0 }
        };
        let besides = with_water(flow, |water| Besides::new(water, signed.get()));
        with_answers(answers, |answers| Some(Arc::new(section_with(answers?, &manner, form, &besides))))
    });
    let found: Shared<Vec<(Sign, VerdictWords)>> = Rc::new(move || said(desk, answers, flow));
    let any = found.clone();
    let remove = {
        let id = id.clone();
        move || {
            let back = desk.open_now().map(|job| job.id.clone());
            desk.edit(Edit::RemoveVessel(id.clone()));
            if let Some(job) = back {
                desk.go(&Route::Job(job));
            }
        }
    };
    let name = {
        let id = id.clone();
        move || super::name_of(desk, &id)
    };
    let verdict_part = move || {
        let part = el("section", "")
            .set("aria-labelledby", "verdicts")
            .kid(el("h2", "rule").set("id", "verdicts").text(desk.label(Label::Verdicts)));
        vec![verdicts(part, found.clone(), desk.label(Label::AllFine))]
    };
    let life_of = id.clone();
    let aside = el("aside", "vessel-drawing")
        .when(move || drawing.with(Option::is_some), move || vec![section_drawing(move || drawing.get(), selected)])
        .kid(drawing_file(desk, "", filed(desk, id, None)));
    let entries = el("div", "vessel-entries")
        .kid(el("h1", "page-title").says(name))
        .when(move || !any().is_empty(), verdict_part)
        .kid(survey(desk, id, answers))
        .kid(layers(desk, id, answers, selected))
        .kid(water(desk, id, flow))
        .kid(backwash(desk, id, flow, answers))
        .kid(service(desk, flow))
        .kid(life(desk, &life_of, flow))
        .kid(results(desk, answers, flow))
        .kid(crate::service::card_links(desk, id))
        .kid(el("div", "actions").kid(button("quiet", desk.label(Label::RemoveVessel), remove)));
    vec![aside, entries]
}

/// The verdicts of a vessel in words.
fn said(desk: Desk, answers: Answers, water: Water) -> Vec<(Sign, VerdictWords)> {
    let manner = desk.manner();
    with_answers(answers, |answers| {
        let Some((answers, plan)) = answers.and_then(|answers| Some((answers, answers.plan.as_ref()?))) else {
            return Vec::new();
        };
        let names: Vec<String> = answers.planned.iter().map(|layer| manner.material(&layer.material.id)).collect();
        // The worst first, whether grains or water say so.
        let mut all: Vec<Verdict> = plan.verdicts.clone();
        with_water(water, |water| {
            for verdict in water.map_or(&[][..], |water| &water.verdicts) {
                let at = all.partition_point(|there| there.mark >= verdict.mark);
                all.insert(at, verdict.clone());
            }
        });
        all.iter()
            .map(|verdict| {
                let sign = match verdict.mark {
                    Mark::Fine => Sign::Fine,
                    Mark::SetOnSite => Sign::SetOnSite,
                    Mark::Caution => Sign::Caution,
                    Mark::Stop => Sign::Stop,
                };
                (sign, manner.verdict(verdict, &names))
            })
            .collect()
    })
}
