//! The one door through which a job changes.

mod back;
mod joined;
pub mod quote;
mod refused;
mod touched;

use std::sync::Arc;

use bedwright_calc::fill::Role;
use bedwright_calc::hydraulics::{Arrangement, Purpose, Regime};
use bedwright_calc::supply::JobKind;
use bedwright_calc::vessel::Opening;

use crate::as_loaded::is_signed;
use crate::back::Back;
use crate::entry::Entry;
use crate::field::{KitField, LayerField, PlanField, SurveyField, WaterField};
use crate::id::Id;
use crate::job::{Job, Record};
use crate::prices::{Catalogue, PriceRow};
use crate::sections::head::TextField;
use crate::sections::loading::{Acknowledgement, TagChange};
use crate::sections::picking::{PickField, PickLine};
use crate::sections::plan::{LayerPlan, TargetKind, VesselPlan};
use crate::sections::site::WaterSource;
use crate::sections::supply::SupplyEdit;
use crate::sections::survey::{CollectorKind, DiameterWay, HeadShape, Path, SurveyEntry, VesselSurvey};
use quote::QuoteEdit;
use touched::touch;

pub use refused::Refused;
pub use touched::sections_of;

/// One change.
#[derive(Clone, Debug, PartialEq)]
pub enum Edit {
    /// A text about the job.
    Text {
        /// Which.
        field: TextField,
        /// What it says now.
        text: String,
    },
    /// What the visit is for.
    Kind(JobKind),
    /// Into the bin on a day, or out of it.
    Bin(Option<String>),
    /// A vessel, with its plan, put in at a place.
    InsertVessel {
        /// Where.
        at: usize,
        /// The vessel.
        vessel: Arc<VesselSurvey>,
        /// Its plan.
        plan: Arc<VesselPlan>,
    },
    /// A vessel taken out.
    RemoveVessel(Id),
    /// A vessel moved to a place.
    MoveVessel {
        /// Which.
        vessel: Id,
        /// Where to.
        to: usize,
    },
    /// A vessel's tags.
    Tags {
        /// Which vessel.
        vessel: Id,
        /// Its tags now.
        tags: Vec<String>,
    },
    /// Notes on a vessel.
    VesselNotes {
        /// Which vessel.
        vessel: Id,
        /// What they say now.
        text: String,
    },
    /// Something chosen of a vessel.
    Choose {
        /// Which vessel.
        vessel: Id,
        /// What was chosen.
        choice: Choice,
    },
    /// A typed value of a vessel; none when it was cleared.
    Survey {
        /// Which vessel.
        vessel: Id,
        /// Which value.
        field: SurveyField,
        /// What it is now.
        entry: Option<SurveyEntry>,
    },
    /// A typed value of a plan.
    Plan {
        /// Which vessel.
        vessel: Id,
        /// Which value.
        field: PlanField,
        /// What it is now.
        entry: Option<Entry>,
    },
    /// A layer put in at a place, counted from the bottom.
    InsertLayer {
        /// Which vessel.
        vessel: Id,
        /// Where.
        at: usize,
        /// The layer.
        layer: LayerPlan,
    },
    /// A layer taken out.
    RemoveLayer {
        /// Which vessel.
        vessel: Id,
        /// Which layer.
        layer: Id,
    },
    /// A layer moved to a place, counted from the bottom.
    MoveLayer {
        /// Which vessel.
        vessel: Id,
        /// Which layer.
        layer: Id,
        /// Where to.
        to: usize,
    },
    /// Something chosen of a layer.
    Layer {
        /// Which vessel.
        vessel: Id,
        /// Which layer.
        layer: Id,
        /// What was chosen.
        choice: LayerChoice,
    },
    /// A typed value of a layer.
    LayerEntry {
        /// Which vessel.
        vessel: Id,
        /// Which layer.
        layer: Id,
        /// Which value.
        field: LayerField,
        /// What it is now.
        entry: Option<Entry>,
    },
    /// Something chosen of what vessels are looked for.
    Search(SearchChoice),
    /// Where the site's water comes from.
    Source(WaterSource),
    /// Something chosen of what a vessel is asked to do.
    Duty {
        /// Which vessel.
        vessel: Id,
        /// What was chosen.
        choice: DutyChoice,
    },
    /// A typed value of the site, of what a vessel is asked to do, or of a layer's grains; none when it was cleared.
    Water {
        /// Of what.
        of: WaterOf,
        /// Which value.
        field: WaterField,
        /// What it is now.
        entry: Option<SurveyEntry>,
    },
    /// A row of the price list that the job carries, put under its key or taken away.
    Price {
        /// Its key.
        key: String,
        /// The row; none when it is taken away.
        row: Option<Arc<PriceRow>>,
    },
    /// The list that rows were taken from.
    Catalogue(Catalogue),
    /// A typed value the parts of the job are counted by; none when it was cleared.
    Kit {
        /// Which value.
        field: KitField,
        /// What it is now.
        entry: Option<Entry>,
    },
    /// A line left out of the bill, or taken into it again.
    LeaveOut {
        /// The key of the row that prices it.
        key: String,
        /// Why; none when it is taken in again.
        reason: Option<String>,
    },
    /// A text on a line of the pick list.
    PickText {
        /// The item's key.
        key: String,
        /// Which text.
        field: PickField,
        /// What it says now.
        text: String,
    },
    /// A tick on a line of the pick list.
    Pick {
        /// The item's key.
        key: String,
        /// How many were picked; none when the tick was taken off.
        picked: Option<u32>,
    },
    /// A change of the quote.
    Quote(QuoteEdit),
    /// That somebody read the cautions of a sheet, or not.
    Acknowledge {
        /// Who read which, and when.
        of: Acknowledgement,
        /// Whether they did.
        read: bool,
    },
    /// Something of a vessel's removal or loading.
    Load {
        /// Which vessel.
        vessel: Id,
        /// Its tag.
        tag: String,
        /// What changed.
        change: TagChange,
    },
    /// How material is bought, cut, lifted or stacked, or what the shelf gave.
    Supply(SupplyEdit),
    /// A record added. It can't be undone: a correction is added.
    AddRecord(Record),
    /// Values put back to what they were: what was done before the page was loaded is taken back so.
    Back(Vec<Back>),
    /// What came of joining this job with another state of it: its sections as they are there, and its records as well.
    Joined(Arc<Job>),
    /// Several at once, done and undone together.
    All(Vec<Edit>),
}

/// A choice of a vessel.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Choice {
    /// How it was found.
    Path(Path),
    /// How its inside diameter is found.
    Diameter(DiameterWay),
    /// Its bottom head.
    BottomHead(HeadShape),
    /// Its top head.
    TopHead(HeadShape),
    /// How it opens.
    Opening(Opening),
    /// Whether it has a riser.
    Riser(bool),
    /// Its bottom collector.
    Collector(CollectorKind),
    /// Whether it has an upper collector.
    UpperCollector(bool),
}

/// A choice of what a vessel is asked to do.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum DutyChoice {
    /// What its bed is there for; none for what is usual for its media.
    Purpose(Option<Purpose>),
    /// How water goes through it.
    Regime(Regime),
    /// How it shares the site's flow.
    Arrangement(Arrangement),
    /// Where what was typed of its bed's life comes from.
    Grounds(String),
}

/// A choice of what vessels are looked for.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum SearchChoice {
    /// What the bed is to be there for.
    Purpose(Purpose),
    /// How several vessels would share the flow.
    Arrangement(Arrangement),
    /// What treats the water, by its id; empty for what is usual.
    Media(String),
    /// The gravel in the bottom head, by its id; empty for none.
    Underbed(String),
    /// Whether the riser comes in parts.
    RiserInParts(bool),
}

/// What a typed value of the water side belongs to.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum WaterOf {
    /// The site.
    Site,
    /// A vessel.
    Vessel(Id),
    /// A layer of a vessel.
    Layer(Id, Id),
    /// What vessels are looked for.
    Search,
}

/// A choice of a layer.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum LayerChoice {
    /// The material.
    Material(String),
    /// The pack.
    Pack(String),
    /// What it is there for.
    Role(Role),
    /// What its amount is.
    Target(TargetKind),
    /// Whether the amount is a stated minimum.
    Minimum(bool),
}

/// What takes a change back; `None` for a record, which stays.
pub type Inverse = Option<Edit>;

/// Changes a job, and says how to take it back. Applying the inverse gives the same content as before; the
/// section's revision counts on, since two states are never the same state.
///
/// # Errors
/// [`Refused`]; the job is then as it was.
///
/// # Example
/// ```
/// use bedwright_job::{Edit, Job, apply, id::Id, sections::head::TextField};
/// let device = Id::new("phone-1");
/// let mut job = Job::new(Id::new("job-1"), "2026-11-24");
/// let undo = apply(&mut job, Edit::Text { field: TextField::Title, text: "Mill".into() }, &device).unwrap();
/// assert_eq!(job.head.body.title, "Mill");
/// apply(&mut job, undo.unwrap(), &device).unwrap();
/// assert_eq!(job.head.body.title, "");
/// ```
pub fn apply(job: &mut Job, edit: Edit, device: &Id) -> Result<Inverse, Refused> {
    if let Edit::All(edits) = edit {
        return apply_all(job, edits, device);
    }
    if let Edit::Back(backs) = edit {
        return back::apply(job, &backs, device);
    }
    if let Edit::Joined(with) = edit {
        return Ok(Some(joined::take(job, &with, device)));
    }
    let sections = sections_of(&edit);
    for &section in sections {
        if job.is_locked(section) {
            return Err(Refused::Locked(section));
        }
    }
    let inverse = change(job, edit)?;
    for &section in sections {
        touch(job, section, device);
    }
    Ok(inverse)
}

fn apply_all(job: &mut Job, edits: Vec<Edit>, device: &Id) -> Result<Inverse, Refused> {
    let before = job.clone();
    let mut inverses = Vec::with_capacity(edits.len());
    for edit in edits {
        match apply(job, edit, device) {
            Ok(inverse) => inverses.extend(inverse),
            Err(refused) => {
                *job = before;
                return Err(refused);
            }
        }
    }
    inverses.reverse();
    Ok((!inverses.is_empty()).then_some(Edit::All(inverses)))
}

fn change(job: &mut Job, edit: Edit) -> Result<Inverse, Refused> {
    Ok(Some(match edit {
        Edit::Text { field, text } => {
            Edit::Text { field, text: std::mem::replace(job.head.body.text_mut(field), text) }
        }
        Edit::Kind(kind) => Edit::Kind(std::mem::replace(&mut job.head.body.kind, kind)),
        Edit::Bin(day) => Edit::Bin(std::mem::replace(&mut job.head.body.binned, day)),
        Edit::InsertVessel { at, vessel, plan } => insert_vessel(job, at, vessel, plan)?,
        Edit::RemoveVessel(id) => {
            let at = vessel_place(job, &id)?;
            let vessel = job.survey.body.vessels.remove(at);
            let plan = job.plan.body.vessels.remove(&id).unwrap_or_default();
            Edit::InsertVessel { at, vessel, plan }
        }
        Edit::MoveVessel { vessel, to } => {
            let from = vessel_place(job, &vessel)?;
            let vessels = &mut job.survey.body.vessels;
            if to >= vessels.len() {
                return Err(Refused::NoPlace { at: to, of: vessels.len() });
            }
            let moved = vessels.remove(from);
            vessels.insert(to, moved);
            Edit::MoveVessel { vessel, to: from }
        }
        Edit::Tags { vessel, tags } => {
            let tags = std::mem::replace(&mut vessel_mut(job, &vessel)?.tags, tags);
            Edit::Tags { vessel, tags }
        }
        Edit::VesselNotes { vessel, text } => {
            let text = std::mem::replace(&mut vessel_mut(job, &vessel)?.notes, text);
            Edit::VesselNotes { vessel, text }
        }
        Edit::Choose { vessel, choice } => {
            let choice = choose(vessel_mut(job, &vessel)?, choice)?;
            Edit::Choose { vessel, choice }
        }
        Edit::Survey { vessel, field, entry } => {
            let entries = &mut vessel_mut(job, &vessel)?.entries;
            let entry = match entry {
                Some(entry) => entries.insert(field, entry),
                None => entries.remove(&field),
            };
            Edit::Survey { vessel, field, entry }
        }
        Edit::Plan { vessel, field: PlanField::Bucket, entry } => {
            let plan = plan_mut(job, &vessel)?;
            let entry = std::mem::replace(&mut plan.bucket, entry);
            tidy_plan(job, &vessel);
            Edit::Plan { vessel, field: PlanField::Bucket, entry }
        }
        Edit::InsertLayer { vessel, at, layer } => {
            let layers = &mut plan_mut(job, &vessel)?.layers;
            if at > layers.len() {
                let of = layers.len();
                tidy_plan(job, &vessel);
                return Err(Refused::NoPlace { at, of });
            }
            if layers.iter().any(|there| there.id == layer.id) {
                return Err(Refused::SameId(layer.id));
            }
            let id = layer.id.clone();
            layers.insert(at, layer);
            Edit::RemoveLayer { vessel, layer: id }
        }
        Edit::RemoveLayer { vessel, layer } => {
            let at = layer_place(job, &vessel, &layer)?;
            let layer = plan_mut(job, &vessel)?.layers.remove(at);
            tidy_plan(job, &vessel);
            Edit::InsertLayer { vessel, at, layer }
        }
        Edit::MoveLayer { vessel, layer, to } => {
            let from = layer_place(job, &vessel, &layer)?;
            let layers = &mut plan_mut(job, &vessel)?.layers;
            if to >= layers.len() {
                return Err(Refused::NoPlace { at: to, of: layers.len() });
            }
            let moved = layers.remove(from);
            layers.insert(to, moved);
            Edit::MoveLayer { vessel, layer, to: from }
        }
        Edit::Layer { vessel, layer, choice } => {
            let there = layer_mut(job, &vessel, &layer)?;
            let choice = match choice {
                LayerChoice::Material(id) => LayerChoice::Material(std::mem::replace(&mut there.material, id)),
                LayerChoice::Pack(id) => LayerChoice::Pack(std::mem::replace(&mut there.pack, id)),
                LayerChoice::Role(role) => LayerChoice::Role(std::mem::replace(&mut there.role, role)),
                LayerChoice::Target(kind) => LayerChoice::Target(std::mem::replace(&mut there.target, kind)),
                LayerChoice::Minimum(yes) => LayerChoice::Minimum(std::mem::replace(&mut there.minimum, yes)),
            };
            Edit::Layer { vessel, layer, choice }
        }
        Edit::LayerEntry { vessel, layer, field, entry } => {
            let there = layer_mut(job, &vessel, &layer)?;
            let place = match field {
                LayerField::Amount => &mut there.amount,
                LayerField::BulkDensity => &mut there.bulk_density,
            };
            let entry = std::mem::replace(place, entry);
            Edit::LayerEntry { vessel, layer, field, entry }
        }
        Edit::Search(choice) => {
            let search = &mut job.search.body;
            Edit::Search(match choice {
                SearchChoice::Purpose(to) => SearchChoice::Purpose(std::mem::replace(&mut search.purpose, to)),
                SearchChoice::Arrangement(to) => {
                    SearchChoice::Arrangement(std::mem::replace(&mut search.arrangement, to))
                }
                SearchChoice::Media(to) => SearchChoice::Media(std::mem::replace(&mut search.media, to)),
                SearchChoice::Underbed(to) => SearchChoice::Underbed(std::mem::replace(&mut search.underbed, to)),
                SearchChoice::RiserInParts(to) => {
                    SearchChoice::RiserInParts(std::mem::replace(&mut search.riser_in_parts, to))
                }
            })
        }
        Edit::Source(source) => Edit::Source(std::mem::replace(&mut job.site.body.source, source)),
        Edit::Duty { vessel, choice } => {
            vessel_place(job, &vessel)?;
            let duty = job.site.body.duty_mut(&vessel).ok_or_else(|| Refused::NoVessel(vessel.clone()))?;
            let choice = match choice {
                DutyChoice::Purpose(to) => DutyChoice::Purpose(std::mem::replace(&mut duty.purpose, to)),
                DutyChoice::Regime(to) => DutyChoice::Regime(std::mem::replace(&mut duty.regime, to)),
                DutyChoice::Grounds(to) => DutyChoice::Grounds(std::mem::replace(&mut duty.grounds, to)),
                DutyChoice::Arrangement(to) => DutyChoice::Arrangement(std::mem::replace(&mut duty.arrangement, to)),
            };
            job.site.body.tidy();
            Edit::Duty { vessel, choice }
        }
        Edit::Water { of, field, entry } => {
            let site = match &of {
                WaterOf::Site | WaterOf::Search => &mut job.site.body,
                WaterOf::Vessel(vessel) => {
                    vessel_place(job, vessel)?;
                    &mut job.site.body
                }
                WaterOf::Layer(vessel, layer) => {
                    layer_place(job, vessel, layer)?;
                    &mut job.site.body
                }
            };
            let entry = match &of {
                WaterOf::Site => site.entries.set(field, entry),
                WaterOf::Search => job.search.body.entries.set(field, entry),
                WaterOf::Vessel(vessel) => site.duty_mut(vessel).and_then(|duty| duty.entries.set(field, entry)),
                WaterOf::Layer(vessel, layer) => {
                    site.duty_mut(vessel).and_then(|duty| duty.set_grains(layer, field, entry))
                }
            };
            job.site.body.tidy();
            Edit::Water { of, field, entry }
        }
        Edit::Supply(edit) => Edit::Supply(job.supply.body.change(edit)),
        Edit::Price { key, row } => {
            if row.as_ref().is_some_and(|row| row.key != key || !row.is_sound()) {
                return Err(Refused::PriceRow(key));
            }
            let row = job.prices.body.set(&key, row);
            Edit::Price { key, row }
        }
        Edit::Catalogue(catalogue) => Edit::Catalogue(std::mem::replace(&mut job.prices.body.catalogue, catalogue)),
        Edit::Kit { field, entry } => {
            let entries = &mut job.kit.body.entries;
            let entry = match entry {
                Some(entry) => entries.insert(field, entry),
                None => entries.remove(&field),
            };
            Edit::Kit { field, entry }
        }
        Edit::LeaveOut { key, reason } => {
            let left_out = &mut job.kit.body.left_out;
            let reason = match reason {
                Some(reason) => left_out.insert(key.clone(), reason),
                None => left_out.remove(&key),
            };
            Edit::LeaveOut { key, reason }
        }
        Edit::PickText { key, field, text } => {
            let line = job.picking.body.lines.entry(key.clone()).or_default();
            let text = std::mem::replace(line.text_mut(field), text);
            tidy_line(job, &key);
            Edit::PickText { key, field, text }
        }
        Edit::Pick { key, picked } => {
            let line: &mut PickLine = job.picking.body.lines.entry(key.clone()).or_default();
            let picked = std::mem::replace(&mut line.picked, picked);
            tidy_line(job, &key);
            Edit::Pick { key, picked }
        }
        Edit::Quote(edit) => Edit::Quote(quote::change(&mut job.quote.body, edit)),
        Edit::Acknowledge { of, read } => {
            let read = job.loading.body.acknowledge(&of, read);
            Edit::Acknowledge { of, read }
        }
        Edit::Load { vessel, tag, change } => {
            vessel_place(job, &vessel)?;
            if is_signed(job, &vessel, &tag) {
                return Err(Refused::Signed);
            }
            let change = job.loading.body.change(&vessel, &tag, change).ok_or(Refused::NoDrum)?;
            Edit::Load { vessel, tag, change }
        }
        Edit::AddRecord(record) => {
            if job.records.iter().any(|there| there.id == record.id) {
                return Err(Refused::SameRecord(record.id));
            }
            job.records.push(record);
            return Ok(None);
        }
        // Taken apart before; kept here so that the match stays whole.
        Edit::All(_) | Edit::Back(_) | Edit::Joined(_) => return Ok(None),
    }))
}

fn insert_vessel(job: &mut Job, at: usize, vessel: Arc<VesselSurvey>, plan: Arc<VesselPlan>) -> Result<Edit, Refused> {
    let vessels = &mut job.survey.body.vessels;
    if at > vessels.len() {
        return Err(Refused::NoPlace { at, of: vessels.len() });
    }
    if vessels.iter().any(|there| there.id == vessel.id) {
        return Err(Refused::SameId(vessel.id.clone()));
    }
    if vessel.top_head == HeadShape::Conical {
        return Err(Refused::ConeOnTop);
    }
    let mut layers = plan.layers.iter();
    while let Some(layer) = layers.next() {
        if layers.clone().any(|other| other.id == layer.id) {
            return Err(Refused::SameId(layer.id.clone()));
        }
    }
    let id = vessel.id.clone();
    vessels.insert(at, vessel);
    if *plan != VesselPlan::default() {
        job.plan.body.vessels.insert(id.clone(), plan);
    }
    Ok(Edit::RemoveVessel(id))
}

fn choose(vessel: &mut VesselSurvey, choice: Choice) -> Result<Choice, Refused> {
    Ok(match choice {
        Choice::Path(path) => Choice::Path(std::mem::replace(&mut vessel.path, path)),
        Choice::Diameter(way) => Choice::Diameter(std::mem::replace(&mut vessel.diameter_way, way)),
        Choice::BottomHead(shape) => Choice::BottomHead(std::mem::replace(&mut vessel.bottom_head, shape)),
        Choice::TopHead(HeadShape::Conical) => return Err(Refused::ConeOnTop),
        Choice::TopHead(shape) => Choice::TopHead(std::mem::replace(&mut vessel.top_head, shape)),
        Choice::Opening(opening) => Choice::Opening(std::mem::replace(&mut vessel.opening, opening)),
        Choice::Riser(yes) => Choice::Riser(std::mem::replace(&mut vessel.riser, yes)),
        Choice::Collector(kind) => Choice::Collector(std::mem::replace(&mut vessel.collector, kind)),
        Choice::UpperCollector(yes) => Choice::UpperCollector(std::mem::replace(&mut vessel.upper_collector, yes)),
    })
}

fn vessel_place(job: &Job, id: &Id) -> Result<usize, Refused> {
    job.survey.body.vessels.iter().position(|vessel| vessel.id == *id).ok_or_else(|| Refused::NoVessel(id.clone()))
}

fn vessel_mut<'a>(job: &'a mut Job, id: &Id) -> Result<&'a mut VesselSurvey, Refused> {
    job.survey
        .body
        .vessels
        .iter_mut()
        .find(|vessel| vessel.id == *id)
        .map(Arc::make_mut)
        .ok_or_else(|| Refused::NoVessel(id.clone()))
}

fn plan_mut<'a>(job: &'a mut Job, id: &Id) -> Result<&'a mut VesselPlan, Refused> {
    vessel_place(job, id)?;
    Ok(Arc::make_mut(job.plan.body.vessels.entry(id.clone()).or_default()))
}

/// A plan that says nothing isn't kept, so that taking the first layer back leaves what was there before it.
fn tidy_plan(job: &mut Job, id: &Id) {
    if job.plan.body.vessels.get(id).is_some_and(|plan| **plan == VesselPlan::default()) {
        job.plan.body.vessels.remove(id);
    }
}

fn tidy_line(job: &mut Job, key: &str) {
    if job.picking.body.lines.get(key).is_some_and(PickLine::is_blank) {
        job.picking.body.lines.remove(key);
    }
}

fn layer_place(job: &Job, vessel: &Id, layer: &Id) -> Result<usize, Refused> {
    vessel_place(job, vessel)?;
    job.plan
        .body
        .vessels
        .get(vessel)
        .and_then(|plan| plan.layers.iter().position(|there| there.id == *layer))
        .ok_or_else(|| Refused::NoLayer(layer.clone()))
}

fn layer_mut<'a>(job: &'a mut Job, vessel: &Id, layer: &Id) -> Result<&'a mut LayerPlan, Refused> {
    let at = layer_place(job, vessel, layer)?;
    plan_mut(job, vessel)?.layers.get_mut(at).ok_or_else(|| Refused::NoLayer(layer.clone()))
}
