//! Inputs nobody means: an answer or a problem that names the quantity, never a panic and never NaN.

use std::collections::BTreeMap;

use bedwright_calc::fill::{Role, Target, plan};
use bedwright_calc::quantity::{Known, Length, cubic_metres, kilograms, kilograms_per_cubic_metre, metres};
use bedwright_calc::vessel::{
    BottomCollector, Cavity, DiameterBy, Head, Measures, Riser, Vessel, cavity::Inside, diameter::inside_diameter,
};
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

/// What came out that is no number: one line for each kind, with the first case of it.
#[derive(Default)]
struct Breaches(BTreeMap<&'static str, (usize, String)>);

impl Breaches {
    fn note(&mut self, kind: &'static str, case: impl std::fmt::Debug) {
        let entry = self.0.entry(kind).or_insert_with(|| (0, format!("{case:?}").chars().take(600).collect()));
        entry.0 += 1;
    }

    fn of_cavity(&mut self, cavity: &Cavity, case: impl std::fmt::Debug) {
        if !cavity.capacity().value.is_finite() {
            self.note("capacity", &case);
        }
        for &height in STRANGE {
            if cavity.volume_below(metres(height)).is_ok_and(|volume| volume.value.is_nan()) {
                self.note("volume below a height", (height, &case));
            }
            if cavity.height_holding(cubic_metres(height)).is_ok_and(|height| height.value.is_nan()) {
                self.note("height holding a volume", (height, &case));
            }
            if cavity.section_at(metres(height)).value.is_nan() && !height.is_nan() {
                self.note("section at a height", (height, &case));
            }
            if cavity.radius_at(metres(height)).value.is_nan() && !height.is_nan() {
                self.note("radius at a height", (height, &case));
            }
        }
    }

    #[track_caller]
    fn none(&self) {
        let said: Vec<String> = self
            .0
            .iter()
            .map(|(kind, (count, case))| format!("{kind} is no number {count} times, first for {case}"))
            .collect();
        assert!(said.is_empty(), "{}", said.join("\n"));
    }
}

#[test]
fn no_measures_of_a_cavity_bring_it_down() {
    let mut breaches = Breaches::default();
    for &diameter in STRANGE {
        for &depth in STRANGE {
            for &neck in STRANGE {
                for head in HEADS.iter().copied().chain([Head::Conical { depth: Known::measured(metres(neck)) }]) {
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
                        breaches.of_cavity(&cavity, inside);
                    }
                }
            }
        }
    }
    breaches.none();
}

#[test]
fn nothing_that_stands_in_a_cavity_brings_it_down() {
    let mut breaches = Breaches::default();
    for &a in STRANGE {
        for &b in STRANGE {
            for &c in STRANGE {
                let riser = Riser { outside_diameter: any(a), seat: any(b), allowance: any(c) };
                let collectors = [
                    BottomCollector::Basket {
                        diameter: any(a),
                        bottom: any(b),
                        top: any(c),
                        top_slot: any(c),
                        slot_width: Some(any(a)),
                    },
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
                            breaches.of_cavity(&cavity, (collector, riser));
                        }
                    }
                }
            }
        }
    }
    breaches.none();
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
    let mut breaches = Breaches::default();
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
                    let case = (target, "pack, density and bucket", other);
                    for (kind, value) in [
                        ("volume", fill.volume.value.value),
                        ("mass", fill.mass.value.value),
                        ("height of the surface", fill.top.value.value),
                        ("tape reading", fill.tape.reading.value.value),
                        ("spread", fill.tape.spread.value),
                        ("packs", fill.packs.value),
                        ("left over", fill.left_over.value.value),
                        ("buckets", fill.part.as_ref().map_or(0.0, |part| part.buckets.value)),
                    ] {
                        if !value.is_finite() {
                            breaches.note(kind, case);
                        }
                    }
                }
            }
        }
    }
    breaches.none();
}
