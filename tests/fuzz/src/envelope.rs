//! An envelope: it carries what was put in, and what was changed on the way is refused.

use std::sync::OnceLock;

use bedwright_job::Job;
use bedwright_job::envelope::{
    Contents, Found, Frame, Gathered, digits, found, found_in_file, frames, from_digits, from_link, link, open, seal,
};
use bedwright_job::saved::{job_text, read_job};
use bedwright_job::sections::SectionName;

use crate::before::{first, first_two};
use crate::job;

/// The first byte chooses: bytes of an envelope, a text in which one is looked for, an envelope that is changed, a job that is
/// sent.
///
/// # Panics
/// Something else comes than was sent.
pub fn holds(bytes: &[u8]) {
    let (kind, rest) = first(bytes);
    match kind % 4 {
        0 => any_bytes(rest),
        1 => any_text(rest),
        2 => changed_on_the_way(rest),
        _ => sent(rest),
    }
}

/// Whatever opens is a job that can be sent on as it is.
fn any_bytes(bytes: &[u8]) {
    if let Ok(came) = open(bytes) {
        sent_on(&came.job, &Contents::whole());
    }
    let _ = found_in_file(bytes);
    letters(bytes);
}

/// Bytes in letters, in digits, in frames, and back.
fn letters(bytes: &[u8]) {
    assert_eq!(from_link(&link(bytes)).as_deref(), Ok(bytes));
    assert_eq!(from_digits(&digits(bytes)).as_deref(), Ok(bytes));
    // Nothing at all is no envelope, and goes in no frame.
    let Some(texts) = frames("any", bytes).filter(|texts| !texts.is_empty()) else { return };
    let mut gathered = Gathered::default();
    for text in texts.iter().rev() {
        let new = gathered.take(Frame::read(text).expect("a frame reads")).expect("it belongs here");
        assert!(new, "each once");
    }
    assert_eq!(gathered.whole().as_deref(), Some(bytes));
}

fn any_text(bytes: &[u8]) {
    let text = String::from_utf8_lossy(bytes);
    match found(&text) {
        Ok(Found::Job(came)) => sent_on(&came.job, &Contents::whole()),
        Ok(Found::Frames(several)) => {
            // What doesn't belong together is refused, and what is whole may still be no envelope.
            let mut gathered = Gathered::default();
            for frame in several {
                let _ = gathered.take(frame);
            }
            if let Some(sealed) = gathered.whole() {
                any_bytes(&sealed);
            }
        }
        Err(_) => {}
    }
    let _ = found(&["Look: https://example.org/#/open/", &text, " — regards"].concat());
    let _ = from_link(&text).map(|sealed| open(&sealed));
    let _ = from_digits(&text).map(|sealed| open(&sealed));
}

fn sample() -> &'static [u8] {
    static SEALED: OnceLock<Vec<u8>> = OnceLock::new();
    SEALED.get_or_init(|| {
        let job = read_job(include_str!("../../saved/v1-sample.json")).expect("it opens");
        seal(&job, &Contents::whole())
    })
}

/// Up to four bytes at one place changed, left out, or put in: never another job, always a reason. What changes at several
/// places at once gets through once in 2³²; a checksum promises no more.
fn changed_on_the_way(bytes: &[u8]) {
    let (place, bytes) = first_two(bytes);
    let (how, bytes) = first(bytes);
    let some = bytes.get(..bytes.len().min(4)).unwrap_or_default();
    let mut sealed = sample().to_vec();
    let at = place % (sealed.len() + 1);
    let beyond = (at + some.len()).min(sealed.len());
    match how % 4 {
        0 => drop(sealed.splice(at..beyond, some.iter().copied())),
        1 => drop(sealed.drain(at..beyond)),
        2 => drop(sealed.splice(at..at, some.iter().copied())),
        _ => sealed.truncate(at),
    }
    if sealed == sample() {
        return;
    }
    assert!(open(&sealed).is_err(), "opened after a change at {at}");
    let message = ["Here it is: #/open/", &link(&sealed), "\nRegards"].concat();
    assert!(found(&message).is_err(), "opened as a link after a change at {at}");
}

/// A job of the bytes, sent in parts or whole.
fn sent(bytes: &[u8]) {
    let (which, bytes) = first_two(bytes);
    let (how, bytes) = first(bytes);
    let Some(job) = job::text_of(bytes).and_then(|text| read_job(&text).ok()) else { return };
    if how & 1 == 0 {
        return sent_on(
            &job,
            &Contents { from: "A. Elm".to_owned(), day: "2026-11-26".to_owned(), ..Contents::whole() },
        );
    }
    let picked = SectionName::ALL.iter().enumerate().filter(|(at, _)| which >> at & 1 == 1);
    let contents = Contents {
        sections: picked.map(|(_, name)| *name).collect(),
        records: (how & 2 == 0).then(|| vec!["visit".to_owned(), "drain_check".to_owned()]),
        costs: how & 4 == 0,
        lands_on: "loading".to_owned(),
        ..Contents::whole()
    };
    let came = open(&seal(&job, &contents)).expect("what is sealed opens");
    assert_eq!(came.lands_on, "loading");
    assert_eq!(came.without_costs, !contents.costs);
    // What came says the same when it goes on.
    sent_on(&came.job, &Contents::whole());
    for &name in SectionName::ALL {
        let goes = name == SectionName::Head || contents.sections.contains(&name);
        assert!(goes || came.job.revision(name).is_none() && !came.job.is_locked(name), "{name:?} wasn't chosen");
    }
}

/// A job goes as it is, and comes as it went, by each way.
fn sent_on(job: &Job, contents: &Contents) {
    let sealed = seal(job, contents);
    let came = match open(&sealed) {
        Ok(came) => came,
        Err(damage) => panic!("{damage:?}: {}", job_text(job)),
    };
    assert_eq!((came.from.as_str(), came.day.as_str()), (contents.from.as_str(), contents.day.as_str()));
    // Handed over as it is, a section doesn't say its base twice.
    assert_eq!(without_bases(came.job.clone()), without_bases(job.clone()));
    assert_eq!(seal(&came.job, contents), sealed, "sent on it is the same envelope");
    let message = ["Here it is:\n#/open/", &link(&sealed), "\nRegards, A."].concat();
    let Ok(Found::Job(by_link)) = found(&message) else { panic!("not found in a message") };
    assert_eq!(by_link.job, came.job);
    letters(&sealed);
}

fn without_bases(mut job: Job) -> Job {
    job.head.base = None;
    job.survey.base = None;
    job.plan.base = None;
    job.picking.base = None;
    job.site.base = None;
    job.quote.base = None;
    job.loading.base = None;
    job.supply.base = None;
    job.prices.base = None;
    job.kit.base = None;
    job.search.base = None;
    job
}
