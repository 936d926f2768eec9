//! QR codes (ISO/IEC 18004): a link whose data stands in digits, or a frame in the letters such a code holds closely.

use qrcodegen::{QrCode, QrCodeEcc, QrSegment, Version};

/// Modules that stay white on every side.
pub const QUIET: usize = 4;
/// The largest code that a phone reads off another one's screen.
pub const MOST_ON_SCREEN: u8 = 20;
/// The largest that it reads off a label with 25 mm of room: 77 modules of a third of a millimetre.
pub const MOST_ON_LABEL: u8 = 15;

/// A code: its dark modules as a path in modules, white round it counted in.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct QrPicture {
    /// Modules across, the white ones round it counted in.
    pub across: usize,
    /// The dark ones.
    pub path: String,
}

/// A link: what stands before its data in letters, the data in decimal digits after `.`; none where it would be larger than
/// `most` allows.
#[must_use]
pub fn qr_of_link(before: &str, digits: &str, most: u8) -> Option<QrPicture> {
    let number = digits.strip_prefix('.')?;
    if !number.bytes().all(|digit| digit.is_ascii_digit()) {
        return None;
    }
    let letters = QrSegment::make_bytes([before, "."].concat().as_bytes());
    drawn(&[letters, QrSegment::make_numeric(number)], most)
}

/// A frame; none where a letter of it isn't one of the code's alphanumeric ones, or it is too long.
#[must_use]
pub fn qr_of_frame(text: &str) -> Option<QrPicture> {
    QrSegment::is_alphanumeric(text).then(|| drawn(&[QrSegment::make_alphanumeric(text)], MOST_ON_SCREEN)).flatten()
}

/// The least correction: a screen has no scratches, and smaller modules would cost more.
fn drawn(segments: &[QrSegment], most: u8) -> Option<QrPicture> {
    let most = Version::new(most.clamp(1, 40));
    let code = QrCode::encode_segments_advanced(segments, QrCodeEcc::Low, Version::new(1), most, None, true).ok()?;
    let across = code.size();
    let mut path = String::new();
    for y in 0..across {
        let mut x = 0;
        while x < across {
            let run = (x..across).take_while(|x| code.get_module(*x, y)).count();
            if run > 0 {
                let number = |number: i32| (number + QUIET as i32).to_string();
                let run = run.to_string();
                path.push_str(&["M", &number(x), " ", &number(y), "h", &run, "v1h-", &run, "z"].concat());
            }
            x += i32::try_from(run).unwrap_or(0) + 1;
        }
    }
    Some(QrPicture { across: usize::try_from(across).unwrap_or(0) + 2 * QUIET, path })
}

#[cfg(test)]
mod tests {
    use super::{MOST_ON_LABEL, MOST_ON_SCREEN, qr_of_frame, qr_of_link};

    #[test]
    fn what_a_code_cannot_hold_is_none() {
        assert!(qr_of_frame("BW1:ABC").is_some());
        assert!(qr_of_frame("small letters").is_none());
        assert!(qr_of_frame(&"A".repeat(2000)).is_none());
        assert!(qr_of_link("https://example.invalid/#/open/", ".0123", MOST_ON_LABEL).is_some());
        assert!(qr_of_link("https://example.invalid/#/open/", "0123", MOST_ON_LABEL).is_none());
        assert!(qr_of_link("https://example.invalid/#/open/", ".01a3", MOST_ON_LABEL).is_none());
        let long = format!(".{}", "7".repeat(1800));
        assert!(qr_of_link("https://example.invalid/#/open/", &long, MOST_ON_LABEL).is_none());
        assert!(qr_of_link("https://example.invalid/#/open/", &long, MOST_ON_SCREEN).is_some());
    }

    /// ISO/IEC 18004: a code of version 1 is 21 modules across, and its upper left corner is a finder of seven.
    #[test]
    fn the_first_row_begins_with_a_finder() {
        let code = qr_of_frame("BW1").unwrap_or_else(|| super::QrPicture { across: 0, path: String::new() });
        assert_eq!(code.across, 29);
        assert!(code.path.starts_with("M4 4h7v1h-7z"), "{}", code.path);
    }
}
