//! The screen: a backup out, a backup in, what is kept and how safely.

use bedwright_job::words::KeepingLabel;

use super::restore::restore_part;
use super::storage::storage_part;
use crate::desk::{Desk, Handed, Ready};
use crate::parts::live::{El, button, el};
use crate::parts::signal::{Held, Worked};
use crate::route::Route;

/// The screen.
pub fn backup_page(desk: Desk) -> El {
    el("main", "page backup")
        .kid(el("h1", "page-title").text(desk.label(KeepingLabel::Title)))
        .kid(backup_part(desk))
        .kid(restore_part(desk))
        .kid(storage_part(desk))
}

/// A part of the screen under a heading.
pub(super) fn part(desk: Desk, title: KeepingLabel, about: KeepingLabel) -> El {
    el("section", "backup-part").kid(el("h2", "rule").text(desk.label(title))).kid(el("p", "").text(desk.label(about)))
}

fn backup_part(desk: Desk) -> El {
    let said: Held<Vec<String>> = Held::new(Vec::new());
    // One that waits for another tap.
    let waiting: Held<Option<Ready>> = Held::new(None);
    let stand = move || {
        let manner = desk.manner();
        match desk.owing() {
            Some(owing) => manner.owing(&owing),
            None => match desk.ledger.with(|ledger| ledger.day) {
                Some(day) => {
                    let last = manner.sentence(KeepingLabel::LastBackup, &[("day", &day.text())]);
                    [&last, " ", desk.label(KeepingLabel::NothingChanged)].concat()
                }
                None => desk.label(KeepingLabel::NothingToBackUp).to_owned(),
            },
        }
    };
    let nothing = Worked::new(move || !desk.anything_to_back_up());
    let save = button("primary", desk.label(KeepingLabel::SaveBackup), move || {
        wasm_bindgen_futures::spawn_local(async move {
            said.set(Vec::new());
            let ready = match waiting.get_untracked() {
                Some(ready) => ready,
                None => desk.backup_ready().await,
            };
            let handed = desk.hand_over(&ready).await;
            waiting.set((handed == Handed::TapAgain).then(|| ready.clone()));
            said.set(outcome(desk, handed, &ready));
        });
    });
    part(desk, KeepingLabel::Backup, KeepingLabel::BackupAbout)
        .kid(el("p", "backup-stand").says(stand))
        .kid(el("div", "actions").kid(save.holds("disabled", move || nothing.get())))
        .kid(
            el("div", "")
                .set("role", "status")
                .live(move || said.get().iter().map(|text| el("p", "backup-said").text(text)).collect()),
        )
}

fn outcome(desk: Desk, handed: Handed, ready: &Ready) -> Vec<String> {
    let named = |label: KeepingLabel| desk.manner().sentence(label, &[("name", &ready.name)]);
    let mut said = match handed {
        Handed::Downloaded => vec![named(KeepingLabel::BackupHanded)],
        Handed::Shared => vec![named(KeepingLabel::BackupShared)],
        Handed::TapAgain => vec![desk.label(KeepingLabel::BackupTapAgain).to_owned()],
        Handed::Failed => vec![desk.label(KeepingLabel::BackupFailed).to_owned()],
        Handed::Cancelled => Vec::new(),
    };
    if ready.photos.is_err() && !said.is_empty() {
        said.push(desk.label(KeepingLabel::PhotosUnread).to_owned());
    }
    said
}

/// That a backup is due, where it is: quiet, with a way to put it off. Not on the screen of the backup itself.
pub fn reminder(desk: Desk) -> El {
    let due = Worked::new(move || {
        // While a job is worked on nobody is disturbed.
        let asks = desk.route.with(|route| matches!(route, Route::Jobs | Route::Due));
        if asks { desk.reminds().map(|owing| desk.manner().owing(&owing)) } else { None }
    });
    el("div", "").live(move || {
        let Some(owing) = due.get() else { return Vec::new() };
        let go = el("a", "action").set("href", &Route::Backup.address()).text(desk.label(KeepingLabel::SaveBackup));
        vec![
            el("div", "notice")
                .set("role", "status")
                .kid(el("span", "notice-text").text(desk.label(KeepingLabel::Remind)).text(" ").text(&owing))
                .kid(go)
                .kid(button("quiet", desk.label(KeepingLabel::PutOff), move || desk.put_backup_off())),
        ]
    })
}
