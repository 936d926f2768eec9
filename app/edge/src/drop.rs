//! What a person drags over from somewhere else and drops on the page.

use wasm_bindgen::JsCast;
use web_sys::{DragEvent, EventTarget};

use crate::Fault;
use crate::files::read_file;
use crate::listen::Listener;

/// What was dropped.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Dropped {
    /// A file.
    File(Vec<u8>),
    /// A text, or the address of a link.
    Text(String),
}

/// Calls back with whatever is dropped on an element, for as long as the page is there.
pub fn on_drop(target: &EventTarget, most_bytes: u64, told: impl Fn(Result<Dropped, Fault>) + Clone + 'static) {
    // Without this the browser opens what is dropped in place of the page.
    Listener::on(target, "dragover", |event| event.prevent_default()).forget();
    Listener::on(target, "drop", move |event| {
        event.prevent_default();
        let Some(data) = event.dyn_ref::<DragEvent>().and_then(DragEvent::data_transfer) else { return };
        let told = told.clone();
        if let Some(file) = data.files().and_then(|files| files.get(0)) {
            wasm_bindgen_futures::spawn_local(async move {
                told(read_file(&file, most_bytes).await.map(|(_, bytes)| Dropped::File(bytes)));
            });
            return;
        }
        let text = data.get_data("text").unwrap_or_default();
        if !text.is_empty() {
            told(Ok(Dropped::Text(text)));
        }
    })
    .forget();
}
