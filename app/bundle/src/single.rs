//! The whole page as one file that opens from disk: for a stick, or as an attachment.
//!
//! Nothing is fetched and nobody looks after it: no worker, no manifest. Scripts and style stand in the file and run because
//! the policy names their hashes (Content Security Policy Level 3, 2.3.1); what isn't text is packed (`public/inside.js` takes
//! it out). Of the same build: the wasm deflated and in base64 is 1.2 MB of text, in base64 alone 2.8 MB.
use crate::bind::Bound;
use crate::page::{filled, text_of};
use crate::{Outcome, at, css, lean, names};
use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use bedwright_job::words::Language;
use bedwright_job::words::language::packed;
use flate2::{Compression, write::DeflateEncoder};
use std::fs;
use std::io::Write;
use std::path::{Path, PathBuf};

/// What it is called where nobody says.
const NAME: &str = "bedwright.html";
/// By this the bound script hands out what starts the page.
const START: &str = "__wbg_init as default";
/// By this the worker of codes takes its reader in, where it is a file of its own.
const READER: &str = "import start, { codes_in } from \"./{{reader_script}}\";";

/// The page in one file.
pub struct Single {
    /// The build's id.
    pub build: String,
    /// All of it.
    pub html: String,
}

/// Puts the page together as one file from the repository at `root`, the bound wasm, and the reader of codes where there is
/// one.
pub fn assemble(root: &Path, bound: &Bound, reader: Option<&Bound>, label: Option<&str>) -> Outcome<Single> {
    let public = root.join("public");
    let lean_script = |name: &str| text_of(&public.join(name)).map(|text| lean::script(&text));
    let mut inside = vec![
        ("app", bound.wasm.clone()),
        ("texts-es", packed(Language::Spanish).into_bytes()),
        ("texts-fr", packed(Language::French).into_bytes()),
    ];
    if let Some(reader) = reader {
        let worker = text_of(&public.join("codes.js"))?;
        let worker = [&classic(&module(reader)?), "\n", &with_reader(&worker)?].concat();
        inside.push(("codes", lean::script(&worker).into_bytes()));
        inside.push(("reader", reader.wasm.clone()));
    }
    let style = lean::style(&css::joined(&public.join("notice.css"), &root.join("app/src"))?);
    let script = lean::script(&[&module(bound)?, "\nwindow.bedwrightInside.start = __wbg_init;\n"].concat());
    let [sentences, crash] = [lean_script("sentences.js")?, lean_script("crash.js")?];
    let [taking_out, boot] = [lean_script("inside.js")?, lean_script("boot.js")?];
    let icon = fs::read(public.join("icons/icon.svg")).map_err(at("read", &public))?;
    let template = text_of(&public.join("single.html"))?;

    let scripts = [&sentences, &crash, &taking_out, &script, &boot];
    for text in scripts.into_iter().chain([&style]) {
        stands_inside(text)?;
    }
    let policy = policy(&scripts.map(|script| hash(script)), &hash(&style));
    let texts = [&template, &style, &sentences, &crash, &taking_out, &script, &boot].map(|text| ("", text.as_bytes()));
    let packed_parts = inside.iter().map(|(name, bytes)| (*name, bytes.as_slice()));
    let build = names::build_id(label, texts.into_iter().chain(packed_parts));
    let packed = inside.iter().map(|(name, bytes)| element(name, bytes)).collect::<Outcome<Vec<_>>>()?.join("\n");
    let html = filled(
        &template,
        &[
            ("{{policy}}", &policy),
            ("{{build}}", &build),
            ("{{icon}}", &STANDARD.encode(icon)),
            ("{{style}}", &style),
            ("{{packed}}", &packed),
            ("{{sentences}}", &sentences),
            ("{{crash}}", &crash),
            ("{{inside}}", &taking_out),
            ("{{script}}", &script),
            ("{{boot}}", &boot),
        ],
    )?;
    Ok(Single { build, html })
}

/// Writes it: into a folder that is there under its usual name, else as the file that is named.
pub fn write(single: &Single, out: &Path) -> Outcome<PathBuf> {
    let file = if out.is_dir() { out.join(NAME) } else { out.to_path_buf() };
    if let Some(folder) = file.parent() {
        fs::create_dir_all(folder).map_err(at("make", folder))?;
    }
    // Whole or not at all.
    let part = file.with_extension("part");
    fs::write(&part, &single.html).map_err(at("write", &part))?;
    fs::rename(&part, &file).map_err(at("write", &file))?;
    Ok(file)
}

/// Nothing but what stands in the file may run, and nothing may be asked of anybody.
fn policy(scripts: &[String], style: &str) -> String {
    format!(
        "default-src 'none'; script-src {} 'wasm-unsafe-eval'; style-src {style}; img-src data: blob:; media-src blob:; \
         connect-src blob:; worker-src blob:; object-src 'none'; base-uri 'none'; form-action 'none'",
        scripts.join(" ")
    )
}

/// A hash as a policy names it.
fn hash(text: &str) -> String {
    format!("'sha256-{}'", STANDARD.encode(names::digest(text.as_bytes())))
}

/// The bound script, which must be all there is to it.
fn module(bound: &Bound) -> Outcome<String> {
    match bound.snippets.first() {
        Some((name, _)) => Err(format!("the script needs {name}, which can't stand in a single file")),
        None if bound.script.contains(START) => Ok(bound.script.clone()),
        None => Err(format!("the bound script does not hand out {START}")),
    }
}

/// A module as a script: a browser gives no worker made of a module to a page from disk.
fn classic(module: &str) -> String {
    let lines = module.lines().filter(|line| !line.starts_with("export {"));
    let lines: Vec<&str> = lines.map(|line| line.strip_prefix("export ").unwrap_or(line)).collect();
    lines.join("\n").replace("import.meta.url", "self.location.href")
}

/// The worker of codes with its reader in it instead of beside it; `public/inside.js` puts the packed wasm in for the mark. A
/// worker of a page from disk may fetch nothing, not even from the browser's own memory.
fn with_reader(worker: &str) -> Outcome<String> {
    let packed = "Uint8Array.from(atob(\"{{reader}}\"), (letter) => letter.charCodeAt(0))";
    let unpacked = format!("new Blob([{packed}]).stream().pipeThrough(new DecompressionStream(\"deflate-raw\"))");
    let response = format!("new Response({unpacked}, {{ headers: {{ \"Content-Type\": \"application/wasm\" }} }})");
    if worker.contains(READER) {
        Ok(worker.replace(READER, &format!("const start = () => __wbg_init({{ module_or_path: {response} }});")))
    } else {
        Err(format!("public/codes.js does not begin with {READER}"))
    }
}

/// A text between tags ends where the reader of the file thinks it does (HTML Living Standard, 13.2.5): refused where that
/// isn't its end, or where the reader would change a letter and with it the hash.
fn stands_inside(text: &str) -> Outcome<()> {
    let small = text.to_ascii_lowercase();
    match ["</script", "</style", "<script", "<!--", "\r", "\0"].into_iter().find(|bad| small.contains(bad)) {
        Some(bad) => Err(format!("a script or sheet holds {bad:?} and can't stand in a single file")),
        None => Ok(()),
    }
}

/// A part, packed.
fn element(name: &str, bytes: &[u8]) -> Outcome<String> {
    let mut encoder = DeflateEncoder::new(Vec::new(), Compression::best());
    let packed =
        encoder.write_all(bytes).and_then(|()| encoder.finish()).map_err(|error| format!("{name}: {error}"))?;
    let text = STANDARD.encode(packed);
    Ok(format!("<script type=\"application/octet-stream\" id=\"bedwright-inside-{name}\">{text}</script>"))
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used, clippy::indexing_slicing)]
    use super::*;
    use crate::bind;
    use std::io::Read;

    fn bound(wasm: &[u8]) -> Bound {
        let script = format!("export function codes_in() {{}}\nfetch('{}')\nexport {{ {START} }};\n", bind::WASM_NAME);
        Bound { wasm: wasm.to_vec(), script, snippets: Vec::new() }
    }

    fn made() -> Single {
        assemble(&crate::workspace(), &bound(b"\0asm"), Some(&bound(b"\0asm r")), Some("A")).unwrap()
    }

    /// What stands between a start tag and its end, for each of them.
    fn between<'a>(html: &'a str, tag: &str, end: &str) -> Vec<&'a str> {
        html.split(tag).skip(1).map(|rest| rest.split(end).next().unwrap()).collect()
    }

    #[test]
    fn every_script_and_sheet_runs_by_its_hash_and_by_nothing_else() {
        let html = made().html;
        let policy = between(&html, "Content-Security-Policy\" content=\"", "\"")[0];
        let scripts =
            [between(&html, "<script>", "</script>"), between(&html, "<script type=\"module\">", "</script>")].concat();
        assert_eq!(scripts.len(), 5);
        let styles = between(&html, "<style>", "</style>");
        assert_eq!(styles.len(), 1);
        for text in scripts.iter().chain(&styles) {
            assert!(policy.contains(&hash(text)), "{} is not in {policy}", hash(text));
        }
        assert_eq!(policy.matches("'sha256-").count(), 6);
        for open in ["unsafe-inline", "'unsafe-eval'", "unsafe-hashes", "'self'", "http", "*", "strict-dynamic"] {
            assert!(!policy.contains(open), "{open}");
        }
    }

    // The digest of the empty text in base64, as CSP Level 3 and SRI print it.
    #[test]
    fn a_hash_is_written_as_a_policy_reads_it() {
        assert_eq!(hash(""), "'sha256-47DEQpj8HBSa+/TImW+5JCeuQeRkm5NMpJWZG3hSuFU='");
    }

    #[test]
    fn nothing_is_named_that_would_have_to_be_fetched() {
        let html = made().html;
        for address in
            [" src=", "href=\"./", "href=\"/", "rel=\"manifest\"", "rel=\"preload\"", "rel=\"modulepreload\""]
        {
            assert!(!html.contains(address), "{address}");
        }
        for address in html.split("href=\"").skip(1) {
            assert!(address.starts_with("data:image/svg+xml;base64,"));
        }
    }

    #[test]
    fn what_is_packed_unpacks_to_what_it_was() {
        let html = made().html;
        for (name, bytes) in [
            ("app", b"\0asm".to_vec()),
            ("reader", b"\0asm r".to_vec()),
            ("texts-es", packed(Language::Spanish).into_bytes()),
            ("texts-fr", packed(Language::French).into_bytes()),
        ] {
            let element = between(&html, &format!("id=\"bedwright-inside-{name}\">"), "</script>")[0];
            let mut back = Vec::new();
            let deflated = STANDARD.decode(element).unwrap();
            flate2::read::DeflateDecoder::new(&*deflated).read_to_end(&mut back).unwrap();
            assert_eq!(back, bytes, "{name}");
        }
    }

    #[test]
    fn a_module_becomes_a_script_of_the_same_functions() {
        let module =
            "let wasm;\nexport function codes_in() {}\nnew URL('a', import.meta.url);\nexport { a, b as default };\n";
        assert_eq!(classic(module), "let wasm;\nfunction codes_in() {}\nnew URL('a', self.location.href);");
    }

    #[test]
    fn it_says_of_itself_what_the_page_on_a_host_does() {
        let index = fs::read_to_string(crate::workspace().join("index.html")).unwrap();
        let html = made().html;
        let of_a_host = ["apple-mobile", "mobile-web-app", "bedwright-", "Content-Security-Policy"];
        for meta in index.lines().filter(|line| line.starts_with("<meta")) {
            if !of_a_host.iter().any(|name| meta.contains(name)) {
                assert!(html.contains(meta), "{meta}");
            }
        }
        for name in between(&index, "<meta name=\"bedwright-", "\"") {
            assert!(html.contains(&format!("<meta name=\"bedwright-{name}\"")), "{name}");
        }
    }

    #[test]
    fn a_text_that_would_end_too_early_is_refused() {
        for bad in ["a </SCRIPT> b", "a <!-- b", "a\r\nb", "a </style"] {
            assert!(stands_inside(bad).is_err(), "{bad}");
        }
        assert!(stands_inside("if (a < b) {}\n").is_ok());
        let mut with_file = bound(b"\0asm");
        with_file.snippets.push(("snippets/a.js".into(), Vec::new()));
        assert!(assemble(&crate::workspace(), &with_file, None, None).is_err());
    }

    #[test]
    fn it_is_written_under_its_own_name_or_a_given_one() {
        let folder = std::env::temp_dir().join(format!("bedwright-single-{}", std::process::id()));
        fs::create_dir_all(&folder).unwrap();
        let single = Single { build: "A".into(), html: "<p>".into() };
        assert_eq!(write(&single, &folder).unwrap(), folder.join(NAME));
        let named = folder.join("new").join("page.html");
        assert_eq!(write(&single, &named).unwrap(), named);
        assert_eq!(fs::read_to_string(named).unwrap(), "<p>");
        fs::remove_dir_all(folder).unwrap();
    }
}
