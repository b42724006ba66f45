//! What was put into a score: its new signs for bows and its new slurs.

use std::collections::BTreeSet;

use arcata_score::Score;
use arcata_xml::{Document, Element, NodeId, Tag};

/// The signs for bows and the slurs of a score that it did not have before; elements of the new document. Both scores have the same notes:
/// a layer puts marks on notes, never notes.
///
/// ```
/// let read = |music: &str| {
///     let document = arcata_xml::Document::parse(arcata_testkit::musicxml(music).into_bytes(), &Default::default());
///     let document = document.expect("well-formed");
///     let score = arcata_score::read(&document);
///     (document, score)
/// };
/// let (before, before_score) = read("violin: 1/4 C4!down D4 E4 F4");
/// let (after, after_score) = read("violin: 1/4 C4!down D4!up E4 F4");
/// let fresh = arcata_prepare::fresh_signs((&before, &before_score), (&after, &after_score));
/// let names: Vec<&str> = fresh.iter().filter_map(|node| Some(after.element(*node)?.name())).collect();
/// assert_eq!(names, ["up-bow"]);
/// ```
#[must_use]
pub fn fresh_signs(before: (&Document, &Score), after: (&Document, &Score)) -> BTreeSet<NodeId> {
    let parts = before.1.parts.iter().zip(&after.1.parts);
    let notes = parts.flat_map(|(before, after)| before.notes.iter().zip(&after.notes));
    let mut fresh = BTreeSet::new();
    for (one, other) in notes {
        let elements = (before.0.element(one.node), after.0.element(other.node));
        let (Some(one), Some(other)) = elements else { continue };
        let mut there: Vec<SignOnNote> = signs(one).map(|(sign, _)| sign).collect();
        for (sign, node) in signs(other) {
            match there.iter().position(|old| *old == sign) {
                Some(at) => {
                    there.swap_remove(at);
                }
                None => {
                    fresh.insert(node);
                }
            }
        }
    }
    fresh
}

/// A sign on a note, as far as it tells old from new.
#[derive(PartialEq, Eq)]
struct SignOnNote {
    name: String,
    /// Where a slur begins, goes on or ends.
    kind: Option<String>,
}

fn signs(note: Element<'_>) -> impl Iterator<Item = (SignOnNote, NodeId)> {
    note.descendants().filter(|element| matches!(element.tag(), Tag::UP_BOW | Tag::DOWN_BOW | Tag::SLUR)).map(
        |element| {
            let kind = element.attribute("type").map(std::borrow::Cow::into_owned);
            (SignOnNote { name: element.name().to_owned(), kind }, element.id())
        },
    )
}
