//! Every call that keeps something, failing at every turn: what was typed is in one of the places, or the status says that it
//! isn't; and once the browser works again everything is in both.

use std::cmp::Ordering;

use bedwright_edge::{
    journal::Journal,
    storage::{self, Available},
    store::{Keeper, Status},
    timer::pause,
};
use wasm_bindgen_test::wasm_bindgen_test;

use crate::fresh;

/// How many calls in turn fail.
const TURNS: u32 = 30;
/// The calls, with what each throws.
const CALLS: &[(&str, &str, &str)] = &[
    ("Storage", "setItem", "QuotaExceededError"),
    ("Storage", "setItem", "UnknownError"),
    ("Storage", "getItem", "UnknownError"),
    ("IDBFactory", "open", "UnknownError"),
    ("IDBDatabase", "transaction", "UnknownError"),
    ("IDBTransaction", "objectStore", "UnknownError"),
    ("IDBObjectStore", "put", "QuotaExceededError"),
    ("IDBObjectStore", "put", "UnknownError"),
    ("IDBObjectStore", "get", "UnknownError"),
    ("IDBObjectStore", "getAll", "UnknownError"),
    ("IDBObjectStore", "getAllKeys", "UnknownError"),
    ("IDBObjectStore", "delete", "UnknownError"),
];

/// Lets a method throw at one call, the first being 1, and at every one after it where `on` says so.
fn break_at(class: &str, method: &str, exception: &str, turn: u32, on: bool) {
    js_sys::eval(&format!(
        "(() => {{ const p = {class}.prototype, real = p.{method}; let calls = 0;
           p.{method} = function (...a) {{ calls += 1;
             if (calls === {turn} || ({on} && calls > {turn})) throw new DOMException('made to fail', '{exception}');
             return real.apply(this, a); }};
           globalThis.mend = () => {{ p.{method} = real; }}; }})()"
    ))
    .unwrap();
}

fn mend() {
    js_sys::eval("mend()").unwrap();
}

async fn settled(keeper: &Keeper) -> Status {
    for _ in 0..200 {
        keeper.flush();
        pause(2).await;
        if !keeper.status().pending {
            break;
        }
    }
    keeper.status()
}

/// Texts are the number of their round.
fn later(one: &str, other: &str) -> Ordering {
    one.cmp(other)
}

/// Types into three keys, with one call failing from a turn on or once; what is there in the end.
async fn survives(class: &str, method: &str, exception: &str, turn: u32, on: bool) {
    let (database, prefix) = (fresh("faults"), format!("t/{}/", fresh("faults")));
    let what = format!("{class}.{method} {exception} at call {turn}, on: {on}");
    // The page asks once at its start; a failure there is one of the page's own journeys.
    assert_eq!(storage::probe(), Available::Yes);
    break_at(class, method, exception, turn, on);
    let journal = Journal::open_named(&database).await;
    let keeper = Keeper::with(Available::Yes, journal);
    keeper.load_all(&prefix, later).await;
    let keys: Vec<String> = ["a", "b", "c"].iter().map(|name| format!("{prefix}{name}")).collect();
    for round in 1..=4 {
        for key in &keys {
            keeper.schedule(key, &format!("{round}"));
        }
        keeper.flush();
        pause(1).await;
    }
    let status = settled(&keeper).await;
    mend();
    // As another page finds it that comes now.
    let found = {
        let other = Keeper::with(Available::Yes, Journal::open_named(&database).await);
        other.load_all(&prefix, later).await.entries
    };
    let there = keys.iter().all(|key| found.iter().any(|entry| entry.key == *key && entry.text == "4"));
    let said = status.local.is_err() && status.journal.is_err();
    assert!(there || said, "{what}: {found:?}, {status:?}");
    // The browser works again: everything comes to both places.
    let status = settled(&keeper).await;
    assert_eq!(status.local, Ok(()), "{what}");
    let other = Keeper::with(Available::Yes, Journal::open_named(&database).await);
    let loaded = other.load_all(&prefix, later).await;
    for key in &keys {
        let entry = loaded.entries.iter().find(|entry| entry.key == *key);
        assert!(entry.is_some_and(|entry| entry.text == "4" && entry.other.is_none()), "{what}: {entry:?}");
    }
    for key in &keys {
        other.remove(key).await.unwrap();
    }
}

#[wasm_bindgen_test]
async fn each_call_may_fail_once_at_any_turn() {
    for (class, method, exception) in CALLS {
        for turn in 1..=TURNS {
            survives(class, method, exception, turn, false).await;
        }
    }
}

#[wasm_bindgen_test]
async fn each_call_may_fail_from_any_turn_on() {
    for (class, method, exception) in CALLS {
        for turn in 1..=TURNS {
            survives(class, method, exception, turn, true).await;
        }
    }
}
