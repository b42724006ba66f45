//! Where the music of each part stands, partwise and timewise alike.

use std::borrow::Cow;
use std::collections::BTreeMap;

use arcata_xml::{Document, Element, Tag};

/// One bar of one part in the file.
#[derive(Clone, Copy)]
pub(super) struct MeasureSource<'d> {
    /// The element that carries the bar's number: `<measure>`.
    pub(super) header: Element<'d>,
    /// The element that holds the music: `<measure>`, or `<part>` in a timewise score.
    pub(super) content: Element<'d>,
}

/// One part of the file.
pub(super) struct PartSource<'d> {
    pub(super) id: Cow<'d, str>,
    /// Its first element, for messages.
    pub(super) element: Element<'d>,
    /// Its bars by index.
    pub(super) measures: Vec<Option<MeasureSource<'d>>>,
}

/// The parts of a score in the order in which the music names them; `None` when the document is none.
pub(super) fn parts(document: &Document) -> Option<Vec<PartSource<'_>>> {
    match document.root().tag() {
        Tag::SCORE_PARTWISE => Some(partwise(document.root())),
        Tag::SCORE_TIMEWISE => Some(timewise(document.root())),
        _ => None,
    }
}

fn partwise(root: Element<'_>) -> Vec<PartSource<'_>> {
    root.children_named(Tag::PART)
        .map(|part| PartSource {
            id: part.attribute("id").unwrap_or_default(),
            element: part,
            measures: part
                .children_named(Tag::MEASURE)
                .map(|measure| Some(MeasureSource { header: measure, content: measure }))
                .collect(),
        })
        .collect()
}

fn timewise(root: Element<'_>) -> Vec<PartSource<'_>> {
    let mut parts: Vec<PartSource<'_>> = Vec::new();
    let mut known: BTreeMap<Cow<'_, str>, usize> = BTreeMap::new();
    for (bar, measure) in root.children_named(Tag::MEASURE).enumerate() {
        for content in measure.children_named(Tag::PART) {
            let id = content.attribute("id").unwrap_or_default();
            let index = *known.entry(id.clone()).or_insert_with(|| {
                parts.push(PartSource { id, element: content, measures: Vec::new() });
                parts.len() - 1
            });
            let measures = &mut parts[index].measures;
            // A part that is silent in some bars leaves gaps; a second one in the same bar is not music.
            if measures.len() <= bar {
                measures.resize(bar, None);
                measures.push(Some(MeasureSource { header: measure, content }));
            }
        }
    }
    parts
}

/// The title of the work or movement.
pub(super) fn title(root: Element<'_>) -> Option<String> {
    let work = root.child(Tag::WORK).and_then(|work| work.child(Tag::WORK_TITLE));
    [work, root.child(Tag::MOVEMENT_TITLE)].into_iter().flatten().find_map(filled).or_else(|| credited(root))
}

fn credited(root: Element<'_>) -> Option<String> {
    root.children_named(Tag::CREDIT)
        .filter(|credit| credit.children_named(Tag::CREDIT_TYPE).any(|kind| kind.text() == "title"))
        .find_map(|credit| credit.child(Tag::CREDIT_WORDS).and_then(filled))
}

/// The composer.
pub(super) fn composer(root: Element<'_>) -> Option<String> {
    root.child(Tag::IDENTIFICATION)?
        .children_named(Tag::CREATOR)
        .filter(|creator| creator.attribute("type").as_deref() == Some("composer"))
        .find_map(filled)
}

fn filled(element: Element<'_>) -> Option<String> {
    let text = element.text();
    (!text.is_empty()).then(|| text.into_owned())
}
