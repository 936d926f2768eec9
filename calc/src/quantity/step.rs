//! Equations on the way to a figure, so that somebody with a pocket calculator can follow it.

use super::{Amount, Figure, Formula, Input, Known, Term};

/// One equation on the way to a figure: what it gives, and from what.
///
/// Its inputs are what the equation names; where the result stands on both sides it was found by trial, and put in it makes
/// both sides agree.
#[derive(Clone, Debug, PartialEq)]
pub struct Step {
    /// What it gives.
    pub term: Term,
    /// The value, its equation and what goes in.
    pub figure: Figure<Amount>,
    /// Equations that the figure's own takes up, in this order.
    pub with: Vec<Formula>,
    /// Which of a layer's fractions it is of, from 1.
    pub fraction: Option<usize>,
}

impl Step {
    /// A step that gives `value` by `formula`.
    #[must_use]
    pub fn new(term: Term, value: impl Into<Amount>, formula: Formula, inputs: Vec<Input>) -> Step {
        Step { term, figure: Figure::new(value.into(), formula, inputs), with: Vec::new(), fraction: None }
    }

    /// The same, where the equation takes up others.
    #[must_use]
    pub fn taking(mut self, with: impl IntoIterator<Item = Formula>) -> Step {
        self.with.extend(with);
        self
    }

    /// A figure as a step.
    #[must_use]
    pub fn of<Q: Copy + Into<Amount>>(term: Term, figure: &Figure<Q>) -> Step {
        Step { term, figure: figure.bare(), with: Vec::new(), fraction: None }
    }

    /// A value that is known without an equation.
    #[must_use]
    pub fn given<Q: Copy + Into<Amount>>(term: Term, known: &Known<Q>) -> Step {
        Step::new(term, known.value, Formula::Given, vec![known.input(term)])
    }

    /// Its result as an input of the next step, under this noun.
    #[must_use]
    pub fn input(&self, term: Term) -> Input {
        self.figure.input(term)
    }
}
