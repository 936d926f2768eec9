//! Water through the bed and pressure lost, from visit to visit: two charts and the table behind them.

use bedwright_calc::quantity::Pressure;
use bedwright_job::care::card::Card;
use bedwright_job::care::seen::Seen;
use bedwright_job::entry::Unit;
use bedwright_job::words::{CardLabel, CareLabel};

use super::page::Look;
use crate::parts::chart::{Chart, chart};
use crate::parts::how::fold;
use crate::parts::live::{El, el};

/// The section; nothing while no meter and no pressure was read.
pub(super) fn over_time(look: Look) -> El {
    let desk = look.desk;
    let any = move || look.with(|card| !card.seen.is_empty());
    let inside = move || {
        let charts = move || look.with(|card| Some(charts(look, card, look.clean.get()))).unwrap_or_default();
        let table = move || look.with(|card| Some(vec![table(look, card)])).unwrap_or_default();
        vec![
            el("section", "card-part")
                .set("aria-labelledby", "over-time")
                .kid(el("h2", "rule").set("id", "over-time").text(desk.label(CardLabel::OverTime)))
                .kid(el("div", "card-charts").live(charts))
                .kid(fold(desk.label(CardLabel::BehindCharts), table)),
        ]
    };
    el("div", "").when(any, inside)
}

/// Readings of one kind, each with its day.
struct Run {
    points: Vec<(f64, f64)>,
    first: String,
    since: String,
    last: String,
    day: String,
}

fn run(card: &Card, unit: Unit, of: impl Fn(&Seen) -> Option<f64>, said: impl Fn(f64) -> String) -> Option<Run> {
    let read = || card.seen.iter().filter_map(|seen| Some((seen, of(seen)?)));
    let (first, last) = (read().next()?, read().last()?);
    Some(Run {
        points: read().map(|(seen, si)| (seen.age as f64, unit.from_si(si))).collect(),
        first: said(first.1),
        since: first.0.day.text(),
        last: said(last.1),
        day: last.0.day.text(),
    })
}

fn charts(look: Look, card: &Card, clean: Option<Pressure>) -> Vec<El> {
    let manner = look.desk.manner();
    let (volume, pressure) = if manner.metric { (Unit::CubicMetre, Unit::Bar) } else { (Unit::UsGallon, Unit::Psi) };
    let mut parts = Vec::new();
    let start = card.seen.iter().find_map(|seen| seen.through).map_or(0.0, |through| through.value);
    let water = run(
        card,
        volume,
        |seen| seen.through.map(|through| through.value),
        |si| manner.water(bedwright_calc::quantity::cubic_metres(si - start)),
    );
    // One reading says nothing of what went through.
    if let Some(water) = water.filter(|water| water.points.len() > 1) {
        let said = manner.sentence(CardLabel::WaterSaid, &[("water", &water.last), ("day", &water.day)]);
        parts.push(figure(look, CardLabel::WaterByVisit, water.points, volume, None, &[said]));
    }
    let lost = run(
        card,
        pressure,
        |seen| seen.lost().map(|lost| lost.value),
        |si| manner.pressure(bedwright_calc::quantity::pascals(si)),
    );
    if let Some(lost) = lost {
        let places = [("first", lost.first.as_str()), ("since", &lost.since), ("last", &lost.last), ("day", &lost.day)];
        let mut said = vec![manner.sentence(CardLabel::LostSaid, &places)];
        if let Some(clean) = clean {
            said.push(manner.sentence(CardLabel::CleanSaid, &[("loss", &manner.pressure(clean))]));
        }
        said.push(manner.label(CardLabel::SameFlow).to_owned());
        let clean = clean.map(|clean| pressure.from_si(clean.value));
        parts.push(figure(look, CardLabel::LostByVisit, lost.points, pressure, clean, &said));
    }
    if let Some(run) = &card.run {
        let name = el("h3", "").text(manner.label(CardLabel::RunByDrop));
        parts.push(el("div", "card-run").kid(name).kid(el("p", "").text(&manner.seen_run(run))));
    }
    parts
}

/// A chart with its name over it and what it says under it.
fn figure(look: Look, name: CardLabel, points: Vec<(f64, f64)>, unit: Unit, clean: Option<f64>, said: &[String]) -> El {
    let manner = look.desk.manner();
    let title = manner.label(name);
    let drawn = chart(&Chart {
        name: [title, ". ", &said.join(" ")].concat(),
        across: manner.label(CardLabel::DaysSince).to_owned(),
        up: [title, ", ", manner.unit(unit)].concat(),
        curve: points.clone(),
        points,
        limit: clean,
        limit_name: manner.label(CardLabel::Clean),
        upright: Vec::new(),
        place: Box::new(move |place| manner.decimal(place, 0)),
        height: Box::new(move |height, decimals| manner.fixed(height, decimals)),
    });
    el("figure", "card-chart")
        .kid(drawn)
        .kid(el("figcaption", "").kids(said.iter().map(|line| el("p", "quietly").text(line)).collect()))
}

fn table(look: Look, card: &Card) -> El {
    let manner = look.desk.manner();
    let cell = |text: String| el("td", "figure").text(&text);
    let none = || "–".to_owned();
    let row = |seen: &Seen| {
        let meter = seen
            .meter
            .as_ref()
            .map(|entry| entry.understood().map_or_else(|_| entry.text.clone(), |read| manner.echo(&read)));
        let through = match seen.through {
            Some(through) => manner.water(through),
            None if seen.left_out => manner.label(CardLabel::LeftOut).to_owned(),
            None => none(),
        };
        let pressure = |read: Option<Pressure>| read.map_or_else(none, |read| manner.pressure(read));
        el("tr", "")
            .kid(el("th", "figure").set("scope", "row").text(&seen.day.text()))
            .kid(cell(meter.unwrap_or_else(none)))
            .kid(cell(through))
            .kid(cell(pressure(seen.before)))
            .kid(cell(pressure(seen.after)))
            .kid(cell(pressure(seen.lost())))
    };
    let heads = [
        manner.label(CareLabel::Day),
        manner.label(CareLabel::Meter),
        manner.label(CardLabel::ThroughBed),
        manner.label(CareLabel::PressureIn),
        manner.label(CareLabel::PressureOut),
        manner.label(CardLabel::Lost),
    ];
    let head = |text: &&str| el("th", "").set("scope", "col").text(text);
    el("div", "card-table")
        .set("tabindex", "0")
        .set("role", "region")
        .set("aria-label", manner.label(CardLabel::BehindCharts))
        .kid(
            el("table", "plain-table")
                .kid(el("thead", "").kid(el("tr", "").kids(heads.iter().map(head).collect())))
                .kid(el("tbody", "").kids(card.seen.iter().map(row).collect())),
        )
}
