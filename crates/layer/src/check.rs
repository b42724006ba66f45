//! What is wrong with a layer, by itself and on its score.

use std::fmt;

use arcata_score::{NoteId, Part, Score, TieEnd};
use arcata_xml::Document;

use crate::address::{Addresses, NamedNote};
use crate::contradictions::{Quarrels, SlurWishes};
use crate::hook_slur::{HookSlurs, Judged};
use crate::identity::{self, Kinship};
use crate::model::{Address, Entry, Layer, Mark};
use crate::put_bows::asked;
use crate::session::{LayerSession, note_before};
use crate::told::ToldBows;

/// Something about a layer that somebody should look at.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LayerRemark {
    /// The note, where it is about one.
    pub place: Option<Address>,
    /// What kind of thing.
    pub kind: LayerRemarkKind,
    /// One sentence without the place.
    pub message: String,
}

/// The kinds of remarks.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum LayerRemarkKind {
    /// The layer belongs to another score or another state of this one.
    OtherScore,
    /// An entry whose note is not there.
    NoNote,
    /// An entry on a rest.
    OnRest,
    /// An entry that says what another says.
    Double,
    /// Entries that contradict each other.
    Contradiction,
    /// Two owners who want different things.
    Conflict,
    /// A bow mark inside a slur, where the bow is not changed.
    InsideSlur,
    /// A bow mark on a note that is tied over.
    TiedOver,
    /// A hook or a retake on the first note, where there is no stroke to go on from.
    NothingBefore,
    /// A hook that cannot be written as a slur with dots or dashes.
    HookSlur,
    /// A slur whose other end is not there or in the wrong order.
    SlurEnd,
    /// An entry that was carried over with doubt.
    Doubt,
}

impl LayerRemark {
    /// As it is said where the score is known: by bar and beat.
    #[must_use]
    pub fn said(&self, addresses: &Addresses<'_>) -> String {
        let place = self.place.as_ref().map(|place| format!("{}: ", addresses.said(place)));
        format!("{}{}", place.unwrap_or_default(), self.message)
    }
}

impl fmt::Display for LayerRemark {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match &self.place {
            Some(place) => write!(out, "{place}: {}", self.message),
            None => write!(out, "{}", self.message),
        }
    }
}

/// Looks through a layer on a score. An empty list means that every entry can be applied and makes sense.
#[must_use]
pub fn check(layer: &Layer, document: &Document, score: &Score) -> Vec<LayerRemark> {
    let mut remarks = Vec::new();
    if identity::kinship(layer, document, score) == Kinship::OtherMusic {
        let message = "the layer was made for other notes than these: another score, or this one before a \
                       revision; carry it over";
        remarks.push(LayerRemark {
            place: None,
            kind: LayerRemarkKind::OtherScore,
            message: message.to_owned(),
        });
    }
    let mut session = LayerSession::new(document, score);
    for conflict in &layer.conflicts {
        let message = format!(
            "{} wants {}, {} wants {}; keep one",
            conflict.first_owner,
            wishes(&conflict.first, &session.addresses),
            conflict.second_owner,
            wishes(&conflict.second, &session.addresses)
        );
        remarks.push(LayerRemark {
            place: Some(conflict.place.clone()),
            kind: LayerRemarkKind::Conflict,
            message,
        });
    }
    let quarrels = Quarrels::of(&session, layer);
    let hooks = hook_slurs(&mut session, layer, &quarrels, document, score);
    for (index, entry) in layer.entries.iter().enumerate() {
        let words = entry.mark.words_in(&session.addresses, &entry.place.part);
        let mut remark = |kind, message: String| {
            remarks.push(LayerRemark { place: Some(entry.place.clone()), kind, message });
        };
        let doubled = layer.entries[..index].iter().rev().take_while(|other| other.place == entry.place);
        if doubled.into_iter().any(|other| other.says_the_same(entry)) {
            remark(LayerRemarkKind::Double, format!("{words} stands there twice; keep one"));
            continue;
        }
        if let Some(doubt) = &entry.doubt {
            let message = format!("{words}, carried with doubt: {doubt}");
            remark(LayerRemarkKind::Doubt, message);
        }
        match session.addresses.find(&entry.place) {
            Err(crate::NotFound::Rest) => {
                let message = format!("{words} on a rest; move it to a note or take it out");
                remark(LayerRemarkKind::OnRest, message);
            }
            Err(why) => remark(LayerRemarkKind::NoNote, format!("{words}: {why}")),
            Ok(at) => {
                if let Some(count) = quarrels.of_count(at, &entry.mark) {
                    let message = format!("{words}, and {count} answers in all; keep one");
                    remark(LayerRemarkKind::Contradiction, message);
                } else if let Some(why) = quarrels.of_slur(at, &entry.mark) {
                    remark(LayerRemarkKind::Contradiction, format!("{words}: {why}"));
                } else if entry.mark.is_hook_slur() {
                    if let Some(why) = hooks.refused(at) {
                        remark(LayerRemarkKind::HookSlur, format!("{words}: {why}"));
                    }
                } else if let Some((kind, message)) = look_at(&mut session, layer, entry, at) {
                    remark(kind, message);
                }
            }
        }
    }
    remarks
}

/// What becomes of the hooks that ask for a slur; what bows the plan makes of them is not known here.
fn hook_slurs(
    session: &mut LayerSession<'_, '_>,
    layer: &Layer,
    quarrels: &Quarrels,
    document: &Document,
    score: &Score,
) -> HookSlurs {
    let kinship = identity::kinship(layer, document, score);
    let clean = matches!(kinship, Kinship::Unbound | Kinship::Clean);
    let slurs = SlurWishes::of(session, layer, quarrels);
    let (asked, told) = (asked(session, layer), ToldBows::default());
    let judged = Judged { clean, told: &told, asked: &asked, quarrels, slurs: &slurs };
    HookSlurs::of(session, &mut layer.entries.clone(), &judged)
}

fn wishes(entries: &[Entry], addresses: &Addresses<'_>) -> String {
    let said = entries.iter().map(|entry| entry.mark.words_in(addresses, &entry.place.part));
    let said: Vec<String> = said.collect();
    if said.is_empty() { "nothing".to_owned() } else { said.join(" and ") }
}

fn look_at(
    session: &mut LayerSession<'_, '_>,
    layer: &Layer,
    entry: &Entry,
    at: NamedNote,
) -> Option<(LayerRemarkKind, String)> {
    let score = session.score();
    let part = &score.parts[at.part];
    match &entry.mark {
        Mark::Down | Mark::Up | Mark::Double { .. } | Mark::Hook { .. } | Mark::Retake { .. } => {
            if let TieEnd::Joined(_) = part.note(at.note).tie.from_before {
                let message = "the note is tied over: no new stroke begins on it".to_owned();
                return Some((LayerRemarkKind::TiedOver, message));
            }
            if inside_slur(part, at.note) && !unslurred(layer, entry) {
                let message = format!(
                    "{} inside a slur, where the bow goes on; take the slur off there",
                    entry.mark.words()
                );
                return Some((LayerRemarkKind::InsideSlur, message));
            }
            (entry.mark.follows() && note_before(score, at).is_none()).then(|| {
                let message = format!("{}, but no note comes before it", entry.mark.words());
                (LayerRemarkKind::NothingBefore, message)
            })
        }
        Mark::SlurAdded { .. } | Mark::SlurRemoved { .. } | Mark::SlurMoved { .. } => {
            let message = match session.slur_ends(entry, at) {
                Err(why) => why,
                Ok(ends) => {
                    let backwards = |(from, to): (NoteId, NoteId)| {
                        (part.note(from).onset, from) >= (part.note(to).onset, to)
                    };
                    ends.wanted.filter(|ends| backwards(*ends))?;
                    "the slur's last note does not come after its first".to_owned()
                }
            };
            Some((LayerRemarkKind::SlurEnd, message))
        }
        Mark::AsItComes | Mark::Lift | Mark::InBow { .. } | Mark::Text { .. } => None,
    }
}

/// Whether a note lies under a slur of its voice that began before it. Where one slur ends and the next
/// begins on one note the bow may change.
fn inside_slur(part: &Part, note: NoteId) -> bool {
    let here = part.note(note);
    let begins = part.slurs.iter().any(|slur| slur.start == note);
    part.slurs.iter().any(|slur| {
        let (start, end) = (part.note(slur.start), part.note(slur.end));
        let before_end = here.onset < end.onset || (here.onset == end.onset && !begins);
        start.voice == here.voice && start.onset < here.onset && before_end
    })
}

/// Whether the layer takes slurs off or moves them around an entry.
fn unslurred(layer: &Layer, entry: &Entry) -> bool {
    layer.entries.iter().any(|other| {
        other.place.part == entry.place.part
            && match &other.mark {
                Mark::SlurRemoved { to } | Mark::SlurMoved { to, .. } => {
                    other.place.spot <= entry.place.spot && entry.place.spot <= *to
                }
                _ => false,
            }
    })
}
