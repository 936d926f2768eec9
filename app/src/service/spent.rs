//! Behind the front answer: when the outlet reaches its limit, and whether media is lost; with charts and their tables.

use bedwright_calc::quantity::cubic_metres;
use bedwright_job::care::card::Card;
use bedwright_job::care::forecast::{Axis, Tested};
use bedwright_job::entry::Unit;
use bedwright_job::words::CareLabel;

use super::page::Look;
use crate::parts::chart::{Chart, chart};
use crate::parts::how::fold;
use crate::parts::live::{El, el};

/// Points of a curve.
const FINE: u32 = 60;

/// When the outlet reaches its limit.
pub(super) fn spent(look: Look) -> El {
    let manner = look.desk.manner();
    let sentence = move || look.with(|card| manner.forecast(&card.forecast));
    let behind = move || {
        look.with(|card| {
            let mut all = vec![drawn(look, card), facts(look, card)];
            all.push(table(look, card));
            Some(all)
        })
        .unwrap_or_default()
    };
    let any = move || look.with(|card| !card.forecast.tests.is_empty());
    el("section", "card-part")
        .set("aria-labelledby", "spent")
        .kid(el("h2", "rule").set("id", "spent").text(look.say(CareLabel::Forecast)))
        .kid(el("p", "").says(sentence))
        .when(any, move || vec![fold(look.say(CareLabel::ForecastHow), behind)])
}

fn drawn(look: Look, card: &Card) -> El {
    let manner = look.desk.manner();
    let forecast = &card.forecast;
    // In the person's own unit, so that the axis has round numbers.
    let unit = match forecast.axis {
        Axis::Days => 1.0,
        Axis::Water if manner.metric => 1.0,
        Axis::Water => Unit::UsGallon.factor(),
    };
    let points: Vec<(f64, f64)> =
        forecast.tests.iter().filter_map(|test| Some((test.at / unit, test.share?))).collect();
    let mut curve = Vec::new();
    let (mut limit, mut upright) = (None, Vec::new());
    // A curve whose places are weighed by the inlet belongs to another axis than the tests.
    if let Ok(reached) = forecast.reached.as_ref()
        && !forecast.weighed
    {
        let last = points.last().map_or(0.0, |(x, _)| *x).max(reached.at.high / unit);
        curve = (0..=FINE)
            .map(|step| last * f64::from(step) / f64::from(FINE))
            .map(|place| (place, reached.curve.share_at(place * unit)))
            .collect();
        limit = Some(reached.share);
        upright = [(reached.at.low, false), (reached.at.likely, true), (reached.at.high, false)]
            .map(|(place, whole)| (place / unit, whole))
            .to_vec();
    }
    let across = match forecast.axis {
        Axis::Days => look.say(CareLabel::DaysOfLife).to_owned(),
        Axis::Water => [look.say(CareLabel::WaterOfLife), if manner.metric { ", m³" } else { ", gal" }].concat(),
    };
    chart(&Chart {
        name: look.say(CareLabel::ChartOutlet).to_owned(),
        across,
        up: look.say(CareLabel::ChartOutlet).to_owned(),
        points,
        curve,
        limit,
        limit_name: "",
        upright,
        place: Box::new(move |place| manner.decimal(place, 0)),
        height: Box::new(move |height, decimals| manner.fixed(height, decimals)),
    })
}

/// The fit in figures.
fn facts(look: Look, card: &Card) -> El {
    let manner = look.desk.manner();
    let mut lines: Vec<String> = Vec::new();
    let forecast = &card.forecast;
    if let Ok(reached) = &forecast.reached {
        let front = reached.curve.front;
        let place = |at: f64| match forecast.axis {
            Axis::Days => [&manner.decimal(at, 0), " d"].concat(),
            Axis::Water => manner.water(cubic_metres(at)),
        };
        let limit = if reached.typed { CareLabel::LimitTyped } else { CareLabel::LimitAssumed };
        lines.push([&manner.percent(reached.share), " · ", look.say(limit)].concat());
        for (label, at) in [
            (CareLabel::Earliest, reached.at.low),
            (CareLabel::Likely, reached.at.likely),
            (CareLabel::Latest, reached.at.high),
        ] {
            lines.push(manner.named(look.say(label), &place(at)));
        }
        for (count, label) in [
            (front.used, CareLabel::TestsUsed),
            (front.nothing, CareLabel::TestsNothing),
            (front.whole, CareLabel::TestsWhole),
        ] {
            if count > 0 {
                lines.push([&count.to_string(), " ", look.say(label)].concat());
            }
        }
        lines.push(manner.named(look.say(CareLabel::ScatterOf), &manner.decimal(reached.curve.spread, 3)));
        if forecast.axis == Axis::Water {
            lines.push(look.say(CareLabel::RateOfLate).to_owned());
        }
        lines.push(look.say(CareLabel::IntervalCaution).to_owned());
    }
    if forecast.weighed {
        lines.push(look.say(CareLabel::WeighedByInlet).to_owned());
    }
    if forecast.tests.iter().any(|test| !test.own_inlet) {
        lines.push(look.say(CareLabel::InletOfOther).to_owned());
    }
    el("ul", "card-lines").kids(lines.iter().map(|line| el("li", "").text(line)).collect())
}

fn table(look: Look, card: &Card) -> El {
    let manner = look.desk.manner();
    let cell = |text: String| el("td", "figure").text(&text);
    let row = |test: &Tested| {
        let at = match card.forecast.axis {
            Axis::Days => manner.decimal(test.at, 0),
            Axis::Water => manner.water(cubic_metres(test.at)),
        };
        let outlet = [if test.outlet.below { "<" } else { "" }, &manner.decimal(test.outlet.value, 3)].concat();
        let number = |value: Option<f64>| value.map_or_else(|| "–".to_owned(), |value| manner.decimal(value, 3));
        el("tr", "")
            .kid(el("th", "figure").set("scope", "row").text(&test.day.text()))
            .kid(cell(at))
            .kid(cell(number(test.inlet)))
            .kid(cell(outlet))
            .kid(cell(number(test.share)))
    };
    let head = [CareLabel::Day, CareLabel::WaterOfLife, CareLabel::Inlet, CareLabel::Outlet, CareLabel::Share];
    let head = head.map(|label| match (label, card.forecast.axis) {
        (CareLabel::WaterOfLife, Axis::Days) => CareLabel::DaysOfLife,
        (label, _) => label,
    });
    el("div", "card-table").kid(
        el("table", "plain-table")
            .kid(el("caption", "").text(look.say(CareLabel::ChartTable)))
            .kid(el("thead", "").kid(
                el("tr", "").kids(
                    head.map(|label| el("th", "").set("scope", "col").text(look.say(label))).into_iter().collect(),
                ),
            ))
            .kid(el("tbody", "").kids(card.forecast.tests.iter().map(row).collect())),
    )
}

/// Whether media is lost.
pub(super) fn surface(look: Look) -> El {
    let manner = look.desk.manner();
    let lines = move || {
        look.with(|card| {
            let Some(compared) = &card.surface.compared else {
                return vec![look.say(CareLabel::NoTwoTapes).to_owned()];
            };
            let mut lines = vec![manner.media_loss(compared)];
            if let Ok(loss) = &compared.loss {
                let settling = loss.length.inputs.last();
                lines.extend(settling.map(|input| {
                    let share = manner.percent(input.amount.si());
                    [
                        look.say(CareLabel::SettlingTaken),
                        manner.colon(),
                        &share,
                        " (",
                        &manner.source(input.source),
                        ")",
                    ]
                    .concat()
                }));
            }
            lines
        })
    };
    el("section", "card-part")
        .set("aria-labelledby", "surface")
        .kid(el("h2", "rule").set("id", "surface").text(look.say(CareLabel::MediaSurface)))
        .kid(el("div", "").live(move || lines().iter().map(|line| el("p", "").text(line)).collect()))
}
