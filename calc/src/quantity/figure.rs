//! An engineering answer that says how it knows.

use super::{Amount, Caution, Check, CheckWay, Source, Term};

struct FormulaRow {
    statement: &'static str,
    source: Source,
    checks: &'static [Check],
    gives: Option<Term>,
}

include!(concat!(env!("OUT_DIR"), "/formulas.rs"));

impl Formula {
    /// The equation in the symbols of the calculation sheet.
    #[must_use]
    pub fn statement(self) -> &'static str {
        FORMULAS.get(self as usize).map_or("", |row| row.statement)
    }

    /// Where the equation comes from.
    #[must_use]
    pub fn source(self) -> Source {
        FORMULAS.get(self as usize).map_or(Source::FromMemory, |row| row.source)
    }

    /// What it gives, where that has a noun of its own.
    #[must_use]
    pub fn gives(self) -> Option<Term> {
        FORMULAS.get(self as usize).and_then(|row| row.gives)
    }

    /// What its results are compared with; nothing where only our own tests hold it.
    #[must_use]
    pub fn checks(self) -> &'static [Check] {
        FORMULAS.get(self as usize).map_or(&[], |row| row.checks)
    }

    /// The most that any comparison of its results says; nothing where there is none.
    #[must_use]
    pub fn best_check(self) -> Option<CheckWay> {
        let outside = self.checks().iter().find(|check| check.way() == CheckWay::Outside);
        outside.or(self.checks().first()).map(|check| check.way())
    }
}

/// What a value rests on, from the strongest to the weakest.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Basis {
    /// Somebody measured it.
    Measured,
    /// Somebody typed it, from a drawing or a label.
    Typed,
    /// It stands in a table.
    Catalogue,
    /// It is assumed until opened or measured.
    Assumed,
}

impl Basis {
    /// The weaker of two: an answer is no better than its worst input.
    #[must_use]
    pub fn weaker(self, other: Basis) -> Basis {
        self.max(other)
    }
}

/// A value that goes into a calculation, and where it comes from.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Known<Q> {
    /// The value.
    pub value: Q,
    /// What it rests on.
    pub basis: Basis,
    /// Where it comes from.
    pub source: Source,
}

impl<Q> Known<Q> {
    /// A value somebody measured.
    #[must_use]
    pub const fn measured(value: Q) -> Known<Q> {
        Known { value, basis: Basis::Measured, source: Source::Typed }
    }

    /// A value somebody typed from a drawing, a label or a paper.
    #[must_use]
    pub const fn typed(value: Q) -> Known<Q> {
        Known { value, basis: Basis::Typed, source: Source::Typed }
    }

    /// A value that is assumed.
    #[must_use]
    pub const fn assumed(value: Q, source: Source) -> Known<Q> {
        Known { value, basis: Basis::Assumed, source }
    }

    /// A value from a table.
    #[must_use]
    pub const fn catalogue(value: Q, source: Source) -> Known<Q> {
        Known { value, basis: Basis::Catalogue, source }
    }
}

impl<Q: Copy + Into<Amount>> Known<Q> {
    /// It as the input of a figure.
    #[must_use]
    pub fn input(&self, term: Term) -> Input {
        Input { term, amount: self.value.into(), basis: self.basis, source: self.source }
    }
}

/// One input of a figure.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Input {
    /// What it is.
    pub term: Term,
    /// Its value.
    pub amount: Amount,
    /// What it rests on.
    pub basis: Basis,
    /// Where it comes from.
    pub source: Source,
}

/// An engineering answer: its value, how it was reached, from what, and how far to trust it.
#[derive(Clone, Debug, PartialEq)]
pub struct Figure<Q> {
    /// The value.
    pub value: Q,
    /// How it was reached.
    pub formula: Formula,
    /// What went in.
    pub inputs: Vec<Input>,
    /// The weakest basis among the inputs.
    pub basis: Basis,
    /// What to bear in mind.
    pub cautions: Vec<Caution>,
}

impl<Q> Figure<Q> {
    /// An answer reached by `formula` from `inputs`; its basis is the weakest of theirs.
    #[must_use]
    pub fn new(value: Q, formula: Formula, inputs: Vec<Input>) -> Figure<Q> {
        let basis = inputs.iter().map(|input| input.basis).fold(Basis::Measured, Basis::weaker);
        Figure { value, formula, inputs, basis, cautions: Vec::new() }
    }

    /// The same with a caution added.
    #[must_use]
    pub fn with(mut self, caution: Caution) -> Figure<Q> {
        self.cautions.push(caution);
        self
    }
}

impl<Q: Copy> Figure<Q> {
    /// Its value as an input of the next calculation, with the formula's source.
    #[must_use]
    pub fn known(&self) -> Known<Q> {
        Known { value: self.value, basis: self.basis, source: self.formula.source() }
    }
}

impl<Q: Copy + Into<Amount>> Figure<Q> {
    /// The same whatever its kind of quantity.
    #[must_use]
    pub fn bare(&self) -> Figure<Amount> {
        Figure {
            value: self.value.into(),
            formula: self.formula,
            inputs: self.inputs.clone(),
            basis: self.basis,
            cautions: self.cautions.clone(),
        }
    }

    /// It as the input of another figure.
    #[must_use]
    pub fn input(&self, term: Term) -> Input {
        self.known().input(term)
    }
}
