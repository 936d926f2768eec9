//! What must be seen until it is settled: at the top of every screen, one of a kind.

use bedwright_edge::fault::Fault;
use bedwright_job::words::Label;
use leptos::prelude::*;

use crate::desk::Desk;

/// A notice.
#[derive(Clone, Debug, PartialEq)]
pub enum Notice {
    /// Texts that could not be read and were set aside; by key.
    SetAside(Vec<String>),
    /// The open job was changed in another tab.
    ChangedElsewhere,
    /// A new version waits.
    UpdateWaiting,
    /// Another tab took a new version.
    UpdateElsewhere,
    /// A file was not opened, and why.
    FileNotRead(Label),
    /// A part of the open job is of a later version.
    Locked,
}

impl Notice {
    fn same_kind(&self, other: &Notice) -> bool {
        std::mem::discriminant(self) == std::mem::discriminant(other)
    }
}

/// Puts a notice up, in place of one of its kind; set-aside texts are added up.
pub fn put(notices: RwSignal<Vec<Notice>>, notice: Notice) {
    notices.update(|all| match all.iter_mut().find(|there| there.same_kind(&notice)) {
        Some(Notice::SetAside(keys)) => {
            if let Notice::SetAside(more) = notice {
                for key in more {
                    if !keys.contains(&key) {
                        keys.push(key);
                    }
                }
            }
        }
        Some(there) => *there = notice,
        None => all.push(notice),
    });
}

/// Takes every notice of a kind down.
pub fn take(notices: RwSignal<Vec<Notice>>, kind: &Notice) {
    notices.update(|all| all.retain(|there| !there.same_kind(kind)));
}

/// The notices at the top of the page.
#[component]
pub fn Notices() -> impl IntoView {
    let desk = Desk::of();
    let trouble = move || {
        desk.status.with(|status| {
            let full =
                matches!(status.local, Err(Fault::Full { .. })) || matches!(status.journal, Err(Fault::Full { .. }));
            match (&status.local, &status.journal) {
                (Ok(()), Ok(())) => None,
                _ if full => Some(Label::StorageFull),
                (Err(_), Err(_)) => Some(Label::NotKept),
                _ => None,
            }
        })
    };
    view! {
        <div class="notices" role="region" aria-live="polite">
            {move || trouble().map(|label| view! {
                <div class="notice notice-stop" role="alert">
                    <span class="notice-text">{desk.label(label)}</span>
                    <Show when=move || desk.job.with(Option::is_some)>
                        <button type="button" on:click=move |_| desk.save_file()>{desk.label(Label::SaveFile)}</button>
                    </Show>
                </div>
            })}
            <For each=move || desk.notices.get() key=|notice| format!("{notice:?}") let:notice>
                <NoticeLine notice />
            </For>
        </div>
    }
}

#[component]
fn NoticeLine(notice: Notice) -> impl IntoView {
    let desk = Desk::of();
    let kind = notice.clone();
    let dismiss = move |_| take(desk.notices, &kind);
    let say = |label: Label| desk.label(label);
    match notice {
        Notice::SetAside(keys) => {
            let asked = keys.clone();
            view! {
                <div class="notice notice-caution" role="alert">
                    <span class="notice-text">{say(Label::SetAside)}</span>
                    <span class="notice-detail">{keys.join(", ")}</span>
                    <button type="button" on:click=move |_| desk.download_aside(&asked)>{say(Label::DownloadIt)}</button>
                    <button type="button" on:click=dismiss>{say(Label::Dismiss)}</button>
                </div>
            }.into_any()
        }
        Notice::ChangedElsewhere => view! {
            <div class="notice" role="alert">
                <span class="notice-text">{say(Label::ChangedElsewhere)}</span>
                <button type="button" on:click=dismiss>{say(Label::Dismiss)}</button>
            </div>
        }
        .into_any(),
        Notice::UpdateWaiting => view! {
            <div class="notice" role="alert">
                <span class="notice-text">{say(Label::UpdateWaiting)}</span>
                <button type="button" on:click=move |_| desk.take_update()>{say(Label::UpdateNow)}</button>
                <button type="button" on:click=dismiss>{say(Label::UpdateLater)}</button>
            </div>
        }
        .into_any(),
        Notice::UpdateElsewhere => view! {
            <div class="notice notice-caution" role="alert">
                <span class="notice-text">{say(Label::UpdateElsewhere)}</span>
                <button type="button" on:click=move |_| desk.reload()>{say(Label::Reload)}</button>
            </div>
        }
        .into_any(),
        Notice::FileNotRead(why) => view! {
            <div class="notice notice-caution" role="alert">
                <span class="notice-text">{say(Label::FileNotRead)}" "{say(why)}</span>
                <button type="button" on:click=dismiss>{say(Label::Dismiss)}</button>
            </div>
        }
        .into_any(),
        Notice::Locked => view! {
            <div class="notice notice-caution" role="alert">
                <span class="notice-text">{say(Label::LockedSection)}</span>
                <button type="button" on:click=dismiss>{say(Label::Dismiss)}</button>
            </div>
        }
        .into_any(),
    }
}
