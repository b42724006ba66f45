//! # A page turn without a rest
//!
//! ## What it finds
//! In a part of its own (a file with one part) whose pages are fixed: a page to be turned that ends, and a next one that
//! begins, with less rest between than a player takes to turn (3 s). Pages 1, 3, 5 … are turned, by the numbers in the file
//! where it has them; the others lie open beside the next. A stroke on an open string leaves the left hand free and counts
//! half; between movements players stop, unless "attacca" stands there.
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

use arcata_bow::RealTime;
use arcata_bow::turns::turn_times;
use arcata_languages::{Argument, Saying};
use arcata_score::{Moment, Part};
use arcata_xml::Tag;

use crate::{Card, Draft, Family, Findings, Grade, Piece, ProposalKind, Reads, Rule, Severity};

/// See the module's page.
#[derive(Debug)]
pub struct PageTurnTooQuick;

impl Rule for PageTurnTooQuick {
    const CARD: Card = Card {
        id: "page-turn-too-quick",
        family: Family::Parts,
        gravest: Severity::B,
        lightest: Severity::B,
        reads: &[Reads::Words],
        since: "0.1",
        title: "A page turn without a rest",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        let [part] = piece.score.parts.as_slice() else { return };
        let Some(reading) = piece.reading.filter(|_| part.instrument.is_bowed()) else { return };
        let needed = RealTime::from_micros(piece.profile.times.page_turn.value * 1000);
        let stops = piece.document.map_or_else(Vec::new, |document| piece.score.stops(document));
        let times = turn_times(piece.score, part, &reading.tempo, (&stops, RealTime::default()));
        let sounding = || part.notes.iter().filter(|note| !note.pitch.is_rest());
        for bar in turned_to(piece, part) {
            let Some(at) = piece.score.bars.get(bar as usize).map(|bar| bar.start) else { continue };
            // Before the first note and after the last there is time enough, and where players stop.
            let is_inside = sounding().any(|note| note.onset < at) && sounding().any(|note| note.onset >= at);
            let Some(time) = times.get(bar as usize).filter(|_| is_inside && !stops.contains(&bar)) else {
                continue;
            };
            if time.free() < needed {
                let draft = too_quick(piece, found, bar, at, (time.free().micros, needed.micros));
                found.report(draft);
            }
        }
    }
}

/// The bars that begin a page behind a turn. Pages count from 1 unless the file numbers them (MusicXML 4.0, `print`:
/// `page-number`, and `blank-page` for pages left blank before); odd ones lie on the right, and a page with a letter behind
/// its number ("3a") folds out beside the page of that number.
fn turned_to(piece: &Piece<'_>, part: &Part) -> Vec<u32> {
    let Some(document) = piece.document else { return Vec::new() };
    let mut page = 1;
    let mut bars = Vec::new();
    for (bar, measure) in (0u32..).zip(&part.measures) {
        let print = measure.and_then(|measure| document.element(measure)?.children_named(Tag::PRINT).next());
        let Some(print) = print else { continue };
        let named = print.attribute("page-number").unwrap_or_default();
        let digits = named.trim().trim_end_matches(|letter: char| letter.is_ascii_lowercase());
        let folds_out = !digits.is_empty() && digits.len() < named.trim().len();
        let number = |text: &str| text.trim().parse::<u32>().ok();
        let begins = bar > 0 && print.attribute("new-page").is_some_and(|page| page == "yes");
        let before = page;
        if begins {
            page += 1 + print.attribute("blank-page").and_then(|text| number(&text)).unwrap_or(0);
        }
        page = number(digits).filter(|_| begins || bar == 0).unwrap_or(page);
        if begins && before % 2 == 1 && !folds_out {
            bars.push(bar);
        }
    }
    bars
}

fn too_quick(
    piece: &Piece<'_>,
    found: &Findings<'_>,
    bar: u32,
    at: Moment,
    (time, needed): (i64, i64),
) -> Draft {
    let draft = found.at(Severity::B, Some(0), bar, at);
    let sentence = Saying::new("say-page-turn-too-quick")
        .with("at", piece.where_is(draft.place()))
        .choosing("rest", if time == 0 { "none" } else { "some" })
        .with("there", Argument::Thousandths(time / 1000))
        .with("needed", Argument::Thousandths(needed / 1000));
    draft.say(sentence).seconds("evidence-rest", time).seconds("evidence-a-turn-takes", needed).propose(
        Grade::WritersChoice,
        ProposalKind::Word,
        Saying::new("offer-break-page-at-rest"),
    )
}
