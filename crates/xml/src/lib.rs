//! Lossless XML documents.
mod attributes;
mod content;
mod document;
mod element;
mod encoding;
mod error;
mod limits;
mod place;
mod reading;
mod references;
mod tags;

pub use attributes::{Attribute, Attributes};
pub use document::{Document, NodeId, Remark, RemarkKind};
pub use element::{Children, Element};
pub use encoding::Encoding;
pub use error::{Limited, XmlError, XmlErrorKind};
pub use limits::Limits;
pub use place::Place;
pub use references::escape;
pub use tags::Tag;
