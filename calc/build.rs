#![allow(clippy::panic)] // A bad cell stops the build.
//! Reads `data/*.csv`, checks every cell, and writes static tables.
//!
//! A bad cell stops the build with file, line and column, so that a data error never reaches a person
//! and nothing is parsed in the browser.

use std::collections::{BTreeMap, BTreeSet};
use std::fmt::Write as _;
use std::path::{Path, PathBuf};

#[path = "build/formulas.rs"]
mod formulas;

type Row = BTreeMap<String, String>;

struct Table {
    path: PathBuf,
    rows: Vec<(u64, Row)>,
}

impl Table {
    fn read(name: &str) -> Table {
        let path = Path::new("data").join(name);
        println!("cargo::rerun-if-changed={}", path.display());
        let mut reader = csv::Reader::from_path(&path).unwrap_or_else(|e| panic!("{}: {e}", path.display()));
        let header = reader.headers().unwrap_or_else(|e| panic!("{}: {e}", path.display())).clone();
        let mut rows = Vec::new();
        for record in reader.records() {
            let record = record.unwrap_or_else(|e| panic!("{}: {e}", path.display()));
            let line = record.position().map_or(0, |p| p.line());
            let row = header.iter().zip(record.iter()).map(|(k, v)| (k.to_owned(), v.trim().to_owned())).collect();
            rows.push((line, row));
        }
        Table { path, rows }
    }

    fn stop(&self, line: u64, column: &str, why: &str) -> ! {
        panic!("{}:{line}: column {column}: {why}", self.path.display())
    }

    fn text<'a>(&self, line: u64, row: &'a Row, column: &str) -> &'a str {
        match row.get(column) {
            Some(t) => t,
            None => self.stop(line, column, "no such column"),
        }
    }

    fn filled<'a>(&self, line: u64, row: &'a Row, column: &str) -> &'a str {
        let t = self.text(line, row, column);
        if t.is_empty() {
            self.stop(line, column, "is empty");
        }
        t
    }

    /// A positive number, or `None` where the cell is empty.
    fn number(&self, line: u64, row: &Row, column: &str) -> Option<f64> {
        let t = self.text(line, row, column);
        if t.is_empty() {
            return None;
        }
        match t.parse::<f64>() {
            Ok(x) if x.is_finite() && x > 0.0 => Some(x),
            _ => self.stop(line, column, &format!("“{t}” is not a positive number")),
        }
    }

    /// A positive whole number.
    fn whole(&self, line: u64, row: &Row, column: &str) -> u32 {
        let t = self.filled(line, row, column);
        match t.parse::<u32>() {
            Ok(x) if x > 0 => x,
            _ => self.stop(line, column, &format!("“{t}” is not a positive whole number")),
        }
    }

    fn one_of<'a>(&self, line: u64, row: &'a Row, column: &str, allowed: &[&str]) -> &'a str {
        let t = self.filled(line, row, column);
        if !allowed.contains(&t) {
            self.stop(line, column, &format!("“{t}” is none of {allowed:?}"));
        }
        t
    }

    fn ids(&self, extra: &str) -> Vec<String> {
        let mut seen = BTreeSet::new();
        let mut ids = Vec::new();
        for (line, row) in &self.rows {
            let id = self.filled(*line, row, "id").to_owned();
            if !seen.insert(id.clone()) {
                self.stop(*line, "id", &format!("“{id}” stands twice {extra}"));
            }
            ids.push(id);
        }
        ids
    }
}

fn variant(id: &str) -> String {
    id.split('_')
        .map(|word| {
            let mut letters = word.chars();
            match letters.next() {
                Some(first) => first.to_uppercase().collect::<String>() + letters.as_str(),
                None => String::new(),
            }
        })
        .collect()
}

struct Sources(Vec<String>);

impl Sources {
    fn check(&self, table: &Table, line: u64, row: &Row, column: &str) -> String {
        let id = table.filled(line, row, column);
        if !self.0.iter().any(|s| s == id) {
            table.stop(line, column, &format!("“{id}” is no source in sources.csv"));
        }
        format!("Source::{}", variant(id))
    }
}

/// An enum of ids with `ALL` and `id()`.
fn id_enum(out: &mut String, name: &str, what: &str, ids: &[String]) {
    let _ = writeln!(
        out,
        "/// {what}\n#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]\npub enum {name} {{"
    );
    for id in ids {
        let _ = writeln!(out, "    /// `{id}`\n    {},", variant(id));
    }
    let _ = writeln!(
        out,
        "}}\nimpl {name} {{\n    /// Every one, in the order of the table.\n    pub const ALL: &'static [{name}] = &["
    );
    for id in ids {
        let _ = writeln!(out, "        {name}::{},", variant(id));
    }
    let _ = writeln!(
        out,
        "    ];\n    /// The permanent id.\n    #[must_use]\n    pub const fn id(self) -> &'static str {{\n        match self {{"
    );
    for id in ids {
        let _ = writeln!(out, "            {name}::{} => {id:?},", variant(id));
    }
    let _ = writeln!(out, "        }}\n    }}\n}}");
}

fn main() {
    println!("cargo::rerun-if-changed=build.rs");
    println!("cargo::rerun-if-changed=build");
    let mut out = String::new();

    let table = Table::read("sources.csv");
    let ids = table.ids("");
    id_enum(&mut out, "Source", "A document, or the plain statement that there is none: a row of `sources.csv`.", &ids);
    let _ = writeln!(out, "static SOURCES: &[SourceRow] = &[");
    for (line, row) in &table.rows {
        let standing =
            table.one_of(*line, row, "standing", &["typed", "derived", "published", "library", "practice", "memory"]);
        let _ = writeln!(
            out,
            "    SourceRow {{ title: {:?}, issuer: {:?}, edition: {:?}, page: {:?}, standing: Standing::{} }},",
            table.filled(*line, row, "title"),
            table.text(*line, row, "issuer"),
            table.text(*line, row, "edition"),
            table.text(*line, row, "page"),
            variant(standing),
        );
    }
    let _ = writeln!(out, "];");
    let sources = Sources(ids);

    let checks = formulas::checks(&mut out);
    formulas::formulas(&mut out, &sources, &checks);

    let table = Table::read("assumptions.csv");
    id_enum(
        &mut out,
        "Assumption",
        "A number assumed until somebody knows better, or a limit of a rule: a row of `assumptions.csv`.",
        &table.ids(""),
    );
    let _ = writeln!(out, "static ASSUMPTIONS: &[AssumptionRow] = &[");
    for (line, row) in &table.rows {
        let value = table.number(*line, row, "value").unwrap_or_else(|| table.stop(*line, "value", "is empty"));
        let unit = table.one_of(
            *line,
            row,
            "unit",
            &["ratio", "in", "ft", "gal", "gpm", "pack", "psi", "c", "min", "year", "mm", "lb"],
        );
        let amount = match unit {
            "in" => format!("Amount::Length({})", length(value * 0.0254)),
            "ft" => format!("Amount::Length({})", length(value * 0.3048)),
            "mm" => format!("Amount::Length({})", length(value / 1000.0)),
            "lb" => format!("Amount::Mass({})", quantity("Mass", value * 0.453_592_37)),
            "gal" => format!("Amount::Volume({})", volume(value * 0.003_785_411_784)),
            "gpm" => format!("Amount::Flow({})", quantity("VolumeRate", value * (0.003_785_411_784 / 60.0))),
            "psi" => format!(
                "Amount::Pressure({})",
                quantity("Pressure", value * (0.453_592_37 * 9.806_65 / (0.0254 * 0.0254)))
            ),
            "c" => format!("Amount::Temperature({})", temperature(value + 273.15)),
            "min" => format!("Amount::Time({})", quantity("Time", value * 60.0)),
            "year" => format!("Amount::Time({})", quantity("Time", value * 365.25 * 86_400.0)),
            _ => format!("Amount::Ratio({value:?})"),
        };
        let _ = writeln!(
            out,
            "    AssumptionRow {{ amount: {amount}, source: {} }},",
            sources.check(&table, *line, row, "source"),
        );
    }
    let _ = writeln!(out, "];");

    let table = Table::read("vessels.csv");
    table.ids("");
    let _ = writeln!(out, "static NOMINAL_DIAMETERS: &[NominalDiameter] = &[");
    for (line, row) in &table.rows {
        let inches = table
            .number(*line, row, "nominal_diameter_in")
            .unwrap_or_else(|| table.stop(*line, "nominal_diameter_in", "is empty"));
        let bore =
            table.number(*line, row, "usual_bore_in").unwrap_or_else(|| table.stop(*line, "usual_bore_in", "is empty"));
        let height = table
            .number(*line, row, "usual_height_in")
            .unwrap_or_else(|| table.stop(*line, "usual_height_in", "is empty"));
        let head = table.one_of(*line, row, "usual_head", &["ellipsoidal"]);
        let _ = writeln!(
            out,
            "    NominalDiameter {{ diameter: {}, usual_height: {}, usual_head: Head::{}, usual_bore: {}, source: {} }},",
            length(inches * 0.0254),
            length(height * 0.0254),
            variant(head),
            length(bore * 0.0254),
            sources.check(&table, *line, row, "source"),
        );
    }
    let _ = writeln!(out, "];");

    let table = Table::read("risers.csv");
    table.ids("");
    let _ = writeln!(out, "static RISER_DIAMETERS: &[RiserDiameter] = &[");
    for (line, row) in &table.rows {
        let mm = table
            .number(*line, row, "outside_diameter_mm")
            .unwrap_or_else(|| table.stop(*line, "outside_diameter_mm", "is empty"));
        let _ = writeln!(
            out,
            "    RiserDiameter {{ outside: {}, source: {} }},",
            length(mm / 1000.0),
            sources.check(&table, *line, row, "source"),
        );
    }
    let _ = writeln!(out, "];");

    let table = Table::read("sieves.csv");
    table.ids("");
    let _ = writeln!(out, "static SIEVES: &[Sieve] = &[");
    for (line, row) in &table.rows {
        let mm = table.number(*line, row, "opening_mm").unwrap_or_else(|| table.stop(*line, "opening_mm", "is empty"));
        let _ = writeln!(
            out,
            "    Sieve {{ designation: {:?}, opening: {}, source: {} }},",
            table.filled(*line, row, "id"),
            length(mm / 1000.0),
            sources.check(&table, *line, row, "source"),
        );
    }
    let _ = writeln!(out, "];");

    let table = Table::read("flow_controls.csv");
    table.ids("");
    let _ = writeln!(out, "static FLOW_CONTROLS: &[FlowControl] = &[");
    for (line, row) in &table.rows {
        let gpm = table.number(*line, row, "flow_gpm").unwrap_or_else(|| table.stop(*line, "flow_gpm", "is empty"));
        let _ = writeln!(
            out,
            "    FlowControl {{ flow: {}, source: {} }},",
            quantity("VolumeRate", gpm * 0.003_785_411_784 / 60.0),
            sources.check(&table, *line, row, "source"),
        );
    }
    let _ = writeln!(out, "];");

    let table = Table::read("purposes.csv");
    let purposes = table.ids("");
    id_enum(&mut out, "Purpose", "What a vessel's bed is there for: a row of `purposes.csv`.", &purposes);
    let _ = writeln!(out, "static PURPOSES: &[PurposeRow] = &[");
    for (line, row) in &table.rows {
        let expansion = table
            .number(*line, row, "minimum_expansion")
            .unwrap_or_else(|| table.stop(*line, "minimum_expansion", "is empty"));
        let _ = writeln!(
            out,
            "    PurposeRow {{ minimum_expansion: {expansion:?}, usual_media: &{:?}, source: {} }},",
            table.text(*line, row, "usual_media").split_whitespace().collect::<Vec<_>>(),
            sources.check(&table, *line, row, "source"),
        );
    }
    let _ = writeln!(out, "];");

    let table = Table::read("criteria.csv");
    table.ids("");
    let _ = writeln!(out, "static CRITERIA: &[Criterion] = &[");
    for (line, row) in &table.rows {
        let purpose = table.one_of(*line, row, "purpose", &purposes.iter().map(String::as_str).collect::<Vec<_>>());
        let of = table.one_of(
            *line,
            row,
            "quantity",
            &["flow_per_area", "contact_time", "bed_volumes", "media_depth", "backwash_rate", "collector_height"],
        );
        let unit = table.one_of(*line, row, "unit", &["gpm_ft2", "m_h", "min", "per_h", "in", "m"]);
        // Exact: 1 US gal is 231 cubic inches, 1 ft is 12 inches.
        let (kind, scale) = match unit {
            "gpm_ft2" => ("Speed", 0.003_785_411_784 / 60.0 / (0.3048 * 0.3048)),
            "m_h" => ("Speed", 1.0 / 3600.0),
            "min" => ("Time", 60.0),
            "per_h" => ("Rate", 1.0 / 3600.0),
            "in" => ("Length", 0.0254),
            _ => ("Length", 1.0),
        };
        let inner = match kind {
            "Speed" => "Velocity",
            "Rate" => "Frequency",
            other => other,
        };
        let limit = |column: &str| {
            table.number(*line, row, column).map_or_else(
                || "None".to_owned(),
                |value| format!("Some(Amount::{kind}({}))", quantity(inner, value * scale)),
            )
        };
        let (low, high) = (limit("low"), limit("high"));
        if low == "None" && high == "None" {
            table.stop(*line, "low", "and high are both empty");
        }
        let _ = writeln!(
            out,
            "    Criterion {{ purpose: Purpose::{}, quantity: CriterionOf::{}, low: {low}, high: {high}, section: {:?}, source: {} }},",
            variant(purpose),
            variant(of),
            table.text(*line, row, "section"),
            sources.check(&table, *line, row, "source"),
        );
    }
    let _ = writeln!(out, "];");

    let table = Table::read("lives.csv");
    table.ids("");
    let _ = writeln!(out, "static LIVES: &[UsualLife] = &[");
    for (line, row) in &table.rows {
        let purpose = table.one_of(*line, row, "purpose", &purposes.iter().map(String::as_str).collect::<Vec<_>>());
        let months = |column: &str| match table.number(*line, row, column) {
            Some(months) if months.fract() == 0.0 && months <= 1200.0 => months as u32,
            _ => table.stop(*line, column, "is no whole number of months"),
        };
        let (low, high) = (months("low_months"), months("high_months"));
        if low > high {
            table.stop(*line, "low_months", "is above high_months");
        }
        let _ = writeln!(
            out,
            "    UsualLife {{ purpose: Purpose::{}, low_months: {low}, high_months: {high}, source: {} }},",
            variant(purpose),
            sources.check(&table, *line, row, "source"),
        );
    }
    let _ = writeln!(out, "];");

    let table = Table::read("water_limits.csv");
    table.ids("");
    let _ = writeln!(out, "static WATER_LIMITS: &[WaterLimit] = &[");
    for (line, row) in &table.rows {
        let purpose = table.one_of(*line, row, "purpose", &purposes.iter().map(String::as_str).collect::<Vec<_>>());
        let of = table.one_of(
            *line,
            row,
            "quantity",
            &["ph", "calcium_hardness", "alkalinity", "iron", "aluminium", "turbidity"],
        );
        let unit = table.one_of(*line, row, "unit", &["ph", "mg_l", "ntu"]);
        let limit = |column: &str| match (table.number(*line, row, column), unit) {
            (None, _) => "None".to_owned(),
            (Some(value), "mg_l") => {
                format!("Some(Amount::Concentration(Concentration::milligrams_per_litre({value:?})))")
            }
            (Some(value), _) => format!("Some(Amount::Ratio({value:?}))"),
        };
        let (low, high) = (limit("low"), limit("high"));
        if low == "None" && high == "None" {
            table.stop(*line, "low", "and high are both empty");
        }
        let _ = writeln!(
            out,
            "    WaterLimit {{ purpose: Purpose::{}, quantity: Term::{}, low: {low}, high: {high}, section: {:?}, source: {} }},",
            variant(purpose),
            variant(of),
            table.text(*line, row, "section"),
            sources.check(&table, *line, row, "source"),
        );
    }
    let _ = writeln!(out, "];");

    let table = Table::read("feed.csv");
    id_enum(
        &mut out,
        "FeedQuantity",
        "What is measured of water that feeds reverse osmosis: a row of `feed.csv`.",
        &table.ids(""),
    );
    let _ = writeln!(out, "static FEED_RULES: &[FeedRule] = &[");
    for (line, row) in &table.rows {
        let unit = table.one_of(*line, row, "unit", &["mg_l", "ratio"]);
        let limit = |column: &str| {
            table.number(*line, row, column).map_or_else(
                || "None".to_owned(),
                |value| match unit {
                    "mg_l" => format!("Some(Amount::Concentration(Concentration::milligrams_per_litre({value:?})))"),
                    _ => format!("Some(Amount::Ratio({value:?}))"),
                },
            )
        };
        let (target, most) = (limit("target"), limit("limit"));
        if target == "None" && most == "None" {
            table.stop(*line, "target", "and limit are both empty");
        }
        let _ = writeln!(
            out,
            "    FeedRule {{ target: {target}, limit: {most}, section: {:?}, source: {} }},",
            table.text(*line, row, "section"),
            sources.check(&table, *line, row, "source"),
        );
    }
    let _ = writeln!(out, "];");

    let table = Table::read("heads.csv");
    for id in table.ids("") {
        let Some((line, row)) = table.rows.iter().find(|(_, row)| row.get("id") == Some(&id)) else { continue };
        let number =
            |column: &str| table.number(*line, row, column).unwrap_or_else(|| table.stop(*line, column, "is empty"));
        let _ = writeln!(
            out,
            "const {}: TorisphericalRow = TorisphericalRow {{ crown_per_diameter: {:?}, knuckle_per_diameter: {:?}, source: {} }};",
            id.to_uppercase(),
            number("crown_per_diameter"),
            number("knuckle_per_diameter"),
            sources.check(&table, *line, row, "source"),
        );
    }

    let table = Table::read("materials.csv");
    let materials = table.ids("");
    let _ = writeln!(out, "static MATERIALS: &[MaterialRow] = &[");
    for (line, row) in &table.rows {
        let kind = table.one_of(*line, row, "kind", &["gravel", "media"]);
        let hatch = table.one_of(
            *line,
            row,
            "hatch",
            &["circles", "dots", "stipple", "slashes", "dashes", "crosses", "rings", "ticks", "waves"],
        );
        let low =
            table.number(*line, row, "grain_low_mm").unwrap_or_else(|| table.stop(*line, "grain_low_mm", "is empty"));
        let high =
            table.number(*line, row, "grain_high_mm").unwrap_or_else(|| table.stop(*line, "grain_high_mm", "is empty"));
        if low >= high {
            table.stop(*line, "grain_low_mm", "is not below grain_high_mm");
        }
        let mut fields = String::new();
        for (name, unit, scale) in [
            ("effective_size", "_mm", 0.001),
            ("uniformity", "", 1.0),
            ("particle_density", "_kg_m3", 1.0),
            ("bulk_density", "_kg_m3", 1.0),
            ("voidage", "", 1.0),
            ("sphericity", "", 1.0),
            ("skeletal_density", "_kg_m3", 1.0),
        ] {
            let (low_column, high_column) = (format!("{name}_low{unit}"), format!("{name}_high{unit}"));
            let range = match (table.number(*line, row, &low_column), table.number(*line, row, &high_column)) {
                (Some(a), Some(b)) if a <= b => {
                    let source = sources.check(&table, *line, row, &format!("{name}_source"));
                    if matches!(name, "voidage" | "sphericity") && b > 1.0 {
                        table.stop(*line, &high_column, "is above 1");
                    }
                    format!("Some(RangeRow {{ low: {:?}, high: {:?}, source: {source} }})", a * scale, b * scale)
                }
                (None, None) => "None".to_owned(),
                (Some(_), Some(_)) => table.stop(*line, &low_column, &format!("is above {high_column}")),
                _ => table.stop(*line, &low_column, &format!("and {high_column} go together")),
            };
            let _ = write!(fields, "{name}: {range}, ");
        }
        if !fields.contains("bulk_density: Some") {
            table.stop(*line, "bulk_density_low_kg_m3", "is empty: every material needs a bulk density");
        }
        let _ = writeln!(
            out,
            "    MaterialRow {{ id: {:?}, kind: Kind::{}, hatch: Hatch::{}, grain_low: {}, grain_high: {}, grain_source: {}, {fields} }},",
            table.filled(*line, row, "id"),
            variant(kind),
            variant(hatch),
            length(low / 1000.0),
            length(high / 1000.0),
            sources.check(&table, *line, row, "grain_source"),
        );
    }
    let _ = writeln!(out, "];");

    let table = Table::read("packs.csv");
    table.ids("");
    let _ = writeln!(out, "static PACKS: &[PackRow] = &[");
    for (line, row) in &table.rows {
        let material = table.filled(*line, row, "material");
        if !materials.iter().any(|m| m == material) {
            table.stop(*line, "material", &format!("“{material}” is no material in materials.csv"));
        }
        let container = table.one_of(*line, row, "container", &["bag", "sack", "drum", "bulk_bag"]);
        let volume_m3 = match (table.number(*line, row, "volume_ft3"), table.number(*line, row, "volume_l")) {
            (Some(v), None) => Some(v * 0.028_316_846_592),
            (None, Some(v)) => Some(v / 1000.0),
            (None, None) => None,
            _ => table.stop(*line, "volume_ft3", "and volume_l exclude each other"),
        };
        let mass_kg = match (table.number(*line, row, "mass_lb"), table.number(*line, row, "mass_kg")) {
            (Some(m), None) => Some(m * 0.453_592_37),
            (None, Some(m)) => Some(m),
            (None, None) => None,
            _ => table.stop(*line, "mass_lb", "and mass_kg exclude each other"),
        };
        if volume_m3.is_none() && mass_kg.is_none() {
            table.stop(*line, "volume_ft3", "a pack needs a volume or a mass");
        }
        let _ = writeln!(
            out,
            "    PackRow {{ id: {:?}, material: {material:?}, container: Container::{}, volume_m3: {volume_m3:?}, mass_kg: {mass_kg:?}, source: {} }},",
            table.filled(*line, row, "id"),
            variant(container),
            sources.check(&table, *line, row, "source"),
        );
    }
    let _ = writeln!(out, "];");

    let table = Table::read("fittings.csv");
    id_enum(&mut out, "Fitting", "A part that a job takes besides media: a row of `fittings.csv`.", &table.ids(""));
    let _ = writeln!(out, "static FITTINGS: &[FittingRow] = &[");
    for (line, row) in &table.rows {
        let kinds: Vec<String> = table
            .filled(*line, row, "kinds")
            .split_whitespace()
            .map(|k| {
                if !["new", "changeout", "partial", "top_up"].contains(&k) {
                    table.stop(*line, "kinds", &format!("“{k}” is no kind of job"));
                }
                format!("JobKind::{}", variant(k))
            })
            .collect();
        let needs =
            table.one_of(*line, row, "needs", &["vessel", "riser", "bottom_collector", "upper_collector", "thread"]);
        let per = table.one_of(*line, row, "per", &["tag", "job", "drum"]);
        let size = match table.text(*line, row, "size") {
            "" => "None",
            "riser" => "Some(SizeOf::Riser)",
            "bore" => "Some(SizeOf::Bore)",
            other => table.stop(*line, "size", &format!("“{other}” is neither riser nor bore")),
        };
        // Blank for every one.
        let among = |column: &str, kind: &str, known: &[&str]| -> String {
            let ids = table.text(*line, row, column).split_whitespace();
            let variants = ids.map(|id| {
                if !known.contains(&id) {
                    table.stop(*line, column, &format!("“{id}” is none of {known:?}"));
                }
                format!("{kind}::{}", variant(id))
            });
            variants.collect::<Vec<_>>().join(", ")
        };
        let openings = among(
            "openings",
            "Opening",
            &["top_only", "top_and_bottom", "side_ports", "flange", "manway", "fill_port"],
        );
        let regimes = among("regimes", "Regime", &["backwashed", "upflow", "never_backwashed", "air_head"]);
        let of_purpose = among("purposes", "Purpose", &purposes.iter().map(String::as_str).collect::<Vec<_>>());
        let unit = table.one_of(*line, row, "unit", &["each", "length"]);
        let quantity =
            table.number(*line, row, "quantity").unwrap_or_else(|| table.stop(*line, "quantity", "is empty"));
        let returns = table.one_of(*line, row, "returns", &["yes", "no"]) == "yes";
        let _ = writeln!(
            out,
            "    FittingRow {{ kinds: &[{}], needs: Needs::{}, openings: &[{openings}], regimes: &[{regimes}], purposes: &[{of_purpose}], per: Per::{}, quantity: {}, unit: CountUnit::{}, size: {size}, returns: {returns}, source: {} }},",
            kinds.join(", "),
            variant(needs),
            variant(per),
            quantity as u32,
            variant(unit),
            sources.check(&table, *line, row, "source"),
        );
    }
    let _ = writeln!(out, "];");

    let table = Table::read("currencies.csv");
    table.ids("");
    let _ = writeln!(out, "/// Currencies whose smallest unit is no hundredth: a row of `currencies.csv` each.");
    let _ = writeln!(out, "static CURRENCIES: &[(&str, u32)] = &[");
    for (line, row) in &table.rows {
        let places = table.one_of(*line, row, "places", &["0", "3", "4"]);
        sources.check(&table, *line, row, "source");
        let _ = writeln!(out, "    ({:?}, {places}),", table.filled(*line, row, "id"));
    }
    let _ = writeln!(out, "];");

    split(&out);
}

fn quantity(kind: &str, value: f64) -> String {
    format!("{kind} {{ dimension: PhantomData, units: PhantomData, value: {value:?} }}")
}

fn temperature(kelvins: f64) -> String {
    quantity("Temperature", kelvins)
}

fn length(metres: f64) -> String {
    quantity("Length", metres)
}

fn volume(cubic_metres: f64) -> String {
    quantity("Volume", cubic_metres)
}

/// One generated file per table, each included by the module the table belongs to.
fn split(out: &str) {
    let folder = std::env::var("OUT_DIR").unwrap_or_else(|e| panic!("OUT_DIR: {e}"));
    let mut parts: BTreeMap<&str, String> = BTreeMap::new();
    let mut current = "";
    for line in out.lines() {
        let starts = [
            ("/// A document, or the plain", "sources"),
            ("/// Something outside that", "checks"),
            ("/// How a figure was reached", "formulas"),
            ("/// A number assumed", "assumptions"),
            ("static NOMINAL_DIAMETERS", "vessels"),
            ("static RISER_DIAMETERS", "risers"),
            ("static SIEVES", "sieves"),
            ("static FLOW_CONTROLS", "flow_controls"),
            ("/// What a vessel's bed is there for", "purposes"),
            ("static LIVES", "lives"),
            ("static WATER_LIMITS", "water_limits"),
            ("/// What is measured of water that feeds", "feed"),
            ("const ASME_FD", "heads"),
            ("static MATERIALS", "materials"),
            ("static PACKS", "packs"),
            ("/// A part that a job takes", "fittings"),
            ("/// Currencies whose smallest", "currencies"),
        ];
        if let Some((_, name)) = starts.iter().find(|(start, _)| line.starts_with(start)) {
            current = name;
        }
        let part = parts.entry(current).or_default();
        part.push_str(line);
        part.push('\n');
    }
    for (name, text) in parts {
        let path = Path::new(&folder).join(format!("{name}.rs"));
        std::fs::write(&path, text).unwrap_or_else(|e| panic!("{}: {e}", path.display()));
    }
}
