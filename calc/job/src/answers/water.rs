//! What the water side of a vessel says in figures.

use std::sync::Arc;

use bedwright_calc::fill::weights::{Weights, weights};
use bedwright_calc::hydraulics::{
    Backwash, Bed, Lines, Service, WindowRow, backwash, lines, service, service::backwash_rules, window,
};
use bedwright_calc::order::Between as _;
use bedwright_calc::quantity::{Figure, Known, Length, Problem, Temperature, Verdict, kelvins};

use bedwright_calc::water::Water;

use super::VesselAnswers;
use super::life::{LifeAnswers, life_answers};
use crate::evidence::{Evidence, evidence_of, read_evidence};
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
    /// Where the lines stand.
    pub lines: Lines,
    /// In service.
    pub service: Option<Service>,
    /// In backwash; none where it is never washed.
    pub backwash: Option<Backwash>,
    /// Height of the surface of the bed that the judged setting lifts in the coldest water.
    pub expanded_surface: Option<Figure<Length>>,
    /// What the vessel weighs, dry and with its water.
    pub weights: Option<Weights>,
    /// What keeps some of it from being worked out.
    pub problems: Vec<Problem>,
    /// Everything that was judged, the worst first.
    pub verdicts: Vec<Verdict>,
    /// What was seen of the bed.
    pub evidence: Arc<Vec<Evidence>>,
    /// How long the bed lasts; nothing while an entry of it makes no sense.
    pub life: LifeAnswers,
}

/// Works the water side of a vessel out.
#[must_use]
pub fn water_answers(vessel: &VesselAnswers, asked: &WaterAsked) -> WaterAnswers {
    let ids: Vec<Id> = vessel.layers.iter().map(|layer| layer.id.clone()).collect();
    let layers: Vec<_> = ids.iter().cloned().zip(vessel.planned.iter()).collect();
    let reading = read_water(&asked.conditions, &vessel.id, &asked.duty, &layers, vessel.count);
    let mut answers = WaterAnswers {
        bed: None,
        lines: Lines::unknown(),
        service: None,
        backwash: None,
        expanded_surface: None,
        weights: None,
        problems: Vec::new(),
        verdicts: Vec::new(),
        evidence: asked.evidence.clone(),
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
            match service(inside, &bed, site, duty) {
                Ok(found) => answers.service = Some(found),
                Err(problem) => answers.problems.push(problem),
            }
            if duty.regime.is_backwashed() {
                let (checks, points) = read_evidence(&asked.evidence, &ids);
                match lines(&bed, &checks, &points) {
                    Ok(found) => answers.lines = found,
                    Err(problem) => answers.problems.push(problem),
                }
                match backwash(inside, &vessel.planned, &bed, site, duty, &answers.lines) {
                    Ok(found) => {
                        let setting = found.chosen.and_then(|at| found.settings.get(at));
                        let likely = setting.and_then(|setting| setting.likely_cold.as_ref());
                        answers.expanded_surface = likely.and_then(|likely| bed.expanded_surface(inside, likely));
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
    if answers.reading.is_life_whole() {
        answers.life = life_answers(vessel, &answers);
        for verdict in &answers.life.verdicts {
            let at = answers.verdicts.partition_point(|there| there.mark >= verdict.mark);
            answers.verdicts.insert(at, verdict.clone());
        }
    }
    answers
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
