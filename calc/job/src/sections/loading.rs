//! What was done at each vessel when its bed was taken out and loaded: who ticked which step when, and what was read.

use bedwright_calc::fill::SurfaceState;

use super::Unknown;
use super::survey::ids;
use crate::entry::Entry;
use crate::id::Id;

/// Every vessel of the job that somebody began to empty or load, and who read the cautions.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Loading {
    /// In the order they were read.
    pub acknowledged: Vec<Acknowledgement>,
    /// One for each tag, in the order of vessels and tags.
    pub tags: Vec<TagLoading>,
    /// What this version doesn't know.
    pub unknown: Unknown,
}

/// Which of the two sheets.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum WorkSheet {
    /// Taking the old bed out.
    Removal,
    /// Loading the new one.
    Loading,
}

ids!(WorkSheet { Removal = "removal", Loading = "loading" });

/// That a person read the cautions of a sheet: once a day and job, whatever the number of vessels.
#[derive(Clone, Debug, PartialEq)]
pub struct Acknowledgement {
    /// Of which sheet.
    pub sheet: WorkSheet,
    /// The day, as `2026-11-24`.
    pub day: String,
    /// When, and who.
    pub stamp: Stamp,
}

/// When something was done, and by whom.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Stamp {
    /// The instant as ISO 8601 writes it, in the time of the place: `2026-11-24T09:20:00+01:00`.
    pub at: String,
    /// The person's name, as typed.
    pub by: String,
}

/// One vessel, told by its tag. Every list is in the order of its keys.
#[derive(Clone, Debug, PartialEq)]
pub struct TagLoading {
    /// The vessel's id.
    pub vessel: Id,
    /// Its tag; empty where it has none.
    pub tag: String,
    /// Steps that were ticked, by their ids.
    pub ticks: Vec<(String, Stamp)>,
    /// Tape readings, by the place they belong to.
    pub readings: Vec<(ReadingPlace, TapeReading)>,
    /// Of a layer, how many packs went in where it isn't what was planned.
    pub poured: Vec<(Id, Entry)>,
    /// Of a layer, lot and date from its packs.
    pub lots: Vec<(Id, String)>,
    /// Texts.
    pub texts: Vec<(LoadingText, String)>,
    /// What the old bed went into.
    pub drums: Vec<Drum>,
    /// How the old bed was taken out.
    pub method: Option<RemovalMethod>,
    /// A photo.
    pub photo: Option<Photo>,
    /// What this version doesn't know.
    pub unknown: Unknown,
}

/// Where on the way a tape reading belongs.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum ReadingPlace {
    /// The surface as it was found at opening.
    Found,
    /// The surface that is left after some was taken out.
    Left,
    /// After so many packs of a layer, from 1.
    Pack(Id, u32),
    /// After the last pack of a layer.
    End(Id),
}

impl ReadingPlace {
    /// Its permanent name.
    #[must_use]
    pub fn name(&self) -> String {
        match self {
            ReadingPlace::Found => "found".to_owned(),
            ReadingPlace::Left => "left".to_owned(),
            ReadingPlace::Pack(layer, pack) => [layer.as_str(), "/", &pack.to_string()].concat(),
            ReadingPlace::End(layer) => [layer.as_str(), "/end"].concat(),
        }
    }

    /// The one with this name.
    #[must_use]
    pub fn of(name: &str) -> Option<ReadingPlace> {
        match name {
            "found" => return Some(ReadingPlace::Found),
            "left" => return Some(ReadingPlace::Left),
            _ => {}
        }
        let (layer, after) = name.split_once('/')?;
        let layer = Id::new(layer);
        match after {
            "end" => Some(ReadingPlace::End(layer)),
            pack => pack.parse().ok().filter(|pack| *pack > 0).map(|pack| ReadingPlace::Pack(layer, pack)),
        }
    }

    /// The layer it is of.
    #[must_use]
    pub const fn layer(&self) -> Option<&Id> {
        match self {
            ReadingPlace::Found | ReadingPlace::Left => None,
            ReadingPlace::Pack(layer, _) | ReadingPlace::End(layer) => Some(layer),
        }
    }
}

/// A tape reading, as typed.
#[derive(Clone, Debug, PartialEq)]
pub struct TapeReading {
    /// From the datum down; none where somebody says that it can't be taken any more.
    pub entry: Option<Entry>,
    /// The state of the surface.
    pub state: SurfaceState,
    /// When, and who.
    pub stamp: Stamp,
}

/// How an old bed is taken out.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum RemovalMethod {
    /// With a wet vacuum through the opening.
    WetVacuum,
    /// By tipping the vessel.
    Tip,
    /// With an eductor by a bottom port.
    Eductor,
    /// By hand, through a manway.
    Manway,
    /// Some other way.
    Other,
}

ids!(RemovalMethod {
    WetVacuum = "wet_vacuum",
    Tip = "tip",
    Eductor = "eductor",
    Manway = "manway",
    Other = "other",
});

/// A text about a vessel's removal or loading.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum LoadingText {
    /// What was found when the vessel was open and empty.
    Found,
    /// Who decides the waste class of what came out.
    WasteBy,
    /// The class they decided on.
    WasteClass,
    /// What was done another way than planned, and why.
    Deviations,
    /// What the valve was set to.
    Settings,
    /// What the outlet test said.
    OutletTest,
}

ids!(LoadingText {
    Found = "found",
    WasteBy = "waste_by",
    WasteClass = "waste_class",
    Deviations = "deviations",
    Settings = "settings",
    OutletTest = "outlet_test",
});

/// A drum, a bag or a box that the old bed went into.
#[derive(Clone, Debug, PartialEq)]
pub struct Drum {
    /// Its name for ever.
    pub id: Id,
    /// What stands on its label.
    pub label: String,
    /// What is in it.
    pub contents: String,
    /// What it weighs.
    pub weight: Option<Entry>,
    /// What this version doesn't know.
    pub unknown: Unknown,
}

impl Drum {
    /// One that nothing is known of yet.
    #[must_use]
    pub fn new(id: Id) -> Drum {
        Drum { id, label: String::new(), contents: String::new(), weight: None, unknown: Unknown::new() }
    }
}

/// A photo that lies beside the job, on the device that took it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Photo {
    /// Its name for ever.
    pub id: Id,
    /// How large it is.
    pub bytes: u32,
}

/// One change of a vessel's removal or loading; each says what stands there now.
#[derive(Clone, Debug, PartialEq)]
pub enum TagChange {
    /// A step's tick; none when it was taken off.
    Tick(String, Option<Stamp>),
    /// A tape reading; none when it was cleared.
    Reading(ReadingPlace, Option<TapeReading>),
    /// How many packs of a layer went in; none for as many as planned.
    Poured(Id, Option<Entry>),
    /// A layer's lot and date.
    Lot(Id, String),
    /// A text.
    Text(LoadingText, String),
    /// A drum put in at a place.
    InsertDrum(usize, Drum),
    /// A drum taken away.
    RemoveDrum(Id),
    /// A drum's label.
    DrumLabel(Id, String),
    /// What is in a drum.
    DrumContents(Id, String),
    /// What a drum weighs.
    DrumWeight(Id, Option<Entry>),
    /// How the old bed is taken out.
    Method(Option<RemovalMethod>),
    /// The photo.
    Photo(Option<Photo>),
}

impl Loading {
    /// What was done at a vessel; nothing where nobody began.
    #[must_use]
    pub fn of(&self, vessel: &Id, tag: &str) -> Option<&TagLoading> {
        self.tags.iter().find(|there| there.vessel == *vessel && there.tag == tag)
    }

    /// The same, to change it.
    fn of_mut(&mut self, vessel: &Id, tag: &str) -> Option<&mut TagLoading> {
        let at = self.tags.partition_point(|there| (&there.vessel, there.tag.as_str()) < (vessel, tag));
        if self.of(vessel, tag).is_none() {
            self.tags.insert(at, TagLoading::new(vessel, tag));
        }
        self.tags.get_mut(at)
    }

    /// Notes that somebody read the cautions, or that they didn't; whether they had before.
    pub(crate) fn acknowledge(&mut self, of: &Acknowledgement, read: bool) -> bool {
        let there = self.acknowledged.iter().position(|there| there == of);
        match (there, read) {
            (None, true) => self.acknowledged.push(of.clone()),
            (Some(at), false) => drop(self.acknowledged.remove(at)),
            _ => {}
        }
        there.is_some()
    }

    /// Makes a change of a vessel and says what takes it back; nothing where there is no such drum or place.
    pub(crate) fn change(&mut self, vessel: &Id, tag: &str, change: TagChange) -> Option<TagChange> {
        let change = self.of_mut(vessel, tag).and_then(|there| there.change(change));
        self.tidy();
        change
    }

    /// A vessel of which nothing is said isn't kept, so that taking the first tick back leaves what was there before it.
    fn tidy(&mut self) {
        self.tags.retain(|there| *there != TagLoading::new(&there.vessel, &there.tag));
    }

    /// Whether a person read the cautions of a sheet on a day.
    #[must_use]
    pub fn has_acknowledged(&self, sheet: WorkSheet, person: &str, day: &str) -> bool {
        self.acknowledged.iter().any(|read| read.sheet == sheet && read.day == day && read.stamp.by == person)
    }
}

impl TagLoading {
    /// One of which nothing is said yet.
    #[must_use]
    pub fn new(vessel: &Id, tag: &str) -> TagLoading {
        TagLoading {
            vessel: vessel.clone(),
            tag: tag.to_owned(),
            ticks: Vec::new(),
            readings: Vec::new(),
            poured: Vec::new(),
            lots: Vec::new(),
            texts: Vec::new(),
            drums: Vec::new(),
            method: None,
            photo: None,
            unknown: Unknown::new(),
        }
    }

    /// When a step was ticked, and by whom.
    #[must_use]
    pub fn tick(&self, step: &str) -> Option<&Stamp> {
        self.ticks.iter().find(|(there, _)| there == step).map(|(_, stamp)| stamp)
    }

    /// The reading at a place.
    #[must_use]
    pub fn reading(&self, place: &ReadingPlace) -> Option<&TapeReading> {
        self.readings.iter().find(|(there, _)| there == place).map(|(_, reading)| reading)
    }

    /// How many packs of a layer went in, where it was typed.
    #[must_use]
    pub fn poured(&self, layer: &Id) -> Option<&Entry> {
        self.poured.iter().find(|(there, _)| there == layer).map(|(_, entry)| entry)
    }

    /// A layer's lot and date.
    #[must_use]
    pub fn lot(&self, layer: &Id) -> &str {
        self.lots.iter().find(|(there, _)| there == layer).map_or("", |(_, lot)| lot)
    }

    /// One of its texts.
    #[must_use]
    pub fn text(&self, which: LoadingText) -> &str {
        self.texts.iter().find(|(there, _)| *there == which).map_or("", |(_, text)| text)
    }

    /// Makes a change and says what takes it back; nothing where there is no such drum or place.
    pub(crate) fn change(&mut self, change: TagChange) -> Option<TagChange> {
        Some(match change {
            TagChange::Tick(step, stamp) => {
                let before = put(&mut self.ticks, &step, stamp);
                TagChange::Tick(step, before)
            }
            TagChange::Reading(place, reading) => {
                let before = put(&mut self.readings, &place, reading);
                TagChange::Reading(place, before)
            }
            TagChange::Poured(layer, entry) => {
                let before = put(&mut self.poured, &layer, entry);
                TagChange::Poured(layer, before)
            }
            TagChange::Lot(layer, text) => {
                let before = put(&mut self.lots, &layer, some(text));
                TagChange::Lot(layer, before.unwrap_or_default())
            }
            TagChange::Text(which, text) => {
                let before = put(&mut self.texts, &which, some(text));
                TagChange::Text(which, before.unwrap_or_default())
            }
            TagChange::InsertDrum(at, drum) => {
                if at > self.drums.len() || self.drums.iter().any(|there| there.id == drum.id) {
                    return None;
                }
                let id = drum.id.clone();
                self.drums.insert(at, drum);
                TagChange::RemoveDrum(id)
            }
            TagChange::RemoveDrum(id) => {
                let at = self.drums.iter().position(|drum| drum.id == id)?;
                TagChange::InsertDrum(at, self.drums.remove(at))
            }
            TagChange::DrumLabel(id, text) => {
                let before = std::mem::replace(&mut self.drum(&id)?.label, text);
                TagChange::DrumLabel(id, before)
            }
            TagChange::DrumContents(id, text) => {
                let before = std::mem::replace(&mut self.drum(&id)?.contents, text);
                TagChange::DrumContents(id, before)
            }
            TagChange::DrumWeight(id, entry) => {
                let before = std::mem::replace(&mut self.drum(&id)?.weight, entry);
                TagChange::DrumWeight(id, before)
            }
            TagChange::Method(method) => TagChange::Method(std::mem::replace(&mut self.method, method)),
            TagChange::Photo(photo) => TagChange::Photo(std::mem::replace(&mut self.photo, photo)),
        })
    }

    fn drum(&mut self, id: &Id) -> Option<&mut Drum> {
        self.drums.iter_mut().find(|drum| drum.id == *id)
    }
}

fn some(text: String) -> Option<String> {
    (!text.is_empty()).then_some(text)
}

/// Puts a value under its key, or takes it away, and says what stood there before.
pub(crate) fn put<K: Clone + Ord, V>(list: &mut Vec<(K, V)>, key: &K, value: Option<V>) -> Option<V> {
    let at = list.partition_point(|(there, _)| there < key);
    let there = list.get(at).is_some_and(|(known, _)| known == key);
    let before = if there { Some(list.remove(at).1) } else { None };
    if let Some(value) = value {
        list.insert(at, (key.clone(), value));
    }
    before
}
