//! Lines of a calculation sheet: each result has a symbol that later lines use.

use bedwright_calc::quantity::{Amount, Basis, Figure, Formula, GRAVITY_M_S2, Input, Source, Step, Term};

use super::number::exact;
use super::statement::{indexed, left_side, names, written};
use crate::papers::{Cell, Row, RowKind};
use crate::words::Manner;
use crate::words::label::calculation::CalculationLabel;

/// A symbol of the sheet.
struct Defined {
    term: Term,
    amount: Amount,
    layer: Option<usize>,
    symbol: String,
}

/// What a line is of: a layer, a time of the year or a place, as the index of its symbol.
#[derive(Clone, Copy, Debug)]
pub(super) struct Place<'a> {
    pub(super) layer: Option<usize>,
    pub(super) at: &'a str,
}

impl Place<'_> {
    pub(super) const WHOLE: Place<'static> = Place { layer: None, at: "" };

    fn index(self) -> String {
        match (self.layer, self.at) {
            (None, at) => at.to_owned(),
            (Some(layer), "") => (layer + 1).to_string(),
            (Some(layer), at) => [&(layer + 1).to_string(), ",", at].concat(),
        }
    }
}

/// Stands where a line has no number.
pub(super) const UNNUMBERED: &str = "–";

/// The sheet as it grows.
pub(super) struct Lines {
    manner: Manner,
    defined: Vec<Defined>,
    sources: Vec<Source>,
    /// What went in, numbered from 1.
    given: Vec<Row>,
    /// Equations.
    rows: Vec<Row>,
    /// The formulas that stand in a numbered line.
    formulas: Vec<Formula>,
}

/// Counts and shares that an equation says itself, and sizes that stand in the table of the fractions.
const fn said_in_the_line(term: Term) -> bool {
    matches!(
        term,
        Term::Share
            | Term::ShareBelow
            | Term::ShareAbove
            | Term::Fractions
            | Term::SeenCount
            | Term::WholePacks
            | Term::PacksToBuy
            | Term::GrainSize
    )
}

/// Whether a value is one of a layer's own.
const fn of_layer(term: Term) -> bool {
    matches!(
        term,
        Term::BulkDensity
            | Term::PackVolume
            | Term::PackMass
            | Term::Target
            | Term::GrainLow
            | Term::GrainHigh
            | Term::EffectiveSize
            | Term::Uniformity
            | Term::ParticleDensity
            | Term::Voidage
            | Term::Sphericity
            | Term::SkeletalDensity
            | Term::SolidDensity
            | Term::PoreWater
            | Term::LogMean
            | Term::LogDeviation
            | Term::SizeBelow
            | Term::SizeAbove
    )
}

/// How well a symbol of one noun stands where an equation names another: not at all, as what it is too, or as itself.
const fn stands_for(found: Term, wanted: Term) -> u8 {
    use Term::{
        AskedHeight, AskedLayerVolume, AskedStackVolume, AskedVolume, BottomHeadDepth, BottomHeight, Ceiling,
        CeilingVolume, CoarsestSize, CollectorBottom, CollectorDiameter, CollectorTop, CrownHeight, EffectiveSize,
        ErgunExpansion, Expansion, FinestSize, FreeAtStep, FreeVolume, FullHeight, GrainHigh, GrainLow, GrainSize,
        HeadDepth, Height, HeightAfter, HeightBefore, LayerDepth, LayerVolume, LineWeight, MediaBelow, MemoryExpansion,
        ParticleDensity, RiserOutsideDiameter, RiserSeat, SeenWeight, ServiceFlow, ShellAtCrown, ShellAtStep,
        ShellAtTangent, ShellVolume, SiteFlow, SixTenthsSize, SizeAbove, SizeBelow, SkeletalDensity, SolidDensity,
        StepHeight, TangentHeight, TopHeadDepth, UsualFlow, VolumeAfter, VolumeBefore, VolumeBelow, WeightHigh,
        WeightLow, WenYuExpansion,
    };
    if found as u16 == wanted as u16 {
        return 2;
    }
    let stands = match wanted {
        Height | StepHeight | BottomHeight | AskedHeight | FullHeight | Ceiling => matches!(
            found,
            Height
                | StepHeight
                | BottomHeight
                | AskedHeight
                | FullHeight
                | Ceiling
                | TangentHeight
                | CrownHeight
                | RiserSeat
                | CollectorBottom
                | CollectorTop
                | HeightBefore
                | HeightAfter
        ),
        FreeVolume | FreeAtStep | VolumeBelow | AskedVolume | CeilingVolume => matches!(
            found,
            FreeVolume
                | FreeAtStep
                | VolumeBelow
                | AskedVolume
                | CeilingVolume
                | AskedStackVolume
                | VolumeBefore
                | VolumeAfter
        ),
        ShellVolume | ShellAtStep | ShellAtTangent | ShellAtCrown => {
            matches!(found, ShellVolume | ShellAtStep | ShellAtTangent | ShellAtCrown)
        }
        HeadDepth | BottomHeadDepth | TopHeadDepth => matches!(found, HeadDepth | BottomHeadDepth | TopHeadDepth),
        RiserOutsideDiameter => matches!(found, CollectorDiameter),
        LayerVolume => matches!(found, AskedLayerVolume),
        MediaBelow => matches!(found, LayerDepth),
        Expansion => matches!(found, WenYuExpansion | ErgunExpansion | MemoryExpansion),
        ServiceFlow | UsualFlow => matches!(found, SiteFlow | ServiceFlow | UsualFlow),
        SeenWeight | WeightLow | WeightHigh => matches!(found, LineWeight),
        SolidDensity => matches!(found, ParticleDensity | SkeletalDensity),
        GrainSize => matches!(found, EffectiveSize | SixTenthsSize | GrainLow | GrainHigh | CoarsestSize | FinestSize),
        SizeBelow | SizeAbove => matches!(found, EffectiveSize | SixTenthsSize | GrainLow | GrainHigh),
        _ => false,
    };
    stands as u8
}

impl Lines {
    pub(super) fn new(manner: Manner) -> Lines {
        Lines {
            manner,
            defined: Vec::new(),
            sources: Vec::new(),
            given: Vec::new(),
            rows: Vec::new(),
            formulas: Vec::new(),
        }
    }

    /// A heading over the equations that follow.
    pub(super) fn heading(&mut self, text: &str) {
        let key = ["heading", &self.rows.len().to_string()].concat();
        self.rows.push(Row::heading(key, text));
    }

    /// A symbol no other value has.
    fn free_symbol(&self, base: &str, index: &str) -> String {
        let symbol = indexed(base, index);
        let taken = |symbol: &String| self.defined.iter().any(|defined| defined.symbol == *symbol);
        if !taken(&symbol) {
            return symbol;
        }
        let more = ('b'..='z').map(|letter| indexed(&symbol, &letter.to_string()));
        more.into_iter().find(|symbol| !taken(symbol)).unwrap_or(symbol)
    }

    fn find(&self, input: &Input, layer: Option<usize>) -> Option<&Defined> {
        let fits = |defined: &&Defined| {
            let elsewhere = of_layer(input.term) && defined.layer != layer;
            defined.amount == input.amount && !elsewhere && stands_for(defined.term, input.term) > 0
        };
        let worth = |defined: &Defined| stands_for(defined.term, input.term) * 2 + u8::from(defined.layer == layer);
        let mut best: Option<&Defined> = None;
        for defined in self.defined.iter().filter(fits) {
            if best.is_none_or(|best| worth(defined) > worth(best)) {
                best = Some(defined);
            }
        }
        best
    }

    /// The symbol of an input; what isn't there yet goes in as given.
    fn symbol(&mut self, input: &Input, layer: Option<usize>) -> String {
        if let Some(found) = self.find(input, layer) {
            return found.symbol.clone();
        }
        if said_in_the_line(input.term) {
            return input.term.symbol().to_owned();
        }
        let own = layer.filter(|_| of_layer(input.term));
        self.give(input, Place { layer: own, at: "" })
    }

    /// A value that went in, with what it rests on; its symbol.
    fn give(&mut self, input: &Input, place: Place) -> String {
        self.give_as(self.manner.term(input.term), input, place)
    }

    fn give_as(&mut self, name: &str, input: &Input, place: Place) -> String {
        let symbol = self.free_symbol(base(input.term), &place.index());
        self.defined.push(Defined {
            term: input.term,
            amount: input.amount,
            layer: place.layer,
            symbol: symbol.clone(),
        });
        let rests = self.rests(input.basis, input.source);
        let key = ["given", &symbol].concat();
        let cells = vec![
            Cell::Empty,
            Cell::Text(name.to_owned()),
            Cell::Text(self.manner.input(input)),
            result(&symbol, input.term, input.amount),
            Cell::Text(rests),
        ];
        self.given.push(Row::new(key, RowKind::Item, cells));
        symbol
    }

    /// What a value rests on, with the number of its source where it has a document.
    fn rests(&mut self, basis: Basis, source: Source) -> String {
        let mut text = self.manner.basis(basis).to_owned();
        if let Some(number) = self.source_number(source) {
            text.push(' ');
            text.push_str(&number);
        }
        text
    }

    fn source_number(&mut self, source: Source) -> Option<String> {
        if matches!(source, Source::Typed | Source::Arithmetic) {
            return None;
        }
        // Documents that read the same are one.
        let said = self.manner.source(source);
        let at = self.sources.iter().position(|there| self.manner.source(*there) == said).unwrap_or_else(|| {
            self.sources.push(source);
            self.sources.len() - 1
        });
        Some(["[", &(at + 1).to_string(), "]"].concat())
    }

    /// A step as a line; what it needs and isn't there goes in as given. What stands already stands once.
    pub(super) fn put(&mut self, name: &str, step: &Step, place: Place) {
        let formula = step.figure.formula;
        let mut index = place.index();
        if let Some(fraction) = step.fraction {
            index = [&fraction.to_string(), ",", &index].concat();
        }
        let value = step.figure.value;
        let there = self.defined.iter().any(|defined| {
            defined.term == step.term
                && defined.amount == value
                && defined.layer == place.layer
                && formula == Formula::Given
        });
        if there {
            return;
        }
        if formula == Formula::Given {
            for input in &step.figure.inputs {
                self.give_as(name, &Input { term: step.term, ..*input }, place);
            }
            return;
        }
        self.formulas.push(formula);
        self.formulas.extend_from_slice(&step.with);
        if formula == Formula::ByTrial {
            let symbol = self.define(step.term, value, place.layer, &index);
            let cells = vec![
                Cell::Empty,
                Cell::Text(name.to_owned()),
                Cell::Text(self.manner.label(CalculationLabel::Trial).to_owned()),
                result(&symbol, step.term, value),
                Cell::Empty,
            ];
            self.rows.push(Row::new(["trial", &symbol].concat(), RowKind::Item, cells));
            return;
        }
        let mut statement = formula.statement().to_owned();
        for clause in &step.with {
            statement.push_str("; ");
            statement.push_str(clause.statement());
        }
        let inputs: Vec<Input> =
            step.figure.inputs.iter().filter(|input| names(&statement, input.term.symbol())).copied().collect();
        let symbols: Vec<(Term, String, Amount)> =
            inputs.iter().map(|input| (input.term, self.symbol(input, place.layer), input.amount)).collect();
        // Where it is known, or another clause says what it is, something else is found.
        let clause = |left: &str| step.with.iter().any(|clause| left_side(clause.statement()) == Some(left));
        let known = |left: &str| clause(left) || inputs.iter().any(|input| input.term.symbol() == left);
        let left = left_side(&statement).filter(|left| !known(left));
        // A height or a size with a noun of its own is still the equation's h or d, a lifted fraction's water its ε.
        let own = [step.term.symbol(), "ε", "h", "d"].into_iter().find(|symbol| names(&statement, symbol));
        let token = left.or(own).unwrap_or(step.term.symbol()).to_owned();
        let symbol = if said_in_the_line(step.term) && step.term != Term::GrainSize {
            step.term.symbol().to_owned()
        } else {
            self.define(step.term, value, place.layer, &index)
        };
        let of = |term: Term| symbols.iter().filter(|(of, ..)| *of == term).map(|(_, s, _)| s.clone()).collect();
        let equation = written(&statement, &inputs, (&token, &symbol), &of);
        let mut values: Vec<String> = Vec::new();
        for (term, symbol, amount) in &symbols {
            let value = equals(symbol, *term, *amount);
            if !values.contains(&value) {
                values.push(value);
            }
        }
        if names(&statement, "g") {
            values.push([&equals("g", Term::Share, GRAVITY_M_S2.into()), "\u{a0}m/s²"].concat());
        }
        if names(&statement, "Σ_d") {
            let layer = place.layer.map(|layer| (layer + 1).to_string()).unwrap_or_default();
            values.push([self.manner.label(CalculationLabel::EachOf), " ", &indexed("d", &layer)].concat());
        }
        let with = [self.manner.label(CalculationLabel::With), " ", &values.join("; ")].concat();
        let source = self.rests(step.figure.basis, formula.source());
        let cells = vec![
            Cell::Empty,
            Cell::Text(name.to_owned()),
            Cell::Equation(if values.is_empty() { vec![equation] } else { vec![equation, with] }),
            result(&symbol, step.term, value),
            Cell::Text(source),
        ];
        self.rows.push(Row::new(["line", &self.rows.len().to_string()].concat(), RowKind::Item, cells));
    }

    fn define(&mut self, term: Term, amount: Amount, layer: Option<usize>, index: &str) -> String {
        let symbol = self.free_symbol(base(term), index);
        self.defined.push(Defined { term, amount, layer, symbol: symbol.clone() });
        symbol
    }

    /// Ten sizes of fractions in a row, in millimetres.
    pub(super) fn sizes(&mut self, name: &str, layer: usize, from: usize, millimetres: &[String]) {
        let symbol = indexed("d", &(layer + 1).to_string());
        let text = [&symbol, " = ", &millimetres.join("; "), " mm"].concat();
        let key = ["sizes", &symbol, ",", &from.to_string()].concat();
        let cells = vec![Cell::Empty, Cell::Text(name.to_owned()), Cell::Equation(vec![text])];
        self.rows.push(Row::new(key, RowKind::Item, cells));
    }

    /// A figure whose equation is said in a whole, with what went in; it has no number, and no later line uses it.
    pub(super) fn whole<Q: Copy + Into<Amount>>(&mut self, name: &str, figure: &Figure<Q>) {
        let mut values: Vec<String> = Vec::new();
        for input in &figure.inputs {
            let symbol = Some(input.term.symbol()).filter(|symbol| !symbol.is_empty());
            let value = equals(symbol.unwrap_or(self.manner.term(input.term)), input.term, input.amount);
            if !values.contains(&value) {
                values.push(value);
            }
        }
        let source = self.rests(figure.basis, figure.formula.source());
        let with = [self.manner.label(CalculationLabel::With), " ", &values.join("; ")].concat();
        let cells = vec![
            Cell::Text(UNNUMBERED.to_owned()),
            Cell::Text(name.to_owned()),
            Cell::Equation(vec![self.manner.statement(figure.formula).to_owned(), with]),
            Cell::Text(exact(Term::Target, figure.value.into())),
            Cell::Text(source),
        ];
        self.rows.push(Row::new(["whole", &self.rows.len().to_string()].concat(), RowKind::Item, cells));
    }

    /// A remark among the equations.
    pub(super) fn remark(&mut self, text: &str) {
        let key = ["remark", &self.rows.len().to_string()].concat();
        self.rows.push(Row::remark(key, text));
    }

    /// Whether there is no equation.
    pub(super) fn is_empty(&self) -> bool {
        self.rows.is_empty() && self.given.is_empty()
    }

    /// The formulas that stand in a numbered line, one for each time.
    pub(super) fn formulas(self) -> Vec<Formula> {
        self.formulas
    }

    /// All rows: what went in under `title`, then the equations, numbered through; then the documents they rest on.
    pub(super) fn finish(self, title: &str, documents: &str) -> Vec<Row> {
        let mut all = Vec::with_capacity(self.given.len() + self.rows.len() + self.sources.len() + 2);
        if !self.given.is_empty() {
            all.push(Row::heading("given", title));
        }
        all.extend(self.given);
        all.extend(self.rows);
        let mut number = 0_u32;
        for row in &mut all {
            if row.kind == RowKind::Item
                && let Some(first @ Cell::Empty) = row.cells.first_mut()
            {
                number += 1;
                *first = Cell::Text(number.to_string());
            }
        }
        if !self.sources.is_empty() {
            all.push(Row::heading("sources", documents));
        }
        for (at, source) in self.sources.iter().enumerate() {
            let text = ["[", &(at + 1).to_string(), "] ", &self.manner.source(*source)].concat();
            all.push(Row::remark(["source", &at.to_string()].concat(), text));
        }
        all
    }
}

/// What a symbol of the sheet begins with: at a rung the equation's h_k is a height like any other.
const fn base(term: Term) -> &'static str {
    match term {
        Term::StepHeight => "h",
        Term::ShellAtStep => "S",
        Term::FreeAtStep => "V",
        Term::SolidSection => "A",
        _ => term.symbol(),
    }
}

/// "D = 0.298296 m", which no line's end parts.
fn equals(symbol: &str, term: Term, amount: Amount) -> String {
    [symbol, " = ", &exact(term, amount)].concat().replace(' ', "\u{a0}")
}

fn result(symbol: &str, term: Term, amount: Amount) -> Cell {
    // A long one goes on below its equals sign.
    let value = exact(term, amount).replace(' ', "\u{a0}");
    Cell::Equation(vec![[symbol, "\u{a0}= ", &value].concat()])
}
