//! What is drawn, against the geometry it stands for.

use super::vessels;
use crate::answers::VesselAnswers;
use crate::drawing::{Besides, Class, Drawing, Form, Geometry, section, section_with, svg_text};
use crate::words::{Language, Manner};

const SHEET: Form = Form::Paper { width_mm: 168.0, height_mm: 176.0 };
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

/// Programs that know no style sheets show it the same: every mark says itself how it looks, and nothing is from elsewhere.
#[test]
fn a_file_stands_alone_and_every_mark_carries_its_looks() {
    let answers = vessels::small_carbon();
    let mut besides = vessels::lifted(&answers, (8.0, 12.5));
    besides.loaded = Some(vessels::loaded(&answers, &[0.5, -1.0]));
    let text = svg_text(&section_with(&answers, &Manner::default(), SHEET, &besides));
    assert!(text.starts_with("<svg xmlns=\"http://www.w3.org/2000/svg\" ") && text.ends_with("</svg>"));
    for foreign in ["style", "class=", "href", "url(", "var(", "<script", "@import"] {
        assert!(!text.contains(foreign), "{foreign}");
    }
    assert_eq!(text.matches("http").count(), 1);
    assert_eq!(text.matches("<text").count(), text.matches("</text>").count());
    for mark in
        text.split('<').filter(|mark| ["path ", "line ", "circle ", "text "].iter().any(|name| mark.starts_with(name)))
    {
        assert!(mark.contains(" fill=\"") || mark.contains(" stroke=\""), "{mark}");
    }
    // As the page's sheet has it, in the colours of paper.
    let shell = text.split('<').find(|mark| mark.contains("stroke-width=\"2.25\"")).unwrap();
    assert!(shell.contains("stroke=\"#14171a\"") && shell.contains("fill=\"none\""), "{shell}");
}

#[test]
fn what_xml_has_no_letters_for_is_left_out_of_a_file() {
    let besides = Besides::default().captioned("<A & \"B\">\u{0}\u{8}\u{FFFE} ✓".to_owned());
    let text = svg_text(&section_with(&vessels::empty(), &Manner::default(), SHEET, &besides));
    assert!(text.contains(">&lt;A &amp; &quot;B&quot;&gt; ✓</text>"), "{text}");
}

/// Where a height stands between the outline's rim and floor, and where a line of a class does.
fn place_and_line(answers: &VesselAnswers, drawing: &Drawing, class: Class, under_rim: f64) -> (f64, f64) {
    let ys: Vec<f64> = outline(drawing).iter().map(|point| point.1).collect();
    let (rim, floor) = (ys.iter().copied().fold(f64::MAX, f64::min), ys.iter().copied().fold(f64::MIN, f64::max));
    let depth = answers.vessel.as_ref().unwrap().measures.inside_depth.value.value / 0.0254;
    let line = drawing.shapes.iter().find_map(|shape| match (&shape.class, &shape.geometry) {
        (there, Geometry::Line { y1, y2, .. }) if *there == class && y1 == y2 => Some(*y1),
        _ => None,
    });
    (rim + (floor - rim) * under_rim / depth, line.unwrap())
}

#[test]
fn the_bed_in_backwash_stands_at_both_waters_each_with_its_name() {
    let answers = vessels::small_carbon();
    let besides = vessels::lifted(&answers, (8.0, 12.5));
    for form in [FORM, SHEET, Form::Strip { width: 110.0, height: 560.0 }, Form::Full { width: 160.0, height: 420.0 }] {
        let drawing = section_with(&answers, &Manner::default(), form, &besides);
        for (class, under_rim) in [(Class::Expanded, 8.0), (Class::ExpandedWarm, 12.5)] {
            let (place, line) = place_and_line(&answers, &drawing, class, under_rim);
            assert!((place - line).abs() <= 0.51, "{form:?} {class:?}: {line} for {place}");
        }
        // 277.594 K and 298.15 K.
        for text in ["40 °F", "77 °F"] {
            assert!(texts(&drawing).contains(&text), "{form:?}: {text} in {:?}", texts(&drawing));
        }
    }
    let key = ["bed in backwash, water at 40 °F", "bed in backwash, water at 77 °F"];
    let shown = section_with(&answers, &Manner::default(), FORM, &besides);
    assert!(key.iter().all(|line| texts(&shown).contains(line)), "{:?}", texts(&shown));
}

#[test]
fn water_that_is_the_same_all_year_has_one_line_and_no_bed_has_none() {
    let answers = vessels::small_carbon();
    let mut besides = vessels::lifted(&answers, (8.0, 8.0));
    besides.warm = besides.cold;
    let drawing = section_with(&answers, &Manner::default(), FORM, &besides);
    assert!(has(&drawing, Class::Expanded) && !has(&drawing, Class::ExpandedWarm));
    let empty = vessels::empty();
    let drawing = section_with(&empty, &Manner::default(), FORM, &vessels::lifted(&empty, (8.0, 12.5)));
    assert!(!has(&drawing, Class::Expanded) && !has(&drawing, Class::ExpandedWarm));
}

#[test]
fn what_was_read_stands_beside_what_was_planned() {
    let answers = vessels::small_carbon();
    let besides = Besides { loaded: Some(vessels::loaded(&answers, &[0.5, -1.25])), ..Besides::default() };
    let drawing = section_with(&answers, &Manner::default(), FORM, &besides);
    // Planned at 15 7/8 in and read 1 1/4 in lower; the gravel half an inch higher than planned.
    let shown = texts(&drawing);
    let lines: Vec<f64> = drawing
        .shapes
        .iter()
        .filter_map(|shape| match (&shape.class, &shape.geometry) {
            (Class::Loaded, Geometry::Line { y1, .. }) if shape.layer.is_some() => Some(*y1),
            _ => None,
        })
        .collect();
    assert_eq!(lines.len(), 2);
    for (layer, line) in answers.layers.iter().zip(&lines) {
        let higher = if layer.id == answers.layers[0].id { 0.5 } else { -1.25 };
        let tape = layer.fill().unwrap().tape.reading.value.value / 0.0254 - higher;
        let (place, _) = place_and_line(&answers, &drawing, Class::Loaded, tape);
        assert!((place - line).abs() <= 0.51, "{line} for {place}");
        let text = Manner::default().tape_bare(bedwright_calc::quantity::metres(tape * 0.0254));
        assert!(shown.contains(&format!("loaded {text}").as_str()), "{text} in {shown:?}");
        assert!(drawing.description.contains(&format!("the tape read {text} in")), "{}", drawing.description);
    }
    assert!(shown.contains(&"surfaces as loaded, 2026-11-20, F-1"), "{shown:?}");
    // Planned surfaces are still there.
    assert!(has(&drawing, Class::TopSurface) && has(&drawing, Class::Surface));
    // On the strip what was read is told from what is expected by a filled frame.
    let strip = section_with(&answers, &Manner::default(), Form::Strip { width: 110.0, height: 560.0 }, &besides);
    assert!(has(&strip, Class::ReadBox) && has(&strip, Class::Loaded));
}

#[test]
fn the_description_says_the_new_lines_in_every_language() {
    let answers = vessels::small_carbon();
    let mut besides = vessels::lifted(&answers, (8.0, 12.5));
    besides.loaded = Some(vessels::loaded(&answers, &[0.0, 0.5]));
    for (language, said) in [
        (
            Language::English,
            [
                "coldest water, 40 °F, 8 in under",
                "warmest water, 77 °F, 12 1/2 in under",
                "As loaded on 2026-11-20: layer 2",
                "riser is cut to 50 1/4 in",
            ],
        ),
        (
            Language::Spanish,
            [
                "agua más fría, 40 °F, 8 in bajo",
                "agua más cálida, 77 °F, 12 1/2 in bajo",
                "Al cargar el 2026-11-20: capa 2",
                "tubo central se corta a 50 1/4 in",
            ],
        ),
        (
            Language::French,
            [
                "eau la plus froide, 40 °F, 8 in sous",
                "eau la plus chaude, 77 °F, 12 1/2 in sous",
                "Au chargement du 2026-11-20\u{202f}: couche 2",
                "tube central est coupé à 50 1/4 in",
            ],
        ),
    ] {
        let manner = Manner { language, ..Manner::default() };
        let told = section_with(&answers, &manner, FORM, &besides).description;
        for part in said {
            assert!(told.contains(part), "{part} in {told}");
        }
    }
}

#[test]
fn a_sheet_names_its_layers_and_says_what_the_riser_is_cut_to() {
    let besides = Besides::default().captioned("A site · F-1 · 2026-11-26".to_owned());
    let drawing = section_with(&vessels::small_carbon(), &Manner::default(), SHEET, &besides);
    let shown = texts(&drawing);
    for text in ["Coconut carbon 12×40 · 2 bags", "riser cut to 50 1/4 in", "A site · F-1 · 2026-11-26"] {
        assert!(shown.contains(&text), "{text} in {shown:?}");
    }
    assert!(shown.iter().any(|text| text.starts_with("Gravel 1/8 × 1/4 in · 0.")), "{shown:?}");
    // Each number stands in its layer, at its reading and in the key.
    let numbers = |layer: usize| {
        drawing.shapes.iter().filter(|shape| shape.class == Class::Number && shape.layer == Some(layer)).count()
    };
    assert_eq!((numbers(0), numbers(1)), (3, 3));
}

/// Surfaces after packs are marks at the wall, as on a measuring vessel, level with their readings.
#[test]
fn packs_are_marked_at_the_wall_where_their_readings_say() {
    let answers = vessels::small_carbon();
    let drawing = drawn(&answers);
    let fill = answers.layers[1].fill().unwrap();
    let tape = fill.after_packs[0].reading.value.value / 0.0254;
    let (place, line) = place_and_line(&answers, &drawing, Class::PackSurface, tape);
    assert!((place - line).abs() <= 0.51, "{line} for {place}");
    let points = outline(&drawing);
    let (left, right) =
        (points.iter().map(|p| p.0).fold(f64::MAX, f64::min), points.iter().map(|p| p.0).fold(f64::MIN, f64::max));
    let ticks: Vec<(f64, f64)> = drawing
        .shapes
        .iter()
        .filter_map(|shape| match (&shape.class, &shape.geometry) {
            (Class::PackSurface, Geometry::Line { x1, x2, .. }) => Some((*x1, *x2)),
            _ => None,
        })
        .collect();
    assert!(ticks.iter().all(|(a, b)| (a - left).abs() < 0.01 || (b - right).abs() < 0.01), "{ticks:?}");
    assert_eq!(ticks.len(), 2);
}

#[test]
fn a_narrow_picture_carries_its_readings_on_the_vessel() {
    let drawing = section(&vessels::large_layered(), &Manner::default(), Form::Full { width: 160.0, height: 420.0 });
    assert!(!has(&drawing, Class::Dimension));
    let points = outline(&drawing);
    let wide =
        points.iter().map(|p| p.0).fold(f64::MIN, f64::max) - points.iter().map(|p| p.0).fold(f64::MAX, f64::min);
    assert!(wide > 0.85 * 160.0, "{wide}");
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
