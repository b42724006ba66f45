//! Entries of a layer that contradict each other, and what a layer does to slurs.

use std::collections::{BTreeMap, BTreeSet};

use arcata_languages::{Argument, Saying};
use arcata_score::NoteId;

use crate::address::NamedNote;
use crate::model::{EntryState, Layer, Mark, Question};
use crate::session::LayerSession;

/// The two ends of a slur of a part.
pub(crate) type SlurKey = (usize, NoteId, NoteId);

/// Why entries contradict others of their layer.
#[derive(Default)]
pub(crate) struct Quarrels {
    /// Questions that several entries answer differently.
    answers: BTreeMap<(NamedNote, Question), usize>,
    /// What else the layer says of the slur between the same two notes.
    slurs: BTreeMap<(NamedNote, Mark), Saying>,
}

impl Quarrels {
    /// Of a layer.
    pub(crate) fn of(session: &LayerSession<'_, '_>, layer: &Layer) -> Self {
        let mut answers: BTreeMap<(NamedNote, Question), Vec<&Mark>> = BTreeMap::new();
        for entry in &layer.entries {
            if let Ok(found) = session.addresses.find(&entry.place) {
                let given = answers.entry((found, entry.mark.question())).or_default();
                if !given.contains(&&entry.mark) {
                    given.push(&entry.mark);
                }
            }
        }
        let counted = answers.into_iter().map(|(key, given)| (key, given.len()));
        Self {
            answers: counted.filter(|(_, count)| *count > 1).collect(),
            slurs: slur_quarrels(session, layer),
        }
    }

    /// Why an entry contradicts another one: the end of a sentence that begins with its place.
    pub(crate) fn why(&self, at: NamedNote, mark: &Mark) -> Option<Saying> {
        match self.of_count(at, mark) {
            Some(count) => Some(Saying::new("why-several-answers").with("count", count)),
            None => self.slurs.get(&(at, mark.clone())).cloned(),
        }
    }

    /// How many answers its question has, where these are several.
    pub(crate) fn of_count(&self, at: NamedNote, mark: &Mark) -> Option<usize> {
        self.answers.get(&(at, mark.question())).copied()
    }

    /// What else is said of its slur.
    pub(crate) fn of_slur(&self, at: NamedNote, mark: &Mark) -> Option<&Saying> {
        self.slurs.get(&(at, mark.clone()))
    }

    /// Whether an entry contradicts another.
    pub(crate) fn has(&self, at: NamedNote, mark: &Mark) -> bool {
        self.of_count(at, mark).is_some() || self.of_slur(at, mark).is_some()
    }
}

/// An entry that takes a slur off or draws one.
struct SlurWish<'l> {
    at: NamedNote,
    mark: &'l Mark,
    said: Argument,
    takes: Option<SlurKey>,
    draws: Option<SlurKey>,
}

fn slur_wishes<'l>(session: &LayerSession<'_, '_>, layer: &'l Layer) -> Vec<SlurWish<'l>> {
    let wish = |entry: &'l crate::model::Entry| {
        if !matches!(entry.mark.question(), Question::Slur(_)) {
            return None;
        }
        let at = session.addresses.find(&entry.place).ok()?;
        let ends = session.slur_ends(entry, at).ok()?;
        let key = |(from, to): (NoteId, NoteId)| (at.part, from, to);
        Some(SlurWish {
            at,
            mark: &entry.mark,
            said: Argument::Row(vec![
                session.addresses.spot_argument(at.part, &entry.place.spot),
                entry.mark.saying_in(&session.addresses, &entry.place.part).into(),
            ]),
            takes: ends.printed.map(key),
            draws: ends.wanted.map(key),
        })
    };
    layer.entries.iter().filter_map(wish).collect()
}

/// Between two notes a slur is taken off once, or drawn once, or moved to where none is drawn. Whatever order the
/// entries came in would decide the rest, and applying the layer again would take off what it had drawn itself.
/// Asking for the same slur in two ways of naming its notes is no contradiction.
fn slur_quarrels(session: &LayerSession<'_, '_>, layer: &Layer) -> BTreeMap<(NamedNote, Mark), Saying> {
    let wishes = slur_wishes(session, layer);
    let mut about: BTreeMap<SlurKey, Vec<&SlurWish<'_>>> = BTreeMap::new();
    for wish in &wishes {
        for key in wish.takes.iter().chain(wish.draws.iter().filter(|key| wish.takes != Some(**key))) {
            about.entry(*key).or_default().push(wish);
        }
    }
    let mut quarrels = BTreeMap::new();
    for one in &wishes {
        let near = one.takes.iter().chain(&one.draws).filter_map(|key| about.get(key)).flatten();
        let other = near.into_iter().find(|other| (other.takes, other.draws) != (one.takes, one.draws));
        if let Some(other) = other {
            let why = Saying::new("why-slur-said-otherwise").with("other", other.said.clone());
            quarrels.entry((one.at, one.mark.clone())).or_insert(why);
        }
    }
    quarrels
}

/// What a layer does to slurs.
#[derive(Default)]
pub(crate) struct SlurWishes {
    pub(crate) taken: BTreeSet<SlurKey>,
    pub(crate) drawn: BTreeSet<SlurKey>,
}

impl SlurWishes {
    /// Of a layer, contradictions aside.
    pub(crate) fn of(session: &LayerSession<'_, '_>, layer: &Layer, quarrels: &Quarrels) -> Self {
        let mut wishes = Self::default();
        for wish in slur_wishes(session, layer) {
            if !quarrels.has(wish.at, wish.mark) {
                wishes.taken.extend(wish.takes);
                wishes.drawn.extend(wish.draws);
            }
        }
        wishes
    }

    /// The slurs of a part when the layer is on it.
    pub(crate) fn standing(&self, session: &mut LayerSession<'_, '_>, part: usize) -> Vec<(NoteId, NoteId)> {
        let mut slurs = session.slurs(part).pairs();
        slurs.retain(|(from, to)| !self.taken.contains(&(part, *from, *to)));
        slurs.extend(self.drawn.iter().filter(|(of, _, _)| *of == part).map(|(_, from, to)| (*from, *to)));
        slurs.sort_unstable();
        slurs.dedup();
        slurs
    }
}

/// What the layers below have put where.
#[derive(Default)]
pub(crate) struct Below {
    pub(crate) marks: BTreeSet<(NamedNote, Mark)>,
    /// Slurs that they draw, with what is said of them: the last layer's word.
    pub(crate) drawn: BTreeMap<SlurKey, crate::model::Entry>,
    /// Slurs that they take off.
    pub(crate) taken: BTreeMap<SlurKey, crate::model::Entry>,
    /// Bows that they ask for: the last layer's word.
    pub(crate) bows: BTreeMap<NamedNote, crate::model::Entry>,
}

impl Below {
    pub(crate) fn of(session: &LayerSession<'_, '_>, below: &[Layer]) -> Self {
        let mut said = Self::default();
        for layer in below {
            for entry in &layer.entries {
                let Ok(at) = session.addresses.find(&entry.place) else { continue };
                said.marks.insert((at, entry.mark.clone()));
                if entry.state == EntryState::LeftOut {
                    continue;
                }
                if entry.mark.question() == Question::Bow {
                    said.bows.insert(at, entry.clone());
                }
                let key = |(from, to): (NoteId, NoteId)| (at.part, from, to);
                let mut ends = session.slur_ends(entry, at).ok();
                if let (Some(slur), Some(ends)) = (&entry.hook_slur, &mut ends) {
                    let note = |spot| session.addresses.find_in(at.part, spot).ok().map(|found| found.note);
                    ends.wanted = note(&slur.from).zip(note(&slur.to));
                }
                let Some(ends) = ends else { continue };
                if let Some(key) = ends.printed.map(key) {
                    said.drawn.remove(&key);
                    said.taken.insert(key, entry.clone());
                }
                if let Some(key) = ends.wanted.map(key) {
                    said.taken.remove(&key);
                    said.drawn.insert(key, entry.clone());
                }
            }
        }
        said
    }
}
