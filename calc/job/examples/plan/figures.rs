//! A value under a name that carries its unit, and beside it how it is known.

use bedwright_calc::quantity::{Amount, Figure, Input, Known, Source, Term};
use bedwright_job::words::Manner;
use serde_json::{Map, Value, json};

use super::codes;

/// Puts a value under its name with its unit.
pub fn put_amount(into: &mut Map<String, Value>, name: &str, amount: Amount) {
    let unit = match amount {
        Amount::Length(_) => "_m",
        Amount::Area(_) => "_m2",
        Amount::Volume(_) => "_m3",
        Amount::Mass(_) => "_kg",
        Amount::Density(_) => "_kg_m3",
        Amount::Pressure(_) => "_pa",
        Amount::Speed(_) => "_m_s",
        Amount::Flow(_) => "_m3_s",
        Amount::Temperature(_) => "_k",
        Amount::Viscosity(_) => "_pa_s",
        Amount::Time(_) => "_s",
        Amount::Rate(_) => "_per_s",
        Amount::Concentration(_) => "_kg_m3",
        Amount::Ratio(_) => "_ratio",
        Amount::Count(_) => "",
    };
    let value = match amount {
        Amount::Count(count) => json!(count),
        other => json!(other.si()),
    };
    into.insert(format!("{name}{unit}"), value);
}

/// Puts a figure: its value, and how it is known.
pub fn put<Q: Copy + Into<Amount>>(into: &mut Map<String, Value>, name: &str, figure: &Figure<Q>, manner: &Manner) {
    put_amount(into, name, figure.value.into());
    into.insert(format!("{name}_how"), how(figure, manner));
}

/// Puts a bare number that has no unit of its own, like packs or bucket measures.
pub fn put_number(into: &mut Map<String, Value>, name: &str, figure: &Figure<f64>, manner: &Manner) {
    into.insert(name.to_owned(), json!(figure.value));
    into.insert(format!("{name}_how"), how(figure, manner));
}

/// Puts a value that was typed or assumed, with what it rests on.
pub fn put_known<Q: Copy + Into<Amount>>(into: &mut Map<String, Value>, name: &str, known: &Known<Q>) {
    put_amount(into, name, known.value.into());
    into.insert(format!("{name}_how"), json!({ "basis": codes::basis(known.basis), "source": known.source.id() }));
}

fn how<Q>(figure: &Figure<Q>, manner: &Manner) -> Value {
    json!({
        "basis": codes::basis(figure.basis),
        "formula": figure.formula.id(),
        "statement": figure.formula.statement(),
        "source": figure.formula.source().id(),
        "inputs": figure.inputs.iter().map(input).collect::<Vec<_>>(),
        "cautions": figure.cautions.iter().map(|caution| codes::caution(manner, caution)).collect::<Vec<_>>(),
    })
}

fn input(input: &Input) -> Value {
    let mut map = Map::new();
    map.insert("term".to_owned(), term(input.term).into());
    put_amount(&mut map, "value", input.amount);
    map.insert("basis".to_owned(), codes::basis(input.basis).into());
    map.insert("source".to_owned(), input.source.id().into());
    Value::Object(map)
}

/// The id of a quantity: its noun with underscores.
pub fn term(term: Term) -> String {
    snake(&format!("{term:?}"))
}

/// A name of the code as it stands in a file: small letters, a bar between words.
pub fn snake(name: &str) -> String {
    let mut id = String::new();
    for letter in name.chars() {
        if letter.is_ascii_uppercase() && !id.is_empty() {
            id.push('_');
        }
        id.push(letter.to_ascii_lowercase());
    }
    id
}

/// What each source id stands for.
pub fn sources() -> Value {
    let of = |source: &Source| {
        let row = json!({
            "title": source.title(), "issuer": source.issuer(), "edition": source.edition(), "page": source.page(),
            "standing": codes::standing(source.standing()),
        });
        (source.id().to_owned(), row)
    };
    Value::Object(Source::ALL.iter().map(of).collect())
}
