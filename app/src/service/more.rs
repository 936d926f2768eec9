//! What else can be read on a visit.

use bedwright_calc::fill::SurfaceState;
use bedwright_job::care::visit::{TestUnit, VisitField};
use bedwright_job::entry::{Dimension, Unit};
use bedwright_job::words::{CareLabel, Label};

use super::visit::Draft;
use crate::parts::choice::choice;
use crate::parts::live::{El, el};
use crate::parts::typing::{text_line, typing};

/// The fold with everything else.
pub(super) fn more(draft: Draft) -> El {
    let look = draft.look;
    let metric = look.desk.manner().metric;
    let pick = |us: Unit, si: Unit| if metric { si } else { us };
    let line = |field: VisitField, hint: &'static str, usual: Unit| {
        draft.line(field, hint, Unit::of(field.dimension()), usual)
    };
    let hint = |label: CareLabel| look.say(label);
    let entries = el("div", "entries")
        .kid(draft.line(VisitField::Inlet, "", &[Unit::One], Unit::One))
        .kid(unit(draft))
        .kid(line(VisitField::PressureIn, "", pick(Unit::Psi, Unit::Bar)))
        .kid(line(VisitField::PressureOut, "", pick(Unit::Psi, Unit::Bar)))
        .kid(draft.line(VisitField::SinceWash, hint(CareLabel::SinceWashHint), Unit::of(Dimension::Time), Unit::Day))
        .kid(line(
            VisitField::DrainFlow,
            hint(CareLabel::DrainFlowHint),
            pick(Unit::UsGallonPerMinute, Unit::LitrePerMinute),
        ))
        .kid(draft.line(VisitField::DrainMinutes, "", Unit::of(Dimension::Time), Unit::Minute))
        .kid(line(VisitField::Temperature, "", pick(Unit::Fahrenheit, Unit::Celsius)))
        .kid(line(VisitField::Tape, hint(CareLabel::TapeHint), pick(Unit::Inch, Unit::Millimetre)))
        .kid(state(draft))
        .kid(line(VisitField::Salt, "", pick(Unit::Pound, Unit::Kilogram)))
        .kid(leak(draft))
        .kid(words(draft, CareLabel::Settings))
        .kid(words(draft, CareLabel::Notes))
        .kid(words(draft, CareLabel::By))
        .kid(words(draft, CareLabel::Day));
    el("details", "how visit-more")
        .kid(el("summary", "").kid(el("span", "how-name").text(look.say(CareLabel::More))))
        .kid(entries)
}

fn unit(draft: Draft) -> El {
    choice(
        draft.look.say(CareLabel::TestUnit),
        || TestUnit::ALL.iter().map(|unit| unit.symbol().to_owned()).collect(),
        move || draft.visit.with(|visit| TestUnit::ALL.iter().position(|unit| *unit == visit.unit)),
        move |at| {
            if let Some(unit) = TestUnit::ALL.get(at) {
                draft.change(|visit| visit.unit = *unit);
            }
        },
    )
}

fn state(draft: Draft) -> El {
    let look = draft.look;
    const STATES: [(SurfaceState, CareLabel); 2] =
        [(SurfaceState::SettledAtOpening, CareLabel::SettledAtOpening), (SurfaceState::AsPoured, CareLabel::AsPoured)];
    choice(
        look.say(CareLabel::TapeState),
        move || STATES.iter().map(|(_, label)| look.say(*label).to_owned()).collect(),
        move || draft.visit.with(|visit| STATES.iter().position(|(state, _)| *state == visit.state)),
        move |at| {
            if let Some((state, _)) = STATES.get(at) {
                draft.change(|visit| visit.state = *state);
            }
        },
    )
}

fn leak(draft: Draft) -> El {
    let look = draft.look;
    const LEAKS: [Option<bool>; 3] = [None, Some(false), Some(true)];
    let names = move || {
        let desk = look.desk;
        vec![
            look.say(CareLabel::NotSaid).to_owned(),
            desk.label(Label::No).to_owned(),
            desk.label(Label::Yes).to_owned(),
        ]
    };
    choice(
        look.say(CareLabel::Leaks),
        names,
        move || draft.visit.with(|visit| LEAKS.iter().position(|leak| *leak == visit.leak)),
        move |at| {
            if let Some(leak) = LEAKS.get(at) {
                draft.change(|visit| visit.leak = *leak);
            }
        },
    )
}

/// A text of the visit.
fn words(draft: Draft, label: CareLabel) -> El {
    let text = move || {
        draft.visit.with(|visit| match label {
            CareLabel::Settings => visit.settings.clone(),
            CareLabel::By => visit.by.clone(),
            CareLabel::Day => visit.day.clone(),
            _ => visit.notes.clone(),
        })
    };
    let write = move |text: String| {
        draft.change(|visit| match label {
            CareLabel::Settings => visit.settings = text,
            CareLabel::By => visit.by = text,
            CareLabel::Day => visit.day = text,
            _ => visit.notes = text,
        });
    };
    text_line(draft.look.say(label), typing(draft.look.desk.turned, text, write, || {}))
}
