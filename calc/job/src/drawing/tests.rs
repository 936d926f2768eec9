//! A section is to scale, says what was worked out, and none of its texts is in another's way.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, clippy::indexing_slicing, clippy::float_cmp)]

mod layout;
mod shapes;
mod vessels;
mod windows;
