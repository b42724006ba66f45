//! Down- and up-bows, hooks and retakes, and both bows on one note, written.

use std::collections::BTreeMap;

use arcata_languages::Saying;
use arcata_score::BowDirection;

use crate::address::NamedNote;
use crate::apply::{EntryDone, NO_PLACE, put_piece, remember};
use crate::markup::MarkupPiece;
use crate::model::{Entry, EntryState, Layer, Mark, MarkBefore, Spot};
use crate::session::LayerSession;
use crate::told::ToldBow;

/// Directions by note, as [`asked`] gives them.
pub(crate) type AskedDirections = BTreeMap<NamedNote, Option<BowDirection>>;

/// The directions that a layer gives notes by name; none for a note that it leaves to alternation.
pub(crate) fn asked(session: &LayerSession<'_, '_>, layer: &Layer) -> AskedDirections {
    let named = |entry: &Entry| {
        let way = match entry.mark {
            Mark::Down => Some(BowDirection::Down),
            Mark::Up => Some(BowDirection::Up),
            Mark::Double { first } => Some(first.other()),
            Mark::Hook { bow: Some(bow), .. } | Mark::Retake { bow: Some(bow) } => Some(bow),
            Mark::AsItComes => None,
            _ => return None,
        };
        Some((session.addresses.find(&entry.place).ok()?, way))
    };
    layer.entries.iter().filter_map(named).collect()
}

/// What is known when an entry is written.
pub(crate) struct KnownAtEntry<'k> {
    /// A mark that stands there already is known not to be this layer's.
    pub(crate) settled: bool,
    /// The layer is not on the score.
    pub(crate) clean: bool,
    /// What the plan makes of a hook or a retake.
    pub(crate) told: Option<ToldBow>,
    /// The directions that the layer gives notes by name.
    pub(crate) asked: &'k AskedDirections,
}

impl KnownAtEntry<'_> {
    /// Whether an entry whose mark is missing had it printed: a layer over this one has taken it off, then.
    pub(crate) fn gives_way(&self, entry: &Entry) -> bool {
        !self.clean && entry.state == EntryState::Printed
    }
}

/// Writes a bow mark; of a hook or a retake also that of the stroke before, where it has none.
pub(crate) fn put_bow(
    session: &mut LayerSession<'_, '_>,
    entry: &mut Entry,
    at: NamedNote,
    known: &KnownAtEntry<'_>,
) -> Result<EntryDone, Saying> {
    let says_no_way = matches!(entry.mark, Mark::Hook { bow: None, .. } | Mark::Retake { bow: None });
    let standing = if known.clean { None } else { session.standing_way(entry, at) };
    let told = known.told.filter(|_| says_no_way).map(|told| told.direction);
    let way = standing.or(told).or_else(|| session.way(entry, at));
    let way = way.ok_or_else(|| Saying::new("why-no-direction"))?;
    if known.gives_way(entry) && !session.has(at, &MarkupPiece::Bow(way)) {
        return Ok(EntryDone::GivesWay);
    }
    let before = before(session, entry, at, (known, way))?;
    let taken = session.take_other_bows(at, Some(way));
    remember(entry, taken, known.clean);
    entry.written = says_no_way.then_some(way);
    let done = put_piece(session, entry, at, &MarkupPiece::Bow(way), known.settled)?;
    let written = before.is_some_and(|before| mark_before(session, entry, before, way));
    Ok(if written { EntryDone::Written } else { done })
}

/// Puts the direction on the stroke before that of a hook or a retake; says whether it was written.
pub(crate) fn mark_before(
    session: &mut LayerSession<'_, '_>,
    entry: &mut Entry,
    (note, spot): (NamedNote, Spot),
    way: BowDirection,
) -> bool {
    // Of both bows over one note the first may be this way, and it says nothing of the end.
    let stands = session.bows(note).last() == Some(&way);
    // Where it was printed and is missing, a layer above has taken it off and will bring it back.
    let printed = |before: &MarkBefore| before.printed && before.direction == way && before.spot == spot;
    if stands || entry.before.as_ref().is_some_and(printed) {
        let found = MarkBefore { spot, direction: way, printed: true, took_off: Vec::new() };
        entry.before.get_or_insert(found);
        return false;
    }
    let taken = session.take_other_bows(note, None);
    session.put(note, &MarkupPiece::Bow(way), None);
    // What it first took off is the printed mark, as of an entry's own note.
    let took_off =
        entry.before.take().filter(|before| !before.printed).map_or(taken, |before| before.took_off);
    entry.before = Some(MarkBefore { spot, direction: way, printed: false, took_off });
    true
}

/// Why a stroke cannot go on from the one before.
pub(crate) const OTHER_WAY: Saying = Saying::new("why-other-way-before");

/// The stroke before a hook or a retake, which shall bear the same mark: where the mark was put when the layer was last
/// applied, else where the plan says.
fn before(
    session: &LayerSession<'_, '_>,
    entry: &Entry,
    at: NamedNote,
    (known, way): (&KnownAtEntry<'_>, BowDirection),
) -> Result<Option<(NamedNote, Spot)>, Saying> {
    let remembered = entry.before.as_ref();
    let remembered = remembered.and_then(|before| session.addresses.find_in(at.part, &before.spot).ok());
    let told = || known.told.and_then(|told| told.before).map(|note| NamedNote { part: at.part, note });
    let Some(note) = remembered.or_else(told) else { return Ok(None) };
    if let Some(Some(asked)) = known.asked.get(&note)
        && *asked != way
    {
        return Err(OTHER_WAY);
    }
    // Under a slur that the layer draws the mark stands where the slur begins.
    let note = NamedNote { note: session.begins.get(&note).copied().unwrap_or(note.note), ..note };
    match known.asked.get(&note) {
        // Nothing shall stand there: the mark on its own note has to say it.
        Some(None) => return Ok(None),
        Some(Some(asked)) if *asked != way => {
            return Err(OTHER_WAY);
        }
        _ => {}
    }
    let spot = session.addresses.spot(note.part, note.note);
    match spot.filter(|spot| session.addresses.find_in(note.part, spot) == Ok(note)) {
        Some(spot) => Ok(Some((note, spot))),
        None => Err(Saying::new("why-no-address-before")),
    }
}

/// Writes both bows over one note.
pub(crate) fn put_double(
    session: &mut LayerSession<'_, '_>,
    entry: &mut Entry,
    at: NamedNote,
    first: BowDirection,
    known: &KnownAtEntry<'_>,
) -> Result<EntryDone, Saying> {
    if session.bows(at) == [first, first.other()] {
        if known.settled && entry.exact.is_empty() {
            entry.state = EntryState::Printed;
        }
        return Ok(EntryDone::Standing);
    }
    if known.gives_way(entry) {
        return Ok(EntryDone::GivesWay);
    }
    let taken = session.take_other_bows(at, None);
    remember(entry, taken, known.clean);
    entry.state = EntryState::Own;
    let put = session.put(at, &MarkupPiece::Bow(first), entry.exact.first())
        && session.put(at, &MarkupPiece::Bow(first.other()), entry.exact.get(1));
    if put { Ok(EntryDone::Written) } else { Err(NO_PLACE) }
}
