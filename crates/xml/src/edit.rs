//! Edits as patches on the text of a document.

use std::fmt;
use std::ops::Range;

use crate::document::Document;
use crate::encoding::Encoding;
use crate::error::XmlError;

/// One patch: the text in `range` gives way to `insert`.
///
/// The range is in bytes of [`Document::text`]. An empty range inserts, an empty `insert` deletes.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Edit {
    /// What gives way.
    pub range: Range<usize>,
    /// What takes its place.
    pub insert: String,
}

impl Edit {
    /// Puts text before the byte at an offset.
    #[must_use]
    pub fn insertion(at: usize, insert: impl Into<String>) -> Edit {
        Edit { range: at..at, insert: insert.into() }
    }

    /// Takes text away.
    #[must_use]
    pub fn deletion(range: Range<usize>) -> Edit {
        Edit { range, insert: String::new() }
    }

    /// Puts text in the place of other text.
    #[must_use]
    pub fn replacement(range: Range<usize>, insert: impl Into<String>) -> Edit {
        Edit { range, insert: insert.into() }
    }
}

/// Edits in the order of the text, none touching what another takes away.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct EditList {
    /// Sorted by where they begin, disjoint.
    edits: Vec<Edit>,
}

impl EditList {
    /// Sorts edits. Insertions at one place keep the order in which they are given.
    ///
    /// ```
    /// use arcata_xml::{Edit, EditList};
    /// let list = EditList::new(vec![Edit::insertion(9, "b"), Edit::deletion(2..4)]).unwrap();
    /// assert_eq!(list.edits()[0].range, 2..4);
    /// assert!(EditList::new(vec![Edit::insertion(3, "b"), Edit::deletion(2..4)]).is_err());
    /// ```
    ///
    /// # Errors
    ///
    /// A range that runs backwards, and two edits of which one would change what the other takes away.
    pub fn new(mut edits: Vec<Edit>) -> Result<EditList, EditError> {
        if let Some(edit) = edits.iter().find(|edit| edit.range.start > edit.range.end) {
            return Err(EditError::Backwards { range: edit.range.clone() });
        }
        edits.sort_by_key(|edit| (edit.range.start, edit.range.end));
        match edits.windows(2).find(|pair| pair[1].range.start < pair[0].range.end) {
            Some(pair) => {
                Err(EditError::Overlap { first: pair[0].range.clone(), second: pair[1].range.clone() })
            }
            None => Ok(EditList { edits }),
        }
    }

    /// The edits, sorted.
    #[must_use]
    pub fn edits(&self) -> &[Edit] {
        &self.edits
    }

    /// The edits of both lists in one.
    ///
    /// # Errors
    ///
    /// As for [`EditList::new`].
    pub fn join(self, other: EditList) -> Result<EditList, EditError> {
        let mut edits = self.edits;
        edits.extend(other.edits);
        EditList::new(edits)
    }

    /// A text with the edits made.
    ///
    /// ```
    /// use arcata_xml::{Edit, EditList};
    /// let list = EditList::new(vec![Edit::insertion(3, "!"), Edit::deletion(0..1)]).unwrap();
    /// assert_eq!(list.apply_to("abc").unwrap(), "bc!");
    /// assert!(list.apply_to("a").is_err());
    /// ```
    ///
    /// # Errors
    ///
    /// An edit past the end of the text or inside a character: it was made for another text.
    pub fn apply_to(&self, text: &str) -> Result<String, EditError> {
        for Edit { range, .. } in &self.edits {
            if range.end > text.len() {
                return Err(EditError::PastTheEnd { range: range.clone(), length: text.len() });
            }
            if !text.is_char_boundary(range.start) || !text.is_char_boundary(range.end) {
                return Err(EditError::SplitsCharacter { range: range.clone() });
            }
        }
        let added: usize = self.edits.iter().map(|edit| edit.insert.len()).sum();
        let mut changed = String::with_capacity(text.len() + added);
        let mut kept = 0;
        for Edit { range, insert } in &self.edits {
            changed.push_str(&text[kept..range.start]);
            changed.push_str(insert);
            kept = range.end;
        }
        changed.push_str(&text[kept..]);
        Ok(changed)
    }

    /// Whether there is nothing to change.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.edits.is_empty()
    }
}

/// Why edits cannot be made.
#[derive(Clone, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub enum EditError {
    /// A range ends before it begins.
    Backwards {
        /// The range, in bytes of the text.
        range: Range<usize>,
    },
    /// An edit changes what another takes away.
    Overlap {
        /// The one that begins first, in bytes of the text.
        first: Range<usize>,
        /// The other.
        second: Range<usize>,
    },
    /// A range reaches past the end of the text.
    PastTheEnd {
        /// The range, in bytes of the text.
        range: Range<usize>,
        /// The length of the text.
        length: usize,
    },
    /// A range begins or ends inside a character.
    SplitsCharacter {
        /// The range, in bytes of the text.
        range: Range<usize>,
    },
    /// An element of another document.
    OtherDocument,
    /// A place beside an element that is not a child of the one to insert into.
    NotAChild {
        /// The name of the element to insert into.
        parent: String,
    },
    /// The root cannot be removed.
    RemovesRoot,
    /// What is to be inserted is not well-formed.
    Malformed {
        /// Why, with lines counted in what is to be inserted.
        error: XmlError,
    },
    /// What is to be inserted is not exactly one element.
    NotOneElement,
    /// A name with characters that the encoding of the document lacks.
    NameNotInEncoding {
        /// The name.
        name: String,
        /// The encoding.
        encoding: Encoding,
    },
}

impl fmt::Display for EditError {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Backwards { range } => {
                write!(
                    out,
                    "an edit ends at byte {}, before it begins at byte {}; ",
                    range.end, range.start
                )?;
                write!(out, "give the smaller offset first")
            }
            Self::Overlap { first, second } => {
                write!(out, "two edits change the same text, bytes {first:?} and {second:?}; ")?;
                write!(out, "make one first, read the file again, then make the other")
            }
            Self::PastTheEnd { range, length } => {
                write!(out, "an edit of bytes {range:?} reaches past the end of a text of {length} bytes; ")?;
                write!(out, "it was made for another file, or for this one before it changed")
            }
            Self::SplitsCharacter { range } => {
                write!(out, "an edit of bytes {range:?} begins or ends inside a character; ")?;
                write!(out, "it was made for another file, or for this one before it changed")
            }
            Self::OtherDocument => {
                write!(out, "an edit names an element of another document; read that one's elements instead")
            }
            Self::NotAChild { parent } => {
                write!(out, "the place for the new element is not directly inside <{parent}>; ")?;
                write!(out, "choose one of the elements inside it")
            }
            Self::RemovesRoot => {
                write!(out, "the outermost element cannot be removed; remove the elements inside it")
            }
            Self::Malformed { error } => write!(out, "the new element cannot be read: {error}"),
            Self::NotOneElement => {
                write!(out, "what is to be inserted is not exactly one element; insert one after another")
            }
            Self::NameNotInEncoding { name, encoding } => {
                write!(out, "the name \"{name}\" cannot be written in {encoding}; save the file as UTF-8")
            }
        }
    }
}

impl std::error::Error for EditError {
    fn source(&self) -> Option<&(dyn std::error::Error + 'static)> {
        match self {
            Self::Malformed { error } => Some(error),
            _ => None,
        }
    }
}

impl Document {
    /// The bytes of the document with edits made, in its own encoding and with its byte order mark.
    ///
    /// Bytes outside the edits are those of the file. A character that the encoding lacks becomes a
    /// character reference. The outcome is well-formed if the edits are; those of an
    /// [`Editor`](crate::Editor) are.
    ///
    /// # Errors
    ///
    /// As for [`EditList::apply_to`].
    pub fn apply(&self, list: &EditList) -> Result<Vec<u8>, EditError> {
        Ok(self.encoded(&list.apply_to(self.text())?))
    }

    /// Another text as the bytes of a document like this one: in its encoding and with its byte order mark.
    #[must_use]
    pub fn encoded(&self, text: &str) -> Vec<u8> {
        let mut bytes = Vec::with_capacity(text.len() + self.mark().len());
        bytes.extend_from_slice(self.mark());
        self.encoding().write(text, &mut bytes);
        bytes
    }
}
