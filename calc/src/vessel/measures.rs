//! A vessel as it was surveyed, and the same once its inside has been worked out.

use super::cavity::{Cavity, Inside};
use super::diameter::inside_diameter;
use super::{BottomCollector, DiameterBy, Head, Opening, Riser};
use crate::quantity::{
    Assumption, Basis, Fault, Figure, Formula, Input, Known, Length, Mark, Problem, Reason, Remedy, Subject, Term,
    Verdict, Volume, metres,
};

/// What is known of a vessel.
#[derive(Clone, Debug, PartialEq)]
pub struct Measures {
    /// The nominal diameter, where known.
    pub nominal_diameter: Option<Known<Length>>,
    /// How its inside diameter is known.
    pub diameter_by: DiameterBy,
    /// From the datum to the lowest inside point.
    pub inside_depth: Known<Length>,
    /// The lower head.
    pub bottom_head: Head,
    /// The upper head.
    pub top_head: Head,
    /// From the top head's crown up to the datum.
    pub neck_height: Known<Length>,
    /// The clear bore of the opening.
    pub clear_bore: Known<Length>,
    /// How it opens.
    pub opening: Opening,
    /// The riser, where it has one.
    pub riser: Option<Riser>,
    /// The bottom collector.
    pub bottom_collector: BottomCollector,
    /// From the datum down to the underside of the upper collector, where it has one.
    pub upper_collector: Option<Known<Length>>,
}

/// A vessel whose inside is known.
#[derive(Clone, Debug, PartialEq)]
pub struct Vessel {
    /// What it was made from.
    pub measures: Measures,
    /// The inside diameter, and which way it was found.
    pub inside_diameter: Figure<Length>,
    /// The free space inside.
    pub cavity: Cavity,
}

impl Measures {
    /// Everything about the inside but the diameter.
    pub(crate) fn inside(&self, diameter: Length) -> Inside<'_> {
        Inside {
            diameter,
            depth: self.inside_depth.value,
            bottom_head: self.bottom_head,
            top_head: self.top_head,
            neck_height: self.neck_height.value,
            neck_bore: self.clear_bore.value,
            riser: self.riser.as_ref(),
            collector: &self.bottom_collector,
        }
    }
}

impl Vessel {
    /// Works out the inside of a vessel from what is known of it.
    ///
    /// # Errors
    /// As [`inside_diameter`] and [`Cavity::new`]; [`Term::UpperCollector`] below the floor of the vessel;
    /// [`Term::RiserOutsideDiameter`] not below the clear bore it stands in, or a riser where the opening takes none.
    ///
    /// # Sources
    /// Arithmetic.
    ///
    /// # Example
    /// See [`crate::fill::plan`].
    pub fn new(measures: Measures) -> Result<Vessel, Problem> {
        let mut diameter =
            inside_diameter(&measures.diameter_by, &measures.inside(metres(0.0)), measures.nominal_diameter.as_ref())?;
        if matches!(measures.diameter_by, DiameterBy::MeteredFill { .. } | DiameterBy::RiseOfBag { .. }) {
            // The rise was measured against what is known of the rest of the vessel.
            diameter.inputs.push(measures.inside_depth.input(Term::InsideDepth));
            diameter.inputs.push(measures.neck_height.input(Term::NeckHeight));
            if let Some(riser) = &measures.riser {
                diameter.inputs.push(riser.outside_diameter.input(Term::RiserOutsideDiameter));
            }
            diameter.basis = diameter.inputs.iter().map(|input| input.basis).fold(diameter.basis, Basis::weaker);
        }
        let bore = measures.clear_bore.value;
        crate::quantity::problem::positive(Term::ClearBore, bore.value, bore.into())?;
        if let Some(riser) = &measures.riser {
            let outside = riser.outside_diameter.value;
            if measures.opening.pours_beside_riser() && outside.value >= measures.clear_bore.value.value {
                return Err(Problem::new(
                    Term::RiserOutsideDiameter,
                    Fault::NotBelow {
                        value: outside.into(),
                        other: Term::ClearBore,
                        limit: measures.clear_bore.value.into(),
                    },
                ));
            }
        }
        let cavity = Cavity::new(&measures.inside(diameter.value))?;
        slots_make_sense(&measures, &cavity)?;
        if let Some(upper) = &measures.upper_collector {
            let depth = measures.inside_depth.value;
            if !(0.0..depth.value).contains(&upper.value.value) {
                return Err(Problem::new(
                    Term::UpperCollector,
                    Fault::OutOfRange { value: upper.value.into(), low: metres(0.0).into(), high: depth.into() },
                ));
            }
        }
        Ok(Vessel { measures, inside_diameter: diameter, cavity })
    }

    /// The same vessel with its inside diameter scaled: what a wrong diameter would make of it.
    pub(crate) fn cavity_scaled(&self, scale: f64) -> Option<Cavity> {
        let diameter = metres(self.inside_diameter.value.value * scale);
        // A wider shell on the same tape readings: where its heads no longer fit, the bore no longer goes in, there is none.
        Cavity::new(&self.measures.inside(diameter)).ok()
    }

    /// Height of what limits the bed at the top: the upper collector, or the upper tangent line without one.
    #[must_use]
    pub fn ceiling(&self) -> Length {
        match &self.measures.upper_collector {
            Some(upper) => metres(self.measures.inside_depth.value.value - upper.value.value),
            None => self.cavity.top_tangent(),
        }
    }

    /// Free volume from the lowest point up to a height.
    ///
    /// # Errors
    /// As [`Cavity::volume_below`].
    ///
    /// # Sources
    /// D. Jones, *Calculating Tank Volume*.
    ///
    /// # Example
    /// See [`Cavity::volume_below`], which this adds its reasons to.
    pub fn volume_below(&self, height: &Known<Length>) -> Result<Figure<Volume>, Problem> {
        let mut inputs = self.inputs();
        inputs.push(height.input(Term::Height));
        Ok(Figure::new(self.cavity.volume_below(height.value)?, Formula::VolumeBelow, inputs))
    }

    /// Free volume up to the datum.
    #[must_use]
    pub fn capacity(&self) -> Figure<Volume> {
        Figure::new(self.cavity.capacity(), Formula::Capacity, self.inputs())
    }

    /// Length of the straight side, tangent to tangent.
    #[must_use]
    pub fn straight_side(&self) -> Figure<Length> {
        Figure::new(self.cavity.straight_side(), Formula::StraightSide, self.inputs())
    }

    /// What every volume of this vessel rests on.
    #[must_use]
    pub fn inputs(&self) -> Vec<Input> {
        let mut inputs = vec![
            self.inside_diameter.input(Term::InsideDiameter),
            self.measures.inside_depth.input(Term::InsideDepth),
            self.measures.neck_height.input(Term::NeckHeight),
        ];
        if let Some(riser) = &self.measures.riser {
            inputs.push(riser.outside_diameter.input(Term::RiserOutsideDiameter));
            inputs.push(riser.seat.input(Term::RiserSeat));
        }
        if let Head::Conical { depth } = &self.measures.bottom_head {
            inputs.push(depth.input(Term::BottomHeadDepth));
        }
        inputs.extend(self.measures.bottom_collector.inputs());
        inputs
    }

    /// Whether the inside diameter can be right; `None` when nothing speaks against it.
    #[must_use]
    pub fn diameter_verdict(&self) -> Option<Verdict> {
        let nominal = self.measures.nominal_diameter.as_ref()?;
        (self.inside_diameter.value.value > nominal.value.value).then(|| Verdict {
            subject: Subject::Diameter,
            mark: Mark::Caution,
            reason: Reason::AboveNominal { inside: self.inside_diameter.value.into(), nominal: nominal.value.into() },
            remedies: vec![match self.measures.diameter_by {
                DiameterBy::Circumference { .. } => Remedy::TapeBareShell,
                _ => Remedy::CheckReadings,
            }],
            basis: self.inside_diameter.basis,
            source: crate::quantity::Source::CommonPractice,
        })
    }

    /// One standard deviation of the inside diameter, as a share of it.
    ///
    /// Found from a rise it carries what the tape and the pack add: half the relative error of the volume over the rise.
    #[must_use]
    pub fn diameter_tolerance(&self) -> f64 {
        let by_basis = match self.inside_diameter.basis {
            Basis::Assumed => Assumption::SpreadDiameterNominal.ratio(),
            Basis::Measured | Basis::Typed | Basis::Catalogue => Assumption::SpreadDiameterMeasured.ratio(),
        };
        let (pack, before, after) = match &self.measures.diameter_by {
            DiameterBy::MeteredFill { before, after, .. } => (0.0, before, after),
            DiameterBy::RiseOfBag { before, after, .. } => (Assumption::SpreadPack.ratio(), before, after),
            DiameterBy::Nominal { .. } | DiameterBy::Measured { .. } | DiameterBy::Circumference { .. } => {
                return by_basis;
            }
        };
        let rise = before.value.value - after.value.value;
        let tape = std::f64::consts::SQRT_2 * Assumption::SpreadTape.ratio() / rise;
        by_basis.max((pack * pack + tape * tape).sqrt() / 2.0)
    }
}

/// Slots stand where their collector is, and have a width.
fn slots_make_sense(measures: &Measures, cavity: &Cavity) -> Result<(), Problem> {
    let collector = &measures.bottom_collector;
    if let Some(width) = collector.slot_width() {
        crate::quantity::problem::positive(Term::SlotWidth, width.value.value, width.value.into())?;
    }
    let (low, high) = match collector {
        BottomCollector::None | BottomCollector::SlottedPlate { .. } => return Ok(()),
        BottomCollector::Basket { bottom, top, .. } => (bottom.value, top.value),
        BottomCollector::HubAndLaterals { axis, diameter, .. } => {
            (axis.value - diameter.value / 2.0, axis.value + diameter.value / 2.0)
        }
        BottomCollector::NozzlePlate { top, .. } => (top.value, cavity.crown()),
    };
    match collector.top_slot() {
        // Typed to a sixteenth, a slot may stand a hair beyond its collector.
        Some(slot) if !(low.value - 0.002..=high.value + 0.002).contains(&slot.value.value) => Err(Problem::new(
            Term::TopSlot,
            Fault::OutOfRange { value: slot.value.into(), low: low.into(), high: high.into() },
        )),
        _ => Ok(()),
    }
}
