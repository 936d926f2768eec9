//! Sentences about what is kept and how safely.

use super::{KeepingLabel, Manner};
use crate::backup::{Against, NoBackup, Owing};

impl Manner {
    /// Why a file is no backup that can be taken in.
    #[must_use]
    pub fn no_backup(&self, why: &NoBackup) -> &'static str {
        self.label(match why {
            NoBackup::TooLong => KeepingLabel::WhyTooLong,
            NoBackup::OtherThing => KeepingLabel::WhyOther,
            NoBackup::OneJob => KeepingLabel::WhyOneJob,
            NoBackup::Cut => KeepingLabel::WhyCut,
            NoBackup::Changed => KeepingLabel::WhyChanged,
            NoBackup::TooNew => KeepingLabel::WhyTooNew,
            NoBackup::Job(_) => KeepingLabel::WhyJob,
        })
    }

    /// How many of a backup's jobs stand like this against those here: what follows the number.
    #[must_use]
    pub fn against(&self, against: Against) -> &'static str {
        self.label(match against {
            Against::New => KeepingLabel::New,
            Against::Same => KeepingLabel::Same,
            Against::Newer => KeepingLabel::Newer,
            Against::Older => KeepingLabel::Older,
            Against::Conflicting => KeepingLabel::Conflicting,
        })
    }

    /// What becomes of one of a backup's jobs.
    #[must_use]
    pub fn will(&self, against: Against) -> &'static str {
        self.label(match against {
            Against::New => KeepingLabel::WillNew,
            Against::Same => KeepingLabel::Same,
            Against::Newer => KeepingLabel::WillNewer,
            Against::Older => KeepingLabel::WillOlder,
            Against::Conflicting => KeepingLabel::WillBoth,
        })
    }

    /// What a backup is owing for.
    #[must_use]
    pub fn owing(&self, owing: &Owing) -> String {
        let mut text = match owing.since {
            Some(day) => self.sentence(KeepingLabel::LastBackup, &[("day", &day.text())]),
            None => self.label(KeepingLabel::NoBackupYet).to_owned(),
        };
        if owing.jobs > 0 {
            let what = if owing.since.is_some() { KeepingLabel::JobsChanged } else { KeepingLabel::JobsUnsaved };
            text.push(' ');
            text.push_str(&self.sentence(what, &[("count", &owing.jobs.to_string())]));
        }
        if owing.prices {
            text.push(' ');
            text.push_str(self.label(KeepingLabel::PricesChanged));
        }
        text
    }

    /// A number of bytes, in the larger units of ten.
    #[must_use]
    pub fn bytes(&self, bytes: u64) -> String {
        let count = bytes as f64;
        match bytes {
            1_000_000_000.. => [&self.decimal(count / 1e9, 1), " GB"].concat(),
            1_000_000.. => [&self.decimal(count / 1e6, 1), " MB"].concat(),
            _ => [&self.decimal(count / 1e3, 0), " kB"].concat(),
        }
    }

    /// A number of letters, in thousands or millions where there are so many.
    #[must_use]
    pub fn letters(&self, letters: u64) -> String {
        let count = letters as f64;
        let (pattern, count) = match letters {
            1_000_000.. => (KeepingLabel::MillionLetters, self.decimal(count / 1e6, 1)),
            1_000.. => (KeepingLabel::ThousandLetters, self.decimal(count / 1e3, 0)),
            _ => (KeepingLabel::Letters, letters.to_string()),
        };
        self.sentence(pattern, &[("count", &count)])
    }
}
