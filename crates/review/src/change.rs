//! Changes to the file, in terms of its elements, until they become byte edits.

use std::collections::BTreeSet;

use arcata_score::{BowDirection, Note, Place};
use arcata_xml::{Document, Edit, Editor, Element, NodeId, Position, Tag};

/// One change to the tree of the file.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Change {
    /// Takes an element out; a container that it leaves empty goes with it.
    Remove(NodeId),
    /// Puts an element into the `<notations>` of a `<note>`, made when there is none.
    Notation {
        /// The note.
        note: NodeId,
        /// The element, as XML.
        xml: String,
    },
    /// Puts an element before another one.
    Before {
        /// The one that follows.
        next: NodeId,
        /// The element, as XML.
        xml: String,
    },
}

/// Containers that mean nothing without content.
const CONTAINERS: [Tag; 6] =
    [Tag::NOTATIONS, Tag::TECHNICAL, Tag::ARTICULATIONS, Tag::ORNAMENTS, Tag::DIRECTION, Tag::DIRECTION_TYPE];

/// The edits that make the changes, sorted and disjoint, doubles made once; empty when the file does not
/// hold the elements, or the changes touch or contradict each other.
#[must_use]
pub fn edits(document: &Document, changes: &[Change]) -> Vec<Edit> {
    let mut once: Vec<Change> = Vec::with_capacity(changes.len());
    for change in changes {
        if !once.contains(change) {
            once.push(change.clone());
        }
    }
    if contradict(&once) { Vec::new() } else { try_edits(document, &once).unwrap_or_default() }
}

/// Whether one note would get two bow marks.
fn contradict(changes: &[Change]) -> bool {
    let mut marked = BTreeSet::new();
    changes.iter().any(|change| match change {
        Change::Notation { note, xml } => xml.contains("-bow/>") && !marked.insert(*note),
        _ => false,
    })
}

fn try_edits(document: &Document, changes: &[Change]) -> Option<Vec<Edit>> {
    let mut editor = Editor::new(document);
    for id in removals(document, changes) {
        editor.remove(document.element(id)?).ok()?;
    }
    for change in changes {
        match change {
            Change::Remove(_) => {}
            Change::Notation { note, xml } => insert_notation(&mut editor, document.element(*note)?, xml)?,
            Change::Before { next, xml } => {
                let next = document.element(*next)?;
                editor.insert_child(next.parent()?, xml, Position::Before(next.id())).ok()?;
            }
        }
    }
    Some(editor.finish().ok()?.edits().to_vec())
}

/// What is taken out, with the containers that would be left empty instead of their last children.
fn removals(document: &Document, changes: &[Change]) -> BTreeSet<NodeId> {
    let kept: BTreeSet<NodeId> = changes
        .iter()
        .filter_map(|change| match change {
            Change::Notation { note, .. } => {
                document.element(*note)?.child(Tag::NOTATIONS).map(|notations| notations.id())
            }
            _ => None,
        })
        .collect();
    let mut removed: BTreeSet<NodeId> = changes
        .iter()
        .filter_map(|change| if let Change::Remove(id) = change { Some(*id) } else { None })
        .collect();
    // Containers nest three deep at most: direction, direction-type, words.
    for _ in 0..3 {
        let parents: BTreeSet<NodeId> = removed
            .iter()
            .filter_map(|id| document.element(*id)?.parent())
            .filter(|parent| CONTAINERS.contains(&parent.tag()) && !kept.contains(&parent.id()))
            .filter(|parent| parent.children().all(|child| removed.contains(&child.id())))
            .map(Element::id)
            .collect();
        for parent in &parents {
            let children = document.element(*parent).into_iter().flat_map(Element::children);
            for child in children {
                removed.remove(&child.id());
            }
        }
        removed.extend(parents);
    }
    removed
}

fn insert_notation<'d>(editor: &mut Editor<'d>, note: Element<'d>, xml: &str) -> Option<()> {
    if let Some(notations) = note.child(Tag::NOTATIONS) {
        return editor.insert_child(notations, xml, Position::Last).ok();
    }
    // The order of MusicXML 4.0: what may follow <notations> in a <note>.
    let follows = [Tag::LYRIC, Tag::PLAY, Tag::LISTEN];
    let next = note.children().find(|child| follows.contains(&child.tag()));
    let position = next.map_or(Position::Last, |next| Position::Before(next.id()));
    editor.insert_child(note, &format!("<notations>{xml}</notations>"), position).ok()
}

/// A direction with words or a dynamic before a note, on its staff.
#[must_use]
pub fn direction_before(note: &Note, staves: u8, placement: &str, content: &str) -> Change {
    let staff = if staves > 1 { format!("<staff>{}</staff>", note.staff) } else { String::new() };
    let xml = format!(
        "<direction placement=\"{placement}\"><direction-type>{content}</direction-type>{staff}</direction>"
    );
    Change::Before { next: note.node, xml }
}

/// Puts a bow mark on a note: nothing where it is there already, and instead of one the other way.
#[must_use]
pub fn bow_mark(note: &Note, direction: BowDirection) -> Vec<Change> {
    let mark = match direction {
        BowDirection::Down => "down-bow",
        BowDirection::Up => "up-bow",
    };
    let put = Change::Notation { note: note.node, xml: format!("<technical><{mark}/></technical>") };
    match &note.bow_mark {
        Some(there) if there.direction == direction => Vec::new(),
        Some(there) => vec![Change::Remove(there.node), put],
        None => vec![put],
    }
}

/// Takes out the bow mark of a note.
#[must_use]
pub fn take_out_mark(note: &Note) -> Vec<Change> {
    note.bow_mark.iter().map(|mark| Change::Remove(mark.node)).collect()
}

/// Takes out a mark that stands somewhere in the score.
#[must_use]
pub fn take_out(place: &Place) -> Change {
    Change::Remove(place.node)
}
