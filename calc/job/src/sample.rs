//! The sample job: invented, and marked so.
