//! Joining tied notes: by pitch and moment, whatever their voices, across barlines.
//!
//! A tie may also bridge a gap: between a part whose bar is a little short of the others' and its next bar,
//! or from a note that is held while others of a broken chord enter. Then both ends must be marked, in one
//! voice, not more than a bar apart.

use super::movements::Ends;
use super::problems::{ProblemPlace, Problems};
use crate::{Moment, Note, NoteId, Part, ProblemKind, TieEnd};

/// A note that wants a partner after it.
#[derive(Clone, Copy)]
struct Waiting {
    note: u32,
    end: Moment,
    pitch: Option<i32>,
}

/// More ties than this are not open at one moment in music, and would be slow (a limit).
const MOST_OPEN: usize = 256;

/// Joins the ties of a part whose notes have their absolute moments. `ringing` are notes whose tie leads
/// nowhere on purpose, sorted; `entered_anew` tells whether a bar may be entered from elsewhere than the
/// bar before it, so that a tie may come from there.
pub(super) fn join(
    part: &mut Part,
    (index, ends): (u32, Ends<'_>),
    ringing: &[u32],
    entered_anew: impl Fn(u32) -> bool,
    problems: &mut Problems,
) {
    let notes = &mut part.notes;
    let mut open: Vec<Waiting> = Vec::new();
    for current in 0..notes.len() {
        if current > 0 && ends.between(notes[current - 1].bar, notes[current].bar) {
            open.clear();
        }
        let (onset, pitch) = (notes[current].onset, notes[current].pitch.cents());
        if !open.is_empty() && !notes[current].pitch.is_rest() {
            join_before(notes, current, &mut open);
        }
        let bar = notes[current].bar;
        open.retain(|waiting| waiting.end >= onset || notes[waiting.note as usize].bar + 1 >= bar);
        let note = &notes[current];
        if note.tie.to_after == TieEnd::Open && ringing.binary_search(&(current as u32)).is_err() {
            open.push(Waiting { note: current as u32, end: onset + note.length, pitch });
            if open.len() > MOST_OPEN {
                open.remove(0);
            }
        }
    }
    for (current, note) in notes.iter().enumerate() {
        let place = ProblemPlace { node: Some(note.node), part: Some(index), bar: Some(note.bar) };
        if note.tie.to_after == TieEnd::Open && ringing.binary_search(&(current as u32)).is_err() {
            problems.add(ProblemKind::Tie, place, "A tie begins here, but no note of its pitch follows.");
        }
        if note.tie.from_before == TieEnd::Open && !entered_anew(note.bar) {
            problems.add(
                ProblemKind::Tie,
                place,
                "A tie ends here, but no note of its pitch that is tied on comes before.",
            );
        }
    }
}

/// Joins a note to the open tie that ends where it begins: of its own voice and staff rather than another.
/// A note without the mark of the end is still the one tied to, if it follows in the same voice.
fn join_before(notes: &mut [Note], current: usize, open: &mut Vec<Waiting>) {
    let note = &notes[current];
    let (onset, pitch, marked) = (note.onset, note.pitch.cents(), note.tie.from_before == TieEnd::Open);
    let near = |waiting: &Waiting| {
        let before = &notes[waiting.note as usize];
        (waiting.end == onset, before.voice == note.voice, before.staff == note.staff)
    };
    let fits = |waiting: &Waiting| {
        waiting.pitch == pitch
            && match near(waiting) {
                (true, true, true) => true,
                (true, _, _) => marked,
                (false, same_voice, same_staff) => marked && same_voice && same_staff,
            }
    };
    let best = (0..open.len()).filter(|index| fits(&open[*index])).max_by_key(|index| near(&open[*index]));
    if let Some(best) = best {
        let waiting = open.remove(best);
        notes[waiting.note as usize].tie.to_after = TieEnd::Joined(NoteId(current as u32));
        notes[current].tie.from_before = TieEnd::Joined(NoteId(waiting.note));
    }
}
