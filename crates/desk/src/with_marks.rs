//! The score as it is looked at: with those marks of the shown layers on it that change what is read (slurs, words, printed bows
//! that give way). Asked bows are not written: they are anchors of the plan.

use std::collections::BTreeMap;

use arcata_analysis::WithLayer;
use arcata_layer::{Address, Addresses, Entry, Mark};
use arcata_score::{NoteId, Score};

use crate::act::ByteEdit;

/// Whether a mark is about a slur.
pub(crate) const fn is_slur(mark: &Mark) -> bool {
    matches!(mark, Mark::SlurAdded { .. } | Mark::SlurRemoved { .. } | Mark::SlurMoved { .. })
}

/// Edits of a document with marks on it as edits of the one without them.
///
/// # Errors
/// Where they touch what the marks have written or taken away, in words.
pub(crate) fn without(marked: &WithLayer, edits: &[ByteEdit]) -> Result<Vec<ByteEdit>, String> {
    edits.iter().map(|edit| one_without(marked, edit)).collect()
}

fn one_without(marked: &WithLayer, edit: &ByteEdit) -> Result<ByteEdit, String> {
    // Bytes that the patches so far have added, and taken away.
    let (mut added, mut taken) = (0, 0);
    for patch in marked.edits.edits() {
        let begin = patch.range.start + added - taken;
        let end = begin + patch.insert.len();
        // What lies wholly before a patch is not moved by it, nor by those that follow.
        if edit.to <= begin {
            break;
        }
        if edit.from < end {
            return Err(
                "a layer has put or taken something there: hide the layer first, or take the change into the layer"
                    .to_owned(),
            );
        }
        added += patch.insert.len();
        taken += patch.range.len();
    }
    Ok(ByteEdit { from: edit.from + taken - added, to: edit.to + taken - added, insert: edit.insert.clone() })
}

/// The slurs of a part as pairs of notes, each as often as it stands there.
fn slurs(score: &Score, part: usize) -> BTreeMap<(NoteId, NoteId), usize> {
    let mut found = BTreeMap::new();
    for slur in &score.parts[part].slurs {
        *found.entry((slur.start, slur.end)).or_insert(0) += 1;
    }
    found
}

/// What a layer has to say so that the slurs of one score become those of another with the same notes.
///
/// # Errors
/// Where the notes are not the same.
pub(crate) fn slur_entries(from: &Score, to: &Score) -> Result<Vec<Entry>, String> {
    let same = from.parts.len() == to.parts.len()
        && from.parts.iter().zip(&to.parts).all(|(one, other)| one.notes.len() == other.notes.len());
    if !same {
        return Err("this change is more than one of slurs: it can only go into the score".to_owned());
    }
    let addresses = Addresses::new(from);
    let mut entries = Vec::new();
    for part in 0..from.parts.len() {
        let (before, after) = (slurs(from, part), slurs(to, part));
        let (gone, mut come) = (only(&before, &after), only(&after, &before));
        for (start, end) in gone {
            // A slur that keeps one end has moved.
            let kept = come.iter().position(|(other, last)| *other == start || *last == end);
            let mark = match kept.map(|index| come.remove(index)) {
                Some((other, last)) => addresses.spot(part, end).map(|to| Mark::SlurMoved {
                    to,
                    new_from: (other != start).then(|| addresses.spot(part, other)).flatten(),
                    new_to: (last != end).then(|| addresses.spot(part, last)).flatten(),
                }),
                None => addresses.spot(part, end).map(|to| Mark::SlurRemoved { to }),
            };
            entries.push(entry(addresses.place(part, start), mark)?);
        }
        for (start, end) in come {
            let mark = addresses.spot(part, end).map(|to| Mark::SlurAdded { to });
            entries.push(entry(addresses.place(part, start), mark)?);
        }
    }
    Ok(entries)
}

/// Whether two slurs lie between the same two notes.
pub(crate) fn is_doubled(score: &Score) -> bool {
    (0..score.parts.len()).any(|part| slurs(score, part).values().any(|count| *count > 1))
}

/// The slurs that are in one part and not in the other.
fn only(
    one: &BTreeMap<(NoteId, NoteId), usize>,
    other: &BTreeMap<(NoteId, NoteId), usize>,
) -> Vec<(NoteId, NoteId)> {
    let missing = |(ends, count): (&(NoteId, NoteId), &usize)| {
        let there = other.get(ends).copied().unwrap_or(0);
        std::iter::repeat_n(*ends, count.saturating_sub(there))
    };
    one.iter().flat_map(missing).collect()
}

fn entry(place: Option<Address>, mark: Option<Mark>) -> Result<Entry, String> {
    let found = place.zip(mark).map(|(place, mark)| Entry::new(place, mark));
    found.ok_or_else(|| "a note has no address that a layer can name".to_owned())
}

#[cfg(test)]
mod tests {
    use arcata_analysis::with_read_marks;
    use arcata_layer::Layer;
    use arcata_xml::{Document, Limits};

    use super::*;

    const MUSICS: [&str; 5] = [
        "violin: 1/4 C5 (D5 E5) F5 | (G5 A5) B5 C6",
        "violin: (1/4 C5 D5) E5 F5 | (G5 A5 B5) C6",
        "violin: 1/4 C5 D5 E5 F5 | G5 A5 B5 C6",
        "violin: (1/4 C5 D5 E5 F5) | (G5 A5) (B5 C6)",
        "violin: 1/4 C5 D5 (E5 F5) | G5 (A5 B5 C6)",
    ];

    fn read(music: &str) -> (Document, Score) {
        let text = arcata_testkit::musicxml(music).into_bytes();
        let document = Document::parse(text, &Limits::default()).unwrap();
        let score = arcata_score::read(&document);
        (document, score)
    }

    #[test]
    fn slurs_of_one_score_become_those_of_another() {
        for one in MUSICS {
            for other in MUSICS {
                let ((document, from), (_, to)) = (read(one), read(other));
                let entries = slur_entries(&from, &to).unwrap();
                assert_eq!(entries.is_empty(), one == other);
                let layer = Layer { entries, ..Layer::default() };
                let marked = with_read_marks((&document, &from), &layer).unwrap();
                assert!(marked.as_ref().is_none_or(|marked| marked.left_out.is_empty()), "{marked:?}");
                let after = marked.map_or(from, |marked| arcata_score::read(&marked.document));
                assert_eq!(slurs(&after, 0), slurs(&to, 0), "{one} to {other}");
            }
        }
        assert!(slur_entries(&read(MUSICS[0]).1, &read("violin: 1/1 C5").1).is_err());
    }

    /// An edit of the marked document, brought back: with the marks put on after it, the file is the one that the edit makes of
    /// the marked document itself.
    #[test]
    fn edits_go_back_to_the_score_without_the_marks() {
        for (one, other) in [(0, 4), (0, 1), (2, 3), (3, 2)] {
            let (document, score) = read(MUSICS[one]);
            let entries = slur_entries(&score, &read(MUSICS[other]).1).unwrap();
            let layer = Layer { entries, ..Layer::default() };
            let marked = with_read_marks((&document, &score), &layer).unwrap().unwrap();
            let (plain, text) = (document.bytes(), marked.document.bytes());
            let mut brought_back = 0;
            for from in 0..text.len() {
                for length in [0, 1, 7, 40] {
                    let edit = ByteEdit { from, to: (from + length).min(text.len()), insert: "#".to_owned() };
                    let Ok(back) = without(&marked, std::slice::from_ref(&edit)) else { continue };
                    brought_back += 1;
                    let back = &back[0];
                    assert_eq!(plain[back.from..back.to], text[edit.from..edit.to], "the same bytes go");
                    // Where a patch inserts at the very place, the score decides anew which comes first.
                    if marked.edits.edits().iter().any(|patch| patch.range.start == back.from) {
                        continue;
                    }
                    let edited = [&text[..edit.from], b"#", &text[edit.to..]].concat();
                    // The patches, put on the edited file: those behind the edit have moved with it.
                    let mut again = [&plain[..back.from], b"#", &plain[back.to..]].concat();
                    for patch in marked.edits.edits().iter().rev() {
                        let behind = patch.range.start >= back.to;
                        let moved = |at: usize| if behind { at + 1 + back.from - back.to } else { at };
                        again.splice(moved(patch.range.start)..moved(patch.range.end), patch.insert.bytes());
                    }
                    assert_eq!(again, edited, "{one} to {other}, from {from}, {length} long");
                }
            }
            assert!(brought_back > 2 * text.len(), "{brought_back} of {}", 4 * text.len());
        }
    }
}
