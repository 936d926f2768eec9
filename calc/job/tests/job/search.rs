//! A search kept with its job: what was typed comes back, mistakes stand under their entries, one change makes the vessel.

use bedwright_calc::hydraulics::{Arrangement, Candidate, Found, Purpose};
use bedwright_calc::quantity::{Fault, Mark, Term};
use bedwright_job::Job;
use bedwright_job::answers::search::{SearchAnswers, SearchAsked, made, search_answers};
use bedwright_job::answers::vessel_answers;
use bedwright_job::answers::water::{WaterAsked, water_answers};
use bedwright_job::edit::{Edit, SearchChoice, WaterOf, apply};
use bedwright_job::entry::Unit;
use bedwright_job::field::WaterField;
use bedwright_job::id::Id;
use bedwright_job::saved::{job_text, read_job};
use bedwright_job::words::Manner;
use serde_json::Value;

use crate::jobs::{self, change, measured};

fn typed(field: WaterField, text: &str, unit: Unit) -> Edit {
    Edit::Water { of: WaterOf::Search, field, entry: Some(measured(text, unit)) }
}

fn flow(text: &str) -> Edit {
    typed(WaterField::ServiceFlow, text, Unit::UsGallonPerMinute)
}

/// A job of a water main, 5 to 25 °C until somebody says better, with these changes made.
fn job(edits: Vec<Edit>) -> Job {
    let mut job = Job::new(Id::new("job"), "2026-11-24");
    edits.into_iter().for_each(|edit| change(&mut job, edit));
    job
}

fn answers(job: &Job) -> SearchAnswers {
    search_answers(&SearchAsked::of(job))
}

fn found(job: &Job) -> Found {
    answers(job).found.unwrap().unwrap()
}

/// Nominal diameter in inches and how many.
fn size(one: &Candidate) -> (f64, u32) {
    ((one.nominal.diameter.value / 0.0254).round(), one.vessels)
}

#[test]
fn a_search_nobody_typed_anything_into_waits_for_the_flow_and_is_not_written_down() {
    let job = job(Vec::new());
    let answers = answers(&job);
    let problem = answers.problem_of(&WaterOf::Search, WaterField::ServiceFlow).unwrap();
    assert_eq!((problem.term, problem.fault), (Term::SiteFlow, Fault::Missing));
    assert!(answers.problem().is_none());
    let file: Value = serde_json::from_str(&job_text(&job)).unwrap();
    assert!(file["sections"].get("search").is_none());
}

#[test]
fn what_was_asked_comes_back_from_a_file() {
    let asked = jobs::searched();
    let read = read_job(&job_text(&asked)).unwrap();
    assert_eq!(read.search, asked.search);
    assert_eq!(found(&read), found(&asked));
}

/// Two 12 in vessels share 10 gpm, one of 18 in takes it all: worked out in `tests/native/search.rs`.
#[test]
fn the_sites_water_decides_with_the_flow() {
    let mut ten = job(vec![flow("10")]);
    let sizes: Vec<_> = found(&ten).suit.iter().map(size).collect();
    assert!(sizes.contains(&(18.0, 1)) && sizes.contains(&(12.0, 2)), "{sizes:?}");
    let field = WaterField::BackwashAvailable;
    change(&mut ten, Edit::Water { of: WaterOf::Site, field, entry: Some(measured("8", Unit::UsGallonPerMinute)) });
    let with_little = found(&ten);
    assert!(with_little.suit.iter().all(|one| size(one).0 < 18.0), "8 gpm don't lift 18 in");
    let wide = with_little.miss.iter().find(|one| size(one).0 == 18.0).unwrap();
    let said: Vec<String> =
        wide.misses().map(|verdict| Manner::default().verdict(verdict, &["Carbon".to_owned()]).reason).collect();
    assert!(said.iter().any(|reason| reason.contains("lifts the bed")), "{said:?}");
}

#[test]
fn a_mistake_stands_under_its_entry_and_the_rest_is_kept() {
    let peak = typed(WaterField::PeakFlow, "8", Unit::UsGallonPerMinute);
    let low = job(vec![flow("10"), peak]);
    let found = answers(&low);
    let problem = found.problem_of(&WaterOf::Search, WaterField::PeakFlow).unwrap();
    let said = Manner::default().problem(problem);
    assert_eq!(said, "Highest service flow must be more than the service flow of the site, 10 gpm; it is 8 gpm.");
    let own = typed(WaterField::FlowControl, "30", Unit::UsGallonPerMinute);
    let field = WaterField::BackwashAvailable;
    let little = Edit::Water { of: WaterOf::Site, field, entry: Some(measured("9", Unit::UsGallonPerMinute)) };
    let fed = answers(&job(vec![flow("10"), own, little]));
    assert!(fed.problem_of(&WaterOf::Search, WaterField::FlowControl).is_some());
    // What can't be read gives no answer at all.
    let unread = answers(&job(vec![flow("ten")]));
    assert_eq!((unread.found, unread.reading.misread.len()), (None, 1));
    // A medium of which something is missing belongs to no entry.
    let zeolite = Edit::Search(SearchChoice::Media("zeolite_14x40".to_owned()));
    let lacking = answers(&job(vec![flow("10"), zeolite]));
    assert_eq!(lacking.problem().map(|problem| problem.term), Some(Term::Voidage));
    // One this version doesn't know is a missing one.
    let unknown = Edit::Search(SearchChoice::Media("moon_dust".to_owned()));
    assert!(answers(&job(vec![flow("10"), unknown])).problem().is_some());
}

/// Everything a person was shown of a candidate is so on the page of the vessel that is made of it, and one step back
/// takes all of it away.
#[test]
fn one_change_makes_the_vessel_that_was_shown() {
    let ask = |purpose: Purpose, media: &str, underbed: &str, arrangement: Arrangement, gpm: &str| {
        job(vec![
            flow(gpm),
            typed(WaterField::PeakFlow, "31", Unit::UsGallonPerMinute),
            Edit::Search(SearchChoice::Purpose(purpose)),
            Edit::Search(SearchChoice::Media(media.to_owned())),
            Edit::Search(SearchChoice::Underbed(underbed.to_owned())),
            Edit::Search(SearchChoice::Arrangement(arrangement)),
        ])
    };
    let cases = [
        ask(Purpose::Dechlorination, "", "", Arrangement::Parallel, "10"),
        ask(Purpose::Dechlorination, "carbon_coconut_12x40", "gravel_1_8x1_4", Arrangement::Parallel, "8"),
        ask(Purpose::Softening, "", "gravel_1_16x1_8", Arrangement::TwinAlternating, "10"),
        ask(Purpose::Chloramine, "carbon_coconut_12x40", "", Arrangement::LeadLag, "5"),
        ask(Purpose::Sediment, "sand_20x30", "", Arrangement::Single, "30"),
    ];
    let mut tried = 0;
    for before in cases {
        let found = found(&before);
        for candidate in found.suit.iter().chain(&found.miss) {
            tried += 1;
            for metric in [false, true] {
                is_as_shown(&before, candidate, Manner { metric, ..Manner::default() });
            }
        }
    }
    assert!(tried > 60, "{tried}");
}

fn is_as_shown(before: &Job, candidate: &Candidate, manner: Manner) {
    let mut job = before.clone();
    let ids = ["made", "first", "second"].map(Id::new);
    let edit = made(&job, candidate, ids, manner);
    let undo = apply(&mut job, edit, &Id::new("bench")).unwrap().unwrap();
    let what = format!("{:?}", size(candidate));
    let id = Id::new("made");
    let answers = vessel_answers(job.vessel(&id).unwrap(), &job.plan_of(&id));
    assert_eq!(answers.count, candidate.vessels, "{what}");
    let plan = answers.plan.as_ref().unwrap();
    let volumes = |plan: &bedwright_calc::fill::Plan| -> Vec<f64> {
        plan.layers.iter().map(|layer| layer.as_ref().unwrap().volume.value.value).collect()
    };
    for (is, shown) in volumes(plan).iter().zip(volumes(&candidate.plan)) {
        assert!((is / shown - 1.0).abs() < 1e-9, "{what}: {is} {shown}");
    }
    let water = water_answers(&answers, &WaterAsked::of(&job, &id));
    assert_eq!(water.problems, [], "{what}");
    let usual = water.service.as_ref().unwrap().usual.as_ref().unwrap();
    let near = |is: f64, shown: f64| assert!((is / shown - 1.0).abs() < 1e-9, "{what}: {is} {shown}");
    near(usual.flow_per_area.value.value, candidate.usual.flow_per_area.value.value);
    near(usual.contact_time.value.value, candidate.usual.contact_time.value.value);
    near(usual.loss.value.value, candidate.usual.loss.value.value);
    let washed = water.backwash.as_ref().unwrap();
    let setting = washed.chosen.and_then(|at| washed.settings.get(at));
    if let Some(shown) = &candidate.flow_control {
        let is = setting.unwrap();
        near(is.flow.value.value, shown.flow.value.value);
        assert_eq!(is.mark, shown.mark, "{what}");
    }
    let worst = |mark: Mark, worse: Mark| mark.max(worse);
    let shown = candidate.verdicts.iter().filter(|v| !said_of_height(v)).map(|v| v.mark).fold(Mark::Fine, worst);
    let is = water.verdicts.iter().map(|verdict| verdict.mark).fold(Mark::Fine, worst);
    assert_eq!(is, shown, "{what}");
    apply(&mut job, undo, &Id::new("bench")).unwrap();
    assert_eq!(job.survey.body, before.survey.body, "{what}");
    assert_eq!(job.plan.body, before.plan.body, "{what}");
    assert_eq!(job.site.body, before.site.body, "{what}");
}

/// The clear height is the site's, not the vessel's.
fn said_of_height(verdict: &bedwright_calc::quantity::Verdict) -> bool {
    use bedwright_calc::quantity::Subject;
    matches!(verdict.subject, Subject::Rule { quantity: Term::CeilingClearance, .. })
}

#[test]
fn tags_are_new_ones() {
    let mut job = job(vec![flow("10")]);
    let pair = found(&job).suit.into_iter().find(|one| one.vessels == 2).unwrap();
    for number in 0..2 {
        let ids = [0, 1, 2].map(|part| Id::new(&format!("v-{number}-{part}")));
        let edit = made(&job, &pair, ids, Manner::default());
        change(&mut job, edit);
    }
    let tags: Vec<&String> = job.survey.body.vessels.iter().flat_map(|vessel| &vessel.tags).collect();
    assert_eq!(tags, ["V-1", "V-2", "V-3", "V-4"]);
}

#[test]
fn a_search_of_the_sample_finds_something_on_its_water() {
    let mut job = jobs::sample();
    change(&mut job, flow("8"));
    assert!(!found(&job).suit.is_empty());
}
