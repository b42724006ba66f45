//! The file beside the score that says what is set aside and what slurs are (`arcata aside` writes it, too).

use arcata_review::{Aside, AsideEntry, SlurEntry};
use arcata_score::{Score, SlurTold};

use crate::act::SlurIs;
use crate::state::SessionState;

/// What the text of such a file says; nothing where there is none. `name` is the file's, for what is wrong with it.
///
/// # Errors
/// Where it cannot be read, with the line.
pub fn read_aside(name: &str, text: Option<&str>) -> Result<Aside, String> {
    text.map_or_else(|| Ok(Aside::default()), |text| sound(name, text))
}

fn sound(name: &str, text: &str) -> Result<Aside, String> {
    Aside::read(text).map_err(|problem| format!("{name}, {problem}"))
}

/// The text of the file with what was set aside and said of slurs in a session added; what stands there stays as it stands.
///
/// # Errors
/// Where the file cannot be read: it is not written over.
pub(crate) fn with(
    (name, text): (&str, Option<String>),
    (score_name, music): (&str, &Score),
    state: &SessionState,
) -> Result<String, String> {
    let mut out = text.unwrap_or_else(|| Aside::head(score_name));
    let known = sound(name, &out)?;
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
