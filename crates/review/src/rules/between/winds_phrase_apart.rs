//! # Winds that phrase otherwise than the strings they double
//!
//! ## What it finds
//! A part that is not bowed and a string part on one line, in unison or octaves, four bars or more, with slurs that
//! begin at other notes: told once a pair of parts.
//!
//! ## Why it matters
//! A wind's slur is a breath of the tongue, a string's a bow; they need not agree, and often must not. Where the string's
//! slur is the same as the wind's throughout, or nowhere, the writer may have thought of only one of them.
//!
//! ## Example
//! ```music
//! quarter=96
//! flute: mf (c''4 d'' e'' f'' | g'' a'' g'' f'') | (e'' d'' c'' d'' | e''2) c'' |.
//! Violins I: mf (c''4 d'') (e'' f'') | (g'' a'') (g'' f'') | (e'' d'') (c'' d'') | e''2 c'' |.
//! ```
//!
//! ## What it proposes
//! Nothing: it is said to be looked at.
//!
//! ## What it cannot know
//! What was meant.
//!
//! ## Sources
//! Common practice.

use std::collections::BTreeMap;

use arcata_score::NoteId;

use crate::bow_starts::bow_starts;
use crate::doublings::doublings;
use crate::{Card, Family, Figure, Findings, Piece, Rule, Severity};

/// See the module's page.
#[derive(Debug)]
pub struct WindsPhraseApart;

/// Shorter passages are not worth a look.
const BARS: u32 = 4;

impl Rule for WindsPhraseApart {
    const CARD: Card = Card {
        id: "winds-phrase-apart",
        family: Family::Between,
        gravest: Severity::D,
        lightest: Severity::D,
        since: "0.1",
        title: "Winds that phrase otherwise than the strings they double",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        let bowed = |part: usize| piece.score.parts[part].instrument.is_bowed();
        // By string part and wind part: the first place, and how many there are.
        let mut pairs: BTreeMap<(usize, usize), (NoteId, usize, u32)> = BTreeMap::new();
        for doubling in doublings(piece.score) {
            let (one, other) = doubling.parts;
            if bowed(one) == bowed(other) || doubling.bars.end - doubling.bars.start < BARS {
                continue;
            }
            let starts = (bow_starts(&piece.score.parts[one]), bow_starts(&piece.score.parts[other]));
            let differ = doubling.notes.iter().filter(|(a, b)| starts.0.contains(a) != starts.1.contains(b));
            let differ: Vec<&(NoteId, NoteId)> = differ.collect();
            let Some(first) = differ.first() else { continue };
            let (strings, wind, note) = if bowed(one) { (one, other, first.0) } else { (other, one, first.1) };
            let entry = pairs.entry((strings, wind)).or_insert((note, 0, 0));
            entry.1 += differ.len();
            entry.2 += doubling.bars.end - doubling.bars.start;
        }
        for ((strings, wind), (note, count, bars)) in pairs {
            let draft = found.at_notes(Severity::D, strings, &[note]);
            let sentence = format!(
                "{} and {} play one line in {bars} {}s from {} on, with slurs that begin at other notes.",
                piece.score.parts[strings].name,
                piece.score.parts[wind].name,
                piece.bar_word(),
                piece.where_is(draft.place()),
            );
            let draft = draft.say(sentence).evidence(
                "notes that begin a slur in one part only",
                Figure::Whole(i64::try_from(count).unwrap_or(i64::MAX)),
                "",
            );
            found.report(draft);
        }
    }
}
