//! The free space in steps that a pocket calculator can follow: heads, straight side, and what stands on the axis.
//!
//! From one rung to the next the same circle stands on the axis, so that between them a volume is what the rung has, and
//! what the empty shell has more than there, less the circle times the height above it.

use super::Stretch;
use crate::quantity::{
    Amount, Area, Assumption, Basis, Formula, Input, Known, Length, Source, Step, Term, cubic_metres, metres,
    square_metres,
};
use crate::vessel::head::{Dome, Head};
use crate::vessel::{BottomCollector, DiameterBy, Vessel};

/// A height from which on something else stands on the axis.
#[derive(Clone, Debug, PartialEq)]
pub struct Rung {
    /// How its height, the shell's and the free volume below it, and the section above it come about.
    pub steps: Vec<Step>,
    height: f64,
    shell: f64,
    free: f64,
    solid: f64,
    blocked: bool,
}

/// A vessel's inside, as steps.
#[derive(Clone, Debug, PartialEq)]
pub struct Rungs {
    /// Both heads, the straight side and the crown.
    pub shell: Vec<Step>,
    /// From the lowest inside point up.
    pub rungs: Vec<Rung>,
    bottom: Shape,
    top: Shape,
    basis: Basis,
}

/// A head with what its equations name.
#[derive(Clone, Debug, PartialEq)]
struct Shape {
    head: Head,
    dome: Dome,
    steps: Vec<Step>,
}

impl Shape {
    fn new(head: Head, dome: Dome, diameter: Input) -> Shape {
        let mut steps = Vec::new();
        let mut inputs = vec![diameter];
        let formulas = match head {
            Head::Flat => None,
            Head::Ellipsoidal => Some((Formula::HeadDepthEllipsoidal, Formula::HeadVolumeEllipsoid)),
            Head::Hemispherical => Some((Formula::HeadDepthHemispherical, Formula::HeadVolumeEllipsoid)),
            Head::Conical { depth } => {
                steps.push(Step::given(Term::HeadDepth, &depth));
                Some((Formula::Given, Formula::HeadVolumeCone))
            }
            Head::AsmeFd | Head::Din28011 | Head::Din28013 => {
                Some((Formula::HeadDepthTorispherical, Formula::HeadVolumeTorispherical))
            }
        };
        if let (Some((crown, knuckle, joint)), Some((f, k))) = (dome.torispherical(), head.proportions()) {
            let share = |value: f64| Known::catalogue(value, head.source());
            let f = Step::given(Term::CrownShare, &share(f));
            let k = Step::given(Term::KnuckleShare, &share(k));
            let of = |term: Term, value: f64, formula: Formula, inputs: Vec<Input>| {
                Step::new(term, metres(value), formula, inputs)
            };
            let with_share = |share: &Step, term: Term| vec![share.input(term), diameter];
            let c = of(Term::CrownRadius, crown, Formula::CrownRadius, with_share(&f, Term::CrownShare));
            let r = of(Term::KnuckleRadius, knuckle, Formula::KnuckleRadius, with_share(&k, Term::KnuckleShare));
            inputs.extend([c.input(Term::CrownRadius), r.input(Term::KnuckleRadius)]);
            let j = of(Term::KnuckleJoint, joint, Formula::KnuckleJoint, inputs.clone());
            inputs.push(j.input(Term::KnuckleJoint));
            steps.extend([f, k, c, r, j]);
        }
        if let Some((depth, volume)) = formulas {
            if depth != Formula::Given {
                steps.push(Step::new(Term::HeadDepth, metres(dome.depth), depth, inputs.clone()));
            }
            inputs.extend(steps.last().map(|depth| depth.input(Term::HeadDepth)));
            let value = cubic_metres(dome.volume_below(dome.depth));
            steps.push(Step::new(Term::HeadVolume, value, volume, inputs));
        }
        Shape { head, dome, steps }
    }

    /// Everything its equations name: depth, volume, crown, knuckle, joint.
    fn inputs(&self) -> impl Iterator<Item = Input> {
        self.steps.iter().map(|step| step.input(step.term))
    }
}

/// An equation, those it takes up, and what goes in.
type Equation = (Formula, Vec<Formula>, Vec<Input>);

impl Vessel {
    /// Its inside in steps.
    #[must_use]
    pub fn rungs(&self) -> Rungs {
        let profile = &self.cavity.profile;
        let diameter = self.inside_diameter.input(Term::InsideDiameter);
        let bottom = Shape::new(self.measures.bottom_head, profile.bottom, diameter);
        let top = Shape::new(self.measures.top_head, profile.top, diameter);
        let basis = self.inside_diameter.basis.weaker(self.measures.inside_depth.basis);
        let mut rungs = Rungs { shell: Vec::new(), rungs: Vec::new(), bottom, top, basis };
        rungs.shell = rungs.of_shell(self);
        let stretches = &self.cavity.stretches;
        let mut last: Option<&Stretch> = None;
        for stretch in stretches {
            let same = last.is_some_and(|last| {
                last.blocked == stretch.blocked && (stretch.blocked || last.solid == stretch.solid)
            });
            last = Some(stretch);
            if !same {
                let rung = rungs.rung(self, stretch);
                rungs.rungs.push(rung);
            }
        }
        rungs
    }
}

impl Rungs {
    fn known<Q>(&self, value: Q) -> Known<Q> {
        Known { value, basis: self.basis, source: Source::Arithmetic }
    }

    fn length(&self, term: Term, value: f64) -> Input {
        self.known(metres(value)).input(term)
    }

    fn volume(&self, term: Term, value: f64) -> Input {
        self.known(cubic_metres(value)).input(term)
    }

    fn of_shell(&self, vessel: &Vessel) -> Vec<Step> {
        let cavity = &vessel.cavity;
        let mut steps: Vec<Step> = self.bottom.steps.clone();
        steps.extend(self.top.steps.iter().cloned());
        let depth = vessel.measures.inside_depth.input(Term::InsideDepth);
        let neck = vessel.measures.neck_height.input(Term::NeckHeight);
        let heads = [
            self.length(Term::BottomHeadDepth, self.bottom.dome.depth),
            self.length(Term::TopHeadDepth, self.top.dome.depth),
        ];
        steps.push(Step::new(
            Term::StraightSide,
            cavity.straight_side(),
            Formula::StraightSide,
            [depth, neck].into_iter().chain(heads).collect(),
        ));
        steps.push(Step::new(Term::CrownHeight, cavity.crown(), Formula::CrownHeight, vec![depth, neck]));
        let under = vec![depth, neck, self.length(Term::TopHeadDepth, self.top.dome.depth)];
        let tangent = cavity.top_tangent();
        steps.push(Step::new(Term::TangentHeight, tangent, Formula::TangentHeight, under));
        steps.push(self.shell_below(vessel, &self.known(tangent), Term::ShellAtTangent));
        if self.top.dome.depth > 0.0 {
            steps.push(self.shell_below(vessel, &self.known(cavity.crown()), Term::ShellAtCrown));
        }
        steps
    }

    /// How the volume of the empty shell below a height comes about.
    fn shell_at(&self, vessel: &Vessel, height: f64) -> Equation {
        let cavity = &vessel.cavity;
        let profile = &cavity.profile;
        let diameter = vessel.inside_diameter.input(Term::InsideDiameter);
        let (tangent, crown) = (profile.top_tangent(), profile.crown());
        let mut inputs = vec![diameter];
        if height <= profile.bottom.depth && profile.bottom.depth > 0.0 {
            let in_cap = profile.bottom.torispherical().is_some_and(|(_, _, joint)| height <= joint);
            inputs.extend(self.bottom.inputs());
            let formula = match self.bottom.head {
                Head::Conical { .. } => Formula::ShellCone,
                Head::AsmeFd | Head::Din28011 | Head::Din28013 if in_cap => Formula::ShellCap,
                Head::AsmeFd | Head::Din28011 | Head::Din28013 => Formula::ShellKnuckle,
                Head::Flat | Head::Ellipsoidal | Head::Hemispherical => Formula::ShellEllipsoid,
            };
            return (formula, Vec::new(), inputs);
        }
        if height <= tangent {
            inputs.extend(self.bottom.inputs());
            let flat = profile.bottom.depth <= 0.0;
            return (if flat { Formula::ShellFlat } else { Formula::ShellStraight }, Vec::new(), inputs);
        }
        let at_tangent = self.volume(Term::ShellAtTangent, profile.volume_below(tangent));
        inputs.push(self.length(Term::CrownHeight, crown));
        if height < crown {
            let in_cap = profile.top.torispherical().is_some_and(|(_, _, joint)| crown - height <= joint);
            inputs.extend(self.top.inputs());
            inputs.push(at_tangent);
            let above = match self.top.head {
                Head::AsmeFd | Head::Din28011 | Head::Din28013 if in_cap => Formula::AboveCap,
                Head::AsmeFd | Head::Din28011 | Head::Din28013 => Formula::AboveKnuckle,
                _ => Formula::AboveEllipsoid,
            };
            return (Formula::ShellTop, vec![above], inputs);
        }
        if height <= crown {
            inputs.extend(self.top.inputs());
            inputs.push(at_tangent);
            return (Formula::ShellCrown, Vec::new(), inputs);
        }
        inputs.push(self.volume(Term::ShellAtCrown, profile.volume_below(crown)));
        inputs.push(vessel.measures.clear_bore.input(Term::ClearBore));
        (Formula::ShellNeck, Vec::new(), inputs)
    }

    /// The volume of the empty shell below a height.
    #[must_use]
    pub fn shell_below(&self, vessel: &Vessel, height: &Known<Length>, term: Term) -> Step {
        let z = height.value.value;
        let (formula, with, mut inputs) = self.shell_at(vessel, z);
        inputs.push(height.input(Term::Height));
        Step::new(term, cubic_metres(vessel.cavity.profile.volume_below(z)), formula, inputs).taking(with)
    }

    fn rung_of(&self, height: f64) -> Option<&Rung> {
        self.rungs.iter().rev().find(|rung| rung.height < height).or(self.rungs.first())
    }

    /// How the free volume below a height comes about; `None` for a height that is the lowest inside point.
    fn free_at(&self, vessel: &Vessel, height: f64, laterals: bool) -> Equation {
        let Some(rung) = self.rung_of(height) else { return self.shell_at(vessel, height) };
        let free = self.volume(Term::FreeAtStep, rung.free);
        if rung.blocked {
            return (Formula::FreeBelowSolid, Vec::new(), vec![free]);
        }
        let (shell, clauses, mut inputs) = self.shell_at(vessel, height);
        let mut with = vec![shell];
        with.extend(clauses);
        inputs.extend([
            free,
            self.volume(Term::ShellAtStep, rung.shell),
            self.known(square_metres(rung.solid)).input(Term::SolidSection),
            self.length(Term::StepHeight, rung.height),
        ]);
        let formula = match &vessel.measures.bottom_collector {
            BottomCollector::HubAndLaterals { count, diameter, length, axis, .. } if laterals => {
                let count = Input { amount: Amount::Count(*count), ..axis.input(Term::LateralCount) };
                inputs.extend([
                    count,
                    diameter.input(Term::CollectorDiameter),
                    length.input(Term::LateralLength),
                    axis.input(Term::LateralAxis),
                ]);
                Formula::CoaxialVolume
            }
            _ => Formula::VolumeBelow,
        };
        (formula, with, inputs)
    }

    /// The free volume below a height.
    #[must_use]
    pub fn volume_below(&self, vessel: &Vessel, height: &Known<Length>, term: Term) -> Step {
        let z = height.value.value;
        let (formula, with, mut inputs) = self.free_at(vessel, z, true);
        inputs.push(height.input(Term::Height));
        Step::new(term, cubic_metres(vessel.cavity.free_below(z)), formula, inputs).taking(with)
    }

    /// The height that has a volume below it, found by trial: both sides of the equation agree with it.
    #[must_use]
    pub fn height_holding(&self, vessel: &Vessel, volume: Input, height: Length, term: Term) -> Step {
        let (formula, with, mut inputs) = self.free_at(vessel, height.value, true);
        inputs.push(Input { term: Term::FreeVolume, ..volume });
        Step::new(term, height, formula, inputs).taking(with)
    }

    /// How the diameter that was found from a rise gives that rise; nothing where it was found another way.
    #[must_use]
    pub fn rise_steps(&self, vessel: &Vessel) -> Vec<Step> {
        let (volume, before, after, water) = match &vessel.measures.diameter_by {
            DiameterBy::MeteredFill { volume, before, after } => (volume, before, after, true),
            DiameterBy::RiseOfBag { volume, before, after } => (volume, before, after, false),
            DiameterBy::Nominal { .. } | DiameterBy::Measured { .. } | DiameterBy::Circumference { .. } => {
                return Vec::new();
            }
        };
        let depth = &vessel.measures.inside_depth;
        let level = |tape: &Known<Length>, of: Term, term: Term, formula: Formula| {
            let inputs = vec![depth.input(Term::InsideDepth), tape.input(of)];
            Step::new(term, metres(depth.value.value - tape.value.value), formula, inputs)
        };
        let low = level(before, Term::TapeBefore, Term::HeightBefore, Formula::HeightBefore);
        let high = level(after, Term::TapeAfter, Term::HeightAfter, Formula::HeightAfter);
        let below = |step: &Step, term: Term| {
            let height = self.known(metres(step.figure.value.si()));
            if water { self.shell_below(vessel, &height, term) } else { self.volume_below(vessel, &height, term) }
        };
        let (first, second) = (below(&low, Term::VolumeBefore), below(&high, Term::VolumeAfter));
        let mut inputs = vec![first.input(Term::VolumeBefore), second.input(Term::VolumeAfter)];
        let mut formula = Formula::InsideDiameterFill;
        if let (true, Some(riser)) = (water, &vessel.measures.riser) {
            // Water also stands in the riser: only its wall takes room.
            formula = Formula::MeteredRise;
            inputs.extend([
                low.input(Term::HeightBefore),
                high.input(Term::HeightAfter),
                riser.seat.input(Term::RiserSeat),
                riser.outside_diameter.input(Term::RiserOutsideDiameter),
                Assumption::RiserWall.length().input(Term::RiserWall),
            ]);
        }
        let rise = Step::new(Term::MeteredVolume, volume.value, formula, inputs);
        vec![low, high, first, second, rise]
    }

    fn rung(&self, vessel: &Vessel, stretch: &Stretch) -> Rung {
        let from = stretch.from;
        let first = self.rungs.is_empty();
        let mut steps = Vec::new();
        if first && let Some(riser) = &vessel.measures.riser {
            steps.push(Step::given(Term::RiserOutsideDiameter, &riser.outside_diameter));
        }
        if first && let BottomCollector::Basket { diameter, .. } = &vessel.measures.bottom_collector {
            steps.push(Step::given(Term::CollectorDiameter, diameter));
        }
        if first {
            steps.push(Step::given(Term::StepHeight, &self.known(metres(from))));
        } else {
            steps.push(self.rung_height(vessel, from));
        }
        let height = steps.last().map_or(self.length(Term::Height, from), |step| step.input(Term::Height));
        let (shell, free) = (cubic_metres(stretch.shell_below), cubic_metres(stretch.below));
        if first {
            steps.push(Step::given(Term::ShellAtStep, &self.known(shell)));
            steps.push(Step::given(Term::FreeAtStep, &self.known(free)));
        } else {
            let (formula, with, mut inputs) = self.shell_at(vessel, from);
            inputs.push(height);
            steps.push(Step::new(Term::ShellAtStep, shell, formula, inputs).taking(with));
            let (formula, with, mut inputs) = self.free_at(vessel, from, false);
            inputs.push(height);
            steps.push(Step::new(Term::FreeAtStep, free, formula, inputs).taking(with));
        }
        if !stretch.blocked {
            let solid = square_metres(stretch.solid);
            steps.push(match solid_over(vessel, stretch.solid) {
                Some(across) => Step::new(
                    Term::SolidSection,
                    solid,
                    Formula::SolidSection,
                    vec![across.input(Term::RiserOutsideDiameter)],
                ),
                None => Step::given(Term::SolidSection, &self.known::<Area>(solid)),
            });
        }
        Rung {
            steps,
            height: from,
            shell: stretch.shell_below,
            free: stretch.below,
            solid: stretch.solid,
            blocked: stretch.blocked,
        }
    }

    /// How the height of a rung comes about: typed, the crown, or where a head is as wide as what stands in it.
    fn rung_height(&self, vessel: &Vessel, height: f64) -> Step {
        let measures = &vessel.measures;
        let mut typed: Vec<Known<Length>> = measures.riser.iter().map(|riser| riser.seat).collect();
        if let BottomCollector::Basket { bottom, top, .. } = &measures.bottom_collector {
            typed.extend([*bottom, *top]);
        }
        typed.extend(measures.bottom_collector.floor());
        if let Some(known) = typed.iter().find(|known| known.value.value == height) {
            return Step::given(Term::StepHeight, known);
        }
        let profile = &vessel.cavity.profile;
        if height == profile.crown() {
            let depth = measures.inside_depth.input(Term::InsideDepth);
            let neck = measures.neck_height.input(Term::NeckHeight);
            return Step::new(Term::StepHeight, metres(height), Formula::CrownHeight, vec![depth, neck]);
        }
        let diameter = vessel.inside_diameter.input(Term::InsideDiameter);
        for across in solids(vessel) {
            let radius = across.value.value / 2.0;
            for (shape, crown) in [(&self.bottom, None), (&self.top, Some(profile.crown()))] {
                let meets = shape.dome.height_of_radius(radius);
                if crown.map_or(meets, |crown| crown - meets) != height {
                    continue;
                }
                let mut inputs = vec![diameter, across.input(Term::RiserOutsideDiameter)];
                inputs.extend(shape.inputs());
                inputs.extend(crown.map(|crown| self.length(Term::CrownHeight, crown)));
                let in_cap = shape.dome.torispherical().map(|(_, _, joint)| meets <= joint);
                let formula = match (crown.is_some(), in_cap, shape.head) {
                    (false, Some(true), _) => Formula::HeadMeetsCap,
                    (false, Some(false), _) => Formula::HeadMeetsKnuckle,
                    (false, None, Head::Conical { .. }) => Formula::HeadMeetsCone,
                    (false, None, _) => Formula::HeadMeetsEllipsoid,
                    (true, Some(true), _) => Formula::CrownMeetsCap,
                    (true, Some(false), _) => Formula::CrownMeetsKnuckle,
                    (true, None, _) => Formula::CrownMeetsEllipsoid,
                };
                return Step::new(Term::StepHeight, metres(height), formula, inputs);
            }
        }
        Step::given(Term::StepHeight, &self.known(metres(height)))
    }
}

/// Diameters of what stands on the axis.
fn solids(vessel: &Vessel) -> Vec<Known<Length>> {
    let mut all: Vec<Known<Length>> = vessel.measures.riser.iter().map(|riser| riser.outside_diameter).collect();
    if let BottomCollector::Basket { diameter, .. } = &vessel.measures.bottom_collector {
        all.push(*diameter);
    }
    all
}

/// The diameter that has this section, among what stands on the axis.
fn solid_over(vessel: &Vessel, section: f64) -> Option<Known<Length>> {
    solids(vessel).into_iter().find(|across| {
        let radius = across.value.value / 2.0;
        std::f64::consts::PI * radius * radius == section
    })
}
