//! The grammar of a written number: whole, decimal, grouped, fraction, mixed.

use super::glyph::{Glyph, as_typed, lowered_digit, raised_digit, vulgar_fraction};
use super::{Meaning, Misread};
use crate::decimal::nearest as float;

/// A number as written: the quotient stays undone so that 12 × (4 + 1/3) can be exact.
#[derive(Clone, Copy, Debug)]
pub(super) struct Number {
    pub numerator: f64,
    pub denominator: f64,
    /// Written without fraction, decimals or power of ten.
    pub whole: bool,
}

impl Number {
    fn whole(value: f64) -> Self {
        Self { numerator: value, denominator: 1.0, whole: true }
    }

    fn decimal(value: f64) -> Self {
        Self { whole: false, ..Self::whole(value) }
    }

    pub fn value(self) -> f64 {
        self.numerator / self.denominator
    }
}

/// Which marks stood where either meaning is possible.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Doubt {
    pub point: bool,
    pub comma: bool,
}

impl Doubt {
    pub fn any(self) -> bool {
        self.point || self.comma
    }

    /// Whether every mark in doubt is this one.
    pub fn only(self, mark: char) -> bool {
        (mark == '.' && self.point && !self.comma) || (mark == ',' && self.comma && !self.point)
    }
}

/// A place in the text, moving right.
pub(super) struct Reader<'a> {
    glyphs: &'a [Glyph],
    position: usize,
    meaning: Meaning,
    /// What was in doubt so far.
    pub doubt: Doubt,
}

/// Digits between two marks, and the mark before them.
type Piece = (char, String);

impl<'a> Reader<'a> {
    /// Starts at the first glyph; a mark in doubt is taken as `meaning` says.
    pub fn new(glyphs: &'a [Glyph], meaning: Meaning) -> Self {
        Self { glyphs, position: 0, meaning, doubt: Doubt::default() }
    }

    /// What hasn't been read yet.
    pub fn rest(&self) -> &'a [Glyph] {
        self.glyphs.get(self.position..).unwrap_or_default()
    }

    /// The glyph some steps ahead.
    pub fn peek(&self, ahead: usize) -> Option<char> {
        self.rest().get(ahead).map(|glyph| glyph.shape)
    }

    pub fn advance(&mut self, by: usize) {
        self.position = self.position.saturating_add(by).min(self.glyphs.len());
    }

    pub fn skip_spaces(&mut self) {
        while self.peek(0) == Some(' ') {
            self.advance(1);
        }
    }

    /// Whether the text is at its end.
    pub fn at_end(&self) -> bool {
        self.rest().is_empty()
    }

    /// The refusal of what stands here, up to the next space.
    pub fn not_a_number(&self) -> Misread {
        let end = self.glyphs.last().map_or(0, |glyph| glyph.at + 1);
        Misread::NotANumber {
            at: self.rest().first().map_or(end, |glyph| glyph.at),
            found: as_typed(self.rest().iter().take_while(|glyph| glyph.shape != ' ')),
        }
    }

    fn is_digit(&self, ahead: usize) -> bool {
        self.peek(ahead).is_some_and(|c| c.is_ascii_digit())
    }

    fn is_mark(&self, ahead: usize) -> bool {
        matches!(self.peek(ahead), Some('.' | ','))
    }

    /// How many digits stand from there on.
    pub fn digits_ahead(&self, ahead: usize) -> usize {
        self.rest().iter().skip(ahead).take_while(|glyph| glyph.shape.is_ascii_digit()).count()
    }

    fn digits(&mut self) -> String {
        let count = self.digits_ahead(0);
        let digits = self.rest().iter().take(count).map(|g| g.shape).collect();
        self.advance(count);
        digits
    }

    /// An unsigned number.
    pub fn number(&mut self) -> Result<Number, Misread> {
        if let Some((numerator, denominator)) = self.written_fraction()? {
            return Ok(Number { numerator, denominator, whole: false });
        }
        let starts = self.is_digit(0) || self.is_mark(0) && self.is_digit(1);
        if !starts {
            return Err(self.not_a_number());
        }
        let start = self.position;
        let mut head = self.digits();
        let grouped = self.spaced_groups(&mut head);
        let pieces = self.pieces();
        if pieces.is_empty()
            && !grouped
            && let Some(denominator) = self.denominator()?
        {
            return Ok(Number { numerator: float(&head), denominator, whole: false });
        }
        let exponent = if grouped || pieces.len() > 1 { None } else { self.exponent() };
        let Some(number) = self.interpreted(&head, grouped, &pieces, exponent.as_deref()) else {
            self.position = start;
            return Err(self.not_a_number());
        };
        let typed_zero = |digits: &str| digits.bytes().all(|digit| digit == b'0');
        if number.numerator == 0.0 && !(typed_zero(&head) && pieces.iter().all(|(_, digits)| typed_zero(digits))) {
            return Err(Misread::TooSmall);
        }
        if number.whole { self.with_fraction(number) } else { Ok(number) }
    }

    /// Groups of exactly three digits after a space or an apostrophe: "1 300", "1'300".
    ///
    /// Digits before a slash are a numerator, never a group: "1 300/400" is a mixed number.
    fn spaced_groups(&mut self, head: &mut String) -> bool {
        if !is_first_group(head) {
            return false;
        }
        let Some(separator @ (' ' | '\'')) = self.peek(0) else {
            return false;
        };
        let mut grouped = false;
        while self.peek(0) == Some(separator) && self.digits_ahead(1) == 3 {
            let spaces = self.rest().iter().skip(4).take_while(|glyph| glyph.shape == ' ').count();
            if self.peek(4 + spaces) == Some('/') && self.is_digit_past_slash(4 + spaces) {
                break;
            }
            self.advance(1);
            head.push_str(&self.digits());
            grouped = true;
        }
        grouped
    }

    fn is_digit_past_slash(&self, slash: usize) -> bool {
        let spaces = self.rest().iter().skip(slash + 1).take_while(|glyph| glyph.shape == ' ').count();
        self.is_digit(slash + 1 + spaces)
    }

    /// Marks and the digits behind each; the last may have none ("5.").
    fn pieces(&mut self) -> Vec<Piece> {
        let mut pieces = Vec::new();
        while let Some(mark @ ('.' | ',')) = self.peek(0) {
            self.advance(1);
            let digits = self.digits();
            let last = digits.is_empty();
            pieces.push((mark, digits));
            if last {
                break;
            }
        }
        pieces
    }

    /// "e3", "e-3": digits only where a plain power of ten can stand.
    fn exponent(&mut self) -> Option<String> {
        if self.peek(0) != Some('e') {
            return None;
        }
        let sign = match self.peek(1) {
            Some('-' | '−') => Some('-'),
            Some('+') => Some('+'),
            _ => None,
        };
        let start = if sign.is_some() { 2 } else { 1 };
        if !(1..=3).contains(&self.digits_ahead(start)) {
            return None;
        }
        self.advance(start);
        let digits = self.digits();
        Some(if sign == Some('-') { format!("-{digits}") } else { digits })
    }

    /// What head and pieces mean, or nothing when they mean nothing.
    fn interpreted(&mut self, head: &str, grouped: bool, pieces: &[Piece], exponent: Option<&str>) -> Option<Number> {
        let decimal = |whole: &str, decimals: &str| {
            let power = exponent.unwrap_or("0");
            Number::decimal(float(&format!("0{whole}.{decimals}0e{power}")))
        };
        match pieces {
            [] if exponent.is_none() => Some(Number::whole(float(head))),
            [] => Some(decimal(head, "")),
            [(mark, digits)] => {
                let in_doubt = !grouped && exponent.is_none() && digits.len() == 3 && is_first_group(head);
                if in_doubt {
                    match mark {
                        '.' => self.doubt.point = true,
                        _ => self.doubt.comma = true,
                    }
                    if self.meaning == Meaning::Thousands {
                        return Some(Number::whole(float(&format!("{head}{digits}"))));
                    }
                }
                Some(decimal(head, digits))
            }
            [.., (last_mark, last_digits)] => {
                let (first_mark, _) = pieces.first()?;
                let same = last_mark == first_mark;
                let groups = if same { pieces } else { pieces.get(..pieces.len().saturating_sub(1))? };
                let regular = !grouped
                    && is_first_group(head)
                    && groups.iter().all(|(mark, digits)| mark == first_mark && digits.len() == 3);
                if !regular {
                    return None;
                }
                let mut whole = head.to_owned();
                for (_, digits) in groups {
                    whole.push_str(digits);
                }
                Some(if same { Number::whole(float(&whole)) } else { decimal(&whole, last_digits) })
            }
        }
    }

    /// A whole number followed by a proper fraction: "1 1/2", "1-1/2", "1½".
    fn with_fraction(&mut self, whole: Number) -> Result<Number, Misread> {
        let start = self.position;
        self.skip_spaces();
        if self.position == start && self.peek(0) == Some('-') {
            self.advance(1);
        }
        let separated = self.position != start;
        let here = self.position;
        let fraction = match self.written_fraction()? {
            Some(fraction) => Some(fraction),
            None if separated && self.is_digit(0) => {
                let numerator = self.digits();
                match self.denominator()? {
                    Some(_) if numerator.starts_with('0') => {
                        self.position = here;
                        return Err(self.not_a_number());
                    }
                    Some(denominator) => Some((float(&numerator), denominator)),
                    None => None,
                }
            }
            None => None,
        };
        let Some((numerator, denominator)) = fraction else {
            self.position = start;
            return Ok(whole);
        };
        if numerator >= denominator {
            self.position = here;
            return Err(self.not_a_number());
        }
        Ok(Number { numerator: whole.numerator * denominator + numerator, denominator, whole: false })
    }

    /// "/2" after a numerator, spaces allowed; nothing (and nothing read) when no digit follows.
    fn denominator(&mut self) -> Result<Option<f64>, Misread> {
        let start = self.position;
        self.skip_spaces();
        if self.peek(0) == Some('/') {
            self.advance(1);
            self.skip_spaces();
            let digits = self.digits();
            if !digits.is_empty() {
                return nonzero(float(&digits)).map(Some);
            }
        }
        self.position = start;
        Ok(None)
    }

    /// A fraction that is one character, "⅟8", or raised digits over lowered ones.
    fn written_fraction(&mut self) -> Result<Option<(f64, f64)>, Misread> {
        let Some(first) = self.peek(0) else {
            return Ok(None);
        };
        if let Some(fraction) = vulgar_fraction(first) {
            self.advance(1);
            return Ok(Some(fraction));
        }
        let start = self.position;
        let mut numerator = String::new();
        if first == '⅟' {
            self.advance(1);
            numerator.push('1');
        } else {
            while let Some(digit) = self.peek(0).and_then(raised_digit) {
                self.advance(1);
                numerator.push(digit);
            }
            if self.peek(0) != Some('/') {
                self.position = start;
                return Ok(None);
            }
            self.advance(1);
        }
        let mut denominator = self.digits();
        while let Some(digit) = self.peek(0).and_then(lowered_digit) {
            self.advance(1);
            denominator.push(digit);
        }
        if numerator.is_empty() || denominator.is_empty() {
            self.position = start;
            return Ok(None);
        }
        let denominator = nonzero(float(&denominator))?;
        Ok(Some((float(&numerator), denominator)))
    }
}

/// One to three digits, the first not zero: what can stand before a group of thousands.
fn is_first_group(head: &str) -> bool {
    (1..=3).contains(&head.len()) && !head.starts_with('0')
}

fn nonzero(denominator: f64) -> Result<f64, Misread> {
    if denominator == 0.0 { Err(Misread::DivideByZero) } else { Ok(denominator) }
}
