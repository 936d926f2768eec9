//! Codes in a picture, read by a worker: the page goes on meanwhile, and needs no connection.

use js_sys::{Array, Object, Promise, Reflect};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::{ImageData, MessageEvent, Worker, WorkerOptions, WorkerType};

use crate::Fault;
use crate::fault::property;

/// The worker; it ends when this is dropped.
pub struct Reader {
    worker: Worker,
}

impl Reader {
    /// Starts one.
    ///
    /// # Errors
    /// [`Fault::Blocked`] where this build has none; what the browser said.
    pub fn start() -> Result<Reader, Fault> {
        let script =
            crate::texts::address_of("bedwright-codes").filter(|script| !script.is_empty()).ok_or(Fault::Blocked)?;
        let options = WorkerOptions::new();
        // What stands in the single file is no module: see `app/bundle/src/single.rs`.
        options.set_type(if script.starts_with("blob:") { WorkerType::Classic } else { WorkerType::Module });
        let worker = Worker::new_with_options(&script, &options).map_err(|thrown| Fault::other(&thrown))?;
        Ok(Reader { worker })
    }

    /// The texts of all codes in a picture.
    ///
    /// # Errors
    /// What the worker said, where it could not be started or gave up.
    pub async fn read(&self, picture: &ImageData) -> Result<Vec<String>, Fault> {
        let pixels = js_sys::Uint8Array::from(picture.data().0.as_slice());
        let asked = Object::new();
        let (wide, high) = (JsValue::from(picture.width()), JsValue::from(picture.height()));
        for (key, value) in [("pixels", pixels.buffer().into()), ("wide", wide), ("high", high)] {
            // Fails only for an object that is frozen.
            let _ = Reflect::set(&asked, &JsValue::from_str(key), &value);
        }
        let answer = Promise::new(&mut |resolve, reject| {
            self.worker.set_onmessage(Some(&resolve));
            self.worker.set_onerror(Some(&reject));
        });
        self.worker
            .post_message_with_transfer(&asked, &Array::of1(&pixels.buffer()))
            .map_err(|thrown| Fault::other(&thrown))?;
        let event = JsFuture::from(answer).await.map_err(|thrown| Fault::other(&thrown))?;
        let data = event.dyn_into::<MessageEvent>().map_err(|_| Fault::Blocked)?.data();
        match property(&data, "texts") {
            Some(texts) => Ok(Array::from(&texts).iter().filter_map(|text| text.as_string()).collect()),
            None => Err(Fault::Other(property(&data, "trouble").and_then(|said| said.as_string()).unwrap_or_default())),
        }
    }
}

impl Drop for Reader {
    fn drop(&mut self) {
        self.worker.terminate();
    }
}
