//! # A phrase mark drawn as a slur
//!
//! ## What it finds
//! A solid slur that several signs show to be a phrase mark: it lasts far longer than the slowest bow, holds other slurs,
//! rests or bow marks (each strong), repeats a pitch without dots, or spans exactly two, four or eight bars (each weak). Two
//! strong signs, or a strong one and two weak ones, are enough; a wind part that doubles the line with the same slur is told
//! as well.
//!
//! ## Why it matters
//! A slur tells string players "one bow". A phrase line that looks like a slur is bowed as it stands, or discussed; and every
//! judgement about the bow that rests on it is wrong.
//!
//! ## Example
//! ```music
//! quarter=60
//! violin: f (1/4 C5 D5 (2E5 F5)2 | G5 (2F5 E5)2 D5 | C5 E5 (2G5 F5)2 | 1/2 E5 D5) |||
//! ```
//!
//! ## What it proposes
//! To make it a dashed slur, a phrase mark that leaves the bow free (mark as phrase, writer's choice).
//!
//! ## What it cannot know
//! What was meant: the signs are weighed, not proved. Whoever knows says so in the file beside the score (`arcata aside` with
//! `--slur phrase` or `--slur bow`), and the bow is planned accordingly.
//!
//! ## Sources
//! Okura (phrase marks and bowing slurs); Hoffmann (a slur that no bow lasts for).

use arcata_languages::{Argument, Saying};
use arcata_score::{Note, Slur};

use crate::doublings::{Doubling, doublings};
use crate::phrase_change;
use crate::phrase_verdict::{Verdict, phrase_verdict};
use crate::under_slur::solid_slurs;
use crate::{Card, Draft, Family, Findings, Grade, Piece, ProposalKind, Reads, Rule, Severity};

/// See the module's page.
#[derive(Debug)]
pub struct PhraseMarkAsSlur;

impl Rule for PhraseMarkAsSlur {
    const CARD: Card = Card {
        id: "phrase-mark-as-slur",
        family: Family::Slurs,
        gravest: Severity::B,
        lightest: Severity::B,
        reads: &[Reads::Slurs, Reads::Strokes, Reads::BowMarks],
        since: "0.1",
        title: "A phrase mark drawn as a slur",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        let mut doubled: Option<Vec<Doubling>> = None;
        for (part_index, part) in piece.score.parts.iter().enumerate() {
            if !part.instrument.is_bowed() {
                continue;
            }
            for slur in solid_slurs(part) {
                let verdict = phrase_verdict(piece, part_index, slur);
                if verdict.is_phrase_mark() {
                    let doubled = doubled.get_or_insert_with(|| doublings(piece.score));
                    let wind = wind_with_it(piece, part_index, slur, doubled);
                    let draft = phrase(piece, found, part_index, slur, (&verdict, wind));
                    found.report(draft);
                }
            }
        }
    }
}

/// The name of a part that is not bowed and doubles the line with the same slur.
fn wind_with_it<'a>(
    piece: &Piece<'a>,
    part_index: usize,
    (slur, ..): (&Slur, &Note, &Note),
    doubled: &[Doubling],
) -> Option<&'a str> {
    doubled.iter().find_map(|doubling| {
        let (one, other) = doubling.parts;
        let wind = if one == part_index {
            other
        } else if other == part_index {
            one
        } else {
            return None;
        };
        let wind_part = &piece.score.parts[wind];
        let there = |id| {
            doubling.notes.iter().find_map(|(a, b)| {
                let (own, wind) = if one == part_index { (a, b) } else { (b, a) };
                (*own == id).then_some(*wind)
            })
        };
        let (start, end) = (there(slur.start)?, there(slur.end)?);
        let same = solid_slurs(wind_part).any(|(other, ..)| (other.start, other.end) == (start, end));
        (same && !wind_part.instrument.is_bowed()).then_some(wind_part.name.as_str())
    })
}

fn phrase(
    piece: &Piece<'_>,
    found: &Findings<'_>,
    part_index: usize,
    (slur, ..): (&Slur, &Note, &Note),
    (verdict, wind): (&Verdict, Option<&str>),
) -> Draft {
    let part = &piece.score.parts[part_index];
    let draft = found.at_notes(Severity::B, part_index, &[slur.start, slur.end]);
    let signs = verdict.signs.iter().map(|sign| sign.name.clone().into()).collect();
    let sentence = Saying::new("say-phrase-mark-as-slur")
        .with("at", piece.where_is(draft.place()))
        .with("signs", Argument::Row(signs))
        .choosing("same-line", if wind.is_some() { "wind" } else { "none" })
        .quoting("wind", wind.unwrap_or_default());
    draft.say(sentence).cause("phrase").propose_change(
        Grade::WritersChoice,
        ProposalKind::Phrase,
        Saying::new("offer-dashed-slur"),
        phrase_change::broken(piece, part, slur),
    )
}
