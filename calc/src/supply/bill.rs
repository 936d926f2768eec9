//! The bill of materials, by quantity rules that are data.

use std::borrow::Cow;

use super::kit::{Fitting, Spent, fitting_line};
use crate::fill::{Layer, Plan};
use crate::hydraulics::{Purpose, Regime};
use crate::order::Between as _;
use crate::quantity::{Figure, Formula, Length, Mass, Problem, Source, Term, Volume, cubic_metres, kilograms};
use crate::vessel::Vessel;

/// What a visit is for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum JobKind {
    /// A vessel that is equipped for the first time.
    New,
    /// Old media out, new in.
    Changeout,
    /// Some of the media out, new in.
    Partial,
    /// New media on the old.
    TopUp,
}

/// How a line is counted.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum CountUnit {
    /// Pieces.
    Each,
    /// Pieces cut to a length.
    Length,
    /// Packs.
    Pack,
}

/// What a line is for.
#[derive(Clone, Debug, PartialEq)]
pub enum Item {
    /// Packs of a material.
    Pack {
        /// The material's id.
        material: Cow<'static, str>,
        /// The pack's id.
        pack: Cow<'static, str>,
    },
    /// A part.
    Part {
        /// Which.
        fitting: Fitting,
        /// Its size: an outside diameter or a bore.
        size: Option<Length>,
        /// The length it is cut to.
        cut: Option<Length>,
        /// Whether that length rests on something assumed, so that it is cut on site.
        on_site: bool,
    },
}

impl Item {
    /// A key that is the same for the same item, whatever the order of vessels: what ticks on a pick list hang on.
    #[must_use]
    pub fn key(&self) -> String {
        match self {
            Item::Pack { material, pack } => format!("pack:{material}:{pack}"),
            Item::Part { fitting, size, cut, .. } => {
                let micrometres = |length: &Option<Length>| length.map_or(0, |l| (l.value * 1e6).round() as i64);
                format!("part:{}:{}:{}", fitting.id(), micrometres(size), micrometres(cut))
            }
        }
    }
}

/// A vessel of the job, with its fill.
#[derive(Clone, Copy, Debug)]
pub struct BillPart<'a> {
    /// How many tags it has.
    pub tags: u32,
    /// The vessel.
    pub vessel: &'a Vessel,
    /// Its layers, bottom first.
    pub layers: &'a [Layer],
    /// What came of them.
    pub plan: &'a Plan,
    /// What its bed is there for.
    pub purpose: Purpose,
    /// How water goes through it.
    pub regime: Regime,
}

/// One line.
#[derive(Clone, Debug, PartialEq)]
pub struct BillLine {
    /// What for.
    pub item: Item,
    /// How many.
    pub quantity: u32,
    /// How they are counted.
    pub unit: CountUnit,
    /// Packs in shares, where the line is packs: what is used of them.
    pub needed: Option<Figure<f64>>,
    /// The volume of media it is, where it is media.
    pub volume: Option<Figure<Volume>>,
    /// What they weigh together, where known.
    pub mass: Option<Figure<Mass>>,
    /// Whether it comes back after the job.
    pub returns: bool,
    /// Where the rule comes from.
    pub source: Source,
    /// Which vessels of the job, with the quantity each would take on its own.
    pub of: Vec<(usize, u32)>,
}

/// What one vessel takes on its own, all its tags together.
#[derive(Clone, Debug, PartialEq)]
pub struct VesselBill {
    /// Its lines.
    pub lines: Vec<BillLine>,
    /// Layers that have no answer and so are not counted.
    pub problems: Vec<Problem>,
}

/// The bill of a job.
#[derive(Clone, Debug, PartialEq)]
pub struct Bill {
    /// Each vessel on its own.
    pub vessels: Vec<VesselBill>,
    /// The same pooled over the job: part packs share packs.
    pub pooled: Vec<BillLine>,
}

impl Bill {
    /// Packs saved by pooling, line by line of the pooled bill.
    #[must_use]
    pub fn saved(&self, line: &BillLine) -> u32 {
        if line.needed.is_none() {
            return 0;
        }
        let alone = line.of.iter().fold(0_u32, |sum, (_, quantity)| sum.saturating_add(*quantity));
        alone.saturating_sub(line.quantity)
    }
}

/// The bill of materials of a job: media and underbed in packs, and parts by the rules of `fittings.csv`.
///
/// `spent` says what media that was taken out takes up in drums; without it none are counted. Per vessel every tag buys its own whole packs. Pooled, what is needed is added up first, so the pooled number is
/// never more than the sum.
///
/// # Errors
/// None as a whole; a layer without an answer is left out and named in [`VesselBill::problems`].
///
/// # Sources
/// Rules: common practice.
///
/// # Example
/// See the tests of the main job.
#[must_use]
pub fn bill(kind: JobKind, spent: Option<&Spent>, parts: &[BillPart]) -> Bill {
    let mut vessels = Vec::with_capacity(parts.len());
    let mut pooled: Vec<BillLine> = Vec::new();
    for (index, part) in parts.iter().enumerate() {
        let mut lines = Vec::new();
        let mut problems = Vec::new();
        for (layer, answer) in part.layers.iter().zip(&part.plan.layers) {
            match answer {
                Ok(fill) => lines.push(pack_line(part.tags, layer, fill, index)),
                Err(problem) => problems.push(*problem),
            }
        }
        for &fitting in Fitting::ALL {
            match fitting_line(kind, spent, part, fitting, index) {
                Ok(line) => lines.extend(line),
                Err(problem) => problems.push(problem),
            }
        }
        let mut own: Vec<BillLine> = Vec::new();
        for line in lines {
            pool(&mut pooled, &line, true);
            // Two layers of one material in one vessel share a line but not a pack: each is poured on its own.
            pool(&mut own, &line, false);
        }
        vessels.push(VesselBill { lines: own, problems });
    }
    Bill { vessels, pooled }
}

fn pack_line(tags: u32, layer: &Layer, fill: &crate::fill::LayerFill, index: usize) -> BillLine {
    let quantity = fill.packs_to_buy.saturating_mul(tags);
    let of_tags = |value: f64| value * f64::from(tags);
    BillLine {
        item: Item::Pack { material: layer.material.id.clone(), pack: layer.pack.id.clone() },
        quantity,
        unit: CountUnit::Pack,
        needed: Some(Figure::new(of_tags(fill.packs.value), fill.packs.formula, fill.packs.inputs.clone())),
        volume: Some(Figure::new(
            cubic_metres(of_tags(fill.volume.value.value)),
            fill.volume.formula,
            fill.volume.inputs.clone(),
        )),
        mass: pack_mass(layer).map(|each| mass_of(each, quantity, layer)),
        returns: false,
        source: Source::CommonPractice,
        of: vec![(index, quantity)],
    }
}

fn pack_mass(layer: &Layer) -> Option<f64> {
    layer.pack.weighs(&layer.bulk_density)
}

fn mass_of(each: f64, quantity: u32, layer: &Layer) -> Figure<Mass> {
    let mut inputs = Vec::new();
    match (&layer.pack.mass, &layer.pack.volume) {
        (Some(mass), _) => inputs.push(mass.input(Term::PackMass)),
        (None, Some(volume)) => {
            inputs.push(volume.input(Term::PackVolume));
            inputs.push(layer.bulk_density.input(Term::BulkDensity));
        }
        (None, None) => {}
    }
    Figure::new(kilograms(each * f64::from(quantity)), Formula::PackMass, inputs)
}

/// Adds a line to others of the same item; `share` lets part packs share packs.
fn pool(lines: &mut Vec<BillLine>, line: &BillLine, share: bool) {
    let Some(there) = lines.iter_mut().find(|there| there.item == line.item) else {
        let mut line = line.clone();
        if share {
            share_packs(&mut line);
        }
        lines.push(line);
        return;
    };
    let per_job = matches!(&line.item, Item::Part { fitting, .. } if fitting.is_per_job());
    if per_job {
        there.quantity = there.quantity.max(line.quantity);
    } else {
        there.quantity = there.quantity.saturating_add(line.quantity);
    }
    there.needed = join(there.needed.take(), line.needed.as_ref(), |a, b| a + b);
    there.volume = join(there.volume.take(), line.volume.as_ref(), |a, b| cubic_metres(a.value + b.value));
    there.mass = join(there.mass.take(), line.mass.as_ref(), |a, b| kilograms(a.value + b.value));
    match (there.of.iter_mut().find(|(index, _)| line.of.iter().any(|(other, _)| other == index)), line.of.first()) {
        (Some((_, quantity)), Some((_, more))) if !per_job => *quantity = quantity.saturating_add(*more),
        (None, Some(of)) => there.of.push(*of),
        _ => {}
    }
    if share {
        share_packs(there);
    }
}

/// Rounds what is needed over the whole line up to whole packs.
fn share_packs(line: &mut BillLine) {
    let Some(needed) = &line.needed else { return };
    let before = line.quantity;
    line.quantity = (needed.value - 1e-9).ceil().between(0.0, f64::from(u32::MAX / 2)) as u32;
    if let Some(mass) = &mut line.mass
        && before > 0
    {
        mass.value = kilograms(mass.value.value / f64::from(before) * f64::from(line.quantity));
    }
}

fn join<Q: Copy>(a: Option<Figure<Q>>, b: Option<&Figure<Q>>, add: impl Fn(Q, Q) -> Q) -> Option<Figure<Q>> {
    match (a, b) {
        (Some(mut a), Some(b)) => {
            a.value = add(a.value, b.value);
            a.basis = a.basis.weaker(b.basis);
            for input in &b.inputs {
                if !a.inputs.contains(input) {
                    a.inputs.push(*input);
                }
            }
            Some(a)
        }
        (a, _) => a,
    }
}
