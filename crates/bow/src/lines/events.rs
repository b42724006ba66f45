//! Onsets of a line: what begins together.

use arcata_score::{
    Arpeggio, Articulations, BowDirection, Fermata, Length, Moment, Note, NoteId, NoteKind, Ornament, Part,
    Pitch, Plucked, TieEnd, TremoloRole,
};

use super::voices::VoiceGroup;
use crate::techniques::{Contact, Division, Techniques};

/// Not in this line (by definition).
const ELSEWHERE: u32 = u32::MAX;

/// All that begins at one moment.
#[derive(Clone, Debug)]
pub(crate) struct Event {
    pub(crate) onset: Moment,
    pub(crate) end: Moment,
    pub(crate) bar: u32,
    /// Grace notes, then notes.
    pub(crate) notes: Vec<NoteId>,
    pub(crate) pitch: Pitch,
    pub(crate) articulations: Articulations,
    pub(crate) printed: Option<BowDirection>,
    pub(crate) tremolo: Option<TremoloRole>,
    pub(crate) ornament: Option<Ornament>,
    pub(crate) fermata: Fermata,
    /// Notes that one player sounds together; 1 where a chord is divided.
    pub(crate) stopped: usize,
    pub(crate) rolled: Arpeggio,
    pub(crate) tie: TieInto,
    pub(crate) stroke: Sounding,
    /// The second bow of a note that bears both.
    pub(crate) second_bow: Option<BowDirection>,
}

/// Whether an event is held over from the one before.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum TieInto {
    /// A new attack.
    Not,
    /// Tied from the event before.
    Held,
}

/// Whether the bow sounds an event.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Sounding {
    /// The bow does.
    Bowed,
    /// A finger or the stick does.
    Otherwise,
}

impl Event {
    /// The second half of a note that bears both bows, which begins on its own stroke; the first keeps the attack.
    pub(super) fn split_off(&mut self) -> Option<Self> {
        let second = self.second_bow.take().filter(|_| self.tremolo.is_none())?;
        let half = Length::new(1, 2);
        let middle = self.onset + self.length().scaled(half.numerator(), half.denominator());
        let rest = Self {
            onset: middle,
            printed: Some(second),
            articulations: Articulations::default(),
            ornament: self.ornament,
            rolled: Arpeggio::None,
            notes: self.notes.clone(),
            ..self.clone()
        };
        self.end = middle;
        Some(rest)
    }

    pub(crate) fn length(&self) -> Length {
        self.end - self.onset
    }
}

/// The events of a line, and for each note of the part the event it belongs to.
pub(super) struct Events {
    pub(super) list: Vec<Event>,
    of_note: Vec<u32>,
    /// Rests under a fermata: (onset, length).
    pub(super) held_rests: Vec<(Moment, Length)>,
}

impl Events {
    /// The event with which something written from a note on begins: its own, or for a rest the next one.
    pub(super) fn first_event(&self, part: &Part, id: NoteId) -> Option<usize> {
        self.of_note(part, id, |onset| self.list.partition_point(|event| event.onset < onset))
    }

    /// The event with which something written up to a note ends: its own, or for a rest the one before.
    pub(super) fn last_event(&self, part: &Part, id: NoteId) -> Option<usize> {
        self.of_note(part, id, |onset| self.list.partition_point(|event| event.onset < onset).wrapping_sub(1))
    }

    fn of_note(&self, part: &Part, id: NoteId, near: impl Fn(Moment) -> usize) -> Option<usize> {
        match self.of_note.get(id.0 as usize).copied() {
            Some(index) if index != ELSEWHERE => Some(index as usize),
            _ => {
                let note = part.note(id);
                let index = note.pitch.is_rest().then(|| near(note.onset))?;
                (index < self.list.len()).then_some(index)
            }
        }
    }
}

pub(super) fn events(part: &Part, staff: u8, group: &VoiceGroup, techniques: &Techniques) -> Events {
    let mut list: Vec<Event> = Vec::with_capacity(group.notes.len());
    let mut of_note = vec![ELSEWHERE; part.notes.len()];
    for ids in group.notes.chunk_by(|a, b| part.note(*a).onset == part.note(*b).onset) {
        let (graces, mains): (Vec<NoteId>, Vec<NoteId>) =
            ids.iter().partition(|id| part.note(**id).kind != NoteKind::Ordinary);
        if let Some(first) = mains.first() {
            let event = event(part, *first, graces, &mains, techniques);
            list.push(event);
        } else if let Some(before) = list.last_mut() {
            before.notes.extend(graces);
        } else {
            continue;
        }
        let index = u32::try_from(list.len() - 1).unwrap_or(ELSEWHERE);
        for id in ids {
            of_note[id.0 as usize] = index;
        }
    }
    for index in 1..list.len() {
        let onset = list[index].onset;
        let before = &mut list[index - 1];
        before.end = before.end.min(onset);
        if is_held(part, &list[index], &of_note, index) {
            list[index].tie = TieInto::Held;
        }
    }
    let held_rests = part
        .notes
        .iter()
        .filter(|note| note.pitch.is_rest() && note.fermata == Fermata::Held)
        .filter(|note| (note.staff == staff || part.staves <= 1) && group.voices.contains(&note.voice))
        .map(|note| (note.onset, note.length))
        .collect();
    Events { list, of_note, held_rests }
}

fn event(
    part: &Part,
    first: NoteId,
    mut notes: Vec<NoteId>,
    mains: &[NoteId],
    techniques: &Techniques,
) -> Event {
    let leading = part.note(first);
    let run = techniques.at(leading.onset);
    let members = || mains.iter().map(|id| part.note(*id));
    notes.extend_from_slice(mains);
    let marked = |note: &Note| note.bow_mark.map(|mark| mark.direction);
    let stopped = if run.division == Division::Divided { 1 } else { mains.len() };
    let bowed = run.contact == Contact::Arco
        && members().any(|note| note.technical.plucked == Plucked::None && note.pitch != Pitch::Unpitched);
    Event {
        onset: leading.onset,
        end: members().map(|note| note.onset + note.length).max().unwrap_or(leading.onset),
        bar: leading.bar,
        pitch: leading.pitch,
        articulations: members().fold(Articulations::default(), |all, note| all.union(note.articulations)),
        printed: notes.iter().find_map(|id| marked(part.note(*id))),
        tremolo: members().find_map(|note| note.tremolo.map(|tremolo| tremolo.role)),
        ornament: members().find_map(|note| note.ornament),
        fermata: members().map(|note| note.fermata).find(|f| *f == Fermata::Held).unwrap_or_default(),
        stopped,
        rolled: members().map(|note| note.arpeggio).find(|a| *a != Arpeggio::None).unwrap_or_default(),
        tie: TieInto::Not,
        second_bow: members().find_map(|note| note.both_bows().map(|[_, second]| second)),
        stroke: if bowed { Sounding::Bowed } else { Sounding::Otherwise },
        notes,
    }
}

/// Whether any note of an event is tied from the event right before it.
fn is_held(part: &Part, event: &Event, of_note: &[u32], index: usize) -> bool {
    event.notes.iter().any(|id| match part.note(*id).tie.from_before {
        TieEnd::Joined(partner) => {
            of_note.get(partner.0 as usize).is_some_and(|event| *event as usize + 1 == index)
        }
        TieEnd::None | TieEnd::Open => false,
    })
}
