//! All that would be printed of a quote, frozen.

use bedwright_calc::supply::quote::LineStanding;
use bedwright_calc::supply::{Halves, Money};
use rust_decimal::Decimal;

use super::facts::{assumptions, packs, yearly};
use super::record::issued;
use super::work::{QuoteAnswers, QuoteSources};
use crate::id::Id;
use crate::papers::left_out;
use crate::sections::SectionName;
use crate::sections::quote::QuoteText;
use crate::sections::survey::ids;
use crate::words::{Language, QuoteLabel, choices};

/// What a line belongs to.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum LineGroup {
    /// The bill of materials.
    Bill,
    /// Work.
    Labour,
    /// The person's own.
    Own,
}

ids!(LineGroup { Bill = "bill", Labour = "labour", Own = "own" });

/// A copy of a quote: texts and figures as they were, no reference to anything that may change.
#[derive(Clone, Debug, PartialEq)]
pub struct QuoteCopy {
    /// The record it is; empty for a draft.
    pub id: Id,
    /// Which revision, from 1; nought for a draft.
    pub number: u32,
    /// The day it was issued, as `2026-11-24`.
    pub day: String,
    /// The last day it holds, as it was typed.
    pub valid_until: String,
    /// The version of the price list it rests on.
    pub catalogue: String,
    /// The language its texts are in.
    pub language: Language,
    /// Number of the job in the person's own books; the first letters of its name without one.
    pub document: String,
    /// What the job is called.
    pub title: String,
    /// Whom it is for.
    pub customer: String,
    /// Where it is.
    pub site: String,
    /// Whose quote it is.
    pub owner: String,
    /// What the visit is for, in words.
    pub kind: String,
    /// Whether every name and figure is invented.
    pub sample: bool,
    /// The code of its currency.
    pub currency: String,
    /// Decimal places of that.
    pub places: u32,
    /// What became of halves.
    pub halves: Halves,
    /// The lines that stand.
    pub lines: Vec<CopyLine>,
    /// What was taken out: its name, and why.
    pub removed: Vec<(String, String)>,
    /// Freight.
    pub freight: Option<CopyFreight>,
    /// The tax classes.
    pub taxes: Vec<CopyTax>,
    /// What it comes to.
    pub totals: CopyTotals,
    /// What was measured and what was assumed, a sentence each.
    pub assumptions: Vec<String>,
    /// Packs for each vessel and pooled, a sentence each.
    pub packs: Vec<String>,
    /// What the vessels take in a year, a sentence each.
    pub yearly: Vec<String>,
    /// Vessels that aren't counted, and why.
    pub left_out: Vec<String>,
    /// What isn't part of it.
    pub exclusions: String,
    /// What is to be said besides.
    pub notes: String,
    /// The customer's own words.
    pub customer_words: String,
}

/// A line of a copy.
#[derive(Clone, Debug, PartialEq)]
pub struct CopyLine {
    /// Its key: the same line has the same in every revision.
    pub key: String,
    /// What it belongs to.
    pub group: LineGroup,
    /// What it is called.
    pub name: String,
    /// Its part number.
    pub part_number: String,
    /// What is to be said of it.
    pub note: String,
    /// How many, or how much; none in a draft where that isn't known.
    pub quantity: Option<Decimal>,
    /// What it is counted by.
    pub unit: String,
    /// One sells for; none for a gap in a draft, or where it is given on request.
    pub price: Option<Money>,
    /// One costs.
    pub cost: Option<Money>,
    /// The share taken off.
    pub discount: Decimal,
    /// What it comes to.
    pub net: Option<Money>,
    /// What all of it costs.
    pub cost_together: Option<Money>,
    /// Its tax class by name; empty for none.
    pub tax: String,
    /// Whether it counts.
    pub standing: LineStanding,
    /// The name of the line it stands in for.
    pub instead_of: String,
    /// Whether its price is given on request.
    pub on_request: bool,
}

/// Freight of a copy.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct CopyFreight {
    /// The weight it is charged by; none where only a least charge was typed.
    pub weight: Option<Decimal>,
    /// Whether that is kilograms.
    pub kilogram: bool,
    /// For one pound or kilogram.
    pub rate: Option<Money>,
    /// What it comes to.
    pub amount: Money,
}

/// A tax class of a copy.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct CopyTax {
    /// What it is called.
    pub name: String,
    /// Its rate, as a share.
    pub rate: Decimal,
    /// What it is charged on.
    pub base: Money,
    /// The tax.
    pub amount: Money,
}

/// What a copy comes to.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct CopyTotals {
    /// The firm lines.
    pub lines: Money,
    /// The share taken off the whole.
    pub discount_share: Decimal,
    /// What that is.
    pub discount: Money,
    /// Before tax.
    pub net: Money,
    /// With tax.
    pub total: Money,
    /// What the firm lines cost, as far as it is known.
    pub cost: Money,
    /// What is kept; none where a cost isn't known.
    pub margin: Option<Money>,
    /// That as a share of the price.
    pub margin_share: Option<Decimal>,
    /// Firm lines without a price: only a draft has some.
    pub unpriced: u32,
    /// Firm lines whose cost isn't known.
    pub uncosted: u32,
}

impl QuoteCopy {
    /// Whether no firm line has a price: no sum then, rather than one of nought.
    #[must_use]
    pub fn is_unpriced(&self) -> bool {
        let none = self.lines.iter().all(|line| line.standing != LineStanding::Firm);
        (none || self.totals.unpriced > 0) && self.totals.lines == Money::default()
    }

    /// What its total is called: one so far, where a price is missing or a vessel isn't counted.
    #[must_use]
    pub fn total_label(&self) -> QuoteLabel {
        if self.totals.unpriced > 0 || !self.left_out.is_empty() { QuoteLabel::TotalOpen } else { QuoteLabel::Total }
    }
}

/// Why a quote can't be issued.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Refusal {
    /// No line stands in it.
    Empty,
    /// Lines have no price and nobody said that it is given on request.
    Gaps(usize),
    /// Something typed makes no sense.
    Wrong,
    /// No currency was typed.
    NoCurrency,
    /// The section can't be read.
    Locked,
}

/// The number the next revision has.
///
/// # Errors
/// Why there can be none yet.
pub fn issuing(sources: &QuoteSources<'_>, answers: &QuoteAnswers) -> Result<u32, Refusal> {
    let gaps = answers.gaps().count();
    if sources.job.is_locked(SectionName::Quote) {
        Err(Refusal::Locked)
    } else if !answers.lines.iter().any(|line| line.stands()) {
        Err(Refusal::Empty)
    } else if answers.is_wrong() {
        Err(Refusal::Wrong)
    } else if gaps > 0 {
        Err(Refusal::Gaps(gaps))
    } else if answers.currency.is_empty() {
        Err(Refusal::NoCurrency)
    } else {
        Ok(issued(sources.job).iter().map(|copy| copy.number).max().unwrap_or(0).saturating_add(1))
    }
}

/// The quote as it would be printed now. With a number and an id it is what is issued.
#[must_use]
pub fn draft(sources: &QuoteSources<'_>, answers: &QuoteAnswers, catalogue: &str, today: &str) -> QuoteCopy {
    let job = sources.job;
    let (head, quote) = (&job.head.body, &job.quote.body);
    let named =
        |key: &str| answers.lines.iter().find(|line| line.key == key).map(|line| line.name.clone()).unwrap_or_default();
    let count = |count: usize| u32::try_from(count).unwrap_or(u32::MAX);
    let totals = answers.totals.as_ref().ok();
    let text = |field: QuoteText| quote.text(field).trim().to_owned();
    let number = head.number.trim();
    let short: String = job.id.as_str().chars().filter(|c| *c != '-').take(6).collect();
    let taxes = answers.taxes.iter().zip(totals.map(|totals| totals.taxes.as_slice()).unwrap_or_default());
    QuoteCopy {
        id: Id::new(""),
        number: 0,
        day: today.to_owned(),
        valid_until: text(QuoteText::ValidUntil),
        catalogue: catalogue.to_owned(),
        language: sources.manner.language,
        document: if number.is_empty() { short } else { number.to_owned() },
        title: head.title.trim().to_owned(),
        customer: head.customer.trim().to_owned(),
        site: head.site.trim().to_owned(),
        owner: head.owner.trim().to_owned(),
        kind: sources.manner.label(choices::kind(head.kind)).to_owned(),
        sample: head.sample,
        currency: answers.currency.clone(),
        places: answers.rounding.places,
        halves: answers.rounding.halves,
        lines: answers
            .lines
            .iter()
            .filter(|line| line.stands())
            .map(|line| CopyLine {
                key: line.key.clone(),
                group: line.group,
                name: line.name.clone(),
                part_number: line.part_number.clone(),
                note: line.note.clone(),
                quantity: line.quantity,
                unit: line.unit.clone(),
                price: line.price,
                cost: line.cost,
                discount: line.discount,
                net: line.sums.and_then(|sums| sums.net),
                cost_together: line.sums.and_then(|sums| sums.cost),
                tax: line.tax.and_then(|at| answers.taxes.get(at)).map(|(name, _)| name.clone()).unwrap_or_default(),
                standing: line.standing,
                instead_of: if line.standing == LineStanding::Alternate {
                    named(&line.instead_of)
                } else {
                    String::new()
                },
                on_request: line.on_request,
            })
            .collect(),
        removed: answers
            .lines
            .iter()
            .filter_map(|line| Some((line.name.clone(), line.removed.clone()?.trim().to_owned())))
            .collect(),
        freight: answers.freight.map(|freight| CopyFreight {
            weight: freight.weight,
            kilogram: freight.kilogram,
            rate: freight.rate,
            amount: freight.amount,
        }),
        taxes: taxes
            .map(|((name, rate), sum)| CopyTax { name: name.clone(), rate: *rate, base: sum.base, amount: sum.amount })
            .collect(),
        totals: totals.map_or_else(CopyTotals::default, |totals| CopyTotals {
            lines: totals.lines,
            discount_share: answers.discount,
            discount: totals.discount,
            net: totals.net,
            total: totals.total,
            cost: totals.cost,
            margin: totals.margin,
            margin_share: totals.margin_share,
            unpriced: count(totals.unpriced),
            uncosted: count(totals.uncosted),
        }),
        assumptions: assumptions(sources),
        packs: packs(sources),
        yearly: yearly(sources),
        left_out: left_out(job, sources.bill, sources.manner)
            .into_iter()
            .map(|out| sources.manner.named(&out.name, &out.reasons.join(" ")))
            .collect(),
        exclusions: text(QuoteText::Exclusions),
        notes: text(QuoteText::Notes),
        customer_words: text(QuoteText::CustomerWords),
    }
}
