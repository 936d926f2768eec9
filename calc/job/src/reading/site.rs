//! From what was typed of the water side to what can be calculated with.

use bedwright_calc::fill::Layer;
use bedwright_calc::hydraulics::{Duty, FeedQuantity, Purpose, Regime, Site};
use bedwright_calc::material::Grains;
use bedwright_calc::quantity::{
    Amount, Assumption, Basis, Concentration, Known, Source, Temperature, Term, cubic_metres_per_second, kelvins,
    kilograms, kilograms_per_cubic_metre, metres, pascals,
};

use super::life::{LifeReading, read_life};
use crate::edit::WaterOf;
use crate::entry::{Dimension, Misread, Understood};
use crate::field::WaterField;
use crate::id::Id;
use crate::sections::site::{Entries, SiteConditions, VesselDuty, WaterSource};
use crate::sections::survey::Standing;

/// What the water side of a vessel says, read.
#[derive(Clone, Debug, PartialEq)]
pub struct WaterReading {
    /// Entries that make no sense.
    pub misread: Vec<(WaterOf, WaterField, Misread)>,
    /// Entries that do, for the echo beside the field.
    pub understood: Vec<(WaterOf, WaterField, Understood)>,
    /// What is assumed where nothing was typed, in SI.
    pub assumed: Vec<(WaterOf, WaterField, f64)>,
    /// What the bed is there for, chosen or usual.
    pub purpose: Purpose,
    /// What the site gives.
    pub site: Site,
    /// What the vessel is asked to do.
    pub duty: Duty,
    /// The grains of every layer, bottom first.
    pub grains: Vec<Grains>,
    /// The analysis of the water, and what was typed of how long the bed lasts.
    pub life: LifeReading,
}

impl WaterReading {
    /// Whether every entry makes sense that the bed's work rests on.
    #[must_use]
    pub fn is_whole(&self) -> bool {
        self.misread.iter().all(|(_, field, _)| field.is_of_life())
    }

    /// Whether every entry of the bed's life makes sense too.
    #[must_use]
    pub fn is_life_whole(&self) -> bool {
        self.misread.is_empty()
    }
}

/// Where each reading of the water that feeds reverse osmosis is typed.
const FEED: &[(WaterField, FeedQuantity)] = &[
    (WaterField::FeedFreeChlorine, FeedQuantity::FreeChlorine),
    (WaterField::FeedTotalChlorine, FeedQuantity::TotalChlorine),
    (WaterField::FeedHardness, FeedQuantity::Hardness),
    (WaterField::FeedIron, FeedQuantity::Iron),
    (WaterField::SiltDensityIndex, FeedQuantity::SiltDensityIndex),
];

/// The entries that a duty of these choices is asked for.
#[must_use]
pub fn asked_of_duty(duty: &VesselDuty, upper_collector: bool) -> Vec<WaterField> {
    use WaterField as F;
    let mut fields = vec![F::ServiceFlow, F::PeakFlow];
    if duty.regime.is_backwashed() {
        fields.extend([F::MinimumExpansion, F::FlowControl]);
    }
    if duty.regime == Regime::AirHead {
        fields.push(F::AirHead);
    }
    if upper_collector {
        fields.push(F::UpperSlotWidth);
    }
    fields
}

/// Reads the water side of a vessel. `layers` are those that were planned, with their ids, bottom first; `media` is the
/// highest that was chosen, planned or not, and says the usual purpose; `vessels` is how many of the kind there are.
#[must_use]
pub fn read_water(
    conditions: &SiteConditions,
    vessel: &Id,
    duty: &VesselDuty,
    layers: &[(Id, &Layer)],
    media: Option<&str>,
    vessels: u32,
) -> WaterReading {
    let purpose = duty.purpose.unwrap_or_else(|| media.map_or(Purpose::Other, Purpose::usual_of));
    let mut reader = Reader::default();
    let site = reader.site(conditions);
    let of = WaterOf::Vessel(vessel.clone());
    let mut asked = Duty::new(purpose);
    asked.regime = duty.regime;
    asked.arrangement = duty.arrangement;
    asked.vessels = vessels;
    let e = &duty.entries;
    asked.service_flow = reader.typed(&of, e, WaterField::ServiceFlow, cubic_metres_per_second);
    asked.peak_flow = reader.typed(&of, e, WaterField::PeakFlow, cubic_metres_per_second);
    let least = reader.typed(&of, e, WaterField::MinimumExpansion, |x| x);
    asked.minimum_expansion =
        reader.or(&of, WaterField::MinimumExpansion, least, purpose.minimum_expansion(), |x: &f64| *x);
    asked.flow_control = reader.typed(&of, e, WaterField::FlowControl, cubic_metres_per_second);
    asked.valve_loss = reader.typed(&of, e, WaterField::ValveLoss, pascals);
    asked.collector_loss = reader.typed(&of, e, WaterField::CollectorLoss, pascals);
    asked.label_pressure = reader.typed(&of, e, WaterField::LabelPressure, pascals);
    asked.label_temperature = reader.typed(&of, e, WaterField::LabelTemperature, kelvins);
    if duty.regime == Regime::AirHead {
        asked.air_head = reader.typed(&of, e, WaterField::AirHead, metres);
    }
    asked.upper_slot_width = reader.typed(&of, e, WaterField::UpperSlotWidth, metres);
    for (field, quantity) in FEED {
        if let Some((si, basis)) = reader.bare(&of, e, *field) {
            let value = match field.dimension() {
                Dimension::Ratio => Amount::Ratio(si),
                _ => Concentration::kilograms_per_cubic_metre(si).into(),
            };
            asked.feed.push((*quantity, Known { value, basis, source: Source::Typed }));
        }
    }
    asked.empty_mass = reader.typed(&of, e, WaterField::EmptyMass, kilograms);
    asked.foot_diameter = reader.typed(&of, e, WaterField::FootDiameter, metres);
    let none = Entries::default();
    let grains = layers
        .iter()
        .map(|(id, layer)| {
            let of = WaterOf::Layer(vessel.clone(), id.clone());
            reader.grains(&of, duty.grains_of(id).unwrap_or(&none), layer.material.grains())
        })
        .collect();
    let life = read_life(&mut reader, &conditions.entries, vessel, e, purpose);
    let Reader { misread, understood, assumed } = reader;
    WaterReading { misread, understood, assumed, purpose, site, duty: asked, grains, life }
}

/// What was read so far.
#[derive(Default)]
pub(super) struct Reader {
    pub(super) misread: Vec<(WaterOf, WaterField, Misread)>,
    pub(super) understood: Vec<(WaterOf, WaterField, Understood)>,
    pub(super) assumed: Vec<(WaterOf, WaterField, f64)>,
}

impl Reader {
    fn bare(&mut self, of: &WaterOf, entries: &Entries, field: WaterField) -> Option<(f64, Basis)> {
        let typed = entries.get(field)?;
        if typed.entry.text.trim().is_empty() {
            return None;
        }
        let misfit = |understood: &Understood| {
            // A hardness as magnesium is no calcium: mg/L of what is asked, never guessed.
            field.dimension() == Dimension::Hardness && !field.units().contains(&understood.written)
        };
        let read = super::of_dimension(&typed.entry, field.dimension()).and_then(|understood| {
            if misfit(&understood) {
                return Err(Misread::WrongDimension { found: understood.written, wanted: field.dimension() });
            }
            Ok(understood)
        });
        match read {
            Ok(understood) => {
                self.understood.push((of.clone(), field, understood));
                let basis = match typed.standing {
                    Standing::Measured => Basis::Measured,
                    Standing::Assumed => Basis::Assumed,
                };
                Some((understood.si, basis))
            }
            Err(misread) => {
                self.misread.push((of.clone(), field, misread));
                None
            }
        }
    }

    pub(super) fn typed<Q>(
        &mut self,
        of: &WaterOf,
        entries: &Entries,
        field: WaterField,
        quantity: fn(f64) -> Q,
    ) -> Option<Known<Q>> {
        let (si, basis) = self.bare(of, entries, field)?;
        Some(Known { value: quantity(si), basis, source: Source::Typed })
    }

    /// What was typed, else what is assumed, which is then noted.
    pub(super) fn or<Q>(
        &mut self,
        of: &WaterOf,
        field: WaterField,
        typed: Option<Known<Q>>,
        assumed: Known<Q>,
        si: fn(&Q) -> f64,
    ) -> Known<Q> {
        typed.unwrap_or_else(|| {
            self.assumed.push((of.clone(), field, si(&assumed.value)));
            assumed
        })
    }

    pub(super) fn site(&mut self, conditions: &SiteConditions) -> Site {
        let (of, entries) = (WaterOf::Site, &conditions.entries);
        let low = self.typed(&of, entries, WaterField::TemperatureLow, kelvins);
        let high = self.typed(&of, entries, WaterField::TemperatureHigh, kelvins);
        let (cold, warm) = match conditions.source {
            WaterSource::Well => (Assumption::WellLow, Assumption::WellHigh),
            WaterSource::Mains => (Assumption::MainsLow, Assumption::MainsHigh),
            WaterSource::Surface => (Assumption::SurfaceLow, Assumption::SurfaceHigh),
        };
        let (mut cold, mut warm) = (cold.temperature(), warm.temperature());
        // A well's water is about the same all year: one end tells the other.
        let swing = warm.value.value - cold.value.value;
        let shifted = |known: &Known<Temperature>, by: f64| Known {
            value: kelvins(known.value.value + by),
            basis: Basis::Assumed,
            source: cold.source,
        };
        if conditions.source == WaterSource::Well {
            match (&low, &high) {
                (Some(low), None) => warm = shifted(low, swing),
                (None, Some(high)) => cold = shifted(high, -swing),
                _ => {}
            }
        } else {
            // An assumed end never contradicts the typed one.
            if let Some(low) = &low
                && low.value.value > warm.value.value
            {
                warm = shifted(low, 0.0);
            }
            if let Some(high) = &high
                && high.value.value < cold.value.value
            {
                cold = shifted(high, 0.0);
            }
        }
        Site {
            temperature_low: self.or(&of, WaterField::TemperatureLow, low, cold, |t| t.value),
            temperature_high: self.or(&of, WaterField::TemperatureHigh, high, warm, |t| t.value),
            backwash_available: self.typed(&of, entries, WaterField::BackwashAvailable, cubic_metres_per_second),
            pressure: self.typed(&of, entries, WaterField::SitePressure, pascals),
        }
    }

    fn grains(&mut self, of: &WaterOf, entries: &Entries, usual: Grains) -> Grains {
        use WaterField as F;
        let low = self.typed(of, entries, F::GrainLow, metres);
        let high = self.typed(of, entries, F::GrainHigh, metres);
        let size = self.typed(of, entries, F::EffectiveSize, metres);
        let uniformity = self.typed(of, entries, F::Uniformity, |x| x);
        let density = self.typed(of, entries, F::ParticleDensity, kilograms_per_cubic_metre);
        let voidage = self.typed(of, entries, F::Voidage, |x| x);
        let sphericity = self.typed(of, entries, F::Sphericity, |x| x);
        let number = |x: &f64| *x;
        let mut usually = |field: WaterField, typed: bool, usual: Option<f64>| {
            if let (false, Some(usual)) = (typed, usual) {
                self.assumed.push((of.clone(), field, usual));
            }
        };
        usually(F::GrainLow, low.is_some(), Some(usual.low.value.value));
        usually(F::GrainHigh, high.is_some(), Some(usual.high.value.value));
        usually(F::EffectiveSize, size.is_some(), usual.effective_size.map(|x| x.value.value));
        usually(F::Uniformity, uniformity.is_some(), usual.uniformity.as_ref().map(|x| number(&x.value)));
        usually(F::ParticleDensity, density.is_some(), usual.particle_density.map(|x| x.value.value));
        usually(F::Voidage, voidage.is_some(), usual.voidage.map(|x| x.value));
        usually(F::Sphericity, sphericity.is_some(), usual.sphericity.map(|x| x.value));
        Grains {
            low: low.unwrap_or(usual.low),
            high: high.unwrap_or(usual.high),
            effective_size: size.or(usual.effective_size),
            uniformity: uniformity.or(usual.uniformity),
            particle_density: density.or(usual.particle_density),
            voidage: voidage.or(usual.voidage),
            sphericity: sphericity.or(usual.sphericity),
        }
    }
}

/// The entry that a quantity of the water side comes from; `layer` is the layer's id where the problem names one.
#[must_use]
pub fn water_field_of(term: Term, vessel: &Id, layer: Option<&Id>) -> Option<(WaterOf, WaterField)> {
    use WaterField as F;
    let of_vessel = |field| Some((WaterOf::Vessel(vessel.clone()), field));
    let of_layer = |field| layer.map(|layer| (WaterOf::Layer(vessel.clone(), layer.clone()), field));
    if let Some((field, _)) = FEED.iter().find(|(_, quantity)| quantity.term() == term) {
        return of_vessel(*field);
    }
    match term {
        Term::WaterTemperature | Term::TemperatureHigh => Some((WaterOf::Site, F::TemperatureHigh)),
        Term::TemperatureLow => Some((WaterOf::Site, F::TemperatureLow)),
        Term::BackwashAvailable => Some((WaterOf::Site, F::BackwashAvailable)),
        Term::SitePressure => Some((WaterOf::Site, F::SitePressure)),
        Term::SiteFlow => of_vessel(F::ServiceFlow),
        Term::PeakFlow => of_vessel(F::PeakFlow),
        Term::MinimumExpansion => of_vessel(F::MinimumExpansion),
        Term::FlowControl => of_vessel(F::FlowControl),
        Term::AirHead => of_vessel(F::AirHead),
        Term::EmptyMass => of_vessel(F::EmptyMass),
        Term::FootDiameter => of_vessel(F::FootDiameter),
        Term::GrainLow => of_layer(F::GrainLow),
        Term::GrainHigh => of_layer(F::GrainHigh),
        Term::EffectiveSize => of_layer(F::EffectiveSize),
        Term::Uniformity => of_layer(F::Uniformity),
        Term::ParticleDensity => of_layer(F::ParticleDensity),
        Term::Voidage => of_layer(F::Voidage),
        Term::Sphericity => of_layer(F::Sphericity),
        _ => super::life::life_field_of(term, vessel),
    }
}
