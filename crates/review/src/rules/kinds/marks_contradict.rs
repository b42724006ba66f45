//! # Marks that contradict each other
//!
//! ## What it finds
//! Two signs on one note that ask for opposite things: a dash with a wedge, a dash with a spiccato sign, a dot
//! with a wedge. Two words at one place that do: on the string with off the string, spiccato or a throw; legato
//! with spiccato, martelé or staccato; at the frog with at the tip; sul ponticello with sul tasto; every note
//! down-bow with every note up-bow. Legato in words over notes with dots and no slur (B).
//!
//! ## Why it matters
//! Each player obeys one of the two, and the section plays both until somebody asks.
//!
//! ## Example
//! ```music
//! quarter=96
//! violin: mf "on the string" "spiccato" 1/8 C5 D5 E5 F5 1/2 G5 | 1/4 C5!-!' 3/4 rest |||
//! ```
//!
//! ## What it proposes
//! To take either of the two out (unmark for signs, word for words; writer's choice).
//!
//! ## What it cannot know
//! Which of the two was meant. A dash with a dot is a sign of its own and left alone; so are dots under a slur
//! with legato (they pulse), two words in one text, which often lead from one to the other, and words for two
//! voices of one staff.
//!
//! ## Sources
//! Common practice.

use std::collections::BTreeMap;

use arcata_languages::Saying;
use arcata_score::{Articulation, ChordRole, Instruction, Meaning, Moment, Note, NoteId, NoteKind, Part};
use arcata_xml::Tag;

use crate::attack_marks::{SHORT, is_dotted, take_marks};
use crate::change::{Change, take_out};
use crate::under_slur::{main_notes, solid_slurs};
use crate::{Card, Draft, Family, Findings, Grade, Piece, ProposalKind, Reads, Rule, Severity};

/// See the module's page.
#[derive(Debug)]
pub struct MarksContradict;

impl Rule for MarksContradict {
    const CARD: Card = Card {
        id: "marks-contradict",
        family: Family::Kinds,
        gravest: Severity::B,
        lightest: Severity::B,
        reads: &[Reads::Slurs, Reads::Marks, Reads::Words],
        since: "0.1",
        title: "Marks that contradict each other",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        for (part_index, part) in piece.score.parts.iter().enumerate() {
            if !part.instrument.is_bowed() {
                continue;
            }
            let notes = (0u32..).map(NoteId).zip(&part.notes).filter(|(_, note)| is_played(note));
            for (id, note) in notes {
                for signs in SIGNS.iter().filter(|signs| signs.stand_on(note)) {
                    found.report(on_note(piece, found, part_index, id, signs));
                }
            }
            words(piece, found, part_index);
            legato_with_dots(piece, found, part_index);
        }
    }
}

fn is_played(note: &Note) -> bool {
    note.kind != NoteKind::Cue && note.chord == ChordRole::Main && !note.pitch.is_rest()
}

/// Two signs that do not go together.
struct Signs {
    marks: [Articulation; 2],
    tags: [Tag; 2],
    names: [&'static str; 2],
}

const SIGNS: [Signs; 3] = [
    Signs {
        marks: [Articulation::Tenuto, Articulation::Staccatissimo],
        tags: [Tag::TENUTO, Tag::STACCATISSIMO],
        names: ["dash", "wedge"],
    },
    Signs {
        marks: [Articulation::Tenuto, Articulation::Spiccato],
        tags: [Tag::TENUTO, Tag::SPICCATO],
        names: ["dash", "spiccato"],
    },
    Signs {
        marks: [Articulation::Staccato, Articulation::Staccatissimo],
        tags: [Tag::STACCATO, Tag::STACCATISSIMO],
        names: ["dot", "wedge"],
    },
];

impl Signs {
    fn stand_on(&self, note: &Note) -> bool {
        self.marks.iter().all(|mark| note.articulations.has(*mark))
    }
}

fn on_note(piece: &Piece<'_>, found: &Findings<'_>, part_index: usize, id: NoteId, signs: &Signs) -> Draft {
    let note = piece.score.parts[part_index].note(id);
    let draft = found.at_notes(Severity::B, part_index, &[id]);
    let [first, second] = signs.names;
    let sentence = Saying::new("say-signs-contradict")
        .with("at", piece.where_is(draft.place()))
        .choosing("first", first)
        .choosing("second", second);
    let mut draft = draft.say(sentence).cause(format!("{first}/{second}"));
    for (name, tag) in signs.names.iter().zip(signs.tags) {
        let changes = take_marks(piece, note, &[tag]);
        let sentence = Saying::new("offer-sign-out").choosing("sign", name);
        draft = draft.propose_change(Grade::WritersChoice, ProposalKind::Unmark, sentence, changes);
    }
    draft
}

/// Words that do not go together.
const WORDS: [(Meaning, Meaning); 14] = [
    (Meaning::OnString, Meaning::OffString),
    (Meaning::OnString, Meaning::Spiccato),
    (Meaning::OnString, Meaning::Thrown),
    (Meaning::OffString, Meaning::Legato),
    (Meaning::OffString, Meaning::Martele),
    (Meaning::Legato, Meaning::Spiccato),
    (Meaning::Legato, Meaning::Martele),
    (Meaning::Legato, Meaning::StaccatoWord),
    (Meaning::Legato, Meaning::Sautille),
    (Meaning::TenutoWord, Meaning::Spiccato),
    (Meaning::AtFrog, Meaning::AtTip),
    (Meaning::SulPonticello, Meaning::SulTasto),
    (Meaning::AllDownBows, Meaning::AllUpBows),
    (Meaning::Martele, Meaning::Spiccato),
];

/// Words of one place that contradict each other.
fn words(piece: &Piece<'_>, found: &mut Findings<'_>, part_index: usize) {
    let part = &piece.score.parts[part_index];
    let mut at_once: BTreeMap<(Moment, u8), Vec<&Instruction>> = BTreeMap::new();
    for said in &part.instructions {
        at_once.entry((said.place.at, said.place.staff)).or_default().push(said);
    }
    for said in at_once.values().filter(|said| said.len() > 1) {
        for (one, other) in WORDS {
            let with = |meaning| said.iter().find(|said| said.meaning == meaning);
            let (Some(first), Some(second)) = (with(one), with(other)) else { continue };
            let voices = first.place.voice.zip(second.place.voice);
            let apart = voices.is_some_and(|(one, other)| one != other);
            if !apart && first.place.node != second.place.node {
                let draft = two_words(piece, found, part_index, [first, second]);
                found.report(draft);
            }
        }
    }
}

fn two_words(piece: &Piece<'_>, found: &Findings<'_>, part_index: usize, said: [&Instruction; 2]) -> Draft {
    let part = &piece.score.parts[part_index];
    let place = &said[0].place;
    let draft = found.at(Severity::B, Some(part_index), place.bar, place.at);
    let [first, second] = said.map(|said| said.text.trim());
    let sentence = Saying::new("say-words-contradict")
        .quoting("first", first)
        .quoting("second", second)
        .with("at", piece.where_is(draft.place()));
    let mut draft = draft.say(sentence);
    for (said, name) in said.iter().zip([first, second]) {
        let sentence = Saying::new("offer-word-out").quoting("word", name);
        draft = draft.propose_change(Grade::WritersChoice, ProposalKind::Word, sentence, without(part, said));
    }
    draft
}

/// Takes a text out that says nothing else.
fn without(part: &Part, said: &Instruction) -> Vec<Change> {
    let meanings = part.instructions.iter().filter(|other| other.place.node == said.place.node).count();
    if meanings == 1 { vec![take_out(&said.place)] } else { Vec::new() }
}

/// "legato" over a note with a dot that no slur is over.
fn legato_with_dots(piece: &Piece<'_>, found: &mut Findings<'_>, part_index: usize) {
    let part = &piece.score.parts[part_index];
    for said in part.instructions.iter().filter(|said| said.meaning == Meaning::Legato) {
        let here = |note: &Note| {
            note.onset == said.place.at && (said.place.staff == 0 || said.place.staff == note.staff)
        };
        let dotted = (0u32..)
            .map(NoteId)
            .zip(&part.notes)
            .find(|(_, note)| is_played(note) && here(note) && is_dotted(note) && !is_slurred(part, note));
        if let Some((id, note)) = dotted {
            let draft = found.at_notes(Severity::B, part_index, &[id]);
            let word = said.text.trim();
            let sentence = Saying::new("say-legato-over-dots")
                .quoting("word", word)
                .with("at", piece.where_is(draft.place()));
            let draft = draft
                .say(sentence)
                .propose_change(
                    Grade::WritersChoice,
                    ProposalKind::Word,
                    Saying::new("offer-word-out").quoting("word", word),
                    without(part, said),
                )
                .propose_change(
                    Grade::WritersChoice,
                    ProposalKind::Unmark,
                    Saying::new("offer-dots-out"),
                    dots_from(piece, part, note),
                );
            found.report(draft);
        }
    }
}

/// Takes the dots out of a run of notes with dots.
fn dots_from(piece: &Piece<'_>, part: &Part, first: &Note) -> Vec<Change> {
    let later = main_notes(part, first.voice).filter(|(_, note)| note.onset >= first.onset);
    later
        .map(|(_, note)| note)
        .take_while(|note| is_dotted(note))
        .flat_map(|note| take_marks(piece, note, &SHORT))
        .collect()
}

fn is_slurred(part: &Part, note: &Note) -> bool {
    solid_slurs(part).any(|(_, start, end)| {
        start.voice == note.voice && start.onset <= note.onset && note.onset <= end.onset
    })
}
