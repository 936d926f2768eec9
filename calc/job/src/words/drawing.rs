//! What stands on a section of a vessel, and what is read out in its place.

use bedwright_calc::material::Container;
use bedwright_calc::quantity::{Length, Temperature};

use super::Manner;
use super::label::picture::PictureText as Text;
use crate::answers::{LayerOutcome, VesselAnswers};
use crate::drawing::Besides;

impl Manner {
    /// What the picture is.
    #[must_use]
    pub fn section_title(&self) -> &'static str {
        self.label(Text::SectionTitle)
    }

    /// Under the figure of the inside depth.
    #[must_use]
    pub fn section_depth(&self) -> &'static str {
        self.label(Text::Depth)
    }

    /// Under the figure of the freeboard.
    #[must_use]
    pub fn section_freeboard(&self) -> &'static str {
        self.label(Text::Freeboard)
    }

    /// At the mark of the datum.
    #[must_use]
    pub fn section_datum(&self) -> &'static str {
        self.label(Text::Datum)
    }

    /// Above the column of tape readings.
    #[must_use]
    pub fn section_tape(&self) -> &'static str {
        self.label(if self.metric { Text::TapeMillimetre } else { Text::TapeInch })
    }

    /// Beside the reading after a pack: "15 1/2 bag 2".
    #[must_use]
    pub fn section_pack(&self, reading: Length, container: Container, number: usize) -> String {
        [&self.tape_bare(reading), " ", self.container(container, 1), " ", &number.to_string()].concat()
    }

    /// The whole picture as a text: the vessel, then each layer with its tape reading, then the freeboard.
    #[must_use]
    pub fn section_description(&self, answers: &VesselAnswers, besides: &Besides) -> String {
        let mut text = self.section_at_rest(answers);
        let Some(vessel) = &answers.vessel else { return text };
        if let Some(cut) = &answers.riser_cut {
            text.push_str(&self.sentence(Text::CutTold, &[("length", &self.tape(cut.value))]));
        }
        for (told, lifted) in [(Text::LiftedCold, besides.cold), (Text::LiftedWarm, besides.warm)] {
            let Some(lifted) = lifted else { continue };
            let tape = self.tape(vessel.measures.inside_depth.value - lifted.height);
            text.push_str(&self.sentence(told, &[("water", &self.temperature(lifted.water)), ("tape", &tape)]));
        }
        if let Some(loaded) = &besides.loaded {
            for surface in besides.surfaces(answers) {
                let (number, tape) = ((surface.layer + 1).to_string(), self.tape(surface.tape));
                let places = [("day", loaded.day.as_str()), ("number", &number), ("tape", &tape)];
                text.push_str(&self.sentence(Text::LoadedTold, &places));
            }
        }
        text
    }

    /// In the key: the bed in backwash at this water.
    pub(crate) fn section_lifted(&self, water: Temperature) -> String {
        self.sentence(Text::LiftedKey, &[("water", &self.temperature(water))])
    }

    /// In the key: what was read on that day, of that tag.
    pub(crate) fn section_as_loaded(&self, day: &str, tag: &str) -> String {
        let text = self.sentence(Text::LoadedKey, &[("day", day)]);
        if tag.trim().is_empty() { text } else { [&text, ", ", tag.trim()].concat() }
    }

    /// Beside a planned reading: what was read.
    pub(crate) fn section_loaded_tape(&self, tape: Length) -> String {
        self.sentence(Text::LoadedTape, &[("tape", &self.tape_bare(tape))])
    }

    /// Above the riser: what it is cut to.
    pub(crate) fn section_cut(&self, length: Length) -> String {
        self.sentence(Text::Cut, &[("length", &self.tape(length))])
    }

    /// In the key: how many packs a layer is.
    pub(crate) fn section_packs(&self, packs: f64, container: Container) -> String {
        let whole = packs >= 1.0 && (packs - packs.round()).abs() < 1e-6;
        let many = if (packs - 1.0).abs() < 1e-6 || packs < 1.0 { 1 } else { 2 };
        [&self.decimal(packs, if whole { 0 } else { 2 }), " ", self.container(container, many)].concat()
    }

    fn section_at_rest(&self, answers: &VesselAnswers) -> String {
        let Some(vessel) = &answers.vessel else { return self.label(Text::Unknown).to_owned() };
        let diameter = self.length(vessel.inside_diameter.value);
        let depth = self.tape(vessel.measures.inside_depth.value);
        let mut text = self.sentence(Text::ToScale, &[("diameter", &diameter), ("depth", &depth)]);
        if answers.layers.is_empty() {
            text.push_str(self.label(Text::NoLayer));
        }
        for (index, layer) in answers.layers.iter().enumerate() {
            let number = (index + 1).to_string();
            let name = answers.planned.get(index).map(|planned| [", ", &self.material(&planned.material.id)].concat());
            let name = name.unwrap_or_default();
            let said = match &layer.outcome {
                LayerOutcome::Filled(fill) => {
                    let (tape, spread) = (self.tape(fill.tape.reading.value), self.spread(fill.tape.spread));
                    let places = [("number", &*number), ("name", &name), ("tape", &tape), ("spread", &spread)];
                    text.push_str(&self.sentence(Text::Layer, &places));
                    continue;
                }
                LayerOutcome::Problem(_) => Text::LayerProblem,
                LayerOutcome::Unread(_) => Text::LayerUnread,
                LayerOutcome::Waits => Text::LayerWaits,
            };
            text.push_str(&self.sentence(said, &[("number", &number), ("name", &name)]));
        }
        if let Some(Ok(freeboard)) = answers.plan.as_ref().map(|plan| &plan.freeboard) {
            let length = self.tape(freeboard.length.value);
            let share = freeboard.ratio.as_ref().map(|ratio| self.percent(ratio.value));
            let said = if share.is_some() { Text::FreeboardShare } else { Text::FreeboardOnly };
            text.push_str(&self.sentence(said, &[("length", &length), ("share", &share.unwrap_or_default())]));
        }
        text
    }
}
