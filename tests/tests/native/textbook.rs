//! Worked examples and measurements printed in textbooks, against our formulas; and two formulas that we don't use, as a
//! second way to the same printed values.

use bedwright_calc::hydraulics::fluidisation::{Grain, ergun_voidage, wen_yu_minimum, wen_yu_voidage};
use bedwright_calc::hydraulics::packed_bed::{PackedBed, ergun_pressure_loss};
use bedwright_calc::quantity::{
    Fault, Figure, Known, Problem, kelvins, kilograms_per_cubic_metre, metres, metres_per_second,
};
use bedwright_calc::water::Water;
use bedwright_tests::table::{Row, rows};
use bedwright_tests::water;

const DAVIS: &str = include_str!("../../reference/davis.csv");
const HENDRICKS: &str = include_str!("../../reference/hendricks.csv");

/// Standard gravity, as ours; the books round it.
const GRAVITY: f64 = 9.806_65;

/// One fraction of the sand of both examples.
struct Fraction {
    share: f64,
    size: f64,
    /// The first guess of its settling speed in example 11-3.
    guess: f64,
    /// Its expanded voidage as printed.
    printed: f64,
}

/// What both examples share: depth, settled voidage, sphericity, kinematic viscosity.
struct Sand {
    depth: f64,
    voidage: f64,
    sphericity: f64,
    viscosity: f64,
    fractions: Vec<Fraction>,
}

fn row(id: &str) -> Row {
    rows(DAVIS).into_iter().find(|row| row.text("id") == id).unwrap()
}

fn sand() -> Sand {
    let fractions: Vec<Fraction> = rows(DAVIS)
        .iter()
        .filter(|row| row.text("quantity") == "expanded_voidage")
        .map(|row| Fraction {
            share: row.needed("share"),
            size: row.needed("diameter_mm") / 1000.0,
            guess: row.needed("estimated_speed_m_s"),
            printed: row.needed("printed"),
        })
        .collect();
    assert_eq!(fractions.len(), 9);
    let any = row("davis_11_3_sum");
    Sand {
        depth: any.needed("depth_m"),
        voidage: any.needed("voidage"),
        sphericity: any.needed("sphericity"),
        viscosity: any.needed("kinematic_viscosity_m2_s"),
        fractions,
    }
}

fn near(what: &str, found: f64, wanted: f64, within: f64) {
    assert!((found - wanted).abs() <= within, "{what}: {found}, should be {wanted} ± {within}");
}

/// C_D as in the book: Stokes below 0.5.
fn drag(reynolds: f64) -> f64 {
    if reynolds < 0.5 { 24.0 / reynolds } else { 24.0 / reynolds + 3.0 / reynolds.sqrt() + 0.34 }
}

/// Davis, Water and Wastewater Engineering, eq. 11-9 (Rose 1945): Σ C_D·f/d, and the head lost, m.
fn rose(sand: &Sand, speed: f64, gravity: f64) -> (f64, f64) {
    let sum: f64 =
        sand.fractions.iter().map(|x| drag(sand.sphericity * x.size * speed / sand.viscosity) * x.share / x.size).sum();
    let open = sand.voidage.powi(4);
    (sum, 1.067 * speed * speed * sand.depth / (sand.sphericity * gravity * open) * sum)
}

/// Davis, eq. 11-10 to 11-13 (Fair and Geyer): expanded voidage of each fraction, not held above the settled one.
fn fair_geyer(sand: &Sand, speed: f64, density_ratio: f64, gravity: f64) -> Vec<f64> {
    sand.fractions
        .iter()
        .map(|x| {
            let first = drag(sand.sphericity * x.size * x.guess / sand.viscosity);
            let settling = (4.0 * gravity * (density_ratio - 1.0) * x.size / (3.0 * first)).sqrt();
            (speed / settling).powf(0.2247 * (settling * x.size / sand.viscosity).powf(0.1))
        })
        .collect()
}

/// Davis, example 11-2 (p. 11-14 to 11-16): Σ C_D·f/d = 75 025 1/m, h = 0.76 m.
#[test]
fn rose_gives_the_head_loss_that_davis_prints() {
    let (sum, loss) = (row("davis_11_2_drag_sum"), row("davis_11_2_head_loss"));
    let (found_sum, found_loss) = rose(&sand(), loss.needed("speed_m_s"), loss.needed("gravity_m_s2"));
    near("drag sum", found_sum, sum.needed("printed"), sum.needed("absolute_tolerance"));
    near("head loss", found_loss, loss.needed("printed"), loss.needed("absolute_tolerance"));
}

/// The same nine fractions of davis example 11-2 by our Ergun, one on the other: 0.576 m (worked out before with the
/// constants of Davis, table 11-2), so that Rose's loss is a third more: 1.32 times.
#[test]
fn ergun_on_the_fractions_of_davis_loses_a_quarter_less_than_rose() {
    let sand = sand();
    let example = row("davis_11_2_head_loss");
    let (speed, gravity) = (example.needed("speed_m_s"), example.needed("gravity_m_s2"));
    // Head over depth rests on the kinematic viscosity alone: any density does.
    let density = 1000.0;
    let water = water::of(density, sand.viscosity * density);
    let loss: f64 = sand
        .fractions
        .iter()
        .map(|x| {
            let bed = PackedBed {
                depth: Known::typed(metres(x.share * sand.depth)),
                grain_size: Known::typed(metres(x.size)),
                sphericity: Known::typed(sand.sphericity),
                voidage: Known::typed(sand.voidage),
            };
            ergun_pressure_loss(&bed, &water, &Known::typed(metres_per_second(speed))).unwrap().value.value
        })
        .sum();
    let head = loss / (density * gravity);
    near("stratified Ergun", head, 0.576, 0.0005);
    near("Rose over Ergun", rose(&sand, speed, gravity).1 / head, 1.32, 0.005);
}

/// Davis, example 11-3 (p. 11-18): nine expanded voidages, Σ f/(1−e) = 2.53; and 0.6967 m from them, worked out before.
/// The four coarsest come out below the settled voidage, which no bed does: held at it the bed is 0.7306 m deep.
#[test]
fn fair_and_geyer_give_the_voidages_that_davis_prints() {
    let sand = sand();
    let example = row("davis_11_3_sum");
    let open =
        fair_geyer(&sand, example.needed("speed_m_s"), example.needed("density_ratio"), example.needed("gravity_m_s2"));
    for (fraction, open) in sand.fractions.iter().zip(&open) {
        near(&format!("voidage of {} m", fraction.size), *open, fraction.printed, 0.0005);
    }
    let sum = |least: f64| -> f64 {
        sand.fractions.iter().zip(&open).map(|(x, open)| x.share / (1.0 - open.max(least))).sum()
    };
    near("Σ f/(1−e)", sum(0.0), example.needed("printed"), example.needed("absolute_tolerance"));
    let depth = |least: f64| (1.0 - sand.voidage) * sand.depth * sum(least);
    near("depth as printed voidages give it", depth(0.0), 0.6967, 5e-5);
    near("depth held at the settled voidage", depth(sand.voidage), 0.7306, 5e-5);
    assert_eq!(open.iter().filter(|open| **open < sand.voidage).count(), 4);
}

/// Our two models on the sand of Davis, example 11-3, at 1 cm/s: no book gives these, so nothing is compared. By Ergun
/// 0.778 m, by Wen and Yu no expansion, since the finest fraction leaves; without it 0.748 and 0.652 m, where the book's
/// way gives 0.584 m, or 0.618 m held at the settled voidage. So our lines don't bracket the book's figure: both say more.
#[test]
fn our_models_expand_the_sand_of_davis_and_never_below_settled() {
    let sand = sand();
    let example = row("davis_11_3_sum");
    let density = 999.7;
    let water = water::of(density, sand.viscosity * density);
    let speed = Known::typed(metres_per_second(example.needed("speed_m_s")));

    let open = |by: &dyn Fn(&Grain) -> Result<Figure<f64>, Problem>| -> Vec<Option<f64>> {
        sand.fractions
            .iter()
            .map(|x| {
                let heavy = example.needed("density_ratio") * density;
                let found = by(&Grain {
                    size: Known::typed(metres(x.size)),
                    particle_density: Known::typed(kilograms_per_cubic_metre(heavy)),
                    sphericity: Known::typed(sand.sphericity),
                    voidage: Known::typed(sand.voidage),
                });
                match found {
                    Ok(open) => {
                        assert!(open.value >= sand.voidage && open.value < 1.0, "{} m: {open:?}", x.size);
                        Some(open.value)
                    }
                    Err(problem) => {
                        assert!(matches!(problem.fault, Fault::CarriesAway { .. }), "{problem:?}");
                        None
                    }
                }
            })
            .collect()
    };
    let low = open(&|grain| wen_yu_voidage(grain, &water, &speed));
    let high = open(&|grain| ergun_voidage(grain, &water, &speed));
    println!("low {low:?}\nhigh {high:?}");
    let depth = |open: &[Option<f64>], fractions: usize| -> f64 {
        let each = sand.fractions.iter().zip(open).take(fractions);
        each.map(|(x, open)| x.share * sand.depth * (1.0 - sand.voidage) / (1.0 - open.unwrap())).sum()
    };
    let settled = |fractions: usize| sand.depth * sand.fractions.iter().take(fractions).map(|x| x.share).sum::<f64>();
    // By Wen and Yu the finest fraction, seven thousandths of the mass, leaves; the book has it at a voidage of 0.983.
    assert_eq!(low.iter().filter(|open| open.is_none()).count(), 1);
    assert!(high.iter().all(Option::is_some));
    let (all, kept) = (sand.fractions.len(), sand.fractions.len() - 1);
    let (low, high, whole) = (depth(&low, kept), depth(&high, kept), depth(&high, all));
    println!("without the finest: settled {:.4} m, Wen and Yu {low:.4} m, Ergun {high:.4} m", settled(kept));
    println!("all: settled {:.4} m, Ergun {whole:.4} m", settled(all));
    assert!(settled(kept) < low && low < high && high.is_finite());
    assert!(settled(all) < whole && whole.is_finite());
}

/// Hendricks, Fundamentals of Water Treatment Unit Processes, table 12.9 (p. 368): the predicted column is Wen and Yu at
/// the coarse sieve, within 2 % for sand and, with a density that the book doesn't print, 3 % for anthracite.
#[test]
fn wen_and_yu_give_what_hendricks_predicts() {
    let table = rows(HENDRICKS);
    assert_eq!(table.len(), 10);
    for row in &table {
        let (found, printed) = (wen_yu_m_h(row), row.needed("predicted_m_h"));
        let within = if row.text("medium") == "sand" { 0.02 } else { 0.03 };
        // Half the last printed digit besides.
        near(row.text("id"), found, printed, within * found + row.needed("printed_tolerance"));
        near(row.text("id"), found, row.needed("wen_yu_m_h"), 1.01 * row.needed("wen_yu_tolerance"));
    }
}

/// How far the prediction lies from what was measured (the same table): said by our documentation as +11 to −25 % for sand
/// at 25 °C. The largest of all is named here, so that nobody reads more into the formula.
#[test]
fn wen_and_yu_lie_up_to_a_quarter_from_what_hendricks_measured() {
    let off: Vec<(&str, f64)> = rows(HENDRICKS)
        .iter()
        .map(|row| (row.text("id"), 100.0 * (wen_yu_m_h(row) / row.needed("measured_m_h") - 1.0)))
        .collect();
    for (id, off) in &off {
        println!("{id}: {off:+.1} %");
    }
    let sand_25: Vec<f64> =
        off.iter().filter(|(id, _)| id.starts_with("sand") && id.ends_with("25c")).map(|x| x.1.round()).collect();
    assert_eq!(sand_25, [11.0, 0.0, 6.0, -25.0]);
    assert!(off.iter().all(|(_, off)| off.abs() < 25.0), "{off:?}");
}

fn wen_yu_m_h(row: &Row) -> f64 {
    let grain = Grain {
        size: Known::typed(metres(row.needed("diameter_mm") / 1000.0)),
        particle_density: Known::typed(kilograms_per_cubic_metre(row.needed("particle_density_kg_m3"))),
        // The formula takes neither.
        sphericity: Known::typed(1.0),
        voidage: Known::typed(0.4),
    };
    let water = Water::at(&Known::typed(kelvins(row.needed("temperature_k")))).unwrap();
    wen_yu_minimum(&grain, &water).unwrap().value.value * 3600.0
}

/// Weight under water of the grains in a bed is what a lifted bed loses: 0.99 m of head on a metre of sand with a voidage
/// of 0.4 and 2650 kg/m³ (an open textbook of water treatment). Ergun's loss at its own minimum is just that.
#[test]
fn at_the_lift_ergun_loses_the_weight_of_the_grains() {
    let grain = Grain {
        size: Known::typed(metres(0.000_5)),
        particle_density: Known::typed(kilograms_per_cubic_metre(2650.0)),
        sphericity: Known::typed(0.8),
        voidage: Known::typed(0.4),
    };
    let water = Water::at(&Known::typed(kelvins(293.15))).unwrap();
    let speed = bedwright_calc::hydraulics::fluidisation::ergun_minimum(&grain, &water).unwrap().known();
    let bed = PackedBed {
        depth: Known::typed(metres(1.0)),
        grain_size: grain.size,
        sphericity: grain.sphericity,
        voidage: grain.voidage,
    };
    let loss = ergun_pressure_loss(&bed, &water, &speed).unwrap().value.value;
    let density = water.density.value.value;
    near("weight under water, Pa", loss, 0.6 * (2650.0 - density) * GRAVITY, 1e-6);
    near("as head, m", loss / (density * GRAVITY), 0.99, 0.005);
}
