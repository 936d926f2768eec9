//! Whether a backwash lifts the bed at the warmest water and keeps it at the coldest, at which setting, and what would
//! mend it.

pub(crate) mod bench;
mod grains;
mod remedies;
mod sizes;

use super::bed::Bed;
use super::duty::{Duty, Site};
use super::evidence::Lines;
use super::expansion::Expansion;
use super::fluidisation::{ergun_start, wen_yu_start};
use super::packed_bed::flow;
use super::sensitivity::{Sensitivity, sensitivities};
use crate::fill::Layer;
use crate::quantity::problem::{positive, within};
use crate::quantity::{
    Basis, Fault, Figure, Formula, Input, Known, Mark, Problem, Reason, Source, Term, Velocity, Verdict, VolumeRate,
    cubic_metres_per_second, metres, metres_per_second,
};
use crate::vessel::Vessel;
use crate::water::{Fluid, Water};

pub(crate) use bench::{Bench, Stood, best, finest_settling, most_packs};
pub(crate) use grains::carry_over;
pub(crate) use sizes::flows_to_judge;

use bench::{Judged, slots_hold, two_sizes};
use grains::{mixing, upper_slots};
use remedies::{no_flow, verdict};

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
    let basis = basis_of(bed, lines);
    let serves = |stood: &Stood| bench.judge(stood).mark <= Mark::SetOnSite;
    let (flows, stood) = flows_to_judge(&bench, site, duty, serves);
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
    let two = if stood.iter().any(serves) {
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
        let fault = Fault::NotBelow { value: low.into(), other: Term::TemperatureHigh, limit: high.into() };
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
        let fault = Fault::OutOfRange { value: minimum.into(), low: 0.0.into(), high: MOST_EXPANSION.into() };
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
