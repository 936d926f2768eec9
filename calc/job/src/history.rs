//! The changes that can be taken back, latest first.

use crate::edit::Edit;

/// How many can be taken back.
pub const DEPTH: usize = 50;

/// What was done and can be undone, and what was undone and can be done again.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct History {
    done: Vec<Edit>,
    undone: Vec<Edit>,
}

impl History {
    /// Remembers how to take a change back. Typing on in the same field is one change.
    pub fn push(&mut self, edit: &Edit, inverse: Edit) {
        self.undone.clear();
        if let Some(last) = self.done.last()
            && same_place(last, edit)
        {
            return;
        }
        self.done.push(inverse);
        if self.done.len() > DEPTH {
            self.done.remove(0);
        }
    }

    /// Ends a run of typing: the next change in the same field is one of its own.
    pub fn pause(&mut self) {
        if self.done.last() != Some(&Edit::All(Vec::new())) && !self.done.is_empty() {
            self.done.push(Edit::All(Vec::new()));
        }
    }

    /// The change that takes the last one back.
    pub fn undo(&mut self) -> Option<Edit> {
        loop {
            match self.done.pop()? {
                Edit::All(edits) if edits.is_empty() => {}
                edit => return Some(edit),
            }
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
        self.done.push(inverse);
    }

    /// Whether there is anything to take back.
    #[must_use]
    pub fn can_undo(&self) -> bool {
        self.done.iter().any(|edit| !matches!(edit, Edit::All(edits) if edits.is_empty()))
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
        (Edit::PickText { key: k, field: a, .. }, Edit::PickText { key: l, field: b, .. }) => k == l && a == b,
        (Edit::VesselNotes { vessel: v, .. }, Edit::VesselNotes { vessel: w, .. }) => v == w,
        (Edit::Tags { vessel: v, .. }, Edit::Tags { vessel: w, .. }) => v == w,
        _ => false,
    }
}
