//! Which packs the media of a bill are bought in.

use std::borrow::Cow;

use super::bill::{Bill, BillLine, BillPart, CountUnit, Item};
use super::packs::{Content, Need, Offer, Packing, cheapest_packs};
use super::{Money, packs};
use crate::fill::{Layer, LayerFill, Target};
use crate::material::Pack;
use crate::quantity::{
    Basis, Figure, Formula, Known, MassDensity, Problem, Source, Term, Volume, cubic_metres, kilograms,
    kilograms_per_cubic_metre,
};

/// How a material of the job may be bought, besides the packs its layers were planned in.
#[derive(Clone, Debug, PartialEq)]
pub struct Way {
    /// The material's id.
    pub material: Cow<'static, str>,
    /// The packs it may come in.
    pub offers: Vec<PackOffer>,
    /// What is left in packs that were opened before.
    pub opened: Option<Known<Volume>>,
    /// Whether every vessel gets whole packs of its own.
    pub per_vessel: bool,
    /// Whether nobody said anything, so that layers come in the packs they were planned in.
    pub as_planned: bool,
}

/// A pack a material may come in.
#[derive(Clone, Debug, PartialEq)]
pub struct PackOffer {
    /// The pack.
    pub pack: Pack,
    /// What one costs, where that is known.
    pub price: Option<Money>,
    /// How many are taken whatever else is best.
    pub locked: Option<u32>,
}

/// What was decided of one material.
#[derive(Clone, Debug, PartialEq)]
pub struct Bought {
    /// The material's id.
    pub material: Cow<'static, str>,
    /// What it may come in.
    pub offers: Vec<PackOffer>,
    /// What each of them fills.
    pub contents: Vec<Content>,
    /// What every vessel together needs.
    pub need: Figure<Volume>,
    /// Which vessels of the job, how many of each, and what one of them needs.
    pub of: Vec<(usize, u32, Content)>,
    /// Whether every vessel gets whole packs of its own.
    pub per_vessel: bool,
    /// Over the whole job at once: packs are shared.
    pub pooled: Result<Packing, Problem>,
    /// Vessel by vessel, in the order of `of`: one of each.
    pub each: Vec<Result<Packing, Problem>>,
}

impl Bought {
    /// Packs that would be taken if every vessel had whole packs of its own.
    #[must_use]
    pub fn packs_each(&self) -> Option<u32> {
        let mut sum = 0_u32;
        for ((_, tags, _), packing) in self.of.iter().zip(&self.each) {
            sum = sum.saturating_add(packing.as_ref().ok()?.packs().saturating_mul(*tags));
        }
        Some(sum)
    }

    /// What those would cost, where every price is known.
    #[must_use]
    pub fn cost_each(&self) -> Option<Money> {
        let mut sum = Money::default();
        for ((_, tags, _), packing) in self.of.iter().zip(&self.each) {
            sum = sum.plus(packing.as_ref().ok()?.cost?.times(*tags).ok()?).ok()?;
        }
        Some(sum)
    }

    /// How many of each offer are taken: pooled, or vessel by vessel where that was asked for.
    #[must_use]
    pub fn counts(&self) -> Option<Vec<u32>> {
        let pooled = self.pooled.as_ref().ok()?;
        if !self.per_vessel {
            return Some(pooled.counts.clone());
        }
        let mut counts = vec![0_u32; self.offers.len()];
        for ((_, tags, _), packing) in self.of.iter().zip(&self.each) {
            for (sum, count) in counts.iter_mut().zip(&packing.as_ref().ok()?.counts) {
                *sum = sum.saturating_add(count.saturating_mul(*tags));
            }
        }
        Some(counts)
    }
}

/// A layer of the job with what came of it and how often.
struct Poured<'a> {
    vessel: usize,
    tags: u32,
    layer: &'a Layer,
    fill: &'a LayerFill,
}

/// Decides for every material of a bill which packs it is bought in, and puts them on the bill. A material without a way
/// comes in the packs its layers were planned in; one that can't be decided keeps them, with the problem beside it.
#[must_use]
pub fn buy(bill: &mut Bill, parts: &[BillPart], ways: &[Way]) -> Vec<Bought> {
    let mut materials: Vec<Cow<'static, str>> = Vec::new();
    for part in parts {
        for layer in part.layers {
            if !materials.contains(&layer.material.id) {
                materials.push(layer.material.id.clone());
            }
        }
    }
    let mut all = Vec::new();
    for material in materials {
        let poured = poured_of(parts, &material);
        let way = ways.iter().find(|way| way.material == material);
        let Some(mut bought) = bought(material, &poured, way) else { continue };
        if bought.offers.len() > 1 && way.is_none_or(|way| way.as_planned) {
            as_planned(bill, &mut bought);
            all.push(bought);
            continue;
        }
        put_on(bill, &bought, &poured);
        all.push(bought);
    }
    all
}

/// Leaves the bill as it is and says what stands on it.
fn as_planned(bill: &Bill, bought: &mut Bought) {
    let on = |lines: &[BillLine]| -> Vec<u32> {
        let count = |offer: &PackOffer| {
            let item = Item::Pack { material: bought.material.clone(), pack: offer.pack.id.clone() };
            lines.iter().find(|line| line.item == item).map_or(0, |line| line.quantity)
        };
        bought.offers.iter().map(count).collect()
    };
    let pooled = on(&bill.pooled);
    let each: Vec<Vec<u32>> = bought
        .of
        .iter()
        .map(|(vessel, tags, _)| {
            let own = bill.vessels.get(*vessel).map(|own| on(&own.lines)).unwrap_or_default();
            own.into_iter().map(|count| count / (*tags).max(1)).collect()
        })
        .collect();
    let set = |packing: &mut Result<Packing, Problem>, counts: Vec<u32>, need: Content, contents: &[Content]| {
        let held =
            contents.iter().zip(&counts).fold(Content::default(), |sum, (one, count)| sum.plus(one.times(*count)));
        if let Ok(packing) = packing {
            *packing = Packing {
                counts,
                cost: None,
                left_over: held.less(need),
                short_by: need.less(held),
                chosen: packs::Chosen::AsPlanned,
                ..packing.clone()
            };
        }
    };
    let need = Content::needed(bought.need.value).unwrap_or_default();
    set(&mut bought.pooled, pooled, need, &bought.contents);
    for ((packing, counts), (_, _, need)) in bought.each.iter_mut().zip(each).zip(&bought.of) {
        set(packing, counts, *need, &bought.contents);
    }
}

fn poured_of<'a>(parts: &[BillPart<'a>], material: &str) -> Vec<Poured<'a>> {
    let mut poured = Vec::new();
    for (vessel, part) in parts.iter().enumerate() {
        for (layer, fill) in part.layers.iter().zip(&part.plan.layers) {
            if let (true, Ok(fill)) = (layer.material.id == material, fill) {
                poured.push(Poured { vessel, tags: part.tags, layer, fill });
            }
        }
    }
    poured
}

fn bought(material: Cow<'static, str>, poured: &[Poured], way: Option<&Way>) -> Option<Bought> {
    let density = mean_density(poured)?;
    let mut offers: Vec<PackOffer> = way.map(|way| way.offers.clone()).unwrap_or_default();
    if offers.is_empty() {
        for one in poured {
            if !offers.iter().any(|offer| offer.pack.id == one.layer.pack.id) {
                offers.push(PackOffer { pack: one.layer.pack.clone(), price: None, locked: None });
            }
        }
    }
    // What nobody can say the content of isn't offered.
    offers.retain(|offer| offer.pack.fills(&density).is_some());
    let mut need = Figure::new(cubic_metres(0.0), Formula::PacksNeeded, Vec::new());
    need.basis = Basis::Measured;
    let mut of: Vec<(usize, u32, f64)> = Vec::new();
    for one in poured {
        let volume = one.fill.volume.value.value;
        need.value += cubic_metres(volume * f64::from(one.tags));
        need.basis = need.basis.weaker(one.fill.volume.basis);
        need.inputs.push(one.fill.volume.input(Term::LayerVolume));
        match of.iter_mut().find(|(vessel, ..)| *vessel == one.vessel) {
            Some((_, _, sum)) => *sum += volume,
            None => of.push((one.vessel, one.tags, volume)),
        }
    }
    let minimum = poured.iter().any(|one| one.layer.minimum || matches!(one.layer.target, Target::Packs(_)));
    let per_vessel = way.is_some_and(|way| way.per_vessel);
    let opened = way.and_then(|way| way.opened);
    let contents: Vec<Result<Content, Problem>> =
        offers.iter().map(|offer| Content::of_pack(cubic_metres(offer.pack.fills(&density).unwrap_or(0.0)))).collect();
    let contents: Result<Vec<Content>, Problem> = contents.into_iter().collect();
    let decide = |volume: f64, opened: Option<Known<Volume>>, locks: bool| -> Result<Packing, Problem> {
        let offers: Vec<Offer> = offers
            .iter()
            .zip(contents.clone()?)
            .map(|(offer, content)| Offer { content, price: offer.price, locked: offer.locked.filter(|_| locks) })
            .collect();
        let opened = opened.map_or(Ok(Content::default()), |opened| Content::needed(opened.value))?;
        cheapest_packs(&Need { content: Content::needed(cubic_metres(volume))?, opened, minimum }, &offers)
    };
    let pooled = decide(need.value.value, opened.filter(|_| !per_vessel), !per_vessel);
    // Vessels that need the same are decided once.
    let mut decided: Vec<(u64, Result<Packing, Problem>)> = Vec::new();
    let each = of
        .iter()
        .map(|(_, _, volume)| {
            let bits = volume.to_bits();
            if let Some((_, there)) = decided.iter().find(|(there, _)| *there == bits) {
                return there.clone();
            }
            let packing = decide(*volume, None, false);
            decided.push((bits, packing.clone()));
            packing
        })
        .collect();
    let of = of
        .into_iter()
        .map(|(vessel, tags, volume)| (vessel, tags, Content::needed(cubic_metres(volume)).unwrap_or_default()))
        .collect();
    let contents = contents.unwrap_or_default();
    Some(Bought { material, offers, contents, need, of, per_vessel, pooled, each })
}

/// Dry mass over volume of all that is poured of a material; none where nothing is.
fn mean_density(poured: &[Poured]) -> Option<Known<MassDensity>> {
    let first = poured.first()?.layer.bulk_density;
    let (mut mass, mut volume, mut basis) = (0.0, 0.0, first.basis);
    for one in poured {
        let of_all = one.fill.volume.value.value * f64::from(one.tags);
        volume += of_all;
        mass += of_all * one.layer.bulk_density.value.value;
        basis = basis.weaker(one.layer.bulk_density.basis);
    }
    let same = poured.iter().all(|one| one.layer.bulk_density.value == first.value);
    if same || volume <= 0.0 {
        return Some(first);
    }
    Some(Known { value: kilograms_per_cubic_metre(mass / volume), basis, source: Source::Arithmetic })
}

/// Puts what was decided on the pooled bill in place of the material's lines.
fn put_on(bill: &mut Bill, bought: &Bought, poured: &[Poured]) {
    let (Some(counts), Some(first)) = (bought.counts(), poured.first()) else { return };
    let of_material =
        |line: &BillLine| matches!(&line.item, Item::Pack { material, .. } if *material == bought.material);
    let Some(place) = bill.pooled.iter().position(of_material) else { return };
    let density = mean_density(poured).unwrap_or(first.layer.bulk_density);
    let lines: Vec<BillLine> = bought
        .offers
        .iter()
        .zip(&bought.contents)
        .zip(&counts)
        .enumerate()
        .filter(|(_, (_, count))| **count > 0)
        .map(|(at, ((offer, content), count))| line(bill, bought, at, offer, *content, *count, &density))
        .collect();
    bill.pooled.retain(|line| !of_material(line));
    bill.pooled.splice(place..place, lines);
}

fn line(
    bill: &Bill,
    bought: &Bought,
    at: usize,
    offer: &PackOffer,
    content: packs::Content,
    count: u32,
    density: &Known<MassDensity>,
) -> BillLine {
    let item = Item::Pack { material: bought.material.clone(), pack: offer.pack.id.clone() };
    // The line of before holds how its figures were reached.
    let before = bill.pooled.iter().find(|line| line.item == item);
    let alone = bought.counts().is_some_and(|counts| counts.iter().filter(|count| **count > 0).count() == 1);
    let of = bought
        .of
        .iter()
        .zip(&bought.each)
        .map(|((vessel, tags, _), each)| {
            let own = each.as_ref().ok().and_then(|packing| packing.counts.get(at)).copied().unwrap_or(0);
            (*vessel, own.saturating_mul(*tags))
        })
        .collect();
    let needed = alone.then(|| {
        let used = bought.need.value.value / content.volume().value;
        let inputs = before.and_then(|line| line.needed.as_ref()).map(|figure| figure.inputs.clone());
        Figure::new(used, Formula::PacksNeeded, inputs.unwrap_or_else(|| bought.need.inputs.clone()))
    });
    let mass = offer.pack.weighs(density).map(|each| {
        let inputs = before.and_then(|line| line.mass.as_ref()).map(|figure| figure.inputs.clone());
        Figure::new(kilograms(each * f64::from(count)), Formula::PackMass, inputs.unwrap_or_default())
    });
    BillLine {
        item,
        quantity: count,
        unit: CountUnit::Pack,
        needed,
        volume: alone.then(|| bought.need.clone()),
        mass,
        returns: false,
        source: Source::CommonPractice,
        of,
    }
}
