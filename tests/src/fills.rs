//! Whole fills of invented vessels: every figure of every layer, for the digests and for counting work.

use bedwright_calc::fill::{Layer, LayerFill, Plan, Role, Tape, Target, plan};
use bedwright_calc::material::{Material, Pack};
use bedwright_calc::quantity::{Known, Length, Volume, cubic_metres, kilograms, metres};
use bedwright_calc::vessel::{BottomCollector, DiameterBy, Head, Measures, Opening, Riser, Vessel};

/// The international inch (1959), in metres.
pub const INCH_M: f64 = 0.0254;
/// The cubic foot from it: 0.3048³, exactly.
pub const CUBIC_FOOT_M3: f64 = 0.028_316_846_592;

/// Inches, measured.
#[must_use]
pub fn inch(value: f64) -> Known<Length> {
    Known::measured(metres(value * INCH_M))
}

/// Cubic feet, typed.
#[must_use]
pub fn cubic_feet(value: f64) -> Known<Volume> {
    Known::typed(cubic_metres(value * CUBIC_FOOT_M3))
}

/// A bucket of five US gallons of 231 cubic inches.
#[must_use]
pub fn bucket() -> Known<Volume> {
    Known::typed(cubic_metres(5.0 * 231.0 * INCH_M * INCH_M * INCH_M))
}

/// A layer of a catalogue's material in its most usual pack.
///
/// # Panics
/// When the catalogue lacks it.
#[must_use]
pub fn layer(material: &str, role: Role, target: Target) -> Layer {
    let pack = Pack::of_material(material).into_iter().next().unwrap_or_else(|| panic!("no pack for {material}"));
    layer_in(material, pack, role, target)
}

/// A layer of a catalogue's material in a given pack.
///
/// # Panics
/// When the catalogue lacks it.
#[must_use]
pub fn layer_in(material: &str, pack: Pack, role: Role, target: Target) -> Layer {
    let material = Material::of(material).unwrap_or_else(|| panic!("no material {material}"));
    Layer { bulk_density: material.usual_bulk_density(), material, role, target, minimum: false, pack }
}

/// A 12 × 52 vessel with 2:1 heads, taped at 37.9 in over a wall of 0.16 in.
#[must_use]
pub fn twelve_by_fifty_two() -> Measures {
    Measures {
        nominal_diameter: Some(inch(12.0)),
        diameter_by: DiameterBy::Circumference { around: inch(37.9), wall: inch(0.16) },
        inside_depth: inch(51.0),
        bottom_head: Head::Ellipsoidal,
        top_head: Head::Ellipsoidal,
        neck_height: inch(1.0),
        clear_bore: inch(2.5),
        opening: Opening::TopOnly,
        riser: Some(Riser { outside_diameter: inch(1.05), seat: inch(0.0), allowance: inch(0.0) }),
        bottom_collector: BottomCollector::None,
        upper_collector: None,
    }
}

/// Invented vessels with their layers: every head, every collector, every way to say how much.
///
/// # Panics
/// When one of them is refused.
#[must_use]
pub fn examples() -> Vec<(Vessel, Vec<Layer>)> {
    let metre = |value: f64| Known::measured(metres(value));
    let basket = BottomCollector::Basket {
        diameter: metre(0.09),
        bottom: metre(0.02),
        top: metre(0.16),
        top_slot: metre(0.15),
        slot_width: Some(metre(0.0003)),
    };
    let laterals = BottomCollector::HubAndLaterals {
        count: 8,
        diameter: metre(0.033_401),
        length: metre(0.25),
        axis: metre(0.12),
        top_slot: metre(0.13),
        slot_width: Some(metre(0.0003)),
    };
    let plate = BottomCollector::NozzlePlate { top: metre(0.25), top_slot: metre(0.28), slot_width: None };
    let with = |diameter: f64, depth: f64, bottom: Head, top: Head, collector: BottomCollector, riser: bool| Measures {
        nominal_diameter: None,
        diameter_by: DiameterBy::Measured { inside: metre(diameter) },
        inside_depth: metre(depth),
        bottom_head: bottom,
        top_head: top,
        neck_height: metre(0.05),
        clear_bore: metre(0.1),
        opening: if riser { Opening::Flange } else { Opening::SidePorts },
        riser: riser.then(|| Riser { outside_diameter: metre(0.033_401), seat: metre(0.01), allowance: metre(0.0) }),
        bottom_collector: collector,
        upper_collector: Some(metre(0.2)),
    };
    let gravel = |target| layer("gravel_1_8x1_4", Role::Underbed, target);
    let stacks = [
        (
            twelve_by_fifty_two(),
            vec![
                gravel(Target::Volume(cubic_feet(1.0 / 6.0))),
                layer("carbon_coconut_12x40", Role::Media, Target::Packs(Known::typed(2.0))),
            ],
        ),
        (
            with(0.6, 1.9, Head::AsmeFd, Head::AsmeFd, basket, true),
            vec![
                gravel(Target::Cover(metre(0.05))),
                layer("garnet_coarse_8x16", Role::Underbed, Target::Weight(Known::typed(kilograms(30.0)))),
                layer("sand_20x30", Role::Media, Target::Depth(metre(0.3))),
                layer("anthracite_08_12", Role::Media, Target::FreeboardRatio(Known::typed(0.5))),
            ],
        ),
        (
            with(0.9, 2.2, Head::Din28011, Head::Din28013, laterals, true),
            vec![gravel(Target::Cover(metre(0.1))), layer("calcite_16x40", Role::Media, Target::Freeboard(metre(0.6)))],
        ),
        (
            with(1.2, 2.6, Head::Hemispherical, Head::Ellipsoidal, plate, false),
            vec![
                gravel(Target::Cover(metre(0.05))),
                layer("resin_cation", Role::Media, Target::TapeReading(metre(1.1))),
            ],
        ),
        (
            with(
                0.4,
                1.8,
                Head::Conical { depth: Known::measured(metres(0.3)) },
                Head::Flat,
                BottomCollector::None,
                false,
            ),
            vec![layer("resin_anion", Role::Media, Target::Volume(Known::typed(cubic_metres(0.11))))],
        ),
    ];
    stacks
        .into_iter()
        .map(|(measures, layers)| {
            (Vessel::new(measures).unwrap_or_else(|why| panic!("example refused: {why:?}")), layers)
        })
        .collect()
}

/// Every number of every example's plan.
///
/// # Panics
/// When a layer of an example is refused.
#[must_use]
pub fn values() -> Vec<f64> {
    let mut values = Vec::new();
    for (vessel, layers) in examples() {
        let filled = plan(&vessel, &layers, &bucket());
        values.push(vessel.inside_diameter.value.value);
        values.push(vessel.capacity().value.value);
        of_plan(&filled, &mut values);
    }
    values
}

fn of_plan(filled: &Plan, values: &mut Vec<f64>) {
    for (index, layer) in filled.layers.iter().enumerate() {
        of_layer(layer.as_ref().unwrap_or_else(|why| panic!("layer {index} refused: {why:?}")), values);
    }
    let freeboard = filled.freeboard.as_ref().unwrap_or_else(|why| panic!("freeboard refused: {why:?}"));
    values.push(freeboard.length.value.value);
    values.extend(freeboard.ratio.as_ref().map(|ratio| ratio.value));
    values.push(freeboard.media_depth.value.value);
    values.extend(filled.dry_weight.as_ref().map(|weight| weight.value.value));
    values.push(filled.verdicts.len() as f64);
    values.extend(filled.verdicts.iter().map(|verdict| f64::from(verdict.mark as u8)));
}

fn of_layer(fill: &LayerFill, values: &mut Vec<f64>) {
    values.extend([
        fill.volume.value.value,
        fill.mass.value.value,
        fill.bottom.value.value,
        fill.top.value.value,
        fill.depth_axis.value.value,
        fill.depth_wall.value.value,
        fill.packs.value,
        f64::from(fill.packs_to_buy),
        fill.left_over.value.value,
    ]);
    values.extend(fill.cover.as_ref().map(|cover| cover.value.value));
    for Tape { reading, spread, .. } in std::iter::once(&fill.tape).chain(&fill.after_packs) {
        values.extend([reading.value.value, spread.value]);
    }
    if let Some(part) = &fill.part {
        values.extend([part.share.value, part.volume.value.value, part.buckets.value]);
    }
    values.extend(fill.near_miss.as_ref().map(|miss| miss.shorter.value.value));
}
