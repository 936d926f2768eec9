//! What vessels are looked for. Kept with the job, so that nothing that was typed is lost.

use bedwright_calc::hydraulics::{Arrangement, Purpose};

use super::Unknown;
use super::site::Entries;
use crate::field::WaterField;

/// What vessels are looked for.
#[derive(Clone, Debug, PartialEq)]
pub struct VesselSearch {
    /// What the bed is to be there for.
    pub purpose: Purpose,
    /// How several vessels would share the flow.
    pub arrangement: Arrangement,
    /// The id of what treats the water; empty for what is usual for the purpose.
    pub media: String,
    /// The id of the gravel in the bottom head; empty for none.
    pub underbed: String,
    /// Whether the riser comes in parts, or goes in before the vessel is stood up.
    pub riser_in_parts: bool,
    /// What was typed.
    pub entries: Entries,
    /// What this version doesn't know.
    pub unknown: Unknown,
}

impl Default for VesselSearch {
    fn default() -> VesselSearch {
        VesselSearch {
            purpose: Purpose::Dechlorination,
            arrangement: Arrangement::Parallel,
            media: String::new(),
            underbed: String::new(),
            riser_in_parts: false,
            entries: Entries::default(),
            unknown: Unknown::new(),
        }
    }
}

impl VesselSearch {
    /// What it is asked for, besides the site's water.
    pub const ASKED: &'static [WaterField] = &[
        WaterField::ServiceFlow,
        WaterField::PeakFlow,
        WaterField::CeilingClearance,
        WaterField::MinimumExpansion,
        WaterField::FlowControl,
    ];

    /// The id of what treats the water: chosen, or usual for the purpose.
    #[must_use]
    pub fn media_id(&self) -> &str {
        if self.media.is_empty() { self.purpose.usual_media() } else { &self.media }
    }
}
