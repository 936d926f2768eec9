//! Two revisions of a quote, line by line.

use bedwright_calc::supply::Money;
use bedwright_calc::supply::quote::LineStanding;
use rust_decimal::Decimal;

use super::copy::{CopyLine, QuoteCopy};

/// What became of a line.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Change {
    /// It is the same.
    Same,
    /// It came.
    Added,
    /// It went.
    Gone,
    /// It is another quantity, price, discount, name, tax or standing.
    Changed,
}

/// A line as it stands in one of the two.
#[derive(Clone, Debug, PartialEq)]
pub struct Side {
    /// What it is called there.
    pub name: String,
    /// How many, or how much.
    pub quantity: Option<Decimal>,
    /// What it is counted by.
    pub unit: String,
    /// One sells for.
    pub price: Option<Money>,
    /// What it comes to.
    pub net: Option<Money>,
    /// Whether it counts.
    pub standing: LineStanding,
    /// Whether its price is given on request.
    pub on_request: bool,
    /// The share taken off.
    pub discount: Decimal,
    /// Its tax class.
    pub tax: String,
    /// What is said of it.
    pub note: String,
}

/// A line of both.
#[derive(Clone, Debug, PartialEq)]
pub struct LineChange {
    /// Its key.
    pub key: String,
    /// What became of it.
    pub change: Change,
    /// As it was.
    pub before: Option<Side>,
    /// As it is.
    pub after: Option<Side>,
}

/// Every line of both, in the order of the later one; those that went stand at the end.
#[must_use]
pub fn compared(before: &QuoteCopy, after: &QuoteCopy) -> Vec<LineChange> {
    let of = |copy: &QuoteCopy, key: &str| copy.lines.iter().find(|line| line.key == key).map(side);
    let mut all: Vec<LineChange> = after
        .lines
        .iter()
        .map(|line| {
            let (was, is) = (of(before, &line.key), side(line));
            let change = match &was {
                None => Change::Added,
                Some(was) if *was == is => Change::Same,
                Some(_) => Change::Changed,
            };
            LineChange { key: line.key.clone(), change, before: was, after: Some(is) }
        })
        .collect();
    for line in &before.lines {
        if of(after, &line.key).is_none() {
            let was = Some(side(line));
            all.push(LineChange { key: line.key.clone(), change: Change::Gone, before: was, after: None });
        }
    }
    all
}

fn side(line: &CopyLine) -> Side {
    Side {
        name: line.name.clone(),
        quantity: line.quantity,
        unit: line.unit.clone(),
        price: line.price,
        net: line.net,
        standing: line.standing,
        on_request: line.on_request,
        discount: line.discount,
        tax: line.tax.clone(),
        note: line.note.clone(),
    }
}
