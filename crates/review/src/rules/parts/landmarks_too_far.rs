//! # Rehearsal marks too far apart
//!
//! ## What it finds
//! In music for sections: more bars from one mark to the next, to the first, or from the last to the end, than players
//! like to count (C, one finding for the score). A movement's beginning counts as one, too. In chamber music, where players
//! name a place by its bar, only if rehearsal marks are used at all, and a player counts a rest of more than eight bars in between, with
//! nothing to find the way back by. Bars without numbers (C).
//!
//! ## Why it matters
//! "Forty-one before D" costs a minute each time it is said, and half of the section starts elsewhere.
//!
//! ## Example
//! ```music
//! time 2/4  quarter=96
//! violin: mf 1/2 C5 | bar-rest*14 | [A] C5 | bar-rest*39 | C5 |||
//! ```
//!
//! ## What it proposes
//! A place for a mark between them: a double bar, a change of metre, key or tempo, else the middle (state, writer's
//! choice). Only the writer knows where the music turns.
//!
//! ## What it cannot know
//! Chamber players go by bar numbers; without a single mark their scores are left alone.
//!
//! ## Sources
//! Rehearsal marks where something changes, at most 24 bars apart (a school's hand-out); the limit of the profile is wider,
//! rule of thumb.

use arcata_bow::Force;
use arcata_languages::{Argument, Saying};
use arcata_score::{Bar, BarKind, BarlineStyle, Moment, Score, TempoKind};

use crate::{Card, Draft, Family, Findings, Grade, Piece, ProposalKind, Reads, Rule, Severity};

/// See the module's page.
#[derive(Debug)]
pub struct LandmarksTooFar;

impl Rule for LandmarksTooFar {
    const CARD: Card = Card {
        id: "landmarks-too-far",
        family: Family::Parts,
        gravest: Severity::C,
        lightest: Severity::C,
        reads: &[Reads::Strokes],
        since: "0.1",
        title: "Rehearsal marks too far apart",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        if let Some(draft) = unnumbered(piece, found) {
            found.report(draft);
        }
        let marked = piece.score.bars.iter().any(|bar| bar.rehearsal.is_some());
        let section = piece.lines.iter().any(|line| line.force == Force::Section);
        if marked || section {
            let gaps = gaps(piece.score, piece.thresholds().landmark_bars);
            for gap in gaps.iter().filter(|gap| section || is_counted_through(piece, gap)) {
                found.report(far(piece, found, gap));
            }
        }
    }
}

/// Bars from one landmark to the next.
struct Gap {
    from: usize,
    to: usize,
    bars: usize,
}

/// The stretches between landmarks that are longer than this many counted bars.
fn gaps(score: &Score, longest: usize) -> Vec<Gap> {
    let mut gaps = Vec::new();
    let mut close = |from: usize, to: usize| {
        let counted = score.bars[from..to].iter().filter(|bar| bar.kind == BarKind::Counted).count();
        if counted > longest {
            gaps.push(Gap { from, to, bars: counted });
        }
    };
    let mut last = 0;
    for at in 1..score.bars.len() {
        let movement = score.bars[at - 1].right.style == BarlineStyle::Final;
        if movement || score.bars[at].rehearsal.is_some() {
            close(last, at);
            last = at;
        }
    }
    close(last, score.bars.len());
    gaps
}

/// Whether a bowed part rests in the gap for so many bars that its player loses the place.
fn is_counted_through(piece: &Piece<'_>, gap: &Gap) -> bool {
    let bars = &piece.score.bars[gap.from..gap.to];
    let longest = piece.thresholds().reentry_bars;
    piece.score.parts.iter().filter(|part| part.instrument.is_bowed()).any(|part| {
        let sounds = |bar: &Bar| {
            let first = part.notes.partition_point(|note| note.onset < bar.start);
            let here = part.notes[first..].iter().take_while(|note| note.onset < bar.start + bar.length);
            here.into_iter().any(|note| !note.pitch.is_rest())
        };
        let played: Vec<bool> = bars.iter().map(sounds).collect();
        played.chunk_by(|one, next| one == next).any(|run| !run[0] && run.len() > longest)
    })
}

fn far(piece: &Piece<'_>, found: &Findings<'_>, gap: &Gap) -> Draft {
    let score = piece.score;
    let bar = u32::try_from(gap.from).unwrap_or(0);
    let draft = found.at(Severity::C, None, bar, score.bars[gap.from].start);
    let bar_said = |at: usize| piece.bar_said(u32::try_from(at).unwrap_or(u32::MAX));
    let name = |at: usize| match score.bars.get(at).and_then(|bar| bar.rehearsal.as_deref()) {
        Some(mark) => Saying::new("mark-in-bar").quoting("mark", mark).with("at", bar_said(at)),
        None => Saying::new("mark-bar-alone").with("at", bar_said(at)),
    };
    let end = match score.bars.get(gap.to) {
        Some(next) if next.rehearsal.is_some() => Saying::new("mark-the-next").with("mark", name(gap.to)),
        Some(_) => Saying::new("mark-end-of-movement"),
        None => Saying::new("mark-end"),
    };
    let sentence = Saying::new("say-landmarks-too-far")
        .with("from", name(gap.from))
        .with("to", end)
        .with("bars", gap.bars);
    let (place, why) = landmark(score, gap);
    let offer = Saying::new("offer-rehearsal-mark").with("at", bar_said(place)).choosing("why", why);
    draft
        .say(sentence)
        .evidence(
            "evidence-bars-without-a-mark",
            Argument::Whole(i64::try_from(gap.bars).unwrap_or(i64::MAX)),
            "",
        )
        .cause("far")
        .propose(Grade::WritersChoice, ProposalKind::State, offer)
}

/// The bar between two landmarks where a mark belongs: where the music turns, nearest to the middle; else the middle.
fn landmark(score: &Score, gap: &Gap) -> (usize, &'static str) {
    let middle = gap.from + (gap.to - gap.from) / 2;
    let turns = (gap.from + 1..gap.to).filter_map(|at| turn(score, at).map(|why| (at, why)));
    // A mark beside another one helps nobody: the outer quarters are left out.
    let quarter = (gap.to - gap.from) / 4;
    let inner = turns.filter(|(at, _)| at.abs_diff(middle) <= quarter);
    inner.min_by_key(|(at, _)| (at.abs_diff(middle), *at)).unwrap_or((middle, "middle"))
}

/// Why a bar is a landmark.
fn turn(score: &Score, at: usize) -> Option<&'static str> {
    let bar = &score.bars[at];
    let index = u32::try_from(at).unwrap_or(u32::MAX);
    let heard =
        |kind: &TempoKind| matches!(kind, TempoKind::Marked(_) | TempoKind::Word(_) | TempoKind::Back(_));
    let begins = |at: Moment| at == bar.start;
    let first = score.parts.first()?;
    if score.bars[at - 1].right.style == BarlineStyle::Double || bar.left.style == BarlineStyle::Double {
        Some("double-bar")
    } else if score
        .tempos
        .iter()
        .any(|tempo| begins(tempo.place.at) && heard(&tempo.kind) && !tempo.text.is_empty())
    {
        Some("tempo")
    } else if first.meters.iter().any(|(from, _)| *from == index) {
        Some("metre")
    } else if first.keys.iter().any(|(from, _)| *from == index) {
        Some("key")
    } else {
        None
    }
}

/// Counted bars without a number.
fn unnumbered(piece: &Piece<'_>, found: &Findings<'_>) -> Option<Draft> {
    let bars = &piece.score.bars;
    let bare =
        |bar: &Bar| bar.kind == BarKind::Counted && !bar.label.chars().any(|letter| letter.is_ascii_digit());
    let count = bars.iter().filter(|bar| bare(bar)).count();
    let first = bars.iter().position(bare)?;
    let draft = found.at(Severity::C, None, u32::try_from(first).unwrap_or(0), bars[first].start);

    let sentence = Saying::new("say-bars-without-number").with("count", count);
    Some(draft.say(sentence).propose(
        Grade::WritersChoice,
        ProposalKind::State,
        Saying::new("offer-number-the-bars"),
    ))
}
