//! Texts that are numbers. Every expected value was worked out by hand from the text.

use crate::entry::Unit::{self, *};
use crate::entry::understand;

/// Text, unit of the field, number, unit of the number.
type Row = (&'static str, Unit, f64, Unit);

fn check(rows: &[Row]) {
    for &(text, unit, value, written) in rows {
        let understood =
            understand(text, unit, None).unwrap_or_else(|misread| panic!("{text:?} in {unit:?}: {misread:?}"));
        assert_eq!(understood.value, value, "{text:?}");
        assert_eq!(understood.written, written, "{text:?}");
        assert_eq!(understood.dimension, unit.dimension(), "{text:?}");
        assert_eq!(understood.meaning, None, "{text:?}");
    }
}

#[test]
fn a_number_takes_the_unit_of_its_field_unless_it_names_one() {
    check(&[
        ("52", Inch, 52.0, Inch),
        ("52", Millimetre, 52.0, Millimetre),
        ("52 in", Inch, 52.0, Inch),
        ("52 in", Millimetre, 52.0, Inch),
        ("52in", Millimetre, 52.0, Inch),
        ("52 in.", Millimetre, 52.0, Inch),
        ("52 inch", Millimetre, 52.0, Inch),
        ("52 Inches", Millimetre, 52.0, Inch),
        ("52\"", Millimetre, 52.0, Inch),
        ("52 \"", Millimetre, 52.0, Inch),
        ("52″", Millimetre, 52.0, Inch),
        ("52”", Millimetre, 52.0, Inch),
        ("52''", Millimetre, 52.0, Inch),
        ("52’’", Millimetre, 52.0, Inch),
        ("52′′", Millimetre, 52.0, Inch),
        ("4'", Inch, 4.0, Foot),
        ("4′", Inch, 4.0, Foot),
        ("4 ft", Inch, 4.0, Foot),
        ("4 feet", Inch, 4.0, Foot),
        ("4.5 ft", Inch, 4.5, Foot),
        ("1320.8 mm", Inch, 1320.8, Millimetre),
        ("1320 MM", Inch, 1320.0, Millimetre),
        ("132 cm", Inch, 132.0, Centimetre),
        ("1.5 m", Inch, 1.5, Metre),
        ("1,5 m", Inch, 1.5, Metre),
        ("  52  ", Inch, 52.0, Inch),
        ("\u{a0}52\u{a0}in\u{a0}", Inch, 52.0, Inch),
        ("\u{200e}52\u{200b} in\u{feff}", Inch, 52.0, Inch),
    ]);
}

#[test]
fn feet_and_inches_are_inches() {
    check(&[
        ("4' 4\"", Millimetre, 52.0, Inch),
        ("4'4\"", Inch, 52.0, Inch),
        ("4’4”", Inch, 52.0, Inch),
        ("4′ 4″", Inch, 52.0, Inch),
        ("4'4''", Inch, 52.0, Inch),
        ("4'4", Inch, 52.0, Inch),
        ("4' 4", Inch, 52.0, Inch),
        ("4'-4\"", Inch, 52.0, Inch),
        ("4' - 4 1/2\"", Inch, 52.5, Inch),
        ("4'-4½\"", Inch, 52.5, Inch),
        ("4'4 1/2\"", Inch, 52.5, Inch),
        ("4' 1/2\"", Inch, 48.5, Inch),
        ("4' ½\"", Inch, 48.5, Inch),
        ("4'½\"", Inch, 48.5, Inch),
        ("4' .5\"", Inch, 48.5, Inch),
        ("4' 4.5\"", Inch, 52.5, Inch),
        ("4' 4,5\"", Inch, 52.5, Inch),
        ("4 ft 4 in", Inch, 52.0, Inch),
        ("4 ft. 4 in.", Inch, 52.0, Inch),
        ("4ft 4in", Inch, 52.0, Inch),
        ("4ft4", Inch, 52.0, Inch),
        ("4ft4in", Inch, 52.0, Inch),
        ("4ft3", Inch, 51.0, Inch),
        ("4ft2", Inch, 50.0, Inch),
        ("4 ft 3", Inch, 51.0, Inch),
        ("4 feet 4 inches", Inch, 52.0, Inch),
        ("-4' 4\"", Inch, -52.0, Inch),
        ("0' 6\"", Inch, 6.0, Inch),
        ("4' 0\"", Inch, 48.0, Inch),
        ("4' 11 7/8\"", Inch, 59.875, Inch),
        // 48 + 1/3 inches, one rounding: 145 / 3.
        ("4' 1/3\"", Inch, 145.0 / 3.0, Inch),
        ("5 lb 3 oz", Kilogram, 83.0, Ounce),
        ("1 h 30 min", Second, 90.0, Minute),
        ("1h30", Minute, 90.0, Minute),
        ("2 min 30 s", Minute, 150.0, Second),
        ("1 d 6 h", Hour, 30.0, Hour),
    ]);
}

#[test]
fn fractions_and_mixed_numbers_are_read_whole() {
    check(&[
        ("1/2", Inch, 0.5, Inch),
        ("1 / 2", Inch, 0.5, Inch),
        ("5/8\"", Inch, 0.625, Inch),
        ("11/2", Inch, 5.5, Inch),
        ("1 1/2", Inch, 1.5, Inch),
        ("1  1/2", Inch, 1.5, Inch),
        ("1 1 / 2", Inch, 1.5, Inch),
        ("1\u{a0}1/2", Inch, 1.5, Inch),
        ("1\u{202f}1\u{2044}2", Inch, 1.5, Inch),
        ("1-1/2", Inch, 1.5, Inch),
        ("1–1/2", Inch, 1.5, Inch),
        ("1‑1/2", Inch, 1.5, Inch),
        ("1 1⁄2", Inch, 1.5, Inch),
        ("1¹⁄₂", Inch, 1.5, Inch),
        ("¹⁄₂", Inch, 0.5, Inch),
        ("1 ¹/₈", Inch, 1.125, Inch),
        ("1½", Inch, 1.5, Inch),
        ("1 ½", Inch, 1.5, Inch),
        ("1-½", Inch, 1.5, Inch),
        ("1½\"", Inch, 1.5, Inch),
        ("1⅟8", Inch, 1.125, Inch),
        ("½", Inch, 0.5, Inch),
        ("-1 1/2", Inch, -1.5, Inch),
        ("-1-1/2", Inch, -1.5, Inch),
        ("−1½", Inch, -1.5, Inch),
        ("47 5/8", Inch, 47.625, Inch),
        ("1 300 1/2", Millimetre, 1300.5, Millimetre),
        ("1 300/400", Inch, 1.75, Inch),
        ("1/6 cu ft", Litre, 1.0 / 6.0, CubicFoot),
        ("1/6 ft³", Litre, 1.0 / 6.0, CubicFoot),
        ("1/6 ft3", CubicFoot, 1.0 / 6.0, CubicFoot),
        ("1 1/3 cu ft", Litre, 4.0 / 3.0, CubicFoot),
        ("2⅓ cu ft", Litre, 7.0 / 3.0, CubicFoot),
    ]);
}

#[test]
fn every_fraction_character_is_its_fraction() {
    // The Unicode Standard, UnicodeData.txt, decompositions <fraction>; from memory.
    check(&[
        ("¼", Inch, 1.0 / 4.0, Inch),
        ("¾", Inch, 3.0 / 4.0, Inch),
        ("⅐", Inch, 1.0 / 7.0, Inch),
        ("⅑", Inch, 1.0 / 9.0, Inch),
        ("⅒", Inch, 0.1, Inch),
        ("⅓", Inch, 1.0 / 3.0, Inch),
        ("⅔", Inch, 2.0 / 3.0, Inch),
        ("⅕", Inch, 0.2, Inch),
        ("⅖", Inch, 0.4, Inch),
        ("⅗", Inch, 0.6, Inch),
        ("⅘", Inch, 0.8, Inch),
        ("⅙", Inch, 1.0 / 6.0, Inch),
        ("⅚", Inch, 5.0 / 6.0, Inch),
        ("⅛", Inch, 0.125, Inch),
        ("⅜", Inch, 0.375, Inch),
        ("⅝", Inch, 0.625, Inch),
        ("⅞", Inch, 0.875, Inch),
        ("↉", Inch, 0.0, Inch),
    ]);
}

#[test]
fn marks_that_can_be_taken_one_way_need_no_meaning() {
    check(&[
        ("2.5", Inch, 2.5, Inch),
        ("12,5", Inch, 12.5, Inch),
        ("2,3750", Inch, 2.375, Inch),
        ("1.25", Inch, 1.25, Inch),
        ("0,125", Inch, 0.125, Inch),
        ("0.125", Inch, 0.125, Inch),
        ("00.125", Inch, 0.125, Inch),
        (".5", Inch, 0.5, Inch),
        (",5", Inch, 0.5, Inch),
        (".375", Inch, 0.375, Inch),
        ("5.", Inch, 5.0, Inch),
        ("5,", Inch, 5.0, Inch),
        ("5. in", Millimetre, 5.0, Inch),
        ("1234.567", Millimetre, 1234.567, Millimetre),
        ("1234,567", Millimetre, 1234.567, Millimetre),
        ("1.234,5", Millimetre, 1234.5, Millimetre),
        ("1,234.5", Millimetre, 1234.5, Millimetre),
        ("1.234,567", Millimetre, 1234.567, Millimetre),
        ("1,234,567", Millimetre, 1_234_567.0, Millimetre),
        ("1.234.567", Millimetre, 1_234_567.0, Millimetre),
        ("1,234,567.8", Millimetre, 1_234_567.8, Millimetre),
        ("1,234.", Millimetre, 1234.0, Millimetre),
        ("1 300 mm", Inch, 1300.0, Millimetre),
        ("1\u{a0}300 mm", Inch, 1300.0, Millimetre),
        ("1\u{202f}300\u{202f}mm", Inch, 1300.0, Millimetre),
        ("1\u{2009}300 mm", Inch, 1300.0, Millimetre),
        ("1'300 mm", Inch, 1300.0, Millimetre),
        ("1’300’000 mm", Inch, 1_300_000.0, Millimetre),
        ("1 234 567", Millimetre, 1_234_567.0, Millimetre),
        ("1 234,5", Millimetre, 1234.5, Millimetre),
        ("1 234,567", Millimetre, 1234.567, Millimetre),
        ("1'234.567", Millimetre, 1234.567, Millimetre),
        ("1.5e3", Millimetre, 1500.0, Millimetre),
        ("1.234e3 mm", Millimetre, 1234.0, Millimetre),
        ("5E-1", Inch, 0.5, Inch),
        ("５２", Inch, 52.0, Inch),
        ("５２．５　ｉｎ", Millimetre, 52.5, Inch),
        ("－５", Celsius, -5.0, Celsius),
        ("\u{2212}5", Celsius, -5.0, Celsius),
        ("- 5", Celsius, -5.0, Celsius),
        ("+5", Celsius, 5.0, Celsius),
        ("-0", Inch, 0.0, Inch),
    ]);
}

#[test]
fn units_go_by_the_names_people_use() {
    check(&[
        ("9 sq ft", SquareMetre, 9.0, SquareFoot),
        ("9 ft²", SquareMetre, 9.0, SquareFoot),
        ("9 m2", SquareFoot, 9.0, SquareMetre),
        ("1 ft3", CubicFoot, 1.0, CubicFoot),
        ("4ft3", CubicFoot, 4.0, CubicFoot),
        ("1 cuft", Litre, 1.0, CubicFoot),
        ("1 cu. ft.", Litre, 1.0, CubicFoot),
        ("1 cf", Litre, 1.0, CubicFoot),
        ("1 cubic foot", Litre, 1.0, CubicFoot),
        ("1 ft^3", Litre, 1.0, CubicFoot),
        ("25 litre", CubicFoot, 25.0, Litre),
        ("25 liter", CubicFoot, 25.0, Litre),
        ("25 l", CubicFoot, 25.0, Litre),
        ("25 ℓ", CubicFoot, 25.0, Litre),
        ("5 gal", CubicFoot, 5.0, UsGallon),
        ("5 US gal", CubicFoot, 5.0, UsGallon),
        ("300 cu in", Litre, 300.0, CubicInch),
        ("1 m³", Litre, 1.0, CubicMetre),
        ("50 lbs", Kilogram, 50.0, Pound),
        ("25 kg", Pound, 25.0, Kilogram),
        ("1 t", Pound, 1.0, Tonne),
        ("8 oz.", Kilogram, 8.0, Ounce),
        ("250 g", Pound, 250.0, Gram),
        ("50 lb/ft³", KilogramPerCubicMetre, 50.0, PoundPerCubicFoot),
        ("50 lb / cu ft", KilogramPerCubicMetre, 50.0, PoundPerCubicFoot),
        ("50 lbs per cubic foot", PoundPerCubicFoot, 50.0, PoundPerCubicFoot),
        ("800 kg/m3", PoundPerCubicFoot, 800.0, KilogramPerCubicMetre),
        ("800 g/L", PoundPerCubicFoot, 800.0, GramPerLitre),
        ("0.8 kg/L", PoundPerCubicFoot, 0.8, KilogramPerLitre),
        ("50 °F", Celsius, 50.0, Fahrenheit),
        ("50F", Celsius, 50.0, Fahrenheit),
        ("10 degC", Fahrenheit, 10.0, Celsius),
        ("10 º C", Fahrenheit, 10.0, Celsius),
        ("10 ℃", Fahrenheit, 10.0, Celsius),
        ("7 GPM", LitrePerMinute, 7.0, UsGallonPerMinute),
        ("20 L/min", UsGallonPerMinute, 20.0, LitrePerMinute),
        ("1,5 m³/h", UsGallonPerMinute, 1.5, CubicMetrePerHour),
        ("900 l/h", UsGallonPerMinute, 900.0, LitrePerHour),
        ("10 gpm/ft²", MetrePerHour, 10.0, UsGallonPerMinuteSquareFoot),
        ("10 gpm per sq ft", MetrePerHour, 10.0, UsGallonPerMinuteSquareFoot),
        ("25 m/h", UsGallonPerMinuteSquareFoot, 25.0, MetrePerHour),
        ("60 psi", Bar, 60.0, Psi),
        ("4 bar", Psi, 4.0, Bar),
        ("400 kPa", Psi, 400.0, Kilopascal),
        ("50%", One, 50.0, Percent),
        ("50 %", Percent, 50.0, Percent),
        ("50 percent", One, 50.0, Percent),
        ("3 bags", Each, 3.0, Each),
        ("3 pcs.", Each, 3.0, Each),
        ("10 min", Second, 10.0, Minute),
        ("30 sec", Minute, 30.0, Second),
        ("8 hrs", Day, 8.0, Hour),
        ("365 days", Hour, 365.0, Day),
    ]);
}

#[test]
fn a_text_is_its_quantity_in_si() {
    // An inch is 0.0254 m, a foot 0.3048 m: international yard and pound agreement of 1959.
    // One product, one rounding: within one last bit of 0.3048.
    for text in ["12 in", "1 ft", "1' 0\"", "304.8 mm"] {
        let si = understand(text, Millimetre, None).unwrap().si;
        assert!((si - 0.3048).abs() < 6e-17, "{text}: {si}");
    }
    assert_eq!(understand("12 in", Millimetre, None).unwrap().si, 12.0 * 0.0254);
    assert_eq!(understand("1 ft", Millimetre, None).unwrap().si, 0.3048);
    // 50 °F is 10 °C is 283.15 K; 50 % is a half.
    assert_eq!(understand("50 F", Celsius, None).unwrap().si, 283.15);
    assert_eq!(understand("10", Celsius, None).unwrap().si, 283.15);
    assert_eq!(understand("50%", One, None).unwrap().si, 0.5);
}
