//! # A doubled line bowed in two ways
//!
//! ## What it finds
//! Two string parts that play one line in unison or octaves for two bars or more, of which some notes are slurred in one
//! and not in the other, or carry opposite bow marks. Basses may change bow more often than those they double.
//!
//! ## Why it matters
//! Players of one line look at each other's bows. Where most is slurred alike and a few places are not, one of the two parts
//! holds a slip, and it costs the time to ask.
//!
//! ## Example
//! ```music
//! quarter=96
//! Violins I: mf (1/4 C5 D5) (E5 F5) | (G5 A5) (G5 F5) | (E5 D5) 1/2 C5 |||
//! Violins II: mf (1/4 C4 D4) (E4 F4) | (G4 A4) G4 F4 | (E4 D4) 1/2 C4 |||
//! ```
//!
//! ## What it proposes
//! To give the lower part the slurs of the upper one (copy, writer's choice).
//!
//! ## What it cannot know
//! Which of the two is meant. A bow that begins otherwise because one part plays a note in between, an upbeat say, that the
//! other has not, is left out. Where a fifth of the bows or more differ, the writer wants two articulations of one line, and
//! nothing is said; nor where one of the two is plucked or plays a tremolo, whose bows are no legato. Opposite bows without marks are no difference in cellos and basses, whose bows go as they come.
//!
//! ## Sources
//! Okent; Joynes (violins and violas in unison are bowed alike; cellos and basses are often allowed the mirror image).

use std::collections::BTreeSet;

use arcata_languages::{Argument, Saying};
use arcata_score::{Instrument, NoteId, NoteKind, Part, Score};

use crate::bow_starts::bow_starts;
use crate::doublings::{Doubling, doublings};
use crate::slur_copy;
use crate::ways::WaysOfPlaying;
use crate::{Card, Draft, Family, Findings, Grade, Piece, ProposalKind, Reads, Rule, Severity};

/// See the module's page.
#[derive(Debug)]
pub struct DoublingBowedApart;

/// From this share of the bows on, hundredths, the difference is meant (rule of thumb).
const MEANT: usize = 20;

impl Rule for DoublingBowedApart {
    const CARD: Card = Card {
        id: "doubling-bowed-apart",
        family: Family::Between,
        gravest: Severity::B,
        lightest: Severity::B,
        reads: &[Reads::Slurs, Reads::Strokes, Reads::BowMarks, Reads::Words],
        since: "0.1",
        title: "A doubled line bowed in two ways",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        let starts: Vec<BTreeSet<NoteId>> = piece.score.parts.iter().map(bow_starts).collect();
        let ways: Vec<WaysOfPlaying<'_>> =
            piece.score.parts.iter().map(|part| WaysOfPlaying::new(piece.score, part)).collect();
        for doubling in doublings(piece.score) {
            let (one, other) = doubling.parts;
            let bowed = |part: usize| piece.score.parts[part].instrument.is_bowed();
            if !bowed(one) || !bowed(other) {
                continue;
            }
            let mut doubling = doubling;
            doubling.notes.retain(|(a, b)| ways[one].is_plain(*a) && ways[other].is_plain(*b));
            let apart = apart(piece.score, &doubling, &starts);
            let bows = doubling
                .notes
                .iter()
                .filter(|(a, b)| starts[one].contains(a) || starts[other].contains(b))
                .count();
            if !apart.is_empty() && apart.len() * 100 <= bows * MEANT {
                let draft = bowed_apart(piece, found, &doubling, &apart);
                found.report(draft);
            }
        }
    }
}

/// The common notes on which a bow begins in one part alone, or that carry opposite marks.
fn apart(score: &Score, doubling: &Doubling, starts: &[BTreeSet<NoteId>]) -> Vec<(NoteId, NoteId)> {
    let (one, other) = doubling.parts;
    let (upper, lower) = (&score.parts[one], &score.parts[other]);
    let bass = lower.instrument == Instrument::Bass || upper.instrument == Instrument::Bass;
    let differs = |(a, b): &&(NoteId, NoteId)| {
        let (first, second) = (starts[one].contains(a), starts[other].contains(b));
        let more = bass && if lower.instrument == Instrument::Bass { second } else { first };
        (first != second && !more) || (!bass && opposite(upper, lower, *a, *b))
    };
    // A bow may begin otherwise only where both play on from a note they share.
    let pairs = doubling
        .notes
        .windows(2)
        .filter(|pair| goes_on(upper, pair[0].0, pair[1].0) == goes_on(lower, pair[0].1, pair[1].1));
    pairs.map(|pair| &pair[1]).filter(differs).copied().collect()
}

/// Whether a part plays nothing of its own between two notes.
fn goes_on(part: &Part, from: NoteId, to: NoteId) -> bool {
    let between = part.notes.get(from.0 as usize + 1..to.0 as usize).unwrap_or(&[]);
    let (from, to) = (part.note(from).onset, part.note(to).onset);
    !between.iter().any(|note| {
        note.onset > from && note.onset < to && note.kind == NoteKind::Ordinary && !note.pitch.is_rest()
    })
}

fn opposite(upper: &Part, lower: &Part, a: NoteId, b: NoteId) -> bool {
    let strict = |part: &Part| matches!(part.instrument, Instrument::Violin | Instrument::Viola);
    let marks = (&upper.note(a).bow_mark, &lower.note(b).bow_mark);
    strict(upper) && strict(lower) && matches!(marks, (Some(a), Some(b)) if a.direction != b.direction)
}

fn bowed_apart(
    piece: &Piece<'_>,
    found: &Findings<'_>,
    doubling: &Doubling,
    apart: &[(NoteId, NoteId)],
) -> Draft {
    let (one, other) = doubling.parts;
    let (upper, lower) = (&piece.score.parts[one], &piece.score.parts[other]);
    let draft = found.at_notes(Severity::B, other, &[apart[0].1]);
    let sentence = Saying::new("say-doubling-bowed-apart")
        .quoting("upper", &upper.name)
        .quoting("lower", &lower.name)
        .with("first", piece.bar_number(doubling.bars.start))
        .with("last", piece.bar_number(doubling.bars.end.saturating_sub(1)))
        .with("at", piece.where_is(draft.place()))
        .with("more", apart.len().saturating_sub(1));
    let number = |count: usize| Argument::Whole(i64::try_from(count).unwrap_or(i64::MAX));
    draft
        .say(sentence)
        .evidence("evidence-notes-in-common", number(doubling.notes.len()), "")
        .evidence("evidence-bowed-differently", number(apart.len()), "")
        .cause(format!("{one}"))
        .propose_change(
            Grade::WritersChoice,
            ProposalKind::Copy,
            Saying::new("offer-give-slurs").quoting("lower", &lower.name).quoting("upper", &upper.name),
            slur_copy::copied(piece, (one, other), &doubling.notes, apart),
        )
}
