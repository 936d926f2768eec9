//! What is refused, and what must hold for every quote. Sums against Python's decimals stand in `tests/native/reference.rs`.
#![allow(clippy::unwrap_used)]

use rust_decimal::Decimal;

use super::{LineAsked, LineStanding, PriceWay, Whole, freight, line_sums, price_from_cost, totals};
use crate::quantity::{Fault, Problem, Term};
use crate::supply::{Halves, Money, Rounding};

const CENTS: Rounding = Rounding { places: 2, halves: Halves::Up };

fn money(text: &str) -> Money {
    Money::new(decimal(text))
}

fn decimal(text: &str) -> Decimal {
    Decimal::from_str_exact(text).unwrap()
}

fn line(quantity: &str, price: Option<&str>, cost: Option<&str>) -> LineAsked {
    LineAsked {
        quantity: decimal(quantity),
        price: price.map(money),
        cost: cost.map(money),
        discount: Decimal::ZERO,
        tax: None,
        standing: LineStanding::Firm,
    }
}

fn whole(taxes: &[Decimal]) -> Whole<'_> {
    Whole { discount: Decimal::ZERO, freight: None, taxes, rounding: CENTS }
}

fn refused(result: Result<impl std::fmt::Debug, Problem>) -> (Term, &'static str) {
    let problem = result.unwrap_err();
    let fault = match problem.fault {
        Fault::NotPositive { .. } => "not positive",
        Fault::OutOfRange { .. } => "out of range",
        Fault::TooFine { .. } => "too fine",
        Fault::NoSolution => "no solution",
        Fault::Missing => "missing",
        Fault::WaitsFor { .. } => "waits",
        _ => "other",
    };
    (problem.term, fault)
}

#[test]
fn a_figure_that_can_t_be_one_is_refused_by_its_name() {
    let of = |line: LineAsked| refused(line_sums(&line, CENTS));
    assert_eq!(of(line("0", Some("1"), None)), (Term::Quantity, "not positive"));
    assert_eq!(of(line("-3", Some("1"), None)), (Term::Quantity, "not positive"));
    assert_eq!(of(line("10000000.1", Some("1"), None)), (Term::Quantity, "out of range"));
    assert_eq!(of(line("0.000000001", Some("1"), None)), (Term::Quantity, "too fine"));
    assert_eq!(of(line("1", Some("-0.01"), None)), (Term::Price, "out of range"));
    assert_eq!(of(line("1", Some("1000000000.01"), None)), (Term::Price, "out of range"));
    assert_eq!(of(line("1", Some("10000000000000000000000000000"), None)), (Term::Price, "out of range"));
    assert_eq!(of(line("1", Some("1"), Some("-1"))), (Term::Cost, "out of range"));
    for off in ["-0.01", "1.01"] {
        let line = LineAsked { discount: decimal(off), ..line("1", Some("1"), None) };
        assert_eq!(of(line), (Term::Discount, "out of range"), "{off}");
    }
    let margin = |share: &str| refused(price_from_cost(money("1"), PriceWay::Margin(decimal(share)), CENTS));
    assert_eq!(margin("1"), (Term::Margin, "no solution"));
    assert_eq!(margin("1.2"), (Term::Margin, "out of range"));
    let markup = price_from_cost(money("1"), PriceWay::Markup(decimal("-0.5")), CENTS);
    assert_eq!(refused(markup), (Term::Markup, "out of range"));
    let rate = money("1");
    assert_eq!(refused(freight(decimal("-1"), rate, None, CENTS)), (Term::FreightWeight, "out of range"));
    assert_eq!(refused(freight(Decimal::ONE, money("-1"), None, CENTS)), (Term::FreightRate, "out of range"));
    assert_eq!(refused(freight(Decimal::ONE, rate, Some(money("-1")), CENTS)), (Term::Freight, "out of range"));
}

#[test]
fn the_largest_quote_there_can_be_is_still_exact() {
    let most = line("10000000", Some("1000000000"), Some("999999999.999999"));
    let sums = line_sums(&most, CENTS).unwrap();
    assert_eq!(sums.gross, Some(money("10000000000000000")));
    assert_eq!(sums.cost, Some(money("9999999999999990.00")));
    let lines = vec![(most, Ok(sums)); 10_000];
    let taxes = [decimal("0.12345678")];
    let found = totals(&lines, &Whole { discount: decimal("0.98765432"), ..whole(&taxes) }).unwrap();
    assert_eq!(found.lines, money("100000000000000000000"));
    assert_eq!(found.discount, money("98765432000000000000"));
    let more = vec![(most, Ok(sums)); 10_001];
    assert_eq!(refused(totals(&more, &whole(&[]))), (Term::QuoteLines, "out of range"));
}

#[test]
fn a_missing_price_is_a_gap_and_never_nought() {
    let (priced, gap) = (line("2", Some("5"), Some("3")), line("7", None, None));
    let lines = [(priced, line_sums(&priced, CENTS)), (gap, line_sums(&gap, CENTS))];
    let found = totals(&lines, &whole(&[])).unwrap();
    assert_eq!((found.total, found.unpriced, found.uncosted), (money("10"), 1, 1));
    assert_eq!((found.margin, found.margin_share), (None, None));
    assert_eq!(lines.last().unwrap().1.unwrap().net, None);
}

#[test]
fn optional_and_alternate_lines_are_worked_out_and_never_counted() {
    let firm = line("1", Some("100"), Some("60"));
    let other = |standing| LineAsked { standing, ..line("1", Some("33"), None) };
    let lines = [firm, other(LineStanding::Optional), other(LineStanding::Alternate)];
    let lines: Vec<_> = lines.iter().map(|line| (*line, line_sums(line, CENTS))).collect();
    let found = totals(&lines, &whole(&[])).unwrap();
    assert_eq!((found.total, found.unpriced, found.uncosted), (money("100"), 0, 0));
    assert_eq!((found.margin, found.margin_share), (Some(money("40")), Some(decimal("0.4"))));
    assert_eq!(lines.last().unwrap().1.unwrap().net, Some(money("33")));
}

#[test]
fn a_total_waits_for_a_line_that_makes_no_sense_and_for_a_tax_class_that_is_gone() {
    let wrong = line("-1", Some("1"), None);
    let lines = [(wrong, line_sums(&wrong, CENTS))];
    assert_eq!(refused(totals(&lines, &whole(&[]))), (Term::QuoteTotal, "waits"));
    let gone = LineAsked { tax: Some(2), ..line("1", Some("1"), None) };
    let lines = [(gone, line_sums(&gone, CENTS))];
    assert_eq!(refused(totals(&lines, &whole(&[Decimal::ZERO, Decimal::ZERO]))), (Term::TaxRate, "missing"));
}

/// Nothing quoted: every sum is nought, and no share of nought is made up.
#[test]
fn an_empty_quote_comes_to_nought_and_has_no_margin_share() {
    let found = totals(&[], &whole(&[decimal("0.2")])).unwrap();
    assert_eq!((found.total, found.margin), (Money::default(), Some(Money::default())));
    assert_eq!(found.margin_share, None);
    assert_eq!(found.taxes.len(), 1);
}
