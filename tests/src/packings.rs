//! How closely a bed lies, found back from the pressure that `packed_bed.csv` says it loses.

use bedwright_calc::fill::{Role, Target, plan};
use bedwright_calc::hydraulics::{Bed, CleanDrop, packing};
use bedwright_calc::material::Grains;
use bedwright_calc::quantity::{Known, cubic_metres_per_second, kilograms_per_cubic_metre, metres, pascals};
use bedwright_calc::vessel::{DiameterBy, Head, Measures, Vessel};

use crate::Checked;
use crate::beds::celsius;
use crate::fills::{bucket, layer, twelve_by_fifty_two};
use crate::table::rows;

const PACKED: &str = include_str!("../reference/packed_bed.csv");

/// One metre of grains of one size in a flat vessel of 1 m.
///
/// # Panics
/// When it is refused.
#[must_use]
pub fn one_metre(size: f64, sphericity: f64, voidage: f64) -> Bed {
    let metre = |value: f64| Known::measured(metres(value));
    let measures = Measures {
        nominal_diameter: None,
        diameter_by: DiameterBy::Measured { inside: metre(1.0) },
        inside_depth: metre(2.0),
        bottom_head: Head::Flat,
        top_head: Head::Flat,
        clear_bore: metre(0.1),
        riser: None,
        ..twelve_by_fifty_two()
    };
    let vessel = Vessel::new(measures).unwrap();
    let layers = [layer("sand_20x30", Role::Media, Target::Depth(metre(1.0)))];
    let filled = plan(&vessel, &layers, &bucket());
    let grains = Grains {
        low: metre(size),
        high: metre(size),
        effective_size: Some(metre(size)),
        uniformity: Some(Known::typed(1.0)),
        particle_density: Some(Known::typed(kilograms_per_cubic_metre(2650.0))),
        voidage: Some(Known::typed(voidage)),
        sphericity: Some(Known::typed(sphericity)),
    };
    Bed::new(&vessel, &layers, &filled, &[grains], None).unwrap()
}

/// The temperature that the id of a row names, like `sand_20x30_15c_10mh` or `us_sand_20x30_60f_5gpm_ft2`.
fn degrees_celsius(id: &str) -> f64 {
    let number = |part: &str, unit: char| part.strip_suffix(unit).and_then(|digits| digits.parse::<f64>().ok());
    id.split('_')
        .find_map(|part| number(part, 'c').or_else(|| number(part, 'f').map(|f| (f - 32.0) / 1.8)))
        .unwrap_or_else(|| panic!("{id} names no temperature"))
}

/// The voidage of every row from the pressure that outside libraries say it loses, started from one a little off.
#[must_use]
pub fn voidages() -> Checked {
    let mut checked = Checked::default();
    for row in rows(PACKED) {
        let id = row.text("id");
        let wanted = row.needed("voidage");
        let off = if wanted > 0.45 { wanted - 0.06 } else { wanted + 0.06 };
        let bed = one_metre(row.needed("diameter_m"), row.needed("sphericity"), off);
        let reading = CleanDrop {
            flow: Known::measured(cubic_metres_per_second(row.needed("speed_m_s") * bed.area.value.value)),
            temperature: celsius(degrees_celsius(id)),
            drop: Known::measured(pascals(row.needed("pressure_gradient_pa_m"))),
        };
        let found = packing(&bed, &[reading]);
        match (found.voidages.first(), found.refused.first()) {
            (Some((_, voidage)), _) => checked.compare(id, voidage.value, wanted, 1e-9),
            (None, problem) => checked.refuse(id, problem),
        }
    }
    checked
}
