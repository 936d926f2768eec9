//! What a job says in figures: each vessel on its own, and the bill over all of them. Pure, and compared by value, so
//! that a page works out again only what changed.

pub mod life;
pub mod search;
pub mod supply;
pub mod water;

use std::sync::Arc;

use bedwright_calc::fill::{DepthRow, Layer, LayerFill, Plan, Role, depth_table, plan};
use bedwright_calc::hydraulics::Purpose;
use bedwright_calc::quantity::{Fault, Figure, Known, Length, Problem, Term, metres};
use bedwright_calc::supply::buying::{Bought, buy};
use bedwright_calc::supply::{Bill, BillLine, BillPart, bill};
use bedwright_calc::vessel::{Vessel, riser::riser_cut};
use litemap::LiteMap;

use crate::entry::Misread;
use crate::field::{KitField, SurveyField};
use crate::id::Id;
use crate::job::Job;
use crate::prices::price_key;
use crate::reading::{LayerFault, SurveyReading, field_of, read_bucket, read_layer, read_spent, read_survey};
use crate::sections::plan::VesselPlan;
use crate::sections::survey::VesselSurvey;

/// Everything one vessel says.
#[derive(Clone, Debug, PartialEq)]
pub struct VesselAnswers {
    /// Its id.
    pub id: Id,
    /// How many vessels it stands for.
    pub count: u32,
    /// Its survey, read.
    pub survey: SurveyReading,
    /// Why its inside can't be worked out, under the entry it comes from.
    pub problems: LiteMap<SurveyField, Problem>,
    /// A problem that belongs to no entry.
    pub problem: Option<Problem>,
    /// Its inside, where it could be worked out.
    pub vessel: Option<Arc<Vessel>>,
    /// The length its riser is cut to.
    pub riser_cut: Option<Figure<Length>>,
    /// Each layer, bottom first.
    pub layers: Vec<LayerAnswer>,
    /// Why the bucket makes no sense.
    pub bucket: Option<Misread>,
    /// Why the bucket can't be one.
    pub bucket_problem: Option<Problem>,
    /// The fill as far as it could be worked out.
    pub plan: Option<Arc<Plan>>,
    /// The layers that went into it, bottom first.
    pub planned: Arc<Vec<Layer>>,
    /// The id of the highest media that was chosen, planned or not; none where none was.
    pub media: Option<String>,
}

/// What became of a layer.
#[derive(Clone, Debug, PartialEq)]
pub struct LayerAnswer {
    /// Its id.
    pub id: Id,
    /// What came of it.
    pub outcome: LayerOutcome,
}

/// How far a layer got.
#[derive(Clone, Debug, PartialEq)]
pub enum LayerOutcome {
    /// Worked out.
    Filled(Box<LayerFill>),
    /// Its entries make no sense, or lack something.
    Unread(LayerFault),
    /// It can't be done.
    Problem(Problem),
    /// It waits for the vessel, or for a layer below.
    Waits,
}

impl LayerAnswer {
    /// What came of it, where something did.
    #[must_use]
    pub fn fill(&self) -> Option<&LayerFill> {
        match &self.outcome {
            LayerOutcome::Filled(fill) => Some(fill),
            _ => None,
        }
    }
}

/// Works one vessel out.
#[must_use]
pub fn vessel_answers(survey: &VesselSurvey, layers: &VesselPlan) -> VesselAnswers {
    let mut reading = read_survey(survey);
    let mut problems = LiteMap::new();
    let mut problem = None;
    let vessel = reading.measures.take().and_then(|measures| match Vessel::new(measures) {
        Ok(vessel) => Some(Arc::new(vessel)),
        Err(found) => {
            match field_of(found.term, survey) {
                Some(field) => {
                    problems.insert(field, found);
                }
                None => problem = Some(found),
            }
            None
        }
    });
    let cut = vessel.as_ref().and_then(|vessel| {
        let riser = vessel.measures.riser.as_ref()?;
        match riser_cut(riser, &vessel.measures.inside_depth) {
            Ok(cut) => Some(cut),
            Err(found) => {
                if let Some(field) = field_of(found.term, survey) {
                    problems.insert(field, found);
                }
                None
            }
        }
    });
    let bucket = read_bucket(layers.bucket.as_ref());
    let mut planned = Vec::new();
    let mut outcomes: Vec<LayerOutcome> = Vec::new();
    let bucket_problem = bucket
        .as_ref()
        .ok()
        .filter(|bucket| bucket.value.value <= 0.0)
        .map(|bucket| Problem::new(Term::Bucket, Fault::NotPositive { value: bucket.value.into() }));
    let mut stuck = vessel.is_none() || bucket.is_err() || bucket_problem.is_some();
    for layer in &layers.layers {
        match read_layer(layer) {
            Ok(_) if stuck => outcomes.push(LayerOutcome::Waits),
            Ok(read) => {
                planned.push(read);
                outcomes.push(LayerOutcome::Waits);
            }
            Err(fault) => {
                stuck = true;
                outcomes.push(LayerOutcome::Unread(fault));
            }
        }
    }
    let mut filled = match (&vessel, &bucket) {
        (Some(vessel), Ok(bucket)) => Some(plan(vessel, &planned, bucket)),
        _ => None,
    };
    if let Some(filled) = &mut filled
        && planned.len() < layers.layers.len()
    {
        // What was planned is only the layers below one that can't be read: no answer for the whole.
        let waits = |term| Problem::new(term, Fault::WaitsFor { other: Term::LayerVolume });
        filled.freeboard = Err(waits(Term::Freeboard));
        filled.dry_weight = Err(waits(Term::LayerVolume));
    }
    if let Some(filled) = &filled {
        for (outcome, answer) in outcomes.iter_mut().zip(&filled.layers) {
            *outcome = match answer {
                Ok(fill) => LayerOutcome::Filled(Box::new(fill.clone())),
                Err(Problem { fault: Fault::WaitsFor { .. }, .. }) => LayerOutcome::Waits,
                Err(found) => LayerOutcome::Problem(*found),
            };
        }
    }
    VesselAnswers {
        id: survey.id.clone(),
        count: survey.count(),
        survey: reading,
        problems,
        problem,
        vessel,
        riser_cut: cut,
        layers: layers
            .layers
            .iter()
            .zip(outcomes)
            .map(|(layer, outcome)| LayerAnswer { id: layer.id.clone(), outcome })
            .collect(),
        bucket: bucket.err(),
        bucket_problem,
        plan: filled.map(Arc::new),
        planned: Arc::new(planned),
        media: layers
            .layers
            .iter()
            .rfind(|layer| layer.role == Role::Media && !layer.material.is_empty())
            .map(|layer| layer.material.clone()),
    }
}

/// The depth table of a vessel, where its inside is known: every whole inch, or every 25 mm.
#[must_use]
pub fn depth_rows(answers: &VesselAnswers, metric: bool) -> Vec<DepthRow> {
    let step = metres(if metric { 0.025 } else { 0.0254 });
    answers.vessel.as_ref().and_then(|vessel| depth_table(vessel, &Known::typed(step)).ok()).unwrap_or_default()
}

/// A bill with the vessels it was made from.
#[derive(Clone, Debug, PartialEq)]
pub struct JobBill {
    /// The vessels it counts, in the order of its indices.
    pub vessels: Vec<Id>,
    /// The bill.
    pub bill: Bill,
    /// Which packs each material is bought in, and why.
    pub bought: Vec<Bought>,
    /// Vessels that are left out because their inside or a layer isn't known.
    pub left_out: Vec<Id>,
    /// Lines of the whole job that a person left out, with the reason.
    pub removed: Vec<(BillLine, String)>,
    /// What parts are counted by can't be read: which entry, and why. Nothing is counted by it then.
    pub kit: Option<(KitField, Misread)>,
}

/// The bill of a job from what its vessels say, and from what packs cost where the job carries that.
#[must_use]
pub fn job_bill(job: &Job, answers: &[Arc<VesselAnswers>]) -> JobBill {
    let mut ids = Vec::new();
    let mut left_out = Vec::new();
    let mut parts = Vec::new();
    for answer in answers {
        let complete = answer.layers.iter().all(|layer| layer.fill().is_some());
        if !complete || answer.vessel.is_none() {
            left_out.push(answer.id.clone());
        }
        if let (true, Some(vessel), Some(filled)) = (complete, &answer.vessel, &answer.plan) {
            ids.push(answer.id.clone());
            let duty = job.site.body.duty_of(&answer.id);
            let top = answer.planned.iter().rev().find(|layer| layer.role == Role::Media);
            let usual = || top.map_or(Purpose::Other, |layer| Purpose::usual_of(&layer.material.id));
            parts.push(BillPart {
                tags: answer.count,
                vessel,
                layers: &answer.planned,
                plan: filled,
                purpose: duty.purpose.unwrap_or_else(usual),
                regime: duty.regime,
            });
        }
    }
    let spent = read_spent(&job.kit.body);
    let mut bill = bill(job.head.body.kind, spent.as_ref().ok(), &parts);
    let bought = buy(&mut bill, &parts, &supply::ways(job, &parts));
    let removed = remove(job, &mut bill);
    JobBill { vessels: ids, bill, bought, left_out, removed, kit: spent.err() }
}

/// Takes the lines a person left out away from a bill; those of the whole job, with the reasons.
fn remove(job: &Job, bill: &mut Bill) -> Vec<(BillLine, String)> {
    let left_out = &job.kit.body.left_out;
    if left_out.is_empty() {
        return Vec::new();
    }
    for vessel in &mut bill.vessels {
        vessel.lines.retain(|line| !left_out.contains_key(&price_key(&line.item)));
    }
    let mut removed = Vec::new();
    let pooled = std::mem::take(&mut bill.pooled);
    for line in pooled {
        match left_out.get(&price_key(&line.item)) {
            Some(reason) => removed.push((line, reason.clone())),
            None => bill.pooled.push(line),
        }
    }
    removed
}

/// Every answer of a job at once: what a script or a paper needs.
#[must_use]
pub fn job_answers(job: &Job) -> (Vec<Arc<VesselAnswers>>, JobBill) {
    let answers: Vec<Arc<VesselAnswers>> = job
        .survey
        .body
        .vessels
        .iter()
        .map(|vessel| Arc::new(vessel_answers(vessel, &job.plan_of(&vessel.id))))
        .collect();
    let bill = job_bill(job, &answers);
    (answers, bill)
}
