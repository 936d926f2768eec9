//! The bed in backwash: a broken line for the coldest water and one for the warmest, each with its temperature.

use super::compose::Subject;
use super::frame::Frame;
use super::shape::{Anchor, Class, Extent, text_width};
use super::sketch::Sketch;

/// A broken line, with its text where one found room.
struct LiftedLine {
    class: Class,
    y: f64,
    /// Whether it is drawn: not twice in the same place.
    drawn: bool,
    text: String,
    room: Option<Extent>,
}

/// The broken lines of a section.
pub(super) struct LiftedLines {
    lines: Vec<LiftedLine>,
    size: f64,
}

/// How each water's line is drawn, coldest first.
pub(super) const CLASSES: [Class; 2] = [Class::Expanded, Class::ExpandedWarm];

impl LiftedLines {
    /// Lines under the rim; their texts keep off what is taken.
    pub fn new(subject: &Subject, frame: &Frame, size: f64, taken: &[Extent]) -> LiftedLines {
        let lifted = subject.besides.lifted(subject.answers);
        let only_warm = subject.besides.cold.is_none();
        let mut lines: Vec<LiftedLine> = lifted
            .iter()
            .enumerate()
            .filter(|(_, lifted)| (0.0..=frame.rim).contains(&lifted.height.value))
            .map(|(at, lifted)| LiftedLine {
                class: if at == 0 && !only_warm { Class::Expanded } else { Class::ExpandedWarm },
                y: frame.level(lifted.height.value),
                drawn: true,
                text: subject.manner.temperature(lifted.water),
                room: None,
            })
            .collect();
        if let [first, second] = lines.as_mut_slice()
            && (first.y - second.y).abs() < 2.0
        {
            second.drawn = false;
        }
        let mut found = LiftedLines { lines, size };
        let mut taken = taken.to_vec();
        for at in 0..found.lines.len() {
            let room = found.place(at, frame, &taken);
            if let Some(line) = found.lines.get_mut(at) {
                line.room = room;
            }
            taken.extend(room);
        }
        found
    }

    /// Where a line's text stands: the colder one at the left, the warmer one at the right, on its line, else beside it.
    fn place(&self, at: usize, frame: &Frame, taken: &[Extent]) -> Option<Extent> {
        let line = self.lines.get(at)?;
        let wide = text_width(&line.text, line.class, self.size);
        let tall = self.size * 1.05;
        let others: Vec<f64> = self
            .lines
            .iter()
            .enumerate()
            .filter(|(there, other)| *there != at && other.drawn && line.drawn)
            .map(|(_, other)| other.y)
            .collect();
        let shifts = [0.0, -tall * 0.75, tall * 0.75];
        let sides = if at == 0 { [-1.0, 1.0] } else { [1.0, -1.0] };
        for shift in shifts {
            let (top, bottom) = (line.y + shift - tall / 2.0, line.y + shift + tall / 2.0);
            // Half a text would stand on another line.
            if others.iter().any(|y| (top - 1.5..=bottom + 1.5).contains(y)) {
                continue;
            }
            let half = frame.half_between(top, bottom);
            for side in sides {
                // From the wall inward.
                for step in 0..12 {
                    let out = half - 7.0 - 6.0 * f64::from(step);
                    if out - wide < 2.0 {
                        break;
                    }
                    let (a, b) = (frame.axis + side * out, frame.axis + side * (out - wide));
                    let room = Extent { left: a.min(b), top, right: a.max(b), bottom };
                    if !taken.iter().any(|other| other.meets(&room.grown(1.5))) {
                        return Some(room);
                    }
                }
            }
        }
        None
    }

    /// What hatching and numbers keep off: the texts.
    pub fn rooms(&self) -> impl Iterator<Item = Extent> + '_ {
        self.lines.iter().filter_map(|line| line.room)
    }

    /// The lines; fittings come over them.
    pub fn draw(&self, sketch: &mut Sketch, frame: &Frame) {
        for line in self.lines.iter().filter(|line| line.drawn) {
            let half = frame.half_at(line.y);
            sketch.line(line.class, None, (frame.axis - half, line.y), (frame.axis + half, line.y));
        }
    }

    /// The texts, each on ground of its own.
    pub fn write(&self, sketch: &mut Sketch) {
        for line in &self.lines {
            let Some(room) = &line.room else { continue };
            sketch.rect(Class::Ground, None, &room.grown(1.0), 0.0);
            let at = (f64::midpoint(room.left, room.right), f64::midpoint(room.top, room.bottom) + 0.36 * self.size);
            sketch.text(Class::Small, None, at, Anchor::Middle, self.size, &line.text);
        }
    }
}
