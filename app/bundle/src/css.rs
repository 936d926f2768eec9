//! The screens' style sheets joined into one.
use crate::{Outcome, at};
use std::fs;
use std::path::{Path, PathBuf};

/// One sheet: what loads before the page (`notice`), then the page as a whole (`app/src/*.css`), its parts
/// (`app/src/parts/`), and every screen by name. Later sheets may count on earlier ones, never the other way round.
pub fn joined(notice: &Path, source: &Path) -> Outcome<String> {
    let mut sheets = Vec::new();
    collect(source, source, &mut sheets)?;
    sheets.sort_by_key(|sheet| order(sheet));
    let mut all = String::new();
    for file in std::iter::once(notice.to_path_buf()).chain(sheets.into_iter().map(|sheet| source.join(sheet))) {
        let text = fs::read_to_string(&file).map_err(at("read", &file))?;
        if text.contains("@import") {
            return Err(format!(
                "{}: an @import inside a joined sheet is ignored by browsers; put the rules here",
                file.display()
            ));
        }
        all.push_str(text.trim());
        all.push('\n');
    }
    Ok(all)
}

/// The page as a whole, then `parts`, then the rest; each by path.
fn order(sheet: &Path) -> (u8, PathBuf) {
    let rank = match sheet.parent() {
        Some(folder) if folder.as_os_str().is_empty() => 0,
        Some(folder) if folder.starts_with("parts") => 1,
        _ => 2,
    };
    (rank, sheet.to_path_buf())
}

/// Every style sheet under `folder`, relative to `source`.
fn collect(source: &Path, folder: &Path, sheets: &mut Vec<PathBuf>) -> Outcome<()> {
    for entry in fs::read_dir(folder).map_err(at("read", folder))? {
        let path = entry.map_err(at("read", folder))?.path();
        if path.is_dir() {
            collect(source, &path, sheets)?;
        } else if path.extension().is_some_and(|kind| kind == "css") {
            sheets.push(path.strip_prefix(source).unwrap_or(&path).to_path_buf());
        }
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use super::*;

    #[test]
    fn the_whole_page_comes_before_its_parts_and_parts_before_screens() {
        let mut sheets =
            ["vessel/a.css", "parts/table.css", "bill/z.css", "page.css", "parts/entry.css"].map(PathBuf::from);
        sheets.sort_by_key(|sheet| order(sheet));
        let expected =
            ["page.css", "parts/entry.css", "parts/table.css", "bill/z.css", "vessel/a.css"].map(PathBuf::from);
        assert_eq!(sheets, expected);
    }

    #[test]
    fn sheets_are_joined_from_every_depth_and_imports_refused() {
        let folder = std::env::temp_dir().join(format!("bedwright-css-{}", std::process::id()));
        fs::create_dir_all(folder.join("src/jobs")).unwrap();
        fs::write(folder.join("notice.css"), "p{}").unwrap();
        fs::write(folder.join("src/page.css"), "a{}\n\n").unwrap();
        fs::write(folder.join("src/jobs/list.css"), "b{}").unwrap();
        fs::write(folder.join("src/jobs/page.rs"), "not a sheet").unwrap();
        let all = joined(&folder.join("notice.css"), &folder.join("src")).unwrap();
        assert_eq!(all, "p{}\na{}\nb{}\n");
        fs::write(folder.join("src/page.css"), "@import 'x.css';").unwrap();
        assert!(joined(&folder.join("notice.css"), &folder.join("src")).is_err());
        fs::remove_dir_all(folder).unwrap();
    }
}
