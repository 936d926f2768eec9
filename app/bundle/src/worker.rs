//! The service worker with its list of files.
use crate::Outcome;

/// Fills the template: the build's id and the files that are kept for offline use. The page itself is listed as
/// `./`, the address that every host serves it under.
pub fn filled(template: &str, build: &str, files: &[String]) -> Outcome<String> {
    let mut list = String::from("[\n  \"./\",\n");
    for file in files {
        if file.contains(['"', '\\', '\n']) {
            return Err(format!("{file}: a file's name may not hold quotes or backslashes"));
        }
        list.push_str("  \"");
        list.push_str(file);
        list.push_str("\",\n");
    }
    list.push(']');
    let once = |text: &str, mark: &str, value: &str| match text.matches(mark).count() {
        1 => Ok(text.replacen(mark, value, 1)),
        n => Err(format!("public/sw.js has {mark} {n} times; once is right")),
    };
    let with_build = once(template, "\"{{build}}\"", &format!("\"{build}\""))?;
    once(&with_build, "[\"{{files}}\"]", &list)
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use super::*;

    const TEMPLATE: &str = "const BUILD = \"{{build}}\";\nconst FILES = [\"{{files}}\"];\n";

    #[test]
    fn the_list_holds_the_page_and_every_file() {
        let sw = filled(TEMPLATE, "A-1", &["app-1.js".into(), "icons/icon.svg".into()]).unwrap();
        assert_eq!(
            sw,
            "const BUILD = \"A-1\";\nconst FILES = [\n  \"./\",\n  \"app-1.js\",\n  \"icons/icon.svg\",\n];\n"
        );
    }

    #[test]
    fn a_template_without_its_marks_is_refused() {
        assert!(filled("", "A", &[]).is_err());
        assert!(filled(&TEMPLATE.repeat(2), "A", &[]).is_err());
        assert!(filled(TEMPLATE, "A", &["a\"b".into()]).is_err());
    }
}
