//! Density and viscosity of water, against `water.csv`.

use bedwright_calc::quantity::{Figure, Formula, Known, kelvins, kilograms_per_cubic_metre, pascal_seconds};
use bedwright_calc::water::{Water, liquid_density, liquid_viscosity};

use crate::Checked;
use crate::table::{Row, rows};

const WATER: &str = include_str!("../reference/water.csv");

/// Density and viscosity of every row, each within its own tolerance.
#[must_use]
pub fn properties() -> Checked {
    let mut checked = Checked::default();
    for row in rows(WATER) {
        let id = row.text("id");
        let temperature = Known::typed(kelvins(row.needed("temperature_k")));
        match (liquid_density(&temperature), liquid_viscosity(&temperature)) {
            (Ok(density), Ok(viscosity)) => {
                for (what, found, column, tolerance) in [
                    ("density", density.value.value, "density_kg_m3", "density_tolerance"),
                    ("viscosity", viscosity.value.value, "viscosity_pa_s", "viscosity_tolerance"),
                ] {
                    let wanted = row.needed(column);
                    checked.compare(&format!("{id} {what}"), found, wanted, row.needed(tolerance) * wanted);
                }
            }
            problems => checked.refuse(id, problems),
        }
    }
    checked
}

/// The water that a row was made with, so that its formula is checked apart from the water.
#[must_use]
pub fn of_row(row: &Row) -> Water {
    of(row.needed("density_kg_m3"), row.needed("viscosity_pa_s"))
}

/// Water of a given density, kg/m³, and viscosity, Pa·s, whatever its temperature.
#[must_use]
pub fn of(density: f64, viscosity: f64) -> Water {
    Water {
        temperature: Known::typed(kelvins(293.15)),
        density: Figure::new(kilograms_per_cubic_metre(density), Formula::Given, Vec::new()),
        viscosity: Figure::new(pascal_seconds(viscosity), Formula::Given, Vec::new()),
    }
}
