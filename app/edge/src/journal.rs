//! The journal: every write once more, in IndexedDB, which a killed browser keeps.
//!
//! Database `bedwright`, object store `journal`, key → `{text, stamp}` (`stamp`: milliseconds of the clock when it was
//! put, for whoever looks at it; nothing is decided by it). The rules are those of the Indexed Database API 3.0 (W3C).
//!
//! Written on the browser's own interface. The wrapper crate `idb` 0.6.5 has no way to ask for a durability, and adds
//! 28.8 KB of wasm (9.3 KB gzipped) to an empty page for put, get, all and remove; this file adds 19.9 KB (8.4 KB), the
//! opening again and the patience included (wasm-bindgen 0.2.130, `opt-level = "z"`, before wasm-opt).
//!
//! A transaction's events resolve a promise themselves, so there is no Rust closure per request, and every request of a
//! transaction is made before the first wait: none can end too early.

use std::{cell::RefCell, rc::Rc};

use js_sys::{Array, Object, Promise, Reflect};
use wasm_bindgen::{JsCast, JsValue, closure::Closure, prelude::wasm_bindgen};
use wasm_bindgen_futures::JsFuture;
use web_sys::{
    Event, IdbDatabase, IdbFactory, IdbKeyRange, IdbObjectStore, IdbOpenDbRequest, IdbRequest, IdbTransaction,
    IdbTransactionMode,
};

use crate::{
    Work,
    fault::{Fault, name_of},
    listen::Listener,
    storage::entry_bytes,
};

const DATABASE: &str = "bedwright";
const STORE: &str = "journal";
const VERSION: u32 = 1;
/// Some browsers never answer the first opening after a start.
const PATIENCE_MS: i32 = 4_000;

/// An open journal. Clones are the same journal.
#[derive(Clone)]
pub struct Journal {
    name: Rc<str>,
    connection: Rc<RefCell<Connection>>,
}

struct Connection {
    database: IdbDatabase,
    /// Lets go when another page wants to change or delete the database: otherwise that page would wait for ever.
    _let_go: Listener,
}

impl Journal {
    /// Opens the page's journal.
    ///
    /// # Errors
    /// [`Fault::Blocked`] where there is no IndexedDB or it may not be used; [`Fault::Other`] when it does not answer,
    /// or was made by a newer page (`VersionError`).
    pub async fn open() -> Result<Self, Fault> {
        Self::open_named(DATABASE).await
    }

    /// Opens a journal in a database of another name.
    ///
    /// # Errors
    /// As [`Journal::open`].
    pub async fn open_named(name: &str) -> Result<Self, Fault> {
        let connection = connect(name).await?;
        Ok(Self { name: name.into(), connection: Rc::new(RefCell::new(connection)) })
    }

    /// Puts a text under a key.
    ///
    /// # Errors
    /// [`Fault::Full`] without room, what the browser said otherwise; the old text stays.
    pub async fn put(&self, key: &str, text: &str) -> Result<(), Fault> {
        self.put_all(&[(key, text)]).await
    }

    /// Puts several texts, all or none.
    ///
    /// # Errors
    /// As [`Journal::put`].
    pub async fn put_all(&self, entries: &[(&str, &str)]) -> Result<(), Fault> {
        self.write(Durability::Relaxed, entries).await
    }

    /// Puts a text under a key and resolves only when the browser reports it written through to the disk, as far as
    /// the browser can tell (`durability: "strict"`).
    ///
    /// # Errors
    /// As [`Journal::put`].
    pub async fn put_strict(&self, key: &str, text: &str) -> Result<(), Fault> {
        self.write(Durability::Strict, &[(key, text)]).await
    }

    /// Puts a text under a key that is free; `false` when it was taken, and nothing is changed then.
    ///
    /// # Errors
    /// As [`Journal::put`].
    pub async fn put_new(&self, key: &str, text: &str) -> Result<bool, Fault> {
        let transaction = self.transaction(IdbTransactionMode::Readwrite, Durability::Strict).await?;
        let store = store_of(&transaction)?;
        store.add_with_key(&record(text), &JsValue::from_str(key)).map_err(|thrown| Fault::other(&thrown))?;
        match finished(&transaction).await {
            Ok(()) => Ok(true),
            Err(thrown) if name_of(&thrown).as_deref() == Some("ConstraintError") => Ok(false),
            Err(thrown) => Err(Fault::of(&thrown, entry_bytes(key, text))),
        }
    }

    /// The text under a key, or that there is none.
    ///
    /// # Errors
    /// What the browser said.
    pub async fn get(&self, key: &str) -> Result<Option<String>, Fault> {
        let transaction = self.transaction(IdbTransactionMode::Readonly, Durability::Relaxed).await?;
        let request = store_of(&transaction)?.get(&JsValue::from_str(key)).map_err(|thrown| Fault::other(&thrown))?;
        finished(&transaction).await.map_err(|thrown| Fault::other(&thrown))?;
        let found = result_of(&request)?;
        Ok((!found.is_undefined()).then(|| text_of(&found)))
    }

    /// Every key that starts with `prefix`, with its text, in order.
    ///
    /// # Errors
    /// What the browser said.
    pub async fn all(&self, prefix: &str) -> Result<Vec<(String, String)>, Fault> {
        let range = IdbKeyRange::bound(&JsValue::from_str(prefix), &JsValue::from_str(&format!("{prefix}\u{ffff}")))
            .map_err(|thrown| Fault::other(&thrown))?;
        let transaction = self.transaction(IdbTransactionMode::Readonly, Durability::Relaxed).await?;
        let store = store_of(&transaction)?;
        let keys = store.get_all_keys_with_key(&range).map_err(|thrown| Fault::other(&thrown))?;
        let records = store.get_all_with_key(&range).map_err(|thrown| Fault::other(&thrown))?;
        finished(&transaction).await.map_err(|thrown| Fault::other(&thrown))?;
        let keys = Array::from(&result_of(&keys)?);
        let records = Array::from(&result_of(&records)?);
        Ok(keys
            .iter()
            .zip(records.iter())
            .filter_map(|(key, found)| Some((key.as_string()?, text_of(&found))))
            .collect())
    }

    /// Takes a key and its text away; nothing happens where there is none.
    ///
    /// # Errors
    /// What the browser said.
    pub async fn remove(&self, key: &str) -> Result<(), Fault> {
        let transaction = self.transaction(IdbTransactionMode::Readwrite, Durability::Relaxed).await?;
        store_of(&transaction)?.delete(&JsValue::from_str(key)).map_err(|thrown| Fault::other(&thrown))?;
        finished(&transaction).await.map_err(|thrown| Fault::other(&thrown))
    }

    fn write<'a>(&'a self, durability: Durability, entries: &'a [(&'a str, &'a str)]) -> Work<'a, Result<(), Fault>> {
        Box::pin(self.write_now(durability, entries))
    }

    async fn write_now(&self, durability: Durability, entries: &[(&str, &str)]) -> Result<(), Fault> {
        let transaction = self.transaction(IdbTransactionMode::Readwrite, durability).await?;
        let store = store_of(&transaction)?;
        let mut bytes = 0_usize;
        for (key, text) in entries {
            bytes = bytes.saturating_add(entry_bytes(key, text));
            if let Err(thrown) = store.put_with_key(&record(text), &JsValue::from_str(key)) {
                let _ = transaction.abort();
                return Err(Fault::of(&thrown, bytes));
            }
        }
        finished(&transaction).await.map_err(|thrown| Fault::of(&thrown, bytes))
    }

    /// A transaction; opens the database again once when the browser, or another page, has closed it meanwhile.
    /// Boxed: all that is asked of the journal begins with it, and would carry a copy of it.
    fn transaction(&self, mode: IdbTransactionMode, durability: Durability) -> Work<'_, Result<IdbTransaction, Fault>> {
        Box::pin(self.transaction_now(mode, durability))
    }

    async fn transaction_now(&self, mode: IdbTransactionMode, durability: Durability) -> Result<IdbTransaction, Fault> {
        let begun = begin(&self.connection.borrow().database, mode, durability);
        match begun {
            Err(thrown) if name_of(&thrown).as_deref() == Some("InvalidStateError") => {
                let again = connect(&self.name).await?;
                let begun = begin(&again.database, mode, durability);
                self.connection.replace(again);
                begun.map_err(|thrown| Fault::other(&thrown))
            }
            begun => begun.map_err(|thrown| Fault::other(&thrown)),
        }
    }
}

#[derive(Clone, Copy)]
enum Durability {
    Relaxed,
    Strict,
}

#[wasm_bindgen]
extern "C" {
    /// `IDBDatabase`, for the one call whose options the bindings still call unstable.
    type WithOptions;
    #[wasm_bindgen(method, catch)]
    fn transaction(
        this: &WithOptions,
        store: &str,
        mode: IdbTransactionMode,
        options: &Object,
    ) -> Result<IdbTransaction, JsValue>;
}

fn begin(database: &IdbDatabase, mode: IdbTransactionMode, durability: Durability) -> Result<IdbTransaction, JsValue> {
    let options = Object::new();
    let durability = match durability {
        Durability::Relaxed => "relaxed",
        Durability::Strict => "strict",
    };
    Reflect::set(&options, &JsValue::from_str("durability"), &JsValue::from_str(durability))?;
    // A browser too old for the options takes no notice of them.
    database.unchecked_ref::<WithOptions>().transaction(STORE, mode, &options)
}

async fn connect(name: &str) -> Result<Connection, Fault> {
    let factory: IdbFactory =
        web_sys::window().and_then(|window| window.indexed_db().ok().flatten()).ok_or(Fault::Blocked)?;
    let request = factory.open_with_u32(name, VERSION).map_err(|thrown| Fault::other(&thrown))?;
    let made = Closure::<dyn FnMut(Event)>::new(|event: Event| {
        if let Some(database) = opened_by(&event)
            && !database.object_store_names().contains(STORE)
        {
            // When this throws the opening fails, and that is reported.
            let _ = database.create_object_store(STORE);
        }
    });
    request.set_onupgradeneeded(Some(made.as_ref().unchecked_ref()));
    let opened = Promise::new(&mut |resolve, reject| {
        request.set_onsuccess(Some(&resolve));
        request.set_onerror(Some(&reject));
    });
    let late = Promise::new(&mut |_, reject| {
        if let Some(window) = web_sys::window() {
            let _ = window.set_timeout_with_callback_and_timeout_and_arguments_0(&reject, PATIENCE_MS);
        }
    });
    let outcome = JsFuture::from(Promise::race(&Array::of2(&opened, &late))).await;
    if outcome.is_err() {
        let thrown = request.error().ok().flatten();
        if thrown.is_none() {
            // It may still open, and must then have its store, and must not stay in another page's way.
            made.forget();
            let closes = Closure::once_into_js(|event: Event| {
                if let Some(database) = opened_by(&event) {
                    database.close();
                }
            });
            request.set_onsuccess(closes.dyn_ref());
        }
        return Err(match &thrown {
            // Firefox, and others that forbid it, refuse with one of these only now.
            Some(thrown)
                if matches!(thrown.name().as_str(), "SecurityError" | "InvalidStateError" | "InvalidAccessError") =>
            {
                Fault::Blocked
            }
            Some(thrown) => Fault::other(thrown),
            None => Fault::Other("IndexedDB did not answer".into()),
        });
    }
    let database: IdbDatabase = result_of(&request)?.dyn_into().map_err(|thrown| Fault::other(&thrown))?;
    if !database.object_store_names().contains(STORE) {
        database.close();
        return Err(Fault::Other("the database has no journal".into()));
    }
    let closing = database.clone();
    let let_go = Listener::on(&database, "versionchange", move |_| closing.close());
    Ok(Connection { database, _let_go: let_go })
}

fn opened_by(event: &Event) -> Option<IdbDatabase> {
    event.target()?.dyn_into::<IdbOpenDbRequest>().ok()?.result().ok()?.dyn_into().ok()
}

fn store_of(transaction: &IdbTransaction) -> Result<IdbObjectStore, Fault> {
    transaction.object_store(STORE).map_err(|thrown| Fault::other(&thrown))
}

/// Resolves when everything in the transaction is kept; the exception that ended it otherwise.
fn finished(transaction: &IdbTransaction) -> Work<'_, Result<(), JsValue>> {
    Box::pin(finished_now(transaction))
}

async fn finished_now(transaction: &IdbTransaction) -> Result<(), JsValue> {
    let end = Promise::new(&mut |resolve, reject| {
        transaction.set_oncomplete(Some(&resolve));
        transaction.set_onabort(Some(&reject));
    });
    match JsFuture::from(end).await {
        Ok(_) => Ok(()),
        Err(_) => Err(transaction.error().map_or(JsValue::from_str("aborted"), JsValue::from)),
    }
}

fn result_of(request: &IdbRequest) -> Result<JsValue, Fault> {
    request.result().map_err(|thrown| Fault::other(&thrown))
}

fn record(text: &str) -> JsValue {
    let record = Object::new();
    // Setting a property of a plain object cannot fail.
    let _ = Reflect::set(&record, &JsValue::from_str("text"), &JsValue::from_str(text));
    let _ = Reflect::set(&record, &JsValue::from_str("stamp"), &JsValue::from_f64(js_sys::Date::now()));
    record.into()
}

/// The text of a record. A record of another shape is given whole, as JSON: the caller finds it unreadable and can set
/// it aside, where leaving it out would look as if nothing had ever been kept.
fn text_of(record: &JsValue) -> String {
    if let Some(text) = crate::fault::property(record, "text").and_then(|text| text.as_string()) {
        return text;
    }
    js_sys::JSON::stringify(record).ok().and_then(|text| text.as_string()).unwrap_or_default()
}
