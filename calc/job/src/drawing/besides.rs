//! What stands on a section besides the plan: the bed as a backwash lifts it, and the surfaces as they were read when the
//! vessel was loaded.

use std::sync::Arc;

use bedwright_calc::quantity::{Length, Temperature};

use crate::answers::VesselAnswers;
use crate::answers::water::WaterAnswers;
use crate::as_loaded::AsLoaded;
use crate::sections::loading::ReadingPlace;

/// The surface of the bed as the judged setting lifts it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Lifted {
    /// Its height above the lowest inside point.
    pub height: Length,
    /// The water that lifts it.
    pub water: Temperature,
}

/// What stands on a section besides the plan.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Besides {
    /// The bed lifted by the coldest water.
    pub cold: Option<Lifted>,
    /// The bed lifted by the warmest.
    pub warm: Option<Lifted>,
    /// What was read when the vessel was loaded.
    pub loaded: Option<Arc<AsLoaded>>,
    /// A line under the picture that says whose it is; empty where the page around it does.
    pub caption: String,
}

/// A surface as it was read.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct LoadedSurface {
    /// Its layer.
    pub layer: usize,
    /// What the tape said.
    pub tape: Length,
}

impl Besides {
    /// Of what the water side of a vessel says and what was signed for it.
    #[must_use]
    pub fn new(water: Option<&WaterAnswers>, loaded: Option<Arc<AsLoaded>>) -> Besides {
        let lifted = |warm: bool| {
            let water = water?;
            let site = &water.reading.site;
            let (height, water) = if warm {
                (&water.expanded_surface_warm, &site.temperature_high)
            } else {
                (&water.expanded_surface, &site.temperature_low)
            };
            Some(Lifted { height: height.as_ref()?.value, water: water.value })
        };
        Besides { cold: lifted(false), warm: lifted(true), loaded, caption: String::new() }
    }

    /// The same with a line that says whose picture it is.
    #[must_use]
    pub fn captioned(mut self, caption: String) -> Besides {
        self.caption = caption;
        self
    }

    /// What lifts the bed, coldest first: one where all the site's water is the same, none where there is no bed.
    pub(crate) fn lifted(&self, answers: &VesselAnswers) -> Vec<Lifted> {
        if answers.layers.iter().all(|layer| layer.fill().is_none()) {
            return Vec::new();
        }
        let warm = self.warm.filter(|warm| self.cold.is_none_or(|cold| cold.water != warm.water));
        self.cold.into_iter().chain(warm).collect()
    }

    /// The surfaces that were read of the layers that are planned, bottom first.
    pub(crate) fn surfaces(&self, answers: &VesselAnswers) -> Vec<LoadedSurface> {
        let Some(loaded) = &self.loaded else { return Vec::new() };
        let read = |id: &crate::id::Id| {
            let place = ReadingPlace::End(id.clone());
            loaded.readings.iter().rev().find(|reading| reading.place == place)?.tape()
        };
        let layers = answers.layers.iter().enumerate();
        layers.filter_map(|(layer, answer)| Some(LoadedSurface { layer, tape: read(&answer.id)? })).collect()
    }
}
