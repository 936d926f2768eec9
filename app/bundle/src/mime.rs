//! The media type of a file, by its name's ending.

/// As registered with IANA; script as RFC 9239 says, wasm as the WebAssembly Web API requires for streaming.
/// Anything unknown is plain bytes, which `nosniff` keeps a browser from running.
pub fn of(name: &str) -> &'static str {
    let ending = name.rsplit_once('.').map_or("", |(_, ending)| ending);
    match ending.to_ascii_lowercase().as_str() {
        "html" => "text/html; charset=utf-8",
        "css" => "text/css; charset=utf-8",
        "js" | "mjs" => "text/javascript; charset=utf-8",
        "wasm" => "application/wasm",
        "json" => "application/json",
        "webmanifest" => "application/manifest+json",
        "svg" => "image/svg+xml",
        "png" => "image/png",
        "ico" => "image/vnd.microsoft.icon",
        "csv" => "text/csv; charset=utf-8",
        "txt" => "text/plain; charset=utf-8",
        _ => "application/octet-stream",
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    // IANA media types registry; RFC 9239 (text/javascript); W3C WebAssembly Web API (application/wasm);
    // W3C Web Application Manifest (application/manifest+json).
    #[test]
    fn each_kind_of_file_has_its_registered_type() {
        for (name, kind) in [
            ("app-1.wasm", "application/wasm"),
            ("boot.js", "text/javascript; charset=utf-8"),
            ("manifest.webmanifest", "application/manifest+json"),
            ("index.html", "text/html; charset=utf-8"),
            ("app.CSS", "text/css; charset=utf-8"),
            ("icon.svg", "image/svg+xml"),
            ("icon.png", "image/png"),
            ("job.schema.json", "application/json"),
            ("none", "application/octet-stream"),
            ("a.exe", "application/octet-stream"),
        ] {
            assert_eq!(of(name), kind, "{name}");
        }
    }
}
