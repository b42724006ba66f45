//! What applying, wiping and lifting share: a score, its notes by address, and its markup by now.

use std::collections::BTreeMap;

use arcata_languages::Saying;
use arcata_score::{BowDirection, ChordRole, NoteId, Part, Score, TieEnd};
use arcata_xml::Document;

use crate::address::{Addresses, NamedNote};
use crate::markup::{MarkupPiece, TouchedNotes, node};
use crate::model::{Entry, EntryState, Exact, Mark, MarkBefore, Spot, Taken, TakenKind};
use crate::slurs::{PartSlurs, SlurStanding};

/// A score that is worked on.
pub(crate) struct LayerSession<'s, 'd> {
    pub(crate) addresses: Addresses<'s>,
    pub(crate) surgery: TouchedNotes<'d>,
    slurs: BTreeMap<usize, PartSlurs>,
    /// The notes that the layer hooks by a slur with dots or dashes, and where the slur begins: there the bow mark of
    /// their stroke stands.
    pub(crate) begins: BTreeMap<NamedNote, NoteId>,
}

/// The two ways of the bow.
pub(crate) const WAYS: [BowDirection; 2] = [BowDirection::Down, BowDirection::Up];

impl<'s, 'd> LayerSession<'s, 'd> {
    pub(crate) fn new(document: &'d Document, score: &'s Score) -> Self {
        let (slurs, begins) = (BTreeMap::new(), BTreeMap::new());
        Self { addresses: Addresses::new(score), surgery: TouchedNotes::new(document), slurs, begins }
    }

    pub(crate) fn score(&self) -> &'s Score {
        self.addresses.score()
    }

    pub(crate) fn slurs(&mut self, part: usize) -> &mut PartSlurs {
        let score = self.addresses.score();
        self.slurs.entry(part).or_insert_with(|| PartSlurs::of(&score.parts[part]))
    }

    pub(crate) fn has(&mut self, at: NamedNote, piece: &MarkupPiece) -> bool {
        let note = node(self.score(), at.part, at.note);
        self.surgery.has(note, piece)
    }

    pub(crate) fn take(
        &mut self,
        at: NamedNote,
        piece: &MarkupPiece,
        exact: Option<&Exact>,
    ) -> Option<Exact> {
        let note = node(self.score(), at.part, at.note);
        self.surgery.take(note, piece, exact)
    }

    pub(crate) fn put(&mut self, at: NamedNote, piece: &MarkupPiece, exact: Option<&Exact>) -> bool {
        let note = node(self.score(), at.part, at.note);
        self.surgery.put(note, piece, exact)
    }

    /// The bow marks on a note in their order.
    pub(crate) fn bows(&mut self, at: NamedNote) -> Vec<BowDirection> {
        let note = node(self.score(), at.part, at.note);
        self.surgery.bows(note)
    }

    /// Takes off every bow mark but those of one way.
    pub(crate) fn take_other_bows(&mut self, at: NamedNote, kept: Option<BowDirection>) -> Vec<Taken> {
        let mut taken = Vec::new();
        for way in WAYS.into_iter().filter(|way| Some(*way) != kept) {
            while let Some(exact) = self.take(at, &MarkupPiece::Bow(way), None) {
                let kind = if way == BowDirection::Down { TakenKind::Down } else { TakenKind::Up };
                taken.push(Taken { kind, exact });
            }
        }
        taken
    }

    /// Takes the mark off the stroke before that a hook or a retake put there, and brings back what gave way to it, unless
    /// something stands there by now. Says whether anything changed.
    pub(crate) fn take_before(&mut self, part: usize, before: &MarkBefore) -> bool {
        let Ok(at) = self.addresses.find_in(part, &before.spot) else { return false };
        if before.printed {
            return false;
        }
        let mut changed = self.take(at, &MarkupPiece::Bow(before.direction), None).is_some();
        if self.bows(at).is_empty() {
            for taken in before.took_off.iter().rev() {
                if let Some(way) = taken.kind.way() {
                    changed |= self.put(at, &MarkupPiece::Bow(way), Some(&taken.exact));
                }
            }
        }
        changed
    }

    /// Takes off a slur; how its ends stood, the beginning first.
    pub(crate) fn take_slur(
        &mut self,
        part: usize,
        slur: SlurStanding,
        exact: &[Exact],
    ) -> Option<[Exact; 2]> {
        let (from, to) = (NamedNote { part, note: slur.from }, NamedNote { part, note: slur.to });
        let (start, stop) = (MarkupPiece::SlurStart(slur.number), MarkupPiece::SlurStop(slur.number));
        if !self.has(from, &start) || !self.has(to, &stop) {
            return None;
        }
        let stop = self.take(to, &stop, exact.get(1))?;
        let start = self.take(from, &start, exact.first())?;
        self.slurs(part).remove(slur);
        Some([start, stop])
    }

    /// Puts a slur on: as it stood, else plainly with a free number. Says whether it could.
    pub(crate) fn put_slur(&mut self, part: usize, from: NoteId, to: NoteId, exact: &[Exact]) -> bool {
        let remembered = exact.first().and_then(|exact| slur_number(&exact.text));
        let Some(number) = remembered.or_else(|| self.slurs(part).free_number(from, to)) else {
            return false;
        };
        let start = self.put(NamedNote { part, note: from }, &MarkupPiece::SlurStart(number), exact.first());
        let stop = self.put(NamedNote { part, note: to }, &MarkupPiece::SlurStop(number), exact.get(1));
        self.slurs(part).add(SlurStanding { from, to, number });
        start && stop
    }

    /// Puts on a slur, or as many between the same two notes as are remembered. Says whether it could.
    pub(crate) fn put_slurs(&mut self, part: usize, from: NoteId, to: NoteId, exact: &[Exact]) -> bool {
        let mut pairs = exact.chunks(2);
        let first = pairs.next().unwrap_or_default();
        self.put_slur(part, from, to, first) && pairs.all(|pair| self.put_slur(part, from, to, pair))
    }

    /// Takes off what [`Self::put_slurs`] put on, the last one first. Says whether anything stood there.
    pub(crate) fn take_slurs(&mut self, part: usize, from: NoteId, to: NoteId, exact: &[Exact]) -> bool {
        let pairs: Vec<&[Exact]> = if exact.is_empty() { vec![&[]] } else { exact.chunks(2).collect() };
        let mut changed = false;
        for pair in pairs.into_iter().rev() {
            let number = pair.first().and_then(|exact| slur_number(&exact.text));
            let slurs = self.slurs(part);
            let slur = number.and_then(|number| slurs.numbered(from, to, number));
            let Some(slur) = slur.or_else(|| slurs.between(from, to)) else { continue };
            changed |= self.take_slur(part, slur, pair).is_some();
        }
        changed
    }

    /// The last note of a slur that an entry names, and the ends it shall have.
    pub(crate) fn slur_ends(&self, entry: &Entry, at: NamedNote) -> Result<SlurEnds, Saying> {
        let get = |spot: &Spot| match self.addresses.find_in(at.part, spot) {
            Ok(found) => Ok(found.note),
            Err(why) => Err(Saying::new("why-other-end")
                .with("at", self.addresses.spot_argument(at.part, spot))
                .with("why", why.saying())),
        };
        match &entry.mark {
            Mark::SlurAdded { to } => Ok(SlurEnds { printed: None, wanted: Some((at.note, get(to)?)) }),
            Mark::SlurRemoved { to } => Ok(SlurEnds { printed: Some((at.note, get(to)?)), wanted: None }),
            Mark::SlurMoved { to, new_from, new_to } => {
                let to = get(to)?;
                let first = new_from.as_ref().map_or(Ok(at.note), get)?;
                let last = new_to.as_ref().map_or(Ok(to), get)?;
                Ok(SlurEnds { printed: Some((at.note, to)), wanted: Some((first, last)) })
            }
            _ => Ok(SlurEnds { printed: None, wanted: None }),
        }
    }

    /// Which way the bow goes by an entry: by its own word, else as on the note before.
    pub(crate) fn way(&mut self, entry: &Entry, at: NamedNote) -> Option<BowDirection> {
        match entry.mark {
            Mark::Down => Some(BowDirection::Down),
            Mark::Up => Some(BowDirection::Up),
            Mark::Hook { bow, .. } | Mark::Retake { bow } => bow.or_else(|| self.way_before(at)),
            _ => None,
        }
    }

    /// How a hook or a retake was written when the layer was last applied, if it still stands so: what the
    /// note before it said may have changed since.
    pub(crate) fn standing_way(&mut self, entry: &Entry, at: NamedNote) -> Option<BowDirection> {
        let way = entry.written.filter(|_| entry.state != EntryState::LeftOut)?;
        self.has(at, &MarkupPiece::Bow(way)).then_some(way)
    }

    /// The bow mark on the note before a note, if it bears one.
    fn way_before(&mut self, at: NamedNote) -> Option<BowDirection> {
        let before = NamedNote { note: note_before(self.score(), at)?, ..at };
        let note = self.begins.get(&before).copied().unwrap_or(before.note);
        self.bows(NamedNote { note, ..at }).last().copied()
    }
}

/// The ends of a slur: as printed, and as wanted.
pub(crate) struct SlurEnds {
    pub(crate) printed: Option<(NoteId, NoteId)>,
    pub(crate) wanted: Option<(NoteId, NoteId)>,
}

/// The note before a note in its voice; of a chain of ties the first. Slurs do not count: they may be the
/// layer's own, and what a hook means must not hang on whether they are there yet.
pub(crate) fn note_before(score: &Score, at: NamedNote) -> Option<NoteId> {
    let part = &score.parts[at.part];
    let note = part.note(at.note);
    let earlier = part.notes.iter().zip(0..).filter(|(other, _)| {
        other.voice == note.voice
            && other.onset < note.onset
            && !other.pitch.is_rest()
            && other.chord == ChordRole::Main
    });
    let (_, last) = earlier.max_by_key(|(other, index)| (other.onset, *index))?;
    let mut first = NoteId(last);
    while let TieEnd::Joined(before) = part.note(first).tie.from_before {
        first = before;
    }
    Some(first)
}

/// The last note of the chain of ties that a note begins; of a chord the first.
pub(crate) fn last_tied(part: &Part, mut note: NoteId) -> NoteId {
    while let TieEnd::Joined(after) = part.note(note).tie.to_after {
        // A tie leads on in time, or it leads nowhere.
        if part.note(after).onset <= part.note(note).onset {
            break;
        }
        note = after;
    }
    part.chord_head(note)
}

/// The number of the slur element in a remembered text.
fn slur_number(text: &str) -> Option<u8> {
    let wrapped = format!("<m>{text}</m>");
    let document = Document::parse(wrapped.into_bytes(), &arcata_xml::Limits::default()).ok()?;
    let slur = document.elements().find(|element| element.tag() == arcata_xml::Tag::SLUR)?;
    Some(slur.attribute("number").map_or(1, |number| number.trim().parse().unwrap_or(1)))
}
