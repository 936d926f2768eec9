//! Units of the trade, with permanent ids and exact factors.

use serde::{Deserialize, Serialize};

/// What kind of quantity a unit measures.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Dimension {
    /// Metres inside.
    Length,
    /// Square metres inside.
    Area,
    /// Cubic metres inside.
    Volume,
    /// Kilograms inside.
    Mass,
    /// Kilograms per cubic metre inside.
    Density,
    /// Kelvin inside: a point on the scale, not a difference.
    Temperature,
    /// Cubic metres per second inside.
    VolumeFlow,
    /// Metres per second inside: flow divided by the empty vessel's cross-section.
    FlowPerArea,
    /// Pascals inside.
    Pressure,
    /// Seconds inside.
    Time,
    /// One inside: 50 % is 0.5.
    Ratio,
    /// Pieces.
    Count,
    /// Kilograms per cubic metre of water inside, of the thing itself.
    Concentration,
    /// Kilograms per cubic metre of water inside, as calcium carbonate: hardness and alkalinity.
    Hardness,
}

/// A unit of the trade. The ids (see [`Unit::id`]) are permanent: saved jobs hold them.
///
/// An id that isn't in this list can't be read: a number whose unit is unknown is no number.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord, Serialize, Deserialize)]
pub enum Unit {
    /// Inch, 0.0254 m.
    #[serde(rename = "in")]
    Inch,
    /// Foot, 0.3048 m.
    #[serde(rename = "ft")]
    Foot,
    /// Millimetre.
    #[serde(rename = "mm")]
    Millimetre,
    /// Centimetre.
    #[serde(rename = "cm")]
    Centimetre,
    /// Metre.
    #[serde(rename = "m")]
    Metre,
    /// Square foot.
    #[serde(rename = "ft2")]
    SquareFoot,
    /// Square metre.
    #[serde(rename = "m2")]
    SquareMetre,
    /// Cubic foot.
    #[serde(rename = "ft3")]
    CubicFoot,
    /// Cubic inch.
    #[serde(rename = "in3")]
    CubicInch,
    /// Litre.
    #[serde(rename = "L")]
    Litre,
    /// Cubic metre.
    #[serde(rename = "m3")]
    CubicMetre,
    /// US gallon, 231 cubic inches.
    #[serde(rename = "gal_us")]
    UsGallon,
    /// Pound (avoirdupois), 0.453 592 37 kg.
    #[serde(rename = "lb")]
    Pound,
    /// Kilogram.
    #[serde(rename = "kg")]
    Kilogram,
    /// Gram.
    #[serde(rename = "g")]
    Gram,
    /// Tonne, 1000 kg.
    #[serde(rename = "t")]
    Tonne,
    /// Ounce (avoirdupois), a sixteenth of a pound.
    #[serde(rename = "oz")]
    Ounce,
    /// Pound per cubic foot.
    #[serde(rename = "lb_ft3")]
    PoundPerCubicFoot,
    /// Kilogram per cubic metre.
    #[serde(rename = "kg_m3")]
    KilogramPerCubicMetre,
    /// Gram per litre, the same size as kilogram per cubic metre.
    #[serde(rename = "g_L")]
    GramPerLitre,
    /// Kilogram per litre.
    #[serde(rename = "kg_L")]
    KilogramPerLitre,
    /// Degree Celsius.
    #[serde(rename = "C")]
    Celsius,
    /// Degree Fahrenheit.
    #[serde(rename = "F")]
    Fahrenheit,
    /// US gallon per minute.
    #[serde(rename = "gpm")]
    UsGallonPerMinute,
    /// Litre per minute.
    #[serde(rename = "L_min")]
    LitrePerMinute,
    /// Cubic metre per hour.
    #[serde(rename = "m3_h")]
    CubicMetrePerHour,
    /// Litre per hour.
    #[serde(rename = "L_h")]
    LitrePerHour,
    /// US gallon per minute and square foot.
    #[serde(rename = "gpm_ft2")]
    UsGallonPerMinuteSquareFoot,
    /// Metre per hour.
    #[serde(rename = "m_h")]
    MetrePerHour,
    /// Pound-force per square inch.
    #[serde(rename = "psi")]
    Psi,
    /// Bar, 100 000 Pa.
    #[serde(rename = "bar")]
    Bar,
    /// Kilopascal.
    #[serde(rename = "kPa")]
    Kilopascal,
    /// Hundredth.
    #[serde(rename = "percent")]
    Percent,
    /// One.
    #[serde(rename = "ratio")]
    One,
    /// Piece.
    #[serde(rename = "each")]
    Each,
    /// Second.
    #[serde(rename = "s")]
    Second,
    /// Minute.
    #[serde(rename = "min")]
    Minute,
    /// Hour.
    #[serde(rename = "h")]
    Hour,
    /// Day of 24 hours.
    #[serde(rename = "d")]
    Day,
    /// US gallon per day.
    #[serde(rename = "gal_d")]
    UsGallonPerDay,
    /// Litre per day.
    #[serde(rename = "L_d")]
    LitrePerDay,
    /// Cubic metre per day.
    #[serde(rename = "m3_d")]
    CubicMetrePerDay,
    /// Grain per cubic foot: what a volume of resin takes up.
    #[serde(rename = "gr_ft3")]
    GrainPerCubicFoot,
    /// Milligram per litre of the thing itself.
    #[serde(rename = "mg_L")]
    MilligramPerLitre,
    /// Microgram per litre of the thing itself.
    #[serde(rename = "ug_L")]
    MicrogramPerLitre,
    /// Milligram per litre as calcium carbonate.
    #[serde(rename = "mg_L_CaCO3")]
    AsCalciumCarbonate,
    /// Grain per US gallon, as calcium carbonate.
    #[serde(rename = "gr_gal")]
    GrainPerGallon,
    /// German degree: ten milligrams of CaO in a litre.
    #[serde(rename = "dH")]
    GermanDegree,
    /// French degree: ten milligrams of CaCO₃ in a litre.
    #[serde(rename = "fH")]
    FrenchDegree,
    /// Milliequivalent per litre.
    #[serde(rename = "meq_L")]
    MilliequivalentPerLitre,
    /// Millimole per litre of calcium, magnesium or carbonate.
    #[serde(rename = "mmol_L")]
    MillimolePerLitre,
    /// Milligram per litre as calcium.
    #[serde(rename = "mg_L_Ca")]
    AsCalcium,
    /// Milligram per litre as magnesium.
    #[serde(rename = "mg_L_Mg")]
    AsMagnesium,
    /// Milligram per litre as bicarbonate.
    #[serde(rename = "mg_L_HCO3")]
    AsBicarbonate,
    /// Gram per litre as calcium carbonate: what a volume of resin takes up.
    #[serde(rename = "g_L_CaCO3")]
    GramPerLitreAsCalciumCarbonate,
    /// Equivalent per litre of resin.
    #[serde(rename = "eq_L")]
    EquivalentPerLitre,
}

// Definitions, exact. Inch, foot and pound: international yard and pound agreement of 1959.
// Gallon of 231 cubic inches, ounce, litre, bar, standard gravity: NIST SP 811 (2008), appendix B.
const INCH: f64 = 0.0254;
const FOOT: f64 = 0.3048;
const SQUARE_FOOT: f64 = 0.092_903_04;
const CUBIC_INCH: f64 = 0.000_016_387_064;
const CUBIC_FOOT: f64 = 0.028_316_846_592;
const LITRE: f64 = 0.001;
const US_GALLON: f64 = 0.003_785_411_784;
const POUND: f64 = 0.453_592_37;
const OUNCE: f64 = 0.028_349_523_125;
const STANDARD_GRAVITY: f64 = 9.806_65;
const MINUTE: f64 = 60.0;
const HOUR: f64 = 3600.0;
const DAY: f64 = 86_400.0;
/// A seven-thousandth of a pound.
const GRAIN: f64 = 0.000_064_798_91;
// Molar masses, kg/mol, of the standard atomic weights of 2021, abridged (IUPAC).
const CALCIUM_CARBONATE: f64 = 0.100_086;
const CALCIUM_OXIDE: f64 = 0.056_077;
const CALCIUM: f64 = 0.040_078;
const MAGNESIUM: f64 = 0.024_305;
const BICARBONATE: f64 = 0.061_016;
/// Kelvin at 0 °C.
const ICE_POINT: f64 = 273.15;
/// Degrees Fahrenheit from absolute zero to 0 °F.
const FAHRENHEIT_ZERO: f64 = 459.67;

/// All a unit is, in one row.
struct Row {
    id: &'static str,
    symbol: &'static str,
    dimension: Dimension,
    factor: f64,
}

const fn row(id: &'static str, symbol: &'static str, dimension: Dimension, factor: f64) -> Row {
    Row { id, symbol, dimension, factor }
}

impl Unit {
    /// Every unit, in the order in which a list would show them.
    pub const ALL: &'static [Self] = &[
        Self::Inch,
        Self::Foot,
        Self::Millimetre,
        Self::Centimetre,
        Self::Metre,
        Self::SquareFoot,
        Self::SquareMetre,
        Self::CubicFoot,
        Self::CubicInch,
        Self::Litre,
        Self::CubicMetre,
        Self::UsGallon,
        Self::Pound,
        Self::Kilogram,
        Self::Gram,
        Self::Tonne,
        Self::Ounce,
        Self::PoundPerCubicFoot,
        Self::KilogramPerCubicMetre,
        Self::GramPerLitre,
        Self::KilogramPerLitre,
        Self::Celsius,
        Self::Fahrenheit,
        Self::UsGallonPerMinute,
        Self::LitrePerMinute,
        Self::CubicMetrePerHour,
        Self::LitrePerHour,
        Self::UsGallonPerMinuteSquareFoot,
        Self::MetrePerHour,
        Self::Psi,
        Self::Bar,
        Self::Kilopascal,
        Self::Percent,
        Self::One,
        Self::Each,
        Self::Second,
        Self::Minute,
        Self::Hour,
        Self::Day,
        Self::UsGallonPerDay,
        Self::LitrePerDay,
        Self::CubicMetrePerDay,
        Self::GrainPerCubicFoot,
        Self::MilligramPerLitre,
        Self::MicrogramPerLitre,
        Self::AsCalciumCarbonate,
        Self::GrainPerGallon,
        Self::GermanDegree,
        Self::FrenchDegree,
        Self::MilliequivalentPerLitre,
        Self::MillimolePerLitre,
        Self::AsCalcium,
        Self::AsMagnesium,
        Self::AsBicarbonate,
        Self::GramPerLitreAsCalciumCarbonate,
        Self::EquivalentPerLitre,
    ];

    const fn row(self) -> Row {
        use Dimension::{
            Area, Concentration, Count, Density, FlowPerArea, Hardness, Length, Mass, Pressure, Ratio, Temperature,
            Time, Volume, VolumeFlow,
        };
        match self {
            Self::Inch => row("in", "in", Length, INCH),
            Self::Foot => row("ft", "ft", Length, FOOT),
            Self::Millimetre => row("mm", "mm", Length, 0.001),
            Self::Centimetre => row("cm", "cm", Length, 0.01),
            Self::Metre => row("m", "m", Length, 1.0),
            Self::SquareFoot => row("ft2", "sq ft", Area, SQUARE_FOOT),
            Self::SquareMetre => row("m2", "m²", Area, 1.0),
            Self::CubicFoot => row("ft3", "cu ft", Volume, CUBIC_FOOT),
            Self::CubicInch => row("in3", "cu in", Volume, CUBIC_INCH),
            Self::Litre => row("L", "L", Volume, LITRE),
            Self::CubicMetre => row("m3", "m³", Volume, 1.0),
            Self::UsGallon => row("gal_us", "gal", Volume, US_GALLON),
            Self::Pound => row("lb", "lb", Mass, POUND),
            Self::Kilogram => row("kg", "kg", Mass, 1.0),
            Self::Gram => row("g", "g", Mass, 0.001),
            Self::Tonne => row("t", "t", Mass, 1000.0),
            Self::Ounce => row("oz", "oz", Mass, OUNCE),
            Self::PoundPerCubicFoot => row("lb_ft3", "lb/ft³", Density, POUND / CUBIC_FOOT),
            Self::KilogramPerCubicMetre => row("kg_m3", "kg/m³", Density, 1.0),
            Self::GramPerLitre => row("g_L", "g/L", Density, 1.0),
            Self::KilogramPerLitre => row("kg_L", "kg/L", Density, 1000.0),
            Self::Celsius => row("C", "°C", Temperature, 1.0),
            Self::Fahrenheit => row("F", "°F", Temperature, 5.0 / 9.0),
            Self::UsGallonPerMinute => row("gpm", "gpm", VolumeFlow, US_GALLON / MINUTE),
            Self::LitrePerMinute => row("L_min", "L/min", VolumeFlow, LITRE / MINUTE),
            Self::CubicMetrePerHour => row("m3_h", "m³/h", VolumeFlow, 1.0 / HOUR),
            Self::LitrePerHour => row("L_h", "L/h", VolumeFlow, LITRE / HOUR),
            Self::UsGallonPerMinuteSquareFoot => {
                row("gpm_ft2", "gpm/ft²", FlowPerArea, US_GALLON / MINUTE / SQUARE_FOOT)
            }
            Self::MetrePerHour => row("m_h", "m/h", FlowPerArea, 1.0 / HOUR),
            Self::Psi => row("psi", "psi", Pressure, POUND * STANDARD_GRAVITY / (INCH * INCH)),
            Self::Bar => row("bar", "bar", Pressure, 100_000.0),
            Self::Kilopascal => row("kPa", "kPa", Pressure, 1000.0),
            Self::Percent => row("percent", "%", Ratio, 0.01),
            Self::One => row("ratio", "", Ratio, 1.0),
            Self::Each => row("each", "", Count, 1.0),
            Self::Second => row("s", "s", Time, 1.0),
            Self::Minute => row("min", "min", Time, MINUTE),
            Self::Hour => row("h", "h", Time, HOUR),
            Self::Day => row("d", "d", Time, DAY),
            Self::UsGallonPerDay => row("gal_d", "gal/d", VolumeFlow, US_GALLON / DAY),
            Self::LitrePerDay => row("L_d", "L/d", VolumeFlow, LITRE / DAY),
            Self::CubicMetrePerDay => row("m3_d", "m³/d", VolumeFlow, 1.0 / DAY),
            Self::GrainPerCubicFoot => row("gr_ft3", "gr/cu ft CaCO₃", Hardness, GRAIN / CUBIC_FOOT),
            Self::MilligramPerLitre => row("mg_L", "mg/L", Concentration, 0.001),
            Self::MicrogramPerLitre => row("ug_L", "µg/L", Concentration, 0.000_001),
            Self::AsCalciumCarbonate => row("mg_L_CaCO3", "mg/L CaCO₃", Hardness, 0.001),
            Self::GrainPerGallon => row("gr_gal", "gr/gal", Hardness, GRAIN / US_GALLON),
            Self::GermanDegree => row("dH", "°dH", Hardness, 0.01 * CALCIUM_CARBONATE / CALCIUM_OXIDE),
            Self::FrenchDegree => row("fH", "°fH", Hardness, 0.01),
            Self::MilliequivalentPerLitre => row("meq_L", "meq/L", Hardness, CALCIUM_CARBONATE / 2.0),
            Self::MillimolePerLitre => row("mmol_L", "mmol/L", Hardness, CALCIUM_CARBONATE),
            Self::GramPerLitreAsCalciumCarbonate => row("g_L_CaCO3", "g/L CaCO₃", Hardness, 1.0),
            Self::EquivalentPerLitre => row("eq_L", "eq/L", Hardness, 1000.0 * CALCIUM_CARBONATE / 2.0),
            Self::AsCalcium => row("mg_L_Ca", "mg/L Ca", Hardness, 0.001 * CALCIUM_CARBONATE / CALCIUM),
            Self::AsMagnesium => row("mg_L_Mg", "mg/L Mg", Hardness, 0.001 * CALCIUM_CARBONATE / MAGNESIUM),
            Self::AsBicarbonate => {
                row("mg_L_HCO3", "mg/L HCO₃", Hardness, 0.001 * CALCIUM_CARBONATE / (2.0 * BICARBONATE))
            }
        }
    }

    /// The permanent id, as a saved job holds it.
    #[must_use]
    pub const fn id(self) -> &'static str {
        self.row().id
    }

    /// The unit as the trade writes it, short; nothing for a bare number or a count.
    #[must_use]
    pub const fn symbol(self) -> &'static str {
        self.row().symbol
    }

    /// What it measures.
    #[must_use]
    pub const fn dimension(self) -> Dimension {
        self.row().dimension
    }

    /// How many SI units one of this unit is. For a temperature this is the size of a degree in
    /// kelvin, fit for differences only: [`Unit::to_si`] knows where the scale begins.
    ///
    /// # Sources
    /// International yard and pound agreement (1959): inch, foot, pound. B. N. Taylor, A. Thompson,
    /// *Guide for the Use of the International System of Units*, NIST SP 811 (2008), appendix B: the
    /// rest.
    #[must_use]
    pub const fn factor(self) -> f64 {
        self.row().factor
    }

    /// A number of this unit in SI.
    #[must_use]
    pub fn to_si(self, value: f64) -> f64 {
        match self {
            Self::Celsius => value + ICE_POINT,
            Self::Fahrenheit => (value + FAHRENHEIT_ZERO) * 5.0 / 9.0,
            _ => value * self.factor(),
        }
    }

    /// A number in SI in this unit.
    #[must_use]
    pub fn from_si(self, si: f64) -> f64 {
        match self {
            Self::Celsius => si - ICE_POINT,
            Self::Fahrenheit => si * 9.0 / 5.0 - FAHRENHEIT_ZERO,
            _ => si / self.factor(),
        }
    }

    /// The units a quantity may be typed in, the usual ones first.
    #[must_use]
    pub const fn of(dimension: Dimension) -> &'static [Self] {
        match dimension {
            Dimension::Length => &[Self::Inch, Self::Foot, Self::Millimetre, Self::Centimetre, Self::Metre],
            Dimension::Area => &[Self::SquareFoot, Self::SquareMetre],
            Dimension::Volume => &[Self::CubicFoot, Self::Litre, Self::UsGallon, Self::CubicMetre, Self::CubicInch],
            Dimension::Mass => &[Self::Pound, Self::Kilogram, Self::Ounce, Self::Gram, Self::Tonne],
            Dimension::Density => {
                &[Self::PoundPerCubicFoot, Self::KilogramPerCubicMetre, Self::GramPerLitre, Self::KilogramPerLitre]
            }
            Dimension::Temperature => &[Self::Fahrenheit, Self::Celsius],
            Dimension::VolumeFlow => &[
                Self::UsGallonPerMinute,
                Self::LitrePerMinute,
                Self::CubicMetrePerHour,
                Self::LitrePerHour,
                Self::UsGallonPerDay,
                Self::LitrePerDay,
                Self::CubicMetrePerDay,
            ],
            Dimension::FlowPerArea => &[Self::UsGallonPerMinuteSquareFoot, Self::MetrePerHour],
            Dimension::Pressure => &[Self::Psi, Self::Bar, Self::Kilopascal],
            Dimension::Time => &[Self::Second, Self::Minute, Self::Hour, Self::Day],
            Dimension::Ratio => &[Self::Percent, Self::One],
            Dimension::Count => &[Self::Each],
            Dimension::Concentration => &[Self::MilligramPerLitre, Self::MicrogramPerLitre],
            Dimension::Hardness => &[
                Self::AsCalciumCarbonate,
                Self::GrainPerGallon,
                Self::GermanDegree,
                Self::FrenchDegree,
                Self::MilliequivalentPerLitre,
                Self::MillimolePerLitre,
                Self::AsCalcium,
                Self::AsMagnesium,
                Self::AsBicarbonate,
                Self::GrainPerCubicFoot,
                Self::GramPerLitreAsCalciumCarbonate,
                Self::EquivalentPerLitre,
            ],
        }
    }
}
