//! What a search says in words.

use bedwright_calc::hydraulics::{Arrangement, Margin, Setting};
use bedwright_calc::quantity::{Basis, Problem};
use bedwright_calc::vessel::NominalDiameter;

use super::Manner;
use super::label::SearchLabel;
use super::label::measure::FoundText;
use crate::entry::Unit;

impl Manner {
    /// A nominal size: "12×52", in inches as the trade has it.
    #[must_use]
    pub fn nominal(&self, size: &NominalDiameter) -> String {
        let inches = |si: f64| self.decimal(Unit::Inch.from_si(si), 2);
        [&inches(size.diameter.value), "×", &inches(size.usual_height.value)].concat()
    }

    /// How many vessels there are, and how they stand to each other.
    #[must_use]
    pub fn vessels(&self, count: u32, arrangement: Arrangement) -> String {
        match (count, arrangement) {
            (1, _) => self.label(FoundText::One).to_owned(),
            (_, Arrangement::TwinAlternating) => self.label(FoundText::Twin).to_owned(),
            (_, Arrangement::LeadLag) => self.label(FoundText::LeadLag).to_owned(),
            _ => self.sentence(FoundText::SideBySide, &[("count", &count.to_string())]),
        }
    }

    /// How far a rule is met: "flow per area: 12 % to spare".
    #[must_use]
    pub fn margin(&self, margin: &Margin) -> String {
        let spare = margin.ratio.value - 1.0;
        let what = ("what", self.term(margin.quantity));
        if !margin.met {
            self.sentence(FoundText::Short, &[what, ("share", &self.percent(-spare.min(0.0)))])
        } else if spare < 1.0 {
            self.sentence(FoundText::Spare, &[what, ("share", &self.percent(spare.max(0.0)))])
        } else {
            self.sentence(FoundText::Times, &[what, ("times", &self.decimal(margin.ratio.value, 1))])
        }
    }

    /// The drain line flow control of a candidate, and whether its size is known here.
    #[must_use]
    pub fn flow_control(&self, setting: &Setting) -> String {
        let flow = self.flow(setting.flow.value);
        if setting.flow.basis == Basis::Assumed {
            [&flow, ", ", self.label(SearchLabel::AskFor)].concat()
        } else {
            flow
        }
    }

    /// A size in which not even one pack has room, and why.
    #[must_use]
    pub fn too_small(&self, size: &NominalDiameter, problem: &Problem) -> String {
        [&self.nominal(size), self.colon(), self.label(SearchLabel::TooSmall), ". ", &self.problem(problem)].concat()
    }
}
