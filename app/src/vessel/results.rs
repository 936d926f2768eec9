//! The figures of the whole vessel, each with how it knows.

use bedwright_calc::quantity::{Amount, Figure, Formula};
use bedwright_job::answers::{VesselAnswers, depth_rows};
use bedwright_job::words::{Label, Manner, SureLabel};

use super::service::weight_lines;
use crate::desk::{Answers, Desk, Water, with_answers};
use crate::parts::how::{Grounds, figure_line};
use crate::parts::live::{El, el};
use crate::parts::signal::Held;
use crate::route::Route;

/// A figure as shown, with its grounds.
pub(super) type Shown = Option<(String, Grounds)>;

/// A figure as the trade writes its kind of quantity, with its grounds.
pub(super) fn shown<Q: Copy + Into<Amount>>(manner: Manner, figure: &Figure<Q>) -> Shown {
    Some((manner.amount(figure.value.into()), grounds(manner, figure)))
}

/// A share as per cent, with its grounds.
pub(super) fn share(manner: Manner, figure: &Figure<f64>) -> Shown {
    Some((manner.percent(figure.value), grounds(manner, figure)))
}

/// A figure's grounds in the person's words.
pub(super) fn grounds<Q: Copy + Into<Amount>>(manner: Manner, figure: &Figure<Q>) -> Grounds {
    Grounds {
        formula: manner.statement(figure.formula).to_owned(),
        source: manner.source(figure.formula.source()),
        inputs: figure
            .inputs
            .iter()
            .map(|input| {
                let source = manner.source(input.source);
                (
                    manner.term(input.term).to_owned(),
                    manner.input(input),
                    format!("{}, {source}", manner.basis(input.basis)),
                )
            })
            .collect(),
        sure: (figure.formula != Formula::Given)
            .then(|| (Route::Sure(figure.formula.id().to_owned()).address(), manner.label(SureLabel::HowSure))),
        cautions: figure.cautions.iter().map(|caution| manner.caution(caution)).collect(),
    }
}

/// Finds a figure among a vessel's answers.
type Reads = fn(&VesselAnswers, Manner) -> Shown;

/// What is shown, in this order.
const SHOWN: [(Label, Reads); 6] = [
    (Label::Freeboard, |answers, manner| {
        let freeboard = answers.plan.as_ref()?.freeboard.as_ref().ok()?;
        let share = freeboard.ratio.as_ref().map(|ratio| format!(" = {}", manner.percent(ratio.value)));
        let shown = format!("{}{}", manner.tape(freeboard.length.value), share.unwrap_or_default());
        Some((shown, grounds(manner, &freeboard.length)))
    }),
    (Label::RiserCut, |answers, manner| {
        let cut = answers.riser_cut.as_ref()?;
        Some((manner.tape(cut.value), grounds(manner, cut)))
    }),
    (Label::Weight, |answers, manner| {
        let weight = answers.plan.as_ref()?.dry_weight.as_ref().ok().filter(|weight| weight.value.value > 0.0)?;
        Some((manner.mass(weight.value), grounds(manner, weight)))
    }),
    (Label::InsideDiameter, |answers, manner| {
        let diameter = &answers.vessel.as_ref()?.inside_diameter;
        Some((manner.length(diameter.value), grounds(manner, diameter)))
    }),
    (Label::StraightSide, |answers, manner| {
        let side = answers.vessel.as_ref()?.straight_side();
        Some((manner.tape(side.value), grounds(manner, &side)))
    }),
    (Label::Capacity, |answers, manner| {
        let capacity = answers.vessel.as_ref()?.capacity();
        Some((manner.volume(capacity.value), grounds(manner, &capacity)))
    }),
];

/// Inside diameter, freeboard, riser, weight, depth table.
pub fn results(desk: Desk, answers: Answers, water: Water) -> El {
    let manner = desk.manner();
    let problem = move || {
        with_answers(answers, |answers| {
            answers.and_then(|answers| answers.problem.map(|problem| manner.problem(&problem)))
        })
        .unwrap_or_default()
    };
    let part = el("section", "results")
        .set("aria-labelledby", "results")
        .kid(el("h2", "rule").set("id", "results").text(desk.label(Label::Results)))
        .kid(el("p", "layer-trouble").says(problem));
    let part = SHOWN.into_iter().fold(part, |part, (label, read)| {
        figure_line(part, desk.label(label), move || {
            with_answers(answers, |answers| answers.and_then(|answers| read(answers, manner)))
        })
    });
    weight_lines(part, desk, water).when(
        move || {
            with_answers(answers, |answers| {
                answers.is_some_and(|answers| !depth_rows(answers, manner.metric).is_empty())
            })
        },
        move || vec![depth_table(desk, answers)],
    )
}

/// Depth against volume; worked out once it is opened.
fn depth_table(desk: Desk, answers: Answers) -> El {
    let manner = desk.manner();
    let open = Held::new(false);
    let head = move |label: Label| el("th", "").set("scope", "col").text(desk.label(label));
    let heads = [Label::TapeReads, Label::Height, Label::Volume];
    let cell = |text: String| el("td", "figure").text(&text);
    let rows = move || {
        let rows = with_answers(answers, |answers| answers.map(|answers| depth_rows(answers, manner.metric)));
        rows.unwrap_or_default()
            .into_iter()
            .map(|row| {
                el("tr", "")
                    .kid(cell(manner.tape(row.tape)))
                    .kid(cell(manner.tape(row.height)))
                    .kid(cell(manner.volume(row.volume)))
            })
            .collect()
    };
    el("details", "how")
        .on("toggle", move |_| open.set(true))
        .kid(el("summary", "").kid(el("span", "how-name").text(desk.label(Label::DepthTable))))
        .when(
            move || open.get(),
            move || {
                vec![
                    el("table", "depth-table")
                        .kid(el("thead", "").kid(el("tr", "").kids(heads.map(head).into_iter().collect())))
                        .kid(el("tbody", "").live(rows)),
                ]
            },
        )
}
