//! The due list: sorted, printed, or taken along as a calendar.

use bedwright_edge::files;
use bedwright_job::care::calendar::{CalendarDay, calendar};
use bedwright_job::care::card::CareMark;
use bedwright_job::care::due::{DueRow, due_list};
use bedwright_job::day::Day;
use bedwright_job::papers::due_list_sheet;
use bedwright_job::words::{CareLabel, Label, Manner};

use crate::desk::{Desk, today};
use crate::parts::live::{El, button, el};
use crate::parts::sheet::printing;
use crate::parts::signal::Worked;
use crate::route::Route;

/// A line in words; drawn again only when this changes.
#[derive(Clone, PartialEq)]
struct Line {
    day: Day,
    mark: CareMark,
    sign: &'static str,
    word: &'static str,
    what: String,
    why: String,
    title: String,
    site: String,
    address: String,
    name: String,
}

fn line(row: &DueRow, manner: Manner) -> Line {
    let place = &row.card.place;
    let address = Route::Card(row.job.clone(), place.vessel.clone(), place.tag.clone()).address();
    let title = if row.title.trim().is_empty() { manner.label(Label::Untitled).to_owned() } else { row.title.clone() };
    Line {
        day: row.day,
        mark: row.card.mark,
        sign: manner.care_sign(row.card.mark),
        word: manner.care_mark(row.card.mark),
        what: manner.due_what(&row.card, row.new_bed),
        why: manner.care_reason(&row.card.reason),
        title,
        site: row.site.clone(),
        name: address.trim_start_matches("#/jobs/").replace('/', "."),
        address,
    }
}

/// The due list.
pub fn due_page(desk: Desk) -> El {
    let say = move |label: CareLabel| desk.label(label);
    let manner = desk.manner();
    let rows = Worked::new(move || {
        let Some(today) = Day::of(&today()) else { return Vec::new() };
        desk.shelf.with(|shelf| due_list(shelf.values(), today))
    });
    let lines = Worked::new(move || rows.with(|rows| rows.iter().map(|row| line(row, manner)).collect::<Vec<_>>()));
    let paper = move || {
        let jobs = desk.shelf.with(|shelf| shelf.values().cloned().collect::<Vec<_>>());
        rows.with(|rows| vec![due_list_sheet(rows, jobs.iter().map(AsRef::as_ref), desk.paper_manner(), &today())])
    };
    let none = move || lines.with(Vec::is_empty);
    let save = move || lines.with_untracked(|lines| save_calendar(lines));
    let table =
        move || {
            let head = [CareLabel::Due, CareLabel::What, CareLabel::Where, CareLabel::Why];
            vec![
                el("p", "actions due-tools").kid(button("primary", say(CareLabel::CalendarFile), save)),
                el("table", "due-table")
                    .kid(el("thead", "").kid(el("tr", "").kids(
                        head.map(|label| el("th", "").set("scope", "col").text(say(label))).into_iter().collect(),
                    )))
                    .kid(el("tbody", "").live(move || lines.with(|lines| lines.iter().map(row).collect()))),
            ]
        };
    el("main", "page due")
        .kid(el("h1", "page-title").text(say(CareLabel::DueList)))
        .kid(el("p", "quietly").text(&today()).text(" · ").text(say(CareLabel::DueHint)))
        .when(none, move || vec![el("p", "").text(say(CareLabel::NothingDue))])
        .when(move || !none(), table)
        .when(move || !none(), move || vec![printing(desk, paper)])
}

fn row(line: &Line) -> El {
    let class = if line.mark == CareMark::OrderNow { "due-order" } else { "" };
    el("tr", class)
        .kid(el("td", "figure").text(&line.day.text()))
        .kid(
            el("td", "due-what")
                .kid(el("a", "").set("href", &line.address).text(&line.what))
                .kid(el("span", "due-mark").text(line.sign).text(" ").text(line.word)),
        )
        .kid(el("td", "").kid(el("span", "due-title").text(&line.title)).kid(el("span", "quietly").text(&line.site)))
        .kid(el("td", "due-why").text(&line.why))
}

fn save_calendar(lines: &[Line]) {
    let days: Vec<CalendarDay> = lines
        .iter()
        .map(|line| CalendarDay {
            name: line.name.clone(),
            day: line.day,
            summary: [&line.what, " · ", &line.title].concat(),
            about: [line.word, ". ", &line.why].concat(),
            location: line.site.clone(),
        })
        .collect();
    // From 2026-11-26T17:00:00.000Z to 20261126T170000Z.
    let now = bedwright_edge::clock::now_iso();
    let stamp: String = now.chars().filter(|letter| !matches!(letter, '-' | ':')).take(15).chain(['Z']).collect();
    let text = calendar(&days, &stamp);
    wasm_bindgen_futures::spawn_local(async move {
        const NAME: &str = "bedwright-due.ics";
        if files::should_share() && files::can_share_file(NAME, "text/calendar") {
            files::share_file(NAME, "text/calendar", text.as_bytes()).await;
        } else {
            // A browser that refuses says so itself.
            let _ = files::download(NAME, "text/calendar", text.as_bytes());
        }
    });
}
