//! # A change of playing (pizz., mute) under a slur
//!
//! ## What it finds
//! pizz., arco, con sordino or senza sordino after the first note of a slur and not after its last.
//!
//! ## Why it matters
//! A slur is one bow. The bow cannot be put away for a pizzicato, or the mute set, without leaving the
//! string, so either the slur or the word stands in the wrong place and the player must guess which.
//!
//! ## Example
//! ```music
//! quarter=80
//! violin: mf (1/4 C5 D5 "pizz." E5 F5) | "arco" 1/1 G5 |||
//! ```
//!
//! ## What it proposes
//! To end the slur before pizz., to begin it at arco, to split it at a change of mute (split, writer's
//! choice).
//!
//! ## What it cannot know
//! Whether the word only stands too early. Left-hand pizzicato under a slur is no such change and is
//! left out.
//!
//! ## Sources
//! Common practice.

use arcata_languages::Saying;
use arcata_score::{Instruction, Meaning, NoteId, Part, Slur};

use crate::split::Keep;
use crate::under_slur::{main_notes, solid_slurs};
use crate::{Card, Draft, Family, Findings, Grade, Piece, ProposalKind, Reads, Rule, Severity, split};

/// See the module's page.
#[derive(Debug)]
pub struct SlurOverChange;

impl Rule for SlurOverChange {
    const CARD: Card = Card {
        id: "slur-over-change",
        family: Family::Slurs,
        gravest: Severity::A,
        lightest: Severity::A,
        reads: &[Reads::Slurs, Reads::Words],
        since: "0.1",
        title: "A change of playing (pizz., mute) under a slur",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        for (part_index, part) in piece.score.parts.iter().enumerate() {
            if !part.instrument.is_bowed() {
                continue;
            }
            for said in part.instructions.iter().filter(|said| change_word(said.meaning).is_some()) {
                let over = solid_slurs(part).find(|(slur, ..)| covers(part, slur, said));
                if let Some((slur, ..)) = over {
                    let draft = changed(piece, found, part_index, slur, said);
                    found.report(draft);
                }
            }
        }
    }
}

fn change_word(meaning: Meaning) -> Option<&'static str> {
    match meaning {
        Meaning::Pizzicato => Some("pizz."),
        Meaning::Arco => Some("arco"),
        Meaning::MuteOn => Some("con sordino"),
        Meaning::MuteOff => Some("senza sordino"),
        _ => None,
    }
}

/// Whether the instruction stands after the slur's first note and not after its last, on its staff and,
/// where it names a voice among several, in its voice.
fn covers(part: &Part, slur: &Slur, said: &Instruction) -> bool {
    let Some((start, end)) = crate::under_slur::ends(part, slur) else { return false };
    let place = &said.place;
    let same_staff = place.staff == 0 || place.staff == start.staff;
    let same_voice = part.voices.len() < 2 || place.voice.is_none_or(|voice| voice == start.voice);
    same_staff && same_voice && start.onset < place.at && place.at <= end.onset
}

fn changed(
    piece: &Piece<'_>,
    found: &Findings<'_>,
    part_index: usize,
    slur: &Slur,
    said: &Instruction,
) -> Draft {
    let part = &piece.score.parts[part_index];
    let word = change_word(said.meaning).unwrap_or_default();
    let draft = found.at(Severity::A, Some(part_index), said.place.bar, said.place.at);
    let draft = draft.about(vec![slur.start, slur.end]);
    let sentence =
        Saying::new("say-slur-over-change").quoting("word", word).with("at", piece.where_is(draft.place()));
    let draft = draft.say(sentence);
    let keep = match said.meaning {
        Meaning::Pizzicato => Keep::Before,
        Meaning::Arco => Keep::After,
        _ => Keep::Both,
    };
    let first = first_note_from(part, slur, said);
    match first.and_then(|first| split::before_note(part_index, part, slur, first, keep)) {
        None => draft,
        Some(split) => draft.propose_change(
            Grade::WritersChoice,
            ProposalKind::Split,
            match keep {
                Keep::Before => Saying::new("offer-end-slur-before-word").quoting("word", word),
                Keep::After => Saying::new("offer-begin-slur-at-word").quoting("word", word),
                Keep::Both => Saying::new("offer-split-slur-at-word").quoting("word", word),
            },
            split.changes(piece),
        ),
    }
}

fn first_note_from(part: &Part, slur: &Slur, said: &Instruction) -> Option<NoteId> {
    let voice = crate::under_slur::note(part, slur.start)?.voice;
    main_notes(part, voice).find(|(_, note)| note.onset >= said.place.at).map(|(id, _)| id)
}
