//! No literal text in a view: every sentence is put into words in one place, per language.

use super::{files_in, none, said, text};

/// Texts that are the same in every language.
const SAME_EVERYWHERE: &[&str] = &["Bedwright"];

/// The string that stands alone on a line of a view, or right after a tag: what a person would read.
fn child_text(line: &str) -> Option<&str> {
    let line = line.trim();
    let (before, rest) = line.split_once('"')?;
    let before = before.trim_end();
    // A child of an element: at the start of the line, or after the `>` of a tag (not of `->` or `=>`).
    let child = before.is_empty() || (before.ends_with('>') && !before.ends_with("->") && !before.ends_with("=>"));
    if !child {
        return None;
    }
    let (inside, after) = rest.split_once('"')?;
    // On a line of its own it must be all there is, or it is an argument of something.
    let after = after.trim();
    let alone = after.is_empty() || after.starts_with('<');
    (alone && has_words(inside)).then_some(inside)
}

/// The words in an attribute that is read or heard: they belong to a language as well.
fn attribute_text(line: &str) -> Option<&str> {
    ["placeholder=\"", "title=\"", "aria-label=\"", "aria-description=\"", "alt=\""].iter().find_map(|name| {
        let (_, rest) = line.split_once(name)?;
        let (inside, _) = rest.split_once('"')?;
        has_words(inside).then_some(inside)
    })
}

/// Three letters in a row: a word, not a sign or a unit's letter.
fn has_words(text: &str) -> bool {
    text.split(|c: char| !c.is_alphabetic()).any(|word| word.chars().count() >= 3)
}

/// Lines of a source inside a `view!` macro, by their numbers: from its opening brace to the one that closes it.
fn view_lines(source: &str) -> Vec<(usize, &str)> {
    let mut found = Vec::new();
    let mut depth = 0_usize;
    for (number, line) in source.lines().enumerate() {
        let mut rest = line;
        if depth == 0 {
            match line.find("view!") {
                Some(at) if !line.trim_start().starts_with("//") => rest = &line[at..],
                _ => continue,
            }
        }
        let inside = rest.strip_prefix("view!").map_or(rest, |rest| rest.trim_start().trim_start_matches('{'));
        found.push((number + 1, inside));
        let mut quoted = false;
        for c in rest.chars() {
            match c {
                '"' => quoted = !quoted,
                '{' if !quoted => depth += 1,
                '}' if !quoted => depth = depth.saturating_sub(1),
                _ => {}
            }
        }
    }
    found
}

#[test]
fn no_view_holds_literal_text() {
    let mut breaches = Vec::new();
    for path in files_in("app/src", ".rs") {
        for (number, line) in view_lines(&text(&path)) {
            if let Some(found) = child_text(line).or_else(|| attribute_text(line))
                && !SAME_EVERYWHERE.contains(&found)
            {
                breaches.push(format!("{}:{number}: “{found}”", said(&path)));
            }
        }
    }
    none("text in a view", &breaches);
}

#[test]
fn the_rule_on_views_finds_what_it_is_for() {
    let source = "fn page() {\n    let x = \"Not a view\";\n    view! {\n        <h1>\"Words here\"</h1>\n        <p class=\"wide text\">{words}</p>\n        \"A line of its own\"\n        <b>\"m³\"</b>\n    }\n}\nlet later = \"Also none\";\n";
    let found: Vec<&str> = view_lines(source).into_iter().filter_map(|(_, line)| child_text(line)).collect();
    assert_eq!(found, ["Words here", "A line of its own"]);
    assert_eq!(attribute_text("<input class=\"wide\" placeholder=\"Type here\"/>"), Some("Type here"));
    assert_eq!(attribute_text("<input class=\"wide text\" title=words.title/>"), None);
    assert_eq!(child_text("view! { <h1>\"One line\"</h1> }".trim_start_matches("view! {")), Some("One line"));
}

#[test]
fn no_sentence_is_made_in_calc() {
    // A sentence: three words and more in one string. Doc examples and data may hold some; code may not.
    let mut breaches = Vec::new();
    for path in files_in("calc/src", ".rs") {
        let source = text(&path);
        let code = source.split("#[cfg(test)]").next().unwrap_or_default();
        for (number, line) in code.lines().enumerate() {
            let line = line.trim();
            if line.starts_with("//")
                || line.starts_with("#[")
                || line.starts_with("#![")
                || line.starts_with("include")
            {
                continue;
            }
            for (index, part) in line.split('"').enumerate() {
                if index % 2 == 1 && part.split_whitespace().filter(|word| has_words(word)).count() >= 3 {
                    breaches.push(format!("{}:{}: “{part}”", said(&path), number + 1));
                }
            }
        }
    }
    none("sentences belong to the words of the document", &breaches);
}
