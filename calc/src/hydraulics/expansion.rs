//! How far a bed stands out at a flow: low, likely, high.

use super::bed::Bed;
use super::evidence::Lines;
use super::packed_bed::speed;
use crate::quantity::{Known, Problem, Velocity};
use crate::water::{Fluid, Water};

/// Where an expansion lies. A line on which grains leave the vessel has no expansion.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Expansion {
    /// By the model that says less (most often Wen and Yu's), or what evidence leaves of it.
    pub low: Option<f64>,
    /// Between the two.
    pub likely: Option<f64>,
    /// By the model that says more (most often Ergun's), or what evidence leaves of it.
    pub high: Option<f64>,
}

impl Expansion {
    /// The three lines between two models; none where grains leave.
    pub(crate) fn on((low, high): (f64, f64), weights: Weights) -> Expansion {
        let at = |weight: f64| Some(between(low, high, weight)).filter(|expansion| expansion.is_finite());
        Expansion { low: at(weights.low), likely: at(weights.likely), high: at(weights.high) }
    }
}

/// Which of the lines between the low model (0) and the high one (1).
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Weights {
    pub(crate) low: f64,
    pub(crate) likely: f64,
    pub(crate) high: f64,
}

/// Open as this, a fraction is no bed any more.
pub(crate) const OPEN: f64 = 0.99;

/// A layer of the bed as the inner loop needs it.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct LiftedLayer {
    /// Settled volume, m³.
    pub(crate) volume: f64,
    /// Settled voidage.
    pub(crate) voidage: f64,
    /// Wetted density of a grain, kg/m³.
    pub(crate) density: f64,
    pub(crate) sphericity: f64,
    /// Diameters of its fractions of equal mass, m, finest first.
    pub(crate) sizes: Vec<f64>,
    /// Each diameter to the power of 1.687, which no flow changes.
    pub(crate) powers: Vec<f64>,
}

/// The power of the Reynolds number in Wen and Yu's drag.
pub(crate) const DRAG_POWER: f64 = 1.687;

impl LiftedLayer {
    /// Low and high expansion at a speed; infinite where a fraction is no bed any more.
    pub(crate) fn expansion(&self, fluid: Fluid, v: f64) -> (f64, f64) {
        if v <= 0.0 {
            return (0.0, 0.0);
        }
        let weight = (self.density - fluid.density) * super::GRAVITY;
        let per_size = fluid.density * v / fluid.viscosity;
        let rate = libm::pow(per_size, DRAG_POWER);
        let galilei = fluid.density * weight / (fluid.viscosity * fluid.viscosity);
        let settled = 1.0 - self.voidage;
        // A flow beyond all numbers leaves nothing.
        let stretched = |open: f64| {
            if open < OPEN { settled / (1.0 - open.max(self.voidage)) } else { f64::INFINITY }
        };
        let (mut low, mut high) = (0.0, 0.0);
        for (&size, &power) in self.sizes.iter().zip(&self.powers) {
            let drag = (18.0 * per_size * size + 2.7 * rate * power) / (galilei * size * size * size);
            low += stretched(libm::pow(drag, 1.0 / 4.7));
            let solid = super::fluidisation::Solid {
                size,
                density: self.density,
                sphericity: self.sphericity,
                voidage: self.voidage,
            };
            high += stretched(super::fluidisation::ergun_open(&solid, fluid, v));
        }
        let count = self.sizes.len() as f64;
        (low / count - 1.0, high / count - 1.0)
    }
}

/// The line at `weight` between two expansions.
pub(crate) fn between(low: f64, high: f64, weight: f64) -> f64 {
    // What leaves on the low line leaves on all of them.
    if weight <= 0.0 || low == f64::INFINITY {
        low
    } else if weight >= 1.0 {
        high
    } else {
        low + weight * (high - low)
    }
}

/// The lower and the higher expansion of layers together, from the volume and both expansions of each.
pub(crate) fn together(layers: impl Iterator<Item = (f64, (f64, f64))>, media: f64) -> (f64, f64) {
    let (mut low, mut high) = (0.0, 0.0);
    for (volume, (a, b)) in layers {
        low += volume * a;
        high += volume * b;
    }
    (low.min(high) / media, low.max(high) / media)
}

impl Bed {
    /// How far all media together stand out at a flow, on the low, the likely and the high line.
    ///
    /// A hundred fractions of equal mass, each lifted for itself and never below its settled voidage; solids are kept:
    ///
    /// ```text
    /// E = Σ V·Σ ((1−ε₀)/(1−ε) − 1)/n / Σ V
    /// ```
    ///
    /// | symbol | here | unit |
    /// |---|---|---|
    /// | E | result | share of the settled volume |
    /// | V | settled volume of a media layer | m³ |
    /// | ε₀, ε | settled and lifted voidage of a fraction | 0 to 1 |
    /// | n | fractions of the layer | |
    ///
    /// A line on which any fraction leaves has no expansion. More flow never lifts less.
    ///
    /// # Validity
    /// As [`super::fluidisation`].
    ///
    /// # Errors
    /// [`crate::quantity::Term::FlowPerArea`] below zero or above 100 m/s; [`crate::quantity::Term::ParticleDensity`] of
    /// grains that float in this water, with the layer.
    ///
    /// # Sources
    /// D. Hendricks, Fundamentals of Water Treatment Unit Processes, eq. 12.55, on the equations of
    /// [`super::fluidisation`].
    ///
    /// # Example
    /// ```
    /// use bedwright_calc::fill::{Layer, Role, Target, plan};
    /// use bedwright_calc::hydraulics::{Bed, Lines};
    /// use bedwright_calc::material::{Material, Pack};
    /// use bedwright_calc::quantity::{Known, cubic_metres, kelvins, metres, metres_per_second};
    /// use bedwright_calc::vessel::{BottomCollector, DiameterBy, Head, Measures, Opening, Vessel};
    /// use bedwright_calc::water::Water;
    /// let m = |x: f64| Known::measured(metres(x));
    /// let vessel = Vessel::new(Measures {
    ///     nominal_diameter: None, diameter_by: DiameterBy::Measured { inside: m(0.3) }, inside_depth: m(1.4),
    ///     bottom_head: Head::Ellipsoidal, top_head: Head::Ellipsoidal, neck_height: m(0.02), clear_bore: m(0.06),
    ///     opening: Opening::TopOnly, riser: None, bottom_collector: BottomCollector::None, upper_collector: None,
    /// }).unwrap();
    /// let carbon = Material::of("carbon_coconut_12x40").unwrap();
    /// let mut grains = carbon.grains();
    /// (grains.uniformity, grains.voidage) = (Some(Known::typed(1.7)), Some(Known::typed(0.50)));
    /// let layers = [Layer {
    ///     pack: Pack::of_material(&carbon.id).remove(0), bulk_density: carbon.usual_bulk_density(), material: carbon,
    ///     role: Role::Media, target: Target::Volume(Known::typed(cubic_metres(0.05))), minimum: false,
    /// }];
    /// let filled = plan(&vessel, &layers, &Known::typed(cubic_metres(0.0189)));
    /// let bed = Bed::new(&vessel, &layers, &filled, &[grains], None).unwrap();
    /// let water = Water::at(&Known::typed(kelvins(278.15))).unwrap();
    /// // Carbon 12 × 40 at 15 m/h and 5 °C: 6.6 % by the low model, 24.9 % by the high one (50 digits; fluids 1.3.1).
    /// let speed = Known::typed(metres_per_second(15.0 / 3600.0));
    /// let found = bed.expansion_at(&water, &speed, &Lines::unknown()).unwrap();
    /// assert!((found.low.unwrap() - 0.0660391).abs() < 1e-6);
    /// assert!((found.high.unwrap() - 0.2493156).abs() < 1e-6);
    /// ```
    pub fn expansion_at(
        &self,
        water: &Water,
        flow_per_area: &Known<Velocity>,
        lines: &Lines,
    ) -> Result<Expansion, Problem> {
        let v = flow_per_area.value.value;
        speed(v)?;
        self.sinks_in(water)?;
        Ok(Expansion::on(self.lines(water.fluid(), v), lines.weights()))
    }

    /// Expansion of all media together on the line at `weight`; infinite where grains leave.
    pub(crate) fn expanded(&self, fluid: Fluid, v: f64, weight: f64) -> f64 {
        let (low, high) = self.lines(fluid, v);
        between(low, high, weight)
    }

    /// The lower and the higher expansion of all media together. Of beads in warm water, and of any bed just above
    /// its lift or far beyond it, Wen and Yu's is the higher.
    pub(crate) fn lines(&self, fluid: Fluid, v: f64) -> (f64, f64) {
        together(self.lifted.iter().map(|layer| (layer.volume, layer.expansion(fluid, v))), self.media)
    }

    /// Speed at which the bed stands out by `expansion` on the line at `weight`; none where no speed below washing
    /// everything out does.
    pub(crate) fn speed_for(&self, fluid: Fluid, expansion: f64, weight: f64) -> Option<f64> {
        self.speed_near(fluid, expansion, weight, None)
    }

    /// The same, looked for first about a speed that is near: that of water a little colder.
    pub(crate) fn speed_near(&self, fluid: Fluid, expansion: f64, weight: f64, near: Option<f64>) -> Option<f64> {
        if expansion.is_nan() || expansion < 0.0 {
            return None;
        }
        // Falls from 1 to 0 and is never infinite.
        let wanted = 1.0 / (1.0 + expansion);
        let miss = |v: f64| 1.0 / (1.0 + self.expanded(fluid, v, weight)) - wanted;
        if let Some(near) = near {
            let (low, high) = (0.95 * near, 1.1 * near);
            if miss(low) > 0.0 && miss(high) <= 0.0 {
                return Some(crate::quantity::root::crossing(miss, low, high, 1e-10));
            }
        }
        let mut low = 0.0;
        let mut high = 1e-4;
        while miss(high) > 0.0 {
            low = high;
            high *= 2.0;
            if high > 100.0 {
                return None;
            }
        }
        Some(crate::quantity::root::crossing(miss, low, high, 1e-10))
    }
}
