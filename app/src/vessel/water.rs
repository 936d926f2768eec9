//! The site's water, and what the vessel must do with it.

use std::rc::Rc;
use std::sync::Arc;

use bedwright_calc::hydraulics::Purpose;
use bedwright_calc::quantity::{Basis, Source};
use bedwright_job::Edit;
use bedwright_job::answers::water::WaterAnswers;
use bedwright_job::edit::{DutyChoice, WaterOf};
use bedwright_job::entry::{Entry, Misread};
use bedwright_job::field::WaterField;
use bedwright_job::id::Id;
use bedwright_job::reading::site::{WaterReading, asked_of_duty, water_field_of};
use bedwright_job::sections::site::{ARRANGEMENTS, Entries, REGIMES, SiteConditions, VesselDuty, WaterSource};
use bedwright_job::sections::survey::{Standing, SurveyEntry};
use bedwright_job::words::{Label, choices};
use leptos::prelude::*;

use super::number_line::{NumberLine, StandingMark};
use crate::desk::{Desk, Water, with_water};
use crate::parts::choice::{choice, pick};
use crate::parts::live::{El, el};
use crate::parts::signal::Kept;

/// The water side of a vessel of the open job.
#[derive(Clone, Copy)]
pub(super) struct There {
    pub(super) desk: Desk,
    pub(super) vessel: Kept<Id>,
    pub(super) water: Water,
}

impl There {
    fn site<T: Default>(self, read: impl FnOnce(&SiteConditions) -> T) -> T {
        self.desk.of_job(|job| read(&job.site.body))
    }

    pub(super) fn duty(self) -> Arc<VesselDuty> {
        self.vessel.with(|id| self.site(|site| Some(site.duty_of(id)))).unwrap_or_default()
    }

    pub(super) fn choose(self, choice: DutyChoice) {
        self.desk.edit(Edit::Duty { vessel: self.vessel.get(), choice });
    }

    /// The typed value of a field.
    fn typed(self, of: &WaterOf, field: WaterField) -> Option<SurveyEntry> {
        let from = |entries: &Entries| entries.get(field).cloned();
        match of {
            WaterOf::Site => self.site(|site| from(&site.entries)),
            WaterOf::Vessel(_) => from(&self.duty().entries),
            WaterOf::Layer(_, layer) => self.duty().grains_of(layer).and_then(from),
            WaterOf::Search => None,
        }
    }

    fn misread(self, of: &WaterOf, field: WaterField) -> Option<Misread> {
        with_water(self.water, |water| {
            let misread = &water?.reading.misread;
            misread.iter().find(|(at, known, _)| *known == field && at == of).map(|(.., misread)| misread.clone())
        })
    }

    fn assumed(self, of: &WaterOf, field: WaterField) -> Option<f64> {
        with_water(self.water, |water| {
            let assumed = &water?.reading.assumed;
            assumed.iter().find(|(at, known, _)| *known == field && at == of).map(|(.., si)| *si)
        })
    }

    /// The problem that this field caused, in words.
    fn problem(self, of: &WaterOf, field: WaterField) -> Option<String> {
        let manner = self.desk.manner();
        with_water(self.water, |water| {
            let water = water?;
            self.vessel.with(|vessel| {
                water.problems.iter().chain(&water.life.problems).find_map(|problem| {
                    let layer = match of {
                        WaterOf::Layer(_, layer) if self.is_layer(layer, problem.layer) => Some(layer),
                        _ => None,
                    };
                    let caused = water_field_of(problem.term, vessel, layer)?;
                    (caused.0 == *of && caused.1 == field).then(|| manner.problem(problem))
                })
            })
        })
    }

    /// Whether a layer is the one of this place in the plan.
    fn is_layer(self, layer: &Id, place: Option<usize>) -> bool {
        let plan = self.desk.of_job(|job| Some(self.vessel.with(|id| job.plan_of(id))));
        let at = plan.and_then(|plan| plan.layers.iter().position(|there| there.id == *layer));
        at.is_some() && at == place
    }
}

/// Water on site, and what the vessel must do. Folded where all that is usually asked was said before the screen was
/// opened; what was said stands in the fold's line.
pub fn water(desk: Desk, vessel: &Id, water: Water) -> El {
    let there = There { desk, vessel: Kept::new(vessel.clone()), water };
    let said = move || with_water(water, |water| water.map(|water| in_short(desk, water))).unwrap_or_default();
    let head = el("summary", "")
        .kid(el("span", "how-name").text(desk.label(Label::WaterFold)))
        .text(" ")
        .kid(el("span", "water-short").says(said));
    let fold = el("details", "how water-fold").kid(head);
    let fold =
        if untrack(|| with_water(water, |water| water.is_some_and(is_complete))) { fold } else { fold.set("open", "") };
    fold.kid(el("div", "water").kid(site(there)).kid(duty(there)).kid(grains(there)))
}

/// Whether all that is usually asked of the water was said, and makes sense.
fn is_complete(water: &WaterAnswers) -> bool {
    let WaterReading { site, duty, .. } = &water.reading;
    let typed = |basis: Basis, source: Source| basis == Basis::Measured || source == Source::Typed;
    let ends = [&site.temperature_low, &site.temperature_high].iter().all(|end| typed(end.basis, end.source));
    let fed = site.backwash_available.is_some() || !duty.regime.is_backwashed();
    ends && fed && duty.service_flow.is_some() && water.reading.is_whole() && water.problems.is_empty()
}

/// What was said of the water, in a line.
fn in_short(desk: Desk, water: &WaterAnswers) -> String {
    let manner = desk.manner();
    let WaterReading { site, duty, purpose, .. } = &water.reading;
    let mut parts = vec![desk.label(choices::purpose(*purpose)).to_owned()];
    parts.extend(duty.service_flow.map(|flow| manner.flow(flow.value)));
    let ends = [site.temperature_low, site.temperature_high].map(|end| manner.temperature(end.value));
    parts.push(ends.join(" – "));
    let fed = site.backwash_available.map(|flow| [desk.label(Label::WaterFed), " ", &manner.flow(flow.value)].concat());
    parts.extend(fed);
    parts.join(" · ")
}

fn site(there: There) -> El {
    let desk = there.desk;
    let say = move |label: Label| desk.label(label);
    let names: Vec<&str> = WaterSource::ALL.iter().map(|source| say(choices::source(*source))).collect();
    let now = move || there.site(|site| WaterSource::ALL.iter().position(|source| *source == site.source));
    let take = move |at: usize| {
        if let Some(source) = WaterSource::ALL.get(at) {
            desk.edit(Edit::Source(*source));
        }
    };
    let lines = WaterField::OF_SITE.iter().map(|field| line(there, WaterOf::Site, *field)).collect();
    el("section", "")
        .set("aria-labelledby", "site-water")
        .kid(el("h2", "rule").set("id", "site-water").text(say(Label::SiteWater)))
        .kid(el("p", "survey-missing").text(say(Label::SiteWaterHint)))
        .kid(pick(say(Label::WaterFrom), "water-source", &names, now, take))
        .kid(el("div", "entries").kids(lines))
}

fn duty(there: There) -> El {
    let desk = there.desk;
    let say = move |label: Label| desk.label(label);
    let purposes = move || Purpose::ALL.iter().map(|purpose| say(choices::purpose(*purpose)).to_owned()).collect();
    let purpose = move || {
        let usual = with_water(there.water, |water| water.map(|water| water.reading.purpose));
        let now = there.duty().purpose.or(usual)?;
        Purpose::ALL.iter().position(|purpose| *purpose == now)
    };
    let regimes = move || REGIMES.iter().map(|regime| say(choices::regime(*regime)).to_owned()).collect();
    let arrangements = move || ARRANGEMENTS.iter().map(|one| say(choices::arrangement(*one)).to_owned()).collect();
    let choose = el("div", "choices")
        .kid(choice(say(Label::PurposeTitle), purposes, purpose, move |at| {
            there.choose(DutyChoice::Purpose(Purpose::ALL.get(at).copied()));
        }))
        .kid(choice(
            say(Label::RegimeTitle),
            regimes,
            move || REGIMES.iter().position(|regime| *regime == there.duty().regime),
            move |at| {
                if let Some(regime) = REGIMES.get(at) {
                    there.choose(DutyChoice::Regime(*regime));
                }
            },
        ))
        .kid(choice(
            say(Label::ArrangementTitle),
            arrangements,
            move || ARRANGEMENTS.iter().position(|one| *one == there.duty().arrangement),
            move |at| {
                if let Some(arrangement) = ARRANGEMENTS.get(at) {
                    there.choose(DutyChoice::Arrangement(*arrangement));
                }
            },
        ));
    let fields = move || {
        let upper =
            desk.of_job(|job| there.vessel.with(|id| job.vessel(id).is_some_and(|vessel| vessel.upper_collector)));
        asked_of_duty(&there.duty(), upper).iter().map(|field| field.id().to_owned()).collect::<Vec<_>>()
    };
    let one = move |field: WaterField| line(there, WaterOf::Vessel(there.vessel.get()), field);
    // What few are asked for stays folded until it is.
    let fold = move |name: Label, fields: &[WaterField]| {
        el("details", "how")
            .kid(el("summary", "").kid(el("span", "how-name").text(say(name))))
            .kid(el("div", "entries").kids(fields.iter().map(|field| one(*field)).collect()))
    };
    el("section", "")
        .set("aria-labelledby", "duty")
        .kid(el("h2", "rule").set("id", "duty").text(say(Label::DutyTitle)))
        .kid(choose)
        .kid(el("div", "entries").each(fields, move |id| match WaterField::of(id) {
            Some(field) => one(field),
            None => el("div", "entry"),
        }))
        .kid(fold(Label::MoreOfDuty, WaterField::OF_LABEL))
        .kid(fold(Label::FeedOfDuty, WaterField::OF_FEED))
}

/// The grains of every layer, folded: most people leave them to the catalogue.
fn grains(there: There) -> El {
    let desk = there.desk;
    let layers = move || {
        let plan = desk.of_job(|job| Some(there.vessel.with(|id| job.plan_of(id))));
        let layers = plan.map(|plan| {
            let named = plan.layers.iter().filter(|layer| !layer.material.is_empty());
            named.map(|layer| layer.id.to_string()).collect::<Vec<_>>()
        });
        layers.unwrap_or_default()
    };
    let name = move |layer: &Id| {
        let plan = desk.of_job(|job| Some(there.vessel.with(|id| job.plan_of(id))))?;
        let layer = plan.layers.iter().find(|there| there.id == *layer)?;
        Some(desk.manner().material(&layer.material))
    };
    el("section", "").set("aria-label", desk.label(Label::Grains)).kid(el("div", "grains").each(layers, move |id| {
        let layer = Id::new(id);
        let of = WaterOf::Layer(there.vessel.get(), layer.clone());
        let lines = WaterField::OF_GRAINS.iter().map(|field| line(there, of.clone(), *field)).collect();
        let head = el("summary", "").kid(
            el("span", "how-name")
                .text(desk.label(Label::Grains))
                .text(" · ")
                .says(move || name(&layer).unwrap_or_default()),
        );
        el("details", "how")
            .kid(head)
            .kid(el("p", "survey-missing").text(desk.label(Label::GrainsHint)))
            .kid(el("div", "entries").kids(lines))
    }))
}

/// One entry of the site, of a vessel or of a layer's grains.
pub(super) fn line(there: There, of: WaterOf, field: WaterField) -> El {
    let desk = there.desk;
    let manner = desk.manner();
    let of = Rc::new(of);
    let id = match &*of {
        WaterOf::Site | WaterOf::Search => format!("site-{}", field.id()),
        WaterOf::Vessel(_) => format!("duty-{}", field.id()),
        WaterOf::Layer(_, layer) => format!("grain-{layer}-{}", field.id()),
    };
    let put = {
        let of = of.clone();
        Rc::new(move |entry: Option<Entry>, standing: Standing| {
            let entry = entry.map(|entry| SurveyEntry { entry, standing });
            desk.edit(Edit::Water { of: (*of).clone(), field, entry });
        })
    };
    let standing_now = {
        let of = of.clone();
        move || there.typed(&of, field).map_or(Standing::Measured, |typed| typed.standing)
    };
    let turn = {
        let (of, put) = (of.clone(), put.clone());
        move || {
            let Some(typed) = untrack(|| there.typed(&of, field)) else { return };
            let other = match typed.standing {
                Standing::Measured => Standing::Assumed,
                Standing::Assumed => Standing::Measured,
            };
            put(Some(typed.entry), other);
        }
    };
    let (entry_of, misread_of, problem_of, assumed_of) = (of.clone(), of.clone(), of.clone(), of);
    let kept = standing_now.clone();
    NumberLine {
        id,
        label: manner.water_field(field),
        hint: manner.water_hint(field),
        units: field.units(),
        usual: field.usual_unit(manner.metric),
        entry: Rc::new(move || there.typed(&entry_of, field).map(|typed| typed.entry)),
        misread: Rc::new(move || there.misread(&misread_of, field)),
        problem: Rc::new(move || there.problem(&problem_of, field)),
        put: Rc::new(move |entry| put(entry, untrack(&kept))),
        assumed: Rc::new(move || there.assumed(&assumed_of, field)),
        standing: Some(StandingMark {
            measured: Rc::new(move || standing_now() == Standing::Measured),
            turn: Rc::new(turn),
        }),
    }
    .show(desk)
}
