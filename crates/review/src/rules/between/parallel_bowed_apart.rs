//! # The same bar slurred differently
//!
//! ## What it finds
//! A bar whose notes come back exactly, three times or more with the same slurs and once with others, in one part: the odd
//! one is told.
//!
//! ## Why it matters
//! What comes back is expected to come back the same. A single other slur is mostly a slip of the copy, and a player who has
//! learnt the bar will play it as before or stumble.
//!
//! ## Example
//! ```music
//! quarter=96
//! viola: mf (1/4 C4 D4) (E4 F4) | (C4 D4) (E4 F4) | (C4 D4) (E4 F4) | (C4 D4) E4 F4 | (C4 D4) (E4 F4) | 1/1 G4 |||
//! ```
//!
//! ## What it proposes
//! To give the bar the slurs of the others (copy, writer's choice).
//!
//! ## What it cannot know
//! Whether the change is meant: the last time before something new is often slurred otherwise, and is left out.
//!
//! ## Sources
//! A principal's notes, as quoted: what comes back is bowed as before; common practice.

use std::collections::BTreeMap;

use arcata_languages::{Argument, Saying};
use arcata_score::{Length, Meaning, NoteId, NoteKind, Part};

use crate::bow_starts::bow_starts;
use crate::slur_copy;
use crate::{Card, Draft, Family, Findings, Grade, Piece, ProposalKind, Reads, Rule, Severity};

/// See the module's page.
#[derive(Debug)]
pub struct ParallelBowedApart;

/// So many bars must agree before the odd one is believed to be a slip (rule of thumb).
const ALIKE: usize = 3;
/// Notes of a bar that is more than a commonplace (rule of thumb).
const NOTES: usize = 4;

impl Rule for ParallelBowedApart {
    const CARD: Card = Card {
        id: "parallel-bowed-apart",
        family: Family::Between,
        gravest: Severity::C,
        lightest: Severity::C,
        reads: &[Reads::Slurs, Reads::Ties, Reads::Marks, Reads::Words],
        since: "0.1",
        title: "The same bar slurred differently",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        for (part_index, part) in piece.score.parts.iter().enumerate() {
            if !part.instrument.is_bowed() {
                continue;
            }
            for same in same_bars(piece, part).into_values() {
                if let Some((odd, model)) =
                    odd_one(&same).filter(|(odd, _)| !goes_on_in_words(part, odd.number))
                {
                    let draft = apart(piece, found, part_index, odd, model, same.len() - 1);
                    found.report(draft);
                }
            }
        }
    }
}

/// So many bars before a bar a word may stand that speaks for it (rule of thumb).
const WORD_WITHIN: u32 = 4;

/// Whether a word says that what was written before goes on, so that the slurs need not be drawn.
fn goes_on_in_words(part: &Part, bar: u32) -> bool {
    part.instructions.iter().any(|word| {
        matches!(word.meaning, Meaning::Simile | Meaning::Legato)
            && (bar.saturating_sub(WORD_WITHIN)..=bar).contains(&word.place.bar)
    })
}

/// A bar of a part: its notes and on which of them a bow begins.
struct SoundedBar {
    number: u32,
    notes: Vec<NoteId>,
    bows: Vec<bool>,
}

/// What sounds in a bar: voice, offset, length, pitch, articulations of every note, and whether it is tied.
type Sound = Vec<(u16, Length, Length, Option<i32>, u32, bool)>;

/// Bars by what sounds in them.
fn same_bars(piece: &Piece<'_>, part: &Part) -> BTreeMap<Sound, Vec<SoundedBar>> {
    let starts = bow_starts(part);
    let mut found: BTreeMap<Sound, Vec<SoundedBar>> = BTreeMap::new();
    let mut at = 0;
    while at < part.notes.len() {
        let number = part.notes[at].bar;
        let end = at + part.notes[at..].iter().take_while(|note| note.bar == number).count();
        let mut sound = Sound::new();
        let (mut notes, mut bows) = (Vec::new(), Vec::new());
        for (index, note) in part.notes.iter().enumerate().take(end).skip(at) {
            let id = NoteId(u32::try_from(index).unwrap_or(u32::MAX));
            let tied = crate::under_slur::tied_from_before(note);
            let offset = piece.score.offset_in_bar(note.onset, note.bar);
            sound.push((note.voice, offset, note.length, note.pitch.cents(), note.articulations.0, tied));
            if note.kind == NoteKind::Ordinary && !note.pitch.is_rest() {
                notes.push(id);
                bows.push(starts.contains(&id));
            }
        }
        if notes.len() >= NOTES {
            found.entry(sound).or_default().push(SoundedBar { number, notes, bows });
        }
        at = end;
    }
    found
}

/// The one bar whose bows begin otherwise while all others agree, with one of those; not the last of a run, after
/// which something new comes, and not one that differs only in how it is entered.
fn odd_one(bars: &[SoundedBar]) -> Option<(&SoundedBar, &SoundedBar)> {
    if bars.len() <= ALIKE {
        return None;
    }
    let inner = |bar: &SoundedBar| bar.bows.get(1..).map(<[bool]>::to_vec);
    let (first, second, third) = (inner(&bars[0]), inner(&bars[1]), inner(&bars[2]));
    let usual = if first == second || first == third { first } else { second };
    let mut odd = bars.iter().filter(|bar| inner(bar) != usual);
    let (one, none) = (odd.next()?, odd.next());
    let model = bars.iter().find(|bar| inner(bar) == usual)?;
    let goes_on = bars.iter().any(|bar| bar.number == one.number + 1);
    (none.is_none() && goes_on).then_some((one, model))
}

fn apart(
    piece: &Piece<'_>,
    found: &Findings<'_>,
    part_index: usize,
    odd: &SoundedBar,
    model: &SoundedBar,
    others: usize,
) -> Draft {
    let differs = odd.bows.iter().zip(&model.bows).skip(1).position(|(one, other)| one != other);
    let at = differs.map_or(0, |at| at + 1);
    let draft = found.at_notes(Severity::C, part_index, &[odd.notes[at]]);
    let sentence = Saying::new("say-parallel-bowed-apart")
        .with("model", piece.bar_said(model.number))
        .with("number", piece.bar_number(model.number))
        .with("at", piece.where_is(draft.place()))
        .with("others", others);
    let pairs: Vec<(NoteId, NoteId)> = model.notes.iter().copied().zip(odd.notes.iter().copied()).collect();
    draft
        .say(sentence)
        .evidence("evidence-bars-that-agree", Argument::Whole(i64::try_from(others).unwrap_or(i64::MAX)), "")
        .propose_change(
            Grade::WritersChoice,
            ProposalKind::Copy,
            Saying::new("offer-slurs-of-the-others"),
            slur_copy::copied(piece, (part_index, part_index), &pairs, &pairs),
        )
}
