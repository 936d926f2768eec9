//! What must be seen until it is settled: at the top of every screen, one of a kind.

use bedwright_edge::fault::Fault;
use bedwright_job::words::{KeepingLabel, Label, LoadingLabel, TravelLabel};

use crate::desk::{Desk, Follows};
use crate::parts::live::{El, button, el};
use crate::parts::signal::{Held, Worked};
use crate::route::Route;

/// A notice.
#[derive(Clone, PartialEq)]
pub enum Notice {
    /// Texts that could not be read and were set aside; by key.
    SetAside(Vec<String>),
    /// The open job was changed in another tab.
    ChangedElsewhere,
    /// A new version waits.
    UpdateWaiting,
    /// Another tab took a new version.
    UpdateElsewhere,
    /// Two states of a job became one.
    Joined,
    /// A part of the open job is of a later version.
    Locked,
    /// What was to be changed was signed.
    Frozen,
    /// Local storage was emptied while the page was open.
    Emptied,
    /// There were jobs, and nothing of them is left.
    AllGone,
}

impl Notice {
    fn same_kind(&self, other: &Notice) -> bool {
        std::mem::discriminant(self) == std::mem::discriminant(other)
    }
}

/// Puts a notice up, in place of one of its kind; set-aside texts are added up.
pub fn put(notices: Held<Vec<Notice>>, notice: Notice) {
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
pub fn take(notices: Held<Vec<Notice>>, kind: &Notice) {
    notices.update(|all| all.retain(|there| !there.same_kind(kind)));
}

/// The notices at the top of the page.
pub fn notices(desk: Desk) -> El {
    let trouble = Worked::new(move || {
        desk.status.with(|status| {
            let full =
                matches!(status.local, Err(Fault::Full { .. })) || matches!(status.journal, Err(Fault::Full { .. }));
            match (&status.local, &status.journal) {
                (Ok(()), Ok(())) => None,
                (Err(Fault::Full { .. }), Ok(())) => Some(desk.label(KeepingLabel::OnlyInJournal)),
                _ if full => Some(desk.label(Label::StorageFull)),
                (Err(_), Err(_)) => Some(desk.label(Label::NotKept)),
                _ => None,
            }
        })
    });
    el("div", "notices")
        .set("role", "region")
        .set("aria-live", "polite")
        .live(move || {
            let Some(text) = trouble.get() else { return Vec::new() };
            vec![notice("notice notice-stop").kid(said(text)).when(
                move || desk.job.with(Option::is_some),
                move || vec![button("", desk.label(Label::SaveFile), move || desk.save_file())],
            )]
        })
        .live(move || {
            if !desk.outdated.get() {
                return Vec::new();
            }
            let text = said(desk.label(KeepingLabel::NewerFormat));
            vec![
                notice("notice notice-stop")
                    .kid(text)
                    .kid(button("", desk.label(Label::Reload), move || desk.reload())),
            ]
        })
        .live(move || desk.follows.get().map(|follows| followed(desk, follows)).into_iter().collect())
        .live(move || desk.notices.with(|all| all.iter().map(|notice| line(desk, notice)).collect()))
        .kid(crate::backup::reminder(desk))
}

/// That another tab has the job, and the way to have it here.
fn followed(desk: Desk, follows: Follows) -> El {
    let mut text = said("");
    if follows == Follows::TakenOver {
        text = text.text(desk.label(KeepingLabel::TakenElsewhere)).text(" ");
    }
    notice("notice notice-caution").kid(text.text(desk.label(KeepingLabel::Follows))).kid(button(
        "primary",
        desk.label(KeepingLabel::WorkHere),
        move || desk.work_here(),
    ))
}

fn notice(class: &str) -> El {
    el("div", class).set("role", "alert")
}

fn said(text: &str) -> El {
    el("span", "notice-text").text(text)
}

fn line(desk: Desk, about: &Notice) -> El {
    let kind = about.clone();
    let caution = || notice("notice notice-caution");
    let text = |label: Label| said(desk.label(label));
    let dismiss = move |label: Label| button("", desk.label(label), move || take(desk.notices, &kind));
    match about {
        Notice::SetAside(keys) => {
            let asked = keys.clone();
            caution()
                .kid(text(Label::SetAside))
                .kid(el("span", "notice-detail").text(&keys.join(", ")))
                .kid(button("", desk.label(Label::DownloadIt), move || desk.download_aside(&asked)))
                .kid(dismiss(Label::Dismiss))
        }
        Notice::ChangedElsewhere => notice("notice").kid(text(Label::ChangedElsewhere)).kid(dismiss(Label::Dismiss)),
        Notice::UpdateWaiting => notice("notice")
            .kid(text(Label::UpdateWaiting))
            .kid(button("", desk.label(Label::UpdateNow), move || desk.take_update()))
            .kid(dismiss(Label::UpdateLater)),
        Notice::UpdateElsewhere => {
            caution()
                .kid(text(Label::UpdateElsewhere))
                .kid(button("", desk.label(Label::Reload), move || desk.reload()))
        }
        Notice::Joined => notice("notice").kid(said(desk.label(TravelLabel::Joined))).kid(dismiss(Label::Dismiss)),
        Notice::Frozen => caution().kid(said(desk.label(LoadingLabel::Frozen))).kid(dismiss(Label::Dismiss)),
        Notice::Emptied => caution().kid(said(desk.label(KeepingLabel::Emptied))).kid(dismiss(Label::Dismiss)),
        Notice::AllGone => notice("notice notice-stop")
            .kid(said(desk.label(KeepingLabel::AllGone)))
            .kid(el("a", "action").set("href", &Route::Backup.address()).text(desk.label(KeepingLabel::RestoreTitle)))
            .kid(dismiss(Label::Dismiss)),
        Notice::Locked => caution().kid(text(Label::LockedSection)).kid(dismiss(Label::Dismiss)),
    }
}
