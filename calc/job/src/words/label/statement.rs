//! Formulas that are said in words, as `formulas.csv` has them; those in signs are the same in every language.

use bedwright_calc::quantity::Formula;

use super::{Table, text_at};
use crate::words::Manner;

labels! {
/// A formula in words.
#[allow(dead_code, reason = "a text is found by its English, which is what the table of formulas says")]
StatementText {
    AsEntered = "as entered" / "como se escribió" / "tel que saisi",
    ByTrial = "found by trial" / "hallado por tanteo" / "trouvé par essais",
    SlotRatio = "slot / smallest grain" / "ranura / grano más pequeño" / "fente / plus petit grain",
    SizeRatio = "largest grain below / smallest grain above"
        / "grano más grande de abajo / grano más pequeño de encima"
        / "plus gros grain du dessous / plus petit grain du dessus",
    FilterRatio = "D15 below / D85 above" / "D15 de abajo / D85 de encima" / "D15 du dessous / D85 du dessus",
    PacksServed = "n = the most whole packs for which one drain line flow control serves the whole year"
        / "n = máximo de envases enteros para los que un regulador de caudal del desagüe sirve todo el año"
        / "n = maximum de conditionnements entiers pour lesquels un régulateur de débit à l’égout sert toute l’année",
    PacksOfAll = "n = n_vessel · vessels" / "n = n_vessel · recipientes" / "n = n_vessel · cuves",
    HeightNeeded = "H = nominal height + riser"
        / "H = altura nominal + tubo central"
        / "H = hauteur nominale + tube central",
    RuleMargin = "at least: value/limit; at most: limit/value"
        / "al menos: valor/límite; como mucho: límite/valor"
        / "au moins : valeur/limite ; au plus : limite/valeur",
    CleanDrop = "1 − ε = k·(1 − ε₀) with k from Σ Δp = Δp read"
        / "1 − ε = k·(1 − ε₀) con k de Σ Δp = Δp leída"
        / "1 − ε = k·(1 − ε₀) avec k de Σ Δp = Δp lue",
    TapeAbove = "tape = inside depth − h; h such that V(h) = V(h_read) + n·V_pack"
        / "cinta = profundidad interior − h; h tal que V(h) = V(h_read) + n·V_pack"
        / "ruban = profondeur intérieure − h ; h tel que V(h) = V(h_read) + n·V_pack",
    TapeDeviation = "tape expected − tape read" / "cinta esperada − cinta leída" / "ruban attendu − ruban lu",
    DepthByReading = "depth = tape read + h; h such that V(h) = n·V_pack"
        / "profundidad = cinta leída + h; h tal que V(h) = n·V_pack"
        / "profondeur = ruban lu + h ; h tel que V(h) = n·V_pack",
    CarbonatePh = "pH = −log a(H⁺) at which the species add up to the alkalinity"
        / "pH = −log a(H⁺) con el que las especies suman la alcalinidad"
        / "pH = −log a(H⁺) auquel les espèces font l’alcalinité",
    Alkalinity = "Alk = Σ n·m over HCO₃⁻; 2 CO₃²⁻; OH⁻; −H⁺ and the ion pairs"
        / "Alk = Σ n·m sobre HCO₃⁻; 2 CO₃²⁻; OH⁻; −H⁺ y los pares iónicos"
        / "Alk = Σ n·m sur HCO₃⁻ ; 2 CO₃²⁻ ; OH⁻ ; −H⁺ et les paires d’ions",
    TotalHardness = "H = Ca + Mg as CaCO₃" / "H = Ca + Mg como CaCO₃" / "H = Ca + Mg en CaCO₃",
    CalciteToSaturation = "x such that SI = 0 with Ca + x; C + x; Alk + 2·x"
        / "x tal que SI = 0 con Ca + x; C + x; Alk + 2·x"
        / "x tel que SI = 0 avec Ca + x ; C + x ; Alk + 2·x",
    MagnesiaToCalcite = "y of MgO such that SI = 0 with Mg + y; Alk + 2·y"
        / "y de MgO tal que SI = 0 con Mg + y; Alk + 2·y"
        / "y de MgO tel que SI = 0 avec Mg + y ; Alk + 2·y",
    MagnesiaToBrucite = "y of MgO such that a(Mg²⁺)·a(H₂O)²/a(H⁺)² = K"
        / "y de MgO tal que a(Mg²⁺)·a(H₂O)²/a(H⁺)² = K"
        / "y de MgO tel que a(Mg²⁺)·a(H₂O)²/a(H⁺)² = K",
    CriticalDepth = "Z where the line meets t = 0" / "Z donde la línea corta t = 0" / "Z où la ligne coupe t = 0",
    ResinCapacity = "dose / 0.3 lb per 1000 gr; at most 20 000 gr/ft³"
        / "dosis / 0,3 lb por 1000 gr; como mucho 20 000 gr/ft³"
        / "dose / 0,3 lb pour 1000 gr ; au plus 20 000 gr/ft³",
    BrineVolume = "V = m/strength; a litre for a kilogram"
        / "V = m/concentración; un litro por kilogramo"
        / "V = m/concentration ; un litre pour un kilogramme",
}}

/// Where a statement that is said in words stands in the table; nowhere where it is all signs.
fn place_of(statement: &str) -> Option<usize> {
    StatementText::TEXTS.iter().position(|row| row.first().is_some_and(|english| *english == statement))
}

impl Manner {
    /// How a figure was reached: an equation, or what is done in words.
    #[must_use]
    pub fn statement(&self, formula: Formula) -> &'static str {
        let statement = formula.statement();
        place_of(statement)
            .map_or(statement, |at| text_at(StatementText::TEXTS, <StatementText as Table>::FIRST, at, self.language))
    }
}

#[cfg(test)]
mod tests {
    use bedwright_calc::quantity::Formula;

    use super::StatementText;

    #[test]
    fn every_formula_in_words_is_one_of_the_catalogue() {
        for [english, ..] in StatementText::TEXTS {
            assert!(Formula::ALL.iter().any(|formula| formula.statement() == *english), "{english}");
        }
    }
}
