//! A quote worked out.

use std::sync::Arc;

use bedwright_calc::quantity::{Fault, Mass, Problem, Term};
use bedwright_calc::supply::quote::{Totals, Whole, freight, totals};
use bedwright_calc::supply::{Money, Rounding, currency_places};
use rust_decimal::Decimal;

use super::exact::{FieldFault, exact};
use super::lines::{LineAnswer, MONEY, Ways, lines};
use super::{Ask, Priced};
use crate::answers::water::WaterAnswers;
use crate::answers::{JobBill, VesselAnswers};
use crate::entry::{Dimension, Misread, Unit};
use crate::field::QuoteField;
use crate::id::Id;
use crate::job::Job;
use crate::sections::quote::{Quote, QuoteText, UNTAXED};
use crate::words::Manner;

/// What a quote is worked out from.
#[derive(Clone, Copy)]
pub struct QuoteSources<'a> {
    /// The job.
    pub job: &'a Job,
    /// What its vessels say.
    pub answers: &'a [Arc<VesselAnswers>],
    /// What the water side of them says, as far as it is asked.
    pub waters: &'a [(Id, Arc<WaterAnswers>)],
    /// Its bill.
    pub bill: &'a JobBill,
    /// The price lists.
    pub prices: &'a dyn Fn(Ask<'_>) -> Option<Priced>,
    /// How its texts are put into words.
    pub manner: Manner,
}

/// A quote worked out.
#[derive(Clone, Debug, PartialEq)]
pub struct QuoteAnswers {
    /// The code of its currency; empty where nobody said.
    pub currency: String,
    /// How amounts are rounded.
    pub rounding: Rounding,
    /// Every line, removed ones too.
    pub lines: Vec<LineAnswer>,
    /// The share taken off the whole.
    pub discount: Decimal,
    /// The tax classes: name and rate.
    pub taxes: Vec<(String, Decimal)>,
    /// Freight, where a rate or a least charge was typed.
    pub freight: Option<FreightAnswer>,
    /// What it comes to.
    pub totals: Result<Totals, Problem>,
    /// What is wrong with entries of the whole.
    pub faults: Vec<(QuoteField, FieldFault)>,
    /// What is wrong with the rates of tax classes, by place; a rate that isn't there is one.
    pub tax_faults: Vec<(usize, FieldFault)>,
    /// What is wrong with the table of labour, by place; true for the hours, false for the size.
    pub labour_faults: Vec<(usize, bool, FieldFault)>,
}

impl QuoteAnswers {
    /// The lines that have neither a price nor a word that it is given on request.
    pub fn gaps(&self) -> impl Iterator<Item = &LineAnswer> {
        self.lines.iter().filter(|line| line.is_gap())
    }

    /// Whether anything typed makes no sense: of the whole, of a tax class, of a line that stands.
    #[must_use]
    pub fn is_wrong(&self) -> bool {
        !self.faults.is_empty()
            || !self.tax_faults.is_empty()
            || self.totals.is_err()
            || self.lines.iter().any(|line| line.stands() && !line.faults.is_empty())
    }
}

/// Freight worked out.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct FreightAnswer {
    /// The weight it is charged by, in whole pounds or kilograms, rounded up; none where only a least charge is typed.
    pub weight: Option<Decimal>,
    /// Whether that is kilograms.
    pub kilogram: bool,
    /// Whether lines whose weight isn't known are left out of it.
    pub without_parts: bool,
    /// For one pound or kilogram.
    pub rate: Option<Money>,
    /// What it comes to.
    pub amount: Money,
}

/// Works a quote out.
#[must_use]
pub fn quote_answers(sources: &QuoteSources<'_>) -> QuoteAnswers {
    let quote = &sources.job.quote.body;
    let currency = quote.text(QuoteText::Currency).trim().to_ascii_uppercase();
    let places = quote.places.unwrap_or_else(|| currency_places(&currency)).min(4);
    let rounding = Rounding { places, halves: quote.halves };
    let mut faults = Vec::new();
    let mut typed = |field: QuoteField, term: Term| {
        let entry = quote.entries.get(field).filter(|entry| !entry.text.trim().is_empty())?;
        exact(entry, term).map_err(|fault| faults.push((field, fault))).ok()
    };
    let share = typed(QuoteField::Share, Term::Markup);
    let discount = typed(QuoteField::Discount, Term::Discount).unwrap_or_default();
    let [rate, least, hour_price, hour_cost] = MONEY.map(|field| {
        let term = match field {
            QuoteField::FreightRate => Term::FreightRate,
            QuoteField::FreightLeast => Term::Freight,
            QuoteField::LabourCost => Term::Cost,
            _ => Term::Price,
        };
        typed(field, term).map(Money::new)
    });
    for field in [QuoteField::WashTime, QuoteField::WashesPerYear, QuoteField::SaltPerYear, QuoteField::FreightWeight] {
        if let Err(misread) = measured(quote, field)
            && misread != Misread::Empty
        {
            let unit = quote.entries.get(field).map_or(Unit::One, |entry| entry.unit);
            faults.push((field, FieldFault::Misread(misread, unit)));
        }
    }
    let mut tax_faults = Vec::new();
    let taxes = taxes(quote, &mut tax_faults);
    let ways = Ways { quote, taxes: &quote.taxes, rounding, share, hour: (hour_price, hour_cost) };
    let lines = lines(sources, &ways);
    let freight = match freight_of(sources, &lines, rate, least, rounding) {
        Ok(freight) => freight,
        Err((field, problem)) => {
            faults.push((field, FieldFault::Problem(problem)));
            None
        }
    };
    let class = if quote.taxes.is_empty() || is_untaxed(quote) { None } else { Some(0) };
    let rates: Vec<Decimal> = taxes.iter().map(|(_, rate)| *rate).collect();
    let whole = Whole { discount, freight: freight.map(|freight| (freight.amount, class)), taxes: &rates, rounding };
    let added: Vec<_> = lines
        .iter()
        .filter(|line| line.stands() && !line.on_request)
        .map(|line| {
            let sums = match (line.sums, line.faults.first()) {
                (Some(sums), _) => Ok(sums),
                (None, Some((_, FieldFault::Problem(problem)))) => Err(*problem),
                (None, _) => Err(Problem::new(Term::Quantity, Fault::Missing)),
            };
            (line.asked(line.quantity.unwrap_or_default()), sums)
        })
        .collect();
    let totals = totals(&added, &whole);
    if let Err(problem) = &totals
        && problem.term == Term::Discount
    {
        faults.push((QuoteField::Discount, FieldFault::Problem(*problem)));
    }
    QuoteAnswers {
        currency,
        rounding,
        lines,
        discount,
        taxes,
        freight,
        totals,
        faults,
        tax_faults,
        labour_faults: labour_faults(quote),
    }
}

/// Freight takes the usual class, the first, unless that is the class of what is not taxed.
fn is_untaxed(quote: &Quote) -> bool {
    quote.taxes.first().is_some_and(|tax| tax.id.as_str() == UNTAXED)
}

/// What was typed of a field that isn't money, in SI.
///
/// # Errors
/// Why it makes no sense; [`Misread::Empty`] where nothing was typed.
pub(super) fn measured(quote: &Quote, field: QuoteField) -> Result<f64, Misread> {
    let entry = quote.entries.get(field).filter(|entry| !entry.text.trim().is_empty()).ok_or(Misread::Empty)?;
    let understood = entry.understood()?;
    let wanted = field.dimension();
    if understood.dimension != wanted {
        return Err(Misread::WrongDimension { found: understood.written, wanted });
    }
    Ok(understood.si)
}

/// Name and rate of each class; what is wrong with a rate goes to the faults, and it is nought.
fn taxes(quote: &Quote, faults: &mut Vec<(usize, FieldFault)>) -> Vec<(String, Decimal)> {
    let mut taxes = Vec::new();
    for (at, tax) in quote.taxes.iter().enumerate() {
        let typed = tax.rate.as_ref().filter(|entry| !entry.text.trim().is_empty());
        let missing = Problem::new(Term::TaxRate, Fault::Missing);
        let rate = typed.ok_or(FieldFault::Problem(missing)).and_then(|entry| exact(entry, Term::TaxRate));
        let rate = rate.unwrap_or_else(|fault| {
            faults.push((at, fault));
            Decimal::ZERO
        });
        taxes.push((tax.name.trim().to_owned(), rate));
    }
    taxes
}

fn labour_faults(quote: &Quote) -> Vec<(usize, bool, FieldFault)> {
    let mut faults = Vec::new();
    for (at, row) in quote.labour.iter().enumerate() {
        if let Some(entry) = row.hours.as_ref().filter(|entry| !entry.text.trim().is_empty())
            && let Err(fault) = exact(entry, Term::LabourHours)
        {
            faults.push((at, true, fault));
        }
        if let Some(entry) = row.up_to.as_ref().filter(|entry| !entry.text.trim().is_empty()) {
            let wrong = match entry.understood() {
                Err(misread) => Some(misread),
                Ok(read) if read.dimension != Dimension::Length => {
                    Some(Misread::WrongDimension { found: read.written, wanted: Dimension::Length })
                }
                Ok(_) => None,
            };
            faults.extend(wrong.map(|misread| (at, false, FieldFault::Misread(misread, entry.unit))));
        }
    }
    faults
}

/// What freight comes to; none where neither a rate nor a least charge was typed, nor there is anything to bring.
fn freight_of(
    sources: &QuoteSources<'_>,
    lines: &[LineAnswer],
    rate: Option<Money>,
    least: Option<Money>,
    rounding: Rounding,
) -> Result<Option<FreightAnswer>, (QuoteField, Problem)> {
    let quote = &sources.job.quote.body;
    if rate.is_none() && least.is_none() || !lines.iter().any(LineAnswer::stands) {
        return Ok(None);
    }
    let kilogram = quote.freight_by_kilogram;
    let unit = if kilogram { Unit::Kilogram } else { Unit::Pound };
    let typed = measured(quote, QuoteField::FreightWeight).ok();
    let (kilograms, without_parts) = match typed {
        Some(kilograms) => (kilograms, false),
        None => weight_of(sources, lines),
    };
    // Whole units, rounded up as carriers do; a hair over a whole one is that one.
    let units = (unit.from_si(kilograms) - 1e-6).ceil().max(0.0);
    let units = super::read_decimal(&crate::decimal::to_places(units, 0)).unwrap_or_default();
    let amount = freight(units, rate.unwrap_or_default(), least, rounding).map_err(|problem| {
        let field = match problem.term {
            Term::FreightWeight => QuoteField::FreightWeight,
            Term::Freight => QuoteField::FreightLeast,
            _ => QuoteField::FreightRate,
        };
        (field, problem)
    })?;
    Ok(Some(FreightAnswer { weight: rate.map(|_| units), kilogram, without_parts, rate, amount }))
}

/// The weight of what firm lines of the bill bring, in kilograms, and whether something of it isn't known.
fn weight_of(sources: &QuoteSources<'_>, lines: &[LineAnswer]) -> (f64, bool) {
    let mut known = 0.0;
    let mut without = false;
    for line in &sources.bill.bill.pooled {
        let key = line.item.key();
        if !lines.iter().any(|answer| answer.key == key && answer.stands()) {
            continue;
        }
        match &line.mass {
            Some(mass) => known += kilograms(mass.value),
            None => without = true,
        }
    }
    (known, without)
}

fn kilograms(mass: Mass) -> f64 {
    mass.value
}
