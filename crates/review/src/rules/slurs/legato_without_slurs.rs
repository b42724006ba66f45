//! # Legato without a slur
//!
//! ## What it finds
//! The word legato over eight moving notes or more, or over all that comes until another word about the stroke, without one
//! slur among them or shortly before. And a movement in which no string part has a slur, a bow mark, a sign on a note or a
//! word about the stroke, though one of them sings: sixteen notes or more, mostly by step, and slow enough to be slurred (told
//! once).
//!
//! ## Why it matters
//! Legato on strings is written with slurs: without them every note has its own bow, and each stand will join notes as it
//! likes. Music that is written without a slur looks as if nothing were wrong with its slurs, and leaves the work undone.
//!
//! ## Example
//! ```music
//! quarter=72
//! cello: p "legato" 1/4 C3 D3 E3 F3 | G3 F3 E3 D3 | E3 F3 G3 A3 | 1/1 G3 |||
//! ```
//!
//! ## What it proposes
//! To write the slurs, or to say that every note has its own bow (word, writer's choice): for the writer's hand.
//!
//! ## What it cannot know
//! Whether separate bows are meant, as in much old music: a word or a sign anywhere in the movement that speaks of the stroke is
//! taken for an answer. Slurs in the four bars before the word count as a model that goes on.
//!
//! ## Sources
//! Common practice; what counts as singing is a rule of thumb.

use std::ops::RangeInclusive;

use arcata_languages::{Argument, Saying};
use arcata_score::{Instruction, Meaning, Moment, Note, NoteId, Part, Score};

use crate::attack_marks::is_for;
use crate::under_slur::{is_main, tied_from_before};
use crate::ways::WaysOfPlaying;
use crate::{Card, Draft, Family, Findings, Grade, Piece, ProposalKind, Reads, Rule, Severity};

/// See the module's page.
#[derive(Debug)]
pub struct LegatoWithoutSlurs;

/// Fewer notes under the word are an ending (rule of thumb).
const UNDER_WORD: usize = 8;
/// A slur so many bars before the word is a model for what follows (rule of thumb).
const MODEL_BARS: u32 = 4;
/// Fewer notes of a movement are a scrap (rule of thumb).
const SINGING: usize = 16;
/// So many of its moves, hundredths, go by step or third (rule of thumb).
const BY_STEP: usize = 70;
/// A step, or a third, cents (rule of thumb).
const STEP: i32 = 400;
/// Faster notes are figures, microseconds a note (rule of thumb).
const SLOW: i64 = 250_000;

impl Rule for LegatoWithoutSlurs {
    const CARD: Card = Card {
        id: "legato-without-slurs",
        family: Family::Slurs,
        gravest: Severity::C,
        lightest: Severity::C,
        reads: &[Reads::Slurs, Reads::Ties, Reads::Strokes, Reads::Marks, Reads::Words],
        since: "0.1",
        title: "Legato without a slur",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        let score = piece.score;
        for movement in score.movements.iter().map(|movement| movement.bars.clone()) {
            let bowed = || score.parts.iter().enumerate().filter(|(_, part)| part.instrument.is_bowed());
            for (part, _) in bowed() {
                for draft in under_the_word(piece, found, part, &movement) {
                    found.report(draft);
                }
            }
            if bowed().all(|(_, part)| says_nothing(part, &movement)) {
                let sings = bowed().find_map(|(part, _)| Some((part, sings(piece, part, &movement)?)));
                if let Some((part, (first, count))) = sings {
                    let draft = bare(piece, found, part, first, count);
                    found.report(draft);
                }
            }
        }
    }
}

/// The notes of a part in some bars that are bowed one by one, as far as signs go.
fn moving<'a>(score: &Score, part: &'a Part, bars: &RangeInclusive<u32>) -> Vec<(NoteId, &'a Note)> {
    let ways = WaysOfPlaying::new(score, part);
    let from = part.notes.partition_point(|note| note.bar < *bars.start());
    let ids = (0u32..).map(NoteId).zip(&part.notes).skip(from);
    let here = ids.take_while(|(_, note)| note.bar <= *bars.end());
    here.filter(|(id, note)| {
        is_main(note) && !note.pitch.is_rest() && !tied_from_before(note) && ways.is_plain(*id)
    })
    .collect()
}

/// Words about strokes that end what legato says.
fn ends_legato(meaning: Meaning) -> bool {
    use Meaning::{
        AsItComes, ColLegno, ColLegnoBattuto, Detache, FreeBowing, Martele, OffString, OnString, Pizzicato,
        Sautille, Spiccato, StaccatoWord, Thrown,
    };
    matches!(
        meaning,
        AsItComes
            | ColLegno
            | ColLegnoBattuto
            | Detache
            | FreeBowing
            | Martele
            | OffString
            | OnString
            | Pizzicato
            | Sautille
            | Spiccato
            | StaccatoWord
            | Thrown
    )
}

/// Places where legato is said and not written.
fn under_the_word(
    piece: &Piece<'_>,
    found: &Findings<'_>,
    index: usize,
    movement: &RangeInclusive<u32>,
) -> Vec<Draft> {
    let part = &piece.score.parts[index];
    let words = part.instructions.iter().filter(|said| movement.contains(&said.place.bar));
    let legato = words.filter(|said| said.meaning == Meaning::Legato && !said.text.is_empty());
    let notes =
        if legato.clone().next().is_some() { moving(piece.score, part, movement) } else { Vec::new() };
    legato.filter_map(|said| not_written(piece, found, (index, &notes), said)).collect()
}

fn not_written(
    piece: &Piece<'_>,
    found: &Findings<'_>,
    (index, notes): (usize, &[(NoteId, &Note)]),
    said: &Instruction,
) -> Option<Draft> {
    let part = &piece.score.parts[index];
    let staff = |note: &Note| said.place.staff == 0 || part.staves <= 1 || note.staff == said.place.staff;
    let mut later = part.instructions.iter().filter(|other| other.place.at > said.place.at);
    let end = later.find(|other| ends_legato(other.meaning) && is_for(part, other, said.place.staff.max(1)));
    let until = end.map_or(piece.score.end(), |end| end.place.at);
    let under: Vec<&(NoteId, &Note)> = notes
        .iter()
        .filter(|(_, note)| (said.place.at..until).contains(&note.onset) && staff(note))
        .collect();
    let first = under.first()?;
    let model = said.place.bar.saturating_sub(MODEL_BARS);
    let from = piece.score.bars.get(model as usize).map_or(Moment::START, |bar| bar.start);
    if under.len() < UNDER_WORD || has_slur(part, from, until) {
        return None;
    }
    let draft = found.at_notes(Severity::C, index, &[first.0]);
    let sentence = Saying::new("say-legato-without-slurs")
        .with("at", piece.where_is(draft.place()))
        .with("count", under.len());
    Some(remedies(draft.say(sentence), under.len()).cause("legato"))
}

/// Whether a slur of any kind touches the time between two moments.
fn has_slur(part: &Part, from: Moment, until: Moment) -> bool {
    let at = |id: NoteId| part.notes.get(id.0 as usize).map(|note| note.onset);
    part.slurs.iter().any(|slur| {
        at(slur.start).is_some_and(|start| start < until) && at(slur.end).is_some_and(|end| end >= from)
    }) || part.open_slurs.iter().filter_map(|slur| at(slur.note)).any(|note| (from..until).contains(&note))
}

/// Whether a part has no slur in a movement, no bow mark, no sign on a note and no word about the stroke.
fn says_nothing(part: &Part, movement: &RangeInclusive<u32>) -> bool {
    let from = part.notes.partition_point(|note| note.bar < *movement.start());
    let mut here = part.notes[from..].iter().take_while(|note| note.bar <= *movement.end());
    let signed = here.any(|note| note.bow_mark.is_some() || !note.articulations.is_empty());
    let mut words = part.instructions.iter().filter(|said| movement.contains(&said.place.bar));
    let worded = words.any(|said| ends_legato(said.meaning) || said.meaning == Meaning::Legato);
    let at = |id: NoteId| part.notes.get(id.0 as usize).is_some_and(|note| movement.contains(&note.bar));
    let slurred =
        part.slurs.iter().any(|slur| at(slur.start)) || part.open_slurs.iter().any(|slur| at(slur.note));
    !signed && !worded && !slurred
}

/// The first note of a part that sings, and how many there are.
fn sings(piece: &Piece<'_>, part: usize, movement: &RangeInclusive<u32>) -> Option<(NoteId, usize)> {
    let reading = piece.reading?;
    let notes = moving(piece.score, &piece.score.parts[part], movement);
    let moves = notes.windows(2).filter_map(|pair| Some(pair[1].1.pitch.cents()? - pair[0].1.pitch.cents()?));
    let moves: Vec<i32> = moves.filter(|cents| *cents != 0).collect();
    let near = moves.iter().filter(|cents| cents.abs() <= STEP).count();
    let time: i64 = notes
        .iter()
        .map(|(_, note)| reading.tempo.between(note.onset, note.onset + note.length).micros)
        .sum();
    let count = notes.len();
    let slow = i64::try_from(count).is_ok_and(|count| time >= count * SLOW);
    let singing = moves.len() >= SINGING && near * 100 >= moves.len() * BY_STEP && slow;
    singing.then_some((notes.first()?.0, count))
}

fn bare(piece: &Piece<'_>, found: &Findings<'_>, part: usize, first: NoteId, count: usize) -> Draft {
    let draft = found.at_notes(Severity::C, part, &[first]);
    let sentence = Saying::new("say-singing-line-without-slurs")
        .with("at", piece.where_is(draft.place()))
        .quoting("part", &piece.score.parts[part].name)
        .with("count", count);
    remedies(draft.say(sentence), count)
}

fn remedies(draft: Draft, count: usize) -> Draft {
    draft
        .evidence(
            "evidence-notes-without-a-slur",
            Argument::Whole(i64::try_from(count).unwrap_or(i64::MAX)),
            "",
        )
        .propose(Grade::WritersChoice, ProposalKind::Join, Saying::new("offer-write-slurs"))
        .propose(Grade::WritersChoice, ProposalKind::Word, Saying::new("offer-write-non-legato"))
}
