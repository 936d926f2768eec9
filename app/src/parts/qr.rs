//! A QR code, black on white whatever the theme.

use bedwright_job::drawing::QrPicture;

use super::live::{El, svg};

/// The code as a drawing; its name says what it is to who can't see it.
pub fn qr(code: &QrPicture, name: &str) -> El {
    let across = code.across.to_string();
    svg("svg", "qr")
        .set("role", "img")
        .set("aria-label", name)
        .set("viewBox", &["0 0 ", &across, " ", &across].concat())
        .set("shape-rendering", "crispEdges")
        .kid(svg("rect", "").set("width", &across).set("height", &across).set("fill", "#fff"))
        .kid(svg("path", "").set("d", &code.path).set("fill", "#000"))
}
