//! What vessels are filled with, and how it is sold.

use std::borrow::Cow;
use std::marker::PhantomData;

use crate::quantity::{
    Basis, Known, Length, Mass, MassDensity, Source, Volume, cubic_metres, kilograms, kilograms_per_cubic_metre, metres,
};

pub mod grading;
pub mod grains;
pub mod sieve;

pub use grains::Grains;

/// What a material is there for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Kind {
    /// Carries the bed and covers the bottom collector.
    Gravel,
    /// Treats the water.
    Media,
}

/// How a material is drawn, so that a photocopy loses nothing.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Hatch {
    /// Open circles.
    Circles,
    /// Filled dots.
    Dots,
    /// Fine dots.
    Stipple,
    /// Slanted strokes.
    Slashes,
    /// Level strokes.
    Dashes,
    /// Crosses.
    Crosses,
    /// Small rings.
    Rings,
    /// Upright strokes.
    Ticks,
    /// Waves.
    Waves,
}

/// The least and the most a property is.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Range<Q> {
    /// The least.
    pub low: Q,
    /// The most.
    pub high: Q,
    /// Where both come from.
    pub source: Source,
}

/// A material.
#[derive(Clone, Debug, PartialEq)]
pub struct Material {
    /// Its permanent id; a person's own material has one of the job's.
    pub id: Cow<'static, str>,
    /// What it is there for.
    pub kind: Kind,
    /// How it is drawn.
    pub hatch: Hatch,
    /// The smallest grain: the lower sieve.
    pub grain_low: Known<Length>,
    /// The largest grain: the upper sieve.
    pub grain_high: Known<Length>,
    /// Size that a tenth by mass is finer than.
    pub effective_size: Option<Range<Length>>,
    /// Size that six tenths are finer than, over the effective size.
    pub uniformity: Option<Range<f64>>,
    /// Mass of a wetted grain over its volume.
    pub particle_density: Option<Range<MassDensity>>,
    /// Dry mass over the volume it fills as poured.
    pub bulk_density: Range<MassDensity>,
    /// Share of the poured volume that is water, 0 to 1.
    pub voidage: Option<Range<f64>>,
    /// Surface of a ball of the grain's volume over the grain's surface, 0 to 1.
    pub sphericity: Option<Range<f64>>,
    /// Mass of the dry grains over the volume of their solid matter, where they are porous.
    pub skeletal_density: Option<Range<MassDensity>>,
}

struct RangeRow {
    low: f64,
    high: f64,
    source: Source,
}

struct MaterialRow {
    id: &'static str,
    kind: Kind,
    hatch: Hatch,
    grain_low: Length,
    grain_high: Length,
    grain_source: Source,
    effective_size: Option<RangeRow>,
    uniformity: Option<RangeRow>,
    particle_density: Option<RangeRow>,
    bulk_density: Option<RangeRow>,
    voidage: Option<RangeRow>,
    sphericity: Option<RangeRow>,
    skeletal_density: Option<RangeRow>,
}

include!(concat!(env!("OUT_DIR"), "/materials.rs"));

impl RangeRow {
    fn of<Q>(&self, quantity: impl Fn(f64) -> Q) -> Range<Q> {
        Range { low: quantity(self.low), high: quantity(self.high), source: self.source }
    }
}

impl MaterialRow {
    fn material(&'static self) -> Material {
        let known = |value: Length| Known::catalogue(value, self.grain_source);
        Material {
            id: Cow::Borrowed(self.id),
            kind: self.kind,
            hatch: self.hatch,
            grain_low: known(self.grain_low),
            grain_high: known(self.grain_high),
            effective_size: self.effective_size.as_ref().map(|r| r.of(metres)),
            uniformity: self.uniformity.as_ref().map(|r| r.of(|x| x)),
            particle_density: self.particle_density.as_ref().map(|r| r.of(kilograms_per_cubic_metre)),
            bulk_density: self.bulk_density.as_ref().map_or(
                Range {
                    low: kilograms_per_cubic_metre(1000.0),
                    high: kilograms_per_cubic_metre(1000.0),
                    source: Source::FromMemory,
                },
                |r| r.of(kilograms_per_cubic_metre),
            ),
            voidage: self.voidage.as_ref().map(|r| r.of(|x| x)),
            sphericity: self.sphericity.as_ref().map(|r| r.of(|x| x)),
            skeletal_density: self.skeletal_density.as_ref().map(|r| r.of(kilograms_per_cubic_metre)),
        }
    }
}

impl Material {
    /// All of the catalogue, in its order.
    pub fn all() -> impl Iterator<Item = Material> {
        MATERIALS.iter().map(MaterialRow::material)
    }

    /// The one of the catalogue with this id.
    #[must_use]
    pub fn of(id: &str) -> Option<Material> {
        MATERIALS.iter().find(|row| row.id == id).map(MaterialRow::material)
    }

    /// The bulk density to reckon with until one is typed: the middle of the catalogue's range.
    #[must_use]
    pub fn usual_bulk_density(&self) -> Known<MassDensity> {
        let range = &self.bulk_density;
        Known {
            value: kilograms_per_cubic_metre(f64::midpoint(range.low.value, range.high.value)),
            basis: Basis::Catalogue,
            source: range.source,
        }
    }
}

/// What a pack is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Container {
    /// A bag.
    Bag,
    /// A sack.
    Sack,
    /// A drum.
    Drum,
    /// A bulk bag.
    BulkBag,
}

/// How a material is bought: by a volume, by a mass, or with both printed on it.
///
/// Where both are known the volume goes first.
#[derive(Clone, Debug, PartialEq)]
pub struct Pack {
    /// Its permanent id.
    pub id: Cow<'static, str>,
    /// What it is.
    pub container: Container,
    /// The volume printed on it.
    pub volume: Option<Known<Volume>>,
    /// The mass printed on it.
    pub mass: Option<Known<Mass>>,
}

struct PackRow {
    id: &'static str,
    material: &'static str,
    container: Container,
    volume_m3: Option<f64>,
    mass_kg: Option<f64>,
    source: Source,
}

include!(concat!(env!("OUT_DIR"), "/packs.rs"));

impl PackRow {
    fn pack(&'static self) -> Pack {
        Pack {
            id: Cow::Borrowed(self.id),
            container: self.container,
            volume: self.volume_m3.map(|v| Known::catalogue(cubic_metres(v), self.source)),
            mass: self.mass_kg.map(|m| Known::catalogue(kilograms(m), self.source)),
        }
    }
}

impl Pack {
    /// The packs a material of the catalogue is usually sold in, the most usual first.
    #[must_use]
    pub fn of_material(material: &str) -> Vec<Pack> {
        PACKS.iter().filter(|row| row.material == material).map(PackRow::pack).collect()
    }

    /// The pack of the catalogue with this id.
    #[must_use]
    pub fn of(id: &str) -> Option<Pack> {
        PACKS.iter().find(|row| row.id == id).map(PackRow::pack)
    }

    /// The volume it fills: as printed, else its mass over the bulk density.
    pub(crate) fn fills(&self, density: &Known<MassDensity>) -> Option<f64> {
        match (&self.volume, &self.mass) {
            (Some(volume), _) => Some(volume.value.value),
            (None, Some(mass)) => Some(mass.value.value / density.value.value),
            (None, None) => None,
        }
    }

    /// What it weighs: as printed, else its volume at the bulk density.
    pub(crate) fn weighs(&self, density: &Known<MassDensity>) -> Option<f64> {
        match (&self.mass, &self.volume) {
            (Some(mass), _) => Some(mass.value.value),
            (None, Some(volume)) => Some(volume.value.value * density.value.value),
            (None, None) => None,
        }
    }
}
