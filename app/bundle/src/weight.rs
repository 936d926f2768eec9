//! What the page weighs on the wire.
use crate::names;
use crate::page::Page;
use flate2::{Compression, write::GzEncoder};
use std::fs;
use std::io::Write;
use std::path::Path;

/// The encodings that hosts use, as they are told and weighed.
const ENCODINGS: [Encoding; 2] = [
    Encoding { name: "gzip", level: "9", press: gzip, quick: true },
    Encoding { name: "brotli", level: "11", press: brotli, quick: false },
];

/// A way to press a file.
struct Encoding {
    name: &'static str,
    level: &'static str,
    press: fn(&[u8]) -> Option<usize>,
    /// Whether it is quick enough for a build on the way to a served page.
    quick: bool,
}

/// Prints what wasm, scripts, style and page weigh; with `slow`, in the encodings that take seconds as well.
/// Weights are kept by content in the folder `kept`.
pub fn report(page: &Page, kept: &Path, slow: bool) {
    let encodings: Vec<&Encoding> = ENCODINGS.iter().filter(|encoding| slow || encoding.quick).collect();
    let mut title = format!("{:<30} {:>10}", "bytes", "raw");
    for encoding in &encodings {
        title.push_str(&format!(" {:>10}", format!("{} {}", encoding.name, encoding.level)));
    }
    println!("{title}");
    let mut totals = vec![0_usize; encodings.len() + 1];
    for (name, bytes) in &page.files {
        let counted = [".wasm", ".js", ".css", ".html"].iter().any(|ending| name.ends_with(ending));
        if !counted {
            continue;
        }
        let weights: Vec<usize> = std::iter::once(bytes.len())
            .chain(encodings.iter().filter_map(|encoding| weigh(bytes, encoding, kept)))
            .collect();
        print_row(name, &weights);
        for (total, weight) in totals.iter_mut().zip(weights) {
            *total += weight;
        }
    }
    print_row("together", &totals);
}

fn print_row(name: &str, weights: &[usize]) {
    let columns: String = weights.iter().map(|weight| format!(" {weight:>10}")).collect();
    println!("{name:<30}{columns}");
}

/// The weight of a file, from what is kept or by pressing it now.
fn weigh(bytes: &[u8], encoding: &Encoding, kept: &Path) -> Option<usize> {
    let note = kept.join(format!("{}.{}-{}", names::sha256(bytes), encoding.name, encoding.level));
    if let Some(known) = fs::read_to_string(&note).ok().and_then(|text| text.parse().ok()) {
        return Some(known);
    }
    let weight = (encoding.press)(bytes)?;
    // A weight that is not kept is weighed again.
    let _ = fs::create_dir_all(kept).and_then(|()| fs::write(&note, weight.to_string()));
    Some(weight)
}

fn gzip(bytes: &[u8]) -> Option<usize> {
    let mut encoder = GzEncoder::new(Vec::new(), Compression::best());
    encoder.write_all(bytes).ok()?;
    Some(encoder.finish().ok()?.len())
}

fn brotli(bytes: &[u8]) -> Option<usize> {
    let parameters =
        brotli::enc::BrotliEncoderParams { quality: 11, lgwin: 24, size_hint: bytes.len(), ..Default::default() };
    let mut pressed = Vec::new();
    brotli::BrotliCompress(&mut &*bytes, &mut pressed, &parameters).ok()
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)]
    use super::*;
    use std::io::Read;

    #[test]
    fn what_was_weighed_unpacks_to_what_it_was() {
        let text = b"a vessel, a bed, a riser; ".repeat(200);
        let mut encoder = GzEncoder::new(Vec::new(), Compression::best());
        encoder.write_all(&text).unwrap();
        let pressed = encoder.finish().unwrap();
        assert_eq!(Some(pressed.len()), gzip(&text));
        let mut back = Vec::new();
        flate2::read::GzDecoder::new(&*pressed).read_to_end(&mut back).unwrap();
        assert_eq!(back, text);
        assert!(brotli(&text).unwrap() < text.len() / 10);
    }
}
