//! How closely a bed lies by a clean pressure drop: what it is used for, and what is refused.

use bedwright_calc::fill::{Layer, Role, Target, plan};
use bedwright_calc::hydraulics::{Bed, CleanDrop, Duty, Lines, Purpose, Site, backwash, packing, service};
use bedwright_calc::quantity::{
    Assumption, Basis, Fault, Known, Problem, Term, cubic_metres_per_second, metres, metres_per_second, pascals,
};
use bedwright_calc::vessel::{DiameterBy, Measures, Vessel};
use bedwright_calc::water::Water;
use bedwright_tests::beds::{catalogue_grains, celsius, litres_per_minute};
use bedwright_tests::fills::{bucket, layer, twelve_by_fifty_two};
use bedwright_tests::packings::{one_metre, voidages};
use proptest::prelude::*;

#[test]
fn voidages_come_back_from_the_pressures_that_outside_libraries_say() {
    voidages().settle("packed_bed.csv, from pressure to voidage", 288);
}

/// Equal balls can fill at most π/√18 of a space: the closest packing.
#[test]
fn no_bed_lies_closer_than_balls_can() {
    let closest = 1.0 - std::f64::consts::PI / 18.0_f64.sqrt();
    assert!((Assumption::VoidageClosest.ratio() - closest).abs() < 5e-5);
}

fn reading(flow_m_h: f64, drop: f64, bed: &Bed) -> CleanDrop {
    CleanDrop {
        flow: Known::measured(cubic_metres_per_second(flow_m_h / 3600.0 * bed.area.value.value)),
        temperature: celsius(15.0),
        drop: Known::measured(pascals(drop)),
    }
}

/// Sand of 0.60 mm, sphericity 0.80, 1 m at 10 m/h and 15 °C (fluids 1.3.1 Ergun): 9 560.83 Pa at a voidage of 0.42.
#[test]
fn what_no_grains_can_lose_is_refused_with_what_they_can() {
    let bed = one_metre(0.0006, 0.80, 0.45);
    let found = packing(&bed, &[reading(10.0, 9560.83, &bed), reading(10.0, 1e6, &bed), reading(10.0, 10.0, &bed)]);
    let (place, voidage) = &found.voidages[0];
    assert_eq!((*place, found.used(), voidage.basis), (0, 1, Basis::Measured));
    assert!((voidage.value - 0.42).abs() < 1e-6, "{}", voidage.value);
    for problem in &found.refused[1..] {
        let Some(Problem { term: Term::CleanDrop, fault: Fault::OutOfRange { low, high, .. }, .. }) = problem else {
            panic!("{problem:?}");
        };
        // Ergun by hand: 65 744 Pa at 0.2595, 953.5 Pa at 0.65.
        assert!((low.si() - 953.5).abs() < 0.1 && (high.si() - 65_744.0).abs() < 1.0, "{low:?} {high:?}");
    }
    // Refused readings change nothing.
    let none = packing(&bed, &[reading(10.0, 1e6, &bed)]);
    assert_eq!((none.used(), &none.bed, none.voidages.len()), (0, &bed, 0));
}

#[test]
fn two_readings_count_alike() {
    let bed = one_metre(0.0006, 0.80, 0.45);
    let at = |drops: &[f64]| {
        let readings: Vec<CleanDrop> = drops.iter().map(|drop| reading(10.0, *drop, &bed)).collect();
        packing(&bed, &readings).voidages[0].1.value
    };
    assert!((at(&[9000.0, 10_500.0]) - f64::midpoint(at(&[9000.0]), at(&[10_500.0]))).abs() < 1e-12);
}

#[test]
fn strange_readings_are_refused_by_name() {
    let bed = one_metre(0.0006, 0.80, 0.45);
    for x in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY, -1.0, 0.0, 5e-324, 1e308] {
        let good = reading(10.0, 9560.83, &bed);
        let flow = CleanDrop { flow: Known::measured(cubic_metres_per_second(x)), ..good };
        let warm = CleanDrop { temperature: celsius(x), ..good };
        let drop = CleanDrop { drop: Known::measured(pascals(x)), ..good };
        let found = packing(&bed, &[flow, drop]);
        let terms: Vec<_> = found.refused.iter().map(|problem| problem.map(|problem| problem.term)).collect();
        assert_eq!(terms, [Some(Term::ServiceFlow), Some(Term::CleanDrop)], "{x}");
        // 0 °C, and next to it, is water.
        if !(0.0..=60.0).contains(&x) {
            let problem = packing(&bed, &[warm]).refused[0].unwrap();
            assert_eq!(problem.term, Term::WaterTemperature, "{x}");
        }
    }
}

/// Gravel, sand and anthracite, 0.3 m inside.
fn three_layers(depths: [f64; 3]) -> (Vessel, [Layer; 3], Bed) {
    let metre = |value: f64| Known::measured(metres(value));
    let measures = Measures {
        nominal_diameter: None,
        diameter_by: DiameterBy::Measured { inside: metre(0.3) },
        inside_depth: metre(1.8),
        ..twelve_by_fifty_two()
    };
    let vessel = Vessel::new(measures).unwrap();
    let [gravel, sand, coal] = depths;
    let layers = [
        layer("gravel_1_16x1_8", Role::Underbed, Target::Depth(metre(gravel))),
        layer("sand_filter_045_055", Role::Media, Target::Depth(metre(sand))),
        layer("anthracite_08_12", Role::Media, Target::Depth(metre(coal))),
    ];
    let filled = plan(&vessel, &layers, &bucket());
    let bed = Bed::new(&vessel, &layers, &filled, &catalogue_grains(&layers), None).unwrap();
    (vessel, layers, bed)
}

proptest! {
    #![proptest_config(ProptestConfig {
        cases: std::env::var("BEDWRIGHT_CASES").ok().map_or(100, |text| text.parse().expect("BEDWRIGHT_CASES is a number")),
        failure_persistence: None,
        ..ProptestConfig::default()
    })]

    /// A bed of three layers that was read loses in service what was read, and lifts otherwise than before.
    #[test]
    fn a_bed_that_was_read_loses_what_was_read(
        depths in [0.12..0.2_f64, 0.2..0.4_f64, 0.2..0.5_f64], flow in 2.0..30.0_f64, degrees in 1.0..30.0_f64, times in 0.6..2.0_f64,
    ) {
        let (vessel, layers, bed) = three_layers(depths);
        let site = Site {
            temperature_low: celsius(degrees), temperature_high: celsius(degrees), pressure: None,
            backwash_available: Some(litres_per_minute(95.0)),
        };
        let duty = Duty { service_flow: Some(litres_per_minute(flow)), ..Duty::new(Purpose::Sediment) };
        let lost = |bed: &Bed| service(&vessel, bed, &site, &duty).unwrap().usual.unwrap();
        let before = lost(&bed);
        let drop = before.loss.value.value * times;
        let reading = CleanDrop {
            flow: litres_per_minute(flow), temperature: celsius(degrees), drop: Known::measured(pascals(drop)),
        };
        let found = packing(&bed, &[reading]);
        prop_assert_eq!(found.used(), 1);
        let after = lost(&found.bed);
        prop_assert!((after.loss.value.value / drop - 1.0).abs() < 1e-9, "{} {drop}", after.loss.value.value);
        // The underbed stays as it is; both media lie closer where more was lost, by the same share of solids.
        prop_assert_eq!(after.layers[0].value, before.layers[0].value);
        let solids: Vec<f64> = found.bed.media_layers().map(|layer| 1.0 - layer.voidage.value).collect();
        let given: Vec<f64> = bed.media_layers().map(|layer| 1.0 - layer.voidage.value).collect();
        prop_assert!((solids[0] / given[0] - solids[1] / given[1]).abs() < 1e-12);
        prop_assert!(times < 1.0 || solids[0] >= given[0] * (1.0 - 1e-12));
        // A bed that lies closer has more solids to lift out: it stands out further, never less, at the same flow.
        let water = Water::at(&celsius(degrees)).unwrap();
        let speed = Known::typed(metres_per_second(35.0 / 3600.0));
        let stands = |bed: &Bed| bed.expansion_at(&water, &speed, &Lines::unknown()).unwrap().likely;
        if let (Some(was), Some(is)) = (stands(&bed), stands(&found.bed)) {
            prop_assert!(times < 1.0 || is >= was - 1e-12, "{was} {is}");
            prop_assert!(times > 1.0 || is <= was + 1e-12, "{was} {is}");
        }
        backwash(&vessel, &layers, &found.bed, &site, &duty, &Lines::unknown()).unwrap();
    }
}
