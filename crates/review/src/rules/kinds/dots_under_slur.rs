//! # Dots under a slur that can be read in two ways
//!
//! ## What it finds
//! Three or more notes of moving pitch with dots under one slur, at a speed at which two strokes answer to the
//! sign, and no word that says which (B): portato or slurred staccato, where the notes come neither slowly nor
//! quickly; slurred staccato or a throw, where they come fast and are few enough for one throw. The sentence says
//! which is the likelier at this speed. One finding for each part and pair of readings.
//!
//! ## Why it matters
//! The three strokes share one sign. In one the bow hardly stops, in the next it stops after every note, in
//! the third it leaves the string; a section that has not been told plays two of them at once.
//!
//! ## Example
//! ```music
//! quarter=108
//! violin: mf (1/8 C5!. D5!. E5!. F5!.) 1/2 G5 | (1/8 F5!. E5!. D5!. C5!.) 1/2 C5 |||
//! ```
//!
//! ## What it proposes
//! To say it in a word where such slurs begin (word, writer's choice): "staccato" for the stopped bow, "gettato"
//! for the throw. To put dashes in place of the dots where a portato is meant (word, writer's choice).
//!
//! ## What it cannot know
//! What a style takes for granted. Slow notes, repeated notes (the old sign of a pulsing bow), wedges, dots with
//! dashes and groups of two are read in one way only and left alone; so is what follows a word about the stroke
//! until the next arco, pizz. or ord.
//!
//! ## Sources
//! That one sign stands for several strokes: Braine 1920. The speeds of the profile: Guettler 1997, as quoted,
//! for throws; from memory for portato and slurred staccato.

use std::collections::BTreeMap;

use arcata_bow::{Line, Stroke, StrokeKind};
use arcata_languages::{Argument, Saying};
use arcata_score::{Articulation, Moment, Note, NoteId, NoteKind, Part};
use arcata_xml::Tag;

use crate::attack_marks::{StrokeWords, is_dotted, take_marks};
use crate::change::{Change, direction_before};
use crate::speed::{rate_of, said_rate};
use crate::under_slur::note;
use crate::{Card, Draft, Family, Findings, Grade, Piece, ProposalKind, Reads, Rule, Severity};

/// See the module's page.
#[derive(Debug)]
pub struct DotsUnderSlur;

impl Rule for DotsUnderSlur {
    const CARD: Card = Card {
        id: "dots-under-slur",
        family: Family::Kinds,
        gravest: Severity::B,
        lightest: Severity::B,
        reads: &[Reads::Slurs, Reads::Strokes, Reads::Marks, Reads::Words],
        since: "0.1",
        title: "Dots under a slur that can be read in two ways",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        for (at, line) in piece.lines.iter().enumerate() {
            let Some(part) = piece.score.parts.get(line.part) else { continue };
            let words = StrokeWords::new(part, line.staff);
            // The first slur of each stretch between two words; a word there speaks for the rest.
            let mut first: BTreeMap<(Moment, SpeedLeaves), NoteId> = BTreeMap::new();
            for (index, stroke) in line.strokes.iter().enumerate() {
                if words.at(stroke.onset).is_some() {
                    continue;
                }
                let Some((doubt, likely)) = readings(piece, part, line, stroke) else { continue };
                let since = words.last_change(stroke.onset);
                let leads = *first.entry((since, doubt)).or_insert(stroke.notes[0]);
                found.report(told(piece, found, (at, index), doubt, likely, leads));
            }
        }
    }
}

/// What a group of dots under a slur can be.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
enum DotsMean {
    Portato,
    Staccato,
    Thrown,
}

impl DotsMean {
    fn name(self) -> &'static str {
        match self {
            Self::Portato => "portato",
            Self::Staccato => "staccato",
            Self::Thrown => "thrown",
        }
    }
}

/// The two readings that a speed leaves.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
enum SpeedLeaves {
    PortatoOrStaccato,
    StaccatoOrThrown,
}

impl SpeedLeaves {
    fn readings(self) -> [DotsMean; 2] {
        match self {
            Self::PortatoOrStaccato => [DotsMean::Portato, DotsMean::Staccato],
            Self::StaccatoOrThrown => [DotsMean::Staccato, DotsMean::Thrown],
        }
    }
}

/// The readings of a stroke and the likelier one, when there are two.
fn readings(piece: &Piece<'_>, part: &Part, line: &Line, stroke: &Stroke) -> Option<(SpeedLeaves, DotsMean)> {
    if stroke.kind != StrokeKind::Pulsed || stroke.note_count < 3 || !is_open(part, stroke) {
        return None;
    }
    let rate = rate_of(stroke)?;
    let limit = |name| piece.profile.rate(name);
    let (portato, stopped) = (limit("portato_most")?, limit("slurred_staccato_least")?);
    let (stopped_most, thrown) = (limit("slurred_staccato_most")?, limit("thrown_least")?);
    let few = i64::from(stroke.note_count) <= piece.profile.thresholds.thrown_notes.value;
    // A bass section throws no runs.
    let throws = few && line.instrument != arcata_score::Instrument::Bass;
    let nearer = |low: i64, high: i64, slow: DotsMean, fast: DotsMean| {
        if rate * 2 <= low + high { slow } else { fast }
    };
    if (stopped..=portato).contains(&rate) {
        let likely = nearer(stopped, portato, DotsMean::Portato, DotsMean::Staccato);
        Some((SpeedLeaves::PortatoOrStaccato, likely))
    } else if throws && (thrown..=stopped_most).contains(&rate) {
        let likely = nearer(thrown, stopped_most, DotsMean::Staccato, DotsMean::Thrown);
        Some((SpeedLeaves::StaccatoOrThrown, likely))
    } else {
        None
    }
}

/// Whether every note of a stroke has a dot and nothing else that tells the stroke, the pitch moves, and no rests stand between:
/// those tell it.
fn is_open(part: &Part, stroke: &Stroke) -> bool {
    let sounding = |note: &&Note| note.kind == NoteKind::Ordinary && !note.pitch.is_rest();
    let notes = || stroke.notes.iter().filter_map(|id| note(part, *id)).filter(sounding);
    let plain_dot = |note: &Note| {
        note.articulations.has(Articulation::Staccato)
            && ![
                Articulation::Tenuto,
                Articulation::DetachedLegato,
                Articulation::Staccatissimo,
                Articulation::Spiccato,
            ]
            .into_iter()
            .any(|mark| note.articulations.has(mark))
    };
    let main = || notes().filter(|note| note.chord == arcata_score::ChordRole::Main);
    // One repeated pair in the middle does not make a repeated note of a run.
    let moves = main().collect::<Vec<_>>().windows(2).filter(|pair| pair[0].pitch != pair[1].pitch).count();
    let joined =
        main().collect::<Vec<_>>().windows(2).all(|pair| pair[0].onset + pair[0].length >= pair[1].onset);
    joined && main().all(plain_dot) && moves * 2 > usize::from(stroke.note_count.saturating_sub(1))
}

fn told(
    piece: &Piece<'_>,
    found: &Findings<'_>,
    (at, index): (usize, usize),
    doubt: SpeedLeaves,
    likely: DotsMean,
    leads: NoteId,
) -> Draft {
    let line = &piece.lines[at];
    let stroke = &line.strokes[index];
    let draft = found.at_stroke(Severity::B, at, index);
    let [slower, faster] = doubt.readings();
    let rate = rate_of(stroke).unwrap_or(0);
    let sentence = Saying::new("say-dots-under-slur")
        .with("count", i64::from(stroke.note_count))
        .with("at", piece.where_is(draft.place()))
        .with("rate", said_rate(rate))
        .choosing("slower", slower.name())
        .choosing("faster", faster.name())
        .choosing("likely", likely.name());
    let draft = draft
        .say(sentence)
        .evidence("evidence-notes-a-second", Argument::Thousandths(rate * 10), "")
        .cause(format!("{doubt:?}"));
    let mut draft = piece.with_tempo_assumption(draft, line);
    let mut offered = [slower, faster];
    if likely == faster {
        offered.reverse();
    }
    for reading in offered {
        draft = offer(piece, draft, line, stroke, reading, leads);
    }
    draft
}

/// A remedy for a reading.
fn offer(
    piece: &Piece<'_>,
    draft: Draft,
    line: &Line,
    stroke: &Stroke,
    reading: DotsMean,
    leads: NoteId,
) -> Draft {
    let part = &piece.score.parts[line.part];
    let word = |word: &str| {
        note(part, leads)
            .map(|note| direction_before(note, part.staves, "above", &format!("<words>{word}</words>")))
    };
    let (sentence, changes) = match reading {
        DotsMean::Portato => (Saying::new("offer-dashes-for-portato"), dashes(piece, part, stroke)),
        DotsMean::Staccato => (Saying::new("offer-write-staccato"), word("staccato").into_iter().collect()),
        DotsMean::Thrown => (Saying::new("offer-write-gettato"), word("gettato").into_iter().collect()),
    };
    draft.propose_change(Grade::WritersChoice, ProposalKind::Word, sentence, changes)
}

fn dashes(piece: &Piece<'_>, part: &Part, stroke: &Stroke) -> Vec<Change> {
    let dotted = stroke.notes.iter().filter_map(|id| note(part, *id)).filter(|note| is_dotted(note));
    dotted
        .flat_map(|note| {
            let mut changes = take_marks(piece, note, &[Tag::STACCATO]);
            if !changes.is_empty() {
                let xml = "<articulations><tenuto/></articulations>".to_owned();
                changes.push(Change::Notation { note: note.node, xml });
            }
            changes
        })
        .collect()
}
