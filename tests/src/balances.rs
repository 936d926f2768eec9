//! How long beds last, what they take in a year and what is lifted, against `balances.csv`.

use bedwright_calc::life::capacity::{HoldingBed, holding_life, water_until_full};
use bedwright_calc::life::carbon::{
    Freundlich, bed_volumes_until, capacity_of, carbon_use, chlorine_left, contact_time_needed, half_time,
};
use bedwright_calc::life::oxidant::{Oxidant, oxidant_demand};
use bedwright_calc::life::softening::{Softened, Softener, softened};
use bedwright_calc::life::yearly::{dissolved_in_year, media_in_year, packs_in_year, wash_water_in_year};
use bedwright_calc::quantity::{
    Amount, Concentration, Figure, Formula, Known, Problem, Volume, cubic_metres, cubic_metres_per_second, kilograms,
    kilograms_per_cubic_metre, metres, metres_per_second, seconds,
};
use bedwright_calc::supply::lifting::{Grip, Lift, lift_limit, lifting_index};
use bedwright_calc::supply::quote::wash_water_per_year;

use crate::Checked;
use crate::table::rows;

const TABLE: &str = include_str!("../reference/balances.csv");

/// What went in, one after the other.
struct Given(Vec<f64>);

impl Given {
    fn number(&self, at: usize) -> Known<f64> {
        Known::typed(self.0[at])
    }

    fn concentration(&self, at: usize) -> Known<Concentration> {
        Known::typed(Concentration::kilograms_per_cubic_metre(self.0[at]))
    }

    fn volume(&self, at: usize) -> Known<Volume> {
        Known::typed(cubic_metres(self.0[at]))
    }

    fn softened(&self) -> Result<Softened, Problem> {
        softened(&Softener {
            resin: self.volume(0),
            salt_dose: Known::typed(kilograms_per_cubic_metre(self.0[1])),
            capacity: None,
            hardness: self.concentration(2),
            iron: Some(self.concentration(3)),
            iron_factor: self.number(4),
            reserve: self.number(5),
            average: Known::typed(cubic_metres_per_second(self.0[6])),
        })
    }

    fn bed(&self) -> HoldingBed {
        HoldingBed {
            volume: self.volume(0),
            capacity: self.concentration(1),
            usable: self.number(2),
            inlet: self.concentration(3),
            outlet: self.concentration(4),
            average: Known::typed(cubic_metres_per_second(self.0[5])),
        }
    }

    fn lift(&self) -> Lift {
        let length = |at: usize| Known::typed(metres(self.0[at]));
        Lift { reach: length(0), height: length(1), travel: length(2), twist_degrees: self.number(3), grip: Grip::Fair }
    }
}

/// The figure and its formula; of a pair the sum of both.
fn figure<Q: Copy + Into<Amount>>(figures: &[Figure<Q>]) -> (f64, Formula) {
    (figures.iter().map(|figure| figure.value.into().si()).sum(), figures[0].formula)
}

fn worked(formula: &str, given: &Given) -> Result<(f64, Formula), Problem> {
    let time = |at: usize| Known::typed(seconds(given.0[at]));
    Ok(match formula {
        "compensated_hardness" => figure(&[given.softened()?.compensated]),
        "resin_capacity" => figure(&[given.softened()?.capacity]),
        "water_between" => figure(&[given.softened()?.water]),
        "regeneration_interval" => figure(&[given.softened()?.interval]),
        "salt_for_one" => figure(&[given.softened()?.salt]),
        "salt_in_year" => figure(&[given.softened()?.salt_year]),
        "brine_volume" => figure(&<[_; 2]>::from(given.softened()?.brine)),
        "rinse_volume" => figure(&<[_; 2]>::from(given.softened()?.rinse)),
        "water_until_full" => figure(&[water_until_full(&given.bed())?]),
        "holding_life" => figure(&[holding_life(&given.bed())?]),
        "half_time" => {
            let speed = Known::typed(metres_per_second(given.0[1]));
            figure(&[half_time(&Known::typed(metres(given.0[0])), &speed)?])
        }
        "chlorine_left" => figure(&[chlorine_left(&given.concentration(0), &time(1), &time(2))?]),
        "contact_time_needed" => {
            figure(&[contact_time_needed(&given.concentration(0), &given.concentration(1), &time(2))?])
        }
        "freundlich_capacity" => {
            let isotherm = Freundlich { factor: given.number(0), exponent: given.number(1) };
            figure(&[capacity_of(&isotherm, &given.concentration(2))?])
        }
        "bed_volumes_until" => {
            let density = Known::typed(kilograms_per_cubic_metre(given.0[1]));
            figure(&[bed_volumes_until(&given.number(0), &density, &given.number(2), &given.concentration(3))?])
        }
        "carbon_use" => figure(&[carbon_use(&given.number(0), &given.number(1), &given.concentration(2))?]),
        "oxidant_demand" => {
            let which = [Oxidant::Oxygen, Oxidant::Chlorine, Oxidant::Permanganate][given.0[0] as usize];
            figure(&[oxidant_demand(which, &given.concentration(1), &given.concentration(2))?])
        }
        "lift_limit" => figure(&[lift_limit(&given.lift())?]),
        "lifting_index" => {
            let limit = lift_limit(&given.lift())?.known();
            figure(&[lifting_index(&Known::typed(kilograms(given.0[4])), &limit)?])
        }
        "media_in_year" => figure(&[media_in_year(&Known::typed(kilograms(given.0[0])), &time(1))]),
        "packs_in_year" => figure(&[packs_in_year(&given.number(0), &time(1))]),
        "dissolved_in_year" => {
            let month = Figure::new(kilograms(given.0[0]), Formula::CalciteMonth, Vec::new());
            figure(&[dissolved_in_year(&[&month])])
        }
        "wash_water_in_year" => {
            let part = Figure::new(cubic_metres(given.0[0]), Formula::BrineVolume, Vec::new());
            figure(&[wash_water_in_year(&[&part], &time(1))])
        }
        "wash_water_year" => {
            let flow = Known::typed(cubic_metres_per_second(given.0[1]));
            figure(&[wash_water_per_year(given.0[0] as u32, &flow, &time(2), &given.number(3))?])
        }
        other => panic!("nothing here works {other} out"),
    })
}

/// Every row, by the formula it names and no other.
///
/// # Panics
/// When the table is broken.
#[must_use]
pub fn balances() -> Checked {
    let mut checked = Checked::default();
    for row in rows(TABLE) {
        let id = row.text("id");
        let given = Given(row.text("inputs").split(' ').map(|number| number.parse().unwrap()).collect());
        match worked(row.text("formula"), &given) {
            Ok((_, formula)) if formula.id() != row.text("formula") => checked.refuse(id, formula),
            Ok((found, _)) => {
                let wanted = row.needed("expected");
                checked.compare(id, found, wanted, row.needed("relative_tolerance") * wanted);
            }
            Err(problem) => checked.refuse(id, problem),
        }
    }
    checked
}
