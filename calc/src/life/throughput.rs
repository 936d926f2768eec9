//! Water through a place: what its meter showed from day to day, and what the next one showed when it was replaced.

use crate::quantity::{Volume, cubic_metres};

/// What a meter showed on a day.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct MeterReading {
    /// The day, counted from any.
    pub day: f64,
    /// What it showed.
    pub volume: Volume,
    /// Whether it is the first of another meter. What the one before showed at its end is a reading of its own, on the
    /// same day.
    pub replaced: bool,
}

/// Water through a place over time.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Throughput {
    /// Day, and what had gone through since the first reading, m³; days never fall.
    points: Vec<(f64, f64)>,
    /// Readings that are less than the one before, of the same meter: left out, by their place in the list.
    pub fell: Vec<usize>,
}

impl Throughput {
    /// From readings in the order of their days. A meter that shows less than before and wasn't replaced is left out and
    /// said: it may have been misread.
    #[must_use]
    pub fn new(readings: &[MeterReading]) -> Throughput {
        let mut through = Throughput::default();
        let mut total = 0.0;
        let mut last: Option<f64> = None;
        for (place, reading) in readings.iter().enumerate() {
            let shown = reading.volume.value;
            if !shown.is_finite() || !reading.day.is_finite() {
                through.fell.push(place);
                continue;
            }
            match last {
                Some(_) if reading.replaced => {}
                Some(before) if shown < before => {
                    through.fell.push(place);
                    continue;
                }
                Some(before) => total += shown - before,
                None => {}
            }
            last = Some(shown);
            through.points.push((reading.day, total));
        }
        through
    }

    /// How much went through from one day to another. Straight lines lie between readings; before the first and after the
    /// last one the whole rate goes on. Nothing where fewer than two days are known.
    #[must_use]
    pub fn between(&self, from: f64, to: f64) -> Option<Volume> {
        Some(cubic_metres(self.until(to)? - self.until(from)?))
    }

    /// Cubic metres a day, over all readings; nothing where they span no day.
    #[must_use]
    pub fn rate(&self) -> Option<f64> {
        let ((first, _), (last, total)) = (*self.points.first()?, *self.points.last()?);
        (last > first).then(|| total / (last - first))
    }

    /// Cubic metres a day, lately: over the last readings that span at least so many days, or over all.
    #[must_use]
    pub fn rate_over(&self, days: f64) -> Option<f64> {
        let (last, total) = *self.points.last()?;
        let recent = self.points.iter().rev().find(|(day, _)| last - day >= days);
        match recent {
            Some((day, through)) => Some((total - through) / (last - day)),
            None => self.rate(),
        }
    }

    /// The days of the first and of the last reading.
    #[must_use]
    pub fn days(&self) -> Option<(f64, f64)> {
        Some((self.points.first()?.0, self.points.last()?.0))
    }

    fn until(&self, day: f64) -> Option<f64> {
        let rate = self.rate()?;
        let ((first, start), (last, end)) = (*self.points.first()?, *self.points.last()?);
        if day <= first {
            return Some(start - rate * (first - day));
        }
        if day >= last {
            return Some(end + rate * (day - last));
        }
        let after = self.points.partition_point(|(known, _)| *known <= day);
        let (right, left) = (self.points.get(after)?, self.points.get(after.checked_sub(1)?)?);
        Some(left.1 + (right.1 - left.1) * (day - left.0) / (right.0 - left.0))
    }
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used, clippy::indexing_slicing)] // Tests say so by panicking.

    use super::{MeterReading, Throughput};
    use crate::quantity::cubic_metres;

    fn reading(day: f64, volume: f64, replaced: bool) -> MeterReading {
        MeterReading { day, volume: cubic_metres(volume), replaced }
    }

    #[test]
    fn water_goes_on_through_a_new_meter() {
        let through = Throughput::new(&[
            reading(0.0, 100.0, false),
            reading(10.0, 120.0, false),
            reading(10.0, 3.0, true),
            reading(20.0, 23.0, false),
        ]);
        assert_eq!(through.between(0.0, 20.0).unwrap().value, 40.0);
        assert_eq!(through.between(5.0, 15.0).unwrap().value, 20.0);
    }

    #[test]
    fn a_meter_that_fell_is_said_and_left_out() {
        let through =
            Throughput::new(&[reading(0.0, 100.0, false), reading(5.0, 90.0, false), reading(10.0, 120.0, false)]);
        assert_eq!(through.fell, [1]);
        assert_eq!(through.between(0.0, 10.0).unwrap().value, 20.0);
    }

    #[test]
    fn the_rate_goes_on_before_and_after() {
        let through = Throughput::new(&[reading(10.0, 0.0, false), reading(20.0, 30.0, false)]);
        assert_eq!(through.between(0.0, 30.0).unwrap().value, 90.0);
        assert!(Throughput::new(&[reading(1.0, 5.0, false)]).between(0.0, 2.0).is_none());
    }

    #[test]
    fn lately_looks_at_the_last_readings() {
        let through =
            Throughput::new(&[reading(0.0, 0.0, false), reading(100.0, 100.0, false), reading(130.0, 190.0, false)]);
        assert_eq!(through.rate_over(30.0), Some(3.0));
        assert!((through.rate().unwrap() - 190.0 / 130.0).abs() < 1e-12);
    }
}
