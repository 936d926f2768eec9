//! Photos: made small in the browser, kept in a database of their own, never sent anywhere.
//!
//! A picture is drawn anew on a canvas and written as a JPEG, which also leaves out what the camera wrote beside it (place,
//! time, device). It is kept as a data address (RFC 2397) in a journal of another name, so that texts never wait for it.

use js_sys::Uint8Array;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::{Blob, ImageBitmap};

use crate::canvas::canvas;
use crate::fault::Fault;
use crate::files::pick_file;
use crate::journal::Journal;

const DATABASE: &str = "bedwright-photos";
/// What a camera writes at most.
const MOST_BYTES: u64 = 60 * 1024 * 1024;
/// What is kept at most, as text.
const MOST_KEPT: usize = 400_000;
/// Tried one after the other until it is small enough: the longer side in pixels, the quality.
const STEPS: [(f64, f64); 4] = [(1600.0, 0.8), (1280.0, 0.7), (960.0, 0.6), (640.0, 0.5)];

/// Why a chosen file wasn't kept.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum NotKept {
    /// It is no picture that this browser reads.
    NoPicture,
    /// It is larger than any camera writes.
    TooLarge,
    /// The browser would not: what it said.
    Fault(Fault),
}

impl From<Fault> for NotKept {
    fn from(fault: Fault) -> NotKept {
        match fault {
            Fault::TooLarge { .. } => NotKept::TooLarge,
            other => NotKept::Fault(other),
        }
    }
}

/// Lets the person take or choose a picture and keeps it small under a name: how many bytes, none when they chose none.
///
/// # Errors
/// Why it wasn't kept.
pub async fn take(name: &str) -> Result<Option<u32>, NotKept> {
    let Some((_, bytes)) = pick_file("image/*", MOST_BYTES).await? else { return Ok(None) };
    let text = small(&bytes).await?;
    let kept = u32::try_from(text.len()).map_err(|_| Fault::TooLarge { bytes: text.len() as u64 })?;
    Journal::open_named(DATABASE).await?.put(name, &text).await?;
    Ok(Some(kept))
}

/// The picture of a name as an address that an image element takes; none where it isn't on this device.
///
/// # Errors
/// What the browser said.
pub async fn address(name: &str) -> Result<Option<String>, Fault> {
    Journal::open_named(DATABASE).await?.get(name).await
}

/// Every picture there is, as addresses by their names.
///
/// # Errors
/// What the browser said.
pub async fn all() -> Result<Vec<(String, String)>, Fault> {
    Journal::open_named(DATABASE).await?.all("").await
}

/// Keeps a picture that came as an address; one of its name that is there already stays.
///
/// # Errors
/// What the browser said, or that it has no room.
pub async fn keep(name: &str, address: &str) -> Result<(), Fault> {
    Journal::open_named(DATABASE).await?.put_new(name, address).await.map(drop)
}

/// Takes a picture away.
///
/// # Errors
/// What the browser said.
pub async fn remove(name: &str) -> Result<(), Fault> {
    Journal::open_named(DATABASE).await?.remove(name).await
}

/// The picture drawn anew, as small as it must be.
async fn small(bytes: &[u8]) -> Result<String, NotKept> {
    let window = web_sys::window().ok_or(Fault::Blocked)?;
    let parts = js_sys::Array::of1(&Uint8Array::from(bytes));
    let blob = Blob::new_with_u8_array_sequence(&parts).map_err(|thrown| Fault::other(&thrown))?;
    let drawn = window.create_image_bitmap_with_blob(&blob).map_err(|thrown| Fault::other(&thrown))?;
    let drawn = JsFuture::from(drawn).await.map_err(|_| NotKept::NoPicture)?;
    let picture: ImageBitmap = drawn.dyn_into().map_err(|thrown: JsValue| Fault::other(&thrown))?;
    let (wide, high) = (f64::from(picture.width()), f64::from(picture.height()));
    let mut text = String::new();
    for (longest, quality) in STEPS {
        let scale = (longest / wide.max(high)).min(1.0);
        text = jpeg(&picture, (wide * scale).max(1.0), (high * scale).max(1.0), quality)?;
        if text.len() <= MOST_KEPT {
            break;
        }
    }
    picture.close();
    if text.len() > MOST_KEPT { Err(NotKept::TooLarge) } else { Ok(text) }
}

fn jpeg(picture: &ImageBitmap, wide: f64, high: f64, quality: f64) -> Result<String, Fault> {
    let (canvas, context) = canvas(wide as u32, high as u32)?;
    // What lets the ground through would come out black.
    context.set_fill_style_str("#fff");
    context.fill_rect(0.0, 0.0, wide, high);
    context
        .draw_image_with_image_bitmap_and_dw_and_dh(picture, 0.0, 0.0, wide.floor(), high.floor())
        .map_err(|thrown| Fault::other(&thrown))?;
    let text = canvas
        .to_data_url_with_type_and_encoder_options("image/jpeg", &JsValue::from_f64(quality))
        .map_err(|thrown| Fault::other(&thrown))?;
    // A browser that can't write JPEG writes PNG, which would be many times larger.
    if text.starts_with("data:image/jpeg") { Ok(text) } else { Err(Fault::Blocked) }
}
