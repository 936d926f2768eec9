//! What was found: cards of what suits, the best first; what doesn't, folded, each with what it misses.

use bedwright_calc::hydraulics::{Candidate, Found};
use bedwright_calc::quantity::{Mark, Verdict};
use bedwright_job::answers::search::made;
use bedwright_job::words::Manner;
use bedwright_job::words::label::SearchLabel;

use super::page::Answers;
use crate::desk::{Desk, new_id};
use crate::parts::live::{El, button, el};
use crate::parts::signal::Held;
use crate::parts::verdicts::{Sign, sign, verdict_lines};
use crate::route::Route;

/// So many are shown before the rest is folded.
const FIRST: usize = 4;

/// What was found.
pub(super) fn found(desk: Desk, answers: Answers) -> El {
    let told = move || {
        answers.get().map_or_else(String::new, |answers| match (&answers.found, answers.problem()) {
            (_, Some(problem)) => desk.manner().problem(problem),
            (None | Some(Err(_)), _) => desk.label(SearchLabel::Waits).to_owned(),
            (Some(Ok(found)), _) if found.suit.is_empty() => desk.label(SearchLabel::NoneSuits).to_owned(),
            _ => String::new(),
        })
    };
    let folds = Folds { more: Held::new(false), miss: Held::new(false) };
    let cards = move || {
        let found = answers.get();
        found.and_then(|answers| Some(shown(desk, answers.found.as_ref()?.as_ref().ok()?, folds))).unwrap_or_default()
    };
    el("section", "finder-found")
        .set("aria-labelledby", "finder-suit")
        .kid(el("h2", "rule").set("id", "finder-suit").text(desk.label(SearchLabel::Suit)))
        .kid(el("p", "finder-told").set("role", "status").says(told))
        .live(cards)
}

/// Which folds are open: they stay so while what was found changes.
#[derive(Clone, Copy)]
struct Folds {
    more: Held<bool>,
    miss: Held<bool>,
}

fn shown(desk: Desk, found: &Found, folds: Folds) -> Vec<El> {
    let list = |cards: &[Candidate]| el("ul", "finder-list").kids(cards.iter().map(|one| card(desk, one)).collect());
    let (first, rest) = found.suit.split_at(found.suit.len().min(FIRST));
    let mut parts = vec![list(first)];
    if !rest.is_empty() {
        parts.push(kept_fold(desk.label(SearchLabel::MoreThatSuit), rest.len(), folds.more).kid(list(rest)));
    }
    let misses = found.miss.len() + found.too_small.len();
    if misses > 0 {
        let manner = desk.manner();
        let missed = found.miss.iter().map(|one| miss(desk, one));
        let small = found.too_small.iter().map(|(size, why)| el("li", "").text(&manner.too_small(size, why)));
        let list = el("ul", "finder-misses").kids(missed.chain(small).collect());
        parts.push(kept_fold(desk.label(SearchLabel::Miss), misses, folds.miss).kid(list));
    }
    parts
}

/// A fold that remembers whether it was opened.
fn kept_fold(name: &str, count: usize, open: Held<bool>) -> El {
    let fold = fold(name, count);
    let fold = if open.get_untracked() { fold.set("open", "") } else { fold };
    let node = fold.node().clone();
    fold.on("toggle", move |_| open.set(node.has_attribute("open")))
}

fn fold(name: &str, count: usize) -> El {
    let head = el("span", "how-name").text(name).text(": ").text(&count.to_string());
    el("details", "how").kid(el("summary", "").kid(head))
}

/// What a candidate is called: its size and how many.
fn name(manner: Manner, one: &Candidate, desk: Desk) -> String {
    let arrangement = desk.of_job(|job| Some(job.search.body.arrangement));
    let many = arrangement.map(|arrangement| manner.vessels(one.vessels, arrangement)).unwrap_or_default();
    [&manner.nominal(one.nominal), " · ", &many].concat()
}

fn sign_of(mark: Mark) -> Sign {
    match mark {
        Mark::Fine => Sign::Fine,
        Mark::SetOnSite => Sign::SetOnSite,
        Mark::Caution => Sign::Caution,
        Mark::Stop => Sign::Stop,
    }
}

fn card(desk: Desk, one: &Candidate) -> El {
    let manner = desk.manner();
    let name = name(manner, one, desk);
    let make = {
        let one = one.clone();
        move || {
            let Some(job) = desk.open_now() else { return };
            let ids = [new_id(), new_id(), new_id()];
            let vessel = ids[0].clone();
            desk.edit(made(&job, &one, ids, manner));
            desk.go(&Route::Vessel(job.id.clone(), vessel));
        }
    };
    let say = [desk.label(SearchLabel::Make), ": ", &name].concat();
    el("li", "finder-card")
        .kid(
            el("div", "finder-head")
                .kid(sign(sign_of(one.mark)))
                .kid(el("h3", "").text(&name))
                .kid(el("span", "finder-mark").text(manner.mark(one.mark))),
        )
        .kid(el("dl", "facts").kids(facts(desk, one)))
        .kids(if one.margins.is_empty() { Vec::new() } else { vec![margins(desk, one)] })
        .kid(judged(desk, one))
        .kid(button("primary", desk.label(SearchLabel::Make), make).set("aria-label", &say))
}

/// A name and what it is.
fn fact(name: &str, value: &str) -> El {
    el("div", "").kid(el("dt", "").text(name)).kid(el("dd", "figure").text(value))
}

fn facts(desk: Desk, one: &Candidate) -> Vec<El> {
    let manner = desk.manner();
    let say = |label: SearchLabel| desk.label(label);
    let count = |packs: f64| manner.decimal(packs, 0);
    let mut facts = Vec::new();
    let container = one.layers.last().map(|layer| manner.container(layer.pack.container, one.packs_total.value as u32));
    let container = container.unwrap_or(say(SearchLabel::Packs));
    let mut bags = count(one.packs.value);
    if one.vessels > 1 {
        bags = [
            &bags,
            " ",
            say(SearchLabel::EachVessel),
            ", ",
            &count(one.packs_total.value),
            " ",
            say(SearchLabel::Together),
        ]
        .concat();
    }
    facts.push(fact(container, &bags));
    facts.push(fact(say(SearchLabel::FlowPerArea), &manner.flow_per_area(one.usual.flow_per_area.value)));
    let mut time = manner.amount(one.usual.contact_time.value.into());
    if let Some(pair) = &one.usual.contact_time_pair {
        time = [&time, ", ", &manner.amount(pair.value.into()), " ", say(SearchLabel::ContactTimePair)].concat();
    }
    facts.push(fact(say(SearchLabel::ContactTime), &time));
    if let Some(setting) = &one.flow_control {
        facts.push(fact(say(SearchLabel::FlowControl), &manner.flow_control(setting)));
        if let (Some(cold), Some(warm)) = (setting.cold.likely, setting.warm.likely) {
            facts.push(fact(
                say(SearchLabel::Expansion),
                &[&manner.percent(cold), " – ", &manner.percent(warm)].concat(),
            ));
        }
    }
    facts.push(fact(say(SearchLabel::Height), &manner.length(one.height_needed.value)));
    if let Ok(operating) = &one.weights.operating {
        let mass = [&manner.mass(operating.value), " ", say(SearchLabel::WithoutVessel)].concat();
        facts.push(fact(say(SearchLabel::Operating), &mass));
    }
    facts
}

/// What few ask for first.
fn more_facts(desk: Desk, one: &Candidate) -> Vec<El> {
    let manner = desk.manner();
    let say = |label: SearchLabel| desk.label(label);
    let mut facts = Vec::new();
    if let Some(washing) = &one.while_washing {
        let speed = manner.flow_per_area(washing.flow_per_area.value);
        let time = manner.amount(washing.contact_time.value.into());
        facts.push(fact(say(SearchLabel::WhileWashing), &[&speed, ", ", &time].concat()));
    }
    facts.push(fact(say(SearchLabel::Loss), &manner.amount(one.usual.loss.value.into())));
    let share = one.freeboard.ratio.as_ref().map(|ratio| [" = ", &manner.percent(ratio.value)].concat());
    let freeboard = [&manner.tape(one.freeboard.length.value), share.as_deref().unwrap_or_default()].concat();
    facts.push(fact(say(SearchLabel::Freeboard), &freeboard));
    facts
}

/// How far each rule of the purpose is met, in a line.
fn margins(desk: Desk, one: &Candidate) -> El {
    let manner = desk.manner();
    let margins: Vec<String> = one.margins.iter().map(|margin| manner.margin(margin)).collect();
    el("p", "finder-told").text(&[desk.label(SearchLabel::Spare), " ", &margins.join("; ")].concat())
}

/// The names of a candidate's layers, bottom first.
fn layer_names(manner: Manner, one: &Candidate) -> Vec<String> {
    one.layers.iter().map(|layer| manner.material(&layer.material.id)).collect()
}

fn judged(desk: Desk, one: &Candidate) -> El {
    let manner = desk.manner();
    let names = layer_names(manner, one);
    let said = one
        .verdicts
        .iter()
        .chain(&one.loading)
        .map(|verdict: &Verdict| (sign_of(verdict.mark), manner.verdict(verdict, &names)));
    let said: Vec<_> = said.collect();
    fold(desk.label(SearchLabel::Judged), said.len())
        .kid(el("dl", "facts").kids(more_facts(desk, one)))
        .kid(verdict_lines(&said))
}

fn miss(desk: Desk, one: &Candidate) -> El {
    let manner = desk.manner();
    let names = layer_names(manner, one);
    let misses = one.misses().map(|verdict| {
        let words = manner.verdict(verdict, &names);
        let said = el("span", "")
            .text(&[&words.headline, ". ", &words.reason, " "].concat())
            .kid(el("span", "verdict-remedy").text(&words.remedies.join(" ")));
        el("p", "finder-miss").kid(sign(sign_of(verdict.mark))).kid(said)
    });
    el("li", "").kid(el("h3", "").text(&name(manner, one, desk))).kids(misses.collect())
}
