//! The page's controls, found the way a screen reader finds them.

use std::path::Path;
use std::time::{Duration, Instant};

use serde_json::{Value, json};
use thirtyfour::prelude::*;

use crate::driver::Engine;

/// How long anything on the page may take to appear.
const PATIENCE: Duration = Duration::from_secs(10);
/// How often it is looked for.
const AGAIN: Duration = Duration::from_millis(40);

/// What a control is to a person who can't see it: roles of WAI-ARIA 1.2.
#[allow(dead_code)] // Each journey uses some.
#[derive(Clone, Copy, Debug)]
pub enum Role {
    Alert,
    Button,
    Checkbox,
    Combobox,
    Heading,
    Link,
    Listitem,
    Main,
    Radio,
    Searchbox,
    Status,
    Table,
    Textbox,
}

impl Role {
    fn name(self) -> String {
        format!("{self:?}").to_lowercase()
    }
}

/// The page in one session.
pub struct Page {
    session: WebDriver,
    engine: Engine,
}

/// The visible controls of a role, and what they are called, for engines whose own tree can't be asked over WebDriver: by the
/// rules of the W3C's accessible name computation as far as this page needs them. Kept in `window.foundByRole`.
const BY_ROLE: &str = "
const role = arguments[0], wanted = arguments[1];
const of = {
  button: 'button, [role=button]', link: 'a[href]', heading: 'h1, h2, h3, h4, h5, h6', main: 'main', listitem: 'li', table: 'table',
  checkbox: 'input[type=checkbox]', radio: 'input[type=radio]', searchbox: 'input[type=search]',
  textbox: 'input:not([type]), input[type=text], input[type=date], textarea', combobox: 'select',
  status: '[role=status], output', alert: '[role=alert]',
}[role];
const text = (element) => {
  if (element.getAttribute('aria-hidden') === 'true') return '';
  return [...element.childNodes].map((node) => node.nodeType === 3 ? node.data
    : node.nodeType !== 1 ? '' : /^(SELECT|INPUT|TEXTAREA)$/.test(node.tagName) ? ' ' : ' ' + text(node) + ' ').join('');
};
const name = (element) => {
  const by = (element.getAttribute('aria-labelledby') || '').split(' ').filter(Boolean)
    .map((id) => document.getElementById(id)).filter(Boolean);
  if (by.length) return by.map(text).join(' ');
  if (element.getAttribute('aria-label')) return element.getAttribute('aria-label');
  if (element.labels && element.labels.length) return [...element.labels].map(text).join(' ');
  if (element.caption) return text(element.caption);
  return text(element);
};
const even = (text) => text.replace(/\\s+/g, ' ').trim();
const shown = (element) => element.getClientRects().length > 0 && !element.closest('[aria-hidden=true], [inert]');
window.foundByRole = [...document.querySelectorAll(of)].filter(shown)
  .filter((element) => wanted === null || even(name(element)) === wanted);
return window.foundByRole.map((element) => even(name(element)));
";

#[allow(dead_code)] // Each journey uses some.
impl Page {
    pub fn new(session: WebDriver, engine: Engine) -> Page {
        Page { session, engine }
    }

    /// The session itself, for what is said nowhere else.
    pub fn session(&self) -> &WebDriver {
        &self.session
    }

    /// What a script returns.
    pub async fn script(&self, script: &str) -> Value {
        self.session.execute(script, vec![]).await.unwrap_or_else(|error| panic!("{script}: {error}")).json().clone()
    }

    /// Waits until an expression in the page is true.
    pub async fn until(&self, what: &str, expression: &str) {
        self.until_within(PATIENCE, what, expression).await;
    }

    /// Waits until an expression in the page is true, no longer than this.
    pub async fn until_within(&self, patience: Duration, what: &str, expression: &str) {
        let script = format!("return Boolean({expression});");
        let begun = Instant::now();
        loop {
            // While the page is being replaced there is nowhere to ask.
            let answer = self.session.execute(script.as_str(), vec![]).await;
            if answer.is_ok_and(|answer| answer.json() == &Value::Bool(true)) {
                return;
            }
            assert!(
                begun.elapsed() < patience,
                "{what}: not within {patience:?}; the page says:\n{}",
                self.text().await
            );
            tokio::time::sleep(AGAIN).await;
        }
    }

    /// Waits until the page has started.
    pub async fn started(&self) {
        // The mark is set when the program runs; its first screen comes when what is kept has been read.
        self.until(
            "the page starts",
            "document.documentElement.dataset.page === 'started' && document.querySelector('main')",
        )
        .await;
    }

    /// Waits until everything the page needs is on the device.
    pub async fn ready_offline(&self) {
        self.until_within(
            Duration::from_secs(30),
            "ready offline",
            "document.documentElement.dataset.offline === 'ready'",
        )
        .await;
    }

    /// Everything that can be read on it.
    pub async fn text(&self) -> String {
        let read = "const body = document.body, more = document.querySelector('#bedwright-crash textarea'); \
                    return body ? body.innerText + (more ? more.value : '') : '';";
        match self.session.execute(read, vec![]).await {
            Ok(text) => text.json().as_str().unwrap_or_default().to_owned(),
            Err(error) => format!("(nothing: {error})"),
        }
    }

    /// Waits until it can be read somewhere.
    pub async fn says(&self, words: &str) {
        self.until(&format!("says “{words}”"), &format!("document.body.innerText.includes({})", json!(words))).await;
    }

    /// The control of this role and name.
    ///
    /// Asked of Chromium's own accessibility tree, which computes both as a screen reader is told them.
    pub async fn find(&self, role: Role, name: &str) -> WebElement {
        let begun = Instant::now();
        loop {
            let found = self.matching(role, Some(name)).await;
            match found.as_slice() {
                [(node, _)] => {
                    if let Some(element) = self.element(node).await {
                        return element;
                    }
                }
                [] => {}
                several => panic!("{} controls are {role:?} “{name}”", several.len()),
            }
            if begun.elapsed() > PATIENCE {
                let there = self.names(role).await;
                panic!("no {role:?} is called “{name}”; these are: {there:?}\nThe page says:\n{}", self.text().await);
            }
            tokio::time::sleep(AGAIN).await;
        }
    }

    /// The one at a place among several of this role and name, counted from 0 in the page's order.
    pub async fn find_at(&self, role: Role, name: &str, place: usize) -> WebElement {
        let begun = Instant::now();
        loop {
            let found = self.matching(role, Some(name)).await;
            if let Some((node, _)) = found.get(place)
                && let Some(element) = self.element(node).await
            {
                return element;
            }
            assert!(begun.elapsed() < PATIENCE, "{role:?} “{name}”: {} there, none at {place}", found.len());
            tokio::time::sleep(AGAIN).await;
        }
    }

    /// Whether there is a control of this role and name, without waiting.
    pub async fn has(&self, role: Role, name: &str) -> bool {
        !self.matching(role, Some(name)).await.is_empty()
    }

    /// The names of all controls of a role, in the page's order.
    pub async fn names(&self, role: Role) -> Vec<String> {
        self.matching(role, None).await.into_iter().map(|(_, name)| name).collect()
    }

    /// Nodes of the accessibility tree: the id behind each, and its name.
    async fn matching(&self, role: Role, name: Option<&str>) -> Vec<(Value, String)> {
        let found = self.called(role, name).await;
        // Chromium tells a heading as the style sheet shows it: some are set in capitals.
        match (role, name) {
            (Role::Heading, Some(name)) if found.is_empty() => self.called(role, Some(&name.to_uppercase())).await,
            _ => found,
        }
    }

    async fn called(&self, role: Role, name: Option<&str>) -> Vec<(Value, String)> {
        if self.engine != Engine::Chromium {
            // A page that is being replaced has nothing on it.
            let Ok(found) = self.session.execute(BY_ROLE, vec![json!(role.name()), json!(name)]).await else {
                return Vec::new();
            };
            let names = found.json().as_array().cloned().unwrap_or_default();
            let name = |name: Value| name.as_str().unwrap_or_default().to_owned();
            return names.into_iter().enumerate().map(|(at, found)| (json!(at), name(found))).collect();
        }
        let Ok(document) = self.session.cdp().send_raw("Runtime.evaluate", json!({ "expression": "document" })).await
        else {
            return Vec::new();
        };
        let mut query = json!({ "objectId": document["result"]["objectId"], "role": role.name() });
        if let Some(name) = name {
            query["accessibleName"] = json!(name);
        }
        // A page that is being replaced has no tree.
        let Ok(answer) = self.session.cdp().send_raw("Accessibility.queryAXTree", query).await else {
            return Vec::new();
        };
        let nodes = answer["nodes"].as_array().cloned().unwrap_or_default();
        nodes
            .into_iter()
            .filter(|node| node["ignored"] != json!(true))
            .map(|node| {
                (node["backendDOMNodeId"].clone(), node["name"]["value"].as_str().unwrap_or_default().to_owned())
            })
            .collect()
    }

    async fn element(&self, node: &Value) -> Option<WebElement> {
        if self.engine != Engine::Chromium {
            let found = self.session.execute("return window.foundByRole[arguments[0]];", vec![node.clone()]).await;
            return found.ok()?.element().ok();
        }
        let cdp = self.session.cdp();
        let resolved = cdp.send_raw("DOM.resolveNode", json!({ "backendNodeId": node })).await.ok()?;
        let hold = json!({
            "objectId": resolved["object"]["objectId"],
            "functionDeclaration": "function () { window.foundByRole = this; }",
        });
        cdp.send_raw("Runtime.callFunctionOn", hold).await.ok()?;
        self.session.execute("return window.foundByRole;", vec![]).await.ok()?.element().ok()
    }

    /// Presses a button.
    pub async fn press(&self, name: &str) {
        self.click(Role::Button, name).await;
    }

    /// Follows a link: one on the screen, else one in the menu.
    pub async fn follow(&self, name: &str) {
        if !self.has(Role::Link, name).await {
            self.press("Menu").await;
        }
        self.click(Role::Link, name).await;
    }

    /// Clicks what has this role and name.
    pub async fn click(&self, role: Role, name: &str) {
        let mut again = 3;
        loop {
            let control = self.find(role, name).await;
            let clicked = async {
                control.scroll_into_view().await?;
                control.click().await
            }
            .await;
            match clicked {
                Ok(()) => return,
                // What is drawn anew under the finger is reached for again.
                Err(_) if again > 0 => again -= 1,
                Err(error) => panic!("{role:?} “{name}”: {error}"),
            }
        }
    }

    /// Types into a field, in place of what it held, and leaves it.
    pub async fn enter(&self, name: &str, text: &str) {
        let field = self.find(Role::Textbox, name).await;
        self.enter_into(&field, text).await;
    }

    /// Types into a field that was found, in place of what it held, and leaves it.
    pub async fn enter_into(&self, field: &WebElement, text: &str) {
        field.scroll_into_view().await.unwrap();
        field.send_keys(Key::Control + "a").await.unwrap();
        field.send_keys(Key::Delete + "").await.unwrap();
        field.send_keys(text.to_owned() + Key::Tab).await.unwrap();
    }

    /// What stands under a field: the texts it is described by, as a screen reader reads them after its name.
    pub async fn described(&self, name: &str) -> String {
        let field = self.find(Role::Textbox, name).await;
        let read = "const ids = (arguments[0].getAttribute('aria-describedby') || '').split(' '); \
                    return arguments[0].getAttribute('aria-invalid') === 'true' \
                      ? (document.getElementById(ids[0]) || {}).innerText || '' : '';";
        let said = self.session.execute(read, vec![field.to_json().unwrap()]).await.unwrap();
        said.json().as_str().unwrap_or_default().to_owned()
    }

    /// What a field holds.
    pub async fn entered(&self, name: &str) -> String {
        self.find(Role::Textbox, name).await.prop("value").await.unwrap().unwrap_or_default()
    }

    /// Picks an option of a list by its text.
    pub async fn pick(&self, name: &str, option: &str) {
        let list = self.find(Role::Combobox, name).await;
        self.pick_from(&list, name, option).await;
    }

    /// Picks an option of a list that was found by its text.
    pub async fn pick_from(&self, list: &WebElement, name: &str, option: &str) {
        let options = list.find_all(By::Tag("option")).await.unwrap();
        let mut there = Vec::new();
        for each in options {
            let text = each.text().await.unwrap();
            if text == option {
                each.click().await.unwrap();
                return;
            }
            there.push(text);
        }
        panic!("“{name}” has no “{option}”; it has {there:?}");
    }

    /// Gives a file to the page, as a person picks it after pressing a button.
    pub async fn pick_file(&self, button: &str, file: &Path) {
        // Without this the browser itself opens a window for files, which a test can't reach.
        let cdp = self.session.cdp();
        cdp.send_raw("Page.enable", json!({})).await.unwrap();
        cdp.send_raw("Page.setInterceptFileChooserDialog", json!({ "enabled": true })).await.unwrap();
        self.press(button).await;
        let input = self.session.query(By::Id("bedwright-pick")).first().await.unwrap();
        input.send_keys(file.to_string_lossy()).await.unwrap();
    }

    /// Goes to an address inside the page, like `#/jobs`.
    pub async fn go(&self, fragment: &str) {
        self.script(&format!("window.location.hash = {};", json!(fragment))).await;
    }

    /// Goes to an address inside the page and waits until its screen stands.
    pub async fn open(&self, fragment: &str) {
        self.go(fragment).await;
        self.until(
            &format!("{fragment} opens"),
            &format!("window.location.hash === {} && document.querySelector('main')", json!(fragment)),
        )
        .await;
        // Sheets are laid out in the frame after the one that shows the screen.
        self.settled().await;
    }

    /// Waits for two frames: what an event changed has been drawn.
    pub async fn settled(&self) {
        let frames = "const done = arguments[arguments.length - 1]; requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(() => done(1))));";
        self.session.execute_async(frames, vec![]).await.unwrap();
    }

    /// The address inside the page.
    pub async fn fragment(&self) -> String {
        self.script("return window.location.hash;").await.as_str().unwrap_or_default().to_owned()
    }

    /// Loads the page again and waits until it has started.
    pub async fn reload(&self) {
        if self.engine == Engine::Chromium {
            self.session.refresh().await.unwrap();
        } else {
            // Firefox's driver goes past the service worker where a person's own reload doesn't.
            self.script("window.wentBefore = true; setTimeout(() => window.location.reload(), 0);").await;
            self.until("the page is another", "!window.wentBefore").await;
        }
        self.started().await;
    }

    /// Fails on everything the browser complained of since it was last asked: errors, refusals of the content
    /// security policy, files that could not be had.
    pub async fn no_complaints(&self) {
        let complaints = self.complaints().await;
        assert!(complaints.is_empty(), "the browser complains:\n{}", complaints.join("\n"));
    }

    /// What the browser complained of since it was last asked.
    pub async fn complaints(&self) -> Vec<String> {
        if self.engine != Engine::Chromium {
            // Theirs can't be read over WebDriver.
            return Vec::new();
        }
        let log = self.session.browser_log().await.unwrap();
        log.into_iter()
            .filter(|entry| entry.level == "SEVERE" || entry.level == "WARNING")
            .map(|entry| entry.message)
            .collect()
    }

    /// Whether the page is wider than its screen, so that it must be pushed sideways to be read.
    pub async fn fits_its_width(&self) {
        let read = "return document.documentElement.scrollWidth - document.documentElement.clientWidth;";
        let mut beyond = self.script(read).await;
        // Other engines may still be laying a screen out.
        for _ in 0..20 {
            if beyond == json!(0) || self.engine == Engine::Chromium {
                break;
            }
            tokio::time::sleep(AGAIN).await;
            beyond = self.script(read).await;
        }
        if beyond != json!(0) {
            let wide = self
                .script(
                    "const edge = document.documentElement.clientWidth; \
                     return [...document.body.querySelectorAll('*')].filter((e) => e.getBoundingClientRect().right > edge + 0.5) \
                       .map((e) => `${e.tagName.toLowerCase()}.${e.getAttribute('class') || ''} to ${Math.round(e.getBoundingClientRect().right)}: ${(e.innerText || '').slice(0, 30)}`);",
                )
                .await;
            panic!("{}: {beyond} px wider than the screen: {wide}", self.fragment().await);
        }
    }
}
