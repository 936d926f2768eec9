//! The lines of a quote: those of the bill, of work, and the person's own.

use std::sync::Arc;

use bedwright_calc::quantity::{Fault, Problem, Term, metres};
use bedwright_calc::supply::quote::{
    LabourRow, LineAsked, LineStanding, LineSums, PriceWay, labour_row, line_sums, price_from_cost,
};
use bedwright_calc::supply::{Money, Rounding};
use rust_decimal::Decimal;

use super::copy::LineGroup;
use super::exact::{FieldFault, exact};
use super::{Ask, Priced, QuoteSources};
use crate::entry::Dimension;
use crate::field::{LineField, QuoteField};
use crate::papers::vessel_name;
use crate::sections::quote::{LABOUR, LineText, OWN, PriceBy, Quote, QuoteLine, TaxClass, UNTAXED};

/// Where the price of a line comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PriceFrom {
    /// Nowhere: it is a gap.
    Nowhere,
    /// It was typed on the line.
    Typed,
    /// The price list, or the hourly rate.
    List,
    /// The cost, by markup or margin.
    Cost,
}

/// A line worked out.
#[derive(Clone, Debug, PartialEq)]
pub struct LineAnswer {
    /// Its key.
    pub key: String,
    /// What it belongs to.
    pub group: LineGroup,
    /// What it is called.
    pub name: String,
    /// Its part number.
    pub part_number: String,
    /// What it is counted by.
    pub unit: String,
    /// What is to be said of it.
    pub note: String,
    /// How many, or how much; none while that isn't known.
    pub quantity: Option<Decimal>,
    /// One sells for; none is a gap.
    pub price: Option<Money>,
    /// Where that comes from.
    pub from: PriceFrom,
    /// One costs, where it is known.
    pub cost: Option<Money>,
    /// The share taken off.
    pub discount: Decimal,
    /// Its tax class, by place.
    pub tax: Option<usize>,
    /// Whether it counts.
    pub standing: LineStanding,
    /// The key of the line it stands in for.
    pub instead_of: String,
    /// Whether its price is given on request.
    pub on_request: bool,
    /// Why it was taken out; none while it stands.
    pub removed: Option<String>,
    /// What it comes to; none while its quantity isn't known or makes no sense.
    pub sums: Option<LineSums>,
    /// What is wrong with it, by field; none for a field that isn't the person's.
    pub faults: Vec<(Option<LineField>, FieldFault)>,
}

impl LineAnswer {
    /// Whether it is offered.
    #[must_use]
    pub fn stands(&self) -> bool {
        self.removed.is_none()
    }

    /// Whether it stands in the quote with no price, and nobody said that it is given on request.
    #[must_use]
    pub fn is_gap(&self) -> bool {
        self.stands() && !self.on_request && self.sums.is_none_or(|sums| sums.net.is_none())
    }

    pub(super) fn asked(&self, quantity: Decimal) -> LineAsked {
        LineAsked {
            quantity,
            price: self.price,
            cost: self.cost,
            discount: self.discount,
            tax: self.tax,
            standing: self.standing,
        }
    }
}

/// How prices are made, read once for all lines.
pub(super) struct Ways<'a> {
    pub quote: &'a Quote,
    pub taxes: &'a [TaxClass],
    pub rounding: Rounding,
    /// The share of [`QuoteField::Share`]; none while it isn't there or makes no sense.
    pub share: Option<Decimal>,
    /// What an hour sells for and costs, where it was typed.
    pub hour: (Option<Money>, Option<Money>),
}

/// What is known of a line before anything is said of it.
struct Known {
    key: String,
    group: LineGroup,
    name: String,
    unit: String,
    part_number: String,
    quantity: Result<Decimal, Problem>,
    priced: Priced,
}

/// Every line, removed ones too: the bill's in its order, then work vessel by vessel, then the person's own.
pub(super) fn lines(sources: &QuoteSources<'_>, ways: &Ways<'_>) -> Vec<LineAnswer> {
    let none = Arc::new(QuoteLine::default());
    let said = |key: &str| ways.quote.line(key).unwrap_or(&none);
    let mut all = Vec::new();
    for line in &sources.bill.bill.pooled {
        let key = line.item.key();
        let priced = (sources.prices)(Ask::Item(&line.item)).unwrap_or_default();
        let picked = sources.job.picking.body.lines.get(&key).map_or("", |pick| pick.part_number.trim());
        let known = Known {
            group: LineGroup::Bill,
            name: sources.manner.item(&line.item),
            unit: sources.manner.unit_of(line).to_owned(),
            part_number: if picked.is_empty() { priced.part_number.clone() } else { picked.to_owned() },
            quantity: Ok(Decimal::from(line.quantity)),
            priced,
            key,
        };
        let said = said(&known.key);
        all.push(answer(ways, known, said));
    }
    for known in work(sources, ways) {
        let said = said(&known.key);
        all.push(answer(ways, known, said));
    }
    for (key, said) in ways.quote.lines.iter().filter(|(key, _)| key.starts_with(OWN)) {
        let part_number = said.text(LineText::PartNumber).trim();
        let row = if part_number.is_empty() { None } else { (sources.prices)(Ask::PartNumber(part_number)) };
        let priced = row.unwrap_or_default();
        let or = |typed: &str, listed: &str| if typed.is_empty() { listed.to_owned() } else { typed.to_owned() };
        let known = Known {
            key: key.clone(),
            group: LineGroup::Own,
            name: or(said.text(LineText::Name).trim(), &priced.name),
            unit: or(said.text(LineText::Unit).trim(), &priced.unit),
            part_number: part_number.to_owned(),
            quantity: Ok(Decimal::ONE),
            priced,
        };
        all.push(answer(ways, known, said));
    }
    all
}

/// Work on every vessel, where there is a table that says how long it takes.
fn work(sources: &QuoteSources<'_>, ways: &Ways<'_>) -> Vec<Known> {
    if ways.quote.labour.is_empty() {
        return Vec::new();
    }
    let table: Vec<LabourRow> = ways
        .quote
        .labour
        .iter()
        .map(|row| {
            // A size that makes no sense holds no vessel.
            let size = row.up_to.as_ref().map(|entry| match entry.understood() {
                Ok(read) if read.dimension == Dimension::Length => read.si,
                _ => f64::NAN,
            });
            let hours = row.hours.as_ref().and_then(|entry| exact(entry, Term::LabourHours).ok());
            LabourRow { kind: row.kind, up_to: size.map(metres), hours }
        })
        .collect();
    let kind = sources.job.head.body.kind;
    let rate = (sources.prices)(Ask::Key("labour:on_site")).unwrap_or_default();
    let (price, cost) = (ways.hour.0.or(rate.price), ways.hour.1.or(rate.cost));
    let missing = Problem::new(Term::LabourHours, Fault::Missing);
    sources
        .answers
        .iter()
        .map(|answers| {
            let nominal = answers.survey.nominal.map(|(diameter, _)| metres(diameter * 0.0254));
            let inside = answers.vessel.as_ref().map(|vessel| vessel.inside_diameter.value);
            let row = inside.or(nominal).and_then(|size| labour_row(&table, kind, size));
            let hours = row.and_then(|at| table.get(at)).and_then(|row| row.hours);
            let quantity = hours.ok_or(missing).and_then(|hours| Ok(Money::new(hours).times(answers.count)?.value()));
            Known {
                key: [LABOUR, answers.id.as_str()].concat(),
                group: LineGroup::Labour,
                name: sources.manner.work_on(kind, &vessel_name(sources.job, &answers.id, sources.manner)),
                unit: sources.manner.hours().to_owned(),
                part_number: rate.part_number.clone(),
                quantity,
                priced: Priced { price, cost, tax_class: rate.tax_class.clone(), ..Priced::default() },
            }
        })
        .collect()
}

fn answer(ways: &Ways<'_>, known: Known, said: &QuoteLine) -> LineAnswer {
    let mut faults = Vec::new();
    let mut typed = |field: LineField, term: Term| {
        let entry = said.entries.get(field).filter(|entry| !entry.text.trim().is_empty())?;
        exact(entry, term).map_err(|fault| faults.push((Some(field), fault))).ok()
    };
    let typed_quantity = typed(LineField::Quantity, Term::Quantity);
    let typed_price = typed(LineField::Price, Term::Price).map(Money::new);
    let typed_cost = typed(LineField::Cost, Term::Cost).map(Money::new);
    let discount = typed(LineField::Discount, Term::Discount).unwrap_or_default();
    let is_typed = |field: LineField| said.entries.get(field).is_some_and(|entry| !entry.text.trim().is_empty());
    let cost = typed_cost.or(known.priced.cost);
    let mut price = typed_price;
    let mut from = if price.is_some() { PriceFrom::Typed } else { PriceFrom::Nowhere };
    // A typed price that makes no sense isn't replaced by another behind the person's back.
    if !is_typed(LineField::Price) && !said.on_request {
        match price_of(ways, known.group, known.priced.price, cost) {
            Ok(found) => (price, from) = found,
            Err(problem) => faults.push((None, FieldFault::Problem(problem))),
        }
    }
    if said.on_request {
        (price, from) = (None, PriceFrom::Nowhere);
    }
    let quantity = match (typed_quantity, known.quantity) {
        (Some(quantity), _) if known.group != LineGroup::Bill => Some(quantity),
        _ if known.group != LineGroup::Bill && is_typed(LineField::Quantity) => None,
        (_, Ok(quantity)) => Some(quantity),
        (_, Err(problem)) => {
            faults.push((Some(LineField::Quantity), FieldFault::Problem(problem)));
            None
        }
    };
    let mut answer = LineAnswer {
        key: known.key,
        group: known.group,
        name: known.name,
        part_number: known.part_number,
        unit: known.unit,
        note: said.text(LineText::Note).trim().to_owned(),
        quantity,
        price,
        from,
        cost,
        discount,
        tax: tax_of(ways.taxes, &said.tax, &known.priced.tax_class),
        standing: said.standing,
        instead_of: said.instead_of.clone(),
        on_request: said.on_request,
        removed: said.removed.clone(),
        sums: None,
        faults,
    };
    if let Some(quantity) = quantity {
        match line_sums(&answer.asked(quantity), ways.rounding) {
            Ok(sums) => answer.sums = Some(sums),
            Err(problem) => {
                let field = match problem.term {
                    Term::Quantity if known.group != LineGroup::Bill => Some(LineField::Quantity),
                    Term::Price => Some(LineField::Price),
                    Term::Cost => Some(LineField::Cost),
                    Term::Discount => Some(LineField::Discount),
                    _ => None,
                };
                answer.faults.push((field, FieldFault::Problem(problem)));
            }
        }
    }
    answer
}

/// The price of what isn't typed on the line. Hours have a rate of their own, whatever the way.
fn price_of(
    ways: &Ways<'_>,
    group: LineGroup,
    listed: Option<Money>,
    cost: Option<Money>,
) -> Result<(Option<Money>, PriceFrom), Problem> {
    let from_list = (listed, if listed.is_some() { PriceFrom::List } else { PriceFrom::Nowhere });
    let share = ways.share;
    let way = match ways.quote.way {
        PriceBy::List => return Ok(from_list),
        _ if group == LineGroup::Labour && listed.is_some() => return Ok(from_list),
        PriceBy::Markup => share.map(PriceWay::Markup),
        PriceBy::Margin => share.map(PriceWay::Margin),
    };
    match (way, cost) {
        (Some(way), Some(cost)) => Ok((Some(price_from_cost(cost, way, ways.rounding)?), PriceFrom::Cost)),
        _ => Ok((None, PriceFrom::Nowhere)),
    }
}

/// The tax class of a line: what was chosen, else the one that the list names, else the first.
fn tax_of(taxes: &[TaxClass], chosen: &str, listed: &str) -> Option<usize> {
    if chosen == UNTAXED {
        return None;
    }
    let by_id = taxes.iter().position(|tax| tax.id.as_str() == chosen);
    let listed = listed.trim();
    let by_name = || taxes.iter().position(|tax| !listed.is_empty() && tax.name.trim().eq_ignore_ascii_case(listed));
    by_id.or_else(by_name).or(if taxes.is_empty() { None } else { Some(0) })
}

/// The fields of a quote that are money.
pub(super) const MONEY: [QuoteField; 4] =
    [QuoteField::FreightRate, QuoteField::FreightLeast, QuoteField::LabourPrice, QuoteField::LabourCost];
