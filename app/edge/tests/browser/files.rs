//! Files out and in, as far as a page without a person can go: the dialogs themselves need one.

use std::{cell::RefCell, rc::Rc};

use bedwright_edge::{
    Fault,
    files::{self, Shared},
    timer::pause,
};
use js_sys::{Array, Promise, Uint8Array};
use wasm_bindgen::JsCast;
use wasm_bindgen_futures::{JsFuture, spawn_local};
use wasm_bindgen_test::wasm_bindgen_test;
use web_sys::{File, HtmlInputElement};

#[wasm_bindgen_test]
async fn a_download_names_the_file_and_carries_its_bytes() {
    // What the click on the anchor would fetch, fetched by the test instead.
    js_sys::eval(
        "globalThis.fetched = null; addEventListener('click', e => { if (e.target.download) { e.preventDefault();
         fetched = fetch(e.target.href).then(async r => [e.target.download, r.headers.get('content-type'), await r.text()].join('|'));
         } }, { once: true, capture: true });",
    )
    .unwrap();
    files::download("job 7.json", "application/json", "{\"½\":1}".as_bytes()).unwrap();
    let fetched = js_sys::eval("fetched").unwrap().dyn_into::<Promise>().unwrap();
    let said = JsFuture::from(fetched).await.unwrap().as_string().unwrap();
    assert_eq!(said, "job 7.json|application/json|{\"½\":1}");
    assert_eq!(js_sys::eval("document.querySelectorAll('a[download]').length").unwrap().as_f64(), Some(0.0));
}

fn input() -> HtmlInputElement {
    let document = web_sys::window().unwrap().document().unwrap();
    document.get_element_by_id("bedwright-pick").unwrap().dyn_into().unwrap()
}

async fn picked(most_bytes: u64, choose: impl FnOnce()) -> Result<Option<(String, Vec<u8>)>, Fault> {
    let answer = Rc::new(RefCell::new(None));
    let told = Rc::clone(&answer);
    spawn_local(async move {
        let outcome = files::pick_file(".json", most_bytes).await;
        told.replace(Some(outcome));
    });
    pause(20).await;
    choose();
    for _ in 0..50 {
        if answer.borrow().is_some() {
            break;
        }
        pause(20).await;
    }
    answer.take().expect("it resolves")
}

fn choose_a_file() {
    assert_eq!(input().accept(), ".json");
    js_sys::eval(
        "(() => { const d = new DataTransfer(); d.items.add(new File(['abc'], 'a.json')); const i = document.getElementById('bedwright-pick');
          i.files = d.files; i.dispatchEvent(new Event('change')); })()",
    )
    .unwrap();
}

#[wasm_bindgen_test]
async fn a_chosen_file_is_read() {
    assert_eq!(picked(3, choose_a_file).await, Ok(Some(("a.json".into(), b"abc".to_vec()))));
    assert_eq!(picked(2, choose_a_file).await, Err(Fault::TooLarge { bytes: 3 }));
    let cancel = || assert!(input().dispatch_event(&web_sys::Event::new("cancel").unwrap()).unwrap());
    assert_eq!(picked(3, cancel).await, Ok(None));
    // A browser that never reports a closed dialog: the next choice ends the one before.
    let next = || spawn_local(async { drop(files::pick_file("", 1).await) });
    assert_eq!(picked(3, next).await, Ok(None));
}

#[wasm_bindgen_test]
async fn a_dropped_file_is_read() {
    let file = File::new_with_u8_array_sequence(&Array::of1(&Uint8Array::from([1_u8, 2].as_slice())), "b.bin").unwrap();
    assert_eq!(files::read_file(&file, 10).await, Ok(("b.bin".into(), vec![1, 2])));
}

#[wasm_bindgen_test]
async fn sharing_says_what_became_of_it() {
    js_sys::eval(
        "navigator.canShare = d => d.files.length === 1 && d.files[0].type === 'text/plain';
         navigator.share = d => Promise.reject(new DOMException('', d.files[0].name));",
    )
    .unwrap();
    assert!(files::can_share_file("a", "text/plain"));
    assert!(!files::can_share_file("a", "application/zip"));
    // The file's name chooses the exception: those that the Web Share API (W3C) names.
    assert_eq!(files::share_file("AbortError", "text/plain", b"x").await, Shared::Cancelled);
    assert_eq!(files::share_file("NotAllowedError", "text/plain", b"x").await, Shared::TapAgain);
    assert_eq!(files::share_file("DataError", "text/plain", b"x").await, Shared::Failed("DataError".into()));
    js_sys::eval("navigator.share = () => Promise.resolve()").unwrap();
    assert_eq!(files::share_file("a", "text/plain", b"x").await, Shared::Done);
    js_sys::eval("navigator.canShare = undefined").unwrap();
    assert_eq!(files::share_file("a", "text/plain", b"x").await, Shared::Unsupported);
    js_sys::eval("delete navigator.canShare; delete navigator.share").unwrap();
}
