//! How long a keystroke takes on a vessel whose bed is washed: fill, service, backwash, and the window drawn anew.
//!
//! Seconds are told, not judged; asked for by name: `tests/run keystroke`.

use std::time::Duration;

use crate::browser::{Screen, visit};
use crate::filter;
use crate::page::{Page, Role};
use crate::site::Site;

/// Types a digit at the end of the focused field and takes it away again, many times; milliseconds until all is worked
/// out, and until it is drawn. Each change is counted by what the page worked out for it.
const TYPED: &str = "
    const done = arguments[arguments.length - 1];
    const field = document.activeElement, root = document.documentElement.dataset, held = field.value;
    const next = () => new Promise((go) => { const c = new MessageChannel(); c.port1.onmessage = go; c.port2.postMessage(0); });
    const frame = () => new Promise((go) => requestAnimationFrame(() => next().then(go)));
    (async () => {
        const worked = [], drawn = [];
        let counted = 0;
        for (let k = 0; k < 200; k += 1) {
            delete root.calculatedWater;
            await frame();
            const begun = performance.now();
            field.value = k % 2 ? held : held + '1';
            field.dispatchEvent(new InputEvent('input', { bubbles: true }));
            await next();
            worked.push(performance.now() - begun);
            await frame();
            drawn.push(performance.now() - begun);
            counted += root.calculatedWater === '1' ? 1 : 0;
        }
        const at = (list, share) => list.sort((a, b) => a - b)[Math.floor(list.length * share)];
        done([counted, at(worked, 0.5), at(worked, 0.95), at(drawn, 0.5), at(drawn, 0.95)]);
    })();";

async fn timed(page: Page, screen: &str) {
    page.started().await;
    filter::planned(&page, "Keystrokes").await;
    page.enter("Flow there is for backwash", "8").await;
    page.enter("Service flow of the site", "4").await;
    page.says("Backwash at").await;
    page.session().set_script_timeout(Duration::from_secs(600)).await.unwrap();
    for field in ["Inside depth", "Service flow of the site"] {
        page.find(Role::Textbox, field).await.focus().await.unwrap();
        let told = page.session().execute_async(TYPED, vec![]).await.unwrap();
        let told: Vec<f64> = told.json().as_array().unwrap().iter().map(|each| each.as_f64().unwrap()).collect();
        let [counted, worked, worked_95, drawn, drawn_95] = told[..] else { panic!("{told:?}") };
        println!(
            "{screen}, a keystroke in “{field}”: worked out in {worked:.1} ms (p50), {worked_95:.1} ms (p95); drawn in \
             {drawn:.1} ms (p50), {drawn_95:.1} ms (p95); water worked out once in {counted} of 200"
        );
        assert_eq!(counted, 200.0, "every keystroke works the water of one vessel out, once");
    }
    page.no_complaints().await;
}

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
#[ignore = "tells how long something takes; asked for by name"]
async fn a_keystroke_is_timed_on_a_phone_and_on_a_desk() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), async |page: Page| timed(page, "phone").await).await;
    visit(Screen::Desk, &site.address(), async |page: Page| timed(page, "desk").await).await;
}
