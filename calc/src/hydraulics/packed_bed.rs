//! Pressure lost by water on its way through grains that lie still.

use crate::material::grading::GRAIN_M;
use crate::quantity::problem::{between, within};
use crate::quantity::{
    Caution, Figure, Formula, Known, Length, Pressure, Problem, Term, Velocity, VolumeRate, cubic_metres_per_second,
    metres, metres_per_second, pascals,
};
use crate::water::{Fluid, Water};

/// A layer of grains of one size that lie still.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PackedBed {
    /// How deep it is.
    pub depth: Known<Length>,
    /// Diameter of its grains: of the sieve they just pass.
    pub grain_size: Known<Length>,
    /// Surface of a ball of a grain's volume over the grain's surface, 0 to 1.
    pub sphericity: Known<f64>,
    /// Share of its volume that is water, 0 to 1.
    pub voidage: Known<f64>,
}

/// Where the equation is used in practice: up to this Reynolds number of the voids.
const MOST_REYNOLDS: f64 = 1000.0;

/// A settled bed of any grains has at least so much water, and none so much that nothing is left of it.
pub(crate) const VOIDAGE: (f64, f64) = (0.01, 0.95);
/// Flakes have a sphericity of a few hundredths, balls of 1.
pub(crate) const SPHERICITY: (f64, f64) = (0.01, 1.0);

/// Refuses a voidage or a sphericity that no grains have.
pub(crate) fn shape(voidage: &Known<f64>, sphericity: &Known<f64>) -> Result<(), Problem> {
    within(Term::Voidage, voidage.value, VOIDAGE, Into::into)?;
    within(Term::Sphericity, sphericity.value, SPHERICITY, Into::into)
}

/// Speeds in a bed, m/s: none slower is called a flow, none faster keeps to a pipe.
pub(crate) const SPEED_M_S: (f64, f64) = (1e-9, 100.0);
/// Depths of a layer, m.
const DEPTH_M: (f64, f64) = (1e-6, 1000.0);

/// Refuses a speed below nought or beyond anything in a pipe.
pub(crate) fn speed(value: f64) -> Result<(), Problem> {
    between(Term::FlowPerArea, value, (0.0, SPEED_M_S.1), |x| metres_per_second(x).into())
}

/// Refuses a flow that is none, or faster through this section than anything in a pipe.
pub(crate) fn flow(term: Term, given: &Known<VolumeRate>, area: f64) -> Result<(), Problem> {
    let range = (SPEED_M_S.0 * area, SPEED_M_S.1 * area);
    within(term, given.value.value, range, |x| cubic_metres_per_second(x).into())
}

/// Pressure lost by water flowing through a bed of grains.
///
/// ```text
/// Δp/L = 150·µ·v·(1−ε)²/((ψ·d)²·ε³) + 1.75·ρ·v²·(1−ε)/(ψ·d·ε³)
/// ```
///
/// | symbol | here | unit |
/// |---|---|---|
/// | Δp | result | Pa |
/// | L | `bed.depth` | m |
/// | d | `bed.grain_size` | m |
/// | ψ | `bed.sphericity` | 0 to 1 |
/// | ε | `bed.voidage` | 0 to 1 |
/// | v | `flow_per_area` | m/s |
/// | ρ, µ | `water` | kg/m³, Pa·s |
///
/// `v` is flow divided by the *empty* vessel's section. No speed loses nothing; more speed or depth never loses less.
///
/// # Validity
/// Reynolds number of the voids ρ·v·ψ·d/(µ·(1−ε)) up to about 1000; beyond it the answer carries a caution.
///
/// # Errors
/// [`Term::LayerDepth`] not from 1 µm to 1 km; [`Term::GrainSize`] not from 1 µm to 0.3 m; [`Term::Sphericity`] not from
/// 0.01 to 1; [`Term::Voidage`] not from 0.01 to 0.95; [`Term::FlowPerArea`] below zero or above 100 m/s.
///
/// # Sources
/// S. Ergun (1952), Chem. Eng. Prog. 48, 89–94; constants 150 and 1.75 as listed in Davis, Water and Wastewater
/// Engineering, table 11-2.
///
/// # Example
/// ```
/// use bedwright_calc::hydraulics::packed_bed::{PackedBed, ergun_pressure_loss};
/// use bedwright_calc::quantity::{Known, kelvins, metres, metres_per_second};
/// use bedwright_calc::water::Water;
/// // Sand of 0.6 mm, 1 m deep, at 10 m/h and 15 °C loses 9 561 Pa (fluids 1.3.1).
/// let bed = PackedBed {
///     depth: Known::typed(metres(1.0)), grain_size: Known::typed(metres(0.0006)),
///     sphericity: Known::typed(0.80), voidage: Known::typed(0.42),
/// };
/// let water = Water::at(&Known::typed(kelvins(288.15))).unwrap();
/// let loss = ergun_pressure_loss(&bed, &water, &Known::typed(metres_per_second(10.0 / 3600.0))).unwrap();
/// assert!((loss.value.value - 9560.83).abs() < 0.5);
/// ```
pub fn ergun_pressure_loss(
    bed: &PackedBed,
    water: &Water,
    flow_per_area: &Known<Velocity>,
) -> Result<Figure<Pressure>, Problem> {
    let (depth, size) = (bed.depth.value.value, bed.grain_size.value.value);
    within(Term::LayerDepth, depth, DEPTH_M, |x| metres(x).into())?;
    within(Term::GrainSize, size, GRAIN_M, |x| metres(x).into())?;
    shape(&bed.voidage, &bed.sphericity)?;
    let v = flow_per_area.value.value;
    speed(v)?;
    let fluid = water.fluid();
    let value = depth * gradient(bed.sphericity.value * size, bed.voidage.value, fluid, v);
    let inputs = vec![
        bed.depth.input(Term::LayerDepth),
        bed.grain_size.input(Term::GrainSize),
        bed.sphericity.input(Term::Sphericity),
        bed.voidage.input(Term::Voidage),
        flow_per_area.input(Term::FlowPerArea),
        water.density.input(Term::WaterDensity),
        water.viscosity.input(Term::WaterViscosity),
    ];
    let figure = Figure::new(pascals(value), Formula::ErgunPressureLoss, inputs);
    let reynolds = fluid.density * v * bed.sphericity.value * size / (fluid.viscosity * (1.0 - bed.voidage.value));
    Ok(if reynolds > MOST_REYNOLDS {
        figure.with(Caution::BeyondFit { value: reynolds.into(), limit: MOST_REYNOLDS.into() })
    } else {
        figure
    })
}

/// Pa per metre; `size` is sphericity times diameter.
pub(crate) fn gradient(size: f64, voidage: f64, fluid: Fluid, v: f64) -> f64 {
    let solid = 1.0 - voidage;
    let cube = voidage * voidage * voidage;
    150.0 * fluid.viscosity * v * solid * solid / (size * size * cube)
        + 1.75 * fluid.density * v * v * solid / (size * cube)
}
