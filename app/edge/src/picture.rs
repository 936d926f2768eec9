//! Pictures drawn from an SVG, as PNG.

use js_sys::{Array, Promise, Uint8Array};
use wasm_bindgen::closure::Closure;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::{Blob, BlobPropertyBag, HtmlImageElement, Url};

use crate::canvas::canvas;
use crate::fault::Fault;

/// Browsers refuse larger canvases (WebKit: 16 777 216 pixels).
const MOST_PIXELS: f64 = 16_000_000.0;

/// An SVG of some size as a PNG, so many times larger, on white.
///
/// The SVG is shown from memory: the page's policy allows pictures of that origin and no other.
///
/// # Errors
/// What the browser said, or that it made no PNG.
pub async fn png_of_svg(svg: &str, (width, height): (f64, f64), times: f64) -> Result<Vec<u8>, Fault> {
    let options = BlobPropertyBag::new();
    options.set_type("image/svg+xml");
    let parts = Array::of1(&JsValue::from_str(svg));
    let blob = Blob::new_with_str_sequence_and_options(&parts, &options).map_err(|thrown| Fault::other(&thrown))?;
    let url = Url::create_object_url_with_blob(&blob).map_err(|thrown| Fault::other(&thrown))?;
    let made = drawn(&url, (width, height), times).await;
    let _ = Url::revoke_object_url(&url);
    made
}

async fn drawn(url: &str, (width, height): (f64, f64), times: f64) -> Result<Vec<u8>, Fault> {
    let image = HtmlImageElement::new().map_err(|thrown| Fault::other(&thrown))?;
    image.set_src(url);
    JsFuture::from(image.decode()).await.map_err(|thrown| Fault::other(&thrown))?;
    let times = times.min((MOST_PIXELS / (width * height).max(1.0)).sqrt());
    let (wide, high) = ((width * times).round().max(1.0), (height * times).round().max(1.0));
    let (canvas, context) = canvas(wide as u32, high as u32)?;
    context.set_fill_style_str("#fff");
    context.fill_rect(0.0, 0.0, wide, high);
    context
        .draw_image_with_html_image_element_and_dw_and_dh(&image, 0.0, 0.0, wide, high)
        .map_err(|thrown| Fault::other(&thrown))?;
    let written = Promise::new(&mut |resolve, reject| {
        let done = Closure::once_into_js(move |blob: JsValue| resolve.call1(&JsValue::NULL, &blob));
        if let Err(thrown) = canvas.to_blob_with_type(done.unchecked_ref(), "image/png") {
            let _ = reject.call1(&JsValue::NULL, &thrown);
        }
    });
    let written = JsFuture::from(written).await.map_err(|thrown| Fault::other(&thrown))?;
    let blob: Blob = written.dyn_into().map_err(|_| Fault::Blocked)?;
    let bytes = JsFuture::from(blob.array_buffer()).await.map_err(|thrown| Fault::other(&thrown))?;
    Ok(Uint8Array::new(&bytes).to_vec())
}
