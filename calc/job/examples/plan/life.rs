//! How long a bed lasts, what limits it, and what it takes in a year.

use bedwright_job::answers::life::LifeAnswers;
use bedwright_job::words::Manner;
use serde_json::{Map, Value, json};

use super::codes;
use super::figures::{put, put_number, snake, term};

/// Everything that is said of a bed's life.
pub fn life(found: &LifeAnswers, manner: &Manner) -> Value {
    let mut map = Map::new();
    for (name, figure) in &found.lines {
        put(&mut map, &snake(&format!("{name:?}")), figure, manner);
    }
    if let Some(expected) = &found.expected {
        put(&mut map, "expected", &expected.time, manner);
        if let Some(longest) = &expected.longest {
            put(&mut map, "longest", longest, manner);
        }
        map.insert("limited_by".to_owned(), snake(&format!("{:?}", expected.limited_by)).into());
        let decides: Vec<Value> = expected
            .decides
            .iter()
            .map(|one| json!({ "input": term(one.term), "tenth_more": one.more, "tenth_less": one.less }))
            .collect();
        map.insert("decides".to_owned(), decides.into());
    }
    let mut year = Map::new();
    if let Some(media) = &found.year.media {
        put(&mut year, "media", media, manner);
    }
    if let Some(packs) = &found.year.packs {
        put_number(&mut year, "packs", packs, manner);
    }
    if let Some(salt) = &found.year.salt {
        put(&mut year, "salt", salt, manner);
    }
    if let Some(water) = &found.year.wash_water {
        put(&mut year, "wash_water", water, manner);
    }
    map.insert("year".to_owned(), year.into());
    let missing: Vec<&str> = found.missing.iter().map(|field| field.id()).collect();
    map.insert("missing".to_owned(), json!(missing));
    let problems: Vec<Value> = found.problems.iter().map(|problem| codes::problem(manner, problem, None)).collect();
    map.insert("problems".to_owned(), problems.into());
    map.into()
}
