//! What a loader must be told about a fill: gap, slots, neighbours, cover and room.

use super::{Freeboard, Layer, LayerFill, Role};
use crate::material::Kind;
use crate::quantity::{
    Assumption, Fault, Known, Mark, Problem, Reason, Remedy, Subject, Term, Verdict, cubic_metres, metres,
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
    let (mark, reason, remedies) = if leaned.value < leaned_limit.ratio() * ROUNDING {
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
    let mut verdicts = Vec::new();
    for (index, (layer, answer)) in layers.iter().zip(answers).enumerate() {
        let touches = index == 0 || answer.as_ref().is_ok_and(|fill| fill.bottom.value.value < top_slot);
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
    if lower.material.kind != Kind::Gravel {
        return None;
    }
    let (low, high) = (&lower.material, &upper.material);
    let (limit, ratio) = if high.kind == Kind::Gravel {
        (Assumption::NeighbourRatio, low.grain_high.value.value / high.grain_low.value.value)
    } else {
        let share = |of: &crate::material::Material, share: f64| {
            of.grain_low.value.value + share * (of.grain_high.value.value - of.grain_low.value.value)
        };
        (Assumption::FilterRatio, share(low, 0.15) / share(high, 0.85))
    };
    let mark = if ratio > limit.ratio() / ROUNDING { Mark::Caution } else { Mark::Fine };
    let reason = match limit {
        Assumption::NeighbourRatio => Reason::SizeRatio { ratio: ratio.into(), limit: limit.ratio().into() },
        _ => Reason::FilterRatio { ratio: ratio.into(), limit: limit.ratio().into() },
    };
    Some(Verdict {
        subject: Subject::Neighbours { lower: index },
        mark,
        reason,
        remedies: if mark == Mark::Fine { vec![] } else { vec![Remedy::LayerBetween] },
        basis: low.grain_high.basis.weaker(high.grain_low.basis),
        source: limit.source(),
    })
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
    let missing = vessel.cavity.free_below(slot.value.value) - vessel.cavity.free_below(fill.top.value.value);
    Some(Verdict {
        subject: Subject::Cover,
        mark: if covered { Mark::Fine } else { Mark::Caution },
        reason: Reason::CoverAboveSlot { cover: metres(cover).into() },
        remedies: if covered { vec![] } else { vec![Remedy::MoreUnderbed { volume: cubic_metres(missing).into() }] },
        basis: slot.basis.weaker(fill.top.basis),
        source: crate::quantity::Source::CommonPractice,
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
        mark: Mark::Stop,
        reason: Reason::Room { freeboard: freeboard.length.value.into() },
        remedies: fewer_packs(vessel, layer, vessel.cavity.free_below(fill.bottom.value.value)),
        basis: freeboard.length.basis,
        source: crate::quantity::Source::CommonPractice,
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
        source: crate::quantity::Source::Arithmetic,
    })
}

/// The largest whole number of packs of a layer that stays below the ceiling.
fn fewer_packs(vessel: &Vessel, layer: &Layer, below: f64) -> Vec<Remedy> {
    let room = vessel.cavity.free_below(vessel.ceiling().value) - below;
    match layer.pack.fills(&layer.bulk_density) {
        Some(pack) if pack > 0.0 && room > 0.0 => {
            let packs = (room / pack + 1e-9).floor().clamp(0.0, 1e6) as u32;
            vec![Remedy::FewerPacks { packs: packs.into() }]
        }
        _ => vec![Remedy::FewerPacks { packs: 0_u32.into() }],
    }
}
