//! A number with its unit, what was understood, what is assumed, and its mistake.

use std::rc::Rc;

use bedwright_job::entry::{Dimension, Entry, Meaning, Misread, Unit, answered, typed};
use bedwright_job::words::Label;
use leptos::prelude::*;

use super::doubt::doubt_of;
use crate::desk::Desk;
use crate::parts::entry::{EntryField, Written};
use crate::parts::live::{El, Shared, el};
use crate::parts::signal::Held;

/// A number with its unit, its echo and its mistake.
pub struct NumberLine {
    /// An id no other field on the screen has.
    pub id: String,
    /// What is asked for.
    pub label: &'static str,
    /// How to take it, in a few words.
    pub hint: &'static str,
    /// The units it may be typed in.
    pub units: &'static [Unit],
    /// The one it starts in.
    pub usual: Unit,
    /// What stands in it.
    pub entry: Shared<Option<Entry>>,
    /// Why that makes no sense.
    pub misread: Shared<Option<Misread>>,
    /// Why it can't be.
    pub problem: Shared<Option<String>>,
    /// Told at every change.
    pub put: Rc<dyn Fn(Option<Entry>)>,
    /// What is assumed while it is empty, in SI.
    pub assumed: Shared<Option<f64>>,
    /// Whether it was measured, and what turns that over; none where that isn't asked.
    pub standing: Option<StandingMark>,
}

/// Whether an entry was measured, and what turns that over.
pub struct StandingMark {
    pub measured: Shared<bool>,
    pub turn: Rc<dyn Fn()>,
}

impl NumberLine {
    /// The line on the page.
    pub fn show(self, desk: Desk) -> El {
        let NumberLine { id, label, hint, units, usual, entry, misread, problem, put, assumed, standing } = self;
        let manner = desk.manner();
        let taken = Held::new(None::<Unit>);
        let unit: Shared<Unit> = {
            let entry = entry.clone();
            Rc::new(move || {
                let typed = entry().map(|entry| entry.unit).filter(|unit| units.contains(unit));
                typed.or(taken.get()).unwrap_or(usual)
            })
        };
        let written = {
            let (entry, unit) = (entry.clone(), unit.clone());
            move || Written {
                text: entry().map(|entry| entry.text).unwrap_or_default(),
                unit: units.iter().position(|there| *there == unit()).unwrap_or(0),
            }
        };
        let write = {
            let (entry, put) = (entry.clone(), put.clone());
            move |now: Written| {
                let unit = units.get(now.unit).copied().unwrap_or(usual);
                taken.set(Some(unit));
                if now.text.trim().is_empty() {
                    if untrack(|| entry()).is_some() {
                        put(None);
                    }
                    return;
                }
                put(Some(match typed(&now.text, unit, manner.marks()) {
                    Ok((entry, _)) => entry,
                    Err(_) => Entry { text: now.text, unit, meaning: None },
                }));
            }
        };
        let settle = {
            let entry = entry.clone();
            move |second: bool| {
                let Some(entry) = untrack(|| entry()) else { return };
                let meaning = if second { Meaning::Thousands } else { Meaning::DecimalPoint };
                if let Ok((settled, _)) = answered(&entry.text, entry.unit, meaning) {
                    put(Some(settled));
                }
            }
        };
        let wrong = {
            let misread = misread.clone();
            let unit = unit.clone();
            move || misread().map(|misread| manner.misread(&misread, unit())).or_else(|| problem())
        };
        let there = entry.clone();
        let echo = move || {
            let entry = entry()?;
            let understood = entry.understood().ok()?;
            // A hardness is shown in every unit, since the next paper will have it in another.
            let always = understood.dimension == Dimension::Hardness;
            (always || entry.text.trim() != manner.decimal(understood.value, 4)).then(|| manner.echo(&understood))
        };
        let supposed = assumed.clone();
        let in_parts: Shared<bool> = {
            let unit = unit.clone();
            Rc::new(move || unit() == Unit::Inch)
        };
        let shown: Shared<Option<String>> = Rc::new(move || assumed().map(|si| manner.decimal(unit().from_si(si), 3)));
        EntryField {
            id,
            label: label.to_owned(),
            hint: hint.to_owned(),
            units: units.iter().map(|unit| desk.manner().unit(*unit)).collect(),
            written: Rc::new(written),
            on_write: Rc::new(write),
            on_leave: Box::new(move || desk.pause()),
            echo: Rc::new(echo),
            wrong: Rc::new(wrong),
            doubt: Rc::new(move || doubt_of(manner, misread())),
            on_settle: Rc::new(settle),
            assumed: shown,
            turned: desk.turned,
            in_parts,
            keypads: (desk.label(Label::DigitsKey), desk.label(Label::AbcKey)),
        }
        .show(move |after| {
            let Some(StandingMark { measured, turn }) = standing else { return after };
            let empty = there.clone();
            after
                .when(move || there().is_some(), move || vec![standing_mark(desk, measured.clone(), turn.clone())])
                .when(
                    move || empty().is_none() && supposed().is_some(),
                    move || vec![el("span", "standing").text(desk.label(Label::AssumedUntilMeasured))],
                )
        })
    }
}

/// The button that says measured or assumed.
pub fn standing_mark(desk: Desk, measured: Shared<bool>, turn: Rc<dyn Fn()>) -> El {
    let (pressed, said) = (measured.clone(), measured.clone());
    el("button", "standing")
        .set("type", "button")
        .marks("standing-measured", move || measured())
        .tells("aria-pressed", move || Some(pressed().to_string()))
        .says(move || {
            let standing = if said() { Label::StandingMeasured } else { Label::StandingAssumed };
            desk.label(standing).to_owned()
        })
        .on("click", move |_| turn())
}
