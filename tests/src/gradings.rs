//! Gradings cut at the mesh, against `grading.csv`.

use bedwright_calc::material::grading::{Grading, GradingBy};
use bedwright_calc::quantity::{Known, metres};

use crate::Checked;
use crate::table::rows;

const GRADINGS: &str = include_str!("../reference/grading.csv");

/// Sizes that the table has, by the share that is finer.
const SHARES: &[(&str, f64)] = &[
    ("finer_005_mm", 0.005),
    ("finer_05_mm", 0.05),
    ("finer_105_mm", 0.105),
    ("finer_5_mm", 0.5),
    ("finer_605_mm", 0.605),
    ("finer_9_mm", 0.9),
    ("finer_995_mm", 0.995),
];

/// Mean, standard deviation and sizes of every row that has a log-normal; the others get none.
#[must_use]
pub fn gradings() -> Checked {
    let mut checked = Checked::default();
    for row in rows(GRADINGS) {
        let id = row.text("id");
        let mm = |column: &str| Known::typed(metres(row.needed(column) / 1000.0));
        let uniformity = Known::typed(row.needed("uniformity"));
        let found = Grading::new(&mm("lower_mm"), &mm("upper_mm"), Some(&mm("effective_size_mm")), Some(&uniformity));
        match (found, row.text("exists")) {
            (Ok(grading), "yes") => {
                let Some((mean, sigma)) = grading.log_normal() else {
                    checked.refuse(id, grading.by());
                    continue;
                };
                let parameter = row.needed("parameter_tolerance");
                checked.compare(&format!("{id} mean"), mean, row.needed("mean_ln_mm"), parameter);
                checked.compare(&format!("{id} sd"), sigma, row.needed("sd"), parameter);
                for (column, share) in SHARES {
                    let wanted = row.needed(column);
                    let size = grading.size_finer_than(*share).value * 1000.0;
                    let tolerance = row.needed("relative_tolerance") * wanted;
                    checked.compare(&format!("{id} {column}"), size, wanted, tolerance);
                }
            }
            (Ok(grading), "none") => {
                checked.expect(id, matches!(grading.by(), GradingBy::StraightLines | GradingBy::OneSize), grading.by());
                checked.values.push(grading.size_finer_than(0.5).value);
            }
            (Err(problem), "none") => checked.expect(id, true, problem),
            (found, exists) => checked.refuse(id, (found, exists)),
        }
    }
    checked
}
