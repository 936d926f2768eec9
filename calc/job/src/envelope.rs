//! A job on its way from one person to another: some of its sections, packed small, with what it takes to see that nothing
//! was cut off or changed on the way.
//!
//! ```text
//! 1 byte    the version of the envelope, 1
//! 4 bytes   CRC-32 (ISO 3309) of the packed part, big end first
//! 4 bytes   how many bytes that is unpacked, big end first
//! 4 bytes   how many it is packed: what is cut off is told from what was changed
//! the rest  deflate (RFC 1951), its window filled with `known_1.txt` beforehand, of JSON: {"format": "bedwright-envelope", "version": 1, "for": …, "from": …, "day": …,
//!           "without_costs": …, "excerpt": …, "job": a job file}
//! ```
//!
//! As a link the bytes stand in base64url (RFC 4648, 5) after `#/open/`; in a code that holds a link, as decimal digits,
//! which take a quarter less room there; over several codes, as base45 (RFC 9285) in [`frames`].

mod base45;
mod card;
pub(crate) mod costs;
mod damage;
mod digits;
mod found;
mod frames;
mod limits;
mod link;
mod packing;
mod parts;

pub use card::card;
pub use damage::Damage;
pub use digits::{digits, from_digits};
pub use found::{Found, code_of, found, found_in_file};
pub use frames::{Frame, FrameFault, Gathered, MOST_BYTES as FRAME_BYTES, frames};
pub use limits::{DEEPEST, LONGEST, MOST_ROWS};
pub use link::{from_link, link};
pub use parts::{Part, Receiver};

use serde_json::{Map, Value};

use crate::id::Id;
use crate::job::Job;
use crate::saved;
use crate::sections::SectionName;

/// The name of the format.
pub const FORMAT: &str = "bedwright-envelope";
/// Its version.
pub const VERSION: u8 = 1;
/// What stands before the packed part.
const HEAD: usize = 13;

/// What goes along.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Contents {
    /// The sections; the head always goes along, so that the job has a name.
    pub sections: Vec<SectionName>,
    /// Which records, by their kinds; none for all of them.
    pub records: Option<Vec<String>>,
    /// Whether costs and margins do.
    pub costs: bool,
    /// One vessel alone, with what hangs on it: a part of a job that never takes the job's place.
    pub excerpt: Option<Id>,
    /// The screen the receiver lands on, by the last part of its address; empty for the job's own.
    pub lands_on: String,
    /// What the sender calls themselves; empty where they don't.
    pub from: String,
    /// The day it is sent, as `2026-11-24`; empty where nobody says.
    pub day: String,
}

impl Contents {
    /// Everything.
    #[must_use]
    pub fn whole() -> Contents {
        Contents {
            sections: SectionName::ALL.to_vec(),
            records: None,
            costs: true,
            excerpt: None,
            lands_on: String::new(),
            from: String::new(),
            day: String::new(),
        }
    }

    /// Whether what this version doesn't know goes along too. Costs may stand in it.
    fn is_whole(&self) -> bool {
        let all = SectionName::ALL.iter().all(|name| self.sections.contains(name));
        all && self.costs && self.records.is_none() && self.excerpt.is_none()
    }
}

/// What came.
#[derive(Clone, Debug, PartialEq)]
pub struct Received {
    /// The job, with the sections that were sent.
    pub job: Job,
    /// The screen to land on.
    pub lands_on: String,
    /// What the sender calls themselves; anybody can write any name.
    pub from: String,
    /// The day it was sent, as the sender's device had it.
    pub day: String,
    /// Whether costs and margins were kept back.
    pub without_costs: bool,
    /// The one vessel it is about, where it is no more than a part of its job.
    pub excerpt: Option<Id>,
}

impl Received {
    /// A whole job that came as a plain file.
    #[must_use]
    pub fn plain(job: Job) -> Received {
        Received {
            job,
            lands_on: String::new(),
            from: String::new(),
            day: String::new(),
            without_costs: false,
            excerpt: None,
        }
    }
}

/// Packs a job, or some of its sections.
#[must_use]
pub fn seal(job: &Job, contents: &Contents) -> Vec<u8> {
    let mut file = saved::exact::value(&saved::job_text(job)).unwrap_or(Value::Null);
    if let Some(sections) = file.get_mut("sections").and_then(Value::as_object_mut) {
        sections.retain(|name, section| match SectionName::of(name) {
            Some(SectionName::Head) => true,
            // One that can't be read might hold costs where nobody looks for them.
            Some(known) => contents.sections.contains(&known) && (contents.costs || !job.is_locked(known)),
            None => contents.is_whole() && !section.is_null(),
        });
        for (name, section) in sections.iter_mut() {
            drop_equal_base(section);
            if !contents.costs && name == SectionName::Prices.id() {
                costs::without(section);
            }
        }
    }
    if let Some(records) = file.get_mut("records").and_then(Value::as_array_mut) {
        if let Some(kinds) = &contents.records {
            records.retain(|record| {
                let kind = record.get("kind").and_then(Value::as_str).unwrap_or_default();
                kinds.iter().any(|wanted| wanted == kind)
            });
        }
        if !contents.costs {
            let issued = |record: &Value| record.get("kind").and_then(Value::as_str) == Some(saved::ISSUED);
            let all = std::mem::take(records).into_iter();
            *records = all
                .filter_map(|record| if issued(&record) { costs::issued_without(&record) } else { Some(record) })
                .collect();
        }
    }
    if !contents.is_whole()
        && let Some(file) = file.as_object_mut()
    {
        file.retain(|key, _| ["format", "version", "id", "sections", "records"].contains(&key.as_str()));
    }
    let mut map = Map::new();
    map.insert("format".to_owned(), FORMAT.into());
    map.insert("version".to_owned(), VERSION.into());
    let excerpt = contents.excerpt.as_ref().map(Id::as_str).unwrap_or_default();
    let texts = [("for", &contents.lands_on), ("from", &contents.from), ("day", &contents.day)];
    for (key, text) in texts.into_iter().map(|(key, text)| (key, text.as_str())).chain([("excerpt", excerpt)]) {
        if !text.is_empty() {
            map.insert(key.to_owned(), text.into());
        }
    }
    if !contents.costs {
        map.insert("without_costs".to_owned(), true.into());
    }
    map.insert("job".to_owned(), file);
    bytes(&Value::Object(map).to_string())
}

/// A section that stands as it was handed over doesn't say so twice.
fn drop_equal_base(section: &mut Value) {
    let Some(section) = section.as_object_mut() else { return };
    let body = section.get("body").map(Value::to_string);
    if section.get("base").and_then(Value::as_str) == body.as_deref() {
        section.shift_remove("base");
    }
}

fn bytes(text: &str) -> Vec<u8> {
    let packed = packing::packed(text.as_bytes());
    let mut sealed = Vec::with_capacity(HEAD + packed.len());
    sealed.push(VERSION);
    sealed.extend_from_slice(&crc32(&packed).to_be_bytes());
    for length in [text.len(), packed.len()] {
        sealed.extend_from_slice(&u32::try_from(length).unwrap_or(u32::MAX).to_be_bytes());
    }
    sealed.extend_from_slice(&packed);
    sealed
}

/// Opens an envelope.
///
/// # Errors
/// [`Damage`]: what is wrong with it. Nothing of it is shown then.
pub fn open(sealed: &[u8]) -> Result<Received, Damage> {
    let (head, packed) = sealed.split_at_checked(HEAD).ok_or(Damage::Cut)?;
    let (version, numbers) = head.split_first().ok_or(Damage::Cut)?;
    if *version != VERSION {
        return Err(if *version > VERSION && *version < 16 {
            Damage::TooNew { version: u64::from(*version) }
        } else {
            Damage::OtherThing
        });
    }
    let number = |from: usize| numbers.iter().skip(from).take(4).fold(0_u32, |sum, byte| sum << 8 | u32::from(*byte));
    let length = |from: usize| usize::try_from(number(from)).unwrap_or(usize::MAX);
    let (sum, long, short) = (number(0), length(4), length(8));
    if long > LONGEST {
        return Err(Damage::TooLong { bytes: long });
    }
    if packed.len() < short {
        return Err(Damage::Cut);
    }
    if packed.len() > short || crc32(packed) != sum {
        return Err(Damage::Changed);
    }
    let text = packing::unpacked(packed, long)?;
    let text = String::from_utf8(text).map_err(|_| Damage::Changed)?;
    received(&text)
}

fn received(text: &str) -> Result<Received, Damage> {
    limits::check(text)?;
    let value = saved::exact::value(text).map_err(|_| Damage::OtherThing)?;
    let Value::Object(mut map) = value else { return Err(Damage::OtherThing) };
    if map.get("format").and_then(Value::as_str) != Some(FORMAT) {
        return Err(Damage::OtherThing);
    }
    let version = map.get("version").and_then(Value::as_u64).unwrap_or(0);
    if version > u64::from(VERSION) {
        return Err(Damage::TooNew { version });
    }
    let said = |key: &str| map.get(key).and_then(Value::as_str).unwrap_or_default().to_owned();
    let (lands_on, from, day) = (said("for"), said("from"), said("day"));
    let excerpt = Some(Id::new(&said("excerpt"))).filter(|id| !id.as_str().is_empty());
    let without_costs = map.get("without_costs").and_then(Value::as_bool).unwrap_or(false);
    let job = map.remove("job").ok_or(Damage::OtherThing)?;
    let job = saved::read_job(&job.to_string()).map_err(Damage::NoJob)?;
    Ok(Received { job, lands_on, from, day, without_costs, excerpt })
}

/// What each half byte does to the checksum: bit by bit would be four times as slow, byte by byte a kilobyte more.
// A place that isn't there would stop the build.
#[allow(clippy::indexing_slicing)]
const HALF_BYTES: [u32; 16] = {
    let mut table = [0; 16];
    let mut half = 0;
    while half < 16 {
        let mut sum = half as u32;
        let mut bit = 0;
        while bit < 4 {
            sum = if sum & 1 == 1 { sum >> 1 ^ 0xEDB8_8320 } else { sum >> 1 };
            bit += 1;
        }
        table[half] = sum;
        half += 1;
    }
    table
};

/// The checksum of ISO 3309, as in PNG and gzip.
#[must_use]
pub fn crc32(bytes: &[u8]) -> u32 {
    let half = |sum: u32| HALF_BYTES.get((sum & 15) as usize).copied().unwrap_or(0) ^ sum >> 4;
    !bytes.iter().fold(u32::MAX, |sum, byte| half(half(sum ^ u32::from(*byte))))
}

#[cfg(test)]
mod tests {
    use super::crc32;

    /// "123456789" gives CBF43926: the check value of CRC-32/ISO-HDLC in the catalogue of parametrised CRC algorithms.
    #[test]
    fn the_checksum_is_the_standard_one() {
        assert_eq!(crc32(b"123456789"), 0xCBF4_3926);
    }
}
