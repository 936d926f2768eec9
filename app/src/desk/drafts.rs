//! What is being written and belongs to no job yet: a visit that isn't kept, a reason without its line, a text that was pasted.
//! It outlives its screen, so that Back takes nothing away. It doesn't outlive the page.

use std::rc::Rc;

use super::Desk;
use crate::parts::live::follow;
use crate::parts::signal::Held;
use crate::route::Route;

impl Desk {
    /// What is being written on the screen that is drawn, by a name no other there has: as it was left, else blank.
    pub fn draft<T: Clone + 'static>(self, name: &str, blank: T, is_blank: impl Fn(&T) -> bool + 'static) -> Held<T> {
        let key = [&self.route.with_untracked(Route::address), " ", name].concat();
        let left = self.drafts.borrow().get(&key).cloned().and_then(|left| left.downcast::<T>().ok());
        let held = Held::new(left.map_or(blank, |left| (*left).clone()));
        follow(move || {
            let now = held.get();
            let mut drafts = self.drafts.borrow_mut();
            if is_blank(&now) {
                drafts.remove(&key);
            } else {
                drafts.insert(key.clone(), Rc::new(now));
            }
        });
        held
    }

    /// The same for a plain text.
    pub fn draft_text(self, name: &str) -> Held<String> {
        self.draft(name, String::new(), String::is_empty)
    }
}
