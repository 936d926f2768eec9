//! Which flows a backwash is judged at: sizes that are sold, what is fitted, and what could be asked for.

use super::{Bench, Stood};
use crate::hydraulics::duty::{CriterionOf, Duty, Site};
use crate::hydraulics::flow_control::FlowControl;
use crate::quantity::{Amount, Assumption, Known, Source, VolumeRate, cubic_metres_per_second};

/// The most there is, with what rounding leaves.
fn most(site: &Site) -> f64 {
    site.backwash_available.as_ref().map_or(f64::INFINITY, |flow| flow.value.value * (1.0 + 1e-9))
}

/// The flows to judge, smallest first, with how far the bed stands out at each: what is fitted, every size sold that the
/// site can feed and, where none of them is good, what could be asked for. So a large vessel isn't lost for want of a size
/// that is sold.
pub(crate) fn flows_to_judge(
    bench: &Bench,
    site: &Site,
    duty: &Duty,
    good: impl Fn(&Stood) -> bool,
) -> (Vec<Known<VolumeRate>>, Vec<Stood>) {
    let mut flows = settings_of(site, duty);
    let mut stood: Vec<Stood> = flows.iter().map(|flow| bench.stood(flow.value.value)).collect();
    if !stood.iter().any(good) {
        for flow in asked_for(bench, site, duty) {
            let at = flows.partition_point(|there| there.value < flow.value);
            if flows.get(at).is_none_or(|there| there.value > flow.value) {
                flows.insert(at, flow);
                stood.insert(at, bench.stood(flow.value.value));
            }
        }
    }
    (flows, stood)
}

/// What is fitted, and every size sold that the site can feed, smallest first.
fn settings_of(site: &Site, duty: &Duty) -> Vec<Known<VolumeRate>> {
    let most = most(site);
    let mut flows: Vec<Known<VolumeRate>> = FlowControl::all()
        .iter()
        .filter(|size| size.flow.value <= most)
        .map(|size| Known::catalogue(size.flow, size.source))
        .collect();
    if let Some(fitted) = &duty.flow_control {
        flows.retain(|flow| flow.value != fitted.value);
        let at = flows.iter().take_while(|flow| flow.value.value < fitted.value.value).count();
        flows.insert(at, *fitted);
    }
    flows
}

/// Flows beyond the largest size that is sold, in whole steps, for a bed that those don't lift: from the least that lifts
/// it in the warmest water and meets the purpose's rule, to a quarter above it, as far as the site can feed them.
fn asked_for(bench: &Bench, site: &Site, duty: &Duty) -> Vec<Known<VolumeRate>> {
    let area = bench.bed.area.value.value;
    let rules = duty.purpose.criteria().filter(|rule| rule.quantity == CriterionOf::BackwashRate);
    let ruled = rules.filter_map(|rule| rule.low.map(Amount::si)).fold(0.0, f64::max);
    let Some(lifts) = bench.bed.speed_for(bench.warm, bench.minimum, bench.weights.likely) else { return Vec::new() };
    let least = area * lifts.max(ruled);
    let sold = FlowControl::all().last().map_or(0.0, |size| size.flow.value);
    let step = Assumption::FlowControlStep.ratio();
    let first = (least / step - 1e-9).ceil();
    let flows = (0..MOST_STEPS).map(|more| (first + f64::from(more)) * step);
    flows
        .take_while(|flow| *flow <= (ENOUGH * least).max(first * step) && *flow <= most(site))
        .filter(|flow| *flow > sold)
        .map(|flow| Known::assumed(cubic_metres_per_second(flow), Source::OwnRule))
        .collect()
}

/// So far above the least flow a larger one is still looked at.
const ENOUGH: f64 = 1.25;
/// No more steps than this, however wide the vessel.
const MOST_STEPS: u32 = 12;
