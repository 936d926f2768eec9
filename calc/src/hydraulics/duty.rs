//! What a site gives and what a vessel is asked to do.

use std::marker::PhantomData;

use super::feed::FeedQuantity;
use crate::quantity::{
    Amount, Assumption, Basis, Frequency, Known, Length, Mass, Pressure, Source, Temperature, Time, Velocity,
    VolumeRate,
};

/// How water goes through the bed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Regime {
    /// Down in service, up in backwash.
    Backwashed,
    /// Up in service: what lifts the bed is the service flow.
    Upflow,
    /// Down in service, never backwashed.
    NeverBackwashed,
    /// Down in service under a head of air, backwashed. The air is not freeboard.
    AirHead,
}

impl Regime {
    /// Whether it has a backwash to judge.
    #[must_use]
    pub fn is_backwashed(self) -> bool {
        matches!(self, Regime::Backwashed | Regime::AirHead)
    }
}

/// How the vessels of one kind share the site's flow.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Arrangement {
    /// One vessel takes it all.
    Single,
    /// Several side by side share it; while one is washed the others take its share.
    Parallel,
    /// Two in turn: each takes it all while the other stands by.
    TwinAlternating,
    /// One after the other: each takes it all, and contact times add up.
    LeadLag,
}

/// What the site gives.
#[derive(Clone, Debug, PartialEq)]
pub struct Site {
    /// The coldest water of the year.
    pub temperature_low: Known<Temperature>,
    /// The warmest.
    pub temperature_high: Known<Temperature>,
    /// The most it gives for backwash, where known.
    pub backwash_available: Option<Known<VolumeRate>>,
    /// Pressure at rest, where known.
    pub pressure: Option<Known<Pressure>>,
}

/// What one kind of vessel is asked to do.
#[derive(Clone, Debug, PartialEq)]
pub struct Duty {
    /// What the bed is there for.
    pub purpose: Purpose,
    /// How water goes through it.
    pub regime: Regime,
    /// How the vessels share the flow.
    pub arrangement: Arrangement,
    /// How many vessels share it.
    pub vessels: u32,
    /// The site's usual flow in service.
    pub service_flow: Option<Known<VolumeRate>>,
    /// The site's highest flow in service.
    pub peak_flow: Option<Known<VolumeRate>>,
    /// The least expansion that cleans the bed.
    pub minimum_expansion: Known<f64>,
    /// The drain line flow control that is fitted; none to have one chosen.
    pub flow_control: Option<Known<VolumeRate>>,
    /// What the valve loses at the usual flow of one vessel.
    pub valve_loss: Option<Known<Pressure>>,
    /// What both collectors lose at the usual flow of one vessel.
    pub collector_loss: Option<Known<Pressure>>,
    /// The most the unit may lose at the usual flow.
    pub loss_limit: Known<Pressure>,
    /// The most the unit may lose at the peak.
    pub loss_limit_peak: Known<Pressure>,
    /// The highest pressure on the label.
    pub label_pressure: Option<Known<Pressure>>,
    /// The highest temperature on the label.
    pub label_temperature: Option<Known<Temperature>>,
    /// Depth of the air that is kept above the water.
    pub air_head: Option<Known<Length>>,
    /// Width of the upper collector's slots.
    pub upper_slot_width: Option<Known<Length>>,
    /// What was measured of the water that leaves, where it feeds reverse osmosis.
    pub feed: Vec<(FeedQuantity, Known<Amount>)>,
    /// Mass of the empty vessel with its valve.
    pub empty_mass: Option<Known<Mass>>,
    /// Diameter of the ring it stands on.
    pub foot_diameter: Option<Known<Length>>,
}

impl Duty {
    /// A single backwashed vessel for this purpose, of which nothing else is known.
    #[must_use]
    pub fn new(purpose: Purpose) -> Duty {
        Duty {
            purpose,
            regime: Regime::Backwashed,
            arrangement: Arrangement::Single,
            vessels: 1,
            service_flow: None,
            peak_flow: None,
            minimum_expansion: purpose.minimum_expansion(),
            flow_control: None,
            valve_loss: None,
            collector_loss: None,
            loss_limit: Assumption::LossLimitService.pressure(),
            loss_limit_peak: Assumption::LossLimitPeak.pressure(),
            label_pressure: None,
            label_temperature: None,
            air_head: None,
            upper_slot_width: None,
            feed: Vec::new(),
            empty_mass: None,
            foot_diameter: None,
        }
    }
}

struct PurposeRow {
    minimum_expansion: f64,
    usual_media: &'static [&'static str],
    source: Source,
}

/// What a rule limits.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum CriterionOf {
    /// Flow per area in service.
    FlowPerArea,
    /// Empty-bed contact time.
    ContactTime,
    /// Bed volumes an hour.
    BedVolumes,
    /// Depth of the media.
    MediaDepth,
    /// Flow per area in backwash.
    BackwashRate,
    /// Upper collector above the media.
    CollectorHeight,
}

/// A published or remembered rule for a purpose: a row of `criteria.csv`.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Criterion {
    /// Where it holds.
    pub purpose: Purpose,
    /// What it limits.
    pub quantity: CriterionOf,
    /// The least.
    pub low: Option<Amount>,
    /// The most.
    pub high: Option<Amount>,
    /// Section or table of the source.
    pub section: &'static str,
    /// Where it comes from.
    pub source: Source,
}

include!(concat!(env!("OUT_DIR"), "/purposes.rs"));

impl Purpose {
    /// The one with this id.
    #[must_use]
    pub fn of(id: &str) -> Option<Purpose> {
        Purpose::ALL.iter().copied().find(|purpose| purpose.id() == id)
    }

    /// What a bed of this material is most often there for.
    #[must_use]
    pub fn usual_of(material: &str) -> Purpose {
        Purpose::ALL
            .iter()
            .copied()
            .find(|purpose| PURPOSES.get(*purpose as usize).is_some_and(|row| row.usual_media.contains(&material)))
            .unwrap_or(Purpose::Other)
    }

    /// The id of what treats the water most often.
    #[must_use]
    pub fn usual_media(self) -> &'static str {
        PURPOSES.get(self as usize).and_then(|row| row.usual_media.first()).copied().unwrap_or_default()
    }

    /// The least expansion that cleans such a bed, until one is typed.
    #[must_use]
    pub fn minimum_expansion(self) -> Known<f64> {
        PURPOSES.get(self as usize).map_or(
            Known { value: 0.2, basis: Basis::Assumed, source: Source::FromMemory },
            |row| Known { value: row.minimum_expansion, basis: Basis::Assumed, source: row.source },
        )
    }

    /// The rules for it.
    pub fn criteria(self) -> impl Iterator<Item = &'static Criterion> {
        CRITERIA.iter().filter(move |criterion| criterion.purpose == self)
    }
}
