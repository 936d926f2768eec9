//! Pressure lost in a bed at rest, against `packed_bed.csv`.

use bedwright_calc::hydraulics::packed_bed::{PackedBed, ergun_pressure_loss};
use bedwright_calc::quantity::{Known, metres, metres_per_second};

use crate::table::rows;
use crate::{Checked, water};

const PACKED: &str = include_str!("../reference/packed_bed.csv");

/// The pressure gradient of every row, as the loss of one metre.
#[must_use]
pub fn gradients() -> Checked {
    let mut checked = Checked::default();
    for row in rows(PACKED) {
        let id = row.text("id");
        let bed = PackedBed {
            depth: Known::typed(metres(1.0)),
            grain_size: Known::typed(metres(row.needed("diameter_m"))),
            sphericity: Known::typed(row.needed("sphericity")),
            voidage: Known::typed(row.needed("voidage")),
        };
        let speed = Known::typed(metres_per_second(row.needed("speed_m_s")));
        match ergun_pressure_loss(&bed, &water::of_row(&row), &speed) {
            Ok(loss) => {
                let wanted = row.needed("pressure_gradient_pa_m");
                checked.compare(id, loss.value.value, wanted, row.needed("relative_tolerance") * wanted);
            }
            Err(problem) => checked.refuse(id, problem),
        }
    }
    checked
}
