//! # A strong beat comes on an up-bow
//!
//! ## What it finds
//! A strong beat at mezzo-forte or louder with an accent, on a stroke shorter than a bar, or with a sforzato or the upright
//! accent on any, that falls on an up-bow even in the best plan there is, though no up-bow is printed: and no bowing that
//! costs hardly more brings it down.
//!
//! ## Why it matters
//! The hand has its weight at the frog and gives it on the way down. An accent on an up-bow is played,
//! but lighter and later than the writer hears it; a section will ask for the other bow.
//!
//! ## Example
//! ```music
//! quarter=120
//! violin: f (1/4 C5 D5 E5) F5 | (G5 F5 E5) D5 | (C5 D5 E5 F5) | 1/1 G5!sf | C5 |||
//! ```
//!
//! ## What it proposes
//! What a player would have to do otherwise to have the beat down, with what it costs: start on the other
//! bow, hook, or retake (player's choice). In the file it is bow marks: on the beat, and where the arm does
//! otherwise, one mark on both strokes of a hook or a retake; none where a retake would lack time. And where
//! one change of the slurs in the bars before brings it of itself, for less than the arm would pay, that
//! change (writer's choice): a slur split, joined, begun or ended one note earlier or later, or a hook.
//!
//! ## What it cannot know
//! Whether a lighter accent is wanted, or the line before matters more than the beat. Soft accents, and accents on a long
//! stroke, are made by the bow's speed and left out; so is what players can have down for a point or less: that is theirs to
//! choose, and after a dotted upbeat, which is hooked. Of accents one after the other every second is up: it is told where the first of them is.
//! Within a row of equal strokes the arm makes the accents on either bow. Where a down-bow is printed on a weaker note right
//! after the accent, the accent is down, too: nobody prints what alternation would not give, but for "down again".
//!
//! ## Sources
//! The rule of the down-bow: Muffat 1698 and Leopold Mozart 1756 (from memory); accents in printed quartets
//! are 80 % down-bows (counted, 21 marked quartets, CC0).

use arcata_bow::{Join, Stroke};
use arcata_languages::{Argument, Saying};
use arcata_score::BowDirection;

use crate::other_bow::with_bow;
use crate::other_notation::WishedNote;
use crate::taste::Otherwise;
use crate::{Card, Draft, Family, Findings, Piece, Reads, Rule, Severity};

/// See the module's page.
#[derive(Debug)]
pub struct BeatOnUpBow;

impl Rule for BeatOnUpBow {
    const CARD: Card = Card {
        id: "beat-on-up-bow",
        family: Family::Beat,
        gravest: Severity::C,
        lightest: Severity::C,
        reads: &[Reads::Strokes, Reads::Bows, Reads::BowMarks],
        since: "0.1",
        title: "A strong beat comes on an up-bow",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        let least = piece.thresholds().beat_strength;
        let weak: Vec<(usize, usize)> = piece
            .planned_strokes()
            .filter(|(.., stroke, planned)| {
                planned.direction == BowDirection::Up
                    && stroke.printed.is_none()
                    && stroke.emphasis.strength >= least
                    && wants_weight(stroke)
            })
            .filter(|(line, index, stroke, _)| !piece.follows_like_accent(*line, *index, stroke))
            .filter(|(line, index, ..)| !piece.follows_dotted_upbeat(*line, *index))
            .filter(|(line, index, ..)| !in_row(piece, *line, *index) && !down_again(piece, *line, *index))
            .filter(|(line, index, ..)| {
                !found.is_choice((*line, *index), Otherwise::Goes(BowDirection::Down))
            })
            .map(|(line, index, ..)| (line, index))
            .collect();
        for (line, index) in weak {
            let draft = light_beat(piece, found, line, index);
            found.report(draft);
        }
    }
}

/// Loudness from which an accent is made by weight: mezzo-forte, hundredths of a dynamic step (rule of thumb).
const LOUD: i32 = arcata_bow::Loudness::MF.0;
/// Sforzando, or the upright accent, hundredths: they want weight however long the stroke is (rule of thumb).
const HEAVY: u16 = 90;
/// Up to here the beginning of a stroke is most of what is heard of it, hundredths of a bar (rule of thumb).
const SHORTER_THAN_A_BAR: u16 = 90;

/// Whether a stroke begins with an accent that the hand makes, rather than the bow's speed.
fn wants_weight(stroke: &Stroke) -> bool {
    let emphasis = stroke.emphasis;
    emphasis.accent > 0
        && stroke.level_start.0 >= LOUD
        && (emphasis.accent >= HEAVY || emphasis.bars < SHORTER_THAN_A_BAR)
}

/// So many equal strokes before an accent, and two after it, make a row (rule of thumb).
const ROW: usize = 4;

/// Whether a stroke stands within a row of equal single strokes, straight on.
fn in_row(piece: &Piece<'_>, line: usize, index: usize) -> bool {
    let row = index.checked_sub(ROW).and_then(|from| piece.lines.get(line)?.strokes.get(from..index + 3));
    row.is_some_and(|row| {
        let alike = |stroke: &Stroke| stroke.length == row[0].length && stroke.note_count == 1;
        row.iter().all(alike) && row[1..].iter().all(|stroke| stroke.join == Join::Continues)
    })
}

/// Whether the next note, on a weaker place, carries a printed down-bow: the one before it is down then, and it again.
fn down_again(piece: &Piece<'_>, line: usize, index: usize) -> bool {
    let pair = piece.lines.get(line).and_then(|line| line.strokes.get(index..index + 2));
    pair.is_some_and(|pair| {
        pair[1].printed == Some(BowDirection::Down)
            && pair[1].join == Join::Continues
            && pair[1].emphasis.metric > pair[0].emphasis.metric
    })
}

fn light_beat(piece: &Piece<'_>, found: &Findings<'_>, at: usize, index: usize) -> Draft {
    let stroke = &piece.lines[at].strokes[index];
    let draft = found.at_stroke(Severity::C, at, index);
    let sentence = Saying::new("say-beat-on-up-bow").with("at", piece.where_is(draft.place()));
    let draft = draft
        .say(sentence)
        .evidence(
            "evidence-strength-of-the-beat",
            Argument::Thousandths(i64::from(stroke.emphasis.strength) * 10),
            "unit-times-a-plain-downbeat",
        )
        .cause(format!("{}/{:?}", stroke.offset, stroke.length));
    with_bow(piece, draft, (at, index), BowDirection::Down, ("accent", WishedNote::Begins))
}
