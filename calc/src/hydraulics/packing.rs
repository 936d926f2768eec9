//! How closely the grains of a bed lie, from the pressure that clean water loses in it.

use super::bed::Bed;
use super::packed_bed::flow;
use crate::quantity::problem::positive;
use crate::quantity::root::crossing;
use crate::quantity::{
    Amount, Assumption, Basis, Fault, Figure, Formula, Input, Known, Pressure, Problem, Temperature, Term, VolumeRate,
    pascals,
};
use crate::water::{Fluid, Water};

/// A reading of the pressure lost over a clean bed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CleanDrop {
    /// The flow through the vessel.
    pub flow: Known<VolumeRate>,
    /// The water's temperature.
    pub temperature: Known<Temperature>,
    /// Pressure lost over the bed alone: without valve and collectors.
    pub drop: Known<Pressure>,
}

/// How closely a bed lies by its readings.
#[derive(Clone, Debug, PartialEq)]
pub struct Packing {
    /// The bed as it lies: as it was given where no reading says better.
    pub bed: Bed,
    /// Settled voidage of each media layer by the readings, with its place in the plan; empty where none says it.
    pub voidages: Vec<(usize, Figure<f64>)>,
    /// Of each reading, in their order: why it says nothing.
    pub refused: Vec<Option<Problem>>,
}

impl Packing {
    /// How many readings it rests on.
    #[must_use]
    pub fn used(&self) -> usize {
        self.refused.iter().filter(|problem| problem.is_none()).count()
    }
}

/// How closely the media lie, from readings of the pressure lost over the clean bed.
///
/// Pressure lost hangs steeply on the voidage, which hardly anybody knows. All media layers are taken to lie closer, or
/// looser, in the same measure:
///
/// ```text
/// 1 − ε = k·(1 − ε₀), with k from Σ Δp(ε)·L = Δp read
/// ```
///
/// | symbol | here | unit |
/// |---|---|---|
/// | ε₀, ε | voidage of a media layer as given, and by the reading | 0 to 1 |
/// | k | share of solids against what was given | |
/// | Δp(ε) | pressure lost in a layer of so many fractions, by Ergun | Pa |
/// | Δp read | the reading, `drop` | Pa |
///
/// The depth of the layers and the voidage of the underbed stay as they are. Several readings count alike. A reading that
/// no voidage between the closest packing of balls and the loosest of broken grains explains is refused, and says which
/// pressures it could be.
///
/// # Errors
/// None as a whole; each reading carries its own: [`Term::WaterTemperature`] outside 0 to 60 °C; [`Term::ServiceFlow`] not
/// above zero or beyond 100 m/s; [`Term::CleanDrop`] not above zero, or beyond what the grains can lose; [`Term::Voidage`]
/// of layers that have no common measure.
///
/// # Sources
/// S. Ergun (1952), Chem. Eng. Prog. 48:89–94, solved for the voidage. Closest packing of equal balls, 1 − π/√18: geometry.
///
/// # Example
/// See [`super::backwash`] for a bed. What it would lose at a voidage comes back as that voidage.
#[must_use]
pub fn packing(bed: &Bed, drops: &[CleanDrop]) -> Packing {
    let found: Vec<Result<f64, Problem>> = drops.iter().map(|drop| closeness(bed, drop)).collect();
    let mut sum = 0.0;
    let mut evidence: Vec<Input> = Vec::new();
    let mut used = 0.0;
    for (drop, closer) in drops.iter().zip(&found) {
        if let Ok(closer) = closer {
            sum += closer;
            used += 1.0;
            evidence.push(drop.flow.input(Term::ServiceFlow));
            evidence.push(drop.temperature.input(Term::WaterTemperature));
            evidence.push(drop.drop.input(Term::CleanDrop));
        }
    }
    let refused = found.into_iter().map(Result::err).collect();
    if used == 0.0 {
        return Packing { bed: bed.clone(), voidages: Vec::new(), refused };
    }
    let closer = sum / used;
    let voidages: Vec<(usize, Figure<f64>)> = bed
        .media_layers()
        .map(|layer| {
            let mut inputs = layer.inputs();
            inputs.extend(evidence.iter().copied());
            let mut voidage =
                Figure::new(1.0 - closer * (1.0 - layer.voidage.value), Formula::CleanDropVoidage, inputs);
            // Whatever the grains were taken to be: with this voidage they lose what was measured.
            voidage.basis = Basis::Measured;
            (layer.index, voidage)
        })
        .collect();
    Packing { bed: bed.lying(&voidages), voidages, refused }
}

/// Share of solids by one reading, against what was given.
fn closeness(bed: &Bed, reading: &CleanDrop) -> Result<f64, Problem> {
    let fluid = Water::at(&reading.temperature)?.fluid();
    let area = bed.area.value.value;
    flow(Term::ServiceFlow, &reading.flow, area)?;
    positive(Term::CleanDrop, reading.drop.value.value, reading.drop.value.into())?;
    let v = reading.flow.value.value / area;
    let (closest, loosest) = (Assumption::VoidageClosest.ratio(), Assumption::VoidageLoosest.ratio());
    let (mut low, mut high) = (0.0_f64, f64::INFINITY);
    for layer in bed.media_layers() {
        let solids = 1.0 - layer.voidage.value;
        low = low.max((1.0 - loosest) / solids);
        high = high.min((1.0 - closest) / solids);
    }
    if low >= high {
        let voidage = bed.media_layers().map(|layer| layer.voidage.value).fold(0.0, f64::max);
        let fault = Fault::OutOfRange { value: voidage.into(), low: closest.into(), high: loosest.into() };
        return Err(Problem::new(Term::Voidage, fault));
    }
    let (least, most) = (lost(bed, low, fluid, v), lost(bed, high, fluid, v));
    let read = reading.drop.value.value;
    if !(least..=most).contains(&read) {
        let amount = |x: f64| Amount::Pressure(pascals(x));
        let fault = Fault::OutOfRange { value: amount(read), low: amount(least), high: amount(most) };
        return Err(Problem::new(Term::CleanDrop, fault));
    }
    Ok(crossing(|closer| lost(bed, closer, fluid, v) - read, low, high, 1e-12))
}

/// Pressure lost over the bed if its media held so much more of solids than was given.
fn lost(bed: &Bed, closer: f64, fluid: Fluid, v: f64) -> f64 {
    bed.layers
        .iter()
        .map(|layer| {
            let given = layer.voidage.value;
            let voidage = if layer.role == crate::fill::Role::Media { 1.0 - closer * (1.0 - given) } else { given };
            layer.loss(voidage, fluid, v)
        })
        .sum()
}
