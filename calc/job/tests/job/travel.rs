//! What goes along and what stays, however it is carried; what comes back meets what never left.

use bedwright_job::drawing::{MOST_ON_LABEL, qr_of_link};
use bedwright_job::edit::{Edit, apply};
use bedwright_job::envelope::{
    Contents, Damage, FRAME_BYTES, Found, Frame, FrameFault, Gathered, Part, Received, Receiver, card, digits, found,
    found_in_file, frames, from_digits, link, open, seal,
};
use bedwright_job::id::Id;
use bedwright_job::job::{Job, Record};
use bedwright_job::join::{Take, compare, handed_over, join, taken_over, usual};
use bedwright_job::prices::{PriceKind, PriceRow, amount};
use bedwright_job::saved::{Unreadable, job_text};
use bedwright_job::sections::SectionName;
use bedwright_job::sections::head::TextField;
use bedwright_job::words::Manner;
use proptest::prelude::*;
use serde_json::{Value, json};
use std::sync::Arc;

use crate::{cases, jobs};

/// Costs that stand nowhere else in a job, in every place that holds any.
const COSTS: [&str; 7] = ["91.17", "92.27", "93.37", "94.47", "95.57", "96.67", "97.77"];

/// A job whose every cost and margin is one of [`COSTS`].
fn costly() -> Job {
    let mut job = jobs::sample();
    let row = PriceRow {
        key: "part:tape".to_owned(),
        kind: PriceKind::Part,
        part_number: "TP-1".to_owned(),
        bin: "A-7".to_owned(),
        cost: amount(COSTS[0], '.').unwrap(),
        price: amount("120", '.').unwrap(),
        unknown: [("margin_of_later".to_owned(), json!(COSTS[1]))].into_iter().collect(),
        ..PriceRow::default()
    };
    jobs::change(&mut job, Edit::Price { key: row.key.clone(), row: Some(Arc::new(row)) });
    let quote = json!({
        "id": "q-1", "kind": "quote_issued", "version": 1, "number": 1, "day": "2026-11-26", "currency": "USD",
        "places": 2, "halves": "up", "removed": [], "taxes": [],
        "lines": [{ "key": "own:1", "group": "own", "name": "Visit", "unit": "each", "quantity": "1", "price": "120",
            "cost": COSTS[2], "net": "120", "cost_together": COSTS[3], "standing": "firm" }],
        "totals": { "lines": "120", "discount_share": "0", "discount": "0", "net": "120", "total": "120",
            "cost": COSTS[4], "margin": COSTS[5], "margin_share": COSTS[6], "unpriced": 0, "uncosted": 0 },
        "assumptions": [], "packs": [], "yearly": [], "left_out": [],
    });
    jobs::change(&mut job, Edit::AddRecord(Record { id: Id::new("q-1"), value: quote }));
    job
}

fn came(job: &Job, contents: &Contents) -> Received {
    open(&seal(job, contents)).unwrap()
}

#[test]
fn costs_and_margins_stay_unless_they_are_ticked() {
    // Handed over before, so that a section holds its base too.
    let job = handed_over(&costly(), SectionName::ALL);
    let mut job = taken_over(&came(&job, &Contents::whole()).job);
    jobs::change(&mut job, Edit::Text { field: TextField::Notes, text: "changed".to_owned() });
    let row = job.prices.body.row("part:tape").unwrap();
    let row = PriceRow { bin: "A-8".to_owned(), ..(**row).clone() };
    jobs::change(&mut job, Edit::Price { key: row.key.clone(), row: Some(Arc::new(row)) });
    let with = job_text(&came(&job, &Contents::of(Part::ALL, true, "")).job);
    for cost in COSTS {
        assert!(with.contains(cost), "{cost}");
    }
    for receiver in Receiver::ALL {
        let contents = Contents::of(Part::ALL, false, receiver.lands_on());
        let received = came(&job, &contents);
        assert!(received.without_costs);
        let text = job_text(&received.job);
        for cost in COSTS {
            assert!(!text.contains(cost), "{receiver:?}: {cost} in\n{text}");
        }
        // What they are asked for by is still there, and so is what it sells for.
        for kept in ["TP-1", "A-8", "\"120\"", "quote_issued"] {
            assert!(text.contains(kept), "{kept}");
        }
        assert_eq!(received.job.quote, Default::default());
        assert!(!receiver.costs() || *receiver == Receiver::Colleague);
    }
    assert!(Receiver::ALL.iter().filter(|receiver| !receiver.costs()).count() == 4);
}

#[test]
fn an_issued_quote_without_its_costs_still_reads() {
    let received = came(&costly(), &Contents::of(Part::ALL, false, ""));
    let issued = bedwright_job::quote::issued(&received.job);
    let [copy] = issued.as_slice() else { panic!("{issued:?}") };
    assert_eq!(copy.lines[0].cost, None);
    assert_eq!(copy.totals.margin, None);
    assert_eq!(copy.totals.uncosted, 1);
    assert_eq!(copy.totals.total, amount("120", '.').unwrap().unwrap());
}

#[test]
fn what_comes_back_without_costs_takes_none_away() {
    let here = costly();
    let sent = came(&here, &Contents::of(Receiver::Warehouse.parts(), false, "picking"));
    let mut there = taken_over(&sent.job);
    let row = there.prices.body.row("part:tape").unwrap();
    assert_eq!(row.cost, None);
    let row = PriceRow { bin: "C-3".to_owned(), ..(**row).clone() };
    apply(&mut there, Edit::Price { key: row.key.clone(), row: Some(Arc::new(row)) }, &Id::new("warehouse")).unwrap();
    for here in [here.clone(), {
        let mut here = here;
        let row = PriceRow { part_number: "TP-2".to_owned(), ..(**here.prices.body.row("part:tape").unwrap()).clone() };
        jobs::change(&mut here, Edit::Price { key: row.key.clone(), row: Some(Arc::new(row)) });
        handed_over(&here, SectionName::ALL)
    }] {
        let back = came(&there, &Contents::of(Part::ALL, false, "")).job;
        let told = compare(&here, &back).unwrap();
        let places: Vec<&str> = told.iter().filter_map(|one| one.place.last()).map(String::as_str).collect();
        assert!(places.contains(&"bin") && !places.contains(&"cost"), "{told:?}");
        let joined = join(&here, &back, |one| usual(one.changed)).unwrap();
        let row = joined.prices.body.row("part:tape").unwrap();
        assert_eq!((row.bin.as_str(), row.cost), ("C-3", amount(COSTS[0], '.').unwrap()));
        assert_eq!(row.part_number, here.prices.body.row("part:tape").unwrap().part_number);
        // The quote that was issued is there once, with its costs.
        assert_eq!(joined.records, here.records);
        // And the other way round: costs that come later are taken in where there were none.
        let later = came(&here, &Contents::whole()).job;
        let joined = join(&there, &later, |_| Take::There).unwrap();
        assert_eq!(joined.prices.body.row("part:tape").unwrap().cost, amount(COSTS[0], '.').unwrap());
    }
}

#[test]
fn an_issued_quote_that_came_without_costs_becomes_whole_when_they_come() {
    let here = costly();
    let there = taken_over(&came(&here, &Contents::of(Part::ALL, false, "")).job);
    let joined = join(&there, &came(&here, &Contents::whole()).job, |one| usual(one.changed)).unwrap();
    assert_eq!(joined.records, here.records);
    let again = join(&here, &came(&there, &Contents::of(Part::ALL, false, "")).job, |one| usual(one.changed)).unwrap();
    assert_eq!(again.records, here.records);
}

/// A sends to B, then a later state to C; B's answer is compared with what B had, not with what C has.
#[test]
fn who_answers_late_is_compared_with_what_they_had() {
    let text = |field, text: &str| Edit::Text { field, text: text.to_owned() };
    let change = |job: &mut Job, device: &str, edit: Edit| drop(apply(job, edit, &Id::new(device)).unwrap());
    let mut here = jobs::sample();
    change(&mut here, "desk", text(TextField::Title, "Mill"));
    let mut b = taken_over(&came(&here, &Contents::whole()).job);
    here = handed_over(&here, SectionName::ALL);
    change(&mut here, "desk", text(TextField::Customer, "Moss"));
    let c = taken_over(&came(&here, &Contents::whole()).job);
    here = handed_over(&here, SectionName::ALL);
    assert_eq!(c.head.body.customer, "Moss");
    change(&mut b, "b", text(TextField::Notes, "gate"));
    let told = compare(&here, &came(&b, &Contents::whole()).job).unwrap();
    let told: Vec<_> = told.iter().map(|one| (one.place.join("/"), usual(one.changed))).collect();
    assert_eq!(told, [("customer".to_owned(), Take::Here), ("notes".to_owned(), Take::There)]);
    let joined = join(&here, &came(&b, &Contents::whole()).job, |one| usual(one.changed)).unwrap();
    assert_eq!((joined.head.body.customer.as_str(), joined.head.body.notes.as_str()), ("Moss", "gate"));
}

#[test]
fn a_section_that_is_new_here_is_told_and_can_be_declined() {
    let (here, there) = (jobs::sample(), jobs::searched());
    assert_eq!(here.search, Default::default());
    let told = compare(&here, &there).unwrap();
    assert!(told.iter().any(|one| one.section == "search" && one.place.is_empty()), "{told:?}");
    assert_eq!(join(&here, &there, |_| Take::Here).unwrap().search, here.search);
    assert_eq!(join(&here, &there, |_| Take::There).unwrap().search.body, there.search.body);
}

#[test]
fn who_sent_it_and_when_go_along() {
    let contents = Contents {
        from: "R. Moss".to_owned(),
        day: "2026-11-26".to_owned(),
        excerpt: Some(Id::new("filter")),
        ..Contents::of(&[Part::Vessels], false, "loading")
    };
    let received = came(&jobs::sample(), &contents);
    assert_eq!((received.from.as_str(), received.day.as_str()), ("R. Moss", "2026-11-26"));
    assert_eq!((received.lands_on.as_str(), received.excerpt), ("loading", Some(Id::new("filter"))));
    assert_eq!(received.job.plan, Default::default());
}

fn job_in(text: &str) -> Result<Job, Damage> {
    found(text).map(|found| match found {
        Found::Job(came) => came.job,
        Found::Frames(frames) => panic!("{frames:?}"),
    })
}

#[test]
fn a_job_is_found_in_whatever_somebody_pastes() {
    let job = jobs::sample();
    let sealed = seal(&job, &Contents::whole());
    let (letters, code) = (link(&sealed), digits(&sealed));
    let (half, rest) = letters.split_at(letters.len() / 2);
    let texts = [
        letters.clone(),
        code.clone(),
        format!("http://127.0.0.1:8080/#/open/{letters}"),
        format!("Hello,\nhere is the job: https://example.invalid/a/b/#/open/{letters}.\n\nRegards\nR. Moss 0123"),
        format!("<https://example.invalid/#/open/{letters}>"),
        format!("https://example.invalid/#/open/{half}\r\n{rest}\r\nSent from a phone"),
        format!("\u{FEFF}#/open/{code} and nothing else"),
        job_text(&job),
    ];
    for text in &texts {
        assert_eq!(job_in(text).unwrap(), job, "{text}");
        assert!(matches!(found_in_file(text.as_bytes()), Ok(Found::Job(_))));
    }
    assert!(matches!(found_in_file(&sealed), Ok(Found::Job(_))));
    let lines = frames("sample", &sealed).unwrap().join("\n");
    assert!(matches!(found(&lines), Ok(Found::Frames(frames)) if frames.len() > 1));
}

#[test]
fn what_holds_no_job_is_refused_with_the_reason() {
    let sealed = seal(&jobs::sample(), &Contents::whole());
    let letters = link(&sealed);
    let cut = &letters[..letters.len() - 9];
    for (text, damage) in [
        ("", Damage::OtherThing),
        ("Good morning, the gate code is 1234.", Damage::OtherThing),
        ("https://example.invalid/", Damage::OtherThing),
        ("#/open/", Damage::Cut),
        ("{", Damage::NoJob(Unreadable::NotJson { line: 1, column: 1 })),
        (r#"{"format":"letter"}"#, Damage::OtherThing),
        (cut, Damage::Cut),
        (&format!("#/open/{cut} and some words after it"), Damage::Cut),
        ("BW1:%%%", Damage::Changed),
    ] {
        assert_eq!(job_in(text).unwrap_err(), damage, "{text}");
    }
    assert_eq!(found_in_file(&[1, 0, 0]), Err(Damage::Cut));
    assert_eq!(found_in_file(b"\xFF\xFE"), Err(Damage::Cut));
    assert_eq!(found_in_file(&vec![b' '; 9 * 1024 * 1024]), Err(Damage::TooLong { bytes: 9 * 1024 * 1024 }));
    let deep = format!("{}{}", "[".repeat(100), "]".repeat(100));
    assert_eq!(job_in(&format!("{{\"a\":{deep}}}")).unwrap_err(), Damage::TooDeep);
}

/// Each position, each letter: every link of digits that is one letter off is refused.
#[test]
fn every_link_of_digits_that_is_one_letter_off_is_refused() {
    let contents = Contents::of(&[Part::Vessels], false, "");
    let text = digits(&seal(&jobs::sample(), &contents));
    let letters: Vec<char> = text.chars().collect();
    let alphabet: Vec<char> = ('0'..='9').chain(['.', 'a', '-']).collect();
    let mut tried = 0_u32;
    let mut refused = |letters: &[char]| {
        tried += 1;
        let text: String = letters.iter().collect();
        assert!(from_digits(&text).and_then(|sealed| open(&sealed)).is_err(), "opened: {text}");
    };
    for at in 0..letters.len() {
        let mut one = letters.clone();
        one.remove(at);
        // Taking one of two equal letters away gives the same text as taking the other.
        refused(&one);
        for &letter in &alphabet {
            if letter != letters[at] {
                let mut one = letters.clone();
                one[at] = letter;
                refused(&one);
            }
            let mut one = letters.clone();
            one.insert(at, letter);
            refused(&one);
        }
    }
    assert!(tried > 15_000, "{tried}");
}

#[test]
fn frames_come_in_any_order_and_are_never_mixed_up() {
    let job = costly();
    let sealed = seal(&job, &Contents::whole());
    let texts = frames("sample", &sealed).unwrap();
    assert_eq!(texts.len(), sealed.len().div_ceil(FRAME_BYTES));
    assert!(texts.len() >= 2, "{}", texts.len());
    // ISO/IEC 18004, table 7: version 15 with the least correction holds 758 letters of the alphanumeric kind.
    assert!(texts.iter().all(|text| text.len() <= 758), "{:?}", texts.iter().map(String::len).collect::<Vec<_>>());
    let mut gathered = Gathered::default();
    assert_eq!(gathered.whole(), None);
    for text in texts.iter().rev() {
        assert_eq!(gathered.take(Frame::read(text).unwrap()), Ok(true));
        assert_eq!(gathered.take(Frame::read(text).unwrap()), Ok(false), "read twice");
    }
    assert_eq!(gathered.whole(), Some(sealed.clone()));
    // One is missing: it is named, and nothing is whole.
    let mut some = Gathered::default();
    for text in texts.iter().skip(1) {
        some.take(Frame::read(text).unwrap()).unwrap();
    }
    assert_eq!((some.missing(), some.whole()), (vec![1], None));
    let other_job = frames("other", &sealed).unwrap();
    assert_eq!(some.take(Frame::read(&other_job[0]).unwrap()), Err(FrameFault::OtherJob));
    let again = frames("sample", &seal(&job, &Contents { from: "R. Moss".to_owned(), ..Contents::whole() })).unwrap();
    assert_eq!(some.take(Frame::read(&again[0]).unwrap()), Err(FrameFault::OtherSending));
    assert_eq!(some.missing(), [1]);
}

#[test]
fn a_frame_that_is_one_letter_off_is_refused() {
    let text = frames("sample", &seal(&jobs::sample(), &Contents::whole())).unwrap().swap_remove(0);
    let letters: Vec<char> = text.chars().collect();
    let mut tried = 0_u32;
    for at in 0..letters.len() {
        for letter in "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:x".chars() {
            if letter == letters[at] {
                continue;
            }
            let mut one = letters.clone();
            one[at] = letter;
            assert!(Frame::read(&one.iter().collect::<String>()).is_err(), "{at} {letter}");
            tried += 1;
        }
        let mut one = letters.clone();
        one.remove(at);
        assert!(Frame::read(&one.iter().collect::<String>()).is_err(), "without {at}");
        tried += 1;
    }
    assert!(tried > 15_000, "{tried}");
}

#[test]
fn every_damage_is_said_with_what_to_do() {
    let manner = Manner::default();
    let all = [
        Damage::Cut,
        Damage::Changed,
        Damage::Letter { letter: '+', at: 3 },
        Damage::OtherThing,
        Damage::TooNew { version: 2 },
        Damage::TooLong { bytes: 50_000_000 },
        Damage::TooDeep,
        Damage::TooMany,
        Damage::NoJob(Unreadable::OtherFormat),
        Damage::NoJob(Unreadable::Lacks { what: "id" }),
        Damage::NoJob(Unreadable::NotJson { line: 2, column: 7 }),
        Damage::NoJob(Unreadable::TooNew { version: 2 }),
        Damage::NoJob(Unreadable::TooLong { letters: 50_000_000 }),
    ];
    for damage in &all {
        let said = manner.damage(damage);
        assert!(said.ends_with('.') && said.len() > 25, "{damage:?}: {said}");
    }
    for fault in [FrameFault::OtherThing, FrameFault::Changed, FrameFault::OtherJob, FrameFault::OtherSending] {
        assert!(manner.label(fault).ends_with('.'));
    }
}

#[test]
fn a_difference_is_said_in_words() {
    let here = jobs::sample();
    let mut there = taken_over(&came(&here, &Contents::whole()).job);
    let typed = Edit::Survey {
        vessel: Id::new("filter"),
        field: bedwright_job::field::SurveyField::InsideDepth,
        entry: Some(jobs::measured("1300", bedwright_job::entry::Unit::Millimetre)),
    };
    for edit in [typed, Edit::Text { field: TextField::Notes, text: "gate".to_owned() }] {
        apply(&mut there, edit, &Id::new("phone")).unwrap();
    }
    let manner = Manner::default();
    let told = compare(&here, &there).unwrap();
    let words: Vec<_> = told.iter().map(|one| manner.difference(one, [&here, &there])).collect();
    let depth = words.iter().find(|words| words.section == "Survey").unwrap();
    assert_eq!(depth.what, "CF-1, CF-2 › Inside depth");
    assert_eq!((depth.here.as_str(), depth.there.as_str(), depth.texts), ("51 in", "1300 mm", false));
    let notes = words.iter().find(|words| words.what == "Notes").unwrap();
    assert_eq!((notes.there.as_str(), notes.texts), ("gate", true));
}

/// Whatever differs between two jobs is said, and nothing panics.
#[test]
fn every_difference_has_words() {
    let (one, other) = (jobs::every_choice(), Job { id: jobs::every_choice().id, ..jobs::searched() });
    let told = compare(&one, &other).unwrap();
    assert!(told.len() > 20, "{}", told.len());
    for difference in &told {
        let words = Manner::default().difference(difference, [&one, &other]);
        assert!(!words.section.is_empty() && !words.what.is_empty() && !words.here.is_empty(), "{difference:?}");
        assert!(!words.what.contains('_') && !words.here.contains("{\""), "{words:?}");
    }
}

/// What the label of the sample's vessels holds, and how large a code that is.
#[test]
fn the_card_of_a_vessel_fits_on_its_label() {
    let job = jobs::sample();
    let before = "https://bedwright.example.invalid/#/open/";
    for (vessel, tag) in [("filter", "CF-2"), ("softener", "SO-1")] {
        let sealed = card(&job, &Id::new(vessel), tag, true).unwrap();
        let few = card(&job, &Id::new(vessel), tag, false).unwrap();
        let across = |sealed: &[u8]| qr_of_link(before, &digits(sealed), MOST_ON_LABEL).map(|code| code.across);
        println!("card of {vessel}: {} bytes {:?}, {} {:?}", sealed.len(), across(&sealed), few.len(), across(&few));
        // 77 modules and the white round them on 25 mm: a third of a millimetre each.
        assert!(across(&few).is_some_and(|across| across <= 85), "{vessel}: {} bytes", few.len());
        assert_eq!(open(&few).unwrap().job.plan_of(&Id::new(vessel)), job.plan_of(&Id::new(vessel)));
        let received = open(&sealed).unwrap();
        assert_eq!(received.excerpt, Some(Id::new(vessel)));
        assert_eq!(received.lands_on, tag);
        assert_eq!(received.job.survey.body.vessels.len(), 1);
        assert_eq!(received.job.survey.body.vessels[0].tags, [tag]);
        assert_eq!(received.job.plan_of(&Id::new(vessel)), job.plan_of(&Id::new(vessel)));
        assert!(card(&job, &Id::new(vessel), tag, false).unwrap().len() < sealed.len());
    }
    assert_eq!(card(&job, &Id::new("no vessel"), "", true), None);
}

/// The sample and twenty vessels: how long a link is, how many frames.
#[test]
fn lengths_and_frames_are_as_the_page_says_them() {
    let mut twenty = jobs::sample();
    for at in 2..20 {
        let mut vessel = (**twenty.vessel(&Id::new("filter")).unwrap()).clone();
        let plan = twenty.plan_of(&vessel.id);
        vessel.id = Id::new(&format!("filter-{at}"));
        vessel.tags = vec![format!("CF-{}", at + 1)];
        jobs::change(&mut twenty, Edit::InsertVessel { at, vessel: Arc::new(vessel), plan });
    }
    for (name, job) in [("sample", jobs::sample()), ("twenty vessels", twenty)] {
        for (who, contents) in
            [("whole", Contents::whole()), ("contractor", Contents::of(Receiver::Contractor.parts(), false, "loading"))]
        {
            let sealed = seal(&job, &contents);
            let (letters, frames) = (link(&sealed).len() + 40, frames(job.id.as_str(), &sealed).unwrap().len());
            println!("{name}, {who}: {} bytes, link {letters} letters, {frames} frames", sealed.len());
            assert!(letters < 4000 && frames <= 6);
        }
    }
}

fn strip(value: &Value, found: &mut impl FnMut(&str)) {
    match value {
        Value::String(text) => found(text),
        Value::Array(all) => all.iter().for_each(|one| strip(one, found)),
        Value::Object(map) => map.values().for_each(|one| strip(one, found)),
        _ => {}
    }
}

#[test]
fn nothing_that_is_no_cost_gets_lost_with_them() {
    let job = costly();
    let sent: Value = serde_json::from_str(&job_text(&came(&job, &Contents::of(Part::ALL, false, "")).job)).unwrap();
    let all: Value = serde_json::from_str(&job_text(&job)).unwrap();
    let text = sent.to_string();
    strip(&all, &mut |one| assert!(COSTS.contains(&one) || text.contains(one), "{one}"));
}

proptest! {
    #![proptest_config(cases())]

    #[test]
    fn any_text_is_looked_through(text in any::<String>()) {
        let _ = found(&text);
        let _ = found(&format!("#/open/{text}"));
        let _ = Frame::read(&format!("BW1:{text}"));
    }

    #[test]
    fn any_bytes_are_frames_and_back(bytes in prop::collection::vec(any::<u8>(), 0..3000)) {
        let texts = frames("any", &bytes).unwrap();
        let mut gathered = Gathered::default();
        for text in &texts {
            gathered.take(Frame::read(text).unwrap()).unwrap();
        }
        prop_assert_eq!(gathered.whole().unwrap_or_default(), bytes.clone());
        prop_assert_eq!(from_digits(&digits(&bytes)).unwrap(), bytes);
    }
}
