//! The changes that can be taken back, latest first.

use serde_json::{Map, Value};

use crate::back::{self, Back};
use crate::edit::{DutyChoice, Edit};
use crate::job::Job;
use crate::saved;
use crate::sections::SectionName;
use crate::sections::loading::TagChange;

/// How many can be taken back.
pub const DEPTH: usize = 50;

/// What was done and can be undone, and what was undone and can be done again.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct History {
    done: Vec<Step>,
    undone: Vec<Step>,
    /// Whether typing has paused: the next change is one of its own even in the same field.
    paused: bool,
}

/// A change that can be taken back: by an edit, or after a reload by the values that were.
#[derive(Clone, Debug, PartialEq)]
struct Step {
    edit: Edit,
    back: Vec<Back>,
}

/// The most letters the steps of a job are kept in; of more the oldest aren't.
const LETTERS: usize = 256 * 1024;

impl History {
    /// Remembers how to take a change back. Typing on in the same field is one change.
    pub fn push(&mut self, edit: &Edit, inverse: Edit, back: Vec<Back>) {
        self.undone.clear();
        let paused = std::mem::take(&mut self.paused);
        match self.done.last_mut() {
            Some(last) if !paused && same_place(&last.edit, edit) => {
                last.back = back::joined(std::mem::take(&mut last.back), back);
            }
            _ => self.remember(inverse, back),
        }
    }

    /// Ends a run of typing: the next change in the same field is one of its own.
    pub fn pause(&mut self) {
        self.paused = true;
    }

    /// The change that takes the last one back.
    pub fn undo(&mut self) -> Option<Edit> {
        self.paused = true;
        self.done.pop().map(|step| step.edit)
    }

    fn remember(&mut self, edit: Edit, back: Vec<Back>) {
        self.done.push(Step { edit, back });
        if self.done.len() > DEPTH {
            self.done.remove(0);
        }
    }

    /// Remembers how to do again what was just undone.
    pub fn undone(&mut self, redo: Edit, back: Vec<Back>) {
        self.undone.push(Step { edit: redo, back });
    }

    /// The change that does the last undone one again.
    pub fn redo(&mut self) -> Option<Edit> {
        self.undone.pop().map(|step| step.edit)
    }

    /// Remembers how to take back what was just done again.
    pub fn redone(&mut self, inverse: Edit, back: Vec<Back>) {
        self.paused = true;
        self.remember(inverse, back);
    }

    /// What can be taken back of a job, as it is kept: good for the job in this very state.
    #[must_use]
    pub fn text(&self, job: &Job) -> String {
        let mut letters = 0;
        let mut map = Map::new();
        map.insert("version".to_owned(), 1.into());
        map.insert("state".to_owned(), state(job).into());
        map.insert("steps".to_owned(), written(&self.done, &mut letters));
        map.insert("undone".to_owned(), written(&self.undone, &mut letters));
        Value::Object(map).to_string()
    }

    /// What can be taken back of a job from what was kept; nothing where the job has gone on since, or it can't be read.
    #[must_use]
    pub fn read(text: &str, job: &Job) -> History {
        let read = || -> Option<History> {
            let value = saved::exact::value(text).ok()?;
            if value.get("version")?.as_u64()? != 1 || value.get("state")?.as_str()? != state(job) {
                return None;
            }
            // What was kept by a page of before has nothing to do again.
            let undone = value.get("undone").map_or(Some(Vec::new()), steps)?;
            Some(History { done: steps(value.get("steps")?)?, undone, paused: true })
        };
        read().unwrap_or(History { paused: true, ..History::default() })
    }

    /// How many changes can be taken back.
    #[must_use]
    pub fn steps(&self) -> usize {
        self.done.len()
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

/// Steps as they are kept, the latest last; the oldest are left out where there are too many letters.
fn written(steps: &[Step], letters: &mut usize) -> Value {
    let mut all: Vec<Value> = Vec::new();
    for step in steps.iter().rev() {
        let written = back::written(&step.back);
        *letters += written.to_string().len();
        if *letters > LETTERS {
            break;
        }
        all.insert(0, written);
    }
    Value::Array(all)
}

/// Steps that were kept; none where one of them can't be read.
fn steps(kept: &Value) -> Option<Vec<Step>> {
    let kept = kept.as_array()?;
    let from = kept.len().saturating_sub(DEPTH);
    let step = |step: &Value| back::read(step).map(|back| Step { edit: Edit::Back(back.clone()), back });
    kept.iter().skip(from).map(step).collect()
}

/// The states of all sections of a job, as a text.
fn state(job: &Job) -> String {
    let mut state = String::new();
    for &name in SectionName::ALL {
        if let Some(revision) = job.revision(name) {
            state.push_str(
                &[name.id(), " ", revision.device.as_str(), " ", &revision.counter.to_string(), " "].concat(),
            );
        }
    }
    state
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
        (
            Edit::Duty { vessel: v, choice: DutyChoice::Grounds(_) },
            Edit::Duty { vessel: w, choice: DutyChoice::Grounds(_) },
        ) => v == w,
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

    #[test]
    fn typing_on_in_one_field_is_one_change() {
        let mut history = History::default();
        history.push(&text(TextField::Title, "M"), text(TextField::Title, ""), Vec::new());
        history.push(&text(TextField::Title, "Mi"), text(TextField::Title, "M"), Vec::new());
        assert_eq!(history.undo(), Some(text(TextField::Title, "")));
        assert_eq!(history.undo(), None);
    }

    #[test]
    fn a_pause_or_another_field_starts_a_change_of_its_own() {
        let mut history = History::default();
        history.push(&text(TextField::Title, "M"), text(TextField::Title, ""), Vec::new());
        history.pause();
        history.push(&text(TextField::Title, "Mi"), text(TextField::Title, "M"), Vec::new());
        history.push(&text(TextField::Site, "S"), text(TextField::Site, ""), Vec::new());
        assert_eq!(history.undo(), Some(text(TextField::Site, "")));
        assert_eq!(history.undo(), Some(text(TextField::Title, "M")));
        assert_eq!(history.undo(), Some(text(TextField::Title, "")));
    }

    #[test]
    fn fifty_changes_can_be_taken_back_however_often_typing_paused() {
        let mut history = History::default();
        for k in 0..200 {
            history.push(&text(TextField::Title, "x"), text(TextField::Title, &k.to_string()), Vec::new());
            history.pause();
        }
        let mut count = 0;
        while history.undo().is_some() {
            count += 1;
        }
        assert_eq!(count, DEPTH);
    }
}
