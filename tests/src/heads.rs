//! Depths and volumes of heads, against `head_shape.csv` (50 digits).

use bedwright_calc::quantity::metres;

use crate::Checked;
use crate::table::rows;
use crate::vessels::head;

const SHAPES: &str = include_str!("../reference/head_shape.csv");

/// Depth over diameter and volume over its cube.
///
/// The diameter is 1 m, so that no product hides a digit. Allowed are 8 units in the last place.
#[must_use]
pub fn shapes() -> Checked {
    let mut checked = Checked::default();
    for row in rows(SHAPES) {
        let name = row.text("head");
        let depth = row.needed("depth_per_diameter");
        let head = head(name, Some(depth));
        match (head.depth(metres(1.0)), head.volume(metres(1.0))) {
            (Ok(found), Ok(volume)) => {
                let within = 8.0 * f64::EPSILON;
                let wanted = row.needed("volume_per_diameter_cubed");
                checked.compare(&format!("{name} depth"), found.value, depth, within * depth);
                checked.compare(&format!("{name} volume"), volume.value, wanted, within * wanted);
            }
            (depth, volume) => checked.refuse(name, (depth, volume)),
        }
    }
    checked
}
