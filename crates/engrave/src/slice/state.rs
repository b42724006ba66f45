//! What holds at a barline: the state of the notation that a cut must say again.

use std::collections::{BTreeMap, BTreeSet};

use arcata_score::{Part, Score};
use arcata_xml::{Document, Element, NodeId, Tag};

use super::tamed;

/// The children of `<attributes>` that go on holding, in the order the schema wants them
/// (source: MusicXML 4.0, complex type `attributes`).
const LASTING: [Tag; 8] = [
    Tag::DIVISIONS,
    Tag::KEY,
    Tag::TIME,
    Tag::STAVES,
    Tag::PART_SYMBOL,
    Tag::CLEF,
    Tag::STAFF_DETAILS,
    Tag::TRANSPOSE,
];

/// The lines that run from one direction to another (source: MusicXML 4.0, `direction-type`).
const SPANS: [Tag; 4] = [Tag::WEDGE, Tag::OCTAVE_SHIFT, Tag::DASHES, Tag::BRACKET];

/// What holds in one part at one barline.
#[derive(Clone, Debug, Default)]
pub(crate) struct BarlineState {
    /// The elements to say again: by place in [`LASTING`], then by the staff they are for (0: all).
    lasting: BTreeMap<(usize, u32), NodeId>,
    /// The lines under way: by place in [`SPANS`] and number.
    spans: BTreeMap<(usize, u32), NodeId>,
}

/// A line between directions that is under way.
#[derive(Clone, Copy, Debug)]
pub(crate) struct DirectionSpan<'d> {
    /// The element that opens it.
    pub(crate) start: Element<'d>,
    /// Its number.
    pub(crate) number: u32,
}

impl BarlineState {
    /// The state at each barline of a part: before the first bar, before the second and so on.
    pub(crate) fn at_barlines(document: &Document, score: &Score, part: &Part) -> Vec<Self> {
        let carried = carried_spans(document, part);
        let mut state = Self::default();
        let mut all = Vec::with_capacity(score.bars.len() + 1);
        for measure in &part.measures {
            all.push(state.clone());
            if let Some(measure) = measure.and_then(|id| document.element(id)) {
                measure.children().for_each(|child| state.pass(child));
                state.spans.retain(|_, start| carried.contains(start));
            }
        }
        all.push(state);
        all
    }

    /// Takes note of one child of a measure.
    pub(crate) fn pass(&mut self, child: Element<'_>) {
        match child.tag() {
            Tag::ATTRIBUTES => self.take(child),
            Tag::DIRECTION => {
                let kinds = child.children_named(Tag::DIRECTION_TYPE).flat_map(Element::children);
                kinds.for_each(|kind| self.span(kind));
            }
            _ => {}
        }
    }

    /// Takes over what an `<attributes>` says.
    pub(crate) fn take(&mut self, attributes: Element<'_>) {
        for child in attributes.children() {
            let Some(place) = LASTING.iter().position(|tag| *tag == child.tag()) else { continue };
            let staff = number(child);
            if staff == 0 && !child.tag().eq(&Tag::CLEF) {
                self.lasting.retain(|(kind, _), _| *kind != place);
            }
            self.lasting.insert((place, staff), child.id());
        }
    }

    /// Forgets the metre, so that it is not said again.
    pub(crate) fn leave_metre(&mut self) {
        self.lasting.retain(|(kind, _), _| LASTING[*kind] != Tag::TIME);
    }

    fn span(&mut self, kind: Element<'_>) {
        let Some(place) = SPANS.iter().position(|tag| *tag == kind.tag()) else { return };
        let key = (place, number(kind));
        match kind.attribute("type").as_deref() {
            Some("stop") => {
                self.spans.remove(&key);
            }
            Some("continue") | None => {}
            Some(_) => {
                self.spans.insert(key, kind.id());
            }
        }
    }

    /// The attributes as one element, empty where nothing has been said yet.
    pub(crate) fn attributes(&self, document: &Document) -> String {
        self.attributes_but(document, |_| false)
    }

    /// The same without the elements that `left_out` names.
    pub(crate) fn attributes_but(
        &self,
        document: &Document,
        left_out: impl Fn(&Element<'_>) -> bool,
    ) -> String {
        let mut text = String::new();
        let elements = self.lasting.values().filter_map(|id| document.element(*id));
        for element in elements.filter(|element| !left_out(element)) {
            text.push_str(&tamed::attribute(element));
        }
        if text.is_empty() { text } else { format!("<attributes>{text}</attributes>") }
    }

    /// Whether what is written now is tablature.
    pub(crate) fn is_tablature(&self, document: &Document) -> bool {
        self.lasting.iter().any(|((kind, _), id)| {
            LASTING[*kind] == Tag::CLEF
                && document.element(*id).is_some_and(|clef| clef.source().contains("TAB"))
        })
    }

    /// The lines under way.
    pub(crate) fn spans<'d>(&self, document: &'d Document) -> Vec<DirectionSpan<'d>> {
        self.spans
            .iter()
            .filter_map(|((_, number), id)| {
                document.element(*id).map(|start| DirectionSpan { start, number: *number })
            })
            .collect()
    }

    /// How many divisions a quarter note has, 1 where the part has not said it.
    pub(crate) fn divisions(&self, document: &Document) -> i64 {
        let said = self.lasting.get(&(0, 0)).and_then(|id| document.element(*id));
        said.and_then(|element| element.text().parse().ok()).filter(|value| *value > 0).unwrap_or(1)
    }
}

/// The elements that open a line which a later bar closes. A line that nothing closes is not drawn through the rest of the
/// piece; one whose end stands before its beginning in the file (in another voice of the same bar) ends in its bar.
fn carried_spans(document: &Document, part: &Part) -> BTreeSet<NodeId> {
    let mut open: BTreeMap<(usize, u32), NodeId> = BTreeMap::new();
    let mut closed = BTreeSet::new();
    for measure in part.measures.iter().filter_map(|measure| document.element((*measure)?)) {
        let directions = measure.children_named(Tag::DIRECTION);
        let kinds = directions.flat_map(|direction| direction.children_named(Tag::DIRECTION_TYPE));
        let mut early = BTreeSet::new();
        for kind in kinds.flat_map(Element::children) {
            let Some(place) = SPANS.iter().position(|tag| *tag == kind.tag()) else { continue };
            let key = (place, number(kind));
            match kind.attribute("type").as_deref() {
                Some("stop") => match open.remove(&key) {
                    Some(start) => {
                        closed.insert(start);
                    }
                    None => {
                        early.insert(key);
                    }
                },
                Some("continue") | None => {}
                Some(_) if early.remove(&key) => {}
                Some(_) => {
                    open.insert(key, kind.id());
                }
            }
        }
    }
    closed
}

/// The `number` of an element, 0 where it has none.
fn number(element: Element<'_>) -> u32 {
    element.attribute("number").and_then(|text| text.trim().parse().ok()).unwrap_or(0)
}
