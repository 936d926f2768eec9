//! Waters and what calcite does to them, against `carbonate.csv`.

use bedwright_calc::life::carbonate::{Analysis, Carbonate, CarbonateWater};
use bedwright_calc::quantity::{Concentration, Known, kelvins};

use crate::Checked;
use crate::table::{Row, rows};

/// Allowed misses: of a pH or a saturation index, and of a concentration as a share of itself beside `LEAST_MG_L`. What is
/// left is the water that carbon dioxide binds, which we don't count.
const LOGARITHM: f64 = 1e-4;
const SHARE: f64 = 2e-4;
const LEAST_MG_L: f64 = 1e-4;
/// The same where PHREEQC turns litres into kilograms of water itself, by the density of the solution.
const OWN_LOGARITHM: f64 = 3e-3;
const OWN_SHARE: f64 = 5e-3;
const OWN_LEAST_MG_L: f64 = 0.02;

/// A concentration from milligrams per litre.
#[must_use]
pub fn milligrams(value: f64) -> Known<Concentration> {
    Known::typed(Concentration::milligrams_per_litre(value))
}

/// The analysis of a row.
#[must_use]
pub fn analysis(row: &Row) -> Analysis {
    let known = |column: &str| row.number(column).map(milligrams);
    Analysis {
        magnesium: known("magnesium_mg_l"),
        sodium: known("sodium_mg_l"),
        sulfate: known("sulfate_mg_l"),
        chloride: known("chloride_mg_l"),
        ..Analysis::new(
            Known::typed(kelvins(row.needed("temperature_k"))),
            Carbonate::PhAndAlkalinity {
                ph: Known::typed(row.needed("ph")),
                alkalinity: milligrams(row.needed("alkalinity_mg_l")),
            },
            milligrams(row.needed("calcium_mg_l")),
        )
    }
}

/// What a water and the water after it took calcite are, in the order of the table's columns.
struct Worked {
    dioxide: f64,
    index: f64,
    calcite: f64,
    ph: f64,
    alkalinity: f64,
    hardness: f64,
}

fn worked(row: &Row) -> Result<Worked, bedwright_calc::quantity::Problem> {
    let water = CarbonateWater::of(&analysis(row))?;
    let calcite = water.dissolved_to_saturation()?.value;
    let after = water.with(calcite, Concentration::default())?;
    Ok(Worked {
        dioxide: water.carbon_dioxide().value.to_milligrams_per_litre(),
        index: water.saturation_index().value,
        calcite: calcite.to_milligrams_per_litre(),
        ph: after.ph().value,
        alkalinity: after.alkalinity().value.to_milligrams_per_litre(),
        hardness: after.hardness().value.to_milligrams_per_litre(),
    })
}

/// Every water and the water it becomes.
#[must_use]
pub fn waters() -> Checked {
    let mut checked = Checked::default();
    for row in rows(include_str!("../reference/carbonate.csv")) {
        let id = row.text("id");
        let found = match worked(&row) {
            Ok(found) => found,
            Err(problem) => {
                checked.refuse(id, problem);
                continue;
            }
        };
        let mut mass = |what: &str, found: f64, column: &str, share: f64, least: f64| {
            let wanted = row.needed(column);
            checked.compare(&format!("{id} {what}"), found, wanted, share * wanted.abs() + least);
        };
        mass("carbon dioxide", found.dioxide, "carbon_dioxide_mg_l", SHARE, LEAST_MG_L);
        mass("calcite", found.calcite, "calcite_mg_l", SHARE, LEAST_MG_L);
        mass("alkalinity after", found.alkalinity, "after_alkalinity_mg_l", SHARE, LEAST_MG_L);
        mass("hardness after", found.hardness, "after_hardness_mg_l", SHARE, LEAST_MG_L);
        mass("calcite by PHREEQC's litre", found.calcite, "own_calcite_mg_l", OWN_SHARE, OWN_LEAST_MG_L);
        checked.compare(&format!("{id} pH after"), found.ph, row.needed("after_ph"), LOGARITHM);
        checked.compare(&format!("{id} pH by PHREEQC's litre"), found.ph, row.needed("own_after_ph"), OWN_LOGARITHM);
        if let (Some(index), Some(own)) = (row.number("saturation_index"), row.number("own_saturation_index")) {
            checked.compare(&format!("{id} saturation index"), found.index, index, LOGARITHM);
            checked.compare(&format!("{id} index by PHREEQC's litre"), found.index, own, OWN_LOGARITHM);
        }
    }
    checked
}

/// Largest and median miss of each quantity, a line each, for whoever asks how near it is.
#[must_use]
pub fn nearness() -> String {
    let mut misses: [Vec<f64>; 5] = Default::default();
    for row in rows(include_str!("../reference/carbonate.csv")) {
        let Ok(found) = worked(&row) else { continue };
        misses[0].push((found.ph - row.needed("after_ph")).abs());
        let wanted = row.needed("calcite_mg_l");
        // Of next to nothing a share says nothing.
        if wanted.abs() > 1.0 {
            misses[1].push(((found.calcite - wanted) / wanted).abs());
        }
        if let Some(index) = row.number("saturation_index") {
            misses[2].push((found.index - index).abs());
        }
        misses[3].push((found.ph - row.needed("own_after_ph")).abs());
        let own = row.needed("own_calcite_mg_l");
        if own.abs() > 1.0 {
            misses[4].push(((found.calcite - own) / own).abs());
        }
    }
    let names = [
        "pH after",
        "calcite, share",
        "saturation index",
        "pH by PHREEQC's litre",
        "calcite by PHREEQC's litre, share",
    ];
    told(&names, &mut misses)
}

/// Median and largest of each list, a line each.
#[must_use]
pub fn told(names: &[&str], misses: &mut [Vec<f64>]) -> String {
    let mut said = String::new();
    for (what, values) in names.iter().zip(misses) {
        values.sort_by(f64::total_cmp);
        let median = values.get(values.len() / 2).copied().unwrap_or(f64::NAN);
        let largest = values.last().copied().unwrap_or(f64::NAN);
        said.push_str(&format!("{what}: median {median:.1e}, largest {largest:.1e} of {}\n", values.len()));
    }
    said
}
