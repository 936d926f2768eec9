//! What becomes of grains in a backwash: fines that leave, slots that hold them, layers that mix.

use super::{Bench, Setting};
use crate::hydraulics::bed::{Bed, BedLayer};
use crate::hydraulics::duty::Duty;
use crate::hydraulics::expansion::between;
use crate::hydraulics::fluidisation::{ergun_open, wen_yu_open};
use crate::order::Between as _;
use crate::quantity::{
    Amount, Assumption, Basis, Mark, Reason, Remedy, Source, Subject, Verdict, cubic_metres_per_second,
    kilograms_per_cubic_metre, metres, metres_per_second,
};

/// Whether fines may leave although the flow is below the fall of the finest kept grain.
pub(crate) fn carry_over(bed: &Bed, bench: &Bench, judged: &Setting, basis: Basis) -> Option<Verdict> {
    let settle = bench.settle?;
    let v = judged.flow_per_area.value.value;
    let limit = Assumption::CarryOverCaution;
    let reason = Reason::CarriesAway { speed: metres_per_second(v).into(), settling: metres_per_second(settle).into() };
    // Where even the finest kept grain leaves, the verdict on the flow itself says so.
    let mark = bench.carries(v)?;
    let slower = cubic_metres_per_second(limit.ratio() * settle * bed.area.value.value);
    let remedies = if mark == Mark::Caution { vec![Remedy::LessBackwash { flow: slower.into() }] } else { Vec::new() };
    Some(Verdict { subject: Subject::CarryOver, mark, reason, remedies, basis, source: limit.source() })
}

pub(super) fn upper_slots(bed: &Bed, duty: &Duty, held: Option<bool>) -> Option<Verdict> {
    let held = held?;
    let (slot, grain) = (duty.upper_slot_width.as_ref()?, &bed.media_layers().last()?.grains.low);
    let limit = Assumption::SlotCaution;
    let mark = if !held {
        Mark::Stop
    } else if slot.value.value > limit.ratio() * grain.value.value {
        Mark::Caution
    } else {
        Mark::Fine
    };
    let remedies = if mark == Mark::Fine {
        Vec::new()
    } else {
        vec![Remedy::CoarserGrain { smallest: metres(slot.value.value / limit.ratio()).into() }]
    };
    Some(Verdict {
        subject: Subject::UpperSlot,
        mark,
        reason: Reason::Slot { slot: slot.value.into(), grain: grain.value.into() },
        remedies,
        basis: slot.basis.weaker(grain.basis),
        source: limit.source(),
    })
}

/// Whether neighbouring media layers change places when lifted: what weighs more in water, grains and gaps together,
/// goes down.
pub(super) fn mixing(bed: &Bed, bench: &Bench, judged: Option<&Setting>, basis: Basis) -> Vec<Verdict> {
    let Some(judged) = judged else { return Vec::new() };
    let v = judged.flow_per_area.value.value;
    let heavy = |layer: &BedLayer, share: f64| {
        let solid = layer.solid(share)?;
        let weigh = |open: f64| {
            let open = open.between(solid.voidage, 1.0);
            bench.cold.density + (1.0 - open) * (solid.density - bench.cold.density)
        };
        let low = weigh(wen_yu_open(&solid, bench.cold, v));
        let high = weigh(ergun_open(&solid, bench.cold, v));
        Some(between(low, high, bench.weights.likely))
    };
    let media: Vec<&BedLayer> = bed.media_layers().collect();
    let mut verdicts = Vec::new();
    for pair in media.windows(2) {
        let [lower, upper] = pair else { continue };
        let (Some(fine_below), Some(coarse_above), Some(below), Some(above)) =
            (heavy(lower, 0.1), heavy(upper, 0.9), heavy(lower, 0.5), heavy(upper, 0.5))
        else {
            continue;
        };
        let density = |x: f64| Amount::Density(kilograms_per_cubic_metre(x));
        let (mark, reason) = if above > below {
            (Mark::Stop, Reason::HeavierAbove { below: density(below), above: density(above) })
        } else if coarse_above > fine_below {
            (Mark::SetOnSite, Reason::EdgesMix { below: density(fine_below), above: density(coarse_above) })
        } else {
            (Mark::Fine, Reason::EdgesMix { below: density(fine_below), above: density(coarse_above) })
        };
        let remedies = if mark == Mark::Stop { vec![Remedy::SwapLayers] } else { Vec::new() };
        let subject = Subject::Mixing { lower: lower.index, upper: upper.index };
        verdicts.push(Verdict { subject, mark, reason, remedies, basis, source: Source::FromMemory });
    }
    verdicts
}
