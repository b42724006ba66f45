//! Lossless XML documents: the bytes of a file stay the truth.
//!
//! A [`Document`] keeps the bytes as they are given and, beside them, where each element stands: an arena
//! of 28 bytes an element over the tokens of quick-xml. An [`Element`] is a cursor that is copied freely
//! and reads names, attributes and text from the bytes when they are asked for. Changes are patches
//! ([`Edit`]): whatever lies outside them comes out byte for byte as it went in, in the encoding the file
//! has. An [`Editor`] makes patches that fit the manners of the file, and that can be taken back without
//! a trace.
//!
//! A score in a package (.mxl) is read through [`Package`]; [`open_score`] takes either kind of file.
//!
//! ```
//! use arcata_xml::{Editor, Limits, Position, Tag, open_score};
//!
//! let bytes = br#"<?xml version="1.0"?>
//! <note default-x="12">
//!   <pitch><step>G</step><octave>4</octave></pitch>
//!   <duration>2</duration>
//! </note>
//! "#;
//! let file = open_score(bytes.to_vec(), &Limits::default())?;
//! let note = file.document().root();
//! assert_eq!(note.tag(), Tag::NOTE);
//! assert_eq!(note.attribute("default-x").as_deref(), Some("12"));
//! let duration = note.child(Tag::DURATION).unwrap();
//! assert_eq!(duration.text(), "2");
//! assert_eq!(duration.line_column().to_string(), "line 4, column 3");
//!
//! let mut editor = Editor::new(file.document());
//! editor.insert_child(note, "<voice>1</voice>", Position::After(duration.id()))?;
//! let edited = String::from_utf8(file.write_edited(&editor.finish()?)?)?;
//! assert!(edited.ends_with("  <duration>2</duration>\n  <voice>1</voice>\n</note>\n"));
//! # Ok::<(), Box<dyn std::error::Error>>(())
//! ```
//!
//! # Invariants
//!
//! * Reading well-formed XML gives a document and perhaps [remarks](Document::remarks); anything else
//!   gives one clear error with a place, never a panic, however large or hostile the file
//!   (see [`Limits`]).
//! * Bytes outside the ranges of edits never change.
//! * No entity is expanded, no file is opened, nothing is printed.

mod attributes;
mod container;
mod container_error;
mod content;
mod document;
mod edit;
mod editor;
mod element;
mod encoding;
mod error;
mod layout;
mod limits;
mod open;
mod place;
mod reading;
mod references;
mod tag_names;
mod tags;
mod unseen;

pub use attributes::{Attribute, Attributes};
pub use container::{Package, PackageMember, PackageRemark};
pub use container_error::ContainerError;
pub use document::{Document, NodeId, Remark, RemarkKind};
pub use edit::{Edit, EditError, EditList};
pub use editor::{Editor, Position};
pub use element::{Children, Element};
pub use encoding::Encoding;
pub use error::{Limited, XmlError, XmlErrorKind};
pub use limits::Limits;
pub use open::{Input, OpenError, ScoreFile, WriteError, open_score};
pub use place::TextPlace;
pub use references::escape;
pub use tags::Tag;
pub use unseen::{acts_unseen, seen, seen_json};
