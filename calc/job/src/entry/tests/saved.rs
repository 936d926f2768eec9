//! The saved shape of an entry: frozen.

use crate::entry::{Entry, Meaning, Unit};

#[test]
fn an_entry_is_text_and_unit_and_a_meaning_only_where_needed() {
    let plain = Entry { text: "12 in".to_owned(), unit: Unit::Millimetre, meaning: None };
    let json = r#"{"text":"12 in","unit":"mm"}"#;
    assert_eq!(serde_json::to_string(&plain).unwrap(), json);
    assert_eq!(serde_json::from_str::<Entry>(json).unwrap(), plain);

    let asked = Entry { text: "1,234".to_owned(), unit: Unit::UsGallon, meaning: Some(Meaning::Thousands) };
    let json = r#"{"text":"1,234","unit":"gal_us","meaning":"Thousands"}"#;
    assert_eq!(serde_json::to_string(&asked).unwrap(), json);
    assert_eq!(serde_json::from_str::<Entry>(json).unwrap(), asked);
    let json = r#"{"text":"1,234","unit":"in","meaning":"DecimalPoint"}"#;
    assert_eq!(serde_json::from_str::<Entry>(json).unwrap().meaning, Some(Meaning::DecimalPoint));
}

#[test]
fn an_unknown_unit_or_meaning_is_an_error() {
    for json in [
        r#"{"text":"5","unit":"furlong"}"#,
        r#"{"text":"5","unit":"IN"}"#,
        r#"{"text":"5","unit":""}"#,
        r#"{"text":"5"}"#,
        r#"{"unit":"in"}"#,
        r#"{"text":"5","unit":"in","meaning":"Comma"}"#,
    ] {
        assert!(serde_json::from_str::<Entry>(json).is_err(), "{json}");
    }
}

#[test]
fn every_unit_is_saved_by_its_id() {
    // Ids are permanent: this list may grow, never change.
    let ids = [
        "in",
        "ft",
        "mm",
        "cm",
        "m",
        "ft2",
        "m2",
        "ft3",
        "in3",
        "L",
        "m3",
        "gal_us",
        "lb",
        "kg",
        "g",
        "t",
        "oz",
        "lb_ft3",
        "kg_m3",
        "g_L",
        "kg_L",
        "C",
        "F",
        "gpm",
        "L_min",
        "m3_h",
        "L_h",
        "gpm_ft2",
        "m_h",
        "psi",
        "bar",
        "kPa",
        "percent",
        "ratio",
        "each",
        "s",
        "min",
        "h",
        "d",
        "gal_d",
        "L_d",
        "m3_d",
        "gr_ft3",
        "mg_L",
        "ug_L",
        "mg_L_CaCO3",
        "gr_gal",
        "dH",
        "fH",
        "meq_L",
        "mmol_L",
        "mg_L_Ca",
        "mg_L_Mg",
        "mg_L_HCO3",
        "g_L_CaCO3",
        "eq_L",
    ];
    assert_eq!(Unit::ALL.len(), ids.len());
    for (unit, id) in Unit::ALL.iter().zip(ids) {
        assert_eq!(unit.id(), id);
        assert_eq!(serde_json::to_string(unit).unwrap(), format!("\"{id}\""));
    }
}
