//! Texts of any plan, at any size.

use proptest::prelude::*;

use super::vessels::{self, answers, gravel, layer, media, packs, survey};
use crate::answers::VesselAnswers;
use crate::drawing::spread::{Wish, spread};
use crate::drawing::{Besides, Class, Drawing, Extent, Form, Geometry, Shape, section, section_with};
use crate::entry::Unit;
use crate::field::SurveyField as F;
use crate::sections::plan::TargetKind;
use crate::sections::survey::{CollectorKind, HeadShape};
use crate::words::{Language, Manner};
use bedwright_calc::fill::Role;
use bedwright_calc::material::Material;
use bedwright_calc::vessel::Opening;

fn texts(drawing: &Drawing) -> Vec<(Extent, String)> {
    drawing
        .shapes
        .iter()
        .filter_map(|shape| match &shape.geometry {
            Geometry::Text { text, .. } => Some((shape.text_extent()?, text.clone())),
            _ => None,
        })
        .collect()
}

/// A line that no text may stand on, whatever it is drawn as.
fn line_of(shape: &Shape) -> Option<((f64, f64), (f64, f64))> {
    match (shape.class, &shape.geometry) {
        (
            Class::Dimension
            | Class::Extension
            | Class::Surface
            | Class::TopSurface
            | Class::PackSurface
            | Class::Expanded
            | Class::ExpandedWarm
            | Class::Loaded
            | Class::Axis,
            Geometry::Line { x1, y1, x2, y2 },
        ) => Some(((*x1, *y1), (*x2, *y2))),
        (Class::Leader, Geometry::Path { d }) => {
            let mut ends = d.trim_start_matches('M').split('L').map(|end| {
                let (x, y) = end.split_once(' ').unwrap();
                (x.parse().unwrap(), y.parse().unwrap())
            });
            Some((ends.next().unwrap(), ends.next().unwrap()))
        }
        _ => None,
    }
}

/// Whether a straight line has a point inside a room: the line is cut down to the room's width, then to its height.
fn runs_through((x1, y1): (f64, f64), (x2, y2): (f64, f64), room: &Extent) -> bool {
    let mut span = (0.0_f64, 1.0_f64);
    for (from, way, low, high) in
        [(x1, x2 - x1, room.left + 0.01, room.right - 0.01), (y1, y2 - y1, room.top + 0.01, room.bottom - 0.01)]
    {
        if way == 0.0 {
            if !(low..=high).contains(&from) {
                return false;
            }
            continue;
        }
        let (a, b) = ((low - from) / way, (high - from) / way);
        span = (span.0.max(a.min(b)), span.1.min(a.max(b)));
    }
    span.0 <= span.1
}

fn layout_fault(drawing: &Drawing) -> Option<String> {
    let all = texts(drawing);
    let view = Extent { left: -0.01, top: -0.01, right: drawing.width + 0.01, bottom: drawing.height + 0.01 };
    for (k, (room, text)) in all.iter().enumerate() {
        let inside =
            room.left >= view.left && room.top >= view.top && room.right <= view.right && room.bottom <= view.bottom;
        if !inside {
            return Some(format!("“{text}” {room:?} leaves {view:?}"));
        }
        for (other, second) in &all[k + 1..] {
            if room.meets(other) {
                return Some(format!("“{text}” {room:?} meets “{second}” {other:?}"));
            }
        }
        // A dimension line that runs through a text is the same fault. What lies under a frame or a circle is covered.
        let covered = drawing.shapes.iter().any(|shape| match (&shape.class, &shape.geometry) {
            (Class::Box | Class::ReadBox | Class::Ground, Geometry::Rect { x, y, width, height, .. }) => {
                *x <= room.left && *y <= room.top + 3.0 && x + width >= room.right && y + height >= room.bottom - 3.0
            }
            (Class::Badge | Class::OpenBadge, Geometry::Circle { cx, cy, .. }) => {
                (cx - f64::midpoint(room.left, room.right)).abs() < 1.0
                    && (cy - f64::midpoint(room.top, room.bottom)).abs() < 3.0
            }
            _ => false,
        });
        if covered {
            continue;
        }
        for shape in &drawing.shapes {
            let Some((from, to)) = line_of(shape) else { continue };
            if runs_through(from, to, room) {
                return Some(format!("{:?} {from:?} {to:?} runs through “{text}” {room:?}", shape.class));
            }
        }
    }
    None
}

fn check(answers: &VesselAnswers, manner: &Manner, form: Form, besides: &Besides) -> Result<(), String> {
    let drawing = section_with(answers, manner, form, besides);
    let height = match form {
        Form::Strip { height, .. } | Form::Full { height, .. } => height,
        Form::Paper { height_mm, .. } => height_mm * 96.0 / 25.4 + 1e-9,
    };
    if drawing.height > height {
        return Err(format!("{} high in {height}", drawing.height));
    }
    for shape in &drawing.shapes {
        if let Geometry::Path { d } = &shape.geometry
            && (d.contains("NaN") || d.contains("inf"))
        {
            return Err(format!("{:?}: {d}", shape.class));
        }
    }
    layout_fault(&drawing)
        .or_else(|| measure_fault(answers, &drawing, manner, form))
        .map_or(Ok(()), |fault| Err(format!("{form:?}: {fault}")))
}

/// The points of the arrowheads, which stand at what a dimension measures.
fn arrow_tips(drawing: &Drawing) -> Vec<(f64, f64)> {
    let tip = |d: &str| {
        let mut corners = d.strip_prefix('M')?.strip_suffix('Z')?.split('L');
        let (x, y) = corners.next()?.split_once(' ')?;
        // An arrowhead has three corners, and nothing else that is solid is written so.
        (corners.count() == 2).then(|| (x.parse().unwrap(), y.parse().unwrap()))
    };
    let solid = drawing.shapes.iter().filter(|shape| shape.class == Class::Solid);
    solid.filter_map(|shape| if let Geometry::Path { d } = &shape.geometry { tip(d) } else { None }).collect()
}

/// The vessel's rim and floor on the drawing, from its outline.
fn ends(drawing: &Drawing) -> Option<(f64, f64)> {
    let shell = drawing.shapes.iter().find_map(|shape| match (&shape.class, &shape.geometry) {
        (Class::Shell, Geometry::Path { d }) => Some(d),
        _ => None,
    })?;
    let ys: Vec<f64> =
        shell.split(['M', 'L']).filter_map(|part| part.split_once(' ')).map(|(_, y)| y.parse().unwrap()).collect();
    Some((ys.iter().copied().fold(f64::MAX, f64::min), ys.iter().copied().fold(f64::MIN, f64::max)))
}

/// Every arrow of a dimension stands at the rim, the floor, the ceiling or a surface, reckoned here from the answers and
/// the outline; depth and freeboard each have both of their arrows.
fn measure_fault(answers: &VesselAnswers, drawing: &Drawing, manner: &Manner, form: Form) -> Option<String> {
    let vessel = answers.vessel.as_ref()?;
    let (rim_y, floor_y) = ends(drawing)?;
    let rim = vessel.cavity.rim().value;
    let place = |height: f64| floor_y + (rim_y - floor_y) * height / rim;
    let near = |a: f64, b: f64| (a - b).abs() <= 0.56;
    let tops: Vec<f64> =
        answers.layers.iter().filter_map(|layer| layer.fill()).map(|fill| fill.top.value.value).collect();
    let tips = arrow_tips(drawing);
    let may = |y: f64| [0.0, rim, vessel.ceiling().value].iter().chain(&tops).any(|height| near(place(*height), y));
    if let Some((x, y)) = tips.iter().find(|(_, y)| !may(*y)) {
        return Some(format!("an arrow at {x} {y} measures nothing; surfaces at {tops:?}"));
    }
    // The outermost line at the left is the depth.
    let full = matches!(form, Form::Full { .. } | Form::Paper { .. });
    let shown: Vec<String> = texts(drawing).into_iter().map(|(_, text)| text).collect();
    let depth = manner.section_depth();
    if full && shown.iter().any(|text| text == depth) {
        let x = tips.iter().map(|(x, _)| *x).fold(f64::MAX, f64::min);
        let own: Vec<f64> = tips.iter().filter(|(there, _)| *there == x).map(|(_, y)| *y).collect();
        if own.len() != 2 || !own.iter().any(|y| near(*y, rim_y)) || !own.iter().any(|y| near(*y, floor_y)) {
            return Some(format!("the depth from {rim_y} to {floor_y} is measured at {own:?}"));
        }
    }
    if full
        && shown.iter().any(|text| text == manner.section_freeboard())
        && let Some(Ok(freeboard)) = answers.plan.as_ref().map(|plan| &plan.freeboard)
    {
        let ceiling = vessel.ceiling().value;
        let surface = ceiling - freeboard.length.value.value;
        for height in [ceiling, surface] {
            if !tips.iter().any(|(_, y)| near(*y, place(height))) {
                return Some(format!("the freeboard's end at {height} has no arrow: {tips:?}"));
            }
        }
    }
    None
}

fn any_vessel() -> impl Strategy<Value = VesselAnswers> {
    let heads = proptest::sample::select(HeadShape::ALL);
    let openings = proptest::sample::select(Opening::ALL);
    let collectors = proptest::sample::select(CollectorKind::ALL);
    let material = 0..Material::all().count();
    let asked = (material, 0.2_f64..30.0, 0..3_u8);
    (
        (6.0_f64..66.0, 20.0_f64..110.0, heads.clone(), heads, openings, collectors),
        (-1.0_f64..4.0, any::<bool>(), 0.5_f64..8.0),
        proptest::collection::vec(asked, 0..12),
    )
        .prop_map(|((diameter, depth, bottom, top, opening, collector), (allowance, upper, upper_at), asked)| {
            let mut survey = survey(&[
                (F::InsideDiameter, diameter),
                (F::InsideDepth, depth),
                (F::ConeDepth, diameter * 0.4),
                (F::NeckHeight, 1.0),
                (F::ClearBore, 2.5),
                (F::RiserOutsideDiameter, 1.05),
                (F::RiserSeat, 1.0),
                (F::RiserAllowance, allowance),
                (F::CollectorDiameter, 1.5),
                (F::CollectorBottom, 0.5),
                (F::CollectorTop, 2.5),
                (F::TopSlot, 2.7),
                (F::LateralCount, 6.0),
                (F::LateralLength, diameter * 0.2),
                (F::LateralAxis, 2.0),
                (F::UpperCollector, upper_at),
            ]);
            survey.bottom_head = bottom;
            survey.top_head = if top == HeadShape::Conical { HeadShape::AsmeFd } else { top };
            survey.opening = opening;
            survey.collector = collector;
            survey.upper_collector = upper;
            let materials: Vec<Material> = Material::all().collect();
            let layers = asked
                .into_iter()
                .map(|(index, amount, way)| match way {
                    0 => gravel(&materials[index].id, amount / 4.0),
                    1 => media(&materials[index].id, amount),
                    _ => packs(&materials[index].id, (amount / 3.0).ceil()),
                })
                .collect();
            answers(&survey, layers)
        })
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 400, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn no_text_meets_another_or_leaves_the_drawing(
        vessel in any_vessel(),
        metric in any::<bool>(),
        language in proptest::sample::select(Language::ALL.to_vec()),
        lifted in (1.0_f64..90.0, 1.0_f64..90.0),
        higher in proptest::collection::vec(-3.0_f64..3.0, 0..12),
        captioned in any::<bool>(),
        strip in (64.0_f64..130.0, 400.0_f64..640.0),
        full in (150.0_f64..640.0, 420.0_f64..900.0),
        paper in (60.0_f64..120.0, 90.0_f64..200.0),
    ) {
        let manner = Manner { metric, language, ..Manner::default() };
        let mut besides = vessels::lifted(&vessel, lifted);
        if !higher.is_empty() {
            besides.loaded = Some(vessels::loaded(&vessel, &higher));
        }
        if captioned {
            besides.caption = "Filters of a sports hall, north · F-1, F-2 · 2026-11-26".to_owned();
        }
        for form in [
            Form::Strip { width: strip.0, height: strip.1 },
            Form::Full { width: full.0, height: full.1 },
            Form::Paper { width_mm: paper.0, height_mm: paper.1 },
        ] {
            if let Err(fault) = check(&vessel, &manner, form, &besides) {
                prop_assert!(false, "{fault}");
            }
        }
    }

    /// Least squares under an order: checked by what defines it, not by another run of the same.
    #[test]
    fn spread_texts_keep_their_order_and_their_bounds(
        sizes in proptest::collection::vec((0.0_f64..400.0, 4.0_f64..30.0), 0..10),
    ) {
        let mut wishes: Vec<Wish> = sizes.iter().map(|&(at, size)| Wish { at, size }).collect();
        wishes.sort_by(|a, b| a.at.total_cmp(&b.at));
        let total: f64 = wishes.iter().map(|wish| wish.size).sum();
        let (low, high) = (10.0, 400.0);
        let places = spread(&wishes, low, high);
        prop_assert_eq!(places.len(), wishes.len());
        for (k, pair) in places.windows(2).enumerate() {
            prop_assert!(pair[1] - pair[0] >= (wishes[k].size + wishes[k + 1].size) / 2.0 - 1e-9);
        }
        if let (Some(first), Some(last)) = (places.first(), places.last()) {
            prop_assert!(first - wishes[0].size / 2.0 >= low - 1e-9);
            if total <= high - low {
                prop_assert!(last + wishes[wishes.len() - 1].size / 2.0 <= high + 1e-9);
            }
        }
    }
}

#[test]
fn texts_that_are_clear_of_each_other_stay_where_they_belong() {
    let wishes = [Wish { at: 20.0, size: 10.0 }, Wish { at: 50.0, size: 10.0 }, Wish { at: 90.0, size: 10.0 }];
    assert_eq!(spread(&wishes, 0.0, 100.0), [20.0, 50.0, 90.0]);
    // Two that want the same place share the way by halves.
    let wishes = [Wish { at: 50.0, size: 10.0 }, Wish { at: 50.0, size: 10.0 }];
    assert_eq!(spread(&wishes, 0.0, 100.0), [45.0, 55.0]);
}

#[test]
fn known_vessels_are_clean_at_every_size() {
    let inch = Manner::default();
    let metric = Manner { metric: true, ..inch };
    for vessel in [
        vessels::small_carbon(),
        vessels::large_layered(),
        vessels::wide_flat(),
        vessels::conical(),
        vessels::hemispherical(),
        vessels::overfull(),
        vessels::empty(),
        vessels::unknown(),
    ] {
        for manner in [inch, metric] {
            for form in [
                Form::Strip { width: 64.0, height: 400.0 },
                Form::Strip { width: 110.0, height: 560.0 },
                Form::Full { width: 360.0, height: 640.0 },
                Form::Paper { width_mm: 80.0, height_mm: 140.0 },
            ] {
                assert_eq!(check(&vessel, &manner, form, &Besides::default()), Ok(()));
                let besides = vessels::lifted(&vessel, (8.0, 12.5));
                assert_eq!(check(&vessel, &manner, form, &besides), Ok(()));
            }
        }
    }
}

#[test]
fn sizes_that_are_none_still_give_a_drawing() {
    let vessel = vessels::small_carbon();
    for (width, height) in [(0.0, 0.0), (f64::NAN, f64::INFINITY), (-5.0, 1e9), (1e9, 1.0)] {
        for form in [
            Form::Strip { width, height },
            Form::Full { width, height },
            Form::Paper { width_mm: width, height_mm: height },
        ] {
            let drawing = section(&vessel, &Manner::default(), form);
            assert!(drawing.width.is_finite() && drawing.height > 0.0 && !drawing.shapes.is_empty(), "{form:?}");
        }
    }
}

#[test]
fn thirty_layers_still_do_not_meet() {
    let survey = survey(&[
        (F::InsideDiameter, 47.0),
        (F::InsideDepth, 80.0),
        (F::NeckHeight, 1.0),
        (F::ClearBore, 4.0),
        (F::RiserOutsideDiameter, 1.9),
        (F::RiserSeat, 0.0),
        (F::RiserAllowance, 0.0),
    ]);
    let layers = (0..30)
        .map(|k| layer("sand_20x30", Role::Media, TargetKind::Depth, 0.5 + 0.01 * f64::from(k), Unit::Inch))
        .collect();
    let vessel = answers(&survey, layers);
    for form in [Form::Strip { width: 110.0, height: 400.0 }, Form::Full { width: 380.0, height: 600.0 }] {
        assert_eq!(check(&vessel, &Manner::default(), form, &Besides::default()), Ok(()));
    }
}
