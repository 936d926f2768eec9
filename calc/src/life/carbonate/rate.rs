//! How fast calcite dissolves, and how much of it a water takes up on its way through a bed.

use super::analysis::CarbonateWater;
use super::mass;
use super::species::Speciation;
use crate::material::grading::Grading;
use crate::order::Between as _;
use crate::quantity::problem::{positive, within};
use crate::quantity::root::crossing;
use crate::quantity::{
    Area, Caution, Concentration, Figure, Formula, Known, Problem, Term, Volume, VolumeRate, square_metres,
};
use crate::water::fluid_at;

/// Where the third constant changes its branch.
const BRANCH_K: f64 = 298.15;

/// The rate of Plummer, Wigley and Parkhurst at one temperature, mol/(m²·s) per unit of activity.
struct Rate {
    hydrogen: f64,
    dioxide: f64,
    water: f64,
}

impl Rate {
    fn at(kelvin: f64) -> Rate {
        // A millimole on a square centimetre is ten moles on a square metre.
        let constant = |a: f64, b: f64| 10.0 * libm::exp10(a - b / kelvin);
        Rate {
            hydrogen: constant(0.198, 444.0),
            dioxide: constant(2.84, 2177.0),
            water: if kelvin <= BRANCH_K { constant(-5.86, 317.0) } else { constant(-1.1, 1737.0) },
        }
    }

    fn of(&self, found: &Speciation, index: f64) -> f64 {
        let forward = self.hydrogen * found.hydrogen + self.dioxide * found.dioxide_active + self.water * found.water;
        forward * -libm::expm1(2.0 / 3.0 * index * std::f64::consts::LN_10)
    }
}

/// Surface of all grains in a bed.
///
/// ```text
/// S = 6·(1 − ε)·V/ψ · Σ fᵢ/dᵢ
/// ```
///
/// | symbol | here | unit |
/// |---|---|---|
/// | V | `volume`, of the bed with its gaps | m³ |
/// | ε | `voidage` | share |
/// | ψ | `sphericity` | surface of a ball of the grain's volume over the grain's surface |
/// | fᵢ, dᵢ | a hundred fractions of `grading` of equal mass | share, m |
///
/// Doubling the grains' size halves it; grains are taken to be dense, without inner surface.
///
/// # Validity
/// The sieve's opening stands for the diameter of a ball of the grain's volume, as everywhere here.
///
/// # Errors
/// [`Term::MediaVolume`] not above zero; [`Term::Voidage`] outside 0.2 to 0.8; [`Term::Sphericity`] outside 0.3 to 1.
///
/// # Sources
/// Geometry; definition of sphericity as for the Ergun equation.
///
/// # Example
/// ```
/// use bedwright_calc::life::carbonate::grain_surface;
/// use bedwright_calc::material::grading::Grading;
/// use bedwright_calc::quantity::{Known, cubic_metres, metres};
/// // Balls of 1 mm that fill half of a litre: 6·0.5·0.001/0.001 = 3 m².
/// let size = Known::typed(metres(0.001));
/// let balls = Grading::new(&size, &size, None, None).unwrap();
/// let surface =
///     grain_surface(&Known::typed(cubic_metres(0.001)), &balls, &Known::typed(1.0), &Known::typed(0.5)).unwrap();
/// assert!((surface.value.value - 3.0).abs() < 1e-12);
/// ```
pub fn grain_surface(
    volume: &Known<Volume>,
    grading: &Grading,
    sphericity: &Known<f64>,
    voidage: &Known<f64>,
) -> Result<Figure<Area>, Problem> {
    positive(Term::MediaVolume, volume.value.value, volume.value.into())?;
    within(Term::Voidage, voidage.value, (0.2, 0.8), Into::into)?;
    within(Term::Sphericity, sphericity.value, (0.3, 1.0), Into::into)?;
    let fractions = grading.fractions();
    let per_size = fractions.iter().map(|size| 1.0 / size.value).sum::<f64>() / fractions.len() as f64;
    let surface = 6.0 * (1.0 - voidage.value) * volume.value.value / sphericity.value * per_size;
    let inputs =
        vec![volume.input(Term::MediaVolume), voidage.input(Term::Voidage), sphericity.input(Term::Sphericity)];
    Ok(Figure::new(square_metres(surface), Formula::GrainSurface, inputs))
}

impl CarbonateWater {
    /// Calcite that the water takes up on its way past this surface at this flow.
    ///
    /// ```text
    /// dx/d(S/Q) = (k₁·a(H⁺) + k₂·a(CO₂) + k₃·a(H₂O))·(1 − 10^(⅔·SI))
    /// ```
    ///
    /// Each drop passes every part of the bed once (plug flow); what is dissolved depends on surface over flow alone, so
    /// gaps, depth and the way up or down don't matter where the surface is the same. More surface or less flow never
    /// gives less; no bed gives more than [`CarbonateWater::dissolved_to_saturation`]. A supersaturated water takes up
    /// none, and the figure says so.
    ///
    /// # Validity
    /// Clean surfaces between 5 and 60 °C, pH above about 5.5, where the way through the water beside the grain doesn't
    /// matter. Iron, aluminium, manganese, phosphate and organic films slow it: beds in use stop short of this.
    ///
    /// # Errors
    /// [`Term::GrainSurface`] or [`Term::ServiceFlow`] not above zero; as
    /// [`CarbonateWater::dissolved_to_saturation`].
    ///
    /// # Sources
    /// L. N. Plummer, T. M. L. Wigley and D. L. Parkhurst (1978), American Journal of Science 278, 179–216, as the block
    /// RATES of phreeqc.dat has it; checked on 30 beds against PHREEQC's own integration.
    ///
    /// # Example
    /// ```
    /// use bedwright_calc::life::carbonate::{Analysis, Carbonate, CarbonateWater};
    /// use bedwright_calc::quantity::{Concentration, Known, cubic_metres_per_second, kelvins, square_metres};
    /// let mg = |x: f64| Known::typed(Concentration::milligrams_per_litre(x));
    /// let carbonate = Carbonate::AlkalinityAndDioxide { alkalinity: mg(20.0), dioxide: mg(25.0) };
    /// let water = CarbonateWater::of(&Analysis::new(Known::typed(kelvins(283.15)), carbonate, mg(15.0))).unwrap();
    /// let flow = Known::typed(cubic_metres_per_second(1e-4));
    /// let taken = |surface: f64| {
    ///     water.dissolved_in_contact(&Known::typed(square_metres(surface)), &flow).unwrap().value
    /// };
    /// assert!(taken(20.0) < taken(40.0));
    /// assert!(taken(40.0) < water.dissolved_to_saturation().unwrap().value);
    /// ```
    pub fn dissolved_in_contact(
        &self,
        surface: &Known<Area>,
        flow: &Known<VolumeRate>,
    ) -> Result<Figure<Concentration>, Problem> {
        positive(Term::GrainSurface, surface.value.value, surface.value.into())?;
        positive(Term::ServiceFlow, flow.value.value, flow.value.into())?;
        let saturated = self.dissolved_to_saturation()?;
        let mut inputs = self.inputs.clone();
        inputs.push(surface.input(Term::GrainSurface));
        inputs.push(flow.input(Term::ServiceFlow));
        let most = saturated.value.to_kilograms_per_cubic_metre();
        let moles = if most > 0.0 {
            let most = most / mass::CALCIUM_CARBONATE / fluid_at(self.chemistry.kelvin).density;
            self.moles_in_contact(surface.value.value / flow.value.value, most)
        } else {
            0.0
        };
        let value = self.mass_of(moles, mass::CALCIUM_CARBONATE);
        let mut figure = Figure::new(value, Formula::CalciteInContact, inputs);
        figure.cautions.clone_from(&saturated.cautions);
        if self.speciation.ph() < FILM_PH {
            figure = figure.with(Caution::BeyondFit { value: self.speciation.ph().into(), limit: FILM_PH.into() });
        }
        Ok(figure)
    }

    /// Moles a kilogram after `surface_time`, m²·s/m³, of a water that takes up at most `most`.
    ///
    /// The time to reach a share of the most is integrated over u = −ln(1 − share): near saturation the rate fades like the
    /// distance, so equal steps of u take about equal times. Simpson's rule, each step checked against its halves.
    fn moles_in_contact(&self, surface_time: f64, most: f64) -> f64 {
        let rate = Rate::at(self.chemistry.kelvin);
        let density = fluid_at(self.chemistry.kelvin).density;
        let amount = |u: f64| -most * libm::expm1(-u);
        // Time on a square metre for each step of u.
        let slowness = |u: f64| {
            self.after(amount(u), 0.0).map_or(f64::INFINITY, |(_, found)| {
                most * libm::exp(-u) * density / rate.of(&found, self.chemistry.calcite_index(&found))
            })
        };
        let (mut u, mut spent) = (0.0, 0.0);
        let mut here = slowness(u);
        let mut step = FIRST_STEP;
        while u < SATURATED {
            let quarters = [1.0, 2.0, 3.0, 4.0].map(|part: f64| slowness(u + step * part / 4.0));
            let [a, b, c, d] = quarters;
            let whole = step / 6.0 * (here + 4.0 * b + d);
            let halves = step / 12.0 * (here + 4.0 * a + 2.0 * b + 4.0 * c + d);
            let miss = (halves - whole).abs() / 15.0;
            let allowed = ALLOWED * (spent + halves);
            // Not even numbers left: as near to saturation as digits go.
            if halves.is_nan() || halves.is_infinite() {
                break;
            }
            if miss > allowed && step > LEAST_STEP {
                step *= (0.9 * libm::pow(allowed / miss, 0.2)).between(0.1, 0.9);
                continue;
            }
            if spent + halves >= surface_time {
                let part = |end: f64| {
                    let step = end - u;
                    let [a, b, c, d] = [1.0, 2.0, 3.0, 4.0].map(|part: f64| slowness(u + step * part / 4.0));
                    spent + step / 12.0 * (here + 4.0 * a + 2.0 * b + 4.0 * c + d) - surface_time
                };
                return amount(crossing(part, u, u + step, 1e-10));
            }
            spent += halves;
            u += step;
            here = d;
            step *= (0.9 * libm::pow(allowed / miss.max(f64::MIN_POSITIVE), 0.2)).between(0.5, 4.0);
        }
        most
    }
}

/// Below this pH the way of H⁺ through the water beside a grain takes part.
const FILM_PH: f64 = 5.5;
/// First and least step, allowed miss as a share of all time, and where what is missing of saturation is a few parts in
/// a thousand million.
const FIRST_STEP: f64 = 1e-3;
const LEAST_STEP: f64 = 1e-9;
const ALLOWED: f64 = 1e-8;
const SATURATED: f64 = 20.0;
