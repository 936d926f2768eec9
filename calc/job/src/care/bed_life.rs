//! Which readings belong to which bed. A bed's life follows its media: through a rotation it goes on at another tag, and a
//! changeout ends it and begins the next.

use std::sync::Arc;

use bedwright_calc::life::{MeterReading, Throughput};
use bedwright_calc::order::sorted;
use bedwright_calc::quantity::cubic_metres;

use super::happened::{Happened, Place, What};
use super::visit::{Visit, VisitField};
use crate::as_loaded::{AsLoaded, all_as_loaded};
use crate::day::Day;
use crate::entry::{Dimension, Entry};
use crate::id::Id;
use crate::job::Job;

/// A time a bed stands at a place.
#[derive(Clone, Debug, PartialEq)]
pub struct Stay {
    /// Where.
    pub place: Place,
    /// Since when; nothing where nobody wrote it down.
    pub from: Option<Day>,
    /// Until when; nothing while it stands there.
    pub to: Option<Day>,
}

/// A bed, from the day it was put in to the day it was taken out.
#[derive(Clone, Debug, PartialEq)]
pub struct BedLife {
    /// The day it was put in; nothing where nobody wrote it down.
    pub begun: Option<Day>,
    /// The day it was taken out; nothing while it is in use.
    pub ended: Option<Day>,
    /// How it was loaded, where that was recorded.
    pub as_loaded: Option<Arc<AsLoaded>>,
    /// Where it stood, one after the other.
    pub stays: Vec<Stay>,
    /// Its visits, in the order of their days.
    pub visits: Vec<Visit>,
}

impl BedLife {
    fn begun(place: &Place, begun: Option<Day>) -> BedLife {
        BedLife {
            begun,
            ended: None,
            as_loaded: None,
            stays: vec![Stay { place: place.clone(), from: begun, to: None }],
            visits: Vec::new(),
        }
    }
}

/// Everything that happened to the beds of a job, put in order.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Lives {
    /// The bed that stands at each place now, by its place in `beds`.
    places: Vec<(Place, usize)>,
    /// Every bed there was.
    pub beds: Vec<BedLife>,
    /// Water through each place.
    pub water: Vec<(Place, Throughput, Vec<Id>)>,
    /// Visits whose day is still to come, or is no day: they are kept, and wait.
    pub waiting: Vec<Visit>,
}

enum Event {
    Visit(Box<Visit>),
    Happened(Box<Happened>),
    Loaded(Arc<AsLoaded>),
}

impl Lives {
    /// From the records of a job that still stand, up to today.
    #[must_use]
    pub fn of(job: &Job, today: Day) -> Lives {
        let withdrawn = crate::evidence::withdrawn(job);
        let mut lives = Lives::default();
        let mut events: Vec<(Day, String, Event)> = Vec::new();
        for record in &job.records {
            if withdrawn.get(record.id.as_str()).is_some() {
                continue;
            }
            if let Some(visit) = Visit::of(record) {
                match visit.date().filter(|day| *day <= today) {
                    Some(day) => events.push((day, visit.at.clone(), Event::Visit(Box::new(visit)))),
                    None => lives.waiting.push(visit),
                }
            } else if let Some(happened) = Happened::of(record)
                && let Some(day) = Day::of(&happened.day)
            {
                events.push((day, happened.at.clone(), Event::Happened(Box::new(happened))));
            }
        }
        for loaded in all_as_loaded(job) {
            if let Some(day) = Day::of(&loaded.day) {
                events.push((day, loaded.signed.at.clone(), Event::Loaded(loaded)));
            }
        }
        // What comes in order already, as records mostly do, costs nothing.
        let events = sorted(events, |a, b| (a.0, &a.1).cmp(&(b.0, &b.1)));
        let mut meters: Vec<(Place, Vec<MeterReading>, Vec<Id>)> = Vec::new();
        for (day, _, event) in events {
            lives.take(day, event, &mut meters);
        }
        lives.water =
            meters.into_iter().map(|(place, readings, ids)| (place, Throughput::new(&readings), ids)).collect();
        lives
    }

    fn take(&mut self, day: Day, event: Event, meters: &mut Vec<(Place, Vec<MeterReading>, Vec<Id>)>) {
        match event {
            Event::Visit(visit) => {
                let place = Place { vessel: visit.vessel.clone(), tag: visit.tag.clone() };
                if let Some(volume) = visit.number(VisitField::Meter) {
                    let reading = MeterReading { day: day.number(), volume: cubic_metres(volume), replaced: false };
                    meter(meters, &place, reading, &visit.id);
                }
                let bed = self.bed_at(&place);
                if let Some(bed) = self.beds.get_mut(bed) {
                    bed.visits.push(*visit);
                }
            }
            Event::Loaded(loaded) => {
                let place = Place { vessel: loaded.vessel.clone(), tag: loaded.tag.clone() };
                let bed = self.begin(&place, day);
                if let Some(bed) = self.beds.get_mut(bed) {
                    bed.as_loaded = Some(loaded);
                }
            }
            Event::Happened(happened) => match happened.what {
                What::Changeout { place } => {
                    self.begin(&place, day);
                }
                What::Rotation { places } => self.rotate(&places, day),
                What::MeterReplaced { place, end, start } => {
                    let volume = |entry: &Entry| {
                        let understood = entry.understood().ok()?;
                        (understood.dimension == Dimension::Volume).then(|| cubic_metres(understood.si))
                    };
                    if let Some(volume) = end.as_ref().and_then(volume) {
                        let reading = MeterReading { day: day.number(), volume, replaced: false };
                        meter(meters, &place, reading, &happened.id);
                    }
                    if let Some(volume) = volume(&start) {
                        let reading = MeterReading { day: day.number(), volume, replaced: true };
                        meter(meters, &place, reading, &happened.id);
                    }
                }
                What::Expected(_) | What::Follows { .. } => {}
            },
        }
    }

    /// The bed that stands at a place; one that nobody wrote down where none does yet.
    fn bed_at(&mut self, place: &Place) -> usize {
        if let Some((_, bed)) = self.places.iter().find(|(there, _)| there == place) {
            return *bed;
        }
        self.beds.push(BedLife::begun(place, None));
        let bed = self.beds.len() - 1;
        self.places.push((place.clone(), bed));
        bed
    }

    /// Ends the bed at a place and begins the next. A changeout and the record of its loading on one day are one.
    fn begin(&mut self, place: &Place, day: Day) -> usize {
        if let Some((_, bed)) = self.places.iter_mut().find(|(there, _)| there == place) {
            if let Some(there) = self.beds.get(*bed)
                && there.begun == Some(day)
            {
                return *bed;
            }
            if let Some(old) = self.beds.get_mut(*bed) {
                old.ended = Some(day);
                leave(old, day);
            }
            self.beds.push(BedLife::begun(place, Some(day)));
            *bed = self.beds.len() - 1;
            return *bed;
        }
        self.beds.push(BedLife::begun(place, Some(day)));
        let bed = self.beds.len() - 1;
        self.places.push((place.clone(), bed));
        bed
    }

    fn rotate(&mut self, places: &[Place], day: Day) {
        let mut beds: Vec<usize> = places.iter().map(|place| self.bed_at(place)).collect();
        if beds.len() < 2 {
            return;
        }
        beds.rotate_left(1);
        for (place, bed) in places.iter().zip(beds) {
            if let Some(moved) = self.beds.get_mut(bed) {
                leave(moved, day);
                moved.stays.push(Stay { place: place.clone(), from: Some(day), to: None });
            }
            if let Some((_, there)) = self.places.iter_mut().find(|(there, _)| there == place) {
                *there = bed;
            }
        }
    }

    /// The bed that stands at a place now.
    #[must_use]
    pub fn now_at(&self, place: &Place) -> Option<&BedLife> {
        let (_, bed) = self.places.iter().find(|(there, _)| there == place)?;
        self.beds.get(*bed)
    }

    /// Every place that something was written down of.
    pub fn places(&self) -> impl Iterator<Item = &Place> {
        self.places.iter().map(|(place, _)| place)
    }

    /// Water through a place.
    #[must_use]
    pub fn water_at(&self, place: &Place) -> Option<&Throughput> {
        self.water.iter().find(|(there, ..)| there == place).map(|(_, water, _)| water)
    }

    /// Whether a reading of a meter is left out, since the meter shows less than before and wasn't replaced.
    #[must_use]
    pub fn fell(&self, reading: &Id) -> bool {
        self.water.iter().any(|(_, water, ids)| water.fell.iter().any(|at| ids.get(*at) == Some(reading)))
    }

    /// Water through a bed from its beginning up to a day, m³, wherever it stood; nothing where a meter lacks. Where nobody
    /// wrote its beginning down it is counted from its first visit.
    #[must_use]
    pub fn water_through(&self, bed: &BedLife, until: Day) -> Option<f64> {
        if bed.stays.is_empty() {
            return None;
        }
        let mut sum = 0.0;
        for stay in &bed.stays {
            let from = stay.from.or_else(|| bed.visits.first().and_then(Visit::date))?;
            let to = stay.to.map_or(until, |to| to.min(until));
            if to > from {
                sum += self.water_at(&stay.place)?.between(from.number(), to.number())?.value;
            }
        }
        Some(sum)
    }
}

fn leave(bed: &mut BedLife, day: Day) {
    if let Some(stay) = bed.stays.last_mut() {
        stay.to = Some(day);
    }
}

fn meter(meters: &mut Vec<(Place, Vec<MeterReading>, Vec<Id>)>, place: &Place, reading: MeterReading, id: &Id) {
    match meters.iter_mut().find(|(there, ..)| there == place) {
        Some((_, readings, ids)) => {
            readings.push(reading);
            ids.push(id.clone());
        }
        None => meters.push((place.clone(), vec![reading], vec![id.clone()])),
    }
}
