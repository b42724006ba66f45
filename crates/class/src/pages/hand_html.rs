//! The page of the teacher's hand: a class gone through by keyboard.

use std::collections::BTreeMap;

use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;
use maud::{DOCTYPE, PreEscaped, html};
use serde::Serialize;
use sha2::{Digest, Sha256};

use crate::{CandidatePassage, HandIn, SaidOnSheet, Task, TeachersHand, Words};

const SCRIPT: &str = include_str!("hand.js");
const STYLE: &str = include_str!("class.css");

/// What the script is given.
#[derive(Serialize)]
struct HandPageGiven<'a> {
    title: &'a str,
    /// What is kept in the browser between two visits belongs to this task alone.
    keep: String,
    /// Whether the program serves the page, and keeps the journal.
    served: bool,
    criteria: Vec<&'a str>,
    hand: &'a TeachersHand,
    hand_ins: Vec<OneGiven<'a>>,
    words: BTreeMap<&'static str, String>,
}

#[derive(Serialize)]
struct OneGiven<'a> {
    pseudonym: &'a str,
    name: &'a str,
    sheet: &'a str,
    passages: Vec<PassageGiven>,
}

#[derive(Serialize)]
struct PassageGiven {
    id: String,
    place: String,
    title: String,
    sentence: String,
    proposed: bool,
}

/// How the page comes to the browser.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum HandPageBy {
    /// As a file that is opened: the journal is kept in the browser.
    File,
    /// From the program on this machine, which keeps the journal in a file; the script comes from an address of its own.
    Program,
}

/// Words of the page.
const WORDS: [&str; 13] = [
    "hand-keys",
    "hand-shown",
    "hand-not-shown",
    "hand-sentence",
    "hand-note",
    "hand-marks",
    "hand-kept",
    "hand-not-kept",
    "hand-beside",
    "hand-lost",
    "hand-save",
    "hand-of",
    "hand-phrases",
];

/// The script of the page, for a program that serves it.
#[must_use]
pub const fn hand_script() -> &'static str {
    SCRIPT
}

/// The page. It changes no sheet: what was done is kept as a journal, and sheets are made from it.
#[must_use]
pub fn hand_html(
    words: &Words,
    task: &Task,
    hand_ins: &[HandIn<'_>],
    (hand, by): (&TeachersHand, HandPageBy),
) -> String {
    let place = |candidate: &CandidatePassage| {
        let bar = words.say(&SaidOnSheet::new("sheet-bar").with("bar", &candidate.bar));
        let part = candidate.part.as_deref();
        let part = part.map_or_else(|| words.word("sheet-whole-score"), |part| words.part(part));
        format!("{bar}, {part}")
    };
    let passage = |candidate: &'_ CandidatePassage| PassageGiven {
        id: candidate.id.clone(),
        place: place(candidate),
        title: words.title(&candidate.rule),
        sentence: candidate.sentence.said(words).to_owned(),
        proposed: candidate.proposed,
    };
    let read = hand_ins.iter().filter_map(|hand_in| Some((hand_in, hand_in.record.shown()?)));
    let given = HandPageGiven {
        title: &task.title,
        keep: format!("arcata-class-hand {}", task.title),
        served: by == HandPageBy::Program,
        criteria: task.criteria.iter().map(|criterion| criterion.words.as_str()).collect(),
        hand,
        hand_ins: read
            .map(|(hand_in, shown)| OneGiven {
                pseudonym: &hand_in.record.pseudonym,
                name: &hand_in.name,
                sheet: hand_in.sheet.as_deref().unwrap_or_default(),
                passages: shown.candidates.iter().map(passage).collect(),
            })
            .collect(),
        words: WORDS.map(|key| (key, words.word(key))).into(),
    };
    // What ends a script in HTML cannot stand in the data.
    let data = serde_json::to_string(&given).unwrap_or_default().replace('<', "\\u003c");
    let hash = STANDARD.encode(Sha256::digest(SCRIPT.as_bytes()));
    let script = match by {
        HandPageBy::File => format!("script-src 'sha256-{hash}'"),
        HandPageBy::Program => "script-src 'self'; connect-src 'self'".to_owned(),
    };
    let policy = format!("default-src 'none'; style-src 'unsafe-inline'; {script}");
    let page = html! {
        (DOCTYPE)
        html lang=(words.language().code()) {
            head {
                meta charset="utf-8";
                meta http-equiv="Content-Security-Policy" content=(policy);
                meta name="viewport" content="width=device-width, initial-scale=1";
                meta name="generator" content="Arcata";
                title { (words.word("hand-title")) ": " (task.title) }
                style { (PreEscaped(STYLE)) }
            }
            body.class {
                header.head {
                    h1 { (words.word("hand-title")) ": " (task.title) }
                    p.due id="kept" role="status" {}
                }
                p.note { (words.word(if by == HandPageBy::Program { "hand-how-beside" } else { "hand-how" })) }
                p.note id="keys" {}
                main id="main" tabindex="-1" {}
                script type="application/json" id="given" { (PreEscaped(data)) }
                @match by {
                    HandPageBy::File => script { (PreEscaped(SCRIPT)) },
                    HandPageBy::Program => script src="/hand.js" {},
                }
            }
        }
    };
    arcata_xml::seen(&page.into_string()).into_owned()
}
