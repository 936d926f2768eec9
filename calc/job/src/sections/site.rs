//! What the site gives, and what each vessel is asked to do there.

use std::sync::Arc;

use bedwright_calc::hydraulics::{Arrangement, Purpose, Regime};

use super::Unknown;
use super::by_field::ByField;
use super::survey::{SurveyEntry, ids};
use crate::field::WaterField;
use crate::id::Id;

/// The site of the job.
#[derive(Clone, Debug, PartialEq)]
pub struct SiteConditions {
    /// Where its water comes from.
    pub source: WaterSource,
    /// What was typed of the site.
    pub entries: Entries,
    /// What each vessel is asked to do, by the vessel's id and in its order.
    pub vessels: Vec<(Id, Arc<VesselDuty>)>,
    /// What this version doesn't know.
    pub unknown: Unknown,
}

impl Default for SiteConditions {
    fn default() -> SiteConditions {
        SiteConditions {
            source: WaterSource::Mains,
            entries: Entries::default(),
            vessels: Vec::new(),
            unknown: Unknown::new(),
        }
    }
}

impl SiteConditions {
    /// What a vessel is asked to do; the usual where nothing was said.
    #[must_use]
    pub fn duty_of(&self, vessel: &Id) -> Arc<VesselDuty> {
        self.vessels.iter().find(|(id, _)| id == vessel).map(|(_, duty)| duty.clone()).unwrap_or_default()
    }

    /// The same, to change it.
    pub fn duty_mut(&mut self, vessel: &Id) -> Option<&mut VesselDuty> {
        let at = self.vessels.partition_point(|(id, _)| id < vessel);
        if self.vessels.get(at).is_none_or(|(id, _)| id != vessel) {
            self.vessels.insert(at, (vessel.clone(), Arc::default()));
        }
        self.vessels.get_mut(at).map(|(_, duty)| Arc::make_mut(duty))
    }

    /// A duty that says nothing isn't kept, so that taking the first entry back leaves what was there before it.
    pub fn tidy(&mut self) {
        self.vessels.retain(|(_, duty)| **duty != VesselDuty::default());
    }
}

/// Where water comes from: what its temperature does over the year.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum WaterSource {
    /// A well: about the same all year.
    Well,
    /// A water main.
    Mains,
    /// A river, a lake, rain.
    Surface,
}

ids!(WaterSource { Well = "well", Mains = "mains", Surface = "surface" });

/// What one vessel is asked to do.
#[derive(Clone, Debug, PartialEq)]
pub struct VesselDuty {
    /// What its bed is there for; what is usual for its media until one is chosen.
    pub purpose: Option<Purpose>,
    /// How water goes through it.
    pub regime: Regime,
    /// How it shares the site's flow with others of its kind.
    pub arrangement: Arrangement,
    /// What was typed of it.
    pub entries: Entries,
    /// Where what was typed of the bed's life comes from: a paper, a test, a person.
    pub grounds: String,
    /// What was typed of the grains of its layers, by the layer's id and in its order.
    pub grains: Vec<(Id, Entries)>,
    /// What this version doesn't know.
    pub unknown: Unknown,
}

impl Default for VesselDuty {
    fn default() -> VesselDuty {
        VesselDuty {
            purpose: None,
            regime: Regime::Backwashed,
            arrangement: Arrangement::Single,
            entries: Entries::default(),
            grounds: String::new(),
            grains: Vec::new(),
            unknown: Unknown::new(),
        }
    }
}

impl VesselDuty {
    /// What was typed of a layer's grains.
    #[must_use]
    pub fn grains_of(&self, layer: &Id) -> Option<&Entries> {
        self.grains.iter().find(|(id, _)| id == layer).map(|(_, entries)| entries)
    }

    /// Changes what was typed of a layer's grains, and says what stood there before.
    pub fn set_grains(&mut self, layer: &Id, field: WaterField, entry: Option<SurveyEntry>) -> Option<SurveyEntry> {
        let at = self.grains.partition_point(|(id, _)| id < layer);
        if self.grains.get(at).is_none_or(|(id, _)| id != layer) {
            self.grains.insert(at, (layer.clone(), Entries::default()));
        }
        let before = self.grains.get_mut(at).and_then(|(_, entries)| entries.set(field, entry));
        self.grains.retain(|(_, entries)| !entries.is_empty());
        before
    }
}

/// The permanent id of a flow regime.
#[must_use]
pub const fn regime_id(regime: Regime) -> &'static str {
    match regime {
        Regime::Backwashed => "backwashed",
        Regime::Upflow => "upflow",
        Regime::NeverBackwashed => "never_backwashed",
        Regime::AirHead => "air_head",
    }
}

/// Every flow regime.
pub const REGIMES: &[Regime] = &[Regime::Backwashed, Regime::Upflow, Regime::NeverBackwashed, Regime::AirHead];

/// The permanent id of an arrangement.
#[must_use]
pub const fn arrangement_id(arrangement: Arrangement) -> &'static str {
    match arrangement {
        Arrangement::Single => "single",
        Arrangement::Parallel => "parallel",
        Arrangement::TwinAlternating => "twin_alternating",
        Arrangement::LeadLag => "lead_lag",
    }
}

/// Every arrangement.
pub const ARRANGEMENTS: &[Arrangement] =
    &[Arrangement::Single, Arrangement::Parallel, Arrangement::TwinAlternating, Arrangement::LeadLag];

/// What was typed of the water side, by field.
pub type Entries = ByField<WaterField, SurveyEntry>;
