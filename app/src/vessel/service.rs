//! The bed in service, each figure with how it knows.

use bedwright_calc::fill::weights::Weights;
use bedwright_calc::hydraulics::service::Rates;
use bedwright_job::answers::water::WaterAnswers;
use bedwright_job::words::{Label, Manner};

use super::results::{Shown, shown};
use crate::desk::{Desk, Water, with_water};
use crate::parts::how::figure_line;
use crate::parts::live::{El, el};

type Reads = fn(&WaterAnswers, Manner) -> Shown;

fn usual(water: &WaterAnswers) -> Option<&Rates> {
    water.service.as_ref()?.usual.as_ref()
}

fn peak(water: &WaterAnswers) -> Option<&Rates> {
    water.service.as_ref()?.peak.as_ref()
}

fn washing(water: &WaterAnswers) -> Option<&Rates> {
    water.service.as_ref()?.while_washing.as_ref()
}

/// What is shown, in this order.
const SHOWN: [(Label, Reads); 9] = [
    (Label::FlowPerArea, |water, manner| shown(manner, &usual(water)?.flow_per_area)),
    (Label::ContactTime, |water, manner| shown(manner, &usual(water)?.contact_time)),
    (Label::ContactTimePair, |water, manner| shown(manner, usual(water)?.contact_time_pair.as_ref()?)),
    (Label::BedVolumes, |water, manner| shown(manner, &usual(water)?.bed_volumes)),
    (Label::PressureLoss, |water, manner| shown(manner, &usual(water)?.loss)),
    (Label::PeakFlowPerArea, |water, manner| shown(manner, &peak(water)?.flow_per_area)),
    (Label::PeakPressureLoss, |water, manner| shown(manner, &peak(water)?.loss)),
    (Label::WashingFlowPerArea, |water, manner| shown(manner, &washing(water)?.flow_per_area)),
    (Label::WashingContactTime, |water, manner| shown(manner, &washing(water)?.contact_time)),
];

fn weights(water: &WaterAnswers) -> Option<&Weights> {
    water.weights.as_ref()
}

/// What it weighs.
const WEIGHTS: [(Label, Reads); 5] = [
    (Label::WeightDrained, |water, manner| {
        let weights = weights(water)?;
        let (low, high) = (weights.drained_low.as_ref().ok()?, weights.drained_high.as_ref().ok()?);
        let (text, grounds) = shown(manner, high)?;
        Some(([&manner.mass(low.value), " – ", &text].concat(), grounds))
    }),
    (Label::WeightOperating, |water, manner| shown(manner, weights(water)?.operating.as_ref().ok()?)),
    (Label::WeightWaterFull, |water, manner| shown(manner, weights(water)?.water_full.as_ref().ok()?)),
    (Label::FloorLoad, |water, manner| shown(manner, weights(water)?.floor_load.as_ref().ok()?)),
    (Label::LiftedSurface, |water, manner| shown(manner, water.expanded_surface.as_ref()?)),
];

/// Weights with water, as lines of a part.
pub fn weight_lines(part: El, desk: Desk, water: Water) -> El {
    lines(part, desk, water, &WEIGHTS)
}

fn lines(part: El, desk: Desk, water: Water, shown: &'static [(Label, Reads)]) -> El {
    let manner = desk.manner();
    shown.iter().fold(part, |part, (label, read)| {
        figure_line(part, desk.label(*label), move || {
            with_water(water, |water| water.and_then(|water| read(water, manner)))
        })
    })
}

/// Flow per area, contact time, bed volumes, pressure lost.
pub fn service(desk: Desk, water: Water) -> El {
    let told = move || {
        let waits = with_water(water, |water| match water.filter(|water| water.bed.is_some()) {
            None => Some(Label::WaterWaits),
            Some(water) => usual(water).is_none().then_some(Label::NoServiceFlow),
        });
        waits.map_or(String::new(), |waits| desk.label(waits).to_owned())
    };
    let part = el("section", "results")
        .set("aria-labelledby", "service")
        .kid(el("h2", "rule").set("id", "service").text(desk.label(Label::Service)))
        .kid(el("p", "survey-missing").says(told));
    lines(part, desk, water, &SHOWN)
}
