//! The rules of accessibility that a program can check; it finds only part of WCAG.

use serde_json::Value;

use crate::page::Page;

/// Fails on every rule that axe finds broken, with where.
pub async fn no_barriers(page: &Page) {
    let said = barriers(page).await;
    assert!(said.is_empty(), "axe:\n{}", said.join("\n"));
}

/// Every rule that axe finds broken, with where.
pub async fn barriers(page: &Page) -> Vec<String> {
    let file =
        std::env::var("BEDWRIGHT_AXE").expect("BEDWRIGHT_AXE says where axe.min.js is: `tests/run journeys` does");
    let axe = std::fs::read_to_string(&file).unwrap_or_else(|error| panic!("{file}: {error}"));
    // By the driver, which the page's content security policy does not bind.
    page.session().execute(axe, vec![]).await.unwrap();
    let run = "const done = arguments[arguments.length - 1]; window.axe.run().then((found) => done(found), (error) => done(String(error)));";
    let found = page.session().execute_async(run, vec![]).await.unwrap().json().clone();
    assert!(found["passes"].as_array().is_some_and(|passes| !passes.is_empty()), "axe did not run: {found}");
    let violations = found["violations"].as_array().cloned().unwrap_or_default();
    violations.iter().map(say).collect()
}

fn say(violation: &Value) -> String {
    let nodes = violation["nodes"].as_array().cloned().unwrap_or_default();
    let nodes: Vec<&str> =
        nodes.iter().map(|node| node["html"].as_str().unwrap_or_default()).take(5).collect::<Vec<_>>();
    format!("{} ({}): {}\n    {}", violation["id"], violation["impact"], violation["help"], nodes.join("\n    "))
}
