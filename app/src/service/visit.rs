//! A visit in three taps: the outlet test, the drain, save; or what is found on most visits in one. The meter beside them,
//! everything else in a fold.

use std::rc::Rc;

use bedwright_calc::hydraulics::Purpose;
use bedwright_job::Edit;
use bedwright_job::care::happened::Place;
use bedwright_job::care::visit::{Drain, Test, TestUnit, Visit, VisitField, read_number};
use bedwright_job::entry::{Entry, Unit};
use bedwright_job::id::Id;
use bedwright_job::words::{CardLabel, CareLabel};
use leptos::prelude::*;
use wasm_bindgen::JsCast;

use super::more::more;
use super::page::Look;
use crate::desk::{new_id, today};
use crate::parts::choice::pick;
use crate::parts::live::{El, button, el};
use crate::parts::signal::{Held, Worked};
use crate::vessel::number_line::NumberLine;

/// What is being written down, until it is kept. A handle.
#[derive(Clone, Copy)]
pub(super) struct Draft {
    pub(super) look: Look,
    pub(super) visit: Held<Visit>,
    /// The unit of its tests; the offered values are drawn anew only with it.
    pub(super) unit: Worked<Option<TestUnit>>,
    /// Whether another value than those offered is typed.
    other: Held<bool>,
    /// What keeps it from being kept, or that it was kept.
    told: Held<Option<CareLabel>>,
    /// What is asked before it is kept.
    asked: Held<Vec<String>>,
}

/// Values a strip shows, by the unit it shows them in.
fn strip(unit: TestUnit) -> &'static [&'static str] {
    match unit {
        TestUnit::MilligramPerLitre | TestUnit::PartPerMillion => &["0", "0.1", "0.2", "0.5", "1"],
        TestUnit::GrainPerGallon | TestUnit::GermanDegree => &["0", "1", "2", "5", "10"],
        TestUnit::TurbidityUnit => &["0", "0.5", "1", "2", "5"],
        TestUnit::Ph => &["6.5", "7", "7.5", "8", "8.5"],
    }
}

/// The unit a bed's tests usually read in.
fn usual_unit(purpose: Purpose, metric: bool) -> TestUnit {
    match purpose {
        Purpose::Softening if metric => TestUnit::GermanDegree,
        Purpose::Softening => TestUnit::GrainPerGallon,
        Purpose::Sediment => TestUnit::TurbidityUnit,
        Purpose::Neutralising => TestUnit::Ph,
        _ => TestUnit::MilligramPerLitre,
    }
}

/// Whether the outlet of a bed showed something on a visit.
fn lets_through(visit: &Visit) -> bool {
    visit.test(VisitField::Outlet).is_some_and(Test::found)
}

const DRAINS: [(Drain, bool, CareLabel); 4] = [
    (Drain::Clear, false, CareLabel::DrainClearNoGrains),
    (Drain::Clear, true, CareLabel::DrainClearGrains),
    (Drain::Cloudy, false, CareLabel::DrainCloudy),
    (Drain::Cloudy, true, CareLabel::DrainCloudyGrains),
];

fn blank(look: Look) -> Visit {
    let Place { vessel, tag } = look.place.get();
    let metric = look.desk.manner().metric;
    let (unit, by) = untrack(|| {
        look.with(|card| {
            let tested = card.bed.visits.iter().rev().find(|visit| visit.entry(VisitField::Outlet).is_some());
            let unit = tested.map_or_else(|| usual_unit(card.purpose, metric), |visit| visit.unit);
            Some((unit, card.latest().map(|visit| visit.by.clone()).unwrap_or_default()))
        })
    })
    .unwrap_or((TestUnit::MilligramPerLitre, String::new()));
    Visit { by, ..Visit::new(Id::new(""), today(), vessel, tag, unit) }
}

/// The form.
pub(super) fn visit(look: Look) -> El {
    let visit = look.desk.draft("visit", blank(look), Visit::is_blank);
    let draft = Draft {
        look,
        visit,
        unit: Worked::new(move || visit.with(|visit| Some(visit.unit))),
        other: Held::new(false),
        told: Held::new(None),
        asked: Held::new(Vec::new()),
    };
    let drain = pick(
        look.say(CareLabel::DrainSeen),
        "drain",
        &DRAINS.map(|(_, _, label)| look.say(label)),
        move || {
            draft.visit.with(|visit| {
                DRAINS
                    .iter()
                    .position(|(drain, grains, _)| (Some(*drain), Some(*grains)) == (visit.drain, visit.grains))
            })
        },
        move |at| {
            if let Some((drain, grains, _)) = DRAINS.get(at) {
                draft.change(|visit| (visit.drain, visit.grains) = (Some(*drain), Some(*grains)));
            }
        },
    );
    let said = move || draft.told.get().map(|label| look.say(label).to_owned()).unwrap_or_default();
    el("section", "card-part visit")
        .set("aria-labelledby", "visit")
        .kid(el("h2", "rule").set("id", "visit").text(look.say(CareLabel::LogVisit)))
        .live(move || draft.likely().into_iter().collect())
        .live(move || vec![draft.outlet(draft.test_unit())])
        .kid(drain)
        .kid(draft.meter())
        .kid(more(draft))
        .kid(el("p", "visit-told").set("role", "status").says(said))
        .live(move || draft.ask())
        .kid(button("primary visit-save", look.say(CareLabel::SaveVisit), move || draft.keep(false)))
}

impl Draft {
    /// Changes what is being written down.
    pub(super) fn change(self, change: impl FnOnce(&mut Visit)) {
        self.visit.update(change);
        self.told.set(None);
        self.asked.update(|asked| asked.clear());
    }

    fn test_unit(self) -> TestUnit {
        self.unit.get().unwrap_or(TestUnit::MilligramPerLitre)
    }

    /// What is found on most visits, said in one tap: it stands in the form then, to be looked at, and isn't kept yet. Nothing
    /// is offered where nought at the outlet isn't usual: in such a unit, or once this bed has let something through.
    fn likely(self) -> Option<El> {
        let unit = self.test_unit();
        let nought = strip(unit).first().filter(|value| **value == "0")?;
        let usual = unit != TestUnit::TurbidityUnit
            && self.look.with(|card| Some(!card.bed.visits.iter().rev().any(lets_through))).unwrap_or(true);
        let take = move || {
            self.other.set(false);
            self.change(|visit| {
                let outlet = Entry { text: (*nought).to_owned(), unit: Unit::One, meaning: None };
                visit.put(VisitField::Outlet, Some(outlet));
                (visit.drain, visit.grains) = (Some(Drain::Clear), Some(false));
            });
        };
        let outlet = [nought, " ", unit.symbol()].concat();
        let name = self.look.desk.manner().sentence(CardLabel::LikelyAnswers, &[("outlet", &outlet)]);
        usual.then(|| button("visit-likely", &name, take))
    }

    fn outlet(self, unit: TestUnit) -> El {
        let look = self.look;
        let strip = strip(unit);
        let names: Vec<&str> = strip.iter().copied().chain([look.say(CareLabel::OtherValue)]).collect();
        let chosen = move || {
            if self.other.get() {
                return Some(strip.len());
            }
            self.visit.with(|visit| {
                let text = &visit.entry(VisitField::Outlet)?.text;
                strip.iter().position(|value| value == text)
            })
        };
        let choose = move |at: usize| {
            self.other.set(at == strip.len());
            let text = strip.get(at).map(|text| Entry { text: (*text).to_owned(), unit: Unit::One, meaning: None });
            self.change(|visit| visit.put(VisitField::Outlet, text));
        };
        let title = [look.say(CareLabel::Outlet), ", ", unit.symbol()].concat();
        el("div", "visit-outlet")
            .kid(pick(&title, "outlet", &names, chosen, choose))
            .when(move || self.other.get(), move || vec![self.line(VisitField::Outlet, "", &[Unit::One], Unit::One)])
    }

    fn meter(self) -> El {
        let look = self.look;
        let metric = look.desk.manner().metric;
        let last = untrack(|| {
            look.with(|card| card.bed.visits.iter().rev().find_map(|visit| visit.entry(VisitField::Meter).cloned()))
        });
        let usual = last.as_ref().map_or(if metric { Unit::CubicMetre } else { Unit::UsGallon }, |entry| entry.unit);
        let before = move || {
            let last = look
                .with(|card| card.bed.visits.iter().rev().find_map(|visit| visit.entry(VisitField::Meter).cloned()));
            let manner = look.desk.manner();
            last.map(|entry| {
                [look.say(CareLabel::MeterBefore), manner.colon(), &entry.text, " ", manner.unit(entry.unit)].concat()
            })
            .unwrap_or_default()
        };
        let field = self.line(VisitField::Meter, "", Unit::of(VisitField::Meter.dimension()), usual);
        if let Ok(Some(input)) = field.node().query_selector("input") {
            // The last number of most visits: the key that ends it keeps the visit.
            let _ = input.set_attribute("enterkeyhint", "done");
        }
        let keys = move |event: web_sys::Event| {
            let typed = event.target().is_some_and(|target| target.has_type::<web_sys::HtmlInputElement>());
            let enter = event.dyn_ref::<web_sys::KeyboardEvent>().is_some_and(|event| event.key() == "Enter");
            if typed && enter {
                self.keep(false);
            }
        };
        el("div", "visit-meter").on("keydown", keys).kid(field).kid(el("p", "quietly").says(before))
    }

    /// A number of the visit.
    pub(super) fn line(self, field: VisitField, hint: &'static str, units: &'static [Unit], usual: Unit) -> El {
        let desk = self.look.desk;
        let entry = move || self.visit.with(|visit| visit.entry(field).cloned());
        NumberLine {
            id: ["visit-", field.id()].concat(),
            label: desk.manner().visit_field(field),
            hint,
            units,
            usual,
            entry: Rc::new(entry),
            misread: Rc::new(move || entry().and_then(|entry| read_number(field, &entry).err())),
            problem: Rc::new(|| None),
            put: Rc::new(move |entry| self.change(|visit| visit.put(field, entry))),
            assumed: Rc::new(|| None),
            standing: None,
        }
        .show(desk)
    }

    fn ask(self) -> Vec<El> {
        let asked = self.asked.get();
        if asked.is_empty() {
            return Vec::new();
        }
        let look = self.look;
        vec![
            el("div", "visit-asked")
                .set("role", "alert")
                .kid(el("p", "").kid(el("strong", "").text(look.say(CareLabel::AskFirst))))
                .kid(el("ul", "asked").kids(asked.iter().map(|line| el("li", "").text("? ").text(line)).collect()))
                .kid(
                    el("p", "actions")
                        .kid(button("", look.say(CareLabel::KeepAnyway), move || self.keep(true)))
                        .kid(button("quiet", look.say(CareLabel::GoBack), move || self.asked.set(Vec::new()))),
                ),
        ]
    }

    fn keep(self, sure: bool) {
        let look = self.look;
        let mut visit = self.visit.get_untracked();
        if visit.is_blank() {
            return self.told.set(Some(CareLabel::NothingRead));
        }
        if visit.date().is_none() {
            return self.told.set(Some(CareLabel::DayWrong));
        }
        if visit.entries.iter().any(|(field, entry)| read_number(*field, entry).is_err()) {
            return self.told.set(Some(CareLabel::NotKept));
        }
        visit.id = new_id();
        visit.at = bedwright_edge::clock::now_iso();
        let Some(job) = look.desk.open_now() else { return };
        if !sure {
            let mut with = (*job).clone();
            with.records.push(visit.record());
            let manner = look.desk.manner();
            let questions = look.of(&with).questions;
            let ours = questions.iter().filter(|question| question.visit.as_ref() == Some(&visit.id));
            let asked: Vec<String> = ours.map(|question| manner.question(question)).collect();
            if !asked.is_empty() {
                return self.asked.set(asked);
            }
        }
        look.desk.edit(Edit::AddRecord(visit.record()));
        self.asked.set(Vec::new());
        self.other.set(false);
        self.visit.set(blank(look));
        look.desk.turned.update(|n| *n = n.wrapping_add(1));
        self.told.set(Some(CareLabel::Kept));
    }
}
