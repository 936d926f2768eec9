//! Molar masses, kg/mol.
//!
//! Standard atomic weights, abridged to five digits: Commission on Isotopic Abundances and Atomic Weights (IUPAC, 2021).
//! H 1.0080, C 12.011, O 15.999, Na 22.990, Mg 24.305, S 32.06, Cl 35.45, Ca 40.078.

pub(crate) const CALCIUM_CARBONATE: f64 = 0.100_086;
pub(crate) const CARBON_DIOXIDE: f64 = 0.044_009;
pub(crate) const MAGNESIUM_OXIDE: f64 = 0.040_304;
pub(crate) const CALCIUM: f64 = 0.040_078;
pub(crate) const MAGNESIUM: f64 = 0.024_305;
pub(crate) const SODIUM: f64 = 0.022_990;
pub(crate) const SULFATE: f64 = 0.096_056;
pub(crate) const CHLORIDE: f64 = 0.035_45;
/// A bicarbonate counts in dissolved solids as the half carbonate that is left when it dries, per equivalent.
pub(crate) const DRIED_ALKALINITY: f64 = 0.030_004;
