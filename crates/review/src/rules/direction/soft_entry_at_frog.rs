//! # A soft entry where the bow is heavy
//!
//! ## What it finds
//! An entry out of silence at pianissimo or softer, on a printed bow, that begins close to the frog in the best bowing of
//! the passage, and in all that cost hardly more (D).
//!
//! ## Why it matters
//! At the frog the whole weight of bow and arm stands on the string, and a pianissimo begins with a bump. Players set
//! soft entries in the upper half, where the stick carries itself.
//!
//! ## Example
//! ```music
//! quarter=40
//! violin: mf 1/2 C5 rest | bar-rest | bar-rest | pp (1/1 C5!down | D5 | E5) | F5 |||
//! ```
//!
//! ## What it proposes
//! The cheapest way to take the entry on the other bow (start, player's choice), with what it costs.
//!
//! ## What it cannot know
//! That an experienced player sets the bow down silently anywhere. Entries with an accent are left out, and those without
//! a bow mark: out of silence players choose the bow by themselves, and begin up.
//!
//! ## Sources
//! Weight on the string falls about 6:1 from frog to tip (arithmetic on a bow's mass and balance); soft entries
//! towards the tip: Freund & Cutler 2024.

use arcata_bow::Join;

use crate::mechanics::dynamic_name;
use crate::other_bow::with_bow;
use crate::other_notation::WishedNote;
use crate::taste::Otherwise;
use crate::words::bow;
use crate::{Card, Draft, Family, Findings, Piece, Reads, Rule, Severity};
use arcata_languages::{Argument, Saying};

/// See the module's page.
#[derive(Debug)]
pub struct SoftEntryAtFrog;

impl Rule for SoftEntryAtFrog {
    const CARD: Card = Card {
        id: "soft-entry-at-frog",
        family: Family::Direction,
        gravest: Severity::D,
        lightest: Severity::D,
        reads: &[Reads::Strokes, Reads::Bows, Reads::BowMarks],
        since: "0.1",
        title: "A soft entry where the bow is heavy",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        let near = piece.thresholds().soft_entry_at_frog;
        let heavy: Vec<(usize, usize)> = piece
            .planned_strokes()
            .filter(|(_, _, stroke, planned)| {
                stroke.join == Join::Entry
                    && stroke.printed.is_some()
                    && stroke.level_start.0 <= SOFT
                    && stroke.emphasis.accent == 0
                    && planned.start < near
            })
            .filter(|(line, index, ..)| !found.is_choice((*line, *index), Otherwise::Begins(near, 1000)))
            .map(|(line, index, ..)| (line, index))
            .collect();
        for (line, index) in heavy {
            found.report(bump(piece, found, line, index));
        }
    }
}

/// Pianissimo, hundredths of a dynamic step (rule of thumb).
const SOFT: i32 = arcata_bow::Loudness::PP.0;

fn bump(piece: &Piece<'_>, found: &Findings<'_>, at: usize, index: usize) -> Draft {
    let stroke = &piece.lines[at].strokes[index];
    let planned = piece.planned(at)[index];
    let draft = found.at_stroke(Severity::D, at, index);
    let sentence = Saying::new("say-soft-entry-at-frog")
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
        .cause("soft");
    with_bow(piece, draft, (at, index), planned.direction.other(), ("entry", WishedNote::Begins))
}
