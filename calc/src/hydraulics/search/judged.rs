//! What is judged of a filled vessel, and of so many of it.

use super::order::{Filled, Order};
use super::{Candidate, Margin};
use crate::hydraulics::backwash::{Bench, Setting};
use crate::hydraulics::bed::Bed;
use crate::hydraulics::duty::{CriterionOf, Duty, Purpose};
use crate::hydraulics::service::{keeps_to, service};
use crate::quantity::{
    Amount, Assumption, Basis, Fault, Figure, Formula, Input, Known, Length, Mark, Problem, Reason, Remedy, Source,
    Subject, Term, Verdict, cubic_metres_per_second, metres,
};
use crate::vessel::riser::riser_cut;
use crate::vessel::{NominalDiameter, Vessel};

impl Order<'_> {
    pub(super) fn backwash_verdict(
        &self,
        bed: &Bed,
        bench: &Bench,
        setting: Option<&Setting>,
        basis: Basis,
    ) -> Verdict {
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
            let needed = needed.map(|v| v * bed.area.value.value).filter(|flow| available > 0.0 && *flow > available);
            remedies.extend(needed.map(|flow| Remedy::MoreBackwash { flow: cubic_metres_per_second(flow).into() }));
        }
        Verdict { subject: Subject::Backwash { flow }, mark, reason, remedies, basis, source: Source::OwnRule }
    }

    /// Clear height that a vessel takes: with the riser over it, where that is straight and goes in from above.
    pub(super) fn height_needed(&self, nominal: &NominalDiameter, vessel: &Vessel) -> Result<Figure<Length>, Problem> {
        let height = Known::catalogue(nominal.usual_height, nominal.source);
        let mut inputs = vec![height.input(Term::NominalHeight)];
        let riser = vessel.measures.riser.as_ref().filter(|_| self.wanted.straight_riser);
        let Some(riser) = riser else { return Ok(Figure::new(height.value, Formula::Given, inputs)) };
        let cut = riser_cut(riser, &vessel.measures.inside_depth)?;
        inputs.push(cut.input(Term::RiserLength));
        Ok(Figure::new(metres(height.value.value + cut.value.value), Formula::HeightNeeded, inputs))
    }

    pub(super) fn clear_height(&self, needed: &Figure<Length>) -> Option<Verdict> {
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
    pub(super) fn candidate(&self, filled: &Filled, vessels: u32) -> Result<Candidate, Problem> {
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
