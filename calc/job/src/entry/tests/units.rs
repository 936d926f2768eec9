//! Each factor proved against other quantities.
//!
//! Sources: B. N. Taylor, A. Thompson, *Guide for the Use of the International System of Units*,
//! NIST SP 811 (2008), appendix B; international yard and pound agreement of 1959 (yard 0.9144 m,
//! pound 0.453 592 37 kg).

use crate::entry::Dimension::*;
use crate::entry::Unit::{self, *};
use crate::entry::{Dimension, Misread, understand};

/// Equal up to the rounding of a few products.
fn same(a: f64, b: f64) {
    assert!((a - b).abs() <= 4.0 * f64::EPSILON * b.abs(), "{a} {b}");
}

#[test]
fn lengths_rest_on_the_yard_of_1959() {
    same(Foot.factor() * 3.0, 0.9144);
    same(Inch.factor() * 36.0, 0.9144);
    assert_eq!(Millimetre.factor() * 1000.0, Metre.factor());
    assert_eq!(Centimetre.factor(), 10.0 * Millimetre.factor());
}

#[test]
fn areas_and_volumes_are_lengths_multiplied() {
    let (inch, foot, dm) = (Inch.factor(), Foot.factor(), 0.1_f64);
    same(SquareFoot.factor(), foot * foot);
    same(SquareMetre.factor(), Metre.factor() * Metre.factor());
    same(CubicInch.factor(), inch * inch * inch);
    same(CubicFoot.factor(), 1728.0 * CubicInch.factor());
    same(CubicFoot.factor(), foot * foot * foot);
    same(Litre.factor(), dm * dm * dm);
    same(CubicMetre.factor(), 1000.0 * Litre.factor());
    // A gallon of 231 cubic inches, NIST SP 811 B.8 footnote 14 (number of the note from memory).
    same(UsGallon.factor(), 231.0 * CubicInch.factor());
}

#[test]
fn masses_rest_on_the_pound_of_1959() {
    assert_eq!(Pound.factor(), 0.453_592_37);
    same(16.0 * Ounce.factor(), Pound.factor());
    // A pound of 7000 grains of 64.798 91 mg, NIST SP 811 B.8.
    same(Pound.factor(), 7000.0 * 64.798_91e-6);
    same(1000.0 * Gram.factor(), Kilogram.factor());
    assert_eq!(Tonne.factor(), 1000.0 * Kilogram.factor());
}

#[test]
fn densities_are_masses_by_volumes() {
    same(PoundPerCubicFoot.factor(), Pound.factor() / CubicFoot.factor());
    // NIST SP 811 B.8: lb/ft³ = 1.601 846 E+01 kg/m³, seven digits.
    assert!((PoundPerCubicFoot.factor() - 16.018_46).abs() < 5e-6);
    same(KilogramPerLitre.factor(), Kilogram.factor() / Litre.factor());
    same(GramPerLitre.factor(), Gram.factor() / Litre.factor());
    same(KilogramPerCubicMetre.factor(), Kilogram.factor() / CubicMetre.factor());
}

#[test]
fn flows_are_volumes_by_times() {
    same(UsGallonPerMinute.factor(), UsGallon.factor() / Minute.factor());
    // NIST SP 811 B.8: gallon (US) per minute = 6.309 020 E-05 m³/s, seven digits.
    assert!((UsGallonPerMinute.factor() - 6.309_020e-5).abs() < 5e-12);
    same(LitrePerMinute.factor(), Litre.factor() / Minute.factor());
    same(LitrePerHour.factor(), Litre.factor() / Hour.factor());
    same(CubicMetrePerHour.factor(), CubicMetre.factor() / Hour.factor());
    same(MetrePerHour.factor(), CubicMetrePerHour.factor() / SquareMetre.factor());
    same(UsGallonPerMinuteSquareFoot.factor(), UsGallonPerMinute.factor() / SquareFoot.factor());
    same(Hour.factor(), 60.0 * Minute.factor());
    same(Day.factor(), 24.0 * Hour.factor());
    assert_eq!(Minute.factor(), 60.0 * Second.factor());
}

#[test]
fn pressures_are_forces_by_areas() {
    // A pound-force is a pound under standard gravity, 9.806 65 m/s² (NIST SP 811 B.8).
    let pound_force = Pound.factor() * 9.806_65;
    same(Psi.factor(), pound_force / (Inch.factor() * Inch.factor()));
    // NIST SP 811 B.8: psi = 6.894 757 E+03 Pa, seven digits.
    assert!((Psi.factor() - 6894.757).abs() < 5e-4);
    assert_eq!(Bar.factor(), 100.0 * Kilopascal.factor());
    // A standard atmosphere of 101 325 Pa is 14.695 95 psi (from memory, seven digits).
    assert!((Psi.from_si(101_325.0) - 14.695_95).abs() < 5e-6);
}

#[test]
fn temperatures_meet_where_the_scales_do() {
    // NIST SP 811 B.8: T/K = (t/°F + 459.67)/1.8, T/K = t/°C + 273.15.
    for (celsius, fahrenheit) in [(0.0, 32.0), (100.0, 212.0), (-40.0, -40.0), (10.0, 50.0)] {
        same(Celsius.to_si(celsius), Fahrenheit.to_si(fahrenheit));
        assert!((Fahrenheit.from_si(Celsius.to_si(celsius)) - fahrenheit).abs() < 1e-12 * 500.0);
        assert!((Celsius.from_si(Fahrenheit.to_si(fahrenheit)) - celsius).abs() < 1e-12 * 500.0);
    }
    assert_eq!(Celsius.to_si(-273.15), 0.0);
    assert_eq!(Fahrenheit.to_si(-459.67), 0.0);
    // A degree is smaller in Fahrenheit by 180/100.
    same(Celsius.factor(), 1.8 * Fahrenheit.factor());
}

#[test]
fn parts_of_one() {
    assert_eq!(Percent.factor() * 100.0, One.factor());
    assert_eq!(Each.factor(), 1.0);
}

#[test]
fn every_unit_is_listed_once_under_its_dimension() {
    let dimensions: [Dimension; 14] = [
        Length,
        Area,
        Volume,
        Mass,
        Density,
        Temperature,
        VolumeFlow,
        FlowPerArea,
        Pressure,
        Time,
        Ratio,
        Count,
        Concentration,
        Hardness,
    ];
    let mut listed: Vec<Unit> = Vec::new();
    for dimension in dimensions {
        for unit in Unit::of(dimension) {
            assert_eq!(unit.dimension(), dimension, "{unit:?}");
            listed.push(*unit);
        }
    }
    listed.sort();
    let mut all = Unit::ALL.to_vec();
    all.sort();
    assert_eq!(listed, all);
}

#[test]
fn what_a_unit_is_shown_as_can_be_typed() {
    for &unit in Unit::ALL {
        let text = format!("5 {}", unit.symbol());
        // Read in a field of the dimension's first unit, so that the symbol has to do the work.
        let field = match unit {
            One | Each => unit,
            _ => Unit::of(unit.dimension())[0],
        };
        let understood = understand(&text, field, None).unwrap();
        assert_eq!(understood.written, unit, "{text}");
        assert_eq!(understood.value, 5.0, "{text}");
    }
}

/// A grain is a seven-thousandth of a pound; a German degree ten milligrams of CaO, a French one ten of CaCO₃ in a litre
/// (DIN 38409-6 as handbooks quote it). Equivalents: M. L. Davis counts 50.0435 g of CaCO₃.
#[test]
fn hardness_is_told_in_every_unit_of_the_trade() {
    same(GrainPerGallon.factor(), Pound.factor() / 7000.0 / UsGallon.factor());
    // Handbooks: 1 gr/gal is 17.1 mg/L, 1 °dH is 17.85 mg/L, 1 °fH is 10 mg/L.
    assert!((GrainPerGallon.factor() * 1000.0 - 17.118).abs() < 5e-4);
    assert!((GermanDegree.factor() * 1000.0 - 17.85).abs() < 5e-3);
    same(FrenchDegree.factor(), 10.0 * AsCalciumCarbonate.factor());
    assert!((MilliequivalentPerLitre.factor() * 1000.0 - 50.0435).abs() < 1e-3);
    same(MillimolePerLitre.factor(), 2.0 * MilliequivalentPerLitre.factor());
    // 2.497 mg of CaCO₃ for a milligram of calcium, 4.118 for one of magnesium, 0.820 for one of bicarbonate.
    assert!((AsCalcium.factor() * 1000.0 - 2.497).abs() < 5e-4);
    assert!((AsMagnesium.factor() * 1000.0 - 4.118).abs() < 5e-4);
    assert!((AsBicarbonate.factor() * 1000.0 - 0.820).abs() < 5e-4);
    same(GrainPerCubicFoot.factor(), Pound.factor() / 7000.0 / CubicFoot.factor());
    same(EquivalentPerLitre.factor(), 1000.0 * MilliequivalentPerLitre.factor());
    // 35 Illinois Administrative Code 604.805(c): 20 000 gr/cu ft are 45.77 g/L and 0.9145 eq/L.
    assert!((20_000.0 * GrainPerCubicFoot.factor() - 45.77).abs() < 5e-3);
    assert!((20_000.0 * GrainPerCubicFoot.factor() / EquivalentPerLitre.factor() - 0.9145).abs() < 1e-4);
}

#[test]
fn a_hardness_in_plain_milligrams_is_asked_about() {
    for text in ["120 mg/L", "120 ppm"] {
        let asked = understand(text, AsCalciumCarbonate, None);
        assert!(
            matches!(asked, Err(Misread::WrongDimension { found: MilligramPerLitre, wanted: Hardness })),
            "{text}: {asked:?}"
        );
    }
    for (text, unit) in [
        ("120 mg/L CaCO3", AsCalciumCarbonate),
        ("120 mg/L as CaCO₃", AsCalciumCarbonate),
        ("7 gpg", GrainPerGallon),
        ("7 grains per gallon", GrainPerGallon),
        ("8 °dH", GermanDegree),
        ("12 °f", FrenchDegree),
        ("48 mg/L Ca", AsCalcium),
        ("2.4 meq/L", MilliequivalentPerLitre),
    ] {
        assert_eq!(understand(text, AsCalciumCarbonate, None).unwrap().written, unit, "{text}");
    }
    // The same letters are warm where a temperature is wanted.
    assert_eq!(understand("12 °f", Celsius, None).unwrap().written, Fahrenheit);
}
