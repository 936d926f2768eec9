//! The changes that can be taken back, latest first.

use crate::edit::Edit;
use crate::sections::loading::TagChange;

/// How many can be taken back.
pub const DEPTH: usize = 50;

/// What was done and can be undone, and what was undone and can be done again.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct History {
    done: Vec<Edit>,
    undone: Vec<Edit>,
    /// Whether typing has paused: the next change is one of its own even in the same field.
    paused: bool,
}

impl History {
    /// Whether a change goes on with the last one: typing on in the same field is one change.
    #[must_use]
    pub fn goes_on(&self, edit: &Edit) -> bool {
        !self.paused && self.done.last().is_some_and(|last| same_place(last, edit))
    }

    /// Remembers how to take a change back. One that goes on with the last one is taken back together with it.
    pub fn push(&mut self, goes_on: bool, inverse: Edit) {
        self.undone.clear();
        self.paused = false;
        if !goes_on {
            self.remember(inverse);
        }
    }

    /// Ends a run of typing: the next change in the same field is one of its own.
    pub fn pause(&mut self) {
        self.paused = true;
    }

    /// The change that takes the last one back.
    pub fn undo(&mut self) -> Option<Edit> {
        self.paused = true;
        self.done.pop()
    }

    fn remember(&mut self, inverse: Edit) {
        self.done.push(inverse);
        if self.done.len() > DEPTH {
            self.done.remove(0);
        }
    }

    /// Remembers how to do again what was just undone.
    pub fn undone(&mut self, redo: Edit) {
        self.undone.push(redo);
    }

    /// The change that does the last undone one again.
    pub fn redo(&mut self) -> Option<Edit> {
        self.undone.pop()
    }

    /// Remembers how to take back what was just done again.
    pub fn redone(&mut self, inverse: Edit) {
        self.paused = true;
        self.remember(inverse);
    }

    /// Whether there is anything to take back.
    #[must_use]
    pub fn can_undo(&self) -> bool {
        !self.done.is_empty()
    }

    /// Whether there is anything to do again.
    #[must_use]
    pub fn can_redo(&self) -> bool {
        !self.undone.is_empty()
    }
}

/// Whether two changes are of the same typed field.
fn same_place(a: &Edit, b: &Edit) -> bool {
    match (a, b) {
        (Edit::Text { field: a, .. }, Edit::Text { field: b, .. }) => a == b,
        (Edit::Survey { vessel: v, field: a, .. }, Edit::Survey { vessel: w, field: b, .. }) => v == w && a == b,
        (Edit::Plan { vessel: v, field: a, .. }, Edit::Plan { vessel: w, field: b, .. }) => v == w && a == b,
        (Edit::LayerEntry { layer: l, field: a, .. }, Edit::LayerEntry { layer: m, field: b, .. }) => l == m && a == b,
        (Edit::Water { of: a, field: f, .. }, Edit::Water { of: b, field: g, .. }) => a == b && f == g,
        (Edit::PickText { key: k, field: a, .. }, Edit::PickText { key: l, field: b, .. }) => k == l && a == b,
        (Edit::Kit { field: a, .. }, Edit::Kit { field: b, .. }) => a == b,
        (Edit::Load { vessel: v, tag: s, change: a }, Edit::Load { vessel: w, tag: t, change: b }) => {
            v == w && s == t && same_text(a, b)
        }
        (Edit::Supply(a), Edit::Supply(b)) => a.same_place(b),
        (Edit::VesselNotes { vessel: v, .. }, Edit::VesselNotes { vessel: w, .. }) => v == w,
        (Edit::Tags { vessel: v, .. }, Edit::Tags { vessel: w, .. }) => v == w,
        (Edit::Quote(a), Edit::Quote(b)) => a.same_place(b),
        _ => false,
    }
}

/// Whether two changes of a vessel's loading are of the same typed field.
fn same_text(a: &TagChange, b: &TagChange) -> bool {
    match (a, b) {
        (TagChange::Reading(a, _), TagChange::Reading(b, _)) => a == b,
        (TagChange::Poured(a, _), TagChange::Poured(b, _)) | (TagChange::Lot(a, _), TagChange::Lot(b, _)) => a == b,
        (TagChange::Text(a, _), TagChange::Text(b, _)) => a == b,
        (TagChange::DrumLabel(a, _), TagChange::DrumLabel(b, _))
        | (TagChange::DrumContents(a, _), TagChange::DrumContents(b, _))
        | (TagChange::DrumWeight(a, _), TagChange::DrumWeight(b, _)) => a == b,
        _ => false,
    }
}

#[cfg(test)]
mod tests {
    use super::{DEPTH, History};
    use crate::edit::Edit;
    use crate::sections::head::TextField;

    fn text(field: TextField, text: &str) -> Edit {
        Edit::Text { field, text: text.to_owned() }
    }

    fn push(history: &mut History, edit: &Edit, inverse: Edit) {
        history.push(history.goes_on(edit), inverse);
    }

    #[test]
    fn typing_on_in_one_field_is_one_change() {
        let mut history = History::default();
        push(&mut history, &text(TextField::Title, "M"), text(TextField::Title, ""));
        push(&mut history, &text(TextField::Title, "Mi"), text(TextField::Title, "M"));
        assert_eq!(history.undo(), Some(text(TextField::Title, "")));
        assert_eq!(history.undo(), None);
    }

    #[test]
    fn a_pause_or_another_field_starts_a_change_of_its_own() {
        let mut history = History::default();
        push(&mut history, &text(TextField::Title, "M"), text(TextField::Title, ""));
        history.pause();
        push(&mut history, &text(TextField::Title, "Mi"), text(TextField::Title, "M"));
        push(&mut history, &text(TextField::Site, "S"), text(TextField::Site, ""));
        assert_eq!(history.undo(), Some(text(TextField::Site, "")));
        assert_eq!(history.undo(), Some(text(TextField::Title, "M")));
        assert_eq!(history.undo(), Some(text(TextField::Title, "")));
    }

    #[test]
    fn fifty_changes_can_be_taken_back_however_often_typing_paused() {
        let mut history = History::default();
        for k in 0..200 {
            push(&mut history, &text(TextField::Title, "x"), text(TextField::Title, &k.to_string()));
            history.pause();
        }
        let mut count = 0;
        while history.undo().is_some() {
            count += 1;
        }
        assert_eq!(count, DEPTH);
    }
}
