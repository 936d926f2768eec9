//! Mistakes of arithmetic or of judgement that were made once, each with a case worked by hand.
//!
//! Limits and pack sizes are common practice, no source; the arithmetic beside each check is its source.

use std::f64::consts::PI;

use bedwright_calc::fill::{Layer, Role, Target, plan};
use bedwright_calc::material::Pack;
use bedwright_calc::quantity::{Basis, Known, Mark, Remedy, Subject, cubic_metres, kilograms, metres};
use bedwright_calc::vessel::{BottomCollector, DiameterBy, Head, Measures, Vessel};
use bedwright_tests::fills::{CUBIC_FOOT_M3, INCH_M, bucket, cubic_feet, inch, layer, layer_in, twelve_by_fifty_two};

const POUND_KG: f64 = 0.453_592_37;

fn filled(measures: Measures, layers: &[Layer]) -> bedwright_calc::fill::Plan {
    plan(&Vessel::new(measures).unwrap(), layers, &bucket())
}

/// 100 lb out of bags that say 50 lb are two bags, whatever the bulk density says.
#[test]
fn a_weight_in_bags_with_a_printed_weight_is_that_many_bags() {
    for (material, pack, pounds, bags) in [
        ("calcite_16x40", "calcite_16x40.half_ft3", 100.0, 2),
        ("gravel_1_8x1_4", "gravel_1_8x1_4.half_ft3", 100.0, 2),
        ("sand_20x30", "sand_20x30.1_ft3", 200.0, 2),
    ] {
        let target = Target::Weight(Known::typed(kilograms(pounds * POUND_KG)));
        let plan = filled(twelve_by_fifty_two(), &[layer_in(material, Pack::of(pack).unwrap(), Role::Media, target)]);
        let fill = plan.layers[0].as_ref().unwrap();
        assert_eq!(fill.packs_to_buy, bags, "{material}");
        assert!((fill.mass.value.value - pounds * POUND_KG).abs() < 1e-9, "{material}");
    }
}

/// Water stands in the riser, in a basket and under a plate too. A flat-ended vessel of 20 in with a riser of 1.05 in
/// and a wall of 0.113 in: what 20 in of rise take is (π/4)·20·(20² − (1.05² − 0.824²)) in³.
#[test]
fn a_metered_fill_counts_the_water_that_grains_could_not_be_in() {
    let cubic_inches = PI / 4.0 * 20.0 * (20.0 * 20.0 - (1.05 * 1.05 - 0.824 * 0.824));
    let volume = Known::measured(cubic_metres(cubic_inches * INCH_M * INCH_M * INCH_M));
    for collector in [
        BottomCollector::None,
        BottomCollector::SlottedPlate { top: inch(6.0), slot_width: None },
        BottomCollector::Basket {
            diameter: inch(3.0),
            bottom: inch(0.0),
            top: inch(5.0),
            top_slot: inch(5.0),
            slot_width: None,
        },
    ] {
        let measures = Measures {
            nominal_diameter: None,
            diameter_by: DiameterBy::MeteredFill { volume, before: inch(60.0), after: inch(40.0) },
            inside_depth: inch(60.0),
            bottom_head: Head::Flat,
            top_head: Head::Flat,
            bottom_collector: collector,
            ..twelve_by_fifty_two()
        };
        let found = Vessel::new(measures).unwrap().inside_diameter;
        assert!((found.value.value / INCH_M - 20.0).abs() < 1e-6, "{collector:?}: {}", found.value.value / INCH_M);
    }
}

/// A diameter found from a rise is no better known than the depth the rise was read against.
#[test]
fn a_rise_read_against_an_assumed_depth_gives_an_assumed_diameter() {
    let depth = Known::assumed(metres(51.0 * INCH_M), bedwright_calc::quantity::Source::FromMemory);
    let measures = Measures {
        diameter_by: DiameterBy::RiseOfBag { volume: cubic_feet(1.0), before: inch(40.0), after: inch(24.0) },
        inside_depth: depth,
        ..twelve_by_fifty_two()
    };
    let vessel = Vessel::new(measures).unwrap();
    assert_eq!(vessel.inside_diameter.basis, Basis::Assumed);
    // ½·√(0.02² + (√2·0.25/16)²) = 1.49 %; an assumed diameter is never taken to be better known than 2 %.
    assert!(vessel.diameter_tolerance() >= 0.0149);
}

/// A layer asked to cover the slots covers them: whole bags that would leave them bare are no near miss.
#[test]
fn whole_bags_never_uncover_the_slots_they_were_asked_to_cover() {
    let collector = BottomCollector::Basket {
        diameter: inch(2.0),
        bottom: inch(0.0),
        top: inch(4.5),
        top_slot: inch(4.5),
        slot_width: None,
    };
    for diameter in [20.2, 20.4, 20.6, 20.8, 21.0, 23.5] {
        let measures = Measures {
            nominal_diameter: None,
            diameter_by: DiameterBy::Measured { inside: inch(diameter) },
            bottom_collector: collector,
            ..twelve_by_fifty_two()
        };
        let plan = filled(measures, &[layer("gravel_1_8x1_4", Role::Underbed, Target::Cover(inch(0.0)))]);
        let cover = plan.layers[0].as_ref().unwrap().cover.as_ref().unwrap().value.value;
        assert!(cover >= -1e-9, "{diameter} in: {cover}");
    }
}

/// Coarse above fine sinks in or lets the fine through.
#[test]
fn the_coarser_layer_belongs_below() {
    let half = || Target::Volume(cubic_feet(0.3));
    for (below, above) in [("sand_20x30", "gravel_1_4x1_2"), ("gravel_1_8x1_4", "gravel_1_2x3_4")] {
        let plan =
            filled(twelve_by_fifty_two(), &[layer(below, Role::Media, half()), layer(above, Role::Media, half())]);
        let swap = plan.verdicts.iter().find(|verdict| verdict.remedies.contains(&Remedy::SwapLayers)).unwrap();
        assert_eq!((swap.subject, swap.mark), (Subject::Neighbours { lower: 0 }, Mark::Caution));
    }
}

/// D85 of carbon 12×40 (0.65 mm, 1.6): 0.65·1.6^1.5102 = 1.322 mm; D15 of gravel ¼×½: 7.30 mm; 5.52 is more than 5.
#[test]
fn carbon_on_quarter_inch_gravel_is_not_held_by_the_filter_criterion() {
    let plan = filled(
        twelve_by_fifty_two(),
        &[
            layer("gravel_1_4x1_2", Role::Underbed, Target::Volume(cubic_feet(0.3))),
            layer("carbon_coconut_12x40", Role::Media, Target::Volume(cubic_feet(1.0))),
        ],
    );
    let verdict = plan.verdicts.iter().find(|v| v.subject == Subject::Neighbours { lower: 0 }).unwrap();
    assert_eq!(verdict.mark, Mark::Caution);
}

/// Half of the media's depth is free when half was asked for, with an underbed layer between the media too.
#[test]
fn a_freeboard_of_half_the_media_is_half_of_all_media() {
    let layers = [
        layer("sand_20x30", Role::Media, Target::Volume(cubic_feet(0.4))),
        layer("gravel_1_8x1_4", Role::Underbed, Target::Volume(cubic_feet(0.2))),
        layer("carbon_coconut_12x40", Role::Media, Target::FreeboardRatio(Known::typed(0.5))),
    ];
    let mut layers = layers;
    layers[2].minimum = true;
    let plan = filled(twelve_by_fifty_two(), &layers);
    let ratio = plan.freeboard.as_ref().unwrap().ratio.as_ref().unwrap().value;
    assert!((ratio - 0.5).abs() < 1e-9, "{ratio}");
    assert!(plan.layers[2].as_ref().unwrap().volume.value.value > CUBIC_FOOT_M3 * 0.1);
}

/// A carbon bag of 1 cu ft weighs 27 to 30 lb (common practice).
#[test]
fn a_cubic_foot_of_carbon_weighs_what_its_bag_weighs() {
    let plan =
        filled(twelve_by_fifty_two(), &[layer("carbon_coconut_12x40", Role::Media, Target::Volume(cubic_feet(1.0)))]);
    let pounds = plan.layers[0].as_ref().unwrap().mass.value.value / POUND_KG;
    assert!((27.0..=30.0).contains(&pounds), "{pounds}");
}
