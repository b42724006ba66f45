//! # An accent where the bow has no weight
//!
//! ## What it finds
//! A heavy accent (sf, fz, the upright sign), at mezzo-forte or louder, that begins close to the tip in the best bowing of
//! the passage, and in all that cost hardly more (C). Accents on strong beats that come on an up-bow are told by `beat-on-up-bow` and left out here;
//! so are those whose bow is printed, and those after a rest in which the bow can be carried to the frog.
//!
//! ## Why it matters
//! At the frog the bow lies on the string with its own weight; at the tip a sixth of that is left, and the
//! hand has to make the accent alone. It comes out thin, or late.
//!
//! ## Example
//! ```music
//! quarter=50
//! violin: f (1/4 C5 D5 E5) D5!sf | 1/1 C5 | (1/4 C5 D5 E5) D5!sf | 1/1 C5 |||
//! ```
//!
//! ## What it proposes
//! The cheapest way to take the accent on the other bow: to start the passage otherwise, to hook or to lift
//! before it (start, hook, retake, player's choice), with what it costs.
//!
//! ## What it cannot know
//! That some accents are wanted light. Soft ones are left alone, and so is the lying accent sign, which speed alone
//! can make: with it, nine quartets had two findings in 100 bars that no player
//! would have stopped for; so are tremolo and strokes shorter than a lift, where a player stays in the middle of the bow. The places in the bow are the plan's, to a tenth of its length.
//!
//! ## Sources
//! Weight on the string falls about 6:1 from frog to tip (arithmetic on a bow's mass and balance); accents begun
//! where the bow is heavy: Freund & Cutler 2024.

use arcata_bow::{PlannedStroke, Stroke, StrokeKind};
use arcata_languages::{Argument, Saying};
use arcata_score::BowDirection;

use crate::mechanics::dynamic_name;
use crate::other_bow::with_bow;
use crate::other_notation::WishedNote;
use crate::taste::Otherwise;
use crate::words::bow;
use crate::{Card, Draft, Family, Findings, Piece, Reads, Rule, Severity};

/// See the module's page.
#[derive(Debug)]
pub struct AccentAtTip;

impl Rule for AccentAtTip {
    const CARD: Card = Card {
        id: "accent-at-tip",
        family: Family::Direction,
        gravest: Severity::C,
        lightest: Severity::C,
        reads: &[Reads::Strokes, Reads::Bows, Reads::BowMarks],
        since: "0.1",
        title: "An accent where the bow has no weight",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        let light: Vec<(usize, usize)> = piece
            .planned_strokes()
            .filter(|(_, _, stroke, planned)| is_light(piece, stroke, planned))
            .filter(|(line, index, stroke, _)| !piece.follows_like_accent(*line, *index, stroke))
            .filter(|(line, index, ..)| !is_free_before(piece, *line, *index))
            .filter(|(line, index, ..)| {
                !found.is_choice((*line, *index), Otherwise::Begins(0, piece.thresholds().accent_at_tip))
            })
            .map(|(line, index, ..)| (line, index))
            .collect();
        for (line, index) in light {
            found.report(thin(piece, found, line, index));
        }
    }
}

/// Loudness from which an accent needs weight: mezzo-forte, hundredths of a dynamic step (rule of thumb).
const LOUD: i32 = arcata_bow::Loudness::MF.0;
/// Sforzando, or the upright accent; lighter signs are met by the bow's speed, hundredths (rule of thumb).
const HEAVY: u16 = 90;

/// Whether there is silence enough before a stroke to carry the bow over its whole length: the accent is begun where one
/// likes.
fn is_free_before(piece: &Piece<'_>, line: usize, index: usize) -> bool {
    let before = index.checked_sub(1).and_then(|before| piece.lines.get(line)?.strokes.get(before));
    before.is_none_or(|before| before.silence_after.micros >= piece.lift_time(0, 1000))
}

fn is_light(piece: &Piece<'_>, stroke: &Stroke, planned: &PlannedStroke) -> bool {
    let limits = piece.thresholds();
    let told_elsewhere =
        planned.direction == BowDirection::Up && stroke.emphasis.strength >= limits.beat_strength;
    stroke.emphasis.accent >= HEAVY
        && stroke.level_start.0 >= LOUD
        && stroke.kind != StrokeKind::Tremolo
        && stroke.duration.micros > piece.lift_time(0, 0)
        && planned.start > limits.accent_at_tip
        && !told_elsewhere
        && stroke.printed.is_none()
}

fn thin(piece: &Piece<'_>, found: &Findings<'_>, at: usize, index: usize) -> Draft {
    let stroke = &piece.lines[at].strokes[index];
    let planned = piece.planned(at)[index];
    let draft = found.at_stroke(Severity::C, at, index);
    let sentence = Saying::new("say-accent-at-tip")
        .with("at", piece.where_is(draft.place()))
        .quoting("dynamic", dynamic_name(stroke.level_start))
        .choosing("bow", bow(planned.direction));
    let draft = draft
        .say(sentence)
        .evidence(
            "evidence-begins-at",
            Argument::Whole(i64::from(planned.start) / 10),
            "unit-percent-of-the-bow",
        )
        .cause(format!("{}/{:?}", stroke.offset, stroke.length));
    with_bow(piece, draft, (at, index), planned.direction.other(), ("accent", WishedNote::Begins))
}
