//! Bows that a layer asks for by the stroke before, as somebody who knows the strokes has settled them.

use std::collections::{BTreeMap, BTreeSet};

use arcata_languages::Saying;
use arcata_score::{BowDirection, NoteId};

use crate::address::{Addresses, NamedNote};
use crate::model::{Entry, HookSign, Layer, Mark, Question};

/// What a hook or a retake comes to in a plan.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct ToldBow {
    /// Which way it goes, and the stroke before it.
    pub direction: BowDirection,
    /// The first note of the stroke before; nothing where none comes before.
    pub before: Option<NoteId>,
}

/// The hooks and retakes of a layer by their notes. A layer knows notes, not strokes: what the stroke before is, and which way
/// it goes, only a plan can tell.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct ToldBows {
    told: BTreeMap<NamedNote, Result<ToldBow, Saying>>,
}

impl ToldBows {
    /// Says what the bow asked for at a note comes to.
    pub fn tell(&mut self, at: NamedNote, bow: ToldBow) {
        self.told.insert(at, Ok(bow));
    }

    /// Says why the bow asked for at a note cannot be: the end of a sentence that begins with its place.
    pub fn refuse(&mut self, at: NamedNote, why: Saying) {
        self.told.insert(at, Err(why));
    }

    /// The layer with all that is told in words: hooks and retakes with their directions, and the marks on the strokes before
    /// them as entries of their own, where neither the score nor the layer says anything there. A hook that is a slur with
    /// dots or dashes needs no marks, and stays as it is.
    #[must_use]
    pub fn spelt_out(&self, layer: &Layer, addresses: &Addresses<'_>) -> Layer {
        let (mut out, mut more) = (layer.clone(), Vec::new());
        let says = |entry: &Entry| entry.mark.question() == Question::Bow;
        let mut known: BTreeSet<NamedNote> = layer
            .entries
            .iter()
            .filter(|entry| says(entry))
            .filter_map(|entry| addresses.find(&entry.place).ok())
            .collect();
        for entry in &mut out.entries {
            let Ok(at) = addresses.find(&entry.place) else { continue };
            let Some(Ok(told)) = self.of(at) else { continue };
            match &mut entry.mark {
                Mark::Hook { bow, sign: HookSign::Marks } | Mark::Retake { bow } => {
                    *bow = bow.or(Some(told.direction))
                }
                _ => continue,
            }
            let Some(note) = told.before else { continue };
            let before = NamedNote { part: at.part, note };
            let printed = addresses.score().parts[at.part].note(note).bow_mark.map(|mark| mark.direction);
            if printed != Some(told.direction)
                && known.insert(before)
                && let Some(place) = addresses.place(at.part, note)
            {
                let mark =
                    Entry { owner: entry.owner.clone(), ..Entry::new(place, Mark::of(told.direction)) };
                more.push(mark);
            }
        }
        out.entries.extend(more);
        out.put_in_order();
        out
    }

    /// What is known of a note.
    #[must_use]
    pub fn of(&self, at: NamedNote) -> Option<Result<ToldBow, &Saying>> {
        self.told.get(&at).map(|told| told.as_ref().copied())
    }
}
