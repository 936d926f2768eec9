//! The closures of the shell, each as a body of revolution about the vessel's axis.
//!
//! A bottom head is described upright: height zero is its lowest inside point and its depth ends at the tangent
//! line. A top head is the same shape upside down. The straight flange belongs to the straight side, not here.

use std::f64::consts::PI;

use crate::order::Between as _;
use crate::quantity::{Known, Length, Problem, Source, Term, Volume, cubic_metres, metres, problem::positive};

/// The inside shape of a head.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Head {
    /// A flat plate.
    Flat,
    /// Half an ellipsoid, twice as wide as it is deep on both sides: depth D/4.
    Ellipsoidal,
    /// Half a sphere: depth D/2.
    Hemispherical,
    /// Torispherical, ASME flanged and dished.
    AsmeFd,
    /// Torispherical after DIN 28011.
    Din28011,
    /// Torispherical after DIN 28013.
    Din28013,
    /// A full cone, its point outward.
    Conical {
        /// From the point to the tangent line.
        depth: Known<Length>,
    },
}

struct TorisphericalRow {
    crown_per_diameter: f64,
    knuckle_per_diameter: f64,
    source: Source,
}

include!(concat!(env!("OUT_DIR"), "/heads.rs"));

impl Head {
    /// The permanent id.
    #[must_use]
    pub const fn id(self) -> &'static str {
        match self {
            Head::Flat => "flat",
            Head::Ellipsoidal => "ellipsoidal",
            Head::Hemispherical => "hemispherical",
            Head::AsmeFd => "asme_fd",
            Head::Din28011 => "din_28011",
            Head::Din28013 => "din_28013",
            Head::Conical { .. } => "conical",
        }
    }

    /// Where its proportions come from.
    #[must_use]
    pub fn source(self) -> Source {
        match self {
            Head::AsmeFd => ASME_FD.source,
            Head::Din28011 => DIN_28011.source,
            Head::Din28013 => DIN_28013.source,
            Head::Flat | Head::Ellipsoidal | Head::Hemispherical => Source::JonesTankVolume,
            Head::Conical { .. } => Source::Typed,
        }
    }

    /// Radii of crown and knuckle of a torispherical head, as shares of the diameter.
    #[must_use]
    pub fn proportions(self) -> Option<(f64, f64)> {
        let row = match self {
            Head::AsmeFd => &ASME_FD,
            Head::Din28011 => &DIN_28011,
            Head::Din28013 => &DIN_28013,
            Head::Flat | Head::Ellipsoidal | Head::Hemispherical | Head::Conical { .. } => return None,
        };
        Some((row.crown_per_diameter, row.knuckle_per_diameter))
    }

    /// Depth of the head from its tangent line to its outermost inside point.
    ///
    /// A torispherical head is proportioned on the *inside* diameter here; a real one is proportioned on the
    /// outside, which differs by the order of wall over diameter.
    ///
    /// # Errors
    /// [`Term::InsideDiameter`] that is not above zero; [`Term::BottomHeadDepth`] of a cone likewise.
    ///
    /// # Sources
    /// D. Jones, *Calculating Tank Volume*; proportions from `heads.csv`.
    ///
    /// # Example
    /// A 2:1 head of 11.75 in is a quarter of that deep.
    /// ```
    /// use bedwright_calc::{quantity::metres, vessel::Head};
    /// let depth = Head::Ellipsoidal.depth(metres(11.75 * 0.0254)).unwrap();
    /// assert!((depth.value / 0.0254 - 2.9375).abs() < 1e-12);
    /// ```
    pub fn depth(self, inside_diameter: Length) -> Result<Length, Problem> {
        Ok(metres(self.dome(inside_diameter)?.depth))
    }

    /// Volume of the whole head.
    ///
    /// # Errors
    /// As [`Head::depth`].
    ///
    /// # Sources
    /// D. Jones, *Calculating Tank Volume*.
    ///
    /// # Example
    /// Half a sphere holds π/12·D³.
    /// ```
    /// use bedwright_calc::{quantity::metres, vessel::Head};
    /// let v = Head::Hemispherical.volume(metres(2.0)).unwrap();
    /// assert!((v.value - std::f64::consts::PI * 8.0 / 12.0).abs() < 1e-14);
    /// ```
    pub fn volume(self, inside_diameter: Length) -> Result<Volume, Problem> {
        let dome = self.dome(inside_diameter)?;
        Ok(cubic_metres(dome.volume_below(dome.depth)))
    }

    pub(crate) fn dome(self, inside_diameter: Length) -> Result<Dome, Problem> {
        let diameter = inside_diameter.value;
        positive(Term::InsideDiameter, diameter, inside_diameter.into())?;
        let radius = diameter / 2.0;
        let torispherical = |row: &TorisphericalRow| {
            let (crown, knuckle) = (row.crown_per_diameter * diameter, row.knuckle_per_diameter * diameter);
            let sine = (radius - knuckle) / (crown - knuckle);
            let cosine = ((1.0 - sine) * (1.0 + sine)).sqrt();
            // crown·(1 − cos α) without the cancellation of a small angle.
            let joint = crown * sine * sine / (1.0 + cosine);
            Dome { radius, depth: joint + knuckle * cosine, curve: Curve::Torispherical { crown, knuckle, joint } }
        };
        Ok(match self {
            Head::Flat => Dome { radius, depth: 0.0, curve: Curve::Flat },
            Head::Ellipsoidal => Dome { radius, depth: diameter / 4.0, curve: Curve::Ellipse },
            Head::Hemispherical => Dome { radius, depth: radius, curve: Curve::Ellipse },
            Head::AsmeFd => torispherical(&ASME_FD),
            Head::Din28011 => torispherical(&DIN_28011),
            Head::Din28013 => torispherical(&DIN_28013),
            Head::Conical { depth } => {
                positive(Term::BottomHeadDepth, depth.value.value, depth.value.into())?;
                Dome { radius, depth: depth.value.value, curve: Curve::Cone }
            }
        })
    }
}

/// A head of a certain size, in metres.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Dome {
    pub(crate) radius: f64,
    pub(crate) depth: f64,
    curve: Curve,
}

#[derive(Clone, Copy, Debug, PartialEq)]
enum Curve {
    Flat,
    Ellipse,
    Cone,
    Torispherical { crown: f64, knuckle: f64, joint: f64 },
}

impl Dome {
    /// Section area at a height within the head.
    pub(crate) fn area_at(&self, height: f64) -> f64 {
        let h = height.between(0.0, self.depth);
        match self.curve {
            Curve::Flat => PI * self.radius * self.radius,
            Curve::Ellipse => {
                let x = h / self.depth;
                PI * self.radius * self.radius * x * (2.0 - x)
            }
            Curve::Cone => {
                let r = self.radius * h / self.depth;
                PI * r * r
            }
            Curve::Torispherical { crown, knuckle, joint } => {
                if h <= joint {
                    PI * h * (2.0 * crown - h)
                } else {
                    let w = self.depth - h;
                    let r = self.radius - knuckle + ((knuckle - w) * (knuckle + w)).max(0.0).sqrt();
                    PI * r * r
                }
            }
        }
    }

    /// Volume below a height within the head.
    pub(crate) fn volume_below(&self, height: f64) -> f64 {
        let h = height.between(0.0, self.depth);
        match self.curve {
            Curve::Flat => 0.0,
            Curve::Ellipse => {
                let x = h / self.depth;
                PI * self.radius * self.radius * x * x * (self.depth - h / 3.0)
            }
            Curve::Cone => {
                let x = h / self.depth;
                PI * self.radius * self.radius * x * x * h / 3.0
            }
            Curve::Torispherical { crown, knuckle, joint } => {
                let cap = |z: f64| PI * z * z * (crown - z / 3.0);
                if h <= joint {
                    cap(h)
                } else {
                    // ∫ (c + √(k² − w²))² dw from w = depth − h up to the joint; w is measured down from the tangent line.
                    let c = self.radius - knuckle;
                    let ring = |w: f64| {
                        let root = ((knuckle - w) * (knuckle + w)).max(0.0).sqrt();
                        let angle = libm::asin((w / knuckle).between(-1.0, 1.0));
                        (c * c + knuckle * knuckle) * w + c * (w * root + knuckle * knuckle * angle) - w * w * w / 3.0
                    };
                    cap(joint) + PI * (ring(self.depth - joint) - ring(self.depth - h))
                }
            }
        }
    }

    /// The height at which the section has this radius; the head's depth where it never gets that wide.
    pub(crate) fn height_of_radius(&self, radius: f64) -> f64 {
        if radius >= self.radius {
            return self.depth;
        }
        match self.curve {
            Curve::Flat => 0.0,
            Curve::Ellipse => {
                let x = radius / self.radius;
                self.depth * x * x / (1.0 + ((1.0 - x) * (1.0 + x)).sqrt())
            }
            Curve::Cone => self.depth * radius / self.radius,
            Curve::Torispherical { crown, knuckle, joint } => {
                let joint_radius = (joint * (2.0 * crown - joint)).sqrt();
                if radius <= joint_radius {
                    radius * radius / (crown + ((crown - radius) * (crown + radius)).sqrt())
                } else {
                    let out = radius - (self.radius - knuckle);
                    self.depth - ((knuckle - out) * (knuckle + out)).max(0.0).sqrt()
                }
            }
        }
    }

    /// Radii of crown and knuckle, and the height of their joint, of a torispherical head; metres.
    pub(crate) fn torispherical(&self) -> Option<(f64, f64, f64)> {
        match self.curve {
            Curve::Torispherical { crown, knuckle, joint } => Some((crown, knuckle, joint)),
            Curve::Flat | Curve::Ellipse | Curve::Cone => None,
        }
    }

    /// Heights inside the head at which its curve changes.
    pub(crate) fn joint(&self) -> Option<f64> {
        match self.curve {
            Curve::Torispherical { joint, .. } => Some(joint),
            Curve::Flat | Curve::Ellipse | Curve::Cone => None,
        }
    }
}
