//! A drawing as a file: as SVG, and as PNG drawn from it.

use bedwright_edge::{files, picture};
use bedwright_job::drawing::{Drawing, svg_text};
use bedwright_job::words::DrawingLabel;

use super::live::{El, Shared, button, el};
use super::signal::Held;
use crate::desk::Desk;

/// So many times larger than on a screen is the PNG: fine enough for a sheet of paper.
const TIMES: f64 = 3.0;

/// A drawing, and what its file is called without what follows the dot.
pub type Filed = (String, Drawing);

/// Two buttons that save a drawing; it is made when one is pressed. `of` says whose it is where there are several.
pub fn drawing_file(desk: Desk, of: &str, filed: Shared<Option<Filed>>) -> El {
    let failed = Held::new(false);
    let made = filed.clone();
    let svg = move || {
        let Some((name, drawing)) = made() else { return };
        give([&name, ".svg"].concat(), "image/svg+xml", svg_text(&drawing).into_bytes());
    };
    let png = move || {
        let Some((name, drawing)) = filed() else { return };
        failed.set(false);
        let text = svg_text(&drawing);
        wasm_bindgen_futures::spawn_local(async move {
            match picture::png_of_svg(&text, (drawing.width, drawing.height), TIMES).await {
                Ok(bytes) => give([&name, ".png"].concat(), "image/png", bytes),
                // The screen may have been left meanwhile.
                Err(_) if failed.is_gone() => {}
                Err(_) => failed.set(true),
            }
        });
    };
    let named = |label: DrawingLabel| match of {
        "" => desk.label(label).to_owned(),
        of => [desk.label(label), ", ", of].concat(),
    };
    el("div", "drawing-file")
        .kid(button("quiet", &named(DrawingLabel::AsSvg), svg))
        .kid(button("quiet", &named(DrawingLabel::AsPng), png))
        .kid(el("p", "entry-message").set("role", "alert").says(move || {
            let said = if failed.get() { desk.label(DrawingLabel::Failed) } else { "" };
            said.to_owned()
        }))
}

/// Hands a file to the person: shared where the device does it that way, else downloaded.
fn give(name: String, mime: &'static str, bytes: Vec<u8>) {
    wasm_bindgen_futures::spawn_local(async move {
        if files::should_share() && files::can_share_file(&name, mime) {
            files::share_file(&name, mime, &bytes).await;
        } else {
            // A browser that refuses says so itself.
            let _ = files::download(&name, mime, &bytes);
        }
    });
}
