//! The finder itself: what a screen reader is not told of is not found.

use crate::browser::{Screen, visit};
use crate::page::{Page, Role};
use crate::site::Site;

const FORM: &str = "document.body.innerHTML = `
    <main>
      <label>Inside depth <input type='text' value='51'></label>
      <label for='head'>Bottom head</label><select id='head'><option>Flat</option><option>Hemispherical</option></select>
      <button aria-label='Add a layer'>+</button>
      <button hidden>Never</button>
      <button aria-hidden='true'>Unseen</button>
      <p role='status'></p>
    </main>`;
    document.querySelector('button').onclick = () => { document.querySelector('p').textContent = 'Layer 1 added'; };";

#[tokio::test(flavor = "multi_thread", worker_threads = 2)]
async fn controls_are_found_by_role_and_name_and_hidden_ones_are_not() {
    let site = Site::serve();
    visit(Screen::Phone, &site.address(), async |page: Page| {
        page.started().await;
        page.script(FORM).await;
        assert_eq!(page.names(Role::Button).await, ["Add a layer"]);
        assert_eq!(page.entered("Inside depth").await, "51");
        page.enter("Inside depth", "1 m 30").await;
        assert_eq!(page.entered("Inside depth").await, "1 m 30");
        page.pick("Bottom head", "Hemispherical").await;
        let picked = page.find(Role::Combobox, "Bottom head").await.prop("value").await.unwrap();
        assert_eq!(picked.as_deref(), Some("Hemispherical"));
        page.press("Add a layer").await;
        page.says("Layer 1 added").await;
        assert!(!page.has(Role::Button, "Never").await);
        assert!(!page.has(Role::Textbox, "Bottom head").await);
    })
    .await;
}
