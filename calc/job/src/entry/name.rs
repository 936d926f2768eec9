//! The names by which people write a unit.

use super::Unit;
use super::glyph::Glyph;

/// The unit these letters name, or nothing.
///
/// Case, the dots of abbreviations, brackets and the spaces between words don't count; a space
/// before a digit does ("ft 3" is not a cubic foot).
pub(super) fn unit_named(glyphs: &[Glyph]) -> Option<Unit> {
    let name = folded(glyphs)?;
    Some(match name.as_str() {
        "in" | "inch" | "inches" | "ins" | "\"" | "''" => Unit::Inch,
        "ft" | "foot" | "feet" | "'" => Unit::Foot,
        "mm" | "millimetre" | "millimetres" | "millimeter" | "millimeters" => Unit::Millimetre,
        "cm" | "centimetre" | "centimetres" | "centimeter" | "centimeters" => Unit::Centimetre,
        "m" | "metre" | "metres" | "meter" | "meters" => Unit::Metre,
        "ft2" | "sqft" | "sf" | "squarefoot" | "squarefeet" => Unit::SquareFoot,
        "m2" | "sqm" | "squaremetre" | "squaremetres" | "squaremeter" | "squaremeters" => Unit::SquareMetre,
        "ft3" | "cuft" | "cft" | "cf" | "cubicfoot" | "cubicfeet" => Unit::CubicFoot,
        "in3" | "cuin" | "cubicinch" | "cubicinches" => Unit::CubicInch,
        "l" | "litre" | "litres" | "liter" | "liters" | "ltr" | "ltrs" | "dm3" => Unit::Litre,
        "m3" | "cum" | "cbm" | "cubicmetre" | "cubicmetres" | "cubicmeter" | "cubicmeters" => Unit::CubicMetre,
        "gal" | "gals" | "gallon" | "gallons" | "usgal" | "usgals" | "galus" | "usgallon" | "usgallons" => {
            Unit::UsGallon
        }
        "lb" | "lbs" | "lbm" | "pound" | "pounds" => Unit::Pound,
        "kg" | "kgs" | "kilo" | "kilos" | "kilogram" | "kilograms" => Unit::Kilogram,
        "g" | "gram" | "grams" | "gramme" | "grammes" => Unit::Gram,
        "t" | "tonne" | "tonnes" | "metricton" | "metrictons" => Unit::Tonne,
        "oz" | "ounce" | "ounces" => Unit::Ounce,
        "lb/ft3" | "lbs/ft3" | "lb/cuft" | "lbs/cuft" | "lb/cf" | "lbs/cf" | "pcf" | "lb/cubicfoot"
        | "lbs/cubicfoot" | "pounds/cubicfoot" => Unit::PoundPerCubicFoot,
        "kg/m3" => Unit::KilogramPerCubicMetre,
        "g/l" => Unit::GramPerLitre,
        // A gram per cubic centimetre is a kilogram per litre.
        "kg/l" | "kg/dm3" | "g/cm3" | "g/ml" => Unit::KilogramPerLitre,
        "°c" | "c" | "degc" | "℃" | "celsius" | "degreescelsius" => Unit::Celsius,
        "°f" | "f" | "degf" | "℉" | "fahrenheit" | "degreesfahrenheit" => Unit::Fahrenheit,
        "gpm" | "usgpm" | "gal/min" | "usgal/min" => Unit::UsGallonPerMinute,
        "l/min" | "lpm" => Unit::LitrePerMinute,
        "m3/h" | "m3/hr" | "cum/h" => Unit::CubicMetrePerHour,
        "l/h" | "l/hr" | "lph" => Unit::LitrePerHour,
        "gpm/ft2" | "gpm/sqft" | "gpm/sf" | "gal/min/ft2" | "usgpm/ft2" => Unit::UsGallonPerMinuteSquareFoot,
        // A cubic metre per square metre and hour is a metre per hour.
        "m/h" | "m/hr" | "m3/m2/h" | "m3/m2h" => Unit::MetrePerHour,
        "psi" | "lbf/in2" => Unit::Psi,
        "bar" | "bars" => Unit::Bar,
        "kpa" => Unit::Kilopascal,
        "%" | "percent" | "pct" => Unit::Percent,
        "each" | "ea" | "pc" | "pcs" | "piece" | "pieces" | "bag" | "bags" | "sack" | "sacks" | "drum" | "drums"
        | "pack" | "packs" => Unit::Each,
        "s" | "sec" | "secs" | "second" | "seconds" => Unit::Second,
        "min" | "mins" | "minute" | "minutes" => Unit::Minute,
        "h" | "hr" | "hrs" | "hour" | "hours" => Unit::Hour,
        "d" | "day" | "days" => Unit::Day,
        _ => return None,
    })
}

/// The name with what doesn't count taken out; nothing when a space stands before a digit.
fn folded(glyphs: &[Glyph]) -> Option<String> {
    let mut name = String::new();
    let mut after_space = false;
    for glyph in glyphs {
        let shape = match glyph.shape {
            ' ' => {
                after_space = true;
                continue;
            }
            // The dot of an abbreviation follows a letter.
            '.' if name.ends_with(|last: char| last.is_ascii_lowercase()) => continue,
            '^' | '·' | '⋅' | '(' | ')' => continue,
            '²' => '2',
            '³' => '3',
            '′' => '\'',
            other => other,
        };
        if after_space && (shape.is_ascii_digit() || shape == '\'') {
            return None;
        }
        after_space = false;
        name.push(shape);
    }
    Some(name.replace("per", "/").replace("/cent", "percent"))
}
