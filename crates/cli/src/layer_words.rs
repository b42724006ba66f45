//! What the commands about layers say, in the language of the run: places, marks and counts, and why something was passed over.

use arcata_languages::Saying;
use arcata_layer::{
    Address, Addresses, Conflict, Doubtful, Entry, LayerRemark, LeftOut, Mark, Match, NotSpread, Orphan,
    Proposed, Staying,
};
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
    passed_over(&left.entry, &left.why, addresses)
}

/// A place, a mark and why something became of it.
fn passed_over(entry: &Entry, why: &Saying, addresses: &Addresses<'_>) -> String {
    let at = &entry.place;
    said_of(&[place(at, Some(addresses)), mark(&entry.mark, &at.part, addresses)], why)
}

/// What is spoken of, and what is said of it.
fn said_of(of: &[String], why: &Saying) -> String {
    say(&Saying::new("check-mark").quoting("mark", of.join(", ")).with("why", why.clone()))
}

fn mark(mark: &Mark, part: &str, addresses: &Addresses<'_>) -> String {
    mark_said(mark, part, Some(addresses), &files::wording())
}

/// A mark that stays in the score.
pub(crate) fn staying(mark: &Staying) -> String {
    said_of(&[mark.part.clone(), files::wording().bar(None, &mark.bar)], &mark.why)
}

/// An entry that was carried over with doubt.
pub(crate) fn doubtful(one: &Doubtful, old: &Addresses<'_>, new: &Addresses<'_>) -> String {
    let to = match new.part(&one.to.part) {
        Some(part) => new.spot_argument(part, &one.to.spot),
        None => one.to.spot.argument(),
    };
    say(&Saying::new("doubtful-said")
        .quoting("from", place(&one.from, Some(old)))
        .with("to", to)
        .quoting("mark", mark(&one.mark, &one.to.part, new))
        .with("why", one.why.saying()))
}

/// An entry that found no note.
pub(crate) fn orphan(one: &Orphan, old: &Addresses<'_>) -> String {
    passed_over(&one.entry, &one.why, old)
}

/// An entry that does not go to a part.
pub(crate) fn not_spread(one: &NotSpread, addresses: &Addresses<'_>) -> String {
    say(&Saying::new("not-spread")
        .quoting("from", place(&one.from, Some(addresses)))
        .quoting("mark", mark(&one.mark, &one.from.part, addresses))
        .quoting("part", &one.part)
        .with("why", one.why.clone()))
}

/// A remark about a layer.
pub(crate) fn remark(remark: &LayerRemark, addresses: &Addresses<'_>) -> String {
    match &remark.place {
        Some(at) => said_of(&[place(at, Some(addresses))], &remark.message),
        None => say(&remark.message),
    }
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
    let mark = self::mark(mark, &at.part, addresses);
    let from = place(&proposed.from, Some(addresses));
    let as_from = Saying::new("layer-as").quoting("from", from).choosing("by", by);
    format!("{}: {mark} ({})", place(at, Some(addresses)), say(&as_from))
}
