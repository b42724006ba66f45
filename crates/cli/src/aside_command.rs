//! `arcata aside`: sets a finding, a rule or a passage aside, with a reason.

use std::path::Path;
use std::process::ExitCode;

use arcata_bow::plan::MarkReading;
use arcata_languages::Saying;
use arcata_review::{Aside, AsideEntry, REGISTER, ReviewSettings, SlurEntry};
use arcata_score::places::{self, BarName, Passage, Within};
use arcata_score::{Movement, Score, Slur, SlurTold};

use crate::args::{AsideArguments, SharedArguments, SlurIsArgument};
use crate::failure::Failure;
use crate::layer_words::{say, word};
use crate::{aside_file, bars, files, studio};

/// Adds an entry; one that would hold nothing is refused.
pub(crate) fn run(arguments: &AsideArguments) -> Result<ExitCode, Failure> {
    let score = studio::open_score(&arguments.score)?.score;
    let entry = in_one_movement(&score, entry(arguments, &score)?)?;
    let slurs = arguments.slur.map(|is| SlurEntry {
        told: if is == SlurIsArgument::Phrase { SlurTold::Phrase } else { SlurTold::Bow },
        part: entry.part.clone(),
        bars: entry.bars.clone(),
        beat: entry.beat,
        movement: entry.movement,
        reason: entry.reason.clone(),
    });
    let held = match &slurs {
        None => held(arguments, &entry)?,
        Some(slurs) => slurs_held(arguments, slurs)?,
    };
    if held == 0 {
        let what = if slurs.is_some() { "slur" } else { "finding" };
        return Err(Failure::NothingAside { score: arguments.score.clone(), what });
    }
    let lines = slurs.as_ref().map_or_else(|| entry.lines(), SlurEntry::lines);
    let path = arguments.aside.clone().unwrap_or_else(|| aside_file::beside(&arguments.score));
    if files::same(&path, &arguments.score) {
        return Err(Failure::SameFile { path });
    }
    if path.exists() {
        let failed = |why: String| Failure::Aside { path: path.clone(), why };
        let before = files::read_text(&path).map_err(failed)?;
        // What cannot be read is not written over.
        Aside::read(&before).map_err(|error| failed(files::told(&error.to_string())))?;
        let joint = if before.ends_with('\n') { "" } else { "\n" };
        let text = format!("{before}{joint}{}", lines);
        arcata_files::rewrite(&path, before.as_bytes(), text.as_bytes())?;
    } else {
        let name = arguments.score.file_name().unwrap_or_default().to_string_lossy();
        arcata_files::write_new(&path, (Aside::head(&name) + &lines).as_bytes())?;
    }
    if slurs.is_some() {
        let told = if arguments.slur == Some(SlurIsArgument::Phrase) { "phrase" } else { "bow" };
        tell(Saying::new("aside-slurs-done").choosing("told", told), held, &path);
        return Ok(ExitCode::SUCCESS);
    }
    tell(Saying::new("aside-done"), held, &path);
    Ok(ExitCode::SUCCESS)
}

fn tell(done: Saying, held: usize, path: &Path) {
    let done = done.with("count", held).quoting("file", path.display().to_string());
    files::say(&format!("{}\n", files::wording().say(&done)));
}

fn entry(arguments: &AsideArguments, score: &Score) -> Result<AsideEntry, Failure> {
    let wrong = |text: &str, why: &str| Failure::AsideEntry { text: text.to_owned(), why: why.to_owned() };
    if let Some(rule) = arguments.rule.as_ref().filter(|rule| arcata_review::rule(rule).is_none()) {
        let known = REGISTER.iter().map(|rule| rule.card.id).collect();
        return Err(Failure::Rule { asked: rule.clone(), known });
    }
    if arguments.reason.trim().is_empty() {
        return Err(wrong("--reason", &word("aside-needs-reason")));
    }
    let mut entry = AsideEntry {
        rule: arguments.rule.clone(),
        part: arguments.part.clone(),
        reason: arguments.reason.trim().to_owned(),
        ..AsideEntry::default()
    };
    if let Some(asked) = &arguments.movement {
        entry.movement = Some(bars::movement(score, asked)? + 1);
    }
    if let Some(text) = &arguments.bars {
        let failed = |why: String| wrong(&format!("--bars \"{text}\""), &why);
        let typed = score.passage(text).map_err(|misread| failed(files::told(&misread.to_string())))?;
        take_place(&mut entry, score, &typed).map_err(failed)?;
    }
    if let Some(text) = &arguments.beat {
        let failed = |why: String| wrong(&format!("--beat \"{text}\""), &why);
        let beat = places::beat(text).map_err(|misread| failed(files::told(&misread.to_string())))?;
        if entry.beat.is_some_and(|other| other != beat) {
            return Err(failed(word("aside-other-beat")));
        }
        entry.beat = Some(beat);
    }
    let nothing = entry.rule.is_none() && entry.part.is_none();
    if nothing && entry.bars.is_none() && entry.movement.is_none() {
        return Err(wrong(&word("aside-whole-review"), &word("aside-name-something")));
    }
    Ok(entry)
}

/// What a place says of an entry: bars, and where it says so the movement, the part and the beat.
fn take_place(entry: &mut AsideEntry, score: &Score, typed: &Passage) -> Result<(), String> {
    if let Some(asked) = &typed.movement {
        let there = score.movement_named(asked).map(|movement| movement + 1);
        let movement = there.ok_or_else(|| say(&Saying::new("aside-no-movement").quoting("asked", asked)))?;
        if entry.movement.is_some_and(|other| other != movement) {
            return Err(word("aside-other-movement"));
        }
        entry.movement = Some(movement);
    }
    if entry.part.is_none() {
        entry.part.clone_from(&typed.section);
    }
    let within = entry.movement.and_then(|movement| score.movements.get(movement - 1));
    let within = within.map_or(0..=u32::MAX, |movement| movement.bars.clone());
    let (bar, _) = typed.bars();
    let named = entry.part.as_deref();
    let part = named.and_then(|named| score.parts.iter().position(|part| part.name == named)).unwrap_or(0);
    entry.bars = Some(AsideEntry::bars_named(typed).map_err(files::told)?);
    entry.beat = match (typed.from.within, &typed.to) {
        (Within::Bar, _) => None,
        (_, Some(_)) => return Err(word("aside-stretch")),
        (Within::Beat(beat), None) => Some(beat),
        (Within::After(length), None) => {
            score.bars_called(&bar, within).first().map(|bar| score.beat_at(part, *bar, length))
        }
        (Within::Note(_), None) => return Err(word("aside-by-note")),
    };
    Ok(())
}

/// The entry with the movement that its bars are in. Bars by number mean one movement: of a score where several have bars of
/// these numbers nobody may have one set aside without having looked at it.
fn in_one_movement(score: &Score, entry: AsideEntry) -> Result<AsideEntry, Failure> {
    let Some((from, to)) = entry.bars.as_ref().filter(|_| entry.movement.is_none()) else { return Ok(entry) };
    let has = |movement: &Movement| {
        let there =
            |label: &&String| !score.bars_called(&BarName::new(label), movement.bars.clone()).is_empty();
        [from, to].iter().all(there)
    };
    let with: Vec<usize> = (0..score.movements.len()).filter(|index| has(&score.movements[*index])).collect();
    match with.as_slice() {
        [only] if score.movements.len() > 1 => Ok(AsideEntry { movement: Some(only + 1), ..entry }),
        [first, _, ..] => Err(Failure::BarsOfSeveral {
            bars: places::bars_typed((from, to)),
            movements: with.iter().map(|index| score.movements[*index].name().to_owned()).collect(),
            such_as: score.movements[*first].number.clone(),
        }),
        _ => Ok(entry),
    }
}

/// How many slurs of the score the entry means.
fn slurs_held(arguments: &AsideArguments, entry: &SlurEntry) -> Result<usize, Failure> {
    let mut score = studio::open_score(&arguments.score)?.score;
    let aside = Aside { entries: Vec::new(), slurs: vec![entry.clone()] };
    aside.tell_slurs(&mut score);
    let told = |slur: &&Slur| slur.told != SlurTold::Nothing;
    Ok(score.parts.iter().map(|part| part.slurs.iter().filter(told).count()).sum())
}

/// How many places of the score the entry holds now.
fn held(arguments: &AsideArguments, entry: &AsideEntry) -> Result<usize, Failure> {
    let shared = SharedArguments {
        scores: vec![arguments.score.clone()],
        part: Vec::new(),
        bars: None,
        movement: None,
        player: arguments.player.clone(),
        tempo: None,
        louder: 0,
        apart: false,
    };
    let player = studio::player(&shared.player)?;
    let desk = studio::open(&arguments.score, &shared, &player, MarkReading::Law)?;
    let aside = Aside { entries: vec![entry.clone()], slurs: Vec::new() };
    let only = entry.rule.iter().cloned().collect();
    let settings = ReviewSettings { aside, only, ..ReviewSettings::default() };
    Ok(desk.snapshot().review(&[], &settings).set_aside.len())
}
