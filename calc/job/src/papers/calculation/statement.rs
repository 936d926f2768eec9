//! A statement of `formulas.csv` with the symbols of this sheet.

use bedwright_calc::quantity::{Input, Term};

/// A symbol with an index: "V" and "2" give "V_2", "ρ_bulk" and "2" give "ρ_bulk,2".
pub(super) fn indexed(base: &str, index: &str) -> String {
    let mut symbol = base.to_owned();
    if !index.is_empty() {
        symbol.push(if base.contains('_') { ',' } else { '_' });
        symbol.push_str(index);
    }
    symbol
}

fn of_symbol(letter: char) -> bool {
    letter.is_alphabetic() || letter.is_ascii_digit() || letter == '_'
}

/// The next word of a statement and what follows it: a symbol, a number, or one sign.
fn word(text: &str) -> Option<(&str, &str)> {
    let first = text.chars().next()?;
    let end = if of_symbol(first) {
        text.char_indices().find(|(_, letter)| !of_symbol(*letter)).map_or(text.len(), |(at, _)| at)
    } else {
        first.len_utf8()
    };
    Some((text.get(..end)?, text.get(end..)?))
}

/// The symbol before the equals sign, where it stands alone.
pub(super) fn left_side(statement: &str) -> Option<&str> {
    let (left, _) = statement.split_once(" = ")?;
    left.chars().all(of_symbol).then_some(left)
}

/// Whether a statement names a symbol.
pub(super) fn names(statement: &str, symbol: &str) -> bool {
    let mut rest = statement;
    while let Some((found, after)) = word(rest) {
        if found == symbol {
            return true;
        }
        rest = after;
    }
    false
}

/// What stands for an input of this statement: the symbols of this sheet, in the order of the inputs.
pub(super) type Naming<'a> = dyn Fn(Term) -> Vec<String> + 'a;

/// The statement with the symbols of this sheet: `result` for what it gives, those of the inputs for what goes in. A sum
/// without a place of its own is written out, "Σ m" as "(m_1 + m_2)".
pub(super) fn written(statement: &str, inputs: &[Input], (token, result): (&str, &str), symbols: &Naming) -> String {
    let of = |found: &str| -> Vec<String> {
        if found == token {
            return vec![result.to_owned()];
        }
        // Two nouns may have one symbol: what the valve loses and what the collectors lose are both added up.
        let mut terms: Vec<Term> = Vec::new();
        for input in inputs.iter().filter(|input| input.term.symbol() == found) {
            if !terms.contains(&input.term) {
                terms.push(input.term);
            }
        }
        terms.into_iter().flat_map(symbols).collect()
    };
    let mut text = String::new();
    let mut rest = statement;
    while let Some((found, after)) = word(rest) {
        rest = after;
        if found == "Σ"
            && let Some(mut sum) = after.strip_prefix(' ')
        {
            // The product that is added up: symbols joined by points.
            let mut factors = Vec::new();
            while let Some((factor, after)) = word(sum) {
                factors.push(of(factor));
                sum = after;
                match after.strip_prefix('·') {
                    Some(more) if !more.starts_with('(') => sum = more,
                    _ => break,
                }
            }
            let count = factors.first().map_or(0, Vec::len);
            let terms: Vec<String> = (0..count)
                .map(|at| factors.iter().filter_map(|factor| factor.get(at)).cloned().collect::<Vec<_>>().join("·"))
                .collect();
            match terms.as_slice() {
                [] => text.push('0'),
                [one] => text.push_str(one),
                several => {
                    text.push('(');
                    text.push_str(&several.join(" + "));
                    text.push(')');
                }
            }
            rest = sum;
            continue;
        }
        match of(found).first() {
            Some(symbol) => text.push_str(symbol),
            None => text.push_str(found),
        }
    }
    text
}

#[cfg(test)]
mod tests {
    use super::*;
    use bedwright_calc::quantity::{Known, kilograms};

    #[test]
    fn symbols_get_their_index_and_sums_are_written_out() {
        let mass = |value: f64| Known::typed(kilograms(value)).input(Term::LayerMass);
        let two = |term: Term| {
            if term == Term::LayerMass { vec!["m_1".to_owned(), "m_2".to_owned()] } else { vec!["x".to_owned()] }
        };
        let inputs = [mass(1.0), mass(2.0)];
        assert_eq!(written("m_dry = Σ m", &inputs, ("m_dry", "m_dry"), &two), "m_dry = (m_1 + m_2)");
        assert_eq!(written("E = m²/(m + 1)", &inputs, ("E", "E_2"), &two), "E_2 = m_1²/(m_1 + 1)");
        assert_eq!(left_side("V = V_k + S"), Some("V"));
        assert_eq!(left_side("1.75·v² = g"), None);
        assert!(names("h = a·(1 − √x)", "a") && !names("h = a·x", "x_1"));
        assert_eq!((indexed("V", "2"), indexed("ρ_bulk", "2")), ("V_2".to_owned(), "ρ_bulk,2".to_owned()));
    }
}
