//! The list of jobs, the search, the bin.

use std::sync::Arc;

use bedwright_job::Job;
use bedwright_job::id::Id;
use bedwright_job::words::Label;
use leptos::prelude::*;

use crate::desk::Desk;
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
    let about: Vec<&str> = [&head.customer, &head.site, &head.number, &head.created]
        .iter()
        .map(|text| text.as_str())
        .filter(|text| !text.is_empty())
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
        .map(|text| text.to_lowercase())
        .collect::<Vec<_>>()
        .join(" ");
    search.to_lowercase().split_whitespace().all(|word| text.contains(word))
}

/// The list.
#[component]
pub fn JobsPage() -> impl IntoView {
    let desk = Desk::of();
    let search = RwSignal::new(String::new());
    let say = move |label: Label| move || desk.label(label);
    let rows = move |binned: bool| {
        Memo::new(move |_| {
            let search = search.get();
            desk.shelf.with(|shelf| {
                let mut jobs: Vec<&Arc<Job>> = shelf
                    .values()
                    .filter(|job| job.head.body.binned.is_some() == binned)
                    .filter(|job| binned || matches(job, &search))
                    .collect();
                jobs.sort_by(|a, b| (&b.head.body.created, &b.id).cmp(&(&a.head.body.created, &a.id)));
                jobs.into_iter().map(|job| row(job)).collect::<Vec<Row>>()
            })
        })
    };
    let (there, bin) = (rows(false), rows(true));
    let empty = Memo::new(move |_| desk.shelf.with(|shelf| shelf.values().all(|job| job.head.body.binned.is_some())));
    view! {
        <main class="page jobs">
            <h1 class="page-title">{say(Label::Jobs)}</h1>
            <Show when=move || empty.get()>
                <div class="empty">
                    <p class="empty-head">{say(Label::NoJobs)}</p>
                    <p>{say(Label::NoJobsHint)}</p>
                </div>
            </Show>
            <div class="actions">
                <button type="button" class="primary" on:click=move |_| desk.new_job()>{say(Label::NewJob)}</button>
                <button type="button" on:click=move |_| desk.new_sample()>{say(Label::SampleJob)}</button>
                <button type="button" on:click=move |_| desk.open_file()>{say(Label::OpenFile)}</button>
            </div>
            <Show when=move || !empty.get()>
                <input class="search" type="search" aria-label=say(Label::Search) placeholder=say(Label::Search)
                    on:input=move |event| search.set(event_target_value(&event)) />
            </Show>
            <Show when=move || !empty.get() && there.with(Vec::is_empty)>
                <p>{say(Label::NothingFound)}</p>
            </Show>
            <ul class="job-list">
                <For each=move || there.get() key=|row| (row.id.clone(), row.title.clone(), row.about.clone(), row.vessels) let:row>
                    <JobLine row />
                </For>
            </ul>
            <Show when=move || !bin.with(Vec::is_empty)>
                <section class="bin" aria-labelledby="bin">
                    <h2 class="rule" id="bin">{say(Label::Bin)}</h2>
                    <p>{say(Label::BinHint)}</p>
                    <ul class="job-list">
                        <For each=move || bin.get() key=|row| row.id.clone() let:row>
                            <BinLine row />
                        </For>
                    </ul>
                </section>
            </Show>
        </main>
    }
}

#[component]
fn JobLine(row: Row) -> impl IntoView {
    let desk = Desk::of();
    let title = if row.title.is_empty() { desk.label(Label::Untitled).to_owned() } else { row.title };
    let (copy, bin) = (row.id.clone(), row.id.clone());
    view! {
        <li class="job-line">
            <a class="job-link" href=Route::Job(row.id).address()>
                <span class="job-title">{title}</span>
                <span class="job-about">{row.about}</span>
                {row.sample.then(|| view! { <span class="job-about">{desk.label(Label::SampleMark)}</span> })}
            </a>
            <span class="job-tools">
                <button type="button" class="quiet" on:click=move |_| desk.duplicate(&copy)>{desk.label(Label::Duplicate)}</button>
                <button type="button" class="quiet" on:click=move |_| desk.bin(&bin, true)>{desk.label(Label::Delete)}</button>
            </span>
        </li>
    }
}

#[component]
fn BinLine(row: Row) -> impl IntoView {
    let desk = Desk::of();
    let title = if row.title.is_empty() { desk.label(Label::Untitled).to_owned() } else { row.title };
    let (back, gone) = (row.id.clone(), row.id);
    view! {
        <li class="job-line">
            <span class="job-link"><span class="job-title">{title}</span><span class="job-about">{row.about}</span></span>
            <span class="job-tools">
                <button type="button" class="quiet" on:click=move |_| desk.bin(&back, false)>{desk.label(Label::Restore)}</button>
                <button type="button" class="quiet" on:click=move |_| desk.erase(&gone)>{desk.label(Label::EraseForGood)}</button>
            </span>
        </li>
    }
}
