//! What is from memory or common practice, with what it is used for.

use bedwright_calc::hydraulics::{CriterionOf, FeedQuantity, FlowControl, Purpose};
use bedwright_calc::life::{UsualLife, WaterLimit};
use bedwright_calc::material::{Material, Pack, Range};
use bedwright_calc::quantity::{Amount, Assumption, Formula, Source, Standing, Term};
use bedwright_calc::supply::Fitting;
use bedwright_calc::vessel::{NominalDiameter, RiserDiameter};

use super::Line;
use crate::words::choices::purpose;
use crate::words::{Manner, SureLabel};

/// The lines as they are gathered.
struct Doubts {
    manner: Manner,
    standing: Standing,
    lines: Vec<Line>,
}

/// Everything whose source stands so.
pub(super) fn doubts(standing: Standing, manner: Manner) -> Vec<Line> {
    let mut doubts = Doubts { manner, standing, lines: Vec::new() };
    doubts.formulas();
    doubts.numbers();
    doubts.rules();
    doubts.materials();
    doubts.tables();
    doubts.lines
}

impl Doubts {
    fn put(&mut self, key: &str, what: String, value: String, used_as: SureLabel, source: Source) {
        if source.standing() == self.standing {
            let cells = [what, value, self.manner.label(used_as).to_owned(), self.manner.source(source)];
            let equation = used_as == SureLabel::AsFormula;
            self.lines.push(Line { key: key.to_owned(), cells, equation });
        }
    }

    fn formulas(&mut self) {
        for formula in Formula::ALL {
            let (what, statement) = (self.manner.formula(*formula).to_owned(), formula.statement().to_owned());
            self.put(formula.id(), what, statement, SureLabel::AsFormula, formula.source());
        }
    }

    fn numbers(&mut self) {
        for number in Assumption::ALL {
            let what = self.manner.assumption(*number).to_owned();
            let value = match number.amount() {
                Amount::Time(time) if time.value > 86_400.0 => self.manner.lifetime(time),
                Amount::Ratio(ratio) => self.manner.decimal(ratio, 4),
                amount => self.manner.amount(amount),
            };
            self.put(number.id(), what, value, SureLabel::AsNumber, number.source());
        }
    }

    /// What is asked of a bed or a water: by purpose.
    fn rules(&mut self) {
        for of in Purpose::ALL {
            for rule in of.criteria() {
                let what = match rule.quantity {
                    CriterionOf::FlowPerArea => self.manner.term(Term::FlowPerArea),
                    CriterionOf::ContactTime => self.manner.term(Term::ContactTime),
                    CriterionOf::BedVolumes => self.manner.term(Term::BedVolumes),
                    CriterionOf::MediaDepth => self.manner.term(Term::MediaDepth),
                    CriterionOf::BackwashRate => self.manner.label(SureLabel::InBackwash),
                    CriterionOf::CollectorHeight => self.manner.label(SureLabel::CollectorAbove),
                };
                self.rule(*of, what, (rule.low, rule.high), rule.source);
            }
            let least = of.minimum_expansion();
            let value = self.manner.sentence(SureLabel::AtLeast, &[("low", &self.manner.percent(least.value))]);
            self.put(of.id(), self.of(*of, self.manner.term(Term::Expansion)), value, SureLabel::AsRule, least.source);
        }
        for limit in WaterLimit::all() {
            self.rule(limit.purpose, self.manner.term(limit.quantity), (limit.low, limit.high), limit.source);
        }
        for quantity in FeedQuantity::ALL {
            if let Some(rule) = quantity.rule() {
                let what = self.manner.term(quantity.term()).to_owned();
                let value = self.limits((None, rule.limit.or(rule.target)));
                self.put(quantity.id(), what, value, SureLabel::AsRule, rule.source);
            }
        }
    }

    fn rule(&mut self, of: Purpose, what: &str, limits: (Option<Amount>, Option<Amount>), source: Source) {
        let value = self.limits(limits);
        self.put(of.id(), self.of(of, what), value, SureLabel::AsRule, source);
    }

    /// "dechlorination: contact time".
    fn of(&self, of: Purpose, what: &str) -> String {
        self.manner.named(self.manner.label(purpose(of)), what)
    }

    fn limits(&self, (low, high): (Option<Amount>, Option<Amount>)) -> String {
        let text = |amount: Option<Amount>| amount.map(|amount| self.manner.amount(amount)).unwrap_or_default();
        let pattern = match (low, high) {
            (Some(_), Some(_)) => SureLabel::Between,
            (Some(_), None) => SureLabel::AtLeast,
            _ => SureLabel::AtMost,
        };
        let (low, high) = (text(low), text(high));
        let places: &[(&str, &str)] = match pattern {
            SureLabel::Between => &[("low", &low), ("high", &high)],
            SureLabel::AtLeast => &[("low", &low)],
            _ => &[("high", &high)],
        };
        self.manner.sentence(pattern, places)
    }

    /// One line a material: what of its data stands so.
    fn materials(&mut self) {
        for material in Material::all() {
            let mut data = Vec::new();
            let (low, high) = (material.grain_low, material.grain_high);
            self.datum(&mut data, Term::GrainSize, low.source, || {
                (self.manner.small(low.value), self.manner.small(high.value))
            });
            self.range(&mut data, Term::EffectiveSize, material.effective_size, |x| self.manner.small(x));
            self.range(&mut data, Term::Uniformity, material.uniformity, |x| self.manner.decimal(x, 2));
            let density = |x| self.manner.amount(Amount::Density(x));
            self.range(&mut data, Term::ParticleDensity, material.particle_density, density);
            self.range(&mut data, Term::BulkDensity, Some(material.bulk_density), density);
            self.range(&mut data, Term::Voidage, material.voidage, |x| self.manner.decimal(x, 2));
            self.range(&mut data, Term::Sphericity, material.sphericity, |x| self.manner.decimal(x, 2));
            self.range(&mut data, Term::SkeletalDensity, material.skeletal_density, density);
            if !data.is_empty() {
                let source =
                    if self.standing == Standing::Memory { Source::FromMemory } else { Source::CommonPractice };
                let name = self.manner.material(&material.id);
                self.put(&material.id, name, data.join("; "), SureLabel::AsMaterial, source);
            }
        }
    }

    fn range<Q>(&self, data: &mut Vec<String>, term: Term, range: Option<Range<Q>>, text: impl Fn(Q) -> String) {
        if let Some(range) = range {
            self.datum(data, term, range.source, || (text(range.low), text(range.high)));
        }
    }

    /// "voidage 0.4 to 0.5", where its source stands so.
    fn datum(&self, data: &mut Vec<String>, term: Term, source: Source, texts: impl FnOnce() -> (String, String)) {
        if source.standing() == self.standing {
            let (low, high) = texts();
            let value = if low == high {
                low
            } else {
                self.manner.sentence(SureLabel::Between, &[("low", &low), ("high", &high)])
            };
            data.push([self.manner.term(term), " ", &value].concat());
        }
    }

    /// Whole tables, by how many of their rows stand so.
    fn tables(&mut self) {
        let of_vessels: Vec<Source> = NominalDiameter::all().iter().map(|row| row.source).collect();
        let of_risers: Vec<Source> = RiserDiameter::all().iter().map(|row| row.source).collect();
        let of_controls: Vec<Source> = FlowControl::all().iter().map(|row| row.source).collect();
        let packs = Material::all().flat_map(|material| Pack::of_material(&material.id));
        let of_packs: Vec<Source> =
            packs.filter_map(|pack| pack.volume.map(|x| x.source).or(pack.mass.map(|x| x.source))).collect();
        let of_parts: Vec<Source> = Fitting::ALL.iter().map(|fitting| fitting.source()).collect();
        let lives: Vec<Source> = Purpose::ALL.iter().filter_map(|of| Some(UsualLife::of(*of)?.source)).collect();
        for (key, what, sources) in [
            ("vessels", SureLabel::SizesOfVessels, of_vessels),
            ("risers", SureLabel::SizesOfRisers, of_risers),
            ("flow_controls", SureLabel::SizesOfControls, of_controls),
            ("packs", SureLabel::SizesOfPacks, of_packs),
            ("fittings", SureLabel::Parts, of_parts),
            ("lives", SureLabel::Lives, lives),
        ] {
            let count = sources.iter().filter(|source| source.standing() == self.standing).count();
            let Some(source) = sources.iter().find(|source| source.standing() == self.standing) else { continue };
            let rows = self.manner.sentence(SureLabel::Rows, &[("count", &count.to_string())]);
            self.put(key, self.manner.label(what).to_owned(), rows, SureLabel::AsTable, *source);
        }
    }
}
