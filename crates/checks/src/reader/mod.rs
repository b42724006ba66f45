//! music21 as another reader of MusicXML: every note, slur and bow mark of its corpus of string works and
//! of its element tests, against ours.

mod ours;

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

use rayon::prelude::*;
use serde_json::Value;

use crate::outcome::{CheckOutcome, Result};
use crate::scores;
use crate::setting::{CheckSetting, read_array, read_text};
use crate::tables;

/// Differences that have been looked into: a row for each file and kind, with the reason.
const EXPLAINED: &str = "docs/reader-differences.md";

/// What is compared, in the order of the report.
const KINDS: [&str; 5] = ["note", "grace", "mark", "slur", "onset"];

/// The lines of each part, by its id.
type PartLines = BTreeMap<String, Vec<String>>;

/// What one file shows.
enum Compared {
    /// music21 cannot read it.
    Unreadable(String),
    /// The differences by kind; none when both readers agree.
    Read(Vec<LineDifference>),
}

/// Lines of one kind that only one of the readers has.
struct LineDifference {
    kind: &'static str,
    only_theirs: Vec<String>,
    only_ours: Vec<String>,
}

/// The files that music21's dump lists, corpus first.
pub(crate) fn dump(setting: &CheckSetting) -> Result<Vec<Value>> {
    let folder = setting.made_once("reader", |folder| {
        let out = folder.join("music21.json");
        setting.script("reader.py", &[&out, Path::new("--processes"), Path::new("2")]).map(|_| ())
    })?;
    read_array(&folder.join("music21.json"))
}

/// Compares file by file; a difference that no row explains is a failure.
pub(crate) fn check(setting: &CheckSetting, outcome: &mut CheckOutcome) -> Result<()> {
    let entries = dump(setting)?;
    let explained = tables::by_first_column(&setting.root.join(EXPLAINED))?;
    let compared: Vec<Result<Compared>> = entries.par_iter().map(compare).collect();
    let mut totals: BTreeMap<&str, u64> = BTreeMap::new();
    let (mut alike, mut differ) = (0, 0);
    for (entry, compared) in entries.iter().zip(compared) {
        let name = name_of(entry);
        match compared {
            Err(problem) => match explained.get(&format!("{name} unread")) {
                Some(_) => differ += 1,
                None => outcome.check(false, &format!("{name}: {problem}")),
            },
            Ok(Compared::Unreadable(why)) => {
                outcome.left_out(&format!("{name}: music21 can not read it ({why})"));
            }
            Ok(Compared::Read(differences)) => {
                for field in ["notes", "grace", "slurs", "up", "down"] {
                    *totals.entry(field).or_default() += entry[field].as_u64().unwrap_or(0);
                }
                alike += u32::from(differences.is_empty());
                differ += u32::from(!differences.is_empty());
                let unexplained = report(&name, &differences, &explained);
                let sentence = format!("{name}: both readers agree, or {EXPLAINED} says why not");
                outcome.check(unexplained == 0, &sentence);
            }
        }
    }
    let counts: Vec<String> = totals.iter().map(|(field, count)| format!("{count} {field}")).collect();
    println!("{} files: {alike} alike, {differ} with differences; {}", entries.len(), counts.join(", "));
    Ok(())
}

/// Says what differs; returns how many kinds of difference nothing explains.
fn report(name: &str, differences: &[LineDifference], explained: &BTreeMap<String, Vec<String>>) -> usize {
    let mut unexplained = 0;
    for difference in differences {
        let LineDifference { kind, only_theirs, only_ours } = difference;
        let counts = format!("{} only in music21, {} only in ours", only_theirs.len(), only_ours.len());
        // A row holds for the numbers it was written about: others are another difference.
        let found = [only_theirs.len().to_string(), only_ours.len().to_string()];
        if let Some([theirs, ours, why]) = explained.get(&format!("{name} {kind}")).map(Vec::as_slice)
            && [theirs, ours] == [&found[0], &found[1]]
        {
            println!("{name} {kind}: {counts}. {why}");
            continue;
        }
        unexplained += 1;
        println!("{name} {kind}: {counts}, unexplained");
        for (whose, lines) in [("music21", only_theirs), ("ours", only_ours)] {
            for line in lines.iter().take(3) {
                println!("    {whose}: {line}");
            }
        }
    }
    unexplained
}

/// The path inside the corpus, or the name of an element test; without the ending.
fn name_of(entry: &Value) -> String {
    let path = PathBuf::from(entry["path"].as_str().unwrap_or_default()).with_extension("");
    let name = path.to_string_lossy().into_owned();
    match name.split_once("music21/corpus/") {
        Some((_, inside)) => inside.to_owned(),
        None => path.file_name().map(|name| name.to_string_lossy().into_owned()).unwrap_or_default(),
    }
}

fn compare(entry: &Value) -> Result<Compared> {
    if let Some(problem) = entry["error"].as_str() {
        return Ok(Compared::Unreadable(problem.to_owned()));
    }
    let field = |name: &str| entry[name].as_str().ok_or(format!("the dump has no \"{name}\""));
    let file = scores::open(Path::new(field("path")?))?;
    let score = arcata_score::read(file.document());
    let ours = ours::reading(&score);
    let theirs = theirs(&read_text(Path::new(field("notes_file")?))?);
    Ok(Compared::Read(differences(&theirs, &ours)))
}

/// Reads the text file of the dump. A note's line gives an `onset` line, too, so that a difference in
/// the score's time is told apart from one in the bar.
fn theirs(text: &str) -> PartLines {
    let mut parts = PartLines::new();
    let mut part = String::new();
    for line in text.lines() {
        let words: Vec<&str> = line.split(' ').collect();
        match words.as_slice() {
            ["part", id @ ..] => part = id.join(" "),
            [kind @ ("note" | "grace"), bar, offset, onset, length, pitch @ ..] => {
                let lines = parts.entry(part.clone()).or_default();
                lines.push(format!("{kind} {bar} {offset} {length} {}", pitch.join(" ")));
                if *kind == "note" {
                    lines.push(format!("onset {bar} {offset} {onset}"));
                }
            }
            _ => parts.entry(part.clone()).or_default().push(line.to_owned()),
        }
    }
    parts
}

fn differences(theirs: &PartLines, ours: &PartLines) -> Vec<LineDifference> {
    let compared = KINDS.into_iter().map(|kind| LineDifference {
        kind,
        only_theirs: without(&of_kind(theirs, kind), &of_kind(ours, kind)),
        only_ours: without(&of_kind(ours, kind), &of_kind(theirs, kind)),
    });
    compared.filter(|found| !found.only_theirs.is_empty() || !found.only_ours.is_empty()).collect()
}

/// The lines of one kind with their part, sorted.
fn of_kind(reading: &PartLines, kind: &str) -> Vec<String> {
    let mut lines: Vec<String> = reading
        .iter()
        .flat_map(|(part, lines)| lines.iter().map(move |line| (part, line)))
        .filter(|(_, line)| line.split(' ').next() == Some(kind))
        .map(|(part, line)| format!("{part}: {line}"))
        .collect();
    lines.sort();
    lines
}

/// What of the first sorted list is not in the second, doubles counted.
fn without(these: &[String], those: &[String]) -> Vec<String> {
    let mut left = those.iter().peekable();
    let mut only = Vec::new();
    for line in these {
        while left.next_if(|other| *other < line).is_some() {}
        if left.next_if(|other| *other == line).is_none() {
            only.push(line.clone());
        }
    }
    only
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn doubles_count() {
        let list = |text: &str| text.split(' ').map(str::to_owned).collect::<Vec<String>>();
        assert_eq!(without(&list("a a b d"), &list("a b c")), list("a d"));
    }

    #[test]
    fn a_note_of_the_dump_gives_its_onset_apart() {
        let parts = theirs("part P1\nnote 2 1/2 9/2 1 F 1 5 1\nslur 1 0 2 1/2\n");
        assert_eq!(parts["P1"], ["note 2 1/2 1 F 1 5 1", "onset 2 1/2 9/2", "slur 1 0 2 1/2"]);
    }
}
