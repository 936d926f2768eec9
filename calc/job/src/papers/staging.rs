//! The staging list: what stands where, vessel by vessel, in the order it is loaded in, and on which pallet.

use bedwright_calc::quantity::{Mass, Problem, kilograms};
use bedwright_calc::supply::buying::Bought;
use bedwright_calc::supply::pallets::{Load, Pallet};
use bedwright_calc::supply::{BillLine, Item};

use super::bill::text_or_empty;
use super::title::{notes, subtitle, title_block};
use super::{Align, Cell, Column, Paper, PaperKind, Row, RowKind, vessel_name};
use crate::answers::JobBill;
use crate::answers::supply::stacked;
use crate::job::Job;
use crate::picked::{PickedLine, steps_of};
use crate::words::{Label, Manner, SupplyLabel};

/// One thing for one vessel.
#[derive(Clone, Debug, PartialEq)]
pub struct Staged {
    /// Which vessel of the bill.
    pub vessel: usize,
    /// The item's key.
    pub key: String,
    /// What it is.
    pub item: String,
    /// How many stand with this vessel; none where what it takes stands with one before it.
    pub count: u32,
    /// How they are counted, in words.
    pub unit: String,
    /// How much goes into each of its tags, in words; empty where that says nothing.
    pub into_each: String,
    /// Whether some of it is for the next vessel.
    pub shared: bool,
    /// What one weighs, where known.
    pub each: Option<Mass>,
    /// What was taken instead, as it was picked.
    pub instead: String,
    /// How many are lacking, as it was picked.
    pub short: u32,
}

/// What is staged, in loading order: the vessels as the job has them, the bottom layer first, parts after the media.
#[must_use]
pub fn staged(job: &Job, bill: &JobBill, manner: Manner) -> Vec<Staged> {
    let picked: Vec<PickedLine> = steps_of(job).into_iter().next().map(|taken| taken.lines).unwrap_or_default();
    let mut all = Vec::new();
    let mut lacking: Vec<(String, u32)> =
        picked.iter().map(|line| (line.key.clone(), line.asked.saturating_sub(line.picked))).collect();
    for (vessel, own) in bill.bill.vessels.iter().enumerate() {
        let mut seen: Vec<&str> = Vec::new();
        for line in &own.lines {
            let Item::Pack { material, .. } = &line.item else {
                // What is there once for the job stands with the vessel that is loaded first.
                let key = line.item.key();
                let there: u32 = all.iter().filter(|there: &&Staged| there.key == key).map(|there| there.count).sum();
                let pooled = bill.bill.pooled.iter().find(|pooled| pooled.item == line.item);
                let left = pooled.map_or(line.quantity, |pooled| pooled.quantity).saturating_sub(there);
                if left > 0 {
                    all.push(part(vessel, line, left.min(line.quantity), manner));
                }
                continue;
            };
            if seen.contains(&material.as_ref()) {
                continue;
            }
            seen.push(material);
            if let Some(bought) = bill.bought.iter().find(|bought| bought.material == *material) {
                all.extend(media(bill, bought, vessel, manner));
            }
        }
    }
    // What was picked is what there is: shorts are lacking at the vessels loaded last.
    for there in all.iter_mut().rev() {
        if let Some(line) = picked.iter().find(|line| line.key == there.key) {
            there.instead.clone_from(&line.instead);
        }
        if let Some((_, lacks)) = lacking.iter_mut().find(|(key, _)| *key == there.key) {
            there.short = there.count.min(*lacks);
            there.count -= there.short;
            *lacks -= there.short;
        }
    }
    all
}

fn part(vessel: usize, line: &BillLine, count: u32, manner: Manner) -> Staged {
    Staged {
        vessel,
        key: line.item.key(),
        item: manner.item(&line.item),
        count,
        unit: manner.unit_of(line).to_owned(),
        into_each: String::new(),
        shared: false,
        each: None,
        instead: String::new(),
        short: 0,
    }
}

/// The packs of a material that stand with a vessel: the next ones, largest first, until what came before and what it
/// takes is covered. Every pack stands with exactly one vessel.
fn media(bill: &JobBill, bought: &Bought, vessel: usize, manner: Manner) -> Vec<Staged> {
    let Some((_, tags, need)) = bought.of.iter().find(|(there, ..)| *there == vessel) else { return Vec::new() };
    let Some(counts) = bought.counts() else { return Vec::new() };
    let into_each = manner.volume(need.volume());
    let lines = |count_of: &dyn Fn(usize) -> u32, shared: bool| -> Vec<Staged> {
        let staged = |at: usize| {
            let offer = bought.offers.get(at)?;
            let item = Item::Pack { material: bought.material.clone(), pack: offer.pack.id.clone() };
            let line = bill.bill.pooled.iter().find(|line| line.item == item)?;
            let each = line.mass.as_ref().filter(|_| line.quantity > 0);
            Some(Staged {
                vessel,
                key: item.key(),
                item: manner.item(&item),
                count: count_of(at),
                unit: manner.container(offer.pack.container, count_of(at)).to_owned(),
                into_each: into_each.clone(),
                shared,
                each: each.map(|mass| kilograms(mass.value.value / f64::from(line.quantity))),
                instead: String::new(),
                short: 0,
            })
        };
        (0..counts.len()).filter_map(staged).collect()
    };
    if bought.per_vessel {
        let place = bought.of.iter().position(|(there, ..)| *there == vessel);
        let own = place.and_then(|place| bought.each.get(place)).and_then(|packing| packing.as_ref().ok());
        let own = own.map(|packing| packing.counts.clone()).unwrap_or_default();
        let count_of = |at: usize| own.get(at).copied().unwrap_or(0).saturating_mul(*tags);
        return kept(lines(&count_of, false));
    }
    let mut packs: Vec<(usize, bedwright_calc::supply::packs::Content)> = Vec::new();
    let order = bedwright_calc::order::sorted((0..counts.len()).collect(), |a: &usize, b: &usize| {
        bought.contents.get(*b).cmp(&bought.contents.get(*a))
    });
    for at in order {
        let (Some(count), Some(content)) = (counts.get(at), bought.contents.get(at)) else { continue };
        packs.extend((0..*count).map(|_| (at, *content)));
    }
    let opened = bought.pooled.as_ref().map(|packing| packing.from_opened).unwrap_or_default();
    let (mut needed, mut given, mut next) = (bedwright_calc::supply::packs::Content::default(), opened, 0_usize);
    let last = bought.of.last().map(|(there, ..)| *there);
    for (there, tags, need) in &bought.of {
        needed = needed.plus(need.times(*tags));
        let mut mine = vec![0_u32; counts.len()];
        while let Some((at, content)) = packs.get(next) {
            if given >= needed && Some(*there) != last {
                break;
            }
            given = given.plus(*content);
            if let Some(count) = mine.get_mut(*at) {
                *count += 1;
            }
            next += 1;
        }
        if *there == vessel {
            let shared = given > needed && Some(vessel) != last;
            return kept(lines(&|at| mine.get(at).copied().unwrap_or(0), shared));
        }
    }
    Vec::new()
}

/// Those of which some stand here; one with none where all of it stands with a vessel before.
fn kept(mut lines: Vec<Staged>) -> Vec<Staged> {
    if lines.iter().any(|line| line.count > 0) {
        lines.retain(|line| line.count > 0);
    } else {
        lines.truncate(1);
    }
    lines
}

/// What stands on which pallet, of what is staged.
///
/// # Errors
/// Why it can't be stacked: a pack heavier than a pallet may bear, a limit that is none.
pub fn on_pallets(job: &Job, staged: &[Staged]) -> Result<Vec<Pallet>, Problem> {
    let loads: Vec<Load> = staged
        .iter()
        .map(|staged| Load { packs: if staged.each.is_some() { staged.count } else { 0 }, each: staged.each })
        .collect();
    stacked(job, &loads)
}

/// The staging list.
#[must_use]
pub fn staging_list(job: &Job, bill: &JobBill, manner: Manner, today: &str) -> Paper {
    let all = staged(job, bill, manner);
    let pallets = on_pallets(job, &all);
    let mut rows = Vec::new();
    let mut before = None;
    let mut order = 0;
    for (place, one) in all.iter().enumerate() {
        if before != Some(one.vessel) {
            before = Some(one.vessel);
            order = 0;
            let name = bill.vessels.get(one.vessel).map(|id| vessel_name(job, id, manner)).unwrap_or_default();
            rows.push(Row::heading(format!("vessel:{}", one.vessel), name));
        }
        order += 1;
        let on = pallets.as_ref().map(|pallets| {
            let numbers =
                pallets.iter().zip(1_usize..).filter(|(pallet, _)| pallet.loads.iter().any(|(at, _)| *at == place));
            numbers.map(|(_, number)| number.to_string()).collect::<Vec<_>>().join(", ")
        });
        rows.push(row(order, one, &on.unwrap_or_default(), manner));
    }
    if rows.is_empty() {
        rows.push(Row::remark("empty", manner.label(Label::EmptyBill)));
    }
    match &pallets {
        Ok(pallets) => {
            for (pallet, number) in pallets.iter().zip(1_usize..) {
                let packs: u32 = pallet.loads.iter().map(|(_, packs)| *packs).sum();
                let text = format!(
                    "{} {number} {} {}: {packs} · {}",
                    manner.label(SupplyLabel::Pallet),
                    manner.label(Label::Of),
                    pallets.len(),
                    manner.mass(pallet.mass_known)
                );
                rows.push(Row::remark(format!("pallet:{number}"), text));
            }
        }
        Err(problem) => rows.push(Row::remark("pallets", manner.problem(problem))),
    }
    Paper {
        kind: PaperKind::Staging,
        title: manner.label(SupplyLabel::StagingList).to_owned(),
        subtitle: subtitle(job, manner),
        title_block: title_block(job, PaperKind::Staging, None, manner, today),
        columns: vec![
            Column::new("check", "", Align::Start, 8),
            Column::new("order", manner.label(SupplyLabel::LoadingOrder), Align::End, 14),
            Column::new("item", manner.label(Label::Item), Align::Start, 56),
            Column::new("quantity", manner.label(SupplyLabel::Stage), Align::End, 18),
            Column::new("unit", "", Align::Start, 14),
            Column::new("each", manner.label(SupplyLabel::PourEach), Align::End, 24),
            Column::new("weight", manner.label(Label::WeightTogether), Align::End, 18),
            Column::new("pallet", manner.label(SupplyLabel::Pallet), Align::End, 14),
            Column::new("remark", "", Align::Start, 30),
        ],
        totals: Vec::new(),
        rows,
        notes: notes(job, manner, true),
    }
}

fn row(order: usize, one: &Staged, pallet: &str, manner: Manner) -> Row {
    let mut remarks = Vec::new();
    if one.short > 0 {
        remarks.push(format!("▲ {} {}", manner.label(SupplyLabel::ShortBy), one.short));
    }
    if !one.instead.trim().is_empty() {
        remarks.push(manner.named(manner.label(SupplyLabel::Instead), one.instead.trim()));
    }
    if one.shared {
        remarks.push(manner.label(SupplyLabel::SharedOn).to_owned());
    }
    let weight = one.each.filter(|_| one.count > 0).map(|each| kilograms(each.value * f64::from(one.count)));
    Row::new(
        format!("{}:{}:{order}", one.vessel, one.key),
        RowKind::Item,
        vec![
            Cell::Tick(false),
            Cell::Text(order.to_string()),
            Cell::Text(one.item.clone()),
            Cell::Large(one.count.to_string()),
            Cell::Text(one.unit.clone()),
            text_or_empty(&one.into_each),
            weight.map_or(Cell::Empty, |mass| Cell::Text(manner.mass(mass))),
            text_or_empty(pallet),
            if remarks.is_empty() { Cell::Empty } else { Cell::Lines(remarks) },
        ],
    )
}
