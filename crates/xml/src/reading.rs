//! From text to the arena of elements.

use std::ops::Range;

use memchr::memchr;
use quick_xml::events::Event;
use quick_xml::reader::Reader;

use crate::attributes::{name_end, next_attribute};
use crate::document::{Form, NO_NODE, Node, Remark, RemarkKind};
use crate::error::{Limited, XmlError, XmlErrorKind, shown};
use crate::limits::Limits;
use crate::place::TextPlace;
use crate::references::{ReferenceMeaning, meaning};
use crate::tags::{Names, Tag};

/// The elements of a document and what was found beside them.
#[derive(Debug)]
pub(crate) struct Tree {
    pub(crate) nodes: Vec<Node>,
    pub(crate) names: Names,
    pub(crate) doctype: Option<Range<usize>>,
    pub(crate) remarks: Vec<Remark>,
}

/// More different remarks than this are not kept: a hostile file has as many as it likes.
const MOST_REMARKS: usize = 64;

pub(crate) fn read_tree(text: &str, limits: &Limits) -> Result<Tree, XmlError> {
    let mut builder = ArenaBuilder::new(text, limits);
    let mut reader = Reader::from_str(text);
    let config = reader.config_mut();
    // The builder compares the names itself, and so can say where the open element began.
    config.check_end_names = false;
    config.allow_unmatched_ends = true;
    let mut start = 0;
    loop {
        let event = reader.read_event();
        let end = reader.buffer_position() as usize;
        match event {
            Ok(Event::Start(tag)) => builder.open(start..end, tag.name().as_ref(), Form::Open)?,
            Ok(Event::Empty(tag)) => builder.open(start..end, tag.name().as_ref(), Form::Empty)?,
            Ok(Event::End(tag)) => builder.close(start..end, tag.name().as_ref())?,
            Ok(Event::Text(_)) => builder.plain_text(start..end)?,
            Ok(Event::CData(_)) if !builder.is_inside() => {
                return Err(builder.error(XmlErrorKind::TextOutsideRoot, start));
            }
            Ok(Event::GeneralRef(_)) => builder.reference(start..end)?,
            Ok(Event::Decl(_)) if start > 0 => {
                let kind = XmlErrorKind::Misplaced { what: "XML declaration" };
                return Err(builder.error(kind, start));
            }
            Ok(Event::DocType(_)) => builder.document_type(start..end)?,
            Ok(Event::Eof) => break,
            Ok(_) => {}
            Err(error) => return Err(builder.markup_error(&error, reader.error_position() as usize)),
        }
        start = end;
    }
    builder.finish()
}

struct ArenaBuilder<'t> {
    text: &'t str,
    limits: &'t Limits,
    tree: Tree,
    /// The innermost open element.
    open: u32,
    depth: usize,
    /// Most files hold not one `&`, and then no attribute need be searched for one.
    has_references: bool,
}

impl<'t> ArenaBuilder<'t> {
    fn new(text: &'t str, limits: &'t Limits) -> ArenaBuilder<'t> {
        // The tokens' offsets would be counted from behind a mark.
        debug_assert!(!text.starts_with('\u{FEFF}'), "a text that is XML begins with < or blanks");
        let names = Names::new();
        let nodes = Vec::with_capacity(count_start_tags(text).min(limits.max_elements));
        let tree = Tree { nodes, names, doctype: None, remarks: Vec::new() };
        let has_references = memchr(b'&', text.as_bytes()).is_some();
        ArenaBuilder { text, limits, tree, open: NO_NODE, depth: 0, has_references }
    }

    fn is_inside(&self) -> bool {
        self.open != NO_NODE
    }

    #[inline]
    fn open(&mut self, range: Range<usize>, name: &str, form: Form) -> Result<(), XmlError> {
        let tag = match self.tree.names.recall(name) {
            Some(tag) => tag,
            None => self.new_name(name, range.start)?,
        };
        if !self.is_inside() && !self.tree.nodes.is_empty() {
            let kind = XmlErrorKind::SecondRoot { name: shown(name) };
            return Err(self.error(kind, range.start));
        }
        if self.tree.nodes.len() >= self.limits.max_elements {
            return Err(self.over(Limited::Elements, self.limits.max_elements, range.start));
        }
        if self.depth >= self.limits.max_depth {
            return Err(self.over(Limited::Depth, self.limits.max_depth, range.start));
        }
        let tail = if form == Form::Empty { 2 } else { 1 };
        let attributes = range.start + 1 + name.len()..range.end - tail;
        if !attributes.is_empty() {
            self.check_attributes(attributes)?;
        }
        let id = self.tree.nodes.len() as u32;
        let end = range.end as u32;
        self.tree.nodes.push(Node {
            start: range.start as u32,
            content_start: end,
            content_end: end,
            end,
            past: id + 1,
            parent: self.open,
            tag,
            form,
        });
        if form == Form::Open {
            self.open = id;
            self.depth += 1;
        }
        Ok(())
    }

    #[cold]
    fn new_name(&mut self, name: &str, at: usize) -> Result<Tag, XmlError> {
        if name.is_empty() || name_end(name.as_bytes(), 0) != name.len() {
            return Err(self.error(XmlErrorKind::BadName { name: shown(name) }, at));
        }
        match self.tree.names.add(name, self.limits.max_names) {
            Some(tag) => Ok(tag),
            None => Err(self.over(Limited::Names, self.limits.max_names, at)),
        }
    }

    #[inline]
    fn close(&mut self, range: Range<usize>, name: &str) -> Result<(), XmlError> {
        let past = self.tree.nodes.len() as u32;
        let Some(node) = self.tree.nodes.get_mut(self.open as usize) else {
            return Err(self.error(XmlErrorKind::StrayEnd { found: shown(name) }, range.start));
        };
        let (tag, start) = (node.tag, node.start as usize);
        node.content_end = range.start as u32;
        node.end = range.end as u32;
        node.past = past;
        self.open = node.parent;
        self.depth -= 1;
        if self.tree.names.name(tag) == name {
            return Ok(());
        }
        let kind = XmlErrorKind::MismatchedEnd {
            open: shown(self.tree.names.name(tag)),
            opened: self.place(start).line,
            found: shown(name),
        };
        Err(self.error(kind, range.start))
    }

    #[inline]
    fn check_attributes(&mut self, range: Range<usize>) -> Result<(), XmlError> {
        /// Names that are compared one with another; more are sorted, which stays quick for thousands.
        const FEW: usize = 8;
        let text = self.text;
        let tag = &text.as_bytes()[range.clone()];
        let mut few = [(0, 0); FEW];
        let (mut count, mut from) = (0, 0);
        loop {
            let found = match next_attribute(tag, from) {
                Ok(Some(found)) => found,
                Ok(None) => break,
                Err(fault) => {
                    let kind = XmlErrorKind::BadAttribute { what: fault.what };
                    return Err(self.error(kind, range.start + fault.at));
                }
            };
            let name = &tag[found.name.0..found.name.1];
            if few[..count.min(FEW)].iter().any(|&(from, to)| &tag[from..to] == name) {
                return Err(self.duplicate(range.start + found.name.0));
            }
            if count < FEW {
                few[count] = found.name;
            }
            count += 1;
            if count > self.limits.max_attributes {
                return Err(self.over(Limited::Attributes, self.limits.max_attributes, range.start));
            }
            if self.has_references {
                self.check_references(range.start + found.value.0..range.start + found.value.1)?;
            }
            from = found.next;
        }
        if count > FEW { self.check_many_names(range) } else { Ok(()) }
    }

    #[cold]
    fn check_many_names(&self, range: Range<usize>) -> Result<(), XmlError> {
        let tag = &self.text.as_bytes()[range.clone()];
        let mut names = Vec::new();
        let mut from = 0;
        while let Ok(Some(found)) = next_attribute(tag, from) {
            names.push((&tag[found.name.0..found.name.1], found.name.0));
            from = found.next;
        }
        names.sort_unstable();
        match names.windows(2).find(|pair| pair[0].0 == pair[1].0) {
            Some(pair) => Err(self.duplicate(range.start + pair[1].1)),
            None => Ok(()),
        }
    }

    #[cold]
    fn duplicate(&self, at: usize) -> XmlError {
        let name = &self.text[at..name_end(self.text.as_bytes(), at)];
        self.error(XmlErrorKind::DuplicateAttribute { name: shown(name) }, at)
    }

    /// The references inside a value.
    fn check_references(&mut self, value: Range<usize>) -> Result<(), XmlError> {
        let text = self.text;
        let mut at = value.start;
        while let Some(ampersand) = memchr(b'&', &text.as_bytes()[at..value.end]) {
            let start = at + ampersand;
            let inside = &text[start + 1..value.end];
            match inside.find([';', '&']).filter(|&end| inside.as_bytes()[end] == b';') {
                Some(length) => at = start + length + 2,
                None => return Err(self.error(XmlErrorKind::LoneAmpersand, start)),
            }
            self.check_reference(start..at)?;
        }
        Ok(())
    }

    #[inline]
    fn plain_text(&self, range: Range<usize>) -> Result<(), XmlError> {
        if self.is_inside() {
            return Ok(());
        }
        let text = &self.text[range.clone()];
        match text.find(|character| !matches!(character, ' ' | '\t' | '\r' | '\n')) {
            Some(at) => Err(self.error(XmlErrorKind::TextOutsideRoot, range.start + at)),
            None => Ok(()),
        }
    }

    /// A reference in text.
    fn reference(&mut self, range: Range<usize>) -> Result<(), XmlError> {
        if !self.is_inside() {
            return Err(self.error(XmlErrorKind::TextOutsideRoot, range.start));
        }
        self.check_reference(range)
    }

    /// A reference with its `&` and `;`.
    fn check_reference(&mut self, range: Range<usize>) -> Result<(), XmlError> {
        let name = &self.text[range.start + 1..range.end - 1];
        match meaning(name) {
            ReferenceMeaning::Character(_) => Ok(()),
            ReferenceMeaning::Nothing => {
                let kind = XmlErrorKind::BadReference { reference: shown(&self.text[range.clone()]) };
                Err(self.error(kind, range.start))
            }
            ReferenceMeaning::Entity if name.is_empty() || name_end(name.as_bytes(), 0) != name.len() => {
                Err(self.error(XmlErrorKind::LoneAmpersand, range.start))
            }
            ReferenceMeaning::Entity => {
                self.remark(RemarkKind::Entity { name: shown(name) }, range.start);
                Ok(())
            }
        }
    }

    fn remark(&mut self, kind: RemarkKind, at: usize) {
        if let Some(known) = self.tree.remarks.iter_mut().find(|known| known.kind == kind) {
            known.count += 1;
        } else if self.tree.remarks.len() < MOST_REMARKS {
            let place = self.place(at);
            self.tree.remarks.push(Remark { kind, place, count: 1 });
        }
    }

    fn document_type(&mut self, range: Range<usize>) -> Result<(), XmlError> {
        if !self.tree.nodes.is_empty() || self.tree.doctype.is_some() {
            let kind = XmlErrorKind::Misplaced { what: "document type declaration" };
            return Err(self.error(kind, range.start));
        }
        self.tree.doctype = Some(range);
        Ok(())
    }

    fn finish(self) -> Result<Tree, XmlError> {
        if let Some(open) = self.tree.nodes.get(self.open as usize) {
            let name = shown(self.tree.names.name(open.tag));
            let opened = self.place(open.start as usize).line;
            let kind = XmlErrorKind::EndsInside { name, opened };
            return Err(self.error(kind, self.text.len()));
        }
        if self.tree.nodes.is_empty() {
            return Err(XmlError::new(XmlErrorKind::NoRoot, None));
        }
        Ok(self.tree)
    }

    #[cold]
    fn markup_error(&self, error: &quick_xml::Error, at: usize) -> XmlError {
        use quick_xml::errors::{Error, IllFormedError, SyntaxError};
        let unfinished = |what| XmlErrorKind::Unfinished { what };
        let kind = match error {
            Error::IllFormed(IllFormedError::UnclosedReference) => XmlErrorKind::LoneAmpersand,
            Error::Syntax(SyntaxError::UnclosedComment) => unfinished("comment"),
            Error::Syntax(SyntaxError::UnclosedCData) => unfinished("CDATA section"),
            Error::Syntax(SyntaxError::UnclosedDoctype) => unfinished("document type declaration"),
            Error::Syntax(SyntaxError::UnclosedPI) => unfinished("processing instruction"),
            Error::Syntax(SyntaxError::UnclosedXmlDecl) => unfinished("XML declaration"),
            Error::Syntax(
                SyntaxError::UnclosedTag
                | SyntaxError::UnclosedSingleQuotedAttributeValue
                | SyntaxError::UnclosedDoubleQuotedAttributeValue,
            ) => unfinished("tag"),
            _ => XmlErrorKind::BadMarkup,
        };
        self.error(kind, at)
    }

    #[cold]
    fn over(&self, limit: Limited, value: usize, at: usize) -> XmlError {
        self.error(XmlErrorKind::OverLimit { limit, value }, at)
    }

    #[cold]
    fn error(&self, kind: XmlErrorKind, at: usize) -> XmlError {
        XmlError::new(kind, self.place(at))
    }

    fn place(&self, at: usize) -> TextPlace {
        TextPlace::of(self.text.as_bytes(), at)
    }
}

/// How many start tags there can be at most: the arena is then never grown, and never half empty.
fn count_start_tags(text: &str) -> usize {
    let bytes = text.as_bytes();
    let pairs = bytes.iter().zip(bytes.get(1..).unwrap_or_default());
    pairs.filter(|&(&first, &second)| (first == b'<') & (second != b'/')).count()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_arena_takes_no_more_room_than_it_needs() {
        let text = format!("<a>{}</a>", "<b><c x='1'/>text</b>\n".repeat(1000));
        let tree = read_tree(&text, &Limits::default()).unwrap();
        assert_eq!((tree.nodes.len(), tree.nodes.capacity()), (2001, 2001));
    }
}
