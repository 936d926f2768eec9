//! All that touches the browser outside the page: one file per thing.
//!
//! Nothing here knows what a job is. Texts are kept under keys; what they mean, and which of two is the newer, is told
//! by whoever calls. Everything that can fail says so with a [`Fault`]: no call panics because a browser forbids
//! something, and a failure is never shown as an empty answer.
//!
//! A listener is removed when its guard is dropped; [`listen::Listener::forget`] keeps it for the life of the page.

pub mod address;
pub mod camera;
mod canvas;
pub mod clipboard;
pub mod clock;
pub mod codes;
pub mod crash;
pub mod display;
pub mod drop;
pub mod fault;
pub mod files;
pub mod focus;
pub mod install;
pub mod intl;
pub mod journal;
pub mod listen;
pub mod persist;
pub mod photo;
pub mod picture;
pub mod print;
pub mod random;
pub mod session;
pub mod storage;
pub mod store;
pub mod tabs;
pub mod texts;
pub mod timer;
pub mod trace;
pub mod update;

pub use fault::Fault;

/// Work that goes on while the page does other things; one compiled copy for all who ask for it.
type Work<'a, T> = std::pin::Pin<Box<dyn Future<Output = T> + 'a>>;
