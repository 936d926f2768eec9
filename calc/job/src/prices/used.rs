//! What a job takes from the list: the rows it carries, and which row prices what.

use std::sync::Arc;

use bedwright_calc::material::Pack;
use bedwright_calc::quantity::Length;
use bedwright_calc::supply::Item;

use super::{Catalogue, Origin, PriceList, PriceRow};
use crate::answers::JobBill;
use crate::edit::Edit;
use crate::job::Job;
use crate::sections::Unknown;

/// The rows a job carries.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct JobPrices {
    /// The list they were taken from last.
    pub catalogue: Catalogue,
    /// By key, in its order.
    rows: Vec<Arc<PriceRow>>,
    /// What this version doesn't know.
    pub unknown: Unknown,
}

impl JobPrices {
    /// Every row, in the order of their keys.
    #[must_use]
    pub fn rows(&self) -> &[Arc<PriceRow>] {
        &self.rows
    }

    /// The row of a key.
    #[must_use]
    pub fn row(&self, key: &str) -> Option<&Arc<PriceRow>> {
        self.rows.iter().find(|row| row.key == key)
    }

    /// Puts a row under a key, or takes the one there away; gives back what was there.
    pub(crate) fn set(&mut self, key: &str, row: Option<Arc<PriceRow>>) -> Option<Arc<PriceRow>> {
        let at = self.rows.partition_point(|there| there.key.as_str() < key);
        let there = self.rows.get(at).is_some_and(|there| there.key == key);
        let before = if there { Some(self.rows.remove(at)) } else { None };
        if let Some(row) = row {
            self.rows.insert(at, row);
        }
        before
    }
}

/// The keys of the rows that may price an item, the closest first: that of its size, then that of any size. A pipe's
/// price doesn't hang on the length it is cut to.
#[must_use]
pub fn price_keys(item: &Item) -> Vec<String> {
    match item {
        Item::Pack { .. } => vec![item.key()],
        Item::Part { fitting, size: None, .. } => vec![format!("part:{}", fitting.id())],
        Item::Part { fitting, size: Some(size), .. } => {
            vec![format!("part:{}:{}", fitting.id(), micrometres(size)), format!("part:{}", fitting.id())]
        }
    }
}

/// The key of the row that is an item's own.
#[must_use]
pub fn price_key(item: &Item) -> String {
    price_keys(item).swap_remove(0)
}

fn micrometres(length: &Length) -> i64 {
    (length.value * 1e6).round() as i64
}

/// Where a job finds its prices: in the rows it carries first, in the list of this device next.
#[derive(Clone, Copy, Debug)]
pub struct Prices<'a> {
    /// What the job carries.
    pub job: &'a JobPrices,
    /// The list of this device.
    pub list: &'a PriceList,
}

impl<'a> Prices<'a> {
    /// The row of a key.
    #[must_use]
    pub fn row(&self, key: &str) -> Option<&'a Arc<PriceRow>> {
        self.job.row(key).or_else(|| self.list.row(key))
    }

    /// The row that prices an item: the closest one about which a person said something, else the shipped one, which
    /// has no price. None for what no list knows.
    #[must_use]
    pub fn of(&self, item: &Item) -> Option<&'a Arc<PriceRow>> {
        let keys = price_keys(item);
        let mut found =
            keys.iter().filter_map(|key| self.job.row(key)).chain(keys.iter().filter_map(|key| self.list.row(key)));
        let said = found.clone().find(|row| row.origin != Origin::Shipped);
        said.or_else(|| found.next())
    }
}

/// The keys of every pack that a material on a bill comes in, each with whether the job carries one of the material yet.
fn packs_of_bill(job: &Job, bill: &JobBill) -> Vec<(String, bool)> {
    let mut keys = Vec::new();
    for bought in &bill.bought {
        let material = &bought.material;
        let packs: Vec<String> = Pack::of_material(material)
            .into_iter()
            .map(|pack| price_key(&Item::Pack { material: material.clone(), pack: pack.id }))
            .collect();
        let settled = packs.iter().any(|key| job.prices.body.row(key).is_some());
        keys.extend(packs.into_iter().map(|key| (key, settled)));
    }
    keys
}

/// As [`carries`], only for rows the job has none of yet: what it carries stays as it is. Once it carries one pack of a
/// material no other size comes along by itself: what is bought would be another on another phone.
#[must_use]
pub fn lacks(job: &Job, list: &PriceList, bill: &JobBill) -> Option<Edit> {
    let Some(Edit::All(edits)) = carries(job, list, bill, &[]) else { return None };
    let on_bill: Vec<String> = bill.bill.pooled.iter().flat_map(|line| price_keys(&line.item)).collect();
    let packs = packs_of_bill(job, bill);
    let settled = |key: &String| packs.iter().any(|(pack, settled)| *settled && pack == key) && !on_bill.contains(key);
    let there =
        |edit: &Edit| matches!(edit, Edit::Price { key, .. } if job.prices.body.row(key).is_some() || settled(key));
    let edits: Vec<Edit> = edits.into_iter().filter(|edit| !there(edit)).collect();
    edits.iter().any(|edit| matches!(edit, Edit::Price { .. })).then_some(Edit::All(edits))
}

/// What a job's own rows would have to become so that they are those of the list, for everything on its bill, for the other
/// packs that its materials come in and for `more` keys; nothing where they are that already. Rows the list says nothing of
/// stay as they are.
#[must_use]
pub fn carries(job: &Job, list: &PriceList, bill: &JobBill, more: &[String]) -> Option<Edit> {
    let mut keys: Vec<String> = bill.bill.pooled.iter().flat_map(|line| price_keys(&line.item)).collect();
    keys.extend(packs_of_bill(job, bill).into_iter().map(|(key, _)| key));
    keys.extend(more.iter().cloned());
    keys.extend(job.prices.body.rows().iter().map(|row| row.key.clone()));
    let mut edits: Vec<Edit> = Vec::new();
    for key in keys {
        let Some(row) = list.row(&key).filter(|row| row.origin != Origin::Shipped) else { continue };
        let known = edits.iter().any(|edit| matches!(edit, Edit::Price { key: there, .. } if *there == key));
        if !known && job.prices.body.row(&key) != Some(row) {
            edits.push(Edit::Price { key, row: Some(row.clone()) });
        }
    }
    if edits.is_empty() {
        return None;
    }
    edits.push(Edit::Catalogue(list.catalogue.clone()));
    Some(Edit::All(edits))
}

/// The rows a job carries about which this device's list says something else now: the job's, and the list's.
#[must_use]
pub fn differing<'a>(job: &'a JobPrices, list: &'a PriceList) -> Vec<(&'a Arc<PriceRow>, &'a Arc<PriceRow>)> {
    job.rows()
        .iter()
        .filter_map(|row| Some((row, list.row(&row.key)?)))
        .filter(|(row, there)| there.origin != Origin::Shipped && row != there)
        .collect()
}
