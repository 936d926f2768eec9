//! How a bed's figures come about, equation by equation.

use super::bed::{Bed, BedLayer};
use super::expansion::OPEN;
use super::fluidisation::{Solid, dharmarajah_cleasby_open, ergun_open, settling, wen_yu_open};
use super::service::Rates;
use crate::fill::Role;
use crate::material::grading::GradingBy;
use crate::quantity::{
    Amount, Basis, Caution, Figure, Formula, Input, Known, Source, Step, Term, Velocity, cubic_metres, metres,
    metres_per_second,
};
use crate::water::{Fluid, Water};

/// A step, and the layer it is of, from the bottom and from zero; none of the whole bed.
pub type OfLayer = (Option<usize>, Step);

/// By which equation fractions are lifted.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Model {
    /// Wen and Yu's drag.
    WenYu,
    /// Ergun's loss taken past the lift.
    Ergun,
    /// Dharmarajah and Cleasby, from memory.
    DharmarajahCleasby,
}

impl Model {
    fn open(self, solid: &Solid, fluid: Fluid, v: f64) -> f64 {
        match self {
            Model::WenYu => wen_yu_open(solid, fluid, v),
            Model::Ergun => ergun_open(solid, fluid, v),
            Model::DharmarajahCleasby => dharmarajah_cleasby_open(solid, fluid, v),
        }
    }

    const fn formula(self) -> Formula {
        match self {
            Model::WenYu => Formula::WenYuVoidage,
            Model::Ergun => Formula::ErgunVoidage,
            Model::DharmarajahCleasby => Formula::DharmarajahCleasbyVoidage,
        }
    }

    const fn voidage(self) -> Term {
        match self {
            Model::WenYu => Term::WenYuVoidage,
            Model::Ergun => Term::ErgunVoidage,
            Model::DharmarajahCleasby => Term::MemoryVoidage,
        }
    }

    const fn expansion(self) -> Term {
        match self {
            Model::WenYu => Term::WenYuExpansion,
            Model::Ergun => Term::ErgunExpansion,
            Model::DharmarajahCleasby => Term::MemoryExpansion,
        }
    }
}

/// Fractions that are shown one by one: the finest tenth's edge, the middle, the coarsest tenth's edge.
const SHOWN: [usize; 3] = [10, 50, 90];

fn arithmetic<Q>(value: Q, basis: Basis) -> Known<Q> {
    Known { value, basis, source: Source::Arithmetic }
}

impl BedLayer {
    fn basis(&self) -> Basis {
        self.inputs().iter().map(|input| input.basis).fold(Basis::Measured, Basis::weaker)
    }

    /// Sizes of its fractions of equal mass, finest first.
    #[must_use]
    pub fn fractions(&self) -> &[f64] {
        &self.sizes
    }

    fn count(&self) -> Input {
        let count = Amount::Count(u32::try_from(self.sizes.len()).unwrap_or(u32::MAX));
        Input { term: Term::Fractions, amount: count, basis: Basis::Catalogue, source: Source::Arithmetic }
    }

    fn share(value: f64) -> Input {
        arithmetic(value, Basis::Catalogue).input(Term::Share)
    }

    /// The size that a share is finer than.
    fn size_step(&self, term: Term, share: f64) -> Step {
        let size = self.grading.size_finer_than(share);
        let (formula, mut inputs) = self.size_equation(share);
        inputs.push(BedLayer::share(share));
        Step::new(term, size, formula, inputs)
    }

    /// By which equation a size has its share, and what else goes in.
    fn size_equation(&self, share: f64) -> (Formula, Vec<Input>) {
        let (low, high) = (self.grains.low, self.grains.high);
        let mut inputs = vec![low.input(Term::GrainLow), high.input(Term::GrainHigh)];
        let effective = self.grains.effective_size;
        match self.grading.by() {
            GradingBy::LogNormal => {
                if let Some((mean, sigma)) = self.grading.log_normal() {
                    inputs.push(arithmetic(mean, self.basis()).input(Term::LogMean));
                    inputs.push(arithmetic(sigma, self.basis()).input(Term::LogDeviation));
                }
                (Formula::GradingLogNormal, inputs)
            }
            GradingBy::MeshOnly => (Formula::GradingEven, inputs),
            GradingBy::OneSize => {
                let size = effective.unwrap_or(low);
                (Formula::Given, vec![size.input(Term::GrainSize)])
            }
            GradingBy::StraightLines => {
                let (ten, sixty) = (effective.unwrap_or(low), self.six_tenths());
                let (below, above) = match share {
                    share if share <= 0.1 => ((0.0, low), (0.1, ten)),
                    share if share <= 0.6 => ((0.1, ten), (0.6, sixty)),
                    _ => ((0.6, sixty), (1.0, high)),
                };
                let at = |share: f64, term: Term| Input { term, ..BedLayer::share(share) };
                let inputs = vec![
                    at(below.0, Term::ShareBelow),
                    below.1.input(Term::SizeBelow),
                    at(above.0, Term::ShareAbove),
                    above.1.input(Term::SizeAbove),
                ];
                (Formula::GradingStraight, inputs)
            }
        }
    }

    fn six_tenths(&self) -> Known<crate::quantity::Length> {
        let ten = self.grains.effective_size.unwrap_or(self.grains.low);
        let ratio = self.grains.uniformity.unwrap_or(Known::typed(1.0));
        arithmetic(metres(ten.value.value * ratio.value), ten.basis.weaker(ratio.basis))
    }

    /// How the sizes of its fractions come about, and the means of them that are used.
    fn grading_steps(&self) -> Vec<Step> {
        let mut steps = Vec::new();
        steps.push(Step::given(Term::GrainLow, &self.grains.low));
        steps.push(Step::given(Term::GrainHigh, &self.grains.high));
        let (ten, ratio) = (self.grains.effective_size, self.grains.uniformity);
        let by = self.grading.by();
        if let (Some(ten), Some(ratio), GradingBy::LogNormal | GradingBy::StraightLines) = (ten, ratio, by) {
            let sixty = self.six_tenths();
            let inputs = vec![ten.input(Term::EffectiveSize), ratio.input(Term::Uniformity)];
            steps.push(Step::new(Term::SixTenthsSize, sixty.value, Formula::CoarseOfUniformity, inputs));
            if let Some((mean, sigma)) = self.grading.log_normal() {
                let trial = |term: Term, value: f64| Step::new(term, value, Formula::ByTrial, Vec::new());
                steps.extend([trial(Term::LogMean, mean), trial(Term::LogDeviation, sigma)]);
                for (share, size) in [(0.1, ten), (0.6, sixty)] {
                    let (formula, mut inputs) = self.size_equation(share);
                    inputs.push(size.input(Term::GrainSize));
                    steps.push(Step::new(Term::Share, share, formula, inputs));
                }
            }
        }
        steps.push(self.size_step(Term::CoarsestSize, super::backwash::COARSEST));
        steps.push(self.size_step(Term::FinestSize, super::backwash::bench::FINEST));
        let mean = |power: f64| {
            let sum: f64 =
                self.sizes.iter().map(|size| if power > 1.0 { 1.0 / (size * size) } else { 1.0 / size }).sum();
            sum / self.sizes.len() as f64
        };
        // One over metres, and over metres squared: no kind of quantity has a name for them.
        let count = vec![self.count()];
        steps.push(Step::new(Term::MeanReciprocal, mean(1.0), Formula::MeanReciprocal, count.clone()));
        steps.push(Step::new(Term::MeanReciprocalSquare, mean(2.0), Formula::MeanReciprocalSquare, count));
        steps
    }

    /// What the equations of a lifted fraction name.
    fn lifted_inputs(&self, water: &Water, v: &Known<Velocity>) -> Vec<Input> {
        let mut inputs = vec![
            self.voidage.input(Term::Voidage),
            self.sphericity.input(Term::Sphericity),
            v.input(Term::FlowPerArea),
            water.density.input(Term::WaterDensity),
            water.viscosity.input(Term::WaterViscosity),
        ];
        inputs.extend(self.grains.particle_density.map(|density| density.input(Term::ParticleDensity)));
        inputs
    }

    fn solid_of(&self, size: f64) -> Option<Solid> {
        Some(Solid {
            size,
            density: self.grains.particle_density?.value.value,
            sphericity: self.sphericity.value,
            voidage: self.voidage.value,
        })
    }

    /// Its expansion by one model; none where a fraction is no bed any more.
    fn expansion_by(&self, model: Model, fluid: Fluid, v: f64) -> Option<f64> {
        let settled = 1.0 - self.voidage.value;
        let mut sum = 0.0;
        for size in &self.sizes {
            let open = model.open(&self.solid_of(*size)?, fluid, v);
            if open >= OPEN {
                return None;
            }
            sum += settled / (1.0 - open.max(self.voidage.value));
        }
        Some(sum / self.sizes.len() as f64 - 1.0)
    }
}

impl Bed {
    /// How the sizes of every media layer's fractions come about.
    #[must_use]
    pub fn grading_steps(&self) -> Vec<OfLayer> {
        let of = |layer: &BedLayer| {
            let index = Some(layer.index);
            layer.grading_steps().into_iter().map(move |step| (index, step)).collect::<Vec<_>>()
        };
        self.layers.iter().flat_map(of).collect()
    }

    /// Speeds at which the media begin to lift in this water, with the size that decides.
    #[must_use]
    pub fn start_steps(&self, wen_yu: &[Figure<Velocity>], ergun: &[Figure<Velocity>]) -> Vec<OfLayer> {
        let mut steps = Vec::new();
        for (layer, (a, b)) in self.media_layers().zip(wen_yu.iter().zip(ergun)) {
            let index = Some(layer.index);
            steps.push((index, Step::of(Term::MinimumFluidisation, a)));
            steps.push((index, Step::of(Term::ErgunMinimum, b)));
        }
        steps
    }

    /// The fall of the finest kept grain in this water: the slowest of all media layers.
    #[must_use]
    pub fn settling_steps(&self, water: &Water) -> Vec<OfLayer> {
        let fluid = water.fluid();
        let falls = self.media_layers().filter_map(|layer| {
            let solid = layer.solid(super::backwash::bench::FINEST)?;
            Some((layer, settling(&solid, fluid)))
        });
        let slowest = falls.fold(None, |least: Option<(&BedLayer, f64)>, (layer, v)| match least {
            Some((_, slow)) if slow <= v => least,
            _ => Some((layer, v)),
        });
        let Some((layer, fall)) = slowest else { return Vec::new() };
        let size = layer.size_step(Term::FinestSize, super::backwash::bench::FINEST);
        let mut inputs = layer.lifted_inputs(water, &Known::typed(metres_per_second(0.0)));
        inputs.retain(|input| input.term != Term::FlowPerArea);
        inputs.push(size.input(Term::GrainSize));
        let ball = layer.sphericity.value >= 1.0;
        let formula = if ball { Formula::SettlingSpeedBall } else { Formula::SettlingSpeed };
        let index = Some(layer.index);
        vec![(index, Step::new(Term::SettlingSpeed, metres_per_second(fall), formula, inputs))]
    }

    /// How far the bed stands out by one model at a speed: three of its fractions one by one where `shown`, each layer's
    /// sum over all of them, and the layers together; nothing where grains leave.
    #[must_use]
    pub fn lift_steps(&self, water: &Water, v: &Known<Velocity>, model: Model, shown: bool) -> Vec<OfLayer> {
        let (fluid, speed) = (water.fluid(), v.value.value);
        let mut steps = Vec::new();
        let mut parts = Vec::new();
        let mut sum = 0.0;
        for layer in self.media_layers() {
            let Some(expansion) = layer.expansion_by(model, fluid, speed) else { return Vec::new() };
            let index = Some(layer.index);
            let inputs = layer.lifted_inputs(water, v);
            let count = layer.sizes.len();
            for at in SHOWN.into_iter().filter(|at| shown && *at <= count) {
                let Some(size) = layer.sizes.get(at - 1) else { continue };
                let Some(solid) = layer.solid_of(*size) else { continue };
                let mut inputs = inputs.clone();
                inputs.push(arithmetic(metres(*size), layer.basis()).input(Term::GrainSize));
                let open = model.open(&solid, fluid, speed);
                let step = Step::new(model.voidage(), open, model.formula(), inputs);
                steps.push((index, Step { fraction: Some(at), ..step }));
            }
            let mut inputs = inputs;
            inputs.push(layer.count());
            let step =
                Step::new(model.expansion(), expansion, Formula::LayerExpansion, inputs).taking([model.formula()]);
            sum += layer.volume.value.value * expansion;
            parts.push(layer.volume.input(Term::LayerVolume));
            parts.push(step.input(Term::Expansion));
            steps.push((index, step));
        }
        parts.push(self.media_volume.input(Term::MediaVolume));
        steps.push((None, Step::new(model.expansion(), sum / self.media, Formula::BedExpansion, parts)));
        steps
    }

    /// How the likely expansion at a speed comes about: both models, the lower, the higher, and the line between them.
    #[must_use]
    pub fn likely_steps(&self, water: &Water, v: &Known<Velocity>, weight: &Figure<f64>, shown: bool) -> Vec<OfLayer> {
        let (low, high) = self.lines(water.fluid(), v.value.value);
        let mut steps = self.lift_steps(water, v, Model::WenYu, shown);
        let ergun = self.lift_steps(water, v, Model::Ergun, shown);
        let (Some((_, first)), Some((_, second))) = (steps.last(), ergun.last()) else { return Vec::new() };
        let both = vec![first.input(Term::WenYuExpansion), second.input(Term::ErgunExpansion)];
        steps.extend(ergun);
        let low = Step::new(Term::LowExpansion, low, Formula::LowLine, both.clone());
        let high = Step::new(Term::HighExpansion, high, Formula::HighLine, both);
        let inputs =
            vec![low.input(Term::LowExpansion), high.input(Term::HighExpansion), weight.input(Term::LineWeight)];
        let likely = self.expanded(water.fluid(), v.value.value, weight.value);
        let likely = Step::new(Term::Expansion, likely, Formula::ExpansionLikely, inputs);
        steps.extend([(None, low), (None, high), (None, likely)]);
        steps
    }

    /// How the room above the media comes about, `ceiling` being the free volume below it.
    #[must_use]
    pub fn room_steps(&self, ceiling: Input) -> Vec<Step> {
        let volumes = |role: Role| -> Vec<Input> {
            let of_role = self.layers.iter().filter(|layer| layer.role == role);
            of_role.map(|layer| layer.volume.input(Term::LayerVolume)).collect()
        };
        let under = volumes(Role::Underbed);
        let value = cubic_metres(self.fixed);
        let under = if under.is_empty() {
            Step::given(Term::UnderbedVolume, &arithmetic(value, Basis::Typed))
        } else {
            Step::new(Term::UnderbedVolume, value, Formula::UnderbedVolume, under)
        };
        let media = Step::new(Term::MediaVolume, self.media_volume.value, Formula::MediaVolume, volumes(Role::Media));
        let inputs = vec![
            Input { term: Term::CeilingVolume, ..ceiling },
            under.input(Term::UnderbedVolume),
            media.input(Term::MediaVolume),
        ];
        let room = Step::new(Term::RoomExpansion, self.room.value, Formula::RoomExpansion, inputs);
        vec![under, media, room]
    }

    /// The volume below the surface of the bed when it stands out by an expansion.
    #[must_use]
    pub fn expanded_step(&self, expansion: &Figure<f64>) -> Step {
        let volume = cubic_metres(self.fixed + self.media * (1.0 + expansion.value));
        let under = arithmetic(cubic_metres(self.fixed), self.media_volume.basis).input(Term::UnderbedVolume);
        let media = self.media_volume.input(Term::MediaVolume);
        let inputs = vec![under, media, expansion.input(Term::Expansion)];
        Step::new(Term::FreeVolume, volume, Formula::ExpandedSurface, inputs)
    }

    /// What one service flow makes of the bed.
    #[must_use]
    pub fn service_steps(&self, rates: &Rates) -> Vec<OfLayer> {
        let mut steps = Vec::new();
        let whole = |step: Step| (None, step);
        if rates.flow.formula != Formula::Given {
            steps.push(whole(Step::of(Term::ServiceFlow, &rates.flow)));
        }
        steps.push(whole(Step::of(Term::FlowPerArea, &rates.flow_per_area)));
        steps.push(whole(Step::of(Term::ContactTime, &rates.contact_time)));
        steps.extend(rates.contact_time_pair.iter().map(|time| whole(Step::of(Term::ContactTime, time))));
        steps.push(whole(Step::of(Term::BedVolumes, &rates.bed_volumes)));
        for (layer, loss) in self.layers.iter().zip(&rates.layers) {
            let mut step = Step::of(Term::PressureLoss, loss);
            let means = layer.grading_steps();
            step.figure.inputs.extend(means.iter().map(|mean| mean.input(mean.term)));
            steps.push((Some(layer.index), step));
        }
        steps.push(whole(Step::of(Term::UnitLoss, &rates.loss)));
        steps
    }

    /// How far all media stand out at a flow after Dharmarajah and Cleasby: shown beside the likely line, and no verdict
    /// rests on it. None where grains leave.
    #[must_use]
    pub fn expansion_from_memory(&self, water: &Water, flow_per_area: &Known<Velocity>) -> Option<Figure<f64>> {
        let (_, step) = self.lift_steps(water, flow_per_area, Model::DharmarajahCleasby, false).pop()?;
        let Amount::Ratio(value) = step.figure.value else { return None };
        let mut inputs = self.inputs();
        inputs.push(flow_per_area.input(Term::FlowPerArea));
        inputs.push(water.density.input(Term::WaterDensity));
        inputs.push(water.viscosity.input(Term::WaterViscosity));
        Some(Figure::new(value, Formula::DharmarajahCleasbyVoidage, inputs).with(Caution::FromMemory))
    }
}
