//! Hooks that are written as a slur with dots or dashes.
//!
//! Two strokes in one direction are one slur over both, with a dot (short) or a dash (portato) on each note
//! (common practice). Hooks that go on from each other share one slur: slurs that meet on a note would be two
//! bows.

use std::collections::{BTreeMap, BTreeSet};

use arcata_languages::{Argument, Saying};
use arcata_score::{BowDirection, NoteId, NoteKind, TieEnd};

use crate::address::NamedNote;
use crate::apply::{EntryDone, NO_PLACE, remember};
use crate::contradictions::{Quarrels, SlurWishes};
use crate::markup::MarkupPiece;
use crate::model::{Entry, EntryState, HookSign, HookSlur, Mark, Question, Spot};
use crate::put_bows::{AskedDirections, OTHER_WAY, mark_before};
use crate::session::{LayerSession, last_tied, note_before};
use crate::told::ToldBows;

/// What becomes of the hooks of a layer that ask for a slur.
#[derive(Default)]
pub(crate) struct HookSlurs {
    by_note: BTreeMap<NamedNote, Result<usize, Saying>>,
    chains: Vec<Chain>,
}

/// Notes that one slur joins.
struct Chain {
    part: usize,
    sign: HookSign,
    /// The first note of the stroke that the hooked ones go on from.
    first: NoteId,
    /// The hooked notes, of chords the first.
    hooked: Vec<NoteId>,
    /// Which way, where a hook says it.
    bow: Option<BowDirection>,
    /// Whether the stroke before gets a mark: a direction is asked, and no entry of its own gives it.
    marks_first: bool,
    written: SlurWritten,
}

/// How a slur stands in the score.
enum SlurWritten {
    /// Not yet; then, whether it could be written.
    Not,
    Tried(Result<(), Saying>),
    /// By this layer, when it was last applied.
    Own,
    /// It is printed, with all its dots or dashes.
    Printed,
}

/// What the hooks of a layer are judged by.
pub(crate) struct Judged<'j> {
    /// The layer is not on the score.
    pub(crate) clean: bool,
    pub(crate) told: &'j ToldBows,
    pub(crate) asked: &'j AskedDirections,
    pub(crate) quarrels: &'j Quarrels,
    pub(crate) slurs: &'j SlurWishes,
}

/// A hook on its way into a chain.
struct Candidate {
    at: NamedNote,
    head: NoteId,
    before: NoteId,
    sign: HookSign,
    bow: Option<BowDirection>,
}

impl HookSlurs {
    /// Settles which hooks share a slur, and which cannot be written, whatever the order of the entries. What was
    /// written when the layer was last applied and stands is kept; what the layer no longer says is undone.
    pub(crate) fn of(session: &mut LayerSession<'_, '_>, entries: &mut [Entry], judged: &Judged<'_>) -> Self {
        let mut hooks = Self::default();
        hooks.keep(session, entries, judged);
        let unnamed = unnamed(session, entries);
        let groups = hooks.groups(session, entries, judged);
        for group in groups {
            hooks.settle(session, group, judged, &unnamed);
        }
        for chain in &hooks.chains {
            session.begins.extend(chain.notes().map(|hooked| (hooked, chain.first)));
        }
        hooks
    }

    /// The slurs that the layer has on the score, where it still asks for all of them.
    fn keep(&mut self, session: &mut LayerSession<'_, '_>, entries: &mut [Entry], judged: &Judged<'_>) {
        let mut asked = BTreeMap::new();
        for entry in entries.iter() {
            if let (Mark::Hook { sign, bow }, Ok(at)) = (&entry.mark, session.addresses.find(&entry.place))
                && !judged.quarrels.has(at, &entry.mark)
            {
                let head = session.score().parts[at.part].chord_head(at.note);
                asked.insert(NamedNote { note: head, ..at }, (at, *sign, *bow));
            }
        }
        for entry in entries.iter_mut().rev() {
            let Some(slur) = entry.hook_slur.take() else { continue };
            if judged.clean {
                continue;
            }
            let part = session.addresses.part(&entry.place.part);
            let Some(part) = part else { continue };
            let note = |spot: &Spot| session.addresses.find_in(part, spot).ok();
            let hooked: Option<Vec<NamedNote>> = slur.hooked.iter().map(note).collect();
            let (first, last) = (note(&slur.from), note(&slur.to));
            let (Some(first), Some(last)) = (first, last) else { continue };
            let still = hooked.as_ref().is_some_and(|hooked| {
                hooked.iter().all(|at| asked.get(at).is_some_and(|(_, sign, _)| *sign == slur.sign))
            });
            match hooked.filter(|_| still) {
                Some(hooked) if session.slurs(part).between(first.note, last.note).is_some() => {
                    let of = hooked.iter().filter_map(|at| asked.get(at));
                    let bow = of.clone().find_map(|(_, _, bow)| *bow);
                    let marks_first = !judged.asked.contains_key(&first);
                    for (at, _, _) in of {
                        self.by_note.insert(*at, Ok(self.chains.len()));
                    }
                    self.chains.push(Chain {
                        part,
                        sign: slur.sign,
                        first: first.note,
                        hooked: hooked.iter().map(|at| at.note).collect(),
                        bow,
                        marks_first,
                        written: SlurWritten::Own,
                    });
                    entry.hook_slur = Some(slur);
                }
                _ => {
                    take_hook_slur(session, part, &slur);
                }
            }
        }
    }

    /// The hooks that go on from each other, in the order of time, slurs aside; what cannot be is told.
    fn groups(
        &mut self,
        session: &LayerSession<'_, '_>,
        entries: &[Entry],
        judged: &Judged<'_>,
    ) -> Vec<Vec<Candidate>> {
        let mut candidates = Vec::new();
        for entry in entries {
            let Mark::Hook { sign, bow } = entry.mark else { continue };
            let Ok(at) = session.addresses.find(&entry.place) else { continue };
            if sign == HookSign::Marks
                || self.by_note.contains_key(&at)
                || judged.quarrels.has(at, &entry.mark)
            {
                continue;
            }
            let head = session.score().parts[at.part].chord_head(at.note);
            candidates.push((at, head, sign, bow));
        }
        let onset = |at: NamedNote| session.score().parts[at.part].note(at.note).onset;
        candidates.sort_by_key(|(at, ..)| (at.part, onset(*at), *at));
        candidates.dedup_by_key(|(at, ..)| *at);
        let mut groups: Vec<Vec<Candidate>> = Vec::new();
        let mut ends: BTreeMap<NamedNote, usize> = BTreeMap::new();
        let chords = bowed_chords(session, entries);
        for (at, head, sign, bow) in candidates {
            if chords.get(&NamedNote { note: head, ..at }).is_some_and(|notes| notes.len() > 1) {
                self.by_note.insert(at, Err(Saying::new("why-chord-bowed-twice")));
                continue;
            }
            let before = match stroke_before(session, NamedNote { note: head, ..at }) {
                Ok(before) => before,
                Err(why) => {
                    self.by_note.insert(at, Err(why));
                    continue;
                }
            };
            let candidate = Candidate { at, head, before, sign, bow };
            let goes_on = ends.get(&NamedNote { note: before, ..at }).copied();
            let group = goes_on.filter(|group| groups[*group].first().is_some_and(|one| one.sign == sign));
            if goes_on.is_some() && group.is_none() {
                self.by_note.insert(at, Err(Saying::new("why-hooked-with-other-sign")));
                continue;
            }
            let group = group.unwrap_or_else(|| {
                groups.push(Vec::new());
                groups.len() - 1
            });
            groups[group].push(candidate);
            ends.insert(NamedNote { note: head, ..at }, group);
        }
        groups
    }

    /// Makes the slurs of hooks that go on from each other.
    fn settle(
        &mut self,
        session: &mut LayerSession<'_, '_>,
        group: Vec<Candidate>,
        judged: &Judged<'_>,
        unnamed: &BTreeSet<NamedNote>,
    ) {
        if let Some(chain) = printed(session, &group, judged) {
            for one in &group {
                self.by_note.insert(one.at, Ok(self.chains.len()));
            }
            self.chains.push(chain);
            return;
        }
        let mut chain: Option<Chain> = None;
        let mut notes: Vec<NamedNote> = Vec::new();
        for one in group {
            let refused = judged.told.of(one.at).and_then(Result::err).cloned();
            let why = refused
                .or_else(|| slurred(session, &one, judged))
                .or_else(|| against(&one, chain.as_ref(), judged, unnamed));
            if let Some(why) = why {
                self.by_note.insert(one.at, Err(why));
                self.finish(session, chain.take(), &mut notes, judged);
                continue;
            }
            let chain = chain.get_or_insert_with(|| Chain {
                part: one.at.part,
                sign: one.sign,
                first: one.before,
                hooked: Vec::new(),
                bow: None,
                marks_first: !judged.asked.contains_key(&NamedNote { note: one.before, ..one.at }),
                written: SlurWritten::Not,
            });
            chain.hooked.push(one.head);
            chain.bow = chain.bow.or(one.bow);
            notes.push(one.at);
        }
        self.finish(session, chain, &mut notes, judged);
    }

    fn finish(
        &mut self,
        session: &LayerSession<'_, '_>,
        chain: Option<Chain>,
        notes: &mut Vec<NamedNote>,
        judged: &Judged<'_>,
    ) {
        let notes = std::mem::take(notes);
        let Some(chain) = chain else { return };
        let ends = (chain.part, chain.first, chain.last(session));
        let outcome = if judged.slurs.taken.contains(&ends) {
            Err(Saying::new("why-hook-draws-slur-again"))
        } else {
            Ok(self.chains.len())
        };
        self.by_note.extend(notes.into_iter().map(|at| (at, outcome.clone())));
        if outcome.is_ok() {
            self.chains.push(chain);
        }
    }

    /// Why the hook on a note cannot be written.
    pub(crate) fn refused(&self, at: NamedNote) -> Option<&Saying> {
        self.by_note.get(&at).and_then(|found| found.as_ref().err())
    }

    /// Writes a hook; the first of several that share a slur writes it all.
    pub(crate) fn put(
        &mut self,
        session: &mut LayerSession<'_, '_>,
        entry: &mut Entry,
        at: NamedNote,
        clean: bool,
    ) -> Result<EntryDone, Saying> {
        let index = match self.by_note.get(&at) {
            Some(found) => found.clone()?,
            None => return Err(NO_PLACE),
        };
        let Some(chain) = self.chains.get_mut(index) else { return Err(NO_PLACE) };
        if let SlurWritten::Tried(Err(why)) = &chain.written {
            return Err(why.clone());
        }
        let mut changed = false;
        // It was written otherwise when it was last applied.
        if let Some(before) = entry.before.take_if(|before| {
            entry.hook_slur.is_none() && !matches!(chain.written, SlurWritten::Printed)
                || chain.bow != Some(before.direction)
        }) {
            if entry.hook_slur.is_none() {
                session.take(at, &MarkupPiece::Bow(before.direction), None);
            }
            changed |= session.take_before(at.part, &before);
        }
        entry.written = None;
        if matches!(chain.written, SlurWritten::Printed) {
            entry.state = EntryState::Printed;
            return Ok(if changed { EntryDone::Written } else { EntryDone::Standing });
        }
        let taken = session.take_other_bows(at, None);
        changed |= !taken.is_empty();
        remember(entry, taken, clean);
        let leads = match chain.written {
            SlurWritten::Not => {
                let tried = chain.write(session, entry);
                chain.written = SlurWritten::Tried(tried.clone());
                tried?;
                changed = true;
                true
            }
            // A later one: its slur was written with the first.
            SlurWritten::Tried(_) => {
                changed = true;
                false
            }
            _ => entry.hook_slur.is_some(),
        };
        entry.state = EntryState::Own;
        if let Some(way) = chain.bow.filter(|_| leads && chain.marks_first) {
            changed |= mark_first(session, entry, NamedNote { part: chain.part, note: chain.first }, way);
        }
        Ok(if changed { EntryDone::Written } else { EntryDone::Standing })
    }
}

impl Chain {
    /// The hooked notes.
    fn notes(&self) -> impl Iterator<Item = NamedNote> + '_ {
        self.hooked.iter().map(|note| NamedNote { part: self.part, note: *note })
    }

    /// The last note under the slur.
    fn last(&self, session: &LayerSession<'_, '_>) -> NoteId {
        let last = self.hooked.last().copied().unwrap_or(self.first);
        last_tied(&session.score().parts[self.part], last)
    }

    /// Writes the slur and what stands under it, and lets the entry remember it.
    fn write(&self, session: &mut LayerSession<'_, '_>, entry: &mut Entry) -> Result<(), Saying> {
        let last = self.last(session);
        let spot = |session: &LayerSession<'_, '_>, note: NoteId| {
            let spot = session.addresses.spot(self.part, note);
            spot.filter(|spot| {
                session.addresses.find_in(self.part, spot) == Ok(NamedNote { part: self.part, note })
            })
            .ok_or_else(|| Saying::new("why-no-address-under-slur"))
        };
        let (from, to) = (spot(session, self.first)?, spot(session, last)?);
        let hooked: Vec<Spot> =
            self.hooked.iter().map(|note| spot(session, *note)).collect::<Result<_, _>>()?;
        if !session.put_slur(self.part, self.first, last, &[]) {
            return Err(Saying::new("why-too-many-slurs"));
        }
        let mut signs = Vec::new();
        let notes = std::iter::once((self.first, &from)).chain(self.hooked.iter().copied().zip(&hooked));
        for (note, spot) in notes {
            if !has_sign(session, NamedNote { part: self.part, note }, self.sign)
                && let Some(piece) = sign_piece(self.sign)
                && session.put(NamedNote { part: self.part, note }, &piece, None)
            {
                signs.push(spot.clone());
            }
        }
        entry.hook_slur = Some(HookSlur { from, to, sign: self.sign, hooked, signs });
        Ok(())
    }
}

/// Puts the direction on the stroke that the hooked ones go on from; says whether it was written.
fn mark_first(
    session: &mut LayerSession<'_, '_>,
    entry: &mut Entry,
    first: NamedNote,
    way: BowDirection,
) -> bool {
    let spot = session.addresses.spot(first.part, first.note);
    spot.is_some_and(|spot| mark_before(session, entry, (first, spot), way))
}

/// Takes a hook's slur off, with what was put under it, in the order opposite to that of putting. Says whether anything
/// changed.
pub(crate) fn take_hook_slur(session: &mut LayerSession<'_, '_>, part: usize, slur: &HookSlur) -> bool {
    let mut changed = false;
    for spot in slur.signs.iter().rev() {
        if let (Ok(at), Some(piece)) = (session.addresses.find_in(part, spot), sign_piece(slur.sign)) {
            changed |= session.take(at, &piece, None).is_some();
        }
    }
    let find = |spot: &Spot| session.addresses.find_in(part, spot).ok();
    if let (Some(from), Some(to)) = (find(&slur.from), find(&slur.to))
        && let Some(standing) = session.slurs(part).between(from.note, to.note)
    {
        changed |= session.take_slur(part, standing, &[]).is_some();
    }
    changed
}

fn sign_piece(sign: HookSign) -> Option<MarkupPiece> {
    match sign {
        HookSign::Marks => None,
        HookSign::Dots => Some(MarkupPiece::Dot),
        HookSign::Dashes => Some(MarkupPiece::Dash),
    }
}

/// Whether a note carries the sign already, on itself or on its chord: a wedge is a short note, too, and a dash with a dot
/// is either.
fn has_sign(session: &mut LayerSession<'_, '_>, at: NamedNote, sign: HookSign) -> bool {
    let likes: &[MarkupPiece] = match sign {
        HookSign::Marks => &[],
        HookSign::Dots => &[MarkupPiece::Dot, MarkupPiece::Wedge, MarkupPiece::DashAndDot],
        HookSign::Dashes => &[MarkupPiece::Dash, MarkupPiece::DashAndDot],
    };
    let part = &session.score().parts[at.part];
    let chord = (at.note.0..)
        .map(NoteId)
        .take_while(|note| (note.0 as usize) < part.notes.len() && part.chord_head(*note) == at.note);
    chord.into_iter().any(|note| likes.iter().any(|piece| session.has(NamedNote { note, ..at }, piece)))
}

/// The notes of each chord that the layer bows.
fn bowed_chords(
    session: &LayerSession<'_, '_>,
    entries: &[Entry],
) -> BTreeMap<NamedNote, BTreeSet<NamedNote>> {
    let mut chords: BTreeMap<NamedNote, BTreeSet<NamedNote>> = BTreeMap::new();
    for entry in entries.iter().filter(|entry| entry.mark.question() == Question::Bow) {
        let Ok(at) = session.addresses.find(&entry.place) else { continue };
        let head = session.score().parts[at.part].chord_head(at.note);
        chords.entry(NamedNote { note: head, ..at }).or_default().insert(at);
    }
    chords
}

/// Notes whose entries take the direction from the stroke before them.
fn unnamed(session: &LayerSession<'_, '_>, entries: &[Entry]) -> BTreeSet<NamedNote> {
    let follows =
        |entry: &&Entry| matches!(entry.mark, Mark::Hook { bow: None, .. } | Mark::Retake { bow: None });
    entries.iter().filter(follows).filter_map(|entry| session.addresses.find(&entry.place).ok()).collect()
}

/// The stroke before a note, which a slur can join to it: the first note of its last chain of ties.
fn stroke_before(session: &LayerSession<'_, '_>, at: NamedNote) -> Result<NoteId, Saying> {
    let part = &session.score().parts[at.part];
    let note = part.note(at.note);
    let refuse = |why: &'static str| Err(Saying::new(why));
    if note.kind != NoteKind::Ordinary {
        return refuse("why-hook-on-grace-note");
    }
    if note.tie.from_before != TieEnd::None {
        return refuse("why-hook-tied-over");
    }
    let Some(before) = note_before(session.score(), at) else {
        return refuse("why-hook-on-first-note");
    };
    let before = part.chord_head(before);
    let earlier = part.note(last_tied(part, before));
    if part.note(before).kind != NoteKind::Ordinary || earlier.onset + earlier.length != note.onset {
        return refuse("why-hook-after-gap");
    }
    let leads = |other: &arcata_score::Note| {
        other.voice == note.voice
            && other.onset == note.onset
            && matches!(other.kind, NoteKind::Grace | NoteKind::SlashedGrace)
    };
    if part.notes.iter().any(leads) {
        return refuse("why-hook-over-grace-note");
    }
    if part.note(before).node > part.note(last_tied(part, at.note)).node {
        return refuse("why-hook-written-backwards");
    }
    Ok(before)
}

/// Why a slur that stands or will stand there leaves no room for the slur of a hook.
fn slurred(session: &mut LayerSession<'_, '_>, one: &Candidate, judged: &Judged<'_>) -> Option<Saying> {
    let part = &session.score().parts[one.at.part];
    let (begins, ends) = (part.note(one.before).onset, part.note(last_tied(part, one.head)).onset);
    let voice = part.note(one.head).voice;
    let touches = |(from, to): (NoteId, NoteId)| {
        let (from, to) = (part.note(from), part.note(to));
        (from.voice == voice || to.voice == voice) && from.onset <= ends && to.onset >= begins
    };
    let over = judged.slurs.standing(session, one.at.part).into_iter().find(|slur| touches(*slur))?;
    let addresses = &session.addresses;
    let named = |note: NoteId| {
        let spot = addresses.spot(one.at.part, note);
        spot.map_or(Argument::Text(String::new()), |spot| addresses.spot_argument(one.at.part, &spot))
    };
    let why = Saying::new("why-hook-under-slur");
    Some(why.with("from", named(over.0)).with("to", named(over.1)))
}

/// Why the direction that a hook asks for cannot be had with what is asked of the notes before it.
fn against(
    one: &Candidate,
    chain: Option<&Chain>,
    judged: &Judged<'_>,
    unnamed: &BTreeSet<NamedNote>,
) -> Option<Saying> {
    let way = one.bow?;
    let first = NamedNote { note: chain.map_or(one.before, |chain| chain.first), ..one.at };
    match judged.asked.get(&first) {
        Some(None) => {
            return Some(Saying::new("why-hook-begins-as-it-comes"));
        }
        Some(Some(asked)) if *asked != way => {
            return Some(OTHER_WAY);
        }
        _ => {}
    }
    if unnamed.contains(&first) {
        return Some(Saying::new("why-hook-begins-unnamed"));
    }
    let other = chain.and_then(|chain| chain.bow).is_some_and(|bow| bow != way);
    other.then(|| Saying::new("why-hooks-both-ways"))
}

/// The slur of hooks that is printed over their very notes, with all that stands under it.
fn printed(session: &mut LayerSession<'_, '_>, group: &[Candidate], judged: &Judged<'_>) -> Option<Chain> {
    let (first, last) = (group.first()?, group.last()?);
    let part = first.at.part;
    let end = last_tied(&session.score().parts[part], last.head);
    session.slurs(part).between(first.before, end)?;
    // Of another entry it is not printed, and one that goes does not stay.
    let ends = (part, first.before, end);
    if judged.slurs.taken.contains(&ends) || judged.slurs.drawn.contains(&ends) {
        return None;
    }
    let hooked: Vec<NoteId> = group.iter().map(|one| one.head).collect();
    let notes: Vec<NoteId> = std::iter::once(first.before).chain(hooked.iter().copied()).collect();
    let all = notes.into_iter().all(|note| has_sign(session, NamedNote { part, note }, first.sign));
    // A direction that nothing says there is still to be written.
    let bow = group.iter().find_map(|one| one.bow);
    let said =
        bow.is_none_or(|way| session.bows(NamedNote { part, note: first.before }).last() == Some(&way));
    (all && said).then_some(Chain {
        part,
        sign: first.sign,
        first: first.before,
        hooked,
        bow,
        marks_first: false,
        written: SlurWritten::Printed,
    })
}
