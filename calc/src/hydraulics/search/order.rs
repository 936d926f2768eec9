//! What is looked for, put so that every size can be tried: the vessel of a size, and how far it is filled.

use super::{Wanted, sound};
use crate::fill::{Freeboard, Layer, Plan, Role, Target, Weights, plan, weights};
use crate::hydraulics::backwash::{
    Bench, Setting, Stood, basis_of, best, carry_over, ends_of, flows_to_judge, most_packs, setting,
};
use crate::hydraulics::bed::{Bed, Graded};
use crate::hydraulics::duty::{Arrangement, Duty, Site};
use crate::hydraulics::evidence::Lines;
use crate::hydraulics::service::{backwash_rate_met, backwash_rules};
use crate::quantity::{
    Amount, Assumption, Basis, Fault, Figure, Formula, Known, Length, Mark, Problem, Source, Term, Verdict, Volume,
    VolumeRate, cubic_metres, cubic_metres_per_second, metres, metres_per_second, problem::positive,
};
use crate::vessel::nominal::inside_depth_nominal;
use crate::vessel::{BottomCollector, DiameterBy, Measures, NominalDiameter, Opening, Riser, Vessel};
use crate::water::Water;

/// What is the same for every size.
pub(super) struct Order<'a> {
    pub(super) wanted: &'a Wanted,
    pub(super) site: Site,
    pub(super) duty: Duty,
    pub(super) lines: Lines,
    cold: Water,
    pub(super) warm: Water,
    media: Graded,
    underbed: Option<Graded>,
    /// What a pack of media fills, m³.
    pack: f64,
}

/// One vessel of a size with its bed and its backwash: the same however many there are.
pub(super) struct Filled {
    pub(super) nominal: &'static NominalDiameter,
    pub(super) vessel: Vessel,
    pub(super) layers: Vec<Layer>,
    pub(super) plan: Plan,
    pub(super) freeboard: Freeboard,
    pub(super) bed: Bed,
    pub(super) packs: Figure<f64>,
    pub(super) flow_control: Option<Setting>,
    pub(super) height_needed: Figure<Length>,
    pub(super) verdicts: Vec<Verdict>,
    pub(super) weights: Weights,
}

impl<'a> Order<'a> {
    pub(super) fn new(wanted: &'a Wanted) -> Result<Order<'a>, Problem> {
        flow_within(Term::SiteFlow, &wanted.service_flow)?;
        if let Some(peak) = &wanted.peak_flow {
            flow_within(Term::PeakFlow, peak)?;
            if peak.value < wanted.service_flow.value {
                let limit = wanted.service_flow.value.into();
                let fault = Fault::NotAbove { value: peak.value.into(), other: Term::SiteFlow, limit };
                return Err(Problem::new(Term::PeakFlow, fault));
            }
        }
        if let Some(own) = &wanted.flow_control {
            flow_within(Term::FlowControl, own)?;
        }
        if let (Some(own), Some(most)) = (&wanted.flow_control, &wanted.backwash_available)
            && own.value > most.value
        {
            let limit = most.value.into();
            let fault = Fault::NotBelow { value: own.value.into(), other: Term::BackwashAvailable, limit };
            return Err(Problem::new(Term::FlowControl, fault));
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
            flow_control: wanted.flow_control,
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
    pub(super) fn counts(&self) -> std::ops::RangeInclusive<u32> {
        match self.wanted.arrangement {
            Arrangement::Single => 1..=1,
            Arrangement::Parallel => 1..=MOST_VESSELS,
            Arrangement::TwinAlternating | Arrangement::LeadLag => 2..=2,
        }
    }

    /// A vessel of a nominal size, nothing measured.
    pub(super) fn vessel(&self, nominal: &NominalDiameter) -> Result<Vessel, Problem> {
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
        let surface = Known::assumed(metres(underbed_surface(vessel)), Source::OwnRule);
        let mut layers = Vec::new();
        layers.extend(self.wanted.underbed.as_ref().map(|stuff| stuff.layer(Role::Underbed, Target::Depth(surface))));
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

    /// Fills a vessel as far as its backwash allows; refused where not even one pack fits.
    pub(super) fn fill(&self, nominal: &'static NominalDiameter, vessel: Vessel) -> Result<Filled, Problem> {
        let cavity = &vessel.cavity;
        let below = self.underbed.as_ref().map_or(0.0, |_| cavity.free_below(underbed_surface(&vessel)));
        let free = (cavity.free_below(vessel.ceiling().value) - below).max(0.0);
        if self.pack > free {
            let fault = Fault::DoesNotFit { needs: cubic_metres(self.pack).into(), room: cubic_metres(free).into() };
            return Err(Problem::new(Term::PackVolume, fault));
        }
        let (_, _, bed) = self.pour(&vessel, 1)?;
        let bench = self.bench(&vessel, &bed)?;
        let ruled = |stood: &Stood| {
            backwash_rate_met(&self.duty, metres_per_second(stood.v)) && bench.carries(stood.v) == Some(Mark::Fine)
        };
        let serves = |stood: &Stood| ruled(stood) && bench.judge(stood).mark <= Mark::SetOnSite;
        let (flows, stood) = flows_to_judge(&bench, &self.site, &self.duty, serves);
        let by_rule: Vec<Stood> = stood.iter().filter(|stood| ruled(stood)).cloned().collect();
        let layers = self.layers(&vessel, 1);
        let served = most_packs(&layers, &bench, &by_rule).or_else(|| most_packs(&layers, &bench, &stood));
        // Where no flow control serves, as much as leaves room for the least expansion.
        let minimum = self.wanted.minimum_expansion.value;
        let packs = served.unwrap_or(((free / self.pack / (1.0 + minimum)) as u32).max(1));

        let (layers, filled, bed) = self.pour(&vessel, packs)?;
        let freeboard = filled.freeboard.clone()?;
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
        Ok(Filled {
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
        })
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
}

/// Most vessels side by side that are tried.
const MOST_VESSELS: u32 = 8;

/// What the flow of a site can be: far beyond anything that vessels of these sizes serve, near enough to reckon with.
const FLOW_M3_S: (f64, f64) = (1e-8, 10.0);

fn flow_within(term: Term, flow: &Known<VolumeRate>) -> Result<(), Problem> {
    let (low, high) = FLOW_M3_S;
    if (low..=high).contains(&flow.value.value) {
        return Ok(());
    }
    let amount = |x: f64| Amount::Flow(cubic_metres_per_second(x));
    Err(Problem::new(term, Fault::OutOfRange { value: flow.value.into(), low: amount(low), high: amount(high) }))
}

/// Nobody levels gravel closer than to a quarter of an inch.
const LEVEL_M: f64 = 0.00635;

/// Height of the underbed's surface: the lower tangent line, up to the next quarter of an inch.
fn underbed_surface(vessel: &Vessel) -> f64 {
    (vessel.cavity.bottom_tangent().value / LEVEL_M - 1e-9).ceil() * LEVEL_M
}
