//! Checks of the whole against the outside.
