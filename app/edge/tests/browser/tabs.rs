//! Other tabs: a frame of the same origin is another document, and stands for one.

use std::{cell::RefCell, rc::Rc};

use bedwright_edge::{
    tabs::{self, Change, Held},
    timer::pause,
};
use js_sys::Function;
use wasm_bindgen::JsValue;
use wasm_bindgen_test::wasm_bindgen_test;

use crate::fresh;

#[wasm_bindgen_test]
async fn a_name_is_held_by_one_and_given_back() {
    let name = fresh("lock");
    let hold = match tabs::hold(&name).await {
        Held::Yes(hold) => hold,
        other => panic!("{other:?}"),
    };
    assert!(matches!(tabs::hold(&name).await, Held::No));
    assert!(matches!(tabs::hold(&fresh("lock")).await, Held::Yes(_)), "another name is free");
    drop(hold);
    pause(50).await;
    match tabs::hold(&name).await {
        Held::Yes(hold) => hold.forget(),
        other => panic!("{other:?}"),
    }
    pause(50).await;
    assert!(matches!(tabs::hold(&name).await, Held::No), "held for good");
}

#[wasm_bindgen_test]
async fn a_name_that_is_taken_away_is_told_and_given_back_quietly() {
    let name = fresh("lock");
    let lost = Rc::new(RefCell::new(Vec::new()));
    let (first, second) = (Rc::clone(&lost), Rc::clone(&lost));
    let held = tabs::hold_until(&name, move || first.borrow_mut().push("first")).await;
    assert!(matches!(held, Held::Yes(_)));
    let taken = match tabs::take(&name, move || second.borrow_mut().push("second")).await {
        Held::Yes(hold) => hold,
        other => panic!("{other:?}"),
    };
    pause(50).await;
    assert_eq!(*lost.borrow(), ["first"]);
    assert!(matches!(tabs::hold(&name).await, Held::No), "the second has it");
    drop(taken);
    pause(50).await;
    assert_eq!(*lost.borrow(), ["first"], "nobody took what was given back");
    assert!(matches!(tabs::hold(&name).await, Held::Yes(_)));
}

#[wasm_bindgen_test]
async fn a_change_by_another_document_is_heard() {
    let prefix = fresh("t/tabs");
    let heard = Rc::new(RefCell::new(Vec::new()));
    let hears = Rc::clone(&heard);
    let listener = tabs::on_change(&prefix, move |change| hears.borrow_mut().push(change));
    let elsewhere = Function::new_with_args(
        "prefix",
        "const frame = document.createElement('iframe'); document.body.append(frame);
         const s = frame.contentWindow.localStorage;
         s.setItem(prefix + '/k', 'theirs'); s.setItem('other/' + prefix, 'x'); s.removeItem(prefix + '/k');
         s.removeItem('other/' + prefix);",
    );
    elsewhere.call1(&JsValue::UNDEFINED, &JsValue::from_str(&prefix)).unwrap();
    pause(300).await;
    let key = Some(format!("{prefix}/k"));
    let expected = [Change { key: key.clone(), text: Some("theirs".into()) }, Change { key, text: None }];
    assert_eq!(*heard.borrow(), expected);
    drop(listener);
    elsewhere.call1(&JsValue::UNDEFINED, &JsValue::from_str(&prefix)).unwrap();
    pause(300).await;
    assert_eq!(heard.borrow().len(), 2, "no longer heard");
}
