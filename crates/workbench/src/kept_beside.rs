//! The file beside the score that says what is set aside and what slurs are (`arcata aside` writes it, too).

use std::path::{Path, PathBuf};

use arcata_review::{Aside, AsideEntry, SlurEntry};
use arcata_score::{Score, SlurTold};

use crate::act::SlurIs;
use crate::state::SessionState;

/// It is read up to this size.
const LARGEST: usize = 4 << 20;

/// `study.aside.toml` beside `study.musicxml`.
pub(crate) fn path(score: &Path) -> PathBuf {
    let mut name = score.file_stem().unwrap_or_default().to_owned();
    name.push(".aside.toml");
    score.with_file_name(name)
}

/// What it says; nothing where there is no such file.
///
/// # Errors
/// Where it cannot be read, with the line.
pub(crate) fn read(score: &Path) -> Result<Aside, String> {
    text(score)?.map_or_else(|| Ok(Aside::default()), |text| sound(score, &text))
}

fn text(score: &Path) -> Result<Option<String>, String> {
    let path = path(score);
    if !path.exists() {
        return Ok(None);
    }
    let bytes = arcata_files::read(&path, LARGEST).map_err(|problem| problem.to_string())?;
    String::from_utf8(bytes).map(Some).map_err(|_| format!("{}: it is not UTF-8 text", path.display()))
}

fn sound(score: &Path, text: &str) -> Result<Aside, String> {
    Aside::read(text).map_err(|problem| format!("{}, {problem}", path(score).display()))
}

/// The text of the file with what was set aside and said of slurs in a session added; what stands there stays as it stands.
///
/// # Errors
/// Where the file cannot be read: it is not written over.
pub(crate) fn with(score: &Path, music: &Score, state: &SessionState) -> Result<String, String> {
    let name = score.file_name().unwrap_or_default().to_string_lossy();
    let mut out = text(score)?.unwrap_or_else(|| Aside::head(&name));
    let known = sound(score, &out)?;
    if !out.ends_with('\n') {
        out.push('\n');
    }
    for entry in entries(state).into_iter().filter(|entry| !known.entries.contains(entry)) {
        out.push_str(&entry.lines());
    }
    for (place, is) in &state.slurs {
        let told = match is {
            SlurIs::Phrase => SlurTold::Phrase,
            SlurIs::Bow => SlurTold::Bow,
            SlurIs::Nothing => continue,
        };
        let entry = SlurEntry {
            told,
            part: Some(place.part.clone()),
            bars: Some((place.bar.clone(), place.bar.clone())),
            // The place in the bar is exact; the beat of the file is told by the metre, which the whole bar stands for.
            beat: None,
            movement: movement_of(music, place.bar_ordinal),
            reason: "said at the workbench".to_owned(),
        };
        if !known.slurs.contains(&entry) {
            out.push_str(&entry.lines());
        }
    }
    Ok(out)
}

/// The movement, from 1, of a bar by its position in the file, from 1, where there are several.
fn movement_of(music: &Score, ordinal: u32) -> Option<usize> {
    let bar = ordinal.checked_sub(1)?;
    (music.movements.len() > 1).then(|| music.movement_of(bar) + 1)
}

/// What a session has set aside, as the file says it.
pub(crate) fn entries(state: &SessionState) -> Vec<AsideEntry> {
    let entry = |one: &crate::state::FindingAside| AsideEntry {
        rule: Some(one.rule.clone()),
        part: one.part.clone(),
        bars: Some((one.bar.clone(), one.bar.clone())),
        beat: Some(one.beat),
        movement: one.movement,
        reason: one.reason.clone(),
    };
    state.asides.iter().map(entry).collect()
}
