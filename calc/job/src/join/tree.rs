//! Three-way comparison of values: objects field by field, lists of things with ids thing by thing, all else as a whole.

use serde_json::{Map, Value};

use super::{Changed, Take, order};

/// Told of a difference: its place, who changed it, and what it was before, is here, is there. Says what to keep.
pub(super) type Told<'a> = dyn FnMut(&[String], Changed, [Option<&Value>; 3]) -> Take + 'a;

/// What comes of two values and what both came from; nothing where it was taken away.
pub(super) fn merged(
    before: Option<&Value>,
    here: Option<&Value>,
    there: Option<&Value>,
    told: &mut Told,
) -> Option<Value> {
    walk(&mut Vec::new(), [before, here, there], told)
}

fn walk(place: &mut Vec<String>, values: [Option<&Value>; 3], told: &mut Told) -> Option<Value> {
    let [before, here, there] = values;
    if here == there {
        return here.cloned();
    }
    match (here, there) {
        (Some(Value::Object(ours)), Some(Value::Object(theirs))) if !is_entry(ours) && !is_entry(theirs) => {
            Some(Value::Object(fields(place, before, ours, theirs, told)))
        }
        (Some(Value::Array(ours)), Some(Value::Array(theirs))) => match (ids(ours), ids(theirs)) {
            (Some(own), Some(arrived)) => {
                Some(Value::Array(things(place, before, (ours, &own), (theirs, &arrived), told)))
            }
            _ => settled(place, values, told),
        },
        _ => settled(place, values, told),
    }
}

/// A typed value is one thing: its text without its unit would say something else.
fn is_entry(map: &Map<String, Value>) -> bool {
    map.contains_key("text") && map.contains_key("unit")
}

fn fields(
    place: &mut Vec<String>,
    before: Option<&Value>,
    ours: &Map<String, Value>,
    theirs: &Map<String, Value>,
    told: &mut Told,
) -> Map<String, Value> {
    let before = before.and_then(Value::as_object);
    let mut all = Map::new();
    let new = theirs.keys().filter(|key| !ours.contains_key(*key));
    for key in ours.keys().chain(new) {
        place.push(key.clone());
        let of = |map: Option<&Map<String, Value>>| -> Option<Value> { map.and_then(|map| map.get(key)).cloned() };
        let value = walk(place, [of(before).as_ref(), ours.get(key), theirs.get(key)], told);
        place.pop();
        if let Some(value) = value {
            all.insert(key.clone(), value);
        }
    }
    all
}

/// The ids of a list's things, where every one has an id of its own.
fn ids(list: &[Value]) -> Option<Vec<&str>> {
    let mut ids: Vec<&str> = Vec::with_capacity(list.len());
    for thing in list {
        let id = thing.get("id").and_then(Value::as_str)?;
        if ids.contains(&id) {
            return None;
        }
        ids.push(id);
    }
    Some(ids)
}

type Listed<'a> = (&'a [Value], &'a [&'a str]);

fn things(
    place: &mut Vec<String>,
    before: Option<&Value>,
    (ours, own): Listed,
    (theirs, arrived): Listed,
    told: &mut Told,
) -> Vec<Value> {
    let before = before.and_then(Value::as_array).map_or(&[][..], Vec::as_slice);
    let known = ids(before).unwrap_or_default();
    fn of<'a>(list: &'a [Value], ids: &[&str], id: &str) -> Option<&'a Value> {
        ids.iter().position(|there| *there == id).and_then(|at| list.get(at))
    }
    let mut kept: Vec<(String, Value)> = Vec::new();
    let new = arrived.iter().filter(|id| !own.contains(id));
    for id in own.iter().chain(new) {
        place.push((*id).to_owned());
        let value = walk(place, [of(before, &known, id), of(ours, own, id), of(theirs, arrived, id)], told);
        place.pop();
        if let Some(value) = value {
            kept.push(((*id).to_owned(), value));
        }
    }
    let is_kept = |id: &str| kept.iter().any(|(there, _)| there == id);
    let both_moved = moved_differently(&known, own, arrived);
    let take = if both_moved {
        place.push("order".to_owned());
        let list = |ids: &[&str]| Value::Array(ids.iter().map(|id| (*id).into()).collect());
        let (was, is, comes) = (list(&known), list(own), list(arrived));
        let take = told(place, Changed::Both, [Some(&was), Some(&is), Some(&comes)]);
        place.pop();
        take
    } else {
        Take::Here
    };
    let (first, second) = if take == Take::There { (arrived, own) } else { (own, arrived) };
    let order = order::merged(&known, first, second, &is_kept);
    order.iter().filter_map(|id| kept.iter().find(|(there, _)| there == id).map(|(_, value)| value.clone())).collect()
}

/// Whether both sides put what was there before into another order, and not into the same.
fn moved_differently(known: &[&str], own: &[&str], arrived: &[&str]) -> bool {
    let shared = |ids: &[&str]| -> Vec<String> {
        ids.iter()
            .filter(|id| known.contains(id) && own.contains(id) && arrived.contains(id))
            .map(|id| (*id).to_owned())
            .collect()
    };
    let (was, is, comes) = (shared(known), shared(own), shared(arrived));
    is != was && comes != was && is != comes
}

/// A difference that is settled as a whole.
fn settled(place: &[String], [before, here, there]: [Option<&Value>; 3], told: &mut Told) -> Option<Value> {
    let changed = if before == here {
        Changed::There
    } else if before == there {
        Changed::Here
    } else {
        Changed::Both
    };
    match told(place, changed, [before, here, there]) {
        Take::Here => here.cloned(),
        Take::There => there.cloned(),
        Take::Both => match (here, there) {
            (Some(Value::String(ours)), Some(Value::String(theirs))) => Some(both(ours, theirs).into()),
            (None, there) => there.cloned(),
            (here, _) => here.cloned(),
        },
    }
}

/// Two texts as one, in the same order whichever side is which.
fn both(one: &str, other: &str) -> String {
    let (first, second) = if one <= other { (one, other) } else { (other, one) };
    [first, second].iter().filter(|text| !text.is_empty()).copied().collect::<Vec<_>>().join("\n")
}
