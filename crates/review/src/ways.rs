//! How the notes of a part are sounded: what a slur over them means depends on it.

use arcata_bow::techniques::{Contact, TechniqueRun, Techniques};
use arcata_score::{NoteId, Part, Score};

use crate::under_slur::note;

/// The states of a part, staff by staff.
#[derive(Debug)]
pub(crate) struct WaysOfPlaying<'a> {
    part: &'a Part,
    staves: Vec<Techniques>,
}

impl<'a> WaysOfPlaying<'a> {
    /// Reads the words of a part.
    pub(crate) fn new(score: &Score, part: &'a Part) -> Self {
        let staves = (1..=part.staves.max(1)).map(|staff| Techniques::new(score, part, staff));
        Self { part, staves: staves.collect() }
    }

    /// The states in force on a note; `None` where the part has no such note.
    pub(crate) fn at(&self, id: NoteId) -> Option<TechniqueRun> {
        let one = note(self.part, id)?;
        let staff = usize::from(one.staff.saturating_sub(1));
        Some(self.staves.get(staff).or(self.staves.first())?.at(one.onset))
    }

    /// Whether one stroke, or one breath, sounds a note: it is neither plucked nor struck nor a tremolo. Only then a slur over
    /// it says where the bow changes.
    pub(crate) fn is_plain(&self, id: NoteId) -> bool {
        self.is_bowed(id) && note(self.part, id).is_some_and(|note| note.tremolo.is_none())
    }

    /// Whether the hair sounds a note.
    pub(crate) fn is_bowed(&self, id: NoteId) -> bool {
        self.at(id).is_some_and(|state| state.contact == Contact::Arco)
    }
}
