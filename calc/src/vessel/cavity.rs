//! The free space inside a vessel: volume below a height, and the height that holds a volume.

mod rungs;

pub use rungs::{Rung, Rungs};

use std::f64::consts::PI;

use super::head::{Dome, Head};
use super::{BottomCollector, Riser};
use crate::order;
use crate::order::Between as _;
use crate::quantity::{
    Area, Fault, Length, Problem, Term, Volume, cubic_metres, metres, problem::positive, square_metres,
};

/// The shell as a body of revolution: bottom head, straight side, top head, neck.
///
/// The hole the neck makes in the top head's crown is not counted: the neck stands on the crown.
#[derive(Clone, Debug, PartialEq)]
struct Profile {
    bottom: Dome,
    top: Dome,
    radius: f64,
    straight: f64,
    neck_radius: f64,
    neck_height: f64,
}

impl Profile {
    fn bottom_tangent(&self) -> f64 {
        self.bottom.depth
    }

    fn top_tangent(&self) -> f64 {
        self.bottom.depth + self.straight
    }

    fn crown(&self) -> f64 {
        self.top_tangent() + self.top.depth
    }

    fn rim(&self) -> f64 {
        self.crown() + self.neck_height
    }

    fn area_at(&self, z: f64) -> f64 {
        if z <= self.bottom_tangent() && self.bottom.depth > 0.0 {
            self.bottom.area_at(z)
        } else if z <= self.top_tangent() {
            PI * self.radius * self.radius
        } else if z <= self.crown() {
            self.top.area_at(self.crown() - z)
        } else {
            PI * self.neck_radius * self.neck_radius
        }
    }

    fn volume_below(&self, z: f64) -> f64 {
        let (bottom, straight, crown) = (self.bottom_tangent(), self.top_tangent(), self.crown());
        if z <= bottom {
            return self.bottom.volume_below(z);
        }
        let head = self.bottom.volume_below(bottom);
        let section = PI * self.radius * self.radius;
        if z <= straight {
            return head + section * (z - bottom);
        }
        let shell = head + section * self.straight;
        let top = self.top.volume_below(self.top.depth);
        if z <= crown {
            return shell + (top - self.top.volume_below(crown - z));
        }
        shell + top + PI * self.neck_radius * self.neck_radius * (z.min(self.rim()) - crown)
    }
}

/// A stretch of height with one solid circle on the axis.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Stretch {
    from: f64,
    to: f64,
    /// Area of the solid circle.
    solid: f64,
    /// Whether the solid fills the whole section, so that nothing is free.
    blocked: bool,
    /// Free volume below `from`.
    below: f64,
    /// Volume of the empty shell below `from`.
    shell_below: f64,
}

/// Level pipes round a hub.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Laterals {
    axis: f64,
    radius: f64,
    total_length: f64,
}

impl Laterals {
    fn width_at(&self, z: f64) -> f64 {
        let w = z - self.axis;
        let inside = (self.radius - w) * (self.radius + w);
        if inside > 0.0 { 2.0 * inside.sqrt() * self.total_length } else { 0.0 }
    }

    fn volume_below(&self, z: f64) -> f64 {
        let w = (z - self.axis).between(-self.radius, self.radius);
        let inside = ((self.radius - w) * (self.radius + w)).max(0.0);
        let angle = libm::asin((w / self.radius).between(-1.0, 1.0));
        self.total_length * (w * inside.sqrt() + self.radius * self.radius * (angle + PI / 2.0))
    }
}

/// What a cavity is made from, in quantities; see [`Cavity::new`].
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Inside<'a> {
    /// Inside diameter of the shell.
    pub diameter: Length,
    /// From the datum to the lowest inside point.
    pub depth: Length,
    /// The lower head.
    pub bottom_head: Head,
    /// The upper head.
    pub top_head: Head,
    /// From the top head's crown up to the datum.
    pub neck_height: Length,
    /// Clear bore of the neck.
    pub neck_bore: Length,
    /// The riser, taken as solid: water inside it is no room for grains.
    pub riser: Option<&'a Riser>,
    /// The bottom collector.
    pub collector: &'a BottomCollector,
}

/// The free space inside a vessel, from its lowest inside point up to the datum.
///
/// Free means: inside the shell, outside riser and bottom collector, and above a plate. With a solid that would
/// poke through a head near its tip nothing is free there; volume never runs negative.
#[derive(Clone, Debug, PartialEq)]
pub struct Cavity {
    profile: Profile,
    stretches: Vec<Stretch>,
    laterals: Option<Laterals>,
    capacity: f64,
}

impl Cavity {
    /// The free space of these measures.
    ///
    /// # Errors
    /// Any length that is not above zero; [`Term::InsideDepth`] too small for heads and neck;
    /// [`Term::RiserOutsideDiameter`] or [`Term::CollectorDiameter`] not below the inside diameter;
    /// [`Term::LateralLength`] that reaches beyond the shell; [`Term::CollectorTop`] outside the vessel.
    ///
    /// # Sources
    /// Arithmetic.
    ///
    /// # Example
    /// A flat-ended cylinder of 1 m² × 2 m with a neck of no height to speak of holds 2 m³.
    /// ```
    /// use bedwright_calc::quantity::{metres, square_metres};
    /// use bedwright_calc::vessel::{BottomCollector, Cavity, Head, cavity::Inside};
    /// let diameter = metres((4.0 / std::f64::consts::PI).sqrt());
    /// let inside = Inside {
    ///     diameter, depth: metres(2.0), bottom_head: Head::Flat, top_head: Head::Flat,
    ///     neck_height: metres(0.0), neck_bore: metres(0.1), riser: None, collector: &BottomCollector::None,
    /// };
    /// let cavity = Cavity::new(&inside).unwrap();
    /// assert!((cavity.volume_below(metres(1.5)).unwrap().value - 1.5).abs() < 1e-14);
    /// ```
    pub fn new(inside: &Inside) -> Result<Cavity, Problem> {
        let diameter = inside.diameter.value;
        plausible(Term::InsideDiameter, inside.diameter)?;
        plausible(Term::InsideDepth, inside.depth)?;
        plausible(Term::ClearBore, inside.neck_bore)?;
        if inside.neck_bore.value > diameter {
            return Err(not_below(Term::ClearBore, inside.neck_bore, Term::InsideDiameter, inside.diameter));
        }
        let neck_height = inside.neck_height.value;
        if !(0.0..=f64::MAX).contains(&neck_height) {
            return Err(Problem::new(Term::NeckHeight, Fault::NotPositive { value: inside.neck_height.into() }));
        }
        if let Head::Conical { depth } = inside.top_head {
            return Err(Problem::new(Term::TopHeadDepth, Fault::NotPositive { value: depth.value.into() }));
        }
        let bottom = inside.bottom_head.dome(inside.diameter)?;
        let top = inside.top_head.dome(inside.diameter)?;
        let straight = inside.depth.value - neck_height - bottom.depth - top.depth;
        if straight.is_nan() || straight < 0.0 {
            return Err(Problem::new(
                Term::InsideDepth,
                Fault::NotAbove {
                    value: inside.depth.into(),
                    other: Term::TopHeadDepth,
                    limit: metres(neck_height + bottom.depth + top.depth).into(),
                },
            ));
        }
        let profile = Profile {
            bottom,
            top,
            radius: diameter / 2.0,
            straight,
            neck_radius: inside.neck_bore.value / 2.0,
            neck_height,
        };
        let riser = solid_riser(inside)?;
        let collector = solid_collector(inside, &profile)?;
        let laterals = laterals(inside, &profile)?;
        let floor = floor(inside, &profile)?;
        Ok(Cavity::assemble(profile, &[riser, collector], floor, laterals))
    }

    fn assemble(profile: Profile, solids: &[Option<Solid>], floor: f64, laterals: Option<Laterals>) -> Cavity {
        let rim = profile.rim();
        let mut heights = vec![0.0, profile.bottom_tangent(), profile.top_tangent(), profile.crown(), rim, floor];
        heights.extend(profile.bottom.joint());
        heights.extend(profile.top.joint().map(|joint| profile.crown() - joint));
        for solid in solids.iter().flatten() {
            heights.extend([solid.from, solid.to]);
            heights.push(profile.bottom.height_of_radius(solid.radius));
            heights.push(profile.crown() - profile.top.height_of_radius(solid.radius));
        }
        heights.retain(|h| (0.0..=rim).contains(h));
        let mut heights = order::sorted(heights, f64::total_cmp);
        heights.dedup();
        let mut stretches: Vec<Stretch> = Vec::with_capacity(heights.len());
        let mut below = 0.0;
        for (&from, &to) in heights.iter().zip(heights.iter().skip(1)) {
            let middle = from + (to - from) / 2.0;
            let radius = solids
                .iter()
                .flatten()
                .filter(|solid| solid.from <= middle && middle < solid.to)
                .map(|solid| solid.radius)
                .fold(0.0, f64::max);
            let solid = PI * radius * radius;
            let blocked = middle < floor || profile.area_at(middle) <= solid;
            let shell_below = profile.volume_below(from);
            stretches.push(Stretch { from, to, solid, blocked, below, shell_below });
            if !blocked {
                below += (profile.volume_below(to) - shell_below - solid * (to - from)).max(0.0);
            }
        }
        let mut cavity = Cavity { profile, stretches, laterals, capacity: 0.0 };
        cavity.capacity = cavity.free_below(rim);
        cavity
    }

    /// Free volume below a height, in metres; the height is held within the vessel.
    pub(crate) fn free_below(&self, height: f64) -> f64 {
        let z = height.between(0.0, self.profile.rim());
        let index = self.stretches.partition_point(|s| s.to < z);
        let Some(stretch) = self.stretches.get(index).or(self.stretches.last()) else { return 0.0 };
        let coaxial = if stretch.blocked {
            stretch.below
        } else {
            stretch.below
                + (self.profile.volume_below(z) - stretch.shell_below - stretch.solid * (z - stretch.from)).max(0.0)
        };
        coaxial - self.laterals.map_or(0.0, |l| l.volume_below(z))
    }

    /// Free section area at a height, in square metres; zero where nothing is free.
    pub(crate) fn free_area(&self, height: f64) -> f64 {
        let z = height.between(0.0, self.profile.rim());
        let index = self.stretches.partition_point(|s| s.to < z);
        let Some(stretch) = self.stretches.get(index).or(self.stretches.last()) else { return 0.0 };
        if stretch.blocked {
            return 0.0;
        }
        (self.profile.area_at(z) - stretch.solid - self.laterals.map_or(0.0, |l| l.width_at(z))).max(0.0)
    }

    /// The lowest height that has this much free volume below it, in metres; `None` beyond the capacity.
    pub(crate) fn height_of(&self, volume: f64) -> Option<f64> {
        let rim = self.profile.rim();
        if volume <= 0.0 {
            return Some(0.0);
        }
        if volume > self.capacity {
            return (volume <= self.capacity * (1.0 + 1e-14)).then_some(rim);
        }
        let index = self.stretches.partition_point(|s| self.free_below(s.to) < volume);
        let stretch = self.stretches.get(index).or(self.stretches.last())?;
        let (mut low, mut high) = (stretch.from, stretch.to);
        let (at_low, at_high) = (self.free_below(low), self.free_below(high));
        let share = if at_high > at_low { (volume - at_low) / (at_high - at_low) } else { 0.5 };
        let mut z = low + (high - low) * share.between(0.0, 1.0);
        for _ in 0..200 {
            let miss = self.free_below(z) - volume;
            if miss == 0.0 {
                break;
            }
            if miss > 0.0 {
                high = z;
            } else {
                low = z;
            }
            let area = self.free_area(z);
            let newton = z - miss / area;
            let next = if area > 0.0 && newton > low && newton < high { newton } else { low + (high - low) / 2.0 };
            if next == z || next <= low || next >= high {
                break;
            }
            let step = (next - z).abs();
            z = next;
            if step <= f64::EPSILON * rim * 0.25 {
                break;
            }
        }
        Some(z)
    }

    /// Free volume below a height above the lowest inside point.
    ///
    /// Rises with height, continuously; zero at the lowest point, [`Cavity::capacity`] at the datum.
    ///
    /// # Errors
    /// [`Term::Height`] below zero or above the datum.
    ///
    /// # Sources
    /// D. Jones, *Calculating Tank Volume*; solids by arithmetic.
    ///
    /// # Example
    /// See [`Cavity::new`].
    pub fn volume_below(&self, height: Length) -> Result<Volume, Problem> {
        let rim = self.profile.rim();
        if (0.0..=rim).contains(&height.value) {
            Ok(cubic_metres(self.free_below(height.value)))
        } else {
            Err(out_of_range(Term::Height, height, 0.0, rim))
        }
    }

    /// The height that has a volume below it: the inverse of [`Cavity::volume_below`], and the lowest where several do.
    ///
    /// # Errors
    /// [`Term::FreeVolume`] below zero or beyond the capacity.
    ///
    /// # Sources
    /// As [`Cavity::volume_below`].
    ///
    /// # Example
    /// ```
    /// use bedwright_calc::quantity::{cubic_metres, metres};
    /// use bedwright_calc::vessel::{BottomCollector, Cavity, Head, cavity::Inside};
    /// let inside = Inside {
    ///     diameter: metres(0.3), depth: metres(1.3), bottom_head: Head::Ellipsoidal, top_head: Head::Ellipsoidal,
    ///     neck_height: metres(0.02), neck_bore: metres(0.06), riser: None, collector: &BottomCollector::None,
    /// };
    /// let cavity = Cavity::new(&inside).unwrap();
    /// let volume = cavity.volume_below(metres(0.5)).unwrap();
    /// assert!((cavity.height_holding(volume).unwrap().value - 0.5).abs() < 1e-14);
    /// ```
    pub fn height_holding(&self, volume: Volume) -> Result<Length, Problem> {
        let refused = || {
            Problem::new(
                Term::FreeVolume,
                Fault::OutOfRange { value: volume.into(), low: cubic_metres(0.0).into(), high: self.capacity().into() },
            )
        };
        if volume.value.is_nan() || volume.value < 0.0 {
            return Err(refused());
        }
        self.height_of(volume.value).map(metres).ok_or_else(refused)
    }

    /// Free volume up to the datum.
    #[must_use]
    pub fn capacity(&self) -> Volume {
        cubic_metres(self.capacity)
    }

    /// Free section area at a height; zero where nothing is free.
    #[must_use]
    pub fn section_at(&self, height: Length) -> Area {
        square_metres(self.free_area(height.value))
    }

    /// Inside radius of the empty shell at a height: what a drawing needs.
    #[must_use]
    pub fn radius_at(&self, height: Length) -> Length {
        metres((self.profile.area_at(height.value.between(0.0, self.profile.rim())) / PI).max(0.0).sqrt())
    }

    /// Height of the lower tangent line.
    #[must_use]
    pub fn bottom_tangent(&self) -> Length {
        metres(self.profile.bottom_tangent())
    }

    /// Height of the upper tangent line.
    #[must_use]
    pub fn top_tangent(&self) -> Length {
        metres(self.profile.top_tangent())
    }

    /// Height of the top head's highest inside point.
    #[must_use]
    pub fn crown(&self) -> Length {
        metres(self.profile.crown())
    }

    /// Height of the datum.
    #[must_use]
    pub fn rim(&self) -> Length {
        metres(self.profile.rim())
    }

    /// Length of the straight side, tangent to tangent.
    #[must_use]
    pub fn straight_side(&self) -> Length {
        metres(self.profile.straight)
    }

    /// Volume of the empty shell, with nothing standing in it.
    #[must_use]
    pub fn shell_volume(&self) -> Volume {
        cubic_metres(self.profile.volume_below(self.profile.rim()))
    }
}

/// A solid circle on the axis over a stretch of height.
#[derive(Clone, Copy, Debug)]
struct Solid {
    radius: f64,
    from: f64,
    to: f64,
}

fn solid_riser(inside: &Inside) -> Result<Option<Solid>, Problem> {
    let Some(riser) = inside.riser else { return Ok(None) };
    let outside = riser.outside_diameter.value;
    plausible(Term::RiserOutsideDiameter, outside)?;
    if outside.value >= inside.diameter.value {
        return Err(not_below(Term::RiserOutsideDiameter, outside, Term::InsideDiameter, inside.diameter));
    }
    let seat = riser.seat.value;
    if !(0.0..inside.depth.value).contains(&seat.value) {
        return Err(out_of_range(Term::RiserSeat, seat, 0.0, inside.depth.value));
    }
    Ok(Some(Solid { radius: outside.value / 2.0, from: seat.value, to: inside.depth.value }))
}

fn solid_collector(inside: &Inside, profile: &Profile) -> Result<Option<Solid>, Problem> {
    let BottomCollector::Basket { diameter, bottom, top, .. } = inside.collector else { return Ok(None) };
    plausible(Term::CollectorDiameter, diameter.value)?;
    if diameter.value.value >= inside.diameter.value {
        return Err(not_below(Term::CollectorDiameter, diameter.value, Term::InsideDiameter, inside.diameter));
    }
    if !(0.0..profile.crown()).contains(&bottom.value.value) {
        return Err(out_of_range(Term::CollectorBottom, bottom.value, 0.0, profile.crown()));
    }
    if top.value.value.is_nan() || top.value.value <= bottom.value.value {
        return Err(Problem::new(
            Term::CollectorTop,
            Fault::NotAbove { value: top.value.into(), other: Term::CollectorBottom, limit: bottom.value.into() },
        ));
    }
    if top.value.value >= profile.crown() {
        return Err(out_of_range(Term::CollectorTop, top.value, 0.0, profile.crown()));
    }
    Ok(Some(Solid { radius: diameter.value.value / 2.0, from: bottom.value.value, to: top.value.value }))
}

fn laterals(inside: &Inside, profile: &Profile) -> Result<Option<Laterals>, Problem> {
    let BottomCollector::HubAndLaterals { count, diameter, length, axis, .. } = inside.collector else {
        return Ok(None);
    };
    if !(1..=200).contains(count) {
        return Err(Problem::new(
            Term::LateralCount,
            Fault::OutOfRange { value: (*count).into(), low: 1_u32.into(), high: 200_u32.into() },
        ));
    }
    plausible(Term::CollectorDiameter, diameter.value)?;
    plausible(Term::LateralLength, length.value)?;
    let radius = diameter.value.value / 2.0;
    if !(radius..profile.crown() - radius).contains(&axis.value.value) {
        return Err(out_of_range(Term::LateralAxis, axis.value, radius, (profile.crown() - radius).max(radius)));
    }
    let reach = (profile.area_at(axis.value.value) / PI).sqrt();
    if length.value.value > reach {
        return Err(not_below(Term::LateralLength, length.value, Term::InsideDiameter, metres(reach)));
    }
    let laterals = Laterals { axis: axis.value.value, radius, total_length: f64::from(*count) * length.value.value };
    // They may not cover the section: grains must get past them at every height they span.
    for z in [axis.value.value - radius, axis.value.value] {
        let solid =
            inside.riser.map_or(0.0, |r| PI * r.outside_diameter.value.value * r.outside_diameter.value.value / 4.0);
        if laterals.width_at(axis.value.value) >= 0.95 * (profile.area_at(z) - solid) {
            return Err(Problem::new(
                Term::LateralCount,
                Fault::DoesNotFit {
                    needs: square_metres(laterals.width_at(axis.value.value)).into(),
                    room: square_metres(profile.area_at(z)).into(),
                },
            ));
        }
    }
    Ok(Some(laterals))
}

fn floor(inside: &Inside, profile: &Profile) -> Result<f64, Problem> {
    let Some(floor) = inside.collector.floor() else { return Ok(0.0) };
    if (0.0..profile.top_tangent()).contains(&floor.value.value) {
        Ok(floor.value.value)
    } else {
        Err(out_of_range(Term::CollectorTop, floor.value, 0.0, profile.top_tangent()))
    }
}

/// The smallest and the largest a part of a vessel is: far beyond anything built, and near enough that no sum of
/// volumes loses its meaning.
const PLAUSIBLE_M: (f64, f64) = (0.000_1, 100.0);

fn plausible(term: Term, value: Length) -> Result<(), Problem> {
    positive(term, value.value, value.into())?;
    if (PLAUSIBLE_M.0..=PLAUSIBLE_M.1).contains(&value.value) {
        Ok(())
    } else {
        Err(out_of_range(term, value, PLAUSIBLE_M.0, PLAUSIBLE_M.1))
    }
}

fn not_below(term: Term, value: Length, other: Term, limit: Length) -> Problem {
    Problem::new(term, Fault::NotBelow { value: value.into(), other, limit: limit.into() })
}

fn out_of_range(term: Term, value: Length, low: f64, high: f64) -> Problem {
    Problem::new(term, Fault::OutOfRange { value: value.into(), low: metres(low).into(), high: metres(high).into() })
}
