//! A price made from a cost, and what freight comes to.

use rust_decimal::Decimal;

use super::{MOST_PRICE, MOST_QUANTITY, places, share, within};
use crate::quantity::{Fault, Problem, Term};
use crate::supply::exact::{self, Rounding};
use crate::supply::money::{Money, TOO_LARGE};

/// How a price is made from a cost.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PriceWay {
    /// A share of the cost is put on it: 0.25 makes 100 into 125.
    Markup(Decimal),
    /// A share of the price is kept: 0.25 makes 75 into 100.
    Margin(Decimal),
}

/// The most that may be put on a cost: ten thousand per cent.
const MOST_MARKUP: i64 = 100;

/// The price of what costs so much, rounded once.
///
/// ```text
/// markup:  price = cost · (1 + u)
/// margin:  price = cost / (1 − g)
/// ```
///
/// # Errors
/// A cost below nought or too large; a markup above [`MOST_MARKUP`]; a margin of the whole price or more.
///
/// # Sources
/// Arithmetic; markup is over the cost, margin over the price, as bookkeeping has them.
///
/// # Example
/// 31.20 with 25 % put on is 39.00; with 25 % of the price kept it is 41.60.
/// ```
/// use bedwright_calc::supply::quote::{PriceWay, price_from_cost};
/// use bedwright_calc::supply::{Halves, Money, Rounding};
/// use rust_decimal::Decimal;
/// let (cost, quarter) = (Money::new(Decimal::new(3_120, 2)), Decimal::new(25, 2));
/// let rounding = Rounding { places: 2, halves: Halves::Up };
/// let price = |way| price_from_cost(cost, way, rounding).unwrap().value().to_string();
/// assert_eq!(price(PriceWay::Markup(quarter)), "39.00");
/// assert_eq!(price(PriceWay::Margin(quarter)), "41.60");
/// ```
pub fn price_from_cost(cost: Money, way: PriceWay, rounding: Rounding) -> Result<Money, Problem> {
    within(Term::Cost, cost.value(), MOST_PRICE)?;
    match way {
        PriceWay::Markup(markup) => {
            within(Term::Markup, markup, MOST_MARKUP)?;
            cost.of(exact::sum(Decimal::ONE, markup).ok_or(TOO_LARGE)?, rounding)
        }
        PriceWay::Margin(margin) => {
            share(Term::Margin, margin)?;
            let kept = exact::difference(Decimal::ONE, margin).ok_or(TOO_LARGE)?;
            if kept == Decimal::ZERO {
                return Err(Problem::new(Term::Margin, Fault::NoSolution));
            }
            exact::quotient_rounded(cost.value(), kept, rounding).map(Money::new).ok_or(TOO_LARGE)
        }
    }
}

/// What freight comes to: the rate for each unit of weight, at least so much, rounded once.
///
/// `weight` is what is charged: the carrier's whole units, rounded up before.
///
/// # Errors
/// A weight, rate or least charge below nought or too large, by its term.
///
/// # Sources
/// Common practice: charged by weight, with a least charge.
///
/// # Example
/// 430 lb at 0.185 are 79.55; at least 95 makes it 95.
/// ```
/// use bedwright_calc::supply::quote::freight;
/// use bedwright_calc::supply::{Halves, Money, Rounding};
/// use rust_decimal::Decimal;
/// let rounding = Rounding { places: 2, halves: Halves::Up };
/// let (weight, rate) = (Decimal::from(430), Money::new(Decimal::new(185, 3)));
/// let charged = freight(weight, rate, None, rounding).unwrap();
/// assert_eq!(charged.value().to_string(), "79.55");
/// let least = Money::new(Decimal::from(95));
/// assert_eq!(freight(weight, rate, Some(least), rounding), Ok(least));
/// ```
pub fn freight(weight: Decimal, rate: Money, least: Option<Money>, rounding: Rounding) -> Result<Money, Problem> {
    within(Term::FreightWeight, weight, MOST_QUANTITY)?;
    within(Term::FreightRate, rate.value(), MOST_PRICE)?;
    let charged = rate.of(weight, rounding)?;
    let Some(least) = least else { return Ok(charged) };
    within(Term::Freight, least.value(), MOST_PRICE)?;
    places(Term::Freight, least.value())?;
    Ok(charged.max(least.of(Decimal::ONE, rounding)?))
}
