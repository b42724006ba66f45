//! Which score a layer belongs to: fingerprints of its bytes and of its music.

use arcata_score::{NoteKind, Score};
use arcata_xml::Document;
use sha2::{Digest as _, Sha256};

use crate::model::{Layer, PitchName, ScoreIdentity};

/// SHA-256 of the bytes of a document, as `sha256:` and hexadecimal digits. A packed score has the
/// fingerprint of the document inside, whatever packed it.
#[must_use]
pub fn bytes(document: &Document) -> String {
    shown(Sha256::digest(document.bytes()).as_slice())
}

/// SHA-256 of the bars and notes of a score: labels, lengths, and of every note part, time, pitch and kind.
/// Slurs, marks, words and layout do not count, so that it stays when a layer comes or goes.
#[must_use]
pub fn music(score: &Score) -> String {
    let mut hash = Sha256::new();
    for bar in &score.bars {
        hash.update(format!("bar {}\u{0}{}\n", bar.label, bar.length).as_bytes());
    }
    for part in &score.parts {
        hash.update(format!("part {}\u{0}{}\n", part.id, part.name).as_bytes());
        for note in &part.notes {
            let pitch =
                if note.pitch.is_rest() { "rest".to_owned() } else { PitchName(note.pitch).to_string() };
            let kind = match note.kind {
                NoteKind::Ordinary => "",
                NoteKind::Grace => " grace",
                NoteKind::SlashedGrace => " slashed",
                NoteKind::Cue => " cue",
            };
            let voice = part.voices.get(usize::from(note.voice)).map_or("", String::as_str);
            hash.update(format!("{} {} {voice} {pitch}{kind}\n", note.onset, note.length).as_bytes());
        }
    }
    shown(hash.finalize().as_slice())
}

fn shown(digest: &[u8]) -> String {
    use std::fmt::Write as _;
    digest.iter().fold("sha256:".to_owned(), |mut text, byte| {
        // Writing to a string cannot fail.
        let _ = write!(text, "{byte:02x}");
        text
    })
}

/// The identity of a score whose document is in its clean state.
#[must_use]
pub fn of(document: &Document, score: &Score) -> ScoreIdentity {
    ScoreIdentity {
        title: score.title.clone(),
        bytes: Some(bytes(document)),
        music: Some(music(score)),
        other: serde_json::Map::new(),
    }
}

/// How a score stands to a layer.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kinship {
    /// The layer names no score.
    Unbound,
    /// It is the very document, without the layer.
    Clean,
    /// The same bars and notes: the layer or other marks may be on it.
    SameMusic,
    /// Other notes or bars: another score, or a revision.
    OtherMusic,
}

/// How a score stands to a layer.
#[must_use]
pub fn kinship(layer: &Layer, document: &Document, score: &Score) -> Kinship {
    let known = &layer.score;
    if known.bytes.is_none() && known.music.is_none() {
        return Kinship::Unbound;
    }
    if known.bytes.as_deref() == Some(&bytes(document)) {
        return Kinship::Clean;
    }
    match &known.music {
        Some(music_known) if *music_known == music(score) => Kinship::SameMusic,
        _ => Kinship::OtherMusic,
    }
}
