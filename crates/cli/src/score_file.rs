//! Scores written as the names of their files say.

use std::path::Path;

use arcata_languages::Saying;
use arcata_xml::{Input, ScoreFile};

use crate::failure::Failure;
use crate::files;

/// A file that a score will be written to.
#[derive(Clone, Copy, Debug)]
pub(crate) struct ScoreTarget<'p> {
    path: &'p Path,
    kind: Input,
}

impl<'p> ScoreTarget<'p> {
    /// What the name says; to be asked before anything is written.
    pub(crate) fn of(path: &'p Path) -> Result<Self, Failure> {
        let name = path.file_name().unwrap_or_default().to_string_lossy();
        match Input::of_name(&name) {
            Some(kind) => Ok(Self { path, kind }),
            None => Err(Failure::ScoreName { path: path.to_owned() }),
        }
    }

    /// Writes the score, and says where the kind of the file is another than that of the one it came from.
    pub(crate) fn write(self, from: &ScoreFile, score: &[u8]) -> Result<(), Failure> {
        let stem = self.path.file_stem().unwrap_or_default().to_string_lossy();
        // These have a meaning in the paths of a package.
        let member = format!("{}.musicxml", stem.replace([':', '\\', '/'], "_"));
        let bytes = from
            .write_as(self.kind, &member, score)
            .map_err(|error| Failure::Marks { why: files::told(&error.to_string()) })?;
        arcata_files::write_whole(self.path, &bytes)?;
        self.tell(from, &member);
        Ok(())
    }

    fn tell(self, from: &ScoreFile, member: &str) {
        let path = self.path.display().to_string();
        match (from.kind(), self.kind) {
            (Input::Package, Input::Document) => {
                let left = from.other_members();
                let alone = Saying::new("score-alone")
                    .quoting("path", path)
                    .choosing("also", if left.is_empty() { "no" } else { "yes" })
                    .quoting("left", shown(&left));
                files::complain(&files::wording().say(&alone));
            }
            (Input::Document, Input::Package) => {
                let package = Saying::new("score-package").quoting("path", path).quoting("member", member);
                files::complain(&files::wording().say(&package));
            }
            _ => {}
        }
    }
}

/// The first few names.
fn shown(names: &[&str]) -> String {
    const MOST: usize = 4;
    let first = names.iter().take(MOST).copied().collect::<Vec<_>>().join(", ");
    if names.len() <= MOST {
        return first;
    }
    let more = Saying::new("names-and-more").quoting("names", first).with("more", names.len() - MOST);
    files::wording().say(&more)
}
