//! The figures of the whole vessel, each with how it knows.

use std::sync::Arc;

use bedwright_calc::quantity::{Amount, Figure};
use bedwright_job::answers::{VesselAnswers, depth_rows};
use bedwright_job::words::{Label, Manner};
use leptos::prelude::*;

use crate::desk::Desk;
use crate::parts::how::{FigureLine, Grounds};

type Answers = Memo<Option<Arc<VesselAnswers>>>;

/// A figure's grounds in the person's words.
pub fn grounds<Q: Copy + Into<Amount>>(manner: Manner, figure: &Figure<Q>) -> Grounds {
    Grounds {
        formula: figure.formula.statement().to_owned(),
        source: manner.source(figure.formula.source()),
        inputs: figure
            .inputs
            .iter()
            .map(|input| {
                let source = manner.source(input.source);
                (
                    manner.term(input.term).to_owned(),
                    manner.amount(input.amount),
                    format!("{}, {source}", manner.basis(input.basis)),
                )
            })
            .collect(),
        cautions: figure.cautions.iter().map(|caution| manner.caution(caution)).collect(),
    }
}

/// Inside diameter, freeboard, riser, weight, depth table.
#[component]
pub fn Results(answers: Answers) -> impl IntoView {
    let desk = Desk::of();
    let manner = desk.manner;
    let say = move |label: Label| move || desk.label(label);
    let figure = move |label: Label, figure: Signal<Option<(String, Grounds)>>| view! { <FigureLine name=desk.label(label) figure /> };
    let with = move |read: fn(&VesselAnswers, Manner) -> Option<(String, Grounds)>| {
        Signal::derive(move || answers.with(|answers| answers.as_ref().and_then(|answers| read(answers, manner.get()))))
    };
    let rows = Memo::new(move |_| {
        let metric = manner.get().metric;
        answers.with(|answers| answers.as_ref().map(|answers| depth_rows(answers, metric)).unwrap_or_default())
    });
    let open = RwSignal::new(false);
    let problem = move || {
        answers.with(|answers| {
            answers.as_ref().and_then(|answers| answers.problem.map(|problem| manner.get().problem(&problem)))
        })
    };
    view! {
        <section class="results" aria-labelledby="results">
            <h2 class="rule" id="results">{say(Label::Results)}</h2>
            <p class="layer-trouble">{problem}</p>
            {figure(Label::Freeboard, with(|answers, manner| {
                let freeboard = answers.plan.as_ref()?.freeboard.as_ref().ok()?;
                let share = freeboard.ratio.as_ref().map(|ratio| format!(" = {}", manner.percent(ratio.value))).unwrap_or_default();
                Some((format!("{}{share}", manner.tape(freeboard.length.value)), grounds(manner, &freeboard.length)))
            }))}
            {figure(Label::RiserCut, with(|answers, manner| {
                let cut = answers.riser_cut.as_ref()?;
                Some((manner.tape(cut.value), grounds(manner, cut)))
            }))}
            {figure(Label::Weight, with(|answers, manner| {
                let weight = answers.plan.as_ref()?.dry_weight.as_ref().ok().filter(|weight| weight.value.value > 0.0)?;
                Some((manner.mass(weight.value), grounds(manner, weight)))
            }))}
            {figure(Label::InsideDiameter, with(|answers, manner| {
                let diameter = &answers.vessel.as_ref()?.inside_diameter;
                Some((manner.length(diameter.value), grounds(manner, diameter)))
            }))}
            {figure(Label::StraightSide, with(|answers, manner| {
                let side = answers.vessel.as_ref()?.straight_side();
                Some((manner.tape(side.value), grounds(manner, &side)))
            }))}
            {figure(Label::Capacity, with(|answers, manner| {
                let capacity = answers.vessel.as_ref()?.capacity();
                Some((manner.volume(capacity.value), grounds(manner, &capacity)))
            }))}
            <Show when=move || !rows.with(Vec::is_empty)>
                <details class="how" on:toggle=move |_| open.set(true)>
                    <summary><span class="how-name">{say(Label::DepthTable)}</span></summary>
                    <Show when=move || open.get()>
                        <table class="depth-table">
                            <thead><tr><th scope="col">{say(Label::TapeReads)}</th><th scope="col">{say(Label::Height)}</th><th scope="col">{say(Label::Volume)}</th></tr></thead>
                            <tbody>
                                {move || rows.get().into_iter().map(|row| {
                                    let manner = manner.get();
                                    view! { <tr><td class="figure">{manner.tape(row.tape)}</td><td class="figure">{manner.tape(row.height)}</td><td class="figure">{manner.volume(row.volume)}</td></tr> }
                                }).collect_view()}
                            </tbody>
                        </table>
                    </Show>
                </details>
            </Show>
        </section>
    }
}
