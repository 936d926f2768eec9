//! Which vessels, and how many, would do for a flow: every nominal size in turn, filled as far as its backwash allows.

use super::backwash::{Bench, Setting, Stood, basis_of, best, carry_over, ends_of, most_packs, setting, settings_of};
use super::bed::{Bed, Graded};
use super::duty::{Arrangement, CriterionOf, Duty, Purpose, Site};
use super::evidence::Lines;
use super::service::{Rates, backwash_rate_met, backwash_rules, keeps_to, service};
use crate::fill::{Freeboard, Layer, Plan, Role, Target, Weights, plan, weights};
use crate::material::{Grains, Material, Pack};
use crate::quantity::{
    Amount, Assumption, Basis, Fault, Figure, Formula, Input, Known, Length, Mark, MassDensity, Problem, Reason,
    Remedy, Source, Subject, Temperature, Term, Verdict, Volume, VolumeRate, cubic_metres, cubic_metres_per_second,
    kilograms_per_cubic_metre, metres, metres_per_second, problem::positive,
};
use crate::vessel::nominal::inside_depth_nominal;
use crate::vessel::riser::riser_cut;
use crate::vessel::{BottomCollector, DiameterBy, Measures, NominalDiameter, Opening, Riser, Vessel};
use crate::water::Water;

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
            // Nothing is rounded off here: whole packs are asked for as such.
            minimum: true,
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

/// What the flow of a site can be: far beyond anything that vessels of these sizes serve, near enough to reckon with.
const FLOW_M3_S: (f64, f64) = (1e-8, 10.0);
/// Most vessels side by side that are tried.
const MOST_VESSELS: u32 = 8;
/// Numbers of vessels that are kept of one size.
const KEPT_OF_A_SIZE: usize = 2;
/// What is shown where nothing will do.
const SHOWN_OF_NONE: usize = 5;

/// The vessels that would do for a flow, the best first: the better mark, then fewer vessels, then less media.
///
/// Every nominal size is taken in its usual height with 2:1 heads, a neck of 1 in and a riser of 1.05 in, and filled with
/// the largest whole number of packs for which one drain line flow control of the sizes sold serves the whole year.
/// A speed that meets the purpose's rule on backwash rates goes before one that does not. Then every rule of the purpose,
/// the pressure lost, the backwash and the clear height are judged. Kept is what has nothing worse than *set on site*; of
/// one size the two smallest numbers of vessels that will do. Where nothing will do, the few nearest are given with
/// verdicts that say what they miss.
///
/// Clear height: vessel and riser, one over the other, since a straight riser goes in from above; without one, the vessel.
///
/// # Validity
/// Sizes and heights are from memory, inside measures a start only. A larger riser for large flows is not modelled, nor
/// are collectors, the height of the valve, nominal sizes in other heights. A flow control larger than the sizes sold that
/// are known here is not thought of, so large vessels want more than one can give.
///
/// # Errors
/// [`Term::SiteFlow`] or [`Term::PeakFlow`] not from 1e-8 to 10 m³/s, or the peak below the usual flow;
/// [`Term::CeilingClearance`], [`Term::BulkDensity`], [`Term::PackVolume`] or [`Term::BackwashAvailable`] not above zero;
/// [`Term::WaterTemperature`], [`Term::TemperatureLow`], [`Term::MinimumExpansion`] as [`super::backwash()`]; of grains as
/// [`Bed::new`]; [`Term::PackVolume`] that fits no vessel.
///
/// # Sources
/// Rules: `criteria.csv`; sizes: from memory; the order: our own rule.
///
/// # Example
/// Dechlorination of 10 gal/min: at most 7 gal/min per square foot takes 1.43 ft², an inside diameter of 16.2 in; 0.98 of
/// 16 in is 15.7, so a single vessel has 18 in.
/// ```
/// use bedwright_calc::hydraulics::search::{Stuff, Wanted, search};
/// use bedwright_calc::hydraulics::{Arrangement, Purpose};
/// use bedwright_calc::quantity::{Known, Mark, cubic_metres_per_second, kelvins};
/// let found = search(&Wanted {
///     purpose: Purpose::Dechlorination, arrangement: Arrangement::Parallel,
///     service_flow: Known::typed(cubic_metres_per_second(10.0 * 0.003785411784 / 60.0)), peak_flow: None,
///     media: Stuff::of("carbon_coconut_12x40").unwrap(), underbed: None, clearance: None, straight_riser: true,
///     temperature_low: Known::typed(kelvins(283.15)), temperature_high: Known::typed(kelvins(293.15)),
///     backwash_available: None, minimum_expansion: Purpose::Dechlorination.minimum_expansion(),
/// }).unwrap();
/// assert!(found.iter().all(|candidate| candidate.mark <= Mark::SetOnSite));
/// let single = found.iter().find(|candidate| candidate.vessels == 1).unwrap();
/// assert!((single.nominal.diameter.value / 0.0254 - 18.0).abs() < 1e-9);
/// ```
pub fn search(wanted: &Wanted) -> Result<Vec<Candidate>, Problem> {
    let order = Order::new(wanted)?;
    let mut kept: Vec<Candidate> = Vec::new();
    let mut missed: Vec<Candidate> = Vec::new();
    let mut room = 0.0_f64;
    for nominal in NominalDiameter::all() {
        let bare = order.vessel(nominal)?;
        let Some(filled) = order.fill(nominal, bare, &mut room)? else { continue };
        let mut nearest: Option<Candidate> = None;
        let mut found = 0;
        for vessels in order.counts() {
            let candidate = order.candidate(&filled, vessels)?;
            if candidate.mark <= Mark::SetOnSite {
                put(&mut kept, candidate);
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
            put(&mut missed, nearest);
        }
    }
    if !kept.is_empty() {
        return Ok(kept);
    }
    if missed.is_empty() {
        let fault =
            Fault::DoesNotFit { needs: cubic_metres(order.pack).into(), room: cubic_metres(room.max(0.0)).into() };
        return Err(Problem::new(Term::PackVolume, fault));
    }
    missed.truncate(SHOWN_OF_NONE);
    Ok(missed)
}

fn put(among: &mut Vec<Candidate>, candidate: Candidate) {
    let at = among.partition_point(|old| !candidate.goes_before(old));
    among.insert(at, candidate);
}

/// What is the same for every size.
struct Order<'a> {
    wanted: &'a Wanted,
    site: Site,
    duty: Duty,
    lines: Lines,
    cold: Water,
    warm: Water,
    media: Graded,
    underbed: Option<Graded>,
    /// What a pack of media fills, m³.
    pack: f64,
}

/// One vessel of a size with its bed and its backwash: the same however many there are.
struct Filled {
    nominal: &'static NominalDiameter,
    vessel: Vessel,
    layers: Vec<Layer>,
    plan: Plan,
    freeboard: Freeboard,
    bed: Bed,
    packs: Figure<f64>,
    flow_control: Option<Setting>,
    height_needed: Figure<Length>,
    verdicts: Vec<Verdict>,
    weights: Weights,
}

impl<'a> Order<'a> {
    fn new(wanted: &'a Wanted) -> Result<Order<'a>, Problem> {
        flow_within(Term::SiteFlow, &wanted.service_flow)?;
        if let Some(peak) = &wanted.peak_flow {
            flow_within(Term::PeakFlow, peak)?;
            if peak.value < wanted.service_flow.value {
                let limit = wanted.service_flow.value.into();
                let fault = Fault::NotAbove { value: peak.value.into(), other: Term::SiteFlow, limit };
                return Err(Problem::new(Term::PeakFlow, fault));
            }
        }
        if let Some(clearance) = &wanted.clearance {
            positive(Term::CeilingClearance, clearance.value.value, clearance.value.into())?;
        }
        let site = Site {
            temperature_low: wanted.temperature_low,
            temperature_high: wanted.temperature_high,
            backwash_available: wanted.backwash_available,
            pressure: None,
        };
        let duty = Duty {
            arrangement: wanted.arrangement,
            service_flow: Some(wanted.service_flow),
            peak_flow: wanted.peak_flow,
            minimum_expansion: wanted.minimum_expansion,
            ..Duty::new(wanted.purpose)
        };
        let (cold, warm) = ends_of(&site, &duty)?;
        // The underbed is layer 0 where there is one.
        let place = usize::from(wanted.underbed.is_some());
        let underbed = wanted.underbed.as_ref().map(|stuff| sound(stuff, 0)).transpose()?;
        let (media, pack) = sound(&wanted.media, place)?;
        let underbed = underbed.map(|(graded, _)| graded);
        Ok(Order { wanted, site, duty, lines: Lines::unknown(), cold, warm, media, underbed, pack })
    }

    /// Numbers of vessels to try, the fewest first.
    fn counts(&self) -> std::ops::RangeInclusive<u32> {
        match self.wanted.arrangement {
            Arrangement::Single => 1..=1,
            Arrangement::Parallel => 1..=MOST_VESSELS,
            Arrangement::TwinAlternating | Arrangement::LeadLag => 2..=2,
        }
    }

    /// A vessel of a nominal size, nothing measured.
    fn vessel(&self, nominal: &NominalDiameter) -> Result<Vessel, Problem> {
        let height = Known::catalogue(nominal.usual_height, nominal.source);
        let size = Known::catalogue(nominal.diameter, nominal.source);
        let mut depth = inside_depth_nominal(&height)?.known();
        depth.basis = Basis::Assumed;
        Vessel::new(Measures {
            nominal_diameter: Some(size),
            diameter_by: DiameterBy::Nominal { nominal: size },
            inside_depth: depth,
            bottom_head: nominal.usual_head,
            top_head: nominal.usual_head,
            neck_height: Assumption::NeckHeight.length(),
            clear_bore: Known::assumed(nominal.usual_bore, nominal.source),
            opening: Opening::TopOnly,
            riser: Some(Riser::assumed()),
            bottom_collector: BottomCollector::None,
            upper_collector: None,
        })
    }

    fn layers(&self, vessel: &Vessel, packs: u32) -> Vec<Layer> {
        let tangent = Known::assumed(vessel.cavity.bottom_tangent(), Source::OwnRule);
        let mut layers = Vec::new();
        layers.extend(self.wanted.underbed.as_ref().map(|stuff| stuff.layer(Role::Underbed, Target::Depth(tangent))));
        layers.push(self.wanted.media.layer(Role::Media, Target::Packs(Known::typed(f64::from(packs)))));
        layers
    }

    /// The vessel with so many packs.
    fn pour(&self, vessel: &Vessel, packs: u32) -> Result<(Vec<Layer>, Plan, Bed), Problem> {
        let layers = self.layers(vessel, packs);
        let filled = plan(vessel, &layers, &Assumption::Bucket.volume());
        let graded = self.underbed.iter().chain([&self.media]).cloned().map(Ok);
        let bed = Bed::of(vessel, &layers, &filled, graded, None)?;
        Ok((layers, filled, bed))
    }

    /// Fills a vessel as far as its backwash allows; none where not even one pack fits. `room` is the most there was.
    fn fill(
        &self,
        nominal: &'static NominalDiameter,
        vessel: Vessel,
        room: &mut f64,
    ) -> Result<Option<Filled>, Problem> {
        let cavity = &vessel.cavity;
        let below = self.underbed.as_ref().map_or(0.0, |_| cavity.free_below(cavity.bottom_tangent().value));
        let free = cavity.free_below(vessel.ceiling().value) - below;
        *room = room.max(free);
        if self.pack > free {
            return Ok(None);
        }
        let (_, _, bed) = self.pour(&vessel, 1)?;
        let bench = self.bench(&vessel, &bed)?;
        let flows = settings_of(&self.site, &self.duty);
        let stood: Vec<Stood> = flows.iter().map(|flow| bench.stood(flow.value.value)).collect();
        let ruled = |stood: &Stood| {
            backwash_rate_met(&self.duty, metres_per_second(stood.v)) && bench.carries(stood.v) == Some(Mark::Fine)
        };
        let by_rule: Vec<Stood> = stood.iter().filter(|stood| ruled(stood)).cloned().collect();
        let layers = self.layers(&vessel, 1);
        let served = most_packs(&layers, &bench, &by_rule).or_else(|| most_packs(&layers, &bench, &stood));
        // Where no flow control serves, as much as leaves room for the least expansion.
        let minimum = self.wanted.minimum_expansion.value;
        let packs = served.unwrap_or(((free / self.pack / (1.0 + minimum)) as u32).max(1));

        let (layers, filled, bed) = self.pour(&vessel, packs)?;
        let Ok(freeboard) = filled.freeboard.clone() else { return Ok(None) };
        let bench = self.bench(&vessel, &bed)?;
        let mut marks = Vec::new();
        for stood in &stood {
            let judged = bench.judge(stood);
            marks.push((if ruled(stood) { judged.mark } else { judged.mark.max(Mark::Caution) }, judged.margin));
        }
        let chosen = best(&marks).and_then(|at| Some((flows.get(at)?, stood.get(at)?)));
        let basis = basis_of(&bed, &self.lines);
        let mut verdicts = Vec::new();
        let flow_control = chosen.map(|(flow, stood)| {
            let setting = setting(&bed, flow, &bench.judge(stood), &self.cold, &self.warm, &self.lines);
            verdicts.extend(carry_over(&bed, &bench, &setting, basis));
            verdicts.extend(backwash_rules(&self.duty, &setting.flow_per_area));
            setting
        });
        verdicts.push(self.backwash_verdict(&bed, &bench, flow_control.as_ref(), basis));
        let height_needed = self.height_needed(nominal, &vessel)?;
        verdicts.extend(self.clear_height(&height_needed));
        let mut packs = Figure::new(
            f64::from(packs),
            if served.is_some() { Formula::PacksServed } else { Formula::PacksForExpansion },
            bed.room.inputs.iter().filter(|input| input.term != Term::LayerVolume).copied().collect(),
        );
        packs.inputs.push(Known { value: cubic_metres(self.pack), ..self.pack_known() }.input(Term::PackVolume));
        packs.inputs.push(self.wanted.minimum_expansion.input(Term::MinimumExpansion));
        packs.inputs.extend(flow_control.as_ref().map(|setting| setting.flow.input(Term::FlowControl)));
        packs.basis = packs.inputs.iter().map(|input| input.basis).fold(Basis::Measured, Basis::weaker);
        packs.cautions.extend(vessel.inside_diameter.cautions.iter().copied());
        let weights = weights(&vessel, &layers, &filled, None, None, &self.cold);
        let plan = filled;
        Ok(Some(Filled {
            nominal,
            vessel,
            layers,
            plan,
            freeboard,
            bed,
            packs,
            flow_control,
            height_needed,
            verdicts,
            weights,
        }))
    }

    fn bench<'b>(&self, vessel: &Vessel, bed: &'b Bed) -> Result<Bench<'b>, Problem> {
        Bench::new(vessel, bed, (&self.cold, &self.warm), &self.duty, &self.lines)
    }

    /// What a pack's volume rests on.
    fn pack_known(&self) -> Known<Volume> {
        let pack = &self.wanted.media.pack;
        let volume = cubic_metres(self.pack);
        match (&pack.volume, &pack.mass) {
            (Some(printed), _) => Known { value: volume, ..*printed },
            (None, Some(mass)) => {
                let density = &self.wanted.media.bulk_density;
                Known { value: volume, basis: mass.basis.weaker(density.basis), source: density.source }
            }
            (None, None) => Known::typed(volume),
        }
    }

    fn backwash_verdict(&self, bed: &Bed, bench: &Bench, setting: Option<&Setting>, basis: Basis) -> Verdict {
        let available = self.wanted.backwash_available.as_ref().map_or(0.0, |flow| flow.value.value);
        let (flow, mark, reason) = match setting {
            Some(setting) => (setting.flow.value, setting.mark, setting.reason),
            None => {
                let judged = bench.judge(&bench.stood(available));
                (cubic_metres_per_second(available), Mark::Stop, judged.reason)
            }
        };
        let mut remedies = Vec::new();
        if mark == Mark::SetOnSite {
            let minutes = Assumption::DrainCheckMinutes.amount();
            remedies.push(Remedy::DrainCheck { flow: flow.into(), minutes });
        } else if mark > Mark::SetOnSite && matches!(reason, Reason::LiftsTooLittle { .. }) {
            let minimum = self.wanted.minimum_expansion.value;
            let needed = bed.speed_for(self.warm.fluid(), minimum, self.lines.likely.value);
            remedies.extend(
                needed.map(|v| Remedy::MoreBackwash { flow: cubic_metres_per_second(v * bed.area.value.value).into() }),
            );
        }
        Verdict { subject: Subject::Backwash { flow }, mark, reason, remedies, basis, source: Source::OwnRule }
    }

    /// Clear height that a vessel takes: with the riser over it, where that is straight and goes in from above.
    fn height_needed(&self, nominal: &NominalDiameter, vessel: &Vessel) -> Result<Figure<Length>, Problem> {
        let height = Known::catalogue(nominal.usual_height, nominal.source);
        let mut inputs = vec![height.input(Term::NominalHeight)];
        let riser = vessel.measures.riser.as_ref().filter(|_| self.wanted.straight_riser);
        let Some(riser) = riser else { return Ok(Figure::new(height.value, Formula::Given, inputs)) };
        let cut = riser_cut(riser, &vessel.measures.inside_depth)?;
        inputs.push(cut.input(Term::RiserLength));
        Ok(Figure::new(metres(height.value.value + cut.value.value), Formula::HeightNeeded, inputs))
    }

    fn clear_height(&self, needed: &Figure<Length>) -> Option<Verdict> {
        let clearance = self.wanted.clearance.as_ref()?;
        let over = !keeps_to(needed.value.into(), clearance.value.into());
        Some(Verdict {
            subject: Subject::Rule { quantity: Term::CeilingClearance, section: "" },
            mark: if over { Mark::Stop } else { Mark::Fine },
            reason: Reason::AtMost { value: needed.value.into(), limit: clearance.value.into() },
            remedies: Vec::new(),
            basis: needed.basis.weaker(clearance.basis),
            source: Formula::HeightNeeded.source(),
        })
    }

    /// So many of a filled vessel, judged.
    fn candidate(&self, filled: &Filled, vessels: u32) -> Result<Candidate, Problem> {
        let duty = Duty { vessels, ..self.duty.clone() };
        let served = service(&filled.vessel, &filled.bed, &self.site, &duty)?;
        let usual = served.usual.ok_or(Problem::new(Term::SiteFlow, Fault::Missing))?;
        let mut verdicts: Vec<Verdict> = Vec::new();
        for verdict in served.verdicts.into_iter().chain(filled.verdicts.iter().cloned()) {
            let at = verdicts.partition_point(|before| before.mark >= verdict.mark);
            verdicts.insert(at, verdict);
        }
        let loading = filled.plan.verdicts.clone();
        let worst = verdicts.iter().map(|verdict| verdict.mark).fold(Mark::Fine, Mark::max);
        let halted = loading.iter().any(|verdict| verdict.mark == Mark::Stop);
        let count = Known::typed(f64::from(vessels)).input(Term::VesselCount);
        let count = Input { amount: Amount::Count(vessels), ..count };
        Ok(Candidate {
            nominal: filled.nominal,
            vessels,
            vessel: filled.vessel.clone(),
            layers: filled.layers.clone(),
            plan: filled.plan.clone(),
            packs: filled.packs.clone(),
            packs_total: Figure::new(
                filled.packs.value * f64::from(vessels),
                Formula::PacksOfAll,
                vec![filled.packs.input(Term::Packs), count],
            ),
            media_volume: filled.bed.media_volume.clone(),
            freeboard: filled.freeboard.clone(),
            margins: verdicts.iter().filter_map(|verdict| margin(self.wanted.purpose, verdict)).collect(),
            usual,
            peak: served.peak,
            while_washing: served.while_washing,
            flow_control: filled.flow_control.clone(),
            height_needed: filled.height_needed.clone(),
            weights: filled.weights.clone(),
            mark: if halted { Mark::Stop } else { worst },
            verdicts,
            loading,
        })
    }
}

fn flow_within(term: Term, flow: &Known<VolumeRate>) -> Result<(), Problem> {
    let (low, high) = FLOW_M3_S;
    if (low..=high).contains(&flow.value.value) {
        return Ok(());
    }
    let amount = |x: f64| Amount::Flow(cubic_metres_per_second(x));
    Err(Problem::new(term, Fault::OutOfRange { value: flow.value.into(), low: amount(low), high: amount(high) }))
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

impl CriterionOf {
    /// What a verdict on it is about.
    fn term(self) -> Term {
        match self {
            CriterionOf::FlowPerArea => Term::FlowPerArea,
            CriterionOf::ContactTime => Term::ContactTime,
            CriterionOf::BedVolumes => Term::BedVolumes,
            CriterionOf::MediaDepth => Term::MediaDepth,
            CriterionOf::BackwashRate => Term::BackwashFlow,
            CriterionOf::CollectorHeight => Term::UpperCollector,
        }
    }
}

/// How far the rule that a verdict is about is met; none of what isn't about a rule of the purpose.
fn margin(purpose: Purpose, verdict: &Verdict) -> Option<Margin> {
    let Subject::Rule { quantity, section } = verdict.subject else { return None };
    let rule = purpose.criteria().find(|rule| rule.quantity.term() == quantity && rule.section == section)?;
    let (Reason::AtLeast { value, .. } | Reason::AtMost { value, .. }) = verdict.reason else { return None };
    // Longer contact and fewer bed volumes than a rule's range are no harm, as service judges them.
    let low = rule.low.filter(|_| rule.quantity != CriterionOf::BedVolumes);
    let high = rule.high.filter(|_| rule.quantity != CriterionOf::ContactTime);
    let above = low.map_or(f64::INFINITY, |low| value.si() / low.si());
    let below = high.map_or(f64::INFINITY, |high| high.si() / value.si());
    let limit = if above <= below { low } else { high }?;
    let inputs = vec![
        Input { term: quantity, amount: value, basis: verdict.basis, source: Source::Arithmetic },
        Input { term: quantity, amount: limit, basis: Basis::Catalogue, source: rule.source },
    ];
    Some(Margin {
        quantity,
        section,
        met: verdict.mark <= Mark::SetOnSite,
        ratio: Figure::new(above.min(below), Formula::RuleMargin, inputs),
    })
}
