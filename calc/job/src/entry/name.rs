//! The names by which people write a unit.

use super::glyph::Glyph;
use super::{Dimension, Unit};

/// Every unit with its names, a space between two.
const NAMES: &[(Unit, &str)] = &[
    (Unit::Inch, "in inch inches ins \" ''"),
    (Unit::Foot, "ft foot feet '"),
    (Unit::Millimetre, "mm millimetre millimetres millimeter millimeters"),
    (Unit::Centimetre, "cm centimetre centimetres centimeter centimeters"),
    (Unit::Metre, "m metre metres meter meters"),
    (Unit::SquareFoot, "ft2 sqft sf squarefoot squarefeet"),
    (Unit::SquareMetre, "m2 sqm squaremetre squaremetres squaremeter squaremeters"),
    (Unit::CubicFoot, "ft3 cuft cft cf cubicfoot cubicfeet"),
    (Unit::CubicInch, "in3 cuin cubicinch cubicinches"),
    (Unit::Litre, "l litre litres liter liters ltr ltrs dm3"),
    (Unit::CubicMetre, "m3 cum cbm cubicmetre cubicmetres cubicmeter cubicmeters"),
    (Unit::UsGallon, "gal gals gallon gallons usgal usgals galus usgallon usgallons"),
    (Unit::Pound, "lb lbs lbm pound pounds"),
    (Unit::Kilogram, "kg kgs kilo kilos kilogram kilograms"),
    (Unit::Gram, "g gram grams gramme grammes"),
    (Unit::Tonne, "t tonne tonnes metricton metrictons"),
    (Unit::Ounce, "oz ounce ounces"),
    (
        Unit::PoundPerCubicFoot,
        "lb/ft3 lbs/ft3 lb/cuft lbs/cuft lb/cf lbs/cf pcf lb/cubicfoot lbs/cubicfoot pounds/cubicfoot",
    ),
    (Unit::KilogramPerCubicMetre, "kg/m3"),
    (Unit::GramPerLitre, "g/l"),
    // A gram per cubic centimetre is a kilogram per litre.
    (Unit::KilogramPerLitre, "kg/l kg/dm3 g/cm3 g/ml"),
    (Unit::Celsius, "°c c degc ℃ celsius degreescelsius"),
    (Unit::Fahrenheit, "°f f degf ℉ fahrenheit degreesfahrenheit"),
    (Unit::UsGallonPerMinute, "gpm usgpm gal/min usgal/min"),
    (Unit::LitrePerMinute, "l/min lpm"),
    (Unit::CubicMetrePerHour, "m3/h m3/hr cum/h"),
    (Unit::LitrePerHour, "l/h l/hr lph"),
    (Unit::UsGallonPerMinuteSquareFoot, "gpm/ft2 gpm/sqft gpm/sf gal/min/ft2 usgpm/ft2"),
    // A cubic metre per square metre and hour is a metre per hour.
    (Unit::MetrePerHour, "m/h m/hr m3/m2/h m3/m2h"),
    (Unit::Psi, "psi lbf/in2"),
    (Unit::Bar, "bar bars"),
    (Unit::Kilopascal, "kpa"),
    (Unit::Percent, "% percent pct"),
    (Unit::Each, "each ea pc pcs piece pieces bag bags sack sacks drum drums pack packs"),
    (Unit::Second, "s sec secs second seconds"),
    (Unit::Minute, "min mins minute minutes"),
    (Unit::Hour, "h hr hrs hour hours"),
    (Unit::Day, "d day days"),
    (Unit::UsGallonPerDay, "gpd gal/d gal/day gallons/day usgal/day"),
    (Unit::LitrePerDay, "l/d l/day litres/day liters/day"),
    (Unit::CubicMetrePerDay, "m3/d m3/day"),
    (
        Unit::GrainPerCubicFoot,
        "gr/cuftcaco3 gr/ft3 gr/cuft gr/cf grains/cuft grains/ft3 grain/ft3 gr/cubicfoot grains/cubicfoot",
    ),
    (Unit::MilligramPerLitre, "mg/l mg/liter mg/litre ppm g/m3"),
    (Unit::MicrogramPerLitre, "µg/l μg/l ug/l ppb mg/m3"),
    (
        Unit::AsCalciumCarbonate,
        "mg/lcaco3 mg/lascaco3 mgcaco3/l mgcaco3/litre ppmcaco3 ppmascaco3 caco3 ascaco3 g/m3caco3",
    ),
    (Unit::GrainPerGallon, "gpg gr/gal grains/gal grain/gal grains/gallon grain/gallon gr/usgal"),
    (Unit::GermanDegree, "°dh dh °d germandegree germandegrees"),
    // "°f" is a degree Fahrenheit where a temperature is wanted.
    (Unit::FrenchDegree, "°fh fh °f f °tf frenchdegree frenchdegrees"),
    (Unit::MilliequivalentPerLitre, "meq/l mval/l"),
    (Unit::MillimolePerLitre, "mmol/l mm/l"),
    (Unit::AsCalcium, "mg/lca mg/lasca mgca/l ppmca ppmasca"),
    (Unit::AsMagnesium, "mg/lmg mg/lasmg mgmg/l ppmmg ppmasmg"),
    (Unit::GramPerLitreAsCalciumCarbonate, "g/lcaco3 g/lascaco3 gcaco3/l kg/m3caco3"),
    (Unit::EquivalentPerLitre, "eq/l val/l"),
    (Unit::AsBicarbonate, "mg/lhco3 mg/lashco3 mghco3/l ppmhco3 ppmashco3"),
];

/// The unit these letters name, or nothing.
///
/// Case, the dots of abbreviations, brackets and the spaces between words don't count; a space
/// before a digit does ("ft 3" is not a cubic foot).
pub(super) fn unit_named(glyphs: &[Glyph]) -> Option<Unit> {
    let name = folded(glyphs)?;
    units_called(&name).next()
}

/// The unit of this kind that these letters name: "°f" is warm where a temperature is wanted, hard where hardness is.
pub(super) fn unit_named_for(glyphs: &[Glyph], wanted: Dimension) -> Option<Unit> {
    let name = folded(glyphs)?;
    units_called(&name).find(|unit| unit.dimension() == wanted)
}

fn units_called(name: &str) -> impl Iterator<Item = Unit> {
    NAMES.iter().filter(move |(_, names)| names.split(' ').any(|known| known == name)).map(|(unit, _)| *unit)
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
            '³' | '₃' => '3',
            '′' => '\'',
            other => other,
        };
        if after_space && (shape.is_ascii_digit() || shape == '\'') {
            return None;
        }
        after_space = false;
        name.push(shape);
        // "kg per litre" is "kg/litre"; a per cent stays one.
        if name.ends_with("per") {
            name.truncate(name.len() - 3);
            name.push('/');
        } else if name.ends_with("/cent") {
            name.truncate(name.len() - 5);
            name.push_str("percent");
        }
    }
    Some(name)
}
