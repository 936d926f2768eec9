//! The camera, for as long as its picture is looked at; and pictures that somebody chose.

use js_sys::{Object, Reflect, Uint8Array};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::{
    Blob, CanvasRenderingContext2d, HtmlCanvasElement, HtmlVideoElement, ImageBitmap, ImageData, MediaStream,
    MediaStreamConstraints, MediaStreamTrack,
};

use crate::Fault;
use crate::fault::{name_of, property};
use crate::files::pick_file;

/// What a camera writes at most.
const MOST_BYTES: u64 = 60 * 1024 * 1024;

/// Why there is no picture.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NoCamera {
    /// The person or the browser refused.
    Refused,
    /// There is none, or not for a page like this (plain http).
    None,
}

/// A camera that is on. It is turned off when this is dropped.
pub struct Camera {
    stream: MediaStream,
    video: HtmlVideoElement,
    canvas: HtmlCanvasElement,
}

impl Camera {
    /// Asks for the camera that looks away from the person, and shows its picture in an element of the page. To be called
    /// from a tap.
    ///
    /// # Errors
    /// [`NoCamera`].
    pub async fn open(video: &HtmlVideoElement) -> Result<Camera, NoCamera> {
        let window = web_sys::window().ok_or(NoCamera::None)?;
        // Not there at all on a page that came without encryption.
        property(&window.navigator(), "mediaDevices").ok_or(NoCamera::None)?;
        let devices = window.navigator().media_devices().map_err(|_| NoCamera::None)?;
        let wanted = Object::new();
        for (key, ideal) in [("facingMode", JsValue::from_str("environment")), ("width", JsValue::from_f64(1280.0))] {
            let choice = Object::new();
            // Fails only for an object that is frozen.
            let _ = Reflect::set(&choice, &JsValue::from_str("ideal"), &ideal);
            let _ = Reflect::set(&wanted, &JsValue::from_str(key), &choice);
        }
        let constraints = MediaStreamConstraints::new();
        constraints.set_video(&wanted);
        let asked = devices.get_user_media_with_constraints(&constraints).map_err(|_| NoCamera::None)?;
        let stream = JsFuture::from(asked).await.map_err(|thrown| match name_of(&thrown).as_deref() {
            Some("NotAllowedError" | "SecurityError") => NoCamera::Refused,
            _ => NoCamera::None,
        })?;
        let stream: MediaStream = stream.unchecked_into();
        let canvas = canvas().ok_or(NoCamera::None)?;
        let camera = Camera { stream, video: video.clone(), canvas };
        video.set_src_object(Some(&camera.stream));
        if let Ok(playing) = video.play() {
            // Refused where the person turned playing off: the first picture stands all the same.
            let _ = JsFuture::from(playing).await;
        }
        Ok(camera)
    }

    /// The picture as it is now, its longer side no longer than this; none before the first.
    #[must_use]
    pub fn picture(&self, longest: u32) -> Option<ImageData> {
        let (wide, high) = (self.video.video_width(), self.video.video_height());
        let (width, height) = within(wide, high, longest)?;
        let context = sized(&self.canvas, width, height)?;
        let drawn = context.draw_image_with_html_video_element_and_dw_and_dh(
            &self.video,
            0.0,
            0.0,
            f64::from(width),
            f64::from(height),
        );
        drawn.ok()?;
        context.get_image_data(0.0, 0.0, f64::from(width), f64::from(height)).ok()
    }
}

impl Drop for Camera {
    fn drop(&mut self) {
        self.video.set_src_object(None);
        for track in self.stream.get_tracks().iter() {
            track.unchecked_into::<MediaStreamTrack>().stop();
        }
    }
}

/// Lets the person take or choose a picture: the same picture in several sizes, since a code that is too small in one is
/// too blurred in another. None when they chose none.
///
/// # Errors
/// What the browser said where it can't read it.
pub async fn chosen_picture(sizes: &[u32]) -> Result<Option<Vec<ImageData>>, Fault> {
    let Some((_, bytes)) = pick_file("image/*", MOST_BYTES).await? else { return Ok(None) };
    let window = web_sys::window().ok_or(Fault::Blocked)?;
    let parts = js_sys::Array::of1(&Uint8Array::from(bytes.as_slice()));
    let blob = Blob::new_with_u8_array_sequence(&parts).map_err(|thrown| Fault::other(&thrown))?;
    let drawn = window.create_image_bitmap_with_blob(&blob).map_err(|thrown| Fault::other(&thrown))?;
    let drawn = JsFuture::from(drawn).await.map_err(|thrown| Fault::other(&thrown))?;
    let picture: ImageBitmap = drawn.dyn_into().map_err(|thrown: JsValue| Fault::other(&thrown))?;
    let mut all = Vec::new();
    for &longest in sizes {
        let canvas = canvas().ok_or(Fault::Blocked)?;
        let Some((width, height)) = within(picture.width(), picture.height(), longest) else { continue };
        let Some(context) = sized(&canvas, width, height) else { continue };
        let (wide, high) = (f64::from(width), f64::from(height));
        let drawn = context.draw_image_with_image_bitmap_and_dw_and_dh(&picture, 0.0, 0.0, wide, high);
        drawn.map_err(|thrown| Fault::other(&thrown))?;
        all.extend(context.get_image_data(0.0, 0.0, f64::from(width), f64::from(height)));
    }
    picture.close();
    Ok(Some(all))
}

fn canvas() -> Option<HtmlCanvasElement> {
    web_sys::window()?.document()?.create_element("canvas").ok()?.dyn_into().ok()
}

/// A size no longer than this; none where there is nothing.
fn within(wide: u32, high: u32, longest: u32) -> Option<(u32, u32)> {
    let most = wide.max(high);
    if wide == 0 || high == 0 {
        return None;
    }
    let scale = f64::from(longest.min(most)) / f64::from(most);
    Some((((f64::from(wide) * scale) as u32).max(1), ((f64::from(high) * scale) as u32).max(1)))
}

fn sized(canvas: &HtmlCanvasElement, width: u32, height: u32) -> Option<CanvasRenderingContext2d> {
    if canvas.width() != width || canvas.height() != height {
        canvas.set_width(width);
        canvas.set_height(height);
    }
    canvas.get_context("2d").ok()??.dyn_into().ok()
}
