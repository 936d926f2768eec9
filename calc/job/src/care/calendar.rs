//! What is due as a calendar file: iCalendar, RFC 5545.

use crate::day::Day;

/// An entry of a calendar: one day.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct CalendarDay {
    /// A name no other entry has, and that stays the same when the file is written again.
    pub name: String,
    /// The day.
    pub day: Day,
    /// In one line.
    pub summary: String,
    /// More of it.
    pub about: String,
    /// Where.
    pub location: String,
}

/// A line may have so many octets; longer ones are folded (RFC 5545, 3.1).
const LINE: usize = 75;

/// The calendar file. `stamp` is when it is made, in UTC, as `20261126T170000Z`.
#[must_use]
pub fn calendar(days: &[CalendarDay], stamp: &str) -> String {
    let mut text = String::new();
    for line in ["BEGIN:VCALENDAR", "VERSION:2.0", "PRODID:-//Bedwright//due list//EN", "CALSCALE:GREGORIAN"] {
        fold(&mut text, line);
    }
    for entry in days {
        fold(&mut text, "BEGIN:VEVENT");
        fold(&mut text, &["UID:", &escaped(&entry.name), "@bedwright"].concat());
        fold(&mut text, &["DTSTAMP:", stamp].concat());
        fold(&mut text, &["DTSTART;VALUE=DATE:", &date(entry.day)].concat());
        fold(&mut text, &["DTEND;VALUE=DATE:", &date(entry.day.plus(1))].concat());
        fold(&mut text, "TRANSP:TRANSPARENT");
        for (key, value) in
            [("SUMMARY:", &entry.summary), ("DESCRIPTION:", &entry.about), ("LOCATION:", &entry.location)]
        {
            if !value.is_empty() {
                fold(&mut text, &[key, &escaped(value)].concat());
            }
        }
        fold(&mut text, "END:VEVENT");
    }
    fold(&mut text, "END:VCALENDAR");
    text
}

fn date(day: Day) -> String {
    day.text().replace('-', "")
}

/// Marks that mean something else in a calendar get a backslash; control characters go (RFC 5545, 3.3.11).
fn escaped(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    for letter in text.chars() {
        match letter {
            '\\' | ';' | ',' => out.extend(['\\', letter]),
            '\n' => out.push_str("\\n"),
            letter if letter.is_control() => {}
            letter => out.push(letter),
        }
    }
    out
}

/// A line with its end; a long one goes on after a space, never within a letter.
fn fold(text: &mut String, line: &str) {
    let mut octets = 0;
    for letter in line.chars() {
        if octets + letter.len_utf8() > LINE {
            text.push_str("\r\n ");
            octets = 1;
        }
        text.push(letter);
        octets += letter.len_utf8();
    }
    text.push_str("\r\n");
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)] // Tests say so by panicking.

    use super::{CalendarDay, calendar};
    use crate::day::Day;

    #[test]
    fn a_long_line_is_folded_between_letters_and_marks_are_escaped() {
        let day = CalendarDay {
            name: "a-1".to_owned(),
            day: Day::of("2026-12-31").unwrap(),
            summary: "Señor, order; now\\ ".to_owned() + &"µ".repeat(80),
            about: "two\nlines".to_owned(),
            location: String::new(),
        };
        let text = calendar(&[day], "20261126T170000Z");
        assert!(text.contains("DTSTART;VALUE=DATE:20261231\r\nDTEND;VALUE=DATE:20270101\r\n"));
        assert!(text.contains("SUMMARY:Señor\\, order\\; now\\\\ "));
        assert!(text.contains("DESCRIPTION:two\\nlines\r\n"));
        assert!(text.split("\r\n").all(|line| line.len() <= 75));
        assert!(text.ends_with("END:VCALENDAR\r\n"));
    }
}
