//! The end of a loading: what is still lacking, what was not ticked, the name under it.

use bedwright_job::loading::{StepWork, lacking, to_sign};
use bedwright_job::words::LoadingLabel;
use leptos::prelude::*;

use super::tag::TagSheet;
use crate::desk::{new_id, today};
use crate::parts::live::{El, button, el};
use crate::parts::signal::{Held, Worked};

/// How far signing has come.
#[derive(Clone, Copy, PartialEq)]
enum Going {
    Idle,
    Writing,
    Refused,
}

/// What is signed, and the button that does.
pub fn sign(of: TagSheet) -> El {
    let manner = of.desk.manner();
    let going = Held::new(Going::Idle);
    let lacks = Worked::new(move || -> Vec<String> {
        of.read(|load, answers| lacking(load).iter().map(|lack| manner.lack(lack, load, answers)).collect())
    });
    let open = Worked::new(move || -> Vec<String> {
        let wash = of.wash();
        of.read(|load, answers| {
            let all = load.removal.iter().chain(&load.loading);
            let open = all.filter(|step| step.work == StepWork::Tick && !step.is_done());
            open.map(|step| manner.step(step, load, answers, wash).title).collect()
        })
    });
    let write = move || {
        let Some((load, answers)) = untrack(|| of.both()) else { return };
        let stamp = of.stamp();
        if let Ok(loaded) = to_sign(&load, &answers, new_id(), &today(), stamp) {
            going.set(Going::Writing);
            of.desk.sign(loaded.record(), move |done| {
                if !going.is_gone() {
                    going.set(if done { Going::Idle } else { Going::Refused });
                }
            });
        }
    };
    let told = move || {
        of.say(match going.get() {
            Going::Idle => LoadingLabel::SignHint,
            Going::Writing => LoadingLabel::Signing,
            Going::Refused => LoadingLabel::NotSigned,
        })
        .to_owned()
    };
    let list = move |label: LoadingLabel, which: Worked<Vec<String>>| {
        move || {
            vec![
                el("p", "").text(of.say(label)),
                el("ul", "load-sign-list")
                    .live(move || which.with(|all| all.iter().map(|text| el("li", "").text(text)).collect())),
            ]
        }
    };
    el("section", "loading-sign")
        .kid(el("h2", "rule").text(of.say(LoadingLabel::Sign)))
        .when(move || !lacks.with(Vec::is_empty), list(LoadingLabel::StillLacks, lacks))
        .when(move || !open.with(Vec::is_empty), list(LoadingLabel::NotTicked, open))
        .kid(el("p", "quietly").set("role", "status").says(told))
        .kid(
            el("p", "").text(of.say(LoadingLabel::SignedBy)).text(": ").kid(el("strong", "").says(move || of.person())),
        )
        .kid(
            button("primary loading-large", of.say(LoadingLabel::Sign), write)
                .holds("disabled", move || !lacks.with(Vec::is_empty) || going.get() == Going::Writing),
        )
}
