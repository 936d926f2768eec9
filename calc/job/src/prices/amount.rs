//! Amounts of money as they are typed and written: exact, from the digits to the decimal and back.

use bedwright_calc::supply::Money;
use rust_decimal::Decimal;

/// The most places behind the decimal mark.
pub const MOST_PLACES: u32 = 6;
/// The most digits before it: up to a million million.
const MOST_WHOLE: usize = 12;

/// Why a text is no amount.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum AmountFault {
    /// There is something else than digits and marks.
    NotAnAmount,
    /// It is below nought.
    Negative,
    /// It has more than twelve digits before the mark.
    TooLarge,
    /// It has more than [`MOST_PLACES`] digits behind the mark.
    TooFine,
    /// It has a mark that could be taken two ways, or the decimal mark of another country.
    Mark {
        /// The mark it has.
        found: char,
        /// The decimal mark here.
        decimal: char,
    },
}

/// Reads an amount with a decimal mark of one's own; none where nothing is typed.
///
/// Spaces and apostrophes may group digits in threes, and so may the other mark where the decimal mark follows it. A
/// single other mark is refused, since it could be either.
///
/// # Errors
/// Why it is none.
///
/// # Example
/// ```
/// use bedwright_job::prices::{AmountFault, amount, amount_text};
/// assert_eq!(amount_text(amount("1,234.50", '.').unwrap().unwrap(), ','), "1234,50");
/// assert_eq!(amount("1,50", '.'), Err(AmountFault::Mark { found: ',', decimal: '.' }));
/// assert_eq!(amount("  ", '.'), Ok(None));
/// ```
pub fn amount(text: &str, decimal: char) -> Result<Option<Money>, AmountFault> {
    let text = text.trim_matches(is_space);
    if text.is_empty() {
        return Ok(None);
    }
    let unsigned = text.trim_start_matches(['-', '−']);
    if unsigned.len() < text.len() {
        let money = amount(unsigned, decimal)?.ok_or(AmountFault::NotAnAmount)?;
        return if money == Money::default() { Ok(Some(money)) } else { Err(AmountFault::Negative) };
    }
    let (whole, places) = match text.rsplit_once(decimal) {
        Some((whole, places)) => (whole, places),
        None => (text, ""),
    };
    let other = if decimal == '.' { ',' } else { '.' };
    let is_digits = |text: &str| text.bytes().all(|byte| byte.is_ascii_digit());
    if whole.contains(decimal) {
        return Err(AmountFault::Mark { found: decimal, decimal });
    }
    if !is_digits(places) {
        return Err(if places.contains(other) && is_digits(&places.replace(other, "")) {
            AmountFault::Mark { found: other, decimal }
        } else {
            AmountFault::NotAnAmount
        });
    }
    let whole = grouped(whole, other, whole.len() < text.len())
        .ok_or(AmountFault::NotAnAmount)
        .and_then(|digits| digits.ok_or(AmountFault::Mark { found: other, decimal }))?;
    if whole.is_empty() && places.is_empty() {
        return Err(AmountFault::NotAnAmount);
    }
    let whole = whole.trim_start_matches('0');
    if whole.len() > MOST_WHOLE {
        return Err(AmountFault::TooLarge);
    }
    let kept = if places.len() > 2 { trimmed(places) } else { places };
    let scale = u32::try_from(kept.len()).unwrap_or(u32::MAX);
    if scale > MOST_PLACES {
        return Err(AmountFault::TooFine);
    }
    let digits = whole.bytes().chain(kept.bytes());
    let value = digits.fold(0_i128, |value, digit| value * 10 + i128::from(digit.wrapping_sub(b'0')));
    Decimal::try_from_i128_with_scale(value, scale)
        .map(|value| Some(Money::new(value)))
        .map_err(|_| AmountFault::TooLarge)
}

/// Noughts at the end, down to two places, say nothing.
fn trimmed(places: &str) -> &str {
    let used = places.trim_end_matches('0').len().max(2);
    places.get(..used).unwrap_or(places)
}

fn is_space(c: char) -> bool {
    matches!(c, ' ' | '\t' | '\u{a0}' | '\u{2009}' | '\u{202f}')
}

/// Digits without what groups them; nothing where they aren't digits in groups. The inner nothing is for a mark that
/// could be the decimal one: it groups only where a decimal mark follows, or where it stands twice.
fn grouped(text: &str, mark: char, decimal_follows: bool) -> Option<Option<String>> {
    let separator = text.chars().find(|c| !c.is_ascii_digit());
    let Some(separator) = separator else { return Some(Some(text.to_owned())) };
    if separator != mark && separator != '\'' && separator != '’' && !is_space(separator) {
        return None;
    }
    let mut groups = text.split(separator);
    let first = groups.next()?;
    let (mut digits, mut count, mut whole) = (first.to_owned(), 0, (1..=3).contains(&first.len()));
    for group in groups {
        if !group.bytes().all(|byte| byte.is_ascii_digit()) {
            return None;
        }
        whole &= group.len() == 3;
        digits.push_str(group);
        count += 1;
    }
    if !first.bytes().all(|byte| byte.is_ascii_digit()) {
        return None;
    }
    if separator == mark && (!whole || count == 1 && !decimal_follows) {
        return Some(None);
    }
    whole.then_some(Some(digits))
}

/// An amount as it is written, every place of it, with this decimal mark.
#[must_use]
pub fn amount_text(money: Money, decimal: char) -> String {
    let value = money.value();
    let places = usize::try_from(value.scale()).unwrap_or(0);
    let mut digits = Vec::new();
    let mut rest = value.mantissa().unsigned_abs();
    while rest > 0 || digits.len() <= places {
        digits.push(char::from(b'0' + (rest % 10) as u8));
        rest /= 10;
    }
    let mut text = String::new();
    if value.is_sign_negative() {
        text.push('-');
    }
    for (place, digit) in digits.iter().enumerate().rev() {
        text.push(*digit);
        if place == places && places > 0 {
            text.push(decimal);
        }
    }
    text
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::{AmountFault, amount, amount_text};

    #[test]
    fn amounts_are_read_as_they_are_written_in_either_manner() {
        for (text, decimal, means) in [
            ("12", '.', "12"),
            ("12.50", '.', "12.50"),
            ("12,50", ',', "12.50"),
            (".5", '.', "0.5"),
            ("5.", '.', "5"),
            ("0", '.', "0"),
            ("-0", '.', "0"),
            ("007.10", '.', "7.10"),
            ("1,234.5", '.', "1234.5"),
            ("1.234,5", ',', "1234.5"),
            ("1,234,567", '.', "1234567"),
            ("1 234,50", ',', "1234.50"),
            ("1’234.50", '.', "1234.50"),
            ("1\u{202f}234\u{202f}567", '.', "1234567"),
            ("1.2300000", '.', "1.23"),
            ("2.0000", '.', "2.00"),
            ("0.000001", '.', "0.000001"),
            ("999999999999.999999", '.', "999999999999.999999"),
        ] {
            let read = amount(text, decimal).map(|money| money.map(|money| amount_text(money, '.')));
            assert_eq!(read, Ok(Some(means.to_owned())), "{text}");
        }
    }

    #[test]
    fn what_is_no_amount_says_why() {
        let mark = |found, decimal| AmountFault::Mark { found, decimal };
        for (text, decimal, why) in [
            ("1e30", '.', AmountFault::NotAnAmount),
            ("1000000000000", '.', AmountFault::TooLarge),
            ("1000000000000000000000000000000", '.', AmountFault::TooLarge),
            ("-1", '.', AmountFault::Negative),
            ("−0.01", '.', AmountFault::Negative),
            ("0.0000001", '.', AmountFault::TooFine),
            ("1,50", '.', mark(',', '.')),
            ("1,500", '.', mark(',', '.')),
            ("1.500", ',', mark('.', ',')),
            ("1.50", ',', mark('.', ',')),
            ("1.2.3", '.', mark('.', '.')),
            ("1.234,50", '.', mark(',', '.')),
            ("12,34.5", '.', mark(',', '.')),
            ("12 34", '.', AmountFault::NotAnAmount),
            ("1 234,567", '.', AmountFault::NotAnAmount),
            (".", '.', AmountFault::NotAnAmount),
            ("-", '.', AmountFault::NotAnAmount),
            ("$5", '.', AmountFault::NotAnAmount),
            ("5 USD", '.', AmountFault::NotAnAmount),
            ("١٢", '.', AmountFault::NotAnAmount),
            ("=1+1", '.', AmountFault::NotAnAmount),
            ("NaN", '.', AmountFault::NotAnAmount),
        ] {
            assert_eq!(amount(text, decimal), Err(why), "{text}");
        }
    }

    proptest! {
        #[test]
        fn what_is_written_is_read_back(whole in 0_u64..1_000_000_000_000, places in 0_u32..1_000_000, comma: bool) {
            let text = format!("{whole}.{places:06}");
            let read = amount(&text, '.');
            prop_assert!(matches!(read, Ok(Some(_))));
            let money = read.ok().flatten().unwrap_or_default();
            prop_assert_eq!(amount_text(money, '.').parse::<f64>(), text.parse::<f64>());
            let mark = if comma { ',' } else { '.' };
            prop_assert_eq!(amount(&amount_text(money, mark), mark), Ok(Some(money)));
        }

        #[test]
        fn no_text_panics(text in "\\PC{0,40}", comma: bool) {
            let _ = amount(&text, if comma { ',' } else { '.' });
        }

        #[test]
        fn no_text_of_digits_and_marks_panics(text in "[0-9., '’−-]{0,24}", comma: bool) {
            let decimal = if comma { ',' } else { '.' };
            if let Ok(Some(money)) = amount(&text, decimal) {
                prop_assert_eq!(amount(&amount_text(money, decimal), decimal), Ok(Some(money)));
            }
        }
    }
}
