//! # A page turn without a rest
//!
//! ## What it finds
//! In a part of its own (a file with one part) whose pages are fixed: a page to be turned that ends, and a next one that
//! begins, with less rest between than a player takes to turn (3 s). Pages 1, 3, 5 … are turned; the others lie open beside
//! the next.
//!
//! ## Why it matters
//! One player of each stand stops to turn, so half the section falls silent; a player alone stops altogether.
//!
//! ## Example
//! ```music
//! quarter=96
//! violin: mf 1/4 C5 D5 E5 F5 | 1/1 G5 | 1/2 rest page 1/4 C5 D5 | 1/1 E5 |||
//! ```
//!
//! ## What it proposes
//! To break the page at a rest (word, writer's choice): `arcata parts` looks for the best places.
//!
//! ## What it cannot know
//! How the pages are bound: a title page in front turns everything about.
//!
//! ## Sources
//! Quince; Boston Conservatory's guide for parts: 3 s of rest for a turn.

use arcata_score::{Moment, Note, Part};
use arcata_xml::Tag;

use crate::{Card, Draft, Family, Figure, Findings, Grade, Piece, ProposalKind, Rule, Severity};

/// See the module's page.
#[derive(Debug)]
pub struct PageTurnTooQuick;

impl Rule for PageTurnTooQuick {
    const CARD: Card = Card {
        id: "page-turn-too-quick",
        family: Family::Parts,
        gravest: Severity::B,
        lightest: Severity::B,
        since: "0.1",
        title: "A page turn without a rest",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        let [part] = piece.score.parts.as_slice() else { return };
        let Some(reading) = piece.reading.filter(|_| part.instrument.is_bowed()) else { return };
        let needed = piece.profile.times.page_turn.value * 1000;
        // The first page is a right-hand one: it is turned, the second lies beside the third.
        for bar in page_starts(piece, part).into_iter().step_by(2) {
            let Some(at) = piece.score.bars.get(bar as usize).map(|bar| bar.start) else { continue };
            let Some((from, to)) = rest_around(part, at) else { continue };
            let time = reading.tempo.between(from, to).micros.max(0);
            if time < needed {
                let draft = too_quick(piece, found, bar, at, (time, needed));
                found.report(draft);
            }
        }
    }
}

/// The bars that begin a page after the first.
fn page_starts(piece: &Piece<'_>, part: &Part) -> Vec<u32> {
    let Some(document) = piece.document else { return Vec::new() };
    let measures = (0u32..).zip(&part.measures).skip(1);
    let begins = |measure: arcata_xml::NodeId| {
        let prints = document.element(measure)?.children_named(Tag::PRINT).next()?;
        prints.attribute("new-page").filter(|page| page == "yes").map(|_| ())
    };
    measures.filter_map(|(bar, measure)| begins((*measure)?).map(|()| bar)).collect()
}

/// From the end of the last note before a moment to the beginning of the next; `None` at either end of the music.
fn rest_around(part: &Part, at: Moment) -> Option<(Moment, Moment)> {
    let sounding = || part.notes.iter().filter(|note| !note.pitch.is_rest());
    let ends = |note: &Note| note.onset + note.length;
    let from = sounding().filter(|note| note.onset < at).map(ends).max()?;
    let to = sounding().find(|note| note.onset >= at)?.onset;
    Some((from, to))
}

fn too_quick(
    piece: &Piece<'_>,
    found: &Findings<'_>,
    bar: u32,
    at: Moment,
    (time, needed): (i64, i64),
) -> Draft {
    let draft = found.at(Severity::B, Some(0), bar, at);
    let sentence = format!(
        "The page is turned before {}, with {} of rest; a turn takes about {} s.",
        piece.where_is(draft.place()),
        if time == 0 { "nothing".to_owned() } else { format!("{} s", Figure::Thousandths(time / 1000)) },
        Figure::Thousandths(needed / 1000),
    );
    draft.say(sentence).seconds("rest", time).seconds("a turn takes", needed).propose(
        Grade::WritersChoice,
        ProposalKind::Word,
        "Break the page at a rest.",
    )
}
