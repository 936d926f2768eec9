//! What stands under the bill: lines left out with their reasons, what spent media takes up, prices of the list.

use std::rc::Rc;

use bedwright_calc::supply::JobKind;
use bedwright_job::Edit;
use bedwright_job::entry::Unit;
use bedwright_job::field::KitField;
use bedwright_job::prices::{differing, price_key};
use bedwright_job::reading::read_spent;
use bedwright_job::words::BillLabel;

use crate::desk::{Desk, with_bill};
use crate::parts::choice::choice;
use crate::parts::live::{El, button, el};
use crate::parts::signal::{Held, Worked};
use crate::parts::typing::{text_line, typing};
use crate::vessel::NumberLine;

/// Lines that can be left out, and those that are.
pub fn lines_left(desk: Desk) -> El {
    let say = move |label: BillLabel| desk.label(label);
    let manner = desk.manner();
    let bill = desk.bill();
    let lines = Worked::new(move || {
        let mut lines: Vec<(String, String)> = Vec::new();
        with_bill(bill, |bill| {
            for line in &bill.bill.pooled {
                let key = price_key(&line.item);
                if lines.iter().all(|(there, _)| *there != key) {
                    lines.push((key, manner.item(&line.item)));
                }
            }
        });
        lines
    });
    let (at, reason, asked) = (Held::new(0_usize), desk.draft_text("reason"), Held::new(false));
    let emptied = Held::new(0_u32);
    let leave = button("", say(BillLabel::Leave), move || {
        let why = reason.get_untracked().trim().to_owned();
        let key = lines.with_untracked(|lines| lines.get(at.get_untracked()).map(|(key, _)| key.clone()));
        asked.set(why.is_empty());
        if let Some(key) = key.filter(|_| !why.is_empty()) {
            desk.edit(Edit::LeaveOut { key, reason: Some(why) });
            at.set(0);
            reason.set(String::new());
            emptied.update(|n| *n = n.wrapping_add(1));
        }
    });
    let typed = typing(
        emptied,
        move || reason.get_untracked(),
        move |text| {
            asked.set(false);
            reason.set(text);
        },
        || {},
    )
    .set("placeholder", say(BillLabel::ReasonHint))
    .set("aria-describedby", "bill-reason-wrong")
    .tells("aria-invalid", move || asked.get().then(|| "true".to_owned()));
    let missing = move || if asked.get() { say(BillLabel::ReasonMissing).to_owned() } else { String::new() };
    let list = choice(
        say(BillLabel::Line),
        move || lines.with(|lines| lines.iter().map(|(_, name)| name.clone()).collect()),
        move || Some(at.get()),
        move |chosen| at.set(chosen),
    );
    let out = move || {
        desk.of_job(|job| {
            with_bill(bill, |bill| {
                let named = |key: &String| {
                    bill.removed
                        .iter()
                        .find(|(line, _)| price_key(&line.item) == *key)
                        .map(|(line, _)| manner.item(&line.item))
                };
                let left = job.kit.body.left_out.iter();
                left.map(|(key, reason)| {
                    (key.clone(), named(key).unwrap_or_else(|| manner.price_key_name(key)), reason.clone())
                })
                .collect::<Vec<_>>()
            })
        })
    };
    let left_line = move |(key, name, reason): (String, String, String)| {
        let again = button("quiet", say(BillLabel::TakeIn), move || {
            desk.edit(Edit::LeaveOut { key: key.clone(), reason: None });
        })
        .set("aria-label", &format!("{}: {name}", say(BillLabel::TakeIn)));
        el("li", "bill-left")
            .kid(
                el("span", "bill-left-text")
                    .kid(el("strong", "").text(&name))
                    .kid(el("span", "bill-reason").text(&reason)),
            )
            .kid(again)
    };
    let there = move || !out().is_empty();
    el("section", "bill-part")
        .when(there, move || {
            vec![
                el("h2", "rule").text(say(BillLabel::Chosen)),
                el("ul", "bill-lefts").live(move || out().into_iter().map(left_line).collect()),
            ]
        })
        .when(move || !lines.with(Vec::is_empty), {
            let form = el("div", "bill-part")
                .kid(el("h2", "rule").text(say(BillLabel::LeaveTitle)))
                .kid(el("p", "").text(say(BillLabel::LeaveAbout)))
                .kid(list)
                .kid(text_line(say(BillLabel::Reason), typed))
                .kid(el("p", "entry-message").set("id", "bill-reason-wrong").says(missing))
                .kid(el("p", "").kid(leave));
            move || vec![form.clone()]
        })
}

/// What spent media takes up, where the visit takes some out.
pub fn spent(desk: Desk) -> El {
    let say = move |label: BillLabel| desk.label(label);
    let kind = move || desk.of_job(|job| Some(job.head.body.kind));
    let asked = move || matches!(kind(), Some(JobKind::Changeout | JobKind::Partial));
    el("section", "bill-part").when(asked, move || {
        vec![
            el("h2", "rule").text(say(BillLabel::SpentTitle)),
            el("p", "").text(say(BillLabel::SpentAbout)),
            entry(desk, KitField::Bulking, BillLabel::Bulking, BillLabel::BulkingHint),
            entry(desk, KitField::DrumVolume, BillLabel::Drum, BillLabel::DrumHint),
        ]
    })
}

fn entry(desk: Desk, field: KitField, label: BillLabel, hint: BillLabel) -> El {
    let there = move || desk.of_job(|job| job.kit.body.entries.get(&field).cloned());
    let usual = match field {
        KitField::Bulking => Unit::One,
        KitField::DrumVolume if desk.manner().metric => Unit::Litre,
        KitField::DrumVolume => Unit::UsGallon,
    };
    let bill = desk.bill();
    let misread =
        move || with_bill(bill, |bill| bill.kit.clone().filter(|(wrong, _)| *wrong == field).map(|(_, why)| why));
    let problem = move || {
        let spent = desk.of_job(|job| read_spent(&job.kit.body).ok())?;
        spent.problem(field == KitField::Bulking).map(|problem| desk.manner().problem(&problem))
    };
    let assumed = move || {
        let usual = bedwright_calc::supply::Spent::default();
        Some(match field {
            KitField::Bulking => usual.bulking.value,
            KitField::DrumVolume => usual.drum.value.value,
        })
    };
    NumberLine {
        id: format!("kit-{}", field.id()),
        label: desk.label(label),
        hint: desk.label(hint),
        units: Unit::of(field.dimension()),
        usual,
        entry: Rc::new(there),
        misread: Rc::new(misread),
        problem: Rc::new(problem),
        put: Rc::new(move |entry| desk.edit(Edit::Kit { field, entry })),
        assumed: Rc::new(assumed),
        standing: None,
    }
    .show(desk)
}

/// Prices the job carries that are others in the list now.
pub fn prices_differ(desk: Desk) -> El {
    let say = move |label: BillLabel| desk.label(label);
    let count =
        Worked::new(move || desk.of_job(|job| desk.prices.list.with(|list| differing(&job.prices.body, list).len())));
    el("section", "bill-part").live(move || {
        let count = count.with(|count| *count);
        if count == 0 {
            return Vec::new();
        }
        let differ = say(if count == 1 { BillLabel::DiffersOne } else { BillLabel::Differ });
        vec![
            el("h2", "rule").text(say(BillLabel::Prices)),
            el("p", "").set("role", "status").text(&format!("{count} {differ}")),
            el("p", "").kid(button("", say(BillLabel::TakeOver), move || desk.carry_prices())),
        ]
    })
}
