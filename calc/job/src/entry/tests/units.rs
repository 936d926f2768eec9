//! Each factor proved against other quantities.
//!
//! Sources: B. N. Taylor, A. Thompson, *Guide for the Use of the International System of Units*,
//! NIST SP 811 (2008), appendix B; international yard and pound agreement of 1959 (yard 0.9144 m,
//! pound 0.453 592 37 kg).

use crate::entry::Dimension::*;
use crate::entry::Unit::{self, *};
use crate::entry::{Dimension, understand};

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
    let dimensions: [Dimension; 12] =
        [Length, Area, Volume, Mass, Density, Temperature, VolumeFlow, FlowPerArea, Pressure, Time, Ratio, Count];
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
