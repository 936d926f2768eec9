//! Files out to the person and in from them.

use js_sys::{Array, Promise, Uint8Array};
use wasm_bindgen::JsCast;
use wasm_bindgen_futures::JsFuture;
use web_sys::{
    Blob, BlobPropertyBag, Document, Event, File, FilePropertyBag, HtmlAnchorElement, HtmlElement, HtmlInputElement,
    Navigator, ShareData, Url,
};

use crate::{
    display,
    fault::{Fault, method, name_of},
    timer::Timer,
};

/// How long the browser may take to fetch a download from memory.
const KEEP_MS: i32 = 60_000;

const PICK_ID: &str = "bedwright-pick";

/// What became of sharing a file.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Shared {
    /// It was handed over.
    Done,
    /// The person closed the sheet: nothing to say.
    Cancelled,
    /// The tap was too long ago: ask for another.
    TapAgain,
    /// This browser shares no files, or not this kind.
    Unsupported,
    /// Something else: what the browser said.
    Failed(String),
}

/// Gives a file to the person as a download. Whether it arrives is not reported to a page.
///
/// In an app installed on an iPhone this opens a view without a way back: use [`share_file`] where
/// [`should_share`] says so.
///
/// # Errors
/// What the browser said.
pub fn download(name: &str, mime: &str, bytes: &[u8]) -> Result<(), Fault> {
    let document = document()?;
    let options = BlobPropertyBag::new();
    options.set_type(mime);
    let parts = Array::of1(&Uint8Array::from(bytes));
    let blob =
        Blob::new_with_u8_array_sequence_and_options(&parts, &options).map_err(|thrown| Fault::other(&thrown))?;
    let url = Url::create_object_url_with_blob(&blob).map_err(|thrown| Fault::other(&thrown))?;
    let outcome = follow(&document, &url, name);
    Timer::after(KEEP_MS, move || {
        let _ = Url::revoke_object_url(&url);
    })
    .forget();
    outcome
}

/// Whether a file should be shared rather than downloaded: in an app installed on an iPhone or iPad.
#[must_use]
pub fn should_share() -> bool {
    display::installed_on_ios()
}

/// Whether this browser says that it can share such a file.
#[must_use]
pub fn can_share_file(name: &str, mime: &str) -> bool {
    share_data(name, mime, &[]).is_some()
}

/// Opens the share sheet with one file. To be called within five seconds of a tap: make the bytes before.
pub async fn share_file(name: &str, mime: &str, bytes: &[u8]) -> Shared {
    let Some((navigator, data)) = share_data(name, mime, bytes) else {
        return Shared::Unsupported;
    };
    match JsFuture::from(navigator.share_with_data(&data)).await {
        Ok(_) => Shared::Done,
        Err(thrown) => match name_of(&thrown).as_deref() {
            Some("AbortError") => Shared::Cancelled,
            Some("NotAllowedError") => Shared::TapAgain,
            _ => match Fault::other(&thrown) {
                Fault::Other(said) => Shared::Failed(said),
                _ => Shared::Failed(String::new()),
            },
        },
    }
}

/// Lets the person choose one file, and reads it: its name and bytes; none when they chose none.
///
/// To be called from a tap. `accept` is the attribute of the same name (HTML Living Standard). Where a browser does not
/// report a closed dialog this resolves with none when the next choice is begun.
///
/// # Errors
/// [`Fault::TooLarge`] above `most_bytes`; what the browser said.
pub async fn pick_file(accept: &str, most_bytes: u64) -> Result<Option<(String, Vec<u8>)>, Fault> {
    let input = input_in_page(accept)?;
    let chosen = Promise::new(&mut |resolve, _| {
        input.set_onchange(Some(&resolve));
        input.set_oncancel(Some(&resolve));
    });
    input.click();
    let outcome = JsFuture::from(chosen).await;
    let file = input.files().and_then(|files| files.get(0));
    input.remove();
    outcome.map_err(|thrown| Fault::other(&thrown))?;
    match file {
        Some(file) => read_file(&file, most_bytes).await.map(Some),
        None => Ok(None),
    }
}

/// The name and bytes of a file that came in some other way, dropped or pasted.
///
/// # Errors
/// As [`pick_file`].
pub async fn read_file(file: &File, most_bytes: u64) -> Result<(String, Vec<u8>), Fault> {
    let bytes = file.size() as u64;
    if bytes > most_bytes {
        return Err(Fault::TooLarge { bytes });
    }
    let buffer = JsFuture::from(file.array_buffer()).await.map_err(|thrown| Fault::other(&thrown))?;
    Ok((file.name(), Uint8Array::new(&buffer).to_vec()))
}

fn document() -> Result<Document, Fault> {
    web_sys::window().and_then(|window| window.document()).ok_or(Fault::Blocked)
}

fn in_page(document: &Document, element: &HtmlElement) -> Result<(), Fault> {
    element.set_hidden(true);
    let body = document.body().ok_or(Fault::Blocked)?;
    body.append_child(element).map(drop).map_err(|thrown| Fault::other(&thrown))
}

fn follow(document: &Document, url: &str, name: &str) -> Result<(), Fault> {
    let anchor: HtmlAnchorElement =
        document.create_element("a").map_err(|thrown| Fault::other(&thrown))?.dyn_into().map_err(|_| Fault::Blocked)?;
    anchor.set_href(url);
    anchor.set_download(name);
    in_page(document, &anchor)?;
    anchor.click();
    anchor.remove();
    Ok(())
}

fn input_in_page(accept: &str) -> Result<HtmlInputElement, Fault> {
    let document = document()?;
    if let Some(earlier) = document.get_element_by_id(PICK_ID) {
        if let Ok(closed) = Event::new("cancel") {
            let _ = earlier.dispatch_event(&closed);
        }
        earlier.remove();
    }
    let input: HtmlInputElement = document
        .create_element("input")
        .map_err(|thrown| Fault::other(&thrown))?
        .dyn_into()
        .map_err(|_| Fault::Blocked)?;
    input.set_type("file");
    input.set_accept(accept);
    input.set_id(PICK_ID);
    // Some browsers open the dialog only for an input that is in the page.
    in_page(&document, &input)?;
    Ok(input)
}

/// What would be shared; none where the browser says it cannot.
fn share_data(name: &str, mime: &str, bytes: &[u8]) -> Option<(Navigator, ShareData)> {
    let navigator = web_sys::window()?.navigator();
    method(&navigator, "canShare")?;
    method(&navigator, "share")?;
    let options = FilePropertyBag::new();
    options.set_type(mime);
    let parts = Array::of1(&Uint8Array::from(bytes));
    let file = File::new_with_u8_array_sequence_and_options(&parts, name, &options).ok()?;
    let data = ShareData::new();
    data.set_files(&Array::of1(&file));
    navigator.can_share_with_data(&data).then_some((navigator, data))
}
