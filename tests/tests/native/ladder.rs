//! Loading on site: what the tape should read, what another reading says, and what follows from it. Worked by hand from
//! the vessel's measures; the spreads are common practice, no source.

use bedwright_calc::fill::{
    Deviation, Explanation, Layer, Pour, Role, Rung, Sounding, Target, all_read, ladder, plan, pours_of, top_up,
};
use bedwright_calc::material::Pack;
use bedwright_calc::quantity::{Basis, Fault, Known, Source, Term, kilograms_per_cubic_metre};
use bedwright_calc::vessel::{DiameterBy, Measures, Vessel};
use bedwright_tests::fills::{CUBIC_FOOT_M3, INCH_M, bucket, cubic_feet, inch, layer, layer_in, twelve_by_fifty_two};
use proptest::prelude::*;

use super::properties::cases;

fn near(found: f64, wanted: f64, within: f64) {
    assert!((found - wanted).abs() <= within, "{found}, should be {wanted} ± {within}");
}

/// Inside diameter 11.75 in: a sixth of a cubic foot of gravel, two bags of carbon of 1 cu ft.
fn vessel() -> Vessel {
    Vessel::new(Measures { diameter_by: DiameterBy::Measured { inside: inch(11.75) }, ..twelve_by_fifty_two() })
        .unwrap()
}

fn layers() -> Vec<Layer> {
    let bag = Pack::of("carbon_coconut_12x40.1_ft3").unwrap();
    vec![
        layer("gravel_1_8x1_4", Role::Underbed, Target::Volume(cubic_feet(0.15))),
        layer_in("carbon_coconut_12x40", bag, Role::Media, Target::Packs(Known::typed(2.0))),
    ]
}

fn climb(vessel: &Vessel, read: &[(usize, u32, f64)]) -> Vec<Rung> {
    let layers = layers();
    let filled = plan(vessel, &layers, &bucket());
    let soundings: Vec<Sounding> =
        read.iter().map(|(layer, pack, tape)| Sounding { layer: *layer, pack: *pack, tape: inch(*tape) }).collect();
    ladder(vessel, &layers, &pours_of(&filled), None, &soundings).unwrap()
}

fn tape(rung: &Rung) -> f64 {
    rung.expected.as_ref().unwrap().reading.value.value / INCH_M
}

fn said(rung: &Rung) -> &Deviation {
    rung.outcome.as_ref().unwrap().as_ref().unwrap()
}

#[test]
fn without_a_reading_the_ladder_is_the_plan() {
    let vessel = vessel();
    let filled = plan(&vessel, &layers(), &bucket());
    let rungs = climb(&vessel, &[]);
    assert_eq!(
        rungs.iter().map(|rung| (rung.layer, rung.pack, rung.last)).collect::<Vec<_>>(),
        [(0, 1, true), (1, 1, false), (1, 2, true)]
    );
    let planned: Vec<_> = filled.layers.iter().flat_map(|layer| &layer.as_ref().unwrap().after_packs).collect();
    for (rung, planned) in rungs.iter().zip(planned) {
        let expected = rung.expected.as_ref().unwrap();
        assert_eq!(expected.reading.value, planned.reading.value);
        near(expected.spread.value, planned.spread.value, 1e-12);
    }
    // 47.60, 31.54, 15.47 in: worked by hand.
    [47.60, 31.54, 15.47].into_iter().zip(&rungs).for_each(|(wanted, rung)| near(tape(rung), wanted, 0.01));
    assert!(!all_read(&rungs));
}

#[test]
fn a_reading_within_the_spread_is_met_with_silence_and_what_follows_goes_on_from_it() {
    let vessel = vessel();
    let before = climb(&vessel, &[]);
    let rungs = climb(&vessel, &[(0, 1, 47.25)]);
    let found = said(&rungs[0]);
    assert!(found.within && found.explanations.is_empty());
    near(found.higher.value.value / INCH_M, 0.35, 0.01);
    // In the straight side a bag of 1 cu ft is 16.06 in wherever it begins.
    near(tape(&rungs[1]), 47.25 - 16.06, 0.01);
    near(tape(&rungs[2]), 47.25 - 32.13, 0.01);
    // Of one bag more is known than of all from the bottom.
    let closer = climb(&vessel, &[(0, 1, 47.25), (1, 1, 31.25)]);
    let spread = |rungs: &[Rung]| rungs[2].expected.as_ref().unwrap().spread.value;
    assert!(spread(&closer) < spread(&before));
}

/// The first bag raises the surface by 14 in where 16.06 in were to be expected: 14/16.06 = 0.872 of a bag, or a section
/// larger by 16.06/14: √(11.75²·1.1474 − 1.05²·0.1474) = 12.58 in.
#[test]
fn a_low_reading_says_how_much_of_a_bag_is_missing_and_which_diameter_would_fit() {
    let rungs = climb(&vessel(), &[(0, 1, 47.5), (1, 1, 33.5)]);
    let found = said(&rungs[1]);
    assert!(!found.within);
    near(found.higher.value.value / INCH_M, -2.06, 0.01);
    near(found.packs.value, -0.128, 0.001);
    let mut held = None;
    let mut diameter = None;
    for explanation in &found.explanations {
        match explanation {
            Explanation::PartFull(share) => held = Some(share.value),
            Explanation::Diameter(inside) => diameter = Some(inside.value.value / INCH_M),
            other => panic!("{other:?}"),
        }
    }
    near(held.unwrap(), 0.872, 0.001);
    near(diameter.unwrap(), 12.58, 0.01);
    // Filled as large as that, the vessel reads what was read.
    let wide = Vessel::new(Measures {
        diameter_by: DiameterBy::Measured { inside: inch(diameter.unwrap()) },
        ..twelve_by_fifty_two()
    });
    near(tape(&climb(&wide.unwrap(), &[(0, 1, 47.5)])[1]), 33.5, 0.001);
    // What follows goes on from what was read, not from what was planned.
    near(tape(&rungs[2]), 33.5 - 16.06, 0.01);
}

#[test]
fn a_bag_that_was_not_poured_is_called_a_bag() {
    let rungs = climb(&vessel(), &[(0, 1, 47.5), (1, 2, 31.5)]);
    let found = said(&rungs[2]);
    near(found.packs.value, -1.0, 0.01);
    let miscounts: Vec<f64> = found
        .explanations
        .iter()
        .filter_map(|explanation| match explanation {
            Explanation::Miscount(fewer) => Some(fewer.value),
            _ => None,
        })
        .collect();
    assert_eq!(miscounts, [1.0]);
    assert!(matches!(found.explanations[0], Explanation::Miscount(_)), "{:?}", found.explanations);
}

#[test]
fn a_diameter_that_nobody_measured_is_doubted_before_a_bag_is() {
    let nominal =
        Vessel::new(Measures { diameter_by: DiameterBy::Nominal { nominal: inch(12.0) }, ..twelve_by_fifty_two() })
            .unwrap();
    let known = said(&climb(&vessel(), &[(0, 1, 47.5), (1, 1, 32.7)])[1]).clone();
    let assumed = said(&climb(&nominal, &[(0, 1, 47.5), (1, 1, 33.0)])[1]).clone();
    assert!(matches!(known.explanations[0], Explanation::PartFull(_)), "{known:?}");
    assert!(matches!(assumed.explanations[0], Explanation::Diameter(_)), "{assumed:?}");
}

#[test]
fn the_first_reading_doubts_a_depth_that_is_only_assumed_and_the_next_ones_do_not() {
    let depth = Known { basis: Basis::Assumed, source: Source::FromMemory, ..inch(51.0) };
    let vessel = Vessel::new(Measures {
        diameter_by: DiameterBy::Measured { inside: inch(11.75) },
        inside_depth: depth,
        ..twelve_by_fifty_two()
    })
    .unwrap();
    let rungs = climb(&vessel, &[(0, 1, 49.1), (1, 1, 29.0)]);
    let depths = |rung: &Rung| {
        said(rung).explanations.iter().find_map(|explanation| match explanation {
            Explanation::Depth(depth) => Some(depth.value.value / INCH_M),
            _ => None,
        })
    };
    // 1.5 in deeper than the 47.6 to be expected: the vessel would be 52.5 in deep.
    near(depths(&rungs[0]).unwrap(), 52.5, 0.01);
    assert!(!said(&rungs[1]).within && depths(&rungs[1]).is_none());
}

#[test]
fn a_reading_that_contradicts_the_vessel_is_asked_about_and_nothing_follows_from_it() {
    let vessel = vessel();
    let rungs = climb(&vessel, &[(0, 1, 47.5), (1, 1, 48.0), (1, 2, 15.4)]);
    let problem = rungs[1].outcome.as_ref().unwrap().as_ref().unwrap_err();
    assert_eq!((problem.term, problem.layer), (Term::TapeReading, Some(1)));
    assert!(matches!(problem.fault, Fault::NotBelow { other: Term::TapeBefore, .. }));
    // The next one is reckoned from the gravel.
    near(tape(&rungs[2]), 47.5 - 32.13, 0.01);
    assert!(said(&rungs[2]).within);
    for outside in [-1.0, 51.5, f64::NAN, f64::INFINITY] {
        let rungs = climb(&vessel, &[(1, 1, outside)]);
        let problem = rungs[1].outcome.as_ref().unwrap().as_ref().unwrap_err();
        assert!(matches!(problem.fault, Fault::OutOfRange { .. }), "{outside}: {problem:?}");
    }
}

/// Read at 31.54 in, a bed that ends at 15.47 in lacks one bag.
#[test]
fn a_top_up_is_what_lacks_up_to_the_plan() {
    let vessel = vessel();
    let layers = layers();
    let filled = plan(&vessel, &layers, &bucket());
    let pour = top_up(&vessel, &layers, &filled, &inch(31.54)).unwrap();
    assert_eq!(pour.layer, 1);
    near(pour.packs.value, 1.0, 0.001);
    let rungs = ladder(&vessel, &layers, &[pour], Some(&inch(31.54)), &[]).unwrap();
    near(tape(rungs.last().unwrap()), 15.47, 0.01);
    let full = top_up(&vessel, &layers, &filled, &inch(15.0)).unwrap_err();
    assert!(matches!(full.fault, Fault::AlreadyReached { .. }));
    let outside = top_up(&vessel, &layers, &filled, &inch(60.0)).unwrap_err();
    assert_eq!(outside.term, Term::TapeReading);
}

#[test]
fn what_does_not_fit_is_said_on_its_own_rung() {
    let vessel = vessel();
    let pours = [Pour { layer: 1, packs: Known::typed(3.0) }];
    let rungs = ladder(&vessel, &layers(), &pours, None, &[]).unwrap();
    assert!(rungs[1].expected.is_ok());
    assert!(matches!(rungs[2].expected.as_ref().unwrap_err().fault, Fault::DoesNotFit { .. }));
    for packs in [0.0, -1.0, f64::NAN, 1e9] {
        let refused = ladder(&vessel, &layers(), &[Pour { layer: 1, packs: Known::typed(packs) }], None, &[]);
        assert_eq!(refused.unwrap_err().term, Term::Packs, "{packs}");
    }
    assert!(ladder(&vessel, &layers(), &[Pour { layer: 9, packs: Known::typed(1.0) }], None, &[]).is_err());
}

/// Sacks of 25 kg: 25/480 m³ each at 480 kg/m³; one that rises as 25/560 is a lot of 560.
#[test]
fn packs_sold_by_weight_also_say_the_lots_bulk_density() {
    let vessel = vessel();
    let mut carbon = layer_in(
        "carbon_coconut_12x40",
        Pack::of("carbon_coconut_12x40.25_kg").unwrap(),
        Role::Media,
        Target::Packs(Known::typed(1.0)),
    );
    carbon.bulk_density = Known::typed(kilograms_per_cubic_metre(480.0));
    let per_inch = CUBIC_FOOT_M3 / 16.0627;
    let rise = 25.0 / 560.0 / per_inch;
    let sounding = Sounding { layer: 0, pack: 1, tape: inch(40.0 - rise) };
    let pours = [Pour { layer: 0, packs: Known::typed(1.0) }];
    let rungs = ladder(&vessel, &[carbon], &pours, Some(&inch(40.0)), &[sounding]).unwrap();
    let density = said(&rungs[0]).explanations.iter().find_map(|explanation| match explanation {
        Explanation::BulkDensity(density) => Some(density.value.value),
        _ => None,
    });
    near(density.unwrap(), 560.0, 0.5);
}

/// What was read as expected changes nothing of what follows.
#[test]
fn a_reading_as_expected_changes_no_reading_above_it() {
    let vessel = vessel();
    let before = climb(&vessel, &[]);
    for (at, (layer, pack)) in [(0, 1), (1, 1)].into_iter().enumerate() {
        let after = climb(&vessel, &[(layer, pack, tape(&before[at]))]);
        before.iter().zip(&after).for_each(|(before, after)| near(tape(before), tape(after), 1e-9));
        assert!(said(&after[at]).within);
    }
}

proptest! {
    #![proptest_config(cases(400))]

    /// Whatever is read, every figure is a number, what is refused names the tape, and the spread is never nought.
    #[test]
    fn whatever_is_read_the_ladder_stays_whole(
        read in prop::collection::vec((0_usize..3, 0_u32..4, prop_oneof![0.0..51.0_f64, any::<f64>()]), 0..5),
        nominal in any::<bool>(),
    ) {
        let by = if nominal {
            DiameterBy::Nominal { nominal: inch(12.0) }
        } else {
            DiameterBy::Measured { inside: inch(11.75) }
        };
        let vessel = Vessel::new(Measures { diameter_by: by, ..twelve_by_fifty_two() }).unwrap();
        for rung in climb(&vessel, &read) {
            if let Ok(tape) = &rung.expected {
                prop_assert!(tape.reading.value.value.is_finite() && tape.spread.value > 0.0);
            }
            match rung.outcome {
                None => {}
                Some(Err(problem)) => prop_assert_eq!(problem.term, Term::TapeReading),
                Some(Ok(found)) => {
                    prop_assert!(found.higher.value.value.is_finite() && found.packs.value.is_finite());
                    prop_assert!(!found.within || found.explanations.is_empty());
                }
            }
        }
    }
}
