//! Where a slur is best split.

use arcata_bow::{Line, Stroke};
use arcata_languages::Argument;
use arcata_score::{Length, Meter, Moment, NoteId, Part, Slur};

use crate::beats::{beat_in_bar, beat_length};
use crate::change::Change;
use crate::under_slur::{main_notes, note, point, solid_slurs, tied_from_before};
use crate::{FindingPlace, Piece};

/// A slur in pieces, with the slurs beside it over the same time (double stops in two voices, chords).
#[derive(Clone, Debug)]
pub(crate) struct Split {
    part: usize,
    slurs: Vec<CutSlur>,
}

#[derive(Clone, Debug)]
struct CutSlur {
    slur: Slur,
    /// First and last note of each piece; a piece of one note needs no slur.
    pieces: Vec<(NoteId, NoteId)>,
}

/// Which side of a cut keeps its slur.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Keep {
    /// The notes before the cut.
    Before,
    /// The notes after it.
    After,
    /// Both.
    Both,
}

/// The pieces of a stroke's slur that each last no longer than `longest` microseconds, cut at
/// strong beats and few; `None` when no cut between notes does it.
pub(crate) fn evenly(piece: &Piece<'_>, line: &Line, stroke: &Stroke, longest: i64) -> Option<Split> {
    let part = piece.score.parts.get(line.part)?;
    let beside = slurs_of(part, stroke);
    let chain = notes_under(part, beside.first()?);
    let moments: Vec<Moment> = chain.iter().filter_map(|id| Some(note(part, *id)?.onset)).collect();
    if moments.len() != chain.len() || stroke.length <= Length::ZERO {
        return None;
    }
    let cuts: Vec<Moment> = cheapest_cuts(piece, part, stroke, &chain, &moments, longest)?
        .into_iter()
        .map(|cut| moments[cut])
        .collect();
    if cuts.is_empty() {
        return None;
    }
    let slurs = beside.into_iter().map(|slur| cut_at(part, slur, &cuts)).collect::<Option<Vec<_>>>()?;
    Some(Split { part: line.part, slurs })
}

/// A stroke's slur in two about even pieces, as a picture shows it; nothing where it cannot be cut.
pub(crate) fn in_two(piece: &Piece<'_>, line: &Line, stroke: &Stroke) -> Vec<Change> {
    let longest = stroke.duration.micros / 20 * UNEVEN_HALF;
    evenly(piece, line, stroke, longest).map(|split| split.changes(piece)).unwrap_or_default()
}

/// How long the longer of two pieces may be, twentieths of the whole: the cut falls on a beat rather than
/// in the middle (rule of thumb).
const UNEVEN_HALF: i64 = 13;

/// A slur cut at moments; `None` where a note is held over one of them.
fn cut_at(part: &Part, slur: Slur, cuts: &[Moment]) -> Option<CutSlur> {
    let chain = notes_under(part, &slur);
    let mut starts = vec![0];
    for cut in cuts {
        let first = chain.iter().position(|id| note(part, *id).is_some_and(|note| note.onset == *cut))?;
        let fresh = note(part, chain[first]).is_some_and(|note| !tied_from_before(note));
        let later = starts.last().is_none_or(|last| first > *last);
        if !fresh || !later {
            return None;
        }
        starts.push(first);
    }
    let ends = starts.iter().skip(1).copied().chain(std::iter::once(chain.len()));
    let pieces = starts.iter().zip(ends).map(|(from, to)| (chain[*from], chain[to - 1])).collect();
    Some(CutSlur { slur, pieces })
}

/// A slur cut at moments on which notes begin.
pub(crate) fn at_moments(part_index: usize, part: &Part, slur: &Slur, cuts: &[Moment]) -> Option<Split> {
    Some(Split { part: part_index, slurs: vec![cut_at(part, *slur, cuts)?] })
}

/// A slur cut before one of its notes.
pub(crate) fn before_note(
    part_index: usize,
    part: &Part,
    slur: &Slur,
    first: NoteId,
    keep: Keep,
) -> Option<Split> {
    let chain = notes_under(part, slur);
    let cut = chain.iter().position(|id| *id == first).filter(|cut| *cut > 0)?;
    let (before, after) = ((chain[0], chain[cut - 1]), (chain[cut], chain[chain.len() - 1]));
    let pieces = match keep {
        Keep::Before => vec![before],
        Keep::After => vec![after],
        Keep::Both => vec![before, after],
    };
    Some(Split { part: part_index, slurs: vec![CutSlur { slur: *slur, pieces }] })
}

/// The slurs that make a stroke: they begin and end on its notes, over the same time as the longest.
fn slurs_of(part: &Part, stroke: &Stroke) -> Vec<Slur> {
    let inside = solid_slurs(part)
        .filter(|(slur, ..)| stroke.notes.contains(&slur.start) && stroke.notes.contains(&slur.end));
    let spans: Vec<_> = inside.map(|(slur, start, end)| (start.onset, end.onset, *slur)).collect();
    let longest = spans.iter().map(|(start, end, _)| (*end - *start, *start, *end)).max();
    let Some((_, from, to)) = longest else { return Vec::new() };
    spans.into_iter().filter(|(start, end, _)| (*start, *end) == (from, to)).map(|(.., slur)| slur).collect()
}

/// The notes of a slur's voice from its start to its end.
fn notes_under(part: &Part, slur: &Slur) -> Vec<NoteId> {
    let (Some(start), Some(end)) = (note(part, slur.start), note(part, slur.end)) else { return Vec::new() };
    let (from, to) = (point(start), point(end));
    main_notes(part, start.voice)
        .filter(|(_, note)| (from..=to).contains(&point(note)) && !note.pitch.is_rest())
        .map(|(id, _)| id)
        .collect()
}

/// How unwelcome a change of bow is at an onset: nothing on a downbeat, most between beats.
fn unwelcome(meter: &Meter, offset: Length) -> i64 {
    let beat = beat_in_bar(meter, offset);
    let half_bar = meter.bar_length().scaled(1, 2);
    match () {
        () if offset.is_zero() => 0,
        () if offset == half_bar && beat.denominator() == 1 => 1,
        () if beat.denominator() == 1 => 3,
        () if offset.in_units_of(beat_length(meter).scaled(1, 2)).is_some_and(|n| n.denominator() == 1) => 6,
        () => 10,
    }
}

/// What one piece more costs, thousandths of a step of [`unwelcome`]: a bow change on the middle of the
/// bar is worth avoiding one on a weaker beat (rule of thumb).
const PIECE: i64 = 1500;

/// Few pieces at welcome places, then even ones (dynamic programming over the cuts; a slur has few
/// notes).
fn cheapest_cuts(
    piece: &Piece<'_>,
    part: &Part,
    stroke: &Stroke,
    chain: &[NoteId],
    moments: &[Moment],
    longest: i64,
) -> Option<Vec<usize>> {
    let end = stroke.onset + stroke.length;
    let micros = |from: Moment, to: Moment| share(to - from, stroke.length, stroke.duration.micros);
    let mut best: Vec<Option<(i64, usize)>> = vec![None; chain.len() + 1];
    best[0] = Some((0, 0));
    for to in 1..=chain.len() {
        let to_moment = if to == chain.len() { end } else { moments[to] };
        let here = if to == chain.len() { 0 } else { penalty(piece, part, chain[to])? };
        best[to] = (0..to)
            .filter_map(|from| {
                let (before, _) = best[from]?;
                let lasts = micros(moments[from], to_moment);
                if lasts > longest || here == i64::MAX {
                    return None;
                }
                // Uneven pieces cost up to as much as one step of the beat's rank.
                let unused = (longest - lasts) * 1000 / longest.max(1);
                Some((before + PIECE + here * 1000 + unused * unused / 1000, from))
            })
            .min();
    }
    let mut cuts = Vec::new();
    let mut at = chain.len();
    while at > 0 {
        let (_, from) = best[at]?;
        if from > 0 {
            cuts.push(from);
        }
        at = from;
    }
    cuts.reverse();
    Some(cuts)
}

/// What a cut before a note costs; `i64::MAX` where none may be: inside a tie, before a grace note's
/// main note.
fn penalty(piece: &Piece<'_>, part: &Part, id: NoteId) -> Option<i64> {
    let note = note(part, id)?;
    if tied_from_before(note) || note.length.is_zero() {
        return Some(i64::MAX);
    }
    let meter = part.meter_at(note.bar)?;
    Some(unwelcome(meter, piece.score.offset_in_bar(note.onset, note.bar)))
}

fn share(length: Length, whole: Length, micros: i64) -> i64 {
    let part = length.in_units_of(whole).unwrap_or(Length::ZERO);
    let scaled = i128::from(part.numerator()) * i128::from(micros) / i128::from(part.denominator().max(1));
    i64::try_from(scaled).unwrap_or(i64::MAX)
}

impl Split {
    /// Where the new slurs begin, as said: "beat 3 and bar 13, beat 1".
    pub(crate) fn places(&self, piece: &Piece<'_>, from: &FindingPlace) -> Argument {
        let part = &piece.score.parts[self.part];
        let pieces = self.slurs.first().into_iter().flat_map(|cut| cut.pieces.iter().skip(1));
        let starts = pieces.filter_map(|(first, _)| note(part, *first));
        Argument::Chain(starts.map(|note| piece.said_from(from, part, note)).collect())
    }

    /// The changes: an end and a beginning at every cut, the old ends gone where no piece needs them.
    pub(crate) fn changes(&self, piece: &Piece<'_>) -> Vec<Change> {
        let part = &piece.score.parts[self.part];
        self.slurs.iter().flat_map(|cut| cut.changes(part)).collect()
    }
}

impl CutSlur {
    fn changes(&self, part: &Part) -> Vec<Change> {
        let slurred: Vec<_> = self.pieces.iter().filter(|(first, last)| first != last).collect();
        let mut changes = Vec::new();
        if !slurred.iter().any(|(first, _)| *first == self.slur.start) {
            changes.push(Change::Remove(self.slur.start_node));
        }
        if !slurred.iter().any(|(_, last)| *last == self.slur.end) {
            changes.push(Change::Remove(self.slur.end_node));
        }
        for (first, last) in slurred {
            let starts = (*first != self.slur.start).then(|| self.edge(part, *first, "start"));
            let stops = (*last != self.slur.end).then(|| self.edge(part, *last, "stop"));
            changes.extend([starts, stops].into_iter().flatten().flatten());
        }
        changes
    }

    fn edge(&self, part: &Part, id: NoteId, edge: &str) -> Option<Change> {
        let xml = format!("<slur number=\"{}\" type=\"{edge}\"/>", self.slur.number);
        note(part, id).map(|note| Change::Notation { note: note.node, xml })
    }
}
