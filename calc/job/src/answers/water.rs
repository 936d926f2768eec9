//! What the water side of a vessel says in figures.

use std::sync::Arc;

use bedwright_calc::fill::weights::{Weights, weights};
use bedwright_calc::hydraulics::{
    Backwash, Bed, CleanDrop, Lines, Packing, Service, WindowRow, backwash, lines, packing, service,
    service::backwash_rules, window,
};
use bedwright_calc::life::DropReading;
use bedwright_calc::order::Between as _;
use bedwright_calc::quantity::{Figure, Known, Length, Pressure, Problem, Temperature, Verdict, kelvins};

use bedwright_calc::water::Water;

use super::VesselAnswers;
use super::life::{Expected, LifeAnswers, life_answers};
use crate::care::run::drops_of_vessel;
use crate::edit::WaterOf;
use crate::evidence::{Evidence, EvidenceRead, evidence_of, read_evidence};
use crate::field::WaterField;
use crate::id::Id;
use crate::job::Job;
use crate::reading::site::{WaterReading, read_water};
use crate::sections::site::{SiteConditions, VesselDuty};

/// What the water side of a vessel is worked out from, besides its fill. Shared, and compared by value.
#[derive(Clone, Debug, PartialEq)]
pub struct WaterAsked {
    /// What the site gives.
    pub conditions: Arc<SiteConditions>,
    /// What the vessel is asked to do.
    pub duty: Arc<VesselDuty>,
    /// What was seen of its bed.
    pub evidence: Arc<Vec<Evidence>>,
    /// Pressures it was seen to lose after washes.
    pub drops: Arc<Vec<DropReading>>,
}

impl WaterAsked {
    /// That of a vessel of a job. The site's conditions come without the duties of other vessels, so that a change to
    /// one leaves the others as they are.
    #[must_use]
    pub fn of(job: &Job, vessel: &Id) -> WaterAsked {
        let site = &job.site.body;
        let conditions =
            SiteConditions { source: site.source, entries: site.entries.clone(), ..SiteConditions::default() };
        WaterAsked {
            conditions: Arc::new(conditions),
            duty: site.duty_of(vessel),
            evidence: Arc::new(evidence_of(job, vessel)),
            drops: Arc::new(drops_of_vessel(job, vessel)),
        }
    }
}

/// Everything the water side of one vessel says.
#[derive(Clone, Debug, PartialEq)]
pub struct WaterAnswers {
    /// Its entries, read.
    pub reading: WaterReading,
    /// The bed as water sees it, where it could be worked out.
    pub bed: Option<Arc<Bed>>,
    /// How closely the bed lies by the clean pressure drops that were read; none where none was.
    pub packing: Option<PackingAnswer>,
    /// Where the lines stand.
    pub lines: Lines,
    /// In service.
    pub service: Option<Service>,
    /// In backwash; none where it is never washed.
    pub backwash: Option<Backwash>,
    /// Height of the surface of the bed that the judged setting lifts in the coldest water.
    pub expanded_surface: Option<Figure<Length>>,
    /// The same in the warmest.
    pub expanded_surface_warm: Option<Figure<Length>>,
    /// What the vessel weighs, dry and with its water.
    pub weights: Option<Weights>,
    /// What keeps some of it from being worked out.
    pub problems: Vec<Problem>,
    /// Everything that was judged, the worst first.
    pub verdicts: Vec<Verdict>,
    /// What was seen of the bed.
    pub evidence: Arc<Vec<Evidence>>,
    /// Pressures it was seen to lose after washes.
    pub drops: Arc<Vec<DropReading>>,
    /// How long the bed lasts; nothing while an entry of it makes no sense.
    pub life: LifeAnswers,
}

/// What clean pressure drops say of a bed.
#[derive(Clone, Debug, PartialEq)]
pub struct PackingAnswer {
    /// Settled voidage of each media layer by the readings, with its place in the plan.
    pub voidages: Vec<(usize, Figure<f64>)>,
    /// How many readings it rests on.
    pub used: usize,
    /// Readings that say nothing, by their records' ids, and why.
    pub refused: Vec<(Id, Problem)>,
}

impl PackingAnswer {
    /// Of what was read, and the bed as it lies by that.
    fn of(bed: Bed, drops: Vec<(Id, CleanDrop)>) -> (Option<PackingAnswer>, Bed) {
        if drops.is_empty() {
            return (None, bed);
        }
        let (ids, drops): (Vec<Id>, Vec<CleanDrop>) = drops.into_iter().unzip();
        let found = packing(&bed, &drops);
        let used = found.used();
        let Packing { bed, voidages, refused } = found;
        let refused = ids.into_iter().zip(refused).filter_map(|(id, problem)| Some((id, problem?))).collect();
        (Some(PackingAnswer { voidages, used, refused }), bed)
    }
}

/// Works the water side of a vessel out.
#[must_use]
pub fn water_answers(vessel: &VesselAnswers, asked: &WaterAsked) -> WaterAnswers {
    worked_out(vessel, asked, true)
}

/// How long a vessel's bed lasts by its water, without what it takes to say how it is washed; nothing where nobody said how
/// much water goes through.
#[must_use]
pub fn bed_expected(job: &Job, vessel: &VesselAnswers) -> Option<Expected> {
    job.site.body.entries.get(WaterField::DailyUse)?;
    worked_out(vessel, &WaterAsked::of(job, &vessel.id), false).life.expected
}

/// The pressure a vessel's clean bed loses at the usual flow in the coldest water; nothing where nobody said how much flows,
/// or the fill isn't known.
#[must_use]
pub fn clean_loss(job: &Job, vessel: &VesselAnswers) -> Option<Figure<Pressure>> {
    let asked = WaterAsked::of(job, &vessel.id);
    asked.duty.entries.get(WaterField::ServiceFlow)?;
    Some(worked_out(vessel, &asked, false).service?.usual?.loss)
}

fn worked_out(vessel: &VesselAnswers, asked: &WaterAsked, washed: bool) -> WaterAnswers {
    let ids: Vec<Id> = vessel.layers.iter().map(|layer| layer.id.clone()).collect();
    let layers: Vec<_> = ids.iter().cloned().zip(vessel.planned.iter()).collect();
    let reading =
        read_water(&asked.conditions, &vessel.id, &asked.duty, &layers, vessel.media.as_deref(), vessel.count);
    let mut answers = WaterAnswers {
        bed: None,
        packing: None,
        lines: Lines::unknown(),
        service: None,
        backwash: None,
        expanded_surface: None,
        expanded_surface_warm: None,
        weights: None,
        problems: Vec::new(),
        verdicts: Vec::new(),
        evidence: asked.evidence.clone(),
        drops: asked.drops.clone(),
        life: LifeAnswers::default(),
        reading,
    };
    let (Some(inside), Some(plan)) = (&vessel.vessel, &vessel.plan) else { return answers };
    let whole = vessel.planned.len() == vessel.layers.len() && !vessel.planned.is_empty();
    if !whole || !answers.reading.is_whole() || plan.layers.iter().any(Result::is_err) {
        return answers;
    }
    let reading = &answers.reading;
    let (site, duty) = (&reading.site, &reading.duty);
    if let Ok(water) = Water::at(&site.temperature_low) {
        let (empty, foot) = (duty.empty_mass.as_ref(), duty.foot_diameter.as_ref());
        answers.weights = Some(weights(inside, &vessel.planned, plan, empty, foot, &water));
    }
    match Bed::new(inside, &vessel.planned, plan, &reading.grains, duty.air_head.as_ref()) {
        Err(problem) => answers.problems.push(problem),
        Ok(bed) => {
            let EvidenceRead { checks, points, drops } = read_evidence(&asked.evidence, &ids);
            let (found, bed) = PackingAnswer::of(bed, drops);
            answers.packing = found;
            match service(inside, &bed, site, duty) {
                Ok(found) => answers.service = Some(found),
                Err(problem) => answers.problems.push(problem),
            }
            if washed && duty.regime.is_backwashed() {
                match lines(&bed, &checks, &points) {
                    Ok(found) => answers.lines = found,
                    Err(problem) => answers.problems.push(problem),
                }
                match backwash(inside, &vessel.planned, &bed, site, duty, &answers.lines) {
                    Ok(found) => {
                        let setting = found.chosen.and_then(|at| found.settings.get(at));
                        let surface = |likely: Option<&Figure<f64>>| bed.expanded_surface(inside, likely?);
                        answers.expanded_surface = surface(setting.and_then(|setting| setting.likely_cold.as_ref()));
                        answers.expanded_surface_warm =
                            surface(setting.and_then(|setting| setting.likely_warm.as_ref()));
                        answers.backwash = Some(found);
                    }
                    Err(problem) => {
                        if !answers.problems.contains(&problem) {
                            answers.problems.push(problem);
                        }
                    }
                }
            }
            answers.bed = Some(Arc::new(bed));
        }
    }
    let mut verdicts: Vec<Verdict> = Vec::new();
    let mut judge = |verdict: &Verdict| {
        let at = verdicts.partition_point(|there| there.mark >= verdict.mark);
        verdicts.insert(at, verdict.clone());
    };
    if let Some(washed) = &answers.backwash {
        washed.verdicts.iter().for_each(&mut judge);
        if let Some(setting) = washed.chosen.and_then(|at| washed.settings.get(at)) {
            backwash_rules(duty, &setting.flow_per_area).iter().for_each(&mut judge);
        }
    }
    if let Some(served) = &answers.service {
        served.verdicts.iter().for_each(&mut judge);
    }
    answers.verdicts = verdicts;
    if let Some(packing) = &answers.packing {
        lies_as_read(&mut answers.reading, &vessel.id, &ids, &packing.voidages);
    }
    if answers.reading.is_life_whole() {
        answers.life = life_answers(vessel, &answers);
        asked.duty.grounds.trim().clone_into(&mut answers.life.grounds);
        for verdict in &answers.life.verdicts {
            let at = answers.verdicts.partition_point(|there| there.mark >= verdict.mark);
            answers.verdicts.insert(at, verdict.clone());
        }
    }
    answers
}

/// What stands in the empty entry of a layer's voidage is what its readings say.
fn lies_as_read(reading: &mut WaterReading, vessel: &Id, ids: &[Id], voidages: &[(usize, Figure<f64>)]) {
    for (place, voidage) in voidages {
        let Some(layer) = ids.get(*place) else { continue };
        let of = WaterOf::Layer(vessel.clone(), layer.clone());
        let is_it = |at: &WaterOf, field: WaterField| *at == of && field == WaterField::Voidage;
        reading.assumed.retain(|(at, field, _)| !is_it(at, *field));
        if !reading.understood.iter().any(|(at, field, _)| is_it(at, *field)) {
            reading.assumed.push((of, WaterField::Voidage, voidage.value));
        }
    }
}

/// Temperatures of a window, both ends included.
pub const WINDOW_ROWS: usize = 13;
/// A window is at least this wide, in kelvins, so that a well's has a shape.
const LEAST_WIDTH: f64 = 10.0;

/// The backwash window of a vessel over its site's temperatures; empty where there is none.
#[must_use]
pub fn window_rows(answers: &WaterAnswers) -> Vec<WindowRow> {
    let (Some(bed), Some(_)) = (&answers.bed, &answers.backwash) else { return Vec::new() };
    let site = &answers.reading.site;
    let (low, high) = (site.temperature_low.value.value, site.temperature_high.value.value);
    let more = ((LEAST_WIDTH - (high - low)) / 2.0).max(0.0);
    let end = |kelvin: f64| -> Known<Temperature> { Known::typed(kelvins(kelvin.between(273.15, 333.15))) };
    let least = &answers.reading.duty.minimum_expansion;
    window(bed, &answers.lines, least, &end(low - more), &end(high + more), WINDOW_ROWS).unwrap_or_default()
}
