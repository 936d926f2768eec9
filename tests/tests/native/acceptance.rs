//! What a loader on site would hold us to. Numbers worked by hand from the vessel's measures; the limits are common
//! practice, no source.

use bedwright_calc::fill::{Plan, Role, Target, plan};
use bedwright_calc::material::{Container, Pack};
use bedwright_calc::quantity::{Fault, Known, Mark, Remedy, Subject, Term, Verdict, cubic_metres, metres};
use bedwright_calc::vessel::{DiameterBy, Measures, Opening, Riser, Vessel};
use bedwright_tests::fills::{CUBIC_FOOT_M3, INCH_M, bucket, cubic_feet, inch, layer, layer_in, twelve_by_fifty_two};

const MEDIA: &str = "carbon_coconut_12x40";

fn bag_of_one_cubic_foot() -> Pack {
    let pack = Pack::of("carbon_coconut_12x40.1_ft3").unwrap();
    assert_eq!(pack.container, Container::Bag);
    let volume = pack.volume.unwrap().value.value;
    assert!((volume - CUBIC_FOOT_M3).abs() <= f64::EPSILON * CUBIC_FOOT_M3, "{volume}");
    pack
}

/// Gravel of a sixth of a cubic foot, then media as asked.
fn filled(measures: Measures, gravel_ft3: f64, media: Target) -> (Vessel, Plan) {
    let vessel = Vessel::new(measures).unwrap();
    let layers = [
        layer("gravel_1_8x1_4", Role::Underbed, Target::Volume(cubic_feet(gravel_ft3))),
        layer_in(MEDIA, bag_of_one_cubic_foot(), Role::Media, media),
    ];
    let filled = plan(&vessel, &layers, &bucket());
    (vessel, filled)
}

fn bags(count: f64) -> Target {
    Target::Packs(Known::typed(count))
}

fn near(found: f64, wanted: f64, within: f64) {
    assert!((found - wanted).abs() <= within, "{found}, should be {wanted} ± {within}");
}

#[track_caller]
fn tapes_in(plan: &Plan, wanted: &[f64]) {
    let (gravel, media) = (plan.layers[0].as_ref().unwrap(), plan.layers[1].as_ref().unwrap());
    let found: Vec<f64> =
        std::iter::once(&gravel.tape).chain(&media.after_packs).map(|tape| tape.reading.value.value / INCH_M).collect();
    assert_eq!(found.len(), wanted.len(), "{found:?}");
    for (&found, &wanted) in found.iter().zip(wanted) {
        near(found, wanted, 0.02);
    }
}

#[test]
fn a_12_by_52_reads_as_the_loader_finds_it_after_gravel_and_each_bag() {
    let (vessel, plan) = filled(twelve_by_fifty_two(), 1.0 / 6.0, bags(2.0));
    near(vessel.inside_diameter.value.value / INCH_M, 11.744, 5e-4);
    tapes_in(&plan, &[47.33, 31.25, 15.17]);
}

#[test]
fn a_third_bag_does_not_fit() {
    let (_, plan) = filled(twelve_by_fifty_two(), 1.0 / 6.0, bags(3.0));
    let beyond = match &plan.layers[1] {
        Err(problem) => {
            assert_eq!((problem.term, problem.layer), (Term::LayerVolume, Some(1)));
            matches!(problem.fault, Fault::DoesNotFit { .. })
        }
        Ok(_) => false,
    };
    let stops = plan.verdicts.iter().any(|verdict| verdict.subject == Subject::Freeboard && verdict.mark == Mark::Stop);
    assert!(stops, "{:?}", plan.verdicts);
    let two = plan
        .verdicts
        .iter()
        .flat_map(|verdict| &verdict.remedies)
        .any(|remedy| matches!(remedy, Remedy::FewerPacks { packs } if packs.si() == 2.0));
    assert!(two, "{:?}", plan.verdicts);
    // 3 bags and the gravel are 3.17 cubic feet; the bare shell up to the rim holds less than 3.1.
    assert!(beyond, "{:?}", plan.layers[1]);
}

#[test]
fn nobody_buys_a_bag_for_six_hundredths_of_a_cubic_foot() {
    let (vessel, two) = filled(twelve_by_fifty_two(), 1.0 / 6.0, bags(2.0));
    let gravel_top = two.layers[0].as_ref().unwrap().top.value;
    let under = vessel.cavity.volume_below(gravel_top).unwrap();
    let surface = vessel.cavity.height_holding(under + cubic_metres(2.06 * CUBIC_FOOT_M3)).unwrap();
    let (_, plan) = filled(twelve_by_fifty_two(), 1.0 / 6.0, Target::Depth(Known::typed(surface - gravel_top)));
    let media = plan.layers[1].as_ref().unwrap();
    assert_eq!(media.packs_to_buy, 2);
    assert!(media.part.is_none());
    let miss = media.near_miss.as_ref().unwrap();
    assert_eq!(miss.taken, 2);
    near(miss.needed.value, 2.06, 1e-9);
    near(miss.shorter.value.value / INCH_M, 0.96, 0.05);
}

#[test]
fn a_stated_minimum_is_not_shortened() {
    let vessel = Vessel::new(twelve_by_fifty_two()).unwrap();
    let mut media = layer_in(MEDIA, bag_of_one_cubic_foot(), Role::Media, Target::Volume(cubic_feet(2.06)));
    media.minimum = true;
    let plan = plan(&vessel, &[media], &bucket());
    let media = plan.layers[0].as_ref().unwrap();
    assert_eq!(media.packs_to_buy, 3);
    assert!(media.near_miss.is_none());
    near(media.part.as_ref().unwrap().share.value, 0.06, 1e-9);
}

/// The verdict on pouring one gravel beside the riser, in a 12 × 52 with these changes.
fn gap(gravel: &str, riser_in: f64, bore_in: f64) -> Verdict {
    let vessel = Vessel::new(Measures {
        clear_bore: inch(bore_in),
        riser: Some(Riser { outside_diameter: inch(riser_in), seat: inch(0.0), allowance: inch(0.0) }),
        ..twelve_by_fifty_two()
    })
    .unwrap();
    let layers = [layer(gravel, Role::Underbed, Target::Volume(cubic_feet(0.2)))];
    plan(&vessel, &layers, &bucket())
        .verdicts
        .into_iter()
        .find(|verdict| verdict.subject == Subject::Gap { layer: 0 })
        .unwrap()
}

#[test]
fn a_riser_of_1_9_in_a_bore_of_2_1_2_lets_fine_gravel_pass_slowly_and_coarse_not_at_all() {
    let fine = gap("gravel_1_8x1_4", 1.9, 2.5);
    assert_eq!(fine.mark, Mark::Caution);
    assert!(fine.remedies.contains(&Remedy::PourSlowly), "{fine:?}");
    let coarse = gap("gravel_1_4x1_2", 1.9, 2.5);
    assert_eq!(coarse.mark, Mark::Stop);
    assert!(coarse.remedies.contains(&Remedy::FillPortOrManway), "{coarse:?}");
}

#[test]
fn a_bore_of_4_lets_more_pass_but_not_the_coarsest() {
    assert_eq!(gap("gravel_1_8x1_4", 1.9, 4.0).mark, Mark::Fine);
    assert_eq!(gap("gravel_1_4x1_2", 1.9, 4.0).mark, Mark::Caution);
    let coarsest = gap("gravel_3_4x1_1_2", 1.9, 4.0);
    assert_eq!(coarsest.mark, Mark::Stop);
    assert!(coarsest.remedies.contains(&Remedy::FillPortOrManway), "{coarsest:?}");
}

#[test]
fn a_fill_port_takes_what_the_gap_stops() {
    let vessel = Vessel::new(Measures { opening: Opening::FillPort, ..twelve_by_fifty_two() }).unwrap();
    let layers = [layer("gravel_3_4x1_1_2", Role::Underbed, Target::Volume(cubic_feet(0.2)))];
    let plan = plan(&vessel, &layers, &bucket());
    assert!(!plan.verdicts.iter().any(|verdict| matches!(verdict.subject, Subject::Gap { .. })), "{:?}", plan.verdicts);
}

#[test]
fn a_tape_over_a_jacket_gives_itself_away() {
    let vessel = Vessel::new(Measures {
        diameter_by: DiameterBy::Circumference { around: inch(39.5), wall: inch(0.16) },
        ..twelve_by_fifty_two()
    })
    .unwrap();
    near(vessel.inside_diameter.value.value / INCH_M, 12.25, 0.005);
    let verdict = vessel.diameter_verdict().unwrap();
    assert_eq!((verdict.subject, verdict.mark), (Subject::Diameter, Mark::Caution));
    assert!(verdict.remedies.contains(&Remedy::TapeBareShell));
    let plan = plan(&vessel, &[layer(MEDIA, Role::Media, Target::Volume(cubic_feet(1.0)))], &bucket());
    assert!(plan.verdicts.contains(&verdict));
}

#[test]
fn a_true_circumference_is_met_with_silence() {
    assert_eq!(Vessel::new(twelve_by_fifty_two()).unwrap().diameter_verdict(), None);
}

#[test]
fn eleven_and_three_quarters_inside_fills_as_worked_by_hand() {
    let measures = Measures { diameter_by: DiameterBy::Measured { inside: inch(11.75) }, ..twelve_by_fifty_two() };
    let (_, plan) = filled(measures, 0.15, bags(2.0));
    let (gravel, media) = (plan.layers[0].as_ref().unwrap(), plan.layers[1].as_ref().unwrap());
    near(gravel.depth_axis.value.value / INCH_M, 3.40, 0.005);
    near(gravel.depth_wall.value.value / INCH_M, 0.46, 0.005);
    tapes_in(&plan, &[47.60, 31.54, 15.47]);
    let freeboard = plan.freeboard.as_ref().unwrap();
    near(freeboard.length.value.value / INCH_M, 11.54, 0.01);
    near(freeboard.ratio.as_ref().unwrap().value, 0.359, 0.0005);
    // Nine readings of ten within about 1 1/8 in of the last one.
    near(media.after_packs[1].spread.value / INCH_M, 1.125, 0.15);
}

#[test]
fn the_layers_of_a_fill_are_as_deep_as_the_fill() {
    let (_, plan) = filled(twelve_by_fifty_two(), 1.0 / 6.0, bags(2.0));
    let depths: f64 = plan.layers.iter().map(|layer| layer.as_ref().unwrap().depth_axis.value.value).sum();
    let last = plan.layers[1].as_ref().unwrap();
    assert_eq!(last.top.value, metres(51.0 * INCH_M) - last.tape.reading.value);
    near(depths, last.top.value.value, 1e-15);
}
