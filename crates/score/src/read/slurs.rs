//! Joining the two ends of slurs.
//!
//! MusicXML numbers slurs that are open at the same time *in the order of the document*, so numbers are
//! paired in that order. Three things go beyond it: a `<backup>` may bring the stop before its start, some
//! writers number each voice by itself, and some begin a number again before it has ended. So a stop takes
//! the latest open start of its number that does not lie later in time, of its own voice if there is one,
//! else of its own staff, else of any. No slur leads from one movement into the next.

use std::collections::BTreeSet;

use arcata_xml::NodeId;

use super::movements::Ends;
use super::problems::{ProblemPlace, Problems};
use crate::{Note, NoteId, OpenSlur, Part, ProblemKind, Slur, SlurEnd, SlurLine, SlurTold};

/// One end of a slur as it stands in the file.
#[derive(Clone, Copy, Debug)]
pub(super) struct SlurMark {
    /// The note that carries it.
    pub(super) note: u32,
    /// The first note of that note's chord.
    pub(super) head: u32,
    pub(super) bar: u32,
    pub(super) number: u8,
    pub(super) end: SlurEnd,
    pub(super) line: SlurLine,
    pub(super) node: NodeId,
}

/// Of one number no more slurs than this are kept open: beyond it a file is broken, and would be slow (a limit).
const MOST_OPEN: usize = 64;

/// A start whose number has begun again is given up when no stop comes within this many bars. Reason: files
/// with lone starts are real, and a stop a hundred bars later is another slur's; nested slurs that a writer
/// gave one number are real too, and short. Source: the quartets of music21's corpus.
const OVERTAKEN_BARS: u32 = 4;

struct Pairing<'p> {
    notes: &'p [Note],
    /// Starts without a stop so far, in document order.
    open: Vec<SlurMark>,
    /// Stops of the bar in hand that found no start before them.
    early_stops: Vec<SlurMark>,
    slurs: Vec<Slur>,
    lone: Vec<SlurMark>,
    /// Starts that came while their number was open in their voice: (the older one, the newer one).
    reused: Vec<(SlurMark, SlurMark)>,
    /// The older ones of them.
    overtaken: BTreeSet<NodeId>,
}

/// Joins the slurs of a part whose notes have their absolute moments; what cannot be joined becomes an
/// open slur and a problem.
pub(super) fn join(
    part: &mut Part,
    (index, ends): (u32, Ends<'_>),
    marks: &[SlurMark],
    problems: &mut Problems,
) {
    let mut pairing = Pairing {
        notes: &part.notes,
        open: Vec::new(),
        early_stops: Vec::new(),
        slurs: Vec::with_capacity(marks.len() / 2),
        lone: Vec::new(),
        reused: Vec::new(),
        overtaken: BTreeSet::new(),
    };
    let mut bar = 0;
    for mark in marks {
        if mark.bar != bar {
            pairing.lone.append(&mut pairing.early_stops);
            if ends.between(bar, mark.bar) {
                pairing.lone.append(&mut pairing.open);
            }
            bar = mark.bar;
        }
        match mark.end {
            SlurEnd::Start => pairing.start(*mark),
            SlurEnd::Stop => pairing.stop(*mark),
        }
    }
    let Pairing { notes, mut open, mut early_stops, mut slurs, mut lone, reused, .. } = pairing;
    lone.append(&mut open);
    lone.append(&mut early_stops);
    lone.sort_by_key(|mark| mark.node);
    slurs.sort_by_key(|slur| (notes[slur.start.0 as usize].onset, slur.start_node));
    report_reused(notes, &slurs, &reused, index, problems);
    report_lone(&lone, index, problems);
    report_crossing(notes, &slurs, index, problems);
    part.open_slurs = lone
        .iter()
        .map(|mark| OpenSlur {
            note: NoteId(mark.note),
            node: mark.node,
            number: mark.number,
            written: mark.end,
        })
        .collect();
    part.slurs = slurs;
}

impl Pairing<'_> {
    fn note(&self, mark: &SlurMark) -> &Note {
        &self.notes[mark.note as usize]
    }

    fn start(&mut self, start: SlurMark) {
        let waiting = self.early_stops.iter().rposition(|stop| {
            stop.number == start.number && self.can_join(&start, stop) && !self.has_open(stop)
        });
        if let Some(waiting) = waiting {
            let stop = self.early_stops.remove(waiting);
            self.join(start, stop);
            return;
        }
        let voice = self.note(&start).voice;
        let same = |open: &&SlurMark| open.number == start.number && self.note(open).voice == voice;
        if let Some(older) = self.open.iter().rev().find(same) {
            self.overtaken.insert(older.node);
            self.reused.push((*older, start));
        }
        self.open.push(start);
        if self.open.iter().filter(|open| open.number == start.number).count() > MOST_OPEN
            && let Some(oldest) = self.open.iter().position(|open| open.number == start.number)
        {
            self.lone.push(self.open.remove(oldest));
        }
    }

    fn stop(&mut self, stop: SlurMark) {
        match self.start_for(&stop) {
            Some(index) => {
                let start = self.open.remove(index);
                self.join(start, stop);
            }
            None if self.early_stops.len() < MOST_OPEN => self.early_stops.push(stop),
            None => self.lone.push(stop),
        }
    }

    fn has_open(&self, stop: &SlurMark) -> bool {
        self.start_for(stop).is_some()
    }

    /// The open start that a stop belongs to.
    fn start_for(&self, stop: &SlurMark) -> Option<usize> {
        let ending = self.note(stop);
        let near = |start: &SlurMark| {
            let beginning = self.note(start);
            match (beginning.voice == ending.voice, beginning.staff == ending.staff) {
                (true, _) => 2,
                (false, true) => 1,
                (false, false) => 0,
            }
        };
        let candidates = self
            .open
            .iter()
            .enumerate()
            .filter(|(_, start)| start.number == stop.number && self.can_join(start, stop));
        candidates.max_by_key(|(index, start)| (near(start), *index)).map(|(index, _)| index)
    }

    /// Whether a slur could lead from one note to the other: onwards in time, and not within one chord.
    fn can_join(&self, start: &SlurMark, stop: &SlurMark) -> bool {
        let (beginning, ending) = (self.note(start), self.note(stop));
        let given_up = stop.bar > start.bar + OVERTAKEN_BARS && self.overtaken.contains(&start.node);
        start.head != stop.head
            && !given_up
            && (beginning.onset < ending.onset || (beginning.onset == ending.onset && start.note < stop.note))
    }

    fn join(&mut self, start: SlurMark, stop: SlurMark) {
        self.slurs.push(Slur {
            start: NoteId(start.note),
            end: NoteId(stop.note),
            number: start.number,
            start_node: start.node,
            end_node: stop.node,
            line: start.line,
            told: SlurTold::Nothing,
        });
    }
}

fn at(mark: &SlurMark, part: u32) -> ProblemPlace {
    ProblemPlace { node: Some(mark.node), part: Some(part), bar: Some(mark.bar) }
}

/// A number that begins again is sound only where the older slur ends on the very chord.
fn report_reused(
    notes: &[Note],
    slurs: &[Slur],
    reused: &[(SlurMark, SlurMark)],
    part: u32,
    problems: &mut Problems,
) {
    let mut ends: Vec<(NodeId, NoteId)> = slurs.iter().map(|slur| (slur.start_node, slur.end)).collect();
    ends.sort_unstable();
    for (older, newer) in reused {
        let end = ends.binary_search_by_key(&older.node, |(node, _)| *node).ok().map(|found| ends[found].1);
        let ends_here = end.is_some_and(|end| {
            let (end, start) = (&notes[end.0 as usize], &notes[newer.note as usize]);
            end.onset == start.onset
        });
        if !ends_here {
            problems.add(
                ProblemKind::Slur,
                at(newer, part),
                format!("Slur number {} begins again before it has ended.", newer.number),
            );
        }
    }
}

fn report_lone(lone: &[SlurMark], part: u32, problems: &mut Problems) {
    for mark in lone {
        let message = match mark.end {
            SlurEnd::Start => "A slur begins here and never ends.",
            SlurEnd::Stop => "A slur ends here that never began.",
        };
        problems.add(ProblemKind::Slur, at(mark, part), message);
    }
}

/// Two slurs of one voice that overlap without one holding the other.
fn report_crossing(notes: &[Note], slurs: &[Slur], part: u32, problems: &mut Problems) {
    let note = |id: NoteId| &notes[id.0 as usize];
    let mut open: Vec<&Slur> = Vec::new();
    for slur in slurs {
        let (start, end) = (note(slur.start), note(slur.end));
        open.retain(|other| note(other.end).onset > start.onset);
        let crossed = open.iter().any(|other| {
            let (first, last) = (note(other.start), note(other.end));
            first.voice == start.voice && first.onset < start.onset && last.onset < end.onset
        });
        if crossed {
            let place = ProblemPlace { node: Some(slur.start_node), part: Some(part), bar: Some(start.bar) };
            problems.add(
                ProblemKind::Slur,
                place,
                "A slur begins under another one and ends after it: the two cross.",
            );
        }
        open.push(slur);
        if open.len() > MOST_OPEN {
            open.remove(0);
        }
    }
}
