//! The front answer, what is asked about, and the bed.

use bedwright_calc::quantity::cubic_metres;
use bedwright_job::care::card::CareMark;
use bedwright_job::day::Day;
use bedwright_job::words::CareLabel;

use super::page::{Look, today_day};
use crate::parts::live::{El, el};

/// How the bed stands, why, and when something is due.
pub(super) fn front(look: Look) -> El {
    let manner = look.desk.manner();
    let class = |mark: CareMark| match mark {
        CareMark::Fine => "front front-fine",
        CareMark::NextVisit => "front front-visit",
        CareMark::OrderNow => "front front-order",
    };
    let due = move |card: &bedwright_job::care::card::Card| {
        let fact = |label: CareLabel, day: Day| {
            el("div", "").kid(el("dt", "").text(look.say(label))).kid(el("dd", "figure").text(&day.text()))
        };
        let mut facts = vec![fact(CareLabel::NextVisitDue, card.next_visit)];
        if let Some(day) = card.new_bed {
            facts.insert(0, fact(CareLabel::NewBedDue, day.max(today_day())));
        }
        el("dl", "front-due").kids(facts)
    };
    el("section", "").set("aria-live", "polite").live(move || {
        vec![
            look.with(|card| {
                Some(
                    el("div", class(card.mark))
                        .kid(
                            el("p", "front-mark")
                                .kid(
                                    el("span", "front-sign")
                                        .set("aria-hidden", "true")
                                        .text(manner.care_sign(card.mark)),
                                )
                                .kid(el("strong", "").text(manner.care_mark(card.mark))),
                        )
                        .kid(el("p", "front-reason").text(&manner.care_reason(&card.reason)))
                        .kid(due(card)),
                )
            })
            .unwrap_or_else(|| el("p", "")),
        ]
    })
}

/// What contradicts something.
pub(super) fn questions(look: Look) -> El {
    let manner = look.desk.manner();
    let any = move || look.with(|card| !card.questions.is_empty());
    el("div", "").when(any, move || {
        vec![
            el("section", "card-part")
                .set("aria-labelledby", "asked")
                .kid(el("h2", "rule").set("id", "asked").text(look.say(CareLabel::Asked)))
                .kid(el("ul", "asked").live(move || {
                    let lines =
                        look.with(|card| card.questions.iter().map(|asked| manner.question(asked)).collect::<Vec<_>>());
                    lines.iter().map(|line| el("li", "").text("? ").text(line)).collect()
                })),
        ]
    })
}

/// When the bed was put in, what went through it, what was assumed of it.
pub(super) fn bed(look: Look) -> El {
    let manner = look.desk.manner();
    let facts = move || {
        look.with(|card| {
            let mut facts: Vec<(CareLabel, String)> = Vec::new();
            let unknown = look.say(CareLabel::BedUnknown);
            facts.push((CareLabel::BedBegan, card.bed.begun.map_or_else(|| unknown.to_owned(), Day::text)));
            let none = || look.say(CareLabel::NoMeter).to_owned();
            facts.push((
                CareLabel::Water,
                card.water.filter(|water| *water > 0.0).map_or_else(none, |water| manner.water(cubic_metres(water))),
            ));
            if let Some(volumes) = card.bed_volumes.filter(|volumes| *volumes > 0.0) {
                facts.push((CareLabel::BedVolumes, manner.decimal(volumes, 0)));
            }
            facts.push((CareLabel::AssumedBefore, manner.assumed_life(card)));
            let day = |day: Option<Day>| day.map_or_else(|| "–".to_owned(), Day::text);
            let before: Vec<String> =
                card.before.iter().map(|(from, to)| [&day(*from), " – ", &day(*to)].concat()).collect();
            if !before.is_empty() {
                facts.push((CareLabel::EarlierBeds, before.join(", ")));
            }
            facts
        })
    };
    el("section", "card-part")
        .set("aria-labelledby", "bed")
        .kid(el("h2", "rule").set("id", "bed").text(look.say(CareLabel::Bed)))
        .kid(el("dl", "card-facts").live(move || {
            let fact = |(label, value): &(CareLabel, String)| {
                el("div", "").kid(el("dt", "").text(look.say(*label))).kid(el("dd", "").text(value))
            };
            facts().iter().map(fact).collect()
        }))
}
