//! The screen: ticks, what stays, and what comes of them, made before anybody taps.

use std::rc::Rc;

use bedwright_job::envelope::{Contents, Part, Receiver, seal};
use bedwright_job::words::TravelLabel;

use super::ways::ways;
use crate::desk::{Desk, today};
use crate::parts::choice::{choice, pick};
use crate::parts::live::{El, el, ticked};
use crate::parts::signal::{Held, Worked};
use crate::parts::typing::{text_line, typing};

/// The screens a receiver may land on.
const LANDINGS: [&str; 9] =
    ["", "survey-sheet", "calculation", "bill", "quote", "packs", "picking", "labels", "loading"];

/// What goes, as it is ticked.
#[derive(Clone, Copy)]
pub struct Goes {
    /// The desk.
    pub desk: Desk,
    receiver: Held<Receiver>,
    parts: Held<Vec<Part>>,
    costs: Held<bool>,
    lands_on: Held<&'static str>,
    name: Held<String>,
}

/// What goes, packed.
#[derive(Clone, PartialEq)]
pub struct Packed {
    /// Which job.
    pub job: String,
    /// What it is called.
    pub title: String,
    /// The parts that go.
    pub parts: Vec<Part>,
    /// Who sends it.
    pub from: String,
    /// What was packed.
    pub contents: Rc<Contents>,
    /// The envelope.
    pub sealed: Rc<Vec<u8>>,
}

impl Goes {
    fn new(desk: Desk) -> Goes {
        let receiver = Receiver::Warehouse;
        Goes {
            desk,
            receiver: Held::new(receiver),
            parts: Held::new(receiver.parts().to_vec()),
            costs: Held::new(receiver.costs()),
            lands_on: Held::new(receiver.lands_on()),
            name: Held::new(desk.person.with_untracked(|person| person.name.clone())),
        }
    }

    fn to(self, receiver: Receiver) {
        self.receiver.set(receiver);
        self.parts.set(receiver.parts().to_vec());
        self.costs.set(receiver.costs());
        self.lands_on.set(receiver.lands_on());
    }

    /// The parts that go: those that are ticked, without what is nothing but costs where costs stay.
    fn going(self) -> Vec<Part> {
        let costs = self.costs.get();
        self.parts.with(|parts| {
            Part::ALL.iter().copied().filter(|part| parts.contains(part) && (costs || !part.is_costs())).collect()
        })
    }

    fn packed(self) -> Option<Packed> {
        let job = self.desk.open()?;
        let parts = self.going();
        let from = self.name.with(|name| name.trim().to_owned());
        let mut contents = Contents::of(&parts, self.costs.get(), self.lands_on.get());
        from.clone_into(&mut contents.from);
        contents.day = today();
        let sealed = Rc::new(seal(&job, &contents));
        let title = job.head.body.title.clone();
        Some(Packed { job: job.id.to_string(), title, parts, from, contents: Rc::new(contents), sealed })
    }
}

/// Sending.
pub fn send_page(desk: Desk) -> El {
    let goes = Goes::new(desk);
    let say = move |label: TravelLabel| desk.label(label);
    let packed = Worked::new(move || goes.packed());
    let names: Vec<&str> = Receiver::ALL.iter().map(|receiver| desk.label(*receiver)).collect();
    let whom = pick(
        say(TravelLabel::Whom),
        "send-whom",
        &names,
        move || Receiver::ALL.iter().position(|receiver| *receiver == goes.receiver.get()),
        move |at| goes.to(Receiver::ALL.get(at).copied().unwrap_or(Receiver::Warehouse)),
    );
    let lands_on = choice(
        say(TravelLabel::LandsOn),
        move || {
            let name = |lands_on: &&str| desk.manner().landing(lands_on).unwrap_or_default().to_owned();
            LANDINGS.iter().map(name).collect()
        },
        move || LANDINGS.iter().position(|lands_on| *lands_on == goes.lands_on.get()),
        move |at| goes.lands_on.set(LANDINGS.get(at).copied().unwrap_or_default()),
    );
    let name = typing(
        desk.turned,
        move || goes.name.get_untracked(),
        move |text| {
            goes.name.set(text);
        },
        move || {
            // Remembered for the next time, as the name under a signature is.
            let name = goes.name.get_untracked();
            if desk.person.with_untracked(|person| person.name != name) {
                desk.prefer(|person| person.name = name);
            }
        },
    );
    el("main", "page send")
        .kid(el("h1", "page-title").text(say(TravelLabel::Send)))
        .kid(whom)
        .kid(what_goes(goes))
        .kid(stays(goes))
        .kid(
            el("section", "send-part")
                .kid(lands_on)
                .kid(text_line(say(TravelLabel::YourName), name))
                .kid(el("p", "quietly").text(say(TravelLabel::NameHint))),
        )
        .kid(ways(desk, packed))
}

/// A box with its name; `on` says whether it is ticked.
fn tick(
    name: &str,
    on: impl Fn() -> bool + 'static,
    off: impl Fn() -> bool + 'static,
    told: impl Fn(bool) + 'static,
) -> El {
    let input = el("input", "")
        .set("type", "checkbox")
        .holds("checked", on)
        .holds("disabled", off)
        .on("change", move |event| told(ticked(&event)));
    el("label", "tick").kid(input).kid(el("span", "").text(name))
}

fn what_goes(goes: Goes) -> El {
    let desk = goes.desk;
    let say = move |label: TravelLabel| desk.label(label);
    let mut list = el("fieldset", "send-ticks").kid(el("legend", "rule").text(say(TravelLabel::Goes)));
    for &part in Part::ALL {
        let on = move || goes.parts.with(|parts| parts.contains(&part)) && (goes.costs.get() || !part.is_costs());
        let off = move || part.is_costs() && !goes.costs.get();
        list = list.kid(tick(desk.label(part), on, off, move |on| {
            goes.parts.update(|parts| {
                parts.retain(|there| *there != part);
                if on {
                    parts.push(part);
                }
            });
        }));
    }
    let costs = tick(say(TravelLabel::Costs), move || goes.costs.get(), || false, move |on| goes.costs.set(on));
    list.kid(el("div", "send-costs").kid(costs).kid(el("p", "quietly").text(say(TravelLabel::CostsHint))))
}

/// What stays on this device, said.
fn stays(goes: Goes) -> El {
    let desk = goes.desk;
    let say = move |label: TravelLabel| desk.label(label);
    let left = move || {
        let going = goes.going();
        let mut left: Vec<&str> = Part::ALL
            .iter()
            .filter(|part| !going.contains(part) && !part.is_costs())
            .map(|part| desk.label(*part))
            .collect();
        let costs = goes.costs.get();
        left.push(say(if costs { TravelLabel::CostsGo } else { TravelLabel::CostsStay }));
        left.push(say(TravelLabel::ListStays));
        left.push(say(TravelLabel::PhotosStay));
        left.into_iter().map(|text| el("li", "").text(text)).collect::<Vec<_>>()
    };
    el("section", "send-part")
        .set("aria-labelledby", "stays")
        .kid(el("h2", "rule").set("id", "stays").text(say(TravelLabel::StaysHere)))
        .kid(el("ul", "send-stays").live(left))
}
