//! # An entry without a dynamic
//!
//! ## What it finds
//! A part whose first entry has no dynamic at or before its first note. Where no part has any dynamic in
//! the whole score, one finding says so.
//!
//! ## Why it matters
//! The player does not know how loud to begin, and the dynamic also decides how much bow a note gets. It
//! is the first question of every first rehearsal.
//!
//! ## Example
//! ```music
//! quarter=96
//! violin: p 1/1 C5 | D5 |||
//! viola: bar-rest | 1/2 E4 F4 |||
//! ```
//!
//! ## What it proposes
//! To write the dynamic that the other parts have at that moment, when they agree (state, writer's
//! choice).
//!
//! ## What it cannot know
//! Music that by custom carries no dynamics. A dynamic that comes within a quarter note after the entry
//! counts: programs place them a little late.
//!
//! ## Sources
//! Common practice in preparing parts.

use arcata_languages::Saying;
use arcata_score::{
    Dynamic, DynamicKind, Length, Level, Meaning, Moment, Note, NoteId, NoteKind, Part, Score,
};

use crate::change::direction_before;
use crate::{Card, Draft, Family, Findings, Grade, Piece, ProposalKind, Reads, Rule, Severity};

/// See the module's page.
#[derive(Debug)]
pub struct EntryWithoutDynamic;

impl Rule for EntryWithoutDynamic {
    const CARD: Card = Card {
        id: "entry-without-dynamic",
        family: Family::Parts,
        gravest: Severity::B,
        lightest: Severity::B,
        reads: &[Reads::Words],
        since: "0.1",
        title: "An entry without a dynamic",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        let bowed: Vec<usize> = (0..piece.score.parts.len())
            .filter(|part| piece.score.parts[*part].instrument.is_bowed())
            .collect();
        let parts = &piece.score.parts;
        let any = parts.iter().any(|part| levels(part).next().is_some());
        let entry = bowed.iter().filter_map(|part| Some((*part, first_note(&parts[*part])?)));
        let entries: Vec<(usize, (NoteId, &Note))> = entry.collect();
        if !any && entries.len() > 1 {
            if let Some((part, (id, _))) = entries.iter().min_by_key(|(part, (_, note))| (note.onset, *part))
            {
                let draft = found.at_notes(Severity::B, *part, &[*id]);
                found.report(draft.say(Saying::new("say-no-dynamic-anywhere")));
            }
            return;
        }
        for (part, (id, note)) in entries {
            if !has_level(&parts[part], note.onset) {
                let draft = silent_entry(piece, found, part, id, note);
                found.report(draft);
            }
        }
    }
}

fn first_note(part: &Part) -> Option<(NoteId, &Note)> {
    (0u32..)
        .map(NoteId)
        .zip(&part.notes)
        .find(|(_, note)| !note.pitch.is_rest() && matches!(note.kind, NoteKind::Ordinary | NoteKind::Grace))
}

/// Lasting levels of a part: marks and words.
pub(crate) fn levels(part: &Part) -> impl Iterator<Item = (Moment, Level)> {
    let marks = part.dynamics.iter().filter_map(|dynamic| match dynamic.kind {
        DynamicKind::Level(level) | DynamicKind::Shape(_, level) => Some((dynamic.place.at, level)),
        DynamicKind::Accented(_) => None,
    });
    let words = part.instructions.iter().filter_map(|said| match said.meaning {
        Meaning::LevelWord(level) => Some((said.place.at, level)),
        _ => None,
    });
    marks.chain(words)
}

/// Programs place a dynamic a little after its note; within a quarter note it is meant for it.
fn has_level(part: &Part, entry: Moment) -> bool {
    let late = entry + Length::QUARTER;
    // sff says how loud the note itself is to be.
    let accented =
        |dynamic: &Dynamic| matches!(dynamic.kind, DynamicKind::Accented(_)) && dynamic.place.at < late;
    levels(part).any(|(at, _)| at < late)
        || part.dynamics.iter().any(accented)
        || part.swells.iter().any(|swell| swell.place.at <= entry)
}

fn silent_entry(piece: &Piece<'_>, found: &Findings<'_>, part: usize, id: NoteId, note: &Note) -> Draft {
    let draft = found.at_notes(Severity::B, part, &[id]);
    let name = &piece.score.parts[part].name;
    let sentence = Saying::new("say-entry-without-dynamic")
        .quoting("part", name)
        .with("at", piece.where_is(draft.place()));
    propose_agreed_level(piece, draft.say(sentence), part, note)
}

/// Offers the dynamic of the parts that play with the note, when they agree.
pub(super) fn propose_agreed_level(piece: &Piece<'_>, draft: Draft, part: usize, note: &Note) -> Draft {
    let Some(level) = agreed_level(piece.score, part, note.onset) else { return draft };
    let mark = level_mark(level);
    let staves = piece.score.parts[part].staves;
    let direction = direction_before(note, staves, "below", &format!("<dynamics><{mark}/></dynamics>"));
    draft.propose_change(
        Grade::WritersChoice,
        ProposalKind::State,
        Saying::new("offer-write-dynamic").quoting("dynamic", mark),
        vec![direction],
    )
}

/// The level in force in the other parts, when those that have one agree.
fn agreed_level(score: &Score, but: usize, at: Moment) -> Option<Level> {
    let others = score.parts.iter().enumerate().filter(|(part, _)| *part != but);
    let in_force = others.filter_map(|(_, part)| {
        levels(part).filter(|(from, _)| *from <= at).max_by_key(|(from, _)| *from).map(|(_, level)| level)
    });
    let found: Vec<Level> = in_force.collect();
    let first = *found.first()?;
    found.iter().all(|level| *level == first).then_some(first)
}

fn level_mark(level: Level) -> &'static str {
    match level {
        Level::Niente => "n",
        Level::Ppp => "ppp",
        Level::Pp => "pp",
        Level::P => "p",
        Level::Mp => "mp",
        Level::Mf => "mf",
        Level::F => "f",
        Level::Ff => "ff",
        Level::Fff => "fff",
    }
}
