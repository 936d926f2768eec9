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

/// The instant as ISO 8601 writes it in the time of the place: `2026-11-24T10:30:05+01:00`.
#[must_use]
pub fn now_local() -> String {
    let now = Date::new_0();
    let ahead = -(now.get_timezone_offset() as i32);
    let (sign, minutes) = if ahead < 0 { ('-', -ahead) } else { ('+', ahead) };
    let (year, month, day) = today();
    format!(
        "{year:04}-{month:02}-{day:02}T{:02}:{:02}:{:02}{sign}{:02}:{:02}",
        now.get_hours(),
        now.get_minutes(),
        now.get_seconds(),
        minutes / 60,
        minutes % 60
    )
}
