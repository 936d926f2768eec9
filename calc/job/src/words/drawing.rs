//! What stands on a section of a vessel, and what is read out in its place.

use bedwright_calc::material::Container;
use bedwright_calc::quantity::Length;

use super::Manner;
use crate::answers::{LayerOutcome, VesselAnswers};

impl Manner {
    /// What the picture is.
    #[must_use]
    pub fn section_title(&self) -> &'static str {
        "Section of the vessel"
    }

    /// Under the figure of the inside depth.
    #[must_use]
    pub fn section_depth(&self) -> &'static str {
        "inside depth"
    }

    /// Under the figure of the freeboard.
    #[must_use]
    pub fn section_freeboard(&self) -> &'static str {
        "freeboard"
    }

    /// At the mark of the datum.
    #[must_use]
    pub fn section_datum(&self) -> &'static str {
        "datum: rim"
    }

    /// Above the column of tape readings.
    #[must_use]
    pub fn section_tape(&self) -> &'static str {
        match self.metric {
            false => "tape, in",
            true => "tape, mm",
        }
    }

    /// Beside the reading after a pack: "15 1/2 bag 2".
    #[must_use]
    pub fn section_pack(&self, reading: Length, container: Container, number: usize) -> String {
        format!("{} {} {number}", self.tape_bare(reading), self.container(container, 1))
    }

    /// The whole picture as a text: the vessel, then each layer with its tape reading, then the freeboard.
    #[must_use]
    pub fn section_description(&self, answers: &VesselAnswers, lifted: Option<Length>) -> String {
        let mut text = self.section_description_english(answers);
        if let (Some(vessel), Some(height)) = (&answers.vessel, lifted) {
            let tape = self.tape(vessel.measures.inside_depth.value - height);
            {
                text.push_str(" A broken line: the bed in backwash at the coldest water, ");
                text.push_str(&tape);
                text.push_str(" under the rim.");
            }
        }
        text
    }

    fn section_description_english(&self, answers: &VesselAnswers) -> String {
        let Some(vessel) = &answers.vessel else {
            return "The inside of the vessel isn't known yet: a broken outline with a question mark.".to_owned();
        };
        let mut text = format!(
            "Drawn to scale: inside diameter {}, inside depth {}.",
            self.length(vessel.inside_diameter.value),
            self.tape(vessel.measures.inside_depth.value)
        );
        if answers.layers.is_empty() {
            text.push_str(" No layer yet.");
        }
        for (index, layer) in answers.layers.iter().enumerate() {
            let number = index + 1;
            let name = answers
                .planned
                .get(index)
                .map_or_else(String::new, |planned| format!(", {}", self.material(&planned.material.id)));
            text.push_str(&match &layer.outcome {
                LayerOutcome::Filled(fill) => format!(
                    " Layer {number}{name}: the tape reads {} down to its surface, {}.",
                    self.tape(fill.tape.reading.value),
                    self.spread(fill.tape.spread)
                ),
                LayerOutcome::Problem(_) => format!(" Layer {number}{name}: it can't be done as asked."),
                LayerOutcome::Unread(_) => format!(" Layer {number}{name}: an entry is missing or makes no sense."),
                LayerOutcome::Waits => format!(" Layer {number}{name}: it waits for a layer below."),
            });
        }
        if let Some(Ok(freeboard)) = answers.plan.as_ref().map(|plan| &plan.freeboard) {
            let length = self.tape(freeboard.length.value);
            text.push_str(&match &freeboard.ratio {
                Some(ratio) => format!(" Freeboard {length}, {} of the media bed.", self.percent(ratio.value)),
                None => format!(" Freeboard {length}."),
            });
        }
        text
    }
}
