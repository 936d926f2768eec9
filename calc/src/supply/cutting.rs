//! Pieces cut from stock lengths, from the least number of them.

use crate::quantity::{Amount, Fault, Length, Problem, Term, metres};

mod bound;
mod counted;
mod searched;

/// Pieces that are cut in one plan.
pub const MOST_PIECES: usize = 2_000;

/// A length in whole micrometres, so that sums and comparisons are exact.
const PER_METRE: f64 = 1e6;

/// The longest that is reckoned with, m.
const LONGEST_M: f64 = 100.0;

/// What is cut, and from what.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stock {
    /// The length it is sold in.
    pub length: Length,
    /// What one cut of the saw takes.
    pub kerf: Length,
}

/// Which pieces are cut from which stock length.
#[derive(Clone, Debug, PartialEq)]
pub struct CutPlan {
    /// One for each stock length: its pieces by their place in what was asked, longest first.
    pub lengths: Vec<CutLength>,
    /// No plan takes fewer stock lengths than this: proven.
    pub at_least: u32,
}

/// What is cut from one stock length.
#[derive(Clone, Debug, PartialEq)]
pub struct CutLength {
    /// Its pieces by their place in what was asked, longest first.
    pub pieces: Vec<usize>,
    /// What is left of it, past the last cut.
    pub rest: Length,
}

impl CutPlan {
    /// Whether no plan takes fewer.
    #[must_use]
    pub fn is_least(&self) -> bool {
        u32::try_from(self.lengths.len()) == Ok(self.at_least)
    }
}

/// Pieces cut from as few stock lengths as can be.
///
/// A stock length gives the pieces p₁ … pₙ where Σpᵢ + (n − 1)·kerf is at most its length: between two pieces there is
/// one cut, and past the last one a cut only where something is left.
///
/// Every piece stands in exactly one stock length. Plans of up to 12 pieces, and of more where few lengths repeat, are
/// the least for certain (every way of counting pieces out is gone through, at most 262 144 of them). Beyond that the
/// search ends after 200 000 tries at the latest; [`CutPlan::at_least`] is what it could prove, and
/// [`CutPlan::is_least`] says whether the plan reaches it.
///
/// # Validity
/// Up to [`MOST_PIECES`] pieces.
///
/// # Errors
/// [`Term::StockLength`], [`Term::Kerf`] or [`Term::RiserLength`] out of range; a piece longer than the stock
/// ([`Fault::NotBelow`], [`Problem::layer`] is its place); more than [`MOST_PIECES`].
///
/// # Sources
/// One-dimensional bin packing. Lower bound L2: S. Martello and P. Toth, Knapsack Problems (1990), section 8.3.
///
/// # Example
/// Four pieces of 1.3 m from 3 m: two from each. With a saw that takes 0.41 m a second piece doesn't come out.
/// ```
/// use bedwright_calc::quantity::metres;
/// use bedwright_calc::supply::cutting::{Stock, cut_plan};
/// let pieces = [metres(1.3); 4];
/// let plan = cut_plan(&Stock { length: metres(3.0), kerf: metres(0.003) }, &pieces).unwrap();
/// assert_eq!(plan.lengths.len(), 2);
/// let plan = cut_plan(&Stock { length: metres(3.0), kerf: metres(0.41) }, &pieces).unwrap();
/// assert_eq!(plan.lengths.len(), 4);
/// ```
pub fn cut_plan(stock: &Stock, pieces: &[Length]) -> Result<CutPlan, Problem> {
    let length = whole(stock.length, Term::StockLength, 1.0 / PER_METRE)?;
    let kerf = whole(stock.kerf, Term::Kerf, 0.0)?;
    if pieces.len() > MOST_PIECES {
        return Err(Problem::new(Term::RiserLength, Fault::TooManyWays));
    }
    // With its cut a piece takes its length and a kerf; the last cut may fall into the air.
    let room = length + kerf;
    let mut sizes = Vec::with_capacity(pieces.len());
    for (place, piece) in pieces.iter().enumerate() {
        let size = whole(*piece, Term::RiserLength, 1.0 / PER_METRE).map_err(|problem| problem.of_layer(place))?;
        if size > length {
            let (value, limit): (Amount, Amount) = ((*piece).into(), stock.length.into());
            let fault = Fault::NotBelow { value, other: Term::StockLength, limit };
            return Err(Problem::new(Term::RiserLength, fault).of_layer(place));
        }
        sizes.push(size + kerf);
    }
    let places = crate::order::sorted((0..sizes.len()).collect(), |a, b| sizes.get(*b).cmp(&sizes.get(*a)));
    let sorted: Vec<u64> = places.iter().filter_map(|place| sizes.get(*place).copied()).collect();
    let (bins, at_least) = match counted::least_bins(room, &sorted) {
        Some(bins) => {
            let least = bins.len();
            (bins, least)
        }
        None => searched::few_bins(room, &sorted),
    };
    let lengths = bins
        .into_iter()
        .map(|bin| {
            let taken = bin.iter().filter_map(|at| sorted.get(*at)).sum::<u64>();
            let pieces = bin.iter().filter_map(|at| places.get(*at).copied()).collect();
            CutLength { pieces, rest: metres(length.saturating_sub(taken) as f64 / PER_METRE) }
        })
        .collect();
    Ok(CutPlan { lengths, at_least: u32::try_from(at_least).unwrap_or(u32::MAX) })
}

fn whole(value: Length, term: Term, low: f64) -> Result<u64, Problem> {
    let whole = (value.value * PER_METRE).round();
    if (low * PER_METRE..=LONGEST_M * PER_METRE).contains(&whole) {
        Ok(whole as u64)
    } else {
        let (low, high) = (metres(low).into(), metres(LONGEST_M).into());
        Err(Problem::new(term, Fault::OutOfRange { value: value.into(), low, high }))
    }
}

#[cfg(test)]
mod tests;
