//! Codes on the screen: one that any phone's camera opens, or several in turn for the reader inside the page.

use bedwright_edge::address;
use bedwright_edge::timer::pause;
use bedwright_job::drawing::{MOST_ON_SCREEN, QrPicture, qr_of_frame, qr_of_link};
use bedwright_job::envelope::{digits, frames};
use bedwright_job::words::{DeviceLabel, TravelLabel};

use super::page::Packed;
use crate::desk::Desk;
use crate::parts::live::{El, button, el};
use crate::parts::qr::qr;
use crate::parts::signal::{Held, Worked};

/// How long each code stands, ms: a phone's camera takes a moment to settle.
const STANDS: i32 = 400;
/// The quickest and the slowest.
const QUICKEST: i32 = 150;
const SLOWEST: i32 = 2400;

/// What is shown.
#[derive(Clone, PartialEq)]
enum Codes {
    One(QrPicture),
    Several(Vec<QrPicture>),
    TooMany,
}

fn codes(packed: &Packed) -> Codes {
    let before = [&address::page(), "#/open/"].concat();
    if let Some(one) = qr_of_link(&before, &digits(&packed.sealed), MOST_ON_SCREEN) {
        return Codes::One(one);
    }
    let drawn = frames(&packed.job, &packed.sealed)
        .and_then(|frames| frames.iter().map(|frame| qr_of_frame(frame)).collect::<Option<Vec<_>>>());
    drawn.map_or(Codes::TooMany, Codes::Several)
}

/// The codes, drawn once somebody asks for them. `note` is told that they are handed over.
pub fn shown_codes(desk: Desk, packed: Worked<Option<Packed>>, note: impl Fn() + 'static) -> El {
    let say = move |label: TravelLabel| desk.label(label);
    let open = Held::new(false);
    let toggle = button("", say(TravelLabel::ShowCodes), move || {
        open.set(true);
        note();
    });
    el("div", "send-way")
        .kid(el("h3", "travel-label").text(say(TravelLabel::AsCodes)))
        .kid(el("p", "").text(say(TravelLabel::AsCodesAbout)))
        .when(move || !open.get(), move || vec![el("div", "actions").kid(toggle.clone())])
        .when(
            move || open.get(),
            move || {
                let made = Worked::new(move || packed.with(|packed| packed.as_ref().map(codes)));
                let shown = el("div", "codes").live(move || {
                    made.with(|made| match made {
                        None => Vec::new(),
                        Some(Codes::One(code)) => {
                            let about = if address::from_disk() {
                                desk.label(DeviceLabel::CodeForPage)
                            } else {
                                say(TravelLabel::OneCode)
                            };
                            vec![qr(code, say(TravelLabel::Code)), el("p", "").text(about)]
                        }
                        Some(Codes::Several(codes)) => vec![in_turn(desk, codes.clone())],
                        Some(Codes::TooMany) => {
                            vec![el("p", "came-caution").text("▲ ").text(say(TravelLabel::TooManyCodes))]
                        }
                    })
                });
                let hide = button("", say(TravelLabel::HideCodes), move || open.set(false));
                vec![shown, el("div", "actions").kid(hide)]
            },
        )
}

/// Several, one after the other, for as long as they are looked at.
fn in_turn(desk: Desk, codes: Vec<QrPicture>) -> El {
    let say = move |label: TravelLabel| desk.label(label);
    let (at, stands) = (Held::new(0_usize), Held::new(STANDS));
    let count = codes.len();
    wasm_bindgen_futures::spawn_local(async move {
        while !at.is_gone() {
            pause(stands.get_untracked()).await;
            if !at.is_gone() {
                at.update(|at| *at = (*at + 1) % count.max(1));
            }
        }
    });
    let number = move || desk.manner().frame_of(at.get() + 1, count);
    let change = move |by: fn(i32) -> i32| {
        stands.update(|stands| *stands = by(*stands).clamp(QUICKEST, SLOWEST)).unwrap_or_default();
    };
    let name = say(TravelLabel::Code);
    el("div", "codes-in-turn")
        .live(move || codes.get(at.get()).map(|code| qr(code, name)).into_iter().collect())
        .kid(el("p", "codes-number figure").says(number))
        .kid(
            el("div", "actions")
                .kid(button("quiet", say(TravelLabel::Slower), move || change(|stands| stands * 2)))
                .kid(button("quiet", say(TravelLabel::Faster), move || change(|stands| stands / 2))),
        )
}
