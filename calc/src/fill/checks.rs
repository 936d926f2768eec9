//! What a loader must be told about a fill: gap, slots, neighbours, cover and room.

use super::{Freeboard, Layer, LayerFill, Role};
use crate::material::Kind;
use crate::order::Between as _;
use crate::quantity::{
    Assumption, Fault, Known, Mark, Problem, Reason, Remedy, Source, Subject, Term, Verdict, cubic_metres, metres,
};
use crate::vessel::Vessel;
use crate::vessel::riser::{gap_centred, gap_leaned};

/// Limits are met when missed by less than what rounding in the arithmetic leaves.
const ROUNDING: f64 = 1.0 - 1e-9;

pub(crate) fn verdicts(
    vessel: &Vessel,
    layers: &[Layer],
    answers: &[Result<LayerFill, Problem>],
    freeboard: Option<&Freeboard>,
) -> Vec<Verdict> {
    let mut verdicts = Vec::new();
    for (index, layer) in layers.iter().enumerate() {
        verdicts.extend(gap(vessel, layer, index));
    }
    verdicts.extend(slots(vessel, layers, answers));
    for (index, pair) in layers.windows(2).enumerate() {
        if let [lower, upper] = pair {
            verdicts.extend(neighbours(lower, upper, index));
        }
    }
    verdicts.extend(cover(vessel, layers, answers));
    if let Some(freeboard) = freeboard {
        verdicts.extend(room(vessel, layers, answers, freeboard));
    }
    verdicts
}

/// Whether a layer's grains pass between riser and bore.
fn gap(vessel: &Vessel, layer: &Layer, index: usize) -> Option<Verdict> {
    let riser = vessel.measures.riser.as_ref()?;
    if !vessel.measures.opening.pours_beside_riser() {
        return None;
    }
    let (outside, bore, grain) = (&riser.outside_diameter, &vessel.measures.clear_bore, &layer.material.grain_high);
    let centred = gap_centred(outside, bore, grain).ok()?;
    let leaned = gap_leaned(outside, bore, grain).ok()?;
    let open = bore.value.value - outside.value.value;
    let (centred_limit, leaned_limit) = (Assumption::GapCentredCaution, Assumption::GapLeanedStop);
    let smaller = |limit: Assumption, gap: f64| Remedy::SmallerGrain { largest: metres(gap / limit.ratio()).into() };
    let held_limit = Assumption::GapHeldStop;
    let (mark, reason, remedies) = if index > 0 && centred.value < held_limit.ratio() * ROUNDING {
        // The layer below holds the riser: it can't be leaned over any more.
        (
            Mark::Stop,
            Reason::GapHeld { grains: centred.value.into() },
            vec![Remedy::FillPortOrManway, smaller(held_limit, open / 2.0)],
        )
    } else if index == 0 && leaned.value < leaned_limit.ratio() * ROUNDING {
        (
            Mark::Stop,
            Reason::GapLeaned { grains: leaned.value.into(), wanted: leaned_limit.ratio().into() },
            vec![Remedy::FillPortOrManway, smaller(leaned_limit, open)],
        )
    } else if centred.value < centred_limit.ratio() * ROUNDING {
        (
            Mark::Caution,
            Reason::GapCentred { grains: centred.value.into(), wanted: centred_limit.ratio().into() },
            vec![Remedy::PourSlowly, smaller(centred_limit, open / 2.0)],
        )
    } else {
        (Mark::Fine, Reason::GapCentred { grains: centred.value.into(), wanted: centred_limit.ratio().into() }, vec![])
    };
    let source = if mark == Mark::Stop { leaned_limit.source() } else { centred_limit.source() };
    Some(Verdict { subject: Subject::Gap { layer: index }, mark, reason, remedies, basis: centred.basis, source })
}

/// Whether the slots hold the grains that touch them: those of every layer that reaches below the top slot.
fn slots(vessel: &Vessel, layers: &[Layer], answers: &[Result<LayerFill, Problem>]) -> Vec<Verdict> {
    let collector = &vessel.measures.bottom_collector;
    let Some(slot) = collector.slot_width() else { return Vec::new() };
    let top_slot = collector.top_slot().or(collector.floor()).map_or(0.0, |height| height.value.value);
    let bottom_slot = collector.bottom_slot().map_or(0.0, |height| height.value);
    let mut verdicts = Vec::new();
    for (index, (layer, answer)) in layers.iter().zip(answers).enumerate() {
        let touches = match answer {
            Ok(fill) => {
                fill.top.value.value > bottom_slot
                    && (fill.bottom.value.value < top_slot || fill.bottom.value.value <= bottom_slot)
            }
            Err(_) => index == 0,
        };
        if touches {
            verdicts.push(slot_verdict(&slot, layer, index));
        }
    }
    verdicts
}

fn slot_verdict(slot: &Known<crate::quantity::Length>, layer: &Layer, index: usize) -> Verdict {
    let grain = &layer.material.grain_low;
    let ratio = slot.value.value / grain.value.value;
    let limit = Assumption::SlotCaution;
    let mark = if ratio > 1.0 / ROUNDING {
        Mark::Stop
    } else if ratio > limit.ratio() / ROUNDING {
        Mark::Caution
    } else {
        Mark::Fine
    };
    let remedies = if mark == Mark::Fine {
        Vec::new()
    } else {
        vec![Remedy::CoarserGrain { smallest: metres(slot.value.value / limit.ratio()).into() }, Remedy::LayerBetween]
    };
    Verdict {
        subject: Subject::Slot { layer: index },
        mark,
        reason: Reason::Slot { slot: slot.value.into(), grain: grain.value.into() },
        remedies,
        basis: slot.basis.weaker(grain.basis),
        source: limit.source(),
    }
}

/// Whether the grains above stay above: gravel on gravel by the largest over the smallest, media on gravel by the
/// filter criterion. Media on media is meant to part by settling, not by size of pores.
fn neighbours(lower: &Layer, upper: &Layer, index: usize) -> Option<Verdict> {
    let (low, high) = (&lower.material, &upper.material);
    let basis = low.grain_high.basis.weaker(high.grain_low.basis);
    let subject = Subject::Neighbours { lower: index };
    let coarser_above =
        high.kind == Kind::Gravel && high.grain_high.value.value > low.grain_high.value.value / ROUNDING;
    if coarser_above {
        return Some(Verdict {
            subject,
            mark: Mark::Caution,
            reason: Reason::CoarserAbove { below: low.grain_high.value.into(), above: high.grain_high.value.into() },
            remedies: vec![Remedy::SwapLayers],
            basis,
            source: Source::CommonPractice,
        });
    }
    if low.kind != Kind::Gravel {
        return None;
    }
    let (limit, ratio, source) = if high.kind == Kind::Gravel {
        let limit = Assumption::NeighbourRatio;
        (limit, low.grain_high.value.value / high.grain_low.value.value, limit.source())
    } else {
        let limit = Assumption::FilterRatio;
        let d15 = low.grain_low.value.value + 0.15 * (low.grain_high.value.value - low.grain_low.value.value);
        let (d85, source) = d85(high);
        (limit, d15 / d85, source.unwrap_or(limit.source()))
    };
    let mark = if ratio > limit.ratio() / ROUNDING { Mark::Caution } else { Mark::Fine };
    let reason = match limit {
        Assumption::NeighbourRatio => Reason::SizeRatio { ratio: ratio.into(), limit: limit.ratio().into() },
        _ => Reason::FilterRatio { ratio: ratio.into(), limit: limit.ratio().into() },
    };
    let remedies = if mark == Mark::Fine { vec![] } else { vec![Remedy::LayerBetween] };
    Some(Verdict { subject, mark, reason, remedies, basis, source })
}

/// The size that 85 % by mass is finer than: of a log-normal spread with the material's effective size and uniformity,
/// never above its upper sieve. Where those aren't known it is taken between the sieves, which is only from memory.
fn d85(material: &crate::material::Material) -> (f64, Option<Source>) {
    /// Standard normal deviates of 10, 60 and 85 %.
    const Z: (f64, f64, f64) = (-1.281_551_6, 0.253_347_1, 1.036_433_4);
    let (low, high) = (material.grain_low.value.value, material.grain_high.value.value);
    match (&material.effective_size, &material.uniformity) {
        (Some(size), Some(uniformity)) => {
            let (d10, spread) =
                (f64::midpoint(size.low.value, size.high.value), f64::midpoint(uniformity.low, uniformity.high));
            let share = (Z.2 - Z.0) / (Z.1 - Z.0);
            ((d10 * libm::pow(spread, share)).min(high), None)
        }
        _ => (low + 0.85 * (high - low), Some(Source::FromMemory)),
    }
}

/// Whether the underbed covers the top slot; nothing is said where there is no underbed.
fn cover(vessel: &Vessel, layers: &[Layer], answers: &[Result<LayerFill, Problem>]) -> Option<Verdict> {
    let slot = vessel.measures.bottom_collector.top_slot()?;
    let mut surface: Option<&LayerFill> = None;
    for (layer, answer) in layers.iter().zip(answers) {
        if layer.role == Role::Underbed {
            surface = Some(answer.as_ref().ok()?);
        }
    }
    let fill = surface?;
    let cover = fill.top.value.value - slot.value.value;
    let covered = cover >= -1e-9;
    let mark = if covered {
        Mark::Fine
    } else if -cover <= fill.tape.spread.value {
        Mark::SetOnSite
    } else {
        Mark::Caution
    };
    let missing = vessel.cavity.free_below(slot.value.value) - vessel.cavity.free_below(fill.top.value.value);
    Some(Verdict {
        subject: Subject::Cover,
        mark,
        reason: Reason::CoverAboveSlot { cover: metres(cover).into() },
        remedies: if covered { vec![] } else { vec![Remedy::MoreUnderbed { volume: cubic_metres(missing).into() }] },
        basis: slot.basis.weaker(fill.top.basis),
        source: Source::CommonPractice,
    })
}

/// Whether the media surface stays below the upper collector, or the upper tangent line without one.
fn room(
    vessel: &Vessel,
    layers: &[Layer],
    answers: &[Result<LayerFill, Problem>],
    freeboard: &Freeboard,
) -> Option<Verdict> {
    let length = freeboard.length.value.value;
    if length >= 0.0 {
        return None;
    }
    let (layer, fill) = (layers.last()?, answers.last()?.as_ref().ok()?);
    Some(Verdict {
        subject: Subject::Freeboard,
        // Within what a reading may be off, only the tape decides.
        mark: if -length <= fill.tape.spread.value { Mark::SetOnSite } else { Mark::Stop },
        reason: Reason::Room { freeboard: freeboard.length.value.into() },
        remedies: fewer_packs(vessel, layer, vessel.cavity.free_below(fill.bottom.value.value)),
        basis: freeboard.length.basis,
        source: Source::CommonPractice,
    })
}

/// What to say with a layer that does not fit.
pub(crate) fn no_room(vessel: &Vessel, layer: &Layer, index: usize, below: f64, problem: &Problem) -> Option<Verdict> {
    let Fault::DoesNotFit { needs, room } = problem.fault else { return None };
    if problem.term != Term::LayerVolume {
        return None;
    }
    debug_assert!(problem.layer.is_none_or(|layer| layer == index));
    Some(Verdict {
        subject: Subject::Freeboard,
        mark: Mark::Stop,
        reason: Reason::NoRoom { needs, room },
        remedies: fewer_packs(vessel, layer, below),
        basis: vessel.inside_diameter.basis,
        source: Source::Arithmetic,
    })
}

/// The largest whole number of packs of a layer that stays below the ceiling.
fn fewer_packs(vessel: &Vessel, layer: &Layer, below: f64) -> Vec<Remedy> {
    let room = vessel.cavity.free_below(vessel.ceiling().value) - below;
    match layer.pack.fills(&layer.bulk_density) {
        Some(pack) if pack > 0.0 && room > 0.0 => {
            let packs = (room / pack + 1e-9).floor().between(0.0, 1e6) as u32;
            vec![Remedy::FewerPacks { packs: packs.into() }]
        }
        _ => vec![Remedy::FewerPacks { packs: 0_u32.into() }],
    }
}
