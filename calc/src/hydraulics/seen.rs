//! How what was seen of a bed puts the line where it stands, equation by equation.

use super::bed::Bed;
use super::evidence::{DrainCheck, Lines, PaperPoint};
use super::steps::{Model, OfLayer};
use crate::quantity::{
    Amount, Assumption, Basis, Formula, Input, Known, Source, Step, Term, Velocity, metres_per_second,
};
use crate::water::Water;

/// One piece of evidence that says something, with how it places the line.
#[derive(Clone, Debug, PartialEq)]
pub struct Seen {
    /// The water it was seen in.
    pub water: Water,
    /// How the line's place follows from it, in an order in which every step has what it needs.
    pub steps: Vec<OfLayer>,
}

/// How every piece of evidence places the line, points first, and last how they are joined; those that were set aside say
/// nothing. As [`super::evidence::lines`] has them.
#[must_use]
pub fn seen_steps(bed: &Bed, checks: &[DrainCheck], points: &[PaperPoint], lines: &Lines) -> (Vec<Seen>, Option<Step>) {
    let mut seen = Vec::new();
    let mut weights = Vec::new();
    for point in points {
        let Some(found) = of_point(bed, point) else { continue };
        weights.extend(found.steps.last().map(|(_, step)| step.input(Term::SeenWeight)));
        seen.push(found);
    }
    for check in checks {
        let long = check.minutes.value.value >= Assumption::DrainCheckMinutes.time().value.value;
        if check.grains || long {
            let mut found = of_check(bed, check);
            // The same bound by the same sum in another order: a few bits apart.
            if let Some((_, step)) = found.as_mut().and_then(|seen| seen.steps.last_mut())
                && let Some(bound) = [lines.low.value, lines.high.value]
                    .into_iter()
                    .find(|bound| (bound - step.figure.value.si()).abs() < 1e-9)
            {
                step.figure.value = bound.into();
            }
            seen.extend(found);
        }
    }
    if lines.used == 0 {
        return (Vec::new(), None);
    }
    let bound = |weight: f64, term: Term| {
        Known { value: weight, basis: lines.likely.basis, source: Source::OwnRule }.input(term)
    };
    let mut inputs = vec![bound(lines.low.value, Term::WeightLow), bound(lines.high.value, Term::WeightHigh)];
    let formula = if weights.is_empty() {
        Formula::LineWeightMiddle
    } else {
        let count = Amount::Count(u32::try_from(weights.len()).unwrap_or(u32::MAX));
        inputs.push(Input { term: Term::SeenCount, amount: count, basis: Basis::Typed, source: Source::Arithmetic });
        inputs.extend(weights);
        Formula::LineWeightMean
    };
    (seen, Some(Step::new(Term::LineWeight, lines.likely.value, formula, inputs)))
}

fn of_point(bed: &Bed, point: &PaperPoint) -> Option<Seen> {
    let water = Water::at(&point.temperature).ok()?;
    let own = |model: Model| -> Vec<OfLayer> {
        let steps = bed.lift_steps(&water, &point.flow_per_area, model, false);
        steps.into_iter().filter(|(layer, _)| *layer == Some(point.layer)).collect()
    };
    let expansion = Known { value: point.expansion.value, ..point.expansion }.input(Term::PointExpansion);
    let speed = (Some(point.layer), Step::given(Term::FlowPerArea, &point.flow_per_area));
    placed(vec![speed], (own(Model::WenYu), own(Model::Ergun)), expansion, Formula::LineWeightPoint, &water)
        .filter(|(_, weight)| (0.0..=1.0).contains(weight))
        .map(|(seen, _)| seen)
}

fn of_check(bed: &Bed, check: &DrainCheck) -> Option<Seen> {
    let water = Water::at(&check.temperature).ok()?;
    let speed: Known<Velocity> = Known {
        value: metres_per_second(check.flow.value.value / bed.area.value.value),
        basis: check.flow.basis.weaker(bed.area.basis),
        source: Source::Arithmetic,
    };
    let inputs = vec![check.flow.input(Term::BackwashFlow), bed.area.input(Term::CrossSection)];
    let flow = (None, Step::given(Term::BackwashFlow, &check.flow));
    let first = vec![flow, (None, Step::new(Term::FlowPerArea, speed.value, Formula::FlowPerArea, inputs))];
    let of = |model: Model| bed.lift_steps(&water, &speed, model, false);
    let room = bed.room.input(Term::RoomExpansion);
    let (seen, weight) = placed(first, (of(Model::WenYu), of(Model::Ergun)), room, Formula::LineWeightBound, &water)?;
    weight.is_finite().then_some(seen)
}

/// Where an expansion stands between both models.
fn placed(
    mut steps: Vec<OfLayer>,
    (wen_yu, ergun): (Vec<OfLayer>, Vec<OfLayer>),
    expansion: Input,
    formula: Formula,
    water: &Water,
) -> Option<(Seen, f64)> {
    let ((layer, a), (_, b)) = (wen_yu.last()?, ergun.last()?);
    let layer = *layer;
    let both = vec![a.input(Term::WenYuExpansion), b.input(Term::ErgunExpansion)];
    let (first, second) = (a.figure.value.si(), b.figure.value.si());
    let low = Step::new(Term::LowExpansion, first.min(second), Formula::LowLine, both.clone());
    let high = Step::new(Term::HighExpansion, first.max(second), Formula::HighLine, both);
    let weight = (expansion.amount.si() - first.min(second)) / (first.max(second) - first.min(second));
    let inputs = vec![expansion, low.input(Term::LowExpansion), high.input(Term::HighExpansion)];
    steps.extend(wen_yu);
    steps.extend(ergun);
    let place = Step::new(Term::LineWeight, weight, formula, inputs);
    steps.extend([(layer, low), (layer, high), (layer, place)]);
    Some((Seen { water: water.clone(), steps }, weight))
}
