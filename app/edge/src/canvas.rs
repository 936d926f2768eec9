//! A canvas in memory, to draw pictures anew.

use wasm_bindgen::JsCast;
use web_sys::{CanvasRenderingContext2d, HtmlCanvasElement};

use crate::fault::Fault;

/// A canvas of some size in pixels, and what draws on it.
///
/// # Errors
/// What the browser said; [`Fault::Blocked`] where it has none.
pub(crate) fn canvas(wide: u32, high: u32) -> Result<(HtmlCanvasElement, CanvasRenderingContext2d), Fault> {
    let document = web_sys::window().and_then(|window| window.document()).ok_or(Fault::Blocked)?;
    let canvas: HtmlCanvasElement = document
        .create_element("canvas")
        .map_err(|thrown| Fault::other(&thrown))?
        .dyn_into()
        .map_err(|_| Fault::Blocked)?;
    canvas.set_width(wide);
    canvas.set_height(high);
    let context: CanvasRenderingContext2d = canvas
        .get_context("2d")
        .map_err(|thrown| Fault::other(&thrown))?
        .and_then(|context| context.dyn_into().ok())
        .ok_or(Fault::Blocked)?;
    Ok((canvas, context))
}
