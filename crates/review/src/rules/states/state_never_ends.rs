//! # A mute or sul pont. instruction never cancelled, or given twice
//!
//! ## What it finds
//! con sordino, sul ponticello, sul tasto or col legno said again though it is in force, with music between (C; B for
//! the mute); senza sordino said again after the mute is off already (B); unis. over two voices with different notes (B);
//! sul ponticello or sul tasto that is not cancelled to the end of its movement, though the music goes on after a change of
//! tempo, after pizz., or for sixteen bars of playing (C).
//!
//! ## Why it matters
//! Every such instruction must be cancelled by somebody. Where it is said twice, one word too few stands between the two, and the
//! players who believe the first word play otherwise than those who believe the second.
//!
//! ## Example
//! ```music
//! quarter=96
//! viola: mf "con sord." 1/4 C4 D4 E4 F4 | 1/1 G4 | rest | "con sord." 1/4 C4 D4 E4 F4 |||
//! ```
//!
//! ## What it proposes
//! To take the second word out (state, writer's choice). To write ord. where a place on the string ends, or sempre (state,
//! writer's choice, for the writer's hand).
//!
//! ## What it cannot know
//! Which of the two words is the slip. A word in brackets reminds and is left out. Every movement begins plain: a mute
//! that stays on to the end of one needs no word, and is not told; nor a place on the string for a last passage. Divisions
//! are often said anew at every place, and are left out.
//!
//! ## Sources
//! Common practice.

use std::collections::BTreeSet;
use std::ops::RangeInclusive;

use arcata_bow::techniques::TechniqueRun;
use arcata_languages::{Argument, Saying};
use arcata_score::{Instruction, Meaning, Moment, Note, Part};

use crate::attack_marks::is_for;
use crate::change::take_out;
use crate::{Card, Draft, Family, Findings, Grade, Piece, ProposalKind, Reads, Rule, Severity};

/// See the module's page.
#[derive(Debug)]
pub struct StateNeverEnds;

impl Rule for StateNeverEnds {
    const CARD: Card = Card {
        id: "state-never-ends",
        family: Family::States,
        gravest: Severity::B,
        lightest: Severity::C,
        reads: &[Reads::Words],
        since: "0.1",
        title: "A mute or sul pont. instruction never cancelled, or given twice",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        let starts = movement_starts(piece);
        for (part_index, part) in piece.score.parts.iter().enumerate() {
            if !part.instrument.is_bowed() {
                continue;
            }
            for staff in 1..=part.staves.max(1) {
                for draft in of_staff(piece, found, part_index, staff, &starts) {
                    found.report(draft);
                }
                for movement in &piece.score.movements {
                    if let Some(draft) = left_on(piece, found, (part_index, staff), &movement.bars) {
                        found.report(draft);
                    }
                }
            }
        }
    }
}

/// Where movements after the first begin.
fn movement_starts(piece: &Piece<'_>) -> Vec<Moment> {
    let movements = piece.score.movements.iter().skip(1);
    movements
        .filter_map(|movement| Some(piece.score.bars.get(*movement.bars.start() as usize)?.start))
        .collect()
}

fn of_staff(
    piece: &Piece<'_>,
    found: &Findings<'_>,
    part_index: usize,
    staff: u8,
    starts: &[Moment],
) -> Vec<Draft> {
    let part = &piece.score.parts[part_index];
    let mut drafts = Vec::new();
    let mut state = TechniqueRun::plain(Moment::START);
    let mut last_said: Vec<&Instruction> = Vec::new();
    let mut starts = starts.iter().copied().peekable();
    for said in part.instructions.iter().filter(|said| said.place.staff == 0 || said.place.staff == staff) {
        while let Some(start) = starts.next_if(|start| *start <= said.place.at) {
            state = TechniqueRun::plain(start);
            last_said.clear();
        }
        let before = last_said.iter().rev().find(|before| same_kind(before.meaning, said.meaning));
        if let Some(before) = before.filter(|before| speaks_again(part, before, said)) {
            drafts.extend(again(piece, found, part_index, (before, said), &state));
        }
        drafts.extend(unison_of_two(piece, found, (part_index, staff), said));
        state = TechniqueRun { from: said.place.at, ..state.after(said.meaning) };
        last_said.push(said);
    }
    drafts
}

/// Whether two words turn the same switch.
fn same_kind(one: Meaning, other: Meaning) -> bool {
    switch(one).is_some() && switch(one) == switch(other)
}

/// The switch of the place on the string (by definition).
const PLACE: u8 = 1;

/// The switches that are looked at.
fn switch(meaning: Meaning) -> Option<u8> {
    match meaning {
        Meaning::MuteOn | Meaning::MuteOff => Some(0),
        Meaning::SulPonticello | Meaning::SulTasto | Meaning::Ordinario => Some(PLACE),
        Meaning::ColLegno | Meaning::ColLegnoBattuto | Meaning::Arco | Meaning::Pizzicato => Some(2),
        _ => None,
    }
}

/// Whether a second word is more than a reminder: printed, not in brackets, in the same voice, music between.
fn speaks_again(part: &Part, before: &Instruction, said: &Instruction) -> bool {
    let printed =
        |said: &Instruction| !said.text.is_empty() && !said.text.trim_start().starts_with(['(', '[']);
    let sounds = part
        .notes
        .iter()
        .any(|note| (before.place.at..said.place.at).contains(&note.onset) && !note.pitch.is_rest());
    printed(before) && printed(said) && sounds && before.place.voice == said.place.voice
}

/// What is said again, with what it weighs; `None` for words that may be said anew.
fn weight(meaning: Meaning) -> Option<(Severity, &'static str)> {
    match meaning {
        Meaning::MuteOn => Some((Severity::B, "con sordino")),
        Meaning::MuteOff => Some((Severity::B, "senza sordino")),
        Meaning::SulPonticello => Some((Severity::C, "sul ponticello")),
        Meaning::SulTasto => Some((Severity::C, "sul tasto")),
        Meaning::ColLegnoBattuto => Some((Severity::C, "col legno battuto")),
        Meaning::ColLegno => Some((Severity::C, "col legno")),
        _ => None,
    }
}

fn again(
    piece: &Piece<'_>,
    found: &Findings<'_>,
    part_index: usize,
    (before, said): (&Instruction, &Instruction),
    state: &TechniqueRun,
) -> Option<Draft> {
    let (severity, word) = weight(said.meaning)?;
    if before.meaning != said.meaning || state.after(said.meaning) != *state {
        return None;
    }
    let draft = found.at(severity, Some(part_index), said.place.bar, said.place.at);
    let sentence = Saying::new("say-state-again")
        .quoting("word", word)
        .with("at", piece.where_is(draft.place()))
        .with("since", piece.bar_said_at(before.place.at));
    Some(draft.say(sentence).cause(word).propose_change(
        Grade::WritersChoice,
        ProposalKind::State,
        Saying::new("offer-second-word-out"),
        vec![take_out(&said.place)],
    ))
}

/// A place on the string that was never taken back, where the music went on.
fn left_on(
    piece: &Piece<'_>,
    found: &Findings<'_>,
    (part_index, staff): (usize, u8),
    movement: &RangeInclusive<u32>,
) -> Option<Draft> {
    let part = &piece.score.parts[part_index];
    let end = piece.score.bars.get(*movement.end() as usize).map(|bar| bar.start + bar.length)?;
    let words = || {
        part.instructions
            .iter()
            .filter(|said| movement.contains(&said.place.bar) && is_for(part, said, staff))
    };
    let said = words().rfind(|said| switch(said.meaning) == Some(PLACE))?;
    let word = match said.meaning {
        Meaning::SulPonticello => "sul ponticello",
        Meaning::SulTasto => "sul tasto",
        _ => return None,
    };
    let later = |at: Moment| at > said.place.at && at < end;
    let change = piece.score.tempos.iter().find(|tempo| later(tempo.place.at) && tempo.begins_at_once());
    let plucked = words().find(|other| later(other.place.at) && other.meaning == Meaning::Pizzicato);
    let notes =
        part.notes.iter().filter(|note| note.staff == staff && !note.pitch.is_rest() && later(note.onset));
    let played: Vec<&Note> = notes.collect();
    let bars: BTreeSet<u32> = played.iter().map(|note| note.bar).collect();
    let turn =
        [change.map(|tempo| tempo.place.at), plucked.map(|said| said.place.at)].into_iter().flatten().min();
    let goes_on = turn.is_some_and(|turn| played.iter().any(|note| note.onset >= turn));
    if said.text.is_empty() || !(goes_on || bars.len() >= BARS) {
        return None;
    }
    let draft = found.at(Severity::C, Some(part_index), said.place.bar, said.place.at);
    let sentence = Saying::new("say-state-never-ends")
        .quoting("word", word)
        .with("at", piece.where_is(draft.place()))
        .with("bars", bars.len());
    let draft = draft.say(sentence).evidence(
        "evidence-bars-played-after-it",
        Argument::Whole(i64::try_from(bars.len()).unwrap_or(i64::MAX)),
        "",
    );
    Some(draft.cause(format!("left on, {word}")).propose(
        Grade::WritersChoice,
        ProposalKind::State,
        Saying::new("offer-write-ord-or-sempre"),
    ))
}

/// So many bars of playing are no last passage any more (rule of thumb).
const BARS: usize = 16;

/// unis. over two voices with different notes.
fn unison_of_two(
    piece: &Piece<'_>,
    found: &Findings<'_>,
    (part_index, staff): (usize, u8),
    said: &Instruction,
) -> Option<Draft> {
    if said.meaning != Meaning::Unison || said.text.is_empty() {
        return None;
    }
    let part = &piece.score.parts[part_index];
    let first = part.notes.partition_point(|note| note.onset < said.place.at);
    let here = part.notes[first..].iter().take_while(|note| note.onset == said.place.at);
    let here: Vec<_> = here.filter(|note| note.staff == staff && !note.pitch.is_rest()).collect();
    let two = here.windows(2).any(|pair| pair[0].voice != pair[1].voice && pair[0].pitch != pair[1].pitch);
    if !two {
        return None;
    }
    let draft = found.at(Severity::B, Some(part_index), said.place.bar, said.place.at);
    let sentence = Saying::new("say-unison-of-two").with("at", piece.where_is(draft.place()));
    Some(draft.say(sentence).propose_change(
        Grade::WritersChoice,
        ProposalKind::State,
        Saying::new("offer-unis-out"),
        vec![take_out(&said.place)],
    ))
}
