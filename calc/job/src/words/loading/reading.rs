//! What a tape reading says, and what keeps a loading from being signed.

use bedwright_calc::fill::{Deviation, Explanation, Rung};
use bedwright_calc::material::Pack;
use bedwright_calc::quantity::{Amount, Length, Term, metres};

use crate::answers::VesselAnswers;
use crate::entry::Unit;
use crate::loading::{Lack, LoadAnswers};
use crate::sections::loading::ReadingPlace;
use crate::words::Manner;
use crate::words::label::step::ReadingText as Text;

impl Manner {
    /// How far a surface stands from where it was expected: "1 3/8 in lower".
    #[must_use]
    pub fn higher(&self, higher: Length) -> String {
        let length = self.tape(metres(higher.value.abs()));
        if length == self.tape(metres(0.0)) {
            return self.label(Text::AsExpected).to_owned();
        }
        self.sentence(if higher.value > 0.0 { Text::Higher } else { Text::Lower }, &[("length", &length)])
    }

    /// What a reading beyond the spread says: how far off, in packs, and what is likely, a sentence each. Nothing where it
    /// lies within the spread.
    #[must_use]
    pub fn deviation(&self, rung: &Rung, found: &Deviation, pack: &Pack) -> Vec<String> {
        if found.within {
            return Vec::new();
        }
        let spread = rung.expected.as_ref().map(|tape| self.spread(tape.spread)).unwrap_or_default();
        let packs = self.packs(found.packs.value.abs(), pack);
        let off = self.higher(found.higher.value);
        let text = if found.packs.value < 0.0 { Text::OffLess } else { Text::OffMore };
        let mut said = vec![self.sentence(text, &[("off", &off), ("spread", &spread), ("packs", &packs)])];
        for (at, explanation) in found.explanations.iter().enumerate() {
            let why = self.explanation(explanation, rung, pack);
            said.push(self.sentence(if at == 0 { Text::Likely } else { Text::Or }, &[("why", &why)]));
        }
        said
    }

    fn explanation(&self, explanation: &Explanation, rung: &Rung, pack: &Pack) -> String {
        let one = self.container(pack.container, 1);
        match explanation {
            Explanation::PartFull(held) if held.value < 1.0 => {
                self.sentence(Text::PackPart, &[("pack", one), ("share", &self.percent(held.value))])
            }
            Explanation::PartFull(held) => {
                self.sentence(Text::PackMore, &[("pack", one), ("share", &self.percent(held.value - 1.0))])
            }
            Explanation::Miscount(fewer) => {
                let packs = self.packs(fewer.value.abs(), pack);
                self.sentence(if fewer.value > 0.0 { Text::Fewer } else { Text::More }, &[("packs", &packs)])
            }
            Explanation::Diameter(inside) => {
                let inside = self.length(inside.value);
                match reckoned(rung, Term::InsideDiameter) {
                    Some(known) => {
                        self.sentence(Text::DiameterNot, &[("inside", &inside), ("known", &self.length(known))])
                    }
                    None => self.sentence(Text::Diameter, &[("inside", &inside)]),
                }
            }
            Explanation::Depth(depth) => self.sentence(Text::Depth, &[("depth", &self.tape(depth.value))]),
            Explanation::BulkDensity(density) => {
                self.sentence(Text::Density, &[("density", &self.amount(density.value.into()))])
            }
        }
    }

    /// The name of a layer of the plan.
    fn layer_name(&self, layer: &crate::id::Id, answers: &VesselAnswers) -> String {
        let at = answers.layers.iter().position(|there| there.id == *layer);
        let planned = at.and_then(|at| answers.planned.get(at));
        planned.map(|layer| self.material(&layer.material.id)).unwrap_or_default()
    }

    /// Where on the way a reading belongs.
    #[must_use]
    pub fn place(&self, place: &ReadingPlace, of: &LoadAnswers, answers: &VesselAnswers) -> String {
        let name = place.layer().map(|layer| self.layer_name(layer, answers)).unwrap_or_default();
        match place {
            ReadingPlace::Found => self.label(Text::Found).to_owned(),
            ReadingPlace::Left => self.label(Text::Left).to_owned(),
            ReadingPlace::End(_) => self.sentence(Text::AfterLast, &[("layer", &name)]),
            ReadingPlace::Pack(layer, pack) => {
                let at = of.layers.iter().position(|there| there == layer);
                let container = at.and_then(|at| answers.planned.get(at)).map(|layer| layer.pack.container);
                let container =
                    container.map_or_else(|| self.label(Text::PackWord), |container| self.container(container, 1));
                let places = [("container", container), ("pack", &*pack.to_string()), ("layer", &name)];
                self.sentence(Text::AfterPack, &places)
            }
        }
    }

    /// What keeps a loading from being signed.
    #[must_use]
    pub fn lack(&self, lack: &Lack, of: &LoadAnswers, answers: &VesselAnswers) -> String {
        let at = |text: Text, place: &ReadingPlace| self.sentence(text, &[("place", &self.place(place, of, answers))]);
        match lack {
            Lack::Plan => self.label(Text::PlanFirst).to_owned(),
            Lack::Reading(place) => at(Text::TypeIt, place),
            Lack::Misread(place, misread) => {
                let place = self.place(place, of, answers);
                self.sentence(Text::Misread, &[("place", &place), ("why", &self.misread(misread, Unit::Inch))])
            }
            Lack::Contradicts(place) => at(Text::Contradicts, place),
            Lack::Packs(layer) => self.sentence(Text::PacksWrong, &[("layer", &self.layer_name(layer, answers))]),
        }
    }
}

/// What a reading to expect was reckoned with.
fn reckoned(rung: &Rung, term: Term) -> Option<Length> {
    let inputs = &rung.expected.as_ref().ok()?.reading.inputs;
    inputs.iter().find(|input| input.term == term).and_then(|input| match input.amount {
        Amount::Length(length) => Some(length),
        _ => None,
    })
}
