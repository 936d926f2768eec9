//! What a filled vessel weighs: dry, drained, in operation, full of water without media; and what its foot presses with.

mod steps;

pub use steps::weight_steps;

use super::{Layer, LayerFill, Plan};
use crate::material::Range;
use crate::quantity::{
    Amount, Assumption, Basis, Caution, Fault, Figure, Formula, GRAVITY, Input, Known, Length, Mass, MassDensity,
    Pressure, Problem, Term, kilograms, kilograms_per_cubic_metre, metres, pascals, problem::positive,
};
use crate::vessel::Vessel;
use crate::water::Water;

/// What a filled vessel weighs. Each figure stands or fails by itself.
#[derive(Clone, Debug, PartialEq)]
pub struct Weights {
    /// All layers as poured, without vessel and water. Resin is sold moist and counts as it is sold.
    pub dry: Result<Figure<Mass>, Problem>,
    /// All layers after the water has run off, without the vessel: the least to expect.
    pub drained_low: Result<Figure<Mass>, Problem>,
    /// The same, the most to expect.
    pub drained_high: Result<Figure<Mass>, Problem>,
    /// The vessel in operation: itself, its layers, and water wherever no solid is.
    pub operating: Result<Figure<Mass>, Problem>,
    /// The vessel full of water, without layers.
    pub water_full: Result<Figure<Mass>, Problem>,
    /// What presses on the floor in operation, spread over the circle of its foot.
    pub floor_load: Result<Figure<Pressure>, Problem>,
}

/// Weighs a planned fill.
///
/// ```text
/// drained:      m = Σ m_dry·(1 + u) + s·ρ_w·Σ V,  u = ρ_p·(1 − ρ_w/ρ_s)/(ρ_p − ρ_w) − 1
/// in operation: m = m_empty + Σ m_dry + ρ_w·(V_shell − V_riser wall − Σ m_dry/ρ_solid)
/// full:         m = m_empty + ρ_w·(V_shell − V_riser wall)
/// floor:        p = m·g/(π·D²/4)
/// ```
///
/// | symbol | here | unit |
/// |---|---|---|
/// | m_dry, V | mass and volume of a layer in `plan` | kg, m³ |
/// | m_empty | `empty_mass`; without it the figures leave the vessel out and say so | kg |
/// | ρ_w | density of `water` | kg/m³ |
/// | ρ_solid | the particle density; of porous grains the skeletal density, ρ_s | kg/m³ |
/// | ρ_p | the wetted particle density of porous grains | kg/m³ |
/// | u | water in the pores of wet grains, as a share of their dry mass; 0 of grains without pores | 1 |
/// | s | water between drained grains, as a share of the bed's volume: two assumptions, a low and a high | 1 |
/// | D | `foot_diameter` | m |
///
/// V_shell goes from the lowest inside point to the datum, with the neck; riser and collectors stand full of water and
/// only the riser's wall takes room. What riser and collectors weigh belongs to the empty vessel. Porous grains of which
/// the wetted density isn't known hold their own dry mass. More media never weighs less.
///
/// # Errors
/// Each figure carries its own: [`Term::LayerVolume`] where a layer was not worked out; [`Term::ParticleDensity`] or
/// [`Term::SkeletalDensity`] of a layer that lacks it or where it is not above the bulk density, with the layer;
/// [`Term::EmptyMass`] not from 0.1 kg to 1 000 t; [`Term::FootDiameter`] missing, or not from 1 cm to 100 m.
///
/// # Sources
/// Arithmetic; the water that stays and the riser's wall: from memory.
///
/// # Example
/// A flat-ended vessel of 1 m² and 1 m, half filled with sand of 1575 kg/m³ whose grains have 2600 kg/m³, in water of
/// 998.2 kg/m³: 787.5 kg of sand take 0.3029 m³; the rest of 1 m³ is water, 695.9 kg; together 1483.4 kg.
/// ```
/// use bedwright_calc::fill::{Layer, Role, Target, plan, weights};
/// use bedwright_calc::material::{Material, Pack};
/// use bedwright_calc::quantity::{Known, cubic_metres, kelvins, metres};
/// use bedwright_calc::vessel::{BottomCollector, DiameterBy, Head, Measures, Opening, Vessel};
/// use bedwright_calc::water::Water;
/// let m = |x: f64| Known::measured(metres(x));
/// let vessel = Vessel::new(Measures {
///     nominal_diameter: None, diameter_by: DiameterBy::Measured { inside: m((4.0 / std::f64::consts::PI).sqrt()) },
///     inside_depth: m(1.0), bottom_head: Head::Flat, top_head: Head::Flat, neck_height: m(0.0), clear_bore: m(0.1),
///     opening: Opening::TopOnly, riser: None, bottom_collector: BottomCollector::None, upper_collector: None,
/// }).unwrap();
/// let sand = Material::of("sand_20x30").unwrap();
/// let layers = [Layer {
///     pack: Pack::of("sand_20x30.25_kg").unwrap(), bulk_density: sand.usual_bulk_density(), material: sand,
///     role: Role::Media, target: Target::Depth(m(0.5)), minimum: true,
/// }];
/// let filled = plan(&vessel, &layers, &Known::typed(cubic_metres(0.02)));
/// let water = Water::at(&Known::typed(kelvins(293.15))).unwrap();
/// let weights = weights(&vessel, &layers, &filled, None, None, &water);
/// assert!((weights.operating.unwrap().value.value - 1483.4).abs() < 0.1);
/// ```
#[must_use]
pub fn weights(
    vessel: &Vessel,
    layers: &[Layer],
    plan: &Plan,
    empty_mass: Option<&Known<Mass>>,
    foot_diameter: Option<&Known<Length>>,
    water: &Water,
) -> Weights {
    let operating = operating(vessel, layers, plan, empty_mass, water);
    Weights {
        dry: plan.dry_weight.clone(),
        drained_low: drained(layers, plan, water, Assumption::RetainedLow),
        drained_high: drained(layers, plan, water, Assumption::RetainedHigh),
        water_full: water_full(vessel, empty_mass, water),
        floor_load: floor_load(&operating, foot_diameter),
        operating,
    }
}

/// What an empty vessel and its foot can be: far beyond anything that is set up.
const EMPTY_KG: (f64, f64) = (0.1, 1e6);
const FOOT_M: (f64, f64) = (0.01, 100.0);

fn within(term: Term, value: f64, (low, high): (f64, f64), amount: impl Fn(f64) -> Amount) -> Result<(), Problem> {
    if (low..=high).contains(&value) {
        Ok(())
    } else {
        Err(Problem::new(term, Fault::OutOfRange { value: amount(value), low: amount(low), high: amount(high) }))
    }
}

/// Each layer with what came of it.
fn filled<'a>(
    layers: &'a [Layer],
    plan: &'a Plan,
) -> impl Iterator<Item = Result<(usize, &'a Layer, &'a LayerFill), Problem>> {
    layers.iter().zip(&plan.layers).enumerate().map(|(index, (layer, answer))| {
        let waits = Problem::new(Term::LayerVolume, Fault::WaitsFor { other: Term::LayerVolume });
        answer.as_ref().map(|fill| (index, layer, fill)).map_err(|_| waits)
    })
}

fn middle(range: &Range<MassDensity>) -> Known<MassDensity> {
    let value = kilograms_per_cubic_metre(f64::midpoint(range.low.value, range.high.value));
    Known { value, basis: Basis::Catalogue, source: range.source }
}

/// Dry mass over the volume of what is solid, and what it is called.
fn solid_density(layer: &Layer) -> Result<(Known<MassDensity>, Term), Problem> {
    let material = &layer.material;
    let (range, term) = match (&material.skeletal_density, &material.particle_density) {
        (Some(skeletal), _) => (skeletal, Term::SkeletalDensity),
        (None, Some(particle)) => (particle, Term::ParticleDensity),
        (None, None) => return Err(Problem::new(Term::ParticleDensity, Fault::Missing)),
    };
    let density = middle(range);
    positive(term, density.value.value, density.value.into())?;
    let bulk = layer.density();
    if density.value > bulk.value {
        Ok((density, term))
    } else {
        // More solid than room: then one of the two is wrong.
        let limit = bulk.value.into();
        Err(Problem::new(term, Fault::NotAbove { value: density.value.into(), other: Term::BulkDensity, limit }))
    }
}

/// Water in the pores of wet grains over their dry mass, with what it rests on.
fn in_pores(layer: &Layer, water: &Water) -> Result<(f64, Vec<Input>), Problem> {
    let material = &layer.material;
    let Some(skeletal) = &material.skeletal_density else { return Ok((0.0, Vec::new())) };
    let Some(particle) = &material.particle_density else {
        let assumed = Assumption::RetainedCarbon.number();
        return Ok((assumed.value, vec![assumed.input(Term::RetainedWater)]));
    };
    let (wet, solid) = (middle(particle), middle(skeletal));
    let (p, s, w) = (wet.value.value, solid.value.value, water.density.value.value);
    for (term, density) in [(Term::ParticleDensity, &wet), (Term::SkeletalDensity, &solid)] {
        let value = density.value.into();
        positive(term, density.value.value, value)?;
        if density.value <= water.density.value {
            let limit = water.density.value.into();
            return Err(Problem::new(term, Fault::NotAbove { value, other: Term::WaterDensity, limit }));
        }
    }
    if p > s {
        let limit = solid.value.into();
        let fault = Fault::NotBelow { value: wet.value.into(), other: Term::SkeletalDensity, limit };
        return Err(Problem::new(Term::ParticleDensity, fault));
    }
    // A grain of 1 m³ weighs ρ_p wet; its solid share is (ρ_p − ρ_w)/(ρ_s − ρ_w), its dry mass ρ_s times that.
    let dry = (p - w) / (1.0 - w / s);
    Ok((p / dry - 1.0, vec![wet.input(Term::ParticleDensity), solid.input(Term::SkeletalDensity)]))
}

fn drained(layers: &[Layer], plan: &Plan, water: &Water, share: Assumption) -> Result<Figure<Mass>, Problem> {
    let share = share.number();
    let mut inputs = vec![share.input(Term::RetainedWater), water.density.input(Term::WaterDensity)];
    let mut sum = 0.0;
    for found in filled(layers, plan) {
        let (index, layer, fill) = found?;
        let (held, rests_on) = in_pores(layer, water).map_err(|problem| problem.of_layer(index))?;
        let between = share.value * water.density.value.value * fill.volume.value.value;
        sum += fill.mass.value.value * (1.0 + held) + between;
        inputs.push(fill.mass.input(Term::LayerMass));
        inputs.push(fill.volume.input(Term::LayerVolume));
        inputs.extend(rests_on);
    }
    Ok(Figure::new(kilograms(sum), Formula::DrainedWeight, inputs))
}

/// Room for water and solids from the lowest point to the datum, m³, with what it rests on.
fn room(vessel: &Vessel) -> (f64, Vec<Input>) {
    let mut inputs = vessel.inputs();
    let shell = vessel.cavity.shell_volume().value;
    let Some(riser) = &vessel.measures.riser else { return (shell, inputs) };
    let wall = Assumption::RiserWall.length();
    inputs.push(wall.input(Term::RiserWall));
    let outside = riser.outside_diameter.value.value;
    let inside = (outside - 2.0 * wall.value.value).max(0.0);
    let ring = std::f64::consts::FRAC_PI_4 * (outside - inside) * (outside + inside);
    let tall = vessel.measures.inside_depth.value.value - riser.seat.value.value;
    (shell - ring * tall, inputs)
}

/// The empty vessel's mass where it is known; without it nought, and what must be borne in mind.
fn empty(empty_mass: Option<&Known<Mass>>) -> Result<(f64, Option<Input>), Problem> {
    let Some(mass) = empty_mass else { return Ok((0.0, None)) };
    within(Term::EmptyMass, mass.value.value, EMPTY_KG, |x| kilograms(x).into())?;
    Ok((mass.value.value, Some(mass.input(Term::EmptyMass))))
}

fn with_or_without(value: f64, formula: Formula, mut inputs: Vec<Input>, empty: Option<Input>) -> Figure<Mass> {
    inputs.extend(empty);
    let figure = Figure::new(kilograms(value), formula, inputs);
    if empty.is_some() { figure } else { figure.with(Caution::WithoutVessel) }
}

fn operating(
    vessel: &Vessel,
    layers: &[Layer],
    plan: &Plan,
    empty_mass: Option<&Known<Mass>>,
    water: &Water,
) -> Result<Figure<Mass>, Problem> {
    let (mut sum, of_vessel) = empty(empty_mass)?;
    let (mut wet, mut inputs) = room(vessel);
    inputs.push(water.density.input(Term::WaterDensity));
    for found in filled(layers, plan) {
        let (index, layer, fill) = found?;
        let (density, term) = solid_density(layer).map_err(|problem| problem.of_layer(index))?;
        sum += fill.mass.value.value;
        wet -= fill.mass.value.value / density.value.value;
        inputs.push(fill.mass.input(Term::LayerMass));
        inputs.push(density.input(term));
    }
    let total = sum + water.density.value.value * wet;
    Ok(with_or_without(total, Formula::OperatingWeight, inputs, of_vessel))
}

fn water_full(vessel: &Vessel, empty_mass: Option<&Known<Mass>>, water: &Water) -> Result<Figure<Mass>, Problem> {
    let (sum, of_vessel) = empty(empty_mass)?;
    let (wet, mut inputs) = room(vessel);
    inputs.push(water.density.input(Term::WaterDensity));
    Ok(with_or_without(sum + water.density.value.value * wet, Formula::WaterFull, inputs, of_vessel))
}

fn floor_load(
    operating: &Result<Figure<Mass>, Problem>,
    foot_diameter: Option<&Known<Length>>,
) -> Result<Figure<Pressure>, Problem> {
    let foot = foot_diameter.ok_or(Problem::new(Term::FootDiameter, Fault::Missing))?;
    within(Term::FootDiameter, foot.value.value, FOOT_M, |x| metres(x).into())?;
    let mass = operating.as_ref().map_err(|problem| *problem)?;
    let area = std::f64::consts::FRAC_PI_4 * foot.value.value * foot.value.value;
    let inputs = vec![mass.input(Term::OperatingMass), foot.input(Term::FootDiameter)];
    let mut figure = Figure::new(pascals(mass.value.value * GRAVITY / area), Formula::FloorLoad, inputs);
    figure.cautions.extend(mass.cautions.iter().copied());
    Ok(figure)
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used, clippy::indexing_slicing)] // Tests say so by panicking.

    use super::*;
    use crate::fill::{Role, Target, plan};
    use crate::material::{Material, Pack};
    use crate::quantity::{cubic_metres, kelvins};
    use crate::vessel::{BottomCollector, DiameterBy, Head, Measures, Opening, Riser};

    fn m(value: f64) -> Known<Length> {
        Known::measured(metres(value))
    }

    /// Inside diameter 0.3 m, 1.3 m deep with 2:1 heads (0.075 m each) and no neck: straight side 1.15 m, section
    /// 0.0706858 m². Both heads hold π·D³/24 = 0.00353429 m³ each, the shell 0.0812887 m³: 0.0883573 m³ in all.
    fn vessel(riser: Option<Riser>) -> Vessel {
        Vessel::new(Measures {
            nominal_diameter: None,
            diameter_by: DiameterBy::Measured { inside: m(0.3) },
            inside_depth: m(1.3),
            bottom_head: Head::Ellipsoidal,
            top_head: Head::Ellipsoidal,
            neck_height: m(0.0),
            clear_bore: m(0.06),
            opening: Opening::TopOnly,
            riser,
            bottom_collector: BottomCollector::None,
            upper_collector: None,
        })
        .unwrap()
    }

    fn layer(id: &str, density: f64, litres: f64) -> Layer {
        let material = Material::of(id).unwrap();
        Layer {
            pack: Pack {
                id: "sack".into(),
                container: crate::material::Container::Sack,
                volume: None,
                mass: Some(Known::typed(kilograms(25.0))),
            },
            material,
            role: Role::Media,
            target: Target::Volume(Known::typed(cubic_metres(litres / 1000.0))),
            minimum: true,
            bulk_density: Known::typed(kilograms_per_cubic_metre(density)),
        }
    }

    fn weighed(vessel: &Vessel, layers: &[Layer], empty: Option<f64>, foot: Option<f64>) -> Weights {
        let filled = plan(vessel, layers, &Known::typed(cubic_metres(0.02)));
        let water = Water::at(&Known::typed(kelvins(293.15))).unwrap();
        let empty = empty.map(|x| Known::measured(kilograms(x)));
        weights(vessel, layers, &filled, empty.as_ref(), foot.map(m).as_ref(), &water)
    }

    fn near(found: f64, wanted: f64, within: f64) {
        assert!((found - wanted).abs() <= within, "{found}, should be {wanted} ± {within}");
    }

    /// 30 L at 1600 kg/m³ are 48 kg; particle density 2550 to 2650, so 2600: 48/2600 = 0.0184615 m³ of solid.
    /// Water 20 °C, 998.2071 kg/m³. In operation: 12 + 48 + 998.2071·(0.0883573 − 0.0184615) = 60 + 69.7705 = 129.7705 kg.
    /// Full: 12 + 998.2071·0.0883573 = 100.1989 kg. Drained: 48 + 0.05·998.2071·0.03 = 49.4973; 48 + 0.15·… = 52.4919 kg.
    /// Floor: 129.7705·9.80665/(π·0.28²/4 = 0.0615752) = 20667 Pa.
    #[test]
    fn sand_weighs_what_a_sheet_of_paper_says() {
        let weights = weighed(&vessel(None), &[layer("sand_20x30", 1600.0, 30.0)], Some(12.0), Some(0.28));
        near(weights.dry.unwrap().value.value, 48.0, 1e-9);
        near(weights.drained_low.unwrap().value.value, 49.4973, 1e-3);
        near(weights.drained_high.unwrap().value.value, 52.4919, 1e-3);
        near(weights.operating.as_ref().unwrap().value.value, 129.7705, 1e-3);
        assert!(weights.operating.unwrap().cautions.is_empty());
        near(weights.water_full.unwrap().value.value, 100.1989, 1e-3);
        near(weights.floor_load.unwrap().value.value, 20_667.0, 1.0);
    }

    /// 40 L of carbon at 460 kg/m³ are 18.4 kg. Wetted 1300 to 1500, so 1400; solid 2000 to 2200, so 2100: a wet grain of
    /// 1 m³ holds (1400 − 998.2071)/(1 − 998.2071/2100) = 765.78 kg of carbon, so water of 1400/765.78 − 1 = 0.82819 of it.
    /// Drained: 18.4·1.82819 + 0.05·998.2071·0.04 = 33.6387 + 1.9964 = 35.6351; with 0.15: 39.6279 kg.
    /// In operation, vessel left out: 18.4 + 998.2071·(0.0883573 − 18.4/2100) = 18.4 + 79.4527 = 97.8527 kg.
    #[test]
    fn carbon_holds_water_inside_its_grains() {
        let weights = weighed(&vessel(None), &[layer("carbon_coconut_12x40", 460.0, 40.0)], None, None);
        near(weights.drained_low.unwrap().value.value, 35.6351, 2e-3);
        near(weights.drained_high.unwrap().value.value, 39.6279, 2e-3);
        let operating = weights.operating.unwrap();
        near(operating.value.value, 97.8527, 2e-3);
        assert_eq!(operating.cautions, [Caution::WithoutVessel]);
        assert_eq!(weights.water_full.unwrap().cautions, [Caution::WithoutVessel]);
        assert_eq!(weights.floor_load, Err(Problem::new(Term::FootDiameter, Fault::Missing)));
    }

    /// Resin is sold moist: 40 L at 800 kg/m³ are 32 kg moist; drained 32 + 0.05·998.2071·0.04 = 33.9964 kg.
    #[test]
    fn resin_is_sold_moist_and_holds_nothing_more() {
        let weights = weighed(&vessel(None), &[layer("resin_cation", 800.0, 40.0)], None, None);
        near(weights.drained_low.unwrap().value.value, 33.9964, 1e-3);
    }

    /// 1.05 in outside, wall 0.113 in: 0.02667 and 0.0209296 m; ring π/4·(0.02667² − 0.0209296²) = 2.14604·10⁻⁴ m², over
    /// 1.3 m 2.78985·10⁻⁴ m³, which is 0.27849 kg of water less.
    #[test]
    fn a_riser_takes_only_the_room_of_its_wall() {
        let bare = weighed(&vessel(None), &[], None, None).water_full.unwrap().value.value;
        let risen = weighed(&vessel(Some(Riser::assumed())), &[], None, None).water_full.unwrap().value.value;
        near(bare - risen, 0.278_49, 1e-4);
    }

    /// No porous grain drained may weigh more than the same bed under water.
    #[test]
    fn a_drained_bed_is_never_heavier_than_a_flooded_one() {
        for material in Material::all() {
            let density = material.usual_bulk_density().value.value;
            let weights = weighed(&vessel(None), &[layer(&material.id, density, 40.0)], None, None);
            let (Ok(operating), Ok(drained)) = (&weights.operating, &weights.drained_high) else {
                assert_eq!(material.particle_density, None, "{}: {weights:?}", material.id);
                continue;
            };
            // Water over the bed weighs besides.
            let water = (0.088_357_3 - 0.04) * 998.2071;
            assert!(drained.value.value <= operating.value.value - water + 1e-2, "{}: {weights:?}", material.id);
            assert!(weights.drained_low.as_ref().unwrap().value <= drained.value);
        }
    }

    #[test]
    fn a_material_of_unknown_density_is_named_with_its_layer() {
        let mut unknown = layer("sand_20x30", 1600.0, 10.0);
        unknown.material.particle_density = None;
        let weights = weighed(&vessel(None), &[layer("sand_20x30", 1600.0, 10.0), unknown], Some(12.0), Some(0.28));
        let problem = Problem::new(Term::ParticleDensity, Fault::Missing).of_layer(1);
        assert_eq!(weights.operating, Err(problem));
        assert_eq!(weights.floor_load, Err(problem));
        assert!(weights.drained_high.is_ok() && weights.dry.is_ok());
    }

    #[test]
    fn strange_inputs_are_refused_by_name() {
        let layers = [layer("sand_20x30", 1600.0, 10.0)];
        for strange in [0.0, -1.0, f64::NAN, f64::INFINITY, 1e308, 5e-324] {
            let weights = weighed(&vessel(None), &layers, Some(strange), Some(0.28));
            assert_eq!(weights.operating.unwrap_err().term, Term::EmptyMass);
            assert_eq!(weights.water_full.unwrap_err().term, Term::EmptyMass);
            let weights = weighed(&vessel(None), &layers, Some(10.0), Some(strange));
            assert_eq!(weights.floor_load.unwrap_err().term, Term::FootDiameter);
        }
        // A layer that does not fit keeps all that need it waiting.
        let weights = weighed(&vessel(None), &[layer("sand_20x30", 1600.0, 400.0)], Some(10.0), Some(0.28));
        assert_eq!(weights.operating.unwrap_err().term, Term::LayerVolume);
        assert!(weights.water_full.is_ok());
        // Grains lighter than what they fill as poured.
        let weights = weighed(&vessel(None), &[layer("sand_20x30", 2700.0, 10.0)], None, None);
        assert_eq!(weights.operating.unwrap_err().term, Term::ParticleDensity);
    }
}
