//! How long a filter runs from wash to wash, by the pressures that visits saw.

use bedwright_calc::life::{DropReading, WashRun, run_by_drop};
use bedwright_calc::quantity::{Known, Pressure, Problem, pascals, seconds};

use super::bed_life::{BedLife, Lives};
use super::happened::Place;
use super::visit::{Visit, VisitField};
use crate::day::Day;
use crate::entry::Dimension;
use crate::field::WaterField;
use crate::id::Id;
use crate::job::Job;

/// What the pressures of a bed's visits say.
#[derive(Clone, Debug, PartialEq)]
pub enum SeenRun {
    /// Nobody typed at which loss it is washed.
    NoTerminal,
    /// How long it runs, from so many readings.
    Told(Box<WashRun>, usize),
    /// They tell no run.
    Untold(Problem),
}

/// Pressure lost so long after a wash, of every visit of a bed that says both.
#[must_use]
pub fn drops_of(bed: &BedLife) -> Vec<DropReading> {
    bed.visits.iter().filter_map(drop_of).collect()
}

fn drop_of(visit: &Visit) -> Option<DropReading> {
    let read = |field: VisitField| visit.number(field);
    let lost = read(VisitField::PressureIn)? - read(VisitField::PressureOut)?;
    let since = Known::measured(seconds(read(VisitField::SinceWash)?));
    Some(DropReading { since, lost: Known::measured(pascals(lost)) })
}

/// The same of all beds that stand in a vessel's places now.
#[must_use]
pub fn drops_of_vessel(job: &Job, vessel: &Id) -> Vec<DropReading> {
    let says = |record: &&crate::job::Record| record.value.get(VisitField::SinceWash.id()).is_some();
    if !job.records.iter().any(|record| says(&record)) {
        return Vec::new();
    }
    let lives = Lives::of(job, Day::LAST);
    let places: Vec<Place> = lives.places().filter(|place| place.vessel == *vessel).cloned().collect();
    places.iter().filter_map(|place| lives.now_at(place)).flat_map(drops_of).collect()
}

/// What a bed's visits say of how long it runs; nothing where none says how long ago it was washed.
#[must_use]
pub fn seen_run(job: &Job, place: &Place, bed: &BedLife) -> Option<SeenRun> {
    let drops = drops_of(bed);
    if drops.is_empty() {
        return None;
    }
    Some(match terminal(job, &place.vessel) {
        None => SeenRun::NoTerminal,
        Some(terminal) => match run_by_drop(&drops, &terminal) {
            Ok(run) => SeenRun::Told(Box::new(run), drops.len()),
            Err(problem) => SeenRun::Untold(problem),
        },
    })
}

/// The loss at which a vessel is washed, as somebody typed it.
fn terminal(job: &Job, vessel: &Id) -> Option<Known<Pressure>> {
    let duty = job.site.body.duty_of(vessel);
    let read = duty.entries.get(WaterField::TerminalDrop)?.entry.understood().ok()?;
    (read.dimension == Dimension::Pressure).then(|| Known::typed(pascals(read.si)))
}
