//! Whether a backwash lifts the bed at the warmest water and keeps it at the coldest, at which setting, and what would
//! mend it.

use super::bed::Bed;
use super::duty::{Duty, Site};
use super::evidence::Lines;
use super::expansion::{Expansion, Weights, between, together};
use super::flow_control::FlowControl;
use super::fluidisation::{ergun_start, settling, wen_yu_start};
use super::packed_bed::flow;
use super::sensitivity::{Sensitivity, sensitivities};
use crate::fill::Layer;
use crate::order::Between as _;
use crate::quantity::problem::{positive, within};
use crate::quantity::{
    Amount, Assumption, Basis, Figure, Formula, Input, Known, Mark, Problem, Reason, Remedy, Source, Subject, Term,
    Velocity, Verdict, VolumeRate, cubic_metres_per_second, metres, metres_per_second,
};
use crate::vessel::{NominalDiameter, Vessel};
use crate::water::{Fluid, Water};

/// What a backwash can do at one end of the year.
#[derive(Clone, Debug, PartialEq)]
pub struct End {
    /// The water.
    pub water: Water,
    /// Speed at which each media layer begins to lift, by Wen and Yu on the size that 90 % are finer than.
    pub wen_yu_minimum: Vec<Figure<Velocity>>,
    /// The same by Ergun.
    pub ergun_minimum: Vec<Figure<Velocity>>,
    /// Flow at which the bed stands out by the least expansion, on the low, the likely and the high line.
    pub lifts_from: [Option<Figure<VolumeRate>>; 3],
    /// Flow at which the bed reaches the ceiling, on the low, the likely and the high line.
    pub stays_to: [Option<Figure<VolumeRate>>; 3],
    /// Flow at which the finest grains leave.
    pub carries_from: Option<Figure<VolumeRate>>,
}

/// A setting of the backwash, and what it does.
#[derive(Clone, Debug, PartialEq)]
pub struct Setting {
    /// The flow.
    pub flow: Known<VolumeRate>,
    /// Flow per area.
    pub flow_per_area: Figure<Velocity>,
    /// How good.
    pub mark: Mark,
    /// Why not better.
    pub reason: Reason,
    /// Expansion in the coldest water.
    pub cold: Expansion,
    /// Expansion in the warmest water.
    pub warm: Expansion,
    /// The likely expansion in the coldest water, with its reasons; none where grains leave.
    pub likely_cold: Option<Figure<f64>>,
    /// The likely expansion in the warmest water.
    pub likely_warm: Option<Figure<f64>>,
}

/// The backwash of a bed over the year.
#[derive(Clone, Debug, PartialEq)]
pub struct Backwash {
    /// In the coldest water.
    pub cold: End,
    /// In the warmest.
    pub warm: End,
    /// Where the lines stand.
    pub lines: Lines,
    /// Every size that the site can feed, and the one that is fitted; smallest first.
    pub settings: Vec<Setting>,
    /// The one that is judged: what is fitted, else the best.
    pub chosen: Option<usize>,
    /// A size for the coldest half of the year and one for the warmest, where none serves the whole.
    pub two: Option<(VolumeRate, VolumeRate)>,
    /// The largest whole number of packs of the top layer for which some size serves the whole year.
    pub most_packs: Option<u32>,
    /// What decides the likely expansion, the strongest first.
    pub sensitivities: Vec<Sensitivity>,
    /// What was judged.
    pub verdicts: Vec<Verdict>,
}

/// Everything that a judgement of one flow needs.
pub(crate) struct Bench<'a> {
    bed: &'a Bed,
    cold: Fluid,
    warm: Fluid,
    minimum: f64,
    weights: Weights,
    /// Fall of the finest kept grain in the coldest water.
    settle: Option<f64>,
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
    cold: Expansion,
    warm: Expansion,
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

    /// Whether some flow up to what the site gives serves the whole year: a stock size, or what is fitted.
    fn served(&self, flows: &[Stood]) -> bool {
        flows.iter().any(|stood| self.judge(stood).mark <= Mark::SetOnSite)
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
/// The grain that must lift: 90 % by mass are finer.
pub(crate) const COARSEST: f64 = 0.90;

/// Judges the backwash of a planned bed.
///
/// *Fine*: even on the low line the warmest water lifts the bed by the least expansion, and even on the high line it
/// stays under the ceiling in the coldest. *Set on site*: so it does on the likely line. *Caution*: the likely line fails
/// at one end. *Stop*: even the favourable line fails at one end, or the flow carries the finest kept grain away. A
/// surface that reaches an upper collector whose slots hold the grain is a caution. The tolerance of a flow control is
/// not added.
///
/// # Errors
/// [`Term::WaterTemperature`] outside 0 to 60 °C; [`Term::TemperatureLow`] above the highest; [`Term::BackwashAvailable`]
/// not above zero; [`Term::FlowControl`] not above zero, or faster than 100 m/s through the shell;
/// [`Term::UpperSlotWidth`] not from 1 µm to 0.1 m; [`Term::MinimumExpansion`] not from 0 to 5;
/// [`Term::ParticleDensity`] of grains that float, with the layer.
///
/// # Sources
/// Our own rule on the equations of [`super::fluidisation`].
///
/// # Example
/// ```
/// use bedwright_calc::fill::{Layer, Role, Target, plan};
/// use bedwright_calc::hydraulics::{Bed, Duty, Lines, Purpose, Site, backwash};
/// use bedwright_calc::material::{Material, Pack};
/// use bedwright_calc::quantity::{Known, Mark, cubic_metres, cubic_metres_per_second, kelvins, metres};
/// use bedwright_calc::vessel::{BottomCollector, DiameterBy, Head, Measures, Opening, Vessel};
/// let m = |x: f64| Known::measured(metres(x));
/// let vessel = Vessel::new(Measures {
///     nominal_diameter: None, diameter_by: DiameterBy::Measured { inside: m(0.3) }, inside_depth: m(1.4),
///     bottom_head: Head::Ellipsoidal, top_head: Head::Ellipsoidal, neck_height: m(0.02), clear_bore: m(0.06),
///     opening: Opening::TopOnly, riser: None, bottom_collector: BottomCollector::None, upper_collector: None,
/// }).unwrap();
/// let sand = Material::of("sand_20x30").unwrap();
/// let grains = sand.grains();
/// let layers = [Layer {
///     pack: Pack::of_material(&sand.id).remove(0), bulk_density: sand.usual_bulk_density(), material: sand,
///     role: Role::Media, target: Target::Volume(Known::typed(cubic_metres(0.045))), minimum: false,
/// }];
/// let filled = plan(&vessel, &layers, &Known::typed(cubic_metres(0.0189)));
/// let bed = Bed::new(&vessel, &layers, &filled, &[grains], None).unwrap();
/// let site = Site {
///     temperature_low: Known::typed(kelvins(283.15)), temperature_high: Known::typed(kelvins(287.15)),
///     backwash_available: Some(Known::typed(cubic_metres_per_second(60.0 / 60e3))), pressure: None,
/// };
/// let answer = backwash(&vessel, &layers, &bed, &site, &Duty::new(Purpose::Sediment), &Lines::unknown()).unwrap();
/// // Some flow control between 1 and 60 litres a minute washes this bed.
/// assert!(answer.settings[answer.chosen.unwrap()].mark <= Mark::SetOnSite);
/// ```
pub fn backwash(
    vessel: &Vessel,
    layers: &[Layer],
    bed: &Bed,
    site: &Site,
    duty: &Duty,
    lines: &Lines,
) -> Result<Backwash, Problem> {
    let (cold, warm) = ends_of(site, duty)?;
    if let Some(fitted) = &duty.flow_control {
        flow(Term::FlowControl, fitted, bed.area.value.value)?;
    }
    let bench = Bench::new(vessel, bed, (&cold, &warm), duty, lines)?;
    let (minimum, weights) = (bench.minimum, bench.weights);
    let held = slots_hold(vessel, bed, duty);
    let flows = settings_of(site, duty);
    let basis = basis_of(bed, lines);
    let stood: Vec<Stood> = flows.iter().map(|flow| bench.stood(flow.value.value)).collect();
    let mut settings = Vec::new();
    let mut margins = Vec::new();
    for (flow, stood) in flows.iter().zip(&stood) {
        let judged = bench.judge(stood);
        margins.push((judged.mark, judged.margin));
        settings.push(setting(bed, flow, &judged, &cold, &warm, lines));
    }
    let chosen = match &duty.flow_control {
        Some(fitted) => flows.iter().position(|flow| flow.value == fitted.value),
        None => best(&margins),
    };
    let ends = (end(bed, &cold, minimum, lines), end(bed, &warm, minimum, lines));
    let two = if bench.served(&stood) {
        None
    } else {
        let stock: Vec<f64> = flows.iter().map(|flow| flow.value.value).collect();
        two_sizes(&bench, &stock)
    };
    let most_packs = most_packs(layers, &bench, &stood);
    let mut answer = Backwash {
        cold: ends.0,
        warm: ends.1,
        lines: lines.clone(),
        chosen,
        two,
        most_packs,
        sensitivities: Vec::new(),
        verdicts: Vec::new(),
        settings,
    };
    if let Some(judged) = chosen.and_then(|at| answer.settings.get(at)).cloned() {
        answer.sensitivities = sensitivities(bed, layers, &cold, &judged, weights.likely);
        answer.verdicts.push(verdict(&answer, &judged, &bench, vessel, layers, site, duty, basis));
        answer.verdicts.extend(carry_over(bed, &bench, &judged, basis));
    } else {
        answer.verdicts.push(no_flow(&answer, &bench, site, basis));
    }
    answer.verdicts.extend(upper_slots(bed, duty, held));
    answer.verdicts.extend(mixing(bed, &bench, chosen.and_then(|at| answer.settings.get(at)), basis));
    Ok(answer)
}

/// Water at both ends of the year; refuses what no backwash can be judged with.
pub(crate) fn ends_of(site: &Site, duty: &Duty) -> Result<(Water, Water), Problem> {
    let (cold, warm) = (Water::at(&site.temperature_low)?, Water::at(&site.temperature_high)?);
    let (low, high) = (site.temperature_low.value, site.temperature_high.value);
    if low.value > high.value {
        let fault =
            crate::quantity::Fault::NotBelow { value: low.into(), other: Term::TemperatureHigh, limit: high.into() };
        return Err(Problem::new(Term::TemperatureLow, fault));
    }
    if let Some(most) = &site.backwash_available {
        positive(Term::BackwashAvailable, most.value.value, most.value.into())?;
    }
    if let Some(slot) = &duty.upper_slot_width {
        within(Term::UpperSlotWidth, slot.value.value, SLOT_M, |x| metres(x).into())?;
    }
    let minimum = duty.minimum_expansion.value;
    if !(0.0..=MOST_EXPANSION).contains(&minimum) {
        let fault =
            crate::quantity::Fault::OutOfRange { value: minimum.into(), low: 0.0.into(), high: MOST_EXPANSION.into() };
        return Err(Problem::new(Term::MinimumExpansion, fault));
    }
    Ok((cold, warm))
}

/// The weakest basis of what an expansion rests on.
pub(crate) fn basis_of(bed: &Bed, lines: &Lines) -> Basis {
    bed.inputs().iter().map(|input| input.basis).fold(bed.area.basis.weaker(lines.likely.basis), Basis::weaker)
}

/// Slots let water pass and are narrower than a hand.
const SLOT_M: (f64, f64) = (1e-6, 0.1);

/// No bed is asked to stand six times as high as it lies.
const MOST_EXPANSION: f64 = 5.0;

/// The flows to judge, smallest first: what is fitted, and every size sold that the site can feed.
pub(crate) fn settings_of(site: &Site, duty: &Duty) -> Vec<Known<VolumeRate>> {
    let most = site.backwash_available.as_ref().map_or(f64::INFINITY, |flow| flow.value.value * (1.0 + 1e-9));
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

/// The best mark with the widest margin.
pub(crate) fn best(margins: &[(Mark, f64)]) -> Option<usize> {
    let mut found: Option<(usize, Mark, f64)> = None;
    for (at, &(mark, margin)) in margins.iter().enumerate() {
        if found.is_none_or(|(_, best, wide)| mark < best || mark == best && margin > wide) {
            found = Some((at, mark, margin));
        }
    }
    found.map(|(at, ..)| at)
}

pub(crate) fn setting(
    bed: &Bed,
    flow: &Known<VolumeRate>,
    judged: &Judged,
    cold: &Water,
    warm: &Water,
    lines: &Lines,
) -> Setting {
    let speed = Figure::new(
        metres_per_second(flow.value.value / bed.area.value.value),
        Formula::FlowPerArea,
        vec![flow.input(Term::BackwashFlow), bed.area.input(Term::CrossSection)],
    );
    let likely = |expansion: &Expansion, water: &Water| {
        let mut inputs = bed.inputs();
        inputs.push(speed.input(Term::FlowPerArea));
        inputs.push(water.density.input(Term::WaterDensity));
        inputs.push(water.viscosity.input(Term::WaterViscosity));
        inputs.push(lines.likely.input(Term::LineWeight));
        expansion.likely.map(|value| Figure::new(value, Formula::ExpansionLikely, inputs))
    };
    Setting {
        flow: *flow,
        mark: judged.mark,
        reason: judged.reason,
        likely_cold: likely(&judged.cold, cold),
        likely_warm: likely(&judged.warm, warm),
        cold: judged.cold,
        warm: judged.warm,
        flow_per_area: speed,
    }
}

fn end(bed: &Bed, water: &Water, minimum: f64, lines: &Lines) -> End {
    let fluid = water.fluid();
    let area = bed.area.value.value;
    let inputs = |more: Option<Input>| {
        let mut inputs = bed.inputs();
        inputs.push(water.density.input(Term::WaterDensity));
        inputs.push(water.viscosity.input(Term::WaterViscosity));
        inputs.extend(more);
        inputs
    };
    let flow_for = |expansion: f64, term: Term| {
        [&lines.low, &lines.likely, &lines.high].map(|line| {
            let wanted = Input { term, amount: expansion.into(), basis: Basis::Typed, source: Source::Typed };
            bed.speed_for(fluid, expansion, line.value).map(|v| {
                Figure::new(cubic_metres_per_second(v * area), Formula::FlowForExpansion, inputs(Some(wanted)))
            })
        })
    };
    let start = |of: fn(&super::fluidisation::Solid, Fluid) -> f64, formula: Formula| {
        bed.media_layers()
            .filter_map(|layer| {
                let solid = layer.solid(COARSEST)?;
                let mut inputs = layer.inputs();
                // The size that 90 % are finer than, by the grading of these inputs.
                let size = Known { value: metres(solid.size), basis: Basis::Catalogue, source: Source::Arithmetic };
                inputs.push(size.input(Term::GrainSize));
                inputs.push(water.density.input(Term::WaterDensity));
                inputs.push(water.viscosity.input(Term::WaterViscosity));
                Some(Figure::new(metres_per_second(of(&solid, fluid)), formula, inputs))
            })
            .collect()
    };
    End {
        wen_yu_minimum: start(wen_yu_start, Formula::WenYuMinimum),
        ergun_minimum: start(ergun_start, Formula::ErgunMinimum),
        lifts_from: flow_for(minimum, Term::MinimumExpansion),
        stays_to: flow_for(bed.room.value, Term::RoomExpansion),
        carries_from: finest_settling(bed, fluid)
            .map(|v| Figure::new(cubic_metres_per_second(v * area), Formula::SettlingSpeed, inputs(None))),
        water: water.clone(),
    }
}

/// The smallest size that lifts in the warmest water and the largest that stays in the coldest.
fn two_sizes(bench: &Bench, flows: &[f64]) -> Option<(VolumeRate, VolumeRate)> {
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

#[expect(clippy::too_many_arguments, reason = "the remedies look at everything there is")]
fn verdict(
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
fn no_flow(answer: &Backwash, bench: &Bench, site: &Site, basis: Basis) -> Verdict {
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

/// Whether the upper collector's slots hold the finest grain of the top layer; none where there is nothing to say.
fn slots_hold(vessel: &Vessel, bed: &Bed, duty: &Duty) -> Option<bool> {
    vessel.measures.upper_collector.as_ref()?;
    let slot = duty.upper_slot_width.as_ref()?;
    let top = bed.media_layers().last()?;
    Some(slot.value.value <= top.grains.low.value.value)
}

fn upper_slots(bed: &Bed, duty: &Duty, held: Option<bool>) -> Option<Verdict> {
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
fn mixing(bed: &Bed, bench: &Bench, judged: Option<&Setting>, basis: Basis) -> Vec<Verdict> {
    let Some(judged) = judged else { return Vec::new() };
    let v = judged.flow_per_area.value.value;
    let heavy = |layer: &super::bed::BedLayer, share: f64| {
        let solid = layer.solid(share)?;
        let weigh = |open: f64| {
            let open = open.between(solid.voidage, 1.0);
            bench.cold.density + (1.0 - open) * (solid.density - bench.cold.density)
        };
        let low = weigh(super::fluidisation::wen_yu_open(&solid, bench.cold, v));
        let high = weigh(super::fluidisation::ergun_open(&solid, bench.cold, v));
        Some(between(low, high, bench.weights.likely))
    };
    let media: Vec<&super::bed::BedLayer> = bed.media_layers().collect();
    let mut verdicts = Vec::new();
    for pair in media.windows(2) {
        let [lower, upper] = pair else { continue };
        let (Some(fine_below), Some(coarse_above), Some(below), Some(above)) =
            (heavy(lower, 0.1), heavy(upper, 0.9), heavy(lower, 0.5), heavy(upper, 0.5))
        else {
            continue;
        };
        let density = |x: f64| Amount::Density(crate::quantity::kilograms_per_cubic_metre(x));
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
