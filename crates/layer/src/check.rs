//! What is wrong with a layer, by itself and on its score.

use std::fmt;

use arcata_languages::{Argument, Saying};
use arcata_score::{NoteId, Part, Score, TieEnd};
use arcata_xml::Document;

use crate::address::{Addresses, NamedNote};
use crate::contradictions::{Quarrels, SlurWishes};
use crate::hook_slur::{HookSlurs, Judged};
use crate::identity::{self, Kinship};
use crate::model::{Address, Entry, Layer, Mark, Spot};
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
    pub message: Saying,
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
        let message = Saying::new("check-other-score");
        remarks.push(LayerRemark { place: None, kind: LayerRemarkKind::OtherScore, message });
    }
    let mut session = LayerSession::new(document, score);
    for conflict in &layer.conflicts {
        let message = Saying::new("check-conflict")
            .quoting("first", &conflict.first_owner)
            .with("one", wishes(&conflict.first, &session.addresses))
            .quoting("second", &conflict.second_owner)
            .with("other", wishes(&conflict.second, &session.addresses));
        remarks.push(LayerRemark {
            place: Some(conflict.place.clone()),
            kind: LayerRemarkKind::Conflict,
            message,
        });
    }
    let quarrels = Quarrels::of(&session, layer);
    let hooks = hook_slurs(&mut session, layer, &quarrels, document, score);
    for (index, entry) in layer.entries.iter().enumerate() {
        let mark = entry.mark.saying_in(&session.addresses, &entry.place.part);
        let of = |key: &'static str| Saying::new(key).with("mark", mark.clone());
        let mut remark = |kind, message: Saying| {
            remarks.push(LayerRemark { place: Some(entry.place.clone()), kind, message });
        };
        let doubled = layer.entries[..index].iter().rev().take_while(|other| other.place == entry.place);
        if doubled.into_iter().any(|other| other.says_the_same(entry)) {
            remark(LayerRemarkKind::Double, of("check-twice"));
            continue;
        }
        if let Some(doubt) = &entry.doubt {
            remark(LayerRemarkKind::Doubt, of("check-doubt").quoting("doubt", doubt));
        }
        match session.addresses.find(&entry.place) {
            Err(crate::NotFound::Rest) => remark(LayerRemarkKind::OnRest, of("check-on-rest")),
            Err(why) => remark(LayerRemarkKind::NoNote, of("check-mark").with("why", why.saying())),
            Ok(at) => {
                if let Some(count) = quarrels.of_count(at, &entry.mark) {
                    remark(LayerRemarkKind::Contradiction, of("check-several-answers").with("count", count));
                } else if let Some(why) = quarrels.of_slur(at, &entry.mark) {
                    remark(LayerRemarkKind::Contradiction, of("check-mark").with("why", why.clone()));
                } else if entry.mark.is_hook_slur() {
                    if let Some(why) = hooks.refused(at) {
                        remark(LayerRemarkKind::HookSlur, of("check-mark").with("why", why.clone()));
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

fn wishes(entries: &[Entry], addresses: &Addresses<'_>) -> Argument {
    let said = entries.iter().map(|entry| entry.mark.saying_in(addresses, &entry.place.part).into());
    let said: Vec<Argument> = said.collect();
    if said.is_empty() { Saying::new("layer-nothing").into() } else { Argument::Chain(said) }
}

fn look_at(
    session: &mut LayerSession<'_, '_>,
    layer: &Layer,
    entry: &Entry,
    at: NamedNote,
) -> Option<(LayerRemarkKind, Saying)> {
    let score = session.score();
    let part = &score.parts[at.part];
    let mark = || entry.mark.saying(Spot::argument);
    let of = |key: &'static str| Saying::new(key).with("mark", mark());
    match &entry.mark {
        Mark::Down | Mark::Up | Mark::Double { .. } | Mark::Hook { .. } | Mark::Retake { .. } => {
            if let TieEnd::Joined(_) = part.note(at.note).tie.from_before {
                return Some((LayerRemarkKind::TiedOver, Saying::new("check-tied-over")));
            }
            if inside_slur(part, at.note) && !unslurred(layer, entry) {
                return Some((LayerRemarkKind::InsideSlur, of("check-inside-slur")));
            }
            (entry.mark.follows() && note_before(score, at).is_none())
                .then(|| (LayerRemarkKind::NothingBefore, of("check-nothing-before")))
        }
        Mark::SlurAdded { .. } | Mark::SlurRemoved { .. } | Mark::SlurMoved { .. } => {
            let message = match session.slur_ends(entry, at) {
                Err(why) => why,
                Ok(ends) => {
                    let backwards = |(from, to): (NoteId, NoteId)| {
                        (part.note(from).onset, from) >= (part.note(to).onset, to)
                    };
                    ends.wanted.filter(|ends| backwards(*ends))?;
                    Saying::new("check-slur-backwards")
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
