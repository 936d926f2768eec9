//! Issued quotes as records: only ever added to.

use super::copy::QuoteCopy;
use crate::job::{Job, Record};
use crate::saved::{issued_value, read_issued};

/// A copy as a record of a job.
#[must_use]
pub fn record(copy: &QuoteCopy) -> Record {
    Record { id: copy.id.clone(), value: issued_value(copy) }
}

/// Every quote that was issued, in the order in which they were. Records of other kinds, and those of a later version of
/// this one, are passed over.
#[must_use]
pub fn issued(job: &Job) -> Vec<QuoteCopy> {
    job.records.iter().filter_map(|record| read_issued(&record.value)).collect()
}
