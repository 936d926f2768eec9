//! Which packs the job's material comes in, how pipe is cut, what may be lifted, what a pallet bears.

mod handling;
mod material;
mod page;

pub use handling::entry_line;
pub use page::packs_page;
