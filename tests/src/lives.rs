//! What readings say of a bed's life, against `student_t.csv`, `calibration.csv`, `spent.csv` and `media_loss.csv`.

use bedwright_calc::life::{DropReading, Spent, breakthrough, media_lost, run_by_drop, straight_line, t_quantile};
use bedwright_calc::quantity::{Known, Problem, Term, kilograms_per_cubic_metre, metres, pascals, seconds};
use bedwright_calc::vessel::{BottomCollector, DiameterBy, Measures, Opening, Vessel};

use crate::Checked;
use crate::table::{Row, rows};
use crate::vessels::head;

const STUDENT: &str = include_str!("../reference/student_t.csv");
const CALIBRATION: &str = include_str!("../reference/calibration.csv");
const SPENT: &str = include_str!("../reference/spent.csv");
const MEDIA_LOSS: &str = include_str!("../reference/media_loss.csv");

fn numbers(row: &Row, column: &str) -> Vec<f64> {
    row.text(column).split(' ').map(|number| number.parse().unwrap()).collect()
}

/// Quantiles of Student's t.
///
/// # Panics
/// When the table is broken.
#[must_use]
pub fn quantiles() -> Checked {
    let mut checked = Checked::default();
    for row in rows(STUDENT) {
        let id = row.text("id");
        match t_quantile(row.needed("probability"), row.needed("freedom") as u32) {
            Ok(found) => {
                let wanted = row.needed("quantile");
                checked.compare(id, found, wanted, row.needed("relative_tolerance") * wanted);
            }
            Err(problem) => checked.refuse(id, problem),
        }
    }
    checked
}

/// Places that readings were taken at, with their intervals; where none has an end, that it is said.
///
/// # Panics
/// When the table is broken.
#[must_use]
pub fn places() -> Checked {
    let mut checked = Checked::default();
    for row in rows(CALIBRATION) {
        let id = row.text("id");
        let readings: Vec<(f64, f64)> = numbers(&row, "places").into_iter().zip(numbers(&row, "readings")).collect();
        let single = row.needed("single") > 0.0;
        let found = straight_line(&readings)
            .and_then(|line| line.place_of(row.needed("size"), single, row.needed("confidence")));
        match (found, row.number("low")) {
            (Ok(found), Some(_)) => {
                for (column, value) in [("low", found.low), ("likely", found.likely), ("high", found.high)] {
                    checked.compare(&format!("{id} {column}"), value, row.needed(column), row.needed("tolerance"));
                }
            }
            (Err(Problem { term: Term::Trend, .. }), None) => checked.expect(id, true, "no end"),
            (found, _) => checked.refuse(id, found),
        }
    }
    checked
}

/// Runs from wash to wash by the same rows, read as seconds and pascals, where they can be such: the likely end of all, the
/// range of those at its own confidence.
///
/// # Panics
/// When the table is broken.
#[must_use]
pub fn runs() -> Checked {
    let mut checked = Checked::default();
    for row in rows(CALIBRATION) {
        let id = row.text("id");
        let pairs: Vec<(f64, f64)> = numbers(&row, "places").into_iter().zip(numbers(&row, "readings")).collect();
        let readings: Vec<DropReading> = pairs
            .iter()
            .map(|(since, lost)| DropReading {
                since: Known::measured(seconds(*since)),
                lost: Known::measured(pascals(*lost)),
            })
            .collect();
        let Ok(run) = run_by_drop(&readings, &Known::typed(pascals(row.needed("size")))) else { continue };
        if let Some(likely) = row.number("likely") {
            checked.compare(&format!("{id} run"), run.time.value.value, likely, row.needed("tolerance"));
        }
        let same = row.needed("single") > 0.0 && (row.needed("confidence") - 0.9).abs() < 1e-12;
        if let (true, Some(low)) = (same, row.number("low").filter(|low| *low >= 0.0)) {
            let (found_low, found_high) = run.range.expect("a range");
            checked.compare(&format!("{id} low"), found_low.value, low, row.needed("tolerance"));
            checked.compare(&format!("{id} high"), found_high.value, row.needed("high"), row.needed("tolerance"));
        }
    }
    checked
}

/// Curves of beds that are being spent, and when they reach a share of the inlet.
///
/// # Panics
/// When the table is broken.
#[must_use]
pub fn curves() -> Checked {
    let mut checked = Checked::default();
    for row in rows(SPENT) {
        let id = row.text("id");
        let places = numbers(&row, "places");
        let readings: Vec<Spent> =
            places.into_iter().zip(numbers(&row, "shares")).map(|(at, share)| Spent { at, share }).collect();
        let found = breakthrough(&readings).and_then(|curve| {
            let single = row.needed("single") > 0.0;
            Ok((curve, curve.reached(row.needed("share"), single, row.needed("confidence"))?))
        });
        match found {
            Ok((curve, span)) => {
                let values = [
                    ("rate", curve.rate),
                    ("middle", curve.middle),
                    ("low", span.low),
                    ("likely", span.likely),
                    ("high", span.high),
                ];
                for (column, value) in values {
                    let wanted = row.needed(column);
                    checked.compare(
                        &format!("{id} {column}"),
                        value,
                        wanted,
                        row.needed("relative_tolerance") * wanted,
                    );
                }
            }
            Err(problem) => checked.refuse(id, problem),
        }
    }
    checked
}

/// Media lost between two tape readings.
///
/// # Panics
/// When the table is broken.
#[must_use]
pub fn losses() -> Checked {
    let mut checked = Checked::default();
    for row in rows(MEDIA_LOSS) {
        let id = row.text("id");
        let length = |column: &str| Known::measured(metres(row.needed(column)));
        let measures = Measures {
            nominal_diameter: None,
            diameter_by: DiameterBy::Measured { inside: length("inside_diameter_m") },
            inside_depth: length("inside_depth_m"),
            bottom_head: head(row.text("head"), None),
            top_head: head(row.text("head"), None),
            neck_height: Known::measured(metres(0.0)),
            clear_bore: Known::measured(metres(0.05)),
            opening: Opening::TopOnly,
            riser: None,
            bottom_collector: BottomCollector::None,
            upper_collector: None,
        };
        let lost = Vessel::new(measures).and_then(|vessel| {
            let density = Known::measured(kilograms_per_cubic_metre(row.needed("density_kg_m3")));
            let settling = Known::measured(row.needed("settling"));
            let floor = metres(row.needed("floor_m"));
            media_lost(&vessel, floor, &length("before_m"), &length("after_m"), &settling, &density, None)
        });
        match lost {
            Ok(lost) => {
                let tolerance = row.needed("relative_tolerance");
                for (column, value) in [("volume_m3", lost.volume.value.value), ("mass_kg", lost.mass.value.value)] {
                    let wanted = row.needed(column);
                    checked.compare(&format!("{id} {column}"), value, wanted, tolerance * wanted.abs().max(1e-3));
                }
            }
            Err(problem) => checked.refuse(id, problem),
        }
    }
    checked
}
