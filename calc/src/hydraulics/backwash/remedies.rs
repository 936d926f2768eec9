//! What would mend a backwash, found by solving.

use super::{Backwash, Bench, Setting};
use crate::fill::Layer;
use crate::hydraulics::duty::{Duty, Site};
use crate::quantity::{
    Assumption, Basis, Mark, Reason, Remedy, Source, Subject, Verdict, cubic_metres_per_second, metres,
};
use crate::vessel::{NominalDiameter, Vessel};

#[expect(clippy::too_many_arguments, reason = "the remedies look at everything there is")]
pub(super) fn verdict(
    answer: &Backwash,
    judged: &Setting,
    bench: &Bench,
    vessel: &Vessel,
    layers: &[Layer],
    site: &Site,
    duty: &Duty,
    basis: Basis,
) -> Verdict {
    let mut remedies = Vec::new();
    match judged.mark {
        Mark::Fine => {}
        Mark::SetOnSite => remedies.push(Remedy::DrainCheck {
            flow: judged.flow.value.into(),
            minutes: Assumption::DrainCheckMinutes.amount(),
        }),
        Mark::Caution | Mark::Stop => remedies = mend(answer, judged, bench, vessel, layers, site, duty),
    }
    Verdict {
        subject: Subject::Backwash { flow: judged.flow.value },
        mark: judged.mark,
        reason: judged.reason,
        remedies,
        basis,
        source: Source::OwnRule,
    }
}

/// The smallest changes that would make the likely line pass at both ends, found by solving.
fn mend(
    answer: &Backwash,
    judged: &Setting,
    bench: &Bench,
    vessel: &Vessel,
    layers: &[Layer],
    site: &Site,
    duty: &Duty,
) -> Vec<Remedy> {
    let mut remedies = Vec::new();
    if duty.flow_control.is_some()
        && let Some(better) = answer.settings.iter().find(|setting| setting.mark <= Mark::SetOnSite)
    {
        remedies.push(Remedy::FlowControl { flow: better.flow.value.into() });
    }
    if let Some((winter, summer)) = answer.two {
        remedies.push(Remedy::TwoFlowControls { cold: winter.into(), warm: summer.into() });
    }
    let lift = answer.warm.lifts_from[1].as_ref().map(|flow| flow.value.value);
    let too_little = matches!(judged.reason, Reason::LiftsTooLittle { .. });
    if too_little && let (Some(needed), Some(available)) = (lift, &site.backwash_available) {
        let area = bench.bed.area.value.value;
        if needed > available.value.value {
            // The same bed in a narrower vessel: the speed stays, the flow falls with the section.
            let diameter = 2.0 * (available.value.value / (needed / area) / std::f64::consts::PI).sqrt();
            let inside = Assumption::InsideOfNominal.ratio();
            let narrower = NominalDiameter::all().iter().rev().find(|size| size.diameter.value * inside <= diameter);
            if let Some(size) = narrower {
                remedies.push(Remedy::NarrowerVessel { nominal: size.diameter.into() });
            }
            remedies.push(Remedy::MoreBackwash { flow: cubic_metres_per_second(needed).into() });
        }
    }
    let top = bench.bed.media_layers().last();
    let now = top.and_then(|top| {
        let layer = layers.get(top.index)?;
        Some(top.volume.value.value / layer.pack.fills(&layer.density())?)
    });
    if let (Some(packs), Some(now)) = (answer.most_packs, now)
        && f64::from(packs) < now
    {
        remedies.push(Remedy::FewerPacks { packs: packs.into() });
    }
    if let (false, Some(needed)) = (too_little, lift)
        && site.backwash_available.is_none_or(|most| needed <= most.value.value)
    {
        // At the least flow that lifts in warm water, what the bed lacks in cold water.
        let stands = bench.bed.expanded(bench.cold, needed / bench.bed.area.value.value, bench.weights.likely);
        let lacking = (stands - bench.bed.room.value) * bench.bed.media;
        if lacking.is_finite() && lacking > 0.0 {
            let more = lacking / vessel.cavity.section_at(vessel.cavity.bottom_tangent()).value;
            if more.is_finite() {
                remedies.push(Remedy::MoreRoom { length: metres(more).into() });
            }
        }
    }
    remedies
}

/// Said where no size can be fed at all.
pub(super) fn no_flow(answer: &Backwash, bench: &Bench, site: &Site, basis: Basis) -> Verdict {
    let available = site.backwash_available.as_ref().map_or(0.0, |flow| flow.value.value);
    let judged = bench.judge(&bench.stood(available));
    let needed = answer.warm.lifts_from[1].as_ref().map(|flow| flow.value);
    Verdict {
        subject: Subject::Backwash { flow: cubic_metres_per_second(available) },
        mark: Mark::Stop,
        reason: judged.reason,
        remedies: needed.map(|flow| Remedy::MoreBackwash { flow: flow.into() }).into_iter().collect(),
        basis,
        source: Source::OwnRule,
    }
}
