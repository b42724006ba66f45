//! Edits that fit the manners of a file.

use std::collections::{BTreeMap, BTreeSet};

use crate::document::{Document, NodeId};
use crate::edit::{Edit, EditError, EditList};
use crate::element::Element;
use crate::error::shown;
use crate::layout::{
    EmptyLayout, blanks_before, closing_bracket, has_text, laid_out, lead_of, step_around, step_inside,
    was_empty_tag,
};
use crate::limits::Limits;

/// Where among the children of an element a new one goes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Position {
    /// Before everything inside.
    First,
    /// Behind everything inside.
    Last,
    /// Directly before a child.
    Before(NodeId),
    /// Directly behind a child.
    After(NodeId),
}

/// Collects changes to the elements of a document and gives them as one list of edits.
///
/// A new element gets a line of its own, set in like its neighbours and ended like the other lines, if
/// its neighbours have lines of their own; otherwise it joins them on their line. Removing what was
/// inserted gives back the bytes there were before.
///
/// ```
/// use arcata_xml::{Document, Editor, Limits, Position, Tag};
///
/// let before = "<note>\n  <notations>\n    <technical/>\n  </notations>\n</note>\n";
/// let document = Document::parse(before.into(), &Limits::default())?;
/// let technical = document.elements().find(|e| e.tag() == Tag::TECHNICAL).unwrap();
/// let mut editor = Editor::new(&document);
/// editor.insert_child(technical, "<up-bow/>", Position::Last)?;
/// let bytes = document.apply(&editor.finish()?)?;
/// assert!(std::str::from_utf8(&bytes)?.contains(
///     "    <technical>\n      <up-bow/>\n    </technical>\n"
/// ));
///
/// let document = Document::parse(bytes, &Limits::default())?;
/// let mark = document.elements().find(|e| e.tag() == Tag::UP_BOW).unwrap();
/// let mut editor = Editor::new(&document);
/// editor.remove(mark)?;
/// assert_eq!(document.apply(&editor.finish()?)?, before.as_bytes());
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[derive(Debug)]
pub struct Editor<'d> {
    document: &'d Document,
    edits: Vec<Edit>,
    /// What goes into elements that are written as empty tags: all of it opens the tag once.
    opened: BTreeMap<NodeId, String>,
    /// Elements that get new children.
    grown: BTreeSet<NodeId>,
    removed: BTreeSet<NodeId>,
}

impl<'d> Editor<'d> {
    /// An editor without changes.
    #[must_use]
    pub fn new(document: &'d Document) -> Editor<'d> {
        Editor {
            document,
            edits: Vec::new(),
            opened: BTreeMap::new(),
            grown: BTreeSet::new(),
            removed: BTreeSet::new(),
        }
    }

    /// Puts a new element, written as XML, into another.
    ///
    /// Several at the same place stand in the order in which they were inserted.
    ///
    /// # Errors
    ///
    /// XML that is not exactly one well-formed element, or a position beside an element that is not a
    /// child of `parent`.
    pub fn insert_child(
        &mut self,
        parent: Element<'d>,
        xml: &str,
        position: Position,
    ) -> Result<(), EditError> {
        self.check_owner(parent)?;
        let neighbour = self.neighbour(parent, position)?;
        let fragment = self.fragment(xml)?;
        self.grown.insert(parent.id());
        if parent.is_empty_tag() {
            let layout = EmptyLayout::of(parent);
            let added = self.opened.entry(parent.id()).or_default();
            added.push_str(&layout.lead);
            added.push_str(&laid_out(&fragment, &layout.lead, step_around(parent)));
            return Ok(());
        }
        let lead = lead_for_child(parent, neighbour);
        let step = step_inside(parent, &lead);
        let insert = format!("{lead}{}", laid_out(&fragment, &lead, step));
        self.edits.push(Edit::insertion(self.offset(parent, position), insert));
        Ok(())
    }

    /// Takes an element away together with the line break and blanks before it.
    ///
    /// An element that looks as if it had been an empty tag before its children were inserted is one
    /// again when all of them are removed.
    ///
    /// # Errors
    ///
    /// The root, and an element of another document.
    pub fn remove(&mut self, element: Element<'d>) -> Result<(), EditError> {
        self.check_owner(element)?;
        if element.parent().is_none() {
            return Err(EditError::RemovesRoot);
        }
        self.removed.insert(element.id());
        Ok(())
    }

    /// Adds an edit made by hand.
    pub fn edit(&mut self, edit: Edit) {
        self.edits.push(edit);
    }

    /// All changes as one list of edits.
    ///
    /// # Errors
    ///
    /// Changes that touch each other, such as removing an element and inserting into it.
    pub fn finish(mut self) -> Result<EditList, EditError> {
        let opened = std::mem::take(&mut self.opened);
        for (id, added) in opened {
            let parent = Element::new(self.document, id);
            let tail = EmptyLayout::of(parent).tail;
            let range = closing_bracket(parent)..parent.range().end;
            let insert = format!(">{added}{tail}</{}>", parent.name());
            self.edits.push(Edit::replacement(range, insert));
        }
        self.remove_all();
        EditList::new(self.edits)
    }

    fn remove_all(&mut self) {
        let mut by_parent: BTreeMap<NodeId, Vec<Element<'d>>> = BTreeMap::new();
        for &id in &self.removed {
            let element = Element::new(self.document, id);
            if let Some(parent) = element.parent() {
                by_parent.entry(parent.id()).or_default().push(element);
            }
        }
        for (id, children) in by_parent {
            let parent = Element::new(self.document, id);
            let is_emptied = parent.children().count() == children.len() && !self.grown.contains(&id);
            if is_emptied && was_empty_tag(parent) {
                let range = closing_bracket(parent)..parent.range().end;
                self.edits.push(Edit::replacement(range, "/>"));
                continue;
            }
            // Blanks beside text are part of the text.
            let takes_lead = !has_text(parent);
            for child in children {
                let lead = if takes_lead { lead_of(child).len() } else { 0 };
                let range = child.range();
                self.edits.push(Edit::deletion(range.start - lead..range.end));
            }
        }
    }

    fn check_owner(&self, element: Element<'d>) -> Result<(), EditError> {
        match std::ptr::eq(element.document(), self.document) {
            true => Ok(()),
            false => Err(EditError::OtherDocument),
        }
    }

    /// The child whose manners a new one takes over.
    fn neighbour(&self, parent: Element<'d>, position: Position) -> Result<Option<Element<'d>>, EditError> {
        match position {
            Position::First => Ok(parent.children().next()),
            Position::Last => Ok(parent.children().last()),
            Position::Before(id) | Position::After(id) => {
                let child = self.document.element(id).filter(|child| child.parent() == Some(parent));
                match child {
                    Some(child) => Ok(Some(child)),
                    None => Err(EditError::NotAChild { parent: shown(parent.name()) }),
                }
            }
        }
    }

    fn fragment(&self, xml: &str) -> Result<Document, EditError> {
        let xml = crate::content::trim(xml);
        let fragment = Document::parse(xml.as_bytes().to_vec(), &Limits::default()).map_err(|error| {
            match error.kind() {
                crate::XmlErrorKind::SecondRoot { .. } => EditError::NotOneElement,
                _ => EditError::Malformed { error },
            }
        })?;
        if fragment.root().range() != (0..xml.len()) {
            return Err(EditError::NotOneElement);
        }
        let encoding = self.document.encoding();
        if !encoding.is_unicode() {
            let names = fragment.elements().flat_map(|element| {
                std::iter::once(element.name()).chain(element.attributes().map(|attribute| attribute.name()))
            });
            if let Some(name) = names.into_iter().find(|name| !name.chars().all(|c| encoding.has(c))) {
                return Err(EditError::NameNotInEncoding { name: shown(name), encoding });
            }
        }
        Ok(fragment)
    }

    /// Where a new child goes. Always directly behind something that is not blank, unless blanks are
    /// part of a text: the blanks before the new child are then its own, to the last one.
    fn offset(&self, parent: Element<'d>, position: Position) -> usize {
        let text = self.document.text();
        let at = match position {
            Position::First => parent.content_range().start,
            Position::Last => parent.content_range().end,
            Position::Before(id) => Element::new(self.document, id).range().start,
            Position::After(id) => Element::new(self.document, id).range().end,
        };
        if has_text(parent) { at } else { at - blanks_before(text, at).len() }
    }
}

/// The blanks that go before a new child of an element that is not an empty tag.
fn lead_for_child(parent: Element<'_>, neighbour: Option<Element<'_>>) -> String {
    if has_text(parent) {
        return String::new();
    }
    if let Some(neighbour) = neighbour {
        return lead_of(neighbour).to_owned();
    }
    let EmptyLayout { mut lead, tail } = EmptyLayout::of(parent);
    if parent.raw_text() == tail {
        // Laid out as usual it could not be told from an empty tag that was opened, and removing the
        // child would close it. One blank more makes the difference.
        lead.push(' ');
    }
    lead
}
