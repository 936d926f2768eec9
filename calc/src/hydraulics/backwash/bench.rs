//! What a judgement of one flow needs, and what comes of it.

use crate::fill::Layer;
use crate::hydraulics::bed::Bed;
use crate::hydraulics::duty::Duty;
use crate::hydraulics::evidence::Lines;
use crate::hydraulics::expansion::{Expansion, Weights, between, together};
use crate::hydraulics::fluidisation::settling;
use crate::quantity::{
    Amount, Assumption, Mark, Problem, Reason, VolumeRate, cubic_metres_per_second, metres_per_second,
};
use crate::vessel::Vessel;
use crate::water::{Fluid, Water};

/// Everything that a judgement of one flow needs.
pub(crate) struct Bench<'a> {
    pub(super) bed: &'a Bed,
    pub(super) cold: Fluid,
    pub(super) warm: Fluid,
    pub(super) minimum: f64,
    pub(super) weights: Weights,
    /// Fall of the finest kept grain in the coldest water.
    pub(super) settle: Option<f64>,
    /// Whether an upper collector with slots that hold the finest grain stands at the ceiling.
    held: bool,
}

/// How far each media layer stands out at a flow, whatever its volume: the costly part of a judgement.
#[derive(Clone, Debug)]
pub(crate) struct Stood {
    /// Flow per area, m/s.
    pub(crate) v: f64,
    cold: Vec<(f64, f64)>,
    warm: Vec<(f64, f64)>,
}

/// What came of one flow: how good, and why not better.
pub(crate) struct Judged {
    pub(crate) mark: Mark,
    pub(crate) reason: Reason,
    pub(super) cold: Expansion,
    pub(super) warm: Expansion,
    /// How far the likely line stays inside both limits, as an expansion; what the best of several is chosen by.
    pub(crate) margin: f64,
}

impl<'a> Bench<'a> {
    pub(crate) fn new(
        vessel: &Vessel,
        bed: &'a Bed,
        (cold, warm): (&Water, &Water),
        duty: &Duty,
        lines: &Lines,
    ) -> Result<Bench<'a>, Problem> {
        bed.sinks_in(cold)?;
        bed.sinks_in(warm)?;
        Ok(Bench {
            bed,
            cold: cold.fluid(),
            warm: warm.fluid(),
            minimum: duty.minimum_expansion.value,
            weights: lines.weights(),
            settle: finest_settling(bed, cold.fluid()),
            held: slots_hold(vessel, bed, duty) == Some(true),
        })
    }

    pub(crate) fn stood(&self, flow: f64) -> Stood {
        let v = flow / self.bed.area.value.value;
        let each = |fluid: Fluid| self.bed.lifted.iter().map(|layer| layer.expansion(fluid, v)).collect();
        Stood { v, cold: each(self.cold), warm: each(self.warm) }
    }

    pub(crate) fn judge(&self, stood: &Stood) -> Judged {
        self.judge_with(stood, self.bed.lifted.last().map_or(0.0, |top| top.volume))
    }

    /// The same with another volume of the top media layer.
    fn judge_with(&self, stood: &Stood, top: f64) -> Judged {
        let v = stood.v;
        let (last, now) =
            (self.bed.lifted.len().saturating_sub(1), self.bed.lifted.last().map_or(0.0, |top| top.volume));
        let media = self.bed.media + (top - now);
        let volumes =
            || self.bed.lifted.iter().enumerate().map(|(i, layer)| if i == last { top } else { layer.volume });
        let cold_lines = together(volumes().zip(stood.cold.iter().copied()), media);
        let warm_lines = together(volumes().zip(stood.warm.iter().copied()), media);
        let on = |lines: (f64, f64), weight: f64| between(lines.0, lines.1, weight);
        let room = (self.bed.ceiling - self.bed.fixed - media) / media;
        let w = self.weights;
        let settle = self.settle;
        let likely = (on(cold_lines, w.likely), on(warm_lines, w.likely));
        let lift = |share: f64| Reason::LiftsTooLittle { expansion: amount(share), wanted: self.minimum.into() };
        let stand = |share: f64| Reason::StandsTooHigh { expansion: amount(share), room: room.into() };
        let (mark, reason) = if settle.is_some_and(|settle| v >= settle) {
            let settle = metres_per_second(settle.unwrap_or(0.0)).into();
            (Mark::Stop, Reason::CarriesAway { speed: metres_per_second(v).into(), settling: settle })
        } else if on(warm_lines, w.high) < self.minimum {
            (Mark::Stop, lift(on(warm_lines, w.high)))
        } else if on(cold_lines, w.low) > room && !self.held {
            (Mark::Stop, stand(on(cold_lines, w.low)))
        } else if likely.1 < self.minimum {
            (Mark::Caution, lift(likely.1))
        } else if likely.0 > room {
            (Mark::Caution, stand(likely.0))
        } else {
            let sure = on(warm_lines, w.low) >= self.minimum && on(cold_lines, w.high) <= room;
            let mark = if sure { Mark::Fine } else { Mark::SetOnSite };
            (mark, Reason::Stands { cold: likely.0.into(), warm: likely.1.into(), room: room.into() })
        };
        Judged {
            mark,
            reason,
            cold: Expansion::on(cold_lines, w),
            warm: Expansion::on(warm_lines, w),
            margin: (likely.1 - self.minimum).min(room - likely.0),
        }
    }

    /// Whether fines may leave at a speed below the fall of the finest kept grain; none where even that leaves.
    pub(crate) fn carries(&self, v: f64) -> Option<Mark> {
        let settle = self.settle.filter(|settle| v < *settle)?;
        Some(if v > Assumption::CarryOverCaution.ratio() * settle { Mark::Caution } else { Mark::Fine })
    }
}

/// A share, or a very large one where grains leave.
fn amount(share: f64) -> Amount {
    Amount::Ratio(if share.is_finite() { share } else { f64::MAX })
}

/// The slowest fall of the finest kept grain of any layer: of the size that 5 % are finer than, never below the sieve.
pub(crate) fn finest_settling(bed: &Bed, fluid: Fluid) -> Option<f64> {
    bed.media_layers()
        .filter_map(|layer| layer.solid(FINEST))
        .map(|solid| settling(&solid, fluid))
        .fold(None, |least: Option<f64>, v| Some(least.map_or(v, |least| least.min(v))))
}

/// The finest grain that must stay: 5 % by mass are finer.
pub(crate) const FINEST: f64 = 0.05;

/// Whether the upper collector's slots hold the finest grain of the top layer; none where there is nothing to say.
pub(super) fn slots_hold(vessel: &Vessel, bed: &Bed, duty: &Duty) -> Option<bool> {
    vessel.measures.upper_collector.as_ref()?;
    let slot = duty.upper_slot_width.as_ref()?;
    let top = bed.media_layers().last()?;
    Some(slot.value.value <= top.grains.low.value.value)
}

/// The best mark with the widest margin; of flows that all lift nothing the largest.
pub(crate) fn best(margins: &[(Mark, f64)]) -> Option<usize> {
    let mut found: Option<(usize, Mark, f64)> = None;
    for (at, &(mark, margin)) in margins.iter().enumerate() {
        if found.is_none_or(|(_, best, wide)| mark < best || mark == best && margin >= wide) {
            found = Some((at, mark, margin));
        }
    }
    found.map(|(at, ..)| at)
}

/// The smallest size that lifts in the warmest water and the largest that stays in the coldest.
pub(super) fn two_sizes(bench: &Bench, flows: &[f64]) -> Option<(VolumeRate, VolumeRate)> {
    let w = bench.weights.likely;
    let at = |flow: f64, fluid: Fluid| bench.bed.expanded(fluid, flow / bench.bed.area.value.value, w);
    let good = |flow: f64, fluid: Fluid| {
        let expansion = at(flow, fluid);
        expansion >= bench.minimum && expansion <= bench.bed.room.value
    };
    let winter = flows.iter().rev().find(|flow| good(**flow, bench.cold))?;
    let summer = flows.iter().find(|flow| good(**flow, bench.warm))?;
    Some((cubic_metres_per_second(*winter), cubic_metres_per_second(*summer)))
}

/// The largest whole number of packs of the top media layer for which some size serves the whole year.
pub(crate) fn most_packs(layers: &[Layer], bench: &Bench, flows: &[Stood]) -> Option<u32> {
    let top = bench.bed.media_layers().last()?;
    let layer = layers.get(top.index)?;
    let pack = layer.pack.fills(&layer.density())?;
    let below = bench.bed.fixed + bench.bed.media - top.volume.value.value;
    let most = ((bench.bed.ceiling - below) / pack).floor().min(MOST_PACKS);
    // More packs leave less room, but beside a layer that lifts little they also lift the whole: a number may do what a
    // smaller one doesn't. So every number is asked, the largest first; what a layer does at a flow hangs on no volume.
    let serves = |count: u32| {
        let volume = f64::from(count) * pack;
        flows.iter().any(|stood| bench.judge_with(stood, volume).mark <= Mark::SetOnSite)
    };
    (1..=most.max(0.0) as u32).rev().find(|count| serves(*count))
}

/// More packs than this nobody counts one by one.
const MOST_PACKS: f64 = 100_000.0;
