//! How fast the page is on a slow phone, beside the smallest page there is in the same frame: one table. Milliseconds are
//! told, not judged. Judged is what doesn't hang on the machine: that a keystroke works nothing out that didn't change, and
//! that a thousand edits leave memory as a hundred did.
//!
//! `tests/run speed` makes both pages and asks for it by name.

use std::path::PathBuf;

use serde_json::{Value, json};

use crate::browser::{Screen, Session, visit_in};
use crate::page::{Page, Role};
use crate::site::Site;
use crate::stored;

/// How much slower the processor is made.
const SLOWER: f64 = 4.0;
/// How often each start is timed.
const STARTS: usize = 7;
/// How much more a thousand edits may leave than a hundred: of JavaScript's heap after it was cleared, and of wasm's memory.
/// One page of wasm's memory has 65,536 bytes, and what may be taken back grows to its fixed length meanwhile.
const MORE_HEAP: f64 = 500_000.0;
const MORE_WASM: f64 = 524_288.0;

/// Notes when the page stood painted, and what memory its wasm has.
const BEFORE: &str = "
    new MutationObserver((_, observer) => {
      const root = document.documentElement;
      if (root && root.dataset.page === 'started' && document.querySelector('main')) {
        observer.disconnect();
        requestAnimationFrame(() => requestAnimationFrame(() => { window.stoodAt = performance.now(); }));
      }
    }).observe(document, { subtree: true, childList: true, attributes: true });
    const real = WebAssembly.instantiateStreaming;
    WebAssembly.instantiateStreaming = async (...given) => {
      const made = await real.apply(WebAssembly, given);
      window.wasmMemory = Object.values(made.instance.exports).find((each) => each instanceof WebAssembly.Memory);
      return made;
    };";

/// Types a digit at the end of the focused field and takes it away again, many times: milliseconds until it is painted, and
/// whether each worked out one vessel and no bill.
const TYPED: &str = "
    const [count, done] = arguments;
    const field = document.activeElement, root = document.documentElement.dataset, held = field.value;
    const next = () => new Promise((go) => { const c = new MessageChannel(); c.port1.onmessage = go; c.port2.postMessage(0); });
    const frame = () => new Promise((go) => requestAnimationFrame(() => next().then(go)));
    (async () => {
      const painted = [];
      let once = 0;
      for (let k = 0; k < count; k += 1) {
        delete root.calculated;
        await frame();
        const begun = performance.now();
        field.value = k % 2 ? held : held + '1';
        field.dispatchEvent(new InputEvent('input', { bubbles: true }));
        await frame();
        painted.push(performance.now() - begun);
        once += root.calculated === 'vessels 1 bills 0' ? 1 : 0;
      }
      painted.sort((a, b) => a - b);
      done([painted[Math.floor(count / 2)], painted[Math.floor(count * 0.95)], once]);
    })();";

/// The folder of the smallest page.
fn floor() -> PathBuf {
    PathBuf::from(
        std::env::var_os("BEDWRIGHT_FLOOR").expect("BEDWRIGHT_FLOOR: `tests/run speed` makes the smallest page"),
    )
}

async fn send(page: &Page, command: &str, with: Value) -> Value {
    page.session().cdp().send_raw(command, with).await.unwrap()
}

async fn slowed(page: &Page, rate: f64) {
    send(page, "Emulation.setCPUThrottlingRate", json!({ "rate": rate })).await;
}

/// Milliseconds from asking for the page until it stood painted, in the middle of several.
async fn start(page: &Page) -> f64 {
    let mut all = Vec::new();
    for _ in 0..STARTS {
        page.session().refresh().await.unwrap();
        page.until("the page stands", "window.stoodAt").await;
        all.push(page.script("return window.stoodAt;").await.as_f64().unwrap());
    }
    all.sort_by(f64::total_cmp);
    all[STARTS / 2]
}

/// From the host, past every cache; then from what is kept for use offline.
async fn starts(page: &Page) -> [f64; 2] {
    page.ready_offline().await;
    send(page, "Network.enable", json!({})).await;
    slowed(page, SLOWER).await;
    let mut both = [0.0; 2];
    for (at, past) in [true, false].into_iter().enumerate() {
        send(page, "Network.setCacheDisabled", json!({ "cacheDisabled": past })).await;
        send(page, "Network.setBypassServiceWorker", json!({ "bypass": past })).await;
        both[at] = start(page).await;
    }
    both
}

/// Milliseconds from a key to what it changed, painted: half of them within the first, 95 of 100 within the second.
async fn keystrokes(page: &Page, count: usize) -> [f64; 3] {
    let told = page.session().execute_async(TYPED, vec![json!(count)]).await.unwrap();
    [0, 1, 2].map(|at| told.json()[at].as_f64().unwrap())
}

/// JavaScript's heap after it was cleared, and wasm's memory, in bytes.
async fn memory(page: &Page) -> [f64; 2] {
    for _ in 0..3 {
        send(page, "HeapProfiler.collectGarbage", json!({})).await;
    }
    let heap = send(page, "Runtime.getHeapUsage", json!({})).await["usedSize"].as_f64().unwrap();
    let wasm = page.script("return window.wasmMemory.buffer.byteLength;").await.as_f64().unwrap();
    [heap, wasm]
}

/// The smallest page: both starts, and its keystroke.
async fn smallest(told: &mut [f64; 4]) {
    let site = Site::serve_folder(&floor());
    let kind = Session { before: Some(BEFORE), ..Session::on(Screen::Phone) };
    visit_in(kind, &site.address(), async |page: Page| {
        page.until("the page stands", "document.querySelector('main')").await;
        let [network, kept] = starts(&page).await;
        page.script("const field = document.querySelector('input'); field.value = '5'; field.focus();").await;
        let [half, most, _] = keystrokes(&page, 100).await;
        *told = [network, kept, half, most];
    })
    .await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
#[ignore = "tells how long things take; asked for by name: tests/run speed"]
async fn starts_and_keystrokes_are_told_beside_the_smallest_page_and_memory_stays() {
    let mut least = [0.0; 4];
    smallest(&mut least).await;
    let site = Site::serve();
    let kind = Session { before: Some(BEFORE), ..Session::on(Screen::Phone) };
    visit_in(kind, &site.address(), async |page: Page| {
        page.started().await;
        stored::put(&page, &stored::texts(&stored::one_vessel())).await;
        stored::put(&page, &stored::texts(&stored::fifty_vessels())).await;
        let [network, kept] = starts(&page).await;
        let mut rows = vec![
            ("start from the host".to_owned(), least[0], network),
            ("start from what is kept".to_owned(), least[1], kept),
        ];
        for (job, many) in [("one-vessel", "1 vessel"), ("fifty-vessels", "50 vessels")] {
            page.open(&format!("#/jobs/{job}/vessels/v-0")).await;
            page.find(Role::Textbox, "Inside depth").await.focus().await.unwrap();
            let count = 100;
            let [half, most, once] = keystrokes(&page, count).await;
            assert_eq!(once, count as f64, "{many}: each keystroke works out one vessel and no bill");
            rows.push((format!("key to painted figure, {many}, half of them"), least[2], half));
            rows.push((format!("key to painted figure, {many}, 95 of 100"), least[3], most));
        }
        println!("in Chromium on a phone's screen, its processor {SLOWER} times slower, ms");
        println!("{:<48} {:>14} {:>10}", "", "smallest page", "Bedwright");
        for (what, least, ours) in rows {
            println!("{what:<48} {least:>14.1} {ours:>10.1}");
        }

        // The keystrokes above were edits as well; these are counted from here.
        slowed(&page, 1.0).await;
        page.session().set_script_timeout(std::time::Duration::from_secs(300)).await.unwrap();
        let mut left = Vec::new();
        for edits in [100, 900, 1000] {
            keystrokes(&page, edits).await;
            tokio::time::sleep(std::time::Duration::from_secs(1)).await;
            left.push(memory(&page).await);
        }
        for (after, [heap, wasm]) in [100, 1000, 2000].into_iter().zip(&left) {
            println!("after {after} edits: JavaScript's heap {heap:.0} bytes, wasm's memory {wasm:.0}");
        }
        // What is undone and written takes its room once; from then on nothing may grow.
        let [_, [heap, wasm], [heap_then, wasm_then]] = left[..] else { panic!("{left:?}") };
        assert!(heap_then - heap < MORE_HEAP && wasm_then - wasm < MORE_WASM, "memory grows");
        page.no_complaints().await;
    })
    .await;
}
