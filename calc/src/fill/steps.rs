//! How a layer's volume, height and readings come about, equation by equation.

use super::{Layer, LayerFill, Plan, Role, Target};
use crate::quantity::{
    Amount, Assumption, Formula, Input, Known, Length, Source, Step, Term, Volume, cubic_metres, metres,
};
use crate::vessel::{Rungs, Vessel};

/// Where the stack stands below a layer.
#[derive(Clone, Debug, PartialEq)]
pub struct Below {
    /// Volume of all layers so far.
    pub volume: Known<Volume>,
    /// Height of their surface.
    pub height: Known<Length>,
    /// Depth of all media so far.
    pub media: Known<Length>,
    /// The depths that add up to it.
    pub media_layers: Vec<Input>,
}

/// How the height of the ceiling comes about.
#[must_use]
pub fn ceiling_steps(vessel: &Vessel, air: Option<&Known<Length>>) -> Vec<Step> {
    let depth = vessel.measures.inside_depth.input(Term::InsideDepth);
    let ceiling = vessel.ceiling();
    let mut step = match &vessel.measures.upper_collector {
        Some(upper) => {
            Step::new(Term::Ceiling, ceiling, Formula::CeilingCollector, vec![depth, upper.input(Term::UpperCollector)])
        }
        None => {
            let head = vessel.measures.top_head.depth(vessel.inside_diameter.value).unwrap_or(metres(0.0));
            let top = Known { value: head, ..vessel.inside_diameter.known() }.input(Term::TopHeadDepth);
            let neck = vessel.measures.neck_height.input(Term::NeckHeight);
            Step::new(Term::Ceiling, ceiling, Formula::CeilingTangent, vec![depth, neck, top])
        }
    };
    let Some(air) = air else { return vec![step] };
    step.term = Term::CeilingOpen;
    let under = metres(ceiling.value - air.value.value);
    let inputs = vec![step.input(Term::CeilingOpen), air.input(Term::AirHead)];
    vec![step, Step::new(Term::Ceiling, under, Formula::CeilingAir, inputs)]
}

/// Where the stack stands below a layer of a plan; `None` where a layer below has no answer.
#[must_use]
pub fn below(vessel: &Vessel, layers: &[Layer], plan: &Plan, index: usize) -> Option<Below> {
    let floor = vessel.measures.bottom_collector.floor();
    let start = floor.map_or(Known::typed(metres(0.0)), |floor| floor);
    let known = |basis| move |value: f64| (value, basis);
    let mut media_layers = Vec::new();
    let mut found = (known(start.basis)(0.0), start, 0.0);
    for (layer, answer) in layers.iter().zip(&plan.layers).take(index) {
        let fill = answer.as_ref().ok()?;
        let ((volume, basis), _, media) = found;
        let more = if layer.role == Role::Media { fill.depth_axis.value.value } else { 0.0 };
        media_layers.extend((layer.role == Role::Media).then(|| fill.depth_axis.input(Term::LayerDepth)));
        found = ((volume + fill.volume.value.value, basis.weaker(fill.volume.basis)), fill.top.known(), media + more);
    }
    let ((volume, basis), height, media) = found;
    let source = Source::Arithmetic;
    Some(Below {
        volume: Known { value: cubic_metres(volume), basis, source },
        height,
        media: Known { value: metres(media), basis: height.basis, source },
        media_layers,
    })
}

/// How everything that is said of a layer comes about, in an order in which every step has what it needs.
#[must_use]
pub fn layer_steps(vessel: &Vessel, rungs: &Rungs, layer: &Layer, fill: &LayerFill, below: &Below) -> Vec<Step> {
    let mut steps = Vec::new();
    let density = layer.density();
    let pack = pack_steps(layer, &density, &mut steps);
    let target = target_input(&layer.target);
    let volume_below = below.volume.input(Term::VolumeBelow);
    let depth = vessel.measures.inside_depth.input(Term::InsideDepth);
    // The height that was asked for, and what it takes.
    if let Some(height) = fill.asked_height {
        let (formula, with) = asked_height(vessel, layer, below);
        if matches!(layer.target, Target::FreeboardRatio(_)) {
            let parts = below.media_layers.clone();
            steps.push(Step::new(Term::MediaBelow, below.media.value, Formula::DoneDepth, parts));
        }
        let mut inputs = vec![target, depth, below.height.input(Term::BottomHeight)];
        inputs.extend(with);
        let asked = Step::new(Term::AskedHeight, height, formula, inputs);
        let known = Known { value: height, basis: asked.figure.basis, source: Source::Arithmetic };
        steps.push(asked);
        steps.push(rungs.volume_below(vessel, &known, Term::AskedVolume));
    }
    let up_to = |steps: &[Step]| steps.last().map(|step| step.input(Term::AskedVolume));
    let short = fill.near_miss.as_ref();
    let mut inputs = vec![target, volume_below, pack, density.input(Term::BulkDensity)];
    if let Some(near) = short {
        // What was asked for first, in packs; whole ones are taken.
        if fill.asked_height.is_some() {
            let mut inputs = inputs.clone();
            inputs.extend(up_to(&steps));
            steps.push(Step::new(Term::AskedLayerVolume, fill.asked, Formula::LayerVolume, inputs));
        } else {
            let formula =
                if matches!(layer.target, Target::Weight(_)) { Formula::VolumeOfWeight } else { Formula::VolumeAsked };
            steps.push(Step::new(Term::AskedLayerVolume, fill.asked, formula, inputs.clone()));
        }
        let asked = steps.last().map(|step| step.input(Term::LayerVolume));
        let needed = asked.into_iter().chain([pack]).collect();
        steps.push(Step::new(Term::AskedPacks, near.needed.value, Formula::PacksNeeded, needed));
        let whole = Known::typed(f64::from(near.taken)).input(Term::WholePacks);
        inputs.push(Input { amount: Amount::Count(near.taken), ..whole });
    }
    inputs.extend(up_to(&steps).filter(|_| short.is_none()));
    let mut volume = Step::of(Term::LayerVolume, &fill.volume);
    volume.figure.inputs = inputs;
    let added = volume.input(Term::LayerVolume);
    steps.push(volume);
    // All that is filled in so far, and where its surface stands.
    let first = below.volume.value.value <= 0.0;
    let together = cubic_metres(below.volume.value.value + fill.volume.value.value);
    let formula = if first { Formula::FirstVolume } else { Formula::StackedVolume };
    steps.push(Step::new(Term::FreeVolume, together, formula, vec![volume_below, added]));
    let stacked = steps.last().map_or(added, |step| step.input(Term::FreeVolume));
    steps.push(rungs.height_holding(vessel, stacked, fill.top.value, Term::Height));
    let top = fill.top.input(Term::Height);
    let lower = below.height.input(Term::BottomHeight);
    let tangent = Known { value: vessel.cavity.bottom_tangent(), ..vessel.inside_diameter.known() };
    let of = |term: Term, value: Amount, formula: Formula, inputs: Vec<Input>| Step::new(term, value, formula, inputs);
    steps.push(of(Term::TapeReading, fill.tape.reading.value.into(), Formula::TapeReading, vec![depth, top]));
    steps.push(spread_step(fill));
    steps.push(of(Term::LayerDepth, fill.depth_axis.value.into(), Formula::LayerDepthAxis, vec![top, lower]));
    let wall = vec![top, lower, tangent.input(Term::BottomHeadDepth)];
    steps.push(of(Term::WallDepth, fill.depth_wall.value.into(), Formula::LayerDepthWall, wall));
    if let (Some(cover), Some(slot)) = (&fill.cover, vessel.measures.bottom_collector.top_slot()) {
        steps.push(of(Term::Cover, cover.value.into(), Formula::Cover, vec![top, slot.input(Term::TopSlot)]));
    }
    if let Some(near) = short {
        let asked = Known { value: fill.asked, basis: fill.volume.basis, source: Source::Arithmetic };
        let all = cubic_metres(below.volume.value.value + fill.asked.value);
        let full = metres(fill.top.value.value + near.shorter.value.value);
        steps.push(of(Term::AskedStackVolume, all.into(), formula, vec![volume_below, asked.input(Term::LayerVolume)]));
        let all = Known { value: all, ..asked }.input(Term::FreeVolume);
        steps.push(rungs.height_holding(vessel, all, full, Term::FullHeight));
        let inputs = vec![Known { value: full, ..fill.top.known() }.input(Term::FullHeight), top];
        steps.push(of(Term::ShorterBy, near.shorter.value.into(), Formula::ShorterBy, inputs));
    }
    let mass = vec![density.input(Term::BulkDensity), added];
    steps.push(of(Term::LayerMass, fill.mass.value.into(), Formula::LayerMass, mass));
    steps.push(of(Term::Packs, fill.packs.value.into(), Formula::PacksNeeded, vec![added, pack]));
    steps.extend(part_steps(fill, pack));
    steps
}

/// How far a reading may be off.
fn spread_step(fill: &LayerFill) -> Step {
    let [diameter, packs, tape, depth] = fill.tape.moved_by;
    let of = |value: Length, term: Term| Known { value, ..fill.top.known() }.input(term);
    let inputs = vec![
        of(diameter, Term::SpreadOfDiameter),
        of(packs, Term::SpreadOfPacks),
        Assumption::SpreadTape.length().input(Term::SpreadOfTape),
        of(depth, Term::SpreadOfDepth),
    ];
    debug_assert!(tape == Assumption::SpreadTape.length().value);
    Step::new(Term::TapeSpread, fill.tape.spread, Formula::TapeSpread, inputs)
}

/// Readings are followed one by one for this many packs, as on the page.
const FOLLOWED: usize = 40;

/// Height and reading after each whole pack, with how many were poured; nothing where there is only one.
#[must_use]
pub fn pack_by_pack(
    vessel: &Vessel,
    rungs: &Rungs,
    layer: &Layer,
    fill: &LayerFill,
    below: &Below,
) -> Vec<(u32, [Step; 2])> {
    let density = layer.density();
    let pack = pack_steps(layer, &density, &mut Vec::new());
    let depth = &vessel.measures.inside_depth;
    let whole = fill.packs_to_buy.saturating_sub(u32::from(fill.part.is_some()));
    let followed = fill.after_packs.iter().take(FOLLOWED).zip(1..=whole);
    if fill.after_packs.len() < 2 {
        return Vec::new();
    }
    let both = followed.map(|(tape, count)| {
        let height = metres(depth.value.value - tape.reading.value.value);
        let mut step = rungs.height_holding(vessel, below.volume.input(Term::VolumeBelow), height, Term::Height);
        step.figure.inputs.retain(|input| input.term != Term::FreeVolume);
        let poured = Known::typed(f64::from(count)).input(Term::WholePacks);
        step.figure.inputs.extend([
            below.volume.input(Term::VolumeBelow),
            pack,
            Input { amount: Amount::Count(count), ..poured },
        ]);
        step.with.push(Formula::StackAfterPacks);
        let inputs = vec![depth.input(Term::InsideDepth), step.input(Term::Height)];
        let read = Step::new(Term::TapeReading, tape.reading.value, Formula::TapeReading, inputs);
        (count, [step, read])
    });
    both.collect()
}

/// What is poured of the last pack, and what is left of it.
fn part_steps(fill: &LayerFill, pack: Input) -> Vec<Step> {
    let Some(part) = &fill.part else { return Vec::new() };
    let packs = fill.packs.input(Term::Packs);
    let count = |term: Term, count: u32| Input { term, amount: Amount::Count(count), ..packs };
    let whole = count(Term::WholePacks, fill.packs_to_buy.saturating_sub(1));
    let share = Step::new(Term::PartShare, part.share.value, Formula::PartShare, vec![packs, whole]);
    let volume =
        Step::new(Term::PartVolume, part.volume.value, Formula::PartVolume, vec![share.input(Term::PartShare), pack]);
    let bucket = part.buckets.inputs.iter().find(|input| input.term == Term::Bucket).copied();
    let buckets = [volume.input(Term::PartVolume)].into_iter().chain(bucket).collect();
    let buckets = Step::new(Term::BucketMeasures, part.buckets.value, Formula::BucketMeasures, buckets);
    let left = vec![count(Term::PacksToBuy, fill.packs_to_buy), packs, pack];
    vec![share, volume, buckets, Step::new(Term::LeftOver, fill.left_over.value, Formula::LeftOver, left)]
}

/// The volume of a pack as an input, with the step that gives it where the pack says only its weight.
fn pack_steps(layer: &Layer, density: &Known<crate::quantity::MassDensity>, steps: &mut Vec<Step>) -> Input {
    let (pack, bulk) = (&layer.pack, density.input(Term::BulkDensity));
    let volume = cubic_metres(pack.fills(density).unwrap_or_default());
    match (&pack.volume, &pack.mass) {
        (Some(volume), Some(mass)) => {
            let both = vec![mass.input(Term::PackMass), volume.input(Term::PackVolume)];
            steps.push(Step::new(Term::BulkDensity, density.value, Formula::PackDensity, both));
            volume.input(Term::PackVolume)
        }
        (Some(volume), None) => volume.input(Term::PackVolume),
        (None, mass) => {
            let inputs = mass.iter().map(|mass| mass.input(Term::PackMass)).chain([bulk]).collect();
            let step = Step::new(Term::PackVolume, volume, Formula::PackVolume, inputs);
            let input = step.input(Term::PackVolume);
            steps.push(step);
            input
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

/// By which equation a target names a height, and what else goes in.
fn asked_height(vessel: &Vessel, layer: &Layer, below: &Below) -> (Formula, Vec<Input>) {
    let ceiling = Known { value: vessel.ceiling(), ..vessel.inside_diameter.known() }.input(Term::Ceiling);
    match layer.target {
        Target::Cover(_) => {
            let slot = vessel.measures.bottom_collector.top_slot();
            (Formula::HeightOfCover, slot.iter().map(|slot| slot.input(Term::TopSlot)).collect())
        }
        Target::Freeboard(_) => (Formula::HeightUnderCeiling, vec![ceiling]),
        Target::FreeboardRatio(_) => {
            let inputs = vec![ceiling, below.media.input(Term::MediaBelow)];
            let media = layer.role == Role::Media;
            (if media { Formula::HeightOfRatio } else { Formula::HeightOfRatioBelow }, inputs)
        }
        Target::TapeReading(_) => (Formula::HeightOfTape, Vec::new()),
        _ => (Formula::HeightOfDepth, Vec::new()),
    }
}

/// How freeboard and media depth come about.
#[must_use]
pub fn freeboard_steps(vessel: &Vessel, layers: &[Layer], plan: &Plan) -> Vec<Step> {
    let mut steps = Vec::new();
    let Ok(freeboard) = &plan.freeboard else { return steps };
    let ceiling = Known { value: vessel.ceiling(), ..vessel.inside_diameter.known() };
    let top = plan.layers.last().and_then(|layer| layer.as_ref().ok()).map(|fill| fill.top.input(Term::Height));
    let inputs = top.into_iter().chain([ceiling.input(Term::Ceiling)]).collect();
    let length = Step::new(Term::Freeboard, freeboard.length.value, Formula::Freeboard, inputs);
    let as_input = length.input(Term::Freeboard);
    steps.push(length);
    if let Some(ratio) = &freeboard.ratio {
        let media = layers.iter().zip(&plan.layers).filter(|(layer, _)| layer.role == Role::Media);
        let depths = media.filter_map(|(_, fill)| Some(fill.as_ref().ok()?.depth_axis.input(Term::LayerDepth)));
        let depth = Step::new(Term::MediaDepth, freeboard.media_depth.value, Formula::MediaDepth, depths.collect());
        let inputs = vec![as_input, depth.input(Term::MediaDepth)];
        steps.push(depth);
        steps.push(Step::new(Term::FreeboardRatio, ratio.value, Formula::FreeboardRatio, inputs));
    }
    steps
}
