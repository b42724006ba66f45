//! The scores that were opened last, in a small file of the user's own folder; it is read by nobody but the entrance.

use std::path::{Path, PathBuf};

use serde::{Deserialize, Serialize};

/// A rule of thumb: so many are offered.
const MOST: usize = 12;
/// A limit: the list is shorter.
const LARGEST: usize = 1 << 20;
/// The version of the file (by definition).
const VERSION: u32 = 1;
/// The file.
const NAME: &str = "last-scores.json";

#[derive(Debug, Serialize, Deserialize)]
struct LastScores {
    version: u32,
    scores: Vec<PathBuf>,
}

/// Those that are there still, the last one first.
pub(crate) fn read(folder: &Path) -> Vec<PathBuf> {
    let scores = all(folder);
    scores.into_iter().filter(|path| path.is_file()).collect()
}

fn all(folder: &Path) -> Vec<PathBuf> {
    let read = arcata_files::read(&folder.join(NAME), LARGEST).ok();
    let read = read.and_then(|text| serde_json::from_slice::<LastScores>(&text).ok());
    read.filter(|read| read.version == VERSION).map_or_else(Vec::new, |read| read.scores)
}

/// Puts one in front. Where the file cannot be written nothing is remembered, and nothing else is amiss.
pub(crate) fn put(folder: &Path, score: &Path) {
    let Ok(score) = std::path::absolute(score) else { return };
    let mut scores = all(folder);
    scores.retain(|other| *other != score);
    scores.insert(0, score);
    scores.truncate(MOST);
    write(folder, scores);
}

/// Forgets them all.
pub(crate) fn forget(folder: &Path) {
    write(folder, Vec::new());
}

fn write(folder: &Path, scores: Vec<PathBuf>) {
    if let Ok(text) = serde_json::to_vec_pretty(&LastScores { version: VERSION, scores })
        && std::fs::create_dir_all(folder).is_ok()
    {
        let _ = arcata_files::write_whole(&folder.join(NAME), &text);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_last_one_is_first_and_what_is_gone_is_not_offered() {
        let folder = tempfile::tempdir().unwrap();
        let own = folder.path().join("own");
        let score = |name: &str| folder.path().join(name);
        for name in ["a.musicxml", "b.musicxml", "c.musicxml"] {
            arcata_files::write_whole(&score(name), b"<score-partwise/>").unwrap();
            put(&own, &score(name));
        }
        put(&own, &score("a.musicxml"));
        std::fs::remove_file(score("b.musicxml")).unwrap();
        assert_eq!(read(&own), [score("a.musicxml"), score("c.musicxml")]);
        for count in 0..30 {
            put(&own, &score(&format!("{count}.musicxml")));
        }
        assert_eq!(all(&own).len(), MOST);
        forget(&own);
        assert!(all(&own).is_empty());
    }
}
