//! Two states of one job become one, and nothing typed on either side is lost unasked.

use bedwright_job::edit::{Edit, apply};
use bedwright_job::entry::Unit;
use bedwright_job::envelope::{Contents, open, seal};
use bedwright_job::field::SurveyField;
use bedwright_job::id::Id;
use bedwright_job::job::{Job, Record};
use bedwright_job::join::{Changed, Take, Unjoined, compare, join, taken_over, usual};
use bedwright_job::saved::{job_text, read_job};
use bedwright_job::sections::head::TextField;
use proptest::prelude::*;
use serde_json::{Value, json};

use crate::edits::edit;
use crate::{cases, jobs};

fn on(device: &str, mut job: Job, edits: Vec<Edit>) -> Job {
    for edit in edits {
        // A change that doesn't find its vessel is refused; the others are what this is about.
        let _ = apply(&mut job, edit, &Id::new(device));
    }
    job
}

/// The sample after somebody changed it, and the same as it arrives somewhere else.
fn handed_over() -> (Job, Job) {
    let all = TextField::ALL.iter().map(|&field| Edit::Text { field, text: format!("{field:?}") }).collect();
    let here = on("desk", jobs::sample(), all);
    let there = taken_over(&open(&seal(&here, &Contents::whole())).unwrap().job);
    (here, there)
}

fn title(text: &str) -> Edit {
    Edit::Text { field: TextField::Title, text: text.to_owned() }
}

fn notes(text: &str) -> Edit {
    Edit::Text { field: TextField::Notes, text: text.to_owned() }
}

/// What a job says once it was kept and read, without which device counted how far.
fn content(job: &Job) -> Value {
    let kept = read_job(&job_text(job)).unwrap();
    let mut file: Value = serde_json::from_str(&job_text(&kept)).unwrap();
    for section in file["sections"].as_object_mut().unwrap().values_mut() {
        for key in ["revision", "parent", "base"] {
            section.as_object_mut().unwrap().remove(key);
        }
    }
    let records = file["records"].as_array_mut().unwrap();
    records.sort_by_key(Value::to_string);
    file
}

#[test]
fn what_only_one_side_changed_is_taken() {
    let (here, there) = handed_over();
    let here = on("desk", here, vec![title("Mill")]);
    let there = on("phone", there, vec![notes("Gate code at the office")]);
    let found = compare(&here, &there).unwrap();
    let said: Vec<_> = found.iter().map(|d| (d.place.join("/"), d.changed)).collect();
    assert_eq!(said, [("title".to_owned(), Changed::Here), ("notes".to_owned(), Changed::There)]);
    let joined = join(&here, &there, |d| usual(d.changed)).unwrap();
    assert_eq!(joined.head.body.title, "Mill");
    assert_eq!(joined.head.body.notes, "Gate code at the office");
    // Once joined there is nothing left to say, whoever asks.
    assert!(compare(&joined, &there).unwrap().iter().all(|d| d.changed == Changed::Here));
    let back = join(&there, &open(&seal(&joined, &Contents::whole())).unwrap().job, |d| usual(d.changed)).unwrap();
    assert_eq!(content(&back), content(&joined));
}

#[test]
fn what_both_changed_is_asked_and_any_answer_is_kept() {
    let (here, there) = handed_over();
    let here = on("desk", here, vec![notes("Gate code at the office")]);
    let there = on("phone", there, vec![notes("Call first")]);
    let asked = compare(&here, &there).unwrap();
    let [difference] = asked.as_slice() else { panic!("{asked:?}") };
    assert_eq!(difference.changed, Changed::Both);
    assert_eq!(difference.before, Some(json!("Notes")));
    for (take, said) in [
        (Take::Here, "Gate code at the office"),
        (Take::There, "Call first"),
        (Take::Both, "Call first\nGate code at the office"),
    ] {
        assert_eq!(join(&here, &there, |_| take).unwrap().head.body.notes, said);
    }
}

#[test]
fn a_typed_value_is_one_thing() {
    let (here, there) = handed_over();
    let typed = |text: &str, unit| Edit::Survey {
        vessel: Id::new("filter"),
        field: SurveyField::InsideDepth,
        entry: Some(jobs::measured(text, unit)),
    };
    let here = on("desk", here, vec![typed("51", Unit::Inch)]);
    let there = on("phone", there, vec![typed("1300", Unit::Millimetre)]);
    let joined = join(&here, &there, |_| Take::There).unwrap();
    assert_eq!(joined.survey.body, there.survey.body);
}

#[test]
fn a_section_that_was_not_sent_says_nothing() {
    let (here, there) = handed_over();
    let there = on("phone", there, vec![notes("Call first")]);
    let few = Contents { sections: vec![], ..Contents::whole() };
    let arrived = open(&seal(&there, &few)).unwrap().job;
    let joined = join(&here, &arrived, |d| usual(d.changed)).unwrap();
    assert_eq!(joined.survey, here.survey);
    assert_eq!(joined.head.body.notes, "Call first");
}

#[test]
fn records_unite_and_two_of_one_name_both_stay() {
    let (here, there) = handed_over();
    let record =
        |id: &str, says: &str| Edit::AddRecord(Record { id: Id::new(id), value: json!({ "id": id, "says": says }) });
    let here = on("desk", here, vec![record("r1", "signed on the desk"), record("r2", "same")]);
    let there =
        on("phone", there, vec![record("r1", "signed on the phone"), record("r2", "same"), record("r3", "more")]);
    let (one, other) = (join(&here, &there, |_| Take::Here).unwrap(), join(&there, &here, |_| Take::Here).unwrap());
    for joined in [&one, &other] {
        let said: Vec<&str> = joined.records.iter().map(|r| r.value["says"].as_str().unwrap()).collect();
        assert_eq!(said.len(), 4, "{said:?}");
        for says in ["signed on the desk", "signed on the phone", "same", "more"] {
            assert!(said.contains(&says), "{said:?}");
        }
        // Joined again, nothing is added.
        assert_eq!(join(joined, &there, |_| Take::Here).unwrap().records, joined.records);
    }
}

#[test]
fn another_job_is_not_joined() {
    let other = Job::new(Id::new("other"), "2026-11-26");
    assert_eq!(compare(&jobs::sample(), &other), Err(Unjoined::OtherJob));
}

/// A tenth as many as elsewhere: each packs, opens and joins whole jobs.
fn pairs() -> ProptestConfig {
    ProptestConfig { cases: cases().cases.div_ceil(10), ..cases() }
}

proptest! {
    #![proptest_config(pairs())]

    /// Joined in either order, with the same answers, the job is the same; and what both sides typed is in it or was asked
    /// about.
    #[test]
    fn either_order_gives_the_same_job_and_nothing_is_lost_unasked(
        before in prop::collection::vec(edit(), 0..6),
        ours in prop::collection::vec(edit(), 0..6),
        theirs in prop::collection::vec(edit(), 0..6),
        desk in any::<bool>(),
    ) {
        let base = on("desk", jobs::sample(), before);
        let here = on("desk", base.clone(), ours);
        let there = on("phone", taken_over(&open(&seal(&base, &Contents::whole())).unwrap().job), theirs);
        let mut asked = Vec::new();
        let answer = |changed, desk: bool| match changed {
            Changed::Both => if desk { Take::Here } else { Take::There },
            changed => usual(changed),
        };
        let one = join(&here, &there, |d| { asked.push(d.clone()); answer(d.changed, desk) });
        let other = join(&there, &here, |d| answer(d.changed, !desk));
        prop_assert_eq!(one.is_ok(), other.is_ok());
        let (Ok(one), Ok(other)) = (one, other) else { return Ok(()) };
        prop_assert_eq!(content(&one), content(&other));
        // Every value that is on one side and not in what came of it was named.
        for side in [&here, &there] {
            let (kept, all) = (content(&one).to_string(), content(side));
            leaves(&all["sections"], &mut |leaf| {
                let text = leaf.to_string();
                let named = || asked.iter().any(|d| {
                    [&d.here, &d.there, &d.before].iter().any(|v| v.as_ref().is_some_and(|v| v.to_string().contains(&text)))
                });
                assert!(kept.contains(&text) || named(), "{text} is gone unasked");
            });
        }
    }
}

fn leaves(value: &Value, found: &mut impl FnMut(&Value)) {
    match value {
        Value::Object(map) => map.values().for_each(|value| leaves(value, found)),
        Value::Array(list) => list.iter().for_each(|value| leaves(value, found)),
        leaf => found(leaf),
    }
}
