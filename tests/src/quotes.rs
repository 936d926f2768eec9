//! What quotes come to, against `quote.csv` (Python's decimals): equal in every digit.

use bedwright_calc::supply::quote::{
    LineAsked, LineStanding, PriceWay, Totals, Whole, freight, line_sums, price_from_cost, totals,
};
use bedwright_calc::supply::{Halves, Money, Rounding};
use rust_decimal::Decimal;

use crate::Checked;
use crate::table::{Row, rows};

const QUOTES: &str = include_str!("../reference/quote.csv");

/// The decimal in a cell; none where it is empty.
fn decimal(text: &str) -> Option<Decimal> {
    (!text.is_empty()).then(|| Decimal::from_str_exact(text).unwrap_or_else(|_| panic!("“{text}” is no decimal")))
}

fn needed(text: &str) -> Decimal {
    decimal(text).unwrap_or_else(|| panic!("a decimal is missing"))
}

/// The parts of a cell; an empty cell has none.
fn parts(text: &str, between: char) -> Vec<&str> {
    if text.is_empty() { Vec::new() } else { text.split(between).collect() }
}

fn class(text: &str) -> Option<usize> {
    text.parse().ok()
}

fn line(text: &str, rounding: Rounding) -> LineAsked {
    let cells: Vec<&str> = text.split(':').collect();
    let [quantity, price, cost, way, discount, tax, standing] = cells.as_slice() else { panic!("line {text}") };
    let cost = decimal(cost).map(Money::new);
    let from_cost = |way: PriceWay| cost.map(|cost| price_from_cost(cost, way, rounding).unwrap());
    let price = match way.split_once(' ') {
        None => decimal(price).map(Money::new),
        Some(("markup", share)) => from_cost(PriceWay::Markup(needed(share))),
        Some((_, share)) => from_cost(PriceWay::Margin(needed(share))),
    };
    LineAsked {
        quantity: needed(quantity),
        price,
        cost,
        discount: needed(discount),
        tax: class(tax),
        standing: match *standing {
            "firm" => LineStanding::Firm,
            "optional" => LineStanding::Optional,
            _ => LineStanding::Alternate,
        },
    }
}

/// Every sum of every quote is the reference's, by value and to the last digit.
#[must_use]
pub fn sums() -> Checked {
    let mut checked = Checked::default();
    for row in rows(QUOTES) {
        quote(&mut checked, &row);
    }
    checked
}

fn quote(checked: &mut Checked, row: &Row) {
    let halves = if row.text("halves") == "up" { Halves::Up } else { Halves::Even };
    let rounding = Rounding { places: row.text("places").parse().unwrap(), halves };
    let taxes: Vec<Decimal> = parts(row.text("taxes"), ';').into_iter().map(needed).collect();
    let charge = parts(row.text("freight"), ':');
    let charge = match charge.as_slice() {
        [weight, rate, least, tax] => {
            let (rate, least) = (Money::new(needed(rate)), decimal(least).map(Money::new));
            Some((freight(needed(weight), rate, least, rounding).unwrap(), class(tax)))
        }
        _ => None,
    };
    let lines: Vec<_> = parts(row.text("lines"), ';').into_iter().map(|text| line(text, rounding)).collect();
    let lines: Vec<_> = lines.into_iter().map(|line| (line, line_sums(&line, rounding))).collect();
    let whole = Whole { discount: needed(row.text("discount")), freight: charge, taxes: &taxes, rounding };
    let id = row.text("id");
    let found: Totals = match totals(&lines, &whole) {
        Ok(found) => found,
        Err(why) => return checked.refuse(id, why),
    };
    let mut same = |what: &str, ours: Option<Money>| {
        let wanted = decimal(row.text(what));
        equal(checked, &format!("{id} {what}"), ours.map(Money::value), wanted);
    };
    same("sum", Some(found.lines));
    same("off", Some(found.discount));
    same("freight_charged", charge.map(|(money, _)| money));
    same("net", Some(found.net));
    same("total", Some(found.total));
    same("cost", Some(found.cost));
    same("margin", found.margin);
    same("margin_share", found.margin_share.map(Money::new));
    let nets = lines.iter().map(|(_, sums)| sums.unwrap().net).collect();
    let costs = lines.iter().map(|(_, sums)| sums.unwrap().cost).collect();
    list(checked, row, "nets", nets);
    list(checked, row, "costs", costs);
    list(checked, row, "bases", found.taxes.iter().map(|tax| Some(tax.base)).collect());
    list(checked, row, "tax_amounts", found.taxes.iter().map(|tax| Some(tax.amount)).collect());
}

fn list(checked: &mut Checked, row: &Row, what: &str, ours: Vec<Option<Money>>) {
    let id = format!("{} {what}", row.text("id"));
    // One thing that isn't known stands as an empty cell.
    let wanted: Vec<&str> = if ours.len() == 1 { vec![row.text(what)] } else { parts(row.text(what), ';') };
    checked.expect(&id, wanted.len() == ours.len(), (&wanted, &ours));
    for (ours, wanted) in ours.into_iter().zip(wanted) {
        equal(checked, &id, ours.map(Money::value), decimal(wanted));
    }
}

fn equal(checked: &mut Checked, id: &str, ours: Option<Decimal>, wanted: Option<Decimal>) {
    checked.expect(id, ours == wanted, (ours, wanted));
    // The digits themselves, for the digests that native and wasm must share.
    if let Some(ours) = ours {
        checked.values.push(ours.normalize().mantissa() as f64);
    }
}
