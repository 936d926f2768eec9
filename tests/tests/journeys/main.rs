//! The page as a person meets it: the built page, served by its own server, in headless Chromium.
//!
//! | module | holds |
//! |---|---|
//! | [`site`] | the served folder, which can be stopped and started again |
//! | [`pace`] | a connection that takes its time or breaks off |
//! | [`folder`] | folders that end with their value: profiles, downloads, builds |
//! | [`driver`] | an engine, and the program that drives it |
//! | [`browser`] | one session of a browser |
//! | [`page`] | the page's controls, found as a screen reader finds them: by role and name |
//! | [`paper`] | what would be printed, read back |
//! | [`axe`] | the accessibility rules that a program can check |
//! | [`keys`] | the page by keyboard alone |
//! | [`filter`] | the steps that plan one vessel, and the way round all screens |
//! | [`stored`] | jobs that are kept already |
//! | [`unlike`] | vessels that have as little in common as vessels can |
//!
//! The others are journeys, a module for each thing the page must be able to do.
//!
//! `tests/run journeys` builds the page and says where it is: `BEDWRIGHT_PAGE`.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic, clippy::indexing_slicing)] // Tests say so by panicking.

mod abuse;
mod axe;
mod backup;
mod browser;
mod calculated;
mod capacity;
mod card;
mod care;
mod checked;
mod codes;
mod crash;
mod drawing;
mod driver;
mod engines;
mod faults;
mod filter;
mod finds;
mod first_minute;
mod folder;
mod install;
mod keep;
mod keys;
mod keystroke;
mod kill;
mod languages;
mod letterhead;
mod life;
mod load;
mod mistakes;
mod offline;
mod pace;
mod page;
mod paper;
mod photo;
mod picture;
mod plan;
mod policy;
mod prices;
mod print;
mod quote;
mod screens;
mod scripts;
mod search;
mod share;
mod single;
mod site;
mod speed;
mod start;
mod storage;
mod stored;
mod supply;
mod sure;
mod tabs;
mod travel;
mod unlike;
mod update;
mod washing;
mod water;
mod wiped;
