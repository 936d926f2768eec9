//! Scripts and style sheets without what only their authors read: comments, indentation, empty lines.
//!
//! Lines stay lines, so nothing that a script means can change. Measured: 6 kB of what starts the page, in brotli.

/// A script of the page.
pub fn script(text: &str) -> String {
    // A text over several lines may hold anything.
    let whole = text.lines().all(|line| line.matches('`').count().is_multiple_of(2));
    if whole { lean(text, Some("//")) } else { text.to_owned() }
}

/// A style sheet of the page.
pub fn style(text: &str) -> String {
    let mut lean = lean(text, None);
    for (loose, tight) in [(" {\n", "{"), (";\n", ";"), (",\n", ","), ("{\n", "{"), (";}", "}"), ("}\n}", "}}")] {
        lean = lean.replace(loose, tight);
    }
    lean
}

/// The lines that are no comments, trimmed. A comment that stands behind something, or before it, stays.
fn lean(text: &str, comment: Option<&str>) -> String {
    let mut lean = String::new();
    let mut inside = false;
    for line in text.lines().map(str::trim) {
        let opens = line.starts_with("/*");
        if inside || opens {
            // What follows an end on the same line is kept; nobody writes like that.
            let from = if opens { line.get(2..).unwrap_or_default() } else { line };
            match from.split_once("*/") {
                None => inside = true,
                Some((_, rest)) => {
                    inside = false;
                    put(&mut lean, rest.trim());
                }
            }
        } else if comment.is_none_or(|mark| !line.starts_with(mark)) {
            put(&mut lean, line);
        }
    }
    lean
}

fn put(lean: &mut String, line: &str) {
    if !line.is_empty() {
        lean.push_str(line);
        lean.push('\n');
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_script_keeps_its_lines_and_loses_what_is_said_about_them() {
        let text =
            "/**\n * About it.\n */\nlet a = 1 // stays\n\n    // goes\n    call(\"// stays\")\n/* goes */ b()\n";
        assert_eq!(script(text), "let a = 1 // stays\ncall(\"// stays\")\nb()\n");
    }

    #[test]
    fn a_script_with_a_text_over_several_lines_stays_as_it_is() {
        let text = "let text = `one\n  // two\n`;\n";
        assert_eq!(script(text), text);
        assert_eq!(script("  let text = `one`;\n"), "let text = `one`;\n");
    }

    #[test]
    fn a_sheet_says_the_same_on_fewer_lines() {
        let text = "/* About\n   it. */\n.a,\n.b > c {\n  width: calc(1px + 2px);\n  content: \" ; \";\n}\n\n@media print {\n  .a { color: red; }\n  .b {\n    top: 0;\n  }\n}\n";
        let lean = ".a,.b > c{width: calc(1px + 2px);content: \" ; \"}\n@media print{.a { color: red; }\n.b{top: 0}}\n";
        assert_eq!(style(text), lean);
    }
}
