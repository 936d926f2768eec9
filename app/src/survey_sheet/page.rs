//! The survey sheet's screen: which vessel, blank or filled, and the sheets.

use bedwright_job::id::Id;
use bedwright_job::papers::{Paper, survey_sheet, vessel_name};
use bedwright_job::words::Label;
use leptos::prelude::*;

use crate::desk::{Desk, today};
use crate::parts::choice::{Choice, Pick};
use crate::parts::sheet::{Printing, page_size, paper_size};

/// Whom a sheet is for.
#[derive(Clone, Debug, PartialEq, Eq)]
enum Whose {
    /// One sheet after the other for every vessel of the job.
    All,
    /// One vessel.
    One(Id),
    /// A vessel nobody has entered.
    Unknown,
}

/// The survey sheet.
#[component]
pub fn SurveySheetPage() -> impl IntoView {
    let desk = Desk::of();
    let say = move |label: Label| move || desk.label(label);
    let vessels = Memo::new(move |_| {
        desk.job.with(|job| {
            job.as_ref()
                .map(|job| job.survey.body.vessels.iter().map(|vessel| vessel.id.clone()).collect::<Vec<_>>())
                .unwrap_or_default()
        })
    });
    let none = vessels.with_untracked(Vec::is_empty);
    let whose = RwSignal::new(if none { Whose::Unknown } else { Whose::All });
    let filled = RwSignal::new(!none);
    let options = Signal::derive(move || {
        let manner = desk.manner.get();
        let mut options = Vec::new();
        desk.job.with(|job| {
            let Some(job) = job else { return };
            if !job.survey.body.vessels.is_empty() {
                options.push((Whose::All, manner.label(Label::AllVessels).to_owned()));
            }
            options.extend(
                job.survey
                    .body
                    .vessels
                    .iter()
                    .map(|vessel| (Whose::One(vessel.id.clone()), vessel_name(job, &vessel.id, manner))),
            );
        });
        options.push((Whose::Unknown, manner.label(Label::AnyVessel).to_owned()));
        options
    });
    let papers = Signal::derive(move || {
        let (manner, filled, today) = (desk.manner.get(), filled.get(), today());
        desk.job.with(|job| {
            let Some(job) = job else { return Vec::<Paper>::new() };
            match whose.get() {
                Whose::All => job
                    .survey
                    .body
                    .vessels
                    .iter()
                    .map(|vessel| survey_sheet(job, Some(&vessel.id), manner, &today, filled))
                    .collect(),
                Whose::One(id) => vec![survey_sheet(job, Some(&id), manner, &today, filled)],
                Whose::Unknown => vec![survey_sheet(job, None, manner, &today, false)],
            }
        })
    });
    let kinds = [(false, Label::Blank), (true, Label::Filled)]
        .map(|(filled, label)| (filled, desk.label(label).to_owned()))
        .to_vec();
    let known = move || whose.with(|whose| *whose != Whose::Unknown);
    let size = Signal::derive(move || desk.person.with(|person| page_size(person.paper)));
    view! {
        <main class="page survey-sheet">
            <h1 class="page-title">{say(Label::SurveySheet)}</h1>
            <div class="survey-sheet-choices">
                <Choice label=desk.label(Label::Vessel) options value=whose on_choose=Callback::new(move |chosen| whose.set(chosen)) />
                <Show when=known>
                    <Pick label=desk.label(Label::SurveySheet) group="survey-form" options=kinds.clone() value=filled
                        on_choose=Callback::new(move |chosen| filled.set(chosen)) />
                </Show>
            </div>
            <Printing papers size manner=desk.manner
                on_size=Callback::new(move |size| desk.prefer(|person| person.paper = paper_size(size))) />
        </main>
    }
}
