//! The page's Content-Security-Policy does what it says: nothing runs that isn't a file of the page, nothing is asked of
//! anybody else.

use serde_json::json;

use crate::browser::{Screen, visit};
use crate::filter;
use crate::page::Page;
use crate::site::Site;

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn scripts_styles_frames_and_requests_from_elsewhere_are_refused() {
    let site = Site::serve();
    // Somebody else: another port is another origin, and it would answer.
    let other = Site::serve();
    visit(Screen::Desk, &site.address(), async |page: Page| {
        page.started().await;
        filter::planned(&page, "Behind the policy").await;
        page.no_complaints().await;
        let attempts = "const done = arguments[arguments.length - 1], other = arguments[0]; window.ran = []; \
            const refused = []; document.addEventListener('securitypolicyviolation', (e) => refused.push(e.effectiveDirective)); \
            const add = (tag, set) => { const e = document.createElement(tag); set(e); document.body.append(e); return e; }; \
            add('script', (e) => { e.textContent = 'window.ran.push(\"inline\")'; }); \
            add('script', (e) => { e.src = other + 'boot.js'; }); \
            add('script', (e) => { e.src = 'data:text/javascript,window.ran.push(\"data\")'; }); \
            add('div', (e) => { e.setAttribute('onclick', 'window.ran.push(\"attribute\")'); }).click(); \
            const link = add('a', (e) => { e.href = 'javascript:window.ran.push(\"link\")'; }); link.click(); \
            add('p', (e) => { e.setAttribute('style', 'position: fixed'); window.styled = e; }); \
            add('img', (e) => { e.src = other + 'icons/icon-192.png'; }); \
            add('iframe', (e) => { e.src = other; }); \
            add('object', (e) => { e.data = other; }); \
            setTimeout('window.ran.push(\"string\")', 0); \
            try { new WebSocket(other.replace('http', 'ws')); } catch (e) { refused.push('socket: ' + e.name); } \
            fetch(other).then(() => window.ran.push('fetch'), () => refused.push('fetch')).then(() => setTimeout(() => \
              done({ ran: window.ran, refused, fixed: getComputedStyle(window.styled).position === 'fixed' }), 500));";
        let found = page.session().execute_async(attempts, vec![json!(other.address())]).await.unwrap().json().clone();
        assert_eq!(found["ran"], json!([]), "{found}");
        assert_eq!(found["fixed"], json!(false), "{found}");
        let refused: Vec<&str> = found["refused"].as_array().unwrap().iter().map(|one| one.as_str().unwrap()).collect();
        for what in ["script-src-elem", "script-src-attr", "style-src-attr", "img-src", "frame-src", "connect-src", "fetch"] {
            assert!(refused.contains(&what), "{what} isn't among {refused:?}");
        }
        // The page goes on with its work.
        page.enter("Inside depth", "52").await;
        page.complaints().await;
        page.reload().await;
        assert_eq!(page.entered("Inside depth").await, "52");
        page.no_complaints().await;
    })
    .await;
}

/// Texts of a job are texts wherever they are shown.
#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn what_is_typed_never_becomes_markup() {
    let site = Site::serve();
    visit(Screen::Desk, &site.address(), async |page: Page| {
        page.started().await;
        let bad = "<img src=x onerror=alert(1)><script>window.ran=1</script> \"'>";
        filter::planned(&page, bad).await;
        let job = page.fragment().await;
        let job = job.split("/vessels").next().unwrap().to_owned();
        for screen in ["", "/bill", "/quote", "/picking", "/labels", "/survey-sheet", "/calculation", "/loading"] {
            page.open(&format!("{job}{screen}")).await;
            page.settled().await;
            let made = page.script("return [document.querySelectorAll('main img, main script, header img, header script').length, window.ran || 0];").await;
            assert_eq!(made, json!([0, 0]), "{screen}");
        }
        page.open("#/jobs").await;
        page.says(bad).await;
        page.no_complaints().await;
    })
    .await;
}
