//! The quote of the open job, kept up to date while it is looked at.

use std::sync::Arc;

use bedwright_job::Edit;
use bedwright_job::answers::water::WaterAnswers;
use bedwright_job::answers::{JobBill, VesselAnswers};
use bedwright_job::edit::quote::QuoteEdit;
use bedwright_job::field::{QuoteField, WaterField};
use bedwright_job::id::Id;
use bedwright_job::prices::{PriceList, PriceRow, Prices, carries, differing};
use bedwright_job::quote::{
    Ask, Priced, QuoteAnswers, QuoteCopy, QuoteSources, Refusal, draft, issued, issuing, quote_answers, record,
};
use bedwright_job::sections::quote::{Quote, QuoteLine};

use leptos::prelude::untrack;

use super::{Desk, new_id, today};
use crate::parts::signal::Worked;
use crate::person::Person;

/// What the quote says, as it is and as it was issued.
#[derive(Clone, PartialEq)]
pub struct Quoted {
    /// Worked out.
    pub answers: QuoteAnswers,
    /// As it would be printed now.
    pub draft: QuoteCopy,
    /// The number of the next revision, or why there can be none.
    pub may: Result<u32, Refusal>,
    /// What was issued, in its order.
    pub issued: Vec<QuoteCopy>,
    /// Rows of the job about which the list of this device says something else now.
    pub outdated: usize,
}

/// The row of the price list that says what an hour of work sells for.
const HOUR: &str = "labour:on_site";

fn priced(row: &PriceRow) -> Priced {
    Priced {
        price: row.price,
        cost: row.cost,
        part_number: row.part_number.clone(),
        name: row.name.clone(),
        unit: row.unit.clone(),
        tax_class: row.tax_class.clone(),
    }
}

impl Desk {
    /// The quote of the open job; none where none is open.
    pub fn quoted(self) -> Worked<Option<Arc<Quoted>>> {
        if let Some(memo) = self.quoted.get() {
            return memo;
        }
        let bill = self.bill();
        let memo = self.owner.with(|| {
            Worked::new(move || {
                let job = self.open()?;
                let bill: Arc<JobBill> = bill.get();
                let vessels: Vec<Id> = job.survey.body.vessels.iter().map(|vessel| vessel.id.clone()).collect();
                let answers: Vec<Arc<VesselAnswers>> =
                    vessels.iter().filter_map(|vessel| self.answers(vessel).get()).collect();
                // The water side costs more; it is asked only where a year's wash water is, or how long beds last.
                let entries = &job.quote.body.entries;
                let washed =
                    entries.get(QuoteField::WashTime).is_some() && entries.get(QuoteField::WashesPerYear).is_some();
                let used = job.site.body.entries.get(WaterField::DailyUse).is_some();
                let waters: Vec<(Id, Arc<WaterAnswers>)> = if washed || used {
                    vessels.iter().filter_map(|vessel| Some((vessel.clone(), self.water(vessel).get()?))).collect()
                } else {
                    Vec::new()
                };
                let list = self.price_list();
                let lists = Prices { job: &job.prices.body, list: &list };
                let ask = |ask: Ask<'_>| match ask {
                    Ask::Item(item) => lists.of(item).map(|row| priced(row)),
                    Ask::Key(key) => lists.row(key).map(|row| priced(row)),
                    Ask::PartNumber(number) => list.with_part_number(number).first().map(|row| priced(row)),
                };
                let sources = QuoteSources {
                    job: &job,
                    answers: &answers,
                    waters: &waters,
                    bill: &bill,
                    prices: &ask,
                    manner: self.person.with(Person::manner),
                };
                let answers = quote_answers(&sources);
                // The customer's sheet may be in another language than the person's.
                let for_paper = QuoteSources { manner: self.paper_manner(), ..sources };
                let on_paper = (for_paper.manner != sources.manner).then(|| quote_answers(&for_paper));
                let carried = &job.prices.body;
                let catalogue = if carried.rows().is_empty() { &list.catalogue } else { &carried.catalogue };
                let catalogue = catalogue.version();
                Some(Arc::new(Quoted {
                    draft: draft(&for_paper, on_paper.as_ref().unwrap_or(&answers), &catalogue, &today()),
                    may: issuing(&sources, &answers),
                    issued: issued(&job),
                    outdated: differing(&job.prices.body, &list).len(),
                    answers,
                }))
            })
        });
        self.quoted.set(Some(memo));
        memo
    }

    /// Changes the quote.
    pub fn edit_quote(self, edit: QuoteEdit) {
        self.edit(Edit::Quote(edit));
    }

    /// Changes what is said of a line.
    pub fn edit_line(self, key: &str, change: impl FnOnce(&mut QuoteLine)) {
        let Some(job) = self.open_now() else { return };
        let mut line = job.quote.body.line(key).map(|line| (**line).clone()).unwrap_or_default();
        change(&mut line);
        self.edit_quote(QuoteEdit::Line { key: key.to_owned(), at: None, line: Some(Arc::new(line)) });
    }

    /// Issues the quote as it stands: a copy that nothing alters. The job carries the rows of the list that it rests on.
    pub fn issue_quote(self) -> Option<Id> {
        let quoted = untrack(|| with_quote(self, |quoted| quoted.cloned()))?;
        let number = quoted.may.ok()?;
        // Rows that the job has stay: a total never changes under the hand that issues it.
        self.bring_prices();
        let id = new_id();
        let copy = QuoteCopy { id: id.clone(), number, ..quoted.draft };
        self.edit(Edit::AddRecord(record(&copy)));
        Some(id)
    }

    /// Takes the rows of this device's list over into the job.
    pub fn carry_prices(self) {
        let Some(job) = self.open_now() else { return };
        let bill = self.bill().with_untracked(Arc::clone);
        let list = self.prices.list.get_untracked();
        if let Some(edit) = carries(&job, &list, &bill, &[HOUR.to_owned()]) {
            self.edit(edit);
        }
    }

    /// The ways of pricing of the latest other job that has a quote; none where there is none.
    pub fn latest_ways(self) -> Option<Quote> {
        let open = self.open_now().map(|job| job.id.clone());
        self.shelf.with_untracked(|shelf| {
            shelf
                .values()
                .filter(|job| Some(&job.id) != open.as_ref() && job.quote.body != Quote::default())
                .max_by_key(|job| job.head.body.created.clone())
                .map(|job| job.quote.body.ways())
        })
    }

    fn price_list(self) -> Arc<PriceList> {
        self.prices.list.get()
    }
}

/// Reads the quote. One compiled copy of the reading for all who ask.
pub fn with_quote<T>(desk: Desk, read: impl FnOnce(Option<&Quoted>) -> T) -> T {
    #[inline(never)]
    fn now(desk: Desk) -> Option<Arc<Quoted>> {
        desk.quoted().get()
    }
    read(now(desk).as_deref())
}
