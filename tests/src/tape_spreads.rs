//! How far a tape reading may lie from the one to expect, against `tape_spread.csv`.
//!
//! The table draws vessels, packs and readings at random and shares nothing with our own way, which adds the first-order
//! effects of each. The standard deviations it draws with are those of our assumptions, which is checked as well.

use bedwright_calc::fill::{Layer, Pour, Role, Target, ladder};
use bedwright_calc::material::{Container, Material, Pack};
use bedwright_calc::quantity::{Assumption, Basis, Known, Source, cubic_metres, metres};
use bedwright_calc::vessel::{BottomCollector, DiameterBy, Head, Measures, Opening, Riser, Vessel};

use crate::Checked;
use crate::table::{Row, rows};

const TABLE: &str = include_str!("../reference/tape_spread.csv");

/// Of every row the reading, the spread, and the standard deviations it was drawn with.
///
/// # Panics
/// When the catalogue lacks the material that is poured.
#[must_use]
pub fn spreads() -> Checked {
    let mut checked = Checked::default();
    for row in rows(TABLE) {
        let id = row.text("id");
        let half = row.needed("half_width_m");
        let vessel = match Vessel::new(measures(&row)) {
            Ok(vessel) => vessel,
            Err(why) => {
                checked.refuse(id, why);
                continue;
            }
        };
        let assumed = [vessel.diameter_tolerance(), Assumption::SpreadPack.ratio(), Assumption::SpreadTape.ratio()];
        let drawn = ["diameter_sd", "pack_sd", "tape_sd_m"].map(|column| row.needed(column));
        checked.expect(id, assumed.iter().zip(&drawn).all(|(a, b)| (a - b).abs() < 1e-12), (assumed, drawn));
        let start = row.number("start_tape_m").map(|tape| Known::measured(metres(tape)));
        let pours = [Pour { layer: 0, packs: Known::typed(row.needed("packs")) }];
        let found = ladder(&vessel, &[layer(row.needed("pack_m3"))], &pours, start.as_ref(), &[]);
        let last = found.map(|rungs| rungs.last().map(|rung| rung.expected.clone()));
        match last {
            Ok(Some(Ok(tape))) => {
                // The middle of so many draws is known to a hundredth of the half width; what isn't linear adds a little.
                checked.compare(id, tape.reading.value.value, row.needed("tape_m"), half * 0.1);
                checked.compare(id, tape.spread.value, half, half * row.needed("relative_tolerance"));
            }
            other => {
                checked.refuse(id, &other);
                checked.refuse(id, &other);
            }
        }
    }
    checked
}

fn measures(row: &Row) -> Measures {
    let metre = |column: &str| Known::measured(metres(row.needed(column)));
    let head = match row.text("head") {
        "flat" => Head::Flat,
        "ellipsoidal" => Head::Ellipsoidal,
        "hemispherical" => Head::Hemispherical,
        other => panic!("no head is called {other}"),
    };
    let inside = Known {
        basis: if row.text("id").ends_with("_nominal") { Basis::Assumed } else { Basis::Measured },
        ..metre("inside_diameter_m")
    };
    let zero = Known::measured(metres(0.0));
    Measures {
        nominal_diameter: None,
        diameter_by: DiameterBy::Measured { inside },
        inside_depth: metre("inside_depth_m"),
        bottom_head: head,
        top_head: head,
        neck_height: zero,
        clear_bore: Known::measured(metres(0.1)),
        opening: Opening::TopOnly,
        riser: Some(Riser { outside_diameter: metre("riser_m"), seat: zero, allowance: zero }),
        bottom_collector: BottomCollector::None,
        upper_collector: None,
    }
}

/// A layer of packs that hold this volume.
fn layer(volume: f64) -> Layer {
    let material = Material::of("carbon_coconut_12x40").unwrap_or_else(|| panic!("no such material"));
    let pack = Pack {
        id: "drawn".into(),
        container: Container::Bag,
        volume: Some(Known::catalogue(cubic_metres(volume), Source::CommonPractice)),
        mass: None,
    };
    let bulk_density = material.usual_bulk_density();
    let target = Target::Packs(Known::typed(1.0));
    Layer { material, role: Role::Media, target, minimum: false, pack, bulk_density }
}
