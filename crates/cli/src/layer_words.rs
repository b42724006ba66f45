//! What the commands about layers say: places, marks and counts, in the language of the run. Why something was passed over is
//! said by the layers themselves.

use arcata_languages::Saying;
use arcata_layer::{Address, Addresses, Conflict, Entry, LeftOut, Match, Proposed};
use arcata_report::sheet::{mark_said, place_said};

use crate::files;

/// A sentence of a command.
pub(crate) fn say(saying: &Saying) -> String {
    files::wording().say(saying)
}

/// A heading, or another sentence into which nothing is put.
pub(crate) fn word(key: &'static str) -> String {
    files::wording().word(key)
}

/// A place, by bar and beat where the score is known.
pub(crate) fn place(place: &Address, addresses: Option<&Addresses<'_>>) -> String {
    place_said(place, addresses, &files::wording())
}

/// What a place is to have, in a row; that there is nothing, too.
pub(crate) fn marks(entries: &[Entry], addresses: Option<&Addresses<'_>>) -> String {
    let wording = files::wording();
    let marks: Vec<String> =
        entries.iter().map(|entry| mark_said(&entry.mark, &entry.place.part, addresses, &wording)).collect();
    if marks.is_empty() { wording.word("layer-nothing") } else { wording.list(&marks) }
}

/// An entry that was passed over: its place, its mark and why.
pub(crate) fn left_out(left: &LeftOut, addresses: &Addresses<'_>) -> String {
    let Entry { place: at, mark, .. } = &left.entry;
    let mark = mark_said(mark, &at.part, Some(addresses), &files::wording());
    format!("{}, {mark}: {}", place(at, Some(addresses)), left.why)
}

/// What two owners want at a place.
pub(crate) fn conflict(conflict: &Conflict, addresses: Option<&Addresses<'_>>) -> String {
    let wants = Saying::new("layer-conflict")
        .quoting("first", &conflict.first_owner)
        .quoting("one", marks(&conflict.first, addresses))
        .quoting("second", &conflict.second_owner)
        .quoting("other", marks(&conflict.second, addresses));
    format!("{}: {}", place(&conflict.place, addresses), say(&wants))
}

/// An entry that is proposed for another part, and by what the two parts match.
pub(crate) fn proposed(proposed: &Proposed, addresses: &Addresses<'_>) -> String {
    let by = match proposed.by {
        Match::Unison => "unison",
        Match::Octave => "octave",
        Match::Parallel => "parallel",
        Match::Rhythm => "rhythm",
        Match::Mostly => "mostly",
    };
    let Entry { place: at, mark, .. } = &proposed.entry;
    let mark = mark_said(mark, &at.part, Some(addresses), &files::wording());
    let from = place(&proposed.from, Some(addresses));
    let as_from = Saying::new("layer-as").quoting("from", from).choosing("by", by);
    format!("{}: {mark} ({})", place(at, Some(addresses)), say(&as_from))
}
