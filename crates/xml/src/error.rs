//! What is wrong with a document, for people: where, what, and what to do.

use std::fmt;

use crate::place::TextPlace;

/// Why a document cannot be read. One clear error, never several.
///
/// ```
/// use arcata_xml::{Document, Limits};
/// let error = Document::parse(b"<note>\n  <rest>\n</note>".to_vec(), &Limits::default()).unwrap_err();
/// assert_eq!(
///     error.to_string(),
///     "line 3, column 1: </note> stands where </rest> must stand, for <rest> was opened on line 2; \
///      close <rest>, or export the file again"
/// );
/// ```
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct XmlError {
    kind: XmlErrorKind,
    place: Option<TextPlace>,
}

/// The kinds of trouble a document may have.
#[derive(Clone, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub enum XmlErrorKind {
    /// Nothing, or nothing but blanks.
    Empty,
    /// The first characters are not those of an XML file.
    NotXml,
    /// An encoding that is not read.
    UnknownEncoding {
        /// The encoding, as the file names it.
        name: String,
    },
    /// The bytes are not in the encoding that the file declares or shows.
    EncodingContradicted {
        /// What the file says, or what holds where it says nothing.
        claimed: String,
        /// What the bytes are instead.
        found: String,
    },
    /// A control character that XML forbids.
    ForbiddenCharacter {
        /// Its number.
        code: u32,
    },
    /// A tag, comment or other mark-up is not finished when the file ends.
    Unfinished {
        /// What is not finished.
        what: &'static str,
    },
    /// The file ends inside an element.
    EndsInside {
        /// The name of the innermost open element.
        name: String,
        /// The line of its start tag.
        opened: usize,
    },
    /// An end tag does not belong to the element that is open.
    MismatchedEnd {
        /// The name of the open element.
        open: String,
        /// The line of its start tag.
        opened: usize,
        /// The name in the end tag.
        found: String,
    },
    /// An end tag where no element is open.
    StrayEnd {
        /// The name in the end tag.
        found: String,
    },
    /// There is no element.
    NoRoot,
    /// A second element after the root element.
    SecondRoot {
        /// The name of the second one.
        name: String,
    },
    /// Text before or after the root element.
    TextOutsideRoot,
    /// The XML declaration or the document type stands where it may not.
    Misplaced {
        /// What stands there.
        what: &'static str,
    },
    /// Not a name of an element or attribute.
    BadName {
        /// What stands in place of a name.
        name: String,
    },
    /// Two attributes of one element have the same name.
    DuplicateAttribute {
        /// The name.
        name: String,
    },
    /// Something in a start tag that is not `name="value"`.
    BadAttribute {
        /// What is wrong.
        what: &'static str,
    },
    /// `&` without a name and `;` behind it.
    LoneAmpersand,
    /// A reference to a character that cannot be.
    BadReference {
        /// The reference as written.
        reference: String,
    },
    /// Some other mark-up that is not XML.
    BadMarkup,
    /// A limit is passed.
    OverLimit {
        /// Which.
        limit: Limited,
        /// Its value.
        value: usize,
    },
}

/// What a limit counts in a document.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[non_exhaustive]
pub enum Limited {
    /// [`max_bytes`](crate::Limits::max_bytes)
    Bytes,
    /// [`max_depth`](crate::Limits::max_depth)
    Depth,
    /// [`max_attributes`](crate::Limits::max_attributes)
    Attributes,
    /// [`max_elements`](crate::Limits::max_elements)
    Elements,
    /// [`max_names`](crate::Limits::max_names)
    Names,
}

impl XmlError {
    pub(crate) fn new(kind: XmlErrorKind, place: impl Into<Option<TextPlace>>) -> XmlError {
        XmlError { kind, place: place.into() }
    }

    /// What kind of trouble it is.
    #[must_use]
    pub fn kind(&self) -> &XmlErrorKind {
        &self.kind
    }

    /// Where the trouble shows; nothing where it concerns the whole file.
    #[must_use]
    pub fn place(&self) -> Option<TextPlace> {
        self.place
    }

    /// What a person can do about it.
    #[must_use]
    pub fn remedy(&self) -> String {
        use XmlErrorKind as Kind;
        match &self.kind {
            Kind::Empty | Kind::NoRoot => "export the score again".into(),
            Kind::NotXml => "choose a MusicXML file (.musicxml, .xml or .mxl)".into(),
            Kind::UnknownEncoding { .. } => {
                "save it as UTF-8 (UTF-16, ISO-8859-1 and windows-1252 are read too)".into()
            }
            Kind::EncodingContradicted { .. } => {
                "correct the encoding in the first line, or save the file as UTF-8".into()
            }
            Kind::ForbiddenCharacter { .. } => "delete the character, or export the file again".into(),
            Kind::Unfinished { .. } | Kind::EndsInside { .. } => {
                "the file was cut short: copy or export it again".into()
            }
            Kind::MismatchedEnd { open, .. } => format!("close <{open}>, or export the file again"),
            Kind::StrayEnd { found } => format!("delete </{found}>, or export the file again"),
            Kind::SecondRoot { .. } => "keep one score in a file".into(),
            Kind::TextOutsideRoot => "delete what stands outside the outermost element".into(),
            Kind::Misplaced { what } => format!("move the {what} to its place, or export the file again"),
            Kind::BadName { .. } | Kind::BadMarkup => "write < as &lt; if it is text".into(),
            Kind::DuplicateAttribute { .. } => "delete one of the two".into(),
            Kind::BadAttribute { .. } => "write name=\"value\"".into(),
            Kind::LoneAmpersand => "write & as &amp;".into(),
            Kind::BadReference { .. } => "write the character itself".into(),
            Kind::OverLimit { .. } => "if the file is a real score, raise the limit".into(),
        }
    }
}

impl fmt::Display for XmlError {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        if let Some(place) = self.place {
            write!(out, "{place}: ")?;
        }
        write!(out, "{}; {}", self.kind, self.remedy())
    }
}

impl std::error::Error for XmlError {}

impl fmt::Display for XmlErrorKind {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Empty => write!(out, "the file is empty"),
            Self::NotXml => write!(out, "this is not an XML file"),
            Self::UnknownEncoding { name } => write!(out, "the encoding \"{name}\" is not read"),
            Self::EncodingContradicted { claimed, found } => {
                write!(out, "the file claims to be {claimed}, but {found}")
            }
            Self::ForbiddenCharacter { code } => {
                write!(out, "the control character U+{code:04X} is forbidden in XML")
            }
            Self::Unfinished { what } => write!(out, "the file ends inside the {what} that begins here"),
            Self::EndsInside { name, opened } => {
                write!(out, "the file ends inside <{name}>, which was opened on line {opened}")
            }
            Self::MismatchedEnd { open, opened, found } => write!(
                out,
                "</{found}> stands where </{open}> must stand, for <{open}> was opened on line {opened}"
            ),
            Self::StrayEnd { found } => write!(out, "</{found}> closes an element that was not opened"),
            Self::NoRoot => write!(out, "the file holds no element"),
            Self::SecondRoot { name } => {
                write!(out, "<{name}> stands after the end of the outermost element")
            }
            Self::TextOutsideRoot => write!(out, "there is text outside the outermost element"),
            Self::Misplaced { what } => write!(out, "the {what} may not stand here"),
            Self::BadName { name } => write!(out, "\"{name}\" is not a name"),
            Self::DuplicateAttribute { name } => write!(out, "the attribute {name} is given twice"),
            Self::BadAttribute { what } => write!(out, "{what}"),
            Self::LoneAmpersand => write!(out, "& begins a reference that is not finished"),
            Self::BadReference { reference } => write!(out, "{reference} stands for no character of XML"),
            Self::BadMarkup => write!(out, "this is not mark-up of XML"),
            Self::OverLimit { limit, value } => match limit {
                Limited::Bytes => write!(out, "the document is longer than {value} bytes"),
                Limited::Depth => write!(out, "elements are nested deeper than {value}"),
                Limited::Attributes => write!(out, "an element has more than {value} attributes"),
                Limited::Elements => write!(out, "there are more than {value} elements"),
                Limited::Names => {
                    write!(out, "there are more than {value} element names foreign to MusicXML")
                }
            },
        }
    }
}

/// A name or other piece of the file, short enough for a message.
pub(crate) fn shown(piece: &str) -> String {
    const LONGEST: usize = 48;
    let mut shown: String =
        piece.chars().take(LONGEST).map(|c| if c.is_control() { ' ' } else { c }).collect();
    if piece.chars().nth(LONGEST).is_some() {
        shown.push('…');
    }
    shown
}
