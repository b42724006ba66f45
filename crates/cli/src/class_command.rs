//! `arcata class`.

use std::collections::BTreeSet;
use std::path::Path;
use std::process::ExitCode;

use arcata_analysis::{Player, Source};
use arcata_class::{HandInOutcome, Key, Task, TeachersHand, Words};
use indicatif::{ParallelProgressIterator as _, ProgressBar, ProgressFinish, ProgressStyle};
use rayon::prelude::*;

use crate::args::ClassArguments;
use crate::class_hand_ins::{HandedIn, handed_in};
use crate::class_one::{MadeSheet, Runs, SheetRequest, StudentNames, Whose, hash, make};
use crate::class_pages::{WrittenPages, is_small, write};
use crate::failure::Failure;
use crate::{class_given, class_key, engraving, files};

pub(crate) fn run(arguments: &ClassArguments) -> Result<ExitCode, Failure> {
    let failed = |why: String| Failure::Task { path: arguments.task.clone(), why };
    let text = files::read_text(&arguments.task).map_err(failed)?;
    let task = Task::read(&text).map_err(|error| failed(error.to_string()))?;
    let profile = task.profile().map_err(failed)?;
    let material = class_given::material(&arguments.task, &task)?;
    let hand_ins = handed_in(&arguments.folder, &task.names, composer)?;
    let students = arguments.students.as_deref().map(students).transpose()?.unwrap_or_default();
    let names: Vec<&str> = hand_ins.iter().map(|hand_in| hand_in.name.as_str()).collect();
    let hand = arguments.hand.as_deref().map(hand).transpose()?.unwrap_or_default();
    for folder in ["sheets", "records"] {
        files::make_folder(&arguments.out.join(folder))?;
    }
    let key = class_key::with(&class_key::path(arguments), &names)?;
    let engraver = engraving::engraver();
    let words: Vec<Words> = task.languages.iter().map(|language| Words::of(*language)).collect();
    let known: BTreeSet<String> =
        key.students.iter().map(|student| student.name.clone()).chain(students.iter().cloned()).collect();
    let known: Vec<String> = known.into_iter().collect();
    let made_of = made_of(&text, arguments, &task)?;
    let request = SheetRequest {
        // Who comes later must not be named by a sheet that was made before.
        made_of: hash(&[made_of.as_bytes(), known.join("\n").as_bytes()]),
        task: &task,
        material: &material,
        player: Player { profile, told: Vec::new() },
        engraver: &engraver,
        words: &words,
        names: &known,
        naming: if arguments.named { StudentNames::Own } else { StudentNames::Pseudonyms },
        out: &arguments.out,
        before: arguments.before.as_deref(),
        hand: &hand,
        runs: if arguments.anew { Runs::Anew } else { Runs::GoesOn },
    };
    let all = make_all(&hand_ins, &key, &request)?;
    let nothing_from = nothing_from(&students, &hand_ins, &key, arguments);
    let written = write(&request, &all, &nothing_from)?;
    tell(&all, &written);
    let unread = all.iter().any(|(_, made)| made.record.shown().is_none());
    Ok(if unread { ExitCode::from(1) } else { ExitCode::SUCCESS })
}

/// The composer that a score names.
fn composer(bytes: Vec<u8>) -> Option<String> {
    Source::open(bytes).ok()?.score.composer
}

/// What every record is made of besides the hand-in: another task, another model, another program make another sheet.
fn made_of(text: &str, arguments: &ClassArguments, task: &Task) -> Result<String, Failure> {
    let folder = arguments.task.with_file_name("");
    let models =
        task.given.models.iter().flat_map(|model| [Some(&model.score), model.layer.as_ref()]).flatten();
    let mut given = Vec::new();
    for name in task.given.melody.iter().chain(models) {
        let path = folder.join(name);
        given.push(files::read(&path, usize::MAX).map_err(|why| Failure::Read { path, why })?);
    }
    let bar = files::bar_word().said("bar").into_owned();
    let fixed = [env!("CARGO_PKG_VERSION").as_bytes(), text.as_bytes(), bar.as_bytes()];
    let pieces: Vec<&[u8]> = fixed.into_iter().chain(given.iter().map(Vec::as_slice)).collect();
    Ok(hash(&pieces))
}

/// What the teacher has done to the sheets.
fn hand(path: &Path) -> Result<TeachersHand, Failure> {
    let failed = |why: String| Failure::Task { path: path.to_owned(), why };
    TeachersHand::read(&files::read_text(path).map_err(failed)?).map_err(failed)
}

/// The list of the class, a name a line.
fn students(path: &Path) -> Result<Vec<String>, Failure> {
    let text = files::read_text(path).map_err(|why| Failure::Read { path: path.to_owned(), why })?;
    let lines = text.lines().map(str::trim).filter(|line| !line.is_empty() && !line.starts_with('#'));
    Ok(lines.map(str::to_owned).collect())
}

/// Names on the list from whom nothing came, as pages say them. Who has never handed in has no pseudonym: only how many they are
/// is told.
fn nothing_from(
    students: &[String],
    hand_ins: &[HandedIn],
    key: &Key,
    arguments: &ClassArguments,
) -> Vec<String> {
    let came: BTreeSet<&str> = hand_ins.iter().map(|hand_in| hand_in.name.as_str()).collect();
    let missing: Vec<&String> = students.iter().filter(|name| !came.contains(name.as_str())).collect();
    if arguments.named {
        return missing.into_iter().cloned().collect();
    }
    let mut known: Vec<String> =
        missing.iter().filter_map(|name| key.pseudonym(name)).map(str::to_owned).collect();
    known.sort();
    let unknown = missing.len() - known.len();
    if unknown > 0 {
        known.push(format!("+ {unknown}"));
    }
    known
}

fn make_all<'a>(
    hand_ins: &'a [HandedIn],
    key: &'a Key,
    request: &SheetRequest<'_>,
) -> Result<Vec<(Whose<'a>, MadeSheet)>, Failure> {
    let bar = ProgressBar::new(hand_ins.len() as u64).with_style(
        ProgressStyle::with_template("{bar:30} {pos}/{len} hand-ins, {eta} left")
            .unwrap_or_else(|_| ProgressStyle::default_bar()),
    );
    let bar = bar.with_finish(ProgressFinish::AndClear);
    hand_ins
        .par_iter()
        .progress_with(bar)
        .map(|hand_in| {
            let pseudonym = key.pseudonym(&hand_in.name).unwrap_or_default();
            let stem = arcata_class::slug(pseudonym);
            let whose = Whose { hand_in, pseudonym, stem };
            let made = make(&whose, request)?;
            Ok((whose, made))
        })
        .collect()
}

/// What the teacher reads on the terminal.
fn tell(all: &[(Whose<'_>, MadeSheet)], written: &WrittenPages) {
    let read = all.iter().filter(|(_, made)| made.record.shown().is_some()).count();
    let kept = all.iter().filter(|(_, made)| made.kept).count();
    let mut text = format!("{read} of {} hand-ins have a sheet", all.len());
    if kept > 0 {
        text.push_str(&format!("; {kept} were as they had been"));
    }
    text.push_str(".\n");
    for (whose, made) in all {
        let Whose { hand_in, pseudonym, .. } = whose;
        if let HandInOutcome::Unreadable { why } = &made.record.outcome {
            text.push_str(&format!("Not read: {} ({pseudonym}): {why}\n", hand_in.file));
        }
        if !made.kept && made.record.replaced > 0 {
            text.push_str(&format!(
                "New file: {} ({pseudonym}); its sheet has replaced the one before.\n",
                hand_in.file
            ));
        }
    }
    if let Some((path, pairs)) = &written.alike {
        let pairs = if *pairs == 1 { "1 pair".to_owned() } else { format!("{pairs} pairs") };
        text.push_str(&format!(
            "{pairs} of hand-ins are alike beyond the task; that is a question, no proof: {}\n",
            path.display()
        ));
    }
    text.push_str(&format!("For you: {}\n", written.index.display()));
    let small = if is_small(read) { " (fewer than ten: nothing is broken down)" } else { "" };
    text.push_str(&format!("To show: {}{small}\n", written.to_show.display()));
    files::show(&files::wrapped(&text));
}
