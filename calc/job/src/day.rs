//! Days of the civil calendar, as a job writes them: `2026-11-24`.

/// A day.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Day(i64);

/// Days of 400 years of the Gregorian calendar.
const ERA: i64 = 146_097;

impl Day {
    /// The first of all, for where no day is known.
    pub const FIRST: Day = Day(0);

    /// The last that can be written with four digits of the year.
    pub const LAST: Day = Day(3_652_364);

    /// The day of a text; nothing where it is none.
    ///
    /// ```
    /// use bedwright_job::day::Day;
    /// let day = Day::of("2024-02-29").unwrap();
    /// assert_eq!(day.plus(1).text(), "2024-03-01");
    /// assert_eq!(Day::of("2023-02-29"), None);
    /// ```
    #[must_use]
    pub fn of(text: &str) -> Option<Day> {
        let mut parts = text.split('-');
        let mut part = |letters: usize| -> Option<i64> {
            let text = parts.next()?;
            let digits = text.len() == letters && text.bytes().all(|letter| letter.is_ascii_digit());
            if digits { text.parse().ok() } else { None }
        };
        let (year, month, day) = (part(4)?, part(2)?, part(2)?);
        let found = Day::civil(year, month, day);
        (parts.next().is_none() && found.parts() == (year, month, day)).then_some(found)
    }

    // Counted from March, so that the leap day ends the year.
    fn civil(year: i64, month: i64, day: i64) -> Day {
        let (y, m) = if month <= 2 { (year - 1, month + 9) } else { (year, month - 3) };
        Day(365 * y + y.div_euclid(4) - y.div_euclid(100) + y.div_euclid(400) + (153 * m + 2) / 5 + day - 1)
    }

    /// Year, month and day of the month.
    #[must_use]
    pub fn parts(self) -> (i64, i64, i64) {
        let of_era = self.0.rem_euclid(ERA);
        let year_of_era = (of_era - of_era / 1460 + of_era / 36_524 - of_era / (ERA - 1)) / 365;
        let of_year = of_era - (365 * year_of_era + year_of_era / 4 - year_of_era / 100);
        let m = (5 * of_year + 2) / 153;
        let day = of_year - (153 * m + 2) / 5 + 1;
        let month = if m < 10 { m + 3 } else { m - 9 };
        let year = year_of_era + self.0.div_euclid(ERA) * 400 + i64::from(month <= 2);
        (year, month, day)
    }

    /// As a job writes it.
    #[must_use]
    pub fn text(self) -> String {
        let (year, month, day) = self.parts();
        format!("{year:04}-{month:02}-{day:02}")
    }

    /// So many days later.
    #[must_use]
    pub const fn plus(self, days: i64) -> Day {
        Day(self.0.saturating_add(days))
    }

    /// The same day of the month so many months later; the month's last day where it has no such day.
    #[must_use]
    pub fn plus_months(self, months: u32) -> Day {
        let (year, month, day) = self.parts();
        let count = month - 1 + i64::from(months);
        let (year, month) = (year + count.div_euclid(12), count.rem_euclid(12) + 1);
        (0..4)
            .map(|less| Day::civil(year, month, day - less))
            .find(|day| day.parts().1 == month)
            .unwrap_or(Day::civil(year, month, 1))
    }

    /// Days from another one.
    #[must_use]
    pub const fn since(self, other: Day) -> i64 {
        self.0.saturating_sub(other.0)
    }

    /// The day as a number to reckon with.
    #[must_use]
    pub fn number(self) -> f64 {
        self.0 as f64
    }

    /// The day that a number lies in; nothing where it is none, or thousands of years away.
    #[must_use]
    pub fn numbered(number: f64) -> Option<Day> {
        (number.abs() < 3.0e6).then(|| Day(number.floor() as i64))
    }
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used)] // Tests say so by panicking.

    use super::Day;

    #[test]
    fn the_last_day_is_the_last_of_the_year_9999() {
        assert_eq!(Day::LAST.text(), "9999-12-31");
    }

    #[test]
    fn every_day_of_six_centuries_comes_back() {
        let first = Day::of("1700-03-01").unwrap();
        for days in 0..220_000 {
            let day = first.plus(days);
            assert_eq!(Day::of(&day.text()), Some(day));
        }
    }

    #[test]
    fn days_are_counted_as_the_calendar_has_them() {
        // 2000 was a leap year, 1900 none.
        assert_eq!(Day::of("2000-03-01").unwrap().since(Day::of("2000-02-01").unwrap()), 29);
        assert_eq!(Day::of("1900-03-01").unwrap().since(Day::of("1900-02-01").unwrap()), 28);
        assert_eq!(Day::of("2026-11-26").unwrap().since(Day::of("1970-01-01").unwrap()), 20_783);
    }

    #[test]
    fn a_month_later_is_the_same_day_or_the_last() {
        let day = |text: &str, months: u32| Day::of(text).unwrap().plus_months(months).text();
        assert_eq!(day("2026-11-26", 12), "2027-11-26");
        assert_eq!(day("2026-01-31", 1), "2026-02-28");
        assert_eq!(day("2023-12-31", 2), "2024-02-29");
    }

    #[test]
    fn what_is_no_day_is_none() {
        for text in ["", "2026", "2026-13-01", "2026-00-10", "2026-02-30", "26-02-03", "2026-2-3", "2026-02-03-", "x"] {
            assert_eq!(Day::of(text), None, "{text}");
        }
    }
}
