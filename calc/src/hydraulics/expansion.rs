//! How far a bed stands out at a flow: low, likely, high.

use super::bed::Bed;
use crate::water::Fluid;

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

/// Which of the lines between the low model (0) and the high one (1).
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Weights {
    pub(crate) low: f64,
    pub(crate) likely: f64,
    pub(crate) high: f64,
}

/// Open as this, a fraction is no bed any more.
const OPEN: f64 = 0.99;

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
        let (mut low, mut high) = (0.0, 0.0);
        for (&size, &power) in self.sizes.iter().zip(&self.powers) {
            let drag = (18.0 * per_size * size + 2.7 * rate * power) / (galilei * size * size * size);
            let open = libm::pow(drag, 1.0 / 4.7).max(self.voidage);
            low += if open < OPEN { settled / (1.0 - open) } else { f64::INFINITY };
            let solid = super::fluidisation::Solid {
                size,
                density: self.density,
                sphericity: self.sphericity,
                voidage: self.voidage,
            };
            let open = super::fluidisation::ergun_open(&solid, fluid, v).max(self.voidage);
            high += if open < OPEN { settled / (1.0 - open) } else { f64::INFINITY };
        }
        let count = self.sizes.len() as f64;
        (low / count - 1.0, high / count - 1.0)
    }
}

/// The line at `weight` between two expansions.
pub(crate) fn between(low: f64, high: f64, weight: f64) -> f64 {
    if weight <= 0.0 {
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
        if expansion.is_nan() || expansion < 0.0 {
            return None;
        }
        // Falls from 1 to 0 and is never infinite.
        let wanted = 1.0 / (1.0 + expansion);
        let miss = |v: f64| 1.0 / (1.0 + self.expanded(fluid, v, weight)) - wanted;
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
