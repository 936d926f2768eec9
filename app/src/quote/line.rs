//! One line: what, how many, for how much, and what may be said of it.

use std::rc::Rc;

use bedwright_calc::supply::quote::LineStanding;
use bedwright_job::entry::{Dimension, Entry, Unit};
use bedwright_job::field::LineField;
use bedwright_job::quote::{FieldFault, LineAnswer, LineGroup, PriceFrom, nearly};
use bedwright_job::sections::quote::{LineText, QuoteLine, STANDINGS, UNTAXED};
use bedwright_job::words::QuoteLabel;
use leptos::prelude::*;

use super::own::own_texts;
use crate::desk::{Desk, with_quote};
use crate::parts::choice::choice;
use crate::parts::live::{El, button, el, ticked};
use crate::parts::signal::{Held, Kept};
use crate::parts::typing::{text_line, typing};
use crate::vessel::number_line::NumberLine;

/// One line among all of them.
#[derive(Clone, Copy)]
pub struct Line {
    /// The desk.
    pub desk: Desk,
    /// Its key.
    pub key: Kept<String>,
}

impl Line {
    /// Reads what became of it.
    pub fn read<T>(self, read: impl FnOnce(&LineAnswer) -> T) -> Option<T> {
        self.answer().as_ref().map(read)
    }

    #[inline(never)]
    fn answer(self) -> Option<LineAnswer> {
        self.key.with(|key| {
            with_quote(self.desk, |quoted| quoted?.answers.lines.iter().find(|line| line.key == *key).cloned())
        })
    }

    /// What was said of it.
    #[inline(never)]
    fn said(self) -> QuoteLine {
        self.key.with(|key| {
            self.desk.of_job(|job| job.quote.body.line(key).map(|line| (**line).clone())).unwrap_or_default()
        })
    }

    /// Changes what is said of it.
    pub fn change(self, change: impl FnOnce(&mut QuoteLine)) {
        self.desk.edit_line(&self.key.get(), change);
    }

    fn say(self, label: QuoteLabel) -> &'static str {
        self.desk.label(label)
    }

    fn stands(self) -> bool {
        self.read(LineAnswer::stands).unwrap_or(false)
    }

    /// The line on the page.
    pub fn show(self) -> El {
        let group = untrack(|| self.read(|line| line.group)).unwrap_or(LineGroup::Bill);
        let name = move || self.read(|line| line.name.clone()).unwrap_or_default();
        let what = el("div", "quote-what")
            .kid(el("p", "quote-name").says(name))
            .kid(el("p", "quote-about").says(move || self.about()));
        let price = self.number(LineField::Price);
        let amount = el("p", "quote-amount figure")
            .marks("quote-gap", move || self.read(LineAnswer::is_gap).unwrap_or(false))
            .says(move || self.amount());
        let faults = el("p", "entry-message").says(move || self.loose_faults());
        let mut all = el("li", "quote-line")
            .tells("aria-label", move || Some(name()))
            .marks("quote-out", move || !self.stands())
            .kid(what)
            .kid(amount);
        if group == LineGroup::Own {
            all = all.kid(own_texts(self));
        }
        let prices = el("div", "quote-price")
            .kid(price)
            .when(move || group != LineGroup::Bill, move || vec![self.number(LineField::Quantity)]);
        all.when(move || self.stands(), move || vec![prices.clone()]).kid(faults).kid(self.more(group))
    }

    fn about(self) -> String {
        let manner = self.desk.manner();
        self.read(|line| {
            let mut parts = Vec::new();
            if let Some(quantity) = line.quantity {
                parts.push([&manner.exact(quantity), " ", &line.unit].concat());
            }
            if !line.part_number.is_empty() {
                parts.push(line.part_number.clone());
            }
            if line.standing != LineStanding::Firm {
                parts.push(manner.standing(line.standing).to_owned());
            }
            if line.from != PriceFrom::Nowhere && line.from != PriceFrom::Typed {
                parts.push(manner.price_from(line.from).to_owned());
            }
            if !line.note.is_empty() {
                parts.push(line.note.clone());
            }
            if let Some(reason) = &line.removed {
                let reason = if reason.trim().is_empty() { self.say(QuoteLabel::WhyMissing) } else { reason.trim() };
                parts.push([self.say(QuoteLabel::TakenOut), ": ", reason].concat());
            }
            parts.join(" · ")
        })
        .unwrap_or_default()
    }

    fn amount(self) -> String {
        let manner = self.desk.manner();
        let places = with_quote(self.desk, |quoted| quoted.map_or(2, |quoted| quoted.answers.rounding.places));
        self.read(|line| {
            if !line.stands() {
                return String::new();
            }
            match (line.sums.and_then(|sums| sums.net), line.on_request) {
                (Some(net), _) => manner.money(net, places),
                (None, true) => self.say(QuoteLabel::OnRequest).to_owned(),
                (None, false) if line.quantity.is_none() => ["▲ ", self.say(QuoteLabel::QuantityMissing)].concat(),
                (None, false) => ["▲ ", self.say(QuoteLabel::Gap)].concat(),
            }
        })
        .unwrap_or_default()
    }

    /// What is wrong with it that isn't under one of its fields.
    fn loose_faults(self) -> String {
        let manner = self.desk.manner();
        let shown = |field: &Option<LineField>| field.is_some();
        self.read(|line| {
            let loose = line.faults.iter().filter(|(field, _)| !shown(field) && line.stands());
            loose.map(|(_, fault)| manner.field_fault(fault)).collect::<Vec<_>>().join(" ")
        })
        .unwrap_or_default()
    }

    /// A typed value of it.
    pub fn number(self, field: LineField) -> El {
        let desk = self.desk;
        let manner = desk.manner();
        let entry = move || self.said().entries.get(field).cloned();
        let fault = move || {
            self.read(|line| {
                line.faults.iter().find(|(there, _)| *there == Some(field)).map(|(_, fault)| fault.clone())
            })
            .flatten()
        };
        let id = [field.id(), "-", &self.key.get()].concat();
        let units: &'static [Unit] = match field {
            LineField::Discount => Unit::of(Dimension::Ratio),
            _ => &[Unit::One],
        };
        let supposed = move || {
            self.read(|line| {
                let value = match field {
                    LineField::Price => line.price?.value(),
                    LineField::Cost => line.cost?.value(),
                    LineField::Quantity => line.quantity?,
                    LineField::Discount => return None,
                };
                Some(nearly(value))
            })
            .flatten()
        };
        NumberLine {
            id: id.replace([':', '.'], "-"),
            label: manner.line_field(field),
            hint: "",
            units,
            usual: field.usual_unit(),
            misread: Rc::new(move || match fault() {
                Some(FieldFault::Misread(misread, _)) => Some(misread),
                _ => None,
            }),
            problem: Rc::new(move || match fault() {
                Some(FieldFault::Problem(problem)) => Some(manner.problem(&problem)),
                _ => None,
            }),
            entry: Rc::new(entry),
            put: Rc::new(move |entry: Option<Entry>| {
                self.change(|line| drop(line.entries.set(field, entry)));
            }),
            assumed: Rc::new(supposed),
            standing: None,
        }
        .show(desk)
    }

    /// What few lines need, folded.
    fn more(self, group: LineGroup) -> El {
        let open = Held::new(false);
        let inside = move || {
            let mut all = vec![
                el("div", "entries").kid(self.number(LineField::Cost)).kid(self.number(LineField::Discount)),
                el("div", "entries")
                    .kid(self.standing())
                    .kid(self.tax())
                    .when(move || self.said().standing == LineStanding::Alternate, move || vec![self.instead_of()]),
                self.on_request(),
                self.text(LineText::Note, QuoteLabel::LineNote),
                self.taking_out(),
            ];
            if group == LineGroup::Own {
                let key = self.key;
                all.push(button("quiet", self.say(QuoteLabel::Erase), move || {
                    super::own::erase(self.desk, &key.get())
                }));
            }
            all
        };
        let name = move || self.read(|line| line.name.clone()).unwrap_or_default();
        let details = el("details", "how quote-more");
        let node = details.node().clone();
        details
            .on("toggle", move |_| open.set(node.has_attribute("open")))
            .kid(
                el("summary", "")
                    .tells("aria-label", move || Some([self.say(QuoteLabel::Details), ": ", &name()].concat()))
                    .kid(el("span", "how-name").text(self.say(QuoteLabel::Details))),
            )
            .when(move || open.get(), inside)
    }

    fn standing(self) -> El {
        let manner = self.desk.manner();
        choice(
            self.say(QuoteLabel::StandingTitle),
            move || STANDINGS.iter().map(|standing| manner.standing(*standing).to_owned()).collect(),
            move || STANDINGS.iter().position(|there| *there == self.said().standing),
            move |at| {
                if let Some(standing) = STANDINGS.get(at) {
                    self.change(|line| line.standing = *standing);
                }
            },
        )
    }

    fn instead_of(self) -> El {
        let others = move || -> Vec<(String, String)> {
            let own = self.key.get();
            with_quote(self.desk, |quoted| {
                let lines = quoted.map(|quoted| quoted.answers.lines.as_slice()).unwrap_or_default();
                let others = lines.iter().filter(|line| line.key != own && line.standing == LineStanding::Firm);
                std::iter::once((String::new(), "–".to_owned()))
                    .chain(others.map(|line| (line.key.clone(), line.name.clone())))
                    .collect()
            })
        };
        choice(
            self.say(QuoteLabel::InsteadOf),
            move || others().into_iter().map(|(_, name)| name).collect(),
            move || {
                let there = self.said().instead_of;
                others().iter().position(|(key, _)| *key == there)
            },
            move |at| {
                if let Some((key, _)) = untrack(others).into_iter().nth(at) {
                    self.change(|line| line.instead_of = key);
                }
            },
        )
    }

    fn tax(self) -> El {
        let classes = move || -> Vec<(String, String)> {
            let usual = (String::new(), self.say(QuoteLabel::TaxUsual).to_owned());
            let none = (UNTAXED.to_owned(), self.say(QuoteLabel::Untaxed).to_owned());
            let classes = self.desk.of_job(|job| {
                job.quote.body.taxes.iter().map(|tax| (tax.id.to_string(), tax.name.clone())).collect::<Vec<_>>()
            });
            [vec![usual], classes, vec![none]].concat()
        };
        choice(
            self.say(QuoteLabel::LineTax),
            move || classes().into_iter().map(|(_, name)| name).collect(),
            move || {
                let there = self.said().tax;
                classes().iter().position(|(id, _)| *id == there)
            },
            move |at| {
                if let Some((id, _)) = untrack(classes).into_iter().nth(at) {
                    self.change(|line| line.tax = id);
                }
            },
        )
    }

    fn on_request(self) -> El {
        let tick = el("input", "").set("type", "checkbox").holds("checked", move || self.said().on_request).on(
            "change",
            move |event| {
                let on = ticked(&event);
                self.change(|line| line.on_request = on);
            },
        );
        el("label", "tick").kid(tick).kid(el("span", "").text(self.say(QuoteLabel::OnRequestChoice)))
    }

    /// A text of it.
    pub fn text(self, field: LineText, label: QuoteLabel) -> El {
        let desk = self.desk;
        let input = typing(
            desk.turned,
            move || self.said().text(field).to_owned(),
            move |text| self.change(|line| line.set_text(field, text)),
            move || desk.pause(),
        );
        text_line(self.say(label), input)
    }

    fn taking_out(self) -> El {
        let out = move || self.said().removed.is_some();
        let desk = self.desk;
        el("div", "quote-taking")
            .when(
                move || !out(),
                move || {
                    let take = move || self.change(|line| line.removed = Some(String::new()));
                    vec![button("quiet", self.say(QuoteLabel::TakeOut), take)]
                },
            )
            .when(out, move || {
                let why = typing(
                    desk.turned,
                    move || self.said().removed.unwrap_or_default(),
                    move |text| self.change(|line| line.removed = Some(text)),
                    move || desk.pause(),
                );
                let back = move || self.change(|line| line.removed = None);
                vec![text_line(self.say(QuoteLabel::Why), why), button("quiet", self.say(QuoteLabel::PutBack), back)]
            })
    }
}
