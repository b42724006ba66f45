//! # A part that differs from the score
//!
//! ## What it finds
//! Only where the parts are given beside the score (`arcata review SCORE --beside PART...`): bars in which a part has other
//! notes, rests or ties than the score (A), or other slurs, bow marks, signs, dynamics or words for the player (B), each kind
//! told once a part with its places; another number of bars, and a part that the score does not have (A).
//!
//! ## Why it matters
//! The conductor says what the score says, and the player has something else before him. Each such place stops a rehearsal, and
//! nobody in the room can see both.
//!
//! ## Example
//! ```music
//! quarter=96
//! violin: mf (1/4 C5 D5) E5 F5 | 1/1 G5 |||
//! beside violin: mf (1/4 C5 D5 E5) F5 | 1/2 G5 A5 |||
//! ```
//!
//! ## What it proposes
//! Nothing: which of the two is right, only the writer can say.
//!
//! ## What it cannot know
//! Cues, fingerings and page breaks belong to the part and are not looked at. Bars are taken in order: where a bar is missing in
//! the middle, all that follows differs, and the number of bars is told first. In the example a staff named "beside" stands for
//! the file of the part.
//!
//! ## Sources
//! Common practice: parts are read against the score before they go out.

use std::collections::BTreeMap;

use arcata_languages::Saying;
use arcata_score::{
    Articulations, BowDirection, DynamicKind, Length, Meaning, Note, NoteKind, Part, Pitch, Score,
};

use crate::under_slur::ends;
use crate::{Card, Family, Findings, Piece, Reads, Rule, Sees, Severity};

/// See the module's page.
#[derive(Debug)]
pub struct PartDiffersFromScore;

impl Rule for PartDiffersFromScore {
    const CARD: Card = Card {
        id: "part-differs-from-score",
        family: Family::Parts,
        gravest: Severity::A,
        lightest: Severity::B,
        reads: &[Reads::Slurs, Reads::Ties, Reads::BowMarks, Reads::Marks, Reads::Words],
        since: "0.1",
        title: "A part that differs from the score",
    };

    // A part in a file of its own holds all movements, or one.
    const SEES: Sees = Sees::WholeFile;

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        for beside in piece.beside {
            for part in &beside.score.parts {
                match own(piece.score, part) {
                    Some(index) => compare(piece, found, index, (&beside.name, &beside.score, part)),
                    None => {
                        let draft = found.at(Severity::A, None, 0, arcata_score::Moment::START);
                        let sentence = Saying::new("say-part-not-in-score")
                            .quoting("file", &beside.name)
                            .quoting("part", &part.name);
                        found.report(draft.say(sentence));
                    }
                }
            }
        }
    }
}

/// The part of the score that a part is: by name, else by abbreviation.
fn own(score: &Score, part: &Part) -> Option<usize> {
    let same = |a: &str, b: &str| !a.trim().is_empty() && a.trim().to_lowercase() == b.trim().to_lowercase();
    let by_name = score.parts.iter().position(|own| same(&own.name, &part.name));
    by_name.or_else(|| score.parts.iter().position(|own| same(&own.abbreviation, &part.abbreviation)))
}

/// What a bar holds of one kind, in an order of its own.
type Held = Vec<(Length, String)>;
/// Kinds of what is compared, the gravest first.
const KINDS: [(Severity, &str); 5] = [
    (Severity::A, "notes"),
    (Severity::B, "slurs"),
    (Severity::B, "bow-marks"),
    (Severity::B, "signs"),
    (Severity::B, "words"),
];

fn compare(
    piece: &Piece<'_>,
    found: &mut Findings<'_>,
    index: usize,
    (name, score, part): (&str, &Score, &Part),
) {
    let own = &piece.score.parts[index];
    let (in_score, in_part) = (piece.score.bars.len(), score.bars.len());
    if in_score != in_part {
        let draft = found.at(Severity::A, Some(index), 0, arcata_score::Moment::START);

        found.report(
            draft.say(
                Saying::new("say-part-has-other-bars")
                    .quoting("file", name)
                    .with("in-part", in_part)
                    .with("in-score", in_score),
            ),
        );
    }
    let (ours, theirs) = (contents(piece.score, own), contents(score, part));
    for bar in 0..in_score.min(in_part) {
        let bar = u32::try_from(bar).unwrap_or(u32::MAX);
        for (kind, (severity, what)) in KINDS.into_iter().enumerate() {
            let of =
                |held: &BTreeMap<(u32, usize), Held>| held.get(&(bar, kind)).cloned().unwrap_or_default();
            let (ours, theirs) = (of(&ours), of(&theirs));
            if ours == theirs {
                continue;
            }
            let at = first_difference(&ours, &theirs);
            let start =
                piece.score.bars.get(bar as usize).map_or(arcata_score::Moment::START, |bar| bar.start);
            let draft = found.at(severity, Some(index), bar, start + at);
            let sentence = Saying::new("say-part-differs")
                .quoting("file", name)
                .choosing("what", what)
                .with("at", piece.where_is(draft.place()));
            found.report(draft.say(sentence).cause(format!("{name}/{index}/{what}")));
        }
    }
}

/// Where in a bar two lists part.
fn first_difference(ours: &Held, theirs: &Held) -> Length {
    let pairs = ours.iter().zip(theirs).find(|(a, b)| a != b).map(|(a, b)| a.0.min(b.0));
    let longer = if ours.len() > theirs.len() { ours } else { theirs };
    let beyond = longer.get(ours.len().min(theirs.len())).map(|item| item.0);
    pairs.or(beyond).unwrap_or(Length::ZERO)
}

/// What the bars of a part hold, by bar and kind.
fn contents(score: &Score, part: &Part) -> BTreeMap<(u32, usize), Held> {
    let mut held: BTreeMap<(u32, usize), Held> = BTreeMap::new();
    let mut put = |bar: u32, kind: usize, at: Length, what: String| {
        held.entry((bar, kind)).or_default().push((at, what));
    };
    // Rests are where no note is: how they are cut up says nothing.
    for note in part.notes.iter().filter(|note| note.kind != NoteKind::Cue && !note.pitch.is_rest()) {
        let at = score.offset_in_bar(note.onset, note.bar);
        put(note.bar, 0, at, sounding(note));
        if let Some(mark) = note.bow_mark {
            put(note.bar, 2, at, if mark.direction == BowDirection::Down { "down" } else { "up" }.to_owned());
        }
        if note.articulations != Articulations::default() || note.tremolo.is_some() || note.ornament.is_some()
        {
            put(note.bar, 3, at, format!("{:?} {:?} {:?}", note.articulations, note.tremolo, note.ornament));
        }
    }
    for slur in part.slurs.iter().filter_map(|slur| ends(part, slur)) {
        let (start, end) = slur;
        let at = score.offset_in_bar(start.onset, start.bar);
        put(start.bar, 1, at, format!("{} {}", end.onset - start.onset, pitch(start.pitch)));
    }
    for dynamic in &part.dynamics {
        let at = score.offset_in_bar(dynamic.place.at, dynamic.place.bar);
        put(dynamic.place.bar, 4, at, dynamic_text(dynamic.kind));
    }
    let said =
        part.instructions.iter().filter(|said| !said.text.is_empty() && said.meaning != Meaning::Unison);
    for said in said {
        put(
            said.place.bar,
            4,
            score.offset_in_bar(said.place.at, said.place.bar),
            format!("{:?}", said.meaning),
        );
    }
    held.values_mut().for_each(|items| items.sort());
    held
}

fn sounding(note: &Note) -> String {
    let grace = if note.kind == NoteKind::Ordinary { "" } else { " grace" };
    format!("{} {} {:?}{grace}", pitch(note.pitch), note.length, note.tie.to_after)
}

fn pitch(pitch: Pitch) -> String {
    format!("{pitch:?}")
}

fn dynamic_text(kind: DynamicKind) -> String {
    format!("{kind:?}")
}
