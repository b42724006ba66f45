//! # A bow mark on nearly every stroke
//!
//! ## What it finds
//! Bars in a row in which nearly every stroke carries a down-bow or an up-bow mark, for a dozen strokes and
//! more (D). Marks that repeat the direction of the mark before are not counted: rows of down-bows and pairs of
//! up-bows are effects. A passage whose first marked downbeat is up goes the other way about: the signs say that this is
//! meant, on and on, and nothing is told of them.
//!
//! ## Why it matters
//! Players read a mark as an exception. Where every note has one, the eye stops reading them, the one that
//! matters is missed, and another leader cannot bow the part without erasing it first.
//!
//! ## Example
//! ```music
//! quarter=96
//! violin: mf 1/4 C5!down D5!up E5!down F5!up | G5!down F5!up E5!down D5!up | C5!down E5!up D5!down B4!up | 1/1 C5!down |||
//! ```
//!
//! ## What it proposes
//! To take out the marks that would come anyway (unmark, safe), where enough of them would. Else to keep only
//! those that say something (unmark, player's choice), which the writer has to choose.
//!
//! ## What it cannot know
//! Whether this is a study or a teaching edition that wants every bow shown.
//!
//! ## Sources
//! Bow marks in published chamber music stand mostly where the ordinary rule would give the other bow
//! (counted, 21 marked quartets, CC0: alternation predicts the next mark in 67 %). How many are too many: rule of
//! thumb.

use std::collections::BTreeSet;
use std::ops::Range;

use arcata_bow::audit::MarkReason;
use arcata_bow::{MetricPlace, Stroke};
use arcata_languages::{Argument, Saying};
use arcata_score::BowDirection;

use crate::change::Change;
use crate::under_slur::note;
use crate::{Card, Draft, Family, Findings, Grade, Piece, ProposalKind, Reads, Rule, Severity};

/// See the module's page.
#[derive(Debug)]
pub struct MarkOnEveryNote;

impl Rule for MarkOnEveryNote {
    const CARD: Card = Card {
        id: "mark-on-every-note",
        family: Family::Marks,
        gravest: Severity::D,
        lightest: Severity::D,
        reads: &[Reads::Strokes, Reads::Bows, Reads::BowMarks],
        since: "0.1",
        title: "A bow mark on nearly every stroke",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        for (at, line) in piece.lines.iter().enumerate() {
            let marked = counted_marks(&line.strokes);
            let mut passages = dense(piece, &line.strokes, &marked);
            passages.retain(|passage| !is_reversed(&line.strokes[passage.clone()]));
            if passages.is_empty() {
                continue;
            }
            let obvious = obvious_marks(found, at);
            for passage in passages {
                found.report(crowded(piece, found, at, &passage, (&marked, &obvious)));
            }
        }
    }
}

/// Whether the first downbeat with a mark is up.
fn is_reversed(passage: &[Stroke]) -> bool {
    let mut downbeats = passage.iter().filter(|stroke| stroke.emphasis.metric == MetricPlace::Downbeat);
    downbeats.find_map(|stroke| stroke.printed) == Some(BowDirection::Up)
}

/// Which strokes carry a mark that counts.
fn counted_marks(strokes: &[Stroke]) -> Vec<bool> {
    let before = std::iter::once(None).chain(strokes.iter().map(|stroke| stroke.printed));
    let pairs = strokes.iter().zip(before);
    pairs.map(|(stroke, before)| stroke.printed.is_some() && stroke.printed != before).collect()
}

/// Runs of bars, as strokes, in which the share of marked strokes is high in each bar, long enough to count.
fn dense(piece: &Piece<'_>, strokes: &[Stroke], marked: &[bool]) -> Vec<Range<usize>> {
    let limits = piece.thresholds();
    let mut runs: Vec<Range<usize>> = Vec::new();
    let mut from = 0;
    for bar in strokes.chunk_by(|one, next| one.bar == next.bar) {
        let here = from..from + bar.len();
        from = here.end;
        let count = marked[here.clone()].iter().filter(|marked| **marked).count();
        if count * 100 < limits.marks_dense * bar.len() {
            continue;
        }
        let follows = |run: &Range<usize>| {
            run.end == here.start && strokes[run.end - 1].bar + 1 == strokes[here.start].bar
        };
        match runs.last_mut() {
            Some(run) if follows(run) => run.end = here.end,
            _ => runs.push(here),
        }
    }
    let count = |run: &Range<usize>| marked[run.clone()].iter().filter(|marked| **marked).count();
    runs.retain(|run| count(run) >= limits.marks_dense_strokes);
    runs
}

/// The strokes of a line whose marks come anyway.
fn obvious_marks(found: &Findings<'_>, at: usize) -> BTreeSet<usize> {
    let obvious = found.audited().iter().filter(|mark| mark.reason == MarkReason::ComesAnyway);
    obvious.filter_map(|mark| mark.stroke).filter(|(line, _)| *line == at).map(|(_, stroke)| stroke).collect()
}

fn crowded(
    piece: &Piece<'_>,
    found: &Findings<'_>,
    at: usize,
    passage: &Range<usize>,
    (marked, obvious): (&[bool], &BTreeSet<usize>),
) -> Draft {
    let line = &piece.lines[at];
    let count = marked[passage.clone()].iter().filter(|marked| **marked).count();
    let draft = found.at_stroke(Severity::D, at, passage.start);
    let sentence = Saying::new("say-mark-on-every-note")
        .with("at", piece.where_is(draft.place()))
        .with("last", piece.bar_said(line.strokes[passage.end - 1].bar))
        .with("marked", count)
        .with("strokes", passage.len());
    let share = i64::try_from(count * 100 / passage.len().max(1)).unwrap_or(100);
    let draft =
        draft.say(sentence).evidence("evidence-strokes-marked", Argument::Whole(share), "unit-percent");
    let mut left = marked.to_vec();
    for stroke in obvious.range(passage.clone()) {
        left[*stroke] = false;
    }
    let thinner = dense(piece, &line.strokes, &left).iter().all(|run| run.start != passage.start);
    let changes = removals(piece, at, obvious.range(passage.clone()).copied());
    if thinner && !changes.is_empty() {
        let sentence = Saying::new("offer-marks-not-needed-out").with("count", changes.len());
        return draft.propose_change(Grade::Safe, ProposalKind::Unmark, sentence, changes);
    }
    draft.propose(
        Grade::PlayersChoice,
        ProposalKind::Unmark,
        Saying::new("offer-keep-what-alternation-would-not"),
    )
}

fn removals(piece: &Piece<'_>, at: usize, strokes: impl Iterator<Item = usize>) -> Vec<Change> {
    let line = &piece.lines[at];
    let Some(part) = piece.score.parts.get(line.part) else { return Vec::new() };
    let notes = strokes.flat_map(|stroke| &line.strokes[stroke].notes).filter_map(|id| note(part, *id));
    notes.filter_map(|note| note.bow_mark).map(|mark| Change::Remove(mark.node)).collect()
}
