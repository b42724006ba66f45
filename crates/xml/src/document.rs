//! A document: the bytes of a file, and the places of its elements in them.

use std::ops::Range;
use std::sync::OnceLock;

use crate::element::Element;
use crate::encoding::{EncodedText, Encoding, over_length};
use crate::error::XmlError;
use crate::limits::Limits;
use crate::place::{PlaceIndex, TextPlace};
use crate::reading::{Tree, read_tree};
use crate::tags::{Names, Tag};

/// The number of an element, counted in the order of the start tags from 0.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct NodeId(pub u32);

impl NodeId {
    pub(crate) fn index(self) -> usize {
        self.0 as usize
    }
}

/// No element: the parent of the root.
pub(crate) const NO_NODE: u32 = u32::MAX;

/// Where an element stands in the text. Elements are kept in the order of their start tags, so that the
/// descendants of one follow it directly.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Node {
    /// Offset of `<` of the start tag.
    pub(crate) start: u32,
    /// Offset behind `>` of the start tag.
    pub(crate) content_start: u32,
    /// Offset of `<` of the end tag; in an empty-element tag, where it ends.
    pub(crate) content_end: u32,
    /// Offset behind the element.
    pub(crate) end: u32,
    /// The number behind the last descendant: the next sibling, if there is one.
    pub(crate) past: u32,
    /// The number of the element around this one.
    pub(crate) parent: u32,
    pub(crate) tag: Tag,
    pub(crate) form: Form,
}

/// How an element is written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Form {
    /// `<a>…</a>`
    Open,
    /// `<a/>`
    Empty,
}

// Memory is a promise: three times the file, the file itself included.
const _: () = assert!(size_of::<Node>() <= 32);

/// A well-formed XML document that never loses a byte.
///
/// All offsets and ranges are bytes of [`Document::text`].
pub struct Document {
    source: EncodedText,
    tree: Tree,
    places: OnceLock<PlaceIndex>,
}

/// Something odd that does not keep a document from being read.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Remark {
    /// What it is.
    pub kind: RemarkKind,
    /// Where it first shows.
    pub place: TextPlace,
    /// How often it shows.
    pub count: usize,
}

/// The kinds of odd things.
#[derive(Clone, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub enum RemarkKind {
    /// A reference to an entity that is not one of XML's own. It is kept as written and not resolved.
    Entity {
        /// The name, as in `&name;`.
        name: String,
    },
}

impl std::fmt::Display for Remark {
    fn fmt(&self, out: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        let RemarkKind::Entity { name } = &self.kind;
        write!(out, "{}: &{name}; is kept as it is written, not resolved", self.place)?;
        if self.count > 1 {
            write!(out, " (it stands {} times in the file)", self.count)?;
        }
        write!(out, "; write the character itself")
    }
}

impl std::fmt::Debug for Document {
    // A score has millions of bytes: what a failed test prints must not.
    fn fmt(&self, out: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        let root = self.root();
        write!(out, "Document <{}> ({}, {} elements)", root.name(), self.encoding(), self.tree.nodes.len())
    }
}

impl Document {
    /// Reads a document.
    ///
    /// Four faults do no harm here and are let through: `--` inside a comment, `]]>` in text, oddities in
    /// the XML declaration behind the encoding, and references to entities that are nowhere declared
    /// (those are [remarked](Document::remarks)).
    ///
    /// # Errors
    ///
    /// One [`XmlError`] for anything that is not well-formed XML in a known encoding, or that passes a
    /// limit.
    pub fn parse(bytes: Vec<u8>, limits: &Limits) -> Result<Document, XmlError> {
        if bytes.len() > limits.max_bytes.min(u32::MAX as usize) {
            return Err(over_length(limits));
        }
        let source = EncodedText::read(bytes, limits)?;
        let tree = read_tree(source.text(), limits)?;
        Ok(Document { source, tree, places: OnceLock::new() })
    }

    /// The outermost element.
    #[must_use]
    pub fn root(&self) -> Element<'_> {
        Element::new(self, NodeId(0))
    }

    /// The element with a number; nothing for a number that this document has not given.
    #[must_use]
    pub fn element(&self, id: NodeId) -> Option<Element<'_>> {
        (id.index() < self.tree.nodes.len()).then(|| Element::new(self, id))
    }

    /// All elements in the order of their start tags.
    pub fn elements(&self) -> impl ExactSizeIterator<Item = Element<'_>> + Clone {
        (0..self.tree.nodes.len() as u32).map(|id| Element::new(self, NodeId(id)))
    }

    /// The text without a byte order mark: the bytes themselves where the file is in UTF-8.
    #[must_use]
    pub fn text(&self) -> &str {
        self.source.text()
    }

    /// The bytes as they were given.
    #[must_use]
    pub fn bytes(&self) -> &[u8] {
        self.source.bytes()
    }

    /// Gives the bytes back as they were given.
    #[must_use]
    pub fn into_bytes(self) -> Vec<u8> {
        self.source.into_bytes()
    }

    /// The encoding of the bytes.
    #[must_use]
    pub fn encoding(&self) -> Encoding {
        self.source.encoding()
    }

    /// The document type declaration, if there is one, from `<!DOCTYPE` to its `>`.
    #[must_use]
    pub fn doctype(&self) -> Option<&str> {
        self.tree.doctype.clone().map(|range| &self.text()[range])
    }

    /// What is odd but did not keep the document from being read, each thing once.
    #[must_use]
    pub fn remarks(&self) -> &[Remark] {
        &self.tree.remarks
    }

    /// The number of a name in this document; nothing if no element bears it and it is not of MusicXML.
    #[must_use]
    pub fn tag(&self, name: &str) -> Option<Tag> {
        self.tree.names.find(name)
    }

    /// The line and column of an offset into the text.
    #[must_use]
    pub fn place(&self, offset: usize) -> TextPlace {
        let text = self.text().as_bytes();
        self.places.get_or_init(|| PlaceIndex::new(text)).place(text, offset)
    }

    /// A piece of the text; empty where the range is not one of this text.
    #[must_use]
    pub fn slice(&self, range: Range<usize>) -> &str {
        self.text().get(range).unwrap_or("")
    }

    pub(crate) fn node(&self, id: NodeId) -> &Node {
        &self.tree.nodes[id.index()]
    }

    pub(crate) fn names(&self) -> &Names {
        &self.tree.names
    }

    pub(crate) fn mark(&self) -> &'static [u8] {
        self.source.mark()
    }
}
