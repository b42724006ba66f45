//! Slurs that a text puts on, takes off or moves.

use arcata_score::{NoteId, Slur};

use super::enter::GatheredEntries;
use super::locate::note;
use super::problem::ShorthandProblemKind;
use super::strokes::{SlurChanges, Strokes};
use super::syntax::{At, NoteSpot, Where, Within};
use super::wish::Wish;
use crate::model::Mark;

/// A slur over the stretch.
pub(super) fn add(desk: &mut GatheredEntries<'_, '_>, wish: &Wish<'_>, changes: &mut SlurChanges) {
    if let Some((from, to)) = ends(desk, wish, wish.place, wish.target.bar, wish.target.to) {
        changes.new.push((from, to));
        if let Some(to) = desk.addresses.spot(wish.part, to) {
            desk.decide(wish, from, Mark::SlurAdded { to });
        }
    }
}

/// The printed slurs of a bar or a stretch, or the one that begins at a note or fits two notes.
pub(super) fn remove(desk: &mut GatheredEntries<'_, '_>, wish: &Wish<'_>, changes: &mut SlurChanges) {
    let place = wish.place;
    let to_is_bar = place.to.as_ref().is_none_or(|to| to.within == Within::Bar);
    let found = if place.from.within == Within::Bar && to_is_bar {
        let last = wish.target.to.unwrap_or(wish.target.bar);
        let notes = &desk.addresses.score().parts[wish.part];
        let begins_and_ends = |slur: &&Slur| {
            let (start, end) = (notes.note(slur.start).bar, notes.note(slur.end).bar);
            start >= wish.target.bar && start <= last && (place.to.is_none() || end <= last)
        };
        notes.slurs.iter().filter(begins_and_ends).copied().collect()
    } else {
        printed(desk, wish)
    };
    if found.is_empty() {
        return no_such_slur(desk, wish);
    }
    for slur in found {
        changes.gone.insert((slur.start, slur.end));
        if let Some(to) = desk.addresses.spot(wish.part, slur.end) {
            desk.decide(wish, slur.start, Mark::SlurRemoved { to });
        }
    }
}

/// The printed slur over the stretch gets another one.
pub(super) fn change(
    desk: &mut GatheredEntries<'_, '_>,
    wish: &Wish<'_>,
    now: &At<Where>,
    changes: &mut SlurChanges,
) {
    let found = printed(desk, wish);
    let [slur] = found.as_slice() else { return no_such_slur(desk, wish) };
    let (bar, last) = match desk.bars_of(&now.value, wish.target.bar) {
        Ok(bars) => bars,
        Err(trouble) => return desk.wrong(now.spot, trouble),
    };
    let Some((from, to)) = ends(desk, wish, &now.value, bar, last) else { return };
    changes.gone.insert((slur.start, slur.end));
    changes.new.push((from, to));
    let spot = |note: NoteId| desk.addresses.spot(wish.part, note);
    let Some(printed_to) = spot(slur.end) else { return };
    let new_from = spot(from).filter(|_| from != slur.start);
    let new_to = spot(to).filter(|_| to != slur.end);
    desk.decide(wish, slur.start, Mark::SlurMoved { to: printed_to, new_from, new_to });
}

/// The two notes of a stretch: a slur needs both, and in order.
fn ends(
    desk: &mut GatheredEntries<'_, '_>,
    wish: &Wish<'_>,
    place: &Where,
    bar: u32,
    last: Option<u32>,
) -> Option<(NoteId, NoteId)> {
    let (Some(to), Some(last)) = (&place.to, last) else {
        let why = "a slur needs its first and its last note; write 41/1-41/3 slur";
        desk.wrong(wish.at, ShorthandProblemKind::Together { why });
        return None;
    };
    let found = with_strokes(desk, wish, |desk, strokes| {
        let first = note(desk.addresses, wish, strokes, &place.from, bar)?;
        // The end goes on in the voice in which the slur begins, unless it names another.
        let voice = to.voice.clone().or_else(|| place.from.voice.clone());
        let to = NoteSpot { voice, ..to.clone() };
        let end = match to.within {
            Within::Bar => strokes.in_bar(last, wish.voice(desk.addresses)).last().map(|note| note.note),
            _ => None,
        };
        let end = end.map_or_else(|| note(desk.addresses, wish, strokes, &to, last), Ok)?;
        Ok((first, end))
    });
    match found {
        Ok((first, end)) if first < end => Some((first, end)),
        Ok((first, end)) => {
            let (from, to) = (desk.said(wish.part, first), desk.said(wish.part, end));
            desk.wrong(wish.at, ShorthandProblemKind::Backwards { from, to, suggestion: None });
            None
        }
        Err(trouble) => {
            desk.wrong(wish.at, trouble);
            None
        }
    }
}

fn with_strokes<T>(
    desk: &mut GatheredEntries<'_, '_>,
    wish: &Wish<'_>,
    look: impl FnOnce(&mut GatheredEntries<'_, '_>, &Strokes) -> T,
) -> T {
    let strokes = desk.printed_strokes(wish.part);
    look(desk, &strokes)
}

/// The printed slur that begins where the place begins and, for a stretch, ends where it ends.
fn printed(desk: &mut GatheredEntries<'_, '_>, wish: &Wish<'_>) -> Vec<Slur> {
    let found = with_strokes(desk, wish, |desk, strokes| {
        let first = note(desk.addresses, wish, strokes, &wish.place.from, wish.target.bar);
        let last = match (&wish.place.to, wish.target.to) {
            (Some(to), Some(bar)) => {
                let voice = to.voice.clone().or_else(|| wish.place.from.voice.clone());
                let to = NoteSpot { voice, ..to.clone() };
                Some(note(desk.addresses, wish, strokes, &to, bar))
            }
            _ => None,
        };
        (first, last)
    });
    let notes = &desk.addresses.score().parts[wish.part];
    let same = |one: NoteId, other: NoteId| {
        let (one, other) = (notes.note(one), notes.note(other));
        one.onset == other.onset && one.voice == other.voice && one.kind == other.kind
    };
    let (Ok(first), last) = found else { return Vec::new() };
    let exact = |slur: &&Slur| match &last {
        None => same(slur.start, first),
        Some(Ok(last)) => same(slur.start, first) && same(slur.end, *last),
        Some(Err(_)) => false,
    };
    let fitting: Vec<Slur> = notes.slurs.iter().filter(exact).copied().collect();
    // Of several over the same notes the one that holds the very notes that were named.
    let very = fitting
        .iter()
        .find(|slur| slur.start == first && last.as_ref().is_none_or(|last| last.as_ref() == Ok(&slur.end)));
    very.or(fitting.first()).copied().into_iter().collect()
}

fn no_such_slur(desk: &mut GatheredEntries<'_, '_>, wish: &Wish<'_>) {
    let notes = &desk.addresses.score().parts[wish.part];
    let last = wish.target.to.unwrap_or(wish.target.bar);
    let near = |slur: &&Slur| (wish.target.bar..=last).contains(&notes.note(slur.start).bar);
    let slurs: Vec<Slur> = notes.slurs.iter().filter(near).take(8).copied().collect();
    let there = slurs
        .iter()
        .map(|slur| {
            let place = |note| {
                let said = desk.said(wish.part, note);
                said.split(" in ").next().unwrap_or_default().to_owned()
            };
            format!("{}-{}", place(slur.start), place(slur.end))
        })
        .collect();
    let place = format!("{} in {}", wish.place, desk.addresses.part_keys()[wish.part]);
    desk.wrong(wish.at, ShorthandProblemKind::NoSuchSlur { place, there });
}
