//! The price list of this device: what it is now, the way to change it, and the way back.

use std::sync::Arc;

use bedwright_edge::store::Keeper;
use bedwright_job::prices::{ListEdit, PriceList, apply, lacks};
use bedwright_job::saved::{list_part, list_parts, list_text, read_list_part};
use bedwright_job::sections::SectionName;
use litemap::LiteMap;

use super::Desk;
use crate::notices::{self, Notice};
use crate::parts::signal::Held;
use crate::route::Route;

/// Keys of the price list's parts start like this.
pub(super) const PRICES: &str = "bedwright/prices/";
/// How many changes of the list can be taken back.
const DEPTH: usize = 50;

/// The list on the desk.
pub struct ListOnDesk {
    /// As it is now.
    pub list: Held<Arc<PriceList>>,
    /// Counted up when rows change by something else than typing.
    pub turned: Held<u32>,
    /// Texts that couldn't be read, by row and field: kept until they can be, or the page is closed.
    pub drafts: Held<LiteMap<String, String>>,
    steps: Held<Steps>,
}

/// What can be taken back, and done again.
#[derive(Default)]
struct Steps {
    done: Vec<(String, ListEdit)>,
    undone: Vec<ListEdit>,
    paused: bool,
}

impl ListOnDesk {
    pub(super) fn new(list: PriceList) -> ListOnDesk {
        ListOnDesk {
            list: Held::new(Arc::new(list)),
            turned: Held::new(0),
            drafts: Held::new(LiteMap::new()),
            steps: Held::new(Steps::default()),
        }
    }
}

/// Takes a part that was kept into the list. A later or damaged one stays where it is until it is set aside.
pub(super) fn take_part(list: &mut PriceList, key: &str, text: &str, other: Option<&str>, keeper: &Keeper) -> bool {
    let Some(part) = key.strip_prefix(PRICES) else { return true };
    if read_list_part(list, part, text).is_ok() {
        return true;
    }
    keeper.protect(key);
    other.is_some_and(|other| read_list_part(list, part, other).is_ok())
}

impl Desk {
    /// Changes the price list. Changes of one `place` in a row, as letters typed into a field, are taken back together.
    pub fn edit_list(self, place: &str, edit: ListEdit) -> bool {
        let Some(inverse) = self.change_list(edit) else { return false };
        self.prices.steps.update(|steps| {
            steps.undone.clear();
            let goes_on = !std::mem::take(&mut steps.paused)
                && !place.is_empty()
                && steps.done.last().is_some_and(|(there, _)| there == place);
            if !goes_on {
                steps.remember(place, inverse);
            }
        });
        true
    }

    /// Ends a run of typing in the price list.
    pub fn pause_list(self) {
        self.prices.steps.update_untracked(|steps| steps.paused = true);
    }

    /// Takes the last change of the list back.
    pub fn undo_list(self) {
        let step = self.prices.steps.update(|steps| steps.done.pop()).flatten();
        if let Some((_, edit)) = step
            && let Some(redo) = self.change_list(edit)
        {
            self.prices.steps.update(|steps| {
                steps.paused = true;
                steps.undone.push(redo);
            });
            self.turn_list();
        }
    }

    /// Does the last change of the list that was taken back again.
    pub fn redo_list(self) {
        let step = self.prices.steps.update(|steps| steps.undone.pop()).flatten();
        if let Some(edit) = step
            && let Some(inverse) = self.change_list(edit)
        {
            self.prices.steps.update(|steps| {
                steps.paused = true;
                steps.remember("", inverse);
            });
            self.turn_list();
        }
    }

    /// Whether a change of the list can be taken back.
    pub fn can_undo_list(self) -> bool {
        self.prices.steps.with(|steps| !steps.done.is_empty())
    }

    /// Whether one can be done again.
    pub fn can_redo_list(self) -> bool {
        self.prices.steps.with(|steps| !steps.undone.is_empty())
    }

    /// Tells fields that what stands in them was changed by something else than typing.
    pub fn turn_list(self) {
        self.prices.drafts.set(LiteMap::new());
        self.prices.turned.update(|n| *n = n.wrapping_add(1));
    }

    /// Where a paper of a job is looked at that prices stand behind, the job takes along what it uses of the list.
    pub(super) fn carry_on_papers(self) {
        if self.route.with_untracked(|route| {
            matches!(route, Route::Bill(_) | Route::Picking(_) | Route::Packs(_) | Route::Labels(_) | Route::Quote(_))
        }) {
            // After the screen stands: it follows the job.
            wasm_bindgen_futures::spawn_local(async move { self.bring_prices() });
        }
    }

    /// Puts the rows of the list that the open job uses and lacks into the job. Nothing a person did: it isn't undone.
    pub(super) fn bring_prices(self) {
        let Some(job) = self.open_now().filter(|job| !job.is_locked(SectionName::Prices)) else { return };
        let bill = self.bill();
        let lacking = leptos::prelude::untrack(|| {
            super::with_bill(bill, |bill| self.prices.list.with_untracked(|list| lacks(&job, list, bill)))
        });
        if let Some(edit) = lacking {
            self.change(edit);
        }
    }

    fn change_list(self, edit: ListEdit) -> Option<ListEdit> {
        let device = self.person.with_untracked(|person| person.device.clone());
        let parts = parts_of(&edit);
        let inverse = self.prices.list.update(|list| apply(Arc::make_mut(list), edit, &device).ok()).flatten()?;
        self.prices.list.with_untracked(|list| {
            for part in &parts {
                self.keeper.schedule(&format!("{PRICES}{part}"), &list_text(list, part));
            }
        });
        Some(inverse)
    }

    /// Takes over a part of the list that another tab wrote.
    pub(super) fn list_changed_elsewhere(self, key: &str) {
        let Ok(Some(text)) = self.keeper.see(key) else { return };
        let part = key.strip_prefix(PRICES).unwrap_or_default();
        let taken = self.prices.list.update(|list| read_list_part(Arc::make_mut(list), part, &text).is_ok());
        if taken != Some(true) {
            notices::put(self.notices, Notice::SetAside(vec![key.to_owned()]));
            return;
        }
        // What could be taken back was of a list that is gone.
        self.prices.steps.set(Steps::default());
        self.turn_list();
    }
}

impl Steps {
    fn remember(&mut self, place: &str, inverse: ListEdit) {
        self.done.push((place.to_owned(), inverse));
        if self.done.len() > DEPTH {
            self.done.remove(0);
        }
    }
}

/// The parts a change is kept in: the head, since it counts changes, and those of its rows.
fn parts_of(edit: &ListEdit) -> Vec<String> {
    let all = list_parts();
    let ListEdit::Rows(rows) = edit else { return all.into_iter().take(1).collect() };
    let mut touched: LiteMap<String, ()> = LiteMap::new();
    for (key, _) in rows {
        touched.insert(list_part(key), ());
        if touched.len() + 1 == all.len() {
            break;
        }
    }
    all.into_iter()
        .enumerate()
        .filter(|(place, part)| *place == 0 || touched.contains_key(part))
        .map(|(_, part)| part)
        .collect()
}
