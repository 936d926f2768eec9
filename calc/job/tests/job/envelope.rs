//! What travels comes whole or is refused with the reason.

use bedwright_job::envelope::{Contents, DEEPEST, Damage, LONGEST, crc32, from_link, link, open, seal};
use bedwright_job::saved::{Unreadable, job_text};
use bedwright_job::sections::SectionName;
use miniz_oxide::deflate::compress_to_vec;
use proptest::prelude::*;

use crate::{cases, jobs};

fn sample() -> Vec<u8> {
    seal(&jobs::sample(), &Contents { lands_on: "loading".to_owned(), ..Contents::whole() })
}

/// An envelope around any text.
fn around(text: &str) -> Vec<u8> {
    let packed = compress_to_vec(text.as_bytes(), 6);
    let mut sealed = vec![1];
    sealed.extend_from_slice(&crc32(&packed).to_be_bytes());
    for length in [text.len(), packed.len()] {
        sealed.extend_from_slice(&u32::try_from(length).unwrap().to_be_bytes());
    }
    sealed.extend_from_slice(&packed);
    sealed
}

#[test]
fn a_job_comes_as_it_was_sent() {
    for job in [jobs::sample(), jobs::every_choice()] {
        let received = open(&from_link(&link(&seal(&job, &Contents::whole()))).unwrap()).unwrap();
        assert_eq!(received.job, job);
        assert_eq!(received.lands_on, "");
    }
    assert_eq!(open(&sample()).unwrap().lands_on, "loading");
}

#[test]
fn what_was_not_chosen_is_not_sent() {
    let mut job = jobs::every_choice();
    job.records.retain(|record| record.value.get("kind").is_none());
    let kept = job.records.len();
    assert!(kept > 0);
    let some = Contents {
        sections: vec![SectionName::Survey],
        records: Some(vec!["drain_check".into()]),
        ..Contents::whole()
    };
    let received = open(&seal(&job, &some)).unwrap().job;
    assert_eq!(received.survey, job.survey);
    assert_eq!(received.head, job.head, "the head always goes along");
    assert_eq!(received.prices, Default::default());
    assert_eq!(received.plan, Default::default());
    assert!(received.records.is_empty());
    assert!(!job_text(&received).contains("own:"), "{}", job_text(&received));
}

/// Each position, each letter of the alphabet: every link that is one letter off is refused.
#[test]
fn every_link_that_is_one_letter_off_is_refused() {
    let text = link(&sample());
    let alphabet: Vec<char> = ('A'..='Z').chain('a'..='z').chain('0'..='9').chain(['-', '_', '+', '%']).collect();
    let letters: Vec<char> = text.chars().collect();
    let mut tried = 0_u32;
    let mut refused = |letters: &[char]| {
        tried += 1;
        let text: String = letters.iter().collect();
        let found = from_link(&text).and_then(|sealed| open(&sealed));
        assert!(found.is_err(), "opened: {text}");
    };
    for at in 0..letters.len() {
        let mut one = letters.clone();
        one.remove(at);
        refused(&one);
        for &letter in &alphabet {
            if letter != letters[at] {
                let mut one = letters.clone();
                one[at] = letter;
                refused(&one);
            }
            let mut one = letters.clone();
            one.insert(at, letter);
            refused(&one);
        }
    }
    for &letter in &alphabet {
        refused(&[letters.as_slice(), &[letter]].concat());
    }
    assert!(tried > 70_000, "{tried}");
}

#[test]
fn a_cut_link_says_so() {
    let sealed = sample();
    for length in 0..sealed.len() {
        let damage = open(&sealed[..length]).unwrap_err();
        assert_eq!(damage, Damage::Cut, "{length}");
    }
}

#[test]
fn what_is_no_envelope_says_what_it_is() {
    let bomb = "0".repeat(LONGEST + 1);
    let mut lies = around(&"0".repeat(100_000));
    lies[5..9].copy_from_slice(&50_u32.to_be_bytes());
    let deep = format!("{}{}", "[".repeat(DEEPEST + 1), "]".repeat(DEEPEST + 1));
    let many = format!("[{}0]", "0,".repeat(500_000));
    let later = r#"{"format":"bedwright-envelope","version":2,"job":{}}"#;
    let nothing = r#"{"format":"bedwright-envelope","version":1}"#;
    let other = r#"{"format":"bedwright-envelope","version":1,"job":{"format":"letter"}}"#;
    let table = [
        (around(&bomb), Damage::TooLong { bytes: LONGEST + 1 }),
        (lies, Damage::TooLong { bytes: 50 }),
        (around(&deep), Damage::TooDeep),
        (around(&many), Damage::TooMany),
        (around(later), Damage::TooNew { version: 2 }),
        (around(nothing), Damage::OtherThing),
        (around("7"), Damage::OtherThing),
        (around("no json"), Damage::OtherThing),
        (around(other), Damage::NoJob(Unreadable::OtherFormat)),
        (vec![2; 40], Damage::TooNew { version: 2 }),
        (vec![0; 40], Damage::OtherThing),
        (vec![200; 40], Damage::OtherThing),
        (vec![], Damage::Cut),
    ];
    for (sealed, damage) in table {
        assert_eq!(open(&sealed), Err(damage));
    }
}

proptest! {
    #![proptest_config(cases())]

    #[test]
    fn any_bytes_are_opened_or_refused(bytes in prop::collection::vec(any::<u8>(), 0..400), first in 0_u8..3) {
        let mut bytes = bytes;
        if let Some(byte) = bytes.first_mut() { *byte = first }
        let _ = open(&bytes);
    }

    #[test]
    fn any_text_in_an_envelope_is_opened_or_refused(text in any::<String>()) {
        let _ = open(&around(&text));
        let job = serde_json::json!({ "format": "bedwright-envelope", "version": 1, "job": { "format": text } });
        prop_assert!(open(&around(&job.to_string())).is_err());
    }

    #[test]
    fn letters_and_bytes_are_the_same(bytes in prop::collection::vec(any::<u8>(), 0..100)) {
        prop_assert_eq!(from_link(&link(&bytes)).unwrap(), bytes);
    }

    #[test]
    fn any_letters_are_read_or_refused(text in any::<String>()) {
        let _ = from_link(&text).map(|sealed| open(&sealed));
    }
}
