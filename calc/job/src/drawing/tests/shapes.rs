//! What is drawn, against the geometry it stands for.

use super::vessels;
use crate::answers::VesselAnswers;
use crate::drawing::{Class, Drawing, Form, Geometry, section, svg_text};
use crate::words::Manner;

const FORM: Form = Form::Full { width: 420.0, height: 700.0 };

fn drawn(answers: &VesselAnswers) -> Drawing {
    section(answers, &Manner::default(), FORM)
}

fn outline(drawing: &Drawing) -> Vec<(f64, f64)> {
    let shell = drawing.shapes.iter().find_map(|shape| match (&shape.class, &shape.geometry) {
        (Class::Shell, Geometry::Path { d }) => Some(d.clone()),
        _ => None,
    });
    shell
        .unwrap()
        .split(['M', 'L'])
        .filter(|part| !part.is_empty())
        .map(|part| {
            let (x, y) = part.split_once(' ').unwrap();
            (x.parse().unwrap(), y.parse().unwrap())
        })
        .collect()
}

fn has(drawing: &Drawing, class: Class) -> bool {
    drawing.shapes.iter().any(|shape| shape.class == class)
}

fn texts(drawing: &Drawing) -> Vec<&str> {
    let all = drawing.shapes.iter().filter_map(|shape| match &shape.geometry {
        Geometry::Text { text, .. } => Some(text.as_str()),
        _ => None,
    });
    all.collect()
}

/// Inside depth over inside diameter as surveyed: 51 over 11.75, arithmetic.
#[test]
fn height_and_width_have_one_scale() {
    let points = outline(&drawn(&vessels::small_carbon()));
    let width =
        points.iter().map(|p| p.0).fold(f64::MIN, f64::max) - points.iter().map(|p| p.0).fold(f64::MAX, f64::min);
    let height =
        points.iter().map(|p| p.1).fold(f64::MIN, f64::max) - points.iter().map(|p| p.1).fold(f64::MAX, f64::min);
    assert!((height / width - 51.0 / 11.75).abs() < 1e-3, "{height} × {width}");
}

/// A 2:1 semi-ellipsoidal head is an ellipse of half axes D/2 and D/4 (D. Jones, *Calculating Tank Volume*).
#[test]
fn a_two_to_one_head_lies_on_its_ellipse() {
    let points = outline(&drawn(&vessels::small_carbon()));
    let floor = points.iter().map(|p| p.1).fold(f64::MIN, f64::max);
    let (left, right) =
        (points.iter().map(|p| p.0).fold(f64::MAX, f64::min), points.iter().map(|p| p.0).fold(f64::MIN, f64::max));
    let (axis, a) = (f64::midpoint(left, right), (right - left) / 2.0);
    let b = a / 2.0;
    let head: Vec<_> = points.iter().filter(|p| p.1 > floor - b + 0.01).collect();
    assert!(head.len() > 30);
    for (x, y) in head {
        let (u, v) = ((x - axis) / a, (y - (floor - b)) / b);
        assert!((u * u + v * v - 1.0).abs() < 2e-3, "{x} {y}");
    }
}

/// Half a sphere: every point of the bottom is D/2 from its centre.
#[test]
fn a_hemisphere_lies_on_its_circle() {
    let points = outline(&drawn(&vessels::hemispherical()));
    let floor = points.iter().map(|p| p.1).fold(f64::MIN, f64::max);
    let (left, right) =
        (points.iter().map(|p| p.0).fold(f64::MAX, f64::min), points.iter().map(|p| p.0).fold(f64::MIN, f64::max));
    let (axis, r) = (f64::midpoint(left, right), (right - left) / 2.0);
    for (x, y) in points.iter().filter(|p| p.1 > floor - r + 0.01) {
        let (across, down) = (x - axis, y - (floor - r));
        assert!(((across * across + down * down).sqrt() - r).abs() < 0.05, "{x} {y}");
    }
}

/// The surfaces' places on the drawing against the tape readings, within the half pixel a line is moved to be crisp.
#[test]
fn surfaces_stand_at_their_tape_readings() {
    let answers = vessels::large_layered();
    let drawing = drawn(&answers);
    let points = outline(&drawing);
    let (rim, floor) =
        (points.iter().map(|p| p.1).fold(f64::MAX, f64::min), points.iter().map(|p| p.1).fold(f64::MIN, f64::max));
    for (index, reading) in [(0, 65.0), (1, 62.0), (2, 59.0), (3, 47.0)] {
        let y = drawing.shapes.iter().find_map(|shape| match (&shape.class, &shape.geometry) {
            (Class::Surface, Geometry::Line { y1, .. }) if shape.layer == Some(index) => Some(*y1),
            _ => None,
        });
        // Depths as asked for on the survey: 71 in deep, layers of 6, 3, 3 and 12 in.
        assert!((y.unwrap() - (rim + (floor - rim) * reading / 71.0)).abs() <= 0.51, "{index}");
    }
    let shown = texts(&drawing);
    for reading in ["65", "62", "59", "47", "71 in"] {
        assert!(shown.contains(&reading), "{reading} in {shown:?}");
    }
}

#[test]
fn every_layer_can_be_touched_and_has_its_number_and_reading() {
    let answers = vessels::large_layered();
    for form in [FORM, Form::Strip { width: 110.0, height: 560.0 }, Form::Paper { width_mm: 80.0, height_mm: 140.0 }] {
        let drawing = section(&answers, &Manner::default(), form);
        for index in 0..5 {
            for class in [Class::Area, Class::Reading, Class::Number] {
                let there = drawing.shapes.iter().any(|shape| shape.class == class && shape.layer == Some(index));
                assert!(there, "{form:?}: layer {index} lacks {class:?}");
            }
        }
    }
}

#[test]
fn materials_can_be_told_apart_without_colour() {
    let drawing = drawn(&vessels::large_layered());
    assert!(has(&drawing, Class::Stipple) && has(&drawing, Class::Hatch));
    assert!(has(&drawn(&vessels::conical()), Class::Dots));
    let paths: Vec<&String> = drawing
        .shapes
        .iter()
        .filter_map(|shape| match (&shape.class, &shape.geometry) {
            (Class::Hatch, Geometry::Path { d }) => Some(d),
            _ => None,
        })
        .collect();
    // Three gravels of circles, one anthracite of strokes.
    assert_eq!(paths.iter().filter(|d| d.contains('a')).count(), 3);
    assert_eq!(paths.iter().filter(|d| d.contains('l')).count(), 1);
}

#[test]
fn what_is_not_known_is_not_drawn_as_if_it_were() {
    let ghost = drawn(&vessels::unknown());
    assert!(has(&ghost, Class::Ghost) && !has(&ghost, Class::Shell));
    assert_eq!(texts(&ghost), ["?"]);
    let empty = drawn(&vessels::empty());
    assert!(has(&empty, Class::Shell) && !has(&empty, Class::Area));
    assert!(texts(&empty).contains(&"64 in"));
    let overfull = drawn(&vessels::overfull());
    assert!(has(&overfull, Class::OpenBadge));
    assert!(!overfull.shapes.iter().any(|shape| shape.class == Class::Area && shape.layer == Some(2)));
    assert!(overfull.description.contains("Layer 3, Coconut carbon 8×30: it can't be done as asked."));
}

#[test]
fn the_description_names_every_layer_with_its_reading() {
    let description = drawn(&vessels::large_layered()).description;
    assert!(
        description.contains("Layer 2, Gravel 1/4 × 1/2 in: the tape reads 62 in down to its surface"),
        "{description}"
    );
    assert_eq!(description.matches("the tape reads").count(), 5);
}

/// The page's policy forbids style attributes and anything from elsewhere.
#[test]
fn a_file_stands_alone_and_carries_no_style_attribute() {
    let text = svg_text(&drawn(&vessels::small_carbon()));
    assert!(text.starts_with("<svg ") && text.ends_with("</svg>"));
    assert!(!text.contains("style=") && !text.contains("href") && !text.contains("url("));
    assert_eq!(text.matches("<text").count(), text.matches("</text>").count());
}

#[test]
fn every_class_has_a_rule_and_the_page_has_the_same_rules() {
    let own = include_str!("../section.css");
    let page = include_str!("../../../../../app/src/parts/drawing.css");
    let all = [own, include_str!("../window.css")].concat();
    for class in Class::ALL {
        assert!(all.contains(&format!(".{} ", class.name())), "{class:?}");
    }
    assert!(page.contains(own.trim()), "the page's sheet differs from the file's");
}

#[test]
fn a_drawing_stays_small_enough_for_a_phone() {
    for vessel in [vessels::conical(), vessels::wide_flat(), vessels::small_carbon()] {
        let text = svg_text(&section(&vessel, &Manner::default(), Form::Full { width: 640.0, height: 1000.0 }));
        assert!(text.len() < 250_000, "{} bytes", text.len());
    }
}
