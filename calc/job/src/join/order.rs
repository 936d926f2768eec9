//! The order of things that have ids, when both sides may have added, taken away and moved some.

/// Ids in the order that comes of both: those that were there before in the order of the side that moved them, what is new
/// behind what it was put behind. The same whichever side is called which, unless both moved things differently: then in the
/// order of `first`.
pub(super) fn merged<'a>(
    base: &[&'a str],
    first: &[&'a str],
    second: &[&'a str],
    keep: &dyn Fn(&str) -> bool,
) -> Vec<&'a str> {
    let old = |ids: &[&'a str]| -> Vec<&'a str> { ids.iter().copied().filter(|id| base.contains(id)).collect() };
    let among = |ids: &[&'a str], others: &[&'a str]| -> Vec<&'a str> {
        ids.iter().copied().filter(|id| others.contains(id)).collect()
    };
    let moved = |ids: &[&'a str]| old(ids) != among(base, ids);
    // What was there before: in the order of who moved it; what only one side still has stands where the other had it.
    let leading = if moved(first) || !moved(second) { first } else { second };
    let mut all = old(leading);
    let other = if std::ptr::eq(leading, first) { second } else { first };
    put_behind(&mut all, &old(other), base);
    // What is new, run by run.
    let mut runs = runs_of(base, first);
    for (behind, run) in runs_of(base, second) {
        let run: Vec<&str> = run.into_iter().filter(|id| !runs.iter().any(|(_, there)| there.contains(id))).collect();
        if !run.is_empty() {
            runs.push((behind, run));
        }
    }
    let mut done: Vec<Option<&str>> = Vec::new();
    for place in runs.iter().map(|(behind, _)| *behind).collect::<Vec<_>>() {
        if done.contains(&place) {
            continue;
        }
        done.push(place);
        let mut here: Vec<&Vec<&str>> =
            runs.iter().filter(|(behind, _)| *behind == place).map(|(_, run)| run).collect();
        if let [one, other] = here.as_slice()
            && other.first() < one.first()
        {
            here.swap(0, 1);
        }
        let at = place.and_then(|id| all.iter().position(|there| *there == id)).map_or(0, |at| at + 1);
        let run: Vec<&str> = here.into_iter().flatten().copied().collect();
        all.splice(at..at, run);
    }
    all.retain(|id| keep(id));
    all
}

/// Puts ids that are missing behind what stands before them in the order they had.
fn put_behind<'a>(all: &mut Vec<&'a str>, others: &[&'a str], base: &[&'a str]) {
    for id in base.iter().filter(|id| others.contains(*id)) {
        if all.contains(id) {
            continue;
        }
        let before = base.iter().take_while(|there| *there != id).filter(|there| all.contains(*there)).last();
        let at = before.and_then(|before| all.iter().position(|there| there == before)).map_or(0, |at| at + 1);
        all.insert(at, id);
    }
}

/// What is new on a side: the id it was put behind, and the run of new ones there.
fn runs_of<'a>(base: &[&'a str], side: &[&'a str]) -> Vec<(Option<&'a str>, Vec<&'a str>)> {
    let mut runs: Vec<(Option<&str>, Vec<&str>)> = Vec::new();
    let mut behind = None;
    let mut open = false;
    for id in side {
        if base.contains(id) {
            behind = Some(*id);
            open = false;
            continue;
        }
        match runs.last_mut() {
            Some((_, run)) if open => run.push(id),
            _ => runs.push((behind, vec![id])),
        }
        open = true;
    }
    runs
}

#[cfg(test)]
mod tests {
    use super::merged;

    fn check(base: &[&str], first: &[&str], second: &[&str], expected: &[&str]) {
        assert_eq!(merged(base, first, second, &|_| true), expected);
    }

    #[test]
    fn what_both_added_at_one_place_stands_in_one_order_whoever_is_asked() {
        check(&["a", "b"], &["a", "x", "b"], &["a", "m", "n", "b"], &["a", "m", "n", "x", "b"]);
        check(&["a", "b"], &["a", "m", "n", "b"], &["a", "x", "b"], &["a", "m", "n", "x", "b"]);
        check(&[], &["y"], &["x"], &["x", "y"]);
    }

    #[test]
    fn what_one_side_moved_stays_where_it_was_put() {
        check(&["a", "b", "c"], &["c", "a", "b"], &["a", "b", "x", "c"], &["c", "a", "b", "x"]);
        check(&["a", "b", "c"], &["a", "b", "x", "c"], &["c", "a", "b"], &["c", "a", "b", "x"]);
    }

    #[test]
    fn what_is_not_kept_is_gone() {
        assert_eq!(merged(&["a", "b"], &["a", "b"], &["b"], &|id| id != "a"), ["b"]);
    }
}
