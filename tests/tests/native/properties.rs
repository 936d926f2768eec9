//! What must hold for every vessel and fill, on random ones. `BEDWRIGHT_CASES` asks for more of them.

use bedwright_calc::fill::{Layer, Plan, Role, Target, plan};
use bedwright_calc::hydraulics::{Purpose, Regime};
use bedwright_calc::material::{Material, Pack};
use bedwright_calc::quantity::{Known, Length, cubic_metres, metres};
use bedwright_calc::supply::Spent;
use bedwright_calc::supply::bill::{BillPart, CountUnit, JobKind, bill};
use bedwright_calc::vessel::{
    BottomCollector, Cavity, DiameterBy, Head, Measures, Opening, Riser, Vessel, cavity::Inside,
};
use bedwright_tests::fills::bucket;
use proptest::prelude::*;

pub(super) fn cases(usual: u32) -> ProptestConfig {
    let cases =
        std::env::var("BEDWRIGHT_CASES").ok().map_or(usual, |text| text.parse().expect("BEDWRIGHT_CASES is a number"));
    // No file of past failures: what failed is made a test of its own.
    ProptestConfig {
        cases,
        failure_persistence: None,
        max_global_rejects: cases.saturating_mul(20),
        ..ProptestConfig::default()
    }
}

fn measured(value: f64) -> Known<Length> {
    Known::measured(metres(value))
}

fn top_head() -> impl Strategy<Value = Head> {
    prop_oneof![
        Just(Head::Flat),
        Just(Head::Ellipsoidal),
        Just(Head::Hemispherical),
        Just(Head::AsmeFd),
        Just(Head::Din28011),
        Just(Head::Din28013),
    ]
}

fn bottom_head() -> impl Strategy<Value = Head> {
    prop_oneof![6 => top_head(), 1 => (0.05..2.0_f64).prop_map(|depth| Head::Conical { depth: Known::measured(metres(depth)) })]
}

/// What stands at the bottom, sized to a vessel of diameter 1 and lower head depth 1.
#[derive(Clone, Copy, Debug)]
enum Bottom {
    Bare,
    Basket { diameter: f64, from: f64, tall: f64 },
    Laterals { count: u32, diameter: f64, length: f64 },
    Plate { above: f64 },
}

fn bottom() -> impl Strategy<Value = Bottom> {
    prop_oneof![
        Just(Bottom::Bare),
        (0.1..0.9_f64, 0.0..0.5_f64, 0.1..1.0_f64).prop_map(|(diameter, from, tall)| Bottom::Basket {
            diameter,
            from,
            tall
        }),
        (1..8_u32, 0.02..0.06_f64, 0.1..0.4_f64).prop_map(|(count, diameter, length)| Bottom::Laterals {
            count,
            diameter,
            length
        }),
        (0.0..0.5_f64).prop_map(|above| Bottom::Plate { above }),
    ]
}

/// A vessel that can be built: 15 cm to 3 m wide.
fn measures() -> impl Strategy<Value = Measures> {
    (
        0.15..3.0_f64,
        0.2..3.0_f64,
        bottom_head(),
        top_head(),
        0.0..0.1_f64,
        0.1..1.0_f64,
        proptest::option::of(0.02..0.9_f64),
        bottom(),
    )
        .prop_map(|(diameter, straight, bottom_head, top_head, neck, bore, riser, bottom)| {
            let at = metres(diameter);
            let low = bottom_head.depth(at).unwrap().value;
            let depth = low + straight * diameter + top_head.depth(at).unwrap().value + neck;
            let bore = bore * diameter;
            let bottom_collector = match bottom {
                Bottom::Bare => BottomCollector::None,
                Bottom::Basket { diameter: wide, from, tall } => BottomCollector::Basket {
                    diameter: measured(wide * diameter),
                    bottom: measured(from * low),
                    top: measured(from * low + tall * straight * diameter / 2.0),
                    top_slot: measured(from * low + tall * straight * diameter / 2.0),
                    slot_width: Some(measured(0.0003)),
                },
                Bottom::Laterals { count, diameter: wide, length } => BottomCollector::HubAndLaterals {
                    count,
                    diameter: measured(wide * diameter),
                    length: measured(length * diameter),
                    axis: measured(low + wide * diameter),
                    top_slot: measured(low + 1.5 * wide * diameter),
                    slot_width: Some(measured(0.0003)),
                },
                Bottom::Plate { above } => BottomCollector::SlottedPlate {
                    top: measured(low + above * straight * diameter),
                    slot_width: Some(measured(0.0003)),
                },
            };
            Measures {
                nominal_diameter: None,
                diameter_by: DiameterBy::Measured { inside: measured(diameter) },
                inside_depth: measured(depth),
                bottom_head,
                top_head,
                neck_height: measured(neck),
                clear_bore: measured(bore),
                opening: Opening::TopOnly,
                riser: riser.map(|share| Riser {
                    outside_diameter: measured(share * bore * 0.9),
                    seat: measured(0.0),
                    allowance: measured(0.0),
                }),
                bottom_collector,
                upper_collector: None,
            }
        })
}

pub(super) fn vessel() -> impl Strategy<Value = Vessel> {
    measures().prop_filter_map("laterals that cover the section", |measures| Vessel::new(measures).ok())
}

fn material(kind: Role) -> impl Strategy<Value = Material> {
    let wanted = match kind {
        Role::Underbed => bedwright_calc::material::Kind::Gravel,
        Role::Media => bedwright_calc::material::Kind::Media,
    };
    proptest::sample::select(Material::all().filter(|material| material.kind == wanted).collect::<Vec<_>>())
}

fn pack(material: &Material) -> impl Strategy<Value = Pack> + use<> {
    proptest::sample::select(Pack::of_material(&material.id).into_iter().collect::<Vec<_>>())
}

/// A layer that takes some share of a volume of 1.
fn layer(role: Role) -> impl Strategy<Value = (Layer, f64)> {
    material(role).prop_flat_map(move |material| {
        (pack(&material), Just(material), any::<bool>(), 0.001..0.4_f64).prop_map(
            move |(pack, material, minimum, share)| {
                let target = Target::Volume(Known::typed(cubic_metres(share)));
                (Layer { bulk_density: material.usual_bulk_density(), material, role, target, minimum, pack }, share)
            },
        )
    })
}

fn scaled(vessel: &Vessel, layers: Vec<(Layer, f64)>) -> Vec<Layer> {
    let capacity = vessel.cavity.capacity().value;
    layers
        .into_iter()
        .map(|(layer, share)| Layer { target: Target::Volume(Known::typed(cubic_metres(share * capacity))), ..layer })
        .collect()
}

fn stack() -> impl Strategy<Value = (Vessel, Vec<Layer>)> {
    (
        vessel(),
        proptest::collection::vec(layer(Role::Underbed), 0..3),
        proptest::collection::vec(layer(Role::Media), 1..3),
    )
        .prop_map(|(vessel, mut underbed, media)| {
            underbed.extend(media);
            let layers = scaled(&vessel, underbed);
            (vessel, layers)
        })
}

fn numbers_are_numbers(plan: &Plan) {
    for fill in plan.layers.iter().flatten() {
        for value in [
            fill.volume.value.value,
            fill.mass.value.value,
            fill.bottom.value.value,
            fill.top.value.value,
            fill.depth_axis.value.value,
            fill.depth_wall.value.value,
            fill.packs.value,
            fill.left_over.value.value,
        ] {
            assert!(value.is_finite(), "{fill:?}");
        }
        for tape in fill.after_packs.iter().chain([&fill.tape]) {
            assert!(tape.reading.value.value.is_finite() && tape.spread.value.is_finite(), "{tape:?}");
            assert!(tape.spread.value >= 0.0, "{tape:?}");
        }
    }
}

proptest! {
    #![proptest_config(cases(10_000))]

    /// Geometry: a higher level never has less below it, the lowest point has nothing, the rim has everything, and
    /// no solid makes more room than the bare shell.
    #[test]
    fn a_higher_level_never_has_less_below_it(vessel in vessel(), a in 0.0..1.0_f64, b in 0.0..1.0_f64) {
        let cavity = &vessel.cavity;
        let rim = cavity.rim();
        let (low, high) = if a <= b { (a, b) } else { (b, a) };
        let below = |share: f64| cavity.volume_below(rim * share).unwrap().value;
        // Two sums of parts may differ by what their rounding leaves.
        let rounding = 1e-14 * cavity.shell_volume().value;
        prop_assert!(below(low) <= below(high) + rounding, "{} > {}", below(low), below(high));
        prop_assert_eq!(below(0.0), 0.0);
        prop_assert!(cavity.capacity() <= cavity.shell_volume());
        prop_assert!((below(1.0) - cavity.capacity().value).abs() <= rounding);
    }

    /// Geometry: the free volume between two levels is the integral of the free section (midpoints, 64 slices,
    /// compared inside the straight side where the section is constant but for what stands in it).
    #[test]
    fn volume_is_the_integral_of_the_section(vessel in vessel(), a in 0.0..1.0_f64, b in 0.0..1.0_f64) {
        let cavity = &vessel.cavity;
        prop_assume!(!matches!(vessel.measures.bottom_collector, BottomCollector::HubAndLaterals { .. }));
        let solid_to = match vessel.measures.bottom_collector {
            BottomCollector::Basket { top, .. } | BottomCollector::SlottedPlate { top, .. } => top.value,
            _ => metres(0.0),
        };
        let from = cavity.bottom_tangent().max(solid_to);
        let room = cavity.top_tangent() - from;
        prop_assume!(room.value > 1e-3);
        let (low, high) = (from + room * a.min(b), from + room * a.max(b));
        let middle = (low + high) / 2.0;
        let expected = (cavity.section_at(middle) * (high - low)).value;
        let found = cavity.volume_below(high).unwrap().value - cavity.volume_below(low).unwrap().value;
        prop_assert!((found - expected).abs() <= 1e-12 * cavity.shell_volume().value, "{found} {expected}");
    }

    /// The height of a volume has that volume below it, within 1e-12 of the whole.
    #[test]
    fn a_volume_turned_into_its_height_comes_back(vessel in vessel(), share in 0.0..=1.0_f64) {
        let cavity = &vessel.cavity;
        let whole = cavity.capacity();
        let volume = whole * share;
        let back = cavity.volume_below(cavity.height_holding(volume).unwrap()).unwrap();
        prop_assert!((back - volume).value.abs() <= 1e-12 * whole.value, "{:e} of {:e}", (back - volume).value, whole.value);
    }

    /// Nothing fits above the rim, and nothing is below the lowest point.
    #[test]
    fn outside_the_vessel_there_is_no_answer(vessel in vessel(), beyond in 1e-9..10.0_f64) {
        let cavity = &vessel.cavity;
        prop_assert!(cavity.volume_below(cavity.rim() * (1.0 + beyond)).is_err());
        prop_assert!(cavity.volume_below(metres(-beyond)).is_err());
        prop_assert!(cavity.height_holding(cavity.capacity() * (1.0 + beyond)).is_err());
        prop_assert!(cavity.height_holding(cubic_metres(-beyond)).is_err());
    }

    /// A fill of what a site may hold: readings only fall, packs cover what was asked or say by how much they don't,
    /// and every number is one.
    #[test]
    fn more_packs_never_raise_a_tape_reading((vessel, layers) in stack()) {
        let plan = plan(&vessel, &layers, &bucket());
        numbers_are_numbers(&plan);
        let mut last = vessel.measures.inside_depth.value;
        for (layer, answer) in layers.iter().zip(&plan.layers) {
            let Ok(fill) = answer else { break };
            for tape in fill.after_packs.iter().chain([&fill.tape]) {
                prop_assert!(tape.reading.value.value <= last.value + 1e-12, "{:?} after {last:?}", tape.reading.value);
                last = tape.reading.value;
            }
            let Target::Volume(asked) = &layer.target else { unreachable!() };
            let pack = layer.pack.volume.map_or_else(
                || layer.pack.mass.unwrap().value / layer.bulk_density.value,
                |volume| volume.value,
            );
            let bought = pack * f64::from(fill.packs_to_buy);
            match &fill.near_miss {
                None => prop_assert!(bought.value >= asked.value.value - 2e-9 * pack.value, "{bought:?} for {asked:?}"),
                Some(miss) => {
                    prop_assert!(!layer.minimum, "a stated minimum was shortened");
                    prop_assert_eq!(miss.taken, fill.packs_to_buy);
                    prop_assert!(miss.shorter.value.value >= 0.0);
                    // Common practice, no source: at most a tenth of a pack is let go.
                    prop_assert!((asked.value - bought).value <= 0.1 * pack.value + 2e-9 * pack.value);
                }
            }
            prop_assert!(bought.value - fill.volume.value.value < pack.value, "a whole pack too many");
        }
    }

    /// A job of several vessels never takes more packs pooled than each on its own.
    #[test]
    fn pooling_never_takes_more_packs(stacks in proptest::collection::vec((stack(), 1..4_u32), 1..4)) {
        let plans: Vec<Plan> = stacks.iter().map(|((vessel, layers), _)| plan(vessel, layers, &bucket())).collect();
        let parts: Vec<BillPart> = stacks
            .iter()
            .zip(&plans)
            .map(|(((vessel, layers), tags), plan)| BillPart {
                tags: *tags,
                vessel,
                layers,
                plan,
                purpose: Purpose::Dechlorination,
                regime: Regime::Backwashed,
            })
            .collect();
        let bill = bill(JobKind::New, Some(&Spent::default()), &parts);
        for line in bill.pooled.iter().filter(|line| line.unit == CountUnit::Pack) {
            let alone: u32 = bill
                .vessels
                .iter()
                .flat_map(|vessel| &vessel.lines)
                .filter(|own| own.item == line.item)
                .map(|own| own.quantity)
                .sum();
            prop_assert!(line.quantity <= alone, "{} pooled, {alone} alone", line.quantity);
            let needed = line.needed.as_ref().unwrap().value;
            prop_assert!(f64::from(line.quantity) >= needed - 1e-6, "{} for {needed}", line.quantity);
        }
    }

    /// Two tags of one vessel hold what one holds twice: a cavity knows nothing of its neighbours.
    #[test]
    fn a_vessel_is_the_same_inside_however_it_is_asked(vessel in vessel(), share in 0.0..1.0_f64) {
        let inside = Inside {
            diameter: vessel.inside_diameter.value,
            depth: vessel.measures.inside_depth.value,
            bottom_head: vessel.measures.bottom_head,
            top_head: vessel.measures.top_head,
            neck_height: vessel.measures.neck_height.value,
            neck_bore: vessel.measures.clear_bore.value,
            riser: vessel.measures.riser.as_ref(),
            collector: &vessel.measures.bottom_collector,
        };
        let height = vessel.cavity.rim() * share;
        prop_assert_eq!(Cavity::new(&inside).unwrap().volume_below(height), vessel.cavity.volume_below(height));
    }
}
