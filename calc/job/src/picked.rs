//! How far picking has come, as records: picked, staged, handed over, each with its day and the name of who did it. What
//! was picked stands in the record as it was, whatever the bill says later; a step that was wrong is withdrawn by another
//! record.

use serde_json::{Map, Value, json};

use crate::id::Id;
use crate::job::{Job, Record};

/// A step of picking.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Step {
    /// Every line was taken from the shelf, or said to be short.
    Picked,
    /// What was taken stands together, vessel by vessel.
    Staged,
    /// Somebody took it along.
    HandedOver,
}

impl Step {
    /// All of them, in their order.
    pub const ALL: &'static [Step] = &[Step::Picked, Step::Staged, Step::HandedOver];

    /// The permanent id.
    #[must_use]
    pub const fn id(self) -> &'static str {
        match self {
            Step::Picked => "picked",
            Step::Staged => "staged",
            Step::HandedOver => "handed_over",
        }
    }

    /// The one after it.
    #[must_use]
    pub fn next(self) -> Option<Step> {
        Step::ALL.iter().copied().find(|step| *step > self)
    }
}

/// A step that was taken.
#[derive(Clone, Debug, PartialEq)]
pub struct Taken {
    /// The record's id.
    pub id: Id,
    /// Which step.
    pub step: Step,
    /// The day, as `2026-11-24`.
    pub day: String,
    /// Who did it.
    pub name: String,
    /// What was picked; of the first step only.
    pub lines: Vec<PickedLine>,
}

/// A line as it was picked.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct PickedLine {
    /// The item's key.
    pub key: String,
    /// What it is, as the list said.
    pub item: String,
    /// How they are counted, as the list said.
    pub unit: String,
    /// How many were asked for.
    pub asked: u32,
    /// How many were taken.
    pub picked: u32,
    /// What one weighs, kg, where known.
    pub each_kg: Option<f64>,
    /// Where it lay.
    pub bin: String,
    /// Its part number.
    pub part_number: String,
    /// Its lot.
    pub lot: String,
    /// The date on it.
    pub date: String,
    /// What was taken instead.
    pub instead: String,
    /// A note.
    pub note: String,
    /// Which vessels it is for, as the list said.
    pub split: Vec<String>,
    /// Whether it comes back after the job.
    pub returns: bool,
}

/// What a record of this kind says it is.
pub(crate) const KIND: &str = "picking_step";

impl Taken {
    /// It as a record of a job.
    #[must_use]
    pub fn record(&self) -> Record {
        let mut map = Map::new();
        let texts = [
            ("id", self.id.as_str()),
            ("kind", KIND),
            ("step", self.step.id()),
            ("day", &self.day),
            ("name", &self.name),
        ];
        for (key, text) in texts {
            map.insert(key.to_owned(), text.into());
        }
        if self.step == Step::Picked {
            map.insert("lines".to_owned(), self.lines.iter().map(PickedLine::value).collect());
        }
        Record { id: self.id.clone(), value: Value::Object(map) }
    }
}

impl PickedLine {
    fn texts(&self) -> [(&'static str, &str); 9] {
        [
            ("key", &self.key),
            ("item", &self.item),
            ("unit", &self.unit),
            ("bin", &self.bin),
            ("part_number", &self.part_number),
            ("lot", &self.lot),
            ("date", &self.date),
            ("instead", &self.instead),
            ("note", &self.note),
        ]
    }

    fn value(&self) -> Value {
        let mut map = Map::new();
        for (key, text) in self.texts() {
            if !text.is_empty() {
                map.insert(key.to_owned(), text.into());
            }
        }
        map.insert("asked".to_owned(), self.asked.into());
        map.insert("picked".to_owned(), self.picked.into());
        if let Some(each) = self.each_kg {
            map.insert("each_kg".to_owned(), json!(each));
        }
        if !self.split.is_empty() {
            map.insert("for".to_owned(), self.split.clone().into());
        }
        if self.returns {
            map.insert("returns".to_owned(), true.into());
        }
        Value::Object(map)
    }

    fn of(value: &Value) -> PickedLine {
        let count = |key: &str| value.get(key).and_then(Value::as_u64).and_then(|count| u32::try_from(count).ok());
        let split = value.get("for").and_then(Value::as_array);
        PickedLine {
            key: text(value, "key"),
            item: text(value, "item"),
            unit: text(value, "unit"),
            asked: count("asked").unwrap_or(0),
            picked: count("picked").unwrap_or(0),
            each_kg: value.get("each_kg").and_then(Value::as_f64),
            bin: text(value, "bin"),
            part_number: text(value, "part_number"),
            lot: text(value, "lot"),
            date: text(value, "date"),
            instead: text(value, "instead"),
            note: text(value, "note"),
            split: split
                .map_or(Vec::new(), |split| split.iter().filter_map(Value::as_str).map(str::to_owned).collect()),
            returns: value.get("returns").and_then(Value::as_bool).unwrap_or(false),
        }
    }
}

fn text(value: &Value, key: &str) -> String {
    value.get(key).and_then(Value::as_str).unwrap_or_default().to_owned()
}

/// The steps that stand, in their order. A step whose predecessor was withdrawn goes with it; of two the later stands.
#[must_use]
pub fn steps_of(job: &Job) -> Vec<Taken> {
    let mut found: Vec<Taken> = Vec::new();
    for record in &job.records {
        let value = &record.value;
        match text(value, "kind").as_str() {
            "withdrawn" => {
                let of = text(value, "of");
                found.retain(|taken| taken.id.as_str() != of);
            }
            KIND => {
                let id = text(value, "step");
                let Some(step) = Step::ALL.iter().copied().find(|step| step.id() == id) else { continue };
                let lines = value.get("lines").and_then(Value::as_array);
                found.retain(|taken| taken.step < step);
                found.push(Taken {
                    id: record.id.clone(),
                    step,
                    day: text(value, "day"),
                    name: text(value, "name"),
                    lines: lines.map_or(Vec::new(), |lines| lines.iter().map(PickedLine::of).collect()),
                });
            }
            _ => {}
        }
    }
    // Without the step before it none stands.
    Step::ALL.iter().map_while(|step| found.iter().find(|taken| taken.step == *step).cloned()).collect()
}

#[cfg(test)]
mod tests {
    use super::{PickedLine, Step, Taken, steps_of};
    use crate::edit::{Edit, apply};
    use crate::evidence::withdrawal;
    use crate::id::Id;
    use crate::job::Job;

    fn taken(id: &str, step: Step) -> Taken {
        let lines = if step == Step::Picked {
            vec![PickedLine {
                key: "pack:a:b".to_owned(),
                item: "Gravel, bag".to_owned(),
                asked: 3,
                picked: 2,
                each_kg: Some(22.679_618_5),
                split: vec!["CF-1: 0.15 cu ft".to_owned()],
                ..PickedLine::default()
            }]
        } else {
            Vec::new()
        };
        Taken { id: Id::new(id), step, day: "2026-11-26".to_owned(), name: "R. Moss (invented)".to_owned(), lines }
    }

    fn job_with(records: impl IntoIterator<Item = crate::job::Record>) -> Job {
        let mut job = Job::new(Id::new("job"), "2026-11-26");
        for record in records {
            // A new record is taken, and stays.
            assert_eq!(apply(&mut job, Edit::AddRecord(record), &Id::new("desk")), Ok(None));
        }
        job
    }

    #[test]
    fn a_step_is_read_back_as_it_was_written() {
        let steps = [taken("a", Step::Picked), taken("b", Step::Staged), taken("c", Step::HandedOver)];
        let job = job_with(steps.iter().map(Taken::record));
        assert_eq!(steps_of(&job), steps);
    }

    #[test]
    fn what_follows_a_withdrawn_step_goes_with_it() {
        let steps = [taken("a", Step::Picked), taken("b", Step::Staged), taken("c", Step::HandedOver)];
        let withdrawn = withdrawal(Id::new("w"), &Id::new("b"), "2026-11-27");
        let job = job_with(steps.iter().map(Taken::record).chain([withdrawn]));
        assert_eq!(steps_of(&job), steps[..1]);
    }

    #[test]
    fn picked_again_is_staged_again() {
        let job = job_with(
            [taken("a", Step::Picked), taken("b", Step::Staged), taken("d", Step::Picked)].iter().map(Taken::record),
        );
        assert_eq!(steps_of(&job), [taken("d", Step::Picked)]);
        assert_eq!(Step::Picked.next(), Some(Step::Staged));
        assert_eq!(Step::HandedOver.next(), None);
    }
}
