//! The keeper, on the real local storage and real journals.
//!
//! Texts here are `<number>:<words>`; the number is the revision, and a text without one is unreadable.

use std::{cell::RefCell, cmp::Ordering, rc::Rc};

use bedwright_edge::{
    Fault,
    journal::Journal,
    storage::{self, Available},
    store::{ASIDE, Aside, DELAY_MS, Entry, Keeper, Place, Status},
    timer::pause,
};
use wasm_bindgen_test::wasm_bindgen_test;
use web_sys::Event;

use crate::fresh;

fn by_number(one: &str, other: &str) -> Ordering {
    let number = |text: &str| text.split_once(':')?.0.parse::<u32>().ok();
    match (number(one), number(other)) {
        (Some(one), Some(other)) => one.cmp(&other),
        _ => Ordering::Equal,
    }
}

struct Kept {
    keeper: Keeper,
    journal: Journal,
    prefix: String,
}

impl Kept {
    async fn new() -> Self {
        let journal = Journal::open_named(&fresh("keeper")).await.unwrap();
        let keeper = Keeper::with(Available::Yes, Ok(journal.clone()));
        Self { keeper, journal, prefix: format!("t/{}/", fresh("keeper")) }
    }

    fn key(&self, name: &str) -> String {
        format!("{}{name}", self.prefix)
    }

    async fn both(&self, name: &str) -> (Option<String>, Option<String>) {
        let key = self.key(name);
        (storage::read(&key).unwrap(), self.journal.get(&key).await.unwrap())
    }

    async fn load(&self) -> Vec<Entry> {
        self.keeper.load_all(&self.prefix, by_number).await.entries
    }

    fn entry(&self, name: &str, text: &str, other: Option<&str>) -> Entry {
        Entry { key: self.key(name), text: text.into(), other: other.map(Into::into) }
    }
}

fn both_hold(text: &str) -> (Option<String>, Option<String>) {
    (Some(text.into()), Some(text.into()))
}

async fn settled(keeper: &Keeper) {
    for _ in 0..100 {
        if !keeper.status().pending {
            return;
        }
        pause(20).await;
    }
    panic!("still pending: {:?}", keeper.status());
}

const FINE: Status = Status { local: Ok(()), journal: Ok(()), pending: false };

#[wasm_bindgen_test]
async fn the_newer_text_wins_and_the_other_place_is_mended() {
    let at = Kept::new().await;
    for (name, local, journal) in [
        ("a-journal-newer", Some("4:old"), Some("5:new")),
        ("b-local-newer", Some("9:new"), Some("8:old")),
        ("c-only-local", Some("1:x"), None),
        ("d-only-journal", None, Some("1:y")),
        ("e-same", Some("3:same"), Some("3:same")),
    ] {
        if let Some(text) = local {
            storage::write(&at.key(name), text).unwrap();
        }
        if let Some(text) = journal {
            at.journal.put(&at.key(name), text).await.unwrap();
        }
    }
    let loaded = at.keeper.load_all(&at.prefix, by_number).await;
    assert_eq!((&loaded.local, &loaded.journal), (&Ok(()), &Ok(())));
    let expected = [
        ("a-journal-newer", "5:new"),
        ("b-local-newer", "9:new"),
        ("c-only-local", "1:x"),
        ("d-only-journal", "1:y"),
        ("e-same", "3:same"),
    ];
    assert_eq!(loaded.entries, expected.map(|(name, text)| at.entry(name, text, None)));
    assert_eq!(
        loaded.repaired,
        [
            (at.key("a-journal-newer"), Place::Local),
            (at.key("b-local-newer"), Place::Journal),
            (at.key("c-only-local"), Place::Journal),
            (at.key("d-only-journal"), Place::Local),
        ]
    );
    settled(&at.keeper).await;
    for (name, text) in expected {
        assert_eq!(at.both(name).await, both_hold(text), "{name}");
    }
    assert_eq!(at.keeper.status(), FINE);
    assert!(at.keeper.load_all(&at.prefix, by_number).await.repaired.is_empty());
}

#[wasm_bindgen_test]
async fn a_text_goes_to_the_journal_at_once_and_to_local_storage_soon() {
    let at = Kept::new().await;
    let key = at.key("k");
    at.keeper.schedule(&key, "1:a");
    at.keeper.schedule(&key, "2:ab");
    assert!(at.keeper.status().pending);
    assert_eq!(storage::read(&key), Ok(None), "not yet");
    // A read is queued behind the write (IndexedDB: transactions on one store run in the order they were begun).
    pause(0).await;
    assert_eq!(at.journal.get(&key).await, Ok(Some("2:ab".into())));
    pause(DELAY_MS / 2).await;
    at.keeper.schedule(&key, "3:abc");
    pause(250 - DELAY_MS / 2).await;
    assert_eq!(storage::read(&key), Ok(Some("3:abc".into())), "further typing does not put it off");
    settled(&at.keeper).await;
    assert_eq!(at.both("k").await, both_hold("3:abc"));
    assert_eq!(at.keeper.status(), FINE);
}

#[wasm_bindgen_test]
async fn leaving_the_page_writes_at_once() {
    let at = Kept::new().await;
    at.keeper.schedule(&at.key("k"), "1:a");
    assert_eq!(storage::read(&at.key("k")), Ok(None));
    web_sys::window().unwrap().dispatch_event(&Event::new("pagehide").unwrap()).unwrap();
    assert_eq!(storage::read(&at.key("k")), Ok(Some("1:a".into())));

    // The same when it is hidden (Page Visibility, HTML Living Standard), not when it is shown again.
    at.keeper.schedule(&at.key("k"), "2:b");
    let document = web_sys::window().unwrap().document().unwrap();
    let event = Event::new("visibilitychange").unwrap();
    document.dispatch_event(&event).unwrap();
    assert_eq!(storage::read(&at.key("k")), Ok(Some("1:a".into())));
    js_sys::eval("Object.defineProperty(document, 'visibilityState', { value: 'hidden', configurable: true })")
        .unwrap();
    document.dispatch_event(&event).unwrap();
    js_sys::eval("delete document.visibilityState").unwrap();
    assert_eq!(storage::read(&at.key("k")), Ok(Some("2:b".into())));
}

#[wasm_bindgen_test]
async fn an_unreadable_text_is_not_replaced_while_there_is_no_room_for_its_copy() {
    let keeper = Keeper::with(Available::Yes, Err(Fault::Blocked));
    let (key, filler) = (format!("t/{}", fresh("no-room")), fresh("t/filler"));
    // A fifth of the room is the unreadable text, nearly all the rest is something else: no room for a copy.
    let unreadable = "u".repeat(1 << 20);
    storage::write(&key, &unreadable).unwrap();
    let mut units = 5 << 20;
    while storage::write(&filler, &"x".repeat(units)).is_err() {
        units -= 1 << 18;
    }
    keeper.protect(&key);
    keeper.schedule(&key, "1:new");
    settled(&keeper).await;
    keeper.flush();
    settled(&keeper).await;
    assert_eq!(storage::read(&key), Ok(Some(unreadable.clone())));
    assert!(matches!(keeper.status().local, Err(Fault::Full { .. })));
    assert_eq!(keeper.load_all(&key, by_number).await.entries[0].text, "1:new", "but it is not lost to this page");
    storage::remove(&filler).unwrap();
    keeper.flush();
    settled(&keeper).await;
    keeper.flush();
    assert_eq!(storage::read(&key), Ok(Some("1:new".into())));
    assert_eq!(storage::read(&format!("{ASIDE}1/{key}")), Ok(Some(unreadable)));
    assert_eq!(keeper.status().local, Ok(()));
    for key in [format!("{ASIDE}1/{key}"), key] {
        storage::remove(&key).unwrap();
    }
}

#[wasm_bindgen_test]
async fn protecting_holds_back_a_text_that_waits_already() {
    let at = Kept::new().await;
    let key = at.key("k");
    storage::write(&key, "unreadable").unwrap();
    at.load().await;
    settled(&at.keeper).await;
    at.keeper.schedule(&key, "1:new");
    at.keeper.protect(&key);
    at.keeper.flush();
    assert_eq!(storage::read(&key), Ok(Some("unreadable".into())));
    settled(&at.keeper).await;
    at.keeper.flush();
    settled(&at.keeper).await;
    assert_eq!(at.both("k").await, both_hold("1:new"));
    assert_eq!(storage::read(&format!("{ASIDE}1/{key}")), Ok(Some("unreadable".into())));
}

#[wasm_bindgen_test]
async fn a_hundred_texts_of_many_keys_all_arrive() {
    let at = Kept::new().await;
    for number in 0..100 {
        at.keeper.schedule(&at.key(&format!("{}", number % 7)), &format!("{number}:x"));
        if number % 10 == 0 {
            pause(1).await;
        }
    }
    settled(&at.keeper).await;
    for key in 0..7 {
        let last = (0..100).rev().find(|number| number % 7 == key).unwrap();
        assert_eq!(at.both(&format!("{key}")).await, both_hold(&format!("{last}:x")));
    }
}

#[wasm_bindgen_test]
async fn a_sign_off_is_in_both_places_when_it_resolves() {
    let at = Kept::new().await;
    let key = at.key("sign-off");
    at.keeper.schedule(&key, "1:draft");
    at.keeper.commit(&key, "2:signed").await.unwrap();
    assert_eq!(at.both("sign-off").await, both_hold("2:signed"));
    settled(&at.keeper).await;
    assert_eq!(at.both("sign-off").await, both_hold("2:signed"), "the draft does not come after it");
    assert_eq!(at.keeper.status(), FINE);
}

#[wasm_bindgen_test]
async fn texts_that_cannot_be_put_in_order_are_both_given_and_both_set_aside_first() {
    let at = Kept::new().await;
    let key = at.key("k");
    storage::write(&key, "garbage").unwrap();
    at.journal.put(&key, "7:good").await.unwrap();
    assert_eq!(at.load().await, [at.entry("k", "garbage", Some("7:good"))]);
    settled(&at.keeper).await;
    assert_eq!(at.both("k").await, (Some("garbage".into()), Some("7:good".into())), "neither was touched");
    assert_eq!(at.keeper.asides(), []);

    at.keeper.schedule(&key, "8:better");
    settled(&at.keeper).await;
    assert_eq!(at.both("k").await, both_hold("8:better"));
    let copies = [format!("{ASIDE}1/{key}"), format!("{ASIDE}2/{key}")];
    assert_eq!(at.keeper.asides(), [Aside { key: key.clone(), copies: copies.to_vec() }]);
    for (copy, text) in copies.iter().zip(["garbage", "7:good"]) {
        assert_eq!(storage::read(copy).unwrap().as_deref(), Some(text));
        assert_eq!(at.journal.get(copy).await.unwrap().as_deref(), Some(text));
    }
}

#[wasm_bindgen_test]
async fn setting_aside_never_overwrites_an_earlier_copy() {
    let at = Kept::new().await;
    let key = at.key("k");
    // Number 1 is taken in local storage, number 2 in the journal only.
    storage::write(&format!("{ASIDE}1/{key}"), "first").unwrap();
    at.journal.put(&format!("{ASIDE}2/{key}"), "second").await.unwrap();
    storage::write(&key, "unreadable").unwrap();
    assert_eq!(at.keeper.set_aside(&key).await, Ok(vec![format!("{ASIDE}3/{key}")]));
    assert_eq!(storage::read(&format!("{ASIDE}1/{key}")).unwrap().as_deref(), Some("first"));
    assert_eq!(at.journal.get(&format!("{ASIDE}2/{key}")).await.unwrap().as_deref(), Some("second"));
    assert_eq!(storage::read(&format!("{ASIDE}3/{key}")).unwrap().as_deref(), Some("unreadable"));
    assert_eq!(
        at.keeper.set_aside(&key).await,
        Ok(vec![format!("{ASIDE}3/{key}")]),
        "the same text is not copied twice"
    );
    assert_eq!(at.keeper.set_aside(&at.key("nothing")).await, Ok(vec![]), "nothing there, nothing copied");
}

#[wasm_bindgen_test]
async fn a_save_that_works_does_not_clear_what_was_set_aside() {
    let at = Kept::new().await;
    let key = at.key("k");
    storage::write(&key, "unreadable").unwrap();
    at.load().await;
    at.keeper.protect(&key);
    let noted = Rc::new(RefCell::new(Vec::new()));
    let notes = Rc::clone(&noted);
    at.keeper.on_aside(move |aside| notes.borrow_mut().push(aside.key));
    at.keeper.schedule(&key, "1:new");
    assert_eq!(storage::read(&key).unwrap().as_deref(), Some("unreadable"));
    settled(&at.keeper).await;
    at.keeper.schedule(&key, "2:newer");
    settled(&at.keeper).await;
    assert_eq!(at.both("k").await, both_hold("2:newer"));
    assert_eq!(*noted.borrow(), [key], "once, not at every save");
    assert_eq!((at.keeper.status(), at.keeper.asides().len()), (FINE, 1));
}

#[wasm_bindgen_test]
async fn a_text_of_another_tab_is_not_overwritten_unseen() {
    let at = Kept::new().await;
    let key = at.key("k");
    at.keeper.schedule(&key, "1:mine");
    settled(&at.keeper).await;
    storage::write(&key, "2:theirs").unwrap();
    at.keeper.schedule(&key, "2:mine");
    assert_eq!(at.keeper.status().local, Err(Fault::Changed));
    pause(300).await;
    at.keeper.flush();
    assert_eq!(at.both("k").await, (Some("2:theirs".into()), Some("1:mine".into())));
    assert_eq!(at.keeper.commit(&key, "2:signed").await, Err(Fault::Changed));
    // Seen, joined, saved.
    assert_eq!(at.keeper.see(&key), Ok(Some("2:theirs".into())));
    at.keeper.schedule(&key, "3:both");
    settled(&at.keeper).await;
    assert_eq!(at.both("k").await, both_hold("3:both"));
    assert_eq!(at.keeper.status(), FINE);
}

#[wasm_bindgen_test]
async fn a_refused_text_stays_a_fault_until_that_text_is_kept() {
    let at = Kept::new().await;
    let (large, small) = (at.key("large"), at.key("small"));
    // 6 Mi units: above any browser's limit for local storage, no matter for the journal.
    at.keeper.schedule(&large, &"x".repeat(6 << 20));
    settled(&at.keeper).await;
    let full = Err(Fault::Full { needed_bytes: 2 * (large.len() + (6 << 20)) });
    assert_eq!(at.keeper.status(), Status { local: full.clone(), journal: Ok(()), pending: false });
    at.keeper.schedule(&small, "1:x");
    settled(&at.keeper).await;
    assert_eq!(at.both("small").await, both_hold("1:x"));
    assert_eq!(at.keeper.status().local, full, "another text that is kept changes nothing");
    assert_eq!(at.keeper.refused().len(), 1);
    at.keeper.schedule(&large, "2:shorter");
    settled(&at.keeper).await;
    assert_eq!(at.keeper.status(), FINE);
    assert_eq!(at.both("large").await, both_hold("2:shorter"));
}

#[wasm_bindgen_test]
async fn with_both_places_blocked_it_works_in_memory_and_says_so() {
    let keeper = Keeper::with(Available::Blocked, Err(Fault::Blocked));
    let key = format!("t/{}", fresh("memory"));
    assert!(keeper.memory_only());
    keeper.schedule(&key, "1:a");
    keeper.schedule(&key, "2:b");
    keeper.flush();
    pause(300).await;
    let loaded = keeper.load_all("t/", by_number).await;
    assert_eq!(loaded.entries, [Entry { key: key.clone(), text: "2:b".into(), other: None }]);
    assert_eq!((loaded.local, loaded.journal), (Err(Fault::Blocked), Err(Fault::Blocked)));
    let blocked = Status { local: Err(Fault::Blocked), journal: Err(Fault::Blocked), pending: false };
    assert_eq!(keeper.status(), blocked);
    assert_eq!(keeper.commit(&key, "3:c").await, Err(Fault::Blocked));
    assert_eq!(storage::read(&key), Ok(None), "nothing went past the probe");
    keeper.remove(&key).await.unwrap();
    assert!(keeper.load_all("t/", by_number).await.entries.is_empty());
}

#[wasm_bindgen_test]
async fn with_one_place_blocked_the_other_keeps() {
    let journal = Journal::open_named(&fresh("keeper")).await.unwrap();
    let key = format!("t/{}", fresh("one"));
    let keeper = Keeper::with(Available::Blocked, Ok(journal.clone()));
    keeper.schedule(&key, "1:a");
    settled(&keeper).await;
    assert_eq!(journal.get(&key).await, Ok(Some("1:a".into())));
    assert_eq!(keeper.status(), Status { local: Err(Fault::Blocked), ..FINE });
    assert!(!keeper.memory_only());

    let keeper = Keeper::with(Available::Yes, Err(Fault::Blocked));
    keeper.schedule(&key, "1:a");
    settled(&keeper).await;
    assert_eq!(storage::read(&key), Ok(Some("1:a".into())));
    assert_eq!(keeper.status(), Status { journal: Err(Fault::Blocked), ..FINE });
    assert_eq!(keeper.set_aside(&key).await, Ok(vec![format!("{ASIDE}1/{key}")]));
}

#[wasm_bindgen_test]
async fn what_is_removed_is_gone_from_both() {
    let at = Kept::new().await;
    at.keeper.schedule(&at.key("k"), "1:a");
    settled(&at.keeper).await;
    at.keeper.schedule(&at.key("k"), "2:b");
    at.keeper.remove(&at.key("k")).await.unwrap();
    pause(300).await;
    assert_eq!(at.both("k").await, (None, None), "a text that was waiting does not bring it back");
    assert_eq!(at.load().await, []);
}

#[wasm_bindgen_test]
async fn the_status_is_told_when_it_changes_and_only_then() {
    let at = Kept::new().await;
    let told = Rc::new(RefCell::new(Vec::new()));
    let tell = Rc::clone(&told);
    at.keeper.on_status(move |status| tell.borrow_mut().push(status));
    at.keeper.schedule(&at.key("k"), "1:a");
    at.keeper.schedule(&at.key("k"), "2:b");
    settled(&at.keeper).await;
    at.keeper.flush();
    at.keeper.flush();
    assert_eq!(*told.borrow(), [FINE, Status { pending: true, ..FINE }, FINE]);
}
