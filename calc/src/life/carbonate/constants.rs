//! Equilibrium constants of the species and of calcite, by temperature.
//!
//! Carbonate constants are those of L. N. Plummer and E. Busenberg (1982), Geochimica et Cosmochimica Acta 46(6),
//! 1011–1040, as the database `phreeqc.dat` of PHREEQC 3 holds them; every figure of this file was read there (the file
//! that the public package phreeqpython 1.6.2 carries). Brucite's stand in that package's `wateq4f_PWN.dat`.

/// The logarithm of a constant by temperature.
#[derive(Clone, Copy, Debug)]
pub(super) enum Constant {
    /// It is one: the species is a master of its own.
    Unit,
    /// `a₁ + a₂·T + a₃/T + a₄·log T + a₅/T² + a₆·T²`.
    Analytic([f64; 6]),
    /// Its value at 25 °C and the heat of the reaction, kcal/mol.
    Heat(f64, f64),
}

/// 25 °C, where constants with a heat are given.
const REFERENCE_K: f64 = 298.15;
/// J/(mol·K) and J/cal, as PHREEQC has them.
const GAS_CONSTANT: f64 = 8.314_70;
const JOULE_PER_CALORIE: f64 = 4.184;

impl Constant {
    /// The constant at a temperature in kelvins.
    pub(super) fn at(self, kelvin: f64) -> f64 {
        match self {
            Constant::Unit => 1.0,
            _ => libm::exp10(self.log_at(kelvin)),
        }
    }

    /// Its decimal logarithm.
    pub(super) fn log_at(self, kelvin: f64) -> f64 {
        match self {
            Constant::Unit => 0.0,
            Constant::Analytic([a1, a2, a3, a4, a5, a6]) => {
                a1 + a2 * kelvin
                    + a3 / kelvin
                    + a4 * libm::log10(kelvin)
                    + a5 / (kelvin * kelvin)
                    + a6 * kelvin * kelvin
            }
            Constant::Heat(log, kilocalories) => {
                let joules = kilocalories * 1000.0 * JOULE_PER_CALORIE;
                log - joules / (std::f64::consts::LN_10 * GAS_CONSTANT) * (1.0 / kelvin - 1.0 / REFERENCE_K)
            }
        }
    }
}

/// H₂O = OH⁻ + H⁺.
pub(super) const HYDROXIDE: Constant =
    Constant::Analytic([293.292_27, 0.136_083_3, -10_576.913, -123.731_58, 0.0, -6.996_455e-5]);
/// CO₃²⁻ + H⁺ = HCO₃⁻.
pub(super) const BICARBONATE: Constant =
    Constant::Analytic([107.887_1, 0.032_528_49, -5151.79, -38.925_61, 563_713.9, 0.0]);
/// CO₃²⁻ + 2 H⁺ = CO₂ + H₂O.
pub(super) const DIOXIDE: Constant =
    Constant::Analytic([464.196_5, 0.093_448_13, -26_986.16, -165.759_51, 2_248_628.9, 0.0]);
/// 2 CO₃²⁻ + 4 H⁺ = (CO₂)₂ + 2 H₂O: twice the line above, and 2 CO₂ = (CO₂)₂ of 8.68 − 0.0103·T − 2190/T.
pub(super) const DIOXIDE_PAIR: Constant = Constant::Analytic([
    2.0 * 464.196_5 + 8.68,
    2.0 * 0.093_448_13 - 0.0103,
    2.0 * -26_986.16 - 2190.0,
    2.0 * -165.759_51,
    2.0 * 2_248_628.9,
    0.0,
]);
/// SO₄²⁻ + H⁺ = HSO₄⁻.
pub(super) const BISULFATE: Constant = Constant::Analytic([-56.889, 0.006_473, 2307.9, 19.885_8, 0.0, 0.0]);
/// Ca²⁺ + H₂O = CaOH⁺ + H⁺.
pub(super) const CALCIUM_HYDROXIDE: Constant = Constant::Heat(-12.78, 0.0);
/// Ca²⁺ + CO₃²⁻ = CaCO₃, dissolved.
pub(super) const CALCIUM_CARBONATE: Constant =
    Constant::Analytic([-1228.732, -0.299_440, 35_512.75, 485.818, 0.0, 0.0]);
/// Ca²⁺ + CO₃²⁻ + H⁺ = CaHCO₃⁺.
pub(super) const CALCIUM_BICARBONATE: Constant =
    Constant::Analytic([1_317.007_1, 0.345_468_94, -39_916.84, -517.707_61, 563_713.9, 0.0]);
/// Ca²⁺ + SO₄²⁻ = CaSO₄, dissolved.
pub(super) const CALCIUM_SULFATE: Constant = Constant::Heat(2.25, 1.325);
/// Ca²⁺ + SO₄²⁻ + H⁺ = CaHSO₄⁺: Ca²⁺ + HSO₄⁻ of 1.08 on top of HSO₄⁻.
pub(super) const CALCIUM_BISULFATE: Constant =
    Constant::Analytic([-56.889 + 1.08, 0.006_473, 2307.9, 19.885_8, 0.0, 0.0]);
/// Mg²⁺ + H₂O = MgOH⁺ + H⁺.
pub(super) const MAGNESIUM_HYDROXIDE: Constant = Constant::Heat(-11.44, 15.952);
/// Mg²⁺ + CO₃²⁻ = MgCO₃, dissolved.
pub(super) const MAGNESIUM_CARBONATE: Constant = Constant::Analytic([0.9910, 0.006_67, 0.0, 0.0, 0.0, 0.0]);
/// Mg²⁺ + CO₃²⁻ + H⁺ = MgHCO₃⁺.
pub(super) const MAGNESIUM_BICARBONATE: Constant =
    Constant::Analytic([48.672_1, 0.032_528_49, -2614.335, -18.002_63, 563_713.9, 0.0]);
/// Mg²⁺ + SO₄²⁻ = MgSO₄, dissolved.
pub(super) const MAGNESIUM_SULFATE: Constant = Constant::Heat(2.37, 4.550);
/// Na⁺ + CO₃²⁻ = NaCO₃⁻.
pub(super) const SODIUM_CARBONATE: Constant = Constant::Heat(1.27, 8.91);
/// Na⁺ + HCO₃⁻ = NaHCO₃: −0.25 and −1 kcal on top of HCO₃⁻.
pub(super) const SODIUM_BICARBONATE: Constant = Constant::Heat(-0.25, -1.0);
/// Na⁺ + SO₄²⁻ = NaSO₄⁻.
pub(super) const SODIUM_SULFATE: Constant = Constant::Heat(0.7, 1.120);

/// CaCO₃ (calcite) = Ca²⁺ + CO₃²⁻.
pub(super) const CALCITE: Constant = Constant::Analytic([-171.906_5, -0.077_993, 2839.319, 71.595, 0.0, 0.0]);
/// Mg(OH)₂ (brucite) + 2 H⁺ = Mg²⁺ + 2 H₂O.
pub(super) const BRUCITE: Constant = Constant::Heat(16.84, -27.1);
