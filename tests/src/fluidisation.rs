//! When grains lift, how far they stand apart and how fast they fall, against `minimum_fluidisation.csv`,
//! `fluidised.csv` and `terminal_speed.csv`.

use bedwright_calc::hydraulics::fluidisation::{
    Grain, ergun_minimum, ergun_voidage, haider_levenspiel_settling, wen_yu_minimum, wen_yu_voidage,
};
use bedwright_calc::quantity::{Fault, Known, Term, kilograms_per_cubic_metre, metres, metres_per_second};

use crate::table::{Row, rows};
use crate::{Checked, water};

const MINIMUM: &str = include_str!("../reference/minimum_fluidisation.csv");
const FLUIDISED: &str = include_str!("../reference/fluidised.csv");
const TERMINAL: &str = include_str!("../reference/terminal_speed.csv");

/// Settled voidage that stands in for one that the table hasn't: a single grain has none.
const ANY_VOIDAGE: f64 = 0.4;

fn grain(row: &Row, voidage: f64) -> Grain {
    Grain {
        size: Known::typed(metres(row.needed("diameter_m"))),
        particle_density: Known::typed(kilograms_per_cubic_metre(row.needed("particle_density_kg_m3"))),
        sphericity: Known::typed(row.needed("sphericity")),
        voidage: Known::typed(voidage),
    }
}

/// Speed at which a bed begins to lift, by both equations.
#[must_use]
pub fn minima() -> Checked {
    let mut checked = Checked::default();
    for row in rows(MINIMUM) {
        let id = row.text("id");
        let (grain, water) = (grain(&row, row.needed("voidage")), water::of_row(&row));
        for (column, found) in
            [("wen_yu_m_s", wen_yu_minimum(&grain, &water)), ("ergun_m_s", ergun_minimum(&grain, &water))]
        {
            let name = format!("{id} {column}");
            match found {
                Ok(speed) => {
                    let wanted = row.needed(column);
                    checked.compare(&name, speed.value.value, wanted, row.needed("relative_tolerance") * wanted);
                }
                Err(problem) => checked.refuse(&name, problem),
            }
        }
    }
    checked
}

/// Voidage of a lifted bed, never below the settled one; where the table has none the grains are carried away.
#[must_use]
pub fn voidages() -> Checked {
    let mut checked = Checked::default();
    for row in rows(FLUIDISED) {
        let id = row.text("id");
        let settled = row.needed("voidage");
        let (grain, water) = (grain(&row, settled), water::of_row(&row));
        let speed = Known::typed(metres_per_second(row.needed("speed_m_s")));
        for (column, found) in [
            ("voidage_high", ergun_voidage(&grain, &water, &speed)),
            ("voidage_low", wen_yu_voidage(&grain, &water, &speed)),
        ] {
            let name = format!("{id} {column}");
            match (found, row.number(column)) {
                (Ok(voidage), Some(open)) => {
                    let wanted = open.max(settled);
                    checked.compare(&name, voidage.value, wanted, row.needed("relative_tolerance") * wanted);
                }
                (Err(problem), None) => {
                    let carried =
                        problem.term == Term::FlowPerArea && matches!(problem.fault, Fault::CarriesAway { .. });
                    checked.expect(&name, carried, problem);
                }
                (found, wanted) => checked.refuse(&name, (found, wanted)),
            }
        }
    }
    checked
}

/// By how much the form for broken grains is faster than the drag of balls where both are asked of a ball: 1.0 to 17.7 %
/// of the ball's speed (README of the tables).
const FASTER_THAN_A_BALL: (f64, f64) = (1.009, 1.178);

/// Speed at which a single grain falls. Ours takes balls by their own drag, so the rows that ask the other form of a ball
/// only bound it.
#[must_use]
pub fn settling() -> Checked {
    let mut checked = Checked::default();
    for row in rows(TERMINAL) {
        let id = row.text("id");
        let ball = row.needed("sphericity") == 1.0;
        let wanted = row.needed("terminal_speed_m_s");
        match (haider_levenspiel_settling(&grain(&row, ANY_VOIDAGE), &water::of_row(&row)), row.text("form")) {
            (Ok(speed), "nonspherical") if ball => {
                let (least, most) = (wanted / FASTER_THAN_A_BALL.1, wanted / FASTER_THAN_A_BALL.0);
                checked.compare(id, speed.value.value, f64::midpoint(least, most), (most - least) / 2.0);
            }
            (Ok(speed), form) if (form == "sphere") == ball => {
                checked.compare(id, speed.value.value, wanted, row.needed("relative_tolerance") * wanted);
            }
            (found, form) => checked.refuse(id, (found, form)),
        }
    }
    checked
}
