//! The page as a person meets it: the built page, served by its own server, in headless Chromium.
//!
//! | module | holds |
//! |---|---|
//! | [`site`] | the served folder, which can be stopped and started again |
//! | [`browser`] | chromedriver and one session of Chromium |
//! | [`page`] | the page's controls, found as a screen reader finds them: by role and name |
//! | [`paper`] | what would be printed, read back |
//! | [`axe`] | the accessibility rules that a program can check |
//!
//! `tests/run journeys` builds the page and says where it is: `BEDWRIGHT_PAGE`.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, clippy::indexing_slicing)] // Tests say so by panicking.

mod axe;
mod browser;
mod finds;
mod offline;
mod page;
mod paper;
mod site;
mod start;
