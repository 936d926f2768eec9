//! Vessels for a flow: sizes worked out on paper, and what must hold for any wish.

use bedwright_calc::hydraulics::search::{Candidate, Found, Stuff, Wanted, search};
use bedwright_calc::hydraulics::service::backwash_rules;
use bedwright_calc::hydraulics::{Arrangement, Bed, Duty, Lines, Purpose, Site, backwash, service};
use bedwright_calc::material::Grains;
use bedwright_calc::quantity::{
    Basis, Caution, Fault, Known, Mark, Problem, Reason, Remedy, Source, Subject, Term, VolumeRate, cubic_metres,
    cubic_metres_per_second, kelvins, kilograms, kilograms_per_cubic_metre, metres,
};
use bedwright_tests::fills::{CUBIC_FOOT_M3, INCH_M, inch};
use proptest::prelude::*;

/// US gallons of 231 cubic inches a minute.
fn gpm(value: f64) -> Known<VolumeRate> {
    Known::typed(cubic_metres_per_second(value * 231.0 * INCH_M * INCH_M * INCH_M / 60.0))
}

fn stuff(material: &str) -> Stuff {
    Stuff::of(material).unwrap()
}

fn wish(purpose: Purpose, material: &str, flow: f64) -> Wanted {
    Wanted {
        purpose,
        arrangement: Arrangement::Parallel,
        service_flow: gpm(flow),
        peak_flow: None,
        media: stuff(material),
        underbed: None,
        clearance: None,
        straight_riser: true,
        temperature_low: Known::typed(kelvins(283.15)),
        temperature_high: Known::typed(kelvins(293.15)),
        backwash_available: None,
        flow_control: None,
        minimum_expansion: purpose.minimum_expansion(),
    }
}

/// What will do.
fn suiting(wanted: &Wanted) -> Vec<Candidate> {
    search(wanted).unwrap().suit
}

fn dechlorination(flow: f64) -> Wanted {
    wish(Purpose::Dechlorination, "carbon_coconut_12x40", flow)
}

/// Nominal diameter in inches and number of vessels.
fn size(candidate: &Candidate) -> (u32, u32) {
    ((candidate.nominal.diameter.value / INCH_M).round() as u32, candidate.vessels)
}

fn sizes(found: &[Candidate]) -> Vec<(u32, u32)> {
    let mut sizes: Vec<_> = found.iter().map(size).collect();
    sizes.sort_unstable();
    sizes
}

fn only(found: &[Candidate], wanted: (u32, u32)) -> &Candidate {
    found
        .iter()
        .find(|candidate| size(candidate) == wanted)
        .unwrap_or_else(|| panic!("no {wanted:?} in {:?}", sizes(found)))
}

fn near(found: f64, wanted: f64, within: f64) {
    assert!((found - wanted).abs() <= within, "{found}, should be {wanted} ± {within}");
}

/// 10 gpm of at most 7 gpm/ft²: inside diameters of 0.98 of nominal have 1.341 ft² at 16 in (7.46 gpm/ft²: too fast) and
/// 1.697 ft² at 18 in (5.89). Two share it: 10 in have 0.524 ft² each (9.55), 12 in 0.754 ft² (6.63). Three: 10 in (6.36),
/// 9 in 0.424 ft² (7.86: too fast).
#[test]
fn dechlorination_is_sized_by_flow_per_area() {
    let found = suiting(&dechlorination(10.0));
    let sizes = sizes(&found);
    for will_do in [(18, 1), (12, 2), (10, 3)] {
        assert!(sizes.contains(&will_do), "{will_do:?} of {sizes:?}");
    }
    for too_fast in [(16, 1), (10, 2), (9, 3)] {
        assert!(!sizes.contains(&too_fast), "{too_fast:?} of {sizes:?}");
    }
    // 6 bags of 1 ft³ in 18 in: 44.88 gal at 10 gpm are 4.49 min, three times the 1.5 asked for.
    let single = only(&found, (18, 1));
    assert_eq!(single.packs.value, 6.0);
    near(single.usual.contact_time.value.value / 60.0, 4.488, 1e-3);
    near(single.margins.iter().find(|m| m.quantity == Term::ContactTime).unwrap().ratio.value, 2.992, 1e-3);
    near(single.margins.iter().find(|m| m.quantity == Term::FlowPerArea).unwrap().ratio.value, 7.0 / 5.892, 1e-3);
    // Two of a nominal 12 × 52 hold two bags each and are washed at 6 to 8 gpm.
    let pair = only(&found, (12, 2));
    assert_eq!((pair.packs.value, pair.packs_total.value), (2.0, 4.0));
    near(pair.media_volume.value.value, 2.0 * CUBIC_FOOT_M3, 1e-12);
    let washed = pair.flow_control.as_ref().unwrap();
    assert!((6.0..=8.0).contains(&(washed.flow.value.value / gpm(1.0).value.value).round()), "{washed:?}");
    // Nothing was measured, and the vessel's own weight isn't known.
    assert!(pair.packs.cautions.contains(&Caution::MeasureDiameter));
    assert!(pair.weights.operating.as_ref().unwrap().cautions.contains(&Caution::WithoutVessel));
}

/// 10 min of 5 gpm are 50 gal = 6.684 ft³ of carbon: 7 bags of 1 ft³ at least, over all vessels.
#[test]
fn chloramine_takes_ten_minutes_of_carbon() {
    let found = suiting(&wish(Purpose::Chloramine, "carbon_coconut_12x40", 5.0));
    assert!(found.iter().all(|candidate| candidate.packs_total.value >= 7.0));
    assert!(found.iter().any(|candidate| candidate.packs_total.value == 7.0));
}

/// Resin of 0.91 m and a backwash of 12 to 20 m/h: 24 in have 3.017 ft², so 15 gpm are 4.972 gpm/ft² or 12.15 m/h. 36 in
/// have 6.789 ft² and want 33.3 gpm, more than the largest size that is sold: 35 gpm must be asked for, 12.60 m/h. 21 in lie
/// under 36 in at their usual height.
#[test]
fn softening_keeps_to_depth_and_backwash_rate() {
    let found = suiting(&wish(Purpose::Softening, "resin_cation", 10.0));
    assert!(found.iter().all(|candidate| candidate.freeboard.media_depth.value >= inch(36.0).value));
    let single = only(&found, (24, 1));
    near(single.flow_control.as_ref().unwrap().flow_per_area.value.value * 3600.0, 12.15, 0.01);
    assert!(!sizes(&found).iter().any(|(diameter, _)| *diameter == 21));
    // 9 ft³ in 10 gpm: 67.3 gal, 6.73 min, 8.91 bed volumes an hour.
    assert_eq!(single.packs.value, 9.0);
    near(single.usual.bed_volumes.value.value * 3600.0, 8.91, 0.01);
    // 9.240, 12.069 and 20.79 ft² want 45.3, 59.2 and 102.0 gpm.
    for (diameter, asked) in [(36, 35.0), (42, 50.0), (48, 60.0), (63, 105.0)] {
        let large = only(&found, (diameter, 1)).flow_control.as_ref().unwrap();
        near(large.flow.value.value / gpm(1.0).value.value, asked, 1e-9);
        assert_eq!((large.flow.basis, large.flow.source), (Basis::Assumed, Source::OwnRule), "{diameter}");
    }
    let metres_an_hour = only(&found, (36, 1)).flow_control.as_ref().unwrap().flow_per_area.value.value * 3600.0;
    near(metres_an_hour, 12.60, 0.01);
}

/// 36 in of resin want 33.3 gpm: 35 in whole steps of 5, or whatever somebody can have from there on.
#[test]
fn a_flow_control_that_can_be_had_goes_before_one_that_must_be_asked_for() {
    let resin = wish(Purpose::Softening, "resin_cation", 10.0);
    let washed = |wanted: &Wanted| {
        let found = suiting(wanted);
        only(&found, (36, 1)).flow_control.as_ref().unwrap().flow
    };
    near(washed(&resin).value.value / gpm(1.0).value.value, 35.0, 1e-9);
    let typed = Wanted { flow_control: Some(gpm(34.0)), ..resin.clone() };
    assert_eq!(washed(&typed), gpm(34.0));
    // One that is too slow for the rule changes nothing.
    assert_eq!(washed(&Wanted { flow_control: Some(gpm(30.0)), ..resin.clone() }), washed(&resin));
    // Of 34 gpm nobody can feed 35.
    let short = search(&Wanted { backwash_available: Some(gpm(34.0)), ..resin.clone() }).unwrap();
    assert!(!sizes(&short.suit).iter().any(|(diameter, _)| *diameter == 36));
    assert!(sizes(&short.miss).iter().any(|(diameter, _)| *diameter == 36));
    let fed = Wanted { backwash_available: Some(gpm(30.0)), flow_control: Some(gpm(31.0)), ..resin };
    refused(&fed, Term::FlowControl, 31.0);
}

#[test]
fn little_water_for_backwash_leaves_only_narrow_vessels() {
    let wanted = Wanted { backwash_available: Some(gpm(8.0)), ..dechlorination(10.0) };
    let found = suiting(&wanted);
    // 18 in have 1.697 ft²: 8 gpm are 4.7 gpm/ft², and 12×40 takes about 8 to lift.
    assert!(found.iter().all(|candidate| candidate.vessels >= 2 && candidate.mark <= Mark::SetOnSite));
    assert!(sizes(&found).iter().all(|(diameter, _)| *diameter <= 14), "{:?}", sizes(&found));
    for candidate in &found {
        assert!(candidate.flow_control.as_ref().unwrap().flow.value <= gpm(8.0).value * 1.000_001);
    }
}

#[test]
fn what_will_not_do_says_what_it_misses() {
    let wanted = Wanted { backwash_available: Some(gpm(1.3)), ..dechlorination(40.0) };
    let Found { suit, miss, too_small } = search(&wanted).unwrap();
    assert!(suit.is_empty());
    // Every size is there once.
    assert_eq!(miss.len() + too_small.len(), 17);
    for candidate in &miss {
        assert!(candidate.mark > Mark::SetOnSite && candidate.misses().count() > 0);
        let washed = candidate.verdicts.iter().find(|v| matches!(v.subject, Subject::Backwash { .. })).unwrap();
        assert!(matches!(washed.reason, Reason::LiftsTooLittle { .. }), "{washed:?}");
        assert!(washed.remedies.iter().any(|remedy| matches!(remedy, Remedy::MoreBackwash { .. })));
    }
    // Not even the smallest flow control can be fed.
    let found = search(&Wanted { backwash_available: Some(gpm(0.5)), ..dechlorination(10.0) }).unwrap();
    assert!(found.suit.is_empty());
    assert!(found.miss.iter().all(|candidate| candidate.flow_control.is_none() && candidate.mark == Mark::Stop));
    // Beside what will do stands what won't: 16 in are too fast for 10 gpm, at 7.46 gpm/ft².
    let found = search(&Wanted { arrangement: Arrangement::Single, ..dechlorination(10.0) }).unwrap();
    let sixteen = only(&found.miss, (16, 1));
    let missed: Vec<_> = sixteen.misses().map(|verdict| verdict.subject).collect();
    assert_eq!(missed, [Subject::Rule { quantity: Term::FlowPerArea, section: "pressure filters" }]);
}

/// 6 × 35 holds 0.44 ft³ below its upper tangent line: no bag of 1 ft³.
#[test]
fn a_vessel_too_small_for_one_pack_says_so() {
    let found = search(&dechlorination(10.0)).unwrap();
    let (six, problem) = found.too_small.first().unwrap();
    near(six.diameter.value / INCH_M, 6.0, 1e-9);
    assert_eq!(problem.term, Term::PackVolume);
    let Fault::DoesNotFit { needs, room } = problem.fault else { panic!("{problem:?}") };
    near(needs.si(), CUBIC_FOOT_M3, 1e-12);
    assert!(room.si() < needs.si() && room.si() > 0.4 * CUBIC_FOOT_M3, "{room:?}");
}

/// Vessel and riser over it: 54 in of nominal height and 53 of riser want 107 in; 65 in want 129.
#[test]
fn a_low_ceiling_leaves_only_short_vessels() {
    let under = |height: f64, straight_riser: bool| {
        search(&Wanted { clearance: Some(inch(height)), straight_riser, ..dechlorination(10.0) }).unwrap()
    };
    let found = under(107.0, true).suit;
    assert!(found.iter().all(|candidate| candidate.nominal.usual_height <= inch(54.1).value));
    assert!(sizes(&found).contains(&(13, 2)));
    near(only(&found, (13, 2)).height_needed.value.value / INCH_M, 107.0, 1e-9);
    assert!(!sizes(&under(106.9, true).suit).contains(&(13, 2)));
    // A riser in parts needs no room over the vessel.
    assert_eq!(sizes(&under(106.9, false).suit), sizes(&suiting(&dechlorination(10.0))));
    // Under 40 in nothing stands, and every size says so.
    let none = under(40.0, true);
    assert!(
        none.suit.is_empty()
            && none.miss.iter().all(|candidate| {
                candidate.misses().any(|v| v.subject == Subject::Rule { quantity: Term::CeilingClearance, section: "" })
            })
    );
}

#[test]
fn twins_and_lead_and_lag_are_two_that_each_take_it_all() {
    for arrangement in [Arrangement::TwinAlternating, Arrangement::LeadLag] {
        let found = suiting(&Wanted { arrangement, ..dechlorination(10.0) });
        assert!(found.iter().all(|candidate| candidate.vessels == 2));
        let eighteen = only(&found, (18, 2));
        near(eighteen.usual.flow_per_area.value.value / gpm(1.0).value.value * 0.3048 * 0.3048, 5.892, 1e-3);
        assert_eq!(eighteen.packs_total.value, 2.0 * eighteen.packs.value);
        assert_eq!(eighteen.usual.contact_time_pair.is_some(), arrangement == Arrangement::LeadLag);
    }
    let found = suiting(&Wanted { arrangement: Arrangement::Single, ..dechlorination(10.0) });
    assert!(found.iter().all(|candidate| candidate.vessels == 1));
}

#[test]
fn gravel_fills_the_bottom_head_and_takes_its_room() {
    let wanted = Wanted { underbed: Some(stuff("gravel_1_8x1_4")), ..dechlorination(10.0) };
    let found = suiting(&wanted);
    let pair = only(&found, (12, 2));
    let gravel = pair.plan.layers[0].as_ref().unwrap();
    // The tangent line of 0.98 · 12 in stands a quarter of that high, 2.94 in: levelled at 3 in.
    near(pair.vessel.cavity.bottom_tangent().value / INCH_M, 2.94, 1e-9);
    near(gravel.top.value.value / INCH_M, 3.0, 1e-9);
    let bare = suiting(&dechlorination(10.0));
    assert!(pair.freeboard.length.value < only(&bare, (12, 2)).freeboard.length.value);
    // Gravel of a quarter inch beside a riser of 1.05 in pours slowly: said to the loader, no reason for another size.
    assert!(pair.loading.iter().any(|verdict| verdict.mark == Mark::Caution));
}

/// A bag that goes into no vessel, and one that goes into the largest only.
#[test]
fn a_pack_that_fits_nowhere_is_named() {
    let mut wanted = dechlorination(10.0);
    wanted.media.pack.volume = Some(Known::typed(cubic_metres(5.0)));
    let problem = search(&wanted).unwrap_err();
    assert_eq!(problem.term, Term::PackVolume);
    assert!(matches!(problem.fault, Fault::DoesNotFit { .. }), "{problem:?}");
}

fn site_of(wanted: &Wanted) -> Site {
    Site {
        temperature_low: wanted.temperature_low,
        temperature_high: wanted.temperature_high,
        backwash_available: wanted.backwash_available,
        pressure: None,
    }
}

fn grains_of(wanted: &Wanted) -> Vec<Grains> {
    wanted.underbed.iter().chain([&wanted.media]).map(|stuff| stuff.grains.clone()).collect()
}

/// What a search says of a candidate, found again the long way round.
fn judged_again(wanted: &Wanted, candidate: &Candidate) -> Result<(), TestCaseError> {
    let site = site_of(wanted);
    let fitted = candidate.flow_control.as_ref().map(|setting| setting.flow);
    let duty = Duty {
        arrangement: wanted.arrangement,
        vessels: candidate.vessels,
        service_flow: Some(wanted.service_flow),
        peak_flow: wanted.peak_flow,
        minimum_expansion: wanted.minimum_expansion,
        flow_control: fitted.or(wanted.flow_control),
        ..Duty::new(wanted.purpose)
    };
    let bed = Bed::new(&candidate.vessel, &candidate.layers, &candidate.plan, &grains_of(wanted), None).unwrap();
    let served = service(&candidate.vessel, &bed, &site, &duty).unwrap();
    prop_assert!(served.verdicts.iter().all(|verdict| candidate.verdicts.contains(verdict)));
    prop_assert_eq!(served.usual.as_ref(), Some(&candidate.usual));
    let washed = backwash(&candidate.vessel, &candidate.layers, &bed, &site, &duty, &Lines::unknown()).unwrap();
    prop_assert_eq!(washed.chosen.map(|at| &washed.settings[at]), candidate.flow_control.as_ref());
    if candidate.mark <= Mark::SetOnSite {
        let rules = candidate.flow_control.iter().flat_map(|setting| backwash_rules(&duty, &setting.flow_per_area));
        for verdict in served.verdicts.iter().chain(&washed.verdicts).cloned().chain(rules) {
            prop_assert!(verdict.mark <= Mark::SetOnSite, "{verdict:?}");
        }
        prop_assert!(candidate.margins.iter().all(|margin| margin.met && margin.ratio.value >= 1.0 - 1e-8));
        // Without a rule on its speed, no pack more would do.
        if wanted.purpose == Purpose::Dechlorination && fitted.is_some() {
            let free = Duty { flow_control: None, ..duty };
            let washed = backwash(&candidate.vessel, &candidate.layers, &bed, &site, &free, &Lines::unknown()).unwrap();
            prop_assert!(f64::from(washed.most_packs.unwrap()) >= candidate.packs.value);
        }
    }
    let weights = &candidate.weights;
    for value in [
        candidate.usual.contact_time.value.value,
        candidate.usual.loss.value.value,
        candidate.freeboard.length.value.value,
        candidate.height_needed.value.value,
        weights.dry.as_ref().unwrap().value.value,
        weights.drained_high.as_ref().unwrap().value.value,
        weights.operating.as_ref().unwrap().value.value,
    ] {
        prop_assert!(value.is_finite() && value >= 0.0, "{candidate:?}");
    }
    Ok(())
}

fn wishes() -> impl Strategy<Value = Wanted> {
    let duties = prop_oneof![
        Just((Purpose::Dechlorination, "carbon_coconut_12x40")),
        Just((Purpose::Dechlorination, "carbon_coconut_20x50")),
        Just((Purpose::Organics, "carbon_bituminous_8x30")),
        Just((Purpose::Softening, "resin_cation")),
        Just((Purpose::AnionExchange, "resin_anion")),
        Just((Purpose::Sediment, "sand_20x30")),
        Just((Purpose::IronManganese, "sand_manganese_coated")),
        Just((Purpose::Neutralising, "calcite_16x40")),
        Just((Purpose::Other, "anthracite_08_12")),
    ];
    let arrangement = prop_oneof![
        6 => Just(Arrangement::Parallel),
        1 => Just(Arrangement::Single),
        1 => Just(Arrangement::TwinAlternating),
        1 => Just(Arrangement::LeadLag),
    ];
    (
        (duties, arrangement, 0.5..60.0_f64, proptest::option::of(1.0..3.0_f64)),
        (proptest::option::of(1.0..40.0_f64), proptest::option::of(70.0..200.0_f64), any::<bool>(), any::<bool>()),
        (1.0..15.0_f64, 0.0..15.0_f64, 0.1..0.5_f64),
    )
        .prop_map(
            |((duty, arrangement, flow, peak), (available, clearance, gravel, straight_riser), (cold, swing, lift))| {
                let (purpose, material) = duty;
                Wanted {
                    arrangement,
                    peak_flow: peak.map(|times| gpm(flow * times)),
                    underbed: gravel.then(|| stuff("gravel_1_8x1_4")),
                    clearance: clearance.map(inch),
                    straight_riser,
                    temperature_low: Known::typed(kelvins(273.15 + cold)),
                    temperature_high: Known::typed(kelvins(273.15 + cold + swing)),
                    backwash_available: available.map(gpm),
                    minimum_expansion: Known::typed(lift),
                    ..wish(purpose, material, flow)
                }
            },
        )
}

/// Section of all vessels together, the least of what will do.
fn least_area(found: &[Candidate]) -> Option<f64> {
    found.iter().map(|one| one.vessel.inside_diameter.value.value.powi(2) * f64::from(one.vessels)).reduce(f64::min)
}

proptest! {
    #![proptest_config(ProptestConfig {
        cases: std::env::var("BEDWRIGHT_CASES").ok().map_or(60, |text| text.parse().expect("BEDWRIGHT_CASES is a number")),
        failure_persistence: None,
        ..ProptestConfig::default()
    })]

    /// What is kept meets its rules when service and backwash are asked again; the order is what it is said to be.
    #[test]
    fn what_is_kept_holds_when_asked_again(wanted in wishes()) {
        let Found { suit, miss, too_small } = search(&wanted).unwrap();
        prop_assert!(suit.iter().all(|candidate| candidate.mark <= Mark::SetOnSite));
        prop_assert!(miss.iter().all(|candidate| candidate.mark > Mark::SetOnSite && candidate.misses().count() > 0));
        let mut there: Vec<u32> = suit.iter().chain(&miss).map(|candidate| size(candidate).0).collect();
        there.sort_unstable();
        there.dedup();
        prop_assert_eq!(there.len() + too_small.len(), 17);
        for candidate in suit.iter().chain(&miss) {
            judged_again(&wanted, candidate)?;
            let (diameter, _) = size(candidate);
            prop_assert!(suit.iter().filter(|other| size(other).0 == diameter).count() <= 2);
        }
        for candidate in &suit {
            if let Some(clearance) = &wanted.clearance {
                prop_assert!(candidate.height_needed.value <= clearance.value);
            }
            if let (Some(washed), Some(most)) = (&candidate.flow_control, &wanted.backwash_available) {
                prop_assert!(washed.flow.value.value <= most.value.value * (1.0 + 1e-9));
            }
        }
        for pair in suit.windows(2) {
            prop_assert!((pair[0].mark, pair[0].vessels) <= (pair[1].mark, pair[1].vessels));
        }
        for pair in miss.windows(2) {
            prop_assert!(pair[0].mark <= pair[1].mark);
        }
    }

    /// More flow never does with less section.
    #[test]
    fn more_flow_never_needs_less_section(wanted in wishes(), times in 1.0..3.0_f64) {
        let more = Wanted {
            service_flow: Known::typed(wanted.service_flow.value * times),
            peak_flow: wanted.peak_flow.map(|peak| Known::typed(peak.value * times)),
            ..wanted.clone()
        };
        if let Some(larger) = least_area(&suiting(&more)) {
            let smaller = least_area(&suiting(&wanted));
            prop_assert!(smaller.is_some_and(|smaller| smaller <= larger * (1.0 + 1e-12)), "{smaller:?} {larger}");
        }
    }
}

const STRANGE: &[f64] =
    &[f64::NAN, f64::INFINITY, f64::NEG_INFINITY, -1.0, -0.0, 0.0, 5e-324, 1e-308, 1e-30, 1e30, 1e160, 1e308, f64::MAX];

#[track_caller]
fn refused(wanted: &Wanted, term: Term, case: f64) {
    match search(wanted) {
        Err(Problem { term: found, .. }) => assert_eq!(found, term, "{case}"),
        Ok(found) => panic!("{case} is taken: {:?}", sizes(&found.suit)),
    }
}

#[test]
fn strange_wishes_are_refused_by_name() {
    for &x in STRANGE {
        let flow = Known::typed(cubic_metres_per_second(x));
        refused(&Wanted { service_flow: flow, ..dechlorination(10.0) }, Term::SiteFlow, x);
        refused(&Wanted { peak_flow: Some(flow), ..dechlorination(10.0) }, Term::PeakFlow, x);
        let kelvin = Known::typed(kelvins(x));
        refused(&Wanted { temperature_low: kelvin, ..dechlorination(10.0) }, Term::WaterTemperature, x);
        refused(&Wanted { temperature_high: kelvin, ..dechlorination(10.0) }, Term::WaterTemperature, x);
        let mut wanted = dechlorination(10.0);
        wanted.media.bulk_density = Known::typed(kilograms_per_cubic_metre(x));
        refused(&wanted, Term::BulkDensity, x);
        let mut wanted = dechlorination(10.0);
        wanted.media.pack.volume = Some(Known::typed(cubic_metres(x)));
        refused(&wanted, Term::PackVolume, x);
        if x.is_nan() || !(0.0..=5.0).contains(&x) {
            let minimum_expansion = Known::typed(x);
            refused(&Wanted { minimum_expansion, ..dechlorination(10.0) }, Term::MinimumExpansion, x);
        }
        if !(x.is_finite() && x > 0.0) {
            refused(&Wanted { backwash_available: Some(flow), ..dechlorination(10.0) }, Term::BackwashAvailable, x);
            let clearance = Some(Known::typed(metres(x)));
            refused(&Wanted { clearance, ..dechlorination(10.0) }, Term::CeilingClearance, x);
            refused(&Wanted { flow_control: Some(flow), ..dechlorination(10.0) }, Term::FlowControl, x);
        }
    }
    let swapped = Wanted {
        temperature_low: Known::typed(kelvins(294.0)),
        temperature_high: Known::typed(kelvins(284.0)),
        ..dechlorination(10.0)
    };
    refused(&swapped, Term::TemperatureLow, 294.0);
    refused(&Wanted { peak_flow: Some(gpm(5.0)), ..dechlorination(10.0) }, Term::PeakFlow, 5.0);
    let mut floats = dechlorination(10.0);
    floats.media.grains.particle_density = Some(Known::typed(kilograms_per_cubic_metre(900.0)));
    refused(&floats, Term::ParticleDensity, 900.0);
    floats.media.grains.particle_density = None;
    refused(&floats, Term::ParticleDensity, 0.0);
    // Porous, and nobody knows how much of its bed is water.
    refused(&wish(Purpose::Other, "zeolite_14x40", 5.0), Term::Voidage, 0.0);
}

/// Grains and packs nobody means: an answer without NaN, or a problem.
#[test]
fn strange_grains_and_packs_bring_nothing_down() {
    for &x in STRANGE {
        let mut cases = vec![dechlorination(10.0); 8];
        let length = Known::typed(metres(x));
        cases[0].media.grains.low = length;
        cases[1].media.grains.high = length;
        cases[2].media.grains.effective_size = Some(length);
        cases[3].media.grains.uniformity = Some(Known::typed(x));
        cases[4].media.grains.voidage = Some(Known::typed(x));
        cases[5].media.grains.sphericity = Some(Known::typed(x));
        cases[6].media.grains.particle_density = Some(Known::typed(kilograms_per_cubic_metre(x)));
        cases[7].media.pack.volume = None;
        cases[7].media.pack.mass = Some(Known::typed(kilograms(x)));
        for (case, wanted) in cases.iter().enumerate() {
            let Ok(found) = search(wanted) else { continue };
            for candidate in found.suit.into_iter().chain(found.miss) {
                let loss = candidate.usual.loss.value.value;
                let margins = candidate.margins.iter().all(|margin| margin.ratio.value.is_finite());
                assert!(!loss.is_nan() && margins, "{x} in case {case}: {candidate:?}");
                let setting = candidate.flow_control.as_ref().map(|setting| (setting.cold.likely, setting.warm.likely));
                let whole = |x: Option<f64>| x.is_none_or(f64::is_finite);
                assert!(setting.is_none_or(|(cold, warm)| whole(cold) && whole(warm)), "{x} in case {case}");
            }
        }
    }
}
