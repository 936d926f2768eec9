//! What stands at the left of a section: inside depth and freeboard.

use bedwright_calc::fill::Freeboard;
use bedwright_calc::vessel::Vessel;

use super::block::Block;
use super::dimension::upright;
use super::frame::Frame;
use super::full::{OUT, Sizes};
use super::shape::{Anchor, Class, crisp, number};
use super::sketch::Sketch;
use super::spread::{Wish, spread};
use crate::words::Manner;

/// Inside depth and freeboard; their texts share the column between the two lines.
pub(super) struct LeftSide<'a> {
    /// Where it begins.
    pub edge: f64,
    /// The depth.
    pub depth: Block,
    /// The freeboard.
    pub freeboard: Option<(&'a Freeboard, Block)>,
}

impl LeftSide<'_> {
    /// Draws both, with the datum's mark.
    pub fn draw(&self, sketch: &mut Sketch, frame: &Frame, vessel: &Vessel, manner: &Manner, sizes: &Sizes) {
        let outer = crisp(self.edge + 3.0);
        let floor = crisp(frame.floor());
        let datum = frame.datum;
        sketch.line(Class::Extension, None, (outer - 4.0, datum), (frame.axis - frame.neck_half() - 10.0, datum));
        sketch.line(Class::Extension, None, (outer - 4.0, floor), (frame.axis - 5.0, floor));
        upright(sketch, outer, datum, floor);
        // The level mark stands on the datum.
        let mark = outer + 6.0;
        let d = format!("M{} {}l-3.5-6h7Z", number(mark), number(datum));
        sketch.path(Class::Solid, None, d);
        sketch.text(Class::Small, None, (mark + 6.0, datum - 4.0), Anchor::Start, sizes.small, manner.section_datum());

        let (low, high) = (datum + 3.0, floor - 2.0);
        let mut middle = f64::midpoint(datum, floor);
        if let Some((figures, block)) = &self.freeboard {
            let inner = crisp(frame.axis - frame.half - OUT);
            let (ceiling, surface) =
                (frame.level(vessel.ceiling().value), frame.level(frame.rim - figures.tape.value.value));
            let total = block.height() + self.depth.height();
            if total <= high - low && ceiling >= datum {
                for y in [ceiling, surface] {
                    sketch.line(
                        Class::Extension,
                        None,
                        (inner - 4.0, y),
                        (frame.axis - frame.half_at(y).max(4.0) - 3.0, y),
                    );
                }
                upright(sketch, inner, ceiling, surface);
                let at = f64::midpoint(ceiling, surface);
                let depth_at =
                    if at + block.height() < middle { middle } else { f64::midpoint(surface.max(at), floor) };
                let wishes = [Wish { at, size: block.height() }, Wish { at: depth_at, size: self.depth.height() }];
                let places = spread(&wishes, low, high);
                if let [first, second] = places.as_slice() {
                    block.draw(sketch, None, inner - 7.0, *first, Anchor::End);
                    middle = *second;
                }
            }
        }
        if self.depth.height() <= high - low {
            self.depth.draw(sketch, None, outer + 6.0, middle, Anchor::Start);
        }
    }
}
