//! Ids, the clock, the address, the display, persistence, printing, updates.

use std::{
    cell::{Cell, RefCell},
    collections::BTreeSet,
    rc::Rc,
};

use bedwright_edge::{
    address, clock, display, persist, print, random,
    timer::{Timer, pause},
    update::{self, Offline},
};
use wasm_bindgen_test::wasm_bindgen_test;

#[wasm_bindgen_test]
fn ids_are_distinct_and_can_be_read_out() {
    let ids: BTreeSet<_> = (0..2_000).map(|_| random::id().unwrap()).collect();
    assert_eq!(ids.len(), 2_000);
    for id in &ids {
        assert_eq!(id.len(), 26);
        assert!(id.chars().all(|digit| "0123456789ABCDEFGHJKMNPQRSTVWXYZ".contains(digit)), "{id}");
    }
}

#[wasm_bindgen_test]
fn base32_is_crockford_s() {
    // Worked by hand: 1 ends in digit 1, 32 is 10, all bits set is 7 and 25 times Z (128 = 3 + 25·5 bits).
    let of = |number: u128| random::base32(number.to_be_bytes());
    assert_eq!(of(0), "0".repeat(26));
    assert_eq!(of(1), format!("{}1", "0".repeat(25)));
    assert_eq!(of(32), format!("{}10", "0".repeat(24)));
    assert_eq!(of(18), format!("{}J", "0".repeat(25)), "I is left out");
    assert_eq!(of(u128::MAX), format!("7{}", "Z".repeat(25)));
}

#[wasm_bindgen_test]
fn today_is_what_the_browser_writes() {
    let written =
        js_sys::eval("(d => [d.getFullYear(), d.getMonth() + 1, d.getDate()].join('-'))(new Date())").unwrap();
    let (year, month, day) = clock::today();
    assert_eq!(written.as_string().unwrap(), format!("{year}-{month}-{day}"));
    let now = clock::now_iso();
    // ECMA-262, "Date Time String Format": YYYY-MM-DDTHH:mm:ss.sssZ
    assert_eq!((now.len(), now.get(10..11), now.get(23..)), (24, Some("T"), Some("Z")));
    assert!((js_sys::Date::parse(&now) - clock::now_ms()).abs() < 5_000.0);
}

#[wasm_bindgen_test]
async fn the_address_names_the_screen() {
    let heard = Rc::new(RefCell::new(Vec::new()));
    let hears = Rc::clone(&heard);
    let before = address::hash();
    let listener = address::on_change(move |hash| hears.borrow_mut().push(hash));
    address::go("/jobs/1/loading");
    pause(100).await;
    assert_eq!(address::hash(), "/jobs/1/loading");
    address::replace("/jobs/2");
    assert_eq!(address::hash(), "/jobs/2");
    assert!(!address::page().contains('#'));
    address::back();
    pause(300).await;
    assert_eq!(address::hash(), before);
    drop(listener);
    address::go("/else");
    pause(100).await;
    assert_eq!(
        *heard.borrow(),
        ["/jobs/1/loading".to_owned(), before.clone()],
        "replacing is silent, dropping ends it"
    );
    address::replace(&before);
}

#[wasm_bindgen_test]
async fn a_dropped_timer_never_calls() {
    let calls = Rc::new(Cell::new(0));
    let (one, two) = (Rc::clone(&calls), Rc::clone(&calls));
    drop(Timer::after(10, move || one.set(one.get() + 1)));
    let kept = Timer::after(10, move || two.set(two.get() + 10));
    pause(60).await;
    assert_eq!(calls.get(), 10);
    drop(kept);
}

#[wasm_bindgen_test]
fn a_width_query_is_answered() {
    assert!(display::matches("(min-width: 1px)"));
    assert!(!display::matches("(min-width: 100000px)"));
    assert!(!display::installed());
    assert_eq!(display::dark(), !display::matches("(prefers-color-scheme: light)"));
}

#[wasm_bindgen_test]
async fn the_browser_says_how_much_room_there_is() {
    let estimate = persist::estimate().await.expect("Chromium tells");
    assert!(estimate.quota_bytes > 5 << 20);
    assert_ne!(persist::persisted().await, persist::Protection::Unsupported);
}

#[wasm_bindgen_test]
async fn printing_that_does_nothing_is_noticed() {
    // Stands for a browser whose print() returns and does nothing; then for one that prints.
    js_sys::eval("globalThis.realPrint = window.print; window.print = () => {}").unwrap();
    let heard = Rc::new(RefCell::new(Vec::new()));
    let hears = Rc::clone(&heard);
    print::print(move |begun| hears.borrow_mut().push(begun));
    assert!(heard.borrow().is_empty());
    pause(1_200).await;
    assert_eq!(*heard.borrow(), [false]);
    js_sys::eval("window.print = () => dispatchEvent(new Event('beforeprint'))").unwrap();
    let hears = Rc::clone(&heard);
    print::print(move |begun| hears.borrow_mut().push(begun));
    js_sys::eval("window.print = realPrint").unwrap();
    assert_eq!(*heard.borrow(), [false, true]);
}

#[wasm_bindgen_test]
fn the_boot_script_and_the_page_understand_each_other() {
    let heard = Rc::new(RefCell::new(Vec::new()));
    let (one, two) = (Rc::clone(&heard), Rc::clone(&heard));
    let _waiting = update::on_waiting(move || one.borrow_mut().push("waiting"));
    let _ready = update::on_offline_ready(move || two.borrow_mut().push("ready"));
    assert_eq!((update::waiting(), update::offline()), (false, Offline::Unknown));
    js_sys::eval(
        "document.documentElement.dataset.update = 'waiting'; dispatchEvent(new CustomEvent('bedwright-update-waiting'));
         document.documentElement.dataset.offline = 'ready'; dispatchEvent(new CustomEvent('bedwright-offline-ready'));
         globalThis.sent = []; for (const e of ['bedwright-update-accept', 'bedwright-offline-repair'])
           addEventListener(e, () => sent.push(e), { once: true });",
    )
    .unwrap();
    assert_eq!((update::waiting(), update::offline()), (true, Offline::Ready));
    assert_eq!(*heard.borrow(), ["waiting", "ready"]);
    update::accept();
    update::repair();
    let sent = js_sys::eval(
        "delete document.documentElement.dataset.update; document.documentElement.dataset.offline = 'not-ready'; sent.join()",
    );
    assert_eq!(sent.unwrap().as_string().unwrap(), "bedwright-update-accept,bedwright-offline-repair");
    assert_eq!((update::waiting(), update::offline()), (false, Offline::NotReady));
}
