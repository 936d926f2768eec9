//! What stands on a section of a vessel, and what is read out in its place.

use bedwright_calc::material::Container;
use bedwright_calc::quantity::Length;

use super::Manner;
use super::label::picture::PictureText as Text;
use crate::answers::{LayerOutcome, VesselAnswers};

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
    pub fn section_description(&self, answers: &VesselAnswers, lifted: Option<Length>) -> String {
        let mut text = self.section_at_rest(answers);
        if let (Some(vessel), Some(height)) = (&answers.vessel, lifted) {
            let tape = self.tape(vessel.measures.inside_depth.value - height);
            text.push_str(&self.sentence(Text::Lifted, &[("tape", &tape)]));
        }
        text
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
