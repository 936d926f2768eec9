//! What a job says of buying, cutting, lifting and stacking.

use bedwright_calc::material::{Material, Pack};
use bedwright_calc::quantity::{
    Assumption, Fault, Figure, Known, Length, Mass, Problem, Source, Term, Volume, cubic_metres, kilograms, metres,
};
use bedwright_calc::supply::buying::{PackOffer, Way};
use bedwright_calc::supply::cutting::{CutPlan, Stock, cut_plan};
use bedwright_calc::supply::lifting::{Lift, lift_limit, lifting_index};
use bedwright_calc::supply::pallets::{Load, Pallet, PalletLimits, pallets};
use bedwright_calc::supply::{BillPart, Fitting, Item, Money};

use super::JobBill;
use crate::entry::{Dimension, Entry, Misread};
use crate::field::SupplyField;
use crate::job::Job;
use crate::prices::price_keys;
use crate::sections::supply::{MaterialSupply, Supply};

/// What an item costs, where the job carries that: the same on everybody's phone.
#[must_use]
pub fn cost_of(job: &Job, item: &Item) -> Option<Money> {
    price_keys(item).iter().find_map(|key| job.prices.body.row(key)).and_then(|row| row.cost)
}

/// How the materials of some vessels may be bought: in the packs their layers were planned in, in others whose cost is
/// known, in what was offered; never in what was taken off.
#[must_use]
pub fn ways(job: &Job, parts: &[BillPart]) -> Vec<Way> {
    let mut ways: Vec<Way> = Vec::new();
    for layer in parts.iter().flat_map(|part| part.layers) {
        let id = &layer.material.id;
        let said = job.supply.body.material(id);
        let offer = |pack: Pack| {
            let item = Item::Pack { material: id.clone(), pack: pack.id.clone() };
            let locked = said.packs.get(pack.id.as_ref()).and_then(|said| said.locked);
            PackOffer { price: cost_of(job, &item), locked, pack }
        };
        let at = ways.iter().position(|way| way.material == *id).unwrap_or_else(|| {
            let offers = Pack::of_material(id).into_iter().map(offer).collect();
            let opened = said.opened.as_ref().and_then(|entry| opened_volume(entry, &layer.material));
            ways.push(Way { material: id.clone(), offers, opened, per_vessel: said.per_vessel, as_planned: false });
            ways.len() - 1
        });
        let Some(way) = ways.get_mut(at) else { continue };
        if !way.offers.iter().any(|offer| offer.pack.id == layer.pack.id) {
            way.offers.push(offer(layer.pack.clone()));
        }
    }
    for way in &mut ways {
        let planned = |pack: &Pack| {
            parts
                .iter()
                .flat_map(|part| part.layers)
                .any(|layer| layer.material.id == way.material && layer.pack.id == pack.id)
        };
        let said = job.supply.body.material(&way.material);
        way.as_planned = said == MaterialSupply::default() && way.offers.iter().all(|offer| offer.price.is_none());
        way.offers.retain(|offer| {
            let said = said.packs.get(offer.pack.id.as_ref());
            let usual = planned(&offer.pack) || offer.price.is_some() || offer.locked.is_some_and(|count| count > 0);
            said.and_then(|said| said.offered).unwrap_or(usual)
        });
    }
    ways
}

/// What opened packs hold: a volume, or a weight over the usual bulk density.
fn opened_volume(entry: &Entry, material: &Material) -> Option<Known<Volume>> {
    let read = entry.understood().ok()?;
    let volume = match read.dimension {
        Dimension::Volume => read.si,
        Dimension::Mass => read.si / material.usual_bulk_density().value.value,
        _ => return None,
    };
    Some(Known::measured(cubic_metres(volume)))
}

/// An entry in SI, or why it makes no sense; what is assumed where nothing was typed.
///
/// # Errors
/// Why what was typed makes no sense.
pub fn entered(supply: &Supply, field: SupplyField) -> Result<Option<Known<f64>>, Misread> {
    match supply.entries.get(&field) {
        Some(entry) => entry.understood().map(|read| Some(Known::typed(read.si))),
        None => Ok(assumed(field)),
    }
}

/// What is assumed of a field; none where nothing is.
#[must_use]
pub fn assumed(field: SupplyField) -> Option<Known<f64>> {
    let assumption = match field {
        SupplyField::StockLength => Assumption::StockLength,
        SupplyField::Kerf => Assumption::Kerf,
        SupplyField::PalletMass => Assumption::PalletMass,
        SupplyField::PalletPacks => return None,
        SupplyField::LiftReach => Assumption::LiftReach,
        SupplyField::LiftHeight => Assumption::LiftHeight,
        SupplyField::LiftTravel => Assumption::LiftTravel,
        // Straight ahead.
        SupplyField::LiftTwist => return Some(Known::assumed(0.0, Source::CommonPractice)),
        SupplyField::LabelWidth => Assumption::LabelWidth,
        SupplyField::LabelHeight => Assumption::LabelHeight,
    };
    Some(assumption.number())
}

/// The quantity a field is about.
const fn term(field: SupplyField) -> Term {
    match field {
        SupplyField::StockLength => Term::StockLength,
        SupplyField::Kerf => Term::Kerf,
        SupplyField::PalletMass => Term::PalletMass,
        SupplyField::PalletPacks => Term::PalletPacks,
        SupplyField::LiftReach => Term::LiftReach,
        SupplyField::LiftHeight => Term::LiftHeight,
        SupplyField::LiftTravel => Term::LiftTravel,
        SupplyField::LiftTwist => Term::LiftTwist,
        SupplyField::LabelWidth | SupplyField::LabelHeight => Term::Height,
    }
}

/// What was typed or is assumed; a problem of the field where what was typed makes no sense.
fn known(supply: &Supply, field: SupplyField) -> Result<Known<f64>, Problem> {
    let missing = Problem::new(term(field), Fault::Missing);
    entered(supply, field).ok().flatten().ok_or(missing)
}

/// The same where nothing may be said at all.
fn known_or_none(supply: &Supply, field: SupplyField) -> Result<Option<Known<f64>>, Problem> {
    entered(supply, field).map_err(|_| Problem::new(term(field), Fault::Missing))
}

fn of<Q>(known: Known<f64>, quantity: impl Fn(f64) -> Q) -> Known<Q> {
    Known { value: quantity(known.value), basis: known.basis, source: known.source }
}

/// Risers of one outside diameter, cut from stock.
#[derive(Clone, Debug, PartialEq)]
pub struct RiserCuts {
    /// The pipe's outside diameter.
    pub size: Option<Length>,
    /// What it is cut from.
    pub stock: Stock,
    /// Every piece: which vessel of the bill it is for, and how long it is.
    pub pieces: Vec<(usize, Length)>,
    /// Whether some of them rest on something assumed, so that they are cut on site.
    pub on_site: bool,
    /// How they are cut.
    pub plan: Result<CutPlan, Problem>,
}

/// The risers of a job, by outside diameter; none where what was typed of the stock makes no sense.
#[must_use]
pub fn riser_cuts(job: &Job, bill: &JobBill) -> Vec<RiserCuts> {
    let supply = &job.supply.body;
    let length = |field: SupplyField| known(supply, field).map(|known| metres(known.value));
    let (Ok(length), Ok(kerf)) = (length(SupplyField::StockLength), length(SupplyField::Kerf)) else {
        return Vec::new();
    };
    let stock = Stock { length, kerf };
    let mut cuts: Vec<RiserCuts> = Vec::new();
    for (vessel, own) in bill.bill.vessels.iter().enumerate() {
        for line in &own.lines {
            let Item::Part { fitting: Fitting::RiserPipe, size, cut: Some(cut), on_site } = &line.item else {
                continue;
            };
            let at = cuts.iter().position(|there| there.size == *size).unwrap_or_else(|| {
                let plan = Ok(CutPlan { lengths: Vec::new(), at_least: 0 });
                cuts.push(RiserCuts { size: *size, stock, pieces: Vec::new(), on_site: false, plan });
                cuts.len() - 1
            });
            if let Some(there) = cuts.get_mut(at) {
                there.pieces.extend((0..line.quantity).map(|_| (vessel, *cut)));
                there.on_site |= *on_site;
            }
        }
    }
    for there in &mut cuts {
        let lengths: Vec<Length> = there.pieces.iter().map(|(_, length)| *length).collect();
        there.plan = cut_plan(&stock, &lengths);
    }
    cuts
}

/// What one person may lift the way it was typed.
///
/// # Errors
/// As [`lift_limit`].
pub fn lift(job: &Job) -> Result<Figure<Mass>, Problem> {
    let supply = &job.supply.body;
    let length = |field: SupplyField| known(supply, field).map(|known| of(known, metres));
    lift_limit(&Lift {
        reach: length(SupplyField::LiftReach)?,
        height: length(SupplyField::LiftHeight)?,
        travel: length(SupplyField::LiftTravel)?,
        twist_degrees: known(supply, SupplyField::LiftTwist)?,
        grip: supply.grip,
    })
}

/// How many times what one person may lift a pack is; none where that can't be said.
#[must_use]
pub fn lifting_index_of(job: &Job, each: Mass) -> Option<f64> {
    let limit = lift(job).ok()?.known();
    lifting_index(&Known::typed(each), &limit).ok().map(|index| index.value)
}

/// What every pallet bears, the packs in the order they are loaded in.
///
/// # Errors
/// As [`pallets`].
pub fn stacked(job: &Job, loads: &[Load]) -> Result<Vec<Pallet>, Problem> {
    let supply = &job.supply.body;
    let mass = known_or_none(supply, SupplyField::PalletMass)?.map(|mass| kilograms(mass.value));
    let packs = known_or_none(supply, SupplyField::PalletPacks)?.map(|packs| packs.value as u32);
    pallets(&PalletLimits { mass, packs }, loads)
}
