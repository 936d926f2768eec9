//! Loading, version 1. Frozen.

use bedwright_calc::fill::SurfaceState;
use serde_json::Value;

use super::fields::{Taken, Written};
use crate::id::Id;
use crate::sections::loading::{
    Acknowledgement, Drum, Loading, LoadingText, Photo, ReadingPlace, RemovalMethod, Stamp, TagLoading, TapeReading,
    WorkSheet, put,
};

/// As saved.
pub(super) fn write(loading: &Loading) -> Value {
    let mut body = Written::default();
    let acknowledged = loading.acknowledged.iter().map(|read| {
        let mut fields = stamped(&read.stamp);
        fields.text("sheet", read.sheet.id());
        fields.text("day", &read.day);
        fields.whole()
    });
    body.list_unless_empty("acknowledged", acknowledged.collect());
    body.list_unless_empty("tags", loading.tags.iter().map(write_tag).collect());
    body.unknown(&loading.unknown);
    body.whole()
}

fn stamped(stamp: &Stamp) -> Written {
    let mut fields = Written::default();
    fields.text("at", &stamp.at);
    fields.text("by", &stamp.by);
    fields
}

fn write_tag(tag: &TagLoading) -> Value {
    let mut fields = Written::default();
    fields.text("vessel", tag.vessel.as_str());
    fields.text_unless_empty("tag", &tag.tag);
    let mut ticks = Written::default();
    for (step, stamp) in &tag.ticks {
        ticks.put(step, stamped(stamp).whole());
    }
    fields.map_unless_empty("ticks", ticks);
    let mut readings = Written::default();
    for (place, reading) in &tag.readings {
        let mut of_place = stamped(&reading.stamp);
        of_place.text("state", reading.state.id());
        of_place.entry("tape", reading.entry.as_ref());
        readings.put(&place.name(), of_place.whole());
    }
    fields.map_unless_empty("readings", readings);
    let mut poured = Written::default();
    for (layer, entry) in &tag.poured {
        poured.entry(layer.as_str(), Some(entry));
    }
    fields.map_unless_empty("poured", poured);
    let mut lots = Written::default();
    for (layer, lot) in &tag.lots {
        lots.text(layer.as_str(), lot);
    }
    fields.map_unless_empty("lots", lots);
    let mut texts = Written::default();
    for (which, text) in &tag.texts {
        texts.text(which.id(), text);
    }
    fields.map_unless_empty("texts", texts);
    fields.list_unless_empty("drums", tag.drums.iter().map(write_drum).collect());
    if let Some(method) = tag.method {
        fields.text("method", method.id());
    }
    if let Some(photo) = &tag.photo {
        fields.put("photo", write_photo(photo));
    }
    fields.unknown(&tag.unknown);
    fields.whole()
}

pub(crate) fn write_drum(drum: &Drum) -> Value {
    let mut fields = Written::default();
    fields.text("id", drum.id.as_str());
    fields.text_unless_empty("label", &drum.label);
    fields.text_unless_empty("contents", &drum.contents);
    fields.entry("weight", drum.weight.as_ref());
    fields.unknown(&drum.unknown);
    fields.whole()
}

pub(crate) fn write_photo(photo: &Photo) -> Value {
    let mut fields = Written::default();
    fields.text("id", photo.id.as_str());
    fields.put("bytes", photo.bytes.into());
    fields.whole()
}

/// From what was saved, or the field that is wrong.
pub(super) fn read(body: Value) -> Result<Loading, String> {
    let mut body = Taken::of(body);
    let mut loading = Loading::default();
    for read in body.list_or_empty("acknowledged") {
        let mut read = Taken::of(read);
        let stamp = take_stamp(&mut read);
        let sheet = read.chosen("sheet", WorkSheet::Loading, WorkSheet::of);
        let day = read.text("day");
        nothing_else(read, &mut body, "acknowledged");
        loading.acknowledged.push(Acknowledgement { sheet, day, stamp });
    }
    for tag in body.list_or_empty("tags") {
        let tag = read_tag(tag)?;
        // Two of one tag would be one lost at the next change, so they close the section instead.
        if loading.of(&tag.vessel, &tag.tag).is_some() {
            body.refuse(["tags: ", &tag.tag].concat());
        }
        let at = loading.tags.partition_point(|there| (&there.vessel, &there.tag) < (&tag.vessel, &tag.tag));
        loading.tags.insert(at, tag);
    }
    loading.unknown = body.rest()?;
    Ok(loading)
}

/// What is left of a part has nowhere to be kept, so it closes the section.
fn nothing_else(part: Taken, whole: &mut Taken, what: &str) {
    match part.rest() {
        Ok(rest) => {
            if let Some(unknown) = rest.keys().next() {
                whole.refuse([what, ": ", unknown].concat());
            }
        }
        Err(wrong) => whole.refuse([what, ": ", &wrong].concat()),
    }
}

pub(crate) fn take_stamp(from: &mut Taken) -> Stamp {
    Stamp { at: from.text("at"), by: from.text("by") }
}

fn read_tag(tag: Value) -> Result<TagLoading, String> {
    let mut tag = Taken::of(tag);
    let mut found = TagLoading::new(&tag.id("vessel"), &tag.text_or_empty("tag"));
    for (step, stamp) in tag.map_or_empty("ticks") {
        let mut fields = Taken::of(stamp);
        let stamp = take_stamp(&mut fields);
        nothing_else(fields, &mut tag, "ticks");
        put(&mut found.ticks, &step, Some(stamp));
    }
    for (name, reading) in tag.map_or_empty("readings") {
        let mut fields = Taken::of(reading);
        let stamp = take_stamp(&mut fields);
        let state = fields.chosen("state", SurfaceState::AsPoured, SurfaceState::of);
        let entry = fields.entry("tape");
        nothing_else(fields, &mut tag, "readings");
        match ReadingPlace::of(&name) {
            Some(place) => drop(put(&mut found.readings, &place, Some(TapeReading { entry, state, stamp }))),
            None => tag.refuse(["readings: ", &name].concat()),
        }
    }
    let mut poured = Taken::of(Value::Object(tag.map_or_empty("poured")));
    for layer in poured.keys() {
        if let Some(entry) = poured.entry(&layer) {
            put(&mut found.poured, &Id::new(&layer), Some(entry));
        }
    }
    nothing_else(poured, &mut tag, "poured");
    for (layer, lot) in tag.map_or_empty("lots") {
        match lot {
            Value::String(lot) => drop(put(&mut found.lots, &Id::new(&layer), Some(lot))),
            _ => tag.refuse(["lots: ", &layer].concat()),
        }
    }
    for (which, text) in tag.map_or_empty("texts") {
        match (LoadingText::of(&which), text) {
            (Some(which), Value::String(text)) => drop(put(&mut found.texts, &which, Some(text))),
            _ => tag.refuse(["texts: ", &which].concat()),
        }
    }
    for drum in tag.list_or_empty("drums") {
        found.drums.push(read_drum(drum)?);
    }
    found.method = tag.maybe_text("method").and_then(|id| {
        let known = RemovalMethod::of(&id);
        if known.is_none() {
            tag.refuse(["method: ", &id].concat());
        }
        known
    });
    if let Some(photo) = tag.maybe("photo") {
        found.photo = read_photo(photo);
        if found.photo.is_none() {
            tag.refuse("photo".to_owned());
        }
    }
    found.unknown = tag.rest()?;
    Ok(found)
}

pub(crate) fn read_drum(drum: Value) -> Result<Drum, String> {
    let mut drum = Taken::of(drum);
    Ok(Drum {
        id: drum.id("id"),
        label: drum.text_or_empty("label"),
        contents: drum.text_or_empty("contents"),
        weight: drum.entry("weight"),
        unknown: drum.rest()?,
    })
}

pub(crate) fn read_photo(photo: Value) -> Option<Photo> {
    let mut photo = Taken::of(photo);
    let id = photo.id("id");
    let bytes = photo.any("bytes").as_u64().and_then(|bytes| u32::try_from(bytes).ok())?;
    photo.rest().ok().filter(serde_json::Map::is_empty)?;
    Some(Photo { id, bytes })
}
