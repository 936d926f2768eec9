//! The parts a job takes besides media, by rules that are data: by kind of job, opening, riser, purpose, flow regime.

use super::bill::{BillLine, BillPart, CountUnit, Item, JobKind};
use crate::hydraulics::{Purpose, Regime};
use crate::order::Between as _;
use crate::quantity::problem::within;
use crate::quantity::{
    Amount, Assumption, Basis, Figure, Formula, Input, Known, Problem, Source, Term, Volume, cubic_metres,
};
use crate::vessel::riser::riser_cut;
use crate::vessel::{BottomCollector, Opening};

/// What a part needs to be there for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Needs {
    Vessel,
    Riser,
    BottomCollector,
    UpperCollector,
    Thread,
}

/// What a quantity is counted by.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Per {
    Tag,
    Job,
    /// A drum of what was taken out.
    Drum,
}

/// What a part's size is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum SizeOf {
    Riser,
    Bore,
}

/// A rule; a list that is empty stands for every one.
struct FittingRow {
    kinds: &'static [JobKind],
    needs: Needs,
    openings: &'static [Opening],
    regimes: &'static [Regime],
    purposes: &'static [Purpose],
    per: Per,
    quantity: u32,
    unit: CountUnit,
    size: Option<SizeOf>,
    returns: bool,
    source: Source,
}

include!(concat!(env!("OUT_DIR"), "/fittings.rs"));

impl Fitting {
    fn row(self) -> Option<&'static FittingRow> {
        FITTINGS.get(self as usize)
    }

    /// Whether a job takes it once, however many vessels it has.
    #[must_use]
    pub fn is_per_job(self) -> bool {
        self.row().is_some_and(|row| row.per == Per::Job)
    }

    /// Where it comes from that a job takes it.
    #[must_use]
    pub fn source(self) -> Source {
        self.row().map_or(Source::FromMemory, |row| row.source)
    }
}

/// What media that was taken out takes up.
#[derive(Clone, Debug, PartialEq)]
pub struct Spent {
    /// Its volume in a drum over its volume in the bed.
    pub bulking: Known<f64>,
    /// What a drum holds.
    pub drum: Known<Volume>,
}

impl Default for Spent {
    fn default() -> Spent {
        Spent { bulking: Assumption::Bulking.number(), drum: Assumption::SpentDrum.volume() }
    }
}

impl Spent {
    /// What is wrong with the bulking, or else with the drum.
    #[must_use]
    pub fn problem(&self, of_bulking: bool) -> Option<Problem> {
        let volume = |value| Amount::Volume(cubic_metres(value));
        if of_bulking {
            within(Term::Bulking, self.bulking.value, (1.0, 3.0), Amount::Ratio).err()
        } else {
            within(Term::DrumVolume, self.drum.value.value, (0.001, 10.0), volume).err()
        }
    }

    /// The drums a volume of settled bed fills once it was taken out: the volume in drums, and how many it fills.
    ///
    /// What comes out is looser than the bed: `V = k·V_bed`, `n = V/V_drum`. Nothing is rounded: drums are shared by the
    /// vessels of a job.
    ///
    /// # Errors
    /// [`Term::Bulking`] outside 1 to 3; [`Term::DrumVolume`] outside 1 L to 10 m³.
    ///
    /// # Sources
    /// Arithmetic; a bulking of 1.2 and drums of 55 US gallons until others are typed: common practice.
    ///
    /// # Example
    /// Ten vessels of 2.15 cu ft: 25.8 cu ft, 193.0 gal, 3.51 drums of 55 gal.
    /// ```
    /// use bedwright_calc::quantity::{Basis, cubic_metres};
    /// use bedwright_calc::supply::Spent;
    /// let (volume, drums) = Spent::default().drums(cubic_metres(21.5 * 0.028316846592), Basis::Typed).unwrap();
    /// assert!((volume.value.value / 0.028316846592 - 25.8).abs() < 1e-9);
    /// assert!((drums.value - 3.509).abs() < 5e-4);
    /// ```
    pub fn drums(&self, bed: Volume, basis: Basis) -> Result<(Figure<Volume>, Figure<f64>), Problem> {
        if let Some(problem) = self.problem(true).or_else(|| self.problem(false)) {
            return Err(problem);
        }
        let of_bed = Input { term: Term::LayerVolume, amount: Amount::Volume(bed), basis, source: Source::Arithmetic };
        let bulking = self.bulking.input(Term::Bulking);
        let drum = self.drum.input(Term::DrumVolume);
        let volume = cubic_metres(bed.value * self.bulking.value);
        let drums = volume.value / self.drum.value.value;
        Ok((
            Figure::new(volume, Formula::SpentVolume, vec![of_bed, bulking]),
            Figure::new(drums, Formula::SpentDrums, vec![of_bed, bulking, drum]),
        ))
    }
}

/// The line of a part for a vessel with all its tags; none where the rule doesn't ask for it.
pub(super) fn fitting_line(
    kind: JobKind,
    spent: Option<&Spent>,
    part: &BillPart,
    fitting: Fitting,
    index: usize,
) -> Result<Option<BillLine>, Problem> {
    let Some(row) = fitting.row() else { return Ok(None) };
    let measures = &part.vessel.measures;
    let riser = measures.riser.as_ref();
    let there = match row.needs {
        Needs::Vessel => true,
        Needs::Riser => riser.is_some(),
        Needs::BottomCollector => {
            matches!(measures.bottom_collector, BottomCollector::Basket { .. } | BottomCollector::HubAndLaterals { .. })
        }
        Needs::UpperCollector => measures.upper_collector.is_some(),
        Needs::Thread => measures.opening.threaded(),
    };
    let asked = there
        && row.kinds.contains(&kind)
        && (row.openings.is_empty() || row.openings.contains(&measures.opening))
        && (row.regimes.is_empty() || row.regimes.contains(&part.regime))
        && (row.purposes.is_empty() || row.purposes.contains(&part.purpose));
    if !asked {
        return Ok(None);
    }
    let size = match row.size {
        None => None,
        Some(SizeOf::Bore) => Some(measures.clear_bore.value),
        Some(SizeOf::Riser) => riser.map(|r| r.outside_diameter.value),
    };
    let cut = match (row.unit, riser) {
        (CountUnit::Length, Some(riser)) => Some(riser_cut(riser, &measures.inside_depth)?),
        _ => None,
    };
    let on_site = cut.as_ref().is_some_and(|cut| cut.basis == Basis::Assumed);
    let cut = cut.map(|cut| cut.value);
    let drums = match row.per {
        Per::Drum => match spent {
            Some(spent) => Some(spent.drums(taken_out(part), Basis::Typed)?),
            None => return Ok(None),
        },
        Per::Tag | Per::Job => None,
    };
    let quantity = match (row.per, &drums) {
        (Per::Tag, _) => row.quantity.saturating_mul(part.tags),
        (Per::Drum, Some((_, drums))) => (drums.value - 1e-9).ceil().between(0.0, f64::from(u32::MAX / 2)) as u32,
        _ => row.quantity,
    };
    if quantity == 0 {
        return Ok(None);
    }
    let (volume, needed) = drums.unzip();
    Ok(Some(BillLine {
        item: Item::Part { fitting, size, cut, on_site },
        quantity,
        unit: row.unit,
        needed,
        volume,
        mass: None,
        returns: row.returns,
        source: row.source,
        of: vec![(index, quantity)],
    }))
}

/// What is taken out of a vessel with all its tags: what will be put in, which is what fitted.
fn taken_out(part: &BillPart) -> Volume {
    let layers = part.plan.layers.iter().filter_map(|layer| layer.as_ref().ok());
    let one = layers.fold(0.0, |sum, layer| sum + layer.volume.value.value);
    cubic_metres(one * f64::from(part.tags))
}
