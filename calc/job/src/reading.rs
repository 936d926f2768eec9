//! From what was typed to what can be calculated with: every entry read, every gap filled or named.

pub mod life;
pub mod search;
pub mod site;

use bedwright_calc::fill::{Layer, Target};
use bedwright_calc::material::{Material, Pack};
use bedwright_calc::quantity::{
    Assumption, Basis, Known, Length, MassDensity, Source, Term, Volume, cubic_metres, kilograms,
    kilograms_per_cubic_metre, metres,
};
use bedwright_calc::supply::Spent;
use bedwright_calc::vessel::{BottomCollector, DiameterBy, Head, Measures, NominalDiameter, Riser};
use litemap::LiteMap;

use crate::entry::{Dimension, Entry, Misread, Understood, nominal_size};
use crate::field::{KitField, SurveyField};
use crate::sections::kit::Kit;
use crate::sections::plan::{LayerPlan, TargetKind};
use crate::sections::survey::{CollectorKind, DiameterWay, HeadShape, Standing, SurveyEntry, VesselSurvey};

/// What a vessel's survey says, read.
#[derive(Clone, Debug, PartialEq, Default)]
pub struct SurveyReading {
    /// Entries that make no sense.
    pub misread: LiteMap<SurveyField, Misread>,
    /// Entries that do, for the echo beside the field.
    pub understood: LiteMap<SurveyField, Understood>,
    /// What is assumed where nothing was typed.
    pub assumed: LiteMap<SurveyField, Known<Length>>,
    /// Needed, and neither typed nor assumed.
    pub missing: Vec<SurveyField>,
    /// The nominal diameter and height, inches.
    pub nominal: Option<(f64, f64)>,
    /// Everything a vessel is made from; none while something is misread or missing.
    pub measures: Option<Measures>,
}

impl SurveyReading {
    /// The asked figures that nobody measured: what a quote that can be defended still lacks.
    #[must_use]
    pub fn unmeasured(&self, survey: &VesselSurvey) -> Vec<SurveyField> {
        let unmeasured_diameter = (survey.diameter_way == DiameterWay::Nominal).then_some(SurveyField::InsideDiameter);
        unmeasured_diameter
            .into_iter()
            .chain(asked(survey))
            .filter(|field| !matches!(field, SurveyField::NominalSize | SurveyField::RiserAllowance))
            .filter(|field| {
                !survey
                    .entries
                    .get(field)
                    .is_some_and(|typed| typed.standing == Standing::Measured && !typed.entry.text.trim().is_empty())
                    || *field == SurveyField::InsideDiameter && survey.diameter_way == DiameterWay::Nominal
                    || self.misread.contains_key(field)
            })
            .collect()
    }
}

/// The entries that a vessel of these choices is asked for, in the order of the survey.
#[must_use]
pub fn asked(survey: &VesselSurvey) -> Vec<SurveyField> {
    use SurveyField as F;
    let mut fields = vec![F::NominalSize];
    match survey.diameter_way {
        DiameterWay::Nominal => {}
        DiameterWay::Measured => fields.push(F::InsideDiameter),
        DiameterWay::Circumference => fields.extend([F::Circumference, F::Wall]),
        DiameterWay::MeteredFill => fields.extend([F::MeteredVolume, F::TapeBefore, F::TapeAfter]),
        DiameterWay::RiseOfBag => fields.extend([F::BagVolume, F::TapeBefore, F::TapeAfter]),
    }
    fields.push(F::InsideDepth);
    if survey.bottom_head == HeadShape::Conical {
        fields.push(F::ConeDepth);
    }
    fields.extend([F::NeckHeight, F::ClearBore]);
    if survey.riser && survey.opening.takes_riser() {
        fields.extend([F::RiserOutsideDiameter, F::RiserSeat, F::RiserAllowance]);
    }
    match survey.collector {
        CollectorKind::None => {}
        CollectorKind::Basket => {
            fields.extend([F::CollectorDiameter, F::CollectorBottom, F::CollectorTop, F::TopSlot, F::SlotWidth]);
        }
        CollectorKind::HubAndLaterals => fields.extend([
            F::LateralCount,
            F::CollectorDiameter,
            F::LateralLength,
            F::LateralAxis,
            F::TopSlot,
            F::SlotWidth,
        ]),
        CollectorKind::SlottedPlate => fields.extend([F::CollectorTop, F::SlotWidth]),
        CollectorKind::NozzlePlate => fields.extend([F::CollectorTop, F::TopSlot, F::SlotWidth]),
    }
    if survey.upper_collector {
        fields.push(F::UpperCollector);
    }
    fields
}

/// Entries that may stay empty with nothing assumed.
const fn optional(field: SurveyField) -> bool {
    matches!(field, SurveyField::SlotWidth | SurveyField::NominalSize)
}

/// Reads a vessel's survey.
#[must_use]
pub fn read_survey(survey: &VesselSurvey) -> SurveyReading {
    let mut reader = Reader { survey, reading: SurveyReading::default() };
    let measures = reader.measures();
    let mut reading = reader.reading;
    if reading.misread.is_empty() && reading.missing.is_empty() {
        reading.measures = measures;
    }
    reading
}

struct Reader<'a> {
    survey: &'a VesselSurvey,
    reading: SurveyReading,
}

impl Reader<'_> {
    fn typed(&mut self, field: SurveyField) -> Option<Known<f64>> {
        let SurveyEntry { entry, standing } = self.survey.entries.get(&field)?;
        if entry.text.trim().is_empty() {
            return None;
        }
        match of_dimension(entry, field.dimension()) {
            Ok(understood) => {
                self.reading.understood.insert(field, understood);
                let basis = match standing {
                    Standing::Measured => Basis::Measured,
                    Standing::Assumed => Basis::Assumed,
                };
                Some(Known { value: understood.si, basis, source: Source::Typed })
            }
            Err(misread) => {
                self.reading.misread.insert(field, misread);
                None
            }
        }
    }

    fn length(&mut self, field: SurveyField, assume: Option<Known<Length>>) -> Option<Known<Length>> {
        if let Some(known) = self.typed(field) {
            return Some(Known { value: metres(known.value), basis: known.basis, source: known.source });
        }
        if self.reading.misread.contains_key(&field) {
            return None;
        }
        match assume {
            Some(known) => {
                self.reading.assumed.insert(field, known);
                Some(known)
            }
            None => {
                if !optional(field) {
                    self.reading.missing.push(field);
                }
                None
            }
        }
    }

    fn volume(&mut self, field: SurveyField) -> Option<Known<Volume>> {
        let known = self.typed(field);
        if known.is_none() && !self.reading.misread.contains_key(&field) {
            self.reading.missing.push(field);
        }
        known.map(|known| Known { value: cubic_metres(known.value), basis: known.basis, source: known.source })
    }

    fn nominal(&mut self) {
        let Some(typed) = self.survey.entries.get(&SurveyField::NominalSize) else { return };
        if typed.entry.text.trim().is_empty() {
            return;
        }
        match nominal_size(&typed.entry.text) {
            Ok(size) => self.reading.nominal = Some(size),
            Err(misread) => {
                self.reading.misread.insert(SurveyField::NominalSize, misread);
            }
        }
    }

    fn measures(&mut self) -> Option<Measures> {
        use SurveyField as F;
        let survey = self.survey;
        self.nominal();
        let inch = |x: f64| metres(x * 0.0254);
        let nominal_diameter = self.reading.nominal.map(|(d, _)| Known::typed(inch(d)));
        let nominal_height = self.reading.nominal.map(|(_, h)| Known::typed(inch(h)));

        let zero = Known::assumed(metres(0.0), Source::CommonPractice);
        let depth_start = nominal_height
            .and_then(|height| bedwright_calc::vessel::nominal::inside_depth_nominal(&height).ok())
            .map(|figure| Known::assumed(figure.value, Source::FromMemory));
        let bore_start = nominal_diameter
            .and_then(|d| NominalDiameter::of(d.value))
            .map_or(Known::assumed(inch(2.5), Source::FromMemory), |row| Known::assumed(row.usual_bore, row.source));

        let diameter_by = match survey.diameter_way {
            DiameterWay::Nominal => match nominal_diameter {
                Some(nominal) => Some(DiameterBy::Nominal { nominal }),
                None => {
                    if !self.reading.misread.contains_key(&F::NominalSize) {
                        self.reading.missing.push(F::NominalSize);
                    }
                    None
                }
            },
            DiameterWay::Measured => self.length(F::InsideDiameter, None).map(|inside| DiameterBy::Measured { inside }),
            DiameterWay::Circumference => {
                let (around, wall) = (self.length(F::Circumference, None), self.length(F::Wall, None));
                around.zip(wall).map(|(around, wall)| DiameterBy::Circumference { around, wall })
            }
            DiameterWay::MeteredFill | DiameterWay::RiseOfBag => {
                let bag = survey.diameter_way == DiameterWay::RiseOfBag;
                let volume = self.volume(if bag { F::BagVolume } else { F::MeteredVolume });
                let (before, after) = (self.length(F::TapeBefore, None), self.length(F::TapeAfter, None));
                volume.zip(before.zip(after)).map(|(volume, (before, after))| {
                    if bag {
                        DiameterBy::RiseOfBag { volume, before, after }
                    } else {
                        DiameterBy::MeteredFill { volume, before, after }
                    }
                })
            }
        };
        let inside_depth = self.length(F::InsideDepth, depth_start);
        let cone = if survey.bottom_head == HeadShape::Conical { self.length(F::ConeDepth, None) } else { None };
        let neck_height = self.length(F::NeckHeight, Some(Assumption::NeckHeight.length()));
        let clear_bore = self.length(F::ClearBore, Some(bore_start));
        let has_riser = survey.riser && survey.opening.takes_riser();
        let riser = if has_riser {
            let outside = self.length(F::RiserOutsideDiameter, Some(Assumption::RiserOutsideDiameter.length()));
            let seat = self.length(F::RiserSeat, Some(zero));
            let allowance = self.length(F::RiserAllowance, Some(zero));
            outside.zip(seat.zip(allowance)).map(|(outside_diameter, (seat, allowance))| Riser {
                outside_diameter,
                seat,
                allowance,
            })
        } else {
            None
        };
        let bottom_collector = self.collector(zero);
        let upper_collector = if survey.upper_collector { self.length(F::UpperCollector, None) } else { None };

        Some(Measures {
            nominal_diameter,
            diameter_by: diameter_by?,
            inside_depth: inside_depth?,
            bottom_head: head(survey.bottom_head, cone)?,
            top_head: head(survey.top_head, None)?,
            neck_height: neck_height?,
            clear_bore: clear_bore?,
            opening: survey.opening,
            riser,
            bottom_collector: bottom_collector?,
            upper_collector,
        })
    }

    fn collector(&mut self, zero: Known<Length>) -> Option<BottomCollector> {
        use SurveyField as F;
        match self.survey.collector {
            CollectorKind::None => Some(BottomCollector::None),
            CollectorKind::Basket => {
                let diameter = self.length(F::CollectorDiameter, None);
                let bottom = self.length(F::CollectorBottom, Some(zero));
                let top = self.length(F::CollectorTop, None);
                let assumed_slot = top.map(|top| Known { basis: Basis::Assumed, ..top });
                let top_slot = self.length(F::TopSlot, assumed_slot);
                let slot_width = self.length(F::SlotWidth, None);
                Some(BottomCollector::Basket {
                    diameter: diameter?,
                    bottom: bottom?,
                    top: top?,
                    top_slot: top_slot?,
                    slot_width,
                })
            }
            CollectorKind::HubAndLaterals => {
                let mut count = self.typed(F::LateralCount);
                if let Some(Known { value, .. }) = count
                    && !(value.fract() == 0.0 && (0.0..=1e6).contains(&value))
                {
                    self.reading.misread.insert(F::LateralCount, Misread::NotWhole { value });
                    count = None;
                }
                if count.is_none() && !self.reading.misread.contains_key(&F::LateralCount) {
                    self.reading.missing.push(F::LateralCount);
                }
                let diameter = self.length(F::CollectorDiameter, None);
                let length = self.length(F::LateralLength, None);
                let axis = self.length(F::LateralAxis, None);
                let assumed_slot = axis.zip(diameter).map(|(axis, diameter)| Known {
                    value: metres(axis.value.value + diameter.value.value / 2.0),
                    basis: Basis::Assumed,
                    source: Source::CommonPractice,
                });
                let top_slot = self.length(F::TopSlot, assumed_slot);
                let slot_width = self.length(F::SlotWidth, None);
                let count = count?.value as u32;
                Some(BottomCollector::HubAndLaterals {
                    count,
                    diameter: diameter?,
                    length: length?,
                    axis: axis?,
                    top_slot: top_slot?,
                    slot_width,
                })
            }
            CollectorKind::SlottedPlate => {
                let top = self.length(F::CollectorTop, None);
                let slot_width = self.length(F::SlotWidth, None);
                Some(BottomCollector::SlottedPlate { top: top?, slot_width })
            }
            CollectorKind::NozzlePlate => {
                let top = self.length(F::CollectorTop, None);
                let assumed_slot = top.map(|top| Known { basis: Basis::Assumed, ..top });
                let top_slot = self.length(F::TopSlot, assumed_slot);
                let slot_width = self.length(F::SlotWidth, None);
                Some(BottomCollector::NozzlePlate { top: top?, top_slot: top_slot?, slot_width })
            }
        }
    }
}

fn head(shape: HeadShape, cone: Option<Known<Length>>) -> Option<Head> {
    Some(match shape {
        HeadShape::Flat => Head::Flat,
        HeadShape::Ellipsoidal => Head::Ellipsoidal,
        HeadShape::Hemispherical => Head::Hemispherical,
        HeadShape::AsmeFd => Head::AsmeFd,
        HeadShape::Din28011 => Head::Din28011,
        HeadShape::Din28013 => Head::Din28013,
        HeadShape::Conical => Head::Conical { depth: cone? },
    })
}

/// The entry of the survey that a quantity comes from.
#[must_use]
pub fn field_of(term: Term, survey: &VesselSurvey) -> Option<SurveyField> {
    use SurveyField as F;
    Some(match term {
        Term::NominalDiameter | Term::NominalHeight => F::NominalSize,
        Term::InsideDiameter => match survey.diameter_way {
            DiameterWay::Nominal => F::NominalSize,
            DiameterWay::Measured => F::InsideDiameter,
            DiameterWay::Circumference => F::Circumference,
            DiameterWay::MeteredFill => F::MeteredVolume,
            DiameterWay::RiseOfBag => F::BagVolume,
        },
        Term::Circumference => F::Circumference,
        Term::Wall => F::Wall,
        Term::MeteredVolume => F::MeteredVolume,
        Term::PackVolume => F::BagVolume,
        Term::TapeBefore => F::TapeBefore,
        Term::TapeAfter => F::TapeAfter,
        Term::InsideDepth | Term::TopHeadDepth | Term::StraightSide => F::InsideDepth,
        Term::BottomHeadDepth => {
            if survey.bottom_head == HeadShape::Conical {
                F::ConeDepth
            } else {
                F::InsideDepth
            }
        }
        Term::NeckHeight => F::NeckHeight,
        Term::ClearBore => F::ClearBore,
        Term::RiserOutsideDiameter => F::RiserOutsideDiameter,
        Term::RiserSeat => F::RiserSeat,
        Term::RiserAllowance => F::RiserAllowance,
        Term::CollectorDiameter => F::CollectorDiameter,
        Term::CollectorBottom => F::CollectorBottom,
        Term::LateralAxis => F::LateralAxis,
        Term::CollectorTop => F::CollectorTop,
        Term::LateralCount => F::LateralCount,
        Term::LateralLength => F::LateralLength,
        Term::TopSlot => F::TopSlot,
        Term::SlotWidth => F::SlotWidth,
        Term::UpperCollector => F::UpperCollector,
        _ => return None,
    })
}

/// Why a layer can't be worked out, before any engineering.
#[derive(Clone, Debug, PartialEq)]
pub enum LayerFault {
    /// No material was chosen.
    NoMaterial,
    /// The material is one this version doesn't know.
    UnknownMaterial(String),
    /// The pack is one this version doesn't know.
    UnknownPack(String),
    /// No amount was typed.
    NoAmount,
    /// The amount makes no sense.
    Amount(Misread),
    /// The bulk density makes no sense.
    BulkDensity(Misread),
}

/// Reads a layer.
///
/// # Errors
/// The first thing that is wrong with it.
pub fn read_layer(plan: &LayerPlan) -> Result<Layer, LayerFault> {
    if plan.material.is_empty() {
        return Err(LayerFault::NoMaterial);
    }
    let material = Material::of(&plan.material).ok_or_else(|| LayerFault::UnknownMaterial(plan.material.clone()))?;
    let pack =
        if plan.pack.is_empty() { Pack::of_material(&plan.material).into_iter().next() } else { Pack::of(&plan.pack) };
    let pack = pack.ok_or_else(|| LayerFault::UnknownPack(plan.pack.clone()))?;
    let bulk_density = match plan.bulk_density.as_ref().filter(|entry| !entry.text.trim().is_empty()) {
        None => material.usual_bulk_density(),
        Some(entry) => density(entry).map_err(LayerFault::BulkDensity)?,
    };
    let amount = plan.amount.as_ref().filter(|entry| !entry.text.trim().is_empty()).ok_or(LayerFault::NoAmount)?;
    let si = of_dimension(amount, plan.target.dimension()).map_err(LayerFault::Amount)?.si;
    let length = || Known::typed(metres(si));
    let target = match plan.target {
        TargetKind::Cover => Target::Cover(length()),
        TargetKind::Depth => Target::Depth(length()),
        TargetKind::Volume => Target::Volume(Known::typed(cubic_metres(si))),
        TargetKind::Weight => Target::Weight(Known::typed(kilograms(si))),
        TargetKind::Packs => Target::Packs(Known::typed(si)),
        TargetKind::Freeboard => Target::Freeboard(length()),
        TargetKind::FreeboardRatio => Target::FreeboardRatio(Known::typed(si)),
        TargetKind::TapeReading => Target::TapeReading(length()),
    };
    Ok(Layer { material, role: plan.role, target, minimum: plan.minimum, pack, bulk_density })
}

/// What an entry means, where its unit measures what is asked for.
fn of_dimension(entry: &Entry, wanted: Dimension) -> Result<Understood, Misread> {
    if entry.unit.dimension() == wanted {
        entry.understood()
    } else {
        Err(Misread::WrongDimension { found: entry.unit, wanted })
    }
}

fn density(entry: &Entry) -> Result<Known<MassDensity>, Misread> {
    Ok(Known::typed(kilograms_per_cubic_metre(of_dimension(entry, Dimension::Density)?.si)))
}

/// Reads what the parts of a job are counted by; the usual where nothing was typed.
///
/// # Errors
/// Which entry is no number of its kind, and why.
pub fn read_spent(kit: &Kit) -> Result<Spent, (KitField, Misread)> {
    let mut spent = Spent::default();
    let typed = |field: KitField| -> Result<Option<f64>, (KitField, Misread)> {
        match kit.entries.get(&field).filter(|entry| !entry.text.trim().is_empty()) {
            None => Ok(None),
            Some(entry) => {
                of_dimension(entry, field.dimension()).map(|read| Some(read.si)).map_err(|misread| (field, misread))
            }
        }
    };
    if let Some(bulking) = typed(KitField::Bulking)? {
        spent.bulking = Known::typed(bulking);
    }
    if let Some(drum) = typed(KitField::DrumVolume)? {
        spent.drum = Known::typed(cubic_metres(drum));
    }
    Ok(spent)
}

/// Reads the bucket part bags are measured with; the usual one where nothing was typed.
///
/// # Errors
/// Why what was typed is no volume.
pub fn read_bucket(entry: Option<&Entry>) -> Result<Known<Volume>, Misread> {
    match entry.filter(|entry| !entry.text.trim().is_empty()) {
        None => Ok(Assumption::Bucket.volume()),
        Some(entry) => Ok(Known::typed(cubic_metres(of_dimension(entry, Dimension::Volume)?.si))),
    }
}
