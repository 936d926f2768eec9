//! The fields of an object, one taken after the other when it is read, one put after the other when it is written.

use serde_json::{Map, Value};

use crate::entry::{Entry, Meaning, Unit};
use crate::id::{Id, Revision};
use crate::sections::Unknown;

/// An object that is being read. What was taken is gone from it; what is left at the end isn't known. What is wrong is
/// said at the end, the first of it; until then something usual stands in its place.
pub(crate) struct Taken {
    map: Map<String, Value>,
    wrong: Option<String>,
}

// Never put inside another function: each is asked for dozens of fields.
impl Taken {
    /// The fields of a value, which must be an object.
    #[inline(never)]
    pub(crate) fn of(value: Value) -> Taken {
        match value {
            Value::Object(map) => Taken { map, wrong: None },
            _ => Taken { map: Map::new(), wrong: Some("object".to_owned()) },
        }
    }

    /// Something is wrong; only the first is kept.
    #[inline(never)]
    pub(crate) fn refuse(&mut self, what: String) {
        self.wrong.get_or_insert(what);
    }

    #[inline(never)]
    fn refuse_field(&mut self, key: &str) {
        self.refuse(key.to_owned());
    }

    /// What isn't known, in the order it came; or what was wrong first.
    pub(crate) fn rest(self) -> Result<Unknown, String> {
        match self.wrong {
            None => Ok(self.map),
            Some(wrong) => Err(wrong),
        }
    }

    /// The names of all that is left.
    #[inline(never)]
    pub(crate) fn keys(&self) -> Vec<String> {
        self.map.keys().cloned().collect()
    }

    /// A field, if it is there at all.
    #[inline(never)]
    pub(crate) fn maybe(&mut self, key: &str) -> Option<Value> {
        // In the order of the others, which a plain `remove` would change.
        self.map.shift_remove(key)
    }

    /// A field that must be there.
    #[inline(never)]
    pub(crate) fn any(&mut self, key: &str) -> Value {
        self.maybe(key).unwrap_or_else(|| {
            self.refuse_field(key);
            Value::Null
        })
    }

    /// A text; nothing where it is absent or null.
    #[inline(never)]
    pub(crate) fn maybe_text(&mut self, key: &str) -> Option<String> {
        match self.maybe(key) {
            None | Some(Value::Null) => None,
            Some(Value::String(text)) => Some(text),
            Some(_) => {
                self.refuse_field(key);
                None
            }
        }
    }

    /// A text that must be there.
    #[inline(never)]
    pub(crate) fn text(&mut self, key: &str) -> String {
        match self.maybe(key) {
            Some(Value::String(text)) => text,
            _ => {
                self.refuse_field(key);
                String::new()
            }
        }
    }

    /// A text that is empty where it is absent.
    #[inline(never)]
    pub(crate) fn text_or_empty(&mut self, key: &str) -> String {
        if self.map.contains_key(key) { self.text(key) } else { String::new() }
    }

    /// Yes or no, which must be there.
    #[inline(never)]
    pub(crate) fn flag(&mut self, key: &str) -> bool {
        match self.maybe(key) {
            Some(Value::Bool(flag)) => flag,
            _ => {
                self.refuse_field(key);
                false
            }
        }
    }

    /// Yes or no; no where it is absent.
    pub(crate) fn flag_or_no(&mut self, key: &str) -> bool {
        self.map.contains_key(key) && self.flag(key)
    }

    /// A permanent name that must be there.
    pub(crate) fn id(&mut self, key: &str) -> Id {
        Id::new(&self.text(key))
    }

    /// A list that must be there.
    #[inline(never)]
    pub(crate) fn list(&mut self, key: &str) -> Vec<Value> {
        match self.maybe(key) {
            Some(Value::Array(list)) => list,
            _ => {
                self.refuse_field(key);
                Vec::new()
            }
        }
    }

    /// An object that must be there.
    #[inline(never)]
    pub(crate) fn map(&mut self, key: &str) -> Map<String, Value> {
        match self.maybe(key) {
            Some(Value::Object(map)) => map,
            _ => {
                self.refuse_field(key);
                Map::new()
            }
        }
    }

    /// A list that is empty where it is absent.
    pub(crate) fn list_or_empty(&mut self, key: &str) -> Vec<Value> {
        if self.map.contains_key(key) { self.list(key) } else { Vec::new() }
    }

    /// An object that is empty where it is absent.
    pub(crate) fn map_or_empty(&mut self, key: &str) -> Map<String, Value> {
        if self.map.contains_key(key) { self.map(key) } else { Map::new() }
    }

    /// A choice by its id, which must be there and known; the usual one stands in where it isn't.
    pub(crate) fn chosen<T>(&mut self, key: &str, usual: T, of: fn(&str) -> Option<T>) -> T {
        let id = self.text(key);
        of(&id).unwrap_or_else(|| {
            self.refuse_choice(key, &id);
            usual
        })
    }

    #[inline(never)]
    fn refuse_choice(&mut self, key: &str, id: &str) {
        self.refuse(format!("{key}: {id}"));
    }

    /// An entry with nothing but what this version knows of entries. A field it doesn't know would be lost at the next
    /// change, so it closes the section instead.
    #[inline(never)]
    pub(crate) fn entry(&mut self, key: &str) -> Option<Entry> {
        let taken = match self.maybe(key) {
            None | Some(Value::Null) => return None,
            Some(Value::Object(map)) => {
                Taken { map, wrong: None }.into_entry().map_err(|what| format!("{key}: {what}"))
            }
            Some(_) => Err(key.to_owned()),
        };
        taken.map_err(|wrong| self.refuse(wrong)).ok()
    }

    /// What is left, as an entry.
    #[inline(never)]
    pub(crate) fn into_entry(mut self) -> Result<Entry, String> {
        let text = self.text("text");
        let unit = self.chosen("unit", Unit::Each, |id| Unit::ALL.iter().copied().find(|unit| unit.id() == id));
        let meaning = match self.maybe_text("meaning").as_deref() {
            None => None,
            Some("DecimalPoint") => Some(Meaning::DecimalPoint),
            Some("Thousands") => Some(Meaning::Thousands),
            Some(other) => {
                self.refuse(format!("meaning: {other}"));
                None
            }
        };
        match self.rest()?.keys().next() {
            Some(unknown) => Err(format!("entry: {unknown}")),
            None => Ok(Entry { text, unit, meaning }),
        }
    }

    /// Which device changed something last, and how often it had.
    #[inline(never)]
    pub(crate) fn revision(&mut self, key: &str) -> Option<Revision> {
        let mut fields = match self.maybe(key) {
            None | Some(Value::Null) => return None,
            Some(Value::Object(map)) => Taken { map, wrong: None },
            Some(_) => {
                self.refuse_field(key);
                return None;
            }
        };
        let device = fields.id("device");
        let counter = fields.any("counter").as_u64();
        if counter.is_none() {
            fields.refuse(format!("{key}: counter"));
        }
        match fields.rest() {
            Ok(_) => counter.map(|counter| Revision { device, counter }),
            Err(wrong) => {
                self.refuse(wrong);
                None
            }
        }
    }
}

/// An object that is being written, its fields in the order they are put.
#[derive(Default)]
pub(crate) struct Written(Map<String, Value>);

impl Written {
    /// A field.
    #[inline(never)]
    pub(crate) fn put(&mut self, key: &str, value: Value) {
        self.0.insert(key.to_owned(), value);
    }

    /// A text.
    #[inline(never)]
    pub(crate) fn text(&mut self, key: &str, text: &str) {
        self.put(key, text.into());
    }

    /// A text that is left out where it is empty.
    #[inline(never)]
    pub(crate) fn text_unless_empty(&mut self, key: &str, text: &str) {
        if !text.is_empty() {
            self.text(key, text);
        }
    }

    /// A list, left out where nothing is in it.
    #[inline(never)]
    pub(crate) fn list_unless_empty(&mut self, key: &str, list: Vec<Value>) {
        if !list.is_empty() {
            self.put(key, Value::Array(list));
        }
    }

    /// An object, left out where nothing is in it.
    #[inline(never)]
    pub(crate) fn map_unless_empty(&mut self, key: &str, fields: Written) {
        if !fields.0.is_empty() {
            self.put(key, fields.whole());
        }
    }

    /// Yes or no, left out where it is no.
    pub(crate) fn flag_unless_no(&mut self, key: &str, flag: bool) {
        if flag {
            self.put(key, Value::Bool(true));
        }
    }

    /// An entry, left out where there is none.
    #[inline(never)]
    pub(crate) fn entry(&mut self, key: &str, entry: Option<&Entry>) {
        if let Some(entry) = entry {
            self.put(key, Written::of_entry(entry).whole());
        }
    }

    /// The fields of an entry.
    #[inline(never)]
    pub(crate) fn of_entry(entry: &Entry) -> Written {
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
    #[inline(never)]
    pub(crate) fn revision(&mut self, key: &str, revision: Option<&Revision>) {
        if let Some(revision) = revision {
            let mut fields = Written::default();
            fields.text("device", revision.device.as_str());
            fields.put("counter", revision.counter.into());
            self.put(key, fields.whole());
        }
    }

    /// The fields that were not known when the object was read.
    #[inline(never)]
    pub(crate) fn unknown(&mut self, unknown: &Unknown) {
        for (key, value) in unknown {
            self.put(key, value.clone());
        }
    }

    /// The object.
    pub(crate) fn whole(self) -> Value {
        Value::Object(self.0)
    }
}
