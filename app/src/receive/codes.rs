//! Reading codes: by the camera, in any order, until none is missing; or off a photo.

use bedwright_edge::camera::{Camera, NoCamera, chosen_picture};
use bedwright_edge::codes::Reader;
use bedwright_edge::timer::pause;
use bedwright_job::envelope::{Frame, Gathered};
use bedwright_job::words::TravelLabel;
use wasm_bindgen::JsCast;

use crate::desk::{Desk, Tray};
use crate::parts::live::{El, button, el};
use crate::parts::signal::Held;

/// The longer side of the camera's picture, as it is read: squares of 3 pixels in a code that fills half of it.
const LONGEST: u32 = 1000;
/// The sizes in which a photo is tried.
const PHOTO_SIZES: [u32; 3] = [1000, 1800, 640];
/// How long the page rests between two pictures, ms.
const REST: i32 = 30;

#[derive(Clone, Copy)]
struct Reading {
    desk: Desk,
    on: Held<bool>,
    said: Held<String>,
    gathered: Held<Gathered>,
}

/// The part of the screen about codes.
pub fn codes_part(desk: Desk) -> El {
    let reading = Reading {
        desk,
        on: Held::new(false),
        said: Held::new(String::new()),
        gathered: Held::new(Gathered::default()),
    };
    let say = move |label: TravelLabel| desk.label(label);
    let missing = move || {
        reading.gathered.with(|gathered| match gathered.missing().as_slice() {
            [] => String::new(),
            missing => desk.manner().missing_frames(missing, gathered.count()),
        })
    };
    let again = move || reading.gathered.with(|gathered| gathered.count() > 0);
    el("div", "receive-way")
        .set("role", "group")
        .set("aria-labelledby", "read-codes")
        .kid(el("h2", "travel-label").set("id", "read-codes").text(say(TravelLabel::ReadCodes)))
        .kid(el("p", "quietly").text(say(TravelLabel::ReadCodesAbout)))
        .when(
            move || reading.on.get(),
            move || {
                let video = el("video", "camera").set("playsinline", "").set("muted", "").set("aria-hidden", "true");
                reading.look_through(&video);
                let stop = button("", say(TravelLabel::StopReading), move || reading.on.set(false));
                vec![el("p", "").text(say(TravelLabel::PointAtCode)), video, stop]
            },
        )
        .when(
            move || !reading.on.get(),
            move || {
                let camera = button("", say(TravelLabel::ReadCodes), move || reading.on.set(true));
                vec![
                    el("div", "actions")
                        .kid(camera)
                        .kid(button("", say(TravelLabel::PhotoOfCode), move || reading.photo())),
                ]
            },
        )
        .kid(el("p", "travel-said").set("role", "status").says(move || reading.said.get()))
        .kid(el("p", "figure frames-missing").set("role", "status").says(missing))
        .when(again, move || {
            vec![button("quiet", say(TravelLabel::BeginAgain), move || {
                reading.said.set(String::new());
                reading.gathered.set(Gathered::default());
            })]
        })
}

impl Reading {
    fn say(self, label: TravelLabel) {
        self.said.set(self.desk.label(label).to_owned());
    }

    fn goes_on(self) -> bool {
        !self.on.is_gone() && self.on.get_untracked()
    }

    /// Reads picture after picture until what came is whole, or somebody stops it.
    fn look_through(self, video: &El) {
        let video = video.node().clone().unchecked_into();
        self.said.set(String::new());
        wasm_bindgen_futures::spawn_local(async move {
            let reader = Reader::start().await;
            let camera = match Camera::open(&video).await {
                Ok(camera) => camera,
                Err(why) => {
                    self.on.set(false);
                    return self.say(match why {
                        NoCamera::Refused => TravelLabel::CameraRefused,
                        NoCamera::None => TravelLabel::NoCamera,
                    });
                }
            };
            while self.goes_on() {
                if let Some(picture) = camera.picture(LONGEST) {
                    let Ok(texts) = reader.read(&picture).await else {
                        self.on.set(false);
                        return self.say(TravelLabel::ReaderMissing);
                    };
                    if self.goes_on() && self.take(&texts) {
                        self.on.set(false);
                    }
                }
                pause(REST).await;
            }
        });
    }

    fn photo(self) {
        self.said.set(String::new());
        wasm_bindgen_futures::spawn_local(async move {
            let pictures = match chosen_picture(&PHOTO_SIZES).await {
                Ok(None) => return,
                Ok(Some(pictures)) => pictures,
                Err(_) => return self.say(TravelLabel::NoCodeInPhoto),
            };
            let reader = Reader::start().await;
            for picture in &pictures {
                match reader.read(picture).await {
                    Err(_) => return self.say(TravelLabel::ReaderMissing),
                    Ok(texts) if texts.is_empty() => {}
                    Ok(texts) => {
                        self.take(&texts);
                        return;
                    }
                }
            }
            self.say(TravelLabel::NoCodeInPhoto);
        });
    }

    /// Takes texts of codes; tells whether what came is whole.
    fn take(self, texts: &[String]) -> bool {
        for text in texts {
            if !Frame::is_one(text) {
                self.desk.look_at_text(text);
                if self.desk.tray.with_untracked(|tray| matches!(tray, Some(Tray::Came(_)))) {
                    return true;
                }
                continue;
            }
            let taken = Frame::read(text)
                .and_then(|frame| self.gathered.update(|gathered| gathered.take(frame)).unwrap_or(Ok(false)));
            match taken {
                Ok(true) => self.said.set(String::new()),
                Ok(false) => {}
                Err(fault) => self.said.set(self.desk.label(fault).to_owned()),
            }
            if let Some(sealed) = self.gathered.with_untracked(Gathered::whole) {
                self.gathered.set(Gathered::default());
                self.desk.look_at_sealed(&sealed);
                return true;
            }
        }
        false
    }
}
