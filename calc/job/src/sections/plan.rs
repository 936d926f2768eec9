//! The layers each vessel is to be filled with.

use std::sync::Arc;

use bedwright_calc::fill::Role;
use litemap::LiteMap;

use super::Unknown;
use super::survey::ids;
use crate::entry::{Dimension, Entry, Unit};
use crate::id::Id;

/// Every vessel's plan, by the vessel's id.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct FillPlan {
    /// By vessel.
    pub vessels: LiteMap<Id, Arc<VesselPlan>>,
    /// What this version doesn't know.
    pub unknown: Unknown,
}

/// One vessel's plan.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct VesselPlan {
    /// Bottom first.
    pub layers: Vec<LayerPlan>,
    /// The bucket part bags are measured with; the usual one where nothing was typed.
    pub bucket: Option<Entry>,
    /// What this version doesn't know.
    pub unknown: Unknown,
}

/// What a layer's amount is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum TargetKind {
    /// Cover the collector's top slot by this much.
    Cover,
    /// This deep on the axis.
    Depth,
    /// This volume.
    Volume,
    /// This dry weight.
    Weight,
    /// This many packs.
    Packs,
    /// Up to this freeboard.
    Freeboard,
    /// Up to this freeboard as a share of the media bed's depth.
    FreeboardRatio,
    /// Up to this tape reading.
    TapeReading,
}

ids!(TargetKind {
    Cover = "cover",
    Depth = "depth",
    Volume = "volume",
    Weight = "weight",
    Packs = "packs",
    Freeboard = "freeboard",
    FreeboardRatio = "freeboard_ratio",
    TapeReading = "tape_reading",
});

impl TargetKind {
    /// What its amount measures.
    #[must_use]
    pub const fn dimension(self) -> Dimension {
        match self {
            TargetKind::Cover | TargetKind::Depth | TargetKind::Freeboard | TargetKind::TapeReading => {
                Dimension::Length
            }
            TargetKind::Volume => Dimension::Volume,
            TargetKind::Weight => Dimension::Mass,
            TargetKind::Packs => Dimension::Count,
            TargetKind::FreeboardRatio => Dimension::Ratio,
        }
    }

    /// The unit its amount starts in.
    #[must_use]
    pub const fn usual_unit(self, metric: bool) -> Unit {
        match (self.dimension(), metric) {
            (Dimension::Length, false) => Unit::Inch,
            (Dimension::Length, true) => Unit::Millimetre,
            (Dimension::Volume, false) => Unit::CubicFoot,
            (Dimension::Volume, true) => Unit::Litre,
            (Dimension::Mass, false) => Unit::Pound,
            (Dimension::Mass, true) => Unit::Kilogram,
            (Dimension::Ratio, _) => Unit::Percent,
            _ => Unit::Each,
        }
    }
}

/// One layer.
#[derive(Clone, Debug, PartialEq)]
pub struct LayerPlan {
    /// Its name for ever.
    pub id: Id,
    /// The material's id; empty until one is chosen.
    pub material: String,
    /// The pack's id; empty means the material's most usual one.
    pub pack: String,
    /// What it is there for.
    pub role: Role,
    /// What its amount is.
    pub target: TargetKind,
    /// How much.
    pub amount: Option<Entry>,
    /// Whether the amount is a stated minimum.
    pub minimum: bool,
    /// Dry mass over volume, where typed.
    pub bulk_density: Option<Entry>,
    /// What this version doesn't know.
    pub unknown: Unknown,
}

impl LayerPlan {
    /// A layer of a material, counted in packs until said otherwise.
    #[must_use]
    pub fn new(id: Id, material: &str, role: Role) -> LayerPlan {
        LayerPlan {
            id,
            material: material.to_owned(),
            pack: String::new(),
            role,
            target: if role == Role::Underbed { TargetKind::Volume } else { TargetKind::Packs },
            amount: None,
            minimum: false,
            bulk_density: None,
            unknown: Unknown::new(),
        }
    }
}
