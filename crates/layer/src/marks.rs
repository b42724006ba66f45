//! Down- and up-bows as edits.

use arcata_score::{BowDirection, Note, NoteId, Score};
use arcata_xml::{Document, Edit, EditError, EditList, Editor, Element, NodeId, Position, Tag};

/// A mark to be written over a note.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct BowAddition {
    /// Index of the part.
    pub part: usize,
    /// The note; of a chord its first.
    pub note: NoteId,
    /// Which way.
    pub direction: BowDirection,
}

/// Children of a `<note>` that come after its `<notations>` (MusicXML 4.0, type `note`).
const AFTER_NOTATIONS: [Tag; 3] = [Tag::LYRIC, Tag::PLAY, Tag::LISTEN];

/// Edits that write the marks. Notes that carry the mark already, rests and notes that do not exist are passed over; so are
/// doubles, and notes that bear both bows. Where the other bow is printed the mark takes its place and keeps its attributes.
///
/// A mark joins the note's `<technical>` when it has one, else its `<notations>`, else gets both.
///
/// # Errors
///
/// Only where the document's own markup leaves no place for an insertion.
pub fn add_marks(
    document: &Document,
    score: &Score,
    additions: &[BowAddition],
) -> Result<EditList, EditError> {
    let mut wanted: Vec<(&Note, BowDirection)> = additions
        .iter()
        .filter_map(|addition| {
            let note = score.parts.get(addition.part)?.notes.get(addition.note.0 as usize)?;
            let has_it = note.bow_mark.is_some_and(|mark| mark.direction == addition.direction);
            let takes_one = !has_it && note.more_bow_marks.is_empty() && !note.pitch.is_rest();
            takes_one.then_some((note, addition.direction))
        })
        .collect();
    wanted.sort_by_key(|(note, _)| note.node);
    wanted.dedup_by_key(|(note, _)| note.node);
    let mut editor = Editor::new(document);
    let mut turned = Vec::new();
    for (note, direction) in wanted {
        if let Some(mark) = note.bow_mark.and_then(|mark| document.element(mark.node)) {
            turned.push(turn(mark, direction));
        } else if let Some(note) = document.element(note.node) {
            add_mark(&mut editor, note, direction)?;
        }
    }
    let added = editor.finish()?;
    EditList::new(added.edits().iter().cloned().chain(turned).collect())
}

/// The other bow in the place of a printed one.
fn turn(mark: Element<'_>, direction: BowDirection) -> Edit {
    let (old, new) = match direction {
        BowDirection::Down => ("up-bow", "down-bow"),
        BowDirection::Up => ("down-bow", "up-bow"),
    };
    Edit::replacement(mark.range(), mark.source().replace(old, new))
}

fn add_mark<'d>(
    editor: &mut Editor<'d>,
    note: Element<'d>,
    direction: BowDirection,
) -> Result<(), EditError> {
    let mark = match direction {
        BowDirection::Down => "<down-bow/>",
        BowDirection::Up => "<up-bow/>",
    };
    // An empty shell that the file brought along is left as it is: once filled, nothing would tell it
    // from one that came with the mark, and taking the mark off would take it, too.
    let filled = |element: &Element<'d>| element.children().next().is_some();
    let mut shells = note.children_named(Tag::NOTATIONS).filter(filled);
    let technical = |notations: Element<'d>| notations.children_named(Tag::TECHNICAL).find(filled);
    if let Some(technical) = shells.clone().find_map(technical) {
        return editor.insert_child(technical, mark, Position::Last);
    }
    let technical = format!("<technical>{mark}</technical>");
    if let Some(notations) = shells.next() {
        return editor.insert_child(notations, &technical, Position::Last);
    }
    let notations = format!("<notations>{technical}</notations>");
    let after = note.children().find(|child| AFTER_NOTATIONS.contains(&child.tag()));
    let position = after.map_or(Position::Last, |child| Position::Before(child.id()));
    editor.insert_child(note, &notations, position)
}

/// Edits that take off every bow mark that `chosen` picks, by part and note, with the `<technical>` and
/// `<notations>` that would be left empty.
///
/// # Errors
///
/// Only where the document's own markup leaves no way to take an element out.
pub fn remove_marks(
    document: &Document,
    score: &Score,
    mut chosen: impl FnMut(usize, NoteId) -> bool,
) -> Result<EditList, EditError> {
    let mut editor = Editor::new(document);
    for (part, notes) in score.parts.iter().enumerate() {
        for (index, note) in notes.notes.iter().enumerate() {
            let id = NoteId(u32::try_from(index).unwrap_or(u32::MAX));
            let marks: Vec<NodeId> =
                note.bow_mark.iter().chain(&note.more_bow_marks).map(|mark| mark.node).collect();
            if marks.is_empty() || !chosen(part, id) {
                continue;
            }
            for element in emptied(document, &marks) {
                editor.remove(element)?;
            }
        }
    }
    editor.finish()
}

/// The elements to take out so that the marks are gone and no empty shell is left: a shell goes whole
/// when everything in it goes.
fn emptied<'d>(document: &'d Document, marks: &[NodeId]) -> Vec<Element<'d>> {
    let mut going: Vec<Element<'d>> = marks.iter().filter_map(|mark| document.element(*mark)).collect();
    for _ in 0..2 {
        let ids: Vec<NodeId> = going.iter().map(|element| element.id()).collect();
        let mut shells: Vec<Element<'d>> = Vec::new();
        for element in &going {
            let shell = element.parent().filter(|parent| {
                matches!(parent.tag(), Tag::TECHNICAL | Tag::NOTATIONS)
                    && parent.children().all(|child| ids.contains(&child.id()))
                    // Text that strayed into it is not ours to take.
                    && parent.text().is_empty()
            });
            let next = shell.unwrap_or(*element);
            if !shells.iter().any(|kept| kept.id() == next.id()) {
                shells.push(next);
            }
        }
        going = shells;
    }
    going
}
