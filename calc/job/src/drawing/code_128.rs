//! Code 128 (ISO/IEC 15417): letters and digits as bars.

/// Widths of the three bars and three spaces of every symbol character, in modules; the stop has a bar more.
const WIDTHS: &[&str; 107] = &[
    "212222", "222122", "222221", "121223", "121322", "131222", "122213", "122312", "132212", "221213", "221312",
    "231212", "112232", "122132", "122231", "113222", "123122", "123221", "223211", "221132", "221231", "213212",
    "223112", "312131", "311222", "321122", "321221", "312212", "322112", "322211", "212123", "212321", "232121",
    "111323", "131123", "131321", "112313", "132113", "132311", "211313", "231113", "231311", "112133", "112331",
    "132131", "113123", "113321", "133121", "313121", "211331", "231131", "213113", "213311", "213131", "311123",
    "311321", "331121", "312113", "312311", "332111", "314111", "221411", "431111", "111224", "111422", "121124",
    "121421", "141122", "141221", "112214", "112412", "122114", "122411", "142112", "142211", "241211", "221114",
    "413111", "241112", "134111", "111242", "121142", "121241", "114212", "124112", "124211", "411212", "421112",
    "421211", "212141", "214121", "412121", "111143", "111341", "131141", "114113", "114311", "411113", "411311",
    "113141", "114131", "311141", "411131", "211412", "211214", "211232", "2331112",
];

/// In set B, set C comes next.
const TO_C: usize = 99;
/// In set C, set B comes next.
const TO_B: usize = 100;
/// Begins in set B.
const START_B: usize = 104;
/// Begins in set C.
const START_C: usize = 105;
/// Ends.
const STOP: usize = 106;
/// What the check character is counted by.
const CHECK: usize = 103;

/// The most letters that are drawn; more no printer draws wide enough.
pub const LONGEST: usize = 48;

/// Modules that stay white on either side.
pub const QUIET: u32 = 10;

/// A text as widths in modules, bar and space in turn, a bar first; none where it is empty, too long, or holds a letter
/// that isn't printable ASCII.
#[must_use]
pub fn code_128(text: &str) -> Option<Vec<u8>> {
    let text = text.as_bytes();
    if text.is_empty() || text.len() > LONGEST || !text.iter().all(|letter| (b' '..=b'~').contains(letter)) {
        return None;
    }
    let mut values: Vec<usize> = Vec::new();
    let mut in_digits = false;
    let mut at = 0;
    while let Some(letter) = text.get(at) {
        let rest = text.get(at..).unwrap_or_default();
        let digits = rest.iter().take_while(|letter| letter.is_ascii_digit()).count();
        // Pairs of digits pay from four at an end on, and from six within; going on in pairs costs nothing.
        let enough = if at == 0 || at + digits == text.len() { 4 } else { 6 };
        if digits >= 2 && in_digits || digits >= enough && digits % 2 == 0 {
            if !in_digits {
                values.push(if values.is_empty() { START_C } else { TO_C });
                in_digits = true;
            }
            let pair = rest.iter().take(2).fold(0, |sum, digit| sum * 10 + usize::from(digit - b'0'));
            values.push(pair);
            at += 2;
            continue;
        }
        if values.is_empty() {
            values.push(START_B);
        } else if in_digits {
            values.push(TO_B);
            in_digits = false;
        }
        values.push(usize::from(letter - b' '));
        at += 1;
    }
    let check = values.iter().enumerate().map(|(place, value)| place.max(1) * value).sum::<usize>() % CHECK;
    values.extend([check, STOP]);
    let widths = values.iter().filter_map(|value| WIDTHS.get(*value));
    Some(widths.flat_map(|widths| widths.bytes().map(|digit| digit - b'0')).collect())
}

#[cfg(test)]
mod tests {
    use super::{LONGEST, WIDTHS, code_128};

    #[test]
    fn every_character_is_eleven_modules_wide_and_no_two_are_alike() {
        // ISO/IEC 15417: eleven modules, the bars an even number of them; the stop thirteen.
        let mut seen: Vec<&str> = WIDTHS.to_vec();
        seen.sort_unstable();
        seen.dedup();
        assert_eq!(seen.len(), WIDTHS.len());
        for widths in WIDTHS.iter().take(106) {
            let digits: Vec<u32> = widths.chars().filter_map(|digit| digit.to_digit(10)).collect();
            assert_eq!(digits.iter().sum::<u32>(), 11, "{widths}");
            assert_eq!(digits.iter().step_by(2).sum::<u32>() % 2, 0, "{widths}");
        }
        assert_eq!(WIDTHS.last().map(|stop| stop.len()), Some(7));
    }

    #[test]
    fn a_text_is_start_letters_check_and_stop() {
        let modules = |text: &str| code_128(text).map(|widths| widths.iter().map(|w| u32::from(*w)).sum::<u32>());
        assert_eq!(modules("A"), Some(11 * 3 + 13));
        assert_eq!(modules("AB-1"), Some(11 * 6 + 13));
        // Ten digits are five pairs.
        assert_eq!(modules("0123456789"), Some(11 * 7 + 13));
        for none in ["", "ä", "a\tb", "№"] {
            assert_eq!(code_128(none), None, "{none:?}");
        }
        assert!(code_128(&"9".repeat(LONGEST)).is_some());
        assert_eq!(code_128(&"9".repeat(LONGEST + 1)), None);
    }
}
