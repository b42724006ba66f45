//! # A downbeat that no string section begins
//!
//! ## What it finds
//! A bar where something new begins (tempo, metre, rehearsal mark, or the entry of several winds after a
//! rest) and no string section begins a stroke on the downbeat, though at least two hold a note over it.
//! At a new tempo B, else C. Also runs of four or more bars on whose downbeat nobody moves (C); a bar in which
//! a section that rests on the downbeat comes in on another beat gives the pulse and breaks a run. So does a
//! stroke that falls on the same place of every bar, or of every other: a syncopation that goes on is heard as one, and
//! players count from it.
//! A slur that begins less than a beat before the downbeat and ends there leads into it, and is no silence. A metronome
//! figure that holds for no longer than a bar is a broadening in figures, and no new tempo; nor is one to which an accelerando or
//! ritardando has led: it says how far that has come.
//!
//! ## Why it matters
//! Strings show a section the beat by changing bow on it. If every section is tied or slurred over the
//! barline, the new tempo is nobody's, and the ensemble slips until the next stroke.
//!
//! ## Example
//! ```music
//! quarter=96
//! violin: mf 1/4 C5 D5 1/2 E5_ | quarter=72 1/4 E5 D5 1/2 C5 |||
//! viola: mf 1/4 E4 F4 (1/2 G4 | 1/4 A4) G4 1/2 E4 |||
//! ```
//!
//! ## What it proposes
//! To let one section change bow on the downbeat: to break the slur or tie there in the part it costs
//! least, a slur before a tie, an inner part before an outer one (split, writer's choice).
//!
//! ## What it cannot know
//! Whether the effect is wanted (a tempo that creeps in, a climax without a beat), and what a conductor will
//! give. Harmony is not read.
//!
//! ## Sources
//! Common practice.

use std::collections::BTreeSet;
use std::ops::Range;

use arcata_languages::{Argument, Saying};
use arcata_score::{Bar, Length, Meter, Moment, Note, NoteId, NoteKind, Part, Pitch, Slur, TempoKind};

use crate::beats::beat_length;
use crate::bow_starts::bow_starts;
use crate::change::Change;
use crate::split::{self, Keep};
use crate::under_slur::{main_notes, solid_slurs, tied_from_before};
use crate::untie;
use crate::{Card, Draft, Family, Findings, Grade, Piece, ProposalKind, Reads, Rule, Severity};

/// See the module's page.
#[derive(Debug)]
pub struct SilentDownbeat;

/// So many winds entering together make an entry (common practice: one may be an upbeat figure).
const WINDS_IN_AN_ENTRY: usize = 2;

impl Rule for SilentDownbeat {
    const CARD: Card = Card {
        id: "silent-downbeat",
        family: Family::Beat,
        gravest: Severity::B,
        lightest: Severity::C,
        reads: &[Reads::Slurs, Reads::Ties],
        since: "0.1",
        title: "A downbeat that no string section begins",
    };

    fn check(piece: &Piece<'_>, found: &mut Findings<'_>) {
        let strings: Vec<usize> = (0..piece.score.parts.len())
            .filter(|part| piece.score.parts[*part].instrument.is_bowed())
            .collect();
        if strings.len() < 2 {
            return;
        }
        let spoken: Vec<Spoken> =
            piece.score.bars.iter().map(|bar| spoken(piece, &strings, bar.start)).collect();
        let pulse = |bar: usize| gives_the_pulse(piece, &strings, bar);
        let moves = |bar: usize| {
            strings.iter().any(|part| moves_at(&piece.score.parts[*part], piece.score.bars[bar].start))
        };
        let unheard: Vec<bool> = (0..spoken.len())
            .map(|bar| spoken[bar] == Spoken::HeldOver && !pulse(bar) && !moves(bar))
            .collect();
        let runs = runs(&unheard, piece.thresholds().silent_downbeat_run);
        for (bar, spoken) in spoken.iter().enumerate() {
            // Within a run the run is the cause; only a new tempo is told by itself.
            let in_run = runs.iter().any(|run| run.contains(&bar));
            let draft = unspoken(piece, found, &strings, bar, *spoken);
            if let Some(draft) = draft.filter(|draft| !in_run || draft.severity() == Severity::B) {
                found.report(draft);
            }
        }
        for run in runs.iter().filter(|run| !is_syncopated_alike(piece, &strings, run)) {
            let draft = whole_run(piece, found, &strings, run);
            found.report(draft);
        }
    }
}

/// What happens on a downbeat.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Spoken {
    /// Somebody begins a note.
    Begun,
    /// Some hold, the others are silent.
    HeldOver,
    /// All are silent.
    Silent,
}

/// What one part does at a moment.
fn part_at(part: &Part, at: Moment) -> Spoken {
    let first = part.notes.partition_point(|note| note.onset < at);
    let begins = part.notes[first..]
        .iter()
        .take_while(|note| note.onset == at)
        .any(|note| is_played(note) && !tied_from_before(note) && !slurred_into(part, note, at));
    if begins {
        return Spoken::Begun;
    }
    // Notes are in order of onset, but a long one may have begun many notes ago.
    let holds = part.notes[..first]
        .iter()
        .rev()
        .take(LOOK_BACK)
        .any(|note| is_played(note) && note.onset < at && note.onset + note.length > at);
    let continues = part.notes[first..].iter().take_while(|note| note.onset == at).any(is_played);
    if holds || continues { Spoken::HeldOver } else { Spoken::Silent }
}

/// One part that holds a note over is alone, and nobody has to come in with it (rule of thumb).
const SOUNDING: usize = 2;
/// A held note is looked for among so many notes before: four voices of thirty-second notes in a bar (a limit).
const LOOK_BACK: usize = 128;

fn is_played(note: &Note) -> bool {
    note.kind == NoteKind::Ordinary && note.pitch != Pitch::Rest
}

fn slurred_into(part: &Part, note: &Note, at: Moment) -> bool {
    let beat = part.meter_at(note.bar).map_or(Length::QUARTER, beat_length);
    // A short upbeat slurred into the downbeat leads there: everybody hears where it is.
    let leads_in = |start: &Note, end: &Note| end.onset == at && at - start.onset < beat;
    solid_slurs(part).any(|(_, start, end)| {
        start.voice == note.voice && start.onset < at && end.onset >= at && !leads_in(start, end)
    })
}

/// Whether a note begins at a moment, under a slur or not.
fn moves_at(part: &Part, at: Moment) -> bool {
    let first = part.notes.partition_point(|note| note.onset < at);
    let mut here = part.notes[first..].iter().take_while(|note| note.onset == at);
    here.any(|note| is_played(note) && !tied_from_before(note))
}

/// Whether a section begins a stroke on the same place in every bar of a run, or in every other: the syncopation gives the
/// pulse.
fn is_syncopated_alike(piece: &Piece<'_>, strings: &[usize], run: &Range<usize>) -> bool {
    let Some(first) = piece.score.bars.get(run.start) else { return false };
    strings.iter().map(|part| &piece.score.parts[*part]).any(|part| {
        let begun = bow_starts(part);
        let onsets: BTreeSet<Moment> = begun.iter().map(|id| part.note(*id).onset).collect();
        let second = first.start + first.length;
        let places = onsets.range(first.start..second + first.length);
        places.into_iter().any(|at| {
            let place = *at - if *at < second { first.start } else { second };
            let bars = &piece.score.bars[run.clone()];
            bars.windows(2).all(|pair| pair.iter().any(|bar| onsets.contains(&(bar.start + place))))
        })
    })
}

fn spoken(piece: &Piece<'_>, strings: &[usize], at: Moment) -> Spoken {
    let parts = strings.iter().map(|part| part_at(&piece.score.parts[*part], at));
    let states: Vec<Spoken> = parts.collect();
    let held = states.iter().filter(|state| **state == Spoken::HeldOver).count();
    if states.contains(&Spoken::Begun) {
        Spoken::Begun
    } else if held >= SOUNDING {
        Spoken::HeldOver
    } else {
        Spoken::Silent
    }
}

/// Why a downbeat wants to be heard.
fn reason(piece: &Piece<'_>, strings: &[usize], index: usize) -> Option<(Severity, &'static str)> {
    let bar = &piece.score.bars[index];
    if index == 0 {
        return None;
    }
    if new_tempo(piece, bar) {
        Some((Severity::B, "tempo"))
    } else if new_meter(piece, index) {
        Some((Severity::C, "metre"))
    } else if bar.rehearsal.is_some() {
        Some((Severity::C, "mark"))
    } else if winds_enter(piece, strings, bar) {
        Some((Severity::C, "winds"))
    } else {
        None
    }
}

/// A tempo that lasts longer than the bar: one of a row of figures, bar by bar, is a way to write a broadening.
fn new_tempo(piece: &Piece<'_>, bar: &Bar) -> bool {
    let read = || piece.score.tempos.iter().filter(|tempo| tempo.begins_at_once());
    let end = bar.start + bar.length;
    let passes = |figure: &TempoKind| {
        matches!(figure, TempoKind::Marked(_))
            && read().any(|next| next.place.at > bar.start && next.place.at <= end)
    };
    read().any(|tempo| {
        tempo.place.at == bar.start && !passes(&tempo.kind) && !is_led_to(piece, bar.start, &tempo.kind)
    })
}

/// Whether a metronome figure is where an accelerando or ritardando has led to: faster or slower than before it, and nothing else
/// stands in between.
fn is_led_to(piece: &Piece<'_>, at: Moment, figure: &TempoKind) -> bool {
    let TempoKind::Marked(reached) = figure else { return false };
    let mut before = piece.score.tempos.iter().rev().skip_while(|tempo| tempo.place.at >= at);
    let Some(gradual) = before.next() else { return false };
    let from = before.find_map(|tempo| match tempo.kind {
        TempoKind::Marked(speed) | TempoKind::Word(speed) => Some(speed),
        _ => None,
    });
    match (&gradual.kind, from) {
        (TempoKind::Quickening, Some(from)) => *reached > from,
        (TempoKind::Slowing, Some(from)) => *reached < from,
        _ => false,
    }
}

fn new_meter(piece: &Piece<'_>, index: usize) -> bool {
    let Some(part) = piece.score.parts.first() else { return false };
    let Ok(bar) = u32::try_from(index) else { return false };
    let pair = (part.meter_at(bar.saturating_sub(1)), part.meter_at(bar));
    matches!(pair, (Some(before), Some(now)) if Meter::bar_length(before) != Meter::bar_length(now))
}

fn winds_enter(piece: &Piece<'_>, strings: &[usize], bar: &Bar) -> bool {
    let winds = piece.score.parts.iter().enumerate().filter(|(part, _)| !strings.contains(part));
    let entering = winds.filter(|(_, part)| {
        let quiet = part.notes.iter().all(|note| {
            !is_played(note) || note.onset >= bar.start || note.onset + note.length + bar.length <= bar.start
        });
        quiet && part_at(part, bar.start) == Spoken::Begun
    });
    entering.count() >= WINDS_IN_AN_ENTRY
}

fn unspoken(
    piece: &Piece<'_>,
    found: &Findings<'_>,
    strings: &[usize],
    index: usize,
    spoken: Spoken,
) -> Option<Draft> {
    if spoken != Spoken::HeldOver {
        return None;
    }
    let (severity, reason) = reason(piece, strings, index)?;
    let bar = &piece.score.bars[index];
    let draft = found.at(severity, None, u32::try_from(index).ok()?, bar.start);
    let sentence =
        Saying::new("say-silent-downbeat").choosing("why", reason).with("at", piece.where_is(draft.place()));
    Some(with_cheapest_split(piece, draft.say(sentence), strings, bar.start))
}

/// Offers to break the slur over the barline in the part it costs least.
fn with_cheapest_split(piece: &Piece<'_>, draft: Draft, strings: &[usize], at: Moment) -> Draft {
    let slurred =
        inner_first(strings).filter_map(|part| slur_over(&piece.score.parts[*part], at).map(|s| (*part, s)));
    for (part_index, (slur, first)) in slurred {
        let part = &piece.score.parts[part_index];
        if let Some(split) = split::before_note(part_index, part, slur, first, Keep::Both) {
            let sentence = Saying::new("offer-change-on-downbeat").quoting("part", &part.name);
            return draft.propose_change(
                Grade::WritersChoice,
                ProposalKind::Split,
                sentence,
                split.changes(piece),
            );
        }
    }
    draft
        .propose(Grade::WritersChoice, ProposalKind::Split, Saying::new("offer-inner-attacks-afresh"))
        .sketched(untie::over(piece, inner_first(strings), at))
}

/// Inner parts first: a fresh bow stands out least there.
fn inner_first(strings: &[usize]) -> impl Iterator<Item = &usize> {
    strings.iter().skip(1).chain(strings.first())
}

/// A slur over the barline with the note that begins there, where no tie is in the way.
fn slur_over(part: &Part, at: Moment) -> Option<(&Slur, NoteId)> {
    let (slur, start, _) = solid_slurs(part).find(|(_, start, end)| start.onset < at && end.onset >= at)?;
    let (first, note) =
        main_notes(part, start.voice).find(|(_, note)| note.onset == at && is_played(note))?;
    (!tied_from_before(note)).then_some((slur, first))
}

/// The second downbeat of a run with a new bow in the part where a slur or a tie lets it.
fn first_opened(piece: &Piece<'_>, strings: &[usize], run: &Range<usize>) -> Vec<Change> {
    let Some(bar) = piece.score.bars.get(run.start + 1) else { return Vec::new() };
    let mut slurred = inner_first(strings).filter_map(|part| {
        let (slur, first) = slur_over(&piece.score.parts[*part], bar.start)?;
        split::before_note(*part, &piece.score.parts[*part], slur, first, Keep::Both)
    });
    slurred
        .next()
        .map_or_else(|| untie::over(piece, inner_first(strings), bar.start), |split| split.changes(piece))
}

/// Whether a section that rests on the downbeat comes in on another beat of the bar.
fn gives_the_pulse(piece: &Piece<'_>, strings: &[usize], index: usize) -> bool {
    let (Some(bar), Ok(ordinal)) = (piece.score.bars.get(index), u32::try_from(index)) else { return false };
    strings.iter().map(|part| &piece.score.parts[*part]).any(|part| {
        let Some(beat) = part.meter_at(ordinal).map(beat_length) else { return false };
        let end = bar.start + bar.length;
        let from = part.notes.partition_point(|note| note.onset <= bar.start);
        let on_a_beat = |note: &Note| {
            let beats = (note.onset - bar.start).in_units_of(beat);
            is_played(note) && !tied_from_before(note) && beats.is_some_and(|beats| beats.denominator() == 1)
        };
        part_at(part, bar.start) == Spoken::Silent
            && part.notes[from..].iter().take_while(|note| note.onset < end).any(on_a_beat)
    })
}

/// Runs of so many unheard downbeats at least, as ranges of bars.
fn runs(unheard: &[bool], least: usize) -> Vec<Range<usize>> {
    let mut runs = Vec::new();
    let mut index = 0;
    while index < unheard.len() {
        let length = unheard[index..].iter().take_while(|unheard| **unheard).count();
        if length >= least {
            runs.push(index..index + length);
        }
        index += length.max(1);
    }
    runs
}

fn whole_run(piece: &Piece<'_>, found: &Findings<'_>, strings: &[usize], run: &Range<usize>) -> Draft {
    let at = piece.score.bars.get(run.start).map_or(Moment::START, |bar| bar.start);
    let draft = found.at(Severity::C, None, u32::try_from(run.start).unwrap_or(0), at);
    let sentence = Saying::new("say-silent-downbeats")
        .with("at", piece.where_is(draft.place()))
        .with("count", run.len());
    let bars = Argument::Whole(i64::try_from(run.len()).unwrap_or(i64::MAX));
    draft
        .say(sentence)
        .evidence("evidence-downbeats-in-a-row", bars, "")
        .propose(Grade::WritersChoice, ProposalKind::Split, Saying::new("offer-inner-changes-on-some"))
        .sketched(first_opened(piece, strings, run))
}
