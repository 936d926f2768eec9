//! Volumes below heights and back, against `vessel_volume.csv` and `vessel_height.csv`.

use bedwright_calc::quantity::{Known, Problem, cubic_metres, metres};
use bedwright_calc::vessel::{BottomCollector, Cavity, Head, Riser, cavity::Inside};

use crate::Checked;
use crate::table::{Row, rows};

const VOLUMES: &str = include_str!("../reference/vessel_volume.csv");
const HEIGHTS: &str = include_str!("../reference/vessel_height.csv");

/// The head that a table names.
///
/// # Panics
/// When it names none of ours.
#[must_use]
pub fn head(name: &str, cone_depth_m: Option<f64>) -> Head {
    match (name, cone_depth_m) {
        ("flat", _) => Head::Flat,
        ("ellipsoidal", _) => Head::Ellipsoidal,
        ("hemispherical", _) => Head::Hemispherical,
        ("asme_fd", _) => Head::AsmeFd,
        ("din_28011", _) => Head::Din28011,
        ("din_28013", _) => Head::Din28013,
        ("conical", Some(depth)) => Head::Conical { depth: Known::measured(metres(depth)) },
        _ => panic!("no head is called {name}"),
    }
}

fn cavity(row: &Row) -> Result<Cavity, Problem> {
    let metre = |column: &str| row.number(column).map(metres);
    let measured = |column: &str| Known::measured(metres(row.needed(column)));
    let diameter = metres(row.needed("inside_diameter_m"));
    let bottom_head = head(row.text("head_bottom"), row.number("cone_bottom_depth_m"));
    let top_head = head(row.text("head_top"), None);
    let neck_height = metre("neck_height_m").unwrap_or(metres(0.0));
    let neck_bore = metre("neck_diameter_m").unwrap_or(diameter / 2.0);
    let depth =
        bottom_head.depth(diameter)? + metres(row.needed("straight_side_m")) + top_head.depth(diameter)? + neck_height;
    let riser = row.number("riser_diameter_m").map(|outside| Riser {
        outside_diameter: Known::measured(metres(outside)),
        seat: measured("riser_bottom_m"),
        allowance: Known::measured(metres(0.0)),
    });
    let collector = match row.number("collector_diameter_m") {
        None => BottomCollector::None,
        Some(outside) => BottomCollector::Basket {
            diameter: Known::measured(metres(outside)),
            bottom: measured("collector_bottom_m"),
            top: measured("collector_top_m"),
            top_slot: measured("collector_top_m"),
            slot_width: None,
        },
    };
    Cavity::new(&Inside {
        diameter,
        depth,
        bottom_head,
        top_head,
        neck_height,
        neck_bore,
        riser: riser.as_ref(),
        collector: &collector,
    })
}

/// Volumes below heights.
#[must_use]
pub fn volumes() -> Checked {
    let mut checked = Checked::default();
    for row in rows(VOLUMES) {
        let id = row.text("id");
        match cavity(&row).and_then(|cavity| cavity.volume_below(metres(row.needed("height_m")))) {
            Ok(volume) => {
                let wanted = row.needed("volume_m3");
                checked.compare(id, volume.value, wanted, row.needed("relative_tolerance") * wanted);
            }
            Err(problem) => checked.refuse(id, problem),
        }
    }
    checked
}

/// What vessels hold up to the rim, by the rows that are asked a billionth of a thousandth below it.
#[must_use]
pub fn capacities() -> Checked {
    let mut checked = Checked::default();
    for row in rows(VOLUMES).iter().filter(|row| row.text("branch") == "rim") {
        let id = row.text("id");
        match cavity(row) {
            Ok(cavity) => {
                let wanted = row.needed("volume_m3");
                checked.compare(id, cavity.capacity().value, wanted, 1e-11 * wanted);
            }
            Err(problem) => checked.refuse(id, problem),
        }
    }
    checked
}

/// Heights that hold volumes; the tolerance is relative to the height of the rim.
#[must_use]
pub fn heights() -> Checked {
    let mut checked = Checked::default();
    for row in rows(HEIGHTS) {
        let id = row.text("id");
        let found = cavity(&row).and_then(|cavity| {
            let height = cavity.height_holding(cubic_metres(row.needed("volume_m3")))?;
            Ok((height.value, cavity.rim().value))
        });
        match found {
            Ok((height, rim)) => {
                checked.compare(id, height, row.needed("height_m"), row.needed("relative_tolerance") * rim)
            }
            Err(problem) => checked.refuse(id, problem),
        }
    }
    checked
}

/// Every volume of the first table turned into its height and back: within 1e-12 of the whole volume.
#[must_use]
pub fn inverses() -> Checked {
    let mut checked = Checked::default();
    for row in rows(VOLUMES) {
        let id = row.text("id");
        let wanted = row.needed("volume_m3");
        let back = cavity(&row).and_then(|cavity| {
            let height = cavity.height_holding(cubic_metres(wanted))?;
            Ok((cavity.volume_below(height)?.value, cavity.capacity().value))
        });
        match back {
            Ok((volume, whole)) => checked.compare(id, volume, wanted, 1e-12 * whole),
            Err(problem) => checked.refuse(id, problem),
        }
    }
    checked
}
