//! The drawing beside the entries; verdicts first.

use std::sync::Arc;

use bedwright_calc::quantity::Mark;
use bedwright_job::Edit;
use bedwright_job::drawing::{Form, section};
use bedwright_job::id::Id;
use bedwright_job::words::{Label, VerdictWords};
use leptos::prelude::*;

use super::layers::Layers;
use super::results::Results;
use super::survey::Survey;
use crate::desk::Desk;
use crate::parts::drawing::SectionDrawing;
use crate::parts::verdicts::{Sign, Verdicts};
use crate::route::Route;

/// The vessel of this id.
#[component]
pub fn VesselPage(id: Id) -> impl IntoView {
    let desk = Desk::of();
    let say = move |label: Label| move || desk.label(label);
    let answers = desk.answers(&id);
    let selected = RwSignal::new(None::<usize>);
    let there = {
        let id = id.clone();
        Memo::new(move |_| desk.job.with(|job| job.as_ref().is_some_and(|job| job.vessel(&id).is_some())))
    };
    let wide = RwSignal::new(bedwright_edge::display::matches("(min-width: 60rem)"));
    let watch =
        StoredValue::new_local(bedwright_edge::display::on_match("(min-width: 60rem)", move |now| wide.set(now)));
    on_cleanup(move || watch.dispose());
    let drawing = Memo::new(move |_| {
        let form = if wide.get() {
            Form::Full { width: 420.0, height: 640.0 }
        } else {
            Form::Strip { width: 104.0, height: 520.0 }
        };
        let manner = desk.manner.get();
        answers.with(|answers| answers.as_ref().map(|answers| Arc::new(section(answers, &manner, form))))
    });
    let drawn = Memo::new(move |_| drawing.with(Option::is_some));
    let verdicts = Memo::new(move |_| {
        let manner = desk.manner.get();
        answers.with(|answers| {
            let Some(answers) = answers else { return Vec::new() };
            let names: Vec<String> = answers.planned.iter().map(|layer| manner.material(&layer.material.id)).collect();
            let plan = answers.plan.as_ref();
            plan.map(|plan| {
                plan.verdicts
                    .iter()
                    .map(|verdict| {
                        let sign = match verdict.mark {
                            Mark::Fine => Sign::Fine,
                            Mark::SetOnSite => Sign::SetOnSite,
                            Mark::Caution => Sign::Caution,
                            Mark::Stop => Sign::Stop,
                        };
                        (sign, manner.verdict(verdict, &names))
                    })
                    .collect::<Vec<(Sign, VerdictWords)>>()
            })
            .unwrap_or_default()
        })
    });
    let remove = {
        let id = id.clone();
        move |_| {
            let back = desk.job.with_untracked(|job| job.as_ref().map(|job| job.id.clone()));
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
    let (for_survey, for_layers) = (id.clone(), id);
    view! {
        <main class="vessel">
            <Show when=move || there.get() fallback=move || view! { <p class="page">{say(Label::JobNotFound)}</p> }>
                <aside class="vessel-drawing">
                    {move || drawn.get().then(|| drawing.get_untracked()).flatten().map(|first| {
                        let drawing = Signal::derive(move || drawing.get().unwrap_or_else(|| first.clone()));
                        view! { <SectionDrawing drawing selected on_select=Callback::new(move |layer| selected.set(Some(layer))) /> }
                    })}
                </aside>
                <div class="vessel-entries">
                    <h1 class="page-title">{name.clone()}</h1>
                    <Show when=move || !verdicts.with(Vec::is_empty)>
                        <section aria-labelledby="verdicts">
                            <h2 class="rule" id="verdicts">{say(Label::Verdicts)}</h2>
                            <Verdicts verdicts fine=desk.label(Label::AllFine) />
                        </section>
                    </Show>
                    <Survey vessel=for_survey.clone() answers />
                    <Layers vessel=for_layers.clone() answers selected />
                    <Results answers />
                    <div class="actions"><button type="button" class="quiet" on:click=remove.clone()>{say(Label::RemoveVessel)}</button></div>
                </div>
            </Show>
        </main>
    }
}
