//! What the parts in a folder were made from, so that only those that changed are made again.
//!
//! A part is left as it is where everything that its pages are made from is as it was, and its files are still the ones that were written.

use std::path::{Path, PathBuf};

use arcata_report::{PartsMade, parts_made_json};
use sha2::{Digest, Sha256};

use crate::files;

/// One part as it was made.
pub(crate) use arcata_report::PartMade as PartRecord;

/// The record's name in the folder of the parts.
const NAME: &str = "parts.json";
/// A part's file is at most so large, bytes (a limit): a larger one is none that was made here.
const LARGEST: usize = 256 << 20;

/// What the parts in a folder were made from.
#[derive(Debug, Default)]
pub(crate) struct PartsRecord(PartsMade);

impl PartsRecord {
    /// The record of a folder; an empty one where there is none or it is not understood: then all parts are made.
    pub(crate) fn of(folder: &Path) -> Self {
        let text = files::read_text(&folder.join(NAME)).unwrap_or_default();
        let made: Option<PartsMade> = serde_json::from_str(&text).ok();
        Self(made.filter(PartsMade::is_of_today).unwrap_or_default())
    }

    /// A part that need not be made again: the same sum, and the files are those that were written.
    pub(crate) fn kept(&self, folder: &Path, stem: &str, made_from: &str) -> Option<&PartRecord> {
        let record = self.0.parts.get(stem).filter(|record| record.made_from == made_from)?;
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
        self.0.parts.insert(stem.to_owned(), record);
        arcata_files::write_whole(&folder.join(NAME), parts_made_json(&self.0).as_bytes())
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
