//! A real panic reaches the crash screen. A test program of its own: what has panicked once can set no hook again.
#![cfg(target_arch = "wasm32")]
#![allow(clippy::unwrap_used, clippy::panic)]

use bedwright_edge::crash;
use js_sys::Function;
use wasm_bindgen::{JsValue, closure::Closure};
use wasm_bindgen_test::{wasm_bindgen_test, wasm_bindgen_test_configure};

wasm_bindgen_test_configure!(run_in_browser);

#[wasm_bindgen_test]
fn a_panic_reaches_the_crash_screen() {
    js_sys::eval("globalThis.crashed = []; globalThis.bedwrightCrash = said => crashed.push(said)").unwrap();
    crash::install();
    // In a call from JavaScript, which catches what the engine throws then.
    let bug = Closure::<dyn Fn()>::new(|| panic!("a bed without a vessel"));
    let run = Function::new_with_args("bug", "try { bug(); return 'no panic'; } catch (e) { return 'caught'; }");
    let caught = run.call1(&JsValue::UNDEFINED, bug.as_ref()).unwrap();
    assert_eq!(caught.as_string().as_deref(), Some("caught"));
    let said = js_sys::eval("crashed.join('|')").unwrap().as_string().unwrap();
    assert!(said.contains("a bed without a vessel") && said.contains("crash.rs"), "{said}");
}
