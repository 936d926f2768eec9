//! The inside diameter, by whichever of five ways somebody on site can take.

use super::cavity::{Cavity, Inside};
use super::{BottomCollector, Riser};
use crate::quantity::{
    Assumption, Caution, Fault, Figure, Formula, Input, Known, Length, Problem, Term, Volume, metres, problem::positive,
};

/// How the inside diameter is known.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum DiameterBy {
    /// Only the size it is sold by: a start, to be measured.
    Nominal {
        /// The nominal diameter.
        nominal: Known<Length>,
    },
    /// Measured inside, or from a drawing.
    Measured {
        /// The inside diameter.
        inside: Known<Length>,
    },
    /// A tape round the bare shell, and the wall.
    Circumference {
        /// The tape's length.
        around: Known<Length>,
        /// Thickness of the wall.
        wall: Known<Length>,
    },
    /// A metered volume of water that raised the level.
    MeteredFill {
        /// The volume let in.
        volume: Known<Volume>,
        /// Tape reading of the level before; the inside depth when the vessel was empty.
        before: Known<Length>,
        /// Tape reading of the level after.
        after: Known<Length>,
    },
    /// A bag of known volume that raised the surface.
    RiseOfBag {
        /// The volume in the bag.
        volume: Known<Volume>,
        /// Tape reading before.
        before: Known<Length>,
        /// Tape reading after.
        after: Known<Length>,
    },
}

/// The inside diameter, and which way it was found.
///
/// `inside` describes everything but the diameter (its own is ignored); the two fillings need it, since the riser and
/// the heads share in the rise. `nominal`, where known, is compared: an inside diameter above it is asked about.
///
/// # Errors
/// The quantity of that way which is missing, not above zero, or impossible together with the others;
/// [`Fault::NoSolution`] when no diameter between 2 cm and 6 m gives that rise.
///
/// # Sources
/// Arithmetic; the nominal way from memory.
///
/// # Example
/// 37.9 in round a shell of 0.16 in wall: 37.9/π − 0.32 = 11.744 in.
/// ```
/// use bedwright_calc::quantity::{Known, metres};
/// use bedwright_calc::vessel::{BottomCollector, DiameterBy, Head, cavity::Inside, diameter::inside_diameter};
/// let inch = |x: f64| metres(x * 0.0254);
/// let inside = Inside {
///     diameter: inch(12.0), depth: inch(51.0), bottom_head: Head::Ellipsoidal, top_head: Head::Ellipsoidal,
///     neck_height: inch(1.0), neck_bore: inch(2.5), riser: None, collector: &BottomCollector::None,
/// };
/// let by = DiameterBy::Circumference { around: Known::measured(inch(37.9)), wall: Known::measured(inch(0.16)) };
/// let found = inside_diameter(&by, &inside, None).unwrap();
/// assert!((found.value.value / 0.0254 - 11.744).abs() < 5e-4);
/// ```
pub fn inside_diameter(
    by: &DiameterBy,
    inside: &Inside,
    nominal: Option<&Known<Length>>,
) -> Result<Figure<Length>, Problem> {
    let figure = match by {
        DiameterBy::Nominal { nominal } => {
            positive(Term::NominalDiameter, nominal.value.value, nominal.value.into())?;
            let share = Assumption::InsideOfNominal;
            let mut figure = Figure::new(
                metres(nominal.value.value * share.ratio()),
                Formula::InsideDiameterNominal,
                vec![nominal.input(Term::NominalDiameter)],
            )
            .with(Caution::MeasureDiameter);
            figure.basis = crate::quantity::Basis::Assumed;
            figure
        }
        DiameterBy::Measured { inside } => {
            positive(Term::InsideDiameter, inside.value.value, inside.value.into())?;
            Figure::new(inside.value, Formula::Given, vec![inside.input(Term::InsideDiameter)])
        }
        DiameterBy::Circumference { around, wall } => {
            positive(Term::Circumference, around.value.value, around.value.into())?;
            positive(Term::Wall, wall.value.value, wall.value.into())?;
            let outside = around.value.value / std::f64::consts::PI;
            let diameter = outside - 2.0 * wall.value.value;
            if diameter.is_nan() || diameter <= 0.0 {
                return Err(Problem::new(
                    Term::Wall,
                    Fault::NotBelow {
                        value: wall.value.into(),
                        other: Term::Circumference,
                        limit: metres(outside / 2.0).into(),
                    },
                ));
            }
            Figure::new(
                metres(diameter),
                Formula::InsideDiameterCircumference,
                vec![around.input(Term::Circumference), wall.input(Term::Wall)],
            )
        }
        DiameterBy::MeteredFill { volume, before, after } => {
            by_rise(Term::MeteredVolume, volume, before, after, inside)?
        }
        DiameterBy::RiseOfBag { volume, before, after } => {
            by_rise(Term::PackVolume, volume, before, after, inside)?.with(Caution::IfPackWasFull)
        }
    };
    Ok(match nominal {
        Some(nominal) if figure.value.value > nominal.value.value => {
            let (inside, nominal) = (figure.value.into(), nominal.value.into());
            figure.with(Caution::AboveNominal { inside, nominal })
        }
        _ => figure,
    })
}

fn by_rise(
    term: Term,
    volume: &Known<Volume>,
    before: &Known<Length>,
    after: &Known<Length>,
    inside: &Inside,
) -> Result<Figure<Length>, Problem> {
    positive(term, volume.value.value, volume.value.into())?;
    let depth = inside.depth.value;
    positive(Term::InsideDepth, depth, inside.depth.into())?;
    if !(0.0..=depth).contains(&before.value.value) {
        return Err(range(Term::TapeBefore, before.value, depth));
    }
    if !(0.0..=depth).contains(&after.value.value) {
        return Err(range(Term::TapeAfter, after.value, depth));
    }
    if after.value.value >= before.value.value {
        return Err(Problem::new(
            Term::TapeAfter,
            Fault::NotBelow { value: after.value.into(), other: Term::TapeBefore, limit: before.value.into() },
        ));
    }
    let (low_height, high_height) = (depth - before.value.value, depth - after.value.value);
    // How much the rise would take in a vessel of this diameter; more for a wider one. `None`: heads deeper than the
    // vessel, so too wide.
    // Grains stand beside riser and collector; water also stands in them, and only the riser's wall keeps it out.
    let water = term == Term::MeteredVolume;
    let nothing = BottomCollector::None;
    let around = if water { Inside { riser: None, collector: &nothing, ..*inside } } else { *inside };
    let wall = if water {
        inside.riser.map_or(0.0, |riser| wall_below(riser, high_height) - wall_below(riser, low_height))
    } else {
        0.0
    };
    let taken = |diameter: f64| -> Result<Option<f64>, Problem> {
        match Cavity::new(&Inside { diameter: metres(diameter), ..around }) {
            Ok(cavity) => Ok(Some((cavity.free_below(high_height) - cavity.free_below(low_height) - wall).max(0.0))),
            Err(problem) if problem.term == Term::InsideDepth => Ok(None),
            // Too narrow for its riser, collector or bore.
            Err(Problem { fault: Fault::NotBelow { other: Term::InsideDiameter, .. }, .. })
            | Err(Problem {
                term: Term::InsideDiameter | Term::LateralLength | Term::LateralCount | Term::LateralAxis,
                ..
            }) => Ok(Some(0.0)),
            Err(problem) => Err(problem),
        }
    };
    let (mut low, mut high) = (0.02, 6.0);
    let wanted = volume.value.value;
    if taken(low)?.is_none_or(|v| v > wanted) || taken(high)?.is_some_and(|v| v < wanted) {
        return Err(Problem::new(term, Fault::NoSolution));
    }
    for _ in 0..200 {
        let middle = low + (high - low) / 2.0;
        if middle <= low || middle >= high {
            break;
        }
        match taken(middle)? {
            Some(v) if v < wanted => low = middle,
            _ => high = middle,
        }
    }
    match taken(low)? {
        Some(v) if (v - wanted).abs() <= 1e-9 * wanted => {}
        _ => return Err(Problem::new(term, Fault::NoSolution)),
    }
    let inputs: Vec<Input> = vec![volume.input(term), before.input(Term::TapeBefore), after.input(Term::TapeAfter)];
    Ok(Figure::new(metres(low), Formula::InsideDiameterFill, inputs))
}

/// Volume of the riser's wall below a height, with the wall that such pipe usually has.
fn wall_below(riser: &Riser, height: f64) -> f64 {
    let outside = riser.outside_diameter.value.value;
    let inside = (outside - 2.0 * Assumption::RiserWall.ratio()).max(0.0);
    let area = std::f64::consts::PI / 4.0 * (outside - inside) * (outside + inside);
    area * (height - riser.seat.value.value).max(0.0)
}

fn range(term: Term, value: Length, depth: f64) -> Problem {
    Problem::new(term, Fault::OutOfRange { value: value.into(), low: metres(0.0).into(), high: metres(depth).into() })
}
