//! Values in SI with six digits.

use bedwright_calc::quantity::{Amount, Term};

use crate::decimal::to_places;

/// A value in SI with six digits and its unit.
pub(super) fn exact(term: Term, amount: Amount) -> String {
    let (value, unit) = match amount {
        Amount::Length(x) => (x.value, " m"),
        Amount::Area(x) => (x.value, " m²"),
        Amount::Volume(x) => (x.value, " m³"),
        Amount::Mass(x) => (x.value, " kg"),
        Amount::Density(x) => (x.value, " kg/m³"),
        Amount::Pressure(x) => (x.value, " Pa"),
        Amount::Speed(x) => (x.value, " m/s"),
        Amount::Flow(x) => (x.value, " m³/s"),
        Amount::Temperature(x) => (x.value, " K"),
        Amount::Viscosity(x) => (x.value, " Pa·s"),
        Amount::Time(x) => (x.value, " s"),
        Amount::Rate(x) => (x.value, " 1/s"),
        Amount::Concentration(x) => (x.to_kilograms_per_cubic_metre(), " kg/m³"),
        Amount::Ratio(x) => match term {
            Term::MeanReciprocal => (x, " 1/m"),
            Term::MeanReciprocalSquare => (x, " 1/m²"),
            _ => (x, ""),
        },
        Amount::Count(n) => return n.to_string(),
    };
    let mut text = six_digits(value);
    text.push_str(unit);
    text
}

/// Six digits that count, however small the number, with a point; nothing after them but what they need.
pub(super) fn six_digits(value: f64) -> String {
    if value < 0.0 {
        return ["−", &six_digits(-value)].concat();
    }
    let size = value.abs();
    if !(size > 0.0 && size.is_finite()) {
        return to_places(value, 0);
    }
    let mut places: i32 = 5;
    let mut scaled = size;
    while scaled >= 10.0 && places > 0 {
        scaled /= 10.0;
        places -= 1;
    }
    while scaled < 1.0 && places < 300 {
        scaled *= 10.0;
        places += 1;
    }
    if places > SMALLEST_PLACES {
        let power = places - 5;
        let mut text = to_places(scaled, 5);
        text.push_str("·10⁻");
        text.extend(power.to_string().chars().map(raised));
        return text;
    }
    to_places(value, usize::try_from(places).unwrap_or(0))
}

/// More places than this are written with a power of ten.
const SMALLEST_PLACES: i32 = 7;

fn raised(digit: char) -> char {
    match digit {
        '1' => '¹',
        '2' => '²',
        '3' => '³',
        _ => char::from_u32(u32::from(digit) - u32::from('0') + 0x2070).unwrap_or(digit),
    }
}
