//! Names and words of files.

use super::{files, none, root, said, text};

#[test]
fn the_top_level_holds_what_the_layout_says_and_nothing_else() {
    const MUST: &[&str] = &[
        "Cargo.toml",
        "Cargo.lock",
        "README.md",
        "DEVELOPERS.md",
        "app",
        "calc",
        "public",
        "tests",
        "index.html",
        "rust-toolchain.toml",
    ];
    // What building leaves; git does not keep them.
    const BUILT: &[&str] = &["target", "dist"];
    let there: Vec<String> = std::fs::read_dir(root())
        .unwrap()
        .map(|entry| entry.unwrap().file_name().to_string_lossy().into_owned())
        .filter(|name| !name.starts_with('.') && !BUILT.contains(&name.as_str()))
        .collect();
    let mut breaches: Vec<String> = there
        .iter()
        .filter(|name| !MUST.contains(&name.as_str()) && !name.starts_with("LICENSE"))
        .map(|name| format!("{name} has no place there"))
        .collect();
    breaches.extend(
        MUST.iter().filter(|name| !there.iter().any(|other| other == *name)).map(|name| format!("{name} is missing")),
    );
    if !there.iter().any(|name| name.starts_with("LICENSE")) {
        breaches.push("LICENSE is missing".to_owned());
    }
    none("top level", &breaches);
}

#[test]
fn no_file_is_a_drawer() {
    const DRAWERS: &[&str] = &["utils", "util", "helpers", "helper", "common", "misc"];
    let breaches: Vec<String> = files()
        .iter()
        .filter(|path| {
            path.strip_prefix(root()).unwrap().iter().any(|part| {
                let part = part.to_string_lossy();
                DRAWERS.contains(&part.split('.').next().unwrap_or_default())
            })
        })
        .map(|path| said(path))
        .collect();
    none("a file is named for the thing in it", &breaches);
}

/// Words are put together here, or this file would break its own rule.
#[test]
fn no_file_says_what_does_not_belong_there() {
    let unfinished =
        [["TO", "DO"].concat(), ["FIX", "ME"].concat(), ["unimplemented", "!"].concat(), ["to", "do!("].concat()];
    let elsewhere = [
        ["trans", "cript"].concat(),
        ["helper", "-"].concat(),
        ["design", ".md"].concat(),
        ["domain", ".md"].concat(),
        ["platform", ".md"].concat(),
        ["work/", "shared"].concat(),
    ];
    let hosts = [
        ["index.crates", ".io"].concat(),
        ["static.crates", ".io"].concat(),
        ["registry.npmjs", ".org"].concat(),
        ["pypi", ".org"].concat(),
        ["files.python", "hosted.org"].concat(),
        ["deb.debian", ".org"].concat(),
    ];
    let mut breaches = Vec::new();
    for path in files() {
        // A lock file says where a crate or package came from; that is what it is for.
        let lock = path.ends_with("Cargo.lock") || path.ends_with("package-lock.json");
        for (number, line) in text(&path).lines().enumerate() {
            let words = unfinished.iter().chain(&elsewhere).chain(hosts.iter().filter(|_| !lock));
            for word in words.filter(|word| line.contains(word.as_str())) {
                breaches.push(format!("{}:{}: {word}", said(&path), number + 1));
            }
        }
    }
    none("words that do not belong", &breaches);
}

#[test]
fn nothing_that_ships_is_fetched_from_elsewhere() {
    let mut breaches = Vec::new();
    for path in files() {
        let name = said(&path);
        let shipped = name == "index.html" || name.starts_with("public/") || name.ends_with(".css");
        if !shipped {
            continue;
        }
        for (number, line) in text(&path).lines().enumerate() {
            // Names of formats look like addresses and are never fetched.
            let named = ["http://www.w3.org/", "https://json-schema.org/"]
                .iter()
                .fold(line.to_owned(), |line, known| line.replace(known, ""));
            if named.contains("http://")
                || named.contains("https://")
                || named.contains("@import")
                || named.contains("url(//")
            {
                breaches.push(format!("{name}:{}: {}", number + 1, line.trim()));
            }
        }
    }
    none("no request leaves the page's own origin", &breaches);
}

#[test]
fn a_file_fits_in_a_head() {
    let breaches: Vec<String> = files()
        .iter()
        .filter(|path| path.extension().is_some_and(|ending| ending == "rs"))
        .map(|path| (said(path), text(path).lines().count()))
        .filter(|(_, lines)| *lines > 700)
        .map(|(name, lines)| format!("{name}: {lines} lines"))
        .collect();
    none("at most 700 lines", &breaches);
}
