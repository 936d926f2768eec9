//! From what was typed of a water's analysis and of what a bed holds to what can be calculated with.

use bedwright_calc::hydraulics::Purpose;
use bedwright_calc::quantity::{
    Assumption, Concentration, Known, Length, MassDensity, Pressure, Term, Time, Velocity, VolumeRate,
    cubic_metres_per_second, kilograms_per_cubic_metre, metres, metres_per_second, pascals, seconds,
};

use super::site::Reader;
use crate::edit::WaterOf;
use crate::field::WaterField;
use crate::id::Id;
use crate::sections::site::Entries;

/// The analysis of the site's water and what was typed of how long a vessel's bed lasts.
#[derive(Clone, Debug, PartialEq)]
pub struct LifeReading {
    /// pH.
    pub ph: Option<Known<f64>>,
    /// Alkalinity, as calcium carbonate.
    pub alkalinity: Option<Known<Concentration>>,
    /// Free carbon dioxide.
    pub dioxide: Option<Known<Concentration>>,
    /// Calcium hardness, as calcium carbonate.
    pub calcium: Option<Known<Concentration>>,
    /// Magnesium hardness, as calcium carbonate.
    pub magnesium: Option<Known<Concentration>>,
    /// Sodium.
    pub sodium: Option<Known<Concentration>>,
    /// Sulfate.
    pub sulfate: Option<Known<Concentration>>,
    /// Chloride.
    pub chloride: Option<Known<Concentration>>,
    /// Everything dissolved.
    pub dissolved: Option<Known<Concentration>>,
    /// Iron.
    pub iron: Option<Known<Concentration>>,
    /// Manganese.
    pub manganese: Option<Known<Concentration>>,
    /// Aluminium.
    pub aluminium: Option<Known<Concentration>>,
    /// Turbidity, NTU.
    pub turbidity: Option<Known<f64>>,
    /// Chlorine, free and combined.
    pub chlorine: Option<Known<Concentration>>,
    /// Suspended solids.
    pub solids: Option<Known<Concentration>>,
    /// Water the site uses.
    pub daily_use: Option<Known<VolumeRate>>,
    /// Depth of carbon that halves chlorine in a test.
    pub half_length: Option<Known<Length>>,
    /// Flow per area of that test.
    pub test_velocity: Option<Known<Velocity>>,
    /// What comes in of the thing that is taken out.
    pub inlet: Option<Known<Concentration>>,
    /// What may leave of it.
    pub outlet: Option<Known<Concentration>>,
    /// What a gram of carbon holds at 1 mg/L, mg.
    pub factor: Option<Known<f64>>,
    /// Exponent of its isotherm.
    pub exponent: Option<Known<f64>>,
    /// What a volume of media holds.
    pub capacity: Option<Known<Concentration>>,
    /// Share of it that is used.
    pub usable: Known<f64>,
    /// Salt on a volume of resin.
    pub salt_dose: Known<MassDensity>,
    /// What a volume of resin takes up at that.
    pub resin_capacity: Option<Known<Concentration>>,
    /// Share kept in reserve.
    pub reserve: Known<f64>,
    /// Hardness that iron counts for.
    pub iron_factor: Known<f64>,
    /// Share of a bed that may go before it is filled up.
    pub refill_share: Known<f64>,
    /// Loss of pressure at which it is washed.
    pub terminal_drop: Option<Known<Pressure>>,
    /// How long a wash takes.
    pub wash_time: Option<Known<Time>>,
    /// Time between two washes.
    pub wash_interval: Option<Known<Time>>,
    /// Service times by depth, from the person's own readings.
    pub readings: Vec<(Known<Length>, Known<Time>)>,
}

/// The entries of the site's analysis that a purpose asks for.
#[must_use]
pub fn asked_of_analysis(purpose: Purpose) -> &'static [WaterField] {
    use WaterField as F;
    match purpose {
        Purpose::Neutralising => &[
            F::DailyUse,
            F::Ph,
            F::Alkalinity,
            F::CarbonDioxide,
            F::CalciumHardness,
            F::MagnesiumHardness,
            F::Sodium,
            F::Sulfate,
            F::Chloride,
            F::DissolvedSolids,
            F::Iron,
            F::Aluminium,
            F::Turbidity,
        ],
        Purpose::Softening => &[F::DailyUse, F::CalciumHardness, F::MagnesiumHardness, F::Iron],
        Purpose::IronManganese => &[F::DailyUse, F::Ph, F::Iron, F::Manganese],
        Purpose::Dechlorination | Purpose::Chloramine => &[F::DailyUse, F::Chlorine],
        Purpose::Sediment => &[F::DailyUse, F::SuspendedSolids],
        Purpose::Organics | Purpose::AnionExchange | Purpose::Other => &[F::DailyUse],
    }
}

/// The entries of a vessel that its purpose asks for.
#[must_use]
pub fn asked_of_life(purpose: Purpose) -> &'static [WaterField] {
    use WaterField as F;
    match purpose {
        Purpose::Neutralising => &[F::RefillShare, F::WashTime, F::WashInterval],
        Purpose::Softening => &[F::SaltDose, F::ResinCapacity, F::Reserve, F::IronFactor],
        Purpose::Dechlorination | Purpose::Chloramine => &[
            F::HalfLength,
            F::TestVelocity,
            F::OutletLimit,
            F::MediaCapacity,
            F::UsableShare,
            F::WashTime,
            F::WashInterval,
        ],
        Purpose::Organics => &[
            F::InletConcentration,
            F::OutletLimit,
            F::FreundlichFactor,
            F::FreundlichExponent,
            F::UsableShare,
            F::ReadingDepth1,
            F::ReadingTime1,
            F::ReadingDepth2,
            F::ReadingTime2,
            F::ReadingDepth3,
            F::ReadingTime3,
            F::WashTime,
            F::WashInterval,
        ],
        Purpose::Sediment => &[F::MediaCapacity, F::OutletLimit, F::TerminalDrop, F::WashTime],
        Purpose::IronManganese => &[F::MediaCapacity, F::UsableShare, F::WashTime, F::WashInterval],
        Purpose::AnionExchange | Purpose::Other => {
            &[F::InletConcentration, F::OutletLimit, F::MediaCapacity, F::UsableShare, F::WashTime, F::WashInterval]
        }
    }
}

/// Reads both.
pub(super) fn read_life(
    reader: &mut Reader,
    site: &Entries,
    vessel: &Id,
    entries: &Entries,
    purpose: Purpose,
) -> LifeReading {
    use WaterField as F;
    let (of_site, of) = (WaterOf::Site, WaterOf::Vessel(vessel.clone()));
    let asked = asked_of_analysis(purpose);
    let mut analysis = |field: F| -> Option<Known<f64>> {
        if asked.contains(&field) { reader.typed(&of_site, site, field, |x| x) } else { None }
    };
    // Hardness and alkalinity come as calcium carbonate, the rest as itself; both in kilograms per cubic metre.
    let held = |known: Option<Known<f64>>| known.map(concentration);
    let ph = analysis(F::Ph);
    let alkalinity = held(analysis(F::Alkalinity));
    let dioxide = held(analysis(F::CarbonDioxide));
    let calcium = held(analysis(F::CalciumHardness));
    let magnesium = held(analysis(F::MagnesiumHardness));
    let sodium = held(analysis(F::Sodium));
    let sulfate = held(analysis(F::Sulfate));
    let chloride = held(analysis(F::Chloride));
    let dissolved = held(analysis(F::DissolvedSolids));
    let iron = held(analysis(F::Iron));
    let manganese = held(analysis(F::Manganese));
    let aluminium = held(analysis(F::Aluminium));
    let turbidity = analysis(F::Turbidity);
    let chlorine = held(analysis(F::Chlorine));
    let solids = held(analysis(F::SuspendedSolids));
    let daily_use = analysis(F::DailyUse).map(|known| with(known, cubic_metres_per_second));
    let asked = asked_of_life(purpose);
    let mut own = |field: F| -> Option<Known<f64>> {
        if asked.contains(&field) { reader.typed(&of, entries, field, |x| x) } else { None }
    };
    let half_length = own(F::HalfLength).map(|known| with(known, metres));
    let test_velocity = own(F::TestVelocity).map(|known| with(known, metres_per_second));
    let inlet = held(own(F::InletConcentration));
    let outlet = held(own(F::OutletLimit));
    let (factor, exponent) = (own(F::FreundlichFactor), own(F::FreundlichExponent));
    let capacity = held(own(F::MediaCapacity));
    let (usable, dose) = (own(F::UsableShare), own(F::SaltDose));
    let resin_capacity = held(own(F::ResinCapacity));
    let (reserve, iron_factor, refill) = (own(F::Reserve), own(F::IronFactor), own(F::RefillShare));
    let terminal_drop = own(F::TerminalDrop).map(|known| with(known, pascals));
    let wash_time = own(F::WashTime).map(|known| with(known, seconds));
    let wash_interval = own(F::WashInterval).map(|known| with(known, seconds));
    let mut readings = Vec::new();
    for (depth, time) in
        [(F::ReadingDepth1, F::ReadingTime1), (F::ReadingDepth2, F::ReadingTime2), (F::ReadingDepth3, F::ReadingTime3)]
    {
        if let (Some(depth), Some(time)) = (own(depth), own(time)) {
            readings.push((with(depth, metres), with(time, seconds)));
        }
    }
    let mut or = |field: F, typed: Option<Known<f64>>, assumed: Assumption| -> Known<f64> {
        if asked.contains(&field) {
            reader.or(&of, field, typed, assumed.number(), |x: &f64| *x)
        } else {
            assumed.number()
        }
    };
    let carbon = matches!(purpose, Purpose::Organics | Purpose::Dechlorination | Purpose::Chloramine);
    let share = if carbon { Assumption::CarbonUsable } else { Assumption::MediaUsable };
    LifeReading {
        ph,
        alkalinity,
        dioxide,
        calcium,
        magnesium,
        sodium,
        sulfate,
        chloride,
        dissolved,
        iron,
        manganese,
        aluminium,
        turbidity,
        chlorine,
        solids,
        daily_use,
        half_length,
        test_velocity,
        inlet,
        outlet,
        factor,
        exponent,
        capacity,
        usable: or(F::UsableShare, usable, share),
        salt_dose: with(or(F::SaltDose, dose, Assumption::SaltDose), kilograms_per_cubic_metre),
        resin_capacity,
        reserve: or(F::Reserve, reserve, Assumption::SoftenerReserve),
        iron_factor: or(F::IronFactor, iron_factor, Assumption::IronFactor),
        refill_share: or(F::RefillShare, refill, Assumption::RefillShare),
        terminal_drop,
        wash_time,
        wash_interval,
        readings,
    }
}

/// A bare number as the quantity it is.
fn with<Q>(known: Known<f64>, quantity: impl Fn(f64) -> Q) -> Known<Q> {
    Known { value: quantity(known.value), basis: known.basis, source: known.source }
}

fn concentration(known: Known<f64>) -> Known<Concentration> {
    with(known, Concentration::kilograms_per_cubic_metre)
}

/// The entry that a quantity of a bed's life comes from.
#[must_use]
pub fn life_field_of(term: Term, vessel: &Id) -> Option<(WaterOf, WaterField)> {
    use WaterField as F;
    let field = match term {
        Term::Ph | Term::ChargeBalance => F::Ph,
        Term::Alkalinity => F::Alkalinity,
        Term::CarbonDioxide => F::CarbonDioxide,
        Term::CalciumHardness | Term::Hardness => F::CalciumHardness,
        Term::MagnesiumHardness => F::MagnesiumHardness,
        Term::Sodium => F::Sodium,
        Term::Sulfate => F::Sulfate,
        Term::Chloride => F::Chloride,
        Term::DissolvedSolids => F::DissolvedSolids,
        Term::Iron => F::Iron,
        Term::Manganese => F::Manganese,
        Term::AverageUse => F::DailyUse,
        Term::HalfLength => F::HalfLength,
        Term::TestVelocity => F::TestVelocity,
        Term::InletConcentration => F::InletConcentration,
        Term::OutletConcentration => F::OutletLimit,
        Term::FreundlichFactor => F::FreundlichFactor,
        Term::FreundlichExponent => F::FreundlichExponent,
        Term::MediaCapacity => F::MediaCapacity,
        Term::UsableShare => F::UsableShare,
        Term::SaltDose => F::SaltDose,
        Term::ResinCapacity => F::ResinCapacity,
        Term::Reserve => F::Reserve,
        Term::IronFactor => F::IronFactor,
        Term::RefillShare => F::RefillShare,
        Term::ServiceTime => F::ReadingTime1,
        Term::TerminalDrop => F::TerminalDrop,
        _ => return None,
    };
    let of = if WaterField::OF_ANALYSIS.contains(&field) { WaterOf::Site } else { WaterOf::Vessel(vessel.clone()) };
    Some((of, field))
}
