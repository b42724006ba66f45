//! # Winds phrased differently from the strings they double
//!
//! ## What it finds
//! A part that is not bowed and a string part on one line, in unison or octaves, four bars or more, that are slurred alike
//! but for one slur (C) or a few (D): told once a pair of parts, and once where several pairs differ at one place.
//!
//! ## Why it matters
//! A wind's slur is a breath of the tongue, a string's a bow; they need not agree, and often must not. Where nearly all of
//! them do, the writer means one phrase by both, and a single other slur is mostly a slip of the copy.
//!
//! ## Example
//! ```music
//! quarter=96
//! flute: mf (1/4 C5 D5) (E5 F5) | (G5 A5) (G5 F5) | (E5 D5) (C5 D5) | (1/2 E5 C5) |||
//! Violins I: mf (1/4 C5 D5) (E5 F5) | (G5 A5) G5 F5 | (E5 D5) (C5 D5) | (1/2 E5 C5) |||
//! ```
//!
//! ## What it proposes
//! Nothing: it is said to be looked at.
//!
//! ## What it cannot know
//! Which of the two is meant. Where a fifth of the slurs or more differ, the two parts breathe and bow each in its own way, and
//! nothing is said; nor where the strings pluck or play a tremolo, or either part is not slurred at all.
//!
//! ## Sources
//! Common practice.

use std::collections::{BTreeMap, BTreeSet};

use arcata_languages::{Argument, Saying};
use arcata_score::{Moment, NoteId};

use crate::bow_starts::bow_starts;
use crate::doublings::doublings;
use crate::under_slur::note;
use crate::ways::WaysOfPlaying;
use crate::{Card, Draft, Family, Findings, Piece, Reads, Rule, Severity};

/// See the module's page.
#[derive(Debug)]
pub struct WindsPhraseApart;

/// Shorter passages are not worth a look (rule of thumb).
const BARS: u32 = 4;
/// From this share of the beginnings on, hundredths, the difference is meant (rule of thumb).
const MEANT: usize = 20;
/// One slur set otherwise changes the beginnings of two bows at most (by definition).
const ONE_SLUR: usize = 2;
/// Fewer slurs in one of the parts say nothing about what it means by them (rule of thumb).
const SLURRED: usize = 4;

impl Rule for WindsPhraseApart {
    const CARD: Card = Card {
        id: "winds-phrase-apart",
        family: Family::Between,
        gravest: Severity::C,
        lightest: Severity::D,
        reads: &[Reads::Slurs, Reads::Words],
        since: "0.1",
        title: "Winds phrased differently from the strings they double",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        let parts = &piece.score.parts;
        let bowed = |part: usize| parts[part].instrument.is_bowed();
        if (0..parts.len()).all(bowed) {
            return;
        }
        let starts: Vec<BTreeSet<NoteId>> = parts.iter().map(bow_starts).collect();
        let ways: Vec<WaysOfPlaying<'_>> =
            parts.iter().map(|part| WaysOfPlaying::new(piece.score, part)).collect();
        // By string part and wind part: what they play together, passage after passage.
        let mut pairs: BTreeMap<(usize, usize), PhrasedTogether> = BTreeMap::new();
        for doubling in doublings(piece.score) {
            let (one, other) = doubling.parts;
            if bowed(one) == bowed(other) || doubling.bars.end - doubling.bars.start < BARS {
                continue;
            }
            let plain =
                doubling.notes.iter().filter(|(a, b)| ways[one].is_plain(*a) && ways[other].is_plain(*b));
            let ordered = plain.map(|(a, b)| if bowed(one) { (*a, *b) } else { (*b, *a) });
            let notes: Vec<(NoteId, NoteId)> = ordered.collect();
            let pair = if bowed(one) { (one, other) } else { (other, one) };
            let together = pairs.entry(pair).or_default();
            if let Some(passage) = PhrasedTogether::of(&notes, &starts[pair.0], &starts[pair.1]) {
                together.take_in(passage, doubling.bars.end - doubling.bars.start);
            }
        }
        // Several winds and strings on one line differ at one moment: it is told once.
        let mut told: BTreeSet<Moment> = BTreeSet::new();
        for (pair, together) in pairs {
            let first = together.apart.first().and_then(|first| note(&parts[pair.0], *first));
            let fresh = first.is_some_and(|first| told.insert(first.onset));
            if let Some(draft) = said(piece, found, pair, &together).filter(|_| fresh) {
                found.report(draft);
            }
        }
    }
}

/// What a wind and a string part play together where they mean the same by their slurs.
#[derive(Default)]
struct PhrasedTogether {
    /// Notes of the string part that begin a slur, or a bow, in one part only.
    apart: Vec<NoteId>,
    bars: u32,
}

impl PhrasedTogether {
    /// One passage; `None` where the two parts slur each in its own way, or one of them not at all.
    fn of(notes: &[(NoteId, NoteId)], strings: &BTreeSet<NoteId>, wind: &BTreeSet<NoteId>) -> Option<Self> {
        let begins = |(a, b): &(NoteId, NoteId)| (strings.contains(a), wind.contains(b));
        let slurred =
            |side: fn((bool, bool)) -> bool| notes.iter().filter(|pair| !side(begins(pair))).count();
        let either = notes.iter().filter(|pair| begins(pair) != (false, false)).count();
        // The passage itself may begin within a slur of one part.
        let differ = notes.iter().skip(1).filter(|pair| begins(pair).0 != begins(pair).1);
        let apart: Vec<NoteId> = differ.map(|(a, _)| *a).collect();
        let both = slurred(|begins| begins.0).min(slurred(|begins| begins.1));
        (both >= SLURRED && apart.len() * 100 < either * MEANT).then_some(Self { apart, bars: 0 })
    }

    fn take_in(&mut self, passage: Self, bars: u32) {
        if !passage.apart.is_empty() {
            self.apart.extend(passage.apart);
            self.bars += bars;
        }
    }
}

fn said(
    piece: &Piece<'_>,
    found: &Findings<'_>,
    (strings, wind): (usize, usize),
    together: &PhrasedTogether,
) -> Option<Draft> {
    let severity = if together.apart.len() <= ONE_SLUR { Severity::C } else { Severity::D };
    let draft = found.at_notes(severity, strings, &[*together.apart.first()?]);
    let sentence = Saying::new("say-winds-phrase-apart")
        .quoting("strings", &piece.score.parts[strings].name)
        .quoting("wind", &piece.score.parts[wind].name)
        .with("bars", together.bars)
        .with("at", piece.where_is(draft.place()))
        .with("more", together.apart.len().saturating_sub(1));
    Some(draft.say(sentence).evidence(
        "evidence-notes-that-begin-a-slur-in-one-part-only",
        Argument::Whole(i64::try_from(together.apart.len()).unwrap_or(i64::MAX)),
        "",
    ))
}
