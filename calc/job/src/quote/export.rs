//! A quote as a file for the books, and as a plain text to send.

use bedwright_calc::supply::Money;
use bedwright_calc::supply::quote::LineStanding;
use rust_decimal::Decimal;

use super::copy::{CopyLine, QuoteCopy};
use super::exact::decimal_text;
use crate::sections::quote::standing_id;
use crate::words::{Manner, QuoteLabel, side_by_side};

/// The columns of the file for the books, in their order; they stay as they are. Amounts have a decimal point and no
/// groups, days are as `2026-11-24`; a cell that isn't known is empty.
pub const CSV_HEADER: [&str; 20] = [
    "document",
    "revision",
    "date",
    "valid_until",
    "currency",
    "position",
    "kind",
    "standing",
    "part_number",
    "description",
    "quantity",
    "unit",
    "unit_price",
    "discount_percent",
    "net",
    "tax_class",
    "unit_cost",
    "cost",
    "on_request",
    "note",
];

/// A quote for the books: comma between cells, CRLF between rows (RFC 4180). After the lines stand rows of the kinds
/// `discount`, `freight`, `tax` and `total`, their amount under `net`.
#[must_use]
pub fn erp_csv(copy: &QuoteCopy) -> String {
    let mut file = String::new();
    push_row(&mut file, &CSV_HEADER.map(|name| (name.to_owned(), false)));
    let number = if copy.number == 0 { String::new() } else { copy.number.to_string() };
    let revision = number.as_str();
    let mut position = 0_u32;
    let mut row = |kind: &str, standing: &str, rest: [(String, bool); 12]| {
        position = position.saturating_add(1);
        let mut cells: Vec<(String, bool)> = vec![
            (copy.document.clone(), true),
            (revision.to_owned(), false),
            (copy.day.clone(), false),
            (copy.valid_until.clone(), true),
            (copy.currency.clone(), true),
            (position.to_string(), false),
            (kind.to_owned(), false),
            (standing.to_owned(), false),
        ];
        cells.extend(rest);
        push_row(&mut file, &cells);
    };
    for line in &copy.lines {
        row(line.group.id(), standing_id(line.standing), line_cells(copy, line));
    }
    let sum = |name: &str, amount: Money, tax: &str| {
        let mut cells: [(String, bool); 12] = Default::default();
        let [_, description, _, _, _, _, net, class, ..] = &mut cells;
        *description = (name.to_owned(), true);
        *net = (decimal_text(amount.value(), copy.places), false);
        *class = (tax.to_owned(), true);
        cells
    };
    let totals = &copy.totals;
    if totals.discount != Money::default() {
        let off = Money::default().less(totals.discount).unwrap_or_default();
        row("discount", "", sum("", off, ""));
    }
    if let Some(freight) = &copy.freight {
        row("freight", "", sum("", freight.amount, copy.taxes.first().map_or("", |tax| tax.name.as_str())));
    }
    for tax in &copy.taxes {
        row("tax", "", sum(&tax.name, tax.amount, &tax.name));
    }
    row("total", "", sum("", totals.total, ""));
    file
}

fn line_cells(copy: &QuoteCopy, line: &CopyLine) -> [(String, bool); 12] {
    let number = |value: Option<Decimal>, places: u32| {
        (value.map(|value| decimal_text(value, places)).unwrap_or_default(), false)
    };
    let money = |value: Option<Money>| number(value.map(Money::value), copy.places);
    let percent = Money::new(line.discount).times(100).map(Money::value).ok().filter(|share| !share.is_zero());
    [
        (line.part_number.clone(), true),
        (line.name.clone(), true),
        number(line.quantity, 0),
        (line.unit.clone(), true),
        money(line.price),
        number(percent, 0),
        money(line.net),
        (line.tax.clone(), true),
        money(line.cost),
        money(line.cost_together),
        (if line.on_request { "yes" } else { "" }.to_owned(), false),
        (line.note.clone(), true),
    ]
}

/// Adds a row. A text that a spreadsheet would take for a formula gets an apostrophe before it.
fn push_row(file: &mut String, cells: &[(String, bool)]) {
    for (at, (text, typed)) in cells.iter().enumerate() {
        if at > 0 {
            file.push(',');
        }
        let guarded = *typed && text.starts_with(['=', '+', '-', '@', '\t', '\r', '\n', '＝', '＋', '－', '＠']);
        let text = if guarded { ["'", text].concat() } else { text.clone() };
        if text.contains([',', '"', '\r', '\n']) || text.starts_with(' ') || text.ends_with(' ') {
            file.push('"');
            file.push_str(&text.replace('"', "\"\""));
            file.push('"');
        } else {
            file.push_str(&text);
        }
    }
    file.push_str("\r\n");
}

/// A quote in a few lines, to be pasted into a message: no cost.
#[must_use]
pub fn summary(copy: &QuoteCopy, manner: Manner) -> String {
    let manner = Manner { language: copy.language, ..manner };
    let say = |label: QuoteLabel| manner.label(label);
    let money = |money: Money| [&manner.money(money, copy.places), " ", &copy.currency].concat().trim().to_owned();
    let mut out: Vec<String> = Vec::new();
    let standing = if copy.number == 0 {
        say(QuoteLabel::DraftMark).to_owned()
    } else {
        [say(QuoteLabel::RevisionWord), " ", &copy.number.to_string(), ", ", &copy.day].concat()
    };
    out.push([say(QuoteLabel::Quote), " ", say(QuoteLabel::Letters), "-", &copy.document, ", ", &standing].concat());
    out.push(side_by_side(&[&copy.title, &copy.customer, &copy.site, &copy.kind]));
    if !copy.owner.is_empty() {
        out.push(copy.owner.clone());
    }
    out.push(String::new());
    for line in &copy.lines {
        let quantity = line.quantity.map(|quantity| manner.exact(quantity)).unwrap_or_default();
        let mut text = [&quantity, " ", &line.unit, " ", &line.name].concat().trim().to_owned();
        text.push_str(manner.colon());
        match line.net {
            Some(net) => text.push_str(&money(net)),
            None if line.on_request => text.push_str(say(QuoteLabel::OnRequest)),
            None => text.push_str(say(QuoteLabel::Gap)),
        }
        if line.standing != LineStanding::Firm {
            text.push_str(&[" (", manner.standing(line.standing), ", ", say(QuoteLabel::NotCounted), ")"].concat());
        }
        out.push(text);
    }
    out.push(String::new());
    let totals = &copy.totals;
    if totals.discount != Money::default() {
        out.push([say(QuoteLabel::SumDiscount), ": −", &money(totals.discount)].concat());
    }
    if let Some(freight) = &copy.freight {
        out.push(manner.named(say(QuoteLabel::Freight), &money(freight.amount)));
    }
    for tax in &copy.taxes {
        let rate = manner.exact_percent(tax.rate);
        out.push(manner.named(&[&tax.name, " ", &rate].concat(), &money(tax.amount)));
    }
    let sum = if copy.is_unpriced() { "–" } else { &money(totals.total) };
    out.push(manner.named(say(copy.total_label()), sum));
    out.extend(copy.left_out.iter().map(|left| manner.named(say(QuoteLabel::LeftOutTitle), left)));
    if !copy.valid_until.is_empty() {
        out.push(manner.named(say(QuoteLabel::ValidUntil), &copy.valid_until));
    }
    if copy.sample {
        out.push(manner.label(crate::words::Label::SampleMark).to_owned());
    }
    out.join("\n")
}
