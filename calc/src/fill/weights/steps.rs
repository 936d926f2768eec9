//! How the weights come about, equation by equation.

use super::{Weights, filled, in_pores, solid_density};
use crate::fill::{Layer, Plan};
use crate::quantity::{Assumption, Formula, Input, Known, Length, Mass, Source, Step, Term, cubic_metres, kilograms};
use crate::vessel::Vessel;
use crate::water::Water;

/// A step, and the layer it is of, from the bottom and from zero; none of the whole vessel.
type OfLayer = (Option<usize>, Step);

/// How every weight that is known comes about; `shell` is the volume of the empty shell up to the datum.
#[must_use]
pub fn weight_steps(
    vessel: &Vessel,
    layers: &[Layer],
    plan: &Plan,
    (empty, foot): (Option<&Known<Mass>>, Option<&Known<Length>>),
    water: &Water,
    weights: &Weights,
    shell: Input,
) -> Vec<OfLayer> {
    let mut steps = Vec::new();
    let masses = || filled(layers, plan).filter_map(|found| Some(found.ok()?.2.mass.input(Term::LayerMass)));
    if let Ok(dry) = &weights.dry {
        steps.push((None, Step::new(Term::DryMass, dry.value, Formula::DryWeight, masses().collect())));
    }
    for (found, share) in
        [(&weights.drained_low, Assumption::RetainedLow), (&weights.drained_high, Assumption::RetainedHigh)]
    {
        if let Ok(drained) = found {
            drained_steps(layers, plan, water, &share.number(), drained.value, &mut steps);
        }
    }
    let density = water.density.input(Term::WaterDensity);
    // A vessel whose weight nobody knows is left out, which the figure says.
    let unknown = Known::assumed(kilograms(0.0), Source::Arithmetic);
    let empty = empty.unwrap_or(&unknown).input(Term::EmptyMass);
    let wall = wall_step(vessel);
    let base = vec![empty, density, Input { term: Term::ShellVolume, ..shell }, wall.input(Term::WallVolume)];
    steps.push((None, wall));
    if let Ok(full) = &weights.water_full {
        steps.push((None, Step::new(Term::FullMass, full.value, Formula::WaterFull, base.clone())));
    }
    let Ok(operating) = &weights.operating else { return steps };
    let mut inputs = base;
    inputs.extend(masses());
    for found in filled(layers, plan) {
        let Ok((index, layer, fill)) = found else { continue };
        let Ok((solid, _)) = solid_density(layer) else { continue };
        let volume = cubic_metres(fill.mass.value.value / solid.value.value);
        let named = vec![fill.mass.input(Term::LayerMass), solid.input(Term::SolidDensity)];
        let step = Step::new(Term::SolidVolume, volume, Formula::SolidVolume, named);
        inputs.push(step.input(Term::SolidVolume));
        steps.push((Some(index), step));
    }
    let operating = Step::new(Term::OperatingMass, operating.value, Formula::OperatingWeight, inputs);
    let mass = operating.input(Term::OperatingMass);
    steps.push((None, operating));
    if let (Ok(load), Some(foot)) = (&weights.floor_load, foot) {
        let inputs = vec![mass, foot.input(Term::FootDiameter)];
        steps.push((None, Step::new(Term::FloorLoad, load.value, Formula::FloorLoad, inputs)));
    }
    steps
}

fn drained_steps(
    layers: &[Layer],
    plan: &Plan,
    water: &Water,
    share: &Known<f64>,
    together: Mass,
    steps: &mut Vec<OfLayer>,
) {
    let mut wet = Vec::new();
    for found in filled(layers, plan) {
        let Ok((index, layer, fill)) = found else { continue };
        let Ok((held, mut inputs)) = in_pores(layer, water) else { continue };
        let formula = match inputs.as_mut_slice() {
            [] => Formula::PoresNone,
            [assumed] => {
                assumed.term = Term::PoreWater;
                Formula::PoresAssumed
            }
            _ => Formula::PoresShare,
        };
        let value =
            fill.mass.value.value * (1.0 + held) + share.value * water.density.value.value * fill.volume.value.value;
        inputs.extend([
            fill.mass.input(Term::LayerMass),
            fill.volume.input(Term::LayerVolume),
            share.input(Term::RetainedWater),
            water.density.input(Term::WaterDensity),
        ]);
        let step = Step::new(Term::WetMass, kilograms(value), formula, inputs);
        wet.push(step.input(Term::WetMass));
        steps.push((Some(index), step));
    }
    steps.push((None, Step::new(Term::DrainedMass, together, Formula::DrainedWeight, wet)));
}

/// What the riser's wall takes of the water's room.
fn wall_step(vessel: &Vessel) -> Step {
    let Some(riser) = &vessel.measures.riser else {
        return Step::given(Term::WallVolume, &Known::typed(cubic_metres(0.0)));
    };
    let wall = Assumption::RiserWall.length();
    let shell = vessel.cavity.shell_volume().value;
    let inputs = vec![
        riser.outside_diameter.input(Term::RiserOutsideDiameter),
        wall.input(Term::RiserWall),
        vessel.measures.inside_depth.input(Term::InsideDepth),
        riser.seat.input(Term::RiserSeat),
    ];
    let volume = cubic_metres(shell - super::room(vessel).0);
    Step::new(Term::WallVolume, volume, Formula::RiserWall, inputs)
}
