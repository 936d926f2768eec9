//! The cautions: read once a day by each person, for the whole job.

use bedwright_job::Edit;
use bedwright_job::sections::loading::Acknowledgement;
use bedwright_job::words::LoadingLabel;

use super::tag::TagSheet;
use crate::desk::today;
use crate::parts::live::{El, button, el};
use crate::parts::signal::Worked;
use crate::parts::typing::{text_line, typing};

/// The cautions, open until they were read.
pub fn gate(of: TagSheet, acknowledged: Worked<bool>, signed: Worked<bool>) -> El {
    let desk = of.desk;
    let ask = move || {
        let name = typing(
            desk.turned,
            move || desk.person.with(|person| person.name.clone()),
            move |text| desk.prefer(|person| person.name = text),
            || {},
        )
        .set("autocomplete", "name")
        .set("aria-label", of.say(LoadingLabel::YourName));
        let nameless = move || of.person().is_empty();
        let read = move || {
            let of_sheet = Acknowledgement { sheet: of.sheet, day: today(), stamp: of.stamp() };
            if of_sheet.stamp.by.is_empty() {
                return;
            }
            desk.edit(Edit::Acknowledge { of: of_sheet, read: true });
            of.show_next();
        };
        vec![
            text_line(of.say(LoadingLabel::YourName), name),
            el("p", "quietly").text(of.say(LoadingLabel::YourNameHint)),
            button("primary loading-large", of.say(LoadingLabel::IHaveRead), read).holds("disabled", nameless),
            el("p", "quietly").set("role", "status").says(move || {
                let hint = if nameless() { LoadingLabel::NameFirst } else { LoadingLabel::AnotherDay };
                of.say(hint).to_owned()
            }),
        ]
    };
    let title = move || {
        let read = acknowledged.get();
        let by = if read {
            [" · ", of.say(LoadingLabel::ReadBy), " ", &of.person(), ", ", &today()].concat()
        } else {
            String::new()
        };
        [of.say(LoadingLabel::Cautions), &by].concat()
    };
    let said = move || of.read(|_, answers| of.desk.manner().cautions(of.sheet, answers));
    let list = el("ul", "load-cautions").live(move || said().into_iter().map(|text| el("li", "").text(text)).collect());
    el("details", "loading-gate")
        .holds("open", move || !acknowledged.get() && !signed.get())
        .kid(el("summary", "").kid(el("span", "loading-gate-title").says(title)))
        .kid(list)
        .kid(el("p", "").text(of.say(LoadingLabel::CodesDecide)))
        .when(move || !acknowledged.get() && !signed.get(), ask)
}
