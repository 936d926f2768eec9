//! Expansion of graded beds, against `expansion.csv`.

use bedwright_calc::fill::{Role, Target, plan};
use bedwright_calc::hydraulics::{Bed, Lines};
use bedwright_calc::material::Grains;
use bedwright_calc::quantity::{Known, kilograms_per_cubic_metre, metres, metres_per_second};
use bedwright_calc::vessel::Vessel;

use crate::fills::{bucket, cubic_feet, layer, twelve_by_fifty_two};
use crate::table::{Row, rows};
use crate::{Checked, water};

const EXPANSIONS: &str = include_str!("../reference/expansion.csv");

/// The grains of a row: a mesh, or one size.
fn grains(row: &Row) -> Grains {
    let mm = |value: f64| Known::typed(metres(value / 1000.0));
    let size = row.needed("effective_size_mm");
    let sieves = row.number("lower_mm").zip(row.number("upper_mm"));
    let (low, high) = sieves.unwrap_or((size, size));
    Grains {
        low: mm(low),
        high: mm(high),
        effective_size: sieves.map(|_| mm(size)),
        uniformity: sieves.map(|_| Known::typed(row.needed("uniformity"))),
        particle_density: Some(Known::typed(kilograms_per_cubic_metre(row.needed("particle_density_kg_m3")))),
        voidage: Some(Known::typed(row.needed("voidage"))),
        sphericity: Some(Known::typed(row.needed("sphericity"))),
    }
}

/// Low, likely and high expansion of every row. Ours calls low whichever model says less; a line on which any fraction
/// leaves has no expansion.
///
/// # Panics
/// When the example vessel is refused.
#[must_use]
pub fn expansions() -> Checked {
    let mut checked = Checked::default();
    // Any vessel does: only flow per area counts.
    let vessel = Vessel::new(twelve_by_fifty_two()).unwrap();
    let layers = [layer("sand_20x30", Role::Media, Target::Volume(cubic_feet(1.0)))];
    let filled = plan(&vessel, &layers, &bucket());
    for row in rows(EXPANSIONS) {
        let id = row.text("id");
        let speed = Known::typed(metres_per_second(row.needed("speed_m_s")));
        let found = Bed::new(&vessel, &layers, &filled, &[grains(&row)], None)
            .and_then(|bed| bed.expansion_at(&water::of_row(&row), &speed, &Lines::unknown()));
        // Of one size the table goes on to a voidage of 1, ours to 0.99.
        let settled = 1.0 - row.needed("voidage");
        let is_bed = |column: &str| {
            row.number(column).filter(|value| row.number("lower_mm").is_some() || settled / (1.0 + value) > 0.01)
        };
        match found {
            Ok(found) => {
                let (a, b) = (is_bed("expansion_low"), is_bed("expansion_high"));
                // Where one model has none, it is the one that says more.
                let (low, high) = match (a, b) {
                    (Some(a), Some(b)) => (Some(a.min(b)), Some(a.max(b))),
                    (some, other) => (some.or(other), None),
                };
                for (name, found, wanted) in [
                    ("low", found.low, low),
                    ("likely", found.likely, a.and(b).and(row.number("expansion_likely"))),
                    ("high", found.high, high),
                ] {
                    let name = format!("{id} {name}");
                    match (found, wanted) {
                        (Some(found), Some(wanted)) => {
                            let tolerance = row.needed("tolerance_of_volume") * (1.0 + wanted);
                            checked.compare(&name, found, wanted, tolerance);
                        }
                        (found, wanted) => checked.expect(&name, found == wanted, (found, wanted)),
                    }
                }
            }
            Err(problem) => checked.refuse(id, problem),
        }
    }
    checked
}
