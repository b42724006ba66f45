//! Changes to the file made in the music that has been read, so that a proposal can be tried without writing it.

use std::collections::BTreeSet;

use arcata_score::words::{WordMeaning, meanings};
use arcata_score::{
    Articulation, BowDirection, BowMark, Instruction, Note, NoteId, Part, Place, Score, Slur, SlurLine,
    SlurTold, TieEnd,
};
use arcata_xml::{Document, Element, NodeId, Tag};

use crate::Reads;
use crate::change::Change;

/// The note that an element belongs to.
pub(crate) fn note_of(document: &Document, element: NodeId) -> Option<Element<'_>> {
    let mut element = document.element(element)?;
    while element.tag() != Tag::NOTE {
        element = element.parent()?;
    }
    Some(element)
}

/// The element that a change stands at.
pub(crate) fn stands_at(change: &Change) -> NodeId {
    match change {
        Change::Remove(node) | Change::Notation { note: node, .. } | Change::Before { next: node, .. } => {
            *node
        }
    }
}

/// Makes changes in a score whose elements are those of the document, and tells what a rule that is asked anew must read.
/// Dynamics, and words taken out together with others, are left as they are, and not told.
pub(crate) fn put_in(document: &Document, score: &mut Score, changes: &[Change]) -> BTreeSet<Reads> {
    let mut touched = BTreeSet::new();
    for part in &mut score.parts {
        let mut changed =
            ChangedPart { document, part, touched: &mut touched, loose: Vec::new(), ties: Vec::new() };
        for change in changes {
            match change {
                Change::Remove(node) => changed.take_out(*node),
                Change::Notation { note, xml } => changed.write(*note, xml),
                Change::Before { next, xml } => changed.say(*next, xml),
            }
        }
        changed.join();
    }
    touched
}

/// One end of a slur that has lost the other, or never had it.
#[derive(Clone, Copy, Debug)]
struct LooseEnd {
    note: NoteId,
    node: NodeId,
    number: u8,
    opens: bool,
    line: SlurLine,
    /// What somebody has said of the slur that it is an end of.
    told: SlurTold,
}

/// Changes in one part.
struct ChangedPart<'a> {
    document: &'a Document,
    part: &'a mut Part,
    touched: &'a mut BTreeSet<Reads>,
    loose: Vec<LooseEnd>,
    /// Notes at which a tie begins or ends: (note, whether it begins).
    ties: Vec<(NoteId, bool)>,
}

impl ChangedPart<'_> {
    fn id(&self, node: NodeId) -> Option<NoteId> {
        let at = self.part.notes.iter().position(|note| note.node == node)?;
        u32::try_from(at).ok().map(NoteId)
    }

    fn note(&mut self, node: NodeId) -> Option<&mut Note> {
        self.part.notes.iter_mut().find(|note| note.node == node)
    }

    fn touch(&mut self, reads: &[Reads]) {
        self.touched.extend(reads);
    }

    fn take_out(&mut self, node: NodeId) {
        if let Some(at) =
            self.part.slurs.iter().position(|slur| slur.start_node == node || slur.end_node == node)
        {
            let slur = self.part.slurs.remove(at);
            self.loosen(slur);
            self.loose.retain(|end| end.node != node);
        } else if self.loose.iter().any(|end| end.node == node) {
            self.loose.retain(|end| end.node != node);
        } else if self.part.open_slurs.iter().any(|open| open.node == node) {
            self.part.open_slurs.retain(|open| open.node != node);
        } else if self.part.instructions.iter().any(|said| said.place.node == node) {
            self.part.instructions.retain(|said| said.place.node != node);
            return self.touch(&[Reads::Words, Reads::Strokes, Reads::Bows]);
        } else {
            return self.take_off(node);
        }
        self.touch(&[Reads::Slurs, Reads::Strokes, Reads::Bows]);
    }

    /// Takes a sign off a note.
    fn take_off(&mut self, node: NodeId) {
        let document = self.document;
        let (Some(sign), Some(element)) = (document.element(node), note_of(document, node)) else { return };
        let begins = sign.attribute("type").is_some_and(|kind| kind == "start");
        let Some(note) = self.note(element.id()) else { return };
        match sign.tag() {
            Tag::DOWN_BOW | Tag::UP_BOW => {
                let marks = note.bow_mark.into_iter().chain(std::mem::take(&mut note.more_bow_marks));
                let mut marks = marks.filter(|mark| mark.node != node);
                note.bow_mark = marks.next();
                note.more_bow_marks = marks.collect();
                self.touch(&[Reads::BowMarks, Reads::Bows]);
            }
            Tag::TIE | Tag::TIED => {
                let end = if begins { &mut note.tie.to_after } else { &mut note.tie.from_before };
                *end = TieEnd::None;
                self.touch(&[Reads::Ties, Reads::Strokes, Reads::Bows]);
            }
            tag => {
                let Some(mark) = Articulation::of_tag(tag) else { return };
                note.articulations = note.articulations.without(mark);
                self.touch(&[Reads::Marks, Reads::Strokes, Reads::Bows]);
            }
        }
    }

    /// Writes a sign at a note.
    fn write(&mut self, node: NodeId, xml: &str) {
        let Some(id) = self.id(node) else { return };
        let begins = xml.contains("type=\"start\"");
        if xml.starts_with("<slur") {
            let number = attribute(xml, "number").and_then(|number| number.parse().ok()).unwrap_or(1);
            let line = if xml.contains("line-type=\"dashed\"") { SlurLine::Broken } else { SlurLine::Solid };
            let told = SlurTold::Nothing;
            self.loose.push(LooseEnd { note: id, node, number, opens: begins, line, told });
            return self.touch(&[Reads::Slurs, Reads::Strokes, Reads::Bows]);
        }
        if xml.starts_with("<tied") {
            self.ties.push((id, begins));
            return self.touch(&[Reads::Ties, Reads::Strokes, Reads::Bows]);
        }
        let Some(note) = self.note(node) else { return };
        if let Some(direction) =
            [BowDirection::Down, BowDirection::Up].into_iter().find(|way| xml.contains(element_of(*way)))
        {
            note.bow_mark = Some(BowMark { direction, node });
            return self.touch(&[Reads::BowMarks, Reads::Bows]);
        }
        let names = xml.split('<').filter_map(|tag| tag.split(['/', '>', ' ']).next());
        let marks: Vec<Articulation> =
            names.filter_map(|name| Articulation::of_tag(Tag::known(name)?)).collect();
        if !marks.is_empty() {
            note.articulations = marks.into_iter().fold(note.articulations, |all, mark| all.with(mark));
            self.touch(&[Reads::Marks, Reads::Strokes, Reads::Bows]);
        }
    }

    /// Writes words before a note.
    fn say(&mut self, next: NodeId, xml: &str) {
        let Some(words) = between(xml, "<words>", "</words>") else { return };
        let Some(note) = self.note(next) else { return };
        let place = Place { at: note.onset, bar: note.bar, staff: note.staff, voice: None, node: note.node };
        for meaning in meanings(words) {
            if let WordMeaning::Instruction(meaning) = meaning {
                let text = words.to_owned();
                self.part.instructions.push(Instruction { place, meaning, text });
                self.touch(&[Reads::Words, Reads::Strokes, Reads::Bows]);
            }
        }
        self.part.instructions.sort_by_key(|said| said.place.at);
    }

    fn loosen(&mut self, slur: Slur) {
        let Slur { number, line, told, .. } = slur;
        let end = |note, node, opens| LooseEnd { note, node, number, opens, line, told };
        self.loose.push(end(slur.start, slur.start_node, true));
        self.loose.push(end(slur.end, slur.end_node, false));
    }

    /// Joins what is loose: an end to the last beginning of its number before it, as a reader does.
    fn join(mut self) {
        let voice = |part: &Part, id: NoteId| part.note(id).voice;
        let written: BTreeSet<(u8, u16)> =
            self.loose.iter().map(|end| (end.number, voice(self.part, end.note))).collect();
        // A new end within a slur of its number cuts it in two.
        let (others, same): (Vec<Slur>, Vec<Slur>) = std::mem::take(&mut self.part.slurs)
            .into_iter()
            .partition(|slur| !written.contains(&(slur.number, voice(self.part, slur.start))));
        self.part.slurs = others;
        same.into_iter().for_each(|slur| self.loosen(slur));
        let onset = |end: &LooseEnd| self.part.note(end.note).onset;
        self.loose.sort_by_key(|end| (onset(end), end.note, end.opens));
        let mut open: Vec<LooseEnd> = Vec::new();
        for end in std::mem::take(&mut self.loose) {
            if end.opens {
                open.push(end);
                continue;
            }
            let alike = |start: &LooseEnd| {
                start.number == end.number && voice(self.part, start.note) == voice(self.part, end.note)
            };
            let Some(at) = open.iter().rposition(alike) else { continue };
            let start = open.remove(at);
            self.part.slurs.push(Slur {
                start: start.note,
                end: end.note,
                number: start.number,
                start_node: start.node,
                end_node: end.node,
                line: start.line,
                told: start.told,
            });
        }
        self.part.slurs.sort_by_key(|slur| (slur.start, slur.end));
        self.ties.sort();
        for pair in self.ties.chunk_by(|first, second| first.1 && !second.1) {
            if let [(from, true), (to, false)] = pair {
                self.part.notes[from.0 as usize].tie.to_after = TieEnd::Joined(*to);
                self.part.notes[to.0 as usize].tie.from_before = TieEnd::Joined(*from);
            }
        }
    }
}

fn element_of(direction: BowDirection) -> &'static str {
    match direction {
        BowDirection::Down => "<down-bow",
        BowDirection::Up => "<up-bow",
    }
}

fn between<'x>(xml: &'x str, before: &str, after: &str) -> Option<&'x str> {
    let (_, rest) = xml.split_once(before)?;
    rest.split_once(after).map(|(inside, _)| inside)
}

fn attribute<'x>(xml: &'x str, name: &str) -> Option<&'x str> {
    between(xml, &format!("{name}=\""), "\"")
}

#[cfg(test)]
mod tests;
