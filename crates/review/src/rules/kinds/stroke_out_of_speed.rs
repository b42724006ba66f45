//! # A named stroke at a speed it does not have
//!
//! ## What it finds
//! Four or more even single strokes under a word that names how they are bowed, clearly faster or slower than
//! that stroke can go (B): martelé too fast for the bow to stop and bite; spiccato, or off the string, faster than
//! any bow bounces; détaché, or on the string, faster than the instrument speaks; sautillé too slow for the
//! bow to bounce by itself.
//!
//! ## Why it matters
//! The players have to give up either the word or the tempo, and a section gives up both.
//!
//! ## Example
//! ```music
//! quarter=132
//! violin: f "martelé" 1/16 C5 D5 E5 F5 G5 F5 E5 D5 1/4 C5 rest | 1/1 rest |||
//! ```
//!
//! ## What it proposes
//! For sautillé that is too slow, to write spiccato instead; for martelé that is too fast, to take the word out
//! (word, writer's choice). For what no bow does, fewer strokes: slurs in twos (join, writer's choice).
//!
//! ## What it cannot know
//! Where between spiccato and sautillé a bow begins to bounce by itself: spiccato is used for both, and so
//! taken for both. Slow spiccato is a lifted stroke and slow détaché is broad; neither is reported. A word
//! holds until another about the stroke, arco, pizz. or ord. A tenth more than the limit is allowed.
//!
//! ## Sources
//! Dounis as told by Klopčič, JAVS Fall 2023 p. 52 (spiccato gives way to sautillé at 6.7 notes a second); ten
//! recordings of Paganini's Caprice 5, open data (fastest sautillé); martelé and détaché from memory.

use arcata_bow::Line;
use arcata_languages::{Argument, Saying};
use arcata_score::{Instruction, Instrument, Meaning, Moment, Part};

use crate::attack_marks::{StrokeWords, stroke_name};
use crate::change::{Change, direction_before, take_out};
use crate::speed::{EvenRun, even_runs, said_rate};
use crate::under_slur::note;
use crate::{Card, Draft, Family, Findings, Grade, Piece, ProposalKind, Reads, Rule, Severity};

/// See the module's page.
#[derive(Debug)]
pub struct StrokeOutOfSpeed;

impl Rule for StrokeOutOfSpeed {
    const CARD: Card = Card {
        id: "stroke-out-of-speed",
        family: Family::Kinds,
        gravest: Severity::B,
        lightest: Severity::B,
        reads: &[Reads::Slurs, Reads::Strokes, Reads::BowMarks, Reads::Words],
        since: "0.1",
        title: "A named stroke at a speed it does not have",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        for (at, line) in piece.lines.iter().enumerate() {
            let Some(part) = piece.score.parts.get(line.part) else { continue };
            let words = StrokeWords::new(part, line.staff);
            for run in even_runs(line, RUN) {
                // The word over the end of a run holds for the strokes from there on.
                let Some((since, word)) = words.at(line.strokes[run.strokes.start].onset) else { continue };
                if let Some(limit) = Limit::passed(piece, line, word, run.rate) {
                    found.report(out_of_speed(piece, found, at, &run, (since, word), limit));
                }
            }
        }
    }
}

/// So many even strokes show what is meant; fewer may be a turn or an upbeat (rule of thumb).
const RUN: usize = 4;

/// A limit of a stroke that is passed, strokes in 100 s.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Limit {
    Slowest(i64),
    Fastest(i64),
}

impl Limit {
    /// The limit that a speed passes by more than a tenth.
    fn passed(piece: &Piece<'_>, line: &Line, word: Meaning, rate: i64) -> Option<Self> {
        let known = |name: &str| piece.profile.rate(name);
        let separate = match line.instrument {
            Instrument::Cello => "detache_most_cello",
            Instrument::Bass => "detache_most_bass",
            _ => "detache_most",
        };
        let most = match word {
            Meaning::Martele => known("martele_most"),
            Meaning::Spiccato | Meaning::OffString | Meaning::Sautille => known("sautille_most"),
            Meaning::Detache | Meaning::OnString => known(separate),
            _ => None,
        };
        let least = known("sautille_least").filter(|_| word == Meaning::Sautille);
        let above = most.filter(|most| rate * 10 > most * 11).map(Self::Fastest);
        above.or_else(|| least.filter(|least| rate * 10 < least * 9).map(Self::Slowest))
    }
}

fn out_of_speed(
    piece: &Piece<'_>,
    found: &Findings<'_>,
    at: usize,
    run: &EvenRun,
    (since, word): (Moment, Meaning),
    limit: Limit,
) -> Draft {
    let line = &piece.lines[at];
    let draft = found.at_stroke(Severity::B, at, run.strokes.start);
    let name = stroke_name(word);
    let sentence = match limit {
        Limit::Fastest(most) => Saying::new("say-stroke-too-fast")
            .with("at", piece.where_is(draft.place()))
            .choosing("stroke", name)
            .with("rate", said_rate(run.rate))
            .with("limit", said_rate(most)),
        Limit::Slowest(least) => Saying::new("say-stroke-too-slow")
            .with("at", piece.where_is(draft.place()))
            .choosing("stroke", name)
            .with("rate", said_rate(run.rate))
            .with("limit", said_rate(least)),
    };
    let draft = draft
        .say(sentence)
        .evidence("evidence-strokes-a-second", Argument::Thousandths(run.rate * 10), "")
        .cause(format!("{name}/{since:?}"));
    let part = &piece.score.parts[line.part];
    let printed = part.instructions.iter().rfind(|said| said.meaning == word && said.place.at == since);
    let draft = match (word, printed) {
        (Meaning::Sautille, Some(printed)) if matches!(limit, Limit::Slowest(_)) => draft.propose_change(
            Grade::WritersChoice,
            ProposalKind::Word,
            Saying::new("offer-write-spiccato-instead"),
            instead(part, line, since, printed),
        ),
        (Meaning::Martele, Some(printed)) => draft.propose_change(
            Grade::WritersChoice,
            ProposalKind::Word,
            Saying::new("offer-word-out").quoting("word", printed.text.trim()),
            alone(part, printed),
        ),
        _ => draft.propose(Grade::WritersChoice, ProposalKind::Join, Saying::new("offer-slur-in-twos")),
    };
    piece.with_tempo_assumption(draft, line)
}

/// Takes a text out that says nothing else.
fn alone(part: &Part, said: &Instruction) -> Vec<Change> {
    let meanings = part.instructions.iter().filter(|other| other.place.node == said.place.node).count();
    if meanings == 1 { vec![take_out(&said.place)] } else { Vec::new() }
}

/// The word out, and spiccato over the first note from there on.
fn instead(part: &Part, line: &Line, since: Moment, said: &Instruction) -> Vec<Change> {
    let mut changes = alone(part, said);
    let first = line.strokes.iter().find(|stroke| stroke.onset >= since);
    let first = first.and_then(|stroke| note(part, *stroke.notes.first()?));
    match first {
        Some(first) if !changes.is_empty() => {
            changes.push(direction_before(first, part.staves, "above", "<words>spiccato</words>"));
            changes
        }
        _ => Vec::new(),
    }
}
