//! A small chart: points, a curve, a limit, lines across a day. Its numbers stand in a table beside it, elsewhere.

use bedwright_job::care::chart::Axis;

use super::live::{El, svg};

/// What a chart shows.
pub struct Chart {
    /// What it is, for who can't see it.
    pub name: String,
    /// What runs from left to right.
    pub across: String,
    /// What runs upward.
    pub up: String,
    /// The points.
    pub points: Vec<(f64, f64)>,
    /// Points of the curve, close together; empty where there is none.
    pub curve: Vec<(f64, f64)>,
    /// A height that is drawn as a broken line.
    pub limit: Option<f64>,
    /// What stands at that line; nothing where the text beside the chart says it.
    pub limit_name: &'static str,
    /// Places that are drawn as upright lines; the middle one whole, the others broken.
    pub upright: Vec<(f64, bool)>,
    /// How a place is written under the axis.
    pub place: Box<dyn Fn(f64) -> String>,
    /// How a height is written beside the axis.
    pub height: Box<dyn Fn(f64, usize) -> String>,
}

const WIDTH: f64 = 360.0;
const HEIGHT: f64 = 210.0;
const LEFT: f64 = 44.0;
const RIGHT: f64 = 12.0;
const TOP: f64 = 22.0;
const BOTTOM: f64 = 42.0;

fn number(value: f64) -> String {
    bedwright_job::decimal::to_places(value, 1)
}

fn line(class: &str, (x1, y1): (f64, f64), (x2, y2): (f64, f64)) -> El {
    svg("line", class).set("x1", &number(x1)).set("y1", &number(y1)).set("x2", &number(x2)).set("y2", &number(y2))
}

fn text(class: &str, (x, y): (f64, f64), anchor: &str, text: &str) -> El {
    svg("text", class).set("x", &number(x)).set("y", &number(y)).set("text-anchor", anchor).text(text)
}

/// The chart on the page.
pub fn chart(chart: &Chart) -> El {
    let all = || chart.points.iter().chain(&chart.curve);
    let uprights = chart.upright.iter().map(|(place, _)| *place);
    let across = Axis::holding(all().map(|(x, _)| *x).chain(uprights), 4);
    let up = Axis::holding(all().map(|(_, y)| *y).chain(chart.limit).chain([0.0]), 5);
    let x = |place: f64| LEFT + across.share(place) * (WIDTH - LEFT - RIGHT);
    let y = |height: f64| HEIGHT - BOTTOM - up.share(height) * (HEIGHT - TOP - BOTTOM);
    let at = |(place, height): (f64, f64)| (x(place), y(height));
    let decimals = up.decimals();
    let mut parts = Vec::new();
    for mark in &up.marks {
        parts.push(line("chart-grid", (LEFT, y(*mark)), (WIDTH - RIGHT, y(*mark))));
        parts.push(text("chart-number", (LEFT - 5.0, y(*mark) + 4.0), "end", &(chart.height)(*mark, decimals)));
    }
    for (place, mark) in across.marks.iter().enumerate() {
        parts.push(line("chart-axis", (x(*mark), HEIGHT - BOTTOM), (x(*mark), HEIGHT - BOTTOM + 4.0)));
        let anchor = if place == 0 {
            "start"
        } else if place + 1 == across.marks.len() {
            "end"
        } else {
            "middle"
        };
        parts.push(text("chart-number", (x(*mark), HEIGHT - BOTTOM + 17.0), anchor, &(chart.place)(*mark)));
    }
    parts.push(line("chart-axis", (LEFT, HEIGHT - BOTTOM), (WIDTH - RIGHT, HEIGHT - BOTTOM)));
    parts.push(line("chart-axis", (LEFT, TOP), (LEFT, HEIGHT - BOTTOM)));
    parts.push(text("chart-name", (WIDTH - RIGHT, HEIGHT - 6.0), "end", &chart.across));
    parts.push(text("chart-name", (2.0, 12.0), "start", &chart.up));
    if let Some(limit) = chart.limit {
        parts.push(line("chart-limit", (LEFT, y(limit)), (WIDTH - RIGHT, y(limit))));
        parts.push(text("chart-name", (WIDTH - RIGHT, y(limit) - 4.0), "end", chart.limit_name));
    }
    for (place, whole) in &chart.upright {
        let class = if *whole { "chart-likely" } else { "chart-end" };
        parts.push(line(class, (x(*place), TOP), (x(*place), HEIGHT - BOTTOM)));
    }
    if !chart.curve.is_empty() {
        let points: Vec<String> =
            chart.curve.iter().map(|point| at(*point)).map(|(x, y)| [&number(x), ",", &number(y)].concat()).collect();
        parts.push(svg("polyline", "chart-curve").set("points", &points.join(" ")));
    }
    for point in &chart.points {
        let (x, y) = at(*point);
        parts.push(svg("circle", "chart-point").set("cx", &number(x)).set("cy", &number(y)).set("r", "3"));
    }
    svg("svg", "chart").set("viewBox", "0 0 360 210").set("role", "img").set("aria-label", &chart.name).kids(parts)
}
