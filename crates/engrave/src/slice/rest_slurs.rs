//! Slurs that begin or end on a rest: the engraver draws none of them, and files have them.
//!
//! They are drawn from or to the nearest note inside them. A note alone with the rest behind it is to ring on: it gets
//! the short curve for that.

use std::borrow::Cow;
use std::collections::BTreeMap;

use arcata_score::{Moment, Note, NoteId, NoteKind, Part, Slur};
use arcata_xml::{Document, Element, NodeId};

/// The slurs of a part as they are drawn.
#[derive(Clone, Debug, Default)]
pub(crate) struct DrawnSlurs {
    /// Those that lead from one note to another.
    pub(super) slurs: Vec<Slur>,
    /// What changes in which note.
    changes: BTreeMap<NodeId, Vec<SlurChange>>,
}

#[derive(Clone, Debug)]
enum SlurChange {
    /// This element goes.
    Goes(NodeId),
    /// This element comes from another note.
    Comes(NodeId),
    /// The note rings on.
    RingsOn,
}

impl DrawnSlurs {
    /// Looks through the slurs of a part.
    pub(crate) fn new(part: &Part) -> Self {
        let mut drawn = Self { slurs: Vec::with_capacity(part.slurs.len()), changes: BTreeMap::new() };
        for slur in &part.slurs {
            if part.note(slur.start).pitch.is_rest() || part.note(slur.end).pitch.is_rest() {
                drawn.bring_in(part, slur);
            } else {
                drawn.slurs.push(*slur);
            }
        }
        drawn
    }

    fn bring_in(&mut self, part: &Part, slur: &Slur) {
        let (from, to) = (part.note(slur.start), part.note(slur.end));
        let voice = if from.pitch.is_rest() { to.voice } else { from.voice };
        let inside = |note: &Note| {
            note.voice == voice
                && note.kind != NoteKind::Cue
                && note.on_page
                && !note.pitch.is_rest()
                && (from.onset..=to.onset).contains(&note.onset)
        };
        // Notes of one moment are a chord: its first stands for it.
        let mut moments: BTreeMap<Moment, usize> = BTreeMap::new();
        for (index, _) in part.notes.iter().enumerate().filter(|(_, note)| inside(note)) {
            let at = part.notes[index].onset;
            moments.entry(at).or_insert(index);
        }
        let note = |index: usize| u32::try_from(index).ok().map(NoteId);
        let first = if from.pitch.is_rest() {
            moments.values().next().copied().and_then(note)
        } else {
            Some(slur.start)
        };
        let last = if to.pitch.is_rest() {
            moments.values().next_back().copied().and_then(note)
        } else {
            Some(slur.end)
        };
        let mut change = |note: &Note, change| self.changes.entry(note.node).or_default().push(change);
        match (first, last) {
            (Some(first), Some(last)) if part.note(first).onset < part.note(last).onset => {
                for (was, is, element) in
                    [(slur.start, first, slur.start_node), (slur.end, last, slur.end_node)]
                {
                    if was != is {
                        change(part.note(was), SlurChange::Goes(element));
                        change(part.note(is), SlurChange::Comes(element));
                    }
                }
                self.slurs.push(Slur { start: first, end: last, ..*slur });
            }
            _ => {
                change(from, SlurChange::Goes(slur.start_node));
                change(to, SlurChange::Goes(slur.end_node));
                if !from.pitch.is_rest() {
                    change(from, SlurChange::RingsOn);
                }
            }
        }
    }

    /// What stands in a note, its slurs as they are drawn.
    pub(crate) fn note<'d>(&self, document: &Document, note: NodeId, mut text: Cow<'d, str>) -> Cow<'d, str> {
        for change in self.changes.get(&note).into_iter().flatten() {
            let source = |element: NodeId| document.element(element).map_or("", Element::source);
            text = match change {
                SlurChange::Goes(element) => text.replacen(source(*element), "", 1).into(),
                SlurChange::Comes(element) => with_notation(&text, source(*element)).into(),
                SlurChange::RingsOn => with_notation(&text, r#"<tied type="let-ring"/>"#).into(),
            };
        }
        text
    }
}

/// What stands in a note, with one notation more. In MusicXML `<notations>` comes before `<lyric>`, `<play>` and `<listen>`.
fn with_notation(text: &str, notation: &str) -> String {
    if let Some(end) = text.find("</notations>") {
        return format!("{}{notation}{}", &text[..end], &text[end..]);
    }
    let behind = ["<lyric", "<play", "<listen"].iter().filter_map(|name| text.find(name)).min();
    let (head, tail) = text.split_at(behind.unwrap_or(text.len()));
    format!("{head}<notations>{notation}</notations>{tail}")
}
