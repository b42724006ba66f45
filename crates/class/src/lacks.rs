//! What the task trains and the page lacks: an empty page must not look better than a full one.

use arcata_analysis::Snapshot;
use arcata_languages::{Argument, Saying};
use arcata_review::{Finding, FindingPlace, Severity};
use arcata_score::{ChordRole, Length, Note, NoteId, NoteKind, Part, Score};

use crate::Expected;
use crate::runs::listed;

/// Fewer notes in a part ask for nothing.
const FEWEST: usize = 8;
/// So many bars in a row with moving notes and no slur are told where slurs are expected, though the part has some elsewhere.
const BARE_BARS: usize = 8;
/// Bars told one by one.
const TOLD: usize = 8;

/// What is expected and missing, as findings of their own; each gathers all parts that lack it.
///
/// `parts` are the bowed parts, from 1, in which it is expected; empty for all.
pub(crate) fn lacking(snapshot: &Snapshot, expects: &[Expected], parts: &[usize]) -> Vec<Finding> {
    expects.iter().filter_map(|expected| lack(snapshot, *expected, parts)).collect()
}

fn lack(snapshot: &Snapshot, expected: Expected, parts: &[usize]) -> Option<Finding> {
    let score = snapshot.score();
    if expected == Expected::Tempo {
        let first = first_part(score)?;
        if !score.tempos.is_empty() {
            return None;
        }
        let place = (first, first_note(first.1)?);
        return finding(score, expected, vec![place], Saying::new("say-no-tempo-for-task"));
    }
    let bowed = score.parts.iter().enumerate().filter(|(_, part)| part.instrument.is_bowed());
    let asked = |number: usize| parts.is_empty() || parts.contains(&(number + 1));
    let bowed = bowed.enumerate().filter(|(number, _)| asked(*number)).map(|(_, part)| part);
    let mut places = Vec::new();
    let mut said: Vec<Argument> = Vec::new();
    for (index, part) in bowed {
        let moving: Vec<(NoteId, &Note)> = moving(part).collect();
        if moving.len() < FEWEST {
            continue;
        }
        if has(part, expected) {
            if expected == Expected::Slurs
                && let Some((first, bars)) = bare(score, part, &moving)
            {
                said.push(
                    Saying::new("lacks-in-bars").quoting("part", &part.name).quoting("bars", bars).into(),
                );
                places.push(((index, part), first));
            }
        } else {
            said.push(
                Saying::new("lacks-altogether")
                    .quoting("part", &part.name)
                    .with("count", moving.len())
                    .into(),
            );
            places.push(((index, part), moving[0].0));
        }
    }
    let what = match expected {
        Expected::Slurs => "slurs",
        Expected::Dynamics => "dynamics",
        Expected::Hairpins => "hairpins",
        Expected::Articulations => "articulations",
        Expected::BowMarks => "bow-marks",
        Expected::Tempo => "tempo",
    };
    let cut = if said.len() > TOLD { "yes" } else { "no" };
    said.truncate(TOLD);
    let saying = Saying::new("say-lacks")
        .choosing("what", what)
        .with("told", Argument::Clauses(said))
        .choosing("cut", cut);
    finding(score, expected, places, saying)
}

fn first_part(score: &Score) -> Option<(usize, &Part)> {
    score.parts.iter().enumerate().find(|(_, part)| part.instrument.is_bowed())
}

fn first_note(part: &Part) -> Option<NoteId> {
    moving(part).next().map(|(id, _)| id)
}

/// The notes that a bow plays, chords once.
fn moving(part: &Part) -> impl Iterator<Item = (NoteId, &Note)> {
    (0_u32..).map(NoteId).zip(&part.notes).filter(|(_, note)| {
        note.chord == ChordRole::Main && note.kind == NoteKind::Ordinary && note.pitch.cents().is_some()
    })
}

fn has(part: &Part, expected: Expected) -> bool {
    match expected {
        Expected::Slurs => !part.slurs.is_empty(),
        Expected::Dynamics => !part.dynamics.is_empty(),
        Expected::Hairpins => !part.swells.is_empty(),
        Expected::Articulations => part.notes.iter().any(|note| !note.articulations.is_empty()),
        Expected::BowMarks => part.notes.iter().any(|note| note.bow_mark.is_some()),
        Expected::Tempo => true,
    }
}

/// The first note of bars in a row that move and have neither a slur nor a sign on a note, and the bars.
fn bare(score: &Score, part: &Part, notes: &[(NoteId, &Note)]) -> Option<(NoteId, String)> {
    let slurred = |id: NoteId| part.slurs.iter().any(|slur| (slur.start..=slur.end).contains(&id));
    let mut runs: Vec<Vec<u32>> = Vec::new();
    for bar in 0..u32::try_from(score.bars.len()).unwrap_or(u32::MAX) {
        let from = notes.partition_point(|(_, note)| note.bar < bar);
        let here: Vec<&(NoteId, &Note)> =
            notes[from..].iter().take_while(|(_, note)| note.bar == bar).collect();
        let is_bare = here.len() > 1
            && here
                .iter()
                .all(|(id, note)| !slurred(*id) && note.articulations.is_empty() && note.bow_mark.is_none());
        match runs.last_mut() {
            Some(run) if is_bare && run.last().is_some_and(|last| last + 1 == bar) => run.push(bar),
            _ if is_bare => runs.push(vec![bar]),
            _ => {}
        }
    }
    let run = runs.into_iter().find(|run| run.len() >= BARE_BARS)?;
    let first = notes.iter().find(|(_, note)| note.bar == run[0])?.0;
    let label = |bar: u32| score.bars.get(bar as usize).map_or_else(String::new, |bar| bar.label.clone());
    Some((first, listed(&run, label, TOLD)))
}

fn finding(
    score: &Score,
    expected: Expected,
    places: Vec<((usize, &Part), NoteId)>,
    sentence: Saying,
) -> Option<Finding> {
    let place = |((index, part), note): &((usize, &Part), NoteId)| {
        let bar = part.note(*note).bar;
        let meter = part.meter_at(bar);
        let offset = score.offset_in_bar(part.note(*note).onset, bar);
        FindingPlace {
            bar,
            beat: meter.map_or(Length::new(1, 1), |meter| arcata_review::beats::beat_in_bar(meter, offset)),
            part: Some(*index),
            section: part.name.clone(),
            bar_label: score.bars.get(bar as usize).map_or_else(String::new, |bar| bar.label.clone()),
            stroke: None,
            notes: vec![*note],
            movement: score.movement_said(bar).map(str::to_owned),
        }
    };
    let mut all: Vec<FindingPlace> = places.iter().map(place).collect();
    if all.is_empty() {
        return None;
    }
    let further = all.split_off(1);
    let severity = match expected {
        Expected::Slurs | Expected::Dynamics | Expected::Tempo => Severity::B,
        Expected::Hairpins | Expected::Articulations | Expected::BowMarks => Severity::C,
    };
    let count = u32::try_from(further.len()).unwrap_or(u32::MAX - 1) + 1;
    Some(Finding { sentence, count, further, ..Finding::at(expected.id(), severity, all.remove(0)) })
}
