//! Service: flow per area, contact time, pressure lost, what rules and labels say.

use super::bed::{Bed, BedLayer};
use super::duty::{Arrangement, CriterionOf, Duty, Regime, Site};
use super::feed;
use super::fluidisation::{ergun_start, wen_yu_start};
use super::packed_bed::flow;
use crate::quantity::problem::between;
use crate::quantity::{
    Amount, Assumption, Basis, Figure, Formula, Frequency, Input, Known, Mark, Pressure, Problem, Reason, Remedy,
    Source, Subject, Term, Time, Velocity, Verdict, VolumeRate, cubic_metres_per_second, kelvins, metres,
    metres_per_second, pascals, per_second, seconds,
};
use crate::vessel::Vessel;
use crate::water::Water;

/// What one flow through one vessel makes of the bed.
#[derive(Clone, Debug, PartialEq)]
pub struct Rates {
    /// The flow through one vessel.
    pub flow: Figure<VolumeRate>,
    /// Flow per area.
    pub flow_per_area: Figure<Velocity>,
    /// Empty-bed contact time in one vessel.
    pub contact_time: Figure<Time>,
    /// Contact time of both vessels of a lead–lag pair.
    pub contact_time_pair: Option<Figure<Time>>,
    /// Bed volumes an hour.
    pub bed_volumes: Figure<Frequency>,
    /// Pressure lost in each layer, bottom first, in the coldest water; clean.
    pub layers: Vec<Figure<Pressure>>,
    /// Pressure lost by the whole unit.
    pub loss: Figure<Pressure>,
}

/// A bed in service.
#[derive(Clone, Debug, PartialEq)]
pub struct Service {
    /// At the site's usual flow.
    pub usual: Option<Rates>,
    /// At the site's highest flow.
    pub peak: Option<Rates>,
    /// At the usual flow while one of several vessels is washed.
    pub while_washing: Option<Rates>,
    /// What was judged.
    pub verdicts: Vec<Verdict>,
}

/// How many vessels share the site's flow at one time.
fn sharing(duty: &Duty) -> u32 {
    match duty.arrangement {
        Arrangement::Parallel => duty.vessels.max(1),
        Arrangement::Single | Arrangement::TwinAlternating | Arrangement::LeadLag => 1,
    }
}

/// Works out what service makes of a planned bed, and judges it by the rules of its purpose and by the label.
///
/// Pressure is lost in the coldest water, where water is most viscous. A layer is reckoned fraction by fraction, as
/// backwash sorts it. What the valve and the collectors lose at the usual flow grows with the square of the flow.
///
/// # Errors
/// [`Term::WaterTemperature`] outside 0 to 60 °C; [`Term::SiteFlow`] or [`Term::PeakFlow`] not above zero, faster than
/// 100 m/s through the shell, or the peak below the usual flow; [`Term::ValveLoss`], [`Term::CollectorLoss`],
/// [`Term::PressureLossLimit`], [`Term::SitePressure`], [`Term::LabelPressure`], [`Term::LabelTemperature`] or
/// a reading of the feed below zero or far beyond any; [`Term::TotalChlorine`] below the free chlorine; [`Term::ParticleDensity`] of grains that float in upward flow,
/// with the layer.
///
/// # Sources
/// M. L. Davis, Water and Wastewater Engineering, eq. 8-19 and 8-20; S. Ergun (1952); rules: `criteria.csv`.
///
/// # Example
/// See [`super::backwash`], which takes the same bed, site and duty.
pub fn service(vessel: &Vessel, bed: &Bed, site: &Site, duty: &Duty) -> Result<Service, Problem> {
    let cold = Water::at(&site.temperature_low)?;
    Water::at(&site.temperature_high)?;
    for (term, given) in [(Term::SiteFlow, &duty.service_flow), (Term::PeakFlow, &duty.peak_flow)] {
        if let Some(given) = given {
            flow(term, given, bed.area.value.value)?;
        }
    }
    limits(site, duty)?;
    if duty.regime == Regime::Upflow {
        bed.sinks_in(&cold)?;
    }
    if let (Some(usual), Some(peak)) = (&duty.service_flow, &duty.peak_flow)
        && peak.value < usual.value
    {
        let fault = crate::quantity::Fault::NotAbove {
            value: peak.value.into(),
            other: Term::SiteFlow,
            limit: usual.value.into(),
        };
        return Err(Problem::new(Term::PeakFlow, fault));
    }
    let share = sharing(duty);
    let usual = duty.service_flow.as_ref().map(|flow| rates(bed, &cold, duty, flow, share));
    let peak = duty.peak_flow.as_ref().map(|flow| rates(bed, &cold, duty, flow, share));
    let while_washing = duty
        .service_flow
        .as_ref()
        .filter(|_| share > 1 && duty.regime.is_backwashed())
        .map(|flow| rates(bed, &cold, duty, flow, share - 1));
    let mut verdicts = Vec::new();
    if let Some(worst) = usual.as_ref() {
        verdicts.extend(rules(vessel, bed, duty, worst));
        verdicts.push(loss_verdict(&worst.loss, &duty.loss_limit, false));
    }
    if let Some(peak) = &peak {
        verdicts.push(loss_verdict(&peak.loss, &duty.loss_limit_peak, true));
    }
    if let (Regime::Upflow, Some(fastest)) = (duty.regime, peak.as_ref().or(usual.as_ref())) {
        verdicts.extend(service_lift(bed, &cold, fastest));
    }
    verdicts.extend(labels(site, duty));
    verdicts.extend(feed::verdicts(duty));
    Ok(Service { usual, peak, while_washing, verdicts })
}

/// Pressures of a unit, Pa: from none to a thousand bar.
const PRESSURE_PA: (f64, f64) = (0.0, 1e8);
/// Temperatures on a label: from none to far beyond any.
const TEMPERATURE_K: (f64, f64) = (0.0, 1000.0);

/// Refuses what no unit loses and no label says.
fn limits(site: &Site, duty: &Duty) -> Result<(), Problem> {
    for (term, given) in [
        (Term::ValveLoss, duty.valve_loss.as_ref()),
        (Term::CollectorLoss, duty.collector_loss.as_ref()),
        (Term::PressureLossLimit, Some(&duty.loss_limit)),
        (Term::PressureLossLimit, Some(&duty.loss_limit_peak)),
        (Term::SitePressure, site.pressure.as_ref()),
        (Term::LabelPressure, duty.label_pressure.as_ref()),
    ] {
        if let Some(given) = given {
            between(term, given.value.value, PRESSURE_PA, |x| pascals(x).into())?;
        }
    }
    if let Some(label) = &duty.label_temperature {
        between(Term::LabelTemperature, label.value.value, TEMPERATURE_K, |x| kelvins(x).into())?;
    }
    feed::sound(duty)?;
    Ok(())
}

fn rates(bed: &Bed, water: &Water, duty: &Duty, site_flow: &Known<VolumeRate>, share: u32) -> Rates {
    let count = Known::typed(f64::from(share));
    let mut inputs = vec![site_flow.input(Term::SiteFlow)];
    let formula = if share > 1 {
        inputs.push(Input { amount: Amount::Count(share), ..count.input(Term::Vessels) });
        Formula::ShareOfFlow
    } else {
        Formula::Given
    };
    let flow = Figure::new(cubic_metres_per_second(site_flow.value.value / f64::from(share)), formula, inputs);
    let per_vessel = || vec![flow.input(Term::ServiceFlow)];
    let with = |input: Input| {
        let mut inputs = per_vessel();
        inputs.push(input);
        inputs
    };
    let (q, area, media) = (flow.value.value, bed.area.value.value, bed.media_volume.value.value);
    let flow_per_area =
        Figure::new(metres_per_second(q / area), Formula::FlowPerArea, with(bed.area.input(Term::CrossSection)));
    let media_input = bed.media_volume.input(Term::MediaVolume);
    let time = |beds: f64, formula: Formula| Figure::new(seconds(beds * media / q), formula, with(media_input));
    let layers: Vec<Figure<Pressure>> =
        bed.layers.iter().map(|layer| layer_loss(layer, water, &flow_per_area)).collect();
    let fittings = |given: &Option<Known<Pressure>>| given.as_ref().map_or(0.0, |given| given.value.value);
    let usual = duty.service_flow.as_ref().map_or(q, |flow| flow.value.value / f64::from(sharing(duty)));
    let scale = (q / usual) * (q / usual);
    let sum: f64 = layers.iter().map(|layer| layer.value.value).sum();
    let mut inputs: Vec<Input> = layers.iter().map(|layer| layer.input(Term::PressureLoss)).collect();
    inputs.extend(duty.valve_loss.as_ref().map(|loss| loss.input(Term::ValveLoss)));
    inputs.extend(duty.collector_loss.as_ref().map(|loss| loss.input(Term::CollectorLoss)));
    let fitted = duty.valve_loss.is_some() || duty.collector_loss.is_some();
    let formula = if fitted { Formula::UnitPressureLossFittings } else { Formula::UnitPressureLoss };
    if fitted {
        inputs.push(flow.input(Term::ServiceFlow));
        let usual = Known { value: cubic_metres_per_second(usual), basis: flow.basis, source: Source::Arithmetic };
        inputs.push(usual.input(Term::UsualFlow));
    }
    let total = sum + scale * (fittings(&duty.valve_loss) + fittings(&duty.collector_loss));
    Rates {
        contact_time: time(1.0, Formula::ContactTime),
        contact_time_pair: (duty.arrangement == Arrangement::LeadLag).then(|| time(2.0, Formula::ContactTimePair)),
        bed_volumes: Figure::new(per_second(q / media), Formula::BedVolumes, with(media_input)),
        loss: Figure::new(pascals(total), formula, inputs),
        flow_per_area,
        layers,
        flow,
    }
}

/// Pressure lost in a clean layer, fraction by fraction.
fn layer_loss(layer: &BedLayer, water: &Water, flow_per_area: &Figure<Velocity>) -> Figure<Pressure> {
    let value = layer.loss(layer.voidage.value, water.fluid(), flow_per_area.value.value);
    let mut inputs = layer.inputs();
    inputs.push(layer.depth.input(Term::LayerDepth));
    inputs.push(flow_per_area.input(Term::FlowPerArea));
    inputs.push(water.density.input(Term::WaterDensity));
    inputs.push(water.viscosity.input(Term::WaterViscosity));
    let figure = Figure::new(pascals(value), Formula::LayerPressureLoss, inputs);
    if layer.guessed_sizes() { figure.with(crate::quantity::Caution::SizesGuessed) } else { figure }
}

/// A figure against the least and the most it should be.
pub(crate) fn limited(
    subject: Subject,
    value: Amount,
    (low, high): (Option<Amount>, Option<Amount>),
    remedies: Vec<Remedy>,
    (basis, source): (Basis, Source),
) -> Verdict {
    let (mark, reason) = match (low, high) {
        (Some(low), _) if !reaches(value, low) => (Mark::Caution, Reason::AtLeast { value, limit: low }),
        (_, Some(high)) if !keeps_to(value, high) => (Mark::Caution, Reason::AtMost { value, limit: high }),
        (Some(low), _) => (Mark::Fine, Reason::AtLeast { value, limit: low }),
        (None, Some(high)) => (Mark::Fine, Reason::AtMost { value, limit: high }),
        (None, None) => (Mark::Fine, Reason::AtLeast { value, limit: value }),
    };
    let remedies = if mark == Mark::Fine { Vec::new() } else { remedies };
    Verdict { subject, mark, reason, remedies, basis, source }
}

/// Limits are met when missed by less than what rounding in the arithmetic leaves.
const ROUNDING: f64 = 1.0 - 1e-9;

fn reaches(value: Amount, low: Amount) -> bool {
    value.si() >= low.si() * ROUNDING
}

pub(crate) fn keeps_to(value: Amount, high: Amount) -> bool {
    value.si() <= high.si() / ROUNDING
}

/// Whether a backwash at this speed meets the purpose's rule on backwash rates; without one every speed does.
pub(crate) fn backwash_rate_met(duty: &Duty, speed: Velocity) -> bool {
    duty.purpose.criteria().filter(|rule| rule.quantity == CriterionOf::BackwashRate).all(|rule| {
        rule.low.is_none_or(|low| reaches(speed.into(), low))
            && rule.high.is_none_or(|high| keeps_to(speed.into(), high))
    })
}

fn rules(vessel: &Vessel, bed: &Bed, duty: &Duty, rates: &Rates) -> Vec<Verdict> {
    let (area, media) = (bed.area.value.value, bed.media_volume.value.value);
    let depth: f64 = bed.media_layers().map(|layer| layer.depth.value.value).sum();
    let pair = if duty.arrangement == Arrangement::LeadLag { 2.0 } else { 1.0 };
    duty.purpose
        .criteria()
        .filter_map(|rule| {
            let flow = |q: f64| Remedy::LessFlow { flow: cubic_metres_per_second(q).into() };
            let high = rule.high.map_or(f64::INFINITY, Amount::si);
            let low = rule.low.map_or(0.0, Amount::si);
            let (value, quantity, remedies): (Amount, Term, Vec<Remedy>) = match rule.quantity {
                CriterionOf::FlowPerArea => {
                    (rates.flow_per_area.value.into(), Term::FlowPerArea, fewer(duty, rates, high * area, flow))
                }
                CriterionOf::ContactTime => {
                    let time = rates.contact_time_pair.as_ref().unwrap_or(&rates.contact_time);
                    let remedies = fewer(duty, rates, pair * media / low, flow);
                    // Longer than the rule asks is no harm here.
                    return Some(limited(
                        Subject::Rule { quantity: Term::ContactTime, section: rule.section },
                        time.value.into(),
                        (rule.low, None),
                        remedies,
                        (time.basis, rule.source),
                    ));
                }
                CriterionOf::BedVolumes => {
                    // Slower than the handbook's range wastes resin, but harms nothing.
                    return Some(limited(
                        Subject::Rule { quantity: Term::BedVolumes, section: rule.section },
                        rates.bed_volumes.value.into(),
                        (None, rule.high),
                        fewer(duty, rates, high * media, flow),
                        (rates.bed_volumes.basis, rule.source),
                    ));
                }
                CriterionOf::MediaDepth => (metres(depth).into(), Term::MediaDepth, Vec::new()),
                CriterionOf::CollectorHeight => {
                    vessel.measures.upper_collector.as_ref()?;
                    let surface = vessel.cavity.height_of(bed.fixed + bed.media)?;
                    (metres(vessel.ceiling().value - surface).into(), Term::UpperCollector, Vec::new())
                }
                // Judged with the backwash, where there is one.
                CriterionOf::BackwashRate => return None,
            };
            Some(limited(
                Subject::Rule { quantity, section: rule.section },
                value,
                (rule.low, rule.high),
                remedies,
                (rates.flow_per_area.basis.weaker(rates.contact_time.basis), rule.source),
            ))
        })
        .collect()
}

/// What brings the flow through one vessel down to `most`.
fn fewer(duty: &Duty, rates: &Rates, most: f64, flow: impl Fn(f64) -> Remedy) -> Vec<Remedy> {
    if !(most.is_finite() && most > 0.0) {
        return Vec::new();
    }
    let mut remedies = vec![flow(most)];
    let vessels = (rates.flow.value.value * f64::from(sharing(duty)) / most - 1e-9).ceil();
    if vessels < 100.0 && matches!(duty.arrangement, Arrangement::Single | Arrangement::Parallel) {
        remedies.push(Remedy::MoreVessels { vessels: Amount::Count(vessels as u32) });
    }
    remedies
}

/// The rule on backwash rates of a purpose, for the setting that is judged.
#[must_use]
pub fn backwash_rules(duty: &Duty, flow_per_area: &Figure<Velocity>) -> Vec<Verdict> {
    duty.purpose
        .criteria()
        .filter(|rule| rule.quantity == CriterionOf::BackwashRate)
        .map(|rule| {
            limited(
                Subject::Rule { quantity: Term::BackwashFlow, section: rule.section },
                flow_per_area.value.into(),
                (rule.low, rule.high),
                Vec::new(),
                (flow_per_area.basis, rule.source),
            )
        })
        .collect()
}

fn loss_verdict(loss: &Figure<Pressure>, limit: &Known<Pressure>, peak: bool) -> Verdict {
    limited(
        Subject::PressureLoss { peak },
        loss.value.into(),
        (None, Some(limit.value.into())),
        vec![],
        (loss.basis.weaker(limit.basis), limit.source),
    )
}

/// Whether the flow lifts a bed that must lie still.
fn service_lift(bed: &Bed, cold: &Water, rates: &Rates) -> Option<Verdict> {
    let fluid = cold.fluid();
    // The finest tenth moves first, by whichever of the two says so earlier.
    let start = bed
        .media_layers()
        .filter_map(|layer| layer.solid(0.1))
        .map(|solid| wen_yu_start(&solid, fluid).min(ergun_start(&solid, fluid)))
        .fold(None, |least: Option<f64>, v| Some(least.map_or(v, |least| least.min(v))))?;
    let v = rates.flow_per_area.value.value;
    let room = bed.room.value;
    let stands = bed.expanded(fluid, v, Assumption::LineWeight.ratio());
    let mark = if v <= start {
        Mark::Fine
    } else if stands <= room {
        Mark::SetOnSite
    } else {
        Mark::Stop
    };
    let slower = cubic_metres_per_second(start * bed.area.value.value);
    let remedies = if mark == Mark::Fine { Vec::new() } else { vec![Remedy::LessFlow { flow: slower.into() }] };
    Some(Verdict {
        subject: Subject::ServiceLift,
        mark,
        reason: Reason::LiftsInService { speed: metres_per_second(v).into(), start: metres_per_second(start).into() },
        remedies,
        basis: rates.flow_per_area.basis,
        source: Source::OwnRule,
    })
}

fn labels(site: &Site, duty: &Duty) -> Vec<Verdict> {
    let mut verdicts = Vec::new();
    let mut judge = |term: Term, value: Amount, limit: Amount, basis: Basis, source: Source, remedy: Remedy| {
        let over = value.si() > limit.si();
        verdicts.push(Verdict {
            subject: Subject::Label { quantity: term },
            mark: if over { Mark::Stop } else { Mark::Fine },
            reason: Reason::AtMost { value, limit },
            remedies: if over { vec![remedy] } else { Vec::new() },
            basis,
            source,
        });
    };
    if let (Some(pressure), Some(label)) = (&site.pressure, &duty.label_pressure) {
        let basis = pressure.basis.weaker(label.basis);
        let (value, limit) = (pressure.value.into(), label.value.into());
        judge(Term::LabelPressure, value, limit, basis, label.source, Remedy::ReducePressure);
    }
    if let Some(label) = &duty.label_temperature {
        let warm = &site.temperature_high;
        let basis = warm.basis.weaker(label.basis);
        let (value, limit) = (warm.value.into(), label.value.into());
        judge(Term::LabelTemperature, value, limit, basis, label.source, Remedy::OtherVessel);
    }
    verdicts
}
