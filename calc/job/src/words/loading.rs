//! The sheets of removal and loading in words: steps, cautions, what a tape reading says.

use bedwright_calc::fill::{Deviation, Rung, SurfaceState, Tape};
use bedwright_calc::material::Pack;
use bedwright_calc::quantity::{Length, VolumeRate};

use super::{LoadingLabel, Manner, en};
use crate::answers::VesselAnswers;
use crate::loading::{Lack, LoadAnswers, StepRow};
use crate::sections::loading::{ReadingPlace, RemovalMethod, WorkSheet};

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
    /// A step with this vessel's figures; `wash` is the flow its backwash is set to, where known.
    #[must_use]
    pub fn step(
        &self,
        row: &StepRow,
        of: &LoadAnswers,
        answers: &VesselAnswers,
        wash: Option<VolumeRate>,
    ) -> StepWords {
        en::loading::step(*self, row, of, answers, wash)
    }

    /// The cautions of a sheet for a vessel, a sentence each.
    #[must_use]
    pub fn cautions(&self, sheet: WorkSheet, answers: &VesselAnswers) -> Vec<&'static str> {
        en::loading::cautions(sheet, answers)
    }

    /// A reading to expect, with its spread: "31 1/2 in ± 1 in".
    #[must_use]
    pub fn tape_and_spread(&self, tape: &Tape) -> String {
        [&self.tape(tape.reading.value), " ", &self.spread(tape.spread)].concat()
    }

    /// What a reading beyond the spread says: how far off, in packs, and what is likely, a sentence each. Nothing where it
    /// lies within the spread.
    #[must_use]
    pub fn deviation(&self, rung: &Rung, found: &Deviation, pack: &Pack) -> Vec<String> {
        if found.within {
            return Vec::new();
        }
        en::loading::deviation(*self, rung, found, pack)
    }

    /// How far a surface stands from where it was expected: "1 3/8 in lower".
    #[must_use]
    pub fn higher(&self, higher: Length) -> String {
        en::loading::higher(*self, higher)
    }

    /// Where on the way a reading belongs.
    #[must_use]
    pub fn place(&self, place: &ReadingPlace, of: &LoadAnswers, answers: &VesselAnswers) -> String {
        en::loading::place(*self, place, of, answers)
    }

    /// What keeps a loading from being signed.
    #[must_use]
    pub fn lack(&self, lack: &Lack, of: &LoadAnswers, answers: &VesselAnswers) -> String {
        en::loading::lack(*self, lack, of, answers)
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
        let whole = packs >= 1.0 && (packs - packs.round()).abs() < 1e-6;
        let many = if (packs - 1.0).abs() < 1e-6 || packs < 1.0 { 1 } else { 2 };
        let number = self.decimal(packs, if whole { 0 } else { 2 });
        [&number, " ", self.container(pack.container, many)].concat()
    }
}
