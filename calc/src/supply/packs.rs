//! Which packs cover a need at least cost, exactly.

use std::cmp::Ordering;

use super::Money;
use crate::quantity::{Fault, Problem, Term, Volume, cubic_metres};

mod costs;
mod cover;

use costs::whole_costs;
use cover::{Cover, Size, cheapest_cover};

/// Sizes of one material that may be weighed against each other; nobody stocks more.
pub const MOST_OFFERS: usize = 8;

/// Packs of one material that a job may take.
pub const MOST_PACKS: u32 = 1_000_000;

/// A need this share of the smallest pack above what whole packs hold is met by them, unless it is a stated minimum:
/// one in so many.
const NEAR_MISS_ONE_IN: u64 = 10;

/// An amount of a material as poured, in whole billionths of a litre, so that sums and comparisons are exact.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub struct Content(u64);

/// What a cubic metre holds of them.
const PER_CUBIC_METRE: f64 = 1e12;

/// Less than a cubic millimetre isn't needed: it is what arithmetic in doubles leaves.
const CUBIC_MILLIMETRE: u64 = 1_000;

/// The most that is reckoned with, m³.
const MOST_M3: f64 = 10_000.0;

impl Content {
    /// So many billionths of a litre.
    #[must_use]
    pub const fn new(billionths: u64) -> Content {
        Content(billionths)
    }

    /// What a pack holds: its volume, to the nearest billionth of a litre. Half a cubic foot is held without rounding.
    ///
    /// # Errors
    /// [`Term::PackVolume`] that isn't more than zero, or beyond 10 000 m³.
    ///
    /// # Sources
    /// International yard and pound agreement (1959): a foot is 0.3048 m, so a cubic foot is 28 316 846 592 billionths.
    ///
    /// # Example
    /// ```
    /// use bedwright_calc::quantity::cubic_metres;
    /// use bedwright_calc::supply::packs::Content;
    /// let half = Content::of_pack(cubic_metres(0.3048 * 0.3048 * 0.3048 / 2.0)).unwrap();
    /// assert_eq!(half, Content::new(14_158_423_296));
    /// assert!(Content::of_pack(cubic_metres(0.0)).is_err());
    /// ```
    pub fn of_pack(volume: Volume) -> Result<Content, Problem> {
        let whole = (volume.value * PER_CUBIC_METRE).round();
        if (1.0..=MOST_M3 * PER_CUBIC_METRE).contains(&whole) {
            Ok(Content(whole as u64))
        } else {
            Err(Problem::new(Term::PackVolume, out_of_range(volume, 1.0 / PER_CUBIC_METRE)))
        }
    }

    /// What is needed: a volume, cut to whole cubic millimetres.
    ///
    /// # Errors
    /// [`Term::LayerVolume`] below zero or beyond 10 000 m³.
    ///
    /// # Sources
    /// Arithmetic: a cubic millimetre is far below what any grain takes up.
    ///
    /// # Example
    /// A volume that arithmetic left a hair above three half-cubic-foot bags needs three.
    /// ```
    /// use bedwright_calc::quantity::cubic_metres;
    /// use bedwright_calc::supply::packs::Content;
    /// let need = Content::needed(cubic_metres(3.0 * 0.014_158_423_296 + 1e-13)).unwrap();
    /// assert!(need <= Content::new(3 * 14_158_423_296));
    /// ```
    pub fn needed(volume: Volume) -> Result<Content, Problem> {
        let whole = (volume.value * PER_CUBIC_METRE).floor();
        if (0.0..=MOST_M3 * PER_CUBIC_METRE).contains(&whole) {
            let whole = whole as u64;
            Ok(Content(whole - whole % CUBIC_MILLIMETRE))
        } else {
            Err(Problem::new(Term::LayerVolume, out_of_range(volume, 0.0)))
        }
    }

    /// It as a volume.
    #[must_use]
    pub fn volume(self) -> Volume {
        cubic_metres(self.0 as f64 / PER_CUBIC_METRE)
    }

    /// The sum of two; the most there is where it would be more.
    #[must_use]
    pub const fn plus(self, other: Content) -> Content {
        Content(self.0.saturating_add(other.0))
    }

    /// What is left of it; nothing where the other is as much or more.
    #[must_use]
    pub const fn less(self, other: Content) -> Content {
        Content(self.0.saturating_sub(other.0))
    }

    /// So many of it.
    #[must_use]
    pub const fn times(self, count: u32) -> Content {
        Content(self.0.saturating_mul(count as u64))
    }

    const fn is_none(self) -> bool {
        self.0 == 0
    }
}

fn out_of_range(volume: Volume, low: f64) -> Fault {
    Fault::OutOfRange { value: volume.into(), low: cubic_metres(low).into(), high: cubic_metres(MOST_M3).into() }
}

/// A size a material may be bought in.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Offer {
    /// What it holds.
    pub content: Content,
    /// What one costs, where that is known.
    pub price: Option<Money>,
    /// How many are taken whatever else is best; none where that is free.
    pub locked: Option<u32>,
}

/// What must be there of one material.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Need {
    /// How much.
    pub content: Content,
    /// What is left in packs that were opened before. It is used up first.
    pub opened: Content,
    /// Whether it is a stated minimum, so that whole packs may not fall short of it.
    pub minimum: bool,
}

/// The packs that cover a need.
#[derive(Clone, Debug, PartialEq)]
pub struct Packing {
    /// How many of each offer, in the order of the offers.
    pub counts: Vec<u32>,
    /// What they cost together, where every pack that is taken has a price.
    pub cost: Option<Money>,
    /// What is used of opened packs.
    pub from_opened: Content,
    /// What is left when the need is covered.
    pub left_over: Content,
    /// By how much whole packs fall short: a near miss. Nothing where they don't.
    pub short_by: Content,
    /// Why these.
    pub chosen: Chosen,
    /// What each offer would take on its own, in the order of the offers; none where that can't be said.
    pub alone: Vec<Option<Alone>>,
}

/// Why packs were taken.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Chosen {
    /// Nothing had to be bought.
    NothingToBuy,
    /// There was no choice: one size, or every number is locked.
    NoChoice,
    /// Nobody asked for anything else than the layers were planned in.
    AsPlanned,
    /// They cost least; of equal costs, they leave least; of equal rests, they are fewest.
    LeastCost,
    /// They leave least, and of equal rests they are fewest: so many offers have no price, so costs can't be compared.
    LeastLeftOver {
        /// Offers without a price.
        unpriced: usize,
    },
}

/// What one size would take on its own.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Alone {
    /// How many.
    pub count: u32,
    /// What they would cost, where the price is known.
    pub cost: Option<Money>,
    /// What they would leave.
    pub left_over: Content,
}

impl Packing {
    /// How many packs there are.
    #[must_use]
    pub fn packs(&self) -> u32 {
        self.counts.iter().fold(0, |sum, count| sum.saturating_add(*count))
    }
}

/// The packs that cover a need at least cost; of equal costs those that leave least, of those the fewest.
///
/// What is left in opened packs is used first, then what is locked, then the best of the offers that are free. A need
/// at most a tenth of the smallest pack above what whole packs hold is met by them where that is cheaper, unless it is
/// a stated minimum; the answer says by how much they fall short. Where an offer that is free has no price, costs can't
/// be compared: then those that leave least are taken, and the answer says so.
///
/// It is exact: contents and prices are whole numbers throughout. A larger need never costs less; the order of the
/// offers changes nothing but which of two equal sizes is taken.
///
/// # Validity
/// Up to [`MOST_OFFERS`] sizes and [`MOST_PACKS`] packs. Sizes with a common measure take at most 200 000 steps for each
/// size; others at most 4 million tries. Where neither is enough there is a problem, never a guess.
///
/// # Errors
/// [`Term::PackVolume`]: no offer, more than [`MOST_OFFERS`], or one that holds nothing. [`Term::Price`]: below zero, or
/// with so many digits that sums wouldn't be exact. [`Term::Packs`]: more than [`MOST_PACKS`], locked packs that don't
/// cover the need while nothing else may be taken, or sizes that leave too many ways ([`Fault::TooManyWays`]).
///
/// # Sources
/// An integer programme, solved by dynamic programming over the common measure of the sizes, or by branch and bound.
/// Near miss, used first, and what decides between equals: own rule (common practice).
///
/// # Example
/// Ten vessels take 0.15 cu ft each. Half-cubic-foot bags: 1.5 cu ft is three bags.
/// ```
/// use bedwright_calc::supply::packs::{Chosen, Content, Need, Offer, cheapest_packs};
/// let half = Content::new(14_158_423_296);
/// let need = Need { content: half.times(3), ..Need::default() };
/// let packing = cheapest_packs(&need, &[Offer { content: half, price: None, locked: None }]).unwrap();
/// assert_eq!(packing.counts, [3]);
/// assert_eq!(packing.chosen, Chosen::NoChoice);
/// ```
pub fn cheapest_packs(need: &Need, offers: &[Offer]) -> Result<Packing, Problem> {
    if offers.is_empty() {
        return Err(Problem::new(Term::PackVolume, Fault::Missing));
    }
    if offers.len() > MOST_OFFERS {
        return Err(Problem::new(Term::PackVolume, Fault::TooManyWays));
    }
    for offer in offers {
        if offer.content.is_none() {
            return Err(Problem::new(Term::PackVolume, Fault::NotPositive { value: offer.content.volume().into() }));
        }
    }
    let prices: Vec<Option<Money>> = offers.iter().map(|offer| offer.price).collect();
    let costs = whole_costs(&prices)?;
    let from_opened = need.opened.min(need.content);
    let to_buy = need.content.less(from_opened);
    let mut counts: Vec<u32> = offers.iter().map(|offer| offer.locked.unwrap_or(0)).collect();
    let locked =
        offers.iter().zip(&counts).fold(Content(0), |sum, (offer, count)| sum.plus(offer.content.times(*count)));
    if counts.iter().fold(0_u32, |sum, count| sum.saturating_add(*count)) > MOST_PACKS {
        return Err(too_many_packs());
    }
    let rest = to_buy.less(locked);
    let free: Vec<usize> = (0..offers.len()).filter(|at| offers.get(*at).is_some_and(|o| o.locked.is_none())).collect();
    let unpriced = free.iter().filter(|at| prices.get(**at).is_some_and(Option::is_none)).count();
    let mut chosen = Chosen::NothingToBuy;
    if rest.is_none() {
        if !locked.is_none() {
            chosen = Chosen::NoChoice;
        }
    } else if free.is_empty() {
        let (needs, room) = (to_buy.volume().into(), locked.volume().into());
        return Err(Problem::new(Term::Packs, Fault::DoesNotFit { needs, room }));
    } else {
        let sizes: Vec<Size> = free
            .iter()
            .filter_map(|at| {
                let content = offers.get(*at)?.content.0;
                // Without prices what is bought is what counts, so the least of it leaves the least.
                let cost = if unpriced > 0 { content } else { costs.get(*at).copied().flatten()? };
                Some(Size { content, cost })
            })
            .collect();
        let found = with_near_miss(rest.0, &sizes, need.minimum)?;
        for (at, count) in free.iter().zip(found.counts) {
            if let Some(place) = counts.get_mut(*at) {
                *place = count;
            }
        }
        chosen = match (free.len(), unpriced) {
            (1, _) => Chosen::NoChoice,
            (_, 0) => Chosen::LeastCost,
            _ => Chosen::LeastLeftOver { unpriced },
        };
    }
    let bought =
        offers.iter().zip(&counts).fold(Content(0), |sum, (offer, count)| sum.plus(offer.content.times(*count)));
    Ok(Packing {
        cost: cost_of(offers, &counts)?,
        from_opened,
        left_over: bought.less(to_buy),
        short_by: to_buy.less(bought),
        chosen,
        alone: offers.iter().map(|offer| alone(offer, to_buy, need.minimum)).collect(),
        counts,
    })
}

const fn too_many_packs() -> Problem {
    Problem::new(Term::Packs, Fault::TooManyWays)
}

/// The best cover, or one that falls short of it by at most a tenth of the smallest pack where that is cheaper.
fn with_near_miss(need: u64, sizes: &[Size], minimum: bool) -> Result<Cover, Problem> {
    let whole = cheapest_cover(need, sizes, Ordering::Less).ok_or(too_many_packs())?;
    let smallest = sizes.iter().map(|size| size.content).min().unwrap_or(0);
    let short = need.saturating_sub(smallest / NEAR_MISS_ONE_IN);
    if minimum || short == 0 || short == need {
        return Ok(whole);
    }
    let near = cheapest_cover(short, sizes, Ordering::Less).ok_or(too_many_packs())?;
    if near.cost >= whole.cost {
        return Ok(whole);
    }
    // All that cost as much fall short; the one that does so least is taken.
    cheapest_cover(short, sizes, Ordering::Greater).ok_or(too_many_packs())
}

fn alone(offer: &Offer, need: Content, minimum: bool) -> Option<Alone> {
    let size = Size { content: offer.content.0, cost: offer.content.0 };
    let cover = if need.is_none() { None } else { with_near_miss(need.0, &[size], minimum).ok() };
    let count = cover.map_or(Some(0), |cover| cover.counts.first().copied())?;
    Some(Alone {
        count,
        cost: offer.price.and_then(|price| price.times(count).ok()),
        left_over: offer.content.times(count).less(need),
    })
}

/// What some packs cost, where every one that is taken has a price.
fn cost_of(offers: &[Offer], counts: &[u32]) -> Result<Option<Money>, Problem> {
    let mut sum = Money::default();
    for (offer, count) in offers.iter().zip(counts).filter(|(_, count)| **count > 0) {
        let Some(price) = offer.price else { return Ok(None) };
        sum = sum.plus(price.times(*count)?)?;
    }
    Ok(Some(sum))
}

#[cfg(test)]
mod tests;
