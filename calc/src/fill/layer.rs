//! One layer: what is asked of it, and what came of it.

use super::Tape;
use crate::material::{Material, Pack};
use crate::quantity::{Figure, Known, Length, Mass, MassDensity, Volume, kilograms_per_cubic_metre};

/// What a layer is there for in this vessel.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Role {
    /// Covers the bottom collector and carries the bed.
    Underbed,
    /// Treats the water; counted as media bed.
    Media,
}

/// What is asked of a layer.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Target {
    /// Its surface this far above the collector's top slot.
    Cover(Known<Length>),
    /// This deep on the axis.
    Depth(Known<Length>),
    /// This much volume.
    Volume(Known<Volume>),
    /// This much dry mass.
    Weight(Known<Mass>),
    /// This many packs, part packs allowed.
    Packs(Known<f64>),
    /// Up to this freeboard, as a length.
    Freeboard(Known<Length>),
    /// Up to this freeboard, as a share of the media bed's depth.
    FreeboardRatio(Known<f64>),
    /// Up to this tape reading.
    TapeReading(Known<Length>),
}

/// One layer as it is asked for.
#[derive(Clone, Debug, PartialEq)]
pub struct Layer {
    /// What it is made of.
    pub material: Material,
    /// What it is there for.
    pub role: Role,
    /// What is asked of it.
    pub target: Target,
    /// Whether the target is a stated minimum, so that the near-miss rule may not shorten it.
    pub minimum: bool,
    /// The pack it is bought in.
    pub pack: Pack,
    /// Dry mass over volume as poured.
    pub bulk_density: Known<MassDensity>,
}

impl Layer {
    /// Dry mass over volume as poured: what both figures printed on the pack say, else the bulk density.
    #[must_use]
    pub fn density(&self) -> Known<MassDensity> {
        match (&self.pack.mass, &self.pack.volume) {
            (Some(mass), Some(volume)) if volume.value.value > 0.0 => Known {
                value: kilograms_per_cubic_metre(mass.value.value / volume.value.value),
                basis: mass.basis.weaker(volume.basis),
                source: mass.source,
            },
            _ => self.bulk_density,
        }
    }
}

/// What came of a layer.
#[derive(Clone, Debug, PartialEq)]
pub struct LayerFill {
    /// Its volume.
    pub volume: Figure<Volume>,
    /// Its dry mass.
    pub mass: Figure<Mass>,
    /// Height of its lower face on the axis.
    pub bottom: Figure<Length>,
    /// Height of its surface on the axis.
    pub top: Figure<Length>,
    /// Its depth on the axis.
    pub depth_axis: Figure<Length>,
    /// Its depth at the shell's wall, counted from the lower tangent line; zero while its surface lies in the head.
    pub depth_wall: Figure<Length>,
    /// Tape reading of its surface.
    pub tape: Tape,
    /// Its surface above the collector's top slot, where there is one.
    pub cover: Option<Figure<Length>>,
    /// Packs it takes, part packs counted in shares.
    pub packs: Figure<f64>,
    /// Whole packs to buy for this one vessel.
    pub packs_to_buy: u32,
    /// The volume that was asked for, before whole packs were taken instead.
    pub asked: Volume,
    /// The height that was asked for, where one was.
    pub asked_height: Option<Length>,
    /// What is left of the last pack, as a volume.
    pub left_over: Figure<Volume>,
    /// Tape reading after each pack, the last one a part pack where there is one.
    pub after_packs: Vec<Tape>,
    /// The part pack, where there is one.
    pub part: Option<PartPack>,
    /// Said when a need a little above whole packs was met by whole packs.
    pub near_miss: Option<NearMiss>,
}

/// The last pack, used in part.
#[derive(Clone, Debug, PartialEq)]
pub struct PartPack {
    /// The share of it that is poured, 0 to 1.
    pub share: Figure<f64>,
    /// Its volume.
    pub volume: Figure<Volume>,
    /// It in bucket measures.
    pub buckets: Figure<f64>,
}

/// A need a little above whole packs, met by whole packs.
#[derive(Clone, Debug, PartialEq)]
pub struct NearMiss {
    /// Packs that were needed.
    pub needed: Figure<f64>,
    /// Packs that are taken.
    pub taken: u32,
    /// How much shorter the bed is.
    pub shorter: Figure<Length>,
}
