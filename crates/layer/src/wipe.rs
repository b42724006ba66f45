//! Taking a layer off a score without a trace.

use arcata_score::{NoteId, Score};
use arcata_xml::{Document, EditList};

use crate::address::NamedNote;
use crate::apply::{LayerError, LeftOut, Trust, check_kinship};
use crate::hook_slur::take_hook_slur;
use crate::identity::Kinship;
use crate::markup::MarkupPiece;
use crate::model::{Entry, EntryState, HookSign, Layer, Mark};
use crate::session::{LayerSession, WAYS};

/// A score without a layer.
#[derive(Clone, Debug)]
pub struct Wiped {
    /// What changes in the document.
    pub edits: EditList,
    /// Entries whose marks were taken off, or whose printed marks came back.
    pub taken_off: usize,
    /// Entries that named no note, and why.
    pub left_out: Vec<LeftOut>,
}

/// Takes the marks of a layer off a score and puts back what they took off. What the layer knows to have
/// been printed already stays. On the clean score nothing happens.
///
/// # Errors
///
/// A layer of another score, and a document that leaves no way to take an element out.
pub fn wipe(document: &Document, score: &Score, layer: &Layer, trust: Trust) -> Result<Wiped, LayerError> {
    let kinship = check_kinship(layer, document, score, trust)?;
    let mut wiped = Wiped { edits: EditList::default(), taken_off: 0, left_out: Vec::new() };
    if kinship == Kinship::Clean {
        return Ok(wiped);
    }
    let mut layer = layer.clone();
    layer.put_in_order();
    let mut session = LayerSession::new(document, score);
    // The last mark put on is the first to go; slurs of hooks were put on before the others.
    let (hooked, others): (Vec<&Entry>, Vec<&Entry>) =
        layer.entries.iter().partition(|entry| entry.mark.is_hook_slur());
    let on_score = others.into_iter().rev().chain(hooked.into_iter().rev());
    for entry in on_score.filter(|entry| entry.state != EntryState::LeftOut) {
        match session.addresses.find(&entry.place) {
            Ok(at) => wiped.taken_off += usize::from(take_entry(&mut session, entry, at)),
            Err(why) => wiped.left_out.push(LeftOut { entry: entry.clone(), why: why.saying() }),
        }
    }
    wiped.edits = session.surgery.finish()?;
    Ok(wiped)
}

/// Takes one entry off; says whether anything changed.
fn take_entry(session: &mut LayerSession<'_, '_>, entry: &Entry, at: NamedNote) -> bool {
    let mut changed = entry.before.as_ref().is_some_and(|before| session.take_before(at.part, before));
    if let Some(slur) = &entry.hook_slur {
        changed |= take_hook_slur(session, at.part, slur);
    }
    let own = entry.state == EntryState::Own;
    let ends = session.slur_ends(entry, at).ok();
    if own {
        changed |= match &entry.mark {
            Mark::Down | Mark::Up | Mark::Hook { sign: HookSign::Marks, .. } | Mark::Retake { .. } => {
                take_bow(session, entry, at)
            }
            // The slur went with the first of the hooks that share it.
            Mark::Hook { .. } => false,
            Mark::Double { first } => {
                let second = session.take(at, &MarkupPiece::Bow(first.other()), entry.exact.get(1)).is_some();
                session.take(at, &MarkupPiece::Bow(*first), entry.exact.first()).is_some() | second
            }
            Mark::AsItComes => false,
            Mark::Lift => session.take(at, &MarkupPiece::BreathMark, entry.exact.first()).is_some(),
            Mark::InBow { place } => {
                let words = MarkupPiece::Words(place.words().to_owned());
                session.take(at, &words, entry.exact.first()).is_some()
            }
            Mark::Text { text } => {
                let words = MarkupPiece::Words(text.clone());
                session.take(at, &words, entry.exact.first()).is_some()
            }
            Mark::SlurAdded { .. } | Mark::SlurRemoved { .. } | Mark::SlurMoved { .. } => {
                let wanted = ends.as_ref().and_then(|ends| ends.wanted);
                wanted.is_some_and(|(from, to)| session.take_slurs(at.part, from, to, &entry.exact))
            }
        };
    }
    changed | put_back(session, entry, at, ends.and_then(|ends| ends.printed))
}

fn take_bow(session: &mut LayerSession<'_, '_>, entry: &Entry, at: NamedNote) -> bool {
    let way = session.standing_way(entry, at).or_else(|| session.way(entry, at));
    // What a hook stood for may have changed since; whatever bow mark stands there is then its.
    let guess = entry.mark.follows().then_some(WAYS);
    let ways = way.into_iter().chain(guess.into_iter().flatten());
    let found = ways.into_iter().find(|way| session.has(at, &MarkupPiece::Bow(*way)));
    found.is_some_and(|way| session.take(at, &MarkupPiece::Bow(way), entry.exact.first()).is_some())
}

/// Puts printed marks back that gave way, unless they or others have come back already.
fn put_back(
    session: &mut LayerSession<'_, '_>,
    entry: &Entry,
    at: NamedNote,
    printed: Option<(NoteId, NoteId)>,
) -> bool {
    let mut changed = false;
    let bowed = !session.bows(at).is_empty() && entry.state == EntryState::Own;
    let mut ends = Vec::new();
    for taken in entry.taken_off().iter().rev() {
        let Some(way) = taken.kind.way() else {
            ends.push(taken.exact.clone());
            continue;
        };
        if !bowed {
            changed |= session.put(at, &MarkupPiece::Bow(way), Some(&taken.exact));
        }
    }
    if let (Some((from, to)), false) = (printed, ends.is_empty())
        && session.slurs(at.part).between(from, to).is_none()
    {
        for pair in ends.chunks(2) {
            changed |= session.put_slur(at.part, from, to, pair);
        }
    }
    changed
}
