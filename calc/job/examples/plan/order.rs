//! The bill: each vessel on its own, and pooled over the job.

use bedwright_calc::supply::{BillLine, CountUnit, Item, JobKind};
use bedwright_job::answers::JobBill;
use bedwright_job::id::Id;
use bedwright_job::words::Manner;
use serde_json::{Map, Value, json};

use super::codes;
use super::figures::{put, put_amount, put_number};

/// The code of a kind of job.
pub const fn kind(kind: JobKind) -> &'static str {
    match kind {
        JobKind::New => "new",
        JobKind::Changeout => "changeout",
        JobKind::Partial => "partial",
        JobKind::TopUp => "top_up",
    }
}

/// A job's bill.
pub fn bill(job: &JobBill, manner: &Manner) -> Value {
    let vessels: Vec<Value> = job
        .vessels
        .iter()
        .zip(&job.bill.vessels)
        .map(|(id, own)| {
            json!({
                "vessel": id.as_str(),
                "lines": own.lines.iter().map(|line| Value::Object(line_value(line, &job.vessels, manner))).collect::<Vec<_>>(),
                "not_counted": own.problems.iter().map(|problem| codes::problem(manner, problem, None)).collect::<Vec<_>>(),
            })
        })
        .collect();
    let pooled: Vec<Value> = job
        .bill
        .pooled
        .iter()
        .map(|line| {
            let mut map = line_value(line, &job.vessels, manner);
            map.insert("saved".to_owned(), job.bill.saved(line).into());
            Value::Object(map)
        })
        .collect();
    json!({
        "vessels": vessels,
        "pooled": pooled,
        "left_out": job.left_out.iter().map(Id::as_str).collect::<Vec<_>>(),
    })
}

fn line_value(line: &BillLine, vessels: &[Id], manner: &Manner) -> Map<String, Value> {
    let mut map = Map::new();
    map.insert("key".to_owned(), line.item.key().into());
    map.insert("name".to_owned(), manner.item(&line.item).into());
    match &line.item {
        Item::Pack { material, pack } => {
            map.insert("material".to_owned(), material.as_ref().into());
            map.insert("pack".to_owned(), pack.as_ref().into());
        }
        Item::Part { fitting, size, cut, on_site } => {
            map.insert("part".to_owned(), fitting.id().into());
            if let Some(size) = size {
                put_amount(&mut map, "size", (*size).into());
            }
            if let Some(cut) = cut {
                put_amount(&mut map, "cut", (*cut).into());
                map.insert("cut_on_site".to_owned(), (*on_site).into());
            }
        }
    }
    map.insert("quantity".to_owned(), line.quantity.into());
    let unit = match line.unit {
        CountUnit::Each => "each",
        CountUnit::Length => "length",
        CountUnit::Pack => "pack",
    };
    map.insert("unit".to_owned(), unit.into());
    if let Some(needed) = &line.needed {
        put_number(&mut map, "needed_packs", needed, manner);
    }
    if let Some(volume) = &line.volume {
        put(&mut map, "volume", volume, manner);
    }
    if let Some(mass) = &line.mass {
        put(&mut map, "mass", mass, manner);
    }
    map.insert("returns".to_owned(), line.returns.into());
    map.insert("source".to_owned(), line.source.id().into());
    let of: Vec<Value> = line
        .of
        .iter()
        .map(|(index, quantity)| json!({ "vessel": vessels.get(*index).map(Id::as_str), "quantity": quantity }))
        .collect();
    map.insert("of".to_owned(), of.into());
    map
}
