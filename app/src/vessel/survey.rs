//! What the vessel is: choices, and entries with what was understood of each.

use std::rc::Rc;
use std::sync::Arc;

use bedwright_calc::vessel::Opening;
use bedwright_edge::focus::focus;
use bedwright_job::Edit;
use bedwright_job::answers::VesselAnswers;
use bedwright_job::decimal::plain;
use bedwright_job::edit::Choice as Chosen;
use bedwright_job::entry::{Entry, Meaning, Unit, answered, typed};
use bedwright_job::field::SurveyField;
use bedwright_job::id::Id;
use bedwright_job::reading::asked;
use bedwright_job::sections::survey::{
    CollectorKind, DiameterWay, HeadShape, Path, Standing, SurveyEntry, VesselSurvey,
};
use bedwright_job::words::Label;
use bedwright_job::words::choices;
use leptos::prelude::*;

use super::doubt::doubt_of;
use super::number_line::standing_mark;
use crate::desk::{Answers, Desk, with_answers};
use crate::parts::choice::{choice, pick};
use crate::parts::entry::{EntryField, Written};
use crate::parts::live::{El, Shared, button, el, small_letters};
use crate::parts::signal::{Held, Kept};
use crate::parts::typing::{text_line, typing};

/// A vessel of the open job, and how it is read and changed.
#[derive(Clone, Copy)]
struct There {
    desk: Desk,
    id: Kept<Id>,
    answers: Answers,
}

impl There {
    /// Reads something of it; nothing where it was removed.
    fn read<T>(self, read: impl FnOnce(&VesselSurvey) -> T) -> Option<T> {
        self.vessel().map(|vessel| read(&vessel))
    }

    #[inline(never)]
    fn vessel(self) -> Option<Arc<VesselSurvey>> {
        let job = self.desk.open()?;
        self.id.with(|id| job.vessel(id).cloned())
    }

    fn choose(self, choice: Chosen) {
        self.desk.edit(Edit::Choose { vessel: self.id.get(), choice });
    }

    fn answer<T>(self, read: impl FnOnce(&VesselAnswers) -> Option<T>) -> Option<T> {
        with_answers(self.answers, |answers| answers.and_then(read))
    }
}

/// The survey of one vessel.
pub fn survey(desk: Desk, vessel: &Id, answers: Answers) -> El {
    let there = There { desk, id: Kept::new(vessel.clone()), answers };
    let say = move |label: Label| desk.label(label);
    let select = move |label: Label, all: Vec<(Chosen, Label)>, read: fn(&VesselSurvey) -> Chosen| {
        let all = Rc::new(all);
        let (names, places) = (all.clone(), all.clone());
        choice(
            say(label),
            move || names.iter().map(|(_, label)| say(*label).to_owned()).collect(),
            move || there.read(read).and_then(|now| places.iter().position(|(choice, _)| *choice == now)),
            move |at| {
                if let Some((choice, _)) = all.get(at) {
                    there.choose(*choice);
                }
            },
        )
    };
    let heads = |conical: bool, of: fn(HeadShape) -> Chosen| -> Vec<(Chosen, Label)> {
        HeadShape::ALL
            .iter()
            .filter(|shape| conical || **shape != HeadShape::Conical)
            .map(|shape| (of(*shape), choices::head(*shape)))
            .collect()
    };
    let ways = DiameterWay::ALL.iter().map(|way| (Chosen::Diameter(*way), choices::way(*way))).collect();
    let openings = Opening::ALL.iter().map(|opening| (Chosen::Opening(*opening), choices::opening(*opening))).collect();
    let collectors =
        CollectorKind::ALL.iter().map(|kind| (Chosen::Collector(*kind), choices::collector(*kind))).collect();
    let riser = vec![(Chosen::Riser(true), Label::Yes), (Chosen::Riser(false), Label::No)];
    let upper = vec![(Chosen::UpperCollector(false), Label::No), (Chosen::UpperCollector(true), Label::Yes)];
    let diameter_by = select(Label::DiameterBy, ways, |v| Chosen::Diameter(v.diameter_way));
    let choices = el("div", "choices")
        .kid(select(Label::BottomHead, heads(true, Chosen::BottomHead), |v| Chosen::BottomHead(v.bottom_head)))
        .kid(select(Label::TopHead, heads(false, Chosen::TopHead), |v| Chosen::TopHead(v.top_head)))
        .kid(select(Label::Opening, openings, |v| Chosen::Opening(v.opening)))
        .kid(select(Label::Riser, riser, |v| Chosen::Riser(v.riser)))
        .kid(select(Label::BottomCollector, collectors, |v| Chosen::Collector(v.collector)))
        .kid(select(Label::UpperCollector, upper, |v| Chosen::UpperCollector(v.upper_collector)));
    let wrong = move || {
        let fields = there.answer(|answers| Some(answers.survey.misread.keys().copied().collect::<Vec<_>>()));
        fields.unwrap_or_default()
    };
    let missing = move || {
        let unmeasured = there.read(|survey| there.answer(|answers| Some(answers.survey.unmeasured(survey))));
        let wrong = wrong();
        let unmeasured: Vec<_> =
            unmeasured.flatten().unwrap_or_default().into_iter().filter(|field| !wrong.contains(field)).collect();
        named(there, &unmeasured, Label::StillMissing)
            .unwrap_or_else(|| vec![el("span", "").text(say(Label::NothingMissing))])
    };
    let misread = move || named(there, &wrong(), Label::LookAgain).unwrap_or_default();
    // What stands on the label and what a tape says first, then the rest.
    let fields = move |first: bool| {
        let mut fields = there.read(asked).unwrap_or_default();
        let size = fields.iter().position(|field| *field == SurveyField::InsideDepth).map_or(0, |depth| depth + 1);
        let rest = fields.split_off(size);
        let wanted = if first { fields } else { rest };
        wanted.iter().map(|field| field.id().to_owned()).collect::<Vec<_>>()
    };
    let line = move |id: &str| match SurveyField::of(id) {
        Some(field) => survey_line(there, field),
        None => el("div", "entry"),
    };
    el("section", "survey")
        .set("aria-labelledby", "survey")
        .kid(el("h2", "rule").set("id", "survey").text(say(Label::Vessel)))
        .kid(pick(
            say(Label::FoundAs),
            "path",
            &[say(Label::OpenAndEmpty), say(Label::InService)],
            move || Some(usize::from(there.read(|v| v.path) == Some(Path::InService))),
            move |at| there.choose(Chosen::Path(if at == 1 { Path::InService } else { Path::OpenAndEmpty })),
        ))
        .kid(el("p", "survey-missing survey-named").live(missing))
        .kid(el("p", "survey-misread survey-named").live(misread))
        .kid(tags_line(there))
        .kid(el("div", "entries").kid(diameter_by).each(move || fields(true), line))
        .kid(choices)
        .kid(el("div", "entries").each(move || fields(false), line))
}

/// Fields by their names, each a way to it; nothing where there are none.
fn named(there: There, fields: &[SurveyField], head: Label) -> Option<Vec<El>> {
    if fields.is_empty() {
        return None;
    }
    let desk = there.desk;
    let shown = there.read(asked).unwrap_or_default();
    let mut all = vec![el("span", "").text(desk.label(head))];
    for field in fields {
        let name = small_letters(desk.manner().field(*field));
        let id = id_of(*field);
        all.push(if shown.contains(field) {
            button("to-field", &name, move || {
                focus(&id);
            })
        } else {
            // Its field comes with another choice.
            el("span", "").text(&name)
        });
    }
    Some(all)
}

fn id_of(field: SurveyField) -> String {
    ["survey-", field.id()].concat()
}

fn tags_line(there: There) -> El {
    let desk = there.desk;
    let write = move |text: String| {
        let tags: Vec<String> =
            text.split([',', ';']).map(|tag| tag.trim().to_owned()).filter(|tag| !tag.is_empty()).collect();
        desk.edit(Edit::Tags { vessel: there.id.get(), tags });
    };
    let now = move || there.read(|vessel| vessel.tags.join(", ")).unwrap_or_default();
    let field = typing(desk.turned, now, write, move || desk.pause()).set("aria-describedby", "tags-hint");
    el("div", "")
        .kid(text_line(desk.label(Label::Tags), field))
        .kid(el("p", "entry-hint").set("id", "tags-hint").text(desk.label(Label::TagsHint)))
}

fn survey_line(there: There, field: SurveyField) -> El {
    let desk = there.desk;
    let manner = desk.manner();
    let units: &'static [Unit] =
        if field == SurveyField::NominalSize { &[Unit::Inch] } else { Unit::of(field.dimension()) };
    let entry = move || there.read(|vessel| vessel.entries.get(&field).cloned()).flatten();
    // The unit of an empty field: the person's usual one until another is taken.
    let taken = Held::new(None::<Unit>);
    let unit = move || {
        let typed = there.read(|vessel| vessel.entries.get(&field).map(|typed| typed.entry.unit)).flatten();
        typed.or(taken.get()).unwrap_or_else(|| field.usual_unit(manner.metric))
    };
    let written = move || Written {
        text: entry().map(|typed| typed.entry.text).unwrap_or_default(),
        unit: units.iter().position(|there| *there == unit()).unwrap_or(0),
    };
    let put = move |entry: Option<SurveyEntry>| desk.edit(Edit::Survey { vessel: there.id.get(), field, entry });
    let standing_now = move || {
        entry().map(|typed| typed.standing).unwrap_or_else(|| {
            let open = there.read(|vessel| vessel.path).is_none_or(|path| path == Path::OpenAndEmpty);
            let outside =
                matches!(field, SurveyField::Circumference | SurveyField::NominalSize | SurveyField::BagVolume);
            if open || outside { Standing::Measured } else { Standing::Assumed }
        })
    };
    let write = move |now: Written| {
        untrack(|| {
            let unit = units.get(now.unit).copied().unwrap_or_else(unit);
            taken.set(Some(unit));
            if now.text.trim().is_empty() {
                if entry().is_some() {
                    put(None);
                }
                return;
            }
            let as_typed = |text: String| Entry { text, unit, meaning: None };
            let entry = if field == SurveyField::NominalSize {
                as_typed(now.text)
            } else {
                match typed(&now.text, unit, manner.marks()) {
                    Ok((entry, _)) => entry,
                    Err(_) => as_typed(now.text),
                }
            };
            put(Some(SurveyEntry { entry, standing: standing_now() }));
        });
    };
    let settle = move |second: bool| {
        let Some(typed) = untrack(entry) else { return };
        let meaning = if second { Meaning::Thousands } else { Meaning::DecimalPoint };
        if let Ok((settled, _)) = answered(&typed.entry.text, typed.entry.unit, meaning) {
            put(Some(SurveyEntry { entry: settled, standing: typed.standing }));
        }
    };
    let misread = move || there.answer(|answers| answers.survey.misread.get(&field).cloned());
    let wrong = move || match misread() {
        Some(misread) => Some(manner.misread_in(field, &misread, unit())),
        None => there.answer(|answers| {
            let missing = answers.survey.missing.contains(&field).then(|| manner.missing(field));
            missing.or_else(|| answers.problems.get(&field).map(|problem| manner.problem(problem)))
        }),
    };
    let echo = move || {
        there.answer(|answers| {
            if field == SurveyField::NominalSize {
                return answers
                    .survey
                    .nominal
                    .map(|(diameter, height)| format!("{} × {} in", plain(diameter), plain(height)));
            }
            answers.survey.understood.get(&field).map(|understood| manner.echo(understood))
        })
    };
    let assumed: Shared<Option<String>> = Rc::new(move || {
        let known = there.answer(|answers| answers.survey.assumed.get(&field).copied())?;
        Some(manner.decimal(unit().from_si(known.value.value), 3))
    });
    let toggle = move || {
        if let Some(mut typed) = untrack(entry) {
            typed.standing = match typed.standing {
                Standing::Measured => Standing::Assumed,
                Standing::Assumed => Standing::Measured,
            };
            put(Some(typed));
        }
    };
    let measured = move || entry().is_some_and(|typed| typed.standing == Standing::Measured);
    let (measured, toggle): (Shared<bool>, Rc<dyn Fn()>) = (Rc::new(measured), Rc::new(toggle));
    let standing = move || vec![standing_mark(desk, measured.clone(), toggle.clone())];
    let supposed = assumed.clone();
    EntryField {
        id: id_of(field),
        label: manner.field(field).to_owned(),
        hint: manner.hint(field).to_owned(),
        units: units.iter().map(|unit| desk.manner().unit(*unit)).collect(),
        written: Rc::new(written),
        on_write: Rc::new(write),
        on_leave: Box::new(move || desk.pause()),
        echo: Rc::new(echo),
        wrong: Rc::new(wrong),
        doubt: Rc::new(move || doubt_of(manner, misread())),
        on_settle: Rc::new(settle),
        assumed,
        turned: desk.turned,
        in_parts: Rc::new(move || field != SurveyField::NominalSize && unit() == Unit::Inch),
        keypads: (desk.label(Label::DigitsKey), desk.label(Label::AbcKey)),
    }
    .show(move |after| {
        after.when(move || entry().is_some(), standing).when(
            move || entry().is_none() && supposed().is_some(),
            move || vec![el("span", "standing").text(desk.label(Label::AssumedUntilMeasured))],
        )
    })
}
