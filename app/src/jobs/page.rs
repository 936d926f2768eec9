//! The list of jobs, the search, the bin.

use std::sync::Arc;

use bedwright_calc::order;
use bedwright_edge::{display, install};
use bedwright_job::Job;
use bedwright_job::id::Id;
use bedwright_job::words::{CareLabel, DeviceLabel, Label, TravelLabel, apart};

use crate::desk::Desk;
use crate::parts::live::{El, button, el, small_letters, value_of};
use crate::parts::signal::{Held, Kept, Worked};
use crate::route::Route;

/// What the list shows of a job; a row is drawn again only when this changes.
#[derive(Clone, PartialEq)]
struct Row {
    id: Id,
    title: String,
    about: String,
    sample: bool,
    vessels: usize,
}

fn row(job: &Job) -> Row {
    let head = &job.head.body;
    let about: Vec<_> = [&head.customer, &head.site, &head.number, &head.created]
        .iter()
        .map(|text| text.as_str())
        .filter(|text| !text.is_empty())
        .map(apart)
        .collect();
    Row {
        id: job.id.clone(),
        title: head.title.clone(),
        about: about.join(" · "),
        sample: head.sample,
        vessels: job.survey.body.vessels.len(),
    }
}

/// Whether every word of a search stands somewhere in a job's head or tags.
fn matches(job: &Job, search: &str) -> bool {
    let head = &job.head.body;
    let tags = job.survey.body.vessels.iter().flat_map(|vessel| vessel.tags.iter());
    let text = [&head.title, &head.customer, &head.site, &head.number, &head.notes]
        .into_iter()
        .chain(tags)
        .map(|text| small_letters(text))
        .collect::<Vec<_>>()
        .join(" ");
    // Byte by byte: std's search is made for long texts, and is longer itself.
    let found = |word: &str| text.as_bytes().windows(word.len()).any(|part| part == word.as_bytes());
    small_letters(search).split_whitespace().all(found)
}

/// The list.
pub fn jobs_page(desk: Desk) -> El {
    let search = Held::new(String::new());
    let say = move |label: Label| desk.label(label);
    let rows = move |binned: bool| {
        Worked::new(move || {
            let search = search.get();
            desk.shelf.with(|shelf| {
                let jobs: Vec<&Arc<Job>> = shelf
                    .values()
                    .filter(|job| job.head.body.binned.is_some() == binned)
                    .filter(|job| binned || matches(job, &search))
                    .collect();
                let newest_first =
                    |a: &&Arc<Job>, b: &&Arc<Job>| (&b.head.body.created, &b.id).cmp(&(&a.head.body.created, &a.id));
                order::sorted(jobs, newest_first).into_iter().map(|job| row(job)).collect::<Vec<Row>>()
            })
        })
    };
    let (there, bin) = (rows(false), rows(true));
    let empty = move || desk.shelf.with(|shelf| shelf.values().all(|job| job.head.body.binned.is_some()));
    let actions = el("div", "actions")
        .kid(button("primary", say(Label::NewJob), move || desk.new_job()))
        .kid(button("", say(Label::SampleJob), move || desk.new_sample()))
        .kid(
            el("a", "action")
                .set("href", &Route::Receive(String::new()).address())
                .text(desk.label(TravelLabel::Receive)),
        )
        .kid(el("a", "action").set("href", &Route::Due.address()).text(desk.label(CareLabel::DueList)));
    el("main", "page jobs")
        .kid(el("h1", "page-title").text(say(Label::Jobs)))
        .when(empty, move || {
            vec![
                el("div", "empty")
                    .kid(el("p", "empty-head").text(say(Label::NoJobs)))
                    .kid(el("p", "").text(say(Label::NoJobsHint))),
            ]
        })
        .kid(actions)
        .when(
            move || !empty(),
            move || {
                vec![
                    el("input", "search")
                        .set("type", "search")
                        .set("aria-label", say(Label::Search))
                        .set("placeholder", say(Label::Search))
                        .on("input", move |event| search.set(value_of(&event))),
                ]
            },
        )
        .when(move || !empty() && there.with(Vec::is_empty), move || vec![el("p", "").text(say(Label::NothingFound))])
        .kid(list(there, move |row| job_line(desk, row)))
        .kid(installing(desk))
        .when(
            move || !bin.with(Vec::is_empty),
            move || {
                vec![
                    el("section", "bin")
                        .set("aria-labelledby", "bin")
                        .kid(el("h2", "rule").set("id", "bin").text(say(Label::Bin)))
                        .kid(el("p", "").text(say(Label::BinHint)))
                        .kid(list(bin, move |row| bin_line(desk, row))),
                ]
            },
        )
}

/// How the page gets on the device as an app, where that can be done and isn't.
fn installing(desk: Desk) -> El {
    let offered = Held::new(install::offered());
    if let Some(told) = install::on_change(move || offered.set(install::offered())) {
        Kept::new(told);
    }
    let part = el("div", "installing");
    if display::in_a_tab_on_ios() {
        return part.kid(el("p", "quietly").text(desk.label(DeviceLabel::InstallOnIos)));
    }
    part.when(
        move || offered.get() && !display::installed(),
        move || {
            vec![
                button("", desk.label(DeviceLabel::Install), install::ask),
                el("p", "quietly").text(desk.label(DeviceLabel::InstallAbout)),
            ]
        },
    )
}

/// A line for each job.
fn list(rows: Worked<Vec<Row>>, line: impl Fn(&Row) -> El + 'static) -> El {
    // What a line says is part of its key, so that a line that says something else is drawn anew.
    let key = |row: &Row| format!("{}\n{}\n{}\n{}", row.id, row.title, row.about, row.vessels);
    el("ul", "job-list").each(
        move || rows.with(|rows| rows.iter().map(key).collect()),
        move |wanted| {
            rows.with_untracked(|rows| rows.iter().find(|row| key(row) == wanted).map(&line))
                .unwrap_or_else(|| el("li", "job-line"))
        },
    )
}

fn title(desk: Desk, row: &Row) -> El {
    let title = if row.title.is_empty() { desk.label(Label::Untitled) } else { &row.title };
    el("span", "job-title").text(title)
}

fn job_line(desk: Desk, row: &Row) -> El {
    let (copy, bin) = (row.id.clone(), row.id.clone());
    let mut link = el("a", "job-link")
        .set("href", &Route::Job(row.id.clone()).address())
        .kid(title(desk, row))
        .kid(el("span", "job-about").text(&row.about));
    if row.sample {
        link = link.kid(el("span", "job-about").text(desk.label(Label::SampleMark)));
    }
    el("li", "job-line").kid(link).kid(
        el("span", "job-tools")
            .kid(button("quiet", desk.label(Label::Duplicate), move || desk.duplicate(&copy)))
            .kid(button("quiet", desk.label(Label::Delete), move || desk.bin(&bin, true))),
    )
}

fn bin_line(desk: Desk, row: &Row) -> El {
    let (back, gone) = (row.id.clone(), row.id.clone());
    el("li", "job-line")
        .kid(el("span", "job-link").kid(title(desk, row)).kid(el("span", "job-about").text(&row.about)))
        .kid(
            el("span", "job-tools")
                .kid(button("quiet", desk.label(Label::Restore), move || desk.bin(&back, false)))
                .kid(button("quiet", desk.label(Label::EraseForGood), move || desk.erase(&gone))),
        )
}
