//! The journal. What is expected: Indexed Database API 3.0 (W3C): keys are ordered by UTF-16 unit, a transaction is all
//! or nothing, `add` refuses a key that is taken, a connection is told of `versionchange`.

use bedwright_edge::{Fault, journal::Journal};
use js_sys::{Function, Promise, Reflect};
use wasm_bindgen::JsValue;
use wasm_bindgen_futures::JsFuture;
use wasm_bindgen_test::wasm_bindgen_test;

use crate::fresh;

fn pairs(of: &[(&str, &str)]) -> Vec<(String, String)> {
    of.iter().map(|(key, text)| ((*key).to_owned(), (*text).to_owned())).collect()
}

/// Runs JavaScript that has `name` and `resolve`, and gives what it resolves with: the browser without the crate.
async fn script(name: &str, body: &str) -> JsValue {
    let run = Function::new_with_args("name, resolve", body);
    JsFuture::from(Promise::new(&mut |resolve, _| {
        run.call2(&JsValue::UNDEFINED, &JsValue::from_str(name), &resolve).unwrap();
    }))
    .await
    .unwrap()
}

#[wasm_bindgen_test]
async fn what_is_put_is_got() {
    let journal = Journal::open_named(&fresh("journal")).await.unwrap();
    assert_eq!(journal.get("k").await, Ok(None));
    journal.put("k", "½ in · 𝛆").await.unwrap();
    assert_eq!(journal.get("k").await, Ok(Some("½ in · 𝛆".into())));
    journal.put("k", "").await.unwrap();
    assert_eq!(journal.get("k").await, Ok(Some(String::new())), "an empty text is a text");
    journal.remove("k").await.unwrap();
    assert_eq!(journal.get("k").await, Ok(None));
}

#[wasm_bindgen_test]
async fn a_record_is_a_text_and_a_stamp() {
    let name = fresh("journal");
    let before = js_sys::Date::now();
    Journal::open_named(&name).await.unwrap().put_strict("k", "text").await.unwrap();
    let record = script(
        &name,
        "indexedDB.open(name).onsuccess = e => { const db = e.target.result;
         db.transaction('journal').objectStore('journal').get('k').onsuccess = e => { db.close(); resolve(e.target.result); }; };",
    )
    .await;
    assert_eq!(Reflect::get(&record, &"text".into()).unwrap().as_string().as_deref(), Some("text"));
    let stamp = Reflect::get(&record, &"stamp".into()).unwrap().as_f64().unwrap();
    assert!((before..=js_sys::Date::now()).contains(&stamp));
}

#[wasm_bindgen_test]
async fn a_strict_put_asks_for_strict_durability() {
    let journal = Journal::open_named(&fresh("journal")).await.unwrap();
    // Notes the durability of each transaction as the browser itself reports it.
    js_sys::eval(
        "globalThis.durabilities = []; const begin = IDBDatabase.prototype.transaction;
         IDBDatabase.prototype.transaction = function (...a) {
           const t = begin.apply(this, a); globalThis.durabilities.push(t.mode + ' ' + t.durability); return t; };
         globalThis.undo = () => { IDBDatabase.prototype.transaction = begin; };",
    )
    .unwrap();
    journal.put_strict("k", "signed").await.unwrap();
    journal.put("k", "typed").await.unwrap();
    let noted = js_sys::eval("undo(); durabilities.join(', ')").unwrap();
    assert_eq!(noted.as_string().as_deref(), Some("readwrite strict, readwrite relaxed"));
}

#[wasm_bindgen_test]
async fn all_are_those_with_the_prefix_in_order() {
    let journal = Journal::open_named(&fresh("journal")).await.unwrap();
    journal.put_all(&[("a/2", "two"), ("a/1", "one"), ("a/½", "half"), ("b/1", "else"), ("a", "bare")]).await.unwrap();
    assert_eq!(journal.all("a/").await, Ok(pairs(&[("a/1", "one"), ("a/2", "two"), ("a/½", "half")])));
    assert_eq!(journal.all("").await.map(|all| all.len()), Ok(5));
    assert_eq!(journal.all("c").await, Ok(Vec::new()));
}

#[wasm_bindgen_test]
async fn a_new_key_is_taken_once() {
    let journal = Journal::open_named(&fresh("journal")).await.unwrap();
    assert_eq!(journal.put_new("k", "first").await, Ok(true));
    assert_eq!(journal.put_new("k", "second").await, Ok(false));
    assert_eq!(journal.get("k").await, Ok(Some("first".into())));
}

#[wasm_bindgen_test]
async fn a_record_of_another_shape_is_given_whole() {
    let name = fresh("journal");
    let journal = Journal::open_named(&name).await.unwrap();
    script(
        &name,
        "indexedDB.open(name).onsuccess = e => { const db = e.target.result; const t = db.transaction('journal', 'readwrite');
         t.objectStore('journal').put({ words: 7 }, 'k'); t.oncomplete = () => { db.close(); resolve(); }; };",
    )
    .await;
    assert_eq!(journal.all("k").await, Ok(pairs(&[("k", "{\"words\":7}")])));
}

#[wasm_bindgen_test]
async fn it_opens_again_after_somebody_deleted_it() {
    let name = fresh("journal");
    let journal = Journal::open_named(&name).await.unwrap();
    journal.put("k", "before").await.unwrap();
    // Answers only once every connection is closed: ours must let go by itself.
    script(&name, "indexedDB.deleteDatabase(name).onsuccess = () => resolve();").await;
    assert_eq!(journal.get("k").await, Ok(None));
    journal.put("k", "after").await.unwrap();
    assert_eq!(journal.get("k").await, Ok(Some("after".into())));
}

#[wasm_bindgen_test]
async fn a_newer_page_s_database_is_refused_not_emptied() {
    let name = fresh("journal");
    script(
        &name,
        "const o = indexedDB.open(name, 2); o.onupgradeneeded = e => e.target.result.createObjectStore('journal');
         o.onsuccess = e => { e.target.result.close(); resolve(); };",
    )
    .await;
    match Journal::open_named(&name).await {
        Err(Fault::Other(said)) => assert!(said.starts_with("VersionError"), "{said}"),
        Err(other) => panic!("{other:?}"),
        Ok(_) => panic!("it opened"),
    }
}

#[wasm_bindgen_test]
async fn without_indexeddb_it_is_blocked() {
    // What a page sees where it is switched off: the property is there and holds nothing.
    js_sys::eval(
        "globalThis.given = Object.getOwnPropertyDescriptor(window, 'indexedDB');
         Object.defineProperty(window, 'indexedDB', { value: undefined, configurable: true });",
    )
    .unwrap();
    let outcome = Journal::open().await.map(drop);
    js_sys::eval("Object.defineProperty(window, 'indexedDB', given)").unwrap();
    assert_eq!(outcome, Err(Fault::Blocked));
    assert!(Journal::open_named(&fresh("journal")).await.is_ok(), "it is back");
}
