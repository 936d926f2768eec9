//! The pick list's screen.

use bedwright_job::papers::{Paper, PickRow, PickState, pick_list, pick_rows, put_back};
use bedwright_job::words::Label;
use leptos::prelude::*;

use super::line::Line;
use crate::desk::{Desk, today};
use crate::parts::sheet::{Printing, page_size, paper_size};

/// The pick list.
#[component]
pub fn PickingPage() -> impl IntoView {
    let desk = Desk::of();
    let say = move |label: Label| move || desk.label(label);
    let bill = desk.bill();
    let rows: Memo<Vec<PickRow>> = Memo::new(move |_| {
        let manner = desk.manner.get();
        desk.job.with(|job| job.as_ref().map(|job| bill.with(|bill| pick_rows(job, bill, manner))).unwrap_or_default())
    });
    let back = Memo::new(move |_| {
        let manner = desk.manner.get();
        desk.job.with(|job| job.as_ref().map(|job| bill.with(|bill| put_back(job, bill, manner))).unwrap_or_default())
    });
    let papers = Signal::derive(move || {
        let manner = desk.manner.get();
        desk.job
            .with(|job| job.as_ref().map(|job| bill.with(|bill| pick_list(job, bill, manner, &today()))))
            .into_iter()
            .collect::<Vec<Paper>>()
    });
    let sorted = move || rows.with(|rows| rows.iter().map(|row| row.key.clone()).collect::<Vec<_>>());
    // Lines stay where they are while bins are typed; a line never moves away under a thumb.
    let order = RwSignal::new(untrack(sorted));
    Effect::new(move |_| {
        let now = sorted();
        order.update(|order| {
            order.retain(|key| now.contains(key));
            for key in now {
                if !order.contains(&key) {
                    order.push(key);
                }
            }
        });
    });
    let unsorted = move || order.with(|order| *order != sorted());
    let progress = move || {
        let (picked, all) =
            rows.with(|rows| (rows.iter().filter(|row| row.state == PickState::Picked).count(), rows.len()));
        format!("{} {picked} {} {all}", desk.label(Label::Picked), desk.label(Label::Of))
    };
    let empty = move || rows.with(Vec::is_empty);
    let size = Signal::derive(move || desk.person.with(|person| page_size(person.paper)));
    view! {
        <main class="page picking">
            <h1 class="page-title">{say(Label::PickList)}</h1>
            <Show when=move || !empty() fallback=move || view! { <p>{say(Label::EmptyBill)}</p> }>
                <div class="picking-state">
                    <p class="picking-progress" role="status">{progress}</p>
                    <Show when=unsorted>
                        <button type="button" on:click=move |_| order.set(untrack(sorted))>{say(Label::SortByBin)}</button>
                    </Show>
                </div>
                <ul class="picking-lines">
                    <For each=move || order.get() key=|key| key.clone() let:key>
                        <Line key rows />
                    </For>
                </ul>
            </Show>
            <Show when=move || back.with(|back| !back.is_empty())>
                <section class="picking-back">
                    <h2 class="rule">{say(Label::PutBack)}</h2>
                    <ul>
                        <For each=move || back.get() key=|back| (back.key.clone(), back.picked) let:back>
                            <li>{format!("{} × {}", back.picked, back.item)}</li>
                        </For>
                    </ul>
                </section>
            </Show>
            <Printing papers size manner=desk.manner
                on_size=Callback::new(move |size| desk.prefer(|person| person.paper = paper_size(size))) />
        </main>
    }
}
