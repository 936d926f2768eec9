//! An invented job to look around in: a carbon filter that stands open and empty, and a softener in service.
//!
//! Every name and figure is made up, and the job is marked so that every sheet of it says so.

use std::sync::Arc;

use bedwright_calc::fill::Role;
use bedwright_calc::hydraulics::Arrangement;
use bedwright_calc::supply::JobKind;

use crate::edit::{Choice, DutyChoice, Edit, LayerChoice, WaterOf, apply};
use crate::entry::{Entry, Unit};
use crate::field::{LayerField, SurveyField, WaterField};
use crate::id::Id;
use crate::job::Job;
use crate::sections::head::TextField;
use crate::sections::plan::{LayerPlan, TargetKind, VesselPlan};
use crate::sections::site::WaterSource;
use crate::sections::survey::{CollectorKind, DiameterWay, Path, Standing, SurveyEntry, VesselSurvey};

/// The invented job, made by the same changes a person would make.
///
/// The first id is the carbon filter's, the second the softener's; two equal ones give a job of one vessel.
///
/// # Example
/// ```
/// use bedwright_job::{id::Id, sample::sample_job};
/// let job = sample_job(Id::new("sample"), [Id::new("filter"), Id::new("softener")], "2026-11-24");
/// assert!(job.head.body.sample);
/// assert_eq!(job.survey.body.vessels.len(), 2);
/// ```
#[must_use]
pub fn sample_job(id: Id, vessels: [Id; 2], created: &str) -> Job {
    let mut job = Job::new(id, created);
    job.head.body.sample = true;
    let device = Id::new("sample");
    let [filter, softener] = vessels;
    for edit in head()
        .into_iter()
        .chain(carbon_filter(&filter))
        .chain(self::softener(&softener))
        .chain(water(&filter, &softener))
    {
        // Only a vessel's id given twice is ever refused; its other changes then find a vessel to change.
        let _ = apply(&mut job, edit, &device);
    }
    job
}

fn head() -> Vec<Edit> {
    let text = |field: TextField, text: &str| Edit::Text { field, text: text.to_owned() };
    vec![
        text(TextField::Title, "Quillmoss Laundry (sample)"),
        text(TextField::Customer, "Quillmoss Laundry (invented)"),
        text(TextField::Site, "Plant room, 7 Tarn Row (invented)"),
        text(TextField::Owner, "Example Water Service (invented)"),
        text(TextField::Number, "S-001"),
        text(TextField::Notes, "Every name and figure of this job is invented."),
        Edit::Kind(JobKind::Changeout),
    ]
}

/// A 12×52 with two tags, taped round the bare shell.
fn carbon_filter(id: &Id) -> Vec<Edit> {
    let mut edits = vec![
        insert(0, id),
        tags(id, &["CF-1", "CF-2"]),
        choose(id, Choice::Path(Path::OpenAndEmpty)),
        choose(id, Choice::Diameter(DiameterWay::Circumference)),
        choose(id, Choice::Collector(CollectorKind::Basket)),
    ];
    let measured = |field: SurveyField, text: &str| survey(id, field, text, Standing::Measured);
    edits.extend([
        measured(SurveyField::NominalSize, "12x52"),
        measured(SurveyField::Circumference, "37.9"),
        measured(SurveyField::Wall, "0.16"),
        measured(SurveyField::InsideDepth, "51"),
        measured(SurveyField::NeckHeight, "1"),
        measured(SurveyField::ClearBore, "2 1/2"),
        measured(SurveyField::RiserOutsideDiameter, "1.05"),
        measured(SurveyField::RiserSeat, "0"),
        measured(SurveyField::RiserAllowance, "0"),
        measured(SurveyField::CollectorDiameter, "1 7/8"),
        measured(SurveyField::CollectorBottom, "0"),
        measured(SurveyField::CollectorTop, "2 1/2"),
        measured(SurveyField::TopSlot, "2 1/4"),
        measured(SurveyField::SlotWidth, "0.25 mm"),
    ]);
    edits.extend(layer(id, 0, "gravel_1_8x1_4", Role::Underbed, TargetKind::Cover, ("1 1/2", Unit::Inch)));
    edits.extend(layer(id, 1, "carbon_coconut_12x40", Role::Media, TargetKind::Packs, ("2", Unit::Each)));
    edits
}

/// A 16×65 that may not be opened: what can't be seen is assumed.
fn softener(id: &Id) -> Vec<Edit> {
    let mut edits = vec![
        insert(1, id),
        tags(id, &["SO-1"]),
        choose(id, Choice::Path(Path::InService)),
        choose(id, Choice::Diameter(DiameterWay::Nominal)),
        choose(id, Choice::Collector(CollectorKind::Basket)),
    ];
    let assumed = |field: SurveyField, text: &str| survey(id, field, text, Standing::Assumed);
    edits.extend([
        survey(id, SurveyField::NominalSize, "16x65", Standing::Measured),
        assumed(SurveyField::InsideDepth, "64"),
        assumed(SurveyField::RiserOutsideDiameter, "1.05"),
        assumed(SurveyField::CollectorDiameter, "1 7/8"),
        assumed(SurveyField::CollectorTop, "2 1/2"),
        assumed(SurveyField::TopSlot, "2 1/4"),
        assumed(SurveyField::SlotWidth, "0.25 mm"),
    ]);
    edits.extend(layer(id, 0, "gravel_1_16x1_8", Role::Underbed, TargetKind::Volume, ("1/2", Unit::CubicFoot)));
    edits.extend(layer(id, 1, "resin_cation", Role::Media, TargetKind::Packs, ("4", Unit::Each)));
    edits
}

/// A water main, and what both vessels are asked to do.
fn water(filter: &Id, softener: &Id) -> Vec<Edit> {
    let entry = |of: WaterOf, field: WaterField, text: &str, standing: Standing| Edit::Water {
        of,
        field,
        entry: Some(SurveyEntry { entry: typed(text, field.usual_unit(false)), standing }),
    };
    let of = |id: &Id| WaterOf::Vessel(id.clone());
    vec![
        Edit::Source(WaterSource::Mains),
        entry(WaterOf::Site, WaterField::TemperatureLow, "46", Standing::Assumed),
        entry(WaterOf::Site, WaterField::TemperatureHigh, "68", Standing::Assumed),
        entry(WaterOf::Site, WaterField::BackwashAvailable, "9", Standing::Measured),
        Edit::Duty { vessel: filter.clone(), choice: DutyChoice::Arrangement(Arrangement::Parallel) },
        entry(of(filter), WaterField::ServiceFlow, "8", Standing::Measured),
        entry(of(filter), WaterField::PeakFlow, "12", Standing::Assumed),
        entry(of(softener), WaterField::ServiceFlow, "8", Standing::Measured),
    ]
}

fn insert(at: usize, id: &Id) -> Edit {
    Edit::InsertVessel { at, vessel: Arc::new(VesselSurvey::new(id.clone())), plan: Arc::new(VesselPlan::default()) }
}

fn tags(vessel: &Id, tags: &[&str]) -> Edit {
    Edit::Tags { vessel: vessel.clone(), tags: tags.iter().map(|tag| (*tag).to_owned()).collect() }
}

fn choose(vessel: &Id, choice: Choice) -> Edit {
    Edit::Choose { vessel: vessel.clone(), choice }
}

fn survey(vessel: &Id, field: SurveyField, text: &str, standing: Standing) -> Edit {
    let entry = SurveyEntry { entry: typed(text, field.usual_unit(false)), standing };
    Edit::Survey { vessel: vessel.clone(), field, entry: Some(entry) }
}

fn layer(vessel: &Id, at: usize, material: &str, role: Role, target: TargetKind, amount: (&str, Unit)) -> [Edit; 3] {
    let id = Id::new(&format!("{at}-{vessel}"));
    [
        Edit::InsertLayer { vessel: vessel.clone(), at, layer: LayerPlan::new(id.clone(), material, role) },
        Edit::Layer { vessel: vessel.clone(), layer: id.clone(), choice: LayerChoice::Target(target) },
        Edit::LayerEntry {
            vessel: vessel.clone(),
            layer: id,
            field: LayerField::Amount,
            entry: Some(typed(amount.0, amount.1)),
        },
    ]
}

/// None of the texts holds a mark that could be taken two ways.
fn typed(text: &str, unit: Unit) -> Entry {
    Entry { text: text.to_owned(), unit, meaning: None }
}

#[cfg(test)]
mod tests {
    #![allow(clippy::unwrap_used, clippy::indexing_slicing)]

    use bedwright_calc::quantity::{Mark, Remedy, Subject};

    use super::sample_job;
    use crate::answers::job_answers;
    use crate::edit::apply;
    use crate::id::Id;
    use crate::job::Job;

    fn sample() -> Job {
        sample_job(Id::new("sample"), [Id::new("filter"), Id::new("softener")], "2026-11-24")
    }

    #[test]
    fn no_change_of_the_sample_is_refused() {
        let (filter, softener) = (Id::new("filter"), Id::new("softener"));
        let mut job = Job::new(Id::new("sample"), "");
        for edit in super::head()
            .into_iter()
            .chain(super::carbon_filter(&filter))
            .chain(super::softener(&softener))
            .chain(super::water(&filter, &softener))
        {
            let shown = format!("{edit:?}");
            assert!(apply(&mut job, edit, &Id::new("d")).is_ok(), "{shown}");
        }
    }

    #[test]
    fn every_answer_of_the_sample_is_complete() {
        let job = sample();
        let (answers, bill) = job_answers(&job);
        assert_eq!(answers.len(), 2);
        for answer in &answers {
            let shown = answer.id.as_str();
            assert!(
                answer.survey.misread.is_empty() && answer.survey.missing.is_empty(),
                "{shown}: {:?}",
                answer.survey
            );
            assert!(answer.problems.is_empty() && answer.problem.is_none() && answer.bucket.is_none(), "{shown}");
            assert!(answer.vessel.is_some() && answer.riser_cut.is_some(), "{shown}");
            assert!(answer.layers.len() == 2 && answer.layers.iter().all(|layer| layer.fill().is_some()), "{shown}");
            let plan = answer.plan.as_ref().unwrap();
            assert!(plan.freeboard.is_ok() && plan.dry_weight.is_ok(), "{shown}");
        }
        assert!(bill.left_out.is_empty());
        assert!(bill.bill.vessels.iter().all(|vessel| vessel.problems.is_empty() && !vessel.lines.is_empty()));
    }

    /// 2 1/2 in of bore about a riser of 1.05 in: (2.5 − 1.05)/2 = 0.725 in, 2.9 grains of 1/4 in. Under 3 they jam
    /// (common practice, no source).
    #[test]
    fn the_sample_shows_one_caution_to_pour_slowly_and_nothing_worse() {
        let (answers, _) = job_answers(&sample());
        let above_fine: Vec<_> = answers
            .iter()
            .flat_map(|answer| {
                answer.plan.as_ref().unwrap().verdicts.iter().map(|verdict| (answer.id.as_str(), verdict))
            })
            .filter(|(_, verdict)| verdict.mark != Mark::Fine)
            .collect();
        assert_eq!(above_fine.len(), 1, "{above_fine:?}");
        let (vessel, verdict) = above_fine[0];
        assert_eq!((vessel, verdict.subject, verdict.mark), ("filter", Subject::Gap { layer: 0 }, Mark::Caution));
        assert!(verdict.remedies.contains(&Remedy::PourSlowly));
    }

    #[test]
    fn the_carbon_filter_is_measured_and_the_softener_assumed() {
        let job = sample();
        let (answers, _) = job_answers(&job);
        let vessels = &job.survey.body.vessels;
        assert_eq!(answers[0].survey.unmeasured(&vessels[0]), []);
        assert!(!answers[1].survey.unmeasured(&vessels[1]).is_empty());
        assert_eq!(answers[0].count, 2);
    }

    #[test]
    fn the_sample_says_it_is_invented() {
        let head = sample().head.body;
        assert!(head.sample);
        for text in [&head.customer, &head.site, &head.owner] {
            assert!(text.ends_with("(invented)"), "{text}");
        }
        assert!(head.title.ends_with("(sample)"));
        assert_eq!(head.created, "2026-11-24");
    }

    #[test]
    fn a_vessel_id_given_twice_gives_one_vessel_and_no_panic() {
        let job = sample_job(Id::new("s"), [Id::new("x"), Id::new("x")], "");
        assert_eq!(job.survey.body.vessels.len(), 1);
        let job = sample_job(Id::new("s"), [Id::new(&"a".repeat(64)), Id::new(&"b".repeat(64))], "");
        assert!(job.plan.body.vessels.values().all(|plan| plan.layers.len() == 2));
    }
}
