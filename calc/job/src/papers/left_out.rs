//! Vessels that a bill leaves out, and why.

use super::vessel_name;
use crate::answers::{JobBill, LayerOutcome, VesselAnswers, vessel_answers};
use crate::id::Id;
use crate::job::Job;
use crate::sections::plan::LayerPlan;
use crate::words::{Label, Manner};

/// A vessel that isn't counted, or not wholly.
#[derive(Clone, Debug, PartialEq)]
pub struct LeftOut {
    /// Its id.
    pub vessel: Id,
    /// What it is called.
    pub name: String,
    /// Why, a sentence each.
    pub reasons: Vec<String>,
}

/// The vessels a bill leaves out, with what is missing for each.
#[must_use]
pub fn left_out(job: &Job, bill: &JobBill, manner: Manner) -> Vec<LeftOut> {
    bill.left_out
        .iter()
        .filter_map(|id| {
            let survey = job.vessel(id)?;
            let plan = job.plan_of(id);
            let answers = vessel_answers(survey, &plan);
            Some(LeftOut {
                vessel: id.clone(),
                name: vessel_name(job, id, manner),
                reasons: reasons(&answers, &plan.layers, manner),
            })
        })
        .collect()
}

fn reasons(answers: &VesselAnswers, layers: &[LayerPlan], manner: Manner) -> Vec<String> {
    let mut reasons = Vec::new();
    let about = |name: &str, text: String| manner.named(name, &text);
    let missing: Vec<&str> = answers.survey.missing.iter().map(|field| manner.field(*field)).collect();
    if !missing.is_empty() {
        reasons.push(about(manner.label(Label::NotThereYet), missing.join(", ")));
    }
    for (field, misread) in &answers.survey.misread {
        reasons.push(about(manner.field(*field), manner.misread(misread, field.usual_unit(manner.metric))));
    }
    reasons.extend(answers.problems.values().chain(answers.problem.as_ref()).map(|problem| manner.problem(problem)));
    // Where the vessel itself isn't known yet, every layer waits.
    let vessel_stands = reasons.is_empty();
    for (layer, plan) in answers.layers.iter().zip(layers) {
        let name = manner.material(&plan.material);
        let name = if name.is_empty() { manner.label(Label::Material).to_owned() } else { name };
        match &layer.outcome {
            LayerOutcome::Waits if vessel_stands => reasons.push(about(&name, manner.label(Label::Waits).to_owned())),
            LayerOutcome::Filled(_) | LayerOutcome::Waits => {}
            LayerOutcome::Unread(fault) => reasons.push(about(&name, manner.layer_fault(fault))),
            LayerOutcome::Problem(problem) => reasons.push(about(&name, manner.problem(problem))),
        }
    }
    if let Some(misread) = &answers.bucket {
        reasons.push(about(manner.label(Label::Bucket), manner.misread(misread, crate::entry::Unit::CubicFoot)));
    }
    reasons
}
