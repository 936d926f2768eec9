//! A difference between two states of a job, as a person reads it: what it is about, and what each side says.

use serde_json::Value;

use super::super::label::TravelLabel;
use super::super::{Label, Manner, choices};
use crate::entry::Unit;
use crate::field::{LineField, QuoteField, SupplyField, SurveyField, WaterField};
use crate::id::Id;
use crate::job::Job;
use crate::join::Difference;
use crate::sections::SectionName;
use crate::sections::quote::PriceBy;
use crate::sections::survey::{CollectorKind, DiameterWay, HeadShape, Path};

/// The most letters of a text that a line shows.
const MOST_LETTERS: usize = 240;
/// Names of fields that only hold others.
const HOLDERS: [&str; 8] = ["vessels", "entries", "layers", "lines", "rows", "duties", "texts", "tags_of"];

/// A difference in words.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct DifferenceWords {
    /// The part of the job.
    pub section: String,
    /// What it is about, from outside in.
    pub what: String,
    /// What it was when both had the same; nothing where nobody knows.
    pub before: Option<String>,
    /// What stands here.
    pub here: String,
    /// What came.
    pub there: String,
    /// Whether both sides are plain texts, which can stand one under the other.
    pub texts: bool,
}

impl Manner {
    /// A difference in words; `jobs` are those it is between, for the names of vessels.
    #[must_use]
    pub fn difference(&self, difference: &Difference, jobs: [&Job; 2]) -> DifferenceWords {
        let mut names: Vec<String> = Vec::new();
        for key in difference.place.iter().filter(|key| !HOLDERS.contains(&key.as_str())) {
            names.push(self.piece(key, jobs));
        }
        if names.is_empty() {
            names.push(self.label(TravelLabel::WholeSection).to_owned());
        }
        let key = difference.place.last().map_or("", String::as_str);
        let said = |value: Option<&Value>| match value {
            None | Some(Value::Null) => self.label(TravelLabel::Nothing).to_owned(),
            Some(value) => short(&self.value(key, value)),
        };
        let is_text = |value: Option<&Value>| matches!(value, Some(Value::String(_)));
        let free = names_free_text(&difference.section, key);
        DifferenceWords {
            section: self.section(&difference.section).to_owned(),
            what: names.join(" › "),
            before: difference.before.as_ref().map(|before| said(Some(before))),
            here: said(difference.here.as_ref()),
            there: said(difference.there.as_ref()),
            texts: free && is_text(difference.here.as_ref()) && is_text(difference.there.as_ref()),
        }
    }

    /// A field or a thing by its name or id.
    fn piece(&self, key: &str, jobs: [&Job; 2]) -> String {
        let vessel = jobs.iter().find_map(|job| job.vessel(&Id::new(key)).filter(|vessel| vessel.id.as_str() == key));
        if let Some(vessel) = vessel {
            let tags = vessel.tags.join(", ");
            return if tags.trim().is_empty() { self.label(Label::Vessel).to_owned() } else { tags };
        }
        let layer = jobs.iter().flat_map(|job| job.plan.body.vessels.values()).find_map(|plan| {
            plan.layers.iter().find(|layer| layer.id.as_str() == key).map(|layer| self.material(&layer.material))
        });
        layer.or_else(|| self.field_name(key)).unwrap_or_else(|| match key.split_once(':') {
            Some(_) => self.price_key_name(key),
            None => plain(key),
        })
    }

    fn field_name(&self, key: &str) -> Option<String> {
        let label = |label: Label| Some(self.label(label).to_owned());
        match key {
            "title" => return label(Label::Title),
            "customer" => return label(Label::Customer),
            "site" => return label(Label::Site),
            "owner" => return label(Label::Owner),
            "number" => return label(Label::JobNumber),
            "notes" => return label(Label::Notes),
            "kind" => return label(Label::KindOfJob),
            "binned" => return label(Label::Bin),
            "tags" => return label(Label::Tags),
            "path" => return label(Label::FoundAs),
            "diameter_by" => return label(Label::DiameterBy),
            "bottom_head" => return label(Label::BottomHead),
            "top_head" => return label(Label::TopHead),
            "opening" => return label(Label::Opening),
            "riser" => return label(Label::Riser),
            "bottom_collector" => return label(Label::BottomCollector),
            "upper_collector" => return label(Label::UpperCollector),
            "order" => return Some(self.label(TravelLabel::Order).to_owned()),
            _ => {}
        }
        SurveyField::of(key)
            .map(|field| self.field(field))
            .or_else(|| WaterField::of(key).map(|field| self.water_field(field)))
            .or_else(|| SupplyField::of(key).map(|field| self.supply_field(field)))
            .or_else(|| QuoteField::of(key).map(|field| self.quote_field(field, PriceBy::List)))
            .or_else(|| LineField::of(key).map(|field| self.line_field(field)))
            .map(str::to_owned)
    }

    /// What a value says.
    fn value(&self, key: &str, value: &Value) -> String {
        match value {
            Value::Null => self.label(TravelLabel::Nothing).to_owned(),
            Value::Bool(yes) => self.label(choices::yes_no(*yes)).to_owned(),
            Value::Number(number) => number.to_string(),
            Value::String(text) if text.is_empty() => self.label(TravelLabel::Nothing).to_owned(),
            Value::String(text) => self.choice(key, text).unwrap_or_else(|| text.clone()),
            Value::Array(all) => {
                let said: Vec<String> = all.iter().map(|one| self.value(key, one)).collect();
                if said.is_empty() { self.label(TravelLabel::Nothing).to_owned() } else { said.join(", ") }
            }
            Value::Object(map) => {
                let text = |key: &str| map.get(key).and_then(Value::as_str);
                let unit = text("unit").and_then(|id| Unit::ALL.iter().find(|unit| unit.id() == id));
                if let (Some(typed), Some(unit)) = (text("text"), unit) {
                    // A unit that was typed with the number stands in the text.
                    let symbol =
                        if typed.ends_with(|letter: char| letter.is_ascii_digit()) { self.unit(*unit) } else { "" };
                    let said = [typed, symbol].iter().filter(|part| !part.is_empty()).copied().collect::<Vec<_>>();
                    let standing = match text("standing") {
                        Some("assumed") => [", ", self.label(Label::Assumed)].concat(),
                        _ => String::new(),
                    };
                    return [said.join(" "), standing].concat();
                }
                // Of a thing of many fields those that say something, by their names.
                let fields = map.iter().filter(|(key, value)| *key != "id" && !value.is_null());
                let said: Vec<String> = fields
                    .map(|(key, value)| {
                        self.named(&self.field_name(key).unwrap_or_else(|| plain(key)), &self.value(key, value))
                    })
                    .collect();
                if said.is_empty() { self.label(TravelLabel::Nothing).to_owned() } else { said.join("; ") }
            }
        }
    }

    /// What a choice is called, where the field is one of those that hold choices.
    fn choice(&self, key: &str, id: &str) -> Option<String> {
        let label = match key {
            "path" => choices::path(Path::of(id)?),
            "diameter_by" => choices::way(DiameterWay::of(id)?),
            "bottom_head" | "top_head" => choices::head(HeadShape::of(id)?),
            "bottom_collector" => choices::collector(CollectorKind::of(id)?),
            "material" => return Some(self.material(id)),
            "opening" | "kind" | "role" | "target" | "pack" | "purpose" | "regime" | "arrangement" | "source" => {
                return Some(plain(id));
            }
            _ => return None,
        };
        Some(self.label(label).to_owned())
    }
}

/// Whether a field holds a text of the person's own, which may stand under another one.
fn names_free_text(section: &str, key: &str) -> bool {
    let of_head = SectionName::of(section) == Some(SectionName::Head);
    (of_head && ["title", "customer", "site", "owner", "number", "notes"].contains(&key)) || key == "notes"
}

/// An id that has no name, as words.
fn plain(id: &str) -> String {
    id.replace(['_', '-'], " ")
}

fn short(text: &str) -> String {
    if text.chars().count() <= MOST_LETTERS {
        return text.to_owned();
    }
    text.chars().take(MOST_LETTERS).chain("…".chars()).collect()
}
