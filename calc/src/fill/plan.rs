//! Works a stack of layers out, from the bottom up.

use super::{Freeboard, Layer, LayerFill, NearMiss, PartPack, Role, Tape, Target, checks, tape::tape_after};
use crate::order;
use crate::order::Between as _;
use crate::quantity::{
    Amount, Assumption, Caution, Fault, Figure, Formula, Input, Known, Length, Mass, Problem, Term, Verdict, Volume,
    cubic_metres, kilograms, kilograms_per_cubic_metre, metres,
    problem::{positive, within},
};
use crate::vessel::Vessel;

/// A vessel's fill.
#[derive(Clone, Debug, PartialEq)]
pub struct Plan {
    /// Each layer, bottom first; one that failed makes those above it wait.
    pub layers: Vec<Result<LayerFill, Problem>>,
    /// The room above.
    pub freeboard: Result<Freeboard, Problem>,
    /// Dry weight of all layers.
    pub dry_weight: Result<Figure<Mass>, Problem>,
    /// What was judged.
    pub verdicts: Vec<Verdict>,
}

/// How far the stack has come.
struct Stack {
    /// Free volume filled so far.
    volume: f64,
    /// Height of its surface.
    height: f64,
    /// Variance of the volume, from what was in the packs.
    variance: f64,
    /// Depth of all media so far.
    media_depth: f64,
}

/// Fills a vessel with layers, bottom first.
///
/// A need at most a tenth of a pack above whole packs is met by whole packs unless it is a stated minimum; the answer
/// says by how much the bed is shorter. A layer that does not fit says how much room there is, and the layers above
/// it wait.
///
/// # Errors
/// None as a whole; each layer carries its own: [`Term::Target`] that is not above zero or already reached,
/// [`Term::TopSlot`] missing under a cover target, [`Term::LayerVolume`] that does not fit, [`Term::BulkDensity`],
/// [`Term::PackVolume`] and [`Term::Bucket`] that are not above zero.
///
/// # Sources
/// Arithmetic; near-miss rule and spreads: common practice.
///
/// # Example
/// 12 × 52 with 2:1 heads, taped at 37.9 in: a sixth of a cubic foot of gravel brings the surface to 47.33 in below
/// the rim (common practice, no source).
/// ```
/// use bedwright_calc::fill::{Layer, Role, Target, plan};
/// use bedwright_calc::material::{Material, Pack};
/// use bedwright_calc::quantity::{Known, cubic_metres, metres};
/// use bedwright_calc::vessel::{BottomCollector, DiameterBy, Head, Measures, Opening, Riser, Vessel};
/// let inch = |x: f64| Known::measured(metres(x * 0.0254));
/// let vessel = Vessel::new(Measures {
///     nominal_diameter: Some(inch(12.0)),
///     diameter_by: DiameterBy::Circumference { around: inch(37.9), wall: inch(0.16) },
///     inside_depth: inch(51.0), bottom_head: Head::Ellipsoidal, top_head: Head::Ellipsoidal,
///     neck_height: inch(1.0), clear_bore: inch(2.5), opening: Opening::TopOnly,
///     riser: Some(Riser { outside_diameter: inch(1.05), seat: inch(0.0), allowance: inch(0.0) }),
///     bottom_collector: BottomCollector::None, upper_collector: None,
/// }).unwrap();
/// let gravel = Material::of("gravel_1_8x1_4").unwrap();
/// let layer = Layer {
///     pack: Pack::of_material(&gravel.id).remove(0), bulk_density: gravel.usual_bulk_density(),
///     material: gravel, role: Role::Underbed, minimum: false,
///     target: Target::Volume(Known::typed(cubic_metres(0.028316846592 / 6.0))),
/// };
/// let filled = plan(&vessel, &[layer], &Known::typed(cubic_metres(0.0189)));
/// let tape = &filled.layers[0].as_ref().unwrap().tape;
/// assert!((tape.reading.value.value / 0.0254 - 47.33).abs() < 0.02);
/// ```
#[must_use]
pub fn plan(vessel: &Vessel, layers: &[Layer], bucket: &Known<Volume>) -> Plan {
    let floor = vessel.measures.bottom_collector.floor().map_or(0.0, |floor| floor.value.value);
    let mut stack = Stack { volume: 0.0, height: floor, variance: 0.0, media_depth: 0.0 };
    let mut answers: Vec<Result<LayerFill, Problem>> = Vec::with_capacity(layers.len());
    let mut failed = false;
    let mut verdicts = Vec::new();
    for (index, layer) in layers.iter().enumerate() {
        if failed {
            answers.push(Err(Problem::new(Term::Target, Fault::WaitsFor { other: Term::LayerVolume }).of_layer(index)));
            continue;
        }
        let answer = fill_layer(vessel, layer, bucket, &mut stack).map_err(|problem| problem.of_layer(index));
        if let Err(problem) = &answer {
            failed = true;
            verdicts.extend(checks::no_room(vessel, layer, index, stack.volume, problem));
        }
        answers.push(answer);
    }
    let freeboard = freeboard(vessel, layers, &answers);
    let dry_weight = dry_weight(&answers);
    verdicts.extend(vessel.diameter_verdict());
    verdicts.extend(checks::verdicts(vessel, layers, &answers, freeboard.as_ref().ok()));
    let verdicts = order::sorted(verdicts, |a, b| b.mark.cmp(&a.mark));
    Plan { layers: answers, freeboard, dry_weight, verdicts }
}

fn fill_layer(vessel: &Vessel, layer: &Layer, bucket: &Known<Volume>, stack: &mut Stack) -> Result<LayerFill, Problem> {
    let density = &layer.density();
    within(Term::BulkDensity, density.value.value, BULK_DENSITY_KG_M3, |x| kilograms_per_cubic_metre(x).into())?;
    within(Term::Bucket, bucket.value.value, BUCKET_M3, |x| cubic_metres(x).into())?;
    let pack = layer.pack.fills(density).ok_or(Problem::new(Term::PackVolume, Fault::Missing))?;
    within(Term::PackVolume, pack, PACK_M3, |x| cubic_metres(x).into())?;

    let Wanted { volume: wanted, up_to } = wanted_volume(vessel, layer, pack, stack)?;
    let needed = wanted / pack;
    if !(0.0..=MOST_PACKS).contains(&needed) {
        return Err(Problem::new(
            Term::Packs,
            Fault::OutOfRange { value: needed.into(), low: 0.0.into(), high: MOST_PACKS.into() },
        ));
    }
    let (volume, taken_short) = match near_miss(layer, needed, pack, wanted) {
        (volume, Some(_)) if uncovers(vessel, layer, stack.volume + volume) => {
            debug_assert!(volume < wanted);
            (wanted, None)
        }
        answer => answer,
    };
    let room = (vessel.cavity.free_below(vessel.ceiling().value) - stack.volume).max(0.0);
    let no_room = || {
        Problem::new(
            Term::LayerVolume,
            Fault::DoesNotFit { needs: cubic_metres(volume).into(), room: cubic_metres(room).into() },
        )
    };
    let top = vessel.cavity.height_of(stack.volume + volume).ok_or_else(no_room)?;
    let (below, bottom) = (stack.volume, stack.height);

    let mut inputs = vessel.inputs();
    inputs.push(target_input(&layer.target));
    match layer.target {
        Target::Cover(_) => {
            inputs.extend(vessel.measures.bottom_collector.top_slot().map(|slot| slot.input(Term::TopSlot)))
        }
        Target::Freeboard(_) | Target::FreeboardRatio(_) => {
            inputs.extend(vessel.measures.upper_collector.map(|upper| upper.input(Term::UpperCollector)));
        }
        _ => {}
    }
    let by_mass = layer.pack.volume.is_none() || matches!(layer.target, Target::Weight(_));
    let both_printed = layer.pack.volume.is_some() && layer.pack.mass.is_some();
    if by_mass {
        inputs.push(density.input(Term::BulkDensity));
    }
    let pack_input = match (&layer.pack.volume, &layer.pack.mass) {
        (Some(volume), _) => volume.input(Term::PackVolume),
        (None, Some(mass)) => mass.input(Term::PackMass),
        (None, None) => Known::typed(cubic_metres(pack)).input(Term::PackVolume),
    };
    let figure = |value: f64, formula: Formula| Figure::new(metres(value), formula, inputs.clone());

    let formula = match (taken_short, &layer.target) {
        (Some(_), _) => Formula::VolumeOfWholePacks,
        (None, Target::Volume(_)) => Formula::VolumeAsked,
        (None, Target::Packs(_)) => Formula::VolumeOfPacks,
        (None, Target::Weight(_)) => Formula::VolumeOfWeight,
        (None, _) => Formula::LayerVolume,
    };
    let mut volume_figure = Figure::new(cubic_metres(volume), formula, inputs.clone());
    let mut mass_inputs = inputs.clone();
    if !by_mass {
        mass_inputs.push(density.input(Term::BulkDensity));
    }
    let mut mass = Figure::new(kilograms(volume * density.value.value), Formula::LayerMass, mass_inputs);
    if !both_printed {
        let range = &layer.material.bulk_density;
        let varies = Caution::DensityVaries { low: range.low.into(), high: range.high.into() };
        mass = mass.with(varies);
        if by_mass {
            volume_figure = volume_figure.with(varies);
        }
    }

    // Packs: whole ones, and what is poured of the last.
    let packs = volume / pack;
    let whole = whole_packs(packs);
    let share = (packs - f64::from(whole)).max(0.0);
    let part = share > PACK_TOLERANCE;
    let to_buy = whole + u32::from(part);
    let pack_figure = |value: f64, formula: Formula| {
        let mut inputs = inputs.clone();
        inputs.push(pack_input);
        Figure::new(value, formula, inputs)
    };

    let with_pack = |value: Volume, formula: Formula| {
        let mut inputs = inputs.clone();
        inputs.push(pack_input);
        Figure::new(value, formula, inputs)
    };

    // Readings after each pack: every pack's content varies on its own.
    let sigma = Assumption::SpreadPack.ratio();
    let density_sigma = if layer.pack.volume.is_none() { relative_half_width(layer) } else { 0.0 };
    let after = |poured: f64, variance: f64| -> Option<Tape> {
        let height = vessel.cavity.height_of(below + poured)?;
        let by_density = poured * density_sigma;
        Some(tape_after(vessel, below + poured, variance + by_density * by_density, height, &inputs))
    };
    let mut variance = stack.variance;
    let mut after_packs = Vec::new();
    for k in 1..=whole.min(MOST_READINGS) {
        variance += (pack * sigma) * (pack * sigma);
        after_packs.extend(after(f64::from(k) * pack, variance));
    }
    variance += f64::from(whole.saturating_sub(MOST_READINGS)) * (pack * sigma) * (pack * sigma);
    if part {
        let poured = share * pack;
        variance += (poured * sigma) * (poured * sigma);
        after_packs.extend(after(volume, variance));
    }
    let tape = after(volume, variance).ok_or_else(no_room)?;

    let bottom_tangent = vessel.cavity.bottom_tangent().value;
    let near_miss = taken_short.map(|taken| NearMiss {
        needed: pack_figure(needed, Formula::PacksNeeded),
        taken,
        shorter: figure(
            vessel.cavity.height_of(below + wanted).unwrap_or(vessel.cavity.rim().value).max(top) - top,
            Formula::ShorterBy,
        ),
    });
    let filled = LayerFill {
        volume: volume_figure,
        mass,
        bottom: figure(bottom, Formula::HeightHolding),
        top: figure(top, Formula::HeightHolding),
        depth_axis: figure(top - bottom, Formula::LayerDepthAxis),
        depth_wall: figure(
            (top - bottom_tangent).max(0.0) - (bottom - bottom_tangent).max(0.0),
            Formula::LayerDepthWall,
        ),
        tape,
        cover: vessel.measures.bottom_collector.top_slot().map(|slot| {
            let mut inputs = inputs.clone();
            inputs.push(slot.input(Term::TopSlot));
            Figure::new(metres(top - slot.value.value), Formula::Cover, inputs)
        }),
        packs: pack_figure(packs, Formula::PacksNeeded),
        packs_to_buy: to_buy,
        asked: cubic_metres(wanted),
        asked_height: up_to.map(metres),
        left_over: with_pack(cubic_metres(if part { (1.0 - share) * pack } else { 0.0 }), Formula::LeftOver),
        after_packs,
        part: part.then(|| PartPack {
            share: pack_figure(share, Formula::PartShare),
            volume: with_pack(cubic_metres(share * pack), Formula::PartVolume),
            buckets: {
                let mut buckets = pack_figure(share * pack / bucket.value.value, Formula::BucketMeasures);
                buckets.inputs.push(bucket.input(Term::Bucket));
                buckets.basis = buckets.basis.weaker(bucket.basis);
                buckets
            },
        }),
        near_miss,
    };
    stack.volume += volume;
    if layer.role == Role::Media {
        stack.media_depth += top - bottom;
    }
    stack.height = top;
    stack.variance = variance + (volume * density_sigma) * (volume * density_sigma);
    Ok(filled)
}

/// What a bulk density, a pack and a bucket can be: far beyond anything poured, near enough to reckon with.
pub(crate) const BULK_DENSITY_KG_M3: (f64, f64) = (10.0, 20_000.0);
const PACK_M3: (f64, f64) = (1e-5, 100.0);
const BUCKET_M3: (f64, f64) = (1e-5, 10.0);
/// More packs than this nobody pours into one vessel.
const MOST_PACKS: f64 = 1e7;

/// A share of a pack too small to speak of: what is left by rounding in the arithmetic.
const PACK_TOLERANCE: f64 = 1e-9;

/// Readings are worked out for this many packs; a fill of more is read at its end.
const MOST_READINGS: u32 = 400;

fn whole_packs(packs: f64) -> u32 {
    (packs + PACK_TOLERANCE).floor().between(0.0, f64::from(u32::MAX / 2)) as u32
}

/// The volume to take, and the number of packs where a near miss was met by whole ones.
fn near_miss(layer: &Layer, needed: f64, pack: f64, wanted: f64) -> (f64, Option<u32>) {
    let whole = whole_packs(needed);
    let above = needed - f64::from(whole);
    let asked_in_packs = matches!(layer.target, Target::Packs(_));
    let near = above > PACK_TOLERANCE && above <= Assumption::NearMiss.ratio() + PACK_TOLERANCE;
    if near && whole >= 1 && !layer.minimum && !asked_in_packs {
        (f64::from(whole) * pack, Some(whole))
    } else {
        (wanted, None)
    }
}

/// Whether a layer that was asked to cover the top slot would leave it bare with this volume below its surface.
fn uncovers(vessel: &Vessel, layer: &Layer, volume: f64) -> bool {
    let slot = vessel.measures.bottom_collector.top_slot();
    matches!(layer.target, Target::Cover(_))
        && slot.is_some_and(|slot| volume < vessel.cavity.free_below(slot.value.value))
}

/// Half the width of the bulk density's range over its middle, taken as covering nine lots of ten.
pub(super) fn relative_half_width(layer: &Layer) -> f64 {
    if layer.bulk_density.basis <= crate::quantity::Basis::Typed {
        return Assumption::SpreadPack.ratio();
    }
    let (low, high) = (layer.material.bulk_density.low.value, layer.material.bulk_density.high.value);
    let middle = f64::midpoint(low, high);
    if middle > 0.0 { (high - low) / 2.0 / middle / Assumption::Spread595.ratio() } else { 0.0 }
}

/// What a target comes to: a volume, and the height where it names one.
struct Wanted {
    volume: f64,
    up_to: Option<f64>,
}

fn wanted_volume(vessel: &Vessel, layer: &Layer, pack: f64, stack: &Stack) -> Result<Wanted, Problem> {
    let cavity = &vessel.cavity;
    let depth = vessel.measures.inside_depth.value.value;
    let by_volume = |volume: f64| Ok(Wanted { volume, up_to: None });
    let up_to = |height: f64, asked: Amount| -> Result<Wanted, Problem> {
        if !height.is_finite() {
            return Err(Problem::new(Term::Target, Fault::NotPositive { value: asked }));
        }
        if height <= stack.height {
            return Err(Problem::new(
                Term::Target,
                Fault::AlreadyReached { value: asked, there: metres(stack.height).into() },
            ));
        }
        if height > cavity.rim().value {
            return Err(Problem::new(
                Term::Target,
                Fault::NotBelow { value: metres(height).into(), other: Term::InsideDepth, limit: cavity.rim().into() },
            ));
        }
        let volume = cavity.free_below(height) - stack.volume;
        positive(Term::Target, volume, asked)?;
        Ok(Wanted { volume, up_to: Some(height) })
    };
    match &layer.target {
        Target::Cover(cover) => {
            let slot =
                vessel.measures.bottom_collector.top_slot().ok_or(Problem::new(Term::TopSlot, Fault::Missing))?;
            if cover.value.value.is_nan() || cover.value.value < 0.0 {
                return Err(Problem::new(Term::Target, Fault::NotPositive { value: cover.value.into() }));
            }
            up_to(slot.value.value + cover.value.value, cover.value.into())
        }
        Target::Depth(deep) => {
            positive(Term::Target, deep.value.value, deep.value.into())?;
            up_to(stack.height + deep.value.value, deep.value.into())
        }
        Target::Volume(volume) => {
            positive(Term::Target, volume.value.value, volume.value.into())?;
            by_volume(volume.value.value)
        }
        Target::Weight(mass) => {
            positive(Term::Target, mass.value.value, mass.value.into())?;
            by_volume(mass.value.value / layer.density().value.value)
        }
        Target::Packs(count) => {
            positive(Term::Target, count.value, count.value.into())?;
            by_volume(count.value * pack)
        }
        Target::Freeboard(length) => up_to(vessel.ceiling().value - length.value.value, length.value.into()),
        Target::FreeboardRatio(ratio) => {
            if !(0.0..=10.0).contains(&ratio.value) {
                return Err(Problem::new(
                    Term::Target,
                    Fault::OutOfRange { value: ratio.value.into(), low: 0.0.into(), high: 10.0.into() },
                ));
            }
            // Freeboard = ratio · (media so far + this layer, where it is media): solved for the surface.
            let (ceiling, done) = (vessel.ceiling().value, ratio.value * stack.media_depth);
            let surface = match layer.role {
                Role::Media => (ceiling - done + ratio.value * stack.height) / (1.0 + ratio.value),
                Role::Underbed => ceiling - done,
            };
            up_to(surface, ratio.value.into())
        }
        Target::TapeReading(tape) => {
            if !(0.0..depth).contains(&tape.value.value) {
                return Err(Problem::new(
                    Term::Target,
                    Fault::OutOfRange { value: tape.value.into(), low: metres(0.0).into(), high: metres(depth).into() },
                ));
            }
            up_to(depth - tape.value.value, tape.value.into())
        }
    }
}

fn target_input(target: &Target) -> Input {
    match target {
        Target::Cover(x) | Target::Depth(x) | Target::Freeboard(x) | Target::TapeReading(x) => x.input(Term::Target),
        Target::Volume(x) => x.input(Term::Target),
        Target::Weight(x) => x.input(Term::Target),
        Target::Packs(x) | Target::FreeboardRatio(x) => x.input(Term::Target),
    }
}

fn freeboard(vessel: &Vessel, layers: &[Layer], answers: &[Result<LayerFill, Problem>]) -> Result<Freeboard, Problem> {
    let waits = Problem::new(Term::Freeboard, Fault::WaitsFor { other: Term::LayerVolume });
    let mut filled = Vec::new();
    for answer in answers {
        filled.push(answer.as_ref().map_err(|_| waits)?);
    }
    let top = filled.last().ok_or(Problem::new(Term::Freeboard, Fault::Missing))?;
    let surface = top.top.value.value;
    let media: Vec<&&LayerFill> =
        filled.iter().zip(layers).filter(|(_, l)| l.role == Role::Media).map(|(f, _)| f).collect();
    let media_depth: f64 = media.iter().map(|fill| fill.depth_axis.value.value).sum();
    let mut inputs = top.top.inputs.clone();
    if let Some(upper) = &vessel.measures.upper_collector {
        inputs.push(upper.input(Term::UpperCollector));
    }
    let length = vessel.ceiling().value - surface;
    let mut figure = Figure::new(metres(length), Formula::Freeboard, inputs.clone());
    figure.cautions.extend(vessel.inside_diameter.cautions.iter().copied());
    Ok(Freeboard {
        length: figure,
        ratio: (media_depth > 0.0).then(|| Figure::new(length / media_depth, Formula::FreeboardRatio, inputs.clone())),
        tape: top.tape.reading.clone(),
        media_depth: Figure::new(metres(media_depth), Formula::MediaDepth, inputs),
    })
}

fn dry_weight(answers: &[Result<LayerFill, Problem>]) -> Result<Figure<Mass>, Problem> {
    let waits = Problem::new(Term::LayerVolume, Fault::WaitsFor { other: Term::LayerVolume });
    let mut sum = 0.0;
    let mut inputs = Vec::new();
    for answer in answers {
        let fill = answer.as_ref().map_err(|_| waits)?;
        sum += fill.mass.value.value;
        inputs.push(fill.volume.input(Term::LayerVolume));
        inputs.extend(fill.mass.inputs.iter().filter(|input| input.term == Term::BulkDensity).copied());
    }
    Ok(Figure::new(kilograms(sum), Formula::DryWeight, inputs))
}

/// A length that many callers ask for: the height of a fill's surface.
#[must_use]
pub fn surface(plan: &Plan) -> Option<Length> {
    plan.layers.last().and_then(|layer| layer.as_ref().ok()).map(|fill| fill.top.value)
}
