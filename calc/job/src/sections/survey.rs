//! The vessels as they were surveyed.

use std::sync::Arc;

use bedwright_calc::vessel::Opening;
use litemap::LiteMap;

use super::Unknown;
use crate::entry::Entry;
use crate::field::SurveyField;
use crate::id::Id;

/// Every vessel of the job.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Survey {
    /// In the order they are shown. Shared, so that a change to one leaves the others as they are.
    pub vessels: Vec<Arc<VesselSurvey>>,
    /// What this version doesn't know.
    pub unknown: Unknown,
}

/// How far a typed value can be relied on.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Standing {
    /// Measured on the vessel.
    Measured,
    /// Assumed until opened.
    Assumed,
}

/// A typed value of the survey.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct SurveyEntry {
    /// As typed.
    pub entry: Entry,
    /// How far to rely on it.
    pub standing: Standing,
}

/// The state in which the vessel was found.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Path {
    /// Open and empty: everything can be measured.
    OpenAndEmpty,
    /// In service: nothing may be opened.
    InService,
}

/// How the inside diameter is found.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum DiameterWay {
    /// From the nominal size.
    Nominal,
    /// Measured inside.
    Measured,
    /// From a tape round the bare shell and the wall.
    Circumference,
    /// From a metered fill.
    MeteredFill,
    /// From the rise of a known bag.
    RiseOfBag,
}

/// The shape of a head.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum HeadShape {
    /// A flat plate.
    Flat,
    /// 2:1 semi-ellipsoidal.
    Ellipsoidal,
    /// Half a sphere.
    Hemispherical,
    /// Torispherical, ASME flanged and dished.
    AsmeFd,
    /// Torispherical, DIN 28011.
    Din28011,
    /// Torispherical, DIN 28013.
    Din28013,
    /// A cone; at the bottom only.
    Conical,
}

/// What gathers water at the bottom.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum CollectorKind {
    /// None.
    None,
    /// A basket or cone screen.
    Basket,
    /// Hub and laterals.
    HubAndLaterals,
    /// A slotted plate.
    SlottedPlate,
    /// A plate with nozzles.
    NozzlePlate,
}

macro_rules! ids {
    ($name:ident { $($variant:ident = $id:literal),* $(,)? }) => {
        impl $name {
            /// All of them.
            pub const ALL: &'static [$name] = &[$($name::$variant),*];

            /// The permanent id.
            #[must_use]
            pub const fn id(self) -> &'static str {
                match self { $($name::$variant => $id),* }
            }

            /// The one with this id.
            #[must_use]
            pub fn of(id: &str) -> Option<$name> {
                $name::ALL.iter().copied().find(|x| x.id() == id)
            }
        }
    };
}
pub(crate) use ids;

ids!(Path { OpenAndEmpty = "open_and_empty", InService = "in_service" });
ids!(Standing { Measured = "measured", Assumed = "assumed" });
ids!(DiameterWay {
    Nominal = "nominal",
    Measured = "measured",
    Circumference = "circumference",
    MeteredFill = "metered_fill",
    RiseOfBag = "rise_of_bag",
});
ids!(HeadShape {
    Flat = "flat",
    Ellipsoidal = "ellipsoidal",
    Hemispherical = "hemispherical",
    AsmeFd = "asme_fd",
    Din28011 = "din_28011",
    Din28013 = "din_28013",
    Conical = "conical",
});
ids!(CollectorKind {
    None = "none",
    Basket = "basket",
    HubAndLaterals = "hub_and_laterals",
    SlottedPlate = "slotted_plate",
    NozzlePlate = "nozzle_plate",
});

/// One vessel.
#[derive(Clone, Debug, PartialEq)]
pub struct VesselSurvey {
    /// Its name for ever.
    pub id: Id,
    /// The tags of those that are the same as this one.
    pub tags: Vec<String>,
    /// How it was found.
    pub path: Path,
    /// How its inside diameter is found.
    pub diameter_way: DiameterWay,
    /// Its bottom head.
    pub bottom_head: HeadShape,
    /// Its top head.
    pub top_head: HeadShape,
    /// How it opens.
    pub opening: Opening,
    /// Whether it has a riser.
    pub riser: bool,
    /// Its bottom collector.
    pub collector: CollectorKind,
    /// Whether it has an upper collector.
    pub upper_collector: bool,
    /// What was typed.
    pub entries: LiteMap<SurveyField, SurveyEntry>,
    /// Anything else.
    pub notes: String,
    /// What this version doesn't know.
    pub unknown: Unknown,
}

impl VesselSurvey {
    /// A vessel of which nothing is known yet.
    #[must_use]
    pub fn new(id: Id) -> VesselSurvey {
        VesselSurvey {
            id,
            tags: Vec::new(),
            path: Path::OpenAndEmpty,
            diameter_way: DiameterWay::Nominal,
            bottom_head: HeadShape::Ellipsoidal,
            top_head: HeadShape::Ellipsoidal,
            opening: Opening::TopOnly,
            riser: true,
            collector: CollectorKind::None,
            upper_collector: false,
            entries: LiteMap::new(),
            notes: String::new(),
            unknown: Unknown::new(),
        }
    }

    /// One of the same make as the last that was surveyed: its shape and what is built in, and the riser's diameter as an
    /// assumption. Nothing that must be measured is carried over.
    #[must_use]
    pub fn like(id: Id, last: &VesselSurvey) -> VesselSurvey {
        let mut vessel = VesselSurvey {
            path: last.path,
            diameter_way: last.diameter_way,
            bottom_head: last.bottom_head,
            top_head: last.top_head,
            opening: last.opening,
            riser: last.riser,
            collector: last.collector,
            upper_collector: last.upper_collector,
            ..VesselSurvey::new(id)
        };
        if let Some(riser) = last.entries.get(&SurveyField::RiserOutsideDiameter) {
            let assumed = SurveyEntry { standing: Standing::Assumed, ..riser.clone() };
            vessel.entries.insert(SurveyField::RiserOutsideDiameter, assumed);
        }
        vessel
    }

    /// How many vessels it stands for: its tags, or one.
    #[must_use]
    pub fn count(&self) -> u32 {
        u32::try_from(self.tags.len()).unwrap_or(u32::MAX).max(1)
    }
}
