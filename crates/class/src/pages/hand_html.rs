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

/// Words of the page.
const WORDS: [&str; 11] = [
    "hand-keys",
    "hand-shown",
    "hand-not-shown",
    "hand-sentence",
    "hand-note",
    "hand-marks",
    "hand-kept",
    "hand-save",
    "hand-of",
    "hand-phrases",
    "hand-undone",
];

/// The page. It changes nothing by itself: what was done is kept in the browser as a journal, and saved as a file for `--hand`.
#[must_use]
pub fn hand_html(words: &Words, task: &Task, hand_ins: &[HandIn<'_>], hand: &TeachersHand) -> String {
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
    let policy = format!("default-src 'none'; style-src 'unsafe-inline'; script-src 'sha256-{hash}'");
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
                p.note { (words.word("hand-how")) }
                p.note id="keys" {}
                main id="main" tabindex="-1" {}
                script type="application/json" id="given" { (PreEscaped(data)) }
                script { (PreEscaped(SCRIPT)) }
            }
        }
    };
    arcata_xml::seen(&page.into_string()).into_owned()
}
