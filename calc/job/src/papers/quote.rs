//! The quote on paper, made of a copy and of nothing else: for the customer without cost, and internal with cost and margin.

use bedwright_calc::supply::Money;
use bedwright_calc::supply::quote::LineStanding;

use super::bill::text_or_empty;
use super::title::{Field, TitleBlock};
use super::{Align, Cell, Column, Paper, PaperKind, Row, RowKind};
use crate::quote::{CopyLine, LineGroup, QuoteCopy};
use crate::words::{Label, Manner, QuoteLabel, apart, side_by_side};

/// A paragraph is cut into rows of about so many letters, so that none is higher than a sheet.
const PARAGRAPH: usize = 600;

/// The quote as the customer gets it.
#[must_use]
pub fn quote_sheet(copy: &QuoteCopy, manner: Manner) -> Paper {
    // Its frozen texts are in one language, and what stands round them with them.
    paper(copy, Manner { language: copy.language, ..manner }, false)
}

/// The quote with cost and margin, for the house.
#[must_use]
pub fn internal_quote_sheet(copy: &QuoteCopy, manner: Manner) -> Paper {
    paper(copy, manner, true)
}

fn paper(copy: &QuoteCopy, manner: Manner, internal: bool) -> Paper {
    let say = |label: QuoteLabel| manner.label(label);
    let sheet = Sheet { copy, manner, internal };
    let mut rows = Vec::new();
    sheet.head(&mut rows);
    let firm = |group: LineGroup| move |line: &&CopyLine| line.standing == LineStanding::Firm && line.group == group;
    sheet.block(&mut rows, "bill", QuoteLabel::Materials, firm(LineGroup::Bill));
    sheet.block(&mut rows, "labour", QuoteLabel::Work, firm(LineGroup::Labour));
    sheet.block(&mut rows, "own", QuoteLabel::Further, firm(LineGroup::Own));
    if rows.iter().all(|row| row.kind != RowKind::Item) {
        rows.push(Row::remark("empty", say(QuoteLabel::RefusedEmpty)));
    }
    sheet.sums(&mut rows);
    sheet.block(&mut rows, "optional", QuoteLabel::OptionalTitle, |line| line.standing == LineStanding::Optional);
    sheet.block(&mut rows, "alternate", QuoteLabel::AlternateTitle, |line| line.standing == LineStanding::Alternate);
    sheet.texts(&mut rows);
    let mut notes = Vec::new();
    if copy.sample {
        notes.push(manner.label(Label::SampleMark).to_owned());
    }
    if internal {
        notes.push(say(QuoteLabel::InternalMark).to_owned());
    }
    let rounding = manner.rounding(copy.places, copy.halves);
    notes.push([&copy.currency, ", ", &rounding, "."].concat().trim_start_matches([',', ' ']).to_owned());
    notes.push(manner.label(Label::PlanningAid).to_owned());
    Paper {
        kind: if internal { PaperKind::InternalQuote } else { PaperKind::Quote },
        title: say(if internal { QuoteLabel::InternalSheet } else { QuoteLabel::Quote }).to_owned(),
        subtitle: subtitle(copy, manner),
        title_block: title_block(copy, manner, internal),
        columns: columns(manner, internal),
        rows,
        totals: Vec::new(),
        notes,
    }
}

fn subtitle(copy: &QuoteCopy, manner: Manner) -> String {
    let draft = if copy.number == 0 { manner.label(QuoteLabel::DraftMark) } else { "" };
    side_by_side(&[draft, &copy.title, &copy.customer, &copy.site, &copy.kind])
}

fn title_block(copy: &QuoteCopy, manner: Manner, internal: bool) -> TitleBlock {
    let field = |label: &str, value: &str| Field { label: label.to_owned(), value: value.to_owned() };
    let say = |label: QuoteLabel| manner.label(label);
    let (letters, signed, title) = if internal {
        (QuoteLabel::InternalLetters, QuoteLabel::CheckedBy, QuoteLabel::InternalSheet)
    } else {
        (QuoteLabel::Letters, QuoteLabel::Accepted, QuoteLabel::Quote)
    };
    let job = if copy.title.is_empty() { manner.label(Label::Untitled) } else { &copy.title };
    let revision = if copy.number == 0 { say(QuoteLabel::Draft).to_owned() } else { copy.number.to_string() };
    TitleBlock {
        owner: field(manner.label(Label::SheetOwner), &copy.owner),
        signed: field(say(signed), ""),
        title: field(manner.label(Label::SheetTitle), &[say(title), ", ", &apart(job)].concat()),
        document: field(manner.label(Label::Document), &[say(letters), "-", &copy.document].concat()),
        date: field(manner.label(Label::Created), &copy.day),
        revision: field(manner.label(Label::Revision), &revision),
        job: field(manner.label(Label::SheetJob), &copy.document),
        sheet: manner.label(Label::Sheet).to_owned(),
        of: manner.label(Label::Of).to_owned(),
    }
}

fn columns(manner: Manner, internal: bool) -> Vec<Column> {
    let column = |id, label: Option<QuoteLabel>, align, weight| {
        Column::new(id, label.map_or("", |label| manner.label(label)), align, weight)
    };
    use QuoteLabel as Q;
    if internal {
        return vec![
            column("position", Some(Q::Position), Align::End, 7),
            column("item", Some(Q::HeadItem), Align::Start, 44),
            column("amount", Some(Q::HeadQuantity), Align::End, 13),
            column("unit", None, Align::Start, 10),
            column("money", Some(Q::HeadCost), Align::End, 17),
            column("money", Some(Q::HeadPrice), Align::End, 17),
            column("money", Some(Q::HeadDiscount), Align::End, 10),
            column("money", Some(Q::HeadAmount), Align::End, 19),
            column("money", Some(Q::HeadCostAll), Align::End, 19),
            column("money", Some(Q::HeadMargin), Align::End, 19),
        ];
    }
    vec![
        column("position", Some(Q::Position), Align::End, 7),
        column("item", Some(Q::HeadItem), Align::Start, 72),
        column("amount", Some(Q::HeadQuantity), Align::End, 15),
        column("unit", None, Align::Start, 12),
        column("money", Some(Q::HeadPrice), Align::End, 28),
        column("money", Some(Q::HeadAmount), Align::End, 25),
    ]
}

struct Sheet<'a> {
    copy: &'a QuoteCopy,
    manner: Manner,
    internal: bool,
}

impl Sheet<'_> {
    fn say(&self, label: QuoteLabel) -> &'static str {
        self.manner.label(label)
    }

    fn money(&self, money: Money) -> String {
        self.manner.money(money, self.copy.places)
    }

    fn maybe_money(&self, money: Option<Money>) -> Cell {
        money.map_or(Cell::Empty, |money| Cell::Text(self.money(money)))
    }

    /// How long it holds, and what the customer said.
    fn head(&self, rows: &mut Vec<Row>) {
        if !self.copy.valid_until.is_empty() {
            let text = [self.say(QuoteLabel::ValidUntil), " ", &self.copy.valid_until].concat();
            rows.push(Row::remark("valid", text));
        }
        self.paragraphs(rows, "words", QuoteLabel::WordsTitle, &self.copy.customer_words);
    }

    fn block<'a>(&'a self, rows: &mut Vec<Row>, key: &str, title: QuoteLabel, belongs: impl Fn(&&'a CopyLine) -> bool) {
        let lines: Vec<(usize, &CopyLine)> =
            self.copy.lines.iter().enumerate().filter(|(_, line)| belongs(line)).collect();
        if lines.is_empty() {
            return;
        }
        rows.push(Row::heading(["block:", key].concat(), self.say(title)));
        rows.extend(lines.into_iter().map(|(at, line)| self.line(at + 1, line)));
    }

    fn line(&self, position: usize, line: &CopyLine) -> Row {
        let price = match (line.price, line.on_request) {
            (Some(price), _) => Cell::Text(self.money(price)),
            (None, true) => Cell::Text(self.say(QuoteLabel::OnRequest).to_owned()),
            (None, false) => Cell::Text(["▲ ", self.say(QuoteLabel::Gap)].concat()),
        };
        let mut hints: Vec<String> = Vec::new();
        if !line.part_number.is_empty() {
            hints.push(line.part_number.clone());
        }
        if !line.instead_of.is_empty() {
            hints.push([self.say(QuoteLabel::InsteadOfLine), " ", &line.instead_of].concat());
        }
        let off = (!line.discount.is_zero()).then(|| self.manner.exact_percent(line.discount));
        if let Some(off) = off.as_ref().filter(|_| !self.internal) {
            hints.push([self.say(QuoteLabel::Discount), " ", off].concat());
        }
        if !line.note.is_empty() {
            hints.push(line.note.clone());
        }
        let mut cells = vec![
            Cell::Text(position.to_string()),
            Cell::Named { name: line.name.clone(), hint: hints.join(" · ") },
            line.quantity.map_or(Cell::Empty, |quantity| Cell::Text(self.manner.exact(quantity))),
            text_or_empty(&line.unit),
        ];
        if self.internal {
            cells.push(self.maybe_money(line.cost));
        }
        cells.push(price);
        if self.internal {
            cells.push(off.map_or(Cell::Empty, Cell::Text));
        }
        cells.push(self.maybe_money(line.net));
        if self.internal {
            cells.push(self.maybe_money(line.cost_together));
            let margin = line.net.zip(line.cost_together).and_then(|(net, cost)| net.less(cost).ok());
            cells.push(self.maybe_money(margin));
        }
        Row::new(["line:", &line.key].concat(), RowKind::Item, cells)
    }

    /// What it comes to, part by part.
    fn sums(&self, rows: &mut Vec<Row>) {
        let (copy, totals) = (self.copy, &self.copy.totals);
        rows.push(Row::heading("sums", self.say(QuoteLabel::SumTitle)));
        let none = copy.is_unpriced();
        let lines = if none { "–".to_owned() } else { self.money(totals.lines) };
        rows.push(self.sum("lines", self.say(QuoteLabel::SumLines).to_owned(), lines));
        if totals.discount != Money::default() {
            let share = self.manner.exact_percent(totals.discount_share);
            let text = [self.say(QuoteLabel::SumDiscount), " ", &share].concat();
            rows.push(self.sum("discount", text, ["−", &self.money(totals.discount)].concat()));
        }
        if let Some(freight) = &copy.freight {
            let mut text = self.say(QuoteLabel::Freight).to_owned();
            if let Some((weight, rate)) = freight.weight.zip(freight.rate) {
                let unit = if freight.kilogram { " kg × " } else { " lb × " };
                let rate = self.manner.money(rate, 0);
                text = [&text, ", ", &self.manner.exact(weight), unit, &rate].concat();
            }
            rows.push(self.sum("freight", text, self.money(freight.amount)));
        }
        if !copy.taxes.is_empty() {
            rows.push(self.sum("net", self.say(QuoteLabel::SumNet).to_owned(), self.money(totals.net)));
        }
        for (at, tax) in copy.taxes.iter().enumerate() {
            let name = if tax.name.is_empty() { self.say(QuoteLabel::SumTax) } else { &tax.name };
            let on = [" ", self.say(QuoteLabel::SumOn), " ", &self.money(tax.base)].concat();
            let text = [name, " ", &self.manner.exact_percent(tax.rate), &on].concat();
            rows.push(self.sum(&["tax:", &at.to_string()].concat(), text, self.money(tax.amount)));
        }
        let total = if none {
            "–".to_owned()
        } else {
            [&self.money(totals.total), " ", &copy.currency].concat().trim().to_owned()
        };
        let mut row = self.sum("total", self.say(copy.total_label()).to_owned(), total);
        row.kind = RowKind::Total;
        rows.push(row);
        if totals.unpriced > 0 {
            let text = ["▲ ", &totals.unpriced.to_string(), " ", self.say(QuoteLabel::LinesWithoutPrice)].concat();
            rows.push(Row::remark("unpriced", text));
        }
        if copy.taxes.is_empty() {
            rows.push(Row::remark("untaxed", self.say(QuoteLabel::NoTax)));
        }
        if self.internal {
            self.margin(rows);
        }
    }

    fn margin(&self, rows: &mut Vec<Row>) {
        let totals = &self.copy.totals;
        rows.push(self.sum("cost", self.say(QuoteLabel::CostTogether).to_owned(), self.money(totals.cost)));
        let (text, amount) = match (totals.margin, totals.margin_share) {
            (Some(margin), Some(share)) => {
                let share = self.manner.exact_percent(share);
                ([self.say(QuoteLabel::Margin), " ", &share].concat(), self.money(margin))
            }
            (Some(margin), None) => (self.say(QuoteLabel::Margin).to_owned(), self.money(margin)),
            (None, _) => (self.say(QuoteLabel::Margin).to_owned(), self.say(QuoteLabel::MarginUnknown).to_owned()),
        };
        rows.push(self.sum("margin", text, amount));
        if totals.uncosted > 0 {
            let text = ["▲ ", &totals.uncosted.to_string(), " ", self.say(QuoteLabel::LinesWithoutCost)].concat();
            rows.push(Row::remark("uncosted", text));
        }
        if self.copy.freight.is_some() {
            rows.push(Row::remark("freight_cost", self.say(QuoteLabel::FreightCostOut)));
        }
    }

    /// A row of a sum: its name, and the amount at the right edge.
    fn sum(&self, key: &str, text: String, amount: String) -> Row {
        Row::new(["sum:", key].concat(), RowKind::Sum, vec![Cell::Text(text), Cell::Text(amount)])
    }

    fn texts(&self, rows: &mut Vec<Row>) {
        let copy = self.copy;
        for (key, title, sentences) in [
            ("rests", QuoteLabel::RestsOn, &copy.assumptions),
            ("packs", QuoteLabel::PacksTitle, &copy.packs),
            ("year", QuoteLabel::YearTitle, &copy.yearly),
            ("left_out", QuoteLabel::LeftOutTitle, &copy.left_out),
        ] {
            self.paragraphs(rows, key, title, &sentences.join("\n"));
        }
        if !copy.assumptions.is_empty() {
            rows.push(Row::remark("measure", self.say(QuoteLabel::WarrantNone)));
        }
        self.paragraphs(rows, "exclusions", QuoteLabel::ExclusionsTitle, &copy.exclusions);
        self.paragraphs(rows, "notes", QuoteLabel::NotesTitle, &copy.notes);
        if self.internal {
            let removed: Vec<String> = copy
                .removed
                .iter()
                .map(|(name, reason)| {
                    let reason = if reason.is_empty() { self.say(QuoteLabel::WhyMissing) } else { reason };
                    self.manner.named(name, reason)
                })
                .collect();
            self.paragraphs(rows, "removed", QuoteLabel::RemovedTitle, &removed.join("\n"));
            if !copy.catalogue.is_empty() {
                let text = [self.say(QuoteLabel::Catalogue), " ", &copy.catalogue].concat();
                rows.push(Row::remark("catalogue", text));
            }
        }
    }

    /// A text under a heading, a row for each of its lines; long ones are cut between words.
    fn paragraphs(&self, rows: &mut Vec<Row>, key: &str, title: QuoteLabel, text: &str) {
        let mut parts: Vec<String> = Vec::new();
        for line in text.lines().map(str::trim).filter(|line| !line.is_empty()) {
            let mut part = String::new();
            for word in line.split_whitespace() {
                for piece in pieces(word) {
                    if !part.is_empty() && part.chars().count() + piece.chars().count() > PARAGRAPH {
                        parts.push(std::mem::take(&mut part));
                    }
                    if !part.is_empty() {
                        part.push(' ');
                    }
                    part.push_str(&piece);
                }
            }
            parts.push(part);
        }
        if parts.is_empty() {
            return;
        }
        rows.push(Row::heading(["text:", key].concat(), self.say(title)));
        let numbered = parts.into_iter().enumerate();
        rows.extend(numbered.map(|(at, part)| Row::remark(["text:", key, ":", &at.to_string()].concat(), part)));
    }
}

/// A word in pieces that fit a row; nearly always the word itself.
fn pieces(word: &str) -> Vec<String> {
    let letters: Vec<char> = word.chars().collect();
    letters.chunks(PARAGRAPH).map(|chunk| chunk.iter().collect()).collect()
}
