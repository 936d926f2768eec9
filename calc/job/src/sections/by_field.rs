//! Typed values by field.

/// Typed values by field, in the order of the fields. Few, so a list serves.
#[derive(Clone, Debug, PartialEq)]
pub struct ByField<F, E>(Vec<(F, E)>);

impl<F, E> Default for ByField<F, E> {
    fn default() -> ByField<F, E> {
        ByField(Vec::new())
    }
}

impl<F: Copy + Ord, E> ByField<F, E> {
    /// The value of a field.
    #[must_use]
    pub fn get(&self, field: F) -> Option<&E> {
        self.0.iter().find(|(there, _)| *there == field).map(|(_, entry)| entry)
    }

    /// Puts a value into its place, or takes it away, and says what stood there before.
    pub fn set(&mut self, field: F, entry: Option<E>) -> Option<E> {
        let at = self.0.partition_point(|(there, _)| *there < field);
        let there = self.0.get(at).is_some_and(|(known, _)| *known == field);
        let before = if there { Some(self.0.remove(at).1) } else { None };
        if let Some(entry) = entry {
            self.0.insert(at, (field, entry));
        }
        before
    }

    /// Every value, in the order of the fields.
    pub fn iter(&self) -> impl Iterator<Item = &(F, E)> {
        self.0.iter()
    }

    /// Whether there is none.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.0.is_empty()
    }
}
