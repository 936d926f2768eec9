//! When grains begin to lift, how far they stand apart at a flow, and when they leave.

use super::GRAVITY;
use super::packed_bed::{shape, speed};
use crate::material::grading::GRAIN_M;
use crate::quantity::problem::within;
use crate::quantity::root::crossing;
use crate::quantity::{
    Caution, Fault, Figure, Formula, Input, Known, Length, MassDensity, Problem, Term, Velocity,
    kilograms_per_cubic_metre, metres, metres_per_second,
};
use crate::water::{Fluid, Water};

/// Grains of one size.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Grain {
    /// Diameter: of the sieve they just pass.
    pub size: Known<Length>,
    /// Mass of a wetted grain over its volume.
    pub particle_density: Known<MassDensity>,
    /// Surface of a ball of a grain's volume over the grain's surface, 0 to 1.
    pub sphericity: Known<f64>,
    /// Share of the settled bed that is water, 0 to 1.
    pub voidage: Known<f64>,
}

impl Grain {
    fn check(&self, water: &Water) -> Result<Solid, Problem> {
        within(Term::GrainSize, self.size.value.value, GRAIN_M, |x| metres(x).into())?;
        shape(&self.voidage, &self.sphericity)?;
        sinks(&self.particle_density, water)?;
        Ok(Solid {
            size: self.size.value.value,
            density: self.particle_density.value.value,
            sphericity: self.sphericity.value,
            voidage: self.voidage.value,
        })
    }

    fn inputs(&self, water: &Water) -> Vec<Input> {
        vec![
            self.size.input(Term::GrainSize),
            self.particle_density.input(Term::ParticleDensity),
            self.sphericity.input(Term::Sphericity),
            self.voidage.input(Term::Voidage),
            water.density.input(Term::WaterDensity),
            water.viscosity.input(Term::WaterViscosity),
        ]
    }
}

/// The heaviest metal has 22 600 kg/m³.
const DENSITY_KG_M3: (f64, f64) = (1.0, 30_000.0);

/// Refuses a density that no grain has.
pub(crate) fn solid_density(density: &Known<MassDensity>) -> Result<(), Problem> {
    within(Term::ParticleDensity, density.value.value, DENSITY_KG_M3, |x| kilograms_per_cubic_metre(x).into())
}

/// Refuses grains that would float.
pub(crate) fn sinks(density: &Known<MassDensity>, water: &Water) -> Result<(), Problem> {
    solid_density(density)?;
    if density.value.value > water.density.value.value {
        Ok(())
    } else {
        Err(Problem::new(
            Term::ParticleDensity,
            Fault::NotAbove {
                value: density.value.into(),
                other: Term::WaterDensity,
                limit: water.density.value.into(),
            },
        ))
    }
}

/// Grains of one size, bare: m, kg/m³, 1, 1.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Solid {
    pub(crate) size: f64,
    pub(crate) density: f64,
    pub(crate) sphericity: f64,
    pub(crate) voidage: f64,
}

/// Galilei's number: weight under water against viscosity.
fn galilei(size: f64, density: f64, fluid: Fluid) -> f64 {
    size * size * size * fluid.density * (density - fluid.density) * GRAVITY / (fluid.viscosity * fluid.viscosity)
}

/// Speed at which a bed of grains of one size begins to lift, after Wen and Yu.
///
/// ```text
/// Re = √(33.7² + 0.0408·Ga) − 33.7,  Ga = d³·ρ·(ρ_p − ρ)·g/µ²,  v = Re·µ/(ρ·d)
/// ```
///
/// | symbol | here | unit |
/// |---|---|---|
/// | v | result | m/s |
/// | d | `grain.size` | m |
/// | ρ_p | `grain.particle_density` | kg/m³ |
/// | ρ, µ | `water` | kg/m³, Pa·s |
///
/// Takes neither sphericity nor voidage. For graded media the book uses the size that 90 % are finer than, and 1.3 times
/// the result as a backwash rate. A larger or heavier grain never lifts sooner.
///
/// # Validity
/// Against measured sands 0.6 to 2 mm: +11 to −25 % (Hendricks table 12.9).
///
/// # Errors
/// [`Term::GrainSize`] not from 1 µm to 0.3 m; [`Term::Sphericity`] not from 0.01 to 1; [`Term::Voidage`] not from 0.01
/// to 0.95; [`Term::ParticleDensity`] not above the water's, or above 30 000 kg/m³.
///
/// # Sources
/// D. Hendricks, Fundamentals of Water Treatment Unit Processes, eq. 12.56–12.58, p. 368.
///
/// # Example
/// ```
/// use bedwright_calc::hydraulics::fluidisation::{Grain, wen_yu_minimum};
/// use bedwright_calc::quantity::{Known, kelvins, kilograms_per_cubic_metre, metres};
/// use bedwright_calc::water::Water;
/// let grain = Grain {
///     size: Known::typed(metres(0.001)), particle_density: Known::typed(kilograms_per_cubic_metre(2650.0)),
///     sphericity: Known::typed(0.8), voidage: Known::typed(0.42),
/// };
/// // Sand of 1.00 mm at 25 °C: 34.27 m/h (Hendricks table 12.9 prints 34.2).
/// let water = Water::at(&Known::typed(kelvins(298.15))).unwrap();
/// assert!((wen_yu_minimum(&grain, &water).unwrap().value.value * 3600.0 - 34.27).abs() < 0.01);
/// ```
pub fn wen_yu_minimum(grain: &Grain, water: &Water) -> Result<Figure<Velocity>, Problem> {
    let solid = grain.check(water)?;
    let value = wen_yu_start(&solid, water.fluid());
    Ok(Figure::new(metres_per_second(value), Formula::WenYuMinimum, grain.inputs(water)))
}

pub(crate) fn wen_yu_start(solid: &Solid, fluid: Fluid) -> f64 {
    let ga = galilei(solid.size, solid.density, fluid);
    // √(a² + b) − a, without losing digits where b is small.
    let reynolds = 0.0408 * ga / ((33.7 * 33.7 + 0.0408 * ga).sqrt() + 33.7);
    reynolds * fluid.viscosity / (fluid.density * solid.size)
}

/// Speed at which a bed of grains of one size begins to lift, by the balance of Ergun's loss and the weight under water.
///
/// ```text
/// 1.75·ρ·v²/(ψ·d·ε³) + 150·µ·(1−ε)·v/((ψ·d)²·ε³) = (ρ_p − ρ)·g
/// ```
///
/// | symbol | here | unit |
/// |---|---|---|
/// | v | result | m/s |
/// | d, ψ, ε, ρ_p | `grain` | m, 1, 1, kg/m³ |
/// | ρ, µ | `water` | kg/m³, Pa·s |
///
/// # Validity
/// As [`super::packed_bed::ergun_pressure_loss`].
///
/// # Errors
/// As [`wen_yu_minimum`].
///
/// # Sources
/// Force balance on Ergun (1952); K₁ = 1.75/(ε³ψ), K₂ = 150(1−ε)/(ε³ψ²) as printed in a journal appendix, eq. A7–A10.
///
/// # Example
/// ```
/// use bedwright_calc::hydraulics::fluidisation::{Grain, ergun_minimum};
/// use bedwright_calc::quantity::{Known, kelvins, kilograms_per_cubic_metre, metres};
/// use bedwright_calc::water::Water;
/// let grain = Grain {
///     size: Known::typed(metres(0.0006)), particle_density: Known::typed(kilograms_per_cubic_metre(2650.0)),
///     sphericity: Known::typed(0.8), voidage: Known::typed(0.42),
/// };
/// let water = Water::at(&Known::typed(kelvins(288.15))).unwrap();
/// assert!((ergun_minimum(&grain, &water).unwrap().value.value * 3600.0 - 9.8).abs() < 0.05);
/// ```
pub fn ergun_minimum(grain: &Grain, water: &Water) -> Result<Figure<Velocity>, Problem> {
    let solid = grain.check(water)?;
    let value = ergun_start(&solid, water.fluid());
    Ok(Figure::new(metres_per_second(value), Formula::ErgunMinimum, grain.inputs(water)))
}

pub(crate) fn ergun_start(solid: &Solid, fluid: Fluid) -> f64 {
    let size = solid.sphericity * solid.size;
    let cube = solid.voidage * solid.voidage * solid.voidage;
    let a = 1.75 * fluid.density / (size * cube);
    let b = 150.0 * fluid.viscosity * (1.0 - solid.voidage) / (size * size * cube);
    let c = (solid.density - fluid.density) * GRAVITY;
    2.0 * c / (b + (b * b + 4.0 * a * c).sqrt())
}

/// Share of water in a lifted bed of grains of one size, by Wen and Yu's drag: the low line.
///
/// ```text
/// ε^4.7·Ga = 18·Re + 2.7·Re^1.687,  Re = ρ·v·d/µ
/// ```
///
/// | symbol | here | unit |
/// |---|---|---|
/// | ε | result, never below the settled `grain.voidage` | 0 to 1 |
/// | d, ρ_p | `grain` | m, kg/m³ |
/// | v | `flow_per_area` | m/s |
///
/// Takes no sphericity, so angular grains come out too low.
///
/// # Validity
/// Sands; within a few per cent of experiments by the book's own word.
///
/// # Errors
/// As [`wen_yu_minimum`]; [`Term::FlowPerArea`] below zero, or so high that no bed is left.
///
/// # Sources
/// D. Hendricks, Fundamentals of Water Treatment Unit Processes, eq. 12.52–12.54.
///
/// # Example
/// See [`ergun_voidage`], which is asked the same way.
pub fn wen_yu_voidage(grain: &Grain, water: &Water, flow_per_area: &Known<Velocity>) -> Result<Figure<f64>, Problem> {
    lifted(grain, water, flow_per_area, Formula::WenYuVoidage, wen_yu_open)
}

pub(crate) fn wen_yu_open(solid: &Solid, fluid: Fluid, v: f64) -> f64 {
    let reynolds = fluid.density * v * solid.size / fluid.viscosity;
    let drag = 18.0 * reynolds + 2.7 * libm::pow(reynolds, 1.687);
    libm::pow(drag / galilei(solid.size, solid.density, fluid), 1.0 / 4.7)
}

/// Share of water in a lifted bed of grains of one size, by Ergun's loss taken past the lift: the high line.
///
/// ```text
/// 150·µ·v·(1−ε)/((ψ·d)²·ε³) + 1.75·ρ·v²/(ψ·d·ε³) = (ρ_p − ρ)·g
/// ```
///
/// | symbol | here | unit |
/// |---|---|---|
/// | ε | result, never below the settled `grain.voidage` | 0 to 1 |
/// | d, ψ, ρ_p | `grain` | m, 1, kg/m³ |
/// | v | `flow_per_area` | m/s |
///
/// A cubic in ε, solved in closed form. With the sphericity of a bed that lies still it comes out too high.
///
/// # Validity
/// As [`super::packed_bed::ergun_pressure_loss`].
///
/// # Errors
/// As [`wen_yu_minimum`]; [`Term::FlowPerArea`] below zero, or so high that no bed is left.
///
/// # Sources
/// Ö. Akgiray and A. M. Saatçı (2001), abstract and introduction: Ergun's equation stays valid past fluidisation.
///
/// # Example
/// ```
/// use bedwright_calc::hydraulics::fluidisation::{Grain, ergun_voidage};
/// use bedwright_calc::quantity::{Known, kelvins, kilograms_per_cubic_metre, metres, metres_per_second};
/// use bedwright_calc::water::Water;
/// let grain = Grain {
///     size: Known::typed(metres(0.0006)), particle_density: Known::typed(kilograms_per_cubic_metre(2650.0)),
///     sphericity: Known::typed(0.8), voidage: Known::typed(0.42),
/// };
/// let water = Water::at(&Known::typed(kelvins(288.15))).unwrap();
/// // At 30 m/h sand of 0.6 mm expands by about a third.
/// let voidage = ergun_voidage(&grain, &water, &Known::typed(metres_per_second(30.0 / 3600.0))).unwrap();
/// assert!(((voidage.value - 0.42) / (1.0 - voidage.value) - 0.34).abs() < 0.01);
/// ```
pub fn ergun_voidage(grain: &Grain, water: &Water, flow_per_area: &Known<Velocity>) -> Result<Figure<f64>, Problem> {
    lifted(grain, water, flow_per_area, Formula::ErgunVoidage, ergun_open)
}

pub(crate) fn ergun_open(solid: &Solid, fluid: Fluid, v: f64) -> f64 {
    let size = solid.sphericity * solid.size;
    let weight = (solid.density - fluid.density) * GRAVITY;
    // ε³ + p·ε = q
    let viscous = fluid.viscosity * v / (weight * size * size);
    let p = 150.0 * viscous;
    let q = p + 1.75 * fluid.density * v * v / (weight * size);
    if q <= 0.0 {
        return 0.0;
    }
    let third = p / 3.0;
    let half = q / 2.0;
    let up = (half + (half * half + third * third * third).sqrt()).cbrt();
    let first = up - third / up;
    // Two Newton steps give back the digits lost where both terms are nearly alike.
    let step = |e: f64| e - (e * e * e + p * e - q) / (3.0 * e * e + p);
    step(step(first))
}

/// Share of water in a lifted bed of grains of one size, after Dharmarajah and Cleasby: shown beside, from memory.
///
/// ```text
/// A₁ = ε³/(1−ε)²·ρ·(ρ_p−ρ)·g/(S³·µ²),  Re₁ = ρ·v/(S·(1−ε)·µ),  S = 6/(ψ·d)
/// log A₁ = 0.56543 + 1.09348·x + 0.17971·x² − 0.00392·x⁴ − 1.5·(log ψ)²,  x = log Re₁;  A₁ = 3.01·Re₁ below 0.2
/// ```
///
/// | symbol | here | unit |
/// |---|---|---|
/// | ε | result, never below the settled `grain.voidage` | 0 to 1 |
/// | d, ψ, ρ_p | `grain` | m, 1, kg/m³ |
/// | v | `flow_per_area` | m/s |
///
/// # Validity
/// Coefficients from memory: no verdict rests on it. The two branches don't meet at Re₁ = 0.2: the voidage leaps there by
/// at most 0.025, so water that is a little warmer may open the bed a little more.
///
/// # Errors
/// As [`ergun_voidage`].
///
/// # Sources
/// From memory: Dharmarajah and Cleasby (1986).
///
/// # Example
/// See [`ergun_voidage`], which is asked the same way.
pub fn dharmarajah_cleasby_voidage(
    grain: &Grain,
    water: &Water,
    flow_per_area: &Known<Velocity>,
) -> Result<Figure<f64>, Problem> {
    lifted(grain, water, flow_per_area, Formula::DharmarajahCleasbyVoidage, dharmarajah_cleasby_open)
}

pub(crate) fn dharmarajah_cleasby_open(solid: &Solid, fluid: Fluid, v: f64) -> f64 {
    if v <= 0.0 {
        return 0.0;
    }
    let surface = 6.0 / (solid.sphericity * solid.size);
    let lift = fluid.density * (solid.density - fluid.density) * GRAVITY
        / (surface * surface * surface * fluid.viscosity * fluid.viscosity);
    let shape = libm::log10(solid.sphericity);
    let miss = |e: f64| {
        let open = 1.0 - e;
        let a = e * e * e / (open * open) * lift;
        let reynolds = fluid.density * v / (surface * open * fluid.viscosity);
        if reynolds < 0.2 {
            return libm::log10(a) - libm::log10(3.01 * reynolds);
        }
        let x = libm::log10(reynolds);
        libm::log10(a) - (0.565_43 + 1.093_48 * x + 0.179_71 * x * x - 0.003_92 * x * x * x * x - 1.5 * shape * shape)
    };
    let (least, most) = (0.05, 0.999_9);
    if miss(most) < 0.0 {
        return 1.0;
    }
    crossing(miss, least, most, 1e-12)
}

fn lifted(
    grain: &Grain,
    water: &Water,
    flow_per_area: &Known<Velocity>,
    formula: Formula,
    open: impl Fn(&Solid, Fluid, f64) -> f64,
) -> Result<Figure<f64>, Problem> {
    let solid = grain.check(water)?;
    let v = flow_per_area.value.value;
    speed(v)?;
    let voidage = open(&solid, water.fluid(), v);
    if voidage.is_nan() || voidage >= 1.0 {
        return Err(Problem::new(Term::FlowPerArea, Fault::CarriesAway { value: flow_per_area.value.into() }));
    }
    let mut inputs = grain.inputs(water);
    inputs.push(flow_per_area.input(Term::FlowPerArea));
    let figure = Figure::new(voidage.max(solid.voidage), formula, inputs);
    Ok(if voidage < solid.voidage { figure.with(Caution::NotLifted) } else { figure })
}

/// Speed at which a single grain falls in still water.
///
/// ```text
/// d* = d·(ρ·(ρ_p−ρ)·g/µ²)^⅓,  u* = 1/(18/d*² + (2.335 − 1.744·ψ)/√d*),  v = u*·(µ·(ρ_p−ρ)·g/ρ²)^⅓
/// ```
///
/// For balls (ψ = 1) the drag of balls instead, C = 24/Re·(1 + 0.1806·Re^0.6459) + 0.4251/(1 + 6880.95/Re), which is
/// 1 to 18 % slower and so the safer of the two.
///
/// | symbol | here | unit |
/// |---|---|---|
/// | v | result | m/s |
/// | d, ψ, ρ_p | `grain` | m, 1, kg/m³ |
/// | ρ, µ | `water` | kg/m³, Pa·s |
///
/// A larger or heavier grain never falls slower.
///
/// # Validity
/// Sphericity 0.5 to 1; below it the answer carries a caution.
///
/// # Errors
/// As [`wen_yu_minimum`].
///
/// # Sources
/// A. Haider and O. Levenspiel as printed in a journal appendix, eq. A4–A6; balls: as coded in fluids 1.3.1.
///
/// # Example
/// ```
/// use bedwright_calc::hydraulics::fluidisation::{Grain, haider_levenspiel_settling};
/// use bedwright_calc::quantity::{Known, kelvins, kilograms_per_cubic_metre, metres};
/// use bedwright_calc::water::Water;
/// let grain = Grain {
///     size: Known::typed(metres(0.0006)), particle_density: Known::typed(kilograms_per_cubic_metre(2650.0)),
///     sphericity: Known::typed(0.8), voidage: Known::typed(0.42),
/// };
/// let water = Water::at(&Known::typed(kelvins(288.15))).unwrap();
/// assert!((haider_levenspiel_settling(&grain, &water).unwrap().value.value * 3600.0 - 276.0).abs() < 0.1);
/// ```
pub fn haider_levenspiel_settling(grain: &Grain, water: &Water) -> Result<Figure<Velocity>, Problem> {
    let solid = grain.check(water)?;
    let figure =
        Figure::new(metres_per_second(settling(&solid, water.fluid())), Formula::SettlingSpeed, grain.inputs(water));
    Ok(if solid.sphericity < 0.5 {
        figure.with(Caution::BeyondFit { value: solid.sphericity.into(), limit: 0.5.into() })
    } else {
        figure
    })
}

pub(crate) fn settling(solid: &Solid, fluid: Fluid) -> f64 {
    let weight = (solid.density - fluid.density) * GRAVITY;
    let size = solid.size * (fluid.density * weight / (fluid.viscosity * fluid.viscosity)).cbrt();
    let speed = if solid.sphericity < 1.0 {
        1.0 / (18.0 / (size * size) + (2.335 - 1.744 * solid.sphericity) / size.sqrt())
    } else {
        ball_speed(size)
    };
    (fluid.viscosity * weight / (fluid.density * fluid.density)).cbrt() * speed
}

/// Speed of a ball without dimension, from its diameter without dimension: drag and weight in balance.
fn ball_speed(size: f64) -> f64 {
    // Weight: 4/3·d*³ = C·Re², C = 24/Re·(1 + 0.1806·Re^0.6459) + 0.4251/(1 + 6880.95/Re).
    let weight = 4.0 / 3.0 * size * size * size;
    let drag = |reynolds: f64| {
        24.0 * reynolds * (1.0 + 0.1806 * libm::pow(reynolds, 0.6459))
            + 0.4251 * reynolds * reynolds / (1.0 + 6880.95 / reynolds)
    };
    // Stokes' speed is the fastest there is.
    let fastest = weight / 24.0;
    crossing(|reynolds| drag(reynolds) - weight, fastest * 1e-6, fastest, 1e-14) / size
}
