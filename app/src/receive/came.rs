//! What came: which job, who sent it, what it holds; what it would change here, line by line.

use std::rc::Rc;

use bedwright_job::Job;
use bedwright_job::envelope::{Part, Received};
use bedwright_job::join::{Changed, Difference, Take, compare, usual};
use bedwright_job::sections::SectionName;
use bedwright_job::words::travel::DifferenceWords;
use bedwright_job::words::{Label, TravelLabel};

use crate::desk::Desk;
use crate::parts::choice::pick;
use crate::parts::live::{El, button, el};
use crate::parts::signal::Held;

/// What came, and what can be done with it.
pub fn came(desk: Desk, received: &Rc<Received>) -> El {
    let say = move |label: TravelLabel| desk.label(label);
    let section = el("section", "came").set("aria-labelledby", "came").kid(told(desk, received));
    let away = button("quiet", say(TravelLabel::PutAway), move || desk.tray.set(None));
    let Some(here) = desk.here_of(received) else {
        let kept = received.clone();
        return section.kid(el("p", "").text(say(TravelLabel::NewHere))).kid(
            el("div", "actions")
                .kid(button("primary", say(TravelLabel::KeepIt), move || desk.keep_received(&kept)))
                .kid(away),
        );
    };
    let section = section.kid(el("p", "").text(say(TravelLabel::IsHere)));
    let section = if here.head.body.binned.is_some() {
        section.kid(el("p", "came-caution").text(say(TravelLabel::InBin)))
    } else {
        section
    };
    let kept = received.clone();
    if received.excerpt.is_some() {
        // A part of a job never takes the job's place.
        let id = here.id.clone();
        return section.kid(
            el("div", "actions")
                .kid(button("primary", say(TravelLabel::OpenCard), move || desk.arrive(&id, &kept)))
                .kid(away),
        );
    }
    let beside = received.clone();
    let beside = button("", say(TravelLabel::KeepBothJobs), move || desk.keep_beside(&beside));
    match compare(&here, &received.job) {
        Ok(found) if found.is_empty() && new_records(&here, &received.job) == 0 => {
            let id = here.id.clone();
            section.kid(el("p", "").set("role", "status").text(say(TravelLabel::NothingNew))).kid(
                el("div", "actions")
                    .kid(button("primary", say(TravelLabel::OpenIt), move || desk.arrive(&id, &kept)))
                    .kid(beside)
                    .kid(away),
            )
        }
        Ok(found) => section.kid(joining(desk, &here, received, found)).kid(el("div", "actions").kid(beside).kid(away)),
        Err(why) => section
            .kid(el("p", "").set("role", "alert").text(&desk.manner().unjoined(&why)))
            .kid(el("div", "actions").kid(beside).kid(away)),
    }
}

/// Records that came and aren't here.
fn new_records(here: &Job, there: &Job) -> usize {
    there.records.iter().filter(|record| !here.records.iter().any(|own| own.id == record.id)).count()
}

/// Which job it is, who sent it and when, what it holds.
fn told(desk: Desk, received: &Received) -> El {
    let say = move |label: TravelLabel| desk.label(label);
    let head = &received.job.head.body;
    let title = if head.title.is_empty() { desk.label(Label::Untitled) } else { head.title.as_str() };
    let line =
        |name: &str, text: &str| el("div", "came-line").kid(el("dt", "").text(name)).kid(el("dd", "").text(text));
    let mut lines = el("dl", "came-lines");
    for (label, text) in
        [(Label::Customer, &head.customer), (Label::Site, &head.site), (Label::JobNumber, &head.number)]
    {
        if !text.is_empty() {
            lines = lines.kid(line(desk.label(label), text));
        }
    }
    let from = if received.from.is_empty() { say(TravelLabel::FromNobody) } else { received.from.as_str() };
    let mut sender = from.to_owned();
    if !received.day.is_empty() {
        sender = desk.manner().sentence(TravelLabel::SentOn, &[("who", &sender), ("day", &received.day)]);
    }
    if !received.from.is_empty() {
        sender = desk.manner().sentence(TravelLabel::AsWritten, &[("who", &sender)]);
    }
    lines = lines.kid(line(say(TravelLabel::From), &sender));
    let holds: Vec<&str> =
        Part::ALL.iter().filter(|part| holds(&received.job, **part)).map(|part| desk.label(*part)).collect();
    if !holds.is_empty() {
        lines = lines.kid(line(say(TravelLabel::Holds), &holds.join(" · ")));
    }
    if let Some(lands_on) = desk.manner().landing(&received.lands_on).filter(|_| received.excerpt.is_none()) {
        lines = lines.kid(line(say(TravelLabel::LandsOn), lands_on));
    }
    let mut all = el("div", "came-told")
        .kid(el("p", "quietly").text(say(TravelLabel::Came)))
        .kid(el("h2", "came-title").set("id", "came").text(title))
        .kid(lines);
    if received.excerpt.is_some() {
        all = all.kid(el("p", "").text(say(TravelLabel::IsExcerpt)));
    }
    if received.without_costs {
        all = all.kid(el("p", "").text(say(TravelLabel::WithoutCosts)));
    }
    if head.sample {
        all = all.kid(el("p", "sample-mark").text(desk.label(Label::SampleMark)));
    }
    all
}

/// Whether a job says anything of a part.
fn holds(job: &Job, part: Part) -> bool {
    part.sections().iter().any(|name| *name != SectionName::Head && job.revision(*name).is_some())
        || job.records.iter().any(|record| part.has_record(&record.value))
}

/// The differences with their choices, and the tap that joins.
fn joining(desk: Desk, here: &Job, received: &Rc<Received>, found: Vec<Difference>) -> El {
    let say = move |label: TravelLabel| desk.label(label);
    let manner = desk.manner();
    let answers = Held::new(found.iter().map(|one| usual(one.changed)).collect::<Vec<Take>>());
    let wrong: Held<Option<String>> = Held::new(None);
    let all = move |take: Take| answers.update(|all| all.iter_mut().for_each(|one| *one = take)).unwrap_or_default();
    let lines = found.iter().enumerate().map(|(at, one)| {
        let words = manner.difference(one, [here, &received.job]);
        difference(desk, at, one, &words, answers)
    });
    let mut part = el("div", "joining");
    let records = new_records(here, &received.job);
    if records > 0 {
        let count = records.to_string();
        part = part.kid(el("p", "").text(&manner.sentence(TravelLabel::RecordsCome, &[("count", &count)])));
    }
    if !found.is_empty() {
        part = part
            .kid(el("h3", "rule").text(say(TravelLabel::Differs)))
            .kid(el("p", "").text(say(TravelLabel::DiffersAbout)))
            .kid(
                el("div", "actions")
                    .kid(button("quiet", say(TravelLabel::AllMine), move || all(Take::Here)))
                    .kid(button("quiet", say(TravelLabel::AllTheirs), move || all(Take::There))),
            )
            .kid(el("ul", "differences").kids(lines.collect()));
    }
    let received = received.clone();
    let join = move || {
        let answers = answers.get_untracked();
        if let Err(why) = desk.join_received(&received, &answers) {
            wrong.set(Some(desk.manner().unjoined(&why)));
        }
    };
    part.kid(el("p", "travel-said").set("role", "alert").says(move || wrong.get().unwrap_or_default())).kid(button(
        "primary",
        say(TravelLabel::Join),
        join,
    ))
}

/// One of them.
fn difference(desk: Desk, at: usize, one: &Difference, words: &DifferenceWords, answers: Held<Vec<Take>>) -> El {
    let say = move |label: TravelLabel| desk.label(label);
    let side = |label: TravelLabel, text: &str| {
        el("div", "difference-side").kid(el("dt", "").text(say(label))).kid(el("dd", "").text(text))
    };
    let mut sides = el("dl", "difference-sides")
        .kid(side(TravelLabel::HereIs, &words.here))
        .kid(side(TravelLabel::ThereIs, &words.there));
    if let Some(before) = words.before.as_ref().filter(|_| one.changed == Changed::Both) {
        sides = sides.kid(side(TravelLabel::WasBefore, before));
    }
    let mut options = vec![say(TravelLabel::KeepMine), say(TravelLabel::TakeTheirs)];
    let takes = [Take::Here, Take::There, Take::Both];
    if words.texts {
        options.push(say(TravelLabel::KeepBothTexts));
    }
    let about = [words.section.as_str(), " · ", desk.manner().changed(one.changed)].concat();
    let choice = pick(
        &words.what,
        &format!("take-{at}"),
        &options,
        move || answers.with(|all| takes.iter().position(|take| all.get(at) == Some(take))),
        move |chosen| {
            answers.update(|all| {
                if let (Some(there), Some(take)) = (all.get_mut(at), takes.get(chosen)) {
                    *there = *take;
                }
            });
        },
    );
    el("li", "difference").kid(choice).kid(el("p", "quietly").text(&about)).kid(sides)
}
