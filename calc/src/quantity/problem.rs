//! What keeps an answer from being given, and what should be borne in mind with one that is.

use super::{Amount, Term};

/// Why there is no answer: which quantity, of which layer, and what is wrong with it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Problem {
    /// The quantity that is wrong or missing.
    pub term: Term,
    /// The layer it belongs to, counted from the bottom and from zero.
    pub layer: Option<usize>,
    /// What is wrong with it.
    pub fault: Fault,
}

/// What is wrong with a quantity.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Fault {
    /// It is needed and was not given.
    Missing,
    /// It must be more than zero.
    NotPositive {
        /// What was given.
        value: Amount,
    },
    /// It lies outside what it may be.
    OutOfRange {
        /// What was given.
        value: Amount,
        /// The least it may be.
        low: Amount,
        /// The most it may be.
        high: Amount,
    },
    /// It must stay below another quantity.
    NotBelow {
        /// What was given.
        value: Amount,
        /// The quantity it must stay below.
        other: Term,
        /// That quantity's value.
        limit: Amount,
    },
    /// It must be above another quantity.
    NotAbove {
        /// What was given.
        value: Amount,
        /// The quantity it must be above.
        other: Term,
        /// That quantity's value.
        limit: Amount,
    },
    /// There is not enough room.
    DoesNotFit {
        /// What it needs.
        needs: Amount,
        /// What there is.
        room: Amount,
    },
    /// It asks for something that is already reached by what lies below.
    AlreadyReached {
        /// What was asked for.
        value: Amount,
        /// What is already there.
        there: Amount,
    },
    /// It waits for something else that has a problem of its own.
    WaitsFor {
        /// What it waits for.
        other: Term,
    },
    /// Nothing in the search range gives this.
    NoSolution,
    /// It has more decimal places than can be reckoned with exactly.
    TooFine {
        /// The most it may have.
        places: u32,
    },
    /// There are more ways than can be gone through to be sure which is best.
    TooManyWays,
    /// So much that no bed is left: the grains leave.
    CarriesAway {
        /// What was given.
        value: Amount,
    },
}

impl Problem {
    /// A problem that belongs to no layer.
    #[must_use]
    pub const fn new(term: Term, fault: Fault) -> Problem {
        Problem { term, layer: None, fault }
    }

    /// The same, of a layer.
    #[must_use]
    pub const fn of_layer(mut self, layer: usize) -> Problem {
        self.layer = Some(layer);
        self
    }
}

// Asked in sixty places: never put inside another function, and not compiled once a quantity.

/// Refuses what is not a number or not more than zero.
#[inline(never)]
pub(crate) fn positive(term: Term, value: f64, amount: Amount) -> Result<(), Problem> {
    if value.is_finite() && value > 0.0 {
        Ok(())
    } else {
        Err(Problem::new(term, Fault::NotPositive { value: amount }))
    }
}

/// Refuses what is not a number, not more than zero, or outside what it may be.
#[inline(never)]
pub(crate) fn within(
    term: Term,
    value: f64,
    (low, high): (f64, f64),
    amount: fn(f64) -> Amount,
) -> Result<(), Problem> {
    positive(term, value, amount(value))?;
    between(term, value, (low, high), amount)
}

/// Refuses what is not a number or outside what it may be; nought may be in it.
#[inline(never)]
pub(crate) fn between(
    term: Term,
    value: f64,
    (low, high): (f64, f64),
    amount: fn(f64) -> Amount,
) -> Result<(), Problem> {
    if (low..=high).contains(&value) {
        Ok(())
    } else {
        Err(Problem::new(term, Fault::OutOfRange { value: amount(value), low: amount(low), high: amount(high) }))
    }
}

/// What should be borne in mind with an answer.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Caution {
    /// The inside diameter is only taken from the nominal size: measure it.
    MeasureDiameter,
    /// The inside diameter comes out above the nominal one: was the tape over a jacket?
    AboveNominal {
        /// What came out.
        inside: Amount,
        /// The nominal diameter.
        nominal: Amount,
    },
    /// The inside depth is only taken from the nominal height: measure it.
    MeasureDepth,
    /// True if the pack was full; if not, the pack was short and the diameter is as assumed.
    IfPackWasFull,
    /// The volume rests on a bulk density that varies from lot to lot.
    DensityVaries {
        /// The least it is.
        low: Amount,
        /// The most it is.
        high: Amount,
    },
    /// Outside what the equation was fitted to.
    BeyondFit {
        /// What came out.
        value: Amount,
        /// Where the fit ends.
        limit: Amount,
    },
    /// This flow doesn't lift the grains: they lie as they settled.
    NotLifted,
    /// How the sizes are spread is a guess between the two sieves.
    SizesGuessed,
    /// Every figure of it is from memory: no verdict rests on it.
    FromMemory,
    /// The mass of the empty vessel isn't known and is left out.
    WithoutVessel,
    /// Cations and anions of the analysis miss each other: something was measured wrong or left out.
    ChargesMiss {
        /// By what share of all charge.
        share: Amount,
    },
    /// Water that stands in it goes above this pH.
    Overshoot {
        /// The pH.
        limit: Amount,
    },
    /// More than a published rule counts on.
    AboveRule {
        /// What was typed.
        value: Amount,
        /// What the rule counts on.
        limit: Amount,
    },
    /// The water holds more calcite than it can keep: it takes up none, and may lay some down.
    Supersaturated {
        /// The saturation index.
        index: Amount,
    },
}
