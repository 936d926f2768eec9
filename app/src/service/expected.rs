//! What is expected of a vessel's beds: limit, life, visits. Kept as a record; the latest holds.

use std::rc::Rc;

use bedwright_job::Edit;
use bedwright_job::care::happened::{Expected, Happened, What, expected_of};
use bedwright_job::care::visit::{TestUnit, read_test};
use bedwright_job::entry::{Dimension, Entry, Misread, Unit};
use bedwright_job::words::CareLabel;

use super::page::Look;
use crate::desk::{new_id, today};
use crate::parts::choice::choice;
use crate::parts::live::{El, button, el};
use crate::parts::signal::Held;
use crate::vessel::number_line::NumberLine;

/// One of its numbers.
type Number = (CareLabel, Dimension, fn(&mut Expected) -> &mut Option<Entry>);

const NUMBERS: [Number; 4] = [
    (CareLabel::CalendarMonths, Dimension::Count, |expected| &mut expected.months),
    (CareLabel::WaterMost, Dimension::Volume, |expected| &mut expected.water),
    (CareLabel::VisitMonths, Dimension::Count, |expected| &mut expected.visits),
    (CareLabel::Settling, Dimension::Ratio, |expected| &mut expected.settling),
];

/// Why a number of the limit makes no sense.
fn wrong(entry: &Entry, dimension: Dimension) -> Option<Misread> {
    if dimension == Dimension::Ratio && entry.unit == Unit::One {
        return read_test(entry).err();
    }
    match entry.understood() {
        Ok(read) if read.dimension == dimension => None,
        Ok(read) => Some(Misread::WrongDimension { found: read.written, wanted: dimension }),
        Err(misread) => Some(misread),
    }
}

/// The fold with what is expected.
pub(super) fn expected(look: Look) -> El {
    let desk = look.desk;
    let vessel = look.place.get().vessel;
    let there = desk.open_now().map_or_else(|| Expected::nothing(vessel.clone()), |job| expected_of(&job, &vessel));
    let before = there.clone();
    let draft = desk.draft("expected", there, move |now| *now == before);
    let told = Held::new(None::<CareLabel>);
    let metric = desk.manner().metric;
    let change = move |change: &dyn Fn(&mut Expected)| {
        draft.update(|expected| change(expected));
        told.set(None);
    };
    let line = move |(label, dimension, of): Number, id: &str, units: &'static [Unit], usual: Unit| {
        let entry = move || {
            let mut expected = draft.get();
            of(&mut expected).clone()
        };
        NumberLine {
            id: ["expected-", id].concat(),
            label: look.say(label),
            hint: "",
            units,
            usual,
            entry: Rc::new(entry),
            misread: Rc::new(move || entry().and_then(|entry| wrong(&entry, dimension))),
            problem: Rc::new(|| None),
            put: Rc::new(move |entry: Option<Entry>| change(&|expected| *of(expected) = entry.clone())),
            assumed: Rc::new(|| None),
            standing: None,
        }
        .show(desk)
    };
    let usual = move |dimension: Dimension| match dimension {
        Dimension::Volume if metric => Unit::CubicMetre,
        Dimension::Volume => Unit::UsGallon,
        Dimension::Ratio => Unit::Percent,
        _ => Unit::Each,
    };
    let limit: Number = (CareLabel::Limit, Dimension::Ratio, |expected| &mut expected.limit);
    let units = choice(
        look.say(CareLabel::TestUnit),
        || TestUnit::ALL.iter().map(|unit| unit.symbol().to_owned()).collect(),
        move || draft.with(|expected| TestUnit::ALL.iter().position(|unit| *unit == expected.unit)),
        move |at| {
            if let Some(unit) = TestUnit::ALL.get(at) {
                change(&|expected| expected.unit = *unit);
            }
        },
    );
    let keep = move || {
        let mut expected = draft.get_untracked();
        let mut bad = expected.limit.as_ref().is_some_and(|entry| wrong(entry, Dimension::Ratio).is_some());
        for (_, dimension, of) in NUMBERS {
            bad |= of(&mut expected).as_ref().is_some_and(|entry| wrong(entry, dimension).is_some());
        }
        if bad {
            return told.set(Some(CareLabel::NotKept));
        }
        let what = What::Expected(expected);
        let at = bedwright_edge::clock::now_iso();
        let happened = Happened { id: new_id(), day: today(), at, by: String::new(), what };
        desk.edit(Edit::AddRecord(happened.record()));
        told.set(Some(CareLabel::ExpectedKept));
    };
    let mut entries = el("div", "entries").kid(line(limit, "limit", &[Unit::One], Unit::One)).kid(units);
    for (at, number) in NUMBERS.into_iter().enumerate() {
        let units: &'static [Unit] = match number.1 {
            Dimension::Ratio => &[Unit::Percent],
            dimension => Unit::of(dimension),
        };
        entries = entries.kid(line(number, &at.to_string(), units, usual(number.1)));
    }
    el("details", "how card-part card-expected")
        .kid(el("summary", "").kid(el("span", "how-name").text(look.say(CareLabel::Expected))))
        .kid(el("p", "quietly").text(look.say(CareLabel::ExpectedHint)))
        .kid(entries)
        .kid(
            el("p", "")
                .set("role", "status")
                .says(move || told.get().map(|label| look.say(label).to_owned()).unwrap_or_default()),
        )
        .kid(button("", look.say(CareLabel::Keep), keep))
}
