//! The centre pipe: its sizes, the length it is cut to, and the gap grains pass beside it.

use std::marker::PhantomData;

use crate::quantity::{Assumption, Figure, Formula, Known, Length, Problem, Source, Term, metres, problem::positive};

/// The centre pipe.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Riser {
    /// Outside diameter.
    pub outside_diameter: Known<Length>,
    /// Height of its lower end, in the collector's seat, above the lowest inside point.
    pub seat: Known<Length>,
    /// What the valve asks it to stand above the datum; negative when it must end below.
    pub allowance: Known<Length>,
}

/// An outside diameter that riser pipe is sold in.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RiserDiameter {
    /// Outside diameter.
    pub outside: Length,
    /// Where it comes from.
    pub source: Source,
}

include!(concat!(env!("OUT_DIR"), "/risers.rs"));

impl RiserDiameter {
    /// All that are sold, as far as remembered; choose by outside diameter, never by name.
    #[must_use]
    pub fn all() -> &'static [RiserDiameter] {
        RISER_DIAMETERS
    }
}

/// The length the riser is cut to: from its seat up to the datum, plus or less what the valve asks for.
///
/// # Errors
/// [`Term::RiserSeat`] at or above the datum; [`Term::RiserAllowance`] that leaves nothing.
///
/// # Sources
/// Arithmetic.
///
/// # Example
/// Depth 51 in, seat 1 in up, flush with the rim: 50 in.
/// ```
/// use bedwright_calc::quantity::{Known, metres};
/// use bedwright_calc::vessel::riser::{Riser, riser_cut};
/// let inch = |x: f64| Known::measured(metres(x * 0.0254));
/// let riser = Riser { outside_diameter: inch(1.05), seat: inch(1.0), allowance: inch(0.0) };
/// let cut = riser_cut(&riser, &inch(51.0)).unwrap();
/// assert!((cut.value.value / 0.0254 - 50.0).abs() < 1e-12);
/// ```
pub fn riser_cut(riser: &Riser, inside_depth: &Known<Length>) -> Result<Figure<Length>, Problem> {
    positive(Term::InsideDepth, inside_depth.value.value, inside_depth.value.into())?;
    let below = inside_depth.value.value - riser.seat.value.value;
    if below.is_nan() || below <= 0.0 || riser.seat.value.value < 0.0 {
        return Err(Problem::new(
            Term::RiserSeat,
            crate::quantity::Fault::OutOfRange {
                value: riser.seat.value.into(),
                low: metres(0.0).into(),
                high: inside_depth.value.into(),
            },
        ));
    }
    let cut = below + riser.allowance.value.value;
    if cut.is_nan() || cut <= 0.0 || !cut.is_finite() {
        return Err(Problem::new(
            Term::RiserAllowance,
            crate::quantity::Fault::NotAbove {
                value: riser.allowance.value.into(),
                other: Term::RiserSeat,
                limit: metres(-below).into(),
            },
        ));
    }
    Ok(Figure::new(
        metres(cut),
        Formula::RiserCut,
        vec![
            inside_depth.input(Term::InsideDepth),
            riser.seat.input(Term::RiserSeat),
            riser.allowance.input(Term::RiserAllowance),
        ],
    ))
}

/// Largest grains that fit side by side between a centred riser and the bore: half of bore less outside diameter.
///
/// # Errors
/// [`Term::RiserOutsideDiameter`] not below the bore; [`Term::GrainHigh`] not above zero.
///
/// # Sources
/// Common practice: under 3 grains they jam unless poured slowly.
///
/// # Example
/// 1.9 in in 2½ in, grains of ¼ in: 0.3/0.25 = 1.2.
/// ```
/// use bedwright_calc::quantity::{Known, metres};
/// use bedwright_calc::vessel::riser::gap_centred;
/// let inch = |x: f64| Known::measured(metres(x * 0.0254));
/// let gap = gap_centred(&inch(1.9), &inch(2.5), &inch(0.25)).unwrap();
/// assert!((gap.value - 1.2).abs() < 1e-12);
/// ```
pub fn gap_centred(
    outside_diameter: &Known<Length>,
    clear_bore: &Known<Length>,
    largest_grain: &Known<Length>,
) -> Result<Figure<f64>, Problem> {
    let gap = gap(outside_diameter, clear_bore, largest_grain)?;
    Ok(Figure::new(
        gap / 2.0 / largest_grain.value.value,
        Formula::GapCentred,
        gap_inputs(outside_diameter, clear_bore, largest_grain),
    ))
}

/// Largest grains that fit in the widest gap when the riser leans against the bore: bore less outside diameter.
///
/// # Errors
/// As [`gap_centred`].
///
/// # Sources
/// Common practice: under 1½ grains none pass.
///
/// # Example
/// 1.9 in in 2½ in, grains of ½ in: 0.6/0.5 = 1.2.
/// ```
/// use bedwright_calc::quantity::{Known, metres};
/// use bedwright_calc::vessel::riser::gap_leaned;
/// let inch = |x: f64| Known::measured(metres(x * 0.0254));
/// let gap = gap_leaned(&inch(1.9), &inch(2.5), &inch(0.5)).unwrap();
/// assert!((gap.value - 1.2).abs() < 1e-12);
/// ```
pub fn gap_leaned(
    outside_diameter: &Known<Length>,
    clear_bore: &Known<Length>,
    largest_grain: &Known<Length>,
) -> Result<Figure<f64>, Problem> {
    let gap = gap(outside_diameter, clear_bore, largest_grain)?;
    Ok(Figure::new(
        gap / largest_grain.value.value,
        Formula::GapLeaned,
        gap_inputs(outside_diameter, clear_bore, largest_grain),
    ))
}

fn gap(
    outside_diameter: &Known<Length>,
    clear_bore: &Known<Length>,
    largest_grain: &Known<Length>,
) -> Result<f64, Problem> {
    positive(Term::RiserOutsideDiameter, outside_diameter.value.value, outside_diameter.value.into())?;
    positive(Term::ClearBore, clear_bore.value.value, clear_bore.value.into())?;
    positive(Term::GrainHigh, largest_grain.value.value, largest_grain.value.into())?;
    let gap = clear_bore.value.value - outside_diameter.value.value;
    if gap > 0.0 {
        Ok(gap)
    } else {
        Err(Problem::new(
            Term::RiserOutsideDiameter,
            crate::quantity::Fault::NotBelow {
                value: outside_diameter.value.into(),
                other: Term::ClearBore,
                limit: clear_bore.value.into(),
            },
        ))
    }
}

fn gap_inputs(
    outside_diameter: &Known<Length>,
    clear_bore: &Known<Length>,
    largest_grain: &Known<Length>,
) -> Vec<crate::quantity::Input> {
    vec![
        clear_bore.input(Term::ClearBore),
        outside_diameter.input(Term::RiserOutsideDiameter),
        largest_grain.input(Term::GrainHigh),
    ]
}

impl Riser {
    /// A riser of an assumed outside diameter, standing on the lowest inside point, flush with the datum.
    #[must_use]
    pub fn assumed() -> Riser {
        let zero = Known::assumed(metres(0.0), Source::CommonPractice);
        Riser { outside_diameter: Assumption::RiserOutsideDiameter.length(), seat: zero, allowance: zero }
    }
}
