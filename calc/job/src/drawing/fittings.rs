//! What stands in the vessel: riser, collectors, rim, openings.

use bedwright_calc::order::Between as _;
use bedwright_calc::vessel::{BottomCollector, Opening, Vessel};

use super::frame::Frame;
use super::shape::{Class, Extent, number};
use super::sketch::Sketch;

/// The fittings' places, reckoned once: hatching keeps off them, and they are drawn over the layers.
pub(super) struct Fittings {
    riser: Option<Extent>,
    basket: Option<(Extent, f64)>,
    laterals: Vec<Extent>,
    plate: Option<Extent>,
    nozzles: Vec<Extent>,
    upper: Option<Extent>,
}

impl Fittings {
    /// The fittings of a vessel.
    pub fn new(vessel: &Vessel, frame: &Frame) -> Fittings {
        let measures = &vessel.measures;
        let axis = frame.axis;
        let riser_half = measures.riser.map(|riser| {
            (riser.outside_diameter.value.value / 2.0 * frame.scale).round().min(frame.half / 2.0).max(2.0)
        });
        let riser = measures.riser.zip(riser_half).map(|(riser, half)| {
            let top = frame.level(frame.rim + riser.allowance.value.value.min(frame.rim).max(-frame.rim));
            Extent {
                left: axis - half,
                top,
                right: axis + half,
                bottom: frame.y(riser.seat.value.value).max(top + 2.0),
            }
        });
        let half = riser_half.unwrap_or(0.0);
        let mut fittings =
            Fittings { riser, basket: None, laterals: Vec::new(), plate: None, nozzles: Vec::new(), upper: None };
        match measures.bottom_collector {
            BottomCollector::None => {}
            BottomCollector::Basket { diameter, bottom, top, top_slot, .. } => {
                let wide = (diameter.value.value / 2.0 * frame.scale).round().max(half + 2.0);
                let lower = frame.level(bottom.value.value);
                let upper = frame.level(top.value.value).min(lower - 5.0);
                let slot = frame.y(top_slot.value.value).min(lower).max(upper + 1.5);
                fittings.basket =
                    Some((Extent { left: axis - wide, top: upper, right: axis + wide, bottom: lower }, slot));
            }
            BottomCollector::HubAndLaterals { diameter, length, axis: level, .. } => {
                let thick = (diameter.value.value / 2.0 * frame.scale).max(1.5);
                let y = frame.y(level.value.value);
                let (upper, lower) = ((y - thick).round() + 0.5, (y + thick).round() + 0.5);
                let reach =
                    (length.value.value * frame.scale).min(frame.half_between(upper, lower) - 2.0).max(half + 3.0);
                let hub = (half + 3.0).max(1.2 * thick);
                fittings.laterals.push(Extent { left: axis - reach, top: upper, right: axis + reach, bottom: lower });
                fittings.laterals.push(Extent {
                    left: axis - hub,
                    top: upper - 2.0,
                    right: axis + hub,
                    bottom: lower + 2.0,
                });
            }
            BottomCollector::SlottedPlate { top, .. } => fittings.plate = plate(frame, top.value.value),
            BottomCollector::NozzlePlate { top, top_slot, .. } => {
                fittings.plate = plate(frame, top.value.value);
                if let Some(plate) = fittings.plate {
                    let tall = ((top_slot.value.value - top.value.value) * frame.scale).max(4.0);
                    let wide = (0.45 * tall).between(1.5, 5.0);
                    let room = (plate.right - plate.left) / 2.0 - wide - 3.0;
                    let step = (4.5 * wide).max(9.0);
                    let count = (room / step).floor().between(0.0, 60.0) as i32;
                    for k in -count..=count {
                        let x = axis + f64::from(k) * step;
                        fittings.nozzles.push(Extent {
                            left: x - wide,
                            top: plate.top - tall,
                            right: x + wide,
                            bottom: plate.top,
                        });
                    }
                }
            }
        }
        if let Some(upper) = measures.upper_collector {
            let under = frame.level(frame.rim - upper.value.value);
            let wide = (0.8 * frame.neck_half()).max(half + 2.0).min(frame.half - 3.0).round();
            let tall = (2.2 * wide).min(under - frame.datum - 1.0).between(3.0, 26.0).round();
            fittings.upper = Some(Extent { left: axis - wide, top: under - tall, right: axis + wide, bottom: under });
        }
        fittings
    }

    /// Everything hatching and numbers keep off.
    pub fn rooms(&self) -> Vec<Extent> {
        let basket = self.basket.iter().map(|(room, _)| room);
        let all = self
            .riser
            .iter()
            .chain(basket)
            .chain(&self.laterals)
            .chain(&self.plate)
            .chain(&self.nozzles)
            .chain(&self.upper);
        all.map(|room| room.grown(1.2)).collect()
    }

    /// The rooms of the bottom collector.
    pub fn collector(&self) -> Vec<Extent> {
        let basket = self.basket.iter().map(|(room, _)| room);
        basket.chain(&self.laterals).chain(&self.plate).chain(&self.nozzles).copied().collect()
    }

    /// How far the riser stands above a place.
    pub fn top(&self) -> Option<f64> {
        self.riser.map(|riser| riser.top)
    }

    /// Draws them, in front of the layers.
    pub fn draw(&self, sketch: &mut Sketch) {
        if let Some(plate) = &self.plate {
            sketch.rect(Class::Solid, None, plate, 0.0);
            // Slots as gaps in the metal.
            let count = ((plate.right - plate.left) / 6.0).floor().between(1.0, 200.0) as u32;
            let step = (plate.right - plate.left) / f64::from(count);
            let gaps: String = (0..count)
                .map(|k| {
                    let x = plate.left + (f64::from(k) + 0.5) * step;
                    format!("M{} {}v{}", number(x), number(plate.top), number(plate.bottom - plate.top))
                })
                .collect();
            if self.nozzles.is_empty() {
                sketch.path(Class::Halo, None, gaps);
            }
        }
        for nozzle in &self.nozzles {
            let middle = f64::midpoint(nozzle.left, nozzle.right);
            let head = nozzle.top + 0.6 * (nozzle.bottom - nozzle.top);
            sketch.line(Class::Slot, None, (middle, head), (middle, nozzle.bottom));
            sketch.rect(Class::Hollow, None, &Extent { bottom: head, ..*nozzle }, 1.0);
        }
        if let Some(riser) = &self.riser {
            let bottom = match (&self.basket, self.laterals.last()) {
                (Some((basket, _)), _) => riser.bottom.min(basket.bottom).max(basket.top),
                (None, Some(hub)) => riser.bottom.max(hub.top).min(hub.bottom),
                (None, None) => riser.bottom,
            };
            let x = |right: bool| if right { riser.right } else { riser.left };
            sketch.rect(Class::Hollow, None, &Extent { bottom, ..*riser }, 0.0);
            // The cap that keeps grains out while loading.
            let cap =
                Extent { left: x(false) - 1.5, top: riser.top - 4.0, right: x(true) + 1.5, bottom: riser.top + 1.0 };
            sketch.rect(Class::Solid, None, &cap, 1.0);
        }
        let mut laterals = self.laterals.iter();
        if let Some(pipe) = laterals.next() {
            sketch.rect(Class::Hollow, None, pipe, 1.0);
            sketch.path(Class::Slot, None, upright_slots(pipe));
            for hub in laterals {
                sketch.rect(Class::Hollow, None, hub, 1.0);
            }
        }
        if let Some((basket, slot)) = &self.basket {
            sketch.rect(Class::Hollow, None, basket, 1.0);
            sketch.path(Class::Slot, None, level_slots(basket, *slot));
        }
        if let Some(upper) = &self.upper {
            sketch.rect(Class::Hollow, None, upper, 1.0);
            sketch.path(Class::Slot, None, level_slots(upper, upper.top + 2.0));
        }
    }
}

fn plate(frame: &Frame, height: f64) -> Option<Extent> {
    let top = frame.level(height) - 0.5;
    let half = frame.half_at(top);
    (half > 4.0).then_some(Extent { left: frame.axis - half, top, right: frame.axis + half, bottom: top + 3.0 })
}

fn level_slots(room: &Extent, from: f64) -> String {
    let inset = ((room.right - room.left) * 0.16).max(1.0);
    let width = room.right - room.left - 2.0 * inset;
    let mut path = String::new();
    let mut y = room.bottom - 2.0;
    while y >= from.max(room.top + 1.5) {
        path.push_str(&format!("M{} {}h{}", number(room.left + inset), number(y), number(width)));
        y -= 2.5;
    }
    path
}

fn upright_slots(room: &Extent) -> String {
    let height = room.bottom - room.top - 2.0;
    let mut path = String::new();
    let mut x = room.left + 3.0;
    while height > 0.5 && x <= room.right - 2.0 {
        path.push_str(&format!("M{} {}v{}", number(x), number(room.top + 1.0), number(height)));
        x += 3.0;
    }
    path
}

/// The rim, and what tells the openings apart.
pub(super) fn rim(sketch: &mut Sketch, vessel: &Vessel, frame: &Frame) {
    let (axis, datum, neck) = (frame.axis, frame.datum, frame.neck_half());
    let (wide, thick) = match vessel.measures.opening {
        Opening::Flange | Opening::Manway => (7.0, 3.5),
        _ => (4.0, 3.5),
    };
    for side in [-1.0, 1.0] {
        let (a, b) = (axis + side * neck, axis + side * (neck + wide));
        let room = Extent { left: a.min(b), top: datum - 0.5, right: a.max(b), bottom: datum - 0.5 + thick };
        sketch.rect(Class::Solid, None, &room, 0.5);
    }
    let straight = f64::midpoint(vessel.cavity.bottom_tangent().value, vessel.cavity.top_tangent().value);
    match vessel.measures.opening {
        Opening::TopAndBottom => {
            let out = neck.min(frame.half * 0.3).round();
            let mut y = frame.floor();
            while frame.half_at(y) < out && y > frame.datum {
                y -= 0.5;
            }
            let end = frame.floor() + 6.0;
            for side in [-1.0, 1.0] {
                let x = axis + side * out;
                sketch.line(Class::Shell, None, (x, y), (x, end));
                sketch.line(Class::Shell, None, (x, end), (x + side * 4.0, end));
            }
        }
        Opening::SidePorts => {
            let reach = vessel.cavity.straight_side().value / 2.0 * 0.8;
            let (wall, end) = (axis + frame.half, axis + frame.half + 7.0);
            for y in [frame.level(straight + reach), frame.level(straight - reach)] {
                for offset in [-3.5, 3.5] {
                    sketch.line(Class::Hollow, None, (wall, y + offset), (end, y + offset));
                }
                let flange = Extent { left: end - 2.0, top: y - 6.0, right: end, bottom: y + 6.0 };
                sketch.rect(Class::Solid, None, &flange, 0.0);
            }
        }
        Opening::FillPort => {
            // Somewhere on the shoulder; the survey doesn't say where.
            let x = axis + (0.62 * frame.half).max(neck + 6.0).min(frame.half - 5.0);
            let mut y = frame.datum;
            while frame.half_at(y) < x - axis + 3.0 && y < frame.floor() {
                y += 1.0;
            }
            let room = Extent { left: x - 4.0, top: y - 4.0, right: x + 4.0, bottom: y };
            sketch.rect(Class::Solid, None, &room, 0.5);
        }
        Opening::TopOnly | Opening::Flange | Opening::Manway => {}
    }
}
