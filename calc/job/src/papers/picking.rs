//! The pick list: one list for the whole job, in the order of the shelf.

use bedwright_calc::order;
use bedwright_calc::quantity::{Length, Mass, kilograms, metres};
use bedwright_calc::supply::buying::Bought;
use bedwright_calc::supply::lifting::LOAD_CONSTANT_KG;
use bedwright_calc::supply::packs::Content;
use bedwright_calc::supply::{BillLine, Fitting, Item};

use super::bill::{count_of_lines, text_or_empty, weight_of};
use super::title::{notes, subtitle, title_block};
use super::{Align, Cell, Column, Paper, PaperKind, Row, RowKind, Shelf, natural_order, send, shelf_of, vessel_name};
use crate::answers::JobBill;
use crate::answers::supply::lifting_index_of;
use crate::drawing::code_128;
use crate::drawing::code_128::QUIET;
use crate::job::Job;
use crate::picked::{PickedLine, steps_of};
use crate::sections::picking::PickLine;
use crate::sections::supply::TakenLine;
use crate::words::{Label, Manner, SupplyLabel};

/// A line of the pick list, for paper and for the screen.
#[derive(Clone, Debug, PartialEq)]
pub struct PickRow {
    /// The item's key.
    pub key: String,
    /// What it is.
    pub item: String,
    /// How many.
    pub quantity: u32,
    /// How they are counted, in words.
    pub unit: String,
    /// What one weighs, where known.
    pub each: Option<Mass>,
    /// Whether one is more than anybody should lift alone.
    pub heavy: bool,
    /// Which vessels it is for, and how much goes into each.
    pub split: Vec<String>,
    /// Whether it comes back after the job.
    pub returns: bool,
    /// What was typed on the line.
    pub line: PickLine,
    /// Where it lies and its part number: as typed, else as the price list says.
    pub shelf: Shelf,
    /// What the shelf gave.
    pub taken: TakenLine,
    /// Whether it was picked.
    pub state: PickState,
    /// How many times what one person may lift one is, where that can be said.
    pub lifting: Option<f64>,
}

/// Whether a line was picked.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PickState {
    /// Not yet.
    Open,
    /// As many as the bill asks for.
    Picked,
    /// Fewer than the bill asks for: there were no more.
    Short {
        /// How many were picked.
        picked: u32,
    },
    /// Another number: the bill changed since.
    Changed {
        /// How many were picked.
        picked: u32,
    },
}

/// Something that was picked and is no longer on the bill.
#[derive(Clone, Debug, PartialEq)]
pub struct PutBack {
    /// The item's key.
    pub key: String,
    /// What it is.
    pub item: String,
    /// How many were picked.
    pub picked: u32,
    /// What was typed on the line.
    pub line: PickLine,
}

/// The lines of the pick list in the order of their bins; those without a bin stand last, as on the bill.
#[must_use]
pub fn pick_rows(job: &Job, bill: &JobBill, manner: Manner) -> Vec<PickRow> {
    // What was picked is what the record says, whatever the bill says now.
    let rows: Vec<PickRow> = match steps_of(job).into_iter().next() {
        Some(taken) => taken.lines.into_iter().map(|line| picked_row(job, line)).collect(),
        None => bill.bill.pooled.iter().map(|line| pick_row(job, bill, line, manner)).collect(),
    };
    // Stable: lines of one bin, and those without, keep the order of the bill.
    order::sorted(rows, |a, b| {
        let (left, right) = (a.shelf.bin.as_str(), b.shelf.bin.as_str());
        left.is_empty().cmp(&right.is_empty()).then_with(|| natural_order(left, right))
    })
}

/// What was picked before the bill let go of it.
#[must_use]
pub fn put_back(job: &Job, bill: &JobBill, manner: Manner) -> Vec<PutBack> {
    job.picking
        .body
        .lines
        .iter()
        .filter(|(key, _)| !bill.bill.pooled.iter().any(|line| line.item.key() == **key))
        .filter_map(|(key, line)| {
            let picked = line.picked.filter(|picked| *picked > 0)?;
            let item = item_of(key).map_or_else(|| key.clone(), |item| manner.item(&item));
            Some(PutBack { key: key.clone(), item, picked, line: line.clone() })
        })
        .collect()
}

/// The item behind a key.
fn item_of(key: &str) -> Option<Item> {
    let mut parts = key.split(':');
    match (parts.next()?, parts.next()?, parts.next()?, parts.next()) {
        ("pack", material, pack, None) => {
            Some(Item::Pack { material: material.to_owned().into(), pack: pack.to_owned().into() })
        }
        ("part", fitting, size, Some(cut)) => {
            let length = |text: &str| -> Option<Option<Length>> {
                let micrometres: u32 = text.parse().ok()?;
                Some((micrometres > 0).then(|| metres(f64::from(micrometres) / 1e6)))
            };
            let fitting = Fitting::ALL.iter().copied().find(|there| there.id() == fitting)?;
            Some(Item::Part { fitting, size: length(size)?, cut: length(cut)?, on_site: false })
        }
        _ => None,
    }
}

fn pick_row(job: &Job, bill: &JobBill, line: &BillLine, manner: Manner) -> PickRow {
    let key = line.item.key();
    let typed = job.picking.body.lines.get(&key).cloned().unwrap_or_default();
    let taken = job.supply.body.lines.get(&key).cloned().unwrap_or_default();
    let state = state_of(typed.picked, taken.asked, line.quantity);
    let each = line
        .mass
        .as_ref()
        .filter(|_| line.quantity > 0)
        .map(|mass| kilograms(mass.value.value / f64::from(line.quantity)));
    PickRow {
        lifting: each.and_then(|each| lifting_index_of(job, each)),
        item: manner.item(&line.item),
        quantity: line.quantity,
        unit: manner.unit_of(line).to_owned(),
        each,
        heavy: each.is_some_and(too_heavy),
        split: split(job, bill, line, manner),
        returns: line.returns,
        shelf: shelf_of(job, &line.item),
        line: typed,
        taken,
        state,
        key,
    }
}

fn state_of(picked: Option<u32>, asked: Option<u32>, quantity: u32) -> PickState {
    match picked {
        None => PickState::Open,
        Some(picked) if picked == quantity => PickState::Picked,
        Some(picked) if picked < quantity && asked == Some(quantity) => PickState::Short { picked },
        Some(picked) => PickState::Changed { picked },
    }
}

/// A line as it was picked.
fn picked_row(job: &Job, line: PickedLine) -> PickRow {
    let each = line.each_kg.map(kilograms);
    PickRow {
        quantity: line.asked,
        unit: line.unit,
        each,
        heavy: each.is_some_and(too_heavy),
        lifting: each.and_then(|each| lifting_index_of(job, each)),
        split: line.split,
        returns: line.returns,
        shelf: Shelf { bin: line.bin.trim().to_owned(), part_number: line.part_number.trim().to_owned() },
        line: PickLine {
            bin: line.bin,
            part_number: line.part_number,
            lot: line.lot,
            note: line.note,
            picked: Some(line.picked),
            ..PickLine::default()
        },
        taken: TakenLine { asked: Some(line.asked), instead: line.instead, date: line.date, ..TakenLine::default() },
        state: if line.picked < line.asked { PickState::Short { picked: line.picked } } else { PickState::Picked },
        key: line.key,
        item: line.item,
    }
}

fn too_heavy(each: Mass) -> bool {
    each.value > LOAD_CONSTANT_KG * (1.0 + 1e-9)
}

/// What is recorded when every line was picked or said to be short; none while one is neither.
#[must_use]
pub fn picked_lines(job: &Job, bill: &JobBill, manner: Manner) -> Option<Vec<PickedLine>> {
    let rows = pick_rows(job, bill, manner);
    let line = |row: PickRow| {
        let picked = match row.state {
            PickState::Open | PickState::Changed { .. } => return None,
            PickState::Picked => row.quantity,
            PickState::Short { picked } => picked,
        };
        Some(PickedLine {
            key: row.key,
            item: row.item,
            unit: row.unit,
            asked: row.quantity,
            picked,
            each_kg: row.each.map(|each| each.value),
            bin: row.shelf.bin,
            part_number: row.shelf.part_number,
            lot: row.line.lot,
            date: row.taken.date,
            instead: row.taken.instead,
            note: row.line.note,
            split: row.split,
            returns: row.returns,
        })
    };
    if rows.is_empty() { None } else { rows.into_iter().map(line).collect() }
}

/// What the bill asks for now that isn't what was picked for, a line each; nothing while nothing was picked.
#[must_use]
pub fn changed_since(job: &Job, bill: &JobBill, manner: Manner) -> Vec<String> {
    let Some(taken) = steps_of(job).into_iter().next() else { return Vec::new() };
    let differs = |item: &str, then: u32, now: u32| {
        let (then_words, now_words) = (manner.label(SupplyLabel::WasPicked), manner.label(SupplyLabel::NowAsked));
        manner.named(item, &format!("{then_words} {then}, {now_words} {now}"))
    };
    let now_of =
        |key: &str| bill.bill.pooled.iter().find(|line| line.item.key() == key).map_or(0, |line| line.quantity);
    let mut changes: Vec<String> = taken
        .lines
        .iter()
        .filter(|line| now_of(&line.key) != line.asked)
        .map(|line| differs(&line.item, line.asked, now_of(&line.key)))
        .collect();
    for line in &bill.bill.pooled {
        let key = line.item.key();
        if !taken.lines.iter().any(|there| there.key == key) {
            changes.push(differs(&manner.item(&line.item), 0, line.quantity));
        }
    }
    changes
}

/// "CF-1, CF-2: 2 each": the vessels that take some, those that take as much together.
fn split(job: &Job, bill: &JobBill, line: &BillLine, manner: Manner) -> Vec<String> {
    let alone: u32 = line.of.iter().map(|(_, quantity)| *quantity).fold(0, u32::saturating_add);
    // Of several sizes nobody can say which goes where: what each vessel takes is said by volume.
    if let (Item::Pack { material, .. }, None) = (&line.item, &line.needed)
        && let Some(bought) = bill.bought.iter().find(|bought| bought.material == *material)
    {
        return split_volumes(job, bill, bought, manner);
    }
    // There once for the job, whichever vessel it is used at.
    let shared = line.needed.is_none() && alone > line.quantity;
    // How much goes into one, how many take that, and their names.
    let mut groups: Vec<(String, u32, Vec<String>)> = Vec::new();
    for (index, quantity) in &line.of {
        let Some(id) = bill.vessels.get(*index) else { continue };
        let name = vessel_name(job, id, manner);
        let count = job.vessel(id).map_or(1, |vessel| vessel.count());
        let tags = f64::from(count);
        let own = bill.bill.vessels.get(*index).and_then(|own| own.lines.iter().find(|there| there.item == line.item));
        let packs = own.and_then(|own| own.needed.as_ref()).map_or(f64::from(*quantity), |needed| needed.value) / tags;
        let amount = match own.and_then(|own| own.volume.as_ref()) {
            _ if shared => String::new(),
            Some(volume) if (packs - packs.round()).abs() > 1e-6 => manner.volume(volume.value / tags),
            _ => manner.decimal(packs, 2),
        };
        match groups.iter_mut().find(|(there, ..)| *there == amount) {
            Some((_, takers, names)) => {
                *takers = takers.saturating_add(count);
                names.push(name);
            }
            None => groups.push((amount, count, vec![name])),
        }
    }
    groups
        .into_iter()
        .map(|(amount, takers, names)| {
            let names = names.join(", ");
            match (amount.is_empty(), takers) {
                (true, _) => names,
                (false, 1) => manner.named(&names, &amount),
                (false, _) => manner.named(&names, &[&amount, " ", manner.label(Label::Each)].concat()),
            }
        })
        .collect()
}

fn split_volumes(job: &Job, bill: &JobBill, bought: &Bought, manner: Manner) -> Vec<String> {
    let each = |(vessel, tags, need): &(usize, u32, Content)| {
        let name = bill.vessels.get(*vessel).map(|id| vessel_name(job, id, manner))?;
        let amount = manner.volume(need.volume());
        let each = if *tags > 1 { format!(" {}", manner.label(Label::Each)) } else { String::new() };
        Some(manner.named(&name, &[amount, each].concat()))
    };
    bought.of.iter().filter_map(each).collect()
}

/// The pick list.
#[must_use]
pub fn pick_list(job: &Job, bill: &JobBill, manner: Manner, today: &str) -> Paper {
    let lines = pick_rows(job, bill, manner);
    let mut rows: Vec<Row> = Vec::new();
    for line in &lines {
        rows.push(line_row(line, manner));
        rows.extend(code_row(&line.key, &line.shelf.part_number, manner));
    }
    if rows.is_empty() {
        rows.push(Row::remark("empty", manner.label(Label::EmptyBill)));
    }
    let back = put_back(job, bill, manner);
    if !back.is_empty() {
        rows.push(Row::heading("put_back", manner.label(Label::PutBack)));
        rows.extend(back.iter().map(back_row));
    }
    rows.extend(send::rows(job, bill, manner));
    for out in super::left_out(job, bill, manner) {
        rows.push(Row::remark(
            format!("left_out:{}", out.vessel),
            format!("{} {}", manner.label(Label::LeftOut), out.name),
        ));
    }
    // Room for a part number where there is one; else it is the item's, and enough is left to write one in.
    let numbered = lines.iter().any(|line| !line.shelf.part_number.is_empty());
    let (part, item) = if numbered { (42, 34) } else { (20, 56) };
    Paper {
        kind: PaperKind::PickList,
        title: manner.label(Label::PickList).to_owned(),
        subtitle: subtitle(job, manner),
        title_block: title_block(job, PaperKind::PickList, None, manner, today),
        columns: vec![
            Column::new("check", "", Align::Start, 7),
            Column::new("bin", manner.label(Label::BinPlace), Align::Start, 15),
            Column::new("part", manner.label(Label::PartNumber), Align::Start, part),
            Column::new("item", manner.label(Label::Item), Align::Start, item),
            Column::new("quantity", manner.label(Label::Quantity), Align::End, 15),
            Column::new("unit", "", Align::Start, 21),
            Column::new("weight", manner.label(Label::WeightEach), Align::End, 27),
            Column::new("for", manner.label(Label::For), Align::Start, 30),
            Column::new("lot", manner.label(SupplyLabel::Lot), Align::Start, 16),
            Column::new("date", manner.label(SupplyLabel::Date), Align::Start, 16),
        ],
        totals: totals(&bill.bill.pooled, manner),
        rows,
        notes: notes(job, manner, true),
    }
}

fn line_row(row: &PickRow, manner: Manner) -> Row {
    let weight = row.each.map_or(Cell::Empty, |each| {
        let text = manner.mass(each);
        Cell::Text(if row.heavy { format!("{HEAVY} {text}") } else { text })
    });
    let mut remarks = row.split.clone();
    if row.returns {
        remarks.push(manner.label(Label::ComesBack).to_owned());
    }
    match row.state {
        PickState::Changed { picked } => remarks.push(format!("{} {picked}", manner.label(Label::PickedThenChanged))),
        PickState::Short { picked } => remarks.push(format!(
            "▲ {} {picked}, {} {}",
            manner.label(SupplyLabel::PickedCount),
            manner.label(SupplyLabel::ShortBy).to_lowercase(),
            row.quantity.saturating_sub(picked)
        )),
        PickState::Open | PickState::Picked => {}
    }
    let instead = row.taken.instead.trim();
    if !instead.is_empty() {
        remarks.push(manner.named(manner.label(SupplyLabel::Instead), instead));
    }
    let note = row.line.note.trim();
    if !note.is_empty() {
        remarks.push(note.to_owned());
    }
    Row::new(
        row.key.as_str(),
        RowKind::Item,
        vec![
            Cell::Tick(matches!(row.state, PickState::Picked | PickState::Short { .. })),
            text_or_empty(&row.shelf.bin),
            part_cell(&row.shelf.part_number),
            Cell::Text(row.item.clone()),
            Cell::Large(row.quantity.to_string()),
            Cell::Text(row.unit.clone()),
            weight,
            if remarks.is_empty() { Cell::Empty } else { Cell::Lines(remarks) },
            text_or_empty(row.line.lot.trim()),
            text_or_empty(row.taken.date.trim()),
        ],
    )
}

/// A part number, large, and as bars.
fn part_cell(text: &str) -> Cell {
    let text = text.trim();
    if text.is_empty() {
        return Cell::Empty;
    }
    let bars = code_128(text).filter(|bars| modules(bars) <= MOST_MODULES);
    Cell::Code { text: text.to_owned(), bars, room_mm: CODE_MM }
}

/// Room for a code in its column, mm, and the most modules that are still read off it (a fifth of a millimetre each).
const CODE_MM: f64 = 31.0;
const MOST_MODULES: u32 = 155;

/// Room for a code on a row of its own, mm.
const WIDE_CODE_MM: f64 = 150.0;

fn modules(bars: &[u8]) -> u32 {
    bars.iter().map(|width| u32::from(*width)).sum::<u32>() + 2 * QUIET
}

/// A code that is too wide for its column, on a row below; or that there is none.
fn code_row(key: &str, text: &str, manner: Manner) -> Option<Row> {
    let text = text.trim();
    if text.is_empty() {
        return None;
    }
    let cell = match code_128(text) {
        Some(bars) if modules(&bars) <= MOST_MODULES => return None,
        Some(bars) => Cell::Code { text: text.to_owned(), bars: Some(bars), room_mm: WIDE_CODE_MM },
        None => Cell::Text(manner.named(text, manner.label(SupplyLabel::NoCode))),
    };
    Some(Row::new(format!("code:{key}"), RowKind::Remark, vec![cell]))
}

/// The mark of a caution, as verdicts bear it.
const HEAVY: char = '▲';

fn back_row(back: &PutBack) -> Row {
    Row::new(
        back.key.as_str(),
        RowKind::Item,
        vec![
            Cell::Tick(false),
            text_or_empty(back.line.bin.trim()),
            part_cell(&back.line.part_number),
            Cell::Text(back.item.clone()),
            Cell::Large(back.picked.to_string()),
            Cell::Empty,
            Cell::Empty,
            Cell::Empty,
            text_or_empty(back.line.lot.trim()),
            Cell::Empty,
        ],
    )
}

fn totals(lines: &[BillLine], manner: Manner) -> Vec<Cell> {
    if lines.is_empty() {
        return Vec::new();
    }
    let weight = weight_of(lines);
    vec![
        Cell::Empty,
        Cell::Text(count_of_lines(lines.len(), manner)),
        Cell::Empty,
        Cell::Empty,
        Cell::Empty,
        Cell::Empty,
        weight.map_or(Cell::Empty, |(mass, _)| Cell::Text(manner.mass(mass))),
        match weight {
            Some((_, true)) => Cell::Text(manner.label(Label::WithoutParts).to_owned()),
            _ => Cell::Empty,
        },
        Cell::Empty,
        Cell::Empty,
    ]
}
