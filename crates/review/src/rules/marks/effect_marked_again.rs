//! # An effect that is marked again and again
//!
//! ## What it finds
//! A figure that comes five times and more in a row with the same bow marks, some of them an effect: up-bows into
//! a strong down-bow, a lift, a bow against alternation. The marks of the third and later instances are surplus (D). As
//! many again as teach the pattern are no crowd, and left alone.
//!
//! ## Why it matters
//! Two instances teach the pattern; players go on with it. What is marked on and on looks like a change each time,
//! and crowds the part.
//!
//! ## Example
//! ```music
//! time 3/4  quarter=96
//! violin: mf 1/4 C5!down D5!up E5!up | C5!down D5!up E5!up | C5!down D5!up E5!up | C5!down D5!up E5!up | C5!down D5!up E5!up | 3/4 C5 |||
//! ```
//!
//! ## What it proposes
//! To take the marks of the later instances out and write sim. where they begin (unmark, player's choice).
//!
//! ## What it cannot know
//! Whether the place is so hard that somebody wants every bow written, or whether the marks come from a teaching
//! edition.
//!
//! ## Sources
//! That the first one or two instances are marked and the rest follow: common practice.

use std::collections::BTreeMap;
use std::ops::Range;

use arcata_bow::audit::{MarkClass, MarkReason};
use arcata_bow::{Line, Stroke};

use crate::change::{Change, direction_before};
use crate::under_slur::note;
use crate::{Card, Draft, Family, Findings, Grade, Piece, ProposalKind, Reads, Rule, Severity};
use arcata_languages::{Argument, Saying};

/// See the module's page.
#[derive(Debug)]
pub struct EffectMarkedAgain;

impl Rule for EffectMarkedAgain {
    const CARD: Card = Card {
        id: "effect-marked-again",
        family: Family::Marks,
        gravest: Severity::D,
        lightest: Severity::D,
        reads: &[Reads::Strokes, Reads::Bows, Reads::BowMarks],
        since: "0.1",
        title: "An effect that is marked again and again",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        let figures: Vec<(usize, Figured)> = piece
            .lines
            .iter()
            .enumerate()
            .flat_map(|(at, line)| figures(piece, line).into_iter().map(move |figure| (at, figure)))
            .collect();
        if figures.is_empty() {
            return;
        }
        let reasons: BTreeMap<(usize, usize), MarkReason> =
            found.audited().iter().filter_map(|mark| Some((mark.stroke?, mark.reason))).collect();
        for (at, figure) in figures {
            let first = figure.strokes.start..figure.strokes.start + figure.period;
            let is_effect = first
                .clone()
                .filter_map(|stroke| reasons.get(&(at, stroke)))
                .any(|reason| reason.class() == MarkClass::Effect || *reason == MarkReason::Alternation);
            if let Some(draft) = again(piece, found, at, &figure).filter(|_| is_effect) {
                found.report(draft);
            }
        }
    }
}

/// A figure that comes several times in a row with the same marks.
#[derive(Clone, Debug, PartialEq, Eq)]
struct Figured {
    strokes: Range<usize>,
    period: usize,
}

/// The longest figure that is looked for, strokes (rule of thumb).
const LONGEST: usize = 24;

fn alike(one: &Stroke, other: &Stroke) -> bool {
    one.length == other.length
        && one.kind == other.kind
        && one.note_count == other.note_count
        && one.silence_after == other.silence_after
        && one.printed == other.printed
}

/// Figures with marks in more instances in a row than are worth marking, the shortest first; a stroke belongs to
/// one figure at most.
fn figures(piece: &Piece<'_>, line: &Line) -> Vec<Figured> {
    let strokes = &line.strokes;
    let instances = piece.thresholds().effect_instances;
    let mut found: Vec<Figured> = Vec::new();
    if strokes.iter().filter(|stroke| stroke.printed.is_some()).count() <= instances {
        return found;
    }
    let mut taken = vec![false; strokes.len()];
    for period in 2..=LONGEST {
        let mut at = 0;
        while at + (instances + 1) * period <= strokes.len() {
            let same = (at + period..strokes.len())
                .take_while(|index| {
                    !taken[*index]
                        && !taken[index - period]
                        && alike(&strokes[*index], &strokes[index - period])
                })
                .count();
            let whole = at..at + period + same;
            if same < instances * period {
                at += same + 1;
                continue;
            }
            let figure = Figured { strokes: from_a_beat(line, &whole, period, instances), period };
            let one = &strokes[at..at + period];
            let changes = one.windows(2).any(|pair| !alike(&pair[0], &pair[1]));
            if changes && one.iter().any(|stroke| stroke.printed.is_some()) {
                taken[whole.clone()].fill(true);
                found.push(figure);
            }
            at = whole.end;
        }
    }
    found.sort_by_key(|figure| figure.strokes.start);
    found
}

/// The run of a figure from the strongest beat of its first instance on, if enough instances are left.
fn from_a_beat(line: &Line, whole: &Range<usize>, period: usize, instances: usize) -> Range<usize> {
    let latest = (whole.end - (instances + 1) * period).min(whole.start + period - 1);
    let begin = (whole.start..=latest).min_by_key(|index| (line.strokes[*index].emphasis.metric, *index));
    begin.unwrap_or(whole.start)..whole.end
}

fn again(piece: &Piece<'_>, found: &Findings<'_>, at: usize, figure: &Figured) -> Option<Draft> {
    let line = &piece.lines[at];
    let part = piece.score.parts.get(line.part)?;
    let instances = piece.thresholds().effect_instances;
    let later = figure.strokes.start + instances * figure.period..figure.strokes.end;
    if later.len() <= instances * figure.period {
        return None;
    }
    let marked: Vec<usize> = later.filter(|index| line.strokes[*index].printed.is_some()).collect();
    // One mark more is no crowd.
    if marked.len() < 2 {
        return None;
    }
    let last = line.strokes[*marked.last()?].bar;
    let draft = found.at_stroke(Severity::D, at, marked[0]);
    let sentence = Saying::new("say-effect-marked-again")
        .with("count", marked.len())
        .with("at", piece.where_is(draft.place()))
        .with("last", piece.bar_said(last))
        .with("times", instances);
    let first = note(part, *line.strokes[marked[0]].notes.first()?)?;
    let notes = marked.iter().flat_map(|index| &line.strokes[*index].notes).filter_map(|id| note(part, *id));
    let printed = notes.filter_map(|note| note.bow_mark);
    let mut changes: Vec<Change> = printed.map(|mark| Change::Remove(mark.node)).collect();
    changes.push(direction_before(first, part.staves, "above", "<words>sim.</words>"));
    let count = i64::try_from(marked.len()).unwrap_or(i64::MAX);
    Some(draft.say(sentence).evidence("evidence-marks", Argument::Whole(count), "").propose_change(
        Grade::PlayersChoice,
        ProposalKind::Unmark,
        Saying::new("offer-out-and-sim"),
        changes,
    ))
}
