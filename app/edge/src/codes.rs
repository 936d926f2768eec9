//! Codes in a picture: by the browser's own detector where it has one that knows such codes, else, and where that finds
//! nothing, by a worker: the page goes on meanwhile, and needs no connection.

use std::cell::OnceCell;

use js_sys::{Array, Function, Object, Promise, Reflect};
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::{ImageData, MessageEvent, Worker, WorkerOptions, WorkerType};

use crate::Fault;
use crate::fault::{method, property};

/// Codes of this kind are read, as the draft "Accelerated Shape Detection in Images" (W3C community group) names it.
const KIND: &str = "qr_code";

/// What reads codes.
pub struct Reader {
    detector: Option<Detector>,
    /// Started when the browser's own has read nothing for the first time.
    worker: OnceCell<OwnReader>,
}

impl Reader {
    /// Gets one ready.
    pub async fn start() -> Reader {
        Reader { detector: Detector::find().await, worker: OnceCell::new() }
    }

    /// The texts of all codes in a picture.
    ///
    /// # Errors
    /// [`Fault::Blocked`] where this build has no reader of its own; what its worker said, where it could not be started or
    /// gave up.
    pub async fn read(&self, picture: &ImageData) -> Result<Vec<String>, Fault> {
        if let Some(detector) = &self.detector {
            // One that fails, and one that sees nothing, are no reason to see nothing.
            let texts = detector.read(picture).await.unwrap_or_default();
            if !texts.is_empty() {
                return Ok(texts);
            }
        }
        if self.worker.get().is_none() {
            // One that is there already stays.
            let _ = self.worker.set(OwnReader::start()?);
        }
        self.worker.get().ok_or(Fault::Blocked)?.read(picture).await
    }
}

/// The browser's own.
struct Detector {
    it: JsValue,
    detect: Function,
}

impl Detector {
    /// None where there is none, or none that knows such codes.
    async fn find() -> Option<Detector> {
        let kind: Function = method(&js_sys::global(), "BarcodeDetector")?;
        let asked = method(&kind, "getSupportedFormats")?.call0(&kind).ok()?;
        let known = JsFuture::from(Promise::resolve(&asked)).await.ok()?;
        if !Array::is_array(&known) || !Array::from(&known).includes(&JsValue::from_str(KIND), 0) {
            return None;
        }
        let wanted = Object::new();
        // Fails only for an object that is frozen.
        let _ = Reflect::set(&wanted, &JsValue::from_str("formats"), &Array::of1(&JsValue::from_str(KIND)));
        let it = Reflect::construct(&kind, &Array::of1(&wanted)).ok()?;
        let detect = method(&it, "detect")?;
        Some(Detector { it, detect })
    }

    async fn read(&self, picture: &ImageData) -> Option<Vec<String>> {
        let asked = self.detect.call1(&self.it, picture).ok()?;
        let found = JsFuture::from(Promise::resolve(&asked)).await.ok()?;
        if !Array::is_array(&found) {
            return None;
        }
        let text = |code: JsValue| property(&code, "rawValue")?.as_string().filter(|text| !text.is_empty());
        Some(Array::from(&found).iter().filter_map(text).collect())
    }
}

/// Our own, in a worker; it ends when this is dropped.
struct OwnReader {
    worker: Worker,
}

impl OwnReader {
    /// Starts one: [`Fault::Blocked`] where this build has none; what the browser said.
    fn start() -> Result<OwnReader, Fault> {
        let script =
            crate::texts::address_of("bedwright-codes").filter(|script| !script.is_empty()).ok_or(Fault::Blocked)?;
        let options = WorkerOptions::new();
        // What stands in the single file is no module: see `app/bundle/src/single.rs`.
        options.set_type(if script.starts_with("blob:") { WorkerType::Classic } else { WorkerType::Module });
        let worker = Worker::new_with_options(&script, &options).map_err(|thrown| Fault::other(&thrown))?;
        Ok(OwnReader { worker })
    }

    async fn read(&self, picture: &ImageData) -> Result<Vec<String>, Fault> {
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

impl Drop for OwnReader {
    fn drop(&mut self) {
        self.worker.terminate();
    }
}
