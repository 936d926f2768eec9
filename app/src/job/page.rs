//! Title, site, kind of job, vessels.

use std::sync::Arc;

use bedwright_calc::supply::JobKind;
use bedwright_job::Edit;
use bedwright_job::sections::head::TextField;
use bedwright_job::sections::plan::VesselPlan;
use bedwright_job::sections::survey::VesselSurvey;
use bedwright_job::words::Label;
use leptos::prelude::*;

use crate::desk::{Desk, new_id};
use crate::parts::choice::Pick;
use crate::route::Route;

/// The job.
#[component]
pub fn JobPage() -> impl IntoView {
    let desk = Desk::of();
    let say = move |label: Label| move || desk.label(label);
    let kind = Memo::new(move |_| desk.job.with(|job| job.as_ref().map_or(JobKind::New, |job| job.head.body.kind)));
    let sample = Memo::new(move |_| desk.job.with(|job| job.as_ref().is_some_and(|job| job.head.body.sample)));
    let vessels = Memo::new(move |_| {
        desk.job.with(|job| {
            job.as_ref()
                .map(|job| {
                    job.survey.body.vessels.iter().map(|vessel| (job.id.clone(), vessel.id.clone())).collect::<Vec<_>>()
                })
                .unwrap_or_default()
        })
    });
    let kinds = [
        (JobKind::New, Label::KindNew),
        (JobKind::Changeout, Label::KindChangeout),
        (JobKind::Partial, Label::KindPartial),
        (JobKind::TopUp, Label::KindTopUp),
    ]
    .map(|(kind, label)| (kind, desk.label(label).to_owned()))
    .to_vec();
    let add = move |_| {
        let Some(job) = desk.job.get_untracked() else { return };
        let vessel = VesselSurvey::new(new_id());
        let (at, id) = (job.survey.body.vessels.len(), vessel.id.clone());
        desk.edit(Edit::InsertVessel { at, vessel: Arc::new(vessel), plan: Arc::new(VesselPlan::default()) });
        desk.go(&Route::Vessel(job.id.clone(), id));
    };
    view! {
        <main class="page job">
            <Show when=move || sample.get()>
                <p class="sample-mark">{say(Label::SampleMark)}</p>
            </Show>
            <section class="job-head">
                <TextLine field=TextField::Title label=Label::Title />
                <TextLine field=TextField::Customer label=Label::Customer />
                <TextLine field=TextField::Site label=Label::Site />
                <TextLine field=TextField::Number label=Label::JobNumber />
                <TextLine field=TextField::Owner label=Label::Owner />
                <Pick label=desk.label(Label::KindOfJob) group="kind" options=kinds value=kind on_choose=Callback::new(move |kind| desk.edit(Edit::Kind(kind))) />
                <TextLine field=TextField::Notes label=Label::Notes />
            </section>
            <section aria-labelledby="vessels">
                <h2 class="rule" id="vessels">{say(Label::Vessels)}</h2>
                <Show when=move || vessels.with(Vec::is_empty)>
                    <p>{say(Label::NoVessels)}</p>
                </Show>
                <ul class="job-list">
                    <For each=move || vessels.get() key=|ids| ids.clone() let:ids>
                        <VesselLine job=ids.0 vessel=ids.1 />
                    </For>
                </ul>
                <div class="actions">
                    <button type="button" class="primary" on:click=add>{say(Label::AddVessel)}</button>
                    <button type="button" on:click=move |_| desk.save_file()>{say(Label::SaveFile)}</button>
                </div>
            </section>
        </main>
    }
}

#[component]
fn TextLine(field: TextField, label: Label) -> impl IntoView {
    let desk = Desk::of();
    let now = Memo::new(move |_| {
        desk.job.with(|job| job.as_ref().map(|job| job.head.body.text(field).to_owned()).unwrap_or_default())
    });
    let input: NodeRef<leptos::html::Input> = NodeRef::new();
    Effect::new(move |_| {
        desk.turned.track();
        if let Some(input) = input.get() {
            let text = now.get_untracked();
            if input.value() != text {
                input.set_value(&text);
            }
        }
    });
    view! {
        <label class="text-line">
            <span class="text-label">{move || desk.label(label)}</span>
            <input type="text" autocomplete="off" node_ref=input
                on:input=move |event| desk.edit(Edit::Text { field, text: event_target_value(&event) })
                on:blur=move |_| desk.pause() />
        </label>
    }
}

#[component]
fn VesselLine(job: bedwright_job::id::Id, vessel: bedwright_job::id::Id) -> impl IntoView {
    let desk = Desk::of();
    let answers = desk.answers(&vessel);
    let id = vessel.clone();
    let name = move || crate::vessel::name_of(desk, &id);
    let summary = move || {
        let manner = desk.manner.get();
        answers.with(|answers| {
            let answers = answers.as_ref()?;
            let layers: Vec<String> = answers
                .layers
                .iter()
                .zip(answers.planned.iter())
                .filter_map(|(answer, layer)| {
                    let fill = answer.fill()?;
                    let packs = manner.container(layer.pack.container, fill.packs_to_buy);
                    Some(format!("{} {packs} {}", fill.packs_to_buy, manner.material(&layer.material.id)))
                })
                .collect();
            Some(layers.join(" · "))
        })
    };
    view! {
        <li class="job-line">
            <a class="job-link" href=Route::Vessel(job, vessel).address()>
                <span class="job-title">{name}</span>
                <span class="job-about">{summary}</span>
            </a>
        </li>
    }
}
