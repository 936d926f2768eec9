//! The sheets of removal and loading in words: steps, cautions, what a tape reading says.

mod reading;
mod step;

use bedwright_calc::fill::{SurfaceState, Tape};
use bedwright_calc::material::Pack;

use super::{LoadingLabel, Manner};
use crate::sections::loading::{RemovalMethod, WorkSheet};

/// A step in words: what to do, then how, a line each.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct StepWords {
    /// What to do.
    pub title: String,
    /// How, with this vessel's figures.
    pub lines: Vec<String>,
}

/// What a state of the surface is called.
#[must_use]
pub const fn state(state: SurfaceState) -> LoadingLabel {
    match state {
        SurfaceState::AsPoured => LoadingLabel::StateAsPoured,
        SurfaceState::SettledAtOpening => LoadingLabel::StateSettled,
    }
}

/// What a way to empty a vessel is called.
#[must_use]
pub const fn method(method: RemovalMethod) -> LoadingLabel {
    match method {
        RemovalMethod::WetVacuum => LoadingLabel::MethodVacuum,
        RemovalMethod::Tip => LoadingLabel::MethodTip,
        RemovalMethod::Eductor => LoadingLabel::MethodEductor,
        RemovalMethod::Manway => LoadingLabel::MethodManway,
        RemovalMethod::Other => LoadingLabel::MethodOther,
    }
}

/// What a sheet is called.
#[must_use]
pub const fn sheet(sheet: WorkSheet) -> LoadingLabel {
    match sheet {
        WorkSheet::Removal => LoadingLabel::RemovalSheet,
        WorkSheet::Loading => LoadingLabel::LoadingSheet,
    }
}

impl Manner {
    /// A reading to expect, with its spread: "31 1/2 in ± 1 in".
    #[must_use]
    pub fn tape_and_spread(&self, tape: &Tape) -> String {
        [&self.tape(tape.reading.value), " ", &self.spread(tape.spread)].concat()
    }

    /// Day and time of a stamp, as they were where it was made: "2026-11-26 09:20".
    #[must_use]
    pub fn instant(&self, at: &str) -> String {
        let day = at.get(..10).unwrap_or(at);
        match at.get(11..16) {
            Some(time) => [day, " ", time].concat(),
            None => day.to_owned(),
        }
    }

    /// A number of packs of a layer in words: "2 bags", "0.4 bag".
    #[must_use]
    pub fn packs(&self, packs: f64, pack: &Pack) -> String {
        self.section_packs(packs, pack.container)
    }
}
