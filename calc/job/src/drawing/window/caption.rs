//! What is written at lines: each text beside its own, clear of the other texts, with as little between as can be.

use crate::drawing::shape::{Class, Extent, text_width};

/// A text that belongs to a line.
pub(super) struct Caption<'a> {
    /// The text.
    pub text: String,
    /// How it looks.
    pub class: Class,
    /// Size of its letters.
    pub size: f64,
    /// The line's height at every pixel's column.
    pub line: &'a [f64],
    /// Whether it belongs under its line.
    pub below: bool,
    /// How bad the other side would be.
    pub wrong: f64,
    /// Where along the line it would like to be, from 0 to 1.
    pub near: f64,
}

/// A line that should not run through a text.
pub(super) struct Obstacle<'a> {
    /// Its height at every pixel's column.
    pub line: &'a [f64],
    /// How bad it would be.
    pub weight: f64,
}

/// A place a text could take, and how bad that is.
type Place = (f64, Extent);

/// From a line to its text.
const AIR: f64 = 4.0;
/// Places tried along a line.
const PLACES: u32 = 32;
/// A text that is left out.
const LEFT_OUT: f64 = 1000.0;
/// The search ends here with the best so far.
const MOST_TRIES: u32 = 20_000;

/// The places that are best together; none for a text that finds no room.
#[inline(never)]
pub(super) fn places(
    captions: &[Caption],
    room: &Extent,
    obstacles: &[Obstacle],
    taken: &[Extent],
) -> Vec<Option<Extent>> {
    let choices: Vec<Vec<Place>> = captions.iter().map(|caption| choices(caption, room, obstacles, taken)).collect();
    let mut search = Search {
        choices: &choices,
        so_far: Vec::with_capacity(captions.len()),
        best: vec![None; captions.len()],
        least: f64::INFINITY,
        tries: 0,
    };
    search.next(0.0);
    search.best
}

/// A search through the choices of every text, the best first; what can't become better is not followed.
struct Search<'a> {
    choices: &'a [Vec<Place>],
    so_far: Vec<Option<Extent>>,
    best: Vec<Option<Extent>>,
    least: f64,
    tries: u32,
}

impl Search<'_> {
    fn next(&mut self, cost: f64) {
        let Some(choices) = self.choices.get(self.so_far.len()) else {
            if cost < self.least {
                self.least = cost;
                self.best.clone_from(&self.so_far);
            }
            return;
        };
        let rest = self.choices.iter().skip(self.so_far.len() + 1);
        let rest: f64 = rest.map(|choices| choices.first().map_or(LEFT_OUT, |(cost, _)| *cost)).sum();
        for (more, at) in choices {
            if cost + more + rest >= self.least || self.tries > MOST_TRIES {
                return;
            }
            self.tries += 1;
            if !self.so_far.iter().flatten().any(|other| other.meets(&at.grown(1.5))) {
                self.so_far.push(Some(*at));
                self.next(cost + more);
                self.so_far.pop();
            }
        }
        if cost + LEFT_OUT + rest < self.least {
            self.so_far.push(None);
            self.next(cost + LEFT_OUT);
            self.so_far.pop();
        }
    }
}

/// Where a text could be, the best first.
#[inline(never)]
fn choices(caption: &Caption, room: &Extent, obstacles: &[Obstacle], taken: &[Extent]) -> Vec<Place> {
    let wide = text_width(&caption.text, caption.class, caption.size) + 4.0;
    let tall = 1.2 * caption.size;
    let (first, last) = (room.left + 3.0, room.right - wide - 3.0);
    let mut found: Vec<Place> = Vec::new();
    for step in 0..=PLACES {
        let share = f64::from(step) / f64::from(PLACES);
        let left = first + share * (last - first);
        if left < room.left {
            continue;
        }
        let Some((high, low)) = reach(caption.line, left - room.left, wide) else { continue };
        for below in [true, false] {
            let top = if below { low + AIR } else { high - AIR - tall };
            let at = Extent { left, top, right: left + wide, bottom: top + tall };
            if at.top < room.top + 1.0
                || at.bottom > room.bottom - 1.0
                || at.right > room.right - 1.0
                || taken.iter().any(|other| other.meets(&at.grown(1.5)))
            {
                continue;
            }
            let away = if below == caption.below { 0.0 } else { caption.wrong };
            // A steep line leaves its text behind.
            let cost = away
                + 8.0 * (share - caption.near).abs()
                + 0.5 * (low - high)
                + crossed(caption.line, &at, room, obstacles);
            found.insert(found.partition_point(|(other, _)| *other <= cost), (cost, at));
        }
    }
    found
}

/// The highest and the lowest place of a line over a stretch; none where it has gaps.
#[inline(never)]
fn reach(line: &[f64], from: f64, wide: f64) -> Option<(f64, f64)> {
    let from = from.max(0.0) as usize;
    let mut ends = (f64::INFINITY, f64::NEG_INFINITY);
    let stretch = line.get(from..(from + wide as usize).min(line.len()))?;
    let mut known = 0.0;
    for &y in stretch.iter().filter(|y| y.is_finite()) {
        ends = (ends.0.min(y), ends.1.max(y));
        known += 1.0;
    }
    // Most of the stretch, or most of a short line.
    let all = line.iter().filter(|y| y.is_finite()).count() as f64;
    (known > 0.0 && (known >= 0.6 * stretch.len() as f64 || known >= 0.6 * all)).then_some(ends)
}

/// How much runs through a text, or between it and its own line.
#[inline(never)]
fn crossed(own: &[f64], at: &Extent, room: &Extent, obstacles: &[Obstacle]) -> f64 {
    let from = (at.left - room.left).max(0.0) as usize;
    let wide = (at.right - at.left).max(1.0);
    let mut cost = 0.0;
    for obstacle in obstacles {
        let stretch = obstacle.line.iter().zip(own).skip(from).take(wide as usize);
        let hits = stretch.filter(|&(&y, &own)| {
            let own = if own.is_finite() { own } else { at.top };
            y > own.min(at.top - 1.0) && y < own.max(at.bottom + 1.0)
        });
        let hits = hits.count();
        if hits > 0 {
            cost += obstacle.weight * (6.0 + 20.0 * hits as f64 / wide);
        }
    }
    cost
}
