//! Which vessels, and how many, would do for a flow: every nominal size in turn, filled as far as its backwash allows.

mod judged;
mod order;

use super::backwash::Setting;
use super::bed::Graded;
use super::duty::{Arrangement, Purpose};
use super::service::Rates;
use crate::fill::{Freeboard, Layer, Plan, Role, Target, Weights};
use crate::material::{Grains, Material, Pack};
use crate::quantity::{
    Amount, Fault, Figure, Known, Length, Mark, MassDensity, Problem, Temperature, Term, Verdict, Volume, VolumeRate,
    cubic_metres, kilograms_per_cubic_metre, problem::positive,
};
use crate::vessel::{NominalDiameter, Vessel};

use order::Order;

/// A material as it is bought and poured.
#[derive(Clone, Debug, PartialEq)]
pub struct Stuff {
    /// What it is made of.
    pub material: Material,
    /// Its grains.
    pub grains: Grains,
    /// Dry mass over volume as poured.
    pub bulk_density: Known<MassDensity>,
    /// The pack it is bought in.
    pub pack: Pack,
}

impl Stuff {
    /// A material of the catalogue in its most usual pack.
    #[must_use]
    pub fn of(material: &str) -> Option<Stuff> {
        let pack = Pack::of_material(material).into_iter().next()?;
        let material = Material::of(material)?;
        Some(Stuff { grains: material.grains(), bulk_density: material.usual_bulk_density(), material, pack })
    }

    fn layer(&self, role: Role, target: Target) -> Layer {
        Layer {
            material: self.material.clone(),
            role,
            target,
            // Whole packs of media are asked for as such; nobody opens a bag of gravel for a spoonful.
            minimum: role == Role::Media,
            pack: self.pack.clone(),
            bulk_density: self.bulk_density,
        }
    }
}

/// What a vessel is looked for.
#[derive(Clone, Debug, PartialEq)]
pub struct Wanted {
    /// What the bed is there for: its rules are held to.
    pub purpose: Purpose,
    /// How several vessels share the flow. Twins and a lead–lag pair are two, a single vessel is one, and 1 to 8 in
    /// parallel are tried.
    pub arrangement: Arrangement,
    /// The site's usual flow in service.
    pub service_flow: Known<VolumeRate>,
    /// The site's highest flow in service, where known.
    pub peak_flow: Option<Known<VolumeRate>>,
    /// What treats the water.
    pub media: Stuff,
    /// What fills the bottom head up to the lower tangent line; none is a usual choice.
    pub underbed: Option<Stuff>,
    /// Clear height above the floor, where it limits.
    pub clearance: Option<Known<Length>>,
    /// Whether a straight riser is put into the standing vessel from above, and so has to go over it under the ceiling;
    /// not so where it comes in parts, or goes in before the vessel is stood up.
    pub straight_riser: bool,
    /// The coldest water of the year.
    pub temperature_low: Known<Temperature>,
    /// The warmest.
    pub temperature_high: Known<Temperature>,
    /// The most there is for backwash, where known. One vessel is washed at a time.
    pub backwash_available: Option<Known<VolumeRate>>,
    /// A drain line flow control that can be had besides the sizes known here.
    pub flow_control: Option<Known<VolumeRate>>,
    /// The least expansion that cleans the bed.
    pub minimum_expansion: Known<f64>,
}

/// How far a rule of the purpose is met.
#[derive(Clone, Debug, PartialEq)]
pub struct Margin {
    /// What the rule limits.
    pub quantity: Term,
    /// Section or table of its source.
    pub section: &'static str,
    /// Whether it is met.
    pub met: bool,
    /// The value over the least, or the most over the value, whichever is less: from 1 up it is met.
    pub ratio: Figure<f64>,
}

/// A size and a number of vessels that would do, or what they miss.
#[derive(Clone, Debug, PartialEq)]
pub struct Candidate {
    /// The nominal size.
    pub nominal: &'static NominalDiameter,
    /// How many vessels there are.
    pub vessels: u32,
    /// One vessel, from nominal sizes: to be measured.
    pub vessel: Vessel,
    /// Its layers, bottom first.
    pub layers: Vec<Layer>,
    /// The fill of one vessel.
    pub plan: Plan,
    /// Whole packs of media in one vessel.
    pub packs: Figure<f64>,
    /// Whole packs of media in all vessels.
    pub packs_total: Figure<f64>,
    /// Media in one vessel.
    pub media_volume: Figure<Volume>,
    /// The room above the media.
    pub freeboard: Freeboard,
    /// At the site's usual flow.
    pub usual: Rates,
    /// At the site's highest flow.
    pub peak: Option<Rates>,
    /// At the usual flow while one of several vessels is washed.
    pub while_washing: Option<Rates>,
    /// The drain line flow control and what it does; none where the site can't feed the smallest.
    pub flow_control: Option<Setting>,
    /// Clear height that it takes to set it up.
    pub height_needed: Figure<Length>,
    /// How far each rule of the purpose is met.
    pub margins: Vec<Margin>,
    /// What one vessel weighs in the coldest water.
    pub weights: Weights,
    /// The worst of `verdicts`, or *stop* where `loading` says so.
    pub mark: Mark,
    /// What was judged, the worst first: rules, pressure lost, backwash, clear height.
    pub verdicts: Vec<Verdict>,
    /// What the loader must know. It chooses another gravel or a fill port, not another size, unless it says *stop*.
    pub loading: Vec<Verdict>,
}

impl Candidate {
    /// What it misses: the verdicts that are worse than *set on site*, and what can't be loaded at all.
    pub fn misses(&self) -> impl Iterator<Item = &Verdict> {
        let judged = self.verdicts.iter().filter(|verdict| verdict.mark > Mark::SetOnSite);
        judged.chain(self.loading.iter().filter(|verdict| verdict.mark == Mark::Stop))
    }

    /// Whether it goes before another: the better mark, what misses less, fewer vessels, less media.
    fn goes_before(&self, other: &Candidate) -> bool {
        let media = |one: &Candidate| f64::from(one.vessels) * one.media_volume.value.value;
        (self.mark, self.misses().count(), self.vessels)
            .cmp(&(other.mark, other.misses().count(), other.vessels))
            .then(media(self).total_cmp(&media(other)))
            .is_lt()
    }
}

/// What became of every size.
#[derive(Clone, Debug, PartialEq)]
pub struct Found {
    /// Sizes and numbers that would do, the best first: nothing worse than *set on site*.
    pub suit: Vec<Candidate>,
    /// Of every size that won't do, the number that comes nearest, the nearest first.
    pub miss: Vec<Candidate>,
    /// Sizes in which not even one pack has room, the narrowest first, with what it needs and what there is.
    pub too_small: Vec<(&'static NominalDiameter, Problem)>,
}

/// Numbers of vessels that are kept of one size.
const KEPT_OF_A_SIZE: usize = 2;

/// The vessels that would do for a flow, the best first: the better mark, then fewer vessels, then less media.
///
/// Every nominal size is taken in its usual height with 2:1 heads, a neck of 1 in and a riser of 1.05 in, and filled with
/// the largest whole number of packs for which one drain line flow control serves the whole year: of the sizes sold, else
/// one in whole steps beyond the largest, which must be asked for. A speed that meets the purpose's rule on backwash rates
/// goes before one that does not. Then every rule of the purpose, the pressure lost, the backwash and the clear height are
/// judged. Of one size the two smallest numbers of vessels that will do are kept; of one that won't, the nearest, with
/// verdicts that say what it misses.
///
/// Clear height: vessel and riser, one over the other, since a straight riser goes in from above; without one, the vessel.
///
/// # Validity
/// Sizes and heights are from memory, inside measures a start only. A larger riser for large flows is not modelled, nor
/// are collectors, the height of the valve, nominal sizes in other heights.
///
/// # Errors
/// [`Term::SiteFlow`] or [`Term::PeakFlow`] not from 1e-8 to 10 m³/s, or the peak below the usual flow;
/// [`Term::CeilingClearance`], [`Term::BulkDensity`], [`Term::PackVolume`] or [`Term::BackwashAvailable`] not above zero;
/// [`Term::FlowControl`] not from 1e-8 to 10 m³/s, or above what there is for backwash;
/// [`Term::WaterTemperature`], [`Term::TemperatureLow`], [`Term::MinimumExpansion`] as [`super::backwash()`]; of grains as
/// [`super::Bed::new`]; [`Term::PackVolume`] that fits no vessel.
///
/// # Sources
/// Rules: `criteria.csv`; sizes: from memory; the order: our own rule.
///
/// # Example
/// Dechlorination of 10 gal/min: at most 7 gal/min per square foot takes 1.43 ft², an inside diameter of 16.2 in; 0.98 of
/// 16 in is 15.7, so a single vessel has 18 in or more.
/// ```
/// use bedwright_calc::hydraulics::search::{Stuff, Wanted, search};
/// use bedwright_calc::hydraulics::{Arrangement, Purpose};
/// use bedwright_calc::quantity::{Known, Mark, cubic_metres_per_second, kelvins};
/// let found = search(&Wanted {
///     purpose: Purpose::Dechlorination, arrangement: Arrangement::Single,
///     service_flow: Known::typed(cubic_metres_per_second(10.0 * 0.003785411784 / 60.0)), peak_flow: None,
///     media: Stuff::of("carbon_coconut_12x40").unwrap(), underbed: None, clearance: None, straight_riser: true,
///     temperature_low: Known::typed(kelvins(283.15)), temperature_high: Known::typed(kelvins(293.15)),
///     backwash_available: None, flow_control: None,
///     minimum_expansion: Purpose::Dechlorination.minimum_expansion(),
/// }).unwrap();
/// let inches = |size: f64| (size / 0.0254).round();
/// assert!(found.suit.iter().all(|one| one.mark <= Mark::SetOnSite && inches(one.nominal.diameter.value) >= 18.0));
/// assert!(found.miss.iter().any(|one| inches(one.nominal.diameter.value) == 16.0));
/// ```
pub fn search(wanted: &Wanted) -> Result<Found, Problem> {
    let order = Order::new(wanted)?;
    let mut answer = Found { suit: Vec::new(), miss: Vec::new(), too_small: Vec::new() };
    for nominal in NominalDiameter::all() {
        let bare = order.vessel(nominal)?;
        let filled = match order.fill(nominal, bare) {
            Ok(filled) => filled,
            Err(problem) if matches!(problem.fault, Fault::DoesNotFit { .. }) => {
                answer.too_small.push((nominal, problem));
                continue;
            }
            Err(problem) => return Err(problem),
        };
        let mut nearest: Option<Candidate> = None;
        let mut found = 0;
        for vessels in order.counts() {
            let candidate = order.candidate(&filled, vessels)?;
            if candidate.mark <= Mark::SetOnSite {
                put(&mut answer.suit, candidate);
                found += 1;
            } else if nearest.as_ref().is_none_or(|nearest| candidate.goes_before(nearest)) {
                nearest = Some(candidate);
            }
            if found == KEPT_OF_A_SIZE {
                break;
            }
        }
        if found == 0
            && let Some(nearest) = nearest
        {
            put(&mut answer.miss, nearest);
        }
    }
    // The largest has the most room: what doesn't fit there fits nowhere.
    match answer.too_small.last() {
        Some((_, problem)) if answer.suit.is_empty() && answer.miss.is_empty() => Err(*problem),
        _ => Ok(answer),
    }
}

fn put(among: &mut Vec<Candidate>, candidate: Candidate) {
    let at = among.partition_point(|old| !candidate.goes_before(old));
    among.insert(at, candidate);
}

/// What a bulk density can be, as a plan has it.
const BULK_DENSITY_KG_M3: (f64, f64) = crate::fill::plan::BULK_DENSITY_KG_M3;

/// A material's grading and what a pack of it fills; refuses what can't be poured, with its layer.
fn sound(stuff: &Stuff, index: usize) -> Result<(Graded, f64), Problem> {
    let layer = stuff.layer(Role::Media, Target::Packs(Known::typed(1.0)));
    let density = layer.density();
    let (low, high) = BULK_DENSITY_KG_M3;
    if !(low..=high).contains(&density.value.value) {
        let amount = |x: f64| Amount::Density(kilograms_per_cubic_metre(x));
        let fault = Fault::OutOfRange { value: density.value.into(), low: amount(low), high: amount(high) };
        return Err(Problem::new(Term::BulkDensity, fault).of_layer(index));
    }
    let missing = Problem::new(Term::PackVolume, Fault::Missing).of_layer(index);
    let pack = stuff.pack.fills(&density).ok_or(missing)?;
    positive(Term::PackVolume, pack, cubic_metres(pack).into()).map_err(|problem| problem.of_layer(index))?;
    let graded = Graded::new(&stuff.grains).map_err(|problem| problem.of_layer(index))?;
    Ok((graded, pack))
}
