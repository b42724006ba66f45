//! What a file says, read whole.

use std::path::Path;

use arcata_layer::{Layer, ReadErrorKind, identity};
use arcata_score::{ProblemKind, Score};
use arcata_xml::{Document, Limits};
use sha2::{Digest as _, Sha256};

use super::scan::{FileKind, SeenFile};
use crate::files;

/// What a file turned out to be.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) enum Looked {
    /// A score.
    Work { title: String, composer: String, music: String, hash: String },
    /// A bowing layer.
    Layer(Box<LayerFacts>),
    /// What it was before: only its time has changed.
    Same,
    /// Something else: not listed.
    Other { hash: String },
    /// A layer or a score that cannot be read.
    Broken { why: String, hash: String },
}

/// What a layer says of itself.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct LayerFacts {
    pub(super) title: String,
    pub(super) owner: String,
    pub(super) ensemble: String,
    pub(super) date: String,
    pub(super) work: String,
    pub(super) entries: i64,
    pub(super) conflicts: i64,
    pub(super) music: String,
    pub(super) hash: String,
}

/// SHA-256 in hexadecimal digits.
pub(super) fn digest(bytes: &[u8]) -> String {
    Sha256::digest(bytes).iter().map(|byte| format!("{byte:02x}")).collect()
}

/// Reads a file. `known` is the fingerprint of what was read from it before.
pub(super) fn look(root: &Path, seen: &SeenFile, known: Option<&str>) -> Looked {
    let path = root.join(&seen.file);
    let bytes = match files::read(&path, Limits::default().max_bytes) {
        Ok(bytes) => bytes,
        Err(why) => return Looked::Broken { why, hash: String::new() },
    };
    let hash = digest(&bytes);
    if known == Some(hash.as_str()) {
        return Looked::Same;
    }
    match seen.kind {
        FileKind::Layer => layer(&bytes, hash),
        FileKind::Score => work(bytes, hash),
    }
}

fn layer(bytes: &[u8], hash: String) -> Looked {
    match arcata_layer::read(bytes) {
        Ok(layer) => Looked::Layer(Box::new(facts(&layer, hash))),
        // Other JSON may lie about. What begins like a layer was one.
        Err(error) if error.kind == ReadErrorKind::NotALayer && !names_a_layer(bytes) => {
            Looked::Other { hash }
        }
        Err(error) => Looked::Broken { why: error.to_string(), hash },
    }
}

/// Whether the head of a file says that it is a layer.
fn names_a_layer(bytes: &[u8]) -> bool {
    const HEAD: usize = 512;
    let head = &bytes[..bytes.len().min(HEAD)];
    String::from_utf8_lossy(head).contains("arcata-layer")
}

fn facts(layer: &Layer, hash: String) -> LayerFacts {
    let count = |length: usize| i64::try_from(length).unwrap_or(i64::MAX);
    LayerFacts {
        title: layer.title.clone(),
        owner: layer.owner.clone(),
        ensemble: layer.ensemble.clone(),
        date: layer.date.clone(),
        work: layer.score.title.clone().unwrap_or_default(),
        entries: count(layer.entries.len()),
        conflicts: count(layer.conflicts.len()),
        music: layer.score.music.clone().unwrap_or_default(),
        hash,
    }
}

fn work(bytes: Vec<u8>, hash: String) -> Looked {
    let opened = match arcata_xml::open_score(bytes, &Limits::default()) {
        Ok(opened) => opened,
        Err(error) => return Looked::Broken { why: error.to_string(), hash },
    };
    let document: &Document = opened.document();
    let score: Score = arcata_score::read(document);
    // Other XML may lie about.
    if score.problems.iter().any(|problem| problem.kind == ProblemKind::NotAScore) {
        return Looked::Other { hash };
    }
    Looked::Work {
        title: score.title.clone().unwrap_or_default(),
        composer: score.composer.clone().unwrap_or_default(),
        music: identity::music(&score),
        hash,
    }
}
