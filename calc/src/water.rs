//! Water: its density and viscosity by temperature.

use crate::quantity::{
    Amount, DynamicViscosity, Fault, Figure, Formula, Known, MassDensity, Problem, Temperature, Term, kelvins,
    kilograms_per_cubic_metre, pascal_seconds,
};

/// Nought degrees Celsius, in kelvins: exact by definition.
pub const CELSIUS_ZERO_K: f64 = 273.15;

/// What water in a vessel may be: 0 to 60 °C.
const SITE_K: (f64, f64) = (CELSIUS_ZERO_K, CELSIUS_ZERO_K + 60.0);

/// Where the release's equations hold at 0.1 MPa; below 0 °C for water that hasn't frozen.
const RELEASE_K: (f64, f64) = (253.15, 383.15);

/// Water at one temperature.
#[derive(Clone, Debug, PartialEq)]
pub struct Water {
    /// Its temperature.
    pub temperature: Known<Temperature>,
    /// Its density.
    pub density: Figure<MassDensity>,
    /// Its viscosity.
    pub viscosity: Figure<DynamicViscosity>,
}

/// Water as an inner loop needs it: kg/m³ and Pa·s.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Fluid {
    pub(crate) density: f64,
    pub(crate) viscosity: f64,
}

impl Water {
    /// Water as it comes to a vessel.
    ///
    /// # Errors
    /// [`Term::WaterTemperature`] outside 0 to 60 °C.
    ///
    /// # Sources
    /// As [`liquid_density`] and [`liquid_viscosity`].
    ///
    /// # Example
    /// ```
    /// use bedwright_calc::quantity::{Known, kelvins};
    /// use bedwright_calc::water::Water;
    /// let water = Water::at(&Known::measured(kelvins(273.15 + 20.0))).unwrap();
    /// assert!((water.density.value.value - 998.2).abs() < 0.05);
    /// assert!(Water::at(&Known::measured(kelvins(273.15 + 61.0))).is_err());
    /// ```
    pub fn at(temperature: &Known<Temperature>) -> Result<Water, Problem> {
        within(temperature, SITE_K)?;
        Ok(Water {
            temperature: *temperature,
            density: liquid_density(temperature)?,
            viscosity: liquid_viscosity(temperature)?,
        })
    }

    pub(crate) fn fluid(&self) -> Fluid {
        Fluid { density: self.density.value.value, viscosity: self.viscosity.value.value }
    }
}

fn within(temperature: &Known<Temperature>, (low, high): (f64, f64)) -> Result<(), Problem> {
    if (low..=high).contains(&temperature.value.value) {
        return Ok(());
    }
    let amount = |k: f64| Amount::Temperature(kelvins(k));
    Err(Problem::new(
        Term::WaterTemperature,
        Fault::OutOfRange { value: temperature.value.into(), low: amount(low), high: amount(high) },
    ))
}

/// Density of liquid water at 0.1 MPa.
///
/// ```text
/// ρ = p₀/(R·Tᵣ·(a₅ + Σ aᵢ·αⁿⁱ + Σ bᵢ·βᵐⁱ)),  α = Tᵣ/(593 K − T),  β = Tᵣ/(T − 232 K)
/// ```
///
/// | symbol | here | unit |
/// |---|---|---|
/// | T | `temperature` | K |
/// | ρ | result | kg/m³ |
/// | Tᵣ, p₀, R | 10 K, 100 000 Pa, 461.51805 J/(kg·K) | |
///
/// # Validity
/// 253.15 to 383.15 K; below 273.15 K for water that hasn't frozen. Pressure on site changes it by less than 0.05 %.
///
/// # Errors
/// [`Term::WaterTemperature`] outside that range.
///
/// # Sources
/// IAPWS SR6-08 (2011), eq. 1 with table 1, as coded in the public package iapws 1.5.5; the release itself was not read.
///
/// # Example
/// ```
/// use bedwright_calc::quantity::{Known, kelvins};
/// // Table 8 of the release: 997.047013 kg/m³ at 298.15 K.
/// let density = bedwright_calc::water::liquid_density(&Known::typed(kelvins(298.15))).unwrap();
/// assert!((density.value.value - 997.047013).abs() < 5e-7);
/// ```
pub fn liquid_density(temperature: &Known<Temperature>) -> Result<Figure<MassDensity>, Problem> {
    within(temperature, RELEASE_K)?;
    let value = kilograms_per_cubic_metre(density(temperature.value.value));
    Ok(Figure::new(value, Formula::WaterDensity, vec![temperature.input(Term::WaterTemperature)]))
}

/// Viscosity of liquid water at 0.1 MPa.
///
/// ```text
/// µ = 10⁻⁶ · Σ aᵢ·(T/300 K)^bᵢ
/// ```
///
/// | symbol | here | unit |
/// |---|---|---|
/// | T | `temperature` | K |
/// | µ | result | Pa·s |
///
/// # Validity
/// 253.15 to 383.15 K.
///
/// # Errors
/// [`Term::WaterTemperature`] outside that range.
///
/// # Sources
/// IAPWS SR6-08 (2011), eq. 7, as coded in the public package iapws 1.5.5; the release itself was not read.
///
/// # Example
/// ```
/// use bedwright_calc::quantity::{Known, kelvins};
/// // Table 8 of the release: 889.996774 µPa·s at 298.15 K.
/// let viscosity = bedwright_calc::water::liquid_viscosity(&Known::typed(kelvins(298.15))).unwrap();
/// assert!((viscosity.value.value * 1e6 - 889.996774).abs() < 5e-7);
/// ```
pub fn liquid_viscosity(temperature: &Known<Temperature>) -> Result<Figure<DynamicViscosity>, Problem> {
    within(temperature, RELEASE_K)?;
    let value = pascal_seconds(viscosity(temperature.value.value));
    Ok(Figure::new(value, Formula::WaterViscosity, vec![temperature.input(Term::WaterTemperature)]))
}

/// Water for an inner loop; kept inside what a site may have.
pub(crate) fn fluid_at(kelvin: f64) -> Fluid {
    Fluid { density: density(kelvin), viscosity: viscosity(kelvin) }
}

fn density(kelvin: f64) -> f64 {
    const GAS_CONSTANT: f64 = 461.518_05;
    const REFERENCE_K: f64 = 10.0;
    const REFERENCE_PA: f64 = 1e5;
    let alpha = REFERENCE_K / (593.0 - kelvin);
    let beta = REFERENCE_K / (kelvin - 232.0);
    let a4 = alpha.powi(4);
    let a = a4
        * (6.744_584_46e3
            + alpha
                * (-2.225_216_04e5
                    + alpha * alpha * (1.002_312_47e8 + alpha * (-1.635_521_18e9 + alpha * 8.322_996_58e9))));
    let b = beta
        * (5.785_452_92e-3
            + beta
                * (-1.531_956_65e-2
                    + beta
                        * (3.113_378_59e-2
                            + beta * (-4.235_462_41e-2 + beta * (3.387_135_07e-2 + beta * -1.199_467_61e-2)))));
    REFERENCE_PA / (GAS_CONSTANT * REFERENCE_K * (1.937_631_57e-2 + a + b))
}

fn viscosity(kelvin: f64) -> f64 {
    let t = kelvin / 300.0;
    let sum = 280.68 * libm::pow(t, -1.9)
        + 511.45 * libm::pow(t, -7.7)
        + 61.131 * libm::pow(t, -19.6)
        + 0.459_03 * libm::pow(t, -40.0);
    1e-6 * sum
}
