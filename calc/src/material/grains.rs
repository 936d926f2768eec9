//! What hydraulics needs to know of a material's grains.

use super::grading::Grading;
use super::{Material, Range};
use crate::quantity::{Basis, Known, Length, MassDensity, Problem, kilograms_per_cubic_metre, metres};

/// The grains of one layer, each property with what it rests on. A property that nobody knows is absent.
#[derive(Clone, Debug, PartialEq)]
pub struct Grains {
    /// The lower sieve.
    pub low: Known<Length>,
    /// The upper sieve.
    pub high: Known<Length>,
    /// Size that a tenth by mass is finer than.
    pub effective_size: Option<Known<Length>>,
    /// Size that six tenths are finer than, over the effective size.
    pub uniformity: Option<Known<f64>>,
    /// Mass of a wetted grain over its volume.
    pub particle_density: Option<Known<MassDensity>>,
    /// Share of the settled bed that is water, 0 to 1.
    pub voidage: Option<Known<f64>>,
    /// Surface of a ball of the grain's volume over the grain's surface, 0 to 1.
    pub sphericity: Option<Known<f64>>,
}

impl Material {
    /// Its grains as the catalogue has them: the middle of every range.
    #[must_use]
    pub fn grains(&self) -> Grains {
        Grains {
            low: self.grain_low,
            high: self.grain_high,
            effective_size: self.effective_size.as_ref().map(|r| middle(r, |x| x.value, metres)),
            uniformity: self.uniformity.as_ref().map(|r| middle(r, |x| *x, |x| x)),
            particle_density: self.particle_density.as_ref().map(|r| middle(r, |x| x.value, kilograms_per_cubic_metre)),
            voidage: self.voidage.as_ref().map(|r| middle(r, |x| *x, |x| x)),
            sphericity: self.sphericity.as_ref().map(|r| middle(r, |x| *x, |x| x)),
        }
    }

    /// Whether its grains have pores inside: their wetted density is then not that of their solid matter, and says
    /// nothing of the settled voidage.
    #[must_use]
    pub fn is_porous(&self) -> bool {
        self.skeletal_density.is_some()
    }
}

fn middle<Q>(range: &Range<Q>, bare: impl Fn(&Q) -> f64, quantity: impl Fn(f64) -> Q) -> Known<Q> {
    Known {
        value: quantity(f64::midpoint(bare(&range.low), bare(&range.high))),
        basis: Basis::Catalogue,
        source: range.source,
    }
}

impl Grains {
    /// How their sizes are spread.
    ///
    /// # Errors
    /// As [`Grading::new`].
    ///
    /// # Sources
    /// As [`Grading::new`].
    ///
    /// # Example
    /// ```
    /// use bedwright_calc::material::Material;
    /// let grading = Material::of("carbon_coconut_12x40").unwrap().grains().grading().unwrap();
    /// assert!((grading.size_finer_than(0.10).value * 1000.0 - 0.65).abs() < 1e-9);
    /// ```
    pub fn grading(&self) -> Result<Grading, Problem> {
        Grading::new(&self.low, &self.high, self.effective_size.as_ref(), self.uniformity.as_ref())
    }
}
