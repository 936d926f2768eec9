//! What a quote adds up to, to the last digit.
//!
//! Rounding happens at stated places and nowhere else: a price made from a cost, a line's amount, a line's discount, the
//! discount on the whole (for each tax class), freight, and the tax of a class. Every sum is the exact sum of what is
//! printed, so that whoever adds the sheet up by hand comes to the same total.

mod labour;
mod price;
mod yearly;

use rust_decimal::Decimal;

use super::exact::{self, Rounding};
use super::money::{Money, TOO_LARGE};
use crate::quantity::{Amount, Fault, Problem, Term};

pub use labour::{LabourRow, labour_row};
pub use price::{PriceWay, freight, price_from_cost};
pub use yearly::wash_water_per_year;

/// The most a quantity may be, and the most of a price before its decimals.
const MOST_QUANTITY: i64 = 10_000_000;
const MOST_PRICE: i64 = 1_000_000_000;
/// The most places a typed figure may have.
const MOST_PLACES: u32 = 8;
/// The most lines a quote may have.
const MOST_LINES: usize = 10_000;

/// Whether a line counts.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum LineStanding {
    /// It is part of what is offered.
    Firm,
    /// It may be ordered besides; no total counts it.
    Optional,
    /// It may be taken in place of another line; no total counts it.
    Alternate,
}

/// One line before it is worked out.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LineAsked {
    /// How many, or how much.
    pub quantity: Decimal,
    /// For one; none is a gap, never nought.
    pub price: Option<Money>,
    /// What one costs, where it is known.
    pub cost: Option<Money>,
    /// The share that is taken off, 0 to 1.
    pub discount: Decimal,
    /// Which tax class; none where no tax is charged.
    pub tax: Option<usize>,
    /// Whether it counts.
    pub standing: LineStanding,
}

/// One line worked out.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct LineSums {
    /// Quantity times price, before the discount; none where the price is missing.
    pub gross: Option<Money>,
    /// What is taken off.
    pub discount: Option<Money>,
    /// What is left.
    pub net: Option<Money>,
    /// Quantity times cost; none where the cost isn't known.
    pub cost: Option<Money>,
}

/// What is added up besides the lines.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Whole<'a> {
    /// The share that is taken off all firm lines, 0 to 1; freight is left alone.
    pub discount: Decimal,
    /// What freight comes to, and its tax class.
    pub freight: Option<(Money, Option<usize>)>,
    /// The rates of the tax classes, as shares.
    pub taxes: &'a [Decimal],
    /// How amounts are rounded.
    pub rounding: Rounding,
}

/// One tax class worked out.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct TaxSum {
    /// What it is charged on: lines and freight of the class, less the discount.
    pub base: Money,
    /// The tax.
    pub amount: Money,
}

/// What it all comes to.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Totals {
    /// The firm lines that have a price, each after its own discount.
    pub lines: Money,
    /// What is taken off the whole.
    pub discount: Money,
    /// Freight; nought where there is none.
    pub freight: Money,
    /// Before tax.
    pub net: Money,
    /// Each tax class, in its order.
    pub taxes: Vec<TaxSum>,
    /// With tax.
    pub total: Money,
    /// What the firm lines cost, as far as it is known. Freight isn't in it.
    pub cost: Money,
    /// Firm lines that have no price: gaps, and not counted.
    pub unpriced: usize,
    /// Firm lines whose cost isn't known.
    pub uncosted: usize,
    /// Net less freight less cost; none while a price or cost is missing.
    pub margin: Option<Money>,
    /// That over net less freight, to four places; none where that is nought.
    pub margin_share: Option<Decimal>,
}

/// A line worked out.
///
/// # Errors
/// A quantity, price, cost or discount that can't be one, by its term.
///
/// # Sources
/// Arithmetic; halves by the rule that the quote states.
///
/// # Example
/// Three bags at 41.335, 5 % off: 124.005 is 124.01, 6.2005 off is 6.20, 117.81 is left.
/// ```
/// use bedwright_calc::supply::quote::{LineAsked, LineStanding, line_sums};
/// use bedwright_calc::supply::{Halves, Money, Rounding};
/// use rust_decimal::Decimal;
/// let line = LineAsked {
///     quantity: Decimal::from(3), price: Some(Money::new(Decimal::new(41_335, 3))), cost: None,
///     discount: Decimal::new(5, 2), tax: None, standing: LineStanding::Firm,
/// };
/// let sums = line_sums(&line, Rounding { places: 2, halves: Halves::Up }).unwrap();
/// assert_eq!(sums.net.unwrap().value().to_string(), "117.81");
/// ```
pub fn line_sums(line: &LineAsked, rounding: Rounding) -> Result<LineSums, Problem> {
    if line.quantity <= Decimal::ZERO {
        return Err(Problem::new(Term::Quantity, Fault::NotPositive { value: ratio(line.quantity) }));
    }
    within(Term::Quantity, line.quantity, MOST_QUANTITY)?;
    share(Term::Discount, line.discount)?;
    let each = |term: Term, money: Option<Money>| -> Result<Option<Money>, Problem> {
        let Some(money) = money else { return Ok(None) };
        within(term, money.value(), MOST_PRICE)?;
        money.of(line.quantity, rounding).map(Some)
    };
    let gross = each(Term::Price, line.price)?;
    let cost = each(Term::Cost, line.cost)?;
    let discount = gross.map(|gross| gross.of(line.discount, rounding)).transpose()?;
    let net = match (gross, discount) {
        (Some(gross), Some(discount)) => Some(gross.less(discount)?),
        _ => None,
    };
    Ok(LineSums { gross, discount, net, cost })
}

/// What firm lines, discount, freight and taxes come to. Lines without a price are counted as gaps and not added up.
///
/// The discount on the whole is rounded for each tax class (and once for lines without one); its total is their sum.
///
/// # Errors
/// What makes no sense, by its term; a line that has no answer of its own is waited for; a sum beyond 28 digits.
///
/// # Sources
/// Arithmetic; halves by the rule that the quote states.
///
/// # Example
/// 117.81 of one line and 10.00 freight, 8.25 % on both: 127.81 and 10.544325, so 138.35.
/// ```
/// use bedwright_calc::supply::quote::{LineAsked, LineStanding, Whole, line_sums, totals};
/// use bedwright_calc::supply::{Halves, Money, Rounding};
/// use rust_decimal::Decimal;
/// let rounding = Rounding { places: 2, halves: Halves::Up };
/// let line = LineAsked {
///     quantity: Decimal::ONE, price: Some(Money::new(Decimal::new(117_81, 2))), cost: None,
///     discount: Decimal::ZERO, tax: Some(0), standing: LineStanding::Firm,
/// };
/// let freight = Some((Money::new(Decimal::from(10)), Some(0)));
/// let whole = Whole { discount: Decimal::ZERO, freight, taxes: &[Decimal::new(825, 4)], rounding };
/// let sums = line_sums(&line, rounding);
/// let totals = totals(&[(line, sums)], &whole).unwrap();
/// assert_eq!(totals.total.value().to_string(), "138.35");
/// ```
pub fn totals(lines: &[(LineAsked, Result<LineSums, Problem>)], whole: &Whole) -> Result<Totals, Problem> {
    let most = u32::try_from(MOST_LINES).unwrap_or(u32::MAX);
    if lines.len() > MOST_LINES {
        let value = Amount::Count(u32::try_from(lines.len()).unwrap_or(u32::MAX));
        let (low, high) = (Amount::Count(0), Amount::Count(most));
        return Err(Problem::new(Term::QuoteLines, Fault::OutOfRange { value, low, high }));
    }
    share(Term::Discount, whole.discount)?;
    for rate in whole.taxes {
        share(Term::TaxRate, *rate)?;
    }
    let nought = Money::default();
    // What is charged in each class; the last is of no class.
    let mut classes = vec![nought; whole.taxes.len() + 1];
    let mut found = Totals {
        lines: nought,
        discount: nought,
        freight: nought,
        net: nought,
        taxes: Vec::new(),
        total: nought,
        cost: nought,
        unpriced: 0,
        uncosted: 0,
        margin: None,
        margin_share: None,
    };
    for (line, sums) in lines.iter().filter(|(line, _)| line.standing == LineStanding::Firm) {
        let sums = (*sums).map_err(|problem| waits_for(problem.term))?;
        match sums.net {
            Some(net) => {
                found.lines = found.lines.plus(net)?;
                let class = class_mut(&mut classes, line.tax)?;
                *class = class.plus(net)?;
            }
            None => found.unpriced += 1,
        }
        match sums.cost {
            Some(cost) => found.cost = found.cost.plus(cost)?,
            None => found.uncosted += 1,
        }
    }
    for class in &mut classes {
        let off = class.of(whole.discount, whole.rounding)?;
        *class = class.less(off)?;
        found.discount = found.discount.plus(off)?;
    }
    let goods = found.lines.less(found.discount)?;
    if let Some((freight, class)) = whole.freight {
        within(Term::Freight, freight.value(), MOST_PRICE)?;
        found.freight = freight;
        let class = class_mut(&mut classes, class)?;
        *class = class.plus(freight)?;
    }
    found.net = goods.plus(found.freight)?;
    found.total = found.net;
    for (rate, base) in whole.taxes.iter().zip(&classes) {
        let amount = base.of(*rate, whole.rounding)?;
        found.total = found.total.plus(amount)?;
        found.taxes.push(TaxSum { base: *base, amount });
    }
    if found.unpriced == 0 && found.uncosted == 0 {
        let margin = goods.less(found.cost)?;
        found.margin = Some(margin);
        let four = Rounding { places: 4, ..whole.rounding };
        found.margin_share = exact::quotient_rounded(margin.value(), goods.value(), four);
    }
    Ok(found)
}

fn class_mut(classes: &mut [Money], class: Option<usize>) -> Result<&mut Money, Problem> {
    let none = classes.len().saturating_sub(1);
    let at = class.unwrap_or(none);
    // A class that isn't there can't be charged: the rate is what is missing.
    if class.is_some_and(|class| class >= none) {
        return Err(Problem::new(Term::TaxRate, Fault::Missing));
    }
    classes.get_mut(at).ok_or(TOO_LARGE)
}

const fn waits_for(other: Term) -> Problem {
    Problem::new(Term::QuoteTotal, Fault::WaitsFor { other })
}

fn ratio(value: Decimal) -> Amount {
    Amount::Ratio(exact::nearly(value))
}

/// Refuses what is below nought, above the most, or has more places than anybody means.
fn within(term: Term, value: Decimal, most: i64) -> Result<(), Problem> {
    let (low, high) = (Amount::Ratio(0.0), Amount::Ratio(most as f64));
    if value < Decimal::ZERO || value > Decimal::from(most) {
        return Err(Problem::new(term, Fault::OutOfRange { value: ratio(value), low, high }));
    }
    places(term, value)
}

/// Refuses what isn't a share from 0 to 1.
fn share(term: Term, value: Decimal) -> Result<(), Problem> {
    let (low, high) = (Amount::Ratio(0.0), Amount::Ratio(1.0));
    if value < Decimal::ZERO || value > Decimal::ONE {
        let value = ratio(value);
        return Err(Problem::new(term, Fault::OutOfRange { value, low, high }));
    }
    places(term, value)
}

fn places(term: Term, value: Decimal) -> Result<(), Problem> {
    if value.normalize().scale() > MOST_PLACES {
        return Err(Problem::new(term, Fault::TooFine { places: MOST_PLACES }));
    }
    Ok(())
}

#[cfg(test)]
mod tests;
