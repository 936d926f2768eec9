//! What the command-line example prints: complete for the sample, and right where it can be worked out by hand.

#[path = "../../examples/plan/codes.rs"]
pub mod codes;
#[path = "../../examples/plan/figures.rs"]
pub mod figures;
#[path = "../../examples/plan/life.rs"]
pub mod life;
#[path = "../../examples/plan/order.rs"]
pub mod order;
#[path = "../../examples/plan/refusal.rs"]
pub mod refusal;
#[path = "../../examples/plan/report.rs"]
pub mod report;
#[path = "../../examples/plan/water.rs"]
pub mod water;

use bedwright_job::saved::{LONGEST, read_job};
use bedwright_job::words::Manner;
use serde_json::Value;

use crate::{jobs, saved};

fn of_the_sample() -> Value {
    report::report(&jobs::sample(), &Manner::default(), true)
}

#[track_caller]
fn near(value: &Value, wanted: f64, within: f64) {
    let found = value.as_f64().unwrap();
    assert!((found - wanted).abs() <= within, "{found}, should be {wanted} ± {within}");
}

/// 37.9 in round a shell of 0.16 in wall: 37.9/π − 0.32 = 11.744 in. A ring of 11.744 in bore about a riser of 1.05 in
/// has 107.46 square inches; a bag of a cubic foot, 1728 cubic inches, raises the surface by 16.08 in where the side is
/// straight.
#[test]
fn the_report_of_the_sample_says_what_is_worked_out_by_hand() {
    const INCH: f64 = 0.0254;
    let report = of_the_sample();
    let filter = &report["vessels"][0];
    near(&filter["inside_diameter_m"], 11.744 * INCH, 5e-4 * INCH);
    assert_eq!(filter["inside_diameter_how"]["basis"], "measured");
    assert_eq!(filter["inside_diameter_how"]["formula"], "inside_diameter_circumference");
    near(&filter["inside_diameter_how"]["inputs"][0]["value_m"], 37.9 * INCH, 1e-12);
    near(&filter["riser_cut_m"], 51.0 * INCH, 1e-12);
    let gravel = &filter["layers"][0];
    // Cover of 1 1/2 in over a top slot at 2 1/4 in: 3 3/4 in up, 47 1/4 in below the rim.
    near(&gravel["tape_reading_m"], 47.25 * INCH, 1e-9);
    near(&gravel["cover_m"], 1.5 * INCH, 1e-9);
    let after = &filter["layers"][1]["after_packs"];
    assert_eq!(after.as_array().unwrap().len(), 2);
    near(&after[0]["tape_reading_m"], (47.25 - 16.08) * INCH, 0.005 * INCH);
    near(&after[1]["tape_reading_m"], (47.25 - 2.0 * 16.08) * INCH, 0.01 * INCH);
    // From there up to the tangent line of a 2:1 head under a neck of 1 in: 15.09 − 1 − 11.744/4 = 11.15 in.
    near(&filter["freeboard"]["length_m"], 11.15 * INCH, 0.01 * INCH);
    near(&filter["freeboard"]["of_media_depth_ratio"], 11.15 / 32.16, 0.001);
    assert_eq!(filter["freeboard"]["tape_reading_m"], after[1]["tape_reading_m"]);
}

/// 8 gpm over two vessels of 11.744 in: 4 gpm through π/4·(11.744/12)² = 0.7522 sq ft is 5.318 gpm/ft²; 2 cu ft are
/// 14.961 gal, 3.74 min of 4 gpm.
#[test]
fn the_water_side_of_the_sample_says_what_is_worked_out_by_hand() {
    let report = of_the_sample();
    let water = &report["vessels"][0]["water"];
    assert_eq!(water["asked"]["purpose"], "dechlorination");
    assert_eq!(water["problems"].as_array().unwrap().len(), 0);
    let usual = &water["service"]["usual"];
    near(&usual["flow_per_area_m_s"], 5.318 * 6.790_972e-4, 1e-6);
    near(&usual["contact_time_s"], 3.740 * 60.0, 0.1);
    near(&usual["bed_volumes_per_s"], 1.0 / (3.740 * 60.0), 1e-6);
    let chosen = &water["settings"][water["chosen"].as_u64().unwrap() as usize];
    assert_eq!(chosen["mark"], "set_on_site");
    assert_eq!(water["window"].as_array().unwrap().len(), 13);
    // Solids and water: less than a vessel of water and all its carbon and gravel, more than either.
    let weights = &water["weights"];
    let kg = |name: &str| weights[name].as_f64().unwrap();
    assert!(kg("operating_kg") > kg("water_full_kg") && kg("drained_high_kg") > kg("dry_kg"));
}

#[test]
fn the_bill_of_the_sample_counts_tags_and_says_what_pooling_saves() {
    let report = of_the_sample();
    let pooled = report["bill"]["pooled"].as_array().unwrap();
    let line = |id: &str| pooled.iter().find(|line| line["material"] == id).unwrap();
    // Two filters of two bags each.
    assert_eq!(line("carbon_coconut_12x40")["quantity"], 4);
    assert_eq!(line("resin_cation")["quantity"], 4);
    // Each filter takes about a third of a bag of half a cubic foot: two bags apart, one together.
    let gravel = line("gravel_1_8x1_4");
    assert_eq!((&gravel["quantity"], &gravel["saved"]), (&1.into(), &1.into()));
    assert_eq!(report["bill"]["left_out"], Value::Array(vec![]));
}

#[test]
fn the_report_of_the_sample_is_complete_and_shows_one_caution() {
    let report = of_the_sample();
    for vessel in report["vessels"].as_array().unwrap() {
        assert_eq!(vessel["complete"], true);
        assert_eq!(vessel["problems"], Value::Object(serde_json::Map::new()));
        assert!(vessel["depth_table"].as_array().unwrap().len() > 50);
    }
    let marks: Vec<&str> = report["vessels"]
        .as_array()
        .unwrap()
        .iter()
        .flat_map(|vessel| vessel["verdicts"].as_array().unwrap())
        .map(|verdict| verdict["mark"].as_str().unwrap())
        .filter(|mark| *mark != "fine")
        .collect();
    assert_eq!(marks, ["caution"]);
    assert_eq!(report["vessels"][0]["verdicts"][0]["remedies"][0]["code"], "pour_slowly");
}

/// The depth table, read back: its volumes at whole inches are what a vessel of 2:1 heads holds.
#[test]
fn the_depth_table_ends_at_the_rim_with_the_capacity() {
    let report = of_the_sample();
    for vessel in report["vessels"].as_array().unwrap() {
        let rows = vessel["depth_table"].as_array().unwrap();
        let last = rows.last().unwrap();
        assert_eq!(last["tape_reading_m"], 0.0);
        near(&last["volume_m3"], vessel["capacity_m3"].as_f64().unwrap(), 1e-12);
        let volumes: Vec<f64> = rows.iter().map(|row| row["volume_m3"].as_f64().unwrap()).collect();
        assert!(volumes.windows(2).all(|pair| pair[0] <= pair[1]));
    }
}

/// Each mistake of the file of mistakes has a code, its field and a sentence.
#[test]
fn every_mistake_has_a_code_a_field_and_a_sentence() {
    let report = report::report(&jobs::misread(), &Manner::default(), false);
    let mut codes = std::collections::BTreeSet::new();
    let mut note = |problem: &Value| {
        assert!(problem["field"].is_string() && problem["values"].is_object(), "{problem}");
        assert!(problem["text"].as_str().unwrap().ends_with('.'), "{problem}");
        codes.insert(problem["code"].as_str().unwrap().to_owned());
    };
    for vessel in report["vessels"].as_array().unwrap() {
        vessel["survey"]["misread"].as_object().unwrap().values().for_each(&mut note);
        vessel["problems"].as_object().unwrap().values().for_each(&mut note);
        vessel["layers"].as_array().unwrap().iter().filter_map(|layer| layer.get("problem")).for_each(&mut note);
    }
    let wanted = [
        "ambiguous",
        "divide_by_zero",
        "no_amount",
        "no_material",
        "no_such_size",
        "not_a_number",
        "part_too_large",
        "too_large",
        "too_long",
        "too_small",
        "unknown_material",
        "unknown_pack",
        "unknown_unit",
        "wrong_dimension",
    ];
    assert_eq!(codes.iter().map(String::as_str).collect::<Vec<_>>(), wanted);
}

#[test]
fn every_saved_file_is_reported_on() {
    for (name, text) in saved::files() {
        let report = report::report(&read_job(&text).unwrap(), &Manner { metric: true, ..Manner::default() }, true);
        assert!(report["sources"]["from_memory"].is_object(), "{name}");
    }
}

#[test]
fn a_file_that_is_no_job_is_refused_with_a_code_and_a_sentence() {
    let unreadable = |text: &str| refusal::unreadable(&Manner::default(), &read_job(text).unwrap_err());
    let table = [
        (unreadable("{"), "not_json", "That file was not opened: it is cut or damaged"),
        (unreadable("[]"), "other_format", "That file was not opened: it is no job of this page"),
        (unreadable(&" ".repeat(LONGEST + 1)), "too_long", "That file was not opened: it is no job of this page"),
        (
            unreadable(r#"{"format":"bedwright-job","version":9}"#),
            "too_new",
            "That file was not opened: it was made by a later version of this page",
        ),
        (
            unreadable(r#"{"format":"bedwright-job","version":1}"#),
            "lacks",
            "That file was not opened: it is cut or damaged",
        ),
        (refusal::not_text(7), "not_text", "That file was not opened: it is cut or damaged"),
        (refusal::not_opened("x.json", "it is gone"), "not_opened", "x.json was not opened: it is gone"),
        (refusal::usage("--fast"), "usage", "Say: plan JOB.json [--depth-table] [--metric], or - for standard input."),
    ];
    for (found, code, text) in table {
        assert_eq!((&found["error"]["code"], &found["error"]["text"]), (&code.into(), &text.into()));
    }
}
