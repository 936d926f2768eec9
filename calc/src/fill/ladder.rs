//! The tape readings to expect on the way up, from the surface that was read last.

use super::deviation::{Deviation, deviation};
use super::tape::{Tape, moved_by_diameter};
use super::{Layer, Plan};
use crate::quantity::{
    Assumption, Basis, Fault, Figure, Formula, Input, Known, Length, Problem, Term, cubic_metres, metres,
};
use crate::vessel::{Cavity, Vessel};

/// In which state a surface was when the tape was let down to it. Only readings of the same state are compared.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum SurfaceState {
    /// As poured, valve off: before any water went through.
    AsPoured,
    /// Settled by service and backwash, read at opening.
    SettledAtOpening,
}

impl SurfaceState {
    /// Both.
    pub const ALL: &'static [SurfaceState] = &[SurfaceState::AsPoured, SurfaceState::SettledAtOpening];

    /// The permanent id.
    #[must_use]
    pub const fn id(self) -> &'static str {
        match self {
            SurfaceState::AsPoured => "as_poured",
            SurfaceState::SettledAtOpening => "settled_at_opening",
        }
    }

    /// The one with this id.
    #[must_use]
    pub fn of(id: &str) -> Option<SurfaceState> {
        SurfaceState::ALL.iter().copied().find(|state| state.id() == id)
    }
}

/// What is poured of a layer.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pour {
    /// Which layer, from the bottom at 0.
    pub layer: usize,
    /// How many packs, part packs in shares.
    pub packs: Known<f64>,
}

/// A tape reading taken on the way.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sounding {
    /// Of which layer.
    pub layer: usize,
    /// After which of its packs, from 1; a part pack counts.
    pub pack: u32,
    /// What the tape read.
    pub tape: Known<Length>,
}

/// One reading to expect.
#[derive(Clone, Debug, PartialEq)]
pub struct Rung {
    /// Of which layer.
    pub layer: usize,
    /// After which of its packs, from 1.
    pub pack: u32,
    /// The share of that pack that is poured; 1 for a whole one.
    pub share: f64,
    /// Whether it is the layer's last.
    pub last: bool,
    /// What to expect, from the surface that was read last below; or why nothing can be.
    pub expected: Result<Tape, Problem>,
    /// What was read there, against what was expected; or why the reading can't be.
    pub outcome: Option<Result<Deviation, Problem>>,
}

/// Rungs of one layer at most: of more packs the last is still one.
const MOST_RUNGS: u32 = 400;

/// The surface that all above it is reckoned from.
pub(super) struct Base {
    /// Its height.
    pub height: f64,
    /// Free volume below it.
    pub volume: f64,
    /// What was read there; none for the empty vessel.
    pub read: Option<Known<Length>>,
    /// Poured since.
    pub poured: f64,
    /// Variance of what was poured since, m³ squared: each pack on its own.
    pub packs: f64,
    /// Standard deviation of what was poured since by weight, since a lot's density is the same in all its packs.
    pub by_density: f64,
}

impl Base {
    fn new(cavity: &Cavity, height: f64, read: Option<Known<Length>>) -> Base {
        let volume = cavity.free_below(height);
        Base { height, volume, read, poured: 0.0, packs: 0.0, by_density: 0.0 }
    }

    /// The same with so much of a pack poured on it.
    fn with(&self, volume: f64, of: &Packed) -> Base {
        let spread = volume * of.spread;
        Base {
            poured: self.poured + volume,
            packs: self.packs + spread * spread,
            by_density: self.by_density + volume * of.density_spread,
            ..*self
        }
    }

    /// The same where another lot begins, whose density is its own.
    fn lot_ends(self) -> Base {
        Base { packs: self.packs + self.by_density * self.by_density, by_density: 0.0, ..self }
    }
}

/// A layer's pack in figures.
pub(super) struct Packed {
    /// The volume one fills.
    pub volume: f64,
    /// Standard deviation of what is in one, as a share.
    spread: f64,
    /// Standard deviation of a lot's bulk density, as a share; nought for packs sold by volume.
    density_spread: f64,
}

/// The tape readings to expect while `pours` go in one after the other, each from the surface that was read last.
///
/// Begins on the empty vessel, or on the surface `start` where something is left in it (a top-up). After a reading all
/// above it follows from the surface that was read: what was wrong below is behind it, and the spread is of what is
/// poured since. A reading that can't be is refused on its own rung and nothing follows from it.
///
/// ```text
/// h = V⁻¹(V(h_read) + n·V_pack),  tape = inside depth − h
/// spread = 1.645·√((∂h/∂D·σ_D)² + Σ(V_pack·σ_pack/A)² + (V·σ_ρ/A)² + σ_tape² + (σ_tape·A_read/A)² + (σ_depth·(1 − A_read/A))²)
/// ```
///
/// | symbol | here | unit |
/// |---|---|---|
/// | h_read, A_read | height and free section of the surface that was read last | m, m² |
/// | A | free section at the surface to expect | m² |
/// | σ_D, σ_pack, σ_tape, σ_depth, σ_ρ | the assumptions behind [`super::plan()`]; σ_ρ only of packs sold by weight | 1, 1, m, m, 1 |
///
/// On the empty vessel the spread is that of [`super::plan()`]. In the straight side a wrong inside depth moves both
/// readings alike, and a reading takes it out.
///
/// # Errors
/// As a whole: [`Term::TapeReading`] of `start` not from the datum to the lowest inside point; [`Term::Packs`] of a pour
/// that is not above nought, or of a layer that isn't there; [`Term::PackVolume`] of a layer without one. Of a rung:
/// [`Term::LayerVolume`] that does not fit; of its reading: [`Term::TapeReading`] outside the vessel, or not above the
/// surface it was poured on.
///
/// # Sources
/// Arithmetic; spreads: common practice and from memory, each an assumption with its own source.
///
/// # Example
/// 12 × 52, 2:1 heads, inside diameter 11.75 in: read 47.6 in after the gravel, one bag of 1 cu ft later the tape reads
/// 31.54 in (0.0623 cu ft to the inch: 1728/(π/4·(11.75² − 1.05²)) = 16.06 in higher).
/// ```
/// use bedwright_calc::fill::{Layer, Pour, Role, Sounding, Target, ladder};
/// use bedwright_calc::material::{Material, Pack};
/// use bedwright_calc::quantity::{Known, metres};
/// use bedwright_calc::vessel::{BottomCollector, DiameterBy, Head, Measures, Opening, Riser, Vessel};
/// let inch = |x: f64| Known::measured(metres(x * 0.0254));
/// let vessel = Vessel::new(Measures {
///     nominal_diameter: Some(inch(12.0)), diameter_by: DiameterBy::Measured { inside: inch(11.75) },
///     inside_depth: inch(51.0), bottom_head: Head::Ellipsoidal, top_head: Head::Ellipsoidal,
///     neck_height: inch(1.0), clear_bore: inch(2.5), opening: Opening::TopOnly,
///     riser: Some(Riser { outside_diameter: inch(1.05), seat: inch(0.0), allowance: inch(0.0) }),
///     bottom_collector: BottomCollector::None, upper_collector: None,
/// }).unwrap();
/// let carbon = Material::of("carbon_coconut_12x40").unwrap();
/// let layer = Layer {
///     pack: Pack::of_material(&carbon.id).remove(0), bulk_density: carbon.usual_bulk_density(), material: carbon,
///     role: Role::Media, target: Target::Packs(Known::typed(2.0)), minimum: false,
/// };
/// let pours = [Pour { layer: 0, packs: Known::typed(2.0) }];
/// let rungs = ladder(&vessel, &[layer], &pours, Some(&inch(47.6)), &[]).unwrap();
/// let tape = |at: usize| rungs[at].expected.as_ref().unwrap().reading.value.value / 0.0254;
/// assert!((tape(0) - 31.54).abs() < 0.005 && (tape(1) - 15.47).abs() < 0.01);
/// ```
pub fn ladder(
    vessel: &Vessel,
    layers: &[Layer],
    pours: &[Pour],
    start: Option<&Known<Length>>,
    soundings: &[Sounding],
) -> Result<Vec<Rung>, Problem> {
    let mut base = match start {
        None => {
            let floor = vessel.measures.bottom_collector.floor().map_or(0.0, |floor| floor.value.value);
            Base::new(&vessel.cavity, floor, None)
        }
        Some(tape) => Base::new(&vessel.cavity, height_of(vessel, tape)?, Some(*tape)),
    };
    let mut rungs = Vec::new();
    for pour in pours {
        let refused = |fault: Fault| Problem::new(Term::Packs, fault).of_layer(pour.layer);
        let layer = layers.get(pour.layer).ok_or_else(|| refused(Fault::Missing))?;
        let packs = pour.packs.value;
        if !(0.0..=MOST_PACKS).contains(&packs) || packs <= 0.0 {
            return Err(refused(Fault::OutOfRange { value: packs.into(), low: 0.0.into(), high: MOST_PACKS.into() }));
        }
        let packed = packed(layer).ok_or(Problem::new(Term::PackVolume, Fault::Missing).of_layer(pour.layer))?;
        let mut inputs = vessel.inputs();
        inputs.push(pour.packs.input(Term::Packs));
        inputs.extend(layer.pack.volume.as_ref().map(|volume| volume.input(Term::PackVolume)));
        if layer.pack.volume.is_none() {
            inputs.extend(layer.pack.mass.as_ref().map(|mass| mass.input(Term::PackMass)));
            inputs.push(layer.density().input(Term::BulkDensity));
        }
        base = base.lot_ends();
        // What rounding leaves of a pack is no pack.
        let count = (packs - 1e-9).ceil().max(1.0) as u32;
        for pack in 1..=count {
            let share = if pack == count { packs - f64::from(count - 1) } else { 1.0 };
            base = base.with(share * packed.volume, &packed);
            if pack > MOST_RUNGS && pack != count {
                continue;
            }
            let expected = expected(vessel, &base, &inputs).map_err(|problem| problem.of_layer(pour.layer));
            let read = soundings.iter().rev().find(|there| there.layer == pour.layer && there.pack == pack);
            let mut outcome = None;
            if let (Some(read), Ok(tape)) = (read, &expected) {
                let found = deviation(vessel, layer, &packed, &base, tape, &read.tape, &inputs);
                if found.is_ok() {
                    let height = height_of(vessel, &read.tape)?;
                    base = Base::new(&vessel.cavity, height, Some(read.tape));
                }
                outcome = Some(found.map_err(|problem| problem.of_layer(pour.layer)));
            }
            rungs.push(Rung { layer: pour.layer, pack, share, last: pack == count, expected, outcome });
        }
    }
    Ok(rungs)
}

/// More packs than this nobody pours into one vessel by hand.
const MOST_PACKS: f64 = 1e5;

/// The pours that a plan asks for, from the bottom up; none of a layer that wasn't worked out, nor of those above it.
#[must_use]
pub fn pours_of(plan: &Plan) -> Vec<Pour> {
    let filled = plan.layers.iter().map_while(|layer| layer.as_ref().ok());
    filled.enumerate().map(|(layer, fill)| Pour { layer, packs: fill.packs.known() }).collect()
}

/// The pour that brings the surface `start` up to where the plan's uppermost layer ends: a top-up of that layer.
///
/// # Errors
/// [`Term::TapeReading`] not from the datum to the lowest inside point; [`Term::LayerVolume`] where the plan was not worked
/// out; [`Term::Target`] already reached.
///
/// # Sources
/// Arithmetic.
///
/// # Example
/// See [`ladder`]: the bag between 31.54 and 15.47 in is the top-up of a bed that is read at 31.54 in.
pub fn top_up(vessel: &Vessel, layers: &[Layer], plan: &Plan, start: &Known<Length>) -> Result<Pour, Problem> {
    let waits = Problem::new(Term::LayerVolume, Fault::WaitsFor { other: Term::LayerVolume });
    let height = height_of(vessel, start)?;
    let at = layers.len().checked_sub(1).ok_or(waits)?;
    let (layer, fill) = match (layers.get(at), plan.layers.get(at)) {
        (Some(layer), Some(Ok(fill))) => (layer, fill),
        _ => return Err(waits),
    };
    let packed = packed(layer).ok_or(Problem::new(Term::PackVolume, Fault::Missing).of_layer(at))?;
    let volume = vessel.cavity.free_below(fill.top.value.value) - vessel.cavity.free_below(height);
    if volume.is_nan() || volume <= 0.0 {
        return Err(Problem::new(
            Term::Target,
            Fault::AlreadyReached { value: fill.tape.reading.value.into(), there: metres(height).into() },
        )
        .of_layer(at));
    }
    let basis = start.basis.weaker(fill.top.basis);
    Ok(Pour { layer: at, packs: Known { value: volume / packed.volume, basis, source: start.source } })
}

/// The height of a surface that the tape was let down to.
pub(super) fn height_of(vessel: &Vessel, tape: &Known<Length>) -> Result<f64, Problem> {
    let depth = vessel.measures.inside_depth.value;
    if (0.0..=depth.value).contains(&tape.value.value) {
        return Ok(depth.value - tape.value.value);
    }
    let (low, high) = (metres(0.0).into(), depth.into());
    Err(Problem::new(Term::TapeReading, Fault::OutOfRange { value: tape.value.into(), low, high }))
}

fn packed(layer: &Layer) -> Option<Packed> {
    let volume = layer.pack.fills(&layer.density()).filter(|volume| volume.is_finite() && *volume > 0.0)?;
    let by_mass = layer.pack.volume.is_none();
    Some(Packed {
        volume,
        spread: Assumption::SpreadPack.ratio(),
        density_spread: if by_mass { super::plan::relative_half_width(layer) } else { 0.0 },
    })
}

/// The reading to expect once all of `base` is poured.
fn expected(vessel: &Vessel, base: &Base, inputs: &[Input]) -> Result<Tape, Problem> {
    let cavity = &vessel.cavity;
    let height = cavity.height_of(base.volume + base.poured).ok_or_else(|| {
        let room = (cavity.capacity().value - base.volume).max(0.0);
        let needs = cubic_metres(base.poured).into();
        Problem::new(Term::LayerVolume, Fault::DoesNotFit { needs, room: cubic_metres(room).into() })
    })?;
    let depth = vessel.measures.inside_depth;
    let mut inputs = inputs.to_vec();
    inputs.extend(base.read.map(|read| read.input(Term::TapeBefore)));
    let formula = if base.read.is_some() { Formula::TapeAboveReading } else { Formula::TapeReading };
    let reading = Figure::new(metres(depth.value.value - height), formula, inputs);

    let by_diameter =
        moved_by_diameter(vessel, height, &|other| other.height_of(other.free_below(base.height) + base.poured));
    let area = cavity.free_area(height);
    let (by_packs, below) = if area > 0.0 {
        ((base.packs + base.by_density * base.by_density) / (area * area), cavity.free_area(base.height) / area)
    } else {
        (0.0, 0.0)
    };
    let tape = Assumption::SpreadTape.ratio();
    let assumed = if depth.basis == Basis::Assumed { Assumption::SpreadDepthAssumed.ratio() } else { 0.0 };
    let (by_base, by_depth) =
        if base.read.is_some() { (tape * below, assumed * (1.0 - below)) } else { (0.0, assumed) };
    let variance = by_diameter * by_diameter + by_packs + tape * tape + by_base * by_base + by_depth * by_depth;
    // The reading it begins at is read off a tape too.
    let by_tape = (tape * tape + by_base * by_base).sqrt();
    let moved_by = [by_diameter.abs(), by_packs.sqrt(), by_tape, by_depth].map(metres);
    Ok(Tape { reading, spread: metres(Assumption::Spread595.ratio() * variance.sqrt()), moved_by })
}

/// Whether every reading that must be typed is there: the last rung of every layer.
#[must_use]
pub fn all_read(rungs: &[Rung]) -> bool {
    rungs.iter().all(|rung| !rung.last || matches!(rung.outcome, Some(Ok(_))))
}
