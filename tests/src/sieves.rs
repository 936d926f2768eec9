//! Openings of test sieves, against `sieve.csv` (ASTM E11 as listed by fluids).

use bedwright_calc::material::sieve::Sieve;

use crate::Checked;
use crate::table::rows;

const SIEVES: &str = include_str!("../reference/sieve.csv");

/// Every sieve of ours has a row of that designation, and that row's opening.
///
/// The reference is in millimetres and ours in metres: one rounding is allowed.
#[must_use]
pub fn openings() -> Checked {
    let mut checked = Checked::default();
    let reference = rows(SIEVES);
    for sieve in Sieve::all() {
        match reference.iter().find(|row| row.text("designation") == sieve.designation) {
            Some(row) => {
                let wanted = row.needed("opening_mm");
                checked.compare(sieve.designation, sieve.opening.value * 1000.0, wanted, 2.0 * f64::EPSILON * wanted);
            }
            None => checked.refuse(sieve.designation, "no row of that designation"),
        }
    }
    checked
}
