//! The fields of an object, one taken after the other when it is read, one put after the other when it is written.

use serde_json::{Map, Value};

use crate::entry::{Entry, Meaning, Unit};
use crate::id::{Id, Revision};
use crate::sections::Unknown;

/// An object that is being read. What was taken is gone from it; what is left at the end isn't known.
pub(super) struct Taken(Map<String, Value>);

impl Taken {
    /// The fields of a value, which must be an object.
    pub(super) fn of(value: Value) -> Result<Taken, String> {
        match value {
            Value::Object(map) => Ok(Taken(map)),
            _ => Err("object".to_owned()),
        }
    }

    /// What isn't known, in the order it came.
    pub(super) fn rest(self) -> Unknown {
        self.0
    }

    /// A field, if it is there at all.
    pub(super) fn maybe(&mut self, key: &str) -> Option<Value> {
        // In the order of the others, which a plain `remove` would change.
        self.0.shift_remove(key)
    }

    /// A field that must be there.
    pub(super) fn any(&mut self, key: &str) -> Result<Value, String> {
        self.maybe(key).ok_or_else(|| key.to_owned())
    }

    /// A text; nothing where it is absent or null.
    pub(super) fn maybe_text(&mut self, key: &str) -> Result<Option<String>, String> {
        match self.maybe(key) {
            None | Some(Value::Null) => Ok(None),
            Some(Value::String(text)) => Ok(Some(text)),
            Some(_) => Err(key.to_owned()),
        }
    }

    /// A text that must be there.
    pub(super) fn text(&mut self, key: &str) -> Result<String, String> {
        match self.maybe(key) {
            Some(Value::String(text)) => Ok(text),
            _ => Err(key.to_owned()),
        }
    }

    /// A text that is empty where it is absent.
    pub(super) fn text_or_empty(&mut self, key: &str) -> Result<String, String> {
        if self.0.contains_key(key) { self.text(key) } else { Ok(String::new()) }
    }

    /// Yes or no, which must be there.
    pub(super) fn flag(&mut self, key: &str) -> Result<bool, String> {
        match self.maybe(key) {
            Some(Value::Bool(flag)) => Ok(flag),
            _ => Err(key.to_owned()),
        }
    }

    /// Yes or no; no where it is absent.
    pub(super) fn flag_or_no(&mut self, key: &str) -> Result<bool, String> {
        if self.0.contains_key(key) { self.flag(key) } else { Ok(false) }
    }

    /// A permanent name that must be there.
    pub(super) fn id(&mut self, key: &str) -> Result<Id, String> {
        self.text(key).map(|text| Id::new(&text))
    }

    /// A list that must be there.
    pub(super) fn list(&mut self, key: &str) -> Result<Vec<Value>, String> {
        match self.maybe(key) {
            Some(Value::Array(list)) => Ok(list),
            _ => Err(key.to_owned()),
        }
    }

    /// An object that must be there.
    pub(super) fn map(&mut self, key: &str) -> Result<Map<String, Value>, String> {
        match self.maybe(key) {
            Some(Value::Object(map)) => Ok(map),
            _ => Err(key.to_owned()),
        }
    }

    /// A choice by its id, which must be there and known.
    pub(super) fn chosen<T>(&mut self, key: &str, of: impl Fn(&str) -> Option<T>) -> Result<T, String> {
        let id = self.text(key)?;
        of(&id).ok_or_else(|| format!("{key}: {id}"))
    }

    /// An entry with nothing but what this version knows of entries. A field it doesn't know would be lost at the next
    /// change, so it closes the section instead.
    pub(super) fn entry(&mut self, key: &str) -> Result<Option<Entry>, String> {
        match self.maybe(key) {
            None | Some(Value::Null) => Ok(None),
            Some(value) => {
                let fields = Taken::of(value).map_err(|_| key.to_owned())?;
                fields.into_entry().map(Some).map_err(|what| format!("{key}: {what}"))
            }
        }
    }

    /// What is left, as an entry.
    pub(super) fn into_entry(mut self) -> Result<Entry, String> {
        let text = self.text("text")?;
        let unit = self.chosen("unit", |id| Unit::ALL.iter().copied().find(|unit| unit.id() == id))?;
        let meaning = match self.maybe_text("meaning")?.as_deref() {
            None => None,
            Some("DecimalPoint") => Some(Meaning::DecimalPoint),
            Some("Thousands") => Some(Meaning::Thousands),
            Some(other) => return Err(format!("meaning: {other}")),
        };
        match self.0.keys().next() {
            Some(unknown) => Err(format!("entry: {unknown}")),
            None => Ok(Entry { text, unit, meaning }),
        }
    }

    /// Which device changed something last, and how often it had.
    pub(super) fn revision(&mut self, key: &str) -> Result<Option<Revision>, String> {
        let value = match self.maybe(key) {
            None | Some(Value::Null) => return Ok(None),
            Some(value) => value,
        };
        let mut fields = Taken::of(value).map_err(|_| key.to_owned())?;
        let device = fields.id("device")?;
        let counter = fields.any("counter")?.as_u64().ok_or_else(|| format!("{key}: counter"))?;
        Ok(Some(Revision { device, counter }))
    }
}

/// An object that is being written, its fields in the order they are put.
#[derive(Default)]
pub(super) struct Written(Map<String, Value>);

impl Written {
    /// A field.
    pub(super) fn put(&mut self, key: &str, value: Value) {
        self.0.insert(key.to_owned(), value);
    }

    /// A text.
    pub(super) fn text(&mut self, key: &str, text: &str) {
        self.put(key, text.into());
    }

    /// A text that is left out where it is empty.
    pub(super) fn text_unless_empty(&mut self, key: &str, text: &str) {
        if !text.is_empty() {
            self.text(key, text);
        }
    }

    /// Yes or no, left out where it is no.
    pub(super) fn flag_unless_no(&mut self, key: &str, flag: bool) {
        if flag {
            self.put(key, Value::Bool(true));
        }
    }

    /// An entry, left out where there is none.
    pub(super) fn entry(&mut self, key: &str, entry: Option<&Entry>) {
        if let Some(entry) = entry {
            self.put(key, Written::of_entry(entry).whole());
        }
    }

    /// The fields of an entry.
    pub(super) fn of_entry(entry: &Entry) -> Written {
        let mut fields = Written::default();
        fields.text("text", &entry.text);
        fields.text("unit", entry.unit.id());
        match entry.meaning {
            None => {}
            Some(Meaning::DecimalPoint) => fields.text("meaning", "DecimalPoint"),
            Some(Meaning::Thousands) => fields.text("meaning", "Thousands"),
        }
        fields
    }

    /// Which device changed something last, left out where none did.
    pub(super) fn revision(&mut self, key: &str, revision: Option<&Revision>) {
        if let Some(revision) = revision {
            let mut fields = Written::default();
            fields.text("device", revision.device.as_str());
            fields.put("counter", revision.counter.into());
            self.put(key, fields.whole());
        }
    }

    /// The fields that were not known when the object was read.
    pub(super) fn unknown(&mut self, unknown: &Unknown) {
        for (key, value) in unknown {
            self.put(key, value.clone());
        }
    }

    /// The object.
    pub(super) fn whole(self) -> Value {
        Value::Object(self.0)
    }
}
