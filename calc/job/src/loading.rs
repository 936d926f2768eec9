//! What the two sheets of a vessel say: its steps, what the tape should read, what it did read, what is still lacking.
//! Pure, and compared by value.

mod sign;
mod steps;

pub use sign::{Lack, lacking, to_sign};
pub use steps::{Step, StepRow, StepWork};

use std::sync::Arc;

use bedwright_calc::fill::{Layer, Pour, Role, Rung, Sounding, ladder, pours_of, top_up, weights};
use bedwright_calc::material::Kind;
use bedwright_calc::quantity::{Fault, Figure, Known, Length, Mass, Problem, Term, kelvins, metres};
use bedwright_calc::supply::JobKind;
use bedwright_calc::vessel::Vessel;
use bedwright_calc::water::Water;

use crate::answers::VesselAnswers;
use crate::as_loaded::{AsLoaded, all_as_loaded, as_loaded_of};
use crate::entry::{Dimension, Entry, Misread, Understood};
use crate::id::Id;
use crate::job::Job;
use crate::sections::loading::{ReadingPlace, RemovalMethod, TagLoading};

/// A vessel's tags, or one empty one where it has none; each once.
#[must_use]
pub fn tags_of(job: &Job, vessel: &Id) -> Vec<String> {
    let mut tags: Vec<String> = Vec::new();
    for tag in job.vessel(vessel).map(|survey| survey.tags.as_slice()).unwrap_or_default() {
        if !tags.contains(tag) {
            tags.push(tag.clone());
        }
    }
    if tags.is_empty() {
        tags.push(String::new());
    }
    tags
}

/// The photos that lie beside a job: of loadings that go on, and of those that were signed.
#[must_use]
pub fn photos_of(job: &Job) -> Vec<Id> {
    let going = job.loading.body.tags.iter().filter_map(|tag| tag.photo.as_ref().map(|photo| photo.id.clone()));
    let signed =
        all_as_loaded(job).into_iter().filter_map(|loaded| loaded.photo.as_ref().map(|photo| photo.id.clone()));
    going.chain(signed).collect()
}

/// Everything the sheets of one tag say.
#[derive(Clone, Debug, PartialEq)]
pub struct LoadAnswers {
    /// What the visit is for.
    pub kind: JobKind,
    /// What was done so far.
    pub done: TagLoading,
    /// The layers of the plan, bottom first; their ids.
    pub layers: Vec<Id>,
    /// What is poured, from the bottom up.
    pub pours: Vec<Pour>,
    /// The readings to expect and what was read; or what keeps them from being worked out.
    pub rungs: Result<Vec<Rung>, Problem>,
    /// Readings that make no sense as typed.
    pub misread: Vec<(ReadingPlace, Misread)>,
    /// Numbers of packs that make no sense as typed.
    pub packs_misread: Vec<(Id, Misread)>,
    /// The steps of the removal sheet; none for a new vessel.
    pub removal: Vec<StepRow>,
    /// The steps of the loading sheet.
    pub loading: Vec<StepRow>,
    /// What the old bed weighs once the water has run off, the least and the most; none where the vessel isn't known.
    pub drained: Option<(Figure<Mass>, Figure<Mass>)>,
    /// How such a vessel is usually emptied.
    pub usual_method: RemovalMethod,
    /// What was signed; from there on nothing is changed.
    pub signed: Option<Arc<AsLoaded>>,
}

/// Works the sheets of one tag out.
#[must_use]
pub fn load_answers(job: &Job, tag: &str, answers: &VesselAnswers) -> LoadAnswers {
    let kind = job.head.body.kind;
    let done = job.loading.body.of(&answers.id, tag).cloned().unwrap_or_else(|| TagLoading::new(&answers.id, tag));
    let layers: Vec<Id> = answers.layers.iter().map(|layer| layer.id.clone()).collect();
    let mut found = LoadAnswers {
        kind,
        layers,
        pours: Vec::new(),
        rungs: Err(Problem::new(Term::LayerVolume, Fault::WaitsFor { other: Term::InsideDiameter })),
        misread: Vec::new(),
        packs_misread: Vec::new(),
        removal: Vec::new(),
        loading: Vec::new(),
        drained: None,
        usual_method: RemovalMethod::WetVacuum,
        signed: as_loaded_of(job, &answers.id, tag),
        done,
    };
    let whole = answers.planned.len() == answers.layers.len() && !answers.planned.is_empty();
    if let (Some(vessel), Some(plan)) = (&answers.vessel, &answers.plan)
        && whole
        && plan.layers.iter().all(Result::is_ok)
    {
        found.usual_method = steps::usual_method(vessel);
        found.drained = drained(vessel, &answers.planned, plan);
        found.rungs = found.climb(vessel, &answers.planned, plan);
    }
    found.removal = steps::removal(&found);
    found.loading = steps::loading(&found, answers);
    found
}

/// What the bed weighs drained, in water of 15 °C: the temperature moves it by less than a thousandth.
fn drained(
    vessel: &Vessel,
    layers: &[Layer],
    plan: &bedwright_calc::fill::Plan,
) -> Option<(Figure<Mass>, Figure<Mass>)> {
    let water = Water::at(&Known::typed(kelvins(288.15))).ok()?;
    let weights = weights(vessel, layers, plan, None, None, &water);
    weights.drained_low.ok().zip(weights.drained_high.ok())
}

/// Whether a layer is carbon: it takes oxygen from the air, and is soaked.
#[must_use]
pub fn is_carbon(layer: &Layer) -> bool {
    layer.material.id.starts_with("carbon")
}

/// Whether a layer is a resin, which is regenerated.
#[must_use]
pub fn is_resin(layer: &Layer) -> bool {
    layer.material.id.starts_with("resin")
}

/// Whether a layer's dust holds silica: gravel, sands, glass.
#[must_use]
pub fn is_silica(layer: &Layer) -> bool {
    layer.material.kind == Kind::Gravel || ["sand", "glass"].iter().any(|name| layer.material.id.starts_with(name))
}

impl LoadAnswers {
    /// The place of the surface that a top-up begins on; none where the vessel is loaded from empty.
    #[must_use]
    pub const fn start(&self) -> Option<ReadingPlace> {
        match self.kind {
            JobKind::TopUp => Some(ReadingPlace::Found),
            JobKind::Partial => Some(ReadingPlace::Left),
            JobKind::New | JobKind::Changeout => None,
        }
    }

    /// Whether the sheets begin on an empty vessel.
    #[must_use]
    pub const fn from_empty(&self) -> bool {
        matches!(self.kind, JobKind::New | JobKind::Changeout)
    }

    /// Where a rung's reading is kept.
    #[must_use]
    pub fn place_of(&self, rung: &Rung) -> Option<ReadingPlace> {
        let layer = self.layers.get(rung.layer)?.clone();
        Some(if rung.last { ReadingPlace::End(layer) } else { ReadingPlace::Pack(layer, rung.pack) })
    }

    /// The rung of a place.
    #[must_use]
    pub fn rung(&self, place: &ReadingPlace) -> Option<&Rung> {
        self.rungs.as_ref().ok()?.iter().find(|rung| self.place_of(rung).as_ref() == Some(place))
    }

    /// Why what was typed at a place makes no sense.
    #[must_use]
    pub fn misread_at(&self, place: &ReadingPlace) -> Option<&Misread> {
        self.misread.iter().find(|(there, _)| there == place).map(|(_, misread)| misread)
    }

    /// What was read at a place.
    #[must_use]
    pub fn tape_at(&self, place: &ReadingPlace) -> Option<Known<Length>> {
        let entry = self.done.reading(place)?.entry.as_ref()?;
        of_length(entry).ok()
    }

    /// Reads what was typed, and works out what to expect above it.
    fn climb(
        &mut self,
        vessel: &Vessel,
        layers: &[Layer],
        plan: &bedwright_calc::fill::Plan,
    ) -> Result<Vec<Rung>, Problem> {
        for (place, reading) in &self.done.readings {
            if let Some(Err(misread)) = reading.entry.as_ref().map(of_length) {
                self.misread.push((place.clone(), misread));
            }
        }
        let start = self.start().map(|place| (self.tape_at(&place), place));
        let begun = match &start {
            None => None,
            Some((Some(tape), _)) => Some(*tape),
            Some((None, _)) => return Err(Problem::new(Term::TapeBefore, Fault::Missing)),
        };
        let mut pours = match &begun {
            None => pours_of(plan),
            Some(tape) => vec![top_up(vessel, layers, plan, tape)?],
        };
        for pour in &mut pours {
            let Some(id) = self.layers.get(pour.layer) else { continue };
            let Some(entry) = self.done.poured(id).filter(|entry| !entry.text.trim().is_empty()) else { continue };
            match of_dimension(entry, Dimension::Count) {
                Ok(packs) if packs.si > 0.0 => pour.packs = Known::typed(packs.si),
                Ok(packs) => self.packs_misread.push((id.clone(), Misread::NotWhole { value: packs.si })),
                Err(misread) => self.packs_misread.push((id.clone(), misread)),
            }
        }
        // Ends after packs, so that an end counts where both were typed for the last pack.
        let mut soundings = Vec::new();
        for (place, _) in &self.done.readings {
            let Some(tape) = self.tape_at(place) else { continue };
            let Some(layer) = place.layer().and_then(|id| self.layers.iter().position(|there| there == id)) else {
                continue;
            };
            let Some(pour) = pours.iter().find(|pour| pour.layer == layer) else { continue };
            let pack = match place {
                ReadingPlace::Pack(_, pack) => *pack,
                _ => (pour.packs.value - 1e-9).ceil().max(1.0) as u32,
            };
            soundings.push(Sounding { layer, pack, tape });
        }
        self.pours = pours;
        ladder(vessel, layers, &self.pours, begun.as_ref(), &soundings)
    }

    /// How many steps of a sheet there are, and how many of them are done.
    #[must_use]
    pub fn progress(steps: &[StepRow]) -> (usize, usize) {
        (steps.iter().filter(|step| step.is_done()).count(), steps.len())
    }

    /// The layer a pour is of, with what is poured of it.
    #[must_use]
    pub fn pour_of(&self, layer: usize) -> Option<&Pour> {
        self.pours.iter().find(|pour| pour.layer == layer)
    }
}

/// The role of a layer that is poured.
#[must_use]
pub fn role_of(answers: &VesselAnswers, layer: usize) -> Role {
    answers.planned.get(layer).map_or(Role::Media, |layer| layer.role)
}

fn of_dimension(entry: &Entry, wanted: Dimension) -> Result<Understood, Misread> {
    let read = entry.understood()?;
    if read.dimension == wanted { Ok(read) } else { Err(Misread::WrongDimension { found: read.written, wanted }) }
}

/// A tape reading as typed; an empty one is none.
fn of_length(entry: &Entry) -> Result<Known<Length>, Misread> {
    let read = of_dimension(entry, Dimension::Length)?;
    Ok(Known { value: metres(read.si), ..Known::measured(metres(0.0)) })
}
