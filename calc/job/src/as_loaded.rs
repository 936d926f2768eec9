//! The as-loaded record: what went into a vessel and how it was read, signed by name. Frozen from then on; a mistake is
//! set right by a correction, which is another record.
//!
//! It stands on its own: materials and packs by their catalogue's ids, the vessel's figures as they were reckoned with, each
//! reading as typed beside what was expected that day. Nothing of it is worked out again.

use std::sync::Arc;

use bedwright_calc::fill::{Role, SurfaceState};
use bedwright_calc::quantity::{Length, metres};
use serde_json::{Number, Value};

use crate::entry::{Dimension, Entry};
use crate::id::Id;
use crate::job::{Job, Record};
use crate::saved::fields::{Taken, Written};
use crate::saved::loading_1::{read_drum, read_photo, take_stamp, write_drum, write_photo};
use crate::sections::loading::{Drum, LoadingText, Photo, ReadingPlace, RemovalMethod, Stamp};

/// What a record of this kind says it is.
const KIND: &str = "as_loaded";
/// What a correction of one says it is.
const CORRECTION: &str = "as_loaded_correction";
/// All it may say.
pub(crate) const RECORDS: &[&str] = &[KIND, CORRECTION];

/// What went into a vessel, and how it was read.
#[derive(Clone, Debug, PartialEq)]
pub struct AsLoaded {
    /// The record's id.
    pub id: Id,
    /// The day, as `2026-11-24`.
    pub day: String,
    /// When it was signed, and the name it was signed by.
    pub signed: Stamp,
    /// The vessel.
    pub vessel: Id,
    /// Its tag; empty where it has none.
    pub tag: String,
    /// The inside diameter that was reckoned with, in millimetres.
    pub inside_diameter_mm: Option<f64>,
    /// The inside depth that was reckoned with, in millimetres.
    pub inside_depth_mm: Option<f64>,
    /// Every layer, bottom first; of a top-up the layers below as they were planned, with nothing poured.
    pub layers: Vec<LoadedLayer>,
    /// Every reading, from the bottom up.
    pub readings: Vec<LoadedReading>,
    /// Steps that were ticked, in the order of the sheets.
    pub done: Vec<(String, Stamp)>,
    /// Steps that were not.
    pub not_done: Vec<String>,
    /// What was written down.
    pub texts: Vec<(LoadingText, String)>,
    /// How the old bed was taken out.
    pub method: Option<RemovalMethod>,
    /// What it went into.
    pub drums: Vec<Drum>,
    /// A photo, on the device that took it.
    pub photo: Option<Photo>,
    /// What was set right since, in the order it was; already taken into the readings and lots above.
    pub corrections: Vec<Correction>,
}

/// A layer as it was poured.
#[derive(Clone, Debug, PartialEq)]
pub struct LoadedLayer {
    /// Its id in the plan.
    pub layer: Id,
    /// The material's id.
    pub material: String,
    /// What it is there for.
    pub role: Role,
    /// The pack's id.
    pub pack: String,
    /// How many packs went in, part packs in shares.
    pub packs: f64,
    /// The volume they were reckoned with, in litres.
    pub volume_l: f64,
    /// Lot and date, as on the packs.
    pub lot: String,
}

/// A reading as it was taken, beside what was expected.
#[derive(Clone, Debug, PartialEq)]
pub struct LoadedReading {
    /// Where on the way.
    pub place: ReadingPlace,
    /// As typed: the datum down to the surface; none where somebody said that it can't be taken any more.
    pub entry: Option<Entry>,
    /// The state of the surface.
    pub state: SurfaceState,
    /// When, and who.
    pub stamp: Stamp,
    /// What was expected.
    pub expected_mm: Option<f64>,
    /// Nine of ten readings fall within this of it.
    pub spread_mm: Option<f64>,
    /// How many packs more than counted would make this reading; less than nought for fewer.
    pub packs_more: Option<f64>,
}

/// What was set right after signing.
#[derive(Clone, Debug, PartialEq)]
pub struct Correction {
    /// The record's id.
    pub id: Id,
    /// The record it corrects.
    pub of: Id,
    /// The day.
    pub day: String,
    /// When, and who.
    pub stamp: Stamp,
    /// What was wrong, and why.
    pub text: String,
    /// The reading that is right.
    pub reading: Option<(ReadingPlace, Entry)>,
    /// The lot that is right.
    pub lot: Option<(Id, String)>,
}

impl LoadedReading {
    /// What was read, as a length.
    #[must_use]
    pub fn tape(&self) -> Option<Length> {
        let understood = self.entry.as_ref()?.understood().ok()?;
        (understood.dimension == Dimension::Length).then(|| metres(understood.si))
    }

    /// How much higher than expected the surface stood; less than nought for lower.
    #[must_use]
    pub fn higher(&self) -> Option<Length> {
        Some(metres(self.expected_mm? / 1000.0 - self.tape()?.value))
    }

    /// Whether it lay within the spread, where both are known.
    #[must_use]
    pub fn within(&self) -> Option<bool> {
        Some(self.higher()?.value.abs() <= self.spread_mm? / 1000.0 * (1.0 + 1e-9))
    }
}

impl AsLoaded {
    /// The reading of the uppermost surface, valve off, that later ones of the same state are compared with.
    #[must_use]
    pub fn surface(&self) -> Option<&LoadedReading> {
        let top = self.layers.last()?;
        self.readings
            .iter()
            .rev()
            .find(|read| read.place == ReadingPlace::End(top.layer.clone()) && read.entry.is_some())
    }

    /// One of its texts.
    #[must_use]
    pub fn text(&self, which: LoadingText) -> &str {
        self.texts.iter().find(|(there, _)| *there == which).map_or("", |(_, text)| text)
    }

    /// It as a record of a job.
    #[must_use]
    pub fn record(&self) -> Record {
        let mut fields = begun(&self.id, KIND, &self.day, &self.signed);
        fields.text("vessel", self.vessel.as_str());
        fields.text_unless_empty("tag", &self.tag);
        number(&mut fields, "inside_diameter_mm", self.inside_diameter_mm);
        number(&mut fields, "inside_depth_mm", self.inside_depth_mm);
        fields.put("layers", Value::Array(self.layers.iter().map(write_layer).collect()));
        fields.put("readings", Value::Array(self.readings.iter().map(write_reading).collect()));
        let done = self.done.iter().map(|(step, stamp)| {
            let mut done = Written::default();
            done.text("step", step);
            stamped(&mut done, stamp);
            done.whole()
        });
        fields.put("done", Value::Array(done.collect()));
        fields.put("not_done", Value::Array(self.not_done.iter().map(|step| step.as_str().into()).collect()));
        let mut texts = Written::default();
        for (which, text) in &self.texts {
            texts.text(which.id(), text);
        }
        fields.put("texts", texts.whole());
        if let Some(method) = self.method {
            fields.text("method", method.id());
        }
        fields.list_unless_empty("drums", self.drums.iter().map(write_drum).collect());
        if let Some(photo) = &self.photo {
            fields.put("photo", write_photo(photo));
        }
        Record { id: self.id.clone(), value: fields.whole() }
    }
}

impl Correction {
    /// It as a record of a job.
    #[must_use]
    pub fn record(&self) -> Record {
        let mut fields = begun(&self.id, CORRECTION, &self.day, &self.stamp);
        fields.text("of", self.of.as_str());
        fields.text("text", &self.text);
        if let Some((place, entry)) = &self.reading {
            fields.text("place", &place.name());
            fields.entry("tape", Some(entry));
        }
        if let Some((layer, lot)) = &self.lot {
            fields.text("layer", layer.as_str());
            fields.text("lot", lot);
        }
        Record { id: self.id.clone(), value: fields.whole() }
    }
}

fn begun(id: &Id, kind: &str, day: &str, stamp: &Stamp) -> Written {
    let mut fields = Written::default();
    fields.text("id", id.as_str());
    fields.text("kind", kind);
    fields.text("day", day);
    stamped(&mut fields, stamp);
    fields
}

fn stamped(fields: &mut Written, stamp: &Stamp) {
    fields.text("at", &stamp.at);
    fields.text("by", &stamp.by);
}

/// A number, where there is one and it is one.
fn number(fields: &mut Written, key: &str, value: Option<f64>) {
    if let Some(number) = value.and_then(Number::from_f64) {
        fields.put(key, Value::Number(number));
    }
}

fn write_layer(layer: &LoadedLayer) -> Value {
    let mut fields = Written::default();
    fields.text("layer", layer.layer.as_str());
    fields.text("material", &layer.material);
    fields.text("role", role_id(layer.role));
    fields.text("pack", &layer.pack);
    number(&mut fields, "packs", Some(layer.packs));
    number(&mut fields, "volume_l", Some(layer.volume_l));
    fields.text_unless_empty("lot", &layer.lot);
    fields.whole()
}

const fn role_id(role: Role) -> &'static str {
    match role {
        Role::Underbed => "underbed",
        Role::Media => "media",
    }
}

fn write_reading(reading: &LoadedReading) -> Value {
    let mut fields = Written::default();
    fields.text("place", &reading.place.name());
    fields.text("state", reading.state.id());
    fields.entry("tape", reading.entry.as_ref());
    stamped(&mut fields, &reading.stamp);
    number(&mut fields, "expected_mm", reading.expected_mm);
    number(&mut fields, "spread_mm", reading.spread_mm);
    number(&mut fields, "packs_more", reading.packs_more);
    fields.whole()
}

/// Whether the loading of a vessel was signed.
#[must_use]
pub fn is_signed(job: &Job, vessel: &Id, tag: &str) -> bool {
    job.records.iter().any(|record| is_of(&record.value, vessel, tag))
}

/// The as-loaded record of a vessel with what was set right since; none where nobody signed one.
#[must_use]
pub fn as_loaded_of(job: &Job, vessel: &Id, tag: &str) -> Option<Arc<AsLoaded>> {
    let record = job.records.iter().find(|record| is_of(&record.value, vessel, tag))?;
    let mut found = read(record);
    for other in &job.records {
        let of = other.value.get("of").and_then(Value::as_str);
        if kind_of(&other.value) == CORRECTION && of == Some(record.id.as_str()) {
            found.take(read_correction(other));
        }
    }
    Some(Arc::new(found))
}

/// Every as-loaded record of a job, in the order they were signed.
#[must_use]
pub fn all_as_loaded(job: &Job) -> Vec<Arc<AsLoaded>> {
    let of = |record: &Record| -> Option<(Id, String)> {
        if kind_of(&record.value) != KIND {
            return None;
        }
        let text = |key: &str| record.value.get(key).and_then(Value::as_str).unwrap_or_default();
        Some((Id::new(text("vessel")), text("tag").to_owned()))
    };
    job.records.iter().filter_map(of).filter_map(|(vessel, tag)| as_loaded_of(job, &vessel, &tag)).collect()
}

/// What was signed last of any tag of a vessel; none where nothing was.
#[must_use]
pub fn last_loaded(job: &Job, vessel: &Id) -> Option<Arc<AsLoaded>> {
    all_as_loaded(job).into_iter().rev().find(|loaded| loaded.vessel == *vessel)
}

fn kind_of(value: &Value) -> &str {
    value.get("kind").and_then(Value::as_str).unwrap_or_default()
}

fn is_of(value: &Value, vessel: &Id, tag: &str) -> bool {
    let text = |key: &str| value.get(key).and_then(Value::as_str).unwrap_or_default();
    kind_of(value) == KIND && text("vessel") == vessel.as_str() && text("tag") == tag
}

impl AsLoaded {
    /// Takes a correction in.
    fn take(&mut self, correction: Correction) {
        if let Some((place, entry)) = &correction.reading
            && let Some(reading) = self.readings.iter_mut().find(|reading| reading.place == *place)
        {
            reading.entry = Some(entry.clone());
            reading.stamp = correction.stamp.clone();
            // What it was in packs was of the reading that was wrong.
            reading.packs_more = None;
        }
        if let Some((layer, lot)) = &correction.lot
            && let Some(layer) = self.layers.iter_mut().find(|there| there.layer == *layer)
        {
            layer.lot.clone_from(lot);
        }
        self.corrections.push(correction);
    }
}

// A record is never refused as a whole: what can't be read of it is left out, and its text is kept in the job as it came.

fn read(record: &Record) -> AsLoaded {
    let mut fields = Taken::of(record.value.clone());
    let done = fields.list_or_empty("done").into_iter().map(|done| {
        let mut done = Taken::of(done);
        (done.text("step"), take_stamp(&mut done))
    });
    let texts =
        fields.map_or_empty("texts").into_iter().filter_map(|(which, text)| match (LoadingText::of(&which), text) {
            (Some(which), Value::String(text)) => Some((which, text)),
            _ => None,
        });
    let not_done = fields.list_or_empty("not_done");
    AsLoaded {
        id: record.id.clone(),
        day: fields.text_or_empty("day"),
        vessel: fields.id("vessel"),
        tag: fields.text_or_empty("tag"),
        inside_diameter_mm: taken_number(&mut fields, "inside_diameter_mm"),
        inside_depth_mm: taken_number(&mut fields, "inside_depth_mm"),
        layers: fields.list_or_empty("layers").into_iter().map(read_layer).collect(),
        readings: fields.list_or_empty("readings").into_iter().filter_map(read_reading).collect(),
        done: done.collect(),
        not_done: not_done.iter().filter_map(Value::as_str).map(str::to_owned).collect(),
        texts: texts.collect(),
        method: fields.maybe_text("method").and_then(|id| RemovalMethod::of(&id)),
        drums: fields.list_or_empty("drums").into_iter().filter_map(|drum| read_drum(drum).ok()).collect(),
        photo: fields.maybe("photo").and_then(read_photo),
        signed: take_stamp(&mut fields),
        corrections: Vec::new(),
    }
}

fn taken_number(fields: &mut Taken, key: &str) -> Option<f64> {
    fields.maybe(key)?.as_f64()
}

fn read_layer(layer: Value) -> LoadedLayer {
    let mut fields = Taken::of(layer);
    LoadedLayer {
        layer: fields.id("layer"),
        material: fields.text_or_empty("material"),
        role: if fields.text_or_empty("role") == role_id(Role::Underbed) { Role::Underbed } else { Role::Media },
        pack: fields.text_or_empty("pack"),
        packs: taken_number(&mut fields, "packs").unwrap_or_default(),
        volume_l: taken_number(&mut fields, "volume_l").unwrap_or_default(),
        lot: fields.text_or_empty("lot"),
    }
}

fn read_reading(reading: Value) -> Option<LoadedReading> {
    let mut fields = Taken::of(reading);
    Some(LoadedReading {
        place: ReadingPlace::of(&fields.text_or_empty("place"))?,
        state: SurfaceState::of(&fields.text_or_empty("state"))?,
        entry: fields.entry("tape"),
        expected_mm: taken_number(&mut fields, "expected_mm"),
        spread_mm: taken_number(&mut fields, "spread_mm"),
        packs_more: taken_number(&mut fields, "packs_more"),
        stamp: take_stamp(&mut fields),
    })
}

fn read_correction(record: &Record) -> Correction {
    let mut fields = Taken::of(record.value.clone());
    let (place, tape) = (ReadingPlace::of(&fields.text_or_empty("place")), fields.entry("tape"));
    let (layer, lot) = (fields.text_or_empty("layer"), fields.text_or_empty("lot"));
    Correction {
        id: record.id.clone(),
        of: fields.id("of"),
        day: fields.text_or_empty("day"),
        text: fields.text_or_empty("text"),
        reading: place.zip(tape),
        lot: (!layer.is_empty()).then(|| (Id::new(&layer), lot)),
        stamp: take_stamp(&mut fields),
    }
}
