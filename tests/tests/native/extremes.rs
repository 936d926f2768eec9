//! Inputs nobody means: an answer or a problem that names the quantity, never a panic and never NaN.

use bedwright_calc::fill::{Role, Target, plan};
use bedwright_calc::quantity::{Known, Length, cubic_metres, kilograms, kilograms_per_cubic_metre, metres};
use bedwright_calc::vessel::{BottomCollector, Cavity, DiameterBy, Head, Measures, Riser, Vessel, cavity::Inside, diameter::inside_diameter};
use bedwright_tests::fills::{layer, twelve_by_fifty_two};

const STRANGE: &[f64] = &[
    f64::NAN,
    f64::INFINITY,
    f64::NEG_INFINITY,
    -1.0,
    -0.0,
    0.0,
    f64::MIN_POSITIVE,
    5e-324,
    1e-308,
    1e-30,
    0.3,
    1e30,
    1e160,
    1e308,
    f64::MAX,
    -1e308,
];

const HEADS: &[Head] =
    &[Head::Flat, Head::Ellipsoidal, Head::Hemispherical, Head::AsmeFd, Head::Din28011, Head::Din28013];

fn any(value: f64) -> Known<Length> {
    Known::typed(metres(value))
}

fn answers_are_numbers(cavity: &Cavity) {
    for &height in STRANGE {
        if let Ok(volume) = cavity.volume_below(metres(height)) {
            assert!(!volume.value.is_nan(), "volume below {height:e} of {cavity:?}");
        }
        if let Ok(found) = cavity.height_holding(cubic_metres(height)) {
            assert!(!found.value.is_nan(), "height holding {height:e} of {cavity:?}");
        }
        let _ = (cavity.section_at(metres(height)), cavity.radius_at(metres(height)));
    }
}

#[test]
fn no_measures_of_a_cavity_bring_it_down() {
    for &diameter in STRANGE {
        for &depth in STRANGE {
            for &neck in STRANGE {
                for head in HEADS.iter().copied().chain([Head::Conical { depth: metres(neck) }]) {
                    let inside = Inside {
                        diameter: metres(diameter),
                        depth: metres(depth),
                        bottom_head: head,
                        top_head: Head::Ellipsoidal,
                        neck_height: metres(neck),
                        neck_bore: metres(diameter / 2.0),
                        riser: None,
                        collector: &BottomCollector::None,
                    };
                    if let Ok(cavity) = Cavity::new(&inside) {
                        answers_are_numbers(&cavity);
                    }
                }
            }
        }
    }
}

#[test]
fn nothing_that_stands_in_a_cavity_brings_it_down() {
    for &a in STRANGE {
        for &b in STRANGE {
            for &c in STRANGE {
                let riser = Riser { outside_diameter: any(a), seat: any(b), allowance: any(c) };
                let collectors = [
                    BottomCollector::Basket { diameter: any(a), bottom: any(b), top: any(c), top_slot: any(c), slot_width: Some(any(a)) },
                    BottomCollector::HubAndLaterals {
                        count: 6,
                        diameter: any(a),
                        length: any(b),
                        axis: any(c),
                        top_slot: any(c),
                        slot_width: Some(any(a)),
                    },
                    BottomCollector::SlottedPlate { top: any(a), slot_width: Some(any(b)) },
                    BottomCollector::NozzlePlate { top: any(a), top_slot: any(b), slot_width: Some(any(c)) },
                ];
                for collector in &collectors {
                    for riser in [None, Some(&riser)] {
                        let inside = Inside {
                            diameter: metres(0.5),
                            depth: metres(1.5),
                            bottom_head: Head::Ellipsoidal,
                            top_head: Head::Ellipsoidal,
                            neck_height: metres(0.05),
                            neck_bore: metres(0.1),
                            riser,
                            collector,
                        };
                        if let Ok(cavity) = Cavity::new(&inside) {
                            answers_are_numbers(&cavity);
                        }
                    }
                }
            }
        }
    }
}

#[test]
fn no_way_to_the_inside_diameter_gives_what_is_no_number() {
    let inside = Inside {
        diameter: metres(0.3),
        depth: metres(1.3),
        bottom_head: Head::AsmeFd,
        top_head: Head::Ellipsoidal,
        neck_height: metres(0.02),
        neck_bore: metres(0.06),
        riser: None,
        collector: &BottomCollector::None,
    };
    for &a in STRANGE {
        for &b in STRANGE {
            for &c in STRANGE {
                let volume = Known::typed(cubic_metres(a));
                for by in [
                    DiameterBy::Nominal { nominal: any(a) },
                    DiameterBy::Measured { inside: any(a) },
                    DiameterBy::Circumference { around: any(a), wall: any(b) },
                    DiameterBy::MeteredFill { volume, before: any(b), after: any(c) },
                    DiameterBy::RiseOfBag { volume, before: any(b), after: any(c) },
                ] {
                    if let Ok(found) = inside_diameter(&by, &inside, Some(&any(c))) {
                        assert!(found.value.value.is_finite() && found.value.value > 0.0, "{by:?} gives {found:?}");
                    }
                }
            }
        }
    }
}

#[test]
fn no_target_brings_a_plan_down() {
    let vessel = Vessel::new(Measures {
        bottom_collector: BottomCollector::Basket {
            diameter: any(0.08),
            bottom: any(0.01),
            top: any(0.12),
            top_slot: any(0.11),
            slot_width: Some(any(0.0003)),
        },
        ..twelve_by_fifty_two()
    })
    .unwrap();
    for &value in STRANGE {
        for &other in STRANGE {
            for target in [
                Target::Cover(any(value)),
                Target::Depth(any(value)),
                Target::Volume(Known::typed(cubic_metres(value))),
                Target::Weight(Known::typed(kilograms(value))),
                Target::Packs(Known::typed(value)),
                Target::Freeboard(any(value)),
                Target::FreeboardRatio(Known::typed(value)),
                Target::TapeReading(any(value)),
            ] {
                let mut first = layer("sand_20x30", Role::Media, target);
                first.bulk_density = Known::typed(kilograms_per_cubic_metre(other));
                first.pack.volume = first.pack.volume.map(|_| Known::typed(cubic_metres(other)));
                let second = layer("anthracite_08_12", Role::Media, Target::Depth(any(0.1)));
                let plan = plan(&vessel, &[first, second], &Known::typed(cubic_metres(other)));
                for fill in plan.layers.iter().flatten() {
                    let found = [fill.volume.value.value, fill.top.value.value, fill.tape.reading.value.value, fill.packs.value];
                    assert!(found.iter().all(|value| value.is_finite()), "{value:e}, {other:e}: {fill:?}");
                }
            }
        }
    }
}
