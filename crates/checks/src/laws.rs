//! Laws that hold on every MusicXML file of music21's corpus and element tests: read and written is the
//! same file; marks added and taken off leave no trace; what a plan writes is as valid as what it read.

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};

use arcata_bow::{Profile, plan};
use arcata_layer::{BowAddition, add_marks, remove_marks};
use arcata_score::{BowDirection, NoteId, Score};
use arcata_xml::{Editor, Input, Limits, ScoreFile, open_score};
use rayon::prelude::*;

use crate::outcome::{CheckOutcome, Result};
use crate::reader;
use crate::scores;
use crate::setting::{CheckSetting, read, write};

/// What one file shows.
#[derive(Default)]
struct LawsHeld {
    name: String,
    /// Why it cannot be opened; nothing else is asked then.
    unread: Option<String>,
    /// Laws that do not hold.
    broken: Vec<String>,
    marks: usize,
    /// The file with a plan's marks, and the file it was made from.
    written: Option<(PathBuf, PathBuf)>,
}

/// Asks the laws of every file.
pub(crate) fn check(setting: &CheckSetting, outcome: &mut CheckOutcome) -> Result<()> {
    let files = files(setting)?;
    let folder = setting.scratch("laws")?;
    let profile = Profile::default();
    let held: Vec<LawsHeld> = files
        .par_iter()
        .enumerate()
        .map(|(number, path)| {
            let mut held = LawsHeld { name: path.display().to_string(), ..LawsHeld::default() };
            if let Err(problem) = ask(path, &folder, number, &profile, &mut held) {
                held.broken.push(problem);
            }
            held
        })
        .collect();
    let unread = held.iter().filter(|file| file.unread.is_some()).count();
    let marks: usize = held.iter().map(|file| file.marks).sum();
    for file in &held {
        match &file.unread {
            Some(why) => outcome.left_out(why),
            None => {
                outcome.check(file.broken.is_empty(), &format!("{}: {}", file.name, file.broken.join("; ")))
            }
        }
    }
    println!("{} files, {unread} that cannot be read; {marks} marks written and taken off", held.len());
    let written: Vec<(PathBuf, PathBuf)> = held.into_iter().filter_map(|file| file.written).collect();
    let result = validate(setting, &folder, &written, outcome);
    // What lies there is of use only when something failed.
    if !outcome.has_failed() {
        let _ = fs::remove_dir_all(&folder);
    }
    result
}

/// The element tests and the corpus as the dump lists them, and the rest of the corpus.
pub(crate) fn files(setting: &CheckSetting) -> Result<Vec<PathBuf>> {
    let mut files = Vec::new();
    for entry in reader::dump(setting)? {
        let path = PathBuf::from(entry["path"].as_str().ok_or("the dump has an entry without a path")?);
        if let Some(corpus) = path.ancestors().find(|folder| folder.ends_with("music21/corpus")) {
            if files.is_empty() {
                walk(corpus, &mut files)?;
            }
        } else {
            files.push(path);
        }
    }
    files.sort();
    files.dedup();
    Ok(files)
}

fn walk(folder: &Path, files: &mut Vec<PathBuf>) -> Result<()> {
    let entries = fs::read_dir(folder).map_err(|problem| format!("{}: {problem}", folder.display()))?;
    for path in entries.filter_map(|entry| Some(entry.ok()?.path())) {
        if path.is_dir() {
            walk(&path, files)?;
        } else if path
            .extension()
            .is_some_and(|ending| ["xml", "musicxml", "mxl"].iter().any(|known| ending == *known))
        {
            files.push(path);
        }
    }
    Ok(())
}

fn ask(path: &Path, folder: &Path, number: usize, profile: &Profile, held: &mut LawsHeld) -> Result<()> {
    let bytes = read(path)?;
    let file = match open_score(bytes.clone(), &Limits::default()) {
        Ok(file) => file,
        Err(problem) => {
            held.unread = Some(format!("{}: {problem}", path.display()));
            return Ok(());
        }
    };
    let nothing = Editor::new(file.document()).finish().map_err(|problem| problem.to_string())?;
    if file.write_edited(&nothing).map_err(|problem| problem.to_string())? != bytes {
        held.broken.push("written without a change, it is another file".to_owned());
    }
    let score = arcata_score::read(file.document());
    let planned = planned_marks(&score, profile);
    // A score without strings has no plan, but its notes can carry marks all the same.
    let marks = if planned.is_empty() { every_third_note(&score) } else { planned.clone() };
    let marked = there_and_back(&file, &score, &marks, held)?;
    if !planned.is_empty() {
        let ending = if file.kind() == Input::Package { "mxl" } else { "musicxml" };
        let target = folder.join(format!("{number:04}.{ending}"));
        write(&target, file.write(&marked).map_err(|problem| problem.to_string())?)?;
        held.written = Some((path.to_owned(), target));
    }
    Ok(())
}

/// A mark for every stroke of every line.
fn planned_marks(score: &Score, profile: &Profile) -> Vec<BowAddition> {
    let mut marks = Vec::new();
    for line in scores::lines(score, profile) {
        let plan = plan(&line, &profile.plan_settings(line.instrument));
        for (stroke, planned) in line.strokes.iter().zip(&plan.strokes) {
            let note = stroke.notes.first().copied();
            marks.extend(note.map(|note| BowAddition {
                part: line.part,
                note,
                direction: planned.direction,
            }));
        }
    }
    marks
}

fn every_third_note(score: &Score) -> Vec<BowAddition> {
    let parts = score.parts.iter().enumerate();
    let notes =
        parts.flat_map(|(part, notes)| (0..notes.notes.len()).step_by(3).map(move |note| (part, note)));
    notes
        .filter_map(|(part, note)| {
            // A printed bow would give way, and not come back.
            score.parts[part].notes[note].bow_mark.is_none().then_some(())?;
            let direction = if note % 2 == 0 { BowDirection::Down } else { BowDirection::Up };
            Some(BowAddition { part, note: NoteId(u32::try_from(note).ok()?), direction })
        })
        .collect()
}

/// Adds marks, reads the result anew, takes off what was added; returns the bytes with the marks.
fn there_and_back(
    file: &ScoreFile,
    score: &Score,
    marks: &[BowAddition],
    held: &mut LawsHeld,
) -> Result<Vec<u8>> {
    let said = |problem: &dyn std::fmt::Display| problem.to_string();
    let document = file.document();
    let edits = add_marks(document, score, marks).map_err(|problem| said(&problem))?;
    let marked = document.apply(&edits).map_err(|problem| said(&problem))?;
    held.marks += edits.edits().len();
    let again =
        arcata_xml::Document::parse(marked.clone(), &Limits::default()).map_err(|problem| said(&problem))?;
    let read_again = arcata_score::read(&again);
    let ours = |part: usize, note: NoteId| score.parts[part].note(note).bow_mark.is_none();
    let removal = remove_marks(&again, &read_again, ours).map_err(|problem| said(&problem))?;
    if again.apply(&removal).map_err(|problem| said(&problem))? != document.bytes() {
        held.broken.push("marks added and taken off leave a trace".to_owned());
    }
    if read_again
        .parts
        .iter()
        .map(|part| part.notes.len())
        .ne(score.parts.iter().map(|part| part.notes.len()))
    {
        held.broken.push("with marks it has other notes".to_owned());
    }
    Ok(marked)
}

/// Validates both files of each pair; where the first is valid the second must be.
pub(crate) fn validate(
    setting: &CheckSetting,
    folder: &Path,
    pairs: &[(PathBuf, PathBuf)],
    outcome: &mut CheckOutcome,
) -> Result<()> {
    let both = pairs.iter().flat_map(|(read, written)| [read, written]);
    let list = folder.join("validate.txt");
    write(&list, both.map(|path| format!("{}\n", path.display())).collect::<String>())?;
    let shown = setting.script("validate.py", &[Path::new("--list"), &list])?;
    let verdicts: BTreeMap<&str, &str> = shown
        .lines()
        .filter_map(|line| {
            let (state, rest) = line.split_once('\t')?;
            Some((rest.split('\t').next()?, if state == "valid" { state } else { rest }))
        })
        .collect();
    let verdict = |path: &Path| verdicts.get(path.to_string_lossy().as_ref()).copied();
    let mut valid = 0;
    for (read, written) in pairs {
        let before = verdict(read).ok_or(format!("{} was not validated", read.display()))?;
        let after = verdict(written).ok_or(format!("{} was not validated", written.display()))?;
        if before == "valid" {
            valid += 1;
            let sentence = format!("{} is valid as {} is: {after}", written.display(), read.display());
            outcome.check(after == "valid", &sentence);
        }
    }
    println!(
        "{} written files compared by the MusicXML 4.0 schema, {valid} of them made from valid ones",
        pairs.len()
    );
    Ok(())
}
