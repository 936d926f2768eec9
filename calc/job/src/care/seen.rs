//! What meter and pressures of a bed showed from visit to visit, for a chart and the table behind it.

use bedwright_calc::quantity::{Pressure, Volume, cubic_metres, pascals};

use super::bed_life::{BedLife, Lives};
use super::visit::{Visit, VisitField};
use crate::day::Day;
use crate::entry::Entry;

/// What one visit showed of water and pressure.
#[derive(Clone, Debug, PartialEq)]
pub struct Seen {
    /// The day.
    pub day: Day,
    /// Days since the bed was put in; since its first visit where nobody wrote that down.
    pub age: i64,
    /// What the meter showed, as typed.
    pub meter: Option<Entry>,
    /// Water through the bed up to then; nothing where no meter tells, or where this reading is left out.
    pub through: Option<Volume>,
    /// Whether the meter's reading is left out, since it shows less than before.
    pub left_out: bool,
    /// Pressure before the vessel.
    pub before: Option<Pressure>,
    /// Pressure after it.
    pub after: Option<Pressure>,
}

impl Seen {
    /// Pressure lost between the two: less than nought where they contradict each other.
    #[must_use]
    pub fn lost(&self) -> Option<Pressure> {
        Some(self.before? - self.after?)
    }
}

/// Visits of a bed on which a meter or a pressure was read, in the order of their days.
#[must_use]
pub fn seen(lives: &Lives, bed: &BedLife) -> Vec<Seen> {
    let start = bed.begun.or_else(|| bed.visits.first().and_then(Visit::date));
    let mut all = Vec::new();
    for visit in &bed.visits {
        let (Some(day), Some(start)) = (visit.date(), start) else { continue };
        let pressure = |field: VisitField| visit.number(field).map(pascals);
        let (before, after) = (pressure(VisitField::PressureIn), pressure(VisitField::PressureOut));
        let meter = visit.entry(VisitField::Meter).cloned();
        if meter.is_none() && before.is_none() && after.is_none() {
            continue;
        }
        let left_out = lives.fell(&visit.id);
        let counts = visit.number(VisitField::Meter).is_some() && !left_out;
        let through = if counts { lives.water_through(bed, day).map(cubic_metres) } else { None };
        all.push(Seen { day, age: day.since(start), meter, through, left_out, before, after });
    }
    all
}
