//! How long the bed lasts: one view, the figures behind it, and what it is worked out from.

use std::rc::Rc;

use bedwright_job::answers::life::{LifeAnswers, LifeName};
use bedwright_job::edit::{DutyChoice, WaterOf};
use bedwright_job::field::WaterField;
use bedwright_job::id::Id;
use bedwright_job::reading::life::{asked_of_analysis, asked_of_life};
use bedwright_job::words::{LifeLabel, Manner};

use super::results::grounds;
use super::water::{There, line};
use crate::desk::{Desk, Water, with_water};
use crate::parts::how::figure_line;
use crate::parts::live::{El, Shared, el};
use crate::parts::signal::Kept;
use crate::parts::typing::{text_line, typing};

/// A line of the one view: what it is called, and what it says.
type Says = fn(&LifeAnswers, Manner) -> Option<String>;

const VIEW: [(LifeLabel, Says); 4] = [
    (LifeLabel::ExpectedLife, |life, manner| Some(manner.expected_life(life.expected.as_ref()?))),
    (LifeLabel::LimitedByWord, |life, manner| Some(manner.limit_of(life.expected.as_ref()?).to_owned())),
    (LifeLabel::ChangesMost, |life, manner| manner.changes_most(life.expected.as_ref()?)),
    (LifeLabel::InYear, |life, manner| manner.year_of(life)),
];

/// Media life.
pub fn life(desk: Desk, vessel: &Id, water: Water) -> El {
    let manner = desk.manner();
    let there = There { desk, vessel: Kept::new(vessel.clone()), water };
    let say = move |label: LifeLabel| desk.label(label);
    let told = move |says: Says| with_water(water, |water| says(&water?.life, manner));
    let trouble =
        move || with_water(water, |water| Some(manner.problem(water?.life.problems.first()?))).unwrap_or_default();
    let missing = move || {
        with_water(water, |water| {
            let water = water?;
            manner.life_missing(&water.life, water.reading.is_life_whole())
        })
        .unwrap_or_default()
    };
    let view = VIEW.into_iter().fold(el("dl", "life-view"), |view, (label, says)| {
        view.when(
            move || told(says).is_some(),
            move || {
                vec![
                    el("div", "life-line")
                        .kid(el("dt", "").text(say(label)))
                        .kid(el("dd", "figure").says(move || told(says).unwrap_or_default())),
                ]
            },
        )
    });
    let part = el("section", "results life")
        .set("aria-labelledby", "media-life")
        .kid(el("h2", "rule").set("id", "media-life").text(say(LifeLabel::MediaLife)))
        .kid(el("p", "survey-missing").text(say(LifeLabel::MediaLifeHint)))
        .kid(view)
        .kid(el("p", "life-missing").says(missing))
        .kid(el("p", "layer-trouble").says(trouble));
    LifeName::ALL
        .iter()
        .fold(part, |part, name| {
            figure_line(part, manner.life_name(*name), move || {
                with_water(water, |water| {
                    let (_, figure) = water?.life.lines.iter().find(|(there, _)| there == name)?;
                    Some((manner.life_figure(*name, figure), grounds(manner, figure)))
                })
            })
        })
        .kid(entries(there, LifeLabel::Analysis, LifeLabel::AnalysisHint, true))
        .kid(entries(there, LifeLabel::OfTheBed, LifeLabel::OfMemory, false).kid(grounds_of(there)))
}

/// Where what was typed of the bed comes from.
fn grounds_of(there: There) -> El {
    let desk = there.desk;
    let text = move || there.duty().grounds.clone();
    let write = move |text: String| there.choose(DutyChoice::Grounds(text));
    let field = typing(desk.turned, text, write, move || desk.pause());
    el("div", "")
        .kid(text_line(desk.label(LifeLabel::Grounds), field))
        .kid(el("p", "entry-hint").text(desk.label(LifeLabel::GroundsHint)))
}

/// The entries it is worked out from, folded.
fn entries(there: There, name: LifeLabel, hint: LifeLabel, analysis: bool) -> El {
    let fields: Shared<Vec<String>> = Rc::new(move || {
        let asked = with_water(there.water, |water| {
            let purpose = water.map(|water| water.reading.purpose)?;
            Some(if analysis { asked_of_analysis(purpose) } else { asked_of_life(purpose) })
        });
        asked.unwrap_or_default().iter().map(|field| field.id().to_owned()).collect()
    });
    let one = move |id: &str| match WaterField::of(id) {
        Some(field) => {
            let of = if analysis { WaterOf::Site } else { WaterOf::Vessel(there.vessel.get()) };
            line(there, of, field)
        }
        None => el("div", "entry"),
    };
    el("details", "how")
        .kid(el("summary", "").kid(el("span", "how-name").text(there.desk.label(name))))
        .kid(el("p", "survey-missing").text(there.desk.label(hint)))
        .kid(el("div", "entries").each(move || fields(), one))
}
