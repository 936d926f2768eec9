//! The clock of the device: what day it is here, and the instant.

use js_sys::Date;

/// Today's date where the device is: year, month 1 to 12, day 1 to 31.
#[must_use]
pub fn today() -> (i32, u8, u8) {
    let now = Date::new_0();
    let small = |figure: u32| u8::try_from(figure).unwrap_or_default();
    (
        now.get_full_year().try_into().unwrap_or_default(),
        small(now.get_month()).saturating_add(1),
        small(now.get_date()),
    )
}

/// The instant in UTC as ISO 8601 writes it: `2026-11-24T09:30:00.000Z`.
#[must_use]
pub fn now_iso() -> String {
    Date::new_0().to_iso_string().into()
}

/// Milliseconds since 1970 began, UTC.
#[must_use]
pub fn now_ms() -> f64 {
    Date::now()
}
