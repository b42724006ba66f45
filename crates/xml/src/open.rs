//! A score file of either kind.

use std::fmt;

use crate::container::{Package, PackageRemark, PackageShell};
use crate::container_error::ContainerError;
use crate::document::Document;
use crate::edit::{EditError, EditList};
use crate::error::XmlError;
use crate::limits::Limits;

/// The two kinds of score files.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Input {
    /// A plain document (.musicxml, .xml).
    Document,
    /// A package (.mxl).
    Package,
}

impl Input {
    /// Tells a package from a plain document by the first bytes, whatever the file is called.
    #[must_use]
    pub fn detect(bytes: &[u8]) -> Input {
        // The signatures of a zip archive's first member, and of an archive without any.
        match bytes {
            [b'P', b'K', 3, 4, ..] | [b'P', b'K', 5, 6, ..] => Input::Package,
            _ => Input::Document,
        }
    }

    /// The kind that a file's name says: `.musicxml` and `.xml` are plain documents, `.mxl` is a package (MusicXML 4.0);
    /// nothing where it says neither.
    ///
    /// ```
    /// use arcata_xml::Input;
    /// assert_eq!(Input::of_name("suite.MXL"), Some(Input::Package));
    /// assert_eq!(Input::of_name("suite.musicxml"), Some(Input::Document));
    /// assert_eq!(Input::of_name("suite"), None);
    /// ```
    #[must_use]
    pub fn of_name(name: &str) -> Option<Input> {
        let (_, ending) = name.rsplit_once('.')?;
        match ending.to_ascii_lowercase().as_str() {
            "musicxml" | "xml" => Some(Input::Document),
            "mxl" => Some(Input::Package),
            _ => None,
        }
    }
}

/// Why a score file cannot be opened.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum OpenError {
    /// The document is not well-formed, or the plain file is not a document.
    Document(XmlError),
    /// The package cannot be read.
    Package(ContainerError),
    /// The score inside a package is not well-formed.
    Member {
        /// Its path inside the package.
        name: String,
        /// Why.
        error: XmlError,
    },
}

impl fmt::Display for OpenError {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Document(error) => error.fmt(out),
            Self::Package(error) => error.fmt(out),
            Self::Member { name, error } => write!(out, "{name} in the package: {error}"),
        }
    }
}

impl std::error::Error for OpenError {}

/// A document together with the package it came in, if it came in one.
#[derive(Debug)]
pub struct ScoreFile {
    document: Document,
    shell: Option<PackageShell>,
}

/// Opens a score file of either kind.
///
/// # Errors
///
/// Whatever keeps the package or the document from being read.
pub fn open_score(bytes: Vec<u8>, limits: &Limits) -> Result<ScoreFile, OpenError> {
    match Input::detect(&bytes) {
        Input::Document => {
            let document = Document::parse(bytes, limits).map_err(OpenError::Document)?;
            Ok(ScoreFile { document, shell: None })
        }
        Input::Package => {
            let package = Package::open(bytes, limits).map_err(OpenError::Package)?;
            let (shell, score) = package.into_parts();
            let document = Document::parse(score, limits).map_err(|error| OpenError::Member {
                name: crate::error::shown(shell.score_name()),
                error,
            })?;
            Ok(ScoreFile { document, shell: Some(shell) })
        }
    }
}

impl From<Document> for ScoreFile {
    /// A document that came without a package.
    fn from(document: Document) -> Self {
        Self { document, shell: None }
    }
}

impl ScoreFile {
    /// The score.
    #[must_use]
    pub fn document(&self) -> &Document {
        &self.document
    }

    /// Which kind of file it is.
    #[must_use]
    pub fn kind(&self) -> Input {
        if self.shell.is_some() { Input::Package } else { Input::Document }
    }

    /// The path of the score inside its package.
    #[must_use]
    pub fn member_name(&self) -> Option<&str> {
        self.shell.as_ref().map(PackageShell::score_name)
    }

    /// What is odd about the package; what is odd about the document stands in its own remarks.
    #[must_use]
    pub fn package_remarks(&self) -> &[PackageRemark] {
        self.shell.as_ref().map_or(&[], PackageShell::remarks)
    }

    /// A file of the same kind with other bytes for the score, and everything else as it was.
    ///
    /// # Errors
    ///
    /// As for [`Package::write_with_score`].
    pub fn write(&self, score: &[u8]) -> Result<Vec<u8>, ContainerError> {
        match &self.shell {
            None => Ok(score.to_vec()),
            Some(shell) if score == self.document.bytes() => Ok(shell.archive().to_vec()),
            Some(shell) => shell.write_with_score(score),
        }
    }

    /// The members of its package that are neither the score nor about the package: what a plain document leaves out.
    #[must_use]
    pub fn other_members(&self) -> Vec<&str> {
        self.shell.as_ref().map(PackageShell::other_members).unwrap_or_default()
    }

    /// A file of the kind that is asked for with other bytes for the score. A package keeps everything else as it was; where
    /// the score came as a plain document a new package is made, in which it is called `member`.
    ///
    /// # Errors
    ///
    /// As for [`Package::write_with_score`].
    pub fn write_as(&self, kind: Input, member: &str, score: &[u8]) -> Result<Vec<u8>, ContainerError> {
        match (kind, &self.shell) {
            (Input::Document, _) => Ok(score.to_vec()),
            (Input::Package, Some(_)) => self.write(score),
            (Input::Package, None) => Package::around(member, score),
        }
    }

    /// A file of the same kind with edits made to the score.
    ///
    /// # Errors
    ///
    /// Edits that do not fit the score, or as for [`ScoreFile::write`].
    pub fn write_edited(&self, edits: &EditList) -> Result<Vec<u8>, WriteError> {
        let score = self.document.apply(edits).map_err(WriteError::Edit)?;
        self.write(&score).map_err(WriteError::Package)
    }
}

/// Why an edited score file cannot be written.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum WriteError {
    /// The edits do not fit.
    Edit(EditError),
    /// The package cannot be copied.
    Package(ContainerError),
}

impl fmt::Display for WriteError {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Edit(error) => error.fmt(out),
            Self::Package(error) => error.fmt(out),
        }
    }
}

impl std::error::Error for WriteError {}
