//! What the parts in a folder were made from, so that only those that changed are made again.
//!
//! A part is left as it is where everything that its pages are made from is as it was, and its files are still the ones that were written.

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

use serde::{Deserialize, Serialize};
use sha2::{Digest, Sha256};

use crate::files;

/// The record's name in the folder of the parts.
const NAME: &str = "parts.json";
/// The format's name, which stands in it.
const FORMAT: &str = "arcata-parts";
/// A part's file is at most so large, bytes (a limit): a larger one is none that was made here.
const LARGEST: usize = 256 << 20;
/// The form of the record that this program writes.
const VERSION: u32 = 1;

/// What the parts in a folder were made from.
#[derive(Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct PartsRecord {
    format: String,
    version: u32,
    /// By the name of its files without their endings.
    parts: BTreeMap<String, PartRecord>,
}

/// One part as it was made.
#[derive(Clone, Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(crate) struct PartRecord {
    /// The sum of what it was made from.
    pub(crate) made_from: String,
    /// Its files by name, each with its sum (SHA-256, hexadecimal).
    pub(crate) files: BTreeMap<String, String>,
    /// How many pages it has.
    pub(crate) pages: usize,
    /// What was said of it.
    pub(crate) told: Vec<String>,
    /// Whether it was as a part should be.
    pub(crate) complete: bool,
}

impl Default for PartsRecord {
    fn default() -> Self {
        Self { format: FORMAT.to_owned(), version: VERSION, parts: BTreeMap::new() }
    }
}

impl PartsRecord {
    /// The record of a folder; an empty one where there is none or it is not understood: then all parts are made.
    pub(crate) fn of(folder: &Path) -> Self {
        let text = files::read_text(&folder.join(NAME)).unwrap_or_default();
        let record: Option<Self> = serde_json::from_str(&text).ok();
        record.filter(|record| record.format == FORMAT && record.version == VERSION).unwrap_or_default()
    }

    /// A part that need not be made again: the same sum, and the files are those that were written.
    pub(crate) fn kept(&self, folder: &Path, stem: &str, made_from: &str) -> Option<&PartRecord> {
        let record = self.parts.get(stem).filter(|record| record.made_from == made_from)?;
        let is_there = |(name, was): (&String, &String)| sum_of(&folder.join(name)).as_ref() == Some(was);
        record.files.iter().all(is_there).then_some(record)
    }

    /// Keeps that a part was made; the file is written whole.
    pub(crate) fn keep(
        &mut self,
        folder: &Path,
        stem: &str,
        record: PartRecord,
    ) -> Result<(), arcata_files::FileError> {
        self.parts.insert(stem.to_owned(), record);
        let text = serde_json::to_string_pretty(self).unwrap_or_default() + "\n";
        arcata_files::write_whole(&folder.join(NAME), text.as_bytes())
    }

    /// Where it lies.
    pub(crate) fn path(folder: &Path) -> PathBuf {
        folder.join(NAME)
    }
}

/// The sum of bytes (SHA-256, hexadecimal).
pub(crate) fn sum(bytes: &[u8]) -> String {
    Sha256::digest(bytes).iter().fold(String::new(), |text, byte| text + &format!("{byte:02x}"))
}

fn sum_of(path: &Path) -> Option<String> {
    arcata_files::read(path, LARGEST).ok().map(|bytes| sum(&bytes))
}
