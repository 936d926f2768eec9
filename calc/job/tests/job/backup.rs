//! A backup comes back whole or is refused with the reason, and says beforehand what it would do.

use bedwright_job::Job;
use bedwright_job::backup::{
    Against, Backup, Ledger, NoBackup, against, backup_text, list_of, list_texts, newer_taken, read_backup,
    rows_against,
};
use bedwright_job::day::Day;
use bedwright_job::edit::{Edit, apply};
use bedwright_job::id::{Id, Revision};
use bedwright_job::job::Record;
use bedwright_job::prices::{ListEdit, PriceKind, PriceList, PriceRow, amount};
use bedwright_job::saved::{job_text, read_job};
use bedwright_job::sections::head::TextField;
use serde_json::json;

use crate::{jobs, repository, saved};

fn titled(id: &str, title: &str) -> Job {
    let mut job = Job::new(Id::new(id), "2026-11-01");
    rename(&mut job, title);
    job
}

fn rename(job: &mut Job, title: &str) {
    rename_on(job, title, "phone");
}

fn rename_on(job: &mut Job, title: &str, device: &str) {
    apply(job, Edit::Text { field: TextField::Title, text: title.to_owned() }, &Id::new(device)).unwrap();
}

fn record(id: &str) -> Record {
    Record { id: Id::new(id), value: json!({ "id": id, "kind": "visit", "day": "2026-11-02" }) }
}

fn priced() -> PriceList {
    let mut list = PriceList::shipped();
    let mut row = PriceRow::new("own:u-100", PriceKind::Part);
    row.price = amount("12.50", '.').unwrap();
    bedwright_job::prices::apply(&mut list, ListEdit::own(row), &Id::new("phone")).unwrap();
    list
}

/// Every job of every version that was ever shipped, a price list, the person's ways, a text set aside, a photo.
fn full() -> Backup {
    let mut jobs: Vec<Job> = saved::files().iter().map(|(_, text)| read_job(text).unwrap()).collect();
    for (at, job) in jobs.iter_mut().enumerate() {
        job.head.body.sample = false;
        job.id = Id::new(&format!("job-{at}"));
    }
    Backup {
        day: "2026-11-26".to_owned(),
        jobs,
        prices: list_texts(&priced()),
        person: "1 phone metric comma a4 dark\nA. Fitter".to_owned(),
        aside: vec![("bedwright/aside/1/bedwright/job/x/plan".to_owned(), "{\"half".to_owned())],
        photos: vec![("photo-1".to_owned(), "data:image/jpeg;base64,AAAA".to_owned())],
    }
}

#[test]
fn a_backup_comes_back_whole() {
    let backup = full();
    assert!(backup.jobs.len() >= 12, "every saved file is in it");
    let back = read_backup(&backup_text(&backup)).unwrap();
    assert_eq!(back, backup);
    assert_eq!(list_of(&back), Some(priced()));
}

#[test]
fn another_layout_of_the_same_file_does_no_harm() {
    let backup = full();
    let value: serde_json::Value = serde_json::from_str(&backup_text(&backup)).unwrap();
    let pretty = format!("\u{feff}{}\r\n", serde_json::to_string_pretty(&value).unwrap());
    assert_eq!(read_backup(&pretty), Ok(backup));
}

#[test]
fn the_sample_is_no_part_of_it() {
    let backup = Backup { jobs: vec![jobs::sample(), titled("mill", "Mill")], ..Backup::default() };
    let back = read_backup(&backup_text(&backup)).unwrap();
    assert_eq!(back.jobs.iter().map(|job| job.id.as_str()).collect::<Vec<_>>(), ["mill"]);
}

/// At every letter: what is left is refused, and nothing of it is taken in.
#[test]
fn a_backup_that_was_cut_anywhere_is_refused() {
    let text =
        backup_text(&Backup { jobs: vec![titled("mill", "Mill ½")], day: "2026-11-26".into(), ..Backup::default() });
    let whole = text.trim_end().len();
    for at in (0..whole).filter(|at| text.is_char_boundary(*at)) {
        let why = read_backup(&text[..at]).expect_err("a part is no whole");
        let begun = at >= text.find("bedwright-backup").unwrap() + "bedwright-backup".len();
        assert_eq!(why, if begun { NoBackup::Cut } else { NoBackup::OtherThing }, "cut at {at}");
    }
}

/// Every letter changed, left out, or doubled: refused, or the very same backup (a blank between two marks says nothing).
#[test]
fn a_changed_letter_never_makes_another_backup() {
    let backup = Backup { jobs: vec![titled("mill", "Mill")], day: "2026-11-26".into(), ..Backup::default() };
    let text = backup_text(&backup);
    let (mut refused, mut same) = (0, 0);
    for at in 0..text.len() {
        let letter = text.as_bytes()[at];
        let others = [b'0', b'x', b'"', b'}', b' '];
        let changed = others.iter().filter(|other| **other != letter).map(|other| {
            let mut bytes = text.clone().into_bytes();
            bytes[at] = *other;
            bytes
        });
        let without = [&text.as_bytes()[..at], &text.as_bytes()[at + 1..]].concat();
        let doubled = [&text.as_bytes()[..=at], &text.as_bytes()[at..]].concat();
        for bytes in changed.chain([without, doubled]) {
            match read_backup(std::str::from_utf8(&bytes).unwrap()) {
                Err(_) => refused += 1,
                Ok(back) => {
                    assert_eq!(back, backup, "at {at}: {}", String::from_utf8_lossy(&bytes));
                    same += 1;
                }
            }
        }
    }
    println!("{refused} refused, {same} the same");
    assert!(refused > 6 * text.len() - 20 && same <= 10, "{refused} refused, {same} the same of {}", text.len());
}

#[test]
fn what_is_no_backup_is_told_from_what_is_none_any_more() {
    assert_eq!(read_backup(""), Err(NoBackup::OtherThing));
    assert_eq!(read_backup("hello"), Err(NoBackup::OtherThing));
    assert_eq!(read_backup("[]"), Err(NoBackup::OtherThing));
    assert_eq!(read_backup("{\"format\":\"else\"}"), Err(NoBackup::OtherThing));
    assert_eq!(read_backup(&job_text(&jobs::sample())), Err(NoBackup::OneJob));
    let later = backup_text(&full()).replacen("\"version\":1", "\"version\":2", 1);
    assert_eq!(read_backup(&later), Err(NoBackup::TooNew));
    assert_eq!(read_backup(&"[".repeat(100_000)), Err(NoBackup::OtherThing));
}

#[test]
fn a_job_of_a_later_version_in_it_is_told() {
    let mut file: serde_json::Value = serde_json::from_str(&job_text(&titled("mill", "Mill"))).unwrap();
    file["version"] = json!(9);
    let contents = json!({ "day": "2026-11-26", "jobs": [file] });
    let written = contents.to_string();
    let whole = json!({
        "format": "bedwright-backup", "version": 1, "letters": written.len(),
        "check": format!("{:08x}", bedwright_job::envelope::crc32(written.as_bytes())), "contents": contents,
    });
    assert_eq!(read_backup(&whole.to_string()), Err(NoBackup::TooNew));
}

#[test]
fn each_job_says_how_it_stands_against_the_one_here() {
    let before = titled("mill", "Mill");
    let mut later = before.clone();
    rename(&mut later, "Mill, two vessels");
    assert_eq!(against(None, &before), Against::New);
    assert_eq!(against(Some(&before), &before), Against::Same);
    assert_eq!(against(Some(&before), &later), Against::Newer);
    assert_eq!(against(Some(&later), &before), Against::Older);
    let mut elsewhere = before.clone();
    rename_on(&mut elsewhere, "Mill by the river", "tablet");
    rename_on(&mut elsewhere, "Mill by the river, again", "tablet");
    assert_eq!(against(Some(&later), &elsewhere), Against::Conflicting, "two devices went on from one state");
    // Counted up by changes that came to the same in the end.
    let mut back = later.clone();
    rename(&mut back, "Mill");
    assert_eq!(against(Some(&before), &back), Against::Same);
}

#[test]
fn one_device_that_counted_to_the_same_number_twice_conflicts() {
    let before = titled("mill", "Mill");
    let (mut one, mut other) = (before.clone(), before);
    rename(&mut one, "One");
    rename(&mut other, "Other");
    assert_eq!(against(Some(&one), &other), Against::Conflicting);
}

#[test]
fn what_was_handed_over_and_changed_there_is_newer() {
    let here = titled("mill", "Mill");
    let mut there = bedwright_job::join::taken_over(&here);
    rename_on(&mut there, "Mill, measured", "tablet");
    assert_eq!(there.head.parent, here.head.revision);
    assert_eq!(against(Some(&here), &there), Against::Newer);
    assert_eq!(against(Some(&there), &here), Against::Older);
}

#[test]
fn records_decide_as_well_and_both_stay() {
    let mut here = titled("mill", "Mill");
    let mut there = here.clone();
    there.records.push(record("r-1"));
    assert_eq!(against(Some(&here), &there), Against::Newer);
    assert_eq!(against(Some(&there), &here), Against::Older);
    here.records.push(record("r-2"));
    assert_eq!(against(Some(&here), &there), Against::Conflicting);
    here.records.clear();
    let taken = newer_taken(&here, &there);
    assert_eq!(taken.records, there.records);
    assert_eq!(against(Some(&taken), &there), Against::Same);
}

#[test]
fn a_newer_state_is_taken_section_by_section_and_says_the_same_then() {
    for (name, text) in saved::files() {
        let here = read_job(&text).unwrap();
        if here.is_locked(bedwright_job::sections::SectionName::Head) {
            continue;
        }
        let mut there = here.clone();
        let device = here.head.revision.as_ref().map_or(Id::new("phone"), |revision| revision.device.clone());
        rename_on(&mut there, "Later than here", device.as_str());
        assert_eq!(against(Some(&here), &there), Against::Newer, "{name}");
        assert_eq!(newer_taken(&here, &there), there, "{name}");
    }
}

#[test]
fn rows_of_the_price_list_are_counted() {
    let (shipped, here) = (PriceList::shipped(), priced());
    assert_eq!(rows_against(&shipped, &here).new.len(), 1);
    assert_eq!(rows_against(&here, &here).same, 1);
    let mut there = here.clone();
    let mut row = (**here.row("own:u-100").unwrap()).clone();
    row.price = amount("13", '.').unwrap();
    bedwright_job::prices::apply(&mut there, ListEdit::own(row), &Id::new("desk")).unwrap();
    let found = rows_against(&here, &there);
    assert_eq!((found.new.len(), found.differing.len(), found.same), (0, 1, 0));
}

fn day(text: &str) -> Day {
    Day::of(text).unwrap()
}

#[test]
fn the_reminder_comes_only_when_something_changed_and_a_week_has_gone() {
    let list = PriceList::shipped();
    let mut all = [titled("mill", "Mill")];
    let mut ledger = Ledger::default();
    // Never backed up: a week after the oldest job was made.
    assert_eq!(ledger.owing(all.iter(), &list).unwrap().jobs, 1);
    assert!(!ledger.reminds(day("2026-11-07"), all.iter()));
    assert!(ledger.reminds(day("2026-11-08"), all.iter()));
    ledger.note(day("2026-11-10"), all.iter(), &list);
    assert_eq!(ledger.owing(all.iter(), &list), None, "nothing changed since");
    rename(&mut all[0], "Mill, renamed");
    assert_eq!(ledger.owing(all.iter(), &list).unwrap().jobs, 1);
    assert!(!ledger.reminds(day("2026-11-16"), all.iter()), "six days");
    assert!(ledger.reminds(day("2026-11-17"), all.iter()), "seven");
    ledger.put_off(day("2026-11-17"));
    assert!(!ledger.reminds(day("2026-11-23"), all.iter()));
    assert!(ledger.reminds(day("2026-11-24"), all.iter()));
    assert_eq!(Ledger::read(&ledger.text()), ledger);
}

#[test]
fn the_sample_owes_no_backup_and_the_price_list_does() {
    let sample = [jobs::sample()];
    let mut ledger = Ledger::default();
    assert_eq!(ledger.owing(sample.iter(), &PriceList::shipped()), None);
    assert!(!ledger.reminds(day("2030-01-01"), sample.iter()));
    assert!(ledger.owing(sample.iter(), &priced()).unwrap().prices);
    ledger.note(day("2026-11-10"), sample.iter(), &priced());
    assert_eq!(ledger.owing(sample.iter(), &priced()), None);
}

#[test]
fn a_ledger_that_cannot_be_read_counts_as_never_backed_up() {
    for text in ["", "2 later", "[]", "{\"jobs\":[1]}", "{\"day\":\"x\",\"jobs\":{\"mill\":-1}}", "\u{0}"] {
        assert_eq!(Ledger::read(text).day, None, "{text}");
        assert!(Ledger::read(text).owing([titled("mill", "Mill")].iter(), &PriceList::shipped()).is_some());
    }
}

#[test]
fn the_example_that_is_published_can_be_backed_up() {
    let job = read_job(&std::fs::read_to_string(repository("public/job.example.json")).unwrap()).unwrap();
    let mut own = job.clone();
    own.head.body.sample = false;
    own.head.revision = Some(Revision { device: Id::new("phone"), counter: 3 });
    let back = read_backup(&backup_text(&Backup { jobs: vec![own.clone()], ..Backup::default() })).unwrap();
    assert_eq!(back.jobs, [own]);
}
