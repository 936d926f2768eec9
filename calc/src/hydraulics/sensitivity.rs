//! Which input decides.

use super::backwash::Setting;
use super::bed::Bed;
use super::expansion::between;
use crate::fill::Layer;
use crate::order::Between as _;
use crate::quantity::{Basis, Term};
use crate::water::{CELSIUS_ZERO_K, Fluid, Water, fluid_at};

/// What the likely expansion becomes when one input is a little less and a little more.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sensitivity {
    /// The input.
    pub term: Term,
    /// The layer it belongs to, where it belongs to one.
    pub layer: Option<usize>,
    /// By how much it was changed: 0.01 is one per cent; for a temperature, kelvins.
    pub step: f64,
    /// The likely expansion with less of it; infinite ones are left out.
    pub less: f64,
    /// The likely expansion with more.
    pub more: f64,
    /// The likely expansion at both ends of what the catalogue says it can be, where it is no more than that.
    pub over_range: Option<(f64, f64)>,
}

impl Sensitivity {
    /// How much it moves the expansion.
    #[must_use]
    pub fn swing(&self) -> f64 {
        match self.over_range {
            Some((a, b)) => (a - b).abs(),
            None => (self.more - self.less).abs(),
        }
    }
}

/// One per cent.
const STEP: f64 = 0.01;

/// How the likely expansion in the coldest water at a setting answers to one per cent of diameter, particle density,
/// sphericity and voidage, and to one kelvin; the strongest first.
pub(crate) fn sensitivities(
    bed: &Bed,
    layers: &[Layer],
    cold: &Water,
    setting: &Setting,
    weight: f64,
) -> Vec<Sensitivity> {
    let fluid = cold.fluid();
    let flow = setting.flow.value.value;
    let area = bed.area.value.value;
    let likely = |bed: &Bed, fluid: Fluid, area: f64| {
        let (low, high) = bed.lines(fluid, flow / area);
        between(low, high, weight)
    };
    let mut found = Vec::new();
    let mut note =
        |term: Term, layer: Option<usize>, step: f64, less: f64, more: f64, over_range: Option<(f64, f64)>| {
            if less.is_finite() && more.is_finite() {
                let over_range = over_range.filter(|(a, b)| a.is_finite() && b.is_finite());
                let new = Sensitivity { term, layer, step, less, more, over_range };
                let at = found.partition_point(|old: &Sensitivity| old.swing() >= new.swing());
                found.insert(at, new);
            }
        };
    let scaled = |scale: f64| likely(bed, fluid, area * scale * scale);
    note(Term::InsideDiameter, None, STEP, scaled(1.0 - STEP), scaled(1.0 + STEP), None);
    let at = |kelvin: f64| likely(bed, fluid_at(kelvin.between(CELSIUS_ZERO_K, CELSIUS_ZERO_K + 60.0)), area);
    let kelvin = cold.temperature.value.value;
    note(Term::WaterTemperature, None, 1.0, at(kelvin - 1.0), at(kelvin + 1.0), None);
    for (place, layer) in bed.media_layers().enumerate() {
        let with = |change: &dyn Fn(&mut super::expansion::LiftedLayer)| {
            let mut changed = bed.clone();
            if let Some(lifted) = changed.lifted.get_mut(place) {
                change(lifted);
            }
            likely(&changed, fluid, area)
        };
        let material = layers.get(layer.index).map(|layer| &layer.material);
        let catalogue = |basis: Option<Basis>| basis.is_some_and(|basis| basis >= Basis::Catalogue);
        let index = Some(layer.index);
        let density = |scale: f64| with(&move |l| l.density *= scale);
        let range = material
            .and_then(|m| m.particle_density.as_ref())
            .filter(|_| catalogue(layer.grains.particle_density.map(|x| x.basis)))
            .map(|r| (with(&|l| l.density = r.low.value), with(&|l| l.density = r.high.value)));
        note(Term::ParticleDensity, index, STEP, density(1.0 - STEP), density(1.0 + STEP), range);
        let shape = |scale: f64| with(&move |l| l.sphericity = (l.sphericity * scale).min(1.0));
        let range = material
            .and_then(|m| m.sphericity.as_ref())
            .filter(|_| catalogue(layer.grains.sphericity.map(|x| x.basis)))
            .map(|r| (with(&|l| l.sphericity = r.low), with(&|l| l.sphericity = r.high)));
        note(Term::Sphericity, index, STEP, shape(1.0 - STEP), shape(1.0 + STEP), range);
        let voidage = |scale: f64| with(&move |l| l.voidage = (l.voidage * scale).min(0.95));
        let range = material
            .and_then(|m| m.voidage.as_ref())
            .filter(|_| catalogue(layer.grains.voidage.map(|x| x.basis)))
            .map(|r| (with(&|l| l.voidage = r.low), with(&|l| l.voidage = r.high)));
        note(Term::Voidage, index, STEP, voidage(1.0 - STEP), voidage(1.0 + STEP), range);
        let grains = |scale: f64| {
            with(&move |l| {
                for (size, power) in l.sizes.iter_mut().zip(&mut l.powers) {
                    *size *= scale;
                    *power = libm::pow(*size, super::expansion::DRAG_POWER);
                }
            })
        };
        // A sieve's worth of doubt about the size counts like its range in the catalogue.
        let range = material.and_then(|m| m.effective_size.as_ref()).and_then(|r| {
            let now = layer.grains.effective_size.filter(|x| x.basis >= Basis::Catalogue)?.value.value;
            Some((grains(r.low.value / now), grains(r.high.value / now)))
        });
        note(Term::EffectiveSize, index, STEP, grains(1.0 - STEP), grains(1.0 + STEP), range);
    }
    found
}
