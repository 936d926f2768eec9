//! What beds of calcite and magnesia give waters, against `contactor.csv` and `magnesia.csv`; lines of service time by
//! depth, against `bed_depth.csv`.

use bedwright_calc::life::capacity::depth_line;
use bedwright_calc::life::carbonate::{CarbonateWater, Until, grain_surface};
use bedwright_calc::material::grading::Grading;
use bedwright_calc::quantity::{Concentration, Known, Problem, cubic_metres, cubic_metres_per_second, metres, seconds};

use crate::table::{Row, rows};
use crate::{Checked, carbonates};

/// Allowed misses: as in `carbonates`, where they come from the water that carbon dioxide binds.
const SHARE: f64 = 2e-4;
const LEAST_MG_L: f64 = 1e-4;
const LOGARITHM: f64 = 3e-4;

/// Calcite taken up, mg/L, and the pH after it.
fn worked(row: &Row) -> Result<(f64, f64), Problem> {
    let water = CarbonateWater::of(&carbonates::analysis(row))?;
    let size = Known::typed(metres(row.needed("grain_mm") / 1000.0));
    // A cubic metre of bed; its flow follows from the contact time.
    let volume = Known::typed(cubic_metres(1.0));
    let surface = grain_surface(
        &volume,
        &Grading::new(&size, &size, None, None)?,
        &Known::typed(row.needed("sphericity")),
        &Known::typed(row.needed("voidage")),
    )?;
    let flow = Known::typed(cubic_metres_per_second(1.0 / row.needed("contact_time_s")));
    let taken = water.dissolved_in_contact(&surface.known(), &flow)?.value;
    let after = water.with(taken, Concentration::default())?;
    Ok((taken.to_milligrams_per_litre(), after.ph().value))
}

/// Every bed.
#[must_use]
pub fn beds() -> Checked {
    let mut checked = Checked::default();
    for row in rows(include_str!("../reference/contactor.csv")) {
        let id = row.text("id");
        match worked(&row) {
            Ok((calcite, ph)) => {
                let wanted = row.needed("calcite_mg_l");
                checked.compare(&format!("{id} calcite"), calcite, wanted, SHARE * wanted + LEAST_MG_L);
                checked.compare(&format!("{id} pH"), ph, row.needed("after_ph"), LOGARITHM);
            }
            Err(problem) => checked.refuse(id, problem),
        }
    }
    checked
}

/// Magnesia in passing and in standing.
#[must_use]
pub fn magnesia() -> Checked {
    let mut checked = Checked::default();
    for row in rows(include_str!("../reference/magnesia.csv")) {
        let id = row.text("id");
        let worked = |until: Until| -> Result<(f64, f64), Problem> {
            let water = CarbonateWater::of(&carbonates::analysis(&row))?;
            let taken = water.magnesia_taken(until)?.value;
            let after = water.with(Concentration::default(), taken)?;
            Ok((taken.to_milligrams_per_litre(), after.ph().value))
        };
        for (until, name) in [(Until::Calcite, "passing"), (Until::Brucite, "standing")] {
            match worked(until) {
                Ok((taken, ph)) => {
                    let wanted = row.needed(&format!("{name}_mg_l"));
                    checked.compare(&format!("{id} {name}"), taken, wanted, SHARE * wanted + LEAST_MG_L);
                    checked.compare(&format!("{id} pH {name}"), ph, row.needed(&format!("{name}_ph")), LOGARITHM);
                }
                Err(problem) => checked.refuse(id, problem),
            }
        }
    }
    checked
}

/// Lines of service time by depth.
#[must_use]
pub fn depth_lines() -> Checked {
    let mut checked = Checked::default();
    for row in rows(include_str!("../reference/bed_depth.csv")) {
        let id = row.text("id");
        let numbers = |column: &str| -> Vec<f64> {
            row.text(column).split(' ').map(|text| text.parse().expect("a number")).collect()
        };
        let readings: Vec<_> = numbers("depths_m")
            .into_iter()
            .zip(numbers("times_s"))
            .map(|(depth, time)| (Known::measured(metres(depth)), Known::measured(seconds(time))))
            .collect();
        match depth_line(&readings) {
            Ok(line) => {
                let wanted = row.needed("per_metre_s");
                checked.compare(&format!("{id} slope"), line.per_metre.value.value, wanted, 1e-10 * wanted);
                checked.compare(&format!("{id} critical"), line.critical.value.value, row.needed("critical_m"), 1e-9);
            }
            Err(problem) => checked.refuse(id, problem),
        }
    }
    checked
}

/// Largest and median miss, a line each.
#[must_use]
pub fn nearness() -> String {
    let mut misses: [Vec<f64>; 2] = Default::default();
    for row in rows(include_str!("../reference/contactor.csv")) {
        let Ok((calcite, ph)) = worked(&row) else { continue };
        let wanted = row.needed("calcite_mg_l");
        misses[0].push(((calcite - wanted) / wanted).abs());
        misses[1].push((ph - row.needed("after_ph")).abs());
    }
    carbonates::told(&["calcite in contact, share", "pH after contact"], &mut misses)
}
