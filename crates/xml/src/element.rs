//! A cursor on an element.

use std::borrow::Cow;
use std::ops::Range;

use crate::attributes::{Attribute, Attributes};
use crate::content::direct_text;
use crate::document::{Document, Form, NO_NODE, Node, NodeId};
use crate::place::TextPlace;
use crate::tags::Tag;

/// An element of a document: a small value that is copied freely.
#[derive(Clone, Copy)]
pub struct Element<'d> {
    document: &'d Document,
    id: NodeId,
}

impl<'d> Element<'d> {
    pub(crate) fn new(document: &'d Document, id: NodeId) -> Element<'d> {
        Element { document, id }
    }

    #[inline]
    fn node(self) -> &'d Node {
        self.document.node(self.id)
    }

    /// The document it stands in.
    #[must_use]
    pub fn document(self) -> &'d Document {
        self.document
    }

    /// Its number in the document.
    #[must_use]
    pub fn id(self) -> NodeId {
        self.id
    }

    /// Its name as a number.
    #[must_use]
    pub fn tag(self) -> Tag {
        self.node().tag
    }

    /// Its name, with the prefix if it has one.
    #[must_use]
    pub fn name(self) -> &'d str {
        self.document.names().name(self.tag())
    }

    /// The elements directly inside, in their order.
    #[must_use]
    pub fn children(self) -> Children<'d> {
        Children { document: self.document, next: self.id.0 + 1, past: self.node().past }
    }

    /// The first element directly inside that bears a name.
    #[must_use]
    pub fn child(self, tag: Tag) -> Option<Element<'d>> {
        self.children().find(|child| child.tag() == tag)
    }

    /// The elements directly inside that bear a name.
    pub fn children_named(self, tag: Tag) -> impl Iterator<Item = Element<'d>> + Clone {
        self.children().filter(move |child| child.tag() == tag)
    }

    /// All elements inside, at any depth, in the order of their start tags.
    pub fn descendants(self) -> impl ExactSizeIterator<Item = Element<'d>> + Clone {
        let document = self.document;
        (self.id.0 + 1..self.node().past).map(move |id| Element::new(document, NodeId(id)))
    }

    /// The element around this one; nothing for the root.
    #[must_use]
    pub fn parent(self) -> Option<Element<'d>> {
        let parent = self.node().parent;
        (parent != NO_NODE).then(|| Element::new(self.document, NodeId(parent)))
    }

    /// The next element with the same parent.
    #[must_use]
    pub fn next_sibling(self) -> Option<Element<'d>> {
        let next = self.node().past;
        let parent = self.parent()?;
        (next < parent.node().past).then(|| Element::new(self.document, NodeId(next)))
    }

    /// The value of an attribute, with references to characters resolved.
    #[must_use]
    pub fn attribute(self, name: &str) -> Option<Cow<'d, str>> {
        self.attributes().find(|attribute| attribute.name == name).as_ref().map(Attribute::value)
    }

    /// All attributes in the order they stand.
    #[must_use]
    pub fn attributes(self) -> Attributes<'d> {
        let node = self.node();
        let tail = match node.form {
            Form::Open => 1,
            Form::Empty => 2,
        };
        let start = node.start as usize + 1 + self.name().len();
        Attributes::new(&self.document.text()[start..node.content_start as usize - tail])
    }

    /// The text directly inside, CDATA too, with references resolved and blanks around it cut off.
    ///
    /// A reference to an entity that is not one of XML's own stays as written.
    #[must_use]
    pub fn text(self) -> Cow<'d, str> {
        direct_text(self)
    }

    /// Everything between the tags as it is written.
    #[must_use]
    pub fn raw_text(self) -> &'d str {
        &self.document.text()[self.content_range()]
    }

    /// The element as it is written, from its start tag to its end tag.
    #[must_use]
    pub fn source(self) -> &'d str {
        &self.document.text()[self.range()]
    }

    /// The bytes of the whole element in the text of the document.
    #[must_use]
    pub fn range(self) -> Range<usize> {
        self.node().start as usize..self.node().end as usize
    }

    /// The bytes of the start tag, or of the empty-element tag.
    #[must_use]
    pub fn start_tag_range(self) -> Range<usize> {
        self.node().start as usize..self.node().content_start as usize
    }

    /// The bytes between the tags; empty behind an empty-element tag.
    #[must_use]
    pub fn content_range(self) -> Range<usize> {
        self.node().content_start as usize..self.node().content_end as usize
    }

    /// Whether it is written as `<a/>`.
    #[must_use]
    pub fn is_empty_tag(self) -> bool {
        self.node().form == Form::Empty
    }

    /// The line and column where it begins.
    #[must_use]
    pub fn line_column(self) -> TextPlace {
        self.document.place(self.node().start as usize)
    }

    pub(crate) fn has_children(self) -> bool {
        self.node().past > self.id.0 + 1
    }
}

impl PartialEq for Element<'_> {
    fn eq(&self, other: &Self) -> bool {
        std::ptr::eq(self.document, other.document) && self.id == other.id
    }
}

impl Eq for Element<'_> {}

impl std::fmt::Debug for Element<'_> {
    fn fmt(&self, out: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(out, "<{}> ({})", self.name(), self.line_column())
    }
}

/// The elements directly inside another, in their order.
#[derive(Clone, Debug)]
pub struct Children<'d> {
    document: &'d Document,
    next: u32,
    past: u32,
}

impl<'d> Iterator for Children<'d> {
    type Item = Element<'d>;

    #[inline]
    fn next(&mut self) -> Option<Element<'d>> {
        if self.next >= self.past {
            return None;
        }
        let child = Element::new(self.document, NodeId(self.next));
        self.next = child.node().past;
        Some(child)
    }
}
