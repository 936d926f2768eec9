//! The bill of materials on paper: each vessel on its own, then pooled over the job with what pooling saves.

use bedwright_calc::supply::BillLine;

use super::title::{notes, subtitle, title_block};
use super::{Align, Cell, Column, Paper, PaperKind, Row, RowKind, left_out, shelf_of};
use crate::answers::JobBill;
use crate::id::Id;
use crate::job::Job;
use crate::words::{BillLabel, Label, Manner};

/// What a vessel is called: its tags, or its place among the job's vessels.
#[must_use]
pub fn vessel_name(job: &Job, id: &Id, manner: Manner) -> String {
    let vessels = &job.survey.body.vessels;
    let tags: Vec<&str> = job
        .vessel(id)
        .map(|vessel| vessel.tags.iter().map(|tag| tag.trim()).filter(|tag| !tag.is_empty()).collect())
        .unwrap_or_default();
    if !tags.is_empty() {
        return tags.join(", ");
    }
    let place = vessels.iter().position(|vessel| vessel.id == *id).map_or(0, |place| place + 1);
    format!("{} {place}", manner.label(Label::Vessel))
}

/// The bill of materials.
#[must_use]
pub fn bill_of_materials(job: &Job, bill: &JobBill, manner: Manner, today: &str) -> Paper {
    let mut rows = Vec::new();
    for (id, own) in bill.vessels.iter().zip(&bill.bill.vessels) {
        if own.lines.is_empty() {
            continue;
        }
        rows.push(Row::heading(format!("vessel:{id}"), vessel_name(job, id, manner)));
        rows.extend(own.lines.iter().map(|line| {
            let key = format!("{id}:{}", line.item.key());
            line_row(job, key, line, None, manner)
        }));
    }
    if !bill.bill.pooled.is_empty() {
        rows.push(Row::heading("pooled", manner.label(Label::Pooled)));
        rows.extend(bill.bill.pooled.iter().map(|line| {
            let key = format!("pooled:{}", line.item.key());
            let saved = bill.bill.saved(line);
            line_row(job, key, line, (saved > 0).then_some(saved), manner)
        }));
    }
    if rows.is_empty() {
        rows.push(Row::remark("empty", manner.label(Label::EmptyBill)));
    }
    for out in left_out(job, bill, manner) {
        let reasons = out.reasons.join(" ");
        let text = format!("{} {}. {reasons}", manner.label(Label::LeftOut), out.name);
        rows.push(Row::remark(format!("left_out:{}", out.vessel), text.trim()));
    }
    if !bill.removed.is_empty() {
        rows.push(Row::heading("removed", manner.label(BillLabel::Chosen)));
        rows.extend(bill.removed.iter().map(|(line, reason)| {
            let text = manner
                .named(&format!("{} {} {}", line.quantity, manner.unit_of(line), manner.item(&line.item)), reason);
            Row::remark(format!("removed:{}", line.item.key()), text)
        }));
    }
    Paper {
        kind: PaperKind::BillOfMaterials,
        title: manner.label(Label::BillOfMaterials).to_owned(),
        subtitle: subtitle(job, manner),
        title_block: title_block(job, PaperKind::BillOfMaterials, None, manner, today),
        columns: vec![
            Column::new("part", manner.label(Label::PartNumber), Align::Start, 18),
            Column::new("item", manner.label(Label::Item), Align::Start, 45),
            Column::new("quantity", manner.label(Label::Quantity), Align::End, 13),
            Column::new("unit", "", Align::Start, 12),
            Column::new("used", manner.label(Label::PacksUsed), Align::End, 11),
            Column::new("weight", manner.label(Label::WeightTogether), Align::End, 15),
            Column::new("remark", "", Align::Start, 28),
        ],
        totals: totals(&bill.bill.pooled, manner),
        rows,
        notes: notes(job, manner, true),
    }
}

fn line_row(job: &Job, key: String, line: &BillLine, saved: Option<u32>, manner: Manner) -> Row {
    let part = shelf_of(job, &line.item).part_number;
    let mut remarks = Vec::new();
    if let Some(saved) = saved {
        remarks.push(format!("{} {saved}", manner.label(Label::Saved)));
    }
    if line.returns {
        remarks.push(manner.label(Label::ComesBack).to_owned());
    }
    Row::new(
        key,
        RowKind::Item,
        vec![
            text_or_empty(&part),
            Cell::Text(manner.item(&line.item)),
            Cell::Large(line.quantity.to_string()),
            Cell::Text(manner.unit_of(line).to_owned()),
            line.needed.as_ref().map_or(Cell::Empty, |needed| Cell::Text(manner.decimal(needed.value, 2))),
            line.mass.as_ref().map_or(Cell::Empty, |mass| Cell::Text(manner.mass(mass.value))),
            if remarks.is_empty() { Cell::Empty } else { Cell::Lines(remarks) },
        ],
    )
}

pub(super) fn text_or_empty(text: &str) -> Cell {
    if text.is_empty() { Cell::Empty } else { Cell::Text(text.to_owned()) }
}

/// "7 lines", as it is said.
pub(super) fn count_of_lines(count: usize, manner: Manner) -> String {
    format!("{count} {}", manner.label(if count == 1 { Label::Line } else { Label::Lines }))
}

/// What the lines weigh together as far as it is known, and whether something is missing from it.
pub(super) fn weight_of(lines: &[BillLine]) -> Option<(bedwright_calc::quantity::Mass, bool)> {
    let mut known = lines.iter().filter_map(|line| line.mass.as_ref()).map(|mass| mass.value);
    let first = known.next()?;
    Some((known.fold(first, |sum, mass| sum + mass), lines.iter().any(|line| line.mass.is_none())))
}

fn totals(lines: &[BillLine], manner: Manner) -> Vec<Cell> {
    if lines.is_empty() {
        return Vec::new();
    }
    let weight = weight_of(lines);
    vec![
        Cell::Text(count_of_lines(lines.len(), manner)),
        Cell::Text(manner.label(Label::Pooled).to_owned()),
        Cell::Empty,
        Cell::Empty,
        Cell::Empty,
        weight.map_or(Cell::Empty, |(mass, _)| Cell::Text(manner.mass(mass))),
        match weight {
            Some((_, true)) => Cell::Text(manner.label(Label::WithoutParts).to_owned()),
            _ => Cell::Empty,
        },
    ]
}
