//! The backwash window: texts, figures, and what is drawn where.

use bedwright_calc::hydraulics::{FlowControl, WindowRow};
use bedwright_calc::quantity::{Mark, VolumeRate, cubic_metres_per_second, kelvins};
use proptest::prelude::*;

use crate::drawing::{Class, Extent, Form, Geometry, WindowChart, WindowPicture, backwash_window, svg_text};
use crate::words::Manner;

/// A US gallon of 231 cubic inches a minute.
const GPM: f64 = 231.0 * 0.0254 * 0.0254 * 0.0254 / 60.0;

const PHONE: Form = Form::Full { width: 358.0, height: 900.0 };

fn gpm(value: f64) -> VolumeRate {
    cubic_metres_per_second(value * GPM)
}

fn row(celsius: f64, lifts: [f64; 3], stays: [f64; 3], carries: f64) -> WindowRow {
    let some = |x: f64| (x > 0.0).then(|| gpm(x));
    WindowRow {
        temperature: kelvins(273.15 + celsius),
        lifts_from: lifts.map(some),
        stays_to: stays.map(some),
        carries_from: some(carries),
    }
}

/// Rows from 5 to 25 °C; every line rises by a share.
fn rows(count: u32, lifts: f64, stays: f64, rise: f64) -> Vec<WindowRow> {
    let row_at = |k: u32| {
        let share = f64::from(k) / f64::from(count - 1);
        let by = 1.0 + rise * share;
        let spread = |x: f64| [1.4 * x * by, x * by, 0.75 * x * by];
        row(5.0 + 20.0 * share, spread(lifts), spread(stays), 26.0 * by)
    };
    (0..count).map(row_at).collect()
}

fn chart(rows: &[WindowRow]) -> WindowChart<'_> {
    WindowChart {
        rows,
        available: Some(gpm(9.0)),
        sizes: FlowControl::all(),
        chosen: Some((gpm(7.0), Mark::SetOnSite)),
        site: Some((kelvins(278.15), kelvins(298.15))),
    }
}

fn drawn(chart: &WindowChart) -> WindowPicture {
    backwash_window(chart, &Manner::default(), PHONE)
}

fn texts(picture: &WindowPicture) -> Vec<(Extent, Class, String)> {
    let shapes = picture.drawing.shapes.iter();
    shapes
        .filter_map(|shape| match &shape.geometry {
            Geometry::Text { text, .. } => Some((shape.text_extent()?, shape.class, text.clone())),
            _ => None,
        })
        .collect()
}

fn says(picture: &WindowPicture, wanted: &str) -> bool {
    texts(picture).iter().any(|(_, _, text)| text == wanted)
}

fn has(picture: &WindowPicture, class: Class) -> bool {
    picture.drawing.shapes.iter().any(|shape| shape.class == class)
}

/// Every number of a path's notation.
fn numbers(d: &str) -> Vec<f64> {
    let parts = d.split(|c: char| c.is_ascii_alphabetic() || c == ' ').filter(|part| !part.is_empty());
    // "5.5-5.5" is two numbers.
    parts
        .flat_map(|part| part.split_inclusive('-'))
        .filter_map(|part| part.trim_end_matches('-').parse().ok())
        .collect()
}

fn fault(picture: &WindowPicture) -> Option<String> {
    let (width, height) = (picture.drawing.width, picture.drawing.height);
    let all = texts(picture);
    for (k, (room, _, text)) in all.iter().enumerate() {
        if room.left < -0.01 || room.top < -0.01 || room.right > width + 0.01 || room.bottom > height + 0.01 {
            return Some(format!("“{text}” {room:?} leaves {width} × {height}"));
        }
        for (other, _, second) in &all[k + 1..] {
            if room.meets(other) {
                return Some(format!("“{text}” {room:?} meets “{second}” {other:?}"));
            }
        }
    }
    let svg = svg_text(&picture.drawing);
    if svg.contains("NaN") || svg.contains("inf") {
        return Some("a coordinate is none".to_owned());
    }
    for shape in &picture.drawing.shapes {
        let places = match &shape.geometry {
            Geometry::Path { d } => numbers(d),
            Geometry::Line { x1, y1, x2, y2 } => vec![*x1, *y1, *x2, *y2],
            Geometry::Circle { cx, cy, r } => vec![cx - r, cy - r, cx + r, cy + r],
            Geometry::Rect { x, y, width, height, .. } => vec![*x, *y, x + width, y + height],
            Geometry::Text { .. } => continue,
        };
        if places.iter().any(|x| !x.is_finite() || *x < -6.0 || *x > width.max(height) + 1.0) {
            return Some(format!("{:?} leaves the drawing: {:?}", shape.class, shape.geometry));
        }
    }
    None
}

fn any_flow(most: f64) -> impl Strategy<Value = Option<f64>> {
    prop_oneof![1 => Just(None), 5 => (0.05..most).prop_map(Some)]
}

fn any_mark() -> impl Strategy<Value = Mark> {
    prop_oneof![Just(Mark::Fine), Just(Mark::SetOnSite), Just(Mark::Caution), Just(Mark::Stop)]
}

prop_compose! {
    fn any_rows()(
        cold in 0.0_f64..50.0,
        wide in 0.0_f64..40.0,
        count in 0_u32..30,
        size in 0.3_f64..60.0,
        opens in 0.6_f64..3.0,
        spread in 1.0_f64..2.5,
        rise in 0.0_f64..1.5,
        carries in 0.3_f64..5.0,
        gaps in proptest::collection::vec(0_u8..40, 30),
    ) -> Vec<WindowRow> {
        (0..count).map(|k| {
            let share = f64::from(k) / f64::from(count.max(2) - 1);
            let lifts = size * (1.0 + rise * share);
            let stays = lifts * opens;
            let mut row = row(
                (cold + wide * share).min(60.0),
                [lifts * spread, lifts, lifts / spread],
                [stays * spread, stays, stays / spread],
                lifts * carries,
            );
            // Some values are missing, some whole lines.
            match gaps[k as usize] {
                0 => row.lifts_from = [None; 3],
                1 => row.stays_to = [None; 3],
                2 => row.lifts_from[0] = None,
                3 => row.stays_to[2] = None,
                4 => row.carries_from = None,
                5 => { row.lifts_from = [None; 3]; row.stays_to = [None; 3]; }
                _ => {}
            }
            row
        }).collect()
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 400, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn no_text_meets_another_and_nothing_leaves_the_frame(
        rows in any_rows(),
        available in any_flow(80.0),
        chosen in any_flow(80.0),
        mark in any_mark(),
        site in (0.0_f64..60.0, 0.0_f64..30.0),
        metric in any::<bool>(),
        width in 320.0_f64..700.0,
        paper in 85.0_f64..180.0,
    ) {
        let chart = WindowChart {
            rows: &rows,
            available: available.map(gpm),
            sizes: FlowControl::all(),
            chosen: chosen.map(|flow| (gpm(flow), mark)),
            site: Some((kelvins(273.15 + site.0), kelvins(273.15 + site.0 + site.1))),
        };
        let manner = Manner { metric, ..Manner::default() };
        for form in [Form::Full { width, height: 900.0 }, Form::Paper { width_mm: paper, height_mm: 120.0 }] {
            let picture = backwash_window(&chart, &manner, form);
            if let Some(fault) = fault(&picture) {
                prop_assert!(false, "{form:?}: {fault}");
            }
            prop_assert_eq!(picture.table.rows.len(), rows.len());
            for row in &picture.table.rows {
                prop_assert_eq!(row.len(), picture.table.headings.len());
            }
        }
    }
}

#[test]
fn the_lines_and_the_flows_are_named_beside_them() {
    let rows = rows(25, 4.5, 7.5, 0.5);
    let picture = drawn(&chart(&rows));
    for text in ["↑ lifts enough", "↓ stays in", "9 gpm available", "7 gpm: set on site", "flow, gpm"] {
        assert!(says(&picture, text), "{text}");
    }
    assert!(says(&picture, "water at this site: 41 to 77 °F"));
    assert!(has(&picture, Class::ChartCross) && has(&picture, Class::ChartRing) && has(&picture, Class::ChartRange));
    // Off the scale, so neither drawn nor named.
    assert!(!has(&picture, Class::ChartFinest) && !says(&picture, "fines leave"));
    assert_eq!(fault(&picture), None);
}

/// Ink of the hatching between the likely lines is a lie; checked stroke by stroke against the typed rows.
#[test]
fn the_window_is_paper_white() {
    let rows = rows(25, 4.0, 8.0, 0.0);
    let picture = drawn(&WindowChart { available: Some(gpm(10.0)), ..chart(&rows) });
    let likely: Vec<f64> = picture
        .drawing
        .shapes
        .iter()
        .filter_map(|shape| match (shape.class, &shape.geometry) {
            (Class::ChartLikely, Geometry::Path { d }) => numbers(d).get(1).copied(),
            _ => None,
        })
        .collect();
    let [lifts, stays] = likely[..] else { panic!("{likely:?}") };
    assert!(lifts > stays);
    let hatch = picture.drawing.shapes.iter().find_map(|shape| match (shape.class, &shape.geometry) {
        (Class::ChartHatch, Geometry::Path { d }) => Some(numbers(d)),
        _ => None,
    });
    let heights: Vec<f64> = hatch.unwrap().chunks(2).map(|place| place[1]).collect();
    assert!(heights.len() > 100);
    for pair in heights.chunks(2) {
        let above = pair.iter().all(|y| *y <= stays + 0.02);
        let below = pair.iter().all(|y| *y >= lifts - 0.02);
        assert!(above || below, "{pair:?} in {stays} to {lifts}");
    }
}

/// Closer hatching than on the likely line alone: one temperature's flows laid out by hand.
#[test]
fn hatching_is_closer_where_every_line_rules_a_flow_out() {
    let rows = rows(25, 6.0, 30.0, 0.0);
    let picture = drawn(&WindowChart { available: None, chosen: None, ..chart(&rows) });
    let strokes = picture.drawing.shapes.iter().find_map(|shape| match (shape.class, &shape.geometry) {
        (Class::ChartHatch, Geometry::Path { d }) => Some(d.matches('M').count()),
        _ => None,
    });
    let open = rows.iter().map(|row| WindowRow { lifts_from: [None, row.lifts_from[1], None], ..*row });
    let open: Vec<WindowRow> = open.collect();
    let fewer = drawn(&WindowChart { available: None, chosen: None, ..chart(&open) });
    let fewer = fewer.drawing.shapes.iter().find_map(|shape| match (shape.class, &shape.geometry) {
        (Class::ChartHatch, Geometry::Path { d }) => Some(d.matches('M').count()),
        _ => None,
    });
    assert!(strokes.unwrap() as f64 > 1.7 * fewer.unwrap() as f64, "{strokes:?} {fewer:?}");
}

#[test]
fn a_flow_stands_at_its_height_between_its_neighbours_on_the_scale() {
    let rows = rows(25, 4.5, 7.5, 0.5);
    let picture = drawn(&chart(&rows));
    let height = |class: Class| {
        picture.drawing.shapes.iter().find_map(|shape| match (shape.class, &shape.geometry) {
            (found, Geometry::Line { y1, .. }) if found == class => Some(*y1),
            _ => None,
        })
    };
    // The frame's floor is no flow: heights of 9 and 7 gpm above it are as 9 to 7.
    let floor = picture.drawing.shapes.iter().find_map(|shape| match (shape.class, &shape.geometry) {
        (Class::ChartAxis, Geometry::Path { d }) => numbers(d).get(3).copied(),
        _ => None,
    });
    let above = |class| floor.unwrap() - height(class).unwrap();
    let ratio = above(Class::ChartAvailable) / above(Class::ChartChosen);
    assert!((ratio - 9.0 / 7.0).abs() < 0.01, "{ratio}");
}

#[test]
fn the_flow_that_is_set_is_seen_beside_the_same_flow_available() {
    let rows = rows(25, 4.5, 7.5, 0.5);
    let picture = drawn(&WindowChart { available: Some(gpm(7.0)), ..chart(&rows) });
    let level = |class: Class| {
        picture.drawing.shapes.iter().find_map(|shape| match (shape.class, &shape.geometry) {
            (found, Geometry::Line { y1, .. }) if found == class => Some(*y1),
            _ => None,
        })
    };
    assert!(level(Class::ChartChosen).unwrap() - level(Class::ChartAvailable).unwrap() >= 2.0);
    assert!(says(&picture, "7 gpm available") && says(&picture, "7 gpm: set on site"));
}

#[test]
fn one_temperature_or_none_and_missing_lines_still_give_a_picture() {
    let all = rows(25, 4.5, 7.5, 0.5);
    let steady = Some((kelvins(285.15), kelvins(285.15)));
    let one = drawn(&WindowChart { site: steady, ..chart(&all[..1]) });
    assert_eq!((fault(&one), one.table.rows.len()), (None, 1));
    assert!(has(&one, Class::ChartLikely) && says(&one, "water at this site: 53.6 °F"));

    let lone = row(12.0, [6.0, 5.0, 4.0], [9.0, 8.0, 7.0], 0.0);
    let named = drawn(&WindowChart { site: steady, ..chart(&[lone]) });
    assert_eq!(fault(&named), None);
    assert!(says(&named, "↑ lifts enough") && says(&named, "↓ stays in"));

    let empty = drawn(&chart(&[]));
    assert_eq!((fault(&empty), empty.table.rows.len()), (None, 0));
    assert!(says(&empty, "No line can be drawn for this bed"));

    let blank = [row(5.0, [0.0; 3], [0.0; 3], 0.0), row(25.0, [0.0; 3], [0.0; 3], 0.0)];
    let nothing = drawn(&WindowChart { available: None, chosen: None, site: None, ..chart(&blank) });
    assert_eq!(fault(&nothing), None);
    assert!(!has(&nothing, Class::ChartLikely) && !has(&nothing, Class::ChartHatch));
    assert_eq!(nothing.table.rows[0][1..], vec!["none"; 7]);

    let half: Vec<WindowRow> = all.iter().map(|row| WindowRow { stays_to: [None; 3], ..*row }).collect();
    let lifts = drawn(&chart(&half));
    assert_eq!(fault(&lifts), None);
    assert!(says(&lifts, "↑ lifts enough") && !says(&lifts, "↓ stays in"));
}

#[test]
fn values_that_are_none_draw_nothing() {
    let mut rows = rows(5, 4.5, 7.5, 0.5);
    rows[1].lifts_from[1] = Some(gpm(f64::NAN));
    rows[2].stays_to[1] = Some(gpm(f64::INFINITY));
    rows[3].temperature = kelvins(f64::NAN);
    let chart = WindowChart {
        available: Some(gpm(f64::NAN)),
        chosen: Some((gpm(-1.0), Mark::Stop)),
        site: Some((kelvins(f64::NAN), kelvins(0.0))),
        ..chart(&rows)
    };
    for form in [PHONE, Form::Full { width: f64::NAN, height: 0.0 }, Form::Strip { width: 1e9, height: 1e9 }] {
        let svg = svg_text(&backwash_window(&chart, &Manner::default(), form).drawing);
        assert!(!svg.contains("NaN") && !svg.contains("inf"), "{form:?}");
    }
}

#[test]
fn a_flow_far_above_the_lines_is_said_and_does_not_flatten_them() {
    let rows = rows(25, 1.3, 1.8, 0.3);
    let picture = drawn(&WindowChart { available: Some(gpm(40.0)), chosen: None, ..chart(&rows) });
    assert!(says(&picture, "40 gpm available ↑"));
    assert!(!has(&picture, Class::ChartAvailable) && !has(&picture, Class::ChartCross));
}

#[test]
fn the_description_says_the_window_at_both_ends() {
    let rows = rows(25, 4.5, 7.5, 0.5);
    let text = drawn(&chart(&rows)).drawing.description;
    assert!(
        text.starts_with("At 41 °F the bed likely lifts enough from 4.5 gpm and stays in up to 7.5 gpm;"),
        "{text}"
    );
    assert!(text.contains("At 77 °F") && text.ends_with("9 gpm available. Chosen 7 gpm: set on site."), "{text}");
    let closed = [row(12.0, [8.0, 7.0, 6.0], [6.0, 5.0, 4.0], 0.0)];
    let text = drawn(&chart(&closed)).drawing.description;
    assert!(text.contains("no flow likely does"), "{text}");
}

#[test]
fn every_mark_has_a_sign_of_its_own() {
    let rows = rows(25, 4.5, 7.5, 0.5);
    let mut seen = Vec::new();
    for mark in [Mark::Fine, Mark::SetOnSite, Mark::Caution, Mark::Stop] {
        let picture = drawn(&WindowChart { chosen: Some((gpm(7.0), mark)), ..chart(&rows) });
        let sign: Vec<_> = picture.drawing.shapes.into_iter().filter(|shape| shape.class == Class::ChartSign).collect();
        assert!(!sign.is_empty() && !seen.contains(&sign), "{mark:?}");
        seen.push(sign);
    }
}

#[test]
fn a_window_stays_small_enough_for_a_phone() {
    let rows = rows(25, 4.5, 7.5, 0.5);
    let picture = backwash_window(&chart(&rows), &Manner::default(), Form::Full { width: 640.0, height: 900.0 });
    let text = svg_text(&picture.drawing);
    assert!(text.len() < 80_000, "{} bytes", text.len());
    assert!(!text.contains("style=") && !text.contains("href") && !text.contains("url("));
}

#[test]
fn the_page_has_the_same_rules_as_the_file() {
    let own = include_str!("../window.css");
    let page = include_str!("../../../../../app/src/parts/window.css");
    assert!(page.contains(own.trim()), "the page's sheet differs from the file's");
}
