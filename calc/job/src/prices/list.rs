//! The price list of a device, and the one door through which it changes.

use std::sync::Arc;

use super::{Origin, PriceRow, shipped_rows};
use crate::id::{Id, Revision};
use crate::sections::Unknown;

/// The most rows a list may have.
pub const MOST_ROWS: usize = 20_000;

/// Which list a price was taken from, and in which state.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Catalogue {
    /// What the list is called.
    pub title: String,
    /// The currency of its prices, as in "USD"; empty where nobody said.
    pub currency: String,
    /// The state it was in; none for the list as it ships.
    pub revision: Option<Revision>,
}

impl Catalogue {
    /// Its version as a short text: the device and how often the list had changed there; "shipped" before any change.
    #[must_use]
    pub fn version(&self) -> String {
        match &self.revision {
            Some(revision) => format!("{}:{}", revision.device, revision.counter),
            None => Origin::Shipped.id().to_owned(),
        }
    }
}

/// The list.
#[derive(Clone, Debug, PartialEq)]
pub struct PriceList {
    /// What it is called, its currency, its state.
    pub catalogue: Catalogue,
    /// Every row, in the order of their keys. Shared, so that a change to one leaves the others as they are.
    rows: Vec<Arc<PriceRow>>,
    /// What this version doesn't know of the parts it is kept in, by part.
    pub unknown: Vec<(String, Unknown)>,
}

impl Default for PriceList {
    fn default() -> PriceList {
        PriceList::shipped()
    }
}

impl PriceList {
    /// The list as it ships.
    #[must_use]
    pub fn shipped() -> PriceList {
        let mut list = PriceList { catalogue: Catalogue::default(), rows: Vec::new(), unknown: Vec::new() };
        for row in shipped_rows() {
            list.put(Arc::new(row));
        }
        list
    }

    /// Every row, in the order of their keys.
    #[must_use]
    pub fn rows(&self) -> &[Arc<PriceRow>] {
        &self.rows
    }

    /// The row of a key.
    #[must_use]
    pub fn row(&self, key: &str) -> Option<&Arc<PriceRow>> {
        self.place(key).ok().and_then(|at| self.rows.get(at))
    }

    /// The rows with a part number, those that are still offered first. Capitals and spaces around it don't count.
    #[must_use]
    pub fn with_part_number(&self, part_number: &str) -> Vec<&Arc<PriceRow>> {
        let wanted = part_number.trim();
        if wanted.is_empty() {
            return Vec::new();
        }
        let of = |retired: bool| {
            self.rows
                .iter()
                .filter(move |row| row.retired == retired && row.part_number.trim().eq_ignore_ascii_case(wanted))
        };
        of(false).chain(of(true)).collect()
    }

    /// A key that no row has, from a part number: the same part number in the same list always gives the same.
    #[must_use]
    pub fn free_key(&self, part_number: &str) -> String {
        let stem: String = part_number
            .chars()
            .map(|c| c.to_ascii_lowercase())
            .map(|c| if c.is_alphanumeric() || matches!(c, '.' | '-' | '_') { c } else { '-' })
            .take(60)
            .collect();
        let first = format!("own:{stem}");
        let mut key = first.clone();
        let mut number = 2_u32;
        while self.row(&key).is_some() {
            key = format!("{first}:{number}");
            number = number.saturating_add(1);
        }
        key
    }

    /// Puts a row in, in the place of the one of its key; gives that one back. What comes from storage comes in here.
    pub fn put(&mut self, row: Arc<PriceRow>) -> Option<Arc<PriceRow>> {
        match self.place(&row.key) {
            Ok(at) => self.rows.get_mut(at).map(|there| std::mem::replace(there, row)),
            Err(at) => {
                self.rows.insert(at, row);
                None
            }
        }
    }

    /// Puts the shipped rows of these keys back, or nothing where none ships: before a part is read once more.
    pub(crate) fn forget(&mut self, keys: &[String]) {
        if keys.is_empty() {
            return;
        }
        for key in keys {
            self.take(key);
        }
        for row in shipped_rows() {
            if keys.contains(&row.key) {
                self.put(Arc::new(row));
            }
        }
    }

    fn take(&mut self, key: &str) -> Option<Arc<PriceRow>> {
        self.place(key).ok().map(|at| self.rows.remove(at))
    }

    fn place(&self, key: &str) -> Result<usize, usize> {
        let at = self.rows.partition_point(|row| row.key.as_str() < key);
        if self.rows.get(at).is_some_and(|row| row.key == key) { Ok(at) } else { Err(at) }
    }
}

/// A change of the list.
#[derive(Clone, Debug, PartialEq)]
pub enum ListEdit {
    /// What it is called.
    Title(String),
    /// The currency of its prices.
    Currency(String),
    /// Rows put in the place of those of their keys, or taken out again: the way back of one that was put in.
    Rows(Vec<(String, Option<Arc<PriceRow>>)>),
}

impl ListEdit {
    /// One row, put in the place of the one of its key.
    #[must_use]
    pub fn row(row: PriceRow) -> ListEdit {
        ListEdit::Rows(vec![(row.key.clone(), Some(Arc::new(row)))])
    }

    /// One row as a person changed it: their own from now on.
    #[must_use]
    pub fn own(row: PriceRow) -> ListEdit {
        ListEdit::row(PriceRow { origin: Origin::Own, ..row })
    }

    /// The list as it ships, prices blank. What was typed or brought in is gone, until this is undone.
    #[must_use]
    pub fn reset(list: &PriceList) -> ListEdit {
        let shipped = PriceList::shipped();
        let mut rows: Vec<_> = list
            .rows()
            .iter()
            .filter(|row| row.origin != Origin::Shipped && shipped.row(&row.key).is_none())
            .map(|row| (row.key.clone(), None))
            .collect();
        rows.extend(
            shipped
                .rows()
                .iter()
                .filter(|row| list.row(&row.key) != Some(row))
                .map(|row| (row.key.clone(), Some(row.clone()))),
        );
        ListEdit::Rows(rows)
    }
}

/// Why the list was not changed.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum ListRefused {
    /// A row has no key, another one than it is put under, or an amount that can't be kept.
    Row(String),
    /// It would have more than [`MOST_ROWS`] rows.
    TooMany {
        /// How many it would have.
        rows: usize,
    },
}

/// Changes the list, and says how to take it back.
///
/// # Errors
/// [`ListRefused`]; the list is then as it was.
///
/// # Example
/// ```
/// use bedwright_job::id::Id;
/// use bedwright_job::prices::{ListEdit, PriceKind, PriceList, PriceRow, amount, apply};
/// let mut list = PriceList::shipped();
/// let mut row = PriceRow::new("own:u-100", PriceKind::Part);
/// row.price = amount("12.50", '.').unwrap();
/// let undo = apply(&mut list, ListEdit::row(row), &Id::new("desk")).unwrap();
/// assert!(list.row("own:u-100").is_some());
/// apply(&mut list, undo, &Id::new("desk")).unwrap();
/// assert!(list.row("own:u-100").is_none());
/// ```
pub fn apply(list: &mut PriceList, edit: ListEdit, device: &Id) -> Result<ListEdit, ListRefused> {
    let inverse = match edit {
        ListEdit::Title(title) => ListEdit::Title(std::mem::replace(&mut list.catalogue.title, title)),
        ListEdit::Currency(currency) => ListEdit::Currency(std::mem::replace(&mut list.catalogue.currency, currency)),
        ListEdit::Rows(rows) => {
            let mut count = list.rows.len();
            for (key, row) in &rows {
                let there = list.row(key).is_some();
                match row {
                    Some(row) if row.key != *key || !row.is_sound() => return Err(ListRefused::Row(key.clone())),
                    Some(_) if !there => count = count.saturating_add(1),
                    None if there => count = count.saturating_sub(1),
                    _ => {}
                }
            }
            if count > MOST_ROWS && count > list.rows.len() {
                return Err(ListRefused::TooMany { rows: count });
            }
            let mut back: Vec<_> = Vec::with_capacity(rows.len());
            for (key, row) in rows {
                let before = match row {
                    Some(row) => list.put(row),
                    None => list.take(&key),
                };
                back.push((key, before));
            }
            // A key that stood twice goes back to what it was first.
            back.reverse();
            ListEdit::Rows(back)
        }
    };
    let counter = list.catalogue.revision.as_ref().map_or(0, |revision| revision.counter).saturating_add(1);
    list.catalogue.revision = Some(Revision { device: device.clone(), counter });
    Ok(inverse)
}
